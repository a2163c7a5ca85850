/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "../layout/fixture.h"
#include <math.h>
#include <slopewright/judge/face-flow.h>
#include <slopewright/judge/result.h>

/* 100 ft down a face of 3:1, on plan: times the cosine 3 / sqrt (10). */
#define SHEET_PLAN_M (100.0 * SW_M_PER_FT * 3.0 / sqrt (10.0))
#define MM_PER_H (1e-3 / 3600.0)

static SwResult *
judge (const SwJob *job, const SwCatalogue *catalogue)
{
  SwResult *result = sw_result_new (job, catalogue);

  g_assert_cmpint (result->status, ==, SW_OK);
  return result;
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
rained_job (double hv, double plan_m, double rain_mm_per_h, double roughness)
{
  SwJob *job = fixture_job ();

  fixture_add_plane (job, "A", hv, plan_m / hv, 20.0);
  job->numbers.values[SW_NUMBER_RAIN] = rain_mm_per_h * MM_PER_H;
  job->numbers.values[SW_NUMBER_ROUGHNESS] = roughness;
  return job;
}

/* Rows of check-values-judge.csv, computed from q = i L, h = (n q / sqrt (sin))^0.6. */
static void
test_planes (void)
{
  static const struct
  {
    double rain, plan_m, roughness, hv, depth_m, velocity, shear_pa;
  } rows[] = {
    { 50.0, 20.0, 0.05, 3.0, 1.720285e-03, 0.161472, 5.33666 },
    { 75.0, 30.0, 0.04, 2.0, 2.206020e-03, 0.283316, 9.67818 },
    { 100.0, 15.0, 0.15, 2.5, 4.041836e-03, 0.103088, 14.72579 },
  };
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr (SwJob) job =
          rained_job (rows[i].hv, rows[i].plan_m, rows[i].rain, rows[i].roughness);
      g_autoptr (SwResult) result = judge (job, catalogue);

      g_assert_cmpfloat_with_epsilon (
          sw_tally_working (result->tally, "A.flow-depth")->value, rows[i].depth_m, 1e-8);
      g_assert_cmpfloat_with_epsilon (
          sw_tally_working (result->tally, "A.flow-velocity")->value, rows[i].velocity,
          1e-6);
      g_assert_cmpfloat_with_epsilon (
          sw_tally_working (result->tally, "A.flow-shear")->value, rows[i].shear_pa,
          1e-4);
    }
}

/* 12 m of level ground above 18 m of 2:1 run off as 30 m do: row of 75 mm/h above. */
static void
test_run_on (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = rained_job (2.0, 18.0, 75.0, 0.04);
  g_autoptr (SwResult) result = NULL;

  job->numbers.values[SW_NUMBER_RUN_ON_M] = 12.0;
  result = judge (job, catalogue);
  g_assert_cmpfloat_with_epsilon (
      sw_tally_working (result->tally, "A.flow-depth")->value, 2.206020e-03, 1e-8);
  g_assert_cmpfloat_with_epsilon (
      sw_tally_working (result->tally, "A.flow-shear")->value, 9.67818, 1e-4);
}

/* Two stretches: all the rain from above runs down the steeper, lower one. */
static void
test_lower_stretch (void)
{
  static const SwPoint section[] = { { 0.0, 12.0 }, { 15.0, 7.0 }, { 25.0, 2.0 } };
  const SwPoint outline[] = { { 0, 0 }, { 20, 0 }, { 20, 25 }, { 0, 25 } };
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = fixture_job ();
  g_autoptr (SwLayout) layout = NULL;
  SwFaceFlow flow;
  double q = 60.0 * MM_PER_H * 25.0, sine = 1.0 / sqrt (5.0);

  fixture_add_face (job, "A", section, 3, outline, 4);
  job->numbers.values[SW_NUMBER_RAIN] = 60.0 * MM_PER_H;
  job->numbers.values[SW_NUMBER_ROUGHNESS] = 0.15;
  layout = fixture_lay (job, catalogue);
  g_assert_true (sw_face_flow (layout, 0, &flow));
  g_assert_cmpuint (flow.segment, ==, 1);
  g_assert_cmpfloat_with_epsilon (flow.length_m, 25.0, 1e-9);
  g_assert_cmpfloat_with_epsilon (flow.flow.depth_m, pow (0.15 * q / sqrt (sine), 0.6),
                                  1e-9);
}

/* Roughness not typed is the catalogue's default; without either, or rain, nothing. */
static void
test_roughness (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = rained_job (3.0, 20.0, 50.0, 0.0);
  g_autoptr (SwLayout) none = fixture_lay (job, catalogue);
  SwDefault *value = g_new0 (SwDefault, 1);
  SwFaceFlow flow;

  g_assert_false (sw_face_flow (none, 0, &flow));
  value->id = g_strdup ("roughness_n");
  value->number = (SwSourced){ 0.24, SW_EVIDENCE_PROPOSED, g_strdup ("test") };
  g_ptr_array_add (catalogue->defaults, value);
  g_assert_true (sw_face_flow (none, 0, &flow));
  g_assert_cmpfloat_with_epsilon (flow.roughness.value, 0.24, 1e-12);
  g_assert_cmpint (flow.roughness.evidence, ==, SW_EVIDENCE_PROPOSED);
  job->numbers.values[SW_NUMBER_ROUGHNESS] = 0.05;
  g_assert_true (sw_face_flow (none, 0, &flow));
  g_assert_cmpint (flow.roughness.evidence, ==, SW_EVIDENCE_USER);
  job->numbers.values[SW_NUMBER_RAIN] = 0.0;
  g_assert_false (sw_face_flow (none, 0, &flow));
}

/* 5.34 Pa on a class of 5.33 and of 5.34; 100 ft down the face on both sides. */
static void
test_findings (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = rained_job (3.0, 20.0, 50.0, 0.05);
  g_autoptr (SwJob) just = rained_job (3.0, SHEET_PLAN_M - 0.01, 50.0, 0.05);
  g_autoptr (SwJob) beyond = rained_job (3.0, SHEET_PLAN_M + 0.01, 50.0, 0.05);
  SwBlanket *blanket = g_ptr_array_index (catalogue->blankets, 0);
  g_autoptr (SwResult) weak = NULL;
  g_autoptr (SwResult) enough = NULL;
  g_autoptr (SwResult) sheet = judge (just, catalogue);
  g_autoptr (SwResult) threads = judge (beyond, catalogue);

  blanket->shear_pa.value = 5.33;
  weak = judge (job, catalogue);
  blanket->shear_pa.value = 5.34;
  enough = judge (job, catalogue);
  g_assert_true (is_found (weak, "flow-shear"));
  g_assert_false (is_found (enough, "flow-shear"));
  g_assert_false (is_found (sheet, "flow-gathers"));
  g_assert_true (is_found (threads, "flow-gathers"));
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/judge/face-flow/planes", test_planes);
  g_test_add_func ("/judge/face-flow/lower-stretch", test_lower_stretch);
  g_test_add_func ("/judge/face-flow/roughness", test_roughness);
  g_test_add_func ("/judge/face-flow/findings", test_findings);
  g_test_add_func ("/judge/face-flow/run-on", test_run_on);
  return g_test_run ();
}
