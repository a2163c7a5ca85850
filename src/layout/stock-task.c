/* SPDX-License-Identifier: MIT */
#include "cutting-knapsack.h"
#include "stock-plan.h"

static void
sort_pieces (SwStockTask *task, const gint64 *pieces)
{
  g_autofree SwSortedPiece *sorted = sw_pieces_longest_first (pieces, task->count);

  for (guint i = 0; i < task->count; i++)
    {
      task->lengths[i] = sorted[i].length;
      task->index[i] = sorted[i].index;
    }
  task->n_piece_kinds = sw_piece_kinds (sorted, task->count, task->piece_kinds);
  for (guint k = 1; k < task->n_piece_kinds; k++)
    task->first[k] = task->first[k - 1] + (guint) task->piece_kinds[k - 1].count;
}

/* What no filling reaches is waste in every plan. */
static void
measure_kinds (SwStockTask *task)
{
  g_autoptr (SwKnapsack) sack = sw_knapsack_new (task->piece_kinds, task->n_piece_kinds);

  for (guint k = 0; k < task->n_piece_kinds; k++)
    sack->price[k] = task->piece_kinds[k].length;
  for (guint k = 0; k < task->n_kinds; k++)
    task->most[k] = sw_knapsack_fill (sack, task->kinds[k].length)
                        ? sack->best_price
                        : task->kinds[k].length;
}

SwStockTask *
sw_stock_task_new (const gint64 *pieces, guint count, const SwStockKind *kinds,
                   guint n_kinds)
{
  SwStockTask *task = g_new0 (SwStockTask, 1);

  task->count = count;
  task->kinds = kinds;
  task->n_kinds = n_kinds;
  task->lengths = g_new0 (gint64, count);
  task->index = g_new0 (guint, count);
  task->piece_kinds = g_new0 (SwPieceKind, count);
  task->first = g_new0 (guint, count);
  task->most = g_new0 (gint64, n_kinds);
  sort_pieces (task, pieces);
  measure_kinds (task);
  return task;
}

void
sw_stock_task_free (SwStockTask *task)
{
  if (task == NULL)
    return;
  g_free (task->lengths);
  g_free (task->index);
  g_free (task->piece_kinds);
  g_free (task->first);
  g_free (task->most);
  g_free (task);
}
