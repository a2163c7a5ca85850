/* SPDX-License-Identifier: MIT */
#pragma once

#include <glib.h>

/** Lengths are compared and counted in whole tenths of a millimetre. */
#define SW_TICKS_PER_M 10000.0

/**
 * sw_ticks:
 * @length_m: metres, |length| < 1e11
 *
 * Returns: @length_m as whole tenths of a millimetre, nearest.
 */
gint64 sw_ticks (double length_m);

/**
 * sw_least_ticks:
 * @least_m: at least 0.0001
 *
 * Returns: what a length has to come to, by sw_reaches_ticks(), to be @least_m or more
 *   once both are whole ticks; worked out once where many lengths are compared with it.
 */
double sw_least_ticks (double least_m);

/** Whether sw_ticks (@length_m) >= sw_ticks (@least_m), @least being sw_least_ticks (@least_m). */
static inline gboolean
sw_reaches_ticks (double length_m, double least)
{
  return length_m * SW_TICKS_PER_M >= least;
}

/**
 * sw_count_up:
 * @length_m: what has to be covered, metres, >= 0
 * @each_m: what one unit covers, metres, >= 0.0001
 *
 * The one rule by which lengths become counts: both are rounded to whole
 * tenths of a millimetre, then divided and rounded up, so that
 * 3.0000000001 rolls is 3 and 3.0001 rolls is 4.
 *
 * Returns: units needed; 0 for nothing to cover.
 */
int sw_count_up (double length_m, double each_m);

/**
 * sw_count_whole:
 * @length_m: what there is, metres, >= 0
 * @each_m: what one unit takes, metres, >= 0.0001
 *
 * Same rule rounded down: how many whole steps fit.
 */
int sw_count_whole (double length_m, double each_m);

/**
 * sw_count_up_ratio:
 * @quantity: a dimensionless quantity (boxes, bags), >= 0
 *
 * Returns: @quantity rounded up, taking anything within 1e-9 of a whole as whole.
 */
int sw_count_up_ratio (double quantity);
