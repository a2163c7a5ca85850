/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/base/number-text.h>

/**
 * sw_value_parse:
 * @text: what somebody typed
 * @unit: any but SW_UNIT_COUNT_OF_UNITS
 * @style: of the reader; decides what a number without a unit is
 * @value: (out): in the SI unit of @unit
 * @problem: (out) (transfer full): what is wrong, a sentence for the user
 *
 * Lengths are read by sw_length_parse(); of the others each takes the units
 * that belong to it ("26.6°", "2:1", "2H:1V", "85 %", "5 lb/ac") or none.
 *
 * Returns: FALSE with @problem set and @value untouched
 */
gboolean sw_value_parse (const char *text, SwUnit unit, SwNumberStyle style,
                         double *value, char **problem);

/**
 * sw_value_edit_text:
 * @value: in the SI unit of @unit
 *
 * Returns: (transfer full): the value as it stands in a field to be edited,
 *   readable by sw_value_parse() in the same @style
 */
char *sw_value_edit_text (double value, SwUnit unit, SwNumberStyle style);
