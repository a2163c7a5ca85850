/* SPDX-License-Identifier: MIT */
#pragma once

#include <glib.h>

/*
 * Cutting plan over rolls of several lengths and off-cuts that lie ready, all of
 * one width, in whole tenths of a millimetre (sw_ticks). Better is, in this order:
 * less length to order, fewer rolls to order, fewer rolls opened altogether.
 */

/** Rolls of one length. */
typedef struct
{
  gint64 length;
  int count;        /* how many there are; 0: as many as wanted */
  gboolean on_hand; /* lies ready: costs no order. Such a kind has a count */
} SwStockKind;

typedef struct
{
  int rolls;         /* opened, each with a piece at least */
  guint *kind_of;    /* per roll: index of its kind */
  int *roll_of;      /* per piece: 1.. */
  gint64 ordered;    /* length of the opened rolls that are not on hand */
  int ordered_rolls; /* how many those are */
  gint64 bound;      /* proved: no plan for these pieces orders less length */
} SwStockCutting;

/**
 * sw_stock_first_fit:
 * @open: the kind that is ordered when nothing open or on hand has room
 *
 * First fit decreasing; shorter rolls on hand before longer ones. The yardstick,
 * never the plan itself.
 *
 * Returns: length to order; -1 when a piece fits nowhere.
 */
gint64 sw_stock_first_fit (const gint64 *pieces, guint count, const SwStockKind *kinds,
                           guint n_kinds, guint open);

/**
 * sw_stock_cutting_new:
 * @pieces: lengths in ticks, each at least 1
 * @kinds: the stock; each length at least 1
 *
 * No kind that may be ordered without end makes first fit decreasing better than
 * the plan. The bound is proved in whole numbers: by length, by the linear
 * relaxation over fillings of every kind, and by exhausted search.
 *
 * Source of the bound by fillings: P. Gilmore and R. Gomory, A linear programming
 * approach to the cutting-stock problem, part II, Operations Research 11, 1963.
 *
 * Returns: (transfer full) (nullable): NULL if a piece is longer than every roll
 *   that may be ordered without end.
 */
SwStockCutting *sw_stock_cutting_new (const gint64 *pieces, guint count,
                                      const SwStockKind *kinds, guint n_kinds);
void sw_stock_cutting_free (SwStockCutting *cutting);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (SwStockCutting, sw_stock_cutting_free)
