/* SPDX-License-Identifier: MIT */
#pragma once

#include "face-view.h"

/*
 * Crest and toe of a round face as it lies flat: two arcs about one centre, what is drawn
 * along them, and words that find a place off the face.
 */

/* Rows of their dimension lines: outside the longer arc, and inside the shorter one. */
#define SW_ARC_ROW_MM 8.6
#define SW_ARC_INNER_ROW_MM 4.0

/** One of the two arcs: where it lies, and which way is off the face. */
typedef struct
{
  double down_m;
  double outwards; /* 1: off the face is further down, -1: further up */
  gboolean is_crest;
} SwArc;

/** @reach: of the face, (along, down), trenches included, as everywhere here. */
SwArc sw_arc_longer (const SwDrawing *drawing, SwBox reach);
SwArc sw_arc_shorter (const SwDrawing *drawing, SwBox reach);

/** Distance down of a row @row_mm outside an arc. */
double sw_arc_row_m (const SwDrawing *drawing, SwArc arc, double row_mm);

/** Metres of along_m that @length_mm on paper take at this distance down. */
double sw_arc_along_m (const SwDrawing *drawing, double down_m, double length_mm);

/** A line along the contour; labels keep off it. */
void sw_arc_draw (SwDrawing *drawing, SwRole role, double down_m, double from_m,
                  double to_m);

/** An arrow head along the contour: @way 1 towards larger along_m, -1 away. */
void sw_arc_head (SwDrawing *drawing, SwRole role, double along_m, double down_m,
                  double way, double head_mm);

/** Most places for a word off the face: round what it speaks of, then all over the sheet. */
#define SW_ARC_ROUND_SPOTS 144
#define SW_ARC_SHEET_COLUMNS 10
#define SW_ARC_SHEET_ROWS 12
#define SW_ARC_SPOTS                                                                     \
  (SW_ARC_ROUND_SPOTS + SW_ARC_SHEET_COLUMNS * SW_ARC_SHEET_ROWS)

/** Places off the face for words about @target at its edge, nearest and in the direction
 * @way_rad (anticlockwise from the right) first. Returns: how many */
guint sw_arc_spots (const SwDrawing *drawing, SwBox reach, SwPaperPoint target,
                    double way_rad, const char *words, SwLabelSpot spots[SW_ARC_SPOTS]);

/** Words with a leader to @target at one of those places. */
void sw_arc_call_out (SwDrawing *drawing, SwBox reach, SwLabelRank rank,
                      SwPaperPoint target, double way_rad, const char *object,
                      const char *words);

/** True length of crest or toe along its arc, in a row outside it. */
void sw_arc_dimension (SwDrawing *drawing, SwBox reach, SwArc arc, double row_mm);
