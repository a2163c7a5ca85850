/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "../out-of-range.h"
#include <slopewright/judge/lifting.h>

static const SwUnitSystem both[] = { SW_UNITS_METRIC, SW_UNITS_US };

/* A roll off a low stack: 18 kg, arms out, once a minute for an hour. */
static const SwLift roll = { .mass_kg = 18.0,
                             .reach_m = 0.40,
                             .height_m = 0.20,
                             .begin_height_m = 0.20,
                             .travel_m = 0.80,
                             .per_min = 1.0,
                             .duration = SW_LIFT_SHORT,
                             .grip = SW_GRIP_POOR };

static SwLiftResult
result_of (SwLift lift)
{
  SwLiftResult result = { .index = NAN };

  g_assert_cmpint (sw_lift (SW_UNITS_METRIC, &lift, &result), ==, SW_OK);
  return result;
}

static double
frequency_of (double per_min, double height_m, SwLiftDuration duration)
{
  double factor = NAN;

  g_assert_cmpint (
      sw_lift_frequency_factor (SW_UNITS_METRIC, per_min, height_m, duration, &factor),
      ==, SW_OK);
  return factor;
}

/* By hand: 25/40, 1 - 0.003 x 55, 0.82 + 4.5/80, 1, table 5, table 7; 23 kg times all of
 * them is 8.898 kg. */
static void
test_whole_lift (void)
{
  SwLiftResult result = result_of (roll);

  g_assert_cmpfloat_with_epsilon (result.reach, 0.625, 1e-12);
  g_assert_cmpfloat_with_epsilon (result.height, 0.835, 1e-12);
  g_assert_cmpfloat_with_epsilon (result.travel, 0.87625, 1e-12);
  g_assert_cmpfloat_with_epsilon (result.twist, 1.0, 1e-12);
  g_assert_cmpfloat_with_epsilon (result.frequency, 0.94, 1e-12);
  g_assert_cmpfloat_with_epsilon (result.grip, 0.90, 1e-12);
  g_assert_cmpfloat_with_epsilon (result.limit_kg, 8.898007, 1e-6);
  g_assert_cmpfloat_with_epsilon (result.index, 2.022925, 1e-6);
  g_assert_cmphex (result.limits, ==, SW_LIFT_WITHIN);
}

/* Nothing makes a lift easier than the load constant. */
static void
test_factors_stay_within_one (void)
{
  for (gsize u = 0; u < G_N_ELEMENTS (both); u++)
    for (double m = 0.0; m < 2.5; m += 0.01)
      {
        double reach, height, travel, twist;

        g_assert_cmpint (sw_lift_reach_factor (both[u], m, &reach), ==, SW_OK);
        g_assert_cmpint (sw_lift_height_factor (both[u], m, &height), ==, SW_OK);
        g_assert_cmpint (sw_lift_travel_factor (both[u], m, &travel), ==, SW_OK);
        g_assert_cmpint (sw_lift_twist_factor (m, &twist), ==, SW_OK);
        g_assert_true (reach >= 0.0 && reach <= 1.0);
        g_assert_true (height >= 0.0 && height <= 1.0);
        g_assert_true (travel >= 0.0 && travel <= 1.0);
        g_assert_true (twist >= 0.0 && twist <= 1.0);
      }
}

/* On each side of the last length or angle of each table; inches for the US form. */
static void
test_ends_of_tables (void)
{
  double at = NAN, past = NAN;

  g_assert_cmpint (sw_lift_reach_factor (SW_UNITS_METRIC, 0.63, &at), ==, SW_OK);
  g_assert_cmpint (sw_lift_reach_factor (SW_UNITS_METRIC, 0.631, &past), ==, SW_OK);
  g_assert_true (at > 0.39 && past <= 0.0);
  g_assert_cmpint (sw_lift_reach_factor (SW_UNITS_US, 25.0 * SW_M_PER_IN, &at), ==,
                   SW_OK);
  g_assert_cmpint (sw_lift_reach_factor (SW_UNITS_US, 25.1 * SW_M_PER_IN, &past), ==,
                   SW_OK);
  g_assert_true (at > 0.39 && past <= 0.0);
  g_assert_cmpint (sw_lift_height_factor (SW_UNITS_METRIC, 1.75, &at), ==, SW_OK);
  g_assert_cmpint (sw_lift_height_factor (SW_UNITS_METRIC, 1.751, &past), ==, SW_OK);
  g_assert_true (at > 0.69 && past <= 0.0);
  g_assert_cmpint (sw_lift_height_factor (SW_UNITS_US, 70.0 * SW_M_PER_IN, &at), ==,
                   SW_OK);
  g_assert_cmpint (sw_lift_height_factor (SW_UNITS_US, 70.1 * SW_M_PER_IN, &past), ==,
                   SW_OK);
  g_assert_true (at > 0.69 && past <= 0.0);
  g_assert_cmpint (sw_lift_travel_factor (SW_UNITS_US, 10.0 * SW_M_PER_IN, &at), ==,
                   SW_OK);
  g_assert_cmpint (sw_lift_travel_factor (SW_UNITS_US, 10.5 * SW_M_PER_IN, &past), ==,
                   SW_OK);
  g_assert_cmpfloat_with_epsilon (at, 1.0, 1e-12);
  g_assert_cmpfloat (past, <, 0.995);
  g_assert_cmpint (sw_lift_travel_factor (SW_UNITS_US, 70.0 * SW_M_PER_IN, &at), ==,
                   SW_OK);
  g_assert_cmpint (sw_lift_travel_factor (SW_UNITS_US, 70.1 * SW_M_PER_IN, &past), ==,
                   SW_OK);
  g_assert_true (at > 0.84 && past <= 0.0);
  g_assert_cmpint (sw_lift_twist_factor (135.0 * G_PI / 180.0, &at), ==, SW_OK);
  g_assert_cmpint (sw_lift_twist_factor (135.1 * G_PI / 180.0, &past), ==, SW_OK);
  g_assert_true (at > 0.56 && past <= 0.0);
}

