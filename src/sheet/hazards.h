/* SPDX-License-Identifier: MIT */
#pragma once

#include "flow.h"
#include "sheet.h"

/* The worst of the faces, for what people stand on and lift. */
typedef struct
{
  double steepest_rad, height_m, pin_m;
  gboolean loose;
} SwSlopeFacts;

SwSlopeFacts sw_sheet_slope_facts (const SwSheet *sheet);

/* Its steepest gradient and its height, for the places of the hazard table's texts. */
void sw_sheet_put_slope_facts (const SwSheet *sheet, GHashTable *places);

/* Job hazard table, controls strongest first, and where the rules behind it stand. */
void sw_sheet_hazards (const SwSheet *sheet, SwFlow *flow);
