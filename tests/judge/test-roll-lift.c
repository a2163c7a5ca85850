/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "../layout/fixture.h"
#include <math.h>
#include <slopewright/judge/result.h>
#include <slopewright/judge/roll-lift.h>

/* The fixture's roll: 0.25 kg/m2 x 2.44 m x 34.3 m. */
#define ROLL_KG (0.25 * 2.44 * 34.3)

static SwJob *
lifted_job (double from_m, double to_m, double reach_m)
{
  SwJob *job = fixture_job ();

  fixture_add_plane (job, "A", 4.0, 5.0, 20.0);
  job->numbers.values[SW_NUMBER_LIFT_FROM_M] = from_m;
  job->numbers.values[SW_NUMBER_LIFT_TO_M] = to_m;
  job->numbers.values[SW_NUMBER_LIFT_REACH_M] = reach_m;
  return job;
}

static double
value_of (const SwResult *result, const char *name)
{
  const SwWorking *working = sw_tally_working (result->tally, name);

  g_assert_nonnull (working);
  return working->value;
}

static gboolean
is_found (const SwResult *result, const char *code)
{
  for (guint i = 0; i < result->findings->len; i++)
    if (g_str_equal (((SwFinding *) g_ptr_array_index (result->findings, i))->code, code))
      return TRUE;
  return FALSE;
}

/* By hand after NIOSH 94-110: from 25 cm to 75 cm at 50 cm reach. HM 25/50, VM at the
 * beginning 1 - 0.003 x 50, DM 0.82 + 4.5/50, FM 1 (0.2 a minute, up to an hour), CM 0.90. */
static void
test_typed (void)
{
  double limit_kg = 23.0 * 0.5 * 0.85 * 0.91 * 0.90;
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = lifted_job (0.25, 0.75, 0.50);
  g_autoptr (SwResult) dry = sw_result_new (job, catalogue);
  g_autoptr (SwResult) wet = NULL;

  g_assert_cmpfloat_with_epsilon (value_of (dry, "lift-limit"), limit_kg, 1e-9);
  g_assert_cmpfloat_with_epsilon (value_of (dry, "lift-index"), ROLL_KG / limit_kg, 1e-9);
  g_assert_true (is_found (dry, "lift-index"));
  g_assert_false (is_found (dry, "lift-index-wet"));
  job->numbers.values[SW_NUMBER_WET_RATIO] = 3.0;
  wet = sw_result_new (job, catalogue);
  g_assert_cmpfloat_with_epsilon (value_of (wet, "lift-index-wet"),
                                  3.0 * ROLL_KG / limit_kg, 1e-9);
  g_assert_true (is_found (wet, "lift-index-wet"));
}

/* Lifted above the head the end governs: at 150 cm VM is 1 - 0.003 x 75, less than the
 * 0.94 of 55 cm; DM 0.82 + 4.5/95. */
static void
test_end_governs (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = lifted_job (0.55, 1.50, 0.25);
  g_autoptr (SwResult) result = sw_result_new (job, catalogue);

  g_assert_cmpfloat_with_epsilon (value_of (result, "lift-limit"),
                                  23.0 * 0.775 * (0.82 + 4.5 / 95.0) * 0.90, 1e-9);
}

/* Not typed: hands at half the roll's diameter, reach 20 cm + W / 2 (25 cm below 25 cm). */
static void
test_held_close (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = lifted_job (0.0, 0.75, 0.0);
  g_autoptr (SwResult) result = sw_result_new (job, catalogue);
  SwRollLift lift;
  double radius_m = result->tally->roll_diameter_m / 2.0;

  g_assert_true (sw_roll_lift (result->layout, result->tally, &lift));
  g_assert_cmpfloat_with_epsilon (lift.from_m, radius_m, 1e-12);
  g_assert_cmpfloat_with_epsilon (lift.reach_m,
                                  (radius_m < 0.25 ? 0.25 : 0.20) + radius_m, 1e-12);
  g_assert_true (lift.result.limits & SW_LIFT_CARRIED);
  g_assert_true (lift.result.limits & SW_LIFT_POOR_FOOTING);
  g_assert_true (isnan (lift.wet_index));
}

/* A light roll is no finding; without a height to lift to there is no index. */
static void
test_nothing (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) light = lifted_job (0.25, 0.75, 0.50);
  g_autoptr (SwJob) open = lifted_job (0.25, 0.0, 0.50);
  g_autoptr (SwResult) a = NULL;
  g_autoptr (SwResult) b = sw_result_new (open, catalogue);

  /* 8.0 kg limit: 0.09 kg/m2 weigh 7.5 kg. */
  light->blanket_mass_kg_per_m2 = 0.09;
  a = sw_result_new (light, catalogue);
  g_assert_false (is_found (a, "lift-index"));
  g_assert_cmpfloat (value_of (a, "lift-index"), <, 1.0);
  g_assert_null (sw_tally_working (b->tally, "lift-index"));
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/judge/roll-lift/typed", test_typed);
  g_test_add_func ("/judge/roll-lift/end-governs", test_end_governs);
  g_test_add_func ("/judge/roll-lift/held-close", test_held_close);
  g_test_add_func ("/judge/roll-lift/nothing", test_nothing);
  return g_test_run ();
}
