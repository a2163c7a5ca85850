/* SPDX-License-Identifier: MIT */
#include "stock-bound.h"
#include "stock-columns.h"

/* Steps that all searches of one plan may spend, and one of them; about 20 and 5 ms of
 * work. Counts, not a clock, so that the same pieces always give the same plan. */
#define SEARCH_BUDGET 800000
#define ONE_SEARCH 200000

/* With more pieces than this, fewer ways of planning are tried. */
#define MOST_TRIED_ALL_WAYS 120

/* Best plan so far and what is proved of all plans. */
typedef struct
{
  const SwStockTask *task;
  SwStockPlan *best;
  gint64 bound;
} Effort;

static gboolean
is_least (const Effort *effort)
{
  return effort->best != NULL && sw_stock_plan_ordered (effort->best) <= effort->bound;
}

/* Takes @plan. Returns: whether it is the best now. */
static gboolean
offer (Effort *effort, SwStockPlan *plan, gboolean complete)
{
  gboolean better;

  if (complete)
    sw_stock_plan_tidy (plan);
  better =
      complete && (effort->best == NULL || sw_stock_plan_better (plan, effort->best));
  if (better)
    {
      sw_stock_plan_free (effort->best);
      effort->best = plan;
    }
  else
    sw_stock_plan_free (plan);
  return better;
}

/* Returns: whether one of them is the best now. */
static gboolean
try_fits (Effort *effort, const SwStockPlan *begun, guint open)
{
  gboolean better = FALSE;

  for (int way = 0; way < 4; way++)
    {
      SwStockPlan *plan = sw_stock_plan_copy (begun);
      gboolean done = sw_stock_plan_fit (plan, open, way & 1, way & 2);

      better |= offer (effort, plan, done);
    }
  return better;
}

static void
try_fit_filled (Effort *effort, const SwStockPlan *begun, guint open, gboolean longest)
{
  SwStockPlan *plan = sw_stock_plan_copy (begun);
  gboolean done = sw_stock_plan_fit_filled (plan, open, longest);

  offer (effort, plan, done);
}

/* Every kind in turn as the one that is ordered. Of many pieces only the kind that fits
 * best is planned with more care, and only once: a drag would not wait for more. */
static void
try_kinds (Effort *effort, const SwStockPlan *begun)
{
  const SwStockTask *task = effort->task;
  guint favoured = 0;

  for (guint k = 0; k < task->n_kinds; k++)
    if (!task->kinds[k].on_hand && try_fits (effort, begun, k))
      favoured = k;
  if (task->count > MOST_TRIED_ALL_WAYS)
    {
      if (!is_least (effort))
        try_fit_filled (effort, begun, favoured, TRUE);
      return;
    }
  for (guint k = 0; k < task->n_kinds; k++)
    for (int longest = 0; longest < 2 && !task->kinds[k].on_hand; longest++)
      if (!is_least (effort))
        try_fit_filled (effort, begun, k, longest);
}

/* One roll after the plan of the relaxation, as far as pieces and rolls are left. */
static gboolean
fill_after (SwStockPlan *plan, const SwStockColumns *columns, guint row)
{
  const SwStockTask *task = plan->task;
  g_autofree SwPieceKind *left = sw_stock_plan_uncut (plan);
  g_autofree int *filling = g_new (int, task->n_piece_kinds);
  guint kind = (guint) columns->times[row].kind, any = 0;

  for (guint k = 0; k < task->n_piece_kinds; k++)
    {
      filling[k] = MIN (left[k].count, columns->patterns[row * task->n_piece_kinds + k]);
      any += (guint) filling[k];
    }
  if (any == 0 || !sw_stock_plan_has (plan, kind))
    return FALSE;
  sw_stock_plan_fill (plan, kind, filling);
  return TRUE;
}

/* What the relaxation cuts whole times, then the rest as it fits. */
static void
try_columns (Effort *effort, const SwStockColumns *columns)
{
  g_autoptr (SwStockPlan) begun = sw_stock_plan_new (effort->task);

  for (guint r = 0; r < columns->n; r++)
    for (int t = (int) (columns->times[r].times + 1e-9);
         columns->times[r].kind >= 0 && t > 0 && fill_after (begun, columns, r);)
      t--;
  try_kinds (effort, begun);
}

/* What is ordered, together with all that is on hand. */
static SwRollKind *
rolls_with (const SwStockTask *task, const SwStockBasket *basket)
{
  SwRollKind *rolls = g_new (SwRollKind, task->n_kinds);

  for (guint k = 0; k < task->n_kinds; k++)
    {
      const SwStockKind *kind = &task->kinds[k];
      int on_hand = kind->on_hand ? MIN (kind->count, (int) task->count) : 0;

      rolls[k] = (SwRollKind){ kind->length, task->most[k], basket->counts[k] + on_hand };
    }
  return rolls;
}

