/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "../out-of-range.h"
#include <slopewright/tally/seed-mix.h>

/* Two grasses, one with hard seed; seed counts invented. */
static const SwSeedSpecies pair[] = {
  { 0.98, 0.92, 0.05, 550000.0, 0.003, 0.0, NULL },
  { 0.90, 0.85, 0.00, 3300000.0, 0.001, 0.0, NULL },
};

/* By hand: PLS 0.98 x 0.97 = 0.9506 and 0.765; as sold 3.1559 and 1.3072 g/m2; live
 * seeds 1650 and 3300 per m2, hence 1/3 and 2/3. */
static void
test_two_species (void)
{
  SwSeedLine lines[2];
  SwSeedTotal total;

  g_assert_cmpint (sw_seed_mix (pair, 2, 500.0, lines, &total), ==, SW_OK);
  g_assert_cmpfloat_with_epsilon (lines[0].pls, 0.9506, 1e-12);
  g_assert_cmpfloat_with_epsilon (lines[0].bulk_kg_per_m2, 0.003155902, 1e-9);
  g_assert_cmpfloat_with_epsilon (lines[1].bulk_kg_per_m2, 0.001307190, 1e-9);
  g_assert_cmpfloat_with_epsilon (lines[0].bulk_kg, 1.577951, 1e-6);
  g_assert_cmpfloat_with_epsilon (lines[0].seeds_per_m2, 1650.0, 1e-9);
  g_assert_cmpfloat_with_epsilon (lines[1].share_of_seeds, 2.0 / 3.0, 1e-12);
  g_assert_cmpfloat_with_epsilon (total.seeds_per_m2, 4950.0, 1e-9);
  g_assert_cmpfloat_with_epsilon (total.pls_kg_per_m2, 0.004, 1e-12);
  g_assert_cmpfloat_with_epsilon (total.bulk_kg, 500.0 * total.bulk_kg_per_m2, 1e-12);
}

static void
test_shares_add_up (void)
{
  SwSeedSpecies species[5];
  SwSeedLine lines[5];
  SwSeedTotal total;

  for (guint i = 0; i < 5; i++)
    species[i] = (SwSeedSpecies){
      0.95, 0.70 + 0.05 * i, 0.01 * i, 2e5 * (i + 1.0), 1e-3 / (i + 1.0), 0.0, NULL
    };
  for (guint count = 1; count <= 5; count++)
    {
      double seeds = 0.0, bulk = 0.0;

      g_assert_cmpint (sw_seed_mix (species, count, 10.0, lines, &total), ==, SW_OK);
      for (guint i = 0; i < count; i++)
        {
          seeds += lines[i].share_of_seeds;
          bulk += lines[i].share_of_bulk;
          g_assert_cmpfloat (lines[i].bulk_kg_per_m2, >=, species[i].pls_kg_per_m2);
        }
      g_assert_cmpfloat_with_epsilon (seeds, 1.0, 1e-12);
      g_assert_cmpfloat_with_epsilon (bulk, 1.0, 1e-12);
    }
}

/* Rate from a target and seeds from that rate come back to the target. */
static void
test_rate_there_and_back (void)
{
  SwSeedSpecies species = { 0.9, 0.8, 0.1, 7.5e5, 0.0, 0.0, NULL };
  SwSeedLine line;
  SwSeedTotal total;

  g_assert_cmpint (sw_seed_rate (400.0, species.seeds_per_kg, &species.pls_kg_per_m2), ==,
                   SW_OK);
  g_assert_cmpint (sw_seed_mix (&species, 1, 1.0, &line, &total), ==, SW_OK);
  g_assert_cmpfloat_with_epsilon (line.seeds_per_m2, 400.0, 1e-9);
}

static void
test_nothing_to_sow (void)
{
  const SwSeedSpecies species = { 0.9, 0.8, 0.0, 7.5e5, 0.0, 0.0, NULL };
  SwSeedLine line;
  SwSeedTotal total;

  g_assert_cmpint (sw_seed_mix (&species, 1, 100.0, &line, &total), ==, SW_OK);
  g_assert_cmpfloat (line.bulk_kg, ==, 0.0);
  g_assert_cmpfloat (line.share_of_bulk, ==, 0.0);
  g_assert_cmpfloat (line.share_of_seeds, ==, 0.0);
}

/* A rate in live seeds is the same rate: 400 ÷ 550 000 = 0.727273 g/m2 (row SR_3 of the
 * published values). */
