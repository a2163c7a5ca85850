/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "../layout/fixture.h"
#include <slopewright/judge/checks.h>
#include <slopewright/judge/result.h>

static SwJob *
job_of (double hv)
{
  SwJob *job = fixture_job ();

  fixture_add_plane (job, "A", hv, 5.0, 20.0);
  return job;
}

static const SwCheck *
check_of (const GPtrArray *checks, const char *failure)
{
  for (guint i = 0; i < checks->len; i++)
    {
      const SwCheck *check = g_ptr_array_index (checks, i);

      if (g_str_equal (check->failure, failure))
        return check;
    }
  g_error ("no check %s", failure);
}

/* Nineteen rows in order, each with words and a page. */
static void
test_rows (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = job_of (4.0);
  g_autoptr (SwResult) result = sw_result_new (job, catalogue);
  g_autoptr (GPtrArray) checks =
      sw_checks_new (result->layout, result->tally, result->findings);

  g_assert_cmpuint (checks->len, ==, SW_CHECK_COUNT);
  for (guint i = 0; i < checks->len; i++)
    {
      const SwCheck *check = g_ptr_array_index (checks, i);
      g_autofree char *failure = g_strdup_printf ("F%u", i + 1);

      g_assert_cmpstr (check->failure, ==, failure);
      g_assert_nonnull (check->looked);
      g_assert_nonnull (check->page);
    }
}

/* Rows that rest on a question of the site visit: not known until it is answered, and
 * then it speaks for "yes" only. */
static void
test_questions (void)
{
  static const struct
  {
    SwSiteQuestion question;
    const char *failure;
  } rows[] = {
    { SW_SITE_WIND_EXPOSED, "F6" },  { SW_SITE_IGNITION, "F19" },
    { SW_SITE_RUN_ON, "F1" },        { SW_SITE_RUN_ON, "F3" },
    { SW_SITE_WATER_AT_TOE, "F4" },  { SW_SITE_WILDLIFE, "F12" },
    { SW_SITE_CHANNEL_FLOW, "F14" }, { SW_SITE_SEEPAGE, "F15" },
  };
  static const SwCheckState want[] = { [SW_ANSWER_UNKNOWN] = SW_CHECK_UNKNOWN,
                                       [SW_ANSWER_NO] = SW_CHECK_PASS,
                                       [SW_ANSWER_YES] = SW_CHECK_WARN };
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    for (int answer = SW_ANSWER_UNKNOWN; answer <= SW_ANSWER_YES; answer++)
      {
        g_autoptr (SwJob) job = job_of (4.0);
        g_autoptr (SwResult) result = NULL;
        g_autoptr (GPtrArray) checks = NULL;
        const SwCheck *check;

        job->numbers.values[SW_NUMBER_WIND_LIMIT] = 8.0;
        job->site[rows[i].question] = (SwAnswer) answer;
        result = sw_result_new (job, catalogue);
        checks = sw_checks_new (result->layout, result->tally, result->findings);
        check = check_of (checks, rows[i].failure);
        g_test_message ("%s, answer %d", rows[i].failure, answer);
        g_assert_cmpint (check->state, ==, want[answer]);
        g_assert_cmpuint (check->open->len, ==, answer == SW_ANSWER_UNKNOWN ? 1 : 0);
      }
}

typedef void (*Change) (SwJob *job, SwCatalogue *catalogue);

static SwFace *
face_of (SwJob *job)
{
  return g_ptr_array_index (job->faces, 0);
}

static SwBlanket *
blanket_of (SwCatalogue *catalogue)
{
  return g_ptr_array_index (catalogue->blankets, 0);
}

static void
say_run_on (SwJob *job, SwCatalogue *catalogue)
{
  job->site[SW_SITE_RUN_ON] = SW_ANSWER_YES;
}

/* 4:1 over 8 m, then 10:1: bends inwards by 8.3 degrees. */
static void
bend_inwards (SwJob *job, SwCatalogue *catalogue)
{
  static const SwPoint section[] = { { 0.0, 4.0 }, { 8.0, 2.0 }, { 18.0, 1.0 } };
  static const SwPoint outline[] = { { 0, 0 }, { 20, 0 }, { 20, 18 }, { 0, 18 } };

  sw_face_set_section (face_of (job), section, G_N_ELEMENTS (section));
  sw_face_set_outline (face_of (job), outline, G_N_ELEMENTS (outline));
  face_of (job)->bench = SW_BENCH_CONTINUOUS;
}

static void
trench_at_edge (SwJob *job, SwCatalogue *catalogue)
{
  sw_job_set_override (job, SW_PRACTICE_SET_BACK_M, 0.0, "");
}

static void
say_water_at_toe (SwJob *job, SwCatalogue *catalogue)
{
  job->site[SW_SITE_WATER_AT_TOE] = SW_ANSWER_YES;
}

static void
say_wind (SwJob *job, SwCatalogue *catalogue)
{
  job->site[SW_SITE_WIND_EXPOSED] = SW_ANSWER_YES;
}

static void
start_elsewhere (SwJob *job, SwCatalogue *catalogue)
{
  fixture_add_plane (job, "B", 4.0, 5.0, 20.0)->leeward = SW_SIDE_RIGHT;
}

/* 5 sqrt (17) = 20.62 m from rolls of 15. */
static void
shorten_rolls (SwJob *job, SwCatalogue *catalogue)
{
  job->roll_length_m = 15.0;
}

static void
loosen (SwJob *job, SwCatalogue *catalogue)
{
  face_of (job)->loose = TRUE;
}

