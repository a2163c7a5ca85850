/* SPDX-License-Identifier: MIT */
#pragma once

#include "cutting-search.h"
#include <slopewright/layout/stock-cutting.h>

/** Length to be ordered for a roll of the kind: none when it is on hand. */
static inline gint64
sw_stock_price (const SwStockKind *kind)
{
  return kind->on_hand ? 0 : kind->length;
}

/** What is to be cut, and what from. */
typedef struct
{
  gint64 *lengths; /* of the pieces, longest first */
  guint *index;    /* per piece: where it stood in the order given */
  guint count;
  SwPieceKind *piece_kinds;
  guint n_piece_kinds;
  guint *first; /* per piece kind: its first piece */
  const SwStockKind *kinds;
  guint n_kinds;
  gint64 *most; /* per kind: the most that pieces can fill of one of its rolls */
} SwStockTask;

SwStockTask *sw_stock_task_new (const gint64 *pieces, guint count,
                                const SwStockKind *kinds, guint n_kinds);
void sw_stock_task_free (SwStockTask *task);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (SwStockTask, sw_stock_task_free)

/** A roll of a plan. */
typedef struct
{
  guint kind;
  gint64 left;
} SwStockRoll;

/** A plan while it is being made. */
typedef struct
{
  const SwStockTask *task;
  GArray *rolls; /* (element-type SwStockRoll) */
  int *roll_of;  /* per piece, longest first: index into rolls; -1 is not cut yet */
  int *opened;   /* per kind */
} SwStockPlan;

SwStockPlan *sw_stock_plan_new (const SwStockTask *task);

/** Returns: (transfer full): the plan that opens just these rolls. */
SwStockPlan *sw_stock_plan_of (const SwStockTask *task, const SwFillings *fillings);
SwStockPlan *sw_stock_plan_copy (const SwStockPlan *plan);
void sw_stock_plan_free (SwStockPlan *plan);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (SwStockPlan, sw_stock_plan_free)

gint64 sw_stock_plan_ordered (const SwStockPlan *plan);
int sw_stock_plan_ordered_rolls (const SwStockPlan *plan);

/** Whether @a is better than @b: less length ordered, fewer rolls ordered, fewer opened. */
gboolean sw_stock_plan_better (const SwStockPlan *a, const SwStockPlan *b);

/** Whether another roll of the kind can be opened. */
gboolean sw_stock_plan_has (const SwStockPlan *plan, guint kind);

/** Open a roll. Returns: its index. */
int sw_stock_plan_open (SwStockPlan *plan, guint kind);

/** Returns: (transfer full): the piece kinds, counting only pieces that no roll serves yet. */
SwPieceKind *sw_stock_plan_uncut (const SwStockPlan *plan);

/** Cut the pieces of a filling, @row counts by piece kind, out of a fresh roll of @kind. */
void sw_stock_plan_fill (SwStockPlan *plan, guint kind, const int *row);

/**
 * sw_stock_plan_fit:
 * @open: the kind to order when nothing open or on hand has room
 * @fullest: into the fullest roll with room instead of the first
 * @longest: open longer rolls on hand first
 *
 * Puts what is not cut yet into rolls, longest pieces first.
 *
 * Returns: FALSE when a piece fits nowhere.
 */
gboolean sw_stock_plan_fit (SwStockPlan *plan, guint open, gboolean fullest,
                            gboolean longest);

/**
 * sw_stock_plan_fit_filled:
 *
 * As sw_stock_plan_fit(), but each roll on hand is filled as far as pieces allow, and
 * the rest is planned as for rolls of one length.
 */
gboolean sw_stock_plan_fit_filled (SwStockPlan *plan, guint open, gboolean longest);

/** Exchange ordered rolls for cheaper ones that hold as much; close rolls whose pieces
 * find room in others. */
void sw_stock_plan_tidy (SwStockPlan *plan);
