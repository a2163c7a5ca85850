/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "../layout/fixture.h"
#include "found.h"
#include <math.h>
#include <slopewright/judge/result.h>
#include <string.h>

/*
 * A face on which nothing is found: 4:1, true length 7.35 sqrt (17) = 30.30, below the
 * 100 ft = 30.48 of a sheet of water, so that one roll serves a run of 31.65; 51 runs of
 * 2.44 without surplus, 119.44 m: placed 51 x 2.44 x 31.65 over 119.44 x 30.30 is 8.8 %
 * more, below the flat tenth. A dry roll weighs 0.25 x 83.7 = 20.9.
 */
#define PLAIN_HV 4.0
#define PLAIN_RISE_M 7.35
#define PLAIN_WIDTH_M (0.1 + 51 * 2.34)

static SwJob *
plain_job (void)
{
  SwJob *job = fixture_job ();

  fixture_add_plane (job, "A", PLAIN_HV, PLAIN_RISE_M, PLAIN_WIDTH_M);
  return job;
}

static SwFace *
face_of (SwJob *job)
{
  return g_ptr_array_index (job->faces, 0);
}

static SwResult *
judge (const SwJob *job, const SwCatalogue *catalogue)
{
  SwResult *result = sw_result_new (job, catalogue);

  g_assert_cmpint (result->status, ==, SW_OK);
  return result;
}

static double
input_of (const SwFinding *finding, const char *symbol)
{
  for (guint i = 0; i < finding->inputs->len; i++)
    if (g_str_equal (g_array_index (finding->inputs, SwInput, i).symbol, symbol))
      return g_array_index (finding->inputs, SwInput, i).value;
  g_error ("%s has no input \"%s\"", finding->code, symbol);
}

static void
test_nothing_on_a_plain_job (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = plain_job ();
  g_autoptr (SwResult) result = judge (job, catalogue);

  for (guint i = 0; i < result->findings->len; i++)
    g_test_message ("found: %s",
                    ((SwFinding *) g_ptr_array_index (result->findings, i))->code);
  g_assert_cmpuint (result->findings->len, ==, 0);
  for (SwSeverity severity = SW_SEVERITY_NOTE; severity <= SW_SEVERITY_STOP; severity++)
    g_assert_cmpuint (sw_findings_count (result->findings, severity), ==, 0);
}

/* Each answer of the site visit alone brings just its own finding. */
static void
test_site_answers (void)
{
  static const struct
  {
    SwSiteQuestion question;
    SwAnswer answer;
    SwSeverity severity;
    const char *code;
  } rows[] = {
    { SW_SITE_SEEPAGE, SW_ANSWER_YES, SW_SEVERITY_STOP, "seepage" },
    { SW_SITE_SEEPAGE, SW_ANSWER_UNKNOWN, SW_SEVERITY_CAUTION, "seepage-unknown" },
    { SW_SITE_CHANNEL_FLOW, SW_ANSWER_YES, SW_SEVERITY_STOP, "channel-flow" },
    { SW_SITE_CHANNEL_FLOW, SW_ANSWER_UNKNOWN, SW_SEVERITY_CAUTION,
      "channel-flow-unknown" },
    { SW_SITE_UTILITIES_MARKED, SW_ANSWER_NO, SW_SEVERITY_STOP, "utilities" },
    { SW_SITE_UTILITIES_MARKED, SW_ANSWER_UNKNOWN, SW_SEVERITY_CAUTION,
      "utilities-unknown" },
    { SW_SITE_WATER_AT_TOE, SW_ANSWER_YES, SW_SEVERITY_CAUTION, "water-at-toe" },
    { SW_SITE_LINER, SW_ANSWER_YES, SW_SEVERITY_STOP, "liner" },
    { SW_SITE_TRAFFIC, SW_ANSWER_YES, SW_SEVERITY_CAUTION, "traffic" },
    { SW_SITE_LONE_WORK, SW_ANSWER_YES, SW_SEVERITY_CAUTION, "lone-work" },
    { SW_SITE_HOT_WEATHER, SW_ANSWER_YES, SW_SEVERITY_CAUTION, "heat" },
    { SW_SITE_IGNITION, SW_ANSWER_YES, SW_SEVERITY_CAUTION, "fire" },
    { SW_SITE_LATE_SOWING, SW_ANSWER_YES, SW_SEVERITY_CAUTION, "late-sowing" },
    { SW_SITE_MACHINES, SW_ANSWER_YES, SW_SEVERITY_CAUTION, "machines" },
    { SW_SITE_OVERHEAD_LINES, SW_ANSWER_YES, SW_SEVERITY_CAUTION, "overhead-lines" },
    { SW_SITE_ROPES, SW_ANSWER_YES, SW_SEVERITY_CAUTION, "ropes" },
    { SW_SITE_CHEMICALS, SW_ANSWER_YES, SW_SEVERITY_CAUTION, "chemicals" },
    { SW_SITE_COLD_WEATHER, SW_ANSWER_YES, SW_SEVERITY_CAUTION, "cold" },
    { SW_SITE_REMOTE, SW_ANSWER_YES, SW_SEVERITY_CAUTION, "remote" },
    { SW_SITE_PUBLIC, SW_ANSWER_YES, SW_SEVERITY_CAUTION, "public" },
  };
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr (SwJob) job = plain_job ();
      g_autoptr (SwResult) result = NULL;
      const SwFinding *finding;

      job->site[rows[i].question] = rows[i].answer;
      result = judge (job, catalogue);
      g_assert_cmpuint (result->findings->len, ==, 1);
      finding = g_ptr_array_index (result->findings, 0);
      g_assert_cmpstr (finding->code, ==, rows[i].code);
      g_assert_cmpint (finding->severity, ==, rows[i].severity);
      g_assert_cmpint (finding->face, ==, -1);
      g_assert_cmpuint (sw_findings_count (result->findings, rows[i].severity), ==, 1);
    }
}

