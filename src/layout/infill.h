/* SPDX-License-Identifier: MIT */
#pragma once

#include "layout-private.h"

/*
 * A fan with infill: every second run lies only where the two runs beside it, which go
 * from crest to toe, lap less than the practice wants. At its end it laps them by an end
 * lap, under them on a nose and over them in a bowl, so the upslope piece is on top.
 */

/**
 * sw_infill_ends:
 *
 * The infill run between two full ones ends where their side lap, roll width less the
 * distance of their middles along the contour, is the practice's, or an end lap before
 * the place where they part, whichever leaves the longer run; then further from the wide
 * end as long as its end lap lies at a break of the section, a check slot or an obstacle.
 * Where that is within the practice's zone without joints at the narrow end, the run is
 * laid in full.
 *
 * Returns: (transfer full) (element-type double): for each strip, counted from the
 *   leeward end, how far down from the crest its free end lies; NAN for a full run
 */
GArray *sw_infill_ends (const SwLaying *laying, guint tier);

/** Edges of a strip along the crest, counted from the leeward end, at the wide end. */
SwSpan sw_strip_edges (const SwLaying *laying, const SwTier *tier, int strip);

/**
 * sw_strip_boxes:
 * @boxes: room for three
 *
 * The ground on plan that a strip covers: between its edges, and where a strip beside it
 * is infill also what lies beyond the infill's end, as far as this strip reaches there.
 *
 * Returns: how many boxes, none of which overlap.
 */
guint sw_strip_boxes (const SwLaying *laying, guint tier, int strip, SwBox boxes[3]);

/** Where the middle of the lap lies between the two full strips beside infill @strip. */
double sw_infill_lap_middle_m (const SwLaying *laying, guint tier, int strip);

/** Whether the ground opens out down the slope: infill then ends at its upper end. */
gboolean sw_opens_down (const SwTier *tier);

/** The middle of the end lap at the free end of an infill run: distance down. */
static inline double
sw_free_end_lap_m (const SwRun *run, const SwTier *tier)
{
  return run->infill_above ? run->down_from_m + tier->end_lap_m / 2.0
                           : run->down_to_m - tier->end_lap_m / 2.0;
}

/** The free end of a strip, from sw_infill_ends(). */
static inline double
sw_infill_end_m (const SwLaying *laying, guint tier, int strip)
{
  return g_array_index ((GArray *) laying->infills->pdata[tier], double, strip);
}
