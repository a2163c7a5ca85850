/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/base/number-text.h>

/**
 * sw_gradient_parse:
 * @text: what somebody typed
 * @unit: SW_UNIT_RAD or SW_UNIT_HV; decides what a bare number is, degrees or
 *   horizontal per 1 vertical, and what comes out
 * @value: (out): in the SI unit of @unit
 * @problem: (out) (transfer full): what is wrong, a sentence for the user
 *
 * Reads "2:1", "2H:1V", "1V:2H", "26.6°", "26.6 deg" and "50 %". "1:2" is refused:
 * some read it as horizontal to vertical and some as vertical to horizontal, and the
 * two are 26.6 and 63.4 degrees.
 *
 * Returns: FALSE with @problem set and @value untouched
 */
gboolean sw_gradient_parse (const char *text, SwUnit unit, SwNumberStyle style,
                            double *value, char **problem);
