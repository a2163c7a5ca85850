/* SPDX-License-Identifier: MIT */
#pragma once

#include "layout-private.h"

/* Two pins nearer than this would be one pin driven twice; less than an edge row is set in. */
#define SW_DOUBLE_PIN_M 0.04

/** Pins along lines: trenches, edges, end laps and rings, sorted by along_m, none of them double. */
void sw_lay_pin_lines (SwLaying *laying, const SwPiece *pieces);

/** @along_m, but on a tier that goes all round back within it; the seam itself counts at the
 * leeward end. */
double sw_along_on_tier_m (const SwLaying *laying, guint tier, double along_m);

void sw_add_pin (SwLaying *laying, guint tier, SwPinRole role, double along_m,
                 double down_m);

/** The two pin rows of an end lap whose middle lies @middle_m down the face: distances down. */
SwSpan sw_end_lap_rows (const SwLaying *laying, double middle_m);

/** Smallest sw_ground_stretch() of the face, at most 1. */
double sw_least_stretch (const SwLaying *laying);
