/* SPDX-License-Identifier: MIT */
#pragma once

#include <glib.h>

/** A piece among those to be cut. */
typedef struct
{
  gint64 length;
  guint index; /* where it stood in the order given */
} SwSortedPiece;

/** Pieces of equal length, longest kind first. */
typedef struct
{
  gint64 length;
  int count;
} SwPieceKind;

/** Returns: (transfer full) (array length=count): longest first, equal ones as given. */
SwSortedPiece *sw_pieces_longest_first (const gint64 *pieces, guint count);

/**
 * sw_piece_kinds:
 * @sorted: longest first
 * @kinds: (out): room for @count; longest first
 *
 * Returns: how many kinds there are.
 */
guint sw_piece_kinds (const SwSortedPiece *sorted, guint count, SwPieceKind *kinds);

/** Rolls that hold @length, each @each long (1 or more); 0 when there is nothing to hold. */
gint64 sw_whole_rolls (gint64 length, gint64 each);