static void
narrow_crowns (SwJob *job, SwCatalogue *catalogue)
{
  for (guint i = 0; i < catalogue->pins->len; i++)
    ((SwPin *) g_ptr_array_index (catalogue->pins, i))->crown_m = 0.024;
}

static void
grow_slowly (SwJob *job, SwCatalogue *catalogue)
{
  job->numbers.values[SW_NUMBER_GROW_MONTHS] = 13.0;
}

static void
say_wildlife (SwJob *job, SwCatalogue *catalogue)
{
  job->site[SW_SITE_WILDLIFE] = SW_ANSWER_YES;
}

static void
say_mown (SwJob *job, SwCatalogue *catalogue)
{
  job->numbers.mown = SW_ANSWER_YES;
}

static void
say_channel (SwJob *job, SwCatalogue *catalogue)
{
  job->site[SW_SITE_CHANNEL_FLOW] = SW_ANSWER_YES;
}

static void
say_seepage (SwJob *job, SwCatalogue *catalogue)
{
  job->site[SW_SITE_SEEPAGE] = SW_ANSWER_YES;
}

static void
add_box (SwJob *job, SwCatalogue *catalogue)
{
  static const SwPoint box[] = { { 8, 8 }, { 9, 8 }, { 9, 9 }, { 8, 9 } };
  SwObstacle *obstacle = sw_obstacle_new ("1");

  sw_obstacle_set_outline (obstacle, box, G_N_ELEMENTS (box));
  g_ptr_array_add (face_of (job)->obstacles, obstacle);
}

static void
take_one_net (SwJob *job, SwCatalogue *catalogue)
{
  blanket_of (catalogue)->nets = 1;
}

static void
let_people_in (SwJob *job, SwCatalogue *catalogue)
{
  job->site[SW_SITE_PUBLIC] = SW_ANSWER_YES;
}

static void
say_ignition (SwJob *job, SwCatalogue *catalogue)
{
  job->site[SW_SITE_IGNITION] = SW_ANSWER_YES;
}

/* Everything said and nothing to find: 4:1 and 20.62 m, no water, wind, animals or fire;
 * the fixture's mat lasts 12 months, and plants need 6. */
static SwJob *
quiet_job (void)
{
  SwJob *job = job_of (4.0);

  job->numbers.values[SW_NUMBER_GROW_MONTHS] = 6.0;
  job->numbers.mown = SW_ANSWER_NO;
  return job;
}

/* Each failure mode is silent on the quiet job, and speaks when that is changed. */
static void
test_each_speaks (void)
{
  static const struct
  {
    const char *failure, *code;
    Change change;
  } rows[] = {
    { "F1", "run-on", say_run_on },
    { "F2", "bridging", bend_inwards },
    { "F3", "trench-at-edge", trench_at_edge },
    { "F4", "water-at-toe", say_water_at_toe },
    { "F5", "side-edges", say_run_on },
    { "F6", "wind", say_wind },
    { "F7", "starts-differ", start_elsewhere },
    { "F8", "joints", shorten_rolls },
    { "F9", "pin-trial", loosen },
    { "F10", "narrow-crown", narrow_crowns },
    { "F11", "life-short", grow_slowly },
    { "F12", "wildlife", say_wildlife },
    { "F13", "mowing-net", say_mown },
    { "F14", "channel-flow", say_channel },
    { "F15", "seepage", say_seepage },
    { "F16", "obstacle", add_box },
    { "F17", "net-side-up", take_one_net },
    { "F18", "public", let_people_in },
    { "F19", "fire", say_ignition },
  };

  G_STATIC_ASSERT (G_N_ELEMENTS (rows) == SW_CHECK_COUNT);
  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    for (int changed = 0; changed <= 1; changed++)
      {
        g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
        g_autoptr (SwJob) job = quiet_job ();
        g_autoptr (SwResult) result = NULL;
        g_autoptr (GPtrArray) checks = NULL;
        const SwCheck *check;
        gboolean speaks = FALSE;

        if (changed)
          rows[i].change (job, catalogue);
        result = sw_result_new (job, catalogue);
        g_assert_cmpint (result->status, ==, SW_OK);
        checks = sw_checks_new (result->layout, result->tally, result->findings);
        check = check_of (checks, rows[i].failure);
        for (guint k = 0; k < check->findings->len; k++)
          speaks |= g_str_equal (
              ((SwFinding *) g_ptr_array_index (check->findings, k))->code, rows[i].code);
        g_test_message ("%s, changed %d", rows[i].failure, changed);
        g_assert_true (speaks == changed);
        g_assert_cmpint (check->state, ==, changed ? SW_CHECK_WARN : SW_CHECK_PASS);
      }
}

/* What nobody has said: months of growth, mowing, and a class of many products. */
static void
test_not_known (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = job_of (4.0);
  g_autoptr (SwResult) result = NULL;
  g_autoptr (GPtrArray) checks = NULL;
  static const char *const failures[] = { "F11", "F13", "F17" };

  blanket_of (catalogue)->nets = -1;
  result = sw_result_new (job, catalogue);
  checks = sw_checks_new (result->layout, result->tally, result->findings);
  for (guint i = 0; i < G_N_ELEMENTS (failures); i++)
    {
      g_assert_cmpint (check_of (checks, failures[i])->state, ==, SW_CHECK_UNKNOWN);
      g_assert_cmpuint (check_of (checks, failures[i])->open->len, ==, 1);
    }
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/judge/checks/rows", test_rows);
  g_test_add_func ("/judge/checks/questions", test_questions);
  g_test_add_func ("/judge/checks/each-speaks", test_each_speaks);
  g_test_add_func ("/judge/checks/not-known", test_not_known);
  return g_test_run ();
}
