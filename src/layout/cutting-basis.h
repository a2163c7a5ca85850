/* SPDX-License-Identifier: MIT */
#pragma once

#include <glib.h>

/** A column must save so much to enter the basis; a row must run out so fast to leave it. */
#define SW_BASIS_WORTH 1e-9

/** Basis of a linear relaxation, solved: one column a row of the model. */
typedef struct
{
  guint n;
  double *inverse; /* n x n, row-major */
  double *times;   /* per row: how often its column is used, >= 0 */
} SwBasis;

/** All zero; cleared by sw_basis_clear(). */
void sw_basis_init (SwBasis *basis, guint n);
void sw_basis_clear (SwBasis *basis);

/**
 * sw_basis_exchange:
 * @entering: the new column, n values
 *
 * Brings the column into the basis in place of the one that runs out first.
 *
 * Returns: the row that it took; n when none runs out, and nothing is changed.
 */
guint sw_basis_exchange (SwBasis *basis, const double *entering);
