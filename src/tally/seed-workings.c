/* SPDX-License-Identifier: MIT */
#include "tally-private.h"

static void
add_tag (SwWorking *bulk, const SwSeedSpecies *species)
{
  sw_working_typed (bulk, "purity", species->purity, SW_UNIT_PERCENT);
  sw_working_typed (bulk, "germination", species->germination, SW_UNIT_PERCENT);
  sw_working_typed (bulk, "hard", species->hard, SW_UNIT_PERCENT);
}

/* "seed-pls" where a species is the whole of the mix, "seed-species.2.pls" else; longer
 * than the id of a face can be. */
static SwWorking *
new_working (SwTally *tally, guint index, const char *formula, double value, SwUnit unit,
             const char *what)
{
  if (tally->seed_lines->len == 1)
    return sw_tally_add (
        tally, sw_working_new (formula, value, unit, SW_ROUNDING_NONE, "seed-%s", what));
  return sw_tally_add (tally, sw_working_new (formula, value, unit, SW_ROUNDING_NONE,
                                              "seed-species.%u.%s", index + 1, what));
}

/* Live seeds per area: what was asked for, or what the rate by mass comes to. */
static SwWorking *
add_seeds (SwTally *tally, guint index, const SwSeedSpecies *species,
           const SwSeedLine *line)
{
  SwWorking *seeds = new_working (tally, index, "seed_count", line->seeds_per_m2,
                                  SW_UNIT_SEEDS_PER_M2, "count");

  sw_working_typed (seeds, "rate", line->pls_kg_per_m2, SW_UNIT_KG_PER_M2);
  sw_working_typed (seeds, "seeds_per_kg", species->seeds_per_kg, SW_UNIT_SEEDS_PER_KG);
  return seeds;
}

static void
add_species (SwTally *tally, guint index, const SwSeedSpecies *species)
{
  const SwSeedLine *line = &g_array_index (tally->seed_lines, SwSeedLine, index);
  const SwWorking *net = sw_tally_working (tally, "net-area");
  SwWorking *rate = NULL, *pls, *bulk;

  if (species->seeds_per_m2 > 0.0)
    {
      rate = new_working (tally, index, "seed_rate", line->pls_kg_per_m2,
                          SW_UNIT_KG_PER_M2, "rate");
      sw_working_typed (rate, "seeds", species->seeds_per_m2, SW_UNIT_SEEDS_PER_M2);
      sw_working_typed (rate, "seeds_per_kg", species->seeds_per_kg,
                        SW_UNIT_SEEDS_PER_KG);
    }
  else if (line->seeds_per_m2 > 0.0)
    add_seeds (tally, index, species, line);
  pls = new_working (tally, index, "seed_pls", line->pls_kg_per_m2 * net->value,
                     SW_UNIT_KG, "pls");
  sw_working_computed (pls, "net", net);
  if (rate != NULL)
    sw_working_computed (pls, "rate", rate);
  else
    sw_working_typed (pls, "rate", line->pls_kg_per_m2, SW_UNIT_KG_PER_M2);
  bulk = new_working (tally, index, "seed_bulk", line->bulk_kg, SW_UNIT_KG, "bulk");
  sw_working_computed (bulk, "pls", pls);
  add_tag (bulk, species);
}

/* Shares by number and by mass differ by as much as the seeds do in size. */
static void
add_shares_of_mix (SwTally *tally, guint index)
{
  const SwSeedLine *line = &g_array_index (tally->seed_lines, SwSeedLine, index);
  SwWorking *share;

  if (tally->seed.seeds_per_m2 > 0.0)
    {
      share = new_working (tally, index, "seed_share", line->share_of_seeds,
                           SW_UNIT_PERCENT, "share-of-seeds");
      sw_working_part (share, "seeds", line->seeds_per_m2, SW_UNIT_SEEDS_PER_M2);
      sw_working_part (share, "all_seeds", tally->seed.seeds_per_m2,
                       SW_UNIT_SEEDS_PER_M2);
    }
  share = new_working (tally, index, "seed_share_bulk", line->share_of_bulk,
                       SW_UNIT_PERCENT, "share-of-mass");
  sw_working_part (share, "bulk", line->bulk_kg, SW_UNIT_KG);
  sw_working_part (share, "all_bulk", tally->seed_bulk_kg, SW_UNIT_KG);
}

static void
add_sum (SwTally *tally, const char *formula, const char *what, double value)
{
  SwWorking *sum =
      sw_tally_add (tally, sw_working_new (formula, value, SW_UNIT_KG, SW_ROUNDING_NONE,
                                           "seed-%s", what));

  for (guint i = 0; i < tally->seed_lines->len; i++)
    {
      g_autofree char *name = g_strdup_printf ("seed-species.%u.%s", i + 1, what);

      sw_working_computed (sum, "species", sw_tally_working (tally, name));
    }
}

void
sw_tally_seed (SwTally *tally, const SwLayout *layout)
{
  const SwSeedMix *mix = &layout->job->seed;

  if (!sw_seed_mix_is_sown (mix))
    return;
  g_array_set_size (tally->seed_lines, mix->n_species);
  if (sw_seed_mix (mix->species, mix->n_species, tally->areas.net_m2,
                   (SwSeedLine *) tally->seed_lines->data, &tally->seed)
      != SW_OK)
    {
      g_array_set_size (tally->seed_lines, 0);
      return;
    }
  tally->seed_pls_kg = tally->seed.pls_kg_per_m2 * tally->areas.net_m2;
  tally->seed_bulk_kg = tally->seed.bulk_kg;
  for (guint i = 0; i < mix->n_species; i++)
    add_species (tally, i, &mix->species[i]);
  if (mix->n_species == 1)
    return;
  add_sum (tally, "seed_pls_sum", "pls", tally->seed_pls_kg);
  add_sum (tally, "seed_bulk_sum", "bulk", tally->seed_bulk_kg);
  for (guint i = 0; i < mix->n_species; i++)
    add_shares_of_mix (tally, i);
}
