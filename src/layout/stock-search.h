/* SPDX-License-Identifier: MIT */
#pragma once

#include "stock-plan.h"

/**
 * sw_stock_search:
 * @rolls: per kind of stock: how many there are to cut from
 * @budget: (inout): how many steps of the search are left
 * @plan: (inout): empty; on FOUND it holds all pieces
 *
 * Depth first: one of the longest pieces left goes into a roll of every length in turn,
 * with every filling to which nothing more could be added. An exhausted search proves
 * that the rolls do not hold the pieces.
 */
SwSearchEnd sw_stock_search (const SwStockTask *task, const int *rolls, gint64 *budget,
                             SwStockPlan *plan);
