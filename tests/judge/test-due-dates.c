/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "../layout/fixture.h"
#include <math.h>
#include <slopewright/judge/due-dates.h>

static SwJob *
dated_job (const char *date)
{
  SwJob *job = fixture_job ();

  fixture_add_plane (job, "A", 4.0, 5.0, 20.0);
  sw_text_set (&job->card.install_date, date);
  return job;
}

/* Only whole days of the calendar, in the one form that sorts. */
static void
test_dates_read (void)
{
  static const struct
  {
    const char *text;
    gboolean good;
  } rows[] = {
    { "2026-03-31", TRUE },  { "2024-02-29", TRUE },  { "2026-02-29", FALSE },
    { "2026-04-31", FALSE }, { "2026-13-01", FALSE }, { "2026-00-10", FALSE },
    { "31.03.2026", FALSE }, { "2026-3-31", FALSE },  { "2026-03-31 ", FALSE },
    { "", FALSE },           { "2026/03/31", FALSE }, { "0000-01-01", FALSE },
    { "next week", FALSE },  { "+026-03-31", FALSE },
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr (SwJob) job = dated_job (rows[i].text);
      GDate date;

      g_test_message ("\"%s\"", rows[i].text);
      g_assert_true (sw_install_date (job, &date) == rows[i].good);
    }
}

static const SwDue *
due_at (const GArray *dues, guint index)
{
  return &g_array_index (dues, SwDue, index);
}

static void
assert_day (const GDate *date, int year, int month, int day)
{
  g_assert_cmpint (g_date_get_year (date), ==, year);
  g_assert_cmpint ((int) g_date_get_month (date), ==, month);
  g_assert_cmpint (g_date_get_day (date), ==, day);
}

/* The fixture's practice: every 7 days, mended within 7. Two months are 61 days, 8 weeks. */
static void
test_weeks (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = dated_job ("2026-03-31");
  g_autoptr (SwLayout) layout = NULL;
  g_autoptr (GArray) dues = NULL;
  GDate installed;

  job->numbers.values[SW_NUMBER_GROW_MONTHS] = 2.0;
  g_assert_true (sw_install_date (job, &installed));
  layout = fixture_lay (job, catalogue);
  dues = sw_due_dates_new (layout, &installed);
  g_assert_cmpuint (dues->len, ==, 9);
  assert_day (&due_at (dues, 0)->date, 2026, 4, 7);
  assert_day (&due_at (dues, 0)->repair_by, 2026, 4, 14);
  assert_day (&due_at (dues, 7)->date, 2026, 5, 26);
  /* The class lasts 12 months: 365 days. */
  g_assert_cmpint (due_at (dues, 8)->kind, ==, SW_DUE_BLANKET_END);
  assert_day (&due_at (dues, 8)->date, 2027, 3, 31);
}

/* Without a growing time the life of the class, 365 days, 52 weeks; of a permanent mat no
 * more than 24 months, 730 days, 104 weeks, and no end. */
static void
test_how_long (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = dated_job ("2026-03-31");
  g_autoptr (SwLayout) layout = fixture_lay (job, catalogue);
  g_autoptr (GArray) life = NULL;
  g_autoptr (GArray) permanent = NULL;
  GDate installed;

  g_assert_true (sw_install_date (job, &installed));
  life = sw_due_dates_new (layout, &installed);
  g_assert_cmpuint (life->len, ==, 52 + 1);
  layout->blanket->life_months.value = INFINITY;
  permanent = sw_due_dates_new (layout, &installed);
  g_assert_cmpuint (permanent->len, ==, 104);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/judge/due-dates/read", test_dates_read);
  g_test_add_func ("/judge/due-dates/weeks", test_weeks);
  g_test_add_func ("/judge/due-dates/how-long", test_how_long);
  return g_test_run ();
}
