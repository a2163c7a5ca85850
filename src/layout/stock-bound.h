/* SPDX-License-Identifier: MIT */
#pragma once

#include "stock-plan.h"

/** Rolls to order together: how many of each kind. */
typedef struct
{
  gint64 length; /* of all */
  int rolls;
  int *counts; /* per kind; 0 for those on hand */
} SwStockBasket;

/**
 * sw_stock_baskets_new:
 * @least, @most: length of the baskets wanted
 *
 * Returns: (transfer full) (nullable) (element-type SwStockBasket): every set of rolls
 *   that can be ordered with that length, shortest first, then fewest rolls; NULL if
 *   there are too many to look at.
 */
GPtrArray *sw_stock_baskets_new (const SwStockTask *task, gint64 least, gint64 most);

/**
 * sw_stock_bound_by_length:
 *
 * For every length of piece: all pieces as long or longer come out of rolls as long or
 * longer. What those on hand cannot hold is ordered, in whole rolls.
 *
 * Returns: length that every plan orders at least.
 */
gint64 sw_stock_bound_by_length (const SwStockTask *task);
