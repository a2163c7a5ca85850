/* SPDX-License-Identifier: MIT */
#include "stock-search.h"
#include <string.h>

typedef struct
{
  const SwStockTask *task;
  gint64 *budget;
  int *left;  /* pieces of each kind still to be cut */
  int *rolls; /* of each kind of stock still to be opened */
  SwStockPlan *plan;
} Search;

/* Fillings of one roll: rows of counts by piece kind. */
typedef struct
{
  gint64 waste;
  guint row, kind;
} Filling;

typedef struct
{
  GArray *counts; /* (element-type int) */
  GArray *order;  /* (element-type Filling) */
  int *row;
  guint kind; /* of stock, being filled */
  gint64 most_waste;
} Fillings;

static int
compare_waste (gconstpointer a, gconstpointer b)
{
  const Filling *x = a, *y = b;

  if (x->waste != y->waste)
    return x->waste < y->waste ? -1 : 1;
  return x->row < y->row ? -1 : 1;
}

/* Nothing left over fits into the room. */
static gboolean
is_full (const Search *search, const int *row, gint64 room)
{
  for (guint k = 0; k < search->task->n_piece_kinds; k++)
    if (search->left[k] > row[k] && search->task->piece_kinds[k].length <= room)
      return FALSE;
  return TRUE;
}

static void
keep (const Search *search, Fillings *fillings, gint64 room)
{
  const SwStockTask *task = search->task;
  gint64 lost = task->kinds[fillings->kind].length - task->most[fillings->kind];
  Filling filling = { room - lost, fillings->order->len, fillings->kind };

  if (filling.waste > fillings->most_waste || !is_full (search, fillings->row, room))
    return;
  g_array_append_vals (fillings->counts, fillings->row, task->n_piece_kinds);
  g_array_append_val (fillings->order, filling);
}

static void
enumerate (const Search *search, Fillings *fillings, guint kind, gint64 room)
{
  const SwPieceKind *pieces = search->task->piece_kinds;
  int *row = fillings->row;
  int most;

  while (kind < search->task->n_piece_kinds
         && (search->left[kind] == row[kind] || pieces[kind].length > room))
    {
      kind++;
      --*search->budget;
    }
  if (--*search->budget < 0)
    return;
  if (kind == search->task->n_piece_kinds)
    {
      keep (search, fillings, room);
      return;
    }
  most =
      (int) MIN ((gint64) (search->left[kind] - row[kind]), room / pieces[kind].length);
  for (int n = most; n >= 0; n--)
    {
      row[kind] += n;
      enumerate (search, fillings, kind + 1, room - n * pieces[kind].length);
      row[kind] -= n;
    }
}

static void
take (Search *search, const Filling *filling, const int *row, int sign)
{
  for (guint k = 0; k < search->task->n_piece_kinds; k++)
    search->left[k] -= sign * row[k];
  search->rolls[filling->kind] -= sign;
}

static SwSearchEnd fill_rolls (Search *search, gint64 most_waste);

static SwSearchEnd
try_fillings (Search *search, Fillings *fillings)
{
  guint width = search->task->n_piece_kinds;

  g_array_sort (fillings->order, compare_waste);
  for (guint i = 0; i < fillings->order->len; i++)
    {
      const Filling *filling = &g_array_index (fillings->order, Filling, i);
      const int *row = &g_array_index (fillings->counts, int, filling->row *width);
      SwSearchEnd end;

      take (search, filling, row, 1);
      end = fill_rolls (search, fillings->most_waste - filling->waste);
      take (search, filling, row, -1);
      /* On the way back, so the plan is written once. */
      if (end == SW_SEARCH_FOUND)
        sw_stock_plan_fill (search->plan, filling->kind, row);
      if (end != SW_SEARCH_IMPOSSIBLE)
        return end;
    }
  return SW_SEARCH_IMPOSSIBLE;
}

static void
enumerate_kinds (Search *search, Fillings *fillings, guint longest)
{
  const SwStockTask *task = search->task;
  gint64 length = task->piece_kinds[longest].length;

  fillings->row[longest] = 1;
  for (guint k = 0; k < task->n_kinds; k++)
    if (search->rolls[k] > 0 && task->kinds[k].length >= length)
      {
        fillings->kind = k;
        enumerate (search, fillings, longest, task->kinds[k].length - length);
      }
}

/* @most_waste: what all rolls not opened yet may waste together. */
static SwSearchEnd
fill_rolls (Search *search, gint64 most_waste)
{
  guint width = search->task->n_piece_kinds, longest = 0;
  g_autofree int *row = NULL;
  Fillings fillings = { .most_waste = most_waste };
  SwSearchEnd end;

  while (longest < width && search->left[longest] == 0)
    longest++;
  if (longest == width)
    return SW_SEARCH_FOUND;
  fillings.row = row = g_new0 (int, width);
  fillings.counts = g_array_new (FALSE, FALSE, sizeof (int));
  fillings.order = g_array_new (FALSE, FALSE, sizeof (Filling));
  enumerate_kinds (search, &fillings, longest);
  end = *search->budget < 0 ? SW_SEARCH_GAVE_UP : try_fillings (search, &fillings);
  g_array_unref (fillings.counts);
  g_array_unref (fillings.order);
  return end;
}

SwSearchEnd
sw_stock_search (const SwStockTask *task, const int *rolls, gint64 *budget,
                 SwStockPlan *plan)
{
  g_autofree int *left = g_new (int, MAX (task->n_piece_kinds, 1));
  g_autofree int *stock = g_memdup2 (rolls, task->n_kinds * sizeof (int));
  Search search = { task, budget, left, stock, plan };
  gint64 most_waste = 0;

  for (guint k = 0; k < task->n_kinds; k++)
    most_waste += rolls[k] * task->most[k];
  for (guint k = 0; k < task->n_piece_kinds; k++)
    {
      left[k] = task->piece_kinds[k].count;
      most_waste -= left[k] * task->piece_kinds[k].length;
    }
  return most_waste < 0 ? SW_SEARCH_IMPOSSIBLE : fill_rolls (&search, most_waste);
}