/* Animals, and a net of plastic that is usual for this blanket. */
static void
test_wildlife (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = plain_job ();
  g_autoptr (SwResult) plastic = NULL;
  g_autoptr (SwResult) natural = NULL;

  job->site[SW_SITE_WILDLIFE] = SW_ANSWER_YES;
  plastic = judge (job, catalogue);
  g_assert_nonnull (found_finding (plastic, "wildlife"));
  g_assert_nonnull (found_finding (plastic, "plastic-net"));
  ((SwBlanket *) g_ptr_array_index (catalogue->blankets, 0))->net_plastic_usual = FALSE;
  natural = judge (job, catalogue);
  g_assert_nonnull (found_finding (natural, "wildlife"));
  g_assert_null (found_finding (natural, "plastic-net"));
}

/* Both sides of each limit of gradient: footing from 3:1, the class at 1.5:1, no practice
 * beyond 1:1. A ratio read as 2.9995 is 3 of the table. */
static void
test_gradients (void)
{
  static const struct
  {
    double hv;
    const char *there[3], *absent[3];
  } rows[] = {
    { 3.01, { NULL }, { "footing", "class-gradient", "too-steep" } },
    { 3.0, { "footing" }, { "class-gradient", "too-steep" } },
    { 1.5, { "footing" }, { "class-gradient", "too-steep" } },
    { 1.49, { "footing", "class-gradient" }, { "too-steep" } },
    { 1.0, { "footing", "class-gradient" }, { "too-steep" } },
    { 0.99, { "footing", "class-gradient", "too-steep" }, { NULL } },
  };
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr (SwJob) job = fixture_job ();
      g_autoptr (SwResult) result = NULL;

      fixture_add_plane (job, "A", rows[i].hv, 5.0, 20.0);
      result = judge (job, catalogue);
      for (int k = 0; k < 3 && rows[i].there[k] != NULL; k++)
        g_assert_nonnull (found_finding (result, rows[i].there[k]));
      for (int k = 0; k < 3 && rows[i].absent[k] != NULL; k++)
        g_assert_null (found_finding (result, rows[i].absent[k]));
    }
}

/* An angle read to one degree at 1.55:1 (32.8) may be 33.8, beyond the class limit of
 * 33.7. */
