/* SPDX-License-Identifier: MIT */
#include <slopewright/base/work-plan.h>

#include <string.h>

const char *const sw_plan_group_keys[SW_PLAN_GROUP_COUNT] = {
  [SW_PLAN_FERTILISER] = "fertiliser", [SW_PLAN_HAUL] = "haul",
  [SW_PLAN_ALLOWANCE] = "allowance",   [SW_PLAN_CREW] = "crew",
  [SW_PLAN_PRICES] = "prices",
};

const char *const sw_allowance_codes[SW_ALLOWANCE_COUNT + 1] = {
  "practice", "taped", "usual", "scaled", "survey", "own", NULL
};

const double sw_allowance_shares[SW_ALLOWANCE_COUNT] = {
  [SW_ALLOWANCE_TAPED] = 0.03,
  [SW_ALLOWANCE_USUAL] = 0.05,
  [SW_ALLOWANCE_SCALED] = 0.08,
  [SW_ALLOWANCE_SURVEY] = 0.10,
};

/* Dearer than this a price was mistyped, or the coin is worth so little that
 * hundredths of it no longer fit a double. */
#define DEAREST 1e9

#define FERTILISER SW_PLAN_FERTILISER
#define HAUL SW_PLAN_HAUL
#define ALLOWANCE SW_PLAN_ALLOWANCE
#define CREW SW_PLAN_CREW
#define PRICES SW_PLAN_PRICES

const SwPlanKey sw_plan_keys[SW_PLAN_COUNT] = {
  /* clang-format off */
  [SW_PLAN_N] = { FERTILISER, "n", SW_UNIT_PERCENT, 0.0, 1.0, 0.0 },
  [SW_PLAN_P2O5] = { FERTILISER, "p2o5", SW_UNIT_PERCENT, 0.0, 1.0, 0.0 },
  [SW_PLAN_K2O] = { FERTILISER, "k2o", SW_UNIT_PERCENT, 0.0, 1.0, 0.0 },
  [SW_PLAN_NEED_N] = { FERTILISER, "need_n_kg_per_m2", SW_UNIT_KG_PER_M2, 0.0, 1.0, 0.0 },
  [SW_PLAN_NEED_P2O5] = { FERTILISER, "need_p2o5_kg_per_m2", SW_UNIT_KG_PER_M2, 0.0, 1.0, 0.0 },
  [SW_PLAN_NEED_K2O] = { FERTILISER, "need_k2o_kg_per_m2", SW_UNIT_KG_PER_M2, 0.0, 1.0, 0.0 },
  [SW_PLAN_BAG_KG] = { FERTILISER, "bag_kg", SW_UNIT_KG, 0.1, 2000.0, 0.0 },
  [SW_PLAN_TRUCK_M3] = { HAUL, "truck_m3", SW_UNIT_M3, 0.01, 100.0, 0.0 },
  [SW_PLAN_BACKFILL] = { HAUL, "backfill", SW_UNIT_PERCENT, 0.0, 1.0, 1.0 },
  [SW_PLAN_SHARE] = { ALLOWANCE, "share", SW_UNIT_PERCENT, 0.0, 1.0, 0.0 },
  [SW_PLAN_PEOPLE] = { CREW, "people", SW_UNIT_COUNT, 1.0, 1000.0, 0.0 },
  [SW_PLAN_DAY_H] = { CREW, "day_h", SW_UNIT_HOUR, 0.5, 24.0, 0.0 },
  [SW_PLAN_AT_WORK] = { CREW, "at_work", SW_UNIT_PERCENT, 0.05, 1.0, 1.0 },
  [SW_PLAN_DIFFICULTY] = { CREW, "difficulty", SW_UNIT_RATIO, 0.1, 10.0, 1.0 },
  [SW_PLAN_SETUP_H] = { CREW, "setup_h", SW_UNIT_HOUR, 0.0, 10000.0, 0.0 },
  [SW_PLAN_RUN_H] = { CREW, "run_h", SW_UNIT_HOUR, 0.0, 1000.0, 0.0 },
  [SW_PLAN_TRENCH_H_PER_M] = { CREW, "trench_h_per_m", SW_UNIT_H_PER_M, 0.0, 100.0, 0.0 },
  [SW_PLAN_PINS_H_PER_100] = { CREW, "pins_h_per_100", SW_UNIT_HOUR, 0.0, 1000.0, 0.0 },
  [SW_PLAN_SEEDING_H_PER_M2] = { CREW, "seeding_h_per_m2", SW_UNIT_H_PER_M2, 0.0, 10.0, 0.0 },
  [SW_PLAN_PRICE_ROLL] = { PRICES, "roll", SW_UNIT_MONEY, 0.0, DEAREST, 0.0 },
  [SW_PLAN_PRICE_BOX] = { PRICES, "box", SW_UNIT_MONEY, 0.0, DEAREST, 0.0 },
  [SW_PLAN_PRICE_SEED_KG] = { PRICES, "seed_kg", SW_UNIT_MONEY, 0.0, DEAREST, 0.0 },
  [SW_PLAN_PRICE_BAG] = { PRICES, "bag", SW_UNIT_MONEY, 0.0, DEAREST, 0.0 },
  [SW_PLAN_PRICE_LOAD] = { PRICES, "load", SW_UNIT_MONEY, 0.0, DEAREST, 0.0 },
  [SW_PLAN_PRICE_HOUR] = { PRICES, "hour", SW_UNIT_MONEY, 0.0, DEAREST, 0.0 },
  [SW_PLAN_LUMP_SUM] = { PRICES, "lump_sum", SW_UNIT_MONEY, 0.0, DEAREST, 0.0 },
  [SW_PLAN_OVERHEAD] = { PRICES, "overhead", SW_UNIT_PERCENT, 0.0, 5.0, 0.0 },
  [SW_PLAN_PROFIT] = { PRICES, "profit", SW_UNIT_PERCENT, 0.0, 5.0, 0.0 },
  [SW_PLAN_TAX] = { PRICES, "tax", SW_UNIT_PERCENT, 0.0, 1.0, 0.0 },
  /* clang-format on */
};

void
sw_work_plan_reset (SwWorkPlan *plan)
{
  for (int i = 0; i < SW_PLAN_COUNT; i++)
    plan->values[i] = sw_plan_keys[i].not_given;
  plan->allowance = SW_ALLOWANCE_PRACTICE;
  plan->spare_roll = FALSE;
  plan->cost_in_pack = FALSE;
}

gboolean
sw_work_plan_same_numbers (const SwWorkPlan *a, const SwWorkPlan *b)
{
  return memcmp (a->values, b->values, sizeof a->values) == 0
         && a->allowance == b->allowance && a->spare_roll == b->spare_roll
         && a->cost_in_pack == b->cost_in_pack;
}

double
sw_work_plan_label_room (const SwWorkPlan *plan, SwPlanNumber number)
{
  double others = 0.0;

  for (int i = SW_PLAN_N; i <= SW_PLAN_K2O; i++)
    if (i != (int) number)
      others += plan->values[i];
  return MAX (1.0 - others, 0.0);
}
