/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "../layout/fixture.h"
#include <math.h>
#include <slopewright/judge/face-loss.h>
#include <slopewright/judge/result.h>
#include <string.h>

#define FT SW_M_PER_FT

static SwResult *
judge (const SwJob *job, const SwCatalogue *catalogue)
{
  SwResult *result = sw_result_new (job, catalogue);

  g_assert_cmpint (result->status, ==, SW_OK);
  return result;
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

static SwJob *
plane_job (double hv, double plan_m)
{
  SwJob *job = fixture_job ();

  fixture_add_plane (job, "A", hv, plan_m / hv, 20.0);
  job->numbers.values[SW_NUMBER_EROSIVITY] = 2000.0;
  return job;
}

/* 50 % to 40 ft, a bench of 2 % to 52 ft, 50 % to 92 ft: the segmented anchor of
 * check-values-judge.csv, LS 4.292073, 0.286128 and 12.679174, mean 7.416124. */
static SwJob *
benched_job (void)
{
  static const SwPoint section[] = { { 0.0, 40.24 * FT },
                                     { 40.0 * FT, 20.24 * FT },
                                     { 52.0 * FT, 20.0 * FT },
                                     { 92.0 * FT, 0.0 } };
  const SwPoint outline[] = {
    { 0.0, 0.0 }, { 20.0, 0.0 }, { 20.0, 92.0 * FT }, { 0.0, 92.0 * FT }
  };
  SwJob *job = fixture_job ();

  fixture_add_face (job, "A", section, 4, outline, 4);
  job->numbers.values[SW_NUMBER_EROSIVITY] = 2000.0;
  return job;
}

/* The lowest stretch of that anchor alone, 50 % over 40 ft on plan: with 52 ft of ground
 * above whose water runs on it has the same LS, 12.679174. Run-on of unknown length is
 * left out of the loss, and said. */
static void
test_run_on (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = plane_job (2.0, 40.0 * FT);
  g_autoptr (SwResult) alone = NULL, with = NULL;

  job->site[SW_SITE_RUN_ON] = SW_ANSWER_YES;
  alone = judge (job, catalogue);
  g_assert_true (is_found (alone, "loss-run-on"));
  g_assert_cmpfloat_with_epsilon (value_of (alone, "A.ls.1"), 4.292073, 1e-6);
  job->numbers.values[SW_NUMBER_RUN_ON_M] = 52.0 * FT;
  with = judge (job, catalogue);
  g_assert_false (is_found (with, "loss-run-on"));
  g_assert_cmpfloat_with_epsilon (value_of (with, "A.ls.1"), 12.679174, 1e-6);
  g_assert_cmpfloat_with_epsilon (value_of (with, "A.ls"), 12.679174, 1e-6);
}

/* 3:1, 100 ft on plan: LS 6.219613759 (Handbook 703 table 4-3, recomputed: 6.22). */
static void
test_plane (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = plane_job (3.0, 100.0 * FT);
  g_autoptr (SwResult) result = judge (job, catalogue);

  g_assert_cmpfloat_with_epsilon (value_of (result, "A.ls.1"), 6.219613759, 1e-8);
  g_assert_cmpfloat_with_epsilon (value_of (result, "A.ls"), 6.219613759, 1e-8);
  /* R 2000 and the fixture's K 0.04: 80 LS; its C is 0.10. */
  g_assert_cmpfloat_with_epsilon (value_of (result, "A.soil-loss-bare"),
                                  80.0 * 6.219613759, 1e-6);
  g_assert_cmpfloat_with_epsilon (value_of (result, "A.soil-loss-covered"),
                                  8.0 * 6.219613759, 1e-7);
  g_assert_cmpfloat_with_epsilon (value_of (result, "A.soil-loss-reduction"), 0.9, 1e-12);
}

/* The same in US units: R 117.5, K 0.30 give 117.5 x 0.30 x 6.2196 = 219.24 ton/acre,
 * and times 2.2417023 t/ha. */
static void
test_us_units (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = plane_job (3.0, 100.0 * FT);
  g_autoptr (SwResult) result = NULL;

  job->numbers.loss_units = SW_LOSS_US;
  job->numbers.values[SW_NUMBER_EROSIVITY] = 117.5;
  job->numbers.values[SW_NUMBER_ERODIBILITY] = 0.30;
  job->numbers.values[SW_NUMBER_COVER] = 0.05;
  result = judge (job, catalogue);
  g_assert_cmpfloat_with_epsilon (value_of (result, "A.soil-loss-bare"),
                                  117.5 * 0.30 * 6.219613759 * 2.241702312, 1e-5);
  g_assert_cmpfloat_with_epsilon (value_of (result, "A.soil-loss-reduction"), 0.95,
                                  1e-12);
}

/* 10 %, 100 ft: Handbook 703 table 4-2 (moderate, seen) 1.38, table 4-3 (high) 1.46; low
 * by the m of table 4-5, 0.35: 1.17166 x (100 / 72.6)^0.35 = 1.3106. */
static void
test_rill_ratio (void)
{
  static const struct
  {
    SwRills rills;
    double ls, within;
  } rows[] = {
    { SW_RILLS_HIGH, 1.46, 0.0055 },
    { SW_RILLS_MODERATE, 1.38, 0.0055 },
    { SW_RILLS_LOW, 1.3106, 0.0025 },
  };
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr (SwJob) job = plane_job (10.0, 100.0 * FT);
      g_autoptr (SwResult) result = NULL;

      job->numbers.rills = rows[i].rills;
      result = judge (job, catalogue);
      g_assert_cmpfloat_with_epsilon (value_of (result, "A.ls"), rows[i].ls,
                                      rows[i].within);
    }
}

