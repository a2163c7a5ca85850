/* SPDX-License-Identifier: MIT */
#include "cutting-gap.h"
#include "cutting-columns.h"
#include "cutting-search.h"
#include "cutting-swap.h"
#include <string.h>

/* Steps that the searches of an order may spend, each number of rolls its share; some 20 ms
 * of work. A count, not a clock, so that the same pieces always give the same plan. */
#define SEARCH_BUDGET 400000

/* Every pair of rolls is looked at, so beyond this many the swaps would take longer than a
 * drag may. */
#define MOST_SWAPPED_ROLLS 600

/* A plan by fillings is a table of rolls by kinds; beyond this it would not be worth its room. */
#define MOST_CELLS 4000000

/* How many rolls of each filling of the relaxation are given back to the search, at most. */
#define MOST_GIVEN_BACK 2

typedef struct
{
  SwPieceKind *kinds; /* longest first */
  guint n_kinds;
  guint *kind_of; /* per piece */
  gint64 capacity;
} Order;

static void
group_kinds (Order *order, const gint64 *pieces, guint count)
{
  g_autofree SwSortedPiece *sorted = sw_pieces_longest_first (pieces, count);
  guint kind = 0;

  order->kinds = g_new (SwPieceKind, count);
  order->n_kinds = sw_piece_kinds (sorted, count, order->kinds);
  order->kind_of = g_new (guint, count);
  for (guint i = 0; i < count; i++)
    {
      kind += i > 0 && sorted[i].length != sorted[i - 1].length;
      order->kind_of[sorted[i].index] = kind;
    }
}

/* Give the single pieces of each kind to the rolls of a plan by fillings. */
static void
deal_out (SwCutting *cutting, const Order *order, guint count, const int *patterns,
          int rolls)
{
  g_autofree int *left =
      g_memdup2 (patterns, sizeof (int) * (gsize) rolls * order->n_kinds);

  g_autofree int *next_roll = g_new0 (int, order->n_kinds);

  for (guint i = 0; i < count; i++)
    {
      guint kind = order->kind_of[i];
      int roll = next_roll[kind];

      while (left[(gsize) roll * order->n_kinds + kind] == 0)
        roll++;
      next_roll[kind] = roll;
      left[(gsize) roll * order->n_kinds + kind]--;
      cutting->roll_of[i] = roll + 1;
    }
  cutting->rolls = rolls;
}

/* Cut whole times what the relaxation says, @given_back less of each; what is left of the
 * demand goes to @rest. Returns the rolls used, or -1 when there are none to spare. */
static int
take_whole_times (const Order *order, const SwColumns *columns, int given_back, int rolls,
                  SwPieceKind *rest, int *patterns)
{
  guint n = order->n_kinds;
  int used = 0;

  memcpy (rest, order->kinds, n * sizeof *rest);
  for (guint c = 0; c < n; c++)
    for (int t = (int) (columns->times[c] + 1e-9) - given_back; t > 0; t--)
      {
        const int *filling = columns->patterns + (gsize) c * n;

        if (used == rolls)
          return -1;
        for (guint k = 0; k < n; k++)
          {
            int taken = MIN (filling[k], rest[k].count);

            patterns[(gsize) used * n + k] = taken;
            rest[k].count -= taken;
          }
        used++;
      }
  return used;
}

/* Writes the plan to @patterns when one is found; rolls that it spares come out empty. */
static SwSearchEnd
search (const Order *order, const SwPieceKind *kinds, int rolls, gint64 budget,
        int *patterns)
{
  guint n = order->n_kinds;
  SwRollKind roll = { order->capacity, order->capacity, rolls };
  g_autoptr (SwFillings) found = sw_fillings_new ();
  SwSearchEnd end = sw_cutting_search (kinds, n, &roll, 1, &budget, found);

  if (end != SW_SEARCH_FOUND)
    return end;
  memset (patterns, 0, (gsize) rolls * n * sizeof (int));
  for (guint r = found->rolls->len; r > 0; r--, patterns += n)
    memcpy (patterns, &g_array_index (found->counts, int, (r - 1) * n), n * sizeof (int));
  return end;
}

static gboolean
search_from_columns (const Order *order, const SwColumns *columns, int rolls,
                     int *patterns)
{
  g_autofree SwPieceKind *rest = g_new (SwPieceKind, order->n_kinds);

  for (int given_back = 0; columns != NULL && given_back <= MOST_GIVEN_BACK; given_back++)
    {
      int used = take_whole_times (order, columns, given_back, rolls, rest, patterns);

      if (used >= 0
          && search (order, rest, rolls - used, SEARCH_BUDGET,
                     patterns + (gsize) used * order->n_kinds)
                 == SW_SEARCH_FOUND)
        return TRUE;
    }
  return FALSE;
}

static void
search_between (SwCutting *cutting, const Order *order, guint count)
{
  g_autoptr (SwColumns) columns =
      sw_columns_new (order->kinds, order->n_kinds, order->capacity);
  g_autofree int *patterns = g_new0 (int, (gsize) cutting->rolls * order->n_kinds);
  gint64 share;

  if (columns != NULL)
    cutting->bound = MAX (cutting->bound, columns->bound);
  share = SEARCH_BUDGET / MAX (1, cutting->rolls - cutting->bound);
  for (int rolls = cutting->bound; rolls < cutting->rolls; rolls++)
    {
      SwSearchEnd end = SW_SEARCH_FOUND;

      if (!search_from_columns (order, columns, rolls, patterns))
        end = search (order, order->kinds, rolls, share, patterns);
      if (end == SW_SEARCH_FOUND)
        deal_out (cutting, order, count, patterns, rolls);
      else if (end == SW_SEARCH_IMPOSSIBLE && cutting->bound == rolls)
        cutting->bound = rolls + 1;
    }
}

void
sw_cutting_close_gap (SwCutting *cutting, const gint64 *pieces, guint count,
                      gint64 capacity)
{
  Order order = { .capacity = capacity };

  if (cutting->rolls > cutting->bound && cutting->rolls <= MOST_SWAPPED_ROLLS)
    cutting->rolls = sw_cutting_by_swaps (pieces, count, capacity, cutting->bound,
                                          cutting->roll_of, cutting->rolls);
  if (cutting->rolls <= cutting->bound)
    return;
  group_kinds (&order, pieces, count);
  if ((gint64) cutting->rolls * order.n_kinds <= MOST_CELLS)
    search_between (cutting, &order, count);
  g_free (order.kinds);
  g_free (order.kind_of);
}
