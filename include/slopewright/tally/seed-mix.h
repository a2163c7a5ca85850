/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/base/seed.h>
#include <slopewright/base/status.h>

/*
 * Seed of several species. Rates are in pure live seed (PLS): what is pure and
 * will grow, by mass. Sources: Texas DOT and USDA NRCS Louisiana TN-11 (2009).
 */

typedef struct
{
  double pls;            /* ratio: pure live seed per seed as sold */
  double bulk_kg_per_m2; /* as sold */
  double bulk_kg;        /* as sold, for the area */
  double pls_kg_per_m2;  /* rate, however it was given */
  double seeds_per_m2;   /* live seeds; 0 where seeds_per_kg is not known */
  double share_of_seeds; /* of the live seeds of the mix; 0 unless all are counted */
  double share_of_bulk;  /* by mass as sold, as the bag is mixed */
} SwSeedLine;

typedef struct
{
  double pls_kg_per_m2, bulk_kg_per_m2, bulk_kg;
  double seeds_per_m2; /* 0 unless the seeds of every species that is sown are counted */
} SwSeedTotal;

/** PLS = purity (germination + hard). */
SwStatus sw_seed_species_pls (const SwSeedSpecies *species, double *pls);

/** PLS rate for so many live seeds per m2. @seeds_per_m2 >= 0, @seeds_per_kg > 0. */
SwStatus sw_seed_rate (double seeds_per_m2, double seeds_per_kg, double *pls_kg_per_m2);

/**
 * sw_seed_mix:
 * @species: @count of them
 * @area_m2: to be sown, >= 0
 * @lines: (out caller-allocates): @count lines
 * @total: (out): sums
 *
 * Shares by number and by mass differ by as much as the seeds do in size: 70 to
 * 30 by mass can be 28 to 72 by number.
 *
 * Returns: SW_OK; SW_E_RANGE for a number outside its range, a rate given both ways,
 *   one in seeds without seeds_per_kg, or no species.
 */
SwStatus sw_seed_mix (const SwSeedSpecies *species, guint count, double area_m2,
                      SwSeedLine *lines, SwSeedTotal *total);
