/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include <slopewright/layout/layout.h>
#include <slopewright/store/store.h>

#include <math.h>

static SwJob *
example (const char *name)
{
  g_autofree char *path =
      g_test_build_filename (G_TEST_DIST, "..", "..", "examples", name, NULL);
  g_autoptr (GFile) file = g_file_new_for_path (path);
  g_autoptr (GError) error = NULL;
  SwJob *job = sw_job_load (file, &error);

  g_assert_no_error (error);
  return job;
}

/* Crest 0.60 + 3 x 0.15 = 1.05 m and toe 0.15 + 0.15 = 0.30 m, both of "common". */
static void
check_tier (const SwLayout *layout, guint tier_index, double face_m, int strips)
{
  const SwFaceLayout *face = &layout->faces[0];
  const SwTier *tier = &face->tiers[tier_index];
  const SwRun *run = &face->runs[tier->first_run];
  const SwRunTerms *terms = &run->terms;

  g_assert_cmpint (tier->strips, ==, strips);
  g_assert_cmpfloat_with_epsilon (terms->set_back + terms->key_lining + terms->key_fold,
                                  1.05, 1e-9);
  g_assert_cmpfloat_with_epsilon (terms->toe, 0.30, 1e-9);
  g_assert_cmpfloat_with_epsilon (terms->face, face_m, 1e-6);
  g_assert_cmpfloat (terms->slots, ==, 0.0);
  g_assert_cmpfloat_with_epsilon (run->cut_m - terms->end_laps, 1.05 + face_m + 0.30,
                                  1e-6);
}

static SwLayout *
lay (const SwJob *job, const SwCatalogue *catalogue)
{
  SwLayout *layout = NULL;

  g_assert_cmpstr (job->practice_id, ==, "common");
  g_assert_cmpint (sw_layout_new (job, catalogue, &layout, NULL), ==, SW_OK);
  return layout;
}

/*
 * Face lengths by Pythagoras from rise and ratio: rise x sqrt (1 + ratio^2).
 * Strips: (width - 0.10) / (roll - 0.10), next whole number.
 */
static void
test_sandlark_bluff_road (void)
{
  g_autoptr (SwCatalogue) catalogue = sw_catalogue_load ();
  g_autoptr (SwJob) job = example ("sandlark-bluff-road.slope.json");
  g_autoptr (SwLayout) layout = lay (job, catalogue);

  /* 5.5 m at 1.5:1: 9.9154 m; run 1.05 + 9.92 + 0.30 = 11.27 m; 25.9 / 2.34 = 11.07 */
  g_assert_cmpuint (layout->faces[0].n_tiers, ==, 1);
  check_tier (layout, 0, 5.5 * sqrt (1.0 + 1.5 * 1.5), 12);
  g_assert_cmpfloat_with_epsilon (layout->faces[0].runs[0].cut_m, 11.27, 0.005);
  /* loose sand calls for the long pin */
  g_assert_cmpfloat_with_epsilon (layout->faces[0].pin->length_m, 0.300, 1e-9);
}

static void
test_sallow_bank (void)
{
  g_autoptr (SwCatalogue) catalogue = sw_catalogue_load ();
  g_autoptr (SwJob) job = example ("sallow-bank.slope.json");
  g_autoptr (SwLayout) layout = lay (job, catalogue);

  /* 2.9 m at 2.2:1: 7.008 m; 22.9 / 1.12 = 20.4 */
  check_tier (layout, 0, 2.9 * sqrt (1.0 + 2.2 * 2.2), 21);
  g_assert_cmpfloat_with_epsilon (layout->faces[0].runs[0].cut_m, 8.36, 0.005);
}

static void
test_pinfold_cutting (void)
{
  g_autoptr (SwCatalogue) catalogue = sw_catalogue_load ();
  g_autoptr (SwJob) job = example ("pinfold-cutting.slope.json");
  g_autoptr (SwLayout) layout = lay (job, catalogue);

  /* 6 m and 8 m at 2:1, a bench between; 47.9 / 2.34 = 20.5 */
  g_assert_cmpuint (layout->faces[0].n_tiers, ==, 2);
  check_tier (layout, 0, 6.0 * sqrt (5.0), 21);
  check_tier (layout, 1, 8.0 * sqrt (5.0), 21);
}

/*
 * With joints the proved least must hold for every plan, not for the pieces of one.
 * By hand, in full runs: 38 runs of 13.2769 m are 504.52 m, 14.7 rolls of 34.3 m; and
 * 15 rolls do hold them: nine that share 8 end laps of 0.30 m take 15 whole and 8
 * joined runs, 307.77 of 308.70 m, the other six two by two 5 runs with 1 end lap,
 * 66.68 of 68.60 m.
 */
static void
test_quernby_heap_joined (void)
{
  g_autoptr (SwCatalogue) catalogue = sw_catalogue_load ();
  g_autoptr (SwJob) read = example ("quernby-heap.slope.json");
  g_autoptr (SwJob) job = sw_job_copy (read);
  g_autoptr (SwLayout) whole = NULL;
  g_autoptr (SwLayout) joined = NULL;

  ((SwFace *) job->faces->pdata[0])->fan = SW_FAN_FULL_RUNS;
  whole = lay (job, catalogue);
  g_assert_cmpint (whole->rolls, ==, 19);
  job->joints = SW_JOINTS_SAVE_ROLLS;
  joined = lay (job, catalogue);
  g_assert_cmpint (joined->rolls, <, 19);
  g_assert_cmpint (joined->rolls, >=, 15);
  g_assert_cmpint (joined->rolls_bound, ==, 15);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/store/training-slopes/sandlark-bluff-road",
                   test_sandlark_bluff_road);
  g_test_add_func ("/store/training-slopes/sallow-bank", test_sallow_bank);
  g_test_add_func ("/store/training-slopes/pinfold-cutting", test_pinfold_cutting);
  g_test_add_func ("/store/training-slopes/quernby-heap-joined",
                   test_quernby_heap_joined);
  return g_test_run ();
}
