/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "../layout/fixture.h"
#include <slopewright/judge/result.h>

static gboolean
is_found (const SwJob *job, const SwCatalogue *catalogue, const char *code)
{
  g_autoptr (SwResult) result = sw_result_new (job, catalogue);

  g_assert_cmpint (result->status, ==, SW_OK);
  for (guint i = 0; i < result->findings->len; i++)
    if (g_str_equal (((SwFinding *) g_ptr_array_index (result->findings, i))->code, code))
      return TRUE;
  return FALSE;
}

static SwJob *
job_of (double hv)
{
  SwJob *job = fixture_job ();

  fixture_add_plane (job, "A", hv, 5.0, 20.0);
  return job;
}

/* The fixture's mat lasts 12 months. */
static void
test_life (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = job_of (4.0);

  g_assert_false (is_found (job, catalogue, "life-short"));
  job->numbers.values[SW_NUMBER_GROW_MONTHS] = 12.0;
  g_assert_false (is_found (job, catalogue, "life-short"));
  job->numbers.values[SW_NUMBER_GROW_MONTHS] = 12.1;
  g_assert_true (is_found (job, catalogue, "life-short"));
}

static void
test_mowing (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = job_of (4.0);

  g_assert_false (is_found (job, catalogue, "mowing-net"));
  job->numbers.mown = SW_ANSWER_YES;
  g_assert_true (is_found (job, catalogue, "mowing-net"));
  ((SwBlanket *) g_ptr_array_index (catalogue->blankets, 0))->net_plastic_usual = FALSE;
  g_assert_false (is_found (job, catalogue, "mowing-net"));
}

static void
test_set_back (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = job_of (4.0);

  sw_job_set_override (job, SW_PRACTICE_SET_BACK_M, 0.001, "");
  g_assert_false (is_found (job, catalogue, "trench-at-edge"));
  sw_job_set_override (job, SW_PRACTICE_SET_BACK_M, 0.0, "");
  g_assert_true (is_found (job, catalogue, "trench-at-edge"));
}

/* Crowns of 25 mm are the least that agencies print. */
static void
test_crown (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = job_of (4.0);

  g_assert_false (is_found (job, catalogue, "narrow-crown"));
  for (guint i = 0; i < catalogue->pins->len; i++)
    ((SwPin *) g_ptr_array_index (catalogue->pins, i))->crown_m = 0.024;
  g_assert_true (is_found (job, catalogue, "narrow-crown"));
}

/* 35 % on both sides: 2.9:1 is 34.5 %, 2.8:1 is 35.7 %. */
static void
test_machines (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) flatter = job_of (2.9);
  g_autoptr (SwJob) steeper = job_of (2.8);

  g_assert_false (is_found (flatter, catalogue, "machines"));
  g_assert_true (is_found (steeper, catalogue, "machines"));
}

/* A bench of 4 m splits the face in two, unless it is laid over. */
static void
test_tiers (void)
{
  static const SwPoint section[] = {
    { 0.0, 10.0 }, { 16.0, 6.0 }, { 20.0, 6.0 }, { 36.0, 2.0 }
  };
  const SwPoint outline[] = { { 0, 0 }, { 20, 0 }, { 20, 36 }, { 0, 36 } };
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = fixture_job ();
  SwFace *face = fixture_add_face (job, "A", section, 4, outline, 4);

  g_assert_true (is_found (job, catalogue, "finished-work"));
  face->bench = SW_BENCH_CONTINUOUS;
  g_assert_false (is_found (job, catalogue, "finished-work"));
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/judge/fit/life", test_life);
  g_test_add_func ("/judge/fit/mowing", test_mowing);
  g_test_add_func ("/judge/fit/set-back", test_set_back);
  g_test_add_func ("/judge/fit/crown", test_crown);
  g_test_add_func ("/judge/fit/tiers", test_tiers);
  g_test_add_func ("/judge/fit/machines", test_machines);
  return g_test_run ();
}
