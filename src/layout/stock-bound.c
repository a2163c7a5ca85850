/* SPDX-License-Identifier: MIT */
#include "stock-bound.h"

/* Sets of rolls looked at before the sum is left unrounded, or the search left out. */
#define MOST_SUMS 100000
#define MOST_BASKETS 2000

/* Depth first over the kinds that can be ordered. */
typedef struct
{
  const SwStockTask *task;
  gint64 shortest; /* kinds shorter than this are left out */
  gint64 need;
  gint64 best;
  int budget;
} Sums;

static gboolean
can_order (const SwStockTask *task, guint kind, gint64 shortest)
{
  return !task->kinds[kind].on_hand && task->kinds[kind].length >= shortest;
}

/* Most rolls of a kind that could be of use for what is needed. */
static gint64
most_rolls (const SwStockTask *task, guint kind, gint64 need)
{
  const SwStockKind *stock = &task->kinds[kind];
  gint64 wanted = sw_whole_rolls (need, MAX (task->most[kind], 1));

  return stock->count > 0 ? MIN (wanted, (gint64) stock->count) : wanted;
}

static void
add_kinds (Sums *sums, guint kind, gint64 length, gint64 held)
{
  const SwStockTask *task = sums->task;

  if (held >= sums->need)
    {
      sums->best = MIN (sums->best, length);
      return;
    }
  if (kind == task->n_kinds || length >= sums->best || --sums->budget < 0)
    return;
  if (!can_order (task, kind, sums->shortest))
    {
      add_kinds (sums, kind + 1, length, held);
      return;
    }
  for (gint64 n = most_rolls (task, kind, sums->need - held); n >= 0; n--)
    add_kinds (sums, kind + 1, length + n * task->kinds[kind].length,
               held + n * task->most[kind]);
}

/* Least length of whole rolls, each at least @shortest long, that holds @need. */
static gint64
least_length (const SwStockTask *task, gint64 shortest, gint64 need)
{
  Sums sums = { task, shortest, need, G_MAXINT64, MOST_SUMS };

  add_kinds (&sums, 0, 0, 0);
  return sums.budget < 0 || sums.best == G_MAXINT64 ? need : sums.best;
}

static gint64
held_on_hand (const SwStockTask *task, gint64 shortest)
{
  gint64 held = 0;

  for (guint k = 0; k < task->n_kinds; k++)
    if (task->kinds[k].on_hand && task->kinds[k].length >= shortest)
      held += task->kinds[k].count * task->most[k];
  return held;
}

static guint
count_to_order (const SwStockTask *task, gint64 shortest)
{
  guint count = 0;

  for (guint k = 0; k < task->n_kinds; k++)
    count += can_order (task, k, shortest);
  return count;
}

/* Needs that the same kinds can serve are rounded up together: by the largest of them. */
gint64
sw_stock_bound_by_length (const SwStockTask *task)
{
  gint64 sum = 0, bound = 0, need = 0;

  for (guint k = 0; k < task->n_piece_kinds; k++)
    {
      gint64 length = task->piece_kinds[k].length;
      gboolean last = k + 1 == task->n_piece_kinds;

      sum += task->piece_kinds[k].count * length;
      need = MAX (need, sum - held_on_hand (task, length));
      if (last
          || count_to_order (task, length)
                 != count_to_order (task, task->piece_kinds[k + 1].length))
        bound = MAX (bound, least_length (task, length, need));
    }
  return bound;
}

typedef struct
{
  const SwStockTask *task;
  gint64 least, most;
  int *counts;
  GPtrArray *baskets;
  int budget;
} Baskets;

static void
basket_free (gpointer data)
{
  SwStockBasket *basket = data;

  g_free (basket->counts);
  g_free (basket);
}

static void
add_basket (Baskets *baskets, gint64 length)
{
  SwStockBasket *basket = g_new0 (SwStockBasket, 1);

  basket->length = length;
  basket->counts = g_memdup2 (baskets->counts, baskets->task->n_kinds * sizeof (int));
  for (guint k = 0; k < baskets->task->n_kinds; k++)
    basket->rolls += basket->counts[k];
  g_ptr_array_add (baskets->baskets, basket);
}

static void
collect (Baskets *baskets, guint kind, gint64 length)
{
  const SwStockTask *task = baskets->task;
  gint64 most;

  if (--baskets->budget < 0)
    return;
  if (kind == task->n_kinds)
    {
      if (length >= baskets->least)
        add_basket (baskets, length);
      return;
    }
  most = (baskets->most - length) / task->kinds[kind].length;
  if (task->kinds[kind].count > 0)
    most = MIN (most, (gint64) task->kinds[kind].count);
  if (!can_order (task, kind, task->lengths[task->count - 1]))
    most = 0;
  for (gint64 n = 0; n <= most; n++)
    {
      baskets->counts[kind] = (int) n;
      collect (baskets, kind + 1, length + n * task->kinds[kind].length);
    }
  baskets->counts[kind] = 0;
}

static int
compare_baskets (gconstpointer a, gconstpointer b)
{
  const SwStockBasket *x = *(SwStockBasket *const *) a, *y = *(SwStockBasket *const *) b;

  if (x->length != y->length)
    return x->length < y->length ? -1 : 1;
  return x->rolls - y->rolls;
}

GPtrArray *
sw_stock_baskets_new (const SwStockTask *task, gint64 least, gint64 most)
{
  g_autofree int *counts = g_new0 (int, task->n_kinds);
  Baskets baskets = { task, least, most, counts, NULL, MOST_SUMS };

  baskets.baskets = g_ptr_array_new_with_free_func (basket_free);
  if (least <= most)
    collect (&baskets, 0, 0);
  if (baskets.budget < 0 || baskets.baskets->len > MOST_BASKETS)
    {
      g_ptr_array_unref (baskets.baskets);
      return NULL;
    }
  g_ptr_array_sort (baskets.baskets, compare_baskets);
  return baskets.baskets;
}
