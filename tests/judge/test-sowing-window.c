/* SPDX-License-Identifier: MIT */
#include <glib.h>
#include <slopewright/judge/sowing-window.h>

/* The calendar: which days of a year there are. */
static void
test_days (void)
{
  static const char *const none[] = { "",      "9-1",   "09-31", "02-30",
                                      "13-01", "00-10", "04-00", "2026-04-01",
                                      "04/01", "ab-cd", "04-1x" };
  int month = 0, day = 0;

  g_assert_true (sw_month_day_parse ("02-29", &month, &day));
  g_assert_cmpint (month, ==, 2);
  g_assert_cmpint (day, ==, 29);
  for (gsize i = 0; i < G_N_ELEMENTS (none); i++)
    g_assert_false (sw_month_day_parse (none[i], &month, &day));
  g_assert_cmpint (day, ==, 29);
}

static gboolean
holds (const char *from, const char *to, GDateDay day, GDateMonth month)
{
  g_autoptr (SwJob) job = sw_job_new_default ();
  SwSowingWindow window;
  GDate date;

  sw_text_set (&job->card.sow_from, from);
  sw_text_set (&job->card.sow_to, to);
  g_assert_true (sw_sowing_window (job, &window));
  g_date_clear (&date, 1);
  g_date_set_dmy (&date, day, month, 2026);
  return sw_sowing_window_holds (&window, &date);
}

/* By the calendar, both ends within, also over New Year. */
static void
test_window (void)
{
  g_assert_true (holds ("03-15", "05-31", 15, G_DATE_MARCH));
  g_assert_true (holds ("03-15", "05-31", 31, G_DATE_MAY));
  g_assert_false (holds ("03-15", "05-31", 14, G_DATE_MARCH));
  g_assert_false (holds ("03-15", "05-31", 1, G_DATE_JUNE));
  g_assert_true (holds ("10-01", "02-15", 31, G_DATE_DECEMBER));
  g_assert_true (holds ("10-01", "02-15", 15, G_DATE_FEBRUARY));
  g_assert_false (holds ("10-01", "02-15", 16, G_DATE_FEBRUARY));
  g_assert_false (holds ("10-01", "02-15", 30, G_DATE_SEPTEMBER));
}

static void
test_needs_both_ends (void)
{
  g_autoptr (SwJob) job = sw_job_new_default ();
  SwSowingWindow window;

  g_assert_false (sw_sowing_window (job, &window));
  sw_text_set (&job->card.sow_from, "03-15");
  g_assert_false (sw_sowing_window (job, &window));
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/judge/sowing-window/days", test_days);
  g_test_add_func ("/judge/sowing-window/window", test_window);
  g_test_add_func ("/judge/sowing-window/needs-both-ends", test_needs_both_ends);
  return g_test_run ();
}
