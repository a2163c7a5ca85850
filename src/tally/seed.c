/* SPDX-License-Identifier: MIT */
#include <math.h>
#include <slopewright/tally/seed.h>

static int
is_share (double ratio)
{
  return isfinite (ratio) && ratio > 0.0 && ratio <= 1.0;
}

SwStatus
sw_seed_pls (double purity, double germination, double *pls)
{
  if (!is_share (purity) || !is_share (germination))
    return SW_E_RANGE;
  *pls = purity * germination;
  return SW_OK;
}

SwStatus
sw_seed_bulk_kg (double pls_kg, double purity, double germination, double *bulk_kg)
{
  double pls;
  SwStatus status = sw_seed_pls (purity, germination, &pls);

  if (status != SW_OK)
    return status;
  if (!isfinite (pls_kg) || pls_kg < 0.0)
    return SW_E_RANGE;
  *bulk_kg = pls_kg / pls;
  return SW_OK;
}
