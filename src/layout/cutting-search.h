/* SPDX-License-Identifier: MIT */
#pragma once

#include "cutting-pieces.h"

typedef enum
{
  SW_SEARCH_FOUND,
  SW_SEARCH_IMPOSSIBLE, /* proved: no plan with so few rolls */
  SW_SEARCH_GAVE_UP     /* the budget ran out first */
} SwSearchEnd;

/**
 * sw_cutting_search:
 * @kinds: pieces to cut, @n_kinds rows; lengths in 1..@capacity
 * @rolls: how many rolls there are
 * @budget: (inout): how many steps of the search are left
 * @patterns: (out): on FOUND, @rolls x @n_kinds counts: what comes out of each roll
 *
 * Depth first over rolls: each takes one of the longest pieces left and a
 * filling to which nothing more could be added. A plan exists at all only if
 * one of such rolls does, so an exhausted search is a proof.
 */
SwSearchEnd sw_cutting_search (const SwPieceKind *kinds, guint n_kinds, gint64 capacity,
                               int rolls, gint64 *budget, int *patterns);
