/* SPDX-License-Identifier: MIT */
#include <math.h>
#include <slopewright/base/range.h>

gboolean
sw_is_size (double value)
{
  return isfinite (value) && value >= 0.0;
}

gboolean
sw_is_positive (double value)
{
  return sw_is_size (value) && value > 0.0;
}
