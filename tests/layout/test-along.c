/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "fixture.h"
#include <math.h>
#include <slopewright/layout/along.h>

/* Hand calculation: ditch backslope 90 m wide, 1.6 m high at 3:1, true length 5.0596 m; with
 * 0.60 + 0.45 at the crest and 0.30 at the toe 6.4096 m have to be covered. Rolls 2.0 m wide,
 * lap 0.10: (6.4096 - 0.10) / 1.90 = 3.32, so 4 courses of 90 m. Pitch 4.4096 / 3 = 1.4699,
 * lap 0.530. Off 50 m rolls with end laps of 0.30: course 1 takes 50 + 40.3, course 2 the 9.7
 * left, 50 and 30.9, course 3 the 19.1 left, 50 and 21.5, course 4 the 28.5 left, 50 and 12.1:
 * 8 rolls, 7 joints, 4 x 90 + 7 x 0.30 = 362.1 m. */
static void
test_ditch_backslope (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = fixture_job ();
  g_autoptr (SwLayout) layout = NULL;
  SwAlongPlan plan;

  fixture_add_plane (job, "A", 3.0, 1.6, 90.0);
  job->roll_width_m = 2.0;
  job->roll_length_m = 50.0;
  layout = fixture_lay (job, catalogue);
  g_assert_cmpint (sw_along_new (layout, &plan), ==, SW_OK);
  g_assert_cmpint (plan.courses, ==, 4);
  g_assert_cmpint (plan.joints, ==, 7);
  g_assert_cmpint (plan.rolls, ==, 8);
  g_assert_cmpfloat_with_epsilon (plan.length_m, 362.1, 1e-6);
  g_assert_cmpfloat_with_epsilon (plan.least_lap_m, 2.0 - 4.4096443 / 3.0, 1e-6);
}

/* No course is laid with less than the practice's lap, and all of the face is covered:
 * sweep of heights. */
static void
test_laps_and_cover (void)
{
  for (double rise_m = 0.5; rise_m < 12.0; rise_m += 0.37)
    {
      g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
      g_autoptr (SwJob) job = fixture_job ();
      g_autoptr (SwLayout) layout = NULL;
      SwAlongPlan plan;

      fixture_add_plane (job, "A", 2.0, rise_m, 31.0);
      layout = fixture_lay (job, catalogue);
      g_assert_cmpint (sw_along_new (layout, &plan), ==, SW_OK);
      g_assert_cmpfloat (plan.least_lap_m, >=, 0.10 - 1e-9);
      g_assert_cmpfloat (plan.courses * (job->roll_width_m - 0.10) + 0.10, >=,
                         layout->faces[0].tiers[0].length_m);
      g_assert_cmpfloat_with_epsilon (
          plan.length_m,
          plan.courses * 31.0 + plan.joints * layout->faces[0].tiers[0].end_lap_m, 1e-6);
      g_assert_cmpfloat (plan.rolls * job->roll_length_m, >=, plan.length_m - 1e-6);
    }
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/layout/along/ditch-backslope", test_ditch_backslope);
  g_test_add_func ("/layout/along/laps-and-cover", test_laps_and_cover);
  return g_test_run ();
}
