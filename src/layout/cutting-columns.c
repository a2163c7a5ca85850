/* SPDX-License-Identifier: MIT */
#include "cutting-columns.h"
#include <math.h>
#include <string.h>

/* More kinds than this and the swaps do as well in less time. */
#define MOST_KINDS 80
#define MOST_PIVOTS 600
#define KNAPSACK_STEPS 200000
/* A filling must be worth so much more than a roll to enter the basis. */
#define WORTH 1e-9
/* Prices as whole numbers, for the proof. */
#define PRICE_SCALE 1e6

/* The dearest filling: bounded by demand, whole-number prices. */
typedef struct
{
  const SwPieceKind *kinds;
  guint n_kinds;
  const gint64 *price;
  guint *order; /* kinds by price per length, dearest first */
  int *row, *best;
  gint64 best_price;
  int steps;
} Knapsack;

static int
compare_rate (gconstpointer a, gconstpointer b, gpointer data)
{
  const Knapsack *sack = data;
  guint x = *(const guint *) a, y = *(const guint *) b;
  double rate_x = (double) sack->price[x] / (double) sack->kinds[x].length;
  double rate_y = (double) sack->price[y] / (double) sack->kinds[y].length;

  if (rate_x > rate_y || rate_x < rate_y)
    return rate_x > rate_y ? -1 : 1;
  return x < y ? -1 : 1;
}

static void
grow (Knapsack *sack, guint at, gint64 room, gint64 price)
{
  guint kind;

  if (price > sack->best_price)
    {
      sack->best_price = price;
      memcpy (sack->best, sack->row, sack->n_kinds * sizeof (int));
    }
  if (at == sack->n_kinds || --sack->steps < 0)
    return;
  kind = sack->order[at];
  /* Room times the best rate left, rounded up, is the most that can be added. */
  if (price + (room * sack->price[kind]) / sack->kinds[kind].length + 1
      <= sack->best_price)
    return;
  for (int n =
           (int) MIN ((gint64) sack->kinds[kind].count, room / sack->kinds[kind].length);
       n >= 0; n--)
    {
      sack->row[kind] = n;
      grow (sack, at + 1, room - n * sack->kinds[kind].length,
            price + n * sack->price[kind]);
    }
  sack->row[kind] = 0;
}

/* Returns whether the search was exhausted, so that best_price is a maximum. */
static gboolean
find_dearest (Knapsack *sack, gint64 capacity)
{
  for (guint k = 0; k < sack->n_kinds; k++)
    sack->order[k] = k;
  g_qsort_with_data (sack->order, (int) sack->n_kinds, sizeof (guint), compare_rate,
                     sack);
  memset (sack->row, 0, sack->n_kinds * sizeof (int));
  sack->best_price = 0;
  sack->steps = KNAPSACK_STEPS;
  grow (sack, 0, capacity, 0);
  return sack->steps >= 0;
}

typedef struct
{
  guint n;
  double *inverse; /* of the basis, row-major n x n */
  double *times;   /* inverse times demand */
  int *patterns;   /* basis, one filling a row */
} Basis;

static void
start_basis (Basis *basis, const SwPieceKind *kinds, gint64 capacity)
{
  for (guint k = 0; k < basis->n; k++)
    {
      int each = (int) MIN ((gint64) kinds[k].count, capacity / kinds[k].length);

      basis->patterns[k * basis->n + k] = each;
      basis->inverse[k * basis->n + k] = 1.0 / each;
      basis->times[k] = (double) kinds[k].count / each;
    }
}

/* Dual price of each kind: column sums of the inverse, since every filling costs one roll. */
static void
prices (const Basis *basis, gint64 *price)
{
  for (guint k = 0; k < basis->n; k++)
    {
      double sum = 0.0;

      for (guint r = 0; r < basis->n; r++)
        sum += basis->inverse[r * basis->n + k];
      price[k] = (gint64) floor (fmax (sum, 0.0) * PRICE_SCALE);
    }
}

/* Bring @row into the basis in place of the filling that runs out first. */
static gboolean
pivot (Basis *basis, const int *row)
{
  guint n = basis->n, leave = n;
  g_autofree double *step = g_new0 (double, n);
  double least = INFINITY;

  for (guint r = 0; r < n; r++)
    {
      for (guint k = 0; k < n; k++)
        step[r] += basis->inverse[r * n + k] * row[k];
      if (step[r] > WORTH && basis->times[r] / step[r] < least)
        {
          least = basis->times[r] / step[r];
          leave = r;
        }
    }
  if (leave == n)
    return FALSE;
  for (guint k = 0; k < n; k++)
    basis->inverse[leave * n + k] /= step[leave];
  for (guint r = 0; r < n; r++)
    if (r != leave)
      {
        for (guint k = 0; k < n; k++)
          basis->inverse[r * n + k] -= step[r] * basis->inverse[leave * n + k];
        basis->times[r] = fmax (0.0, basis->times[r] - step[r] * least);
      }
  basis->times[leave] = least;
  memcpy (basis->patterns + leave * n, row, n * sizeof (int));
  return TRUE;
}

/* No filling is worth more than @dearest, so all pieces together need this many rolls. */
static int
proved_bound (const SwPieceKind *kinds, guint n_kinds, const gint64 *price,
              gint64 dearest)
{
  gint64 worth = 0;

  for (guint k = 0; k < n_kinds; k++)
    worth += kinds[k].count * price[k];
  return dearest > 0 ? (int) ((worth + dearest - 1) / dearest) : 0;
}

static gboolean
settle (Basis *basis, const SwPieceKind *kinds, gint64 capacity, int *bound)
{
  guint n = basis->n;
  g_autofree gint64 *price = g_new (gint64, n);
  g_autofree guint *order = g_new (guint, n);
  g_autofree int *row = g_new (int, n);
  g_autofree int *best = g_new0 (int, n);
  Knapsack sack = { kinds, n, price, order, row, best, 0, 0 };

  for (int i = 0; i < MOST_PIVOTS; i++)
    {
      gboolean exhausted;

      prices (basis, price);
      exhausted = find_dearest (&sack, capacity);
      if (exhausted)
        *bound = MAX (*bound, proved_bound (kinds, n, price, sack.best_price));
      if ((double) sack.best_price <= PRICE_SCALE * (1.0 + WORTH) + n)
        return TRUE;
      if (!pivot (basis, best))
        return FALSE;
    }
  return FALSE;
}

SwColumns *
sw_columns_new (const SwPieceKind *kinds, guint n_kinds, gint64 capacity)
{
  SwColumns *columns;
  Basis basis = { .n = n_kinds };

  if (n_kinds == 0 || n_kinds > MOST_KINDS)
    return NULL;
  columns = g_new0 (SwColumns, 1);
  columns->n_kinds = n_kinds;
  columns->patterns = basis.patterns = g_new0 (int, (gsize) n_kinds *n_kinds);
  columns->times = basis.times = g_new0 (double, n_kinds);
  basis.inverse = g_new0 (double, (gsize) n_kinds *n_kinds);
  start_basis (&basis, kinds, capacity);
  if (!settle (&basis, kinds, capacity, &columns->bound))
    g_clear_pointer (&columns, sw_columns_free);
  g_free (basis.inverse);
  return columns;
}

void
sw_columns_free (SwColumns *columns)
{
  if (columns == NULL)
    return;
  g_free (columns->patterns);
  g_free (columns->times);
  g_free (columns);
}
