/* SPDX-License-Identifier: MIT */
#pragma once

#include <glib.h>

/*
 * Cutting plan: pieces out of rolls of one length, in whole tenths of a
 * millimetre (sw_ticks) so that nothing is lost to rounding.
 */

typedef struct
{
  int rolls;
  int *roll_of; /* per piece: 1.. */
  gint64 *from; /* per piece: where in its roll it begins */
  int bound;    /* proved lower bound (Martello-Toth L2) */
} SwCutting;

/** Continuous bound: ceil (sum / capacity). */
int sw_cutting_bound_l1 (const gint64 *pieces, guint count, gint64 capacity);

/**
 * sw_cutting_bound_l2:
 *
 * Source: S. Martello and P. Toth, Knapsack Problems, 1990, ch. 8, bound L2.
 */
int sw_cutting_bound_l2 (const gint64 *pieces, guint count, gint64 capacity);

/** Rolls used by first-fit decreasing; the yardstick, never the plan itself. */
int sw_cutting_first_fit (const gint64 *pieces, guint count, gint64 capacity);

/**
 * sw_cutting_new:
 * @pieces: lengths in ticks, each in 1..@capacity
 * @capacity: roll length in ticks
 *
 * The plan is never worse than first-fit decreasing.
 * Returns: (transfer full) (nullable): NULL if a piece is longer than a roll.
 */
SwCutting *sw_cutting_new (const gint64 *pieces, guint count, gint64 capacity);
void sw_cutting_free (SwCutting *cutting);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (SwCutting, sw_cutting_free)
