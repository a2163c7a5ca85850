/* SPDX-License-Identifier: MIT */
#include "cutting-knapsack.h"
#include <string.h>

#define KNAPSACK_STEPS 200000

SwKnapsack *
sw_knapsack_new (const SwPieceKind *kinds, guint n_kinds)
{
  SwKnapsack *sack = g_new0 (SwKnapsack, 1);

  sack->kinds = kinds;
  sack->n_kinds = n_kinds;
  sack->price = g_new0 (gint64, n_kinds);
  sack->best = g_new0 (int, MAX (n_kinds, 1));
  sack->order = g_new (guint, n_kinds);
  sack->row = g_new (int, MAX (n_kinds, 1));
  return sack;
}

void
sw_knapsack_free (SwKnapsack *sack)
{
  if (sack == NULL)
    return;
  g_free (sack->price);
  g_free (sack->best);
  g_free (sack->order);
  g_free (sack->row);
  g_free (sack);
}

static int
compare_rate (gconstpointer a, gconstpointer b, gpointer data)
{
  const SwKnapsack *sack = data;
  guint x = *(const guint *) a, y = *(const guint *) b;
  gint64 rate_x = sack->price[x] * sack->kinds[y].length;
  gint64 rate_y = sack->price[y] * sack->kinds[x].length;

  if (rate_x != rate_y)
    return rate_x > rate_y ? -1 : 1;
  return x < y ? -1 : 1;
}

static void
grow (SwKnapsack *sack, guint at, gint64 room, gint64 price)
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
  /* Room times the best rate left is the most that can be added. */
  if (price + (room * sack->price[kind]) / sack->kinds[kind].length <= sack->best_price)
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

gboolean
sw_knapsack_fill (SwKnapsack *sack, gint64 capacity)
{
  for (guint k = 0; k < sack->n_kinds; k++)
    sack->order[k] = k;
  g_qsort_with_data (sack->order, (int) sack->n_kinds, sizeof (guint), compare_rate,
                     sack);
  memset (sack->row, 0, sack->n_kinds * sizeof (int));
  memset (sack->best, 0, sack->n_kinds * sizeof (int));
  sack->best_price = 0;
  sack->steps = KNAPSACK_STEPS;
  grow (sack, 0, capacity, 0);
  sack->spent += KNAPSACK_STEPS - MAX (sack->steps, 0);
  return sack->steps >= 0;
}
