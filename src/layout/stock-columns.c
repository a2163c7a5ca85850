/* SPDX-License-Identifier: MIT */
#include "stock-columns.h"
#include "cutting-basis.h"
#include "cutting-knapsack.h"
#include <math.h>
#include <string.h>

/* More rows than this and the relaxation takes longer than a drag may. */
#define MOST_ROWS 80
#define MOST_PIVOTS 800
/* Steps of all knapsacks together; about 10 ms. What is proved by then stays. */
#define MOST_STEPS 1000000
/* Prices as whole numbers, for the proof. */
#define PRICE_SCALE 1e6
/* Within these, and with rolls of a kilometre at most, no sum of the proof overflows. */
#define MOST_PIECES 10000
#define MOST_LIMITED 1000
#define MOST_WORTH 10000000

/* Rows: first the piece kinds, then the kinds of stock that are limited. */
typedef struct
{
  const SwStockTask *task;
  guint *limit_row; /* per kind of stock; G_MAXUINT if as many as wanted */
  SwBasis basis;
  double *cost, *dual, *entering;
  int *kind, *patterns; /* per basis row */
  double longest;       /* prices are shares of the longest roll */
  SwKnapsack *sack;
} Model;

static double
cost_of (const Model *model, int kind)
{
  return kind < 0 ? 0.0
                  : (double) sw_stock_price (&model->task->kinds[kind]) / model->longest;
}

static void
number_rows (Model *model)
{
  const SwStockTask *task = model->task;
  guint row = task->n_piece_kinds;

  for (guint k = 0; k < task->n_kinds; k++)
    {
      model->limit_row[k] = task->kinds[k].count > 0 ? row++ : G_MAXUINT;
      model->longest = fmax (model->longest, (double) task->kinds[k].length);
    }
  sw_basis_init (&model->basis, row);
}

/* A kind that may be ordered without end and takes the piece; -1 if there is none. */
static int
endless_kind (const SwStockTask *task, gint64 length)
{
  int best = -1;

  for (guint k = 0; k < task->n_kinds; k++)
    if (task->kinds[k].count == 0 && task->kinds[k].length >= length
        && (best < 0 || task->kinds[k].length > task->kinds[best].length))
      best = (int) k;
  return best;
}

/* Begin with rolls of one kind of piece each, out of what can be had without end. */
static gboolean
start_basis (Model *model)
{
  const SwStockTask *task = model->task;

  for (guint r = 0; r < model->basis.n; r++)
    {
      model->basis.inverse[r * model->basis.n + r] = 1.0;
      model->kind[r] = -1;
    }
  for (guint k = 0; k < task->n_kinds; k++)
    if (model->limit_row[k] != G_MAXUINT)
      model->basis.times[model->limit_row[k]] = task->kinds[k].count;
  for (guint p = 0; p < task->n_piece_kinds; p++)
    {
      const SwPieceKind *piece = &task->piece_kinds[p];
      int kind = endless_kind (task, piece->length), each;

      if (kind < 0)
        return FALSE;
      each = (int) MIN ((gint64) piece->count, task->kinds[kind].length / piece->length);
      model->kind[p] = kind;
      model->cost[p] = cost_of (model, kind);
      model->patterns[p * task->n_piece_kinds + p] = each;
      model->basis.inverse[p * model->basis.n + p] = 1.0 / each;
      model->basis.times[p] = (double) piece->count / each;
    }
  return TRUE;
}

static void
find_prices (Model *model)
{
  for (guint c = 0; c < model->basis.n; c++)
    {
      model->dual[c] = 0.0;
      for (guint r = 0; r < model->basis.n; r++)
        model->dual[c] += model->cost[r] * model->basis.inverse[r * model->basis.n + c];
    }
  for (guint k = 0; k < model->task->n_piece_kinds; k++)
    model->sack->price[k] = (gint64) floor (fmax (model->dual[k], 0.0) * PRICE_SCALE);
}

/* Exact in whole numbers: with z the dearest filling of each kind and u the unlimited kind
 * that holds most for its length, prices are scaled by length of u / z of u. */
static gint64
proved_bound (const SwStockTask *task, const gint64 *price, const gint64 *dearest)
{
  gint64 worth = 0, beyond = 0, length = 0, z = 0;

  for (guint k = 0; k < task->n_kinds; k++)
    if (dearest[k] > MOST_WORTH)
      return 0;
  for (guint k = 0; k < task->n_kinds; k++)
    if (task->kinds[k].count == 0
        && (z == 0
            || (double) dearest[k] * (double) length
                   > (double) z * (double) task->kinds[k].length))
      {
        z = dearest[k];
        length = task->kinds[k].length;
      }
  if (z <= 0)
    return 0;
  /* Chosen by comparing rounded products: held against every kind in whole numbers. */
  for (guint k = 0; k < task->n_kinds; k++)
    if (task->kinds[k].count == 0 && dearest[k] * length > z * task->kinds[k].length)
      return 0;
  for (guint k = 0; k < task->n_piece_kinds; k++)
    worth += task->piece_kinds[k].count * price[k];
  for (guint k = 0; k < task->n_kinds; k++)
    if (task->kinds[k].count > 0)
      beyond += task->kinds[k].count
                * MAX (0, dearest[k] * length - sw_stock_price (&task->kinds[k]) * z);
  worth = worth * length - beyond;
  return worth <= 0 ? 0 : (worth + z - 1) / z;
}

