/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "rows.h"
#include <slopewright/base/count.h>
#include <slopewright/tally/earth-loads.h>
#include <slopewright/tally/fertiliser.h>
#include <slopewright/tally/labour.h>
#include <slopewright/tally/seed-mix.h>

#define KG_PER_M2_PER_LB_PER_ACRE (SW_KG_PER_LB / SW_M2_PER_ACRE)

static double
pure_live_seed (const CheckRow *row)
{
  SwSeedSpecies species = { .purity = check_input (row, "purity"),
                            .germination = check_input (row, "germination"),
                            .hard = check_input (row, "hard") };
  double got = NAN;

  MUST (sw_seed_species_pls (&species, &got));
  return got;
}

/* Lines of a mix of pure seed in lb/acre; as many as the row has. */
static SwSeedLine *
input_mix (const CheckRow *row)
{
  g_autoptr (GArray) rates = check_input_list (row, "pls_lb_per_ac");
  g_autoptr (GArray) counts = check_input_list (row, "seeds_per_lb");
  g_autofree SwSeedSpecies *species = g_new0 (SwSeedSpecies, rates->len);
  SwSeedLine *lines = g_new0 (SwSeedLine, rates->len);
  SwSeedTotal total;

  g_assert_cmpuint (rates->len, ==, counts->len);
  for (guint i = 0; i < rates->len; i++)
    species[i] = (SwSeedSpecies){
      .purity = 1.0,
      .germination = 1.0,
      .seeds_per_kg = g_array_index (counts, double, i) / SW_KG_PER_LB,
      .pls_kg_per_m2 = g_array_index (rates, double, i) * KG_PER_M2_PER_LB_PER_ACRE,
    };
  MUST (sw_seed_mix (species, rates->len, 1.0, lines, &total));
  return lines;
}

static double
seeds_per_ft2 (const CheckRow *row)
{
  g_autofree SwSeedLine *lines = input_mix (row);

  return lines[0].seeds_per_m2 * SW_M2_PER_FT2;
}

static double
share_of_seeds (const CheckRow *row)
{
  g_autofree SwSeedLine *lines = input_mix (row);

  return lines[(int) check_input (row, "species") - 1].share_of_seeds;
}

static double
pls_rate (const CheckRow *row)
{
  double per_ft2 = check_input_or (row, "seeds_per_ft2", NAN), got = NAN;

  if (isnan (per_ft2))
    {
      MUST (sw_seed_rate (check_input (row, "seeds_per_m2"),
                          check_input (row, "seeds_per_g") * 1000.0, &got));
      return got * 1000.0;
    }
  MUST (sw_seed_rate (per_ft2 / SW_M2_PER_FT2,
                      check_input (row, "seeds_per_lb") / SW_KG_PER_LB, &got));
  return got / KG_PER_M2_PER_LB_PER_ACRE;
}

static void
input_grade (const CheckRow *row, double grade[SW_NUTRIENT_COUNT])
{
  grade[SW_NUTRIENT_N] = check_input (row, "n") / 100.0;
  grade[SW_NUTRIENT_P2O5] = check_input (row, "p") / 100.0;
  grade[SW_NUTRIENT_K2O] = check_input (row, "k") / 100.0;
}

/* Linear in mass, so the row's own unit serves. */
static double
fertiliser_product (const CheckRow *row)
{
  double grade[SW_NUTRIENT_COUNT], need[SW_NUTRIENT_COUNT] = { 0.0 };
  SwFertiliser got = { .product_kg_per_m2 = NAN };

  input_grade (row, grade);
  need[SW_NUTRIENT_N] = check_input (row, "need_n");
  MUST (sw_fertiliser (grade, need, &got));
  return got.product_kg_per_m2;
}

static double
fertiliser_nutrient (const CheckRow *row)
{
  double grade[SW_NUTRIENT_COUNT], nutrient[SW_NUTRIENT_COUNT], filler;

  input_grade (row, grade);
  MUST (sw_fertiliser_contents (grade, check_input (row, "product"), nutrient, &filler));
  return nutrient[(int) check_input (row, "nutrient") - 1];
}