static void
test_borderline (void)
{
  static const struct
  {
    double error_degrees;
    gboolean there;
  } rows[] = { { 0.0, FALSE }, { 0.5, FALSE }, { 1.0, TRUE } };
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr (SwJob) job = fixture_job ();
      g_autoptr (SwResult) result = NULL;

      fixture_add_plane (job, "A", 1.55, 5.0, 20.0)->angle_error_rad =
          rows[i].error_degrees * G_PI / 180.0;
      result = judge (job, catalogue);
      g_assert_true ((found_finding (result, "borderline") != NULL) == rows[i].there);
    }
}

/* Runs longer than a roll are joined; a practice with slots has slots. */
static void
test_laying (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = fixture_job ();
  g_autoptr (SwResult) result = NULL;

  fixture_add_plane (job, "A", 2.0, 18.0, 20.0);
  sw_job_set_override (job, SW_PRACTICE_SLOT_EVERY_M, 10.0, "");
  result = judge (job, catalogue);
  /* 40.25 m: 9 runs of two pieces, 9 joints; slots at most 10 m apart: 4. */
  g_assert_cmpfloat_with_epsilon (input_of (found_finding (result, "joints"), "joints"),
                                  9.0, 1e-12);
  g_assert_cmpfloat_with_epsilon (input_of (found_finding (result, "slots"), "slots"),
                                  4.0, 1e-12);
}

/* Only a round face takes infill; the heap of test-infill.c has 19 runs of it. */
static void
test_infill (void)
{
  const SwPoint section[] = { { 0.0, 6.5 }, { 10.0, 0.0 } };
  const SwPoint outline[] = {
    { 0, 0 }, { 8.0 * G_PI, 0 }, { 8.0 * G_PI, 10 }, { 0, 10 }
  };
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();

  for (int infill = 0; infill <= 1; infill++)
    {
      g_autoptr (SwJob) job = fixture_job ();
      g_autoptr (SwResult) result = NULL;
      SwFace *face = fixture_add_face (job, "A", section, 2, outline, 4);

      face->crest_form = SW_CREST_NOSE;
      face->crest_radius_m = 4.0;
      face->fan = infill ? SW_FAN_INFILL : SW_FAN_FULL_RUNS;
      result = judge (job, catalogue);
      if (!infill)
        g_assert_null (found_finding (result, "infill"));
      else
        g_assert_cmpfloat_with_epsilon (
            input_of (found_finding (result, "infill"), "infill"), 19.0, 1e-12);
    }
}

/* A hollow in what is covered as one bridges; a convex break, and a bench that splits the
 * face, do not. */
static void
test_bridging (void)
{
  static const struct
  {
    SwPoint section[4];
    SwBenchRule bench;
    gboolean there;
  } rows[] = {
    { { { 0, 20 }, { 6, 14 }, { 12, 11 }, { 20, 7 } }, SW_BENCH_SPLIT, TRUE },
    { { { 0, 20 }, { 8, 17 }, { 12, 14 }, { 20, 6 } }, SW_BENCH_SPLIT, FALSE },
    { { { 0, 20 }, { 8, 16 }, { 12, 16 }, { 20, 12 } }, SW_BENCH_SPLIT, FALSE },
    { { { 0, 20 }, { 8, 16 }, { 12, 16 }, { 20, 12 } }, SW_BENCH_CONTINUOUS, TRUE },
    /* Two degrees are a survey's noise. */
    { { { 0, 20 }, { 8, 16 }, { 12, 14.15 }, { 20, 10.15 } }, SW_BENCH_SPLIT, FALSE },
  };
  const SwPoint outline[] = { { 0, 0 }, { 15, 0 }, { 15, 20 }, { 0, 20 } };
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr (SwJob) job = fixture_job ();
      g_autoptr (SwResult) result = NULL;

      fixture_add_face (job, "A", rows[i].section, 4, outline, 4)->bench = rows[i].bench;
      result = judge (job, catalogue);
      g_assert_true ((found_finding (result, "bridging") != NULL) == rows[i].there);
    }
}

/* Loose ground asks for a trial pull; topsoil deeper than any pin, or a pin chosen too
 * short. */
