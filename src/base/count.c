/* SPDX-License-Identifier: MIT */
#include <math.h>
#include <slopewright/base/count.h>

/* A ratio this close to a whole number is whole: far below any real box or bag. */
#define WHOLE_RATIO 1e-9

gint64
sw_ticks (double length_m)
{
  return llround (length_m * SW_TICKS_PER_M);
}

/* Halves round away from zero, so up. */
double
sw_least_ticks (double least_m)
{
  return (double) sw_ticks (least_m) - 0.5;
}

int
sw_count_up (double length_m, double each_m)
{
  gint64 length = sw_ticks (length_m), each = sw_ticks (each_m);

  g_return_val_if_fail (each > 0, 0);
  return length <= 0 ? 0 : (int) ((length + each - 1) / each);
}

int
sw_count_whole (double length_m, double each_m)
{
  gint64 length = sw_ticks (length_m), each = sw_ticks (each_m);

  g_return_val_if_fail (each > 0, 0);
  return length <= 0 ? 0 : (int) (length / each);
}

int
sw_count_up_ratio (double quantity)
{
  return quantity <= WHOLE_RATIO ? 0 : (int) ceil (quantity - WHOLE_RATIO);
}