static void
test_rate_in_seeds (void)
{
  const SwSeedSpecies species = { 0.9, 0.8, 0.1, 550000.0, 0.0, 400.0, NULL };
  SwSeedLine line;
  SwSeedTotal total;

  g_assert_cmpint (sw_seed_mix (&species, 1, 1000.0, &line, &total), ==, SW_OK);
  g_assert_cmpfloat_with_epsilon (line.pls_kg_per_m2, 0.000727272727, 1e-12);
  g_assert_cmpfloat_with_epsilon (total.seeds_per_m2, 400.0, 1e-9);
  g_assert_cmpfloat_with_epsilon (line.bulk_kg, 0.72727272727 / 0.81, 1e-9);
}

/* One species without a seed count: masses stand, numbers of seeds are left out. */
static void
test_seeds_not_counted (void)
{
  SwSeedSpecies species[2] = { pair[0], pair[1] };
  SwSeedLine lines[2];
  SwSeedTotal total;

  species[1].seeds_per_kg = 0.0;
  g_assert_cmpint (sw_seed_mix (species, 2, 500.0, lines, &total), ==, SW_OK);
  g_assert_cmpfloat_with_epsilon (lines[0].seeds_per_m2, 1650.0, 1e-9);
  g_assert_cmpfloat (lines[0].share_of_seeds, ==, 0.0);
  g_assert_cmpfloat (total.seeds_per_m2, ==, 0.0);
  g_assert_cmpfloat_with_epsilon (total.bulk_kg_per_m2, 0.004463092, 1e-9);
  g_assert_cmpfloat_with_epsilon (lines[0].share_of_bulk, 0.003155902 / 0.004463092,
                                  1e-6);
}

/* One bad number anywhere: no line is written. */
static void
test_refusals (void)
{
  SwSeedSpecies species[2];
  SwSeedLine lines[2];
  SwSeedTotal total;
  double out;

  REFUSES (out, sw_seed_rate (bad, 1e6, &out));
  REFUSES (out, sw_seed_rate (1.0, bad, &out));
  for (guint field = 0; field < 6; field++)
    for (gsize i = 0; i < G_N_ELEMENTS (never); i++)
      {
        double *fields[] = { &species[1].purity,        &species[1].germination,
                             &species[1].hard,          &species[1].seeds_per_kg,
                             &species[1].pls_kg_per_m2, &species[1].seeds_per_m2 };

        species[0] = pair[0];
        species[1] = pair[1];
        *fields[field] = never[i];
        lines[0].pls = UNTOUCHED;
        g_assert_cmpint (sw_seed_mix (species, 2, 1.0, lines, &total), ==, SW_E_RANGE);
        g_assert_cmpfloat (lines[0].pls, ==, UNTOUCHED);
      }
  species[0] = (SwSeedSpecies){ 0.9, 0.8, 0.0, 0.0, 0.0, 400.0, NULL };
  g_assert_cmpint (sw_seed_mix (species, 1, 1.0, lines, &total), ==, SW_E_RANGE);
  species[0] = (SwSeedSpecies){ 0.9, 0.8, 0.0, 1e6, 0.001, 400.0, NULL };
  g_assert_cmpint (sw_seed_mix (species, 1, 1.0, lines, &total), ==, SW_E_RANGE);
  out = UNTOUCHED;
  g_assert_cmpint (sw_seed_rate (0.0, 0.0, &out), ==, SW_E_RANGE);
  g_assert_cmpint (
      sw_seed_species_pls (&(SwSeedSpecies){ 0.9, 0.9, -0.1, 1.0, 1.0, 0.0, NULL }, &out),
      ==, SW_E_RANGE);
  g_assert_cmpint (
      sw_seed_species_pls (&(SwSeedSpecies){ 0.9, -0.1, 0.9, 1.0, 1.0, 0.0, NULL }, &out),
      ==, SW_E_RANGE);
  g_assert_cmpfloat (out, ==, UNTOUCHED);
  species[0] = (SwSeedSpecies){ 0.9, 0.96, 0.05, 1e6, 0.001, 0.0, NULL };
  g_assert_cmpint (sw_seed_mix (species, 1, 1.0, lines, &total), ==, SW_E_RANGE);
  g_assert_cmpint (sw_seed_mix (pair, 0, 1.0, lines, &total), ==, SW_E_RANGE);
  g_assert_cmpint (sw_seed_mix (pair, 2, -1.0, lines, &total), ==, SW_E_RANGE);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/tally/seed-mix/two-species", test_two_species);
  g_test_add_func ("/tally/seed-mix/shares-add-up", test_shares_add_up);
  g_test_add_func ("/tally/seed-mix/rate-there-and-back", test_rate_there_and_back);
  g_test_add_func ("/tally/seed-mix/nothing-to-sow", test_nothing_to_sow);
  g_test_add_func ("/tally/seed-mix/rate-in-seeds", test_rate_in_seeds);
  g_test_add_func ("/tally/seed-mix/seeds-not-counted", test_seeds_not_counted);
  g_test_add_func ("/tally/seed-mix/refusals", test_refusals);
  return g_test_run ();
}