/* 28.4 % of the year's R falls from 29 February to 1 September in the worked example of
 * the California State Water Resources Control Board, 2012: so much of a year's loss. */
static void
test_part_of_a_year (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = plane_job (3.0, 100.0 * FT);
  g_autoptr (SwResult) year = judge (job, catalogue), part = NULL;

  g_assert_null (sw_tally_working (year->tally, "A.soil-loss-bare-period"));
  job->numbers.values[SW_NUMBER_EROSIVITY_SHARE] = 0.284;
  part = judge (job, catalogue);
  g_assert_cmpfloat_with_epsilon (value_of (part, "A.soil-loss-bare-period"),
                                  0.284 * value_of (year, "A.soil-loss-bare"), 1e-9);
  g_assert_cmpfloat_with_epsilon (value_of (part, "A.soil-loss-bare"),
                                  value_of (year, "A.soil-loss-bare"), 1e-9);
}

/* A bench carries the runoff on, unless it is drained: then each half is 50 % over 40 ft,
 * LS 4.292073, and the bench itself still adds to its own length. */
static void
test_bench (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = benched_job ();
  g_autoptr (SwResult) open = judge (job, catalogue);
  g_autoptr (SwResult) drained = NULL;

  g_assert_cmpfloat_with_epsilon (value_of (open, "A.ls.1"), 4.292073, 1e-6);
  g_assert_cmpfloat_with_epsilon (value_of (open, "A.ls.2"), 0.286128, 1e-6);
  g_assert_cmpfloat_with_epsilon (value_of (open, "A.ls.3"), 12.679174, 1e-6);
  g_assert_cmpfloat_with_epsilon (value_of (open, "A.ls"), 7.416124056, 1e-6);
  g_assert_true (is_found (open, "bench-drain-unknown"));
  g_assert_true (is_found (open, "loss-flattens"));
  job->numbers.bench_drained = SW_ANSWER_YES;
  drained = judge (job, catalogue);
  g_assert_cmpfloat_with_epsilon (value_of (drained, "A.ls.3"), 4.292073, 1e-6);
  g_assert_cmpfloat_with_epsilon (value_of (drained, "A.ls"),
                                  (80.0 * 4.292073 + 12.0 * 0.286128) / 92.0, 1e-6);
  g_assert_false (is_found (drained, "bench-drain-unknown"));
}

/* A bench that falls back holds water unless it is drained; drained, runoff begins again at
 * its inner edge and below it. */
static void
test_bench_falls_back (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = benched_job ();
  g_autoptr (SwResult) standing = NULL;
  g_autoptr (SwResult) drained = NULL;
  SwFace *face = g_ptr_array_index (job->faces, 0);

  face->section[1].y_m -= 0.48 * FT; /* now 2 % back into the hill */
  standing = judge (job, catalogue);
  g_assert_true (is_found (standing, "bench-ponds"));
  g_assert_null (sw_tally_working (standing->tally, "A.soil-loss-bare"));
  job->numbers.bench_drained = SW_ANSWER_YES;
  drained = judge (job, catalogue);
  g_assert_false (is_found (drained, "bench-ponds"));
  g_assert_cmpfloat_with_epsilon (value_of (drained, "A.ls.3"), 4.292073, 1e-6);
}

