/* SPDX-License-Identifier: MIT */
#include "cutting-gap.h"
#include "cutting-pieces.h"
#include <slopewright/layout/cutting.h>

int
sw_cutting_bound_l1 (const gint64 *pieces, guint count, gint64 capacity)
{
  gint64 sum = 0;

  for (guint i = 0; i < count; i++)
    sum += pieces[i];
  return (int) sw_whole_rolls (sum, capacity);
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
  return (
      int) (large + medium
            + sw_whole_rolls (small_sum - (medium * capacity - medium_sum), capacity));
}

int
sw_cutting_bound_l2 (const gint64 *pieces, guint count, gint64 capacity)
{
  int best = bound_at (pieces, count, capacity, 0);
  gint64 before = -1;
  g_autofree SwSortedPiece *sorted = sw_pieces_longest_first (pieces, count);

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
fill (const SwSortedPiece *sorted, guint count, gint64 capacity, gboolean fullest,
      int *roll_of)
{
  g_autofree gint64 *left = g_new (gint64, MAX (count, 1));
  gint64 shortest = count > 0 ? sorted[count - 1].length : 0;
  int rolls = 0, first_open = 0;

  for (guint i = 0; i < count; i++)
    {
      int chosen = -1;

      /* Rolls that no piece fits into any more need not be looked at: most, on long runs. */
      while (first_open < rolls && left[first_open] < shortest)
        first_open++;
      for (int r = first_open; r < rolls && (chosen < 0 || fullest); r++)
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
  g_autofree SwSortedPiece *sorted = sw_pieces_longest_first (pieces, count);
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

SwCutting *
sw_cutting_new (const gint64 *pieces, guint count, gint64 capacity)
{
  g_autofree SwSortedPiece *sorted = NULL;
  g_autofree int *fullest = g_new (int, MAX (count, 1));
  SwCutting *cutting;
  int rolls;

  for (guint i = 0; i < count; i++)
    if (pieces[i] < 1 || pieces[i] > capacity)
      return NULL;
  sorted = sw_pieces_longest_first (pieces, count);
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
  sw_cutting_close_gap (cutting, pieces, count, capacity);
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