/* Do the rolls of the basket and those on hand hold the pieces? */
static SwSearchEnd
search_basket (Effort *effort, const SwStockBasket *basket, gint64 *budget)
{
  const SwStockTask *task = effort->task;
  g_autofree SwRollKind *rolls = rolls_with (task, basket);
  g_autoptr (SwFillings) found = sw_fillings_new ();
  gint64 steps = MIN (*budget, ONE_SEARCH);
  SwSearchEnd end;

  *budget -= steps;
  end = sw_cutting_search (task->piece_kinds, task->n_piece_kinds, rolls, task->n_kinds,
                           &steps, found);
  *budget += MAX (steps, 0);
  if (end == SW_SEARCH_FOUND)
    offer (effort, sw_stock_plan_of (task, found), TRUE);
  return end;
}

/* Every set of rolls shorter than the plan's, shortest first; as long as all before are
 * proved too few, the next is a bound. */
static void
search_between (Effort *effort)
{
  gint64 budget = SEARCH_BUDGET, most = sw_stock_plan_ordered (effort->best);
  int most_rolls = sw_stock_plan_ordered_rolls (effort->best);
  g_autoptr (GPtrArray) baskets =
      sw_stock_baskets_new (effort->task, effort->bound, most);
  gboolean proved = TRUE;

  for (guint i = 0; baskets != NULL && i < baskets->len && budget > 0; i++)
    {
      const SwStockBasket *basket = baskets->pdata[i];
      SwSearchEnd end;

      if (proved)
        effort->bound = MAX (effort->bound, basket->length);
      if (basket->length == most && basket->rolls >= most_rolls)
        return;
      end = search_basket (effort, basket, &budget);
      if (end == SW_SEARCH_FOUND)
        return;
      proved = proved && end == SW_SEARCH_IMPOSSIBLE;
    }
}

static void
plan_cutting (Effort *effort)
{
  g_autoptr (SwStockPlan) empty = sw_stock_plan_new (effort->task);
  g_autoptr (SwStockColumns) columns = NULL;

  effort->bound = sw_stock_bound_by_length (effort->task);
  try_kinds (effort, empty);
  if (effort->best == NULL)
    return;
  if (!is_least (effort))
    columns = sw_stock_columns_new (effort->task);
  if (columns != NULL)
    {
      effort->bound = MAX (effort->bound, columns->bound);
      try_columns (effort, columns);
    }
  /* Also among plans of the least length, for fewer rolls. */
  search_between (effort);
}

static SwStockCutting *
take_plan (const SwStockPlan *plan, gint64 bound)
{
  SwStockCutting *cutting = g_new0 (SwStockCutting, 1);
  const SwStockTask *task = plan->task;

  cutting->rolls = (int) plan->rolls->len;
  cutting->kind_of = g_new (guint, MAX (cutting->rolls, 1));
  cutting->roll_of = g_new (int, MAX (task->count, 1));
  cutting->ordered = sw_stock_plan_ordered (plan);
  cutting->ordered_rolls = sw_stock_plan_ordered_rolls (plan);
  cutting->bound = bound;
  for (int r = 0; r < cutting->rolls; r++)
    cutting->kind_of[r] = g_array_index (plan->rolls, SwStockRoll, r).kind;
  for (guint i = 0; i < task->count; i++)
    cutting->roll_of[task->index[i]] = plan->roll_of[i] + 1;
  return cutting;
}

static gint64
longest_endless (const SwStockKind *kinds, guint n_kinds)
{
  gint64 longest = 0;

  for (guint k = 0; k < n_kinds; k++)
    if (!kinds[k].on_hand && kinds[k].count == 0)
      longest = MAX (longest, kinds[k].length);
  return longest;
}

SwStockCutting *
sw_stock_cutting_new (const gint64 *pieces, guint count, const SwStockKind *kinds,
                      guint n_kinds)
{
  gint64 longest = longest_endless (kinds, n_kinds);
  g_autoptr (SwStockTask) task = NULL;
  Effort effort = { 0 };
  SwStockCutting *cutting = NULL;

  for (guint i = 0; i < count; i++)
    if (pieces[i] < 1 || pieces[i] > longest)
      return NULL;
  task = sw_stock_task_new (pieces, count, kinds, n_kinds);
  effort.task = task;
  if (count > 0)
    plan_cutting (&effort);
  else
    effort.best = sw_stock_plan_new (task);
  if (effort.best != NULL)
    cutting = take_plan (effort.best, effort.bound);
  sw_stock_plan_free (effort.best);
  return cutting;
}

gint64
sw_stock_first_fit (const gint64 *pieces, guint count, const SwStockKind *kinds,
                    guint n_kinds, guint open)
{
  g_autoptr (SwStockTask) task = sw_stock_task_new (pieces, count, kinds, n_kinds);
  g_autoptr (SwStockPlan) plan = sw_stock_plan_new (task);

  return sw_stock_plan_fit (plan, open, FALSE, FALSE) ? sw_stock_plan_ordered (plan) : -1;
}

void
sw_stock_cutting_free (SwStockCutting *cutting)
{
  if (cutting == NULL)
    return;
  g_free (cutting->kind_of);
  g_free (cutting->roll_of);
  g_free (cutting);
}
