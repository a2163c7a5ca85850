/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "../layout/fixture.h"
#include "../out-of-range.h"
#include <slopewright/tally/allowance.h>
#include <slopewright/tally/tally.h>

#define M2_PER_FT2 0.09290304
#define KG_PER_LB 0.45359237
#define NEAR(value, want) g_assert_cmpfloat_with_epsilon ((value), (want), 1e-9 * (want))

typedef struct
{
  SwCatalogue *catalogue;
  SwJob *job;
  SwLayout *layout;
  SwTally *tally;
} Fixture;

/* A plane of 16 000 square feet, 60 m wide: 2 out and 1 up are sqrt (5) on the face. */
static void
set_up (Fixture *f, gconstpointer data)
{
  f->catalogue = fixture_catalogue ();
  f->job = fixture_job ();
  fixture_add_plane (f->job, "A", 2.0, 16000.0 * M2_PER_FT2 / 60.0 / sqrt (5.0), 60.0);
}

static void
drop_tally (Fixture *f)
{
  g_clear_pointer (&f->tally, sw_tally_free);
  g_clear_pointer (&f->layout, sw_layout_free);
}

static void
tear_down (Fixture *f, gconstpointer data)
{
  drop_tally (f);
  sw_job_unref (f->job);
  sw_catalogue_free (f->catalogue);
}

static void
count (Fixture *f)
{
  drop_tally (f);
  f->layout = fixture_lay (f->job, f->catalogue);
  f->tally = sw_tally_new (f->layout);
}

static double
worked (Fixture *f, const char *name)
{
  const SwWorking *working = sw_tally_working (f->tally, name);

  if (working == NULL)
    g_error ("no working \"%s\"", name);
  return working->value;
}

/* Nothing given, nothing invented: none of these numbers exist. */
static void
test_blank (Fixture *f, gconstpointer data)
{
  static const char *const names[] = { "seed-pls",    "seed-bulk",       "haul",
                                       "truck-loads", "fertiliser-rate", "crew-hours",
                                       "crew-days",   "cost-total" };

  count (f);
  for (gsize i = 0; i < G_N_ELEMENTS (names); i++)
    g_assert_null (sw_tally_working (f->tally, names[i]));
  g_assert_false (f->tally->priced);
  g_assert_cmpuint (f->tally->seed_lines->len, ==, 0);
}

/* Rows PLS_3 (native-seed group page: 98 % x (92 + 5) %; 3.00 lb/acre are 3.16 as sold)
 * and MIX_1 (70 and 30 by mass of 250 000 and 1.5 M seeds a pound are 28 and 72 of 100). */
static void
test_published_seed (Fixture *f, gconstpointer data)
{
  const double lb_per_acre = KG_PER_LB / (43560.0 * M2_PER_FT2);
  SwSeedSpecies one = { 0.98, 0.92, 0.05, 0.0, 3.0 * lb_per_acre, 0.0, "One" };
  SwSeedSpecies rye = { 1.0, 1.0, 0.0, 250000.0 / KG_PER_LB, 0.7e-3, 0.0, "Rye" };
  SwSeedSpecies blue = { 1.0, 1.0, 0.0, 1.5e6 / KG_PER_LB, 0.3e-3, 0.0, "Blue" };

  sw_seed_mix_add (&f->job->seed, &one);
  count (f);
  NEAR (worked (f, "seed-bulk"), 3.0 / 0.9506 * lb_per_acre * 16000.0 * M2_PER_FT2);
  g_assert_null (sw_tally_working (f->tally, "seed-species.1.bulk"));
  sw_seed_mix_clear (&f->job->seed);
  sw_seed_mix_add (&f->job->seed, &rye);
  sw_seed_mix_add (&f->job->seed, &blue);
  count (f);
  NEAR (worked (f, "seed-species.1.share-of-seeds"), 0.28);
  NEAR (worked (f, "seed-species.2.share-of-seeds"), 0.72);
  NEAR (worked (f, "seed-species.1.share-of-mass"), 0.7);
  NEAR (worked (f, "seed-bulk"), 1e-3 * 16000.0 * M2_PER_FT2);
}

