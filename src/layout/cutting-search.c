/* SPDX-License-Identifier: MIT */
#include "cutting-search.h"
#include <string.h>

typedef struct
{
  const SwPieceKind *kinds;
  guint n_kinds;
  gint64 capacity;
  int rolls;
  gint64 *budget;
  int *left;     /* pieces of each kind still to be cut */
  int *patterns; /* rolls x kinds */
} Search;

/* Fillings of one roll: rows of n_kinds counts, then their waste. */
typedef struct
{
  GArray *counts; /* (element-type int) */
  GArray *order;  /* (element-type Filling) */
} Fillings;

typedef struct
{
  gint64 waste;
  guint row;
} Filling;

static int
compare_waste (gconstpointer a, gconstpointer b)
{
  const Filling *x = a, *y = b;

  if (x->waste != y->waste)
    return x->waste < y->waste ? -1 : 1;
  return x->row < y->row ? -1 : 1;
}

/* Nothing left over fits into the waste. */
static gboolean
is_full (const Search *search, const int *row, gint64 waste)
{
  for (guint k = 0; k < search->n_kinds; k++)
    if (search->left[k] > row[k] && search->kinds[k].length <= waste)
      return FALSE;
  return TRUE;
}

static void
enumerate (const Search *search, Fillings *fillings, int *row, guint kind, gint64 room,
           gint64 most_waste)
{
  int most;

  while (kind < search->n_kinds
         && (search->left[kind] == row[kind] || search->kinds[kind].length > room))
    {
      kind++;
      --*search->budget;
    }
  if (--*search->budget < 0)
    return;
  if (kind == search->n_kinds)
    {
      Filling filling = { room, fillings->order->len };

      if (room > most_waste || !is_full (search, row, room))
        return;
      g_array_append_vals (fillings->counts, row, search->n_kinds);
      g_array_append_val (fillings->order, filling);
      return;
    }
  most = (int) MIN ((gint64) (search->left[kind] - row[kind]),
                    room / search->kinds[kind].length);
  for (int n = most; n >= 0; n--)
    {
      row[kind] += n;
      enumerate (search, fillings, row, kind + 1, room - n * search->kinds[kind].length,
                 most_waste);
      row[kind] -= n;
    }
}

static void
take (Search *search, const int *row, int sign)
{
  for (guint k = 0; k < search->n_kinds; k++)
    search->left[k] -= sign * row[k];
}

static SwSearchEnd fill_roll (Search *search, int roll, gint64 most_waste);

static SwSearchEnd
try_fillings (Search *search, Fillings *fillings, int roll, gint64 most_waste)
{
  g_array_sort (fillings->order, compare_waste);
  for (guint i = 0; i < fillings->order->len; i++)
    {
      const Filling *filling = &g_array_index (fillings->order, Filling, i);
      const int *row =
          &g_array_index (fillings->counts, int, filling->row * search->n_kinds);
      SwSearchEnd end;

      take (search, row, 1);
      memcpy (search->patterns + (gsize) roll * search->n_kinds, row,
              search->n_kinds * sizeof (int));
      end = fill_roll (search, roll + 1, most_waste - filling->waste);
      take (search, row, -1);
      if (end != SW_SEARCH_IMPOSSIBLE)
        return end;
    }
  return SW_SEARCH_IMPOSSIBLE;
}

/* @most_waste: what all rolls from here on may waste together. */
static SwSearchEnd
fill_roll (Search *search, int roll, gint64 most_waste)
{
  g_autofree int *row = g_new0 (int, search->n_kinds);
  Fillings fillings;
  SwSearchEnd end;
  guint longest = 0;

  while (longest < search->n_kinds && search->left[longest] == 0)
    longest++;
  if (longest == search->n_kinds)
    {
      memset (search->patterns + (gsize) roll * search->n_kinds, 0,
              (gsize) (search->rolls - roll) * search->n_kinds * sizeof (int));
      return SW_SEARCH_FOUND;
    }
  if (roll == search->rolls)
    return SW_SEARCH_IMPOSSIBLE;
  fillings.counts = g_array_new (FALSE, FALSE, sizeof (int));
  fillings.order = g_array_new (FALSE, FALSE, sizeof (Filling));
  row[longest] = 1;
  enumerate (search, &fillings, row, longest,
             search->capacity - search->kinds[longest].length, most_waste);
  end = *search->budget < 0 ? SW_SEARCH_GAVE_UP
                            : try_fillings (search, &fillings, roll, most_waste);
  g_array_unref (fillings.counts);
  g_array_unref (fillings.order);
  return end;
}

SwSearchEnd
sw_cutting_search (const SwPieceKind *kinds, guint n_kinds, gint64 capacity, int rolls,
                   gint64 *budget, int *patterns)
{
  g_autofree int *left = g_new (int, MAX (n_kinds, 1));
  Search search = { kinds, n_kinds, capacity, rolls, budget, left, patterns };
  gint64 most_waste = rolls * capacity;

  for (guint k = 0; k < n_kinds; k++)
    {
      left[k] = kinds[k].count;
      most_waste -= kinds[k].count * kinds[k].length;
    }
  return most_waste < 0 ? SW_SEARCH_IMPOSSIBLE : fill_roll (&search, 0, most_waste);
}
