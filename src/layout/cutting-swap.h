/* SPDX-License-Identifier: MIT */
#pragma once

#include <glib.h>

/**
 * sw_cutting_by_swaps:
 * @pieces: lengths, each in 1..@capacity
 * @enough: stop when a plan has so few rolls
 * @roll_of: (inout): per piece its roll, 1..@rolls
 * @rolls: rolls of the plan given
 *
 * Moves and swaps pieces between rolls so that full rolls grow fuller and
 * empty ones emptier, under weights that fade out: weight annealing (idea:
 * Loh, Golden and Wasil, 2008, from memory). Without chance: the same pieces
 * always give the same plan.
 *
 * Returns: rolls of the better plan, numbered without a gap.
 */
int sw_cutting_by_swaps (const gint64 *pieces, guint count, gint64 capacity, int enough,
                         int *roll_of, int rolls);