static void
test_pins (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = plain_job ();
  g_autoptr (SwResult) loose = NULL;
  g_autoptr (SwResult) deep = NULL;
  g_autoptr (SwResult) chosen = NULL;

  face_of (job)->loose = TRUE;
  loose = judge (job, catalogue);
  g_assert_cmpuint (loose->findings->len, ==, 1);
  g_assert_cmpfloat_with_epsilon (input_of (found_finding (loose, "pin-trial"), "length"),
                                  0.30, 1e-12);
  face_of (job)->topsoil_m = 0.30;
  deep = judge (job, catalogue);
  g_assert_cmpfloat_with_epsilon (input_of (found_finding (deep, "pin-short"), "need"),
                                  0.375, 1e-12);
  face_of (job)->topsoil_m = 0.0;
  sw_text_set (&job->pin_id, "p150");
  chosen = judge (job, catalogue);
  g_assert_nonnull (found_finding (chosen, "pin-short"));
}

/* A short face takes more than a tenth over its net area; a wet mat is heavy even when
 * dry. */
static void
test_material (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = fixture_job ();
  g_autoptr (SwResult) result = NULL;
  const SwFinding *finding;

  fixture_add_plane (job, "A", 4.0, 2.0, 20.0);
  job->blanket_mass_kg_per_m2 = 0.30;
  result = judge (job, catalogue);
  finding = found_finding (result, "flat-allowance");
  g_assert_nonnull (finding);
  /* 9 runs of 2.44 x (2 sqrt (17) + 1.35) over 20 x 2 sqrt (17). */
  g_assert_cmpfloat_with_epsilon (
      input_of (finding, "over"),
      9.0 * 2.44 * (2.0 * sqrt (17.0) + 1.35) / (40.0 * sqrt (17.0)) - 1.0, 1e-4);
  finding = found_finding (result, "roll-heavy");
  g_assert_cmpfloat_with_epsilon (input_of (finding, "mass"), 0.30 * 2.44 * 34.3, 1e-9);
}

/* Stops first, then cautions, then notes, each in a fixed order; the worst is a stop. */
static void
test_order (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = plain_job ();
  g_autoptr (SwResult) a = NULL;
  g_autoptr (SwResult) b = NULL;

  for (int i = 0; i < SW_SITE_QUESTION_COUNT; i++)
    job->site[i] = SW_ANSWER_YES;
  job->site[SW_SITE_UTILITIES_MARKED] = SW_ANSWER_NO;
  face_of (job)->loose = TRUE;
  fixture_add_plane (job, "B", 0.8, 40.0, 9.0);
  a = judge (job, catalogue);
  b = judge (job, catalogue);
  g_assert_cmpuint (sw_findings_count (a->findings, SW_SEVERITY_STOP), >, 0);
  g_assert_cmpuint (sw_findings_count (a->findings, SW_SEVERITY_STOP)
                        + sw_findings_count (a->findings, SW_SEVERITY_CAUTION)
                        + sw_findings_count (a->findings, SW_SEVERITY_NOTE),
                    ==, a->findings->len);
  g_assert_cmpuint (sw_findings_count (NULL, SW_SEVERITY_STOP), ==, 0);
  g_assert_cmpuint (a->findings->len, ==, b->findings->len);
  g_assert_cmpuint (a->findings->len, >, 12);
  for (guint i = 0; i < a->findings->len; i++)
    {
      const SwFinding *x = g_ptr_array_index (a->findings, i);
      const SwFinding *y = g_ptr_array_index (b->findings, i);

      g_assert_cmpstr (x->code, ==, y->code);
      if (i > 0)
        g_assert_cmpint (
            x->severity, <=,
            ((SwFinding *) g_ptr_array_index (a->findings, i - 1))->severity);
    }
}

static void
test_severities (void)
{
  g_assert_cmpstr (sw_severity_code (SW_SEVERITY_NOTE), ==, "note");
  g_assert_cmpstr (sw_severity_code (SW_SEVERITY_CAUTION), ==, "caution");
  g_assert_cmpstr (sw_severity_code (SW_SEVERITY_STOP), ==, "stop");
}

