/* SPDX-License-Identifier: MIT */
#pragma once

#include "cutting-pieces.h"

/** What pieces are worth, and room for finding the dearest filling of a roll. */
typedef struct
{
  const SwPieceKind *kinds; /* borrowed */
  guint n_kinds;
  gint64 *price; /* per kind, >= 0, whole numbers so that a maximum is exact */
  int *best;     /* per kind: the dearest filling found */
  gint64 best_price;
  gint64 spent; /* steps of all searches so far */
  guint *order; /* private */
  int *row, steps;
} SwKnapsack;

/** @kinds is borrowed; prices begin at 0. */
SwKnapsack *sw_knapsack_new (const SwPieceKind *kinds, guint n_kinds);
void sw_knapsack_free (SwKnapsack *sack);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (SwKnapsack, sw_knapsack_free)

/**
 * sw_knapsack_fill:
 * @sack: with prices; best and best_price are replaced
 * @capacity: length of the roll, >= 0
 *
 * Depth first by price per length; each kind at most as often as it is asked for.
 *
 * Returns: whether best_price is proved to be the most that a roll can hold;
 *   FALSE when the search was too long.
 */
gboolean sw_knapsack_fill (SwKnapsack *sack, gint64 capacity);