/* Row SR_1: 35 seeds a square foot of 250 000 a pound are 6.0984 lb/acre. */
static void
test_published_rate (Fixture *f, gconstpointer data)
{
  SwSeedSpecies species = { 0.9, 0.85, 0.0, 250000.0 / KG_PER_LB, 0.0, 35.0 / M2_PER_FT2,
                            "" };

  sw_seed_mix_add (&f->job->seed, &species);
  count (f);
  NEAR (worked (f, "seed-rate"), 6.0984 * KG_PER_LB / (43560.0 * M2_PER_FT2));
  NEAR (worked (f, "seed-bulk"), worked (f, "seed-pls") / 0.765);
}

/* Rows FERT_4 to FERT_5c: 100 lb of nitrogen from 28-14-5 are 357 lb, 7.14 bags of 50 lb:
 * buy 8. Half a per cent above and below seven bags. */
static void
test_published_fertiliser (Fixture *f, gconstpointer data)
{
  double *values = f->job->plan.values;

  values[SW_PLAN_N] = 0.28;
  values[SW_PLAN_P2O5] = 0.14;
  values[SW_PLAN_K2O] = 0.05;
  values[SW_PLAN_NEED_N] = 100.0 * KG_PER_LB / (16000.0 * M2_PER_FT2);
  values[SW_PLAN_BAG_KG] = 50.0 * KG_PER_LB;
  count (f);
  NEAR (worked (f, "fertiliser-mass"), 100.0 / 0.28 * KG_PER_LB);
  g_assert_cmpint (f->tally->fertiliser_bags, ==, 8);
  values[SW_PLAN_NEED_N] *= 0.98 * 0.995;
  count (f);
  g_assert_cmpint (f->tally->fertiliser_bags, ==, 7);
  values[SW_PLAN_NEED_N] *= 1.005 / 0.995;
  count (f);
  g_assert_cmpint (f->tally->fertiliser_bags, ==, 8);
  values[SW_PLAN_BAG_KG] = 0.0;
  count (f);
  g_assert_null (sw_tally_working (f->tally, "fertiliser-bags"));
}

/* The nutrient that asks for most governs; one that the label has not is missing. */
static void
test_limiting_nutrient (Fixture *f, gconstpointer data)
{
  double *values = f->job->plan.values;

  values[SW_PLAN_N] = 0.10;
  values[SW_PLAN_P2O5] = 0.20;
  values[SW_PLAN_NEED_N] = 0.004;
  values[SW_PLAN_NEED_P2O5] = 0.009;
  values[SW_PLAN_NEED_K2O] = 0.003;
  count (f);
  g_assert_cmpint (f->tally->fertiliser.limiting, ==, SW_NUTRIENT_P2O5);
  g_assert_cmpuint (f->tally->fertiliser.missing, ==, 1u << SW_NUTRIENT_K2O);
  NEAR (worked (f, "fertiliser-rate"), 0.045);
  NEAR (worked (f, "fertiliser.n"), 0.0045);
  g_assert_null (sw_tally_working (f->tally, "fertiliser.k2o"));
  values[SW_PLAN_NEED_P2O5] = 0.0079;
  count (f);
  g_assert_cmpint (f->tally->fertiliser.limiting, ==, SW_NUTRIENT_N);
}

/* Row EW_2: 1300 in loads of 7 are 186. What goes back stays. */
static void
test_published_loads (Fixture *f, gconstpointer data)
{
  double *values = f->job->plan.values;

  values[SW_PLAN_TRUCK_M3] = 1.0;
  count (f);
  g_assert_cmpfloat_with_epsilon (worked (f, "haul"), 0.0, 1e-12);
  g_assert_cmpint (f->tally->loads, ==, 0);
  values[SW_PLAN_BACKFILL] = 0.0;
  values[SW_PLAN_TRUCK_M3] = f->tally->trench_loose_m3 * 7.0 / 1300.0;
  count (f);
  NEAR (worked (f, "haul"), f->tally->trench_loose_m3);
  g_assert_cmpint (f->tally->loads, ==, 186);
  values[SW_PLAN_BACKFILL] = 0.75;
  values[SW_PLAN_TRUCK_M3] = f->tally->trench_loose_m3 / 8.0;
  count (f);
  g_assert_cmpint (f->tally->loads, ==, 2);
}

