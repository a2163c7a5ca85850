/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include <slopewright/store/calendar.h>
#include <slopewright/store/store.h>
#include <string.h>

static char *
calendar_of (const char *name, const char *place)
{
  g_autoptr (SwTexts) texts = sw_texts_load ("en");
  g_autoptr (SwJob) job = sw_job_new_default ();
  g_autoptr (GArray) dues = g_array_new (FALSE, TRUE, sizeof (SwDue));
  SwDue due = { .kind = SW_DUE_INSPECTION, .number = 3 };
  GDate installed;

  sw_text_set (&job->card.name, name);
  sw_text_set (&job->card.place, place);
  g_date_clear (&installed, 1);
  g_date_set_dmy (&installed, 31, G_DATE_MARCH, 2026);
  due.date = due.repair_by = installed;
  g_date_add_days (&due.date, 21);
  g_date_add_days (&due.repair_by, 28);
  g_array_append_val (dues, due);
  return sw_calendar_text (&job->card, dues, &installed, texts);
}

/* What RFC 5545 asks of a calendar and an event: VERSION, PRODID; UID, DTSTAMP, DTSTART. */
static void
test_parts (void)
{
  g_autofree char *text = calendar_of ("Bank", "");
  static const char *const lines[] = { "\r\nVERSION:2.0\r\n",
                                       "\r\nPRODID:",
                                       "-inspection-3@slopewright\r\n",
                                       "\r\nDTSTAMP:20260331T000000Z\r\n",
                                       "\r\nDTSTART;VALUE=DATE:20260421\r\n",
                                       "\r\nSUMMARY:Blanket inspection 3: Bank\r\n",
                                       "2026-04-28" };

  g_assert_true (g_str_has_prefix (text, "BEGIN:VCALENDAR\r\n"));
  g_assert_true (g_str_has_suffix (text, "END:VEVENT\r\nEND:VCALENDAR\r\n"));
  for (guint i = 0; i < G_N_ELEMENTS (lines); i++)
    g_assert_nonnull (strstr (text, lines[i]));
  g_assert_null (strstr (text, "LOCATION"));
}

/* Read in again, the events of a job replace each other; those of two jobs do not. */
static void
test_names (void)
{
  g_autofree char *first = calendar_of ("Bank", "here");
  g_autofree char *again = calendar_of ("Bank", "here");
  g_autofree char *other = calendar_of ("Bank", "there");
  const char *uid = strstr (first, "UID:");
  g_autofree char *line = g_strndup (uid, strcspn (uid, "\r"));

  g_assert_cmpuint (strlen (line), ==, strlen ("UID:-inspection-3@slopewright") + 16);
  g_assert_nonnull (strstr (again, line));
  g_assert_null (strstr (other, line));
}

/* Sec. 3.3.11: backslash, semicolon, comma and line end are escaped. */
static void
test_escapes (void)
{
  g_autofree char *text = calendar_of ("a,b;c\\d\ne", "x, y");

  g_assert_nonnull (strstr (text, "inspection 3: a\\,b\\;c\\\\d\\ne\r\n"));
  g_assert_nonnull (strstr (text, "LOCATION:x\\, y\r\n"));
}

/* Sec. 3.1: lines of at most 75 octets; unfolded they are whole again, letters too. */
static void
test_folds (void)
{
  g_autofree char *name = g_strnfill (70, 'x');
  g_autofree char *long_name = g_strconcat (name, "äöü土", name, name, NULL);
  g_autofree char *text = calendar_of (long_name, "");
  g_auto (GStrv) lines = g_strsplit (text, "\r\n", -1);
  g_auto (GStrv) parts = g_strsplit (text, "\r\n ", -1);
  g_autofree char *whole = g_strjoinv ("", parts);

  for (char **line = lines; *line != NULL; line++)
    {
      g_assert_cmpuint (strlen (*line), <=, 75);
      g_assert_true (g_utf8_validate (*line, -1, NULL));
    }
  g_assert_nonnull (strstr (whole, long_name));
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/store/calendar/parts", test_parts);
  g_test_add_func ("/store/calendar/names", test_names);
  g_test_add_func ("/store/calendar/escapes", test_escapes);
  g_test_add_func ("/store/calendar/folds", test_folds);
  return g_test_run ();
}
