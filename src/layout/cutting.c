/* SPDX-License-Identifier: MIT */
#include "cutting-search.h"
#include "cutting-swap.h"
#include <slopewright/layout/cutting.h>

typedef struct
{
  gint64 length;
  guint index;
} Piece;

static int
compare_longest_first (gconstpointer a, gconstpointer b)
{
  const Piece *x = a, *y = b;

  if (x->length != y->length)
    return x->length < y->length ? 1 : -1;
  return x->index < y->index ? -1 : 1;
}

static Piece *
longest_first (const gint64 *pieces, guint count)
{
  Piece *sorted = g_new (Piece, MAX (count, 1));

  for (guint i = 0; i < count; i++)
    sorted[i] = (Piece){ pieces[i], i };
  qsort (sorted, count, sizeof *sorted, compare_longest_first);
  return sorted;
}

static gint64
divide_up (gint64 a, gint64 b)
{
  return a <= 0 ? 0 : (a + b - 1) / b;
}

int
sw_cutting_bound_l1 (const gint64 *pieces, guint count, gint64 capacity)
{
  gint64 sum = 0;

  for (guint i = 0; i < count; i++)
    sum += pieces[i];
  return (int) divide_up (sum, capacity);
}

/* L(alpha): pieces over c - alpha need a roll each and leave no room for any of the
 * pieces of alpha or more; pieces over c / 2 need a roll each; the rest of those must
 * fit into what these leave. */
static int
bound_at (const gint64 *pieces, guint count, gint64 capacity, gint64 alpha)
{
  gint64 large = 0, medium = 0, medium_sum = 0, small_sum = 0;

  for (guint i = 0; i < count; i++)
    if (pieces[i] > capacity - alpha)
      large++;
    else if (2 * pieces[i] > capacity)
      {
        medium++;
        medium_sum += pieces[i];
      }
    else if (pieces[i] >= alpha)
      small_sum += pieces[i];
  return (int) (large + medium
                + divide_up (small_sum - (medium * capacity - medium_sum), capacity));
}

int
sw_cutting_bound_l2 (const gint64 *pieces, guint count, gint64 capacity)
{
  int best = bound_at (pieces, count, capacity, 0);
  gint64 before = -1;
  g_autofree Piece *sorted = longest_first (pieces, count);

  for (guint i = 0; i < count; i++)
    if (2 * sorted[i].length <= capacity && sorted[i].length != before)
      {
        before = sorted[i].length;
        best = MAX (best, bound_at (pieces, count, capacity, before));
      }
  return best;
}

/* Put pieces, longest first, into the first roll with room, or into the fullest one. */
static int
fill (const Piece *sorted, guint count, gint64 capacity, gboolean fullest, int *roll_of)
{
  g_autofree gint64 *left = g_new (gint64, MAX (count, 1));
  int rolls = 0;

  for (guint i = 0; i < count; i++)
    {
      int chosen = -1;

      for (int r = 0; r < rolls && (chosen < 0 || fullest); r++)
        if (left[r] >= sorted[i].length && (chosen < 0 || left[r] < left[chosen]))
          chosen = r;
      if (chosen < 0)
        {
          chosen = rolls++;
          left[chosen] = capacity;
        }
      left[chosen] -= sorted[i].length;
      roll_of[sorted[i].index] = chosen + 1;
    }
  return rolls;
}

int
sw_cutting_first_fit (const gint64 *pieces, guint count, gint64 capacity)
{
  g_autofree Piece *sorted = longest_first (pieces, count);
  g_autofree int *roll_of = g_new (int, MAX (count, 1));

  return fill (sorted, count, capacity, FALSE, roll_of);
}

static void
place_in_rolls (SwCutting *cutting, const gint64 *pieces, guint count)
{
  g_autofree gint64 *used = g_new0 (gint64, cutting->rolls + 1);

  cutting->from = g_new (gint64, MAX (count, 1));
  for (guint i = 0; i < count; i++)
    {
      cutting->from[i] = used[cutting->roll_of[i]];
      used[cutting->roll_of[i]] += pieces[i];
    }
}