/* Row LAB_1 (US Navy Seabee manual 14045): 16 000 square feet at 33 man-hours a thousand
 * are 66 man-days; and its duration: 70 man-days, 12 people, 0.75, 7.5 h: 8.3, so 9. */
static void
test_published_time (Fixture *f, gconstpointer data)
{
  double *values = f->job->plan.values;

  values[SW_PLAN_SEEDING_H_PER_M2] = 33.0 / (1000.0 * M2_PER_FT2);
  count (f);
  NEAR (worked (f, "crew-man-days"), 66.0);
  g_assert_null (sw_tally_working (f->tally, "crew-days"));
  values[SW_PLAN_DIFFICULTY] = 1.25;
  count (f);
  NEAR (worked (f, "crew-man-days"), 82.5);
  values[SW_PLAN_SEEDING_H_PER_M2] = 0.0;
  values[SW_PLAN_DIFFICULTY] = 1.0;
  values[SW_PLAN_SETUP_H] = 560.0;
  values[SW_PLAN_PEOPLE] = 12.0;
  values[SW_PLAN_AT_WORK] = 0.75;
  values[SW_PLAN_DAY_H] = 7.5;
  count (f);
  g_assert_cmpfloat_with_epsilon (worked (f, "crew-days"), 8.296, 0.0005);
  g_assert_cmpint (f->tally->crew.whole_days, ==, 9);
  NEAR (worked (f, "crew-paid-hours"), 560.0 / 0.75);
}

/* Every task counts what the layout has. */
static void
test_tasks (Fixture *f, gconstpointer data)
{
  double *values = f->job->plan.values;

  values[SW_PLAN_RUN_H] = 0.5;
  values[SW_PLAN_TRENCH_H_PER_M] = 0.1;
  values[SW_PLAN_PINS_H_PER_100] = 0.4;
  count (f);
  NEAR (worked (f, "crew-runs"), 0.5 * f->layout->faces[0].n_runs);
  NEAR (worked (f, "crew-trench"),
        0.1 * (f->tally->key_trench_m + f->tally->slot_m + f->tally->toe_trench_m));
  NEAR (worked (f, "crew-pins"), 0.004 * (double) f->layout->faces[0].n_pins);
  NEAR (worked (f, "crew-hours"),
        worked (f, "crew-runs") + worked (f, "crew-trench") + worked (f, "crew-pins"));
}

/* By hand: rolls x 55.50 and 12 h / 0.8 = 15 h at 42.50 = 637.50 and 150 to come, each
 * mark-up on all above it, every amount to hundredths. */
static void
test_cost (Fixture *f, gconstpointer data)
{
  double *values = f->job->plan.values;
  double direct, overhead, profit, net;

  values[SW_PLAN_SETUP_H] = 12.0;
  values[SW_PLAN_AT_WORK] = 0.8;
  values[SW_PLAN_PRICE_ROLL] = 55.5;
  values[SW_PLAN_PRICE_HOUR] = 42.5;
  values[SW_PLAN_LUMP_SUM] = 150.0;
  values[SW_PLAN_OVERHEAD] = 0.12;
  values[SW_PLAN_PROFIT] = 0.08;
  values[SW_PLAN_TAX] = 0.075;
  count (f);
  direct = 55.5 * f->tally->rolls_order + 637.5 + 150.0;
  overhead = round (direct * 12.0) / 100.0;
  profit = round ((direct + overhead) * 8.0) / 100.0;
  net = direct + overhead + profit;
  NEAR (worked (f, "cost-hours"), 637.5);
  NEAR (worked (f, "cost-direct"), direct);
  NEAR (worked (f, "cost-overhead"), overhead);
  NEAR (worked (f, "cost-profit"), profit);
  NEAR (worked (f, "cost-total"), net + round (net * 7.5) / 100.0);
  g_assert_null (sw_tally_working (f->tally, "cost-boxes"));
}

