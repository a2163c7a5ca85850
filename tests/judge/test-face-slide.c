/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "../layout/fixture.h"
#include <math.h>
#include <slopewright/judge/face-slide.h>
#include <slopewright/judge/result.h>

#define DEGREE (G_PI / 180.0)

static SwJob *
screened_job (double hv, double friction_deg, double weight_n_per_m3)
{
  SwJob *job = fixture_job ();

  fixture_add_plane (job, "A", hv, 5.0, 20.0);
  job->numbers.values[SW_NUMBER_SLIDE_DEPTH_M] = 0.5;
  job->numbers.values[SW_NUMBER_FRICTION_RAD] = friction_deg * DEGREE;
  job->numbers.values[SW_NUMBER_SOIL_WEIGHT] = weight_n_per_m3;
  return job;
}

static const SwFinding *
finding_of (const SwResult *result, const char *code)
{
  for (guint i = 0; i < result->findings->len; i++)
    if (g_str_equal (((SwFinding *) g_ptr_array_index (result->findings, i))->code, code))
      return g_ptr_array_index (result->findings, i);
  return NULL;
}

/* Rows of check-values-judge.csv: tan friction / tan gradient, and times 10.19 / 20. */
static void
test_planes (void)
{
  static const struct
  {
    double hv, friction_deg, dry, seepage;
    SwSeverity severity;
  } rows[] = {
    { 2.0, 34.0, 1.349017, 0.687324, SW_SEVERITY_CAUTION },
    { 1.5, 32.0, 0.937304, 0.477556, SW_SEVERITY_CAUTION },
    { 3.0, 38.0, 2.343857, 1.194195, SW_SEVERITY_CAUTION },
    { 5.0, 38.0, 3.906428, 1.990325, SW_SEVERITY_NOTE }, /* the last one times 5 / 3 */
  };
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr (SwJob) job = screened_job (rows[i].hv, rows[i].friction_deg, 20000.0);
      g_autoptr (SwResult) result = sw_result_new (job, catalogue);
      const SwFinding *finding = finding_of (result, "slide-screen");

      g_assert_cmpfloat_with_epsilon (
          sw_tally_working (result->tally, "A.slide-dry")->value, rows[i].dry, 1e-6);
      g_assert_cmpfloat_with_epsilon (
          sw_tally_working (result->tally, "A.slide-seepage")->value, rows[i].seepage,
          2e-6);
      g_assert_nonnull (finding);
      g_assert_cmpint (finding->severity, ==, rows[i].severity);
    }
}

/* Typed cohesion counts with a typed angle only; the soil class's angle is 34 degrees. */
static void
test_class_and_cohesion (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = screened_job (2.0, 0.0, 20000.0);
  g_autoptr (SwLayout) by_class = NULL;
  g_autoptr (SwLayout) typed = NULL;
  SwFaceSlide slide;

  job->numbers.values[SW_NUMBER_COHESION_PA] = 2000.0;
  by_class = fixture_lay (job, catalogue);
  g_assert_true (sw_face_slide (by_class, 0, &slide));
  g_assert_cmpfloat_with_epsilon (slide.screen.dry, 1.349017, 1e-6);
  job->numbers.values[SW_NUMBER_FRICTION_RAD] = 34.0 * DEGREE;
  typed = fixture_lay (job, catalogue);
  g_assert_true (sw_face_slide (typed, 0, &slide));
  /* 2000 / (20000 x 0.5 x sin x cos), sin x cos of 2:1 is 0.4: 0.5 more. */
  g_assert_cmpfloat_with_epsilon (slide.screen.dry, 1.349017 + 0.5, 1e-6);
}

/* Without a depth nothing is said; without an angle a review is asked for all the same. */
static void
test_what_is_missing (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = screened_job (2.0, 0.0, 20000.0);
  g_autoptr (SwResult) no_angle = NULL;
  g_autoptr (SwResult) no_depth = NULL;

  ((SwSoil *) g_ptr_array_index (catalogue->soils, 0))->friction_rad.value = NAN;
  no_angle = sw_result_new (job, catalogue);
  g_assert_nonnull (finding_of (no_angle, "friction-missing"));
  g_assert_null (finding_of (no_angle, "slide-screen"));
  job->numbers.values[SW_NUMBER_SLIDE_DEPTH_M] = 0.0;
  no_depth = sw_result_new (job, catalogue);
  g_assert_null (finding_of (no_depth, "friction-missing"));
  g_assert_null (sw_tally_working (no_depth->tally, "A.slide-dry"));
}

/* A face of 5 sqrt (5) = 11.18 m is ten layers of 1.118 m long. */
static void
test_thick_layer (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();

  for (int thick = 0; thick <= 1; thick++)
    {
      g_autoptr (SwJob) job = screened_job (2.0, 34.0, 20000.0);
      g_autoptr (SwResult) result = NULL;

      job->numbers.values[SW_NUMBER_SLIDE_DEPTH_M] = thick ? 1.12 : 1.11;
      result = sw_result_new (job, catalogue);
      g_assert_true ((finding_of (result, "slide-not-thin") != NULL) == thick);
    }
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/judge/face-slide/planes", test_planes);
  g_test_add_func ("/judge/face-slide/class-and-cohesion", test_class_and_cohesion);
  g_test_add_func ("/judge/face-slide/what-is-missing", test_what_is_missing);
  g_test_add_func ("/judge/face-slide/thick-layer", test_thick_layer);
  return g_test_run ();
}