static double
fertiliser_filler (const CheckRow *row)
{
  double grade[SW_NUTRIENT_COUNT], nutrient[SW_NUTRIENT_COUNT], filler = NAN;

  input_grade (row, grade);
  MUST (sw_fertiliser_contents (grade, check_input (row, "product"), nutrient, &filler));
  return filler;
}

static double
oxide_factor (const CheckRow *row)
{
  g_autofree char *oxide = check_input_text (row, "oxide");

  return g_str_equal (oxide, "p2o5") ? sw_phosphorus_per_p2o5 ()
                                     : sw_potassium_per_k2o ();
}

static double
bags (const CheckRow *row)
{
  int got = -1;

  MUST (sw_bags (check_input (row, "product"), check_input (row, "bag"), &got));
  return got;
}

static double
truck_loads (const CheckRow *row)
{
  int got = -1;

  MUST (sw_earth_loads (check_input (row, "loose"), check_input (row, "truck"), &got));
  return got;
}

static double
bank_for_compacted (const CheckRow *row)
{
  double got = NAN;

  MUST (sw_bank_for_compacted (check_input (row, "compacted"),
                               check_input (row, "factor"), &got));
  return got;
}

static double
compacted_of_loose (const CheckRow *row)
{
  double got = NAN;

  MUST (sw_compacted_of_loose (check_input (row, "loose"), check_input (row, "swell"),
                               check_input (row, "factor"), &got));
  return got;
}

static double
swell_of_volumes (const CheckRow *row)
{
  double got = NAN;

  MUST (
      sw_swell_of_volumes (check_input (row, "bank"), check_input (row, "loose"), &got));
  return 100.0 * got;
}

static double
shrink_of_densities (const CheckRow *row)
{
  double got = NAN;

  MUST (sw_shrink_of_densities (check_input (row, "bank"), check_input (row, "fill"),
                                &got));
  return got;
}

static double
man_days (const CheckRow *row)
{
  double got = NAN;

  MUST (sw_man_days (check_input (row, "quantity"), check_input (row, "unit"),
                     check_input (row, "man_hours"), 1.0, &got));
  return got;
}

static double
duration (const CheckRow *row)
{
  double got = NAN;

  MUST (sw_duration (check_input (row, "man_days"), (int) check_input (row, "crew"),
                     check_input (row, "availability"),
                     check_input (row, "day_equivalent"), &got));
  return got;
}

static double
whole_days (const CheckRow *row)
{
  return sw_count_up_ratio (duration (row));
}

static double
day_equivalent (const CheckRow *row)
{
  double got = NAN;

  MUST (sw_day_equivalent (check_input (row, "hours"), &got));
  return got;
}

static double
crew_days (const CheckRow *row)
{
  double got = NAN;

  MUST (sw_crew_days (check_input (row, "quantity"), check_input (row, "per_day"), &got));
  return got;
}

static double
man_hours (const CheckRow *row)
{
  double got = NAN;

  MUST (sw_man_hours ((int) check_input (row, "people"), check_input (row, "days"),
                      check_input (row, "hours"), &got));
  return got;
}

static double
unit_hours (const CheckRow *row)
{
  double got = NAN;

  MUST (sw_unit_hours ((int) check_input (row, "people"), check_input (row, "hours"),
                       check_input (row, "units"), &got));
  return got;
}

const CheckQuantity rows_order[] = {
  { "pure live seed", pure_live_seed },
  { "seeds per ft2", seeds_per_ft2 },
  { "share of seeds", share_of_seeds },
  { "PLS rate", pls_rate },
  { "fertiliser product", fertiliser_product },
  { "fertiliser nutrient", fertiliser_nutrient },
  { "fertiliser filler", fertiliser_filler },
  { "fertiliser oxide factor", oxide_factor },
  { "bags", bags },
  { "truck loads", truck_loads },
  { "bank for compacted", bank_for_compacted },
  { "compacted of loose", compacted_of_loose },
  { "swell of volumes", swell_of_volumes },
  { "shrink of densities", shrink_of_densities },
  { "man-days", man_days },
  { "duration", duration },
  { "whole days", whole_days },
  { "day equivalent", day_equivalent },
  { "crew days", crew_days },
  { "man-hours", man_hours },
  { "unit hours", unit_hours },
};
const guint n_rows_order = G_N_ELEMENTS (rows_order);
