/* SPDX-License-Identifier: MIT */
#pragma once

#include "cutting-pieces.h"

/** The linear relaxation of a cutting plan: how often to cut each filling if rolls could be split. */
typedef struct
{
  guint n_kinds;
  int *patterns; /* n_kinds fillings of n_kinds counts: the basis */
  double *times; /* per filling, >= 0 */
  int bound;     /* rolls that no plan can go below; proved in whole numbers, or 0 */
} SwColumns;

/**
 * sw_columns_new:
 * @kinds: pieces to cut, longest kind first; lengths in 1..@capacity
 *
 * Column generation: the simplex method over fillings, each new one found by
 * a knapsack with the dual prices as values. The bound is checked again with
 * the prices rounded to whole numbers, so that no rounding error can raise it.
 *
 * Source: P. Gilmore and R. Gomory, A linear programming approach to the
 * cutting-stock problem, Operations Research 9, 1961.
 *
 * Returns: (transfer full) (nullable): NULL if there are too many kinds for it
 *   or it does not settle.
 */
SwColumns *sw_columns_new (const SwPieceKind *kinds, guint n_kinds, gint64 capacity);
void sw_columns_free (SwColumns *columns);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (SwColumns, sw_columns_free)
