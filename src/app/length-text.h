/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/base/number-text.h>

/**
 * sw_length_parse:
 * @text: what somebody typed
 * @unit: SW_UNIT_M or SW_UNIT_SMALL_M; decides what a number without a unit is:
 *   metres or millimetres, in US units feet or inches
 * @style: of the reader
 * @length_m: (out): the length
 * @problem: (out) (transfer full): what is wrong, a sentence for the user
 *
 * Reads "1.37", "1,37", "1.37 m", "137 cm", "4 1/2 ft", "11' 6 3/4\"",
 * "11ft6-7/8in", "½ in" and sums of these: "2.4 + 30 cm - 1 in". Point and
 * comma both are decimal marks; marks that group digits are refused, not
 * guessed. The whole text must make sense, or none of it is taken.
 *
 * Returns: FALSE with @problem set and @length_m untouched
 */
gboolean sw_length_parse (const char *text, SwUnit unit, SwNumberStyle style,
                          double *length_m, char **problem);
