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

        job->site[rows[i].question] = (SwAnswer) answer;
        result = sw_result_new (job, catalogue);
        checks = sw_checks_new (result->layout, result->tally, result->findings);
        check = check_of (checks, rows[i].failure);
        g_test_message ("%s, answer %d", rows[i].failure, answer);
        g_assert_cmpint (check->state, ==, want[answer]);
        g_assert_cmpuint (check->open->len, ==, answer == SW_ANSWER_UNKNOWN ? 1 : 0);
      }
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/judge/checks/rows", test_rows);
  g_test_add_func ("/judge/checks/questions", test_questions);
  return g_test_run ();
}
