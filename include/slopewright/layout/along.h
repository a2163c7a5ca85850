/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/layout/layout.h>

/**
 * SwAlongPlan: the same faces laid along the slope instead of down it, counted
 * only, to compare. Courses run along the crest, the lowest first, each upper
 * one over the lower; they are joined end to end from the roll as it comes.
 */
typedef struct
{
  int courses; /* over all tiers */
  int joints;
  int rolls;
  double length_m;    /* of all courses, end laps included */
  double least_lap_m; /* smallest lap between courses as laid */
} SwAlongPlan;

/**
 * sw_along_new:
 * @layout: a laid-out job
 * @plan: (out): what laying along the slope would take
 *
 * A tier of true length L takes ceil ((A - s) / (w - s)) courses, A being L
 * with the crest and toe allowances of a run; surplus width is spread over the
 * laps. A course is as long as the widest the outline gets within it; nothing is
 * added at its two ends. Obstacles are laid over and cut out, with nothing saved.
 *
 * Returns: SW_OK; SW_E_ROLL when the roll is no longer than two least pieces.
 */
SwStatus sw_along_new (const SwLayout *layout, SwAlongPlan *plan);