/* Steps that one search may spend; about 10 ms of work. A count, not a clock, so that the
 * same pieces always give the same plan. */
#define SEARCH_BUDGET 400000

static SwPieceKind *
group_kinds (const Piece *sorted, guint count, guint *n_kinds)
{
  SwPieceKind *kinds = g_new0 (SwPieceKind, MAX (count, 1));

  *n_kinds = 0;
  for (guint i = 0; i < count; i++)
    {
      if (*n_kinds == 0 || kinds[*n_kinds - 1].length != sorted[i].length)
        kinds[(*n_kinds)++].length = sorted[i].length;
      kinds[*n_kinds - 1].count++;
    }
  return kinds;
}

/* Give the single pieces of each kind to the rolls of the plan that was found. */
static void
deal_out (SwCutting *cutting, const Piece *sorted, const SwPieceKind *kinds,
          guint n_kinds, const int *patterns, int rolls)
{
  const Piece *next = sorted;

  for (guint k = 0; k < n_kinds; k++)
    for (int r = 0; r < rolls; r++)
      for (int n = patterns[(gsize) r * n_kinds + k]; n > 0; n--)
        cutting->roll_of[next++->index] = r + 1;
  cutting->rolls = rolls;
}

/* Close the gap between bound and plan: fewer rolls while they can be found, a higher
 * bound where fewer are proved impossible. */
static void
search_between (SwCutting *cutting, const Piece *sorted, guint count, gint64 capacity)
{
  guint n_kinds;
  g_autofree SwPieceKind *kinds = group_kinds (sorted, count, &n_kinds);
  g_autofree int *patterns = g_new0 (int, (gsize) cutting->rolls *MAX (n_kinds, 1));

  for (int rolls = cutting->bound; rolls < cutting->rolls; rolls++)
    {
      gint64 budget = SEARCH_BUDGET;
      SwSearchEnd end =
          sw_cutting_search (kinds, n_kinds, capacity, rolls, &budget, patterns);

      if (end == SW_SEARCH_FOUND)
        deal_out (cutting, sorted, kinds, n_kinds, patterns, rolls);
      else if (end == SW_SEARCH_IMPOSSIBLE && cutting->bound == rolls)
        cutting->bound = rolls + 1;
    }
}

SwCutting *
sw_cutting_new (const gint64 *pieces, guint count, gint64 capacity)
{
  g_autofree Piece *sorted = NULL;
  g_autofree int *fullest = g_new (int, MAX (count, 1));
  SwCutting *cutting;
  int rolls;

  for (guint i = 0; i < count; i++)
    if (pieces[i] < 1 || pieces[i] > capacity)
      return NULL;
  sorted = longest_first (pieces, count);
  cutting = g_new0 (SwCutting, 1);
  cutting->roll_of = g_new (int, MAX (count, 1));
  cutting->bound = sw_cutting_bound_l2 (pieces, count, capacity);
  cutting->rolls = fill (sorted, count, capacity, FALSE, cutting->roll_of);
  rolls = fill (sorted, count, capacity, TRUE, fullest);
  if (rolls < cutting->rolls)
    {
      cutting->rolls = rolls;
      g_free (cutting->roll_of);
      cutting->roll_of = g_steal_pointer (&fullest);
    }
  if (cutting->rolls > cutting->bound)
    cutting->rolls = sw_cutting_by_swaps (pieces, count, capacity, cutting->bound,
                                          cutting->roll_of, cutting->rolls);
  search_between (cutting, sorted, count, capacity);
  place_in_rolls (cutting, pieces, count);
  return cutting;
}

void
sw_cutting_free (SwCutting *cutting)
{
  if (cutting == NULL)
    return;
  g_free (cutting->roll_of);
  g_free (cutting->from);
  g_free (cutting);
}
