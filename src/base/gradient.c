/* SPDX-License-Identifier: MIT */
#include <math.h>
#include <slopewright/base/gradient.h>

SwStatus
sw_gradient_from_hv (double hv, double *angle_rad)
{
  if (!isfinite (hv) || hv <= 0.0)
    return SW_E_RANGE;
  *angle_rad = atan (1.0 / hv);
  return SW_OK;
}

SwStatus
sw_gradient_from_ratio (double rise_per_run, double *angle_rad)
{
  if (!isfinite (rise_per_run))
    return SW_E_RANGE;
  *angle_rad = atan (rise_per_run);
  return SW_OK;
}

double
sw_gradient_hv (double angle_rad)
{
  return 1.0 / tan (angle_rad);
}

double
sw_gradient_ratio (double angle_rad)
{
  return tan (angle_rad);
}

SwStatus
sw_ramp_length (double run_m, double rise_m, double *length_m)
{
  if (!isfinite (run_m) || !isfinite (rise_m) || run_m <= 0.0)
    return SW_E_RANGE;
  *length_m = hypot (run_m, rise_m);
  return SW_OK;
}
