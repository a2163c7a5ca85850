/* SPDX-License-Identifier: MIT */
#pragma once

#include "drawing.h"

/* Soil below the ground line, on paper. */
#define SW_SECTION_SOIL_MM 5.0

/* With more stretches than this the whole face is figured, not each of them. */
#define SW_SECTION_MANY 7

/** Part of the section of one gradient, from point to point. */
typedef struct
{
  guint from, to;
} SwStretch;

/** (element-type SwStretch) crest to toe; points that lie in one line are one stretch. (transfer full) */
GArray *sw_section_stretches (const SwFace *face);

/** Angle between two points, downhill positive. */
double sw_section_fall_rad (const SwFace *face, guint from, guint to);

/** Lengths and gradients above the ground, stretch by stretch or for the whole, and the fall line. */
void sw_section_gradients (SwDrawing *drawing, const GArray *stretches);

/** Names, levels, runs and rises, datum and sections taken elsewhere. @box: what is drawn. */
void sw_section_notes (SwDrawing *drawing, SwBox box);
