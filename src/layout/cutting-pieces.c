/* SPDX-License-Identifier: MIT */
#include "cutting-pieces.h"

static int
compare_longest_first (gconstpointer a, gconstpointer b)
{
  const SwSortedPiece *x = a, *y = b;

  if (x->length != y->length)
    return x->length < y->length ? 1 : -1;
  return x->index < y->index ? -1 : 1;
}

SwSortedPiece *
sw_pieces_longest_first (const gint64 *pieces, guint count)
{
  SwSortedPiece *sorted = g_new (SwSortedPiece, MAX (count, 1));

  for (guint i = 0; i < count; i++)
    sorted[i] = (SwSortedPiece){ pieces[i], i };
  qsort (sorted, count, sizeof *sorted, compare_longest_first);
  return sorted;
}

guint
sw_piece_kinds (const SwSortedPiece *sorted, guint count, SwPieceKind *kinds)
{
  guint n = 0;

  for (guint i = 0; i < count; i++)
    if (i > 0 && sorted[i].length == sorted[i - 1].length)
      kinds[n - 1].count++;
    else
      kinds[n++] = (SwPieceKind){ sorted[i].length, 1 };
  return n;
}

gint64
sw_whole_rolls (gint64 length, gint64 each)
{
  return length <= 0 ? 0 : (length + each - 1) / each;
}