/* Table 5 between its rows: half way from .94 to .91 is .925; beyond the last row with
 * lifting, none. */
static void
test_between_frequencies (void)
{
  g_assert_cmpfloat_with_epsilon (frequency_of (1.5, 0.2, SW_LIFT_SHORT), 0.925, 1e-12);
  g_assert_cmpfloat_with_epsilon (frequency_of (0.35, 0.2, SW_LIFT_SHORT), 0.985, 1e-12);
  g_assert_cmpfloat_with_epsilon (frequency_of (14.5, 0.8, SW_LIFT_SHORT), 0.295, 1e-12);
  g_assert_cmpfloat_with_epsilon (frequency_of (0.0, 0.2, SW_LIFT_LONG), 0.85, 1e-12);
  g_assert_cmpfloat_with_epsilon (frequency_of (8.0, 0.2, SW_LIFT_LONG), 0.18, 1e-12);
  g_assert_cmpfloat (frequency_of (8.1, 0.2, SW_LIFT_LONG), ==, 0.0);
  g_assert_cmpfloat_with_epsilon (frequency_of (8.5, 0.8, SW_LIFT_LONG), 0.165, 1e-12);
  g_assert_cmpfloat_with_epsilon (frequency_of (15.0, 0.8, SW_LIFT_SHORT), 0.28, 1e-12);
  g_assert_cmpfloat (frequency_of (15.1, 0.8, SW_LIFT_SHORT), ==, 0.0);
}

/* By frequency, by duration and for lower hands. Slack for lines between equal rows. */
static void
test_frequency_never_rises (void)
{
  for (int duration = 0; duration < SW_LIFT_DURATION_COUNT; duration++)
    for (double per_min = 0.0; per_min < 16.0; per_min += 0.05)
      {
        SwLiftDuration longer =
            (SwLiftDuration) MIN (duration + 1, SW_LIFT_DURATION_COUNT - 1);
        double now = frequency_of (per_min, 0.2, (SwLiftDuration) duration);
        double more = frequency_of (per_min + 0.05, 0.2, (SwLiftDuration) duration);
        double higher = frequency_of (per_min, 0.8, (SwLiftDuration) duration);

        g_assert_cmpfloat (more, <=, now + 1e-12);
        g_assert_cmpfloat (higher, >=, now - 1e-12);
        g_assert_cmpfloat (frequency_of (per_min, 0.2, longer), <=, now + 1e-12);
      }
}

/* Tables 5 and 7 part at 75 cm, in the US form at 30 in. */
static void
test_boundary_of_hands (void)
{
  static const struct
  {
    SwUnitSystem units;
    double height_m;
    gboolean high;
  } rows[] = { { SW_UNITS_METRIC, 0.749, FALSE },
               { SW_UNITS_METRIC, 0.75, TRUE },
               { SW_UNITS_US, 29.9 * SW_M_PER_IN, FALSE },
               { SW_UNITS_US, 30.0 * SW_M_PER_IN, TRUE } };

  for (gsize i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      double grip = NAN, frequency = NAN;

      g_assert_cmpint (
          sw_lift_grip_factor (rows[i].units, SW_GRIP_FAIR, rows[i].height_m, &grip), ==,
          SW_OK);
      g_assert_cmpfloat (grip, ==, rows[i].high ? 1.0 : 0.95);
      g_assert_cmpint (sw_lift_frequency_factor (rows[i].units, 9.0, rows[i].height_m,
                                                 SW_LIFT_LONG, &frequency),
                       ==, SW_OK);
      g_assert_cmpfloat_with_epsilon (frequency, rows[i].high ? 0.15 : 0.0, 1e-12);
    }
}

