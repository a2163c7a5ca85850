/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "../layout/fixture.h"
#include "found.h"
#include <math.h>
#include <slopewright/judge/result.h>

static SwJob *
job_of (double rise_m)
{
  SwJob *job = fixture_job ();

  fixture_add_plane (job, "A", 4.0, rise_m, 20.0);
  return job;
}

/* NRCS: 100 ft = 30.48 m; 4:1 is sqrt (17) = 4.1231 long for each metre of rise. */
static void
test_long_stretch (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) shorter = job_of (7.39);
  g_autoptr (SwJob) longer = job_of (7.40);

  g_assert_false (found_in (shorter, catalogue, "long-stretch"));
  g_assert_true (found_in (longer, catalogue, "long-stretch"));
  found_number (longer, catalogue, "long-stretch", "length", 7.40 * sqrt (17.0));
  sw_job_set_override (longer, SW_PRACTICE_SLOT_EVERY_M, 20.0, "");
  sw_job_set_override (longer, SW_PRACTICE_SLOT_HV, 5.0, "");
  g_assert_false (found_in (longer, catalogue, "long-stretch"));
}

/* Both sides of a face are its true length; water, animals or wind make them speak. */
static void
test_sides (void)
{
  static const SwSiteQuestion questions[] = { SW_SITE_RUN_ON, SW_SITE_WILDLIFE,
                                              SW_SITE_WIND_EXPOSED };
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();

  for (guint i = 0; i < G_N_ELEMENTS (questions); i++)
    {
      g_autoptr (SwJob) job = job_of (5.0);

      g_assert_false (found_in (job, catalogue, "side-edges"));
      job->site[questions[i]] = SW_ANSWER_YES;
      found_number (job, catalogue, "side-edges", "edge", 2.0 * 5.0 * sqrt (17.0));
    }
}

/* A heap that is covered all round has no sides. */
static void
test_no_sides (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = fixture_job ();
  SwFace *face = fixture_add_plane (job, "A", 2.0, 3.0, 2.0 * G_PI * 4.0);

  face->crest_form = SW_CREST_NOSE;
  face->crest_radius_m = 4.0;
  job->site[SW_SITE_RUN_ON] = SW_ANSWER_YES;
  g_assert_true (found_in (job, catalogue, "run-on"));
  g_assert_false (found_in (job, catalogue, "side-edges"));
}

/* Closing a run of 5 sqrt (17) = 20.62 by 2.44 with a pin every 0.60: 36 along the side
 * and 6 across the end. */
static void
test_wind (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = job_of (5.0);

  g_assert_false (found_in (job, catalogue, "wind"));
  job->site[SW_SITE_WIND_EXPOSED] = SW_ANSWER_YES;
  found_number (job, catalogue, "wind", "pins", 36.0 + 6.0);
}

static void
test_starts (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = job_of (5.0);
  SwFace *other = fixture_add_plane (job, "B", 4.0, 5.0, 20.0);

  g_assert_false (found_in (job, catalogue, "starts-differ"));
  other->leeward = SW_SIDE_RIGHT;
  g_assert_true (found_in (job, catalogue, "starts-differ"));
}

static void
test_toe_row (void)
{
  static const SwToeKind kinds[] = { SW_TOE_TRENCH, SW_TOE_FOLD, SW_TOE_ROW };
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = job_of (5.0);

  for (guint i = 0; i < G_N_ELEMENTS (kinds); i++)
    {
      ((SwPractice *) g_ptr_array_index (catalogue->practices, 0))->toe_kind = kinds[i];
      g_assert_true (found_in (job, catalogue, "toe-row") == (kinds[i] == SW_TOE_ROW));
    }
}

/* 4:1 goes over into 10:1 at 8 m out, 2 down: atan (1/4) - atan (1/10) = 8.33 degrees,
 * sqrt (68) down the face; a row across 20 m every 0.60 is 35 pins. */
static void
test_hollow (void)
{
  static const SwPoint section[] = { { 0.0, 4.0 }, { 8.0, 2.0 }, { 18.0, 1.0 } };
  static const SwPoint outline[] = { { 0, 0 }, { 20, 0 }, { 20, 18 }, { 0, 18 } };
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = fixture_job ();

  fixture_add_face (job, "A", section, 3, outline, 4)->bench = SW_BENCH_CONTINUOUS;
  found_number (job, catalogue, "bridging", "bend", atan (0.25) - atan (0.1));
  found_number (job, catalogue, "bridging", "down", sqrt (68.0));
  found_number (job, catalogue, "bridging", "pins", 35.0);
}

/* Runs of 40.25 m on 2:1 have one joint each, the roll being 34.3: a stagger of 1 m can be
 * kept, one of 30 m cannot. */
static void
test_joints (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = fixture_job ();

  fixture_add_plane (job, "A", 2.0, 18.0, 20.0);
  sw_job_set_override (job, SW_PRACTICE_JOINT_STAGGER_M, 1.0, "");
  g_assert_true (found_in (job, catalogue, "joints"));
  g_assert_false (found_in (job, catalogue, "joints-in-line"));
  sw_job_set_override (job, SW_PRACTICE_JOINT_STAGGER_M, 30.0, "");
  g_assert_true (found_in (job, catalogue, "joints-in-line"));
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/judge/edges/long-stretch", test_long_stretch);
  g_test_add_func ("/judge/edges/sides", test_sides);
  g_test_add_func ("/judge/edges/no-sides", test_no_sides);
  g_test_add_func ("/judge/edges/wind", test_wind);
  g_test_add_func ("/judge/edges/starts", test_starts);
  g_test_add_func ("/judge/edges/toe-row", test_toe_row);
  g_test_add_func ("/judge/edges/hollow", test_hollow);
  g_test_add_func ("/judge/edges/joints", test_joints);
  return g_test_run ();
}
