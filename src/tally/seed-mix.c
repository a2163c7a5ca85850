/* SPDX-License-Identifier: MIT */
#include <math.h>
#include <slopewright/base/range.h>
#include <slopewright/tally/seed-mix.h>
#include <slopewright/tally/seed.h>

SwStatus
sw_seed_species_pls (const SwSeedSpecies *species, double *pls)
{
  double live = species->germination + species->hard;

  if (!sw_is_size (species->germination) || !sw_is_size (species->hard)
      || live > 1.0 + SW_SHARES_SLACK)
    return SW_E_RANGE;
  return sw_seed_pls (species->purity, fmin (live, 1.0), pls);
}

SwStatus
sw_seed_rate (double seeds_per_m2, double seeds_per_kg, double *pls_kg_per_m2)
{
  if (!sw_is_size (seeds_per_m2) || !sw_is_size (seeds_per_kg) || seeds_per_kg <= 0.0)
    return SW_E_RANGE;
  *pls_kg_per_m2 = seeds_per_m2 / seeds_per_kg;
  return SW_OK;
}

static SwStatus
rate_of (const SwSeedSpecies *species, double *pls_kg_per_m2)
{
  if (!sw_is_size (species->pls_kg_per_m2) || !sw_is_size (species->seeds_per_m2)
      || !sw_is_size (species->seeds_per_kg))
    return SW_E_RANGE;
  if (!(species->seeds_per_m2 > 0.0))
    {
      *pls_kg_per_m2 = species->pls_kg_per_m2;
      return SW_OK;
    }
  if (species->pls_kg_per_m2 > 0.0)
    return SW_E_RANGE;
  return sw_seed_rate (species->seeds_per_m2, species->seeds_per_kg, pls_kg_per_m2);
}

static SwStatus
check_species (const SwSeedSpecies *species)
{
  double pls, rate;
  SwStatus status = rate_of (species, &rate);

  return status == SW_OK ? sw_seed_species_pls (species, &pls) : status;
}

static SwSeedLine
line_of (const SwSeedSpecies *species, double area_m2)
{
  SwSeedLine line = { 0 };

  sw_seed_species_pls (species, &line.pls);
  rate_of (species, &line.pls_kg_per_m2);
  line.bulk_kg_per_m2 = line.pls_kg_per_m2 / line.pls;
  line.bulk_kg = line.bulk_kg_per_m2 * area_m2;
  line.seeds_per_m2 = line.pls_kg_per_m2 * species->seeds_per_kg;
  return line;
}

/* Shares of seeds mean nothing while one species is not counted. */
static void
share_out (SwSeedLine *lines, guint count, SwSeedTotal *total)
{
  for (guint i = 0; i < count; i++)
    if (lines[i].pls_kg_per_m2 > 0.0 && !(lines[i].seeds_per_m2 > 0.0))
      total->seeds_per_m2 = 0.0;
  for (guint i = 0; i < count && total->bulk_kg_per_m2 > 0.0; i++)
    {
      lines[i].share_of_bulk = lines[i].bulk_kg_per_m2 / total->bulk_kg_per_m2;
      if (total->seeds_per_m2 > 0.0)
        lines[i].share_of_seeds = lines[i].seeds_per_m2 / total->seeds_per_m2;
    }
}

SwStatus
sw_seed_mix (const SwSeedSpecies *species, guint count, double area_m2, SwSeedLine *lines,
             SwSeedTotal *total)
{
  SwSeedTotal sum = { 0 };

  if (count == 0 || !sw_is_size (area_m2))
    return SW_E_RANGE;
  for (guint i = 0; i < count; i++)
    {
      SwStatus status = check_species (&species[i]);

      if (status != SW_OK)
        return status;
    }
  for (guint i = 0; i < count; i++)
    {
      lines[i] = line_of (&species[i], area_m2);
      sum.pls_kg_per_m2 += lines[i].pls_kg_per_m2;
      sum.bulk_kg_per_m2 += lines[i].bulk_kg_per_m2;
      sum.bulk_kg += lines[i].bulk_kg;
      sum.seeds_per_m2 += lines[i].seeds_per_m2;
    }
  share_out (lines, count, &sum);
  *total = sum;
  return SW_OK;
}
