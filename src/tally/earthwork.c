/* SPDX-License-Identifier: MIT */
#include <math.h>
#include <slopewright/base/range.h>
#include <slopewright/tally/earthwork.h>

SwStatus
sw_trench_volume (double bottom_m, double depth_m, double side_hv, double length_m,
                  double *volume_m3)
{
  if (!sw_is_size (bottom_m) || !sw_is_size (depth_m) || !sw_is_size (side_hv)
      || !sw_is_size (length_m))
    return SW_E_RANGE;
  *volume_m3 = (bottom_m + side_hv * depth_m) * depth_m * length_m;
  return SW_OK;
}

SwStatus
sw_end_area_volume (double area1_m2, double area2_m2, double length_m, double *volume_m3)
{
  if (!sw_is_size (area1_m2) || !sw_is_size (area2_m2) || !sw_is_size (length_m))
    return SW_E_RANGE;
  *volume_m3 = (area1_m2 + area2_m2) / 2.0 * length_m;
  return SW_OK;
}

SwStatus
sw_prismoid_volume (double area1_m2, double middle_m2, double area2_m2, double length_m,
                    double *volume_m3)
{
  if (!sw_is_size (area1_m2) || !sw_is_size (middle_m2) || !sw_is_size (area2_m2)
      || !sw_is_size (length_m))
    return SW_E_RANGE;
  *volume_m3 = (area1_m2 + 4.0 * middle_m2 + area2_m2) * length_m / 6.0;
  return SW_OK;
}

SwStatus
sw_loose_volume (double bank_m3, double swell, double *loose_m3)
{
  if (!sw_is_size (bank_m3) || !sw_is_size (swell))
    return SW_E_RANGE;
  *loose_m3 = bank_m3 * (1.0 + swell);
  return SW_OK;
}

SwStatus
sw_compacted_volume (double bank_m3, double factor, double *compacted_m3)
{
  if (!sw_is_size (bank_m3) || !isfinite (factor) || factor <= 0.0)
    return SW_E_RANGE;
  *compacted_m3 = bank_m3 * factor;
  return SW_OK;
}
