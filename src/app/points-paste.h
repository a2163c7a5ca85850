/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/base/number-text.h>

#include "point-edit.h"

/**
 * sw_points_from_text:
 * @text: one point a line, two lengths parted by tab, semicolon, or blank when
 *   that is clear; blank lines are passed over, and so is a first line of
 *   titles, unless it names a unit
 * @style: of the reader; decides what a length without a unit is
 * @list: what it is for; section points must run outwards
 * @problem: (out) (transfer full): what is wrong, with the line
 *
 * Returns: (transfer full) (element-type SwPoint): NULL with @problem set
 */
GArray *sw_points_from_text (const char *text, SwNumberStyle style, SwPointList list,
                             char **problem);
