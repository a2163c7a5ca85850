/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "../layout/fixture.h"
#include "found.h"
#include <math.h>
#include <slopewright/judge/result.h>

static SwJob *
job_of (double hv, double rise_m)
{
  SwJob *job = fixture_job ();

  fixture_add_plane (job, "A", hv, rise_m, 20.0);
  return job;
}

/* The angle is the job's own: 2:1 is 26.565 degrees. */
static void
test_fall_plan (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = job_of (2.0, 5.0);
  double *set_rad = &job->numbers.values[SW_NUMBER_FALL_PLAN_RAD];

  g_assert_false (found_in (job, catalogue, "fall-plan"));
  g_assert_true (found_in (job, catalogue, "fall-angle-missing"));
  *set_rad = 26.6 * G_PI / 180.0;
  g_assert_false (found_in (job, catalogue, "fall-plan"));
  g_assert_false (found_in (job, catalogue, "fall-angle-missing"));
  *set_rad = 26.5 * G_PI / 180.0;
  g_assert_true (found_in (job, catalogue, "fall-plan"));
  found_number (job, catalogue, "fall-plan", "height", 5.0);
}

/* Cal/OSHA Title 8 s. 1670(a): steeper than 40 degrees and a fall of more than 7.5 ft =
 * 2.286 m. 1.19175:1 is 40.0 degrees. */
static void
test_named_fall (void)
{
  static const struct
  {
    double hv, rise_m;
    gboolean there;
  } rows[] = { { 1.19, 2.29, TRUE },
               { 1.19, 2.28, FALSE },
               { 1.195, 2.29, FALSE },
               { 1.195, 20.0, FALSE } };
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr (SwJob) job = job_of (rows[i].hv, rows[i].rise_m);

      g_assert_true (found_in (job, catalogue, "fall-named") == rows[i].there);
    }
}

/* 35 % on both sides: 2.9:1 is 34.5 %, 2.8:1 is 35.7 %; an answer goes before it. */
static void
test_machines (void)
{
  static const struct
  {
    double hv;
    SwAnswer answer;
    gboolean asked, there;
  } rows[] = { { 2.9, SW_ANSWER_UNKNOWN, FALSE, FALSE },
               { 2.8, SW_ANSWER_UNKNOWN, TRUE, FALSE },
               { 2.9, SW_ANSWER_YES, FALSE, TRUE },
               { 2.8, SW_ANSWER_NO, FALSE, FALSE } };
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr (SwJob) job = job_of (rows[i].hv, 5.0);

      job->site[SW_SITE_MACHINES] = rows[i].answer;
      g_assert_true (found_in (job, catalogue, "machines-unknown") == rows[i].asked);
      g_assert_true (found_in (job, catalogue, "machines") == rows[i].there);
    }
}

/* Queensland guidance prints 300 mm, the deepest read. */
static void
test_deep_trench (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = job_of (4.0, 5.0);

  sw_job_set_override (job, SW_PRACTICE_TRENCH_DEPTH_M, 0.300, "");
  g_assert_false (found_in (job, catalogue, "trench-deep"));
  sw_job_set_override (job, SW_PRACTICE_TRENCH_DEPTH_M, 0.301, "");
  g_assert_true (found_in (job, catalogue, "trench-deep"));
  found_number (job, catalogue, "trench-deep", "depth", 0.301);
}

/* What a service is reached with: the key trench of 0.15 and pins of 0.15. */
static void
test_depth_over_services (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = job_of (4.0, 5.0);

  job->site[SW_SITE_UTILITIES_MARKED] = SW_ANSWER_NO;
  found_number (job, catalogue, "utilities", "trench", 0.15);
  found_number (job, catalogue, "utilities", "pin", 0.15);
}

/* A dry roll of 0.25 x 2.44 x 34.3 = 20.92 kg; NIOSH starts from 23: 1.099 and 1.1. */
static void
test_wet_roll (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = job_of (4.0, 5.0);

  job->numbers.values[SW_NUMBER_WET_RATIO] = 1.09;
  g_assert_false (found_in (job, catalogue, "roll-heavy-wet"));
  job->numbers.values[SW_NUMBER_WET_RATIO] = 1.10;
  g_assert_true (found_in (job, catalogue, "roll-heavy-wet"));
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/judge/people/fall-plan", test_fall_plan);
  g_test_add_func ("/judge/people/named-fall", test_named_fall);
  g_test_add_func ("/judge/people/machines", test_machines);
  g_test_add_func ("/judge/people/deep-trench", test_deep_trench);
  g_test_add_func ("/judge/people/depth-over-services", test_depth_over_services);
  g_test_add_func ("/judge/people/wet-roll", test_wet_roll);
  return g_test_run ();
}
