/* SPDX-License-Identifier: MIT */
#include "cutting-basis.h"
#include <math.h>

void
sw_basis_init (SwBasis *basis, guint n)
{
  basis->n = n;
  basis->inverse = g_new0 (double, (gsize) n *n);
  basis->times = g_new0 (double, n);
}

void
sw_basis_clear (SwBasis *basis)
{
  g_free (basis->inverse);
  g_free (basis->times);
}

/* @step: (inout): zero; how much of each row one of the column uses up. */
static guint
find_leaving (const SwBasis *basis, const double *entering, double *step)
{
  guint n = basis->n, leave = n;
  double least = INFINITY;

  for (guint r = 0; r < n; r++)
    {
      for (guint c = 0; c < n; c++)
        step[r] += basis->inverse[r * n + c] * entering[c];
      if (step[r] > SW_BASIS_WORTH && basis->times[r] / step[r] < least)
        {
          least = basis->times[r] / step[r];
          leave = r;
        }
    }
  return leave;
}

guint
sw_basis_exchange (SwBasis *basis, const double *entering)
{
  guint n = basis->n, leave;
  g_autofree double *step = g_new0 (double, n);
  double least;

  leave = find_leaving (basis, entering, step);
  if (leave == n)
    return n;
  least = basis->times[leave] / step[leave];
  for (guint c = 0; c < n; c++)
    basis->inverse[leave * n + c] /= step[leave];
  for (guint r = 0; r < n; r++)
    if (r != leave)
      {
        for (guint c = 0; c < n; c++)
          basis->inverse[r * n + c] -= step[r] * basis->inverse[leave * n + c];
        basis->times[r] = fmax (0.0, basis->times[r] - step[r] * least);
      }
  basis->times[leave] = least;
  return leave;
}
