/* SPDX-License-Identifier: MIT */
#pragma once

#include <glib.h>

/*
 * The seed of a job: a mix of species, each as on its tag. Rates are in pure live
 * seed (PLS): what is pure and will grow, by mass.
 */

/** A species of a mix. */
typedef struct
{
  double purity;        /* ratio by mass, (0, 1] */
  double germination;   /* ratio, (0, 1] together with hard */
  double hard;          /* hard or dormant seed that will grow later, ratio, >= 0 */
  double seeds_per_kg;  /* 0: not known, and then seeds are not counted */
  double pls_kg_per_m2; /* rate wanted, >= 0; 0 where seeds_per_m2 says it */
  double seeds_per_m2;  /* live seeds wanted; 0 where pls_kg_per_m2 says it. Needs
                           seeds_per_kg */
  char *name;           /* as on the tag */
} SwSeedSpecies;

/** Most species of a mix; and most seeds of a kilogram and of a square metre. */
#define SW_SPECIES_MOST 50
#define SW_SEEDS_PER_KG_MOST 1e8
#define SW_SEEDS_PER_M2_MOST 1e6

typedef struct
{
  char *name;             /* of the mix */
  SwSeedSpecies *species; /* none: no seed in this job */
  guint n_species;
} SwSeedMix;

/** Append a copy of @species. */
void sw_seed_mix_add (SwSeedMix *mix, const SwSeedSpecies *species);

/** Take species @index away. */
void sw_seed_mix_remove (SwSeedMix *mix, guint index);

/** Replace the species of @mix, which may be those of another mix, by own copies. */
void sw_seed_mix_own_species (SwSeedMix *mix);

/** Free all species. */
void sw_seed_mix_clear (SwSeedMix *mix);

/** Whether both say the same (numbers bit for bit). */
gboolean sw_seed_mix_equal (const SwSeedMix *a, const SwSeedMix *b);

/** Whether a species of @mix has a rate. */
gboolean sw_seed_mix_is_sown (const SwSeedMix *mix);
