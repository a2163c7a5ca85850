/* SPDX-License-Identifier: MIT */
#include "cutting-search.h"

typedef struct
{
  const SwPieceKind *pieces;
  guint n_pieces;
  const SwRollKind *rolls;
  guint n_rolls;
  gint64 *budget;
  int *left;  /* pieces of each kind still to be cut */
  int *stock; /* rolls of each kind still to be opened */
  SwFillings *found;
} Search;

typedef struct
{
  gint64 waste;
  guint row, roll; /* in the counts; kind of the roll */
} Filling;

/* All that the next roll could be filled with. */
typedef struct
{
  GArray *counts; /* (element-type int): rows by kind of piece */
  GArray *order;  /* (element-type Filling) */
  int *row;       /* the one being made */
  guint roll;
  gint64 most_waste;
} Choice;

SwFillings *
sw_fillings_new (void)
{
  SwFillings *fillings = g_new (SwFillings, 1);

  fillings->rolls = g_array_new (FALSE, FALSE, sizeof (guint));
  fillings->counts = g_array_new (FALSE, FALSE, sizeof (int));
  return fillings;
}

void
sw_fillings_free (SwFillings *fillings)
{
  if (fillings == NULL)
    return;
  g_array_unref (fillings->rolls);
  g_array_unref (fillings->counts);
  g_free (fillings);
}

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
  for (guint k = 0; k < search->n_pieces; k++)
    if (search->left[k] > row[k] && search->pieces[k].length <= room)
      return FALSE;
  return TRUE;
}

static void
keep (const Search *search, Choice *choice, gint64 room)
{
  const SwRollKind *roll = &search->rolls[choice->roll];
  Filling filling = { room - (roll->length - roll->most), choice->order->len,
                      choice->roll };

  if (filling.waste > choice->most_waste || !is_full (search, choice->row, room))
    return;
  g_array_append_vals (choice->counts, choice->row, search->n_pieces);
  g_array_append_val (choice->order, filling);
}

static void
enumerate (const Search *search, Choice *choice, guint kind, gint64 room)
{
  const SwPieceKind *pieces = search->pieces;
  int *row = choice->row;
  int most;

  while (kind < search->n_pieces
         && (search->left[kind] == row[kind] || pieces[kind].length > room))
    {
      kind++;
      --*search->budget;
    }
  if (--*search->budget < 0)
    return;
  if (kind == search->n_pieces)
    {
      keep (search, choice, room);
      return;
    }
  most =
      (int) MIN ((gint64) (search->left[kind] - row[kind]), room / pieces[kind].length);
  for (int n = most; n >= 0; n--)
    {
      row[kind] += n;
      enumerate (search, choice, kind + 1, room - n * pieces[kind].length);
      row[kind] -= n;
    }
}

static void
enumerate_rolls (const Search *search, Choice *choice, guint longest)
{
  gint64 length = search->pieces[longest].length;

  choice->row[longest] = 1;
  for (guint r = 0; r < search->n_rolls; r++)
    if (search->stock[r] > 0 && search->rolls[r].length >= length)
      {
        choice->roll = r;
        enumerate (search, choice, longest, search->rolls[r].length - length);
      }
}

static void
take (const Search *search, const Filling *filling, const int *row, int sign)
{
  for (guint k = 0; k < search->n_pieces; k++)
    search->left[k] -= sign * row[k];
  search->stock[filling->roll] -= sign;
}

static SwSearchEnd fill_rolls (const Search *search, gint64 most_waste);

static SwSearchEnd
try_fillings (const Search *search, Choice *choice)
{
  g_array_sort (choice->order, compare_waste);
  for (guint i = 0; i < choice->order->len; i++)
    {
      const Filling *filling = &g_array_index (choice->order, Filling, i);
      const int *row =
          &g_array_index (choice->counts, int, filling->row * search->n_pieces);
      SwSearchEnd end;

      take (search, filling, row, 1);
      end = fill_rolls (search, choice->most_waste - filling->waste);
      take (search, filling, row, -1);
      /* On the way back, so what is found is written once. */
      if (end == SW_SEARCH_FOUND)
        {
          g_array_append_val (search->found->rolls, filling->roll);
          g_array_append_vals (search->found->counts, row, search->n_pieces);
        }
      if (end != SW_SEARCH_IMPOSSIBLE)
        return end;
    }
  return SW_SEARCH_IMPOSSIBLE;
}

/* @most_waste: what all rolls not opened yet may waste together. */
static SwSearchEnd
fill_rolls (const Search *search, gint64 most_waste)
{
  g_autofree int *row = NULL;
  Choice choice = { .most_waste = most_waste };
  SwSearchEnd end;
  guint longest = 0;

  while (longest < search->n_pieces && search->left[longest] == 0)
    longest++;
  if (longest == search->n_pieces)
    return SW_SEARCH_FOUND;
  choice.row = row = g_new0 (int, search->n_pieces);
  choice.counts = g_array_new (FALSE, FALSE, sizeof (int));
  choice.order = g_array_new (FALSE, FALSE, sizeof (Filling));
  enumerate_rolls (search, &choice, longest);
  end = *search->budget < 0 ? SW_SEARCH_GAVE_UP : try_fillings (search, &choice);
  g_array_unref (choice.counts);
  g_array_unref (choice.order);
  return end;
}

SwSearchEnd
sw_cutting_search (const SwPieceKind *pieces, guint n_pieces, const SwRollKind *rolls,
                   guint n_rolls, gint64 *budget, SwFillings *found)
{
  g_autofree int *left = g_new (int, MAX (n_pieces, 1));
  g_autofree int *stock = g_new (int, MAX (n_rolls, 1));
  Search search = { pieces, n_pieces, rolls, n_rolls, budget, left, stock, found };
  gint64 most_waste = 0;

  for (guint r = 0; r < n_rolls; r++)
    {
      stock[r] = rolls[r].count;
      most_waste += rolls[r].count * rolls[r].most;
    }
  for (guint k = 0; k < n_pieces; k++)
    {
      left[k] = pieces[k].count;
      most_waste -= pieces[k].count * pieces[k].length;
    }
  return most_waste < 0 ? SW_SEARCH_IMPOSSIBLE : fill_rolls (&search, most_waste);
}
