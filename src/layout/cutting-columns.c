/* SPDX-License-Identifier: MIT */
#include "cutting-columns.h"
#include "cutting-basis.h"
#include "cutting-knapsack.h"
#include <math.h>
#include <string.h>

/* More kinds than this and the swaps do as well in less time. */
#define MOST_KINDS 80
#define MOST_PIVOTS 600
/* Prices as whole numbers, for the proof. */
#define PRICE_SCALE 1e6

static void
start_basis (SwBasis *basis, int *patterns, const SwPieceKind *kinds, gint64 capacity)
{
  for (guint k = 0; k < basis->n; k++)
    {
      int each = (int) MIN ((gint64) kinds[k].count, capacity / kinds[k].length);

      patterns[k * basis->n + k] = each;
      basis->inverse[k * basis->n + k] = 1.0 / each;
      basis->times[k] = (double) kinds[k].count / each;
    }
}

/* Dual price of each kind: column sums of the inverse, since every filling costs one roll. */
static void
prices (const SwBasis *basis, gint64 *price)
{
  for (guint k = 0; k < basis->n; k++)
    {
      double sum = 0.0;

      for (guint r = 0; r < basis->n; r++)
        sum += basis->inverse[r * basis->n + k];
      price[k] = (gint64) floor (fmax (sum, 0.0) * PRICE_SCALE);
    }
}

/* Bring @filling into the basis; FALSE when there is no room for it. */
static gboolean
enter (SwBasis *basis, int *patterns, const int *filling)
{
  guint n = basis->n, row;
  g_autofree double *entering = g_new (double, n);

  for (guint k = 0; k < n; k++)
    entering[k] = filling[k];
  row = sw_basis_exchange (basis, entering);
  if (row == n)
    return FALSE;
  memcpy (patterns + row * n, filling, n * sizeof (int));
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
settle (SwBasis *basis, SwColumns *columns, const SwPieceKind *kinds, gint64 capacity)
{
  guint n = basis->n;
  g_autoptr (SwKnapsack) sack = sw_knapsack_new (kinds, n);

  for (int i = 0; i < MOST_PIVOTS; i++)
    {
      gboolean exhausted;

      prices (basis, sack->price);
      exhausted = sw_knapsack_fill (sack, capacity);
      if (exhausted)
        columns->bound =
            MAX (columns->bound, proved_bound (kinds, n, sack->price, sack->best_price));
      if ((double) sack->best_price <= PRICE_SCALE * (1.0 + SW_BASIS_WORTH) + n)
        return TRUE;
      if (!enter (basis, columns->patterns, sack->best))
        return FALSE;
    }
  return FALSE;
}

SwColumns *
sw_columns_new (const SwPieceKind *kinds, guint n_kinds, gint64 capacity)
{
  SwColumns *columns;
  SwBasis basis;

  if (n_kinds == 0 || n_kinds > MOST_KINDS)
    return NULL;
  columns = g_new0 (SwColumns, 1);
  columns->n_kinds = n_kinds;
  columns->patterns = g_new0 (int, (gsize) n_kinds *n_kinds);
  sw_basis_init (&basis, n_kinds);
  start_basis (&basis, columns->patterns, kinds, capacity);
  if (settle (&basis, columns, kinds, capacity))
    columns->times = g_steal_pointer (&basis.times);
  else
    g_clear_pointer (&columns, sw_columns_free);
  sw_basis_clear (&basis);
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
