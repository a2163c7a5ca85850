/* SPDX-License-Identifier: MIT */
#pragma once

#include "stock-plan.h"

/** One filling of the relaxation and how often it is cut. */
typedef struct
{
  int kind; /* of the stock; -1: rolls of a kind that are not opened */
  double times;
} SwStockTimes;

/** The linear relaxation: rolls may be split, but no more of a kind used than there are. */
typedef struct
{
  guint n; /* fillings: one a row of the model */
  SwStockTimes *times;
  int *patterns; /* n rows of n_piece_kinds counts */
  gint64 bound;  /* length that every plan orders at least; proved in whole numbers */
} SwStockColumns;

/**
 * sw_stock_columns_new:
 *
 * Column generation as for rolls of one length, with a row for every kind that is
 * limited. Any prices of pieces give a bound: what all pieces are worth, less what the
 * limited kinds can hold beyond their price, when no filling of an unlimited kind is
 * worth more than that kind's length.
 *
 * Returns: (transfer full) (nullable): NULL if there are too many kinds or it does not
 *   settle.
 */
SwStockColumns *sw_stock_columns_new (const SwStockTask *task);
void sw_stock_columns_free (SwStockColumns *columns);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (SwStockColumns, sw_stock_columns_free)
