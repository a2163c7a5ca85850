/* SPDX-License-Identifier: MIT */
#include <glib.h>
#include <math.h>
#include <slopewright/tally/roll.h>

SwStatus
sw_roll_diameter (double length_m, double thickness_m, double core_m, double *diameter_m)
{
  if (!isfinite (length_m) || !isfinite (thickness_m) || !isfinite (core_m)
      || length_m <= 0.0 || thickness_m <= 0.0 || core_m < 0.0)
    return SW_E_RANGE;
  *diameter_m = sqrt (core_m * core_m + 4.0 * length_m * thickness_m / G_PI);
  return SW_OK;
}

SwStatus
sw_roll_length (double diameter_m, double thickness_m, double core_m, double *length_m)
{
  if (!isfinite (diameter_m) || !isfinite (thickness_m) || !isfinite (core_m)
      || thickness_m <= 0.0 || core_m < 0.0 || diameter_m <= core_m)
    return SW_E_RANGE;
  *length_m = G_PI * (diameter_m * diameter_m - core_m * core_m) / (4.0 * thickness_m);
  return SW_OK;
}
