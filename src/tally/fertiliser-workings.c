/* SPDX-License-Identifier: MIT */
#include "tally-private.h"

/* The job has label and need in the order of the nutrients. */
G_STATIC_ASSERT (SW_PLAN_K2O - SW_PLAN_N == (int) SW_NUTRIENT_K2O);
G_STATIC_ASSERT (SW_PLAN_NEED_K2O - SW_PLAN_NEED_N == (int) SW_NUTRIENT_K2O);

static const char *const nutrient_codes[SW_NUTRIENT_COUNT] = { "n", "p2o5", "k2o" };

const char *
sw_nutrient_code (SwNutrient nutrient)
{
  return nutrient_codes[nutrient];
}

/* What the spread brings of each nutrient that was asked for and is in the product. */
static void
add_given (SwTally *tally, const double *label, const double *need, const SwWorking *rate)
{
  for (int i = 0; i < SW_NUTRIENT_COUNT; i++)
    if (need[i] > 0.0 && label[i] > 0.0)
      {
        SwWorking *given =
            sw_tally_add (tally, sw_working_new ("fertiliser_given",
                                                 tally->fertiliser.given_kg_per_m2[i],
                                                 SW_UNIT_KG_PER_M2, SW_ROUNDING_NONE,
                                                 "fertiliser.%s", nutrient_codes[i]));

        sw_working_computed (given, "product", rate);
        sw_working_typed (given, "label", label[i], SW_UNIT_PERCENT);
        sw_working_typed (given, "need", need[i], SW_UNIT_KG_PER_M2);
      }
}

static SwWorking *
add_rate (SwTally *tally, const double *label, const double *need)
{
  const SwFertiliser *found = &tally->fertiliser;
  SwWorking *rate = sw_tally_add (
      tally, sw_working_new ("fertiliser_rate", found->product_kg_per_m2,
                             SW_UNIT_KG_PER_M2, SW_ROUNDING_NONE, "fertiliser-rate"));

  sw_working_typed (rate, "need", need[found->limiting], SW_UNIT_KG_PER_M2);
  sw_working_typed (rate, "label", label[found->limiting], SW_UNIT_PERCENT);
  return rate;
}

static void
add_mass (SwTally *tally, const SwWorking *rate, double bag_kg)
{
  const SwWorking *net = sw_tally_working (tally, "net-area");
  SwWorking *mass, *bags;

  tally->fertiliser_kg = rate->value * net->value;
  mass = sw_tally_add (tally,
                       sw_working_new ("fertiliser_mass", tally->fertiliser_kg,
                                       SW_UNIT_KG, SW_ROUNDING_NONE, "fertiliser-mass"));
  sw_working_computed (mass, "product", rate);
  sw_working_computed (mass, "net", net);
  if (sw_bags (tally->fertiliser_kg, bag_kg, &tally->fertiliser_bags) != SW_OK)
    return;
  bags = sw_tally_add (tally,
                       sw_working_new ("fertiliser_bags", tally->fertiliser_bags,
                                       SW_UNIT_COUNT, SW_ROUNDING_UP, "fertiliser-bags"));
  sw_working_computed (bags, "product_mass", mass);
  sw_working_typed (bags, "bag", bag_kg, SW_UNIT_KG);
}

void
sw_tally_fertiliser (SwTally *tally, const SwLayout *layout)
{
  const double *values = layout->job->plan.values;
  const double *label = &values[SW_PLAN_N], *need = &values[SW_PLAN_NEED_N];
  SwWorking *rate;

  if (sw_fertiliser (label, need, &tally->fertiliser) != SW_OK
      || !(tally->fertiliser.product_kg_per_m2 > 0.0))
    return;
  rate = add_rate (tally, label, need);
  add_given (tally, label, need, rate);
  add_mass (tally, rate, values[SW_PLAN_BAG_KG]);
}
