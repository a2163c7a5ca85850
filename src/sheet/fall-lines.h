/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/layout/layout.h>

/* What a job holds of the lengths that people tape on a face. */

/** One line down a face, within its outline. All 0 where the outline has no ground there. */
typedef struct
{
  double along_m;
  double length_m, rise_m, run_m;
} SwFallLine;

/** The lines of a measuring form: at a tenth, the middle and nine tenths of the width. */
#define SW_FALL_LINES 3

void sw_fall_lines (const SwFaceLayout *face, SwFallLine lines[SW_FALL_LINES]);

/** Sides and diagonals between the corners A and B on the crest, C and D at the toe. */
typedef enum
{
  SW_SIDE_AB,
  SW_SIDE_BC,
  SW_SIDE_CD,
  SW_SIDE_DA,
  SW_SIDE_AC,
  SW_SIDE_BD,
  SW_SIDE_COUNT
} SwTapedSide;

/**
 * sw_corners:
 * @corners: (out): plan places of A (left on the crest), B, C (right at the toe) and D
 *
 * Returns: FALSE, @corners untouched, where the outline is no quadrilateral
 */
gboolean sw_corners (const SwFaceLayout *face, SwPoint corners[4]);

/**
 * sw_taped_side_m:
 *
 * Returns: true length on the ground, m; of the arc along a round crest or toe; NaN
 *   where the job has no such side: an outline that is no quadrilateral, or a diagonal
 *   of a face with a round crest
 */
double sw_taped_side_m (const SwFaceLayout *face, SwTapedSide side);