/* The filling that saves most for its cost; FALSE when none does. @dearest: per kind. */
static gboolean
find_entering (Model *model, gint64 *dearest, gboolean *proved, int *kind, int *pattern)
{
  const SwStockTask *task = model->task;
  double best = SW_BASIS_WORTH;

  *proved = TRUE;
  *kind = -1;
  for (guint k = 0; k < task->n_kinds; k++)
    {
      guint row = model->limit_row[k];
      double limit = row != G_MAXUINT ? model->dual[row] : 0.0, saved;

      *proved &= sw_knapsack_fill (model->sack, task->kinds[k].length);
      dearest[k] = model->sack->best_price;
      saved = (double) dearest[k] / PRICE_SCALE + limit - cost_of (model, (int) k);
      if (saved > best)
        {
          best = saved;
          *kind = (int) k;
          memcpy (pattern, model->sack->best, task->n_piece_kinds * sizeof (int));
        }
    }
  return *kind >= 0;
}

/* The limit whose rolls would better stay unopened, -1 if none. */
static int
find_slack (const Model *model)
{
  for (guint r = model->task->n_piece_kinds; r < model->basis.n; r++)
    if (model->dual[r] > SW_BASIS_WORTH)
      return (int) r;
  return -1;
}

static void
set_entering (Model *model, int kind, const int *pattern, int slack_row)
{
  memset (model->entering, 0, model->basis.n * sizeof (double));
  if (slack_row >= 0)
    model->entering[slack_row] = 1.0;
  else
    {
      for (guint k = 0; k < model->task->n_piece_kinds; k++)
        model->entering[k] = pattern[k];
      if (model->limit_row[kind] != G_MAXUINT)
        model->entering[model->limit_row[kind]] = 1.0;
    }
}

/* Bring the entering column into the basis; FALSE when there is no room for it. */
static gboolean
enter (Model *model, int kind, const int *pattern)
{
  guint pieces = model->task->n_piece_kinds;
  guint row = sw_basis_exchange (&model->basis, model->entering);

  if (row == model->basis.n)
    return FALSE;
  model->kind[row] = kind;
  model->cost[row] = cost_of (model, kind);
  if (kind >= 0)
    memcpy (model->patterns + row * pieces, pattern, pieces * sizeof (int));
  else
    memset (model->patterns + row * pieces, 0, pieces * sizeof (int));
  return TRUE;
}

static gboolean
settle (Model *model, gint64 *bound)
{
  g_autofree gint64 *dearest = g_new0 (gint64, model->task->n_kinds);
  g_autofree int *pattern = g_new0 (int, model->task->n_piece_kinds);

  for (int i = 0; i < MOST_PIVOTS && model->sack->spent < MOST_STEPS; i++)
    {
      int kind, slack_row = -1;
      gboolean proved, any;

      find_prices (model);
      any = find_entering (model, dearest, &proved, &kind, pattern);
      if (proved)
        *bound = MAX (*bound, proved_bound (model->task, model->sack->price, dearest));
      if (!any && (slack_row = find_slack (model)) < 0)
        return TRUE;
      set_entering (model, kind, pattern, slack_row);
      if (!enter (model, slack_row >= 0 ? -1 : kind, pattern))
        return FALSE;
    }
  return FALSE;
}

static gboolean
fits_model (const SwStockTask *task)
{
  guint rows = task->n_piece_kinds;

  for (guint k = 0; k < task->n_kinds; k++)
    {
      rows += task->kinds[k].count > 0;
      if (task->kinds[k].count > MOST_LIMITED)
        return FALSE;
    }
  return task->count > 0 && task->count <= MOST_PIECES && rows <= MOST_ROWS;
}

static void
take_times (SwStockColumns *columns, Model *model)
{
  columns->n = model->basis.n;
  columns->times = g_new (SwStockTimes, model->basis.n);
  for (guint r = 0; r < model->basis.n; r++)
    columns->times[r] = (SwStockTimes){ model->kind[r], model->basis.times[r] };
  columns->patterns = g_steal_pointer (&model->patterns);
}

SwStockColumns *
sw_stock_columns_new (const SwStockTask *task)
{
  SwStockColumns *columns = NULL;
  Model model = { .task = task };

  if (!fits_model (task))
    return NULL;
  model.limit_row = g_new (guint, task->n_kinds);
  number_rows (&model);
  model.cost = g_new0 (double, model.basis.n);
  model.dual = g_new0 (double, model.basis.n);
  model.entering = g_new0 (double, model.basis.n);
  model.kind = g_new0 (int, model.basis.n);
  model.patterns = g_new0 (int, (gsize) model.basis.n * task->n_piece_kinds);
  model.sack = sw_knapsack_new (task->piece_kinds, task->n_piece_kinds);
  if (start_basis (&model))
    {
      columns = g_new0 (SwStockColumns, 1);
      settle (&model, &columns->bound);
      take_times (columns, &model);
    }
  g_free (model.limit_row);
  sw_basis_clear (&model.basis);
  g_free (model.cost);
  g_free (model.dual);
  g_free (model.entering);
  g_free (model.kind);
  g_free (model.patterns);
  sw_knapsack_free (model.sack);
  return columns;
}

void
sw_stock_columns_free (SwStockColumns *columns)
{
  if (columns == NULL)
    return;
  g_free (columns->times);
  g_free (columns->patterns);
  g_free (columns);
}
