/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/base/number-text.h>
#include <slopewright/judge/result.h>

/** A line between two places of a face, as a tape and a level would have it. */
typedef struct
{
  double true_m; /* over the ground; NaN when there is no ground to measure on */
  double plan_m; /* on plan, as long as the ground is wide there, >= 0 */
  double rise_m; /* from the first place to the second; NaN as above */
} SwMeasuredLine;

/** Between two places in a section: straight, whatever lies between. */
SwMeasuredLine sw_line_in_section (SwPoint from, SwPoint to);

/** Between two places on plan (along, out): over the ground of the face. */
SwMeasuredLine sw_line_on_face (const SwResult *result, guint face, SwPoint from,
                                SwPoint to);

/** "11.18 m long · 10.00 m on plan · falls 5.00 m · 2H:1V · 26.6° · 50 %". (transfer full) */
char *sw_line_text (SwMeasuredLine line, SwNumberStyle style);