/* Frequency goes by where the lift begins, grip by where it is looked at: from 50 to 80
 * cm, nine a minute all day, there is no lifting, though at 80 cm a fair grip counts 1.
 * With a twist of 45 degrees: 1 - 0.0032 x 45 = 0.856. */
static void
test_ends_of_one_lift (void)
{
  SwLift lift = roll;

  lift.begin_height_m = 0.5;
  lift.height_m = 0.8;
  lift.grip = SW_GRIP_FAIR;
  lift.per_min = 9.0;
  lift.duration = SW_LIFT_LONG;
  g_assert_cmpfloat (result_of (lift).frequency, ==, 0.0);
  g_assert_cmpfloat (result_of (lift).grip, ==, 1.0);
  lift = roll;
  lift.twist_rad = G_PI_4;
  g_assert_cmpfloat_with_epsilon (result_of (lift).limit_kg, 8.898006586 * 0.856, 1e-6);
}

/* 94-110: short needs as much rest as work, moderate 0.3 of it. */
static void
test_durations (void)
{
  static const struct
  {
    double work_h, recovery_h;
    SwLiftDuration want;
  } rows[] = {
    { 1.0, 1.0, SW_LIFT_SHORT },    { 1.0, 0.9, SW_LIFT_MODERATE },
    { 1.0, 0.2, SW_LIFT_LONG },     { 1.1, 2.0, SW_LIFT_MODERATE },
    { 2.0, 0.6, SW_LIFT_MODERATE }, { 2.0, 0.5, SW_LIFT_LONG },
    { 2.1, 8.0, SW_LIFT_LONG },     { 8.0, 0.0, SW_LIFT_LONG },
  };
  SwLiftDuration got = SW_LIFT_DURATION_COUNT;

  g_assert_cmpint (sw_lift_duration (8.1, 1.0, &got), ==, SW_E_RANGE);
  g_assert_cmpint (sw_lift_duration (0.0, 1.0, &got), ==, SW_E_RANGE);
  g_assert_cmpint (sw_lift_duration (1.0, -1.0, &got), ==, SW_E_RANGE);
  g_assert_cmpint (sw_lift_duration (NAN, 1.0, &got), ==, SW_E_RANGE);
  g_assert_cmpint (sw_lift_duration (1.0, NAN, &got), ==, SW_E_RANGE);
  g_assert_cmpint (got, ==, SW_LIFT_DURATION_COUNT);
  for (gsize i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_assert_cmpint (sw_lift_duration (rows[i].work_h, rows[i].recovery_h, &got), ==,
                       SW_OK);
      g_assert_cmpint (got, ==, rows[i].want);
    }
}

/* A load 40 cm deep: 20 + 20 cm, lower than knuckles 25 + 20; US 8 + 8, 10 + 8 in. */
static void
test_reach_of_a_load (void)
{
  double reach = NAN;

  g_assert_cmpint (sw_lift_reach (SW_UNITS_METRIC, 0.40, 0.25, &reach), ==, SW_OK);
  g_assert_cmpfloat_with_epsilon (reach, 0.40, 1e-12);
  g_assert_cmpint (sw_lift_reach (SW_UNITS_METRIC, 0.40, 0.24, &reach), ==, SW_OK);
  g_assert_cmpfloat_with_epsilon (reach, 0.45, 1e-12);
  g_assert_cmpint (
      sw_lift_reach (SW_UNITS_US, 16.0 * SW_M_PER_IN, 10.0 * SW_M_PER_IN, &reach), ==,
      SW_OK);
  g_assert_cmpfloat_with_epsilon (reach / SW_M_PER_IN, 16.0, 1e-12);
  g_assert_cmpint (
      sw_lift_reach (SW_UNITS_US, 16.0 * SW_M_PER_IN, 9.0 * SW_M_PER_IN, &reach), ==,
      SW_OK);
  g_assert_cmpfloat_with_epsilon (reach / SW_M_PER_IN, 18.0, 1e-12);
}

/* 51 lb is 0.6 % more than 23 kg: near, and not the same. */
static void
test_two_forms (void)
{
  double metric = NAN, us = NAN;
  static const double ones[6] = { 1.0, 1.0, 1.0, 1.0, 1.0, 1.0 };
  static const double none[6] = { 1.0, 1.0, 1.0, 1.0, 0.0, 1.0 };

  g_assert_cmpint (sw_lift_limit (SW_UNITS_METRIC, ones, &metric), ==, SW_OK);
  g_assert_cmpint (sw_lift_limit (SW_UNITS_US, ones, &us), ==, SW_OK);
  g_assert_cmpfloat (metric, ==, 23.0);
  g_assert_cmpfloat_with_epsilon (us, 51.0 * 0.45359237, 1e-12);
  g_assert_cmpint (sw_lift_limit (SW_UNITS_US, none, &us), ==, SW_OK);
  g_assert_cmpfloat (us, ==, 0.0);
}

