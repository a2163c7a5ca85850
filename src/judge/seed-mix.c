/* SPDX-License-Identifier: MIT */
#include <math.h>
#include <slopewright/judge/seed-mix.h>
#include <slopewright/tally/seed.h>

static gboolean
is_size (double size)
{
  return isfinite (size) && size >= 0.0;
}

SwStatus
sw_seed_species_pls (const SwSeedSpecies *species, double *pls)
{
  if (!is_size (species->germination) || !is_size (species->hard))
    return SW_E_RANGE;
  return sw_seed_pls (species->purity, species->germination + species->hard, pls);
}

SwStatus
sw_seed_rate (double seeds_per_m2, double seeds_per_kg, double *pls_kg_per_m2)
{
  if (!is_size (seeds_per_m2) || !is_size (seeds_per_kg) || seeds_per_kg <= 0.0)
    return SW_E_RANGE;
  *pls_kg_per_m2 = seeds_per_m2 / seeds_per_kg;
  return SW_OK;
}

static SwStatus
check_species (const SwSeedSpecies *species)
{
  double pls;

  if (!is_size (species->pls_kg_per_m2) || !is_size (species->seeds_per_kg)
      || species->seeds_per_kg <= 0.0)
    return SW_E_RANGE;
  return sw_seed_species_pls (species, &pls);
}

static SwSeedLine
line_of (const SwSeedSpecies *species, double area_m2)
{
  SwSeedLine line = { .pls = species->purity * (species->germination + species->hard) };

  line.bulk_kg_per_m2 = species->pls_kg_per_m2 / line.pls;
  line.bulk_kg = line.bulk_kg_per_m2 * area_m2;
  line.seeds_per_m2 = species->pls_kg_per_m2 * species->seeds_per_kg;
  return line;
}

static void
share_out (SwSeedLine *lines, guint count, const SwSeedTotal *total)
{
  for (guint i = 0; i < count && total->seeds_per_m2 > 0.0; i++)
    {
      lines[i].share_of_seeds = lines[i].seeds_per_m2 / total->seeds_per_m2;
      lines[i].share_of_bulk = lines[i].bulk_kg_per_m2 / total->bulk_kg_per_m2;
    }
}

SwStatus
sw_seed_mix (const SwSeedSpecies *species, guint count, double area_m2, SwSeedLine *lines,
             SwSeedTotal *total)
{
  SwSeedTotal sum = { 0 };

  if (count == 0 || !is_size (area_m2))
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
      sum.pls_kg_per_m2 += species[i].pls_kg_per_m2;
      sum.bulk_kg_per_m2 += lines[i].bulk_kg_per_m2;
      sum.bulk_kg += lines[i].bulk_kg;
      sum.seeds_per_m2 += lines[i].seeds_per_m2;
    }
  share_out (lines, count, &sum);
  *total = sum;
  return SW_OK;
}
