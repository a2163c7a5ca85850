/* SPDX-License-Identifier: MIT */
#include <slopewright/base/order.h>

int
sw_compare_doubles (gconstpointer a, gconstpointer b)
{
  double x = *(const double *) a, y = *(const double *) b;

  return (x > y) - (x < y);
}