static void
test_limits_of_the_equation (void)
{
  SwLift far = roll, high = roll, twisted = roll, often = roll, slope = roll;

  far.reach_m = 0.7;
  high.travel_m = 1.8;
  twisted.twist_rad = 2.4;
  often.per_min = 16.0;
  slope.circumstances = SW_LIFT_POOR_FOOTING | SW_LIFT_SEVERAL_PEOPLE | SW_LIFT_TOO_HIGH;
  g_assert_cmphex (result_of (far).limits, ==, SW_LIFT_OUT_OF_REACH);
  g_assert_true (isinf (result_of (far).index));
  g_assert_cmphex (result_of (high).limits, ==, SW_LIFT_TOO_HIGH);
  g_assert_cmphex (result_of (twisted).limits, ==, SW_LIFT_TOO_TWISTED);
  g_assert_cmphex (result_of (often).limits, ==, SW_LIFT_TOO_OFTEN);
  g_assert_cmphex (result_of (slope).limits, ==,
                   SW_LIFT_POOR_FOOTING | SW_LIFT_SEVERAL_PEOPLE);
}

static void
test_refusals (void)
{
  static const double over_one[6] = { 1.0, 1.0, 1.1, 1.0, 1.0, 1.0 };
  SwLift lift = roll;
  SwLiftResult result = { 0 };
  double out;

  REFUSES (out, sw_lift_reach_factor (SW_UNITS_METRIC, bad, &out));
  REFUSES (out, sw_lift_height_factor (SW_UNITS_US, bad, &out));
  REFUSES (out, sw_lift_travel_factor (SW_UNITS_METRIC, bad, &out));
  REFUSES (out, sw_lift_twist_factor (bad, &out));
  REFUSES (out, sw_lift_frequency (bad, 8.0, &out));
  REFUSES (out, sw_lift_frequency (1.0, bad, &out));
  REFUSES (out, sw_lift_frequency_factor (SW_UNITS_US, bad, 0.2, SW_LIFT_LONG, &out));
  REFUSES (out, sw_lift_grip_factor (SW_UNITS_US, SW_GRIP_POOR, bad, &out));
  REFUSES (out, sw_lift_reach (SW_UNITS_US, bad, 0.2, &out));
  REFUSES (result.index, (lift.mass_kg = bad, sw_lift (SW_UNITS_METRIC, &lift, &result)));
  REFUSES (out,
           sw_lift_limit (SW_UNITS_US, ((const double[6]){ bad, 1, 1, 1, 1, 1 }), &out));
  lift.mass_kg = 0.0;
  g_assert_cmpint (sw_lift (SW_UNITS_METRIC, &lift, &result), ==, SW_E_RANGE);
  out = UNTOUCHED;
  g_assert_cmpint (
      sw_lift_frequency_factor (SW_UNITS_US, 1.0, 0.2, SW_LIFT_DURATION_COUNT, &out), ==,
      SW_E_RANGE);
  g_assert_cmpint (sw_lift_frequency (1.0, 0.0, &out), ==, SW_E_RANGE);
  g_assert_cmpint (sw_lift_frequency (1.0, 15.1, &out), ==, SW_E_RANGE);
  g_assert_cmpint (sw_lift_grip_factor (SW_UNITS_US, SW_GRIP_COUNT, 0.2, &out), ==,
                   SW_E_RANGE);
  g_assert_cmpint (sw_lift_limit (SW_UNITS_US, over_one, &out), ==, SW_E_RANGE);
  g_assert_cmpfloat (out, ==, UNTOUCHED);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/judge/lifting/whole-lift", test_whole_lift);
  g_test_add_func ("/judge/lifting/factors-stay-within-one",
                   test_factors_stay_within_one);
  g_test_add_func ("/judge/lifting/ends-of-tables", test_ends_of_tables);
  g_test_add_func ("/judge/lifting/between-frequencies", test_between_frequencies);
  g_test_add_func ("/judge/lifting/frequency-never-rises", test_frequency_never_rises);
  g_test_add_func ("/judge/lifting/boundary-of-hands", test_boundary_of_hands);
  g_test_add_func ("/judge/lifting/ends-of-one-lift", test_ends_of_one_lift);
  g_test_add_func ("/judge/lifting/durations", test_durations);
  g_test_add_func ("/judge/lifting/reach-of-a-load", test_reach_of_a_load);
  g_test_add_func ("/judge/lifting/two-forms", test_two_forms);
  g_test_add_func ("/judge/lifting/limits-of-the-equation", test_limits_of_the_equation);
  g_test_add_func ("/judge/lifting/refusals", test_refusals);
  return g_test_run ();
}