/* What cannot be laid says why and which face, and holds nothing else. */
static void
test_refusals (void)
{
  static const struct
  {
    const char *what;
    SwStatus want;
    int face;
  } rows[] = {
    { "practice", SW_E_UNKNOWN_ID, -1 }, { "blanket", SW_E_UNKNOWN_ID, -1 },
    { "pin", SW_E_UNKNOWN_ID, -1 },      { "soil", SW_E_UNKNOWN_ID, 1 },
    { "roll", SW_E_ROLL, -1 },           { "lap", SW_E_ROLL, 0 },
    { "outline", SW_E_OUTLINE, 1 },      { "away", SW_E_EMPTY, 1 },
    { "section", SW_E_SECTION, 1 },      { "spacing", SW_E_RANGE, -1 },
    { "slots", SW_E_RANGE, -1 },         { "not a number", SW_E_RANGE, -1 },
    { "no face", SW_E_EMPTY, -1 },
  };
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr (SwJob) job = plain_job ();
      g_autoptr (SwResult) result = NULL;
      SwFace *face = fixture_add_plane (job, "B", 2.0, 5.0, 20.0);
      const char *what = rows[i].what;

      if (g_str_equal (what, "practice"))
        sw_text_set (&job->practice_id, "none");
      else if (g_str_equal (what, "blanket"))
        sw_text_set (&job->blanket_id, "none");
      else if (g_str_equal (what, "pin"))
        sw_text_set (&job->pin_id, "none");
      else if (g_str_equal (what, "soil"))
        sw_text_set (&face->soil_id, "none");
      else if (g_str_equal (what, "roll"))
        job->roll_length_m = NAN;
      else if (g_str_equal (what, "lap"))
        job->roll_width_m = 0.12; /* a lap of 0.10 leaves 0.02 a run */
      else if (g_str_equal (what, "outline"))
        {
          SwPoint p = face->outline[1];

          face->outline[1] = face->outline[2];
          face->outline[2] = p;
        }
      else if (g_str_equal (what, "away"))
        for (guint p = 0; p < face->n_outline; p++)
          face->outline[p].y_m += 50.0;
      else if (g_str_equal (what, "section"))
        face->section[1].x_m = -1.0;
      else if (g_str_equal (what, "spacing"))
        sw_job_set_override (job, SW_PRACTICE_PIN_DOWN_M, 0.0, "");
      else if (g_str_equal (what, "slots"))
        sw_job_set_override (job, SW_PRACTICE_SLOT_EVERY_M, 1e-5, "");
      else if (g_str_equal (what, "not a number"))
        sw_job_set_override (job, SW_PRACTICE_SET_BACK_M, NAN, "");
      else
        g_ptr_array_set_size (job->faces, 0);
      result = sw_result_new (job, catalogue);
      g_test_message ("%s: %s", what, sw_status_text (result->status));
      g_assert_cmpint (result->status, ==, rows[i].want);
      g_assert_cmpint (result->bad_face, ==, rows[i].face);
      g_assert_null (result->layout);
      g_assert_null (result->tally);
      g_assert_null (result->findings);
    }
}

/* A result outlives the job it was made from, and is freed with its last reference. */
static void
test_references (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  SwJob *job = plain_job ();
  SwResult *result = sw_result_new (job, catalogue), *again;

  sw_job_unref (job);
  again = sw_result_ref (result);
  sw_result_unref (result);
  g_assert_cmpint (again->status, ==, SW_OK);
  g_assert_cmpstr (face_of (again->job)->id, ==, "A");
  sw_result_unref (again);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/judge/findings/nothing-on-a-plain-job", test_nothing_on_a_plain_job);
  g_test_add_func ("/judge/findings/site-answers", test_site_answers);
  g_test_add_func ("/judge/findings/wildlife", test_wildlife);
  g_test_add_func ("/judge/findings/gradients", test_gradients);
  g_test_add_func ("/judge/findings/borderline", test_borderline);
  g_test_add_func ("/judge/findings/infill", test_infill);
  g_test_add_func ("/judge/findings/laying", test_laying);
  g_test_add_func ("/judge/findings/bridging", test_bridging);
  g_test_add_func ("/judge/findings/pins", test_pins);
  g_test_add_func ("/judge/findings/material", test_material);
  g_test_add_func ("/judge/findings/order", test_order);
  g_test_add_func ("/judge/findings/severities", test_severities);
  g_test_add_func ("/judge/result/refusals", test_refusals);
  g_test_add_func ("/judge/result/references", test_references);
  return g_test_run ();
}
