/* SPDX-License-Identifier: MIT */
#include <glib.h>
#include <math.h>
#include <slopewright/base/count.h>
#include <slopewright/base/range.h>
#include <slopewright/tally/earth-loads.h>
#include <slopewright/tally/earthwork.h>

SwStatus
sw_earth_loads (double loose_m3, double truck_m3, int *loads)
{
  if (!sw_is_size (loose_m3) || !sw_is_positive (truck_m3)
      || loose_m3 / truck_m3 > G_MAXINT - 1)
    return SW_E_RANGE;
  *loads = sw_count_up_ratio (loose_m3 / truck_m3);
  return SW_OK;
}

SwStatus
sw_earth_loads_of_bank (double bank_m3, double swell, double truck_m3, int *loads)
{
  double loose_m3;
  SwStatus status = sw_loose_volume (bank_m3, swell, &loose_m3);

  return status == SW_OK ? sw_earth_loads (loose_m3, truck_m3, loads) : status;
}

SwStatus
sw_bank_for_compacted (double compacted_m3, double factor, double *bank_m3)
{
  if (!sw_is_size (compacted_m3) || !sw_is_positive (factor))
    return SW_E_RANGE;
  *bank_m3 = compacted_m3 / factor;
  return SW_OK;
}

SwStatus
sw_compacted_of_loose (double loose_m3, double swell, double factor, double *compacted_m3)
{
  if (!sw_is_size (loose_m3) || !sw_is_size (swell) || !sw_is_positive (factor))
    return SW_E_RANGE;
  *compacted_m3 = loose_m3 * factor / (1.0 + swell);
  return SW_OK;
}

SwStatus
sw_swell_of_volumes (double bank_m3, double loose_m3, double *swell)
{
  if (!sw_is_positive (bank_m3) || !sw_is_size (loose_m3) || loose_m3 < bank_m3)
    return SW_E_RANGE;
  *swell = loose_m3 / bank_m3 - 1.0;
  return SW_OK;
}

SwStatus
sw_shrink_of_densities (double bank_kg_per_m3, double fill_kg_per_m3, double *shrink)
{
  if (!sw_is_positive (bank_kg_per_m3) || !sw_is_positive (fill_kg_per_m3))
    return SW_E_RANGE;
  *shrink = 1.0 - bank_kg_per_m3 / fill_kg_per_m3;
  return SW_OK;
}