/* 100 m of pieces and rolls of 34 m: 5 % asks for 5 m. Sides of every step. */
static void
test_allowance_steps (void)
{
  static const struct
  {
    double spare_m, share;
    int extra;
  } rows[] = { { 5.0, 0.05, 0 }, { 4.9, 0.05, 1 }, { 5.1, 0.05, 0 },
               { 0.0, 0.0, 0 },  { 0.0, 0.34, 1 }, { 0.0, 0.341, 2 },
               { 0.0, 0.05, 1 }, { 50.0, 0.1, 0 }, { 4.99999, 0.05, 0 } };
  int extra;
  double out = 0.0;

  for (gsize i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_assert_cmpint (
          sw_allowance_rolls (100.0, rows[i].spare_m, 34.0, rows[i].share, &extra), ==,
          SW_OK);
      g_assert_cmpint (extra, ==, rows[i].extra);
    }
  REFUSES (out, sw_allowance_rolls (bad, 1.0, 34.0, 0.05, &extra));
  REFUSES (out, sw_allowance_rolls (1.0, bad, 34.0, 0.05, &extra));
  REFUSES (out, sw_allowance_rolls (1.0, 1.0, bad, 0.05, &extra));
  REFUSES (out, sw_allowance_rolls (1.0, 1.0, 34.0, bad, &extra));
  g_assert_cmpint (sw_allowance_rolls (1.0, 1.0, 0.0, 0.05, &extra), ==, SW_E_RANGE);
}

/* The allowance takes the place of the practice's spare rolls; both are never added. */
static void
test_allowance_once (Fixture *f, gconstpointer data)
{
  int rolls;

  sw_job_set_override (f->job, SW_PRACTICE_ROLL_SPARE, 0.10, "far");
  count (f);
  rolls = f->layout->rolls;
  g_assert_cmpint (f->tally->rolls_order, ==, (int) ceil (rolls * 1.1 - 1e-9));
  f->job->plan.allowance = SW_ALLOWANCE_OWN;
  f->job->plan.values[SW_PLAN_SHARE] = 0.0;
  count (f);
  g_assert_cmpint (f->tally->rolls_order, ==, rolls);
  f->job->plan.values[SW_PLAN_SHARE] = f->tally->allowance.given;
  count (f);
  g_assert_cmpint (f->tally->rolls_order, ==, rolls);
  f->job->plan.values[SW_PLAN_SHARE] = f->tally->allowance.given + 0.01;
  count (f);
  g_assert_cmpint (f->tally->rolls_order, ==, rolls + 1);
  f->job->plan.spare_roll = TRUE;
  count (f);
  g_assert_cmpint (f->tally->rolls_order, ==, rolls + 2);
  g_assert_cmpint (f->tally->rolls_spare, ==, 2);
  f->job->plan.allowance = SW_ALLOWANCE_PRACTICE;
  count (f);
  g_assert_cmpint (f->tally->rolls_order, ==, (int) ceil (rolls * 1.1 - 1e-9) + 1);
}

int
main (int argc, char **argv)
{
#define ADD(path, test) g_test_add (path, Fixture, NULL, set_up, test, tear_down)
  g_test_init (&argc, &argv, NULL);
  ADD ("/tally/order/blank", test_blank);
  ADD ("/tally/order/published-seed", test_published_seed);
  ADD ("/tally/order/published-rate", test_published_rate);
  ADD ("/tally/order/published-fertiliser", test_published_fertiliser);
  ADD ("/tally/order/limiting-nutrient", test_limiting_nutrient);
  ADD ("/tally/order/published-loads", test_published_loads);
  ADD ("/tally/order/published-time", test_published_time);
  ADD ("/tally/order/tasks", test_tasks);
  ADD ("/tally/order/cost", test_cost);
  ADD ("/tally/order/allowance-once", test_allowance_once);
  g_test_add_func ("/tally/order/allowance-steps", test_allowance_steps);
  return g_test_run ();
}
