/* SPDX-License-Identifier: MIT */
#pragma once

#include "dice.h"
#include "sheet.h"

/* Slopes of the class handout: invented by the seed, laid out like any job. */

/** Slopes asked about, and the one of the worked example: of different gradients, widths
 * and soils, some loose and some firm. */
#define SW_SLOPES 4
#define SW_SLOPE_EXAMPLE SW_SLOPES

/** Dice by the plan's seed. @stream: below 1000; each has throws of its own. */
SwDice sw_class_dice (const SwSheet *sheet, guint stream);

/**
 * sw_class_slope:
 * @sheet: whose practice, roll and blanket hold
 * @number: 0 .. SW_SLOPES - 1, or SW_SLOPE_EXAMPLE
 *
 * All lengths of the practice and of the roll are taken as they are read: in whole
 * centimetres or whole inches, so that who works with the printed numbers finds what the
 * program finds. Seed and haulage are given, too.
 *
 * Returns: (transfer full): a plane face of round rise, gradient and width, not far from
 *   the job's own, laid out; of runs that one roll holds, without a joint, and of counts
 *   that no rounding changes. NULL where the practice lays none such.
 */
SwResult *sw_class_slope (const SwSheet *sheet, guint number);

/**
 * sw_class_own_slope:
 *
 * Returns: (transfer full): the job's own face in the same way, where it is one plain
 *   rectangle and its numbers as read lead to the runs and rolls of the pack. Else NULL.
 */
SwResult *sw_class_own_slope (const SwSheet *sheet);
