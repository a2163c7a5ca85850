/* SPDX-License-Identifier: MIT */
#pragma once

#include "cutting-pieces.h"

/** Rolls of equal length to cut from. */
typedef struct
{
  gint64 length;
  gint64
      most; /* that pieces can fill of one of them, as far as known; at most its length */
  int count;
} SwRollKind;

/** What comes out of some rolls. */
typedef struct
{
  GArray *rolls;  /* (element-type guint): the kind of each roll */
  GArray *counts; /* (element-type int): for each roll, a count of every kind of piece */
} SwFillings;

SwFillings *sw_fillings_new (void);
void sw_fillings_free (SwFillings *fillings);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (SwFillings, sw_fillings_free)

typedef enum
{
  SW_SEARCH_FOUND,
  SW_SEARCH_IMPOSSIBLE, /* proved: these rolls do not hold the pieces */
  SW_SEARCH_GAVE_UP     /* the budget ran out first */
} SwSearchEnd;

/**
 * sw_cutting_search:
 * @pieces: kinds to cut, @n_pieces of them, longest first
 * @rolls: kinds to cut from, @n_rolls of them
 * @budget: (inout): how many steps of the search are left
 * @found: (inout): empty; on FOUND it holds every roll used, the last one filled first
 *
 * Depth first: one of the longest pieces left goes into a roll of every length in turn,
 * with every filling to which nothing more could be added. A plan exists at all only if
 * one of such rolls does, so an exhausted search is a proof.
 */
SwSearchEnd sw_cutting_search (const SwPieceKind *pieces, guint n_pieces,
                               const SwRollKind *rolls, guint n_rolls, gint64 *budget,
                               SwFillings *found);