/* Without R nothing is said; without K the reason is; a mat without C has its bare loss. */
static void
test_what_is_missing (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = plane_job (3.0, 30.0);
  g_autoptr (SwResult) no_r = NULL;
  g_autoptr (SwResult) no_k = NULL;
  g_autoptr (SwResult) no_c = NULL;
  SwSoil *soil = g_ptr_array_index (catalogue->soils, 0);

  job->numbers.values[SW_NUMBER_EROSIVITY] = 0.0;
  no_r = judge (job, catalogue);
  g_assert_null (sw_tally_working (no_r->tally, "A.soil-loss-bare"));
  g_assert_false (is_found (no_r, "erodibility-missing"));
  g_assert_false (is_found (no_r, "loss-beyond-plots"));
  job->numbers.values[SW_NUMBER_EROSIVITY] = 2000.0;
  ((SwBlanket *) g_ptr_array_index (catalogue->blankets, 0))->max_c.value = NAN;
  no_c = judge (job, catalogue);
  g_assert_nonnull (sw_tally_working (no_c->tally, "A.soil-loss-bare"));
  g_assert_null (sw_tally_working (no_c->tally, "A.soil-loss-covered"));
  soil->erodibility.value = NAN;
  no_k = judge (job, catalogue);
  g_assert_null (sw_tally_working (no_k->tally, "A.soil-loss-bare"));
  g_assert_true (is_found (no_k, "erodibility-missing"));
}

/* Each limit on both sides: 18 % of plots, 60 % of tables, 400 and 1000 ft on plan. */
static void
test_limits (void)
{
  static const struct
  {
    double hv, plan_ft;
    const char *there;
  } rows[] = {
    { 100.0 / 17.9, 399.0, NULL },
    { 100.0 / 18.1, 399.0, "loss-beyond-plots" },
    { 100.0 / 59.9, 100.0, "loss-beyond-plots" },
    { 100.0 / 60.1, 100.0, "loss-beyond-tables" },
    { 100.0 / 17.9, 401.0, "loss-long" },
    { 100.0 / 17.9, 999.0, "loss-long" },
    { 100.0 / 17.9, 1001.0, "loss-too-long" },
  };
  static const char *const codes[] = { "loss-beyond-plots", "loss-beyond-tables",
                                       "loss-long", "loss-too-long" };
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr (SwJob) job = plane_job (rows[i].hv, rows[i].plan_ft * FT);
      g_autoptr (SwResult) result = judge (job, catalogue);

      for (guint k = 0; k < G_N_ELEMENTS (codes); k++)
        g_assert_true (is_found (result, codes[k])
                       == (g_strcmp0 (rows[i].there, codes[k]) == 0));
    }
}

/* A face under 15 ft has no rills: 2:1, 12 ft on plan is 1.62 of Handbook 703 table 4-3. */
static void
test_short (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = plane_job (2.0, 12.0 * FT);
  g_autoptr (SwResult) result = judge (job, catalogue);

  g_assert_cmpfloat_with_epsilon (value_of (result, "A.ls"), 1.62, 0.005);
  g_assert_cmpstr (sw_tally_working (result->tally, "A.ls.1")->formula, ==, "ls_short");
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/judge/face-loss/run-on", test_run_on);
  g_test_add_func ("/judge/face-loss/plane", test_plane);
  g_test_add_func ("/judge/face-loss/us-units", test_us_units);
  g_test_add_func ("/judge/face-loss/bench", test_bench);
  g_test_add_func ("/judge/face-loss/bench-falls-back", test_bench_falls_back);
  g_test_add_func ("/judge/face-loss/what-is-missing", test_what_is_missing);
  g_test_add_func ("/judge/face-loss/limits", test_limits);
  g_test_add_func ("/judge/face-loss/short", test_short);
  g_test_add_func ("/judge/face-loss/rill-ratio", test_rill_ratio);
  g_test_add_func ("/judge/face-loss/part-of-a-year", test_part_of_a_year);
  return g_test_run ();
}
