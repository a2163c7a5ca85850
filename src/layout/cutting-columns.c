/* SPDX-License-Identifier: MIT */
#include "cutting-columns.h"
#include "cutting-knapsack.h"
#include <math.h>
#include <string.h>

/* More kinds than this and the swaps do as well in less time. */
#define MOST_KINDS 80
#define MOST_PIVOTS 600
/* A filling must be worth so much more than a roll to enter the basis. */
#define WORTH 1e-9
/* Prices as whole numbers, for the proof. */
#define PRICE_SCALE 1e6

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
  g_autoptr (SwKnapsack) sack = sw_knapsack_new (kinds, n);

  for (int i = 0; i < MOST_PIVOTS; i++)
    {
      gboolean exhausted;

      prices (basis, sack->price);
      exhausted = sw_knapsack_fill (sack, capacity);
      if (exhausted)
        *bound = MAX (*bound, proved_bound (kinds, n, sack->price, sack->best_price));
      if ((double) sack->best_price <= PRICE_SCALE * (1.0 + WORTH) + n)
        return TRUE;
      if (!pivot (basis, sack->best))
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
