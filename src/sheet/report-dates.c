/* SPDX-License-Identifier: MIT */
#include "report-words.h"
#include <slopewright/judge/due-dates.h>

static char *
date_words (const GDate *date)
{
  return g_strdup_printf ("%04d-%02d-%02d", g_date_get_year (date),
                          (int) g_date_get_month (date), g_date_get_day (date));
}

static void
append_due (GString *report, const SwDue *due, const SwJobCard *card,
            const SwTexts *texts)
{
  g_autofree char *id = g_strdup_printf ("due.%s.line", sw_due_code (due->kind));
  g_autofree char *number = g_strdup_printf ("%d", due->number);
  g_autofree char *date = date_words (&due->date);
  g_autofree char *repair_by = date_words (&due->repair_by);
  g_autofree char *line = sw_texts_fill (texts, id, "number", number, "job", card->name,
                                         "repair_by", repair_by, NULL);

  g_string_append_printf (report, "%s  %s\n", date, line);
}

char *
sw_report_dates (const SwResult *result, const SwTexts *texts)
{
  g_autoptr (GArray) dues = NULL;
  GString *report;
  GDate installed;

  if (result->layout == NULL || !sw_install_date (result->job, &installed))
    return NULL;
  dues = sw_due_dates_new (result->layout, &installed);
  report = g_string_new (NULL);
  for (guint i = 0; i < dues->len; i++)
    append_due (report, &g_array_index (dues, SwDue, i), &result->job->card, texts);
  g_string_append_printf (report, "%s\n", sw_texts_get (texts, "due.note"));
  return g_string_free (report, FALSE);
}
