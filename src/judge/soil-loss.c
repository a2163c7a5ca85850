/* SPDX-License-Identifier: MIT */
#include <math.h>
#include <slopewright/base/units.h>
#include <slopewright/judge/soil-loss.h>

/* Shares add up and limits are met with so much slack; far below any survey. */
#define SHARE_SLACK 1e-9

#define ORGANIC_MOST 0.04
#define SILT_MOST 0.70

double
sw_soil_loss_si_per_us (void)
{
  return SW_LOSS_SI_PER_US;
}

double
sw_erosivity_si_per_us (void)
{
  return SW_EROSIVITY_SI_PER_US;
}

double
sw_erodibility_si_per_us (void)
{
  return SW_ERODIBILITY_SI_PER_US;
}

static gboolean
is_factor (double factor)
{
  return isfinite (factor) && factor >= 0.0;
}

static gboolean
is_share (double share)
{
  return is_factor (share) && share <= 1.0;
}

SwStatus
sw_soil_loss (double erosivity, double erodibility, double ls, double cover,
              double practice, double *loss_t_per_ha)
{
  if (!is_factor (erosivity) || !is_factor (erodibility) || !is_factor (ls)
      || !is_factor (cover) || !is_factor (practice))
    return SW_E_RANGE;
  *loss_t_per_ha = erosivity * erodibility * ls * cover * practice;
  return SW_OK;
}

SwStatus
sw_soil_loss_reduction (double bare, double covered, double *reduction)
{
  if (!is_factor (bare) || !is_factor (covered) || bare <= 0.0)
    return SW_E_RANGE;
  *reduction = 1.0 - covered / bare;
  return SW_OK;
}

SwStatus
sw_erosivity_of_period (double per_year, guint new_years, double share_start,
                        double share_end, double *erosivity)
{
  double years = (double) new_years + share_end - share_start;

  if (!is_factor (per_year) || !is_share (share_start) || !is_share (share_end)
      || years < 0.0)
    return SW_E_RANGE;
  *erosivity = per_year * years;
  return SW_OK;
}

static gboolean
is_soil (const SwErodibilitySoil *soil)
{
  return is_share (soil->silt_and_fine_sand) && is_share (soil->clay)
         && is_share (soil->organic)
         && soil->silt_and_fine_sand + soil->clay <= 1.0 + SHARE_SLACK
         && soil->structure >= 1 && soil->structure <= 4 && soil->permeability >= 1
         && soil->permeability <= 6;
}

static guint
soil_limits (const SwErodibilitySoil *soil)
{
  guint limits = SW_ERODIBILITY_WITHIN;

  if (soil->silt_and_fine_sand > SILT_MOST + SHARE_SLACK)
    limits |= SW_ERODIBILITY_TOO_SILTY;
  if (soil->organic > ORGANIC_MOST + SHARE_SLACK)
    limits |= SW_ERODIBILITY_ORGANIC_CAPPED;
  return limits;
}

SwStatus
sw_erodibility (const SwErodibilitySoil *soil, double *erodibility, guint *limits)
{
  double fines, organic_pct, us;

  if (!is_soil (soil))
    return SW_E_RANGE;
  fines = 100.0 * soil->silt_and_fine_sand * 100.0 * (1.0 - soil->clay);
  organic_pct = 100.0 * fmin (soil->organic, ORGANIC_MOST);
  us = (2.1e-4 * pow (fines, 1.14) * (12.0 - organic_pct) + 3.25 * (soil->structure - 2)
        + 2.5 * (soil->permeability - 3))
       / 100.0;
  if (us <= 0.0)
    return SW_E_RANGE;
  *erodibility = us * sw_erodibility_si_per_us ();
  if (limits != NULL)
    *limits = soil_limits (soil);
  return SW_OK;
}

SwStatus
sw_sediment_class (double loss_t_per_ha, SwSedimentClass *sediment_class)
{
  double us = loss_t_per_ha / sw_soil_loss_si_per_us ();

  if (!is_factor (loss_t_per_ha))
    return SW_E_RANGE;
  if (us < 15.0 - SHARE_SLACK)
    *sediment_class = SW_SEDIMENT_LOW;
  else
    *sediment_class = us < 75.0 - SHARE_SLACK ? SW_SEDIMENT_MEDIUM : SW_SEDIMENT_HIGH;
  return SW_OK;
}
