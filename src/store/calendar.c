/* SPDX-License-Identifier: MIT */
#include <slopewright/store/calendar.h>
#include <slopewright/store/store.h>
#include <string.h>

#define OCTETS_MOST 75
#define ID_LENGTH 16
#define LINE_END "\r\n"

/* Text values escape these; a line end becomes "\n" in letters. RFC 5545 sec. 3.3.11. */
static char *
escaped (const char *text)
{
  GString *out = g_string_new (NULL);

  for (; *text != '\0'; text++)
    if (*text == '\n')
      g_string_append (out, "\\n");
    else if (*text == '\\' || *text == ';' || *text == ',')
      g_string_append_printf (out, "\\%c", *text);
    else if (!g_ascii_iscntrl (*text))
      g_string_append_c (out, *text);
  return g_string_free (out, FALSE);
}

/* Fold without cutting a letter of UTF-8 in two; a continued line begins with a blank,
 * which counts. RFC 5545 sec. 3.1. */
static void
append_line (GString *calendar, const char *line)
{
  gsize room = OCTETS_MOST;

  while (strlen (line) > room)
    {
      const char *end = line + room;

      while (((guchar) *end & 0xC0) == 0x80)
        end--;
      g_string_append_len (calendar, line, end - line);
      g_string_append (calendar, LINE_END " ");
      line = end;
      room = OCTETS_MOST - 1;
    }
  g_string_append (calendar, line);
  g_string_append (calendar, LINE_END);
}

static void
append_text (GString *calendar, const char *name, const char *text)
{
  g_autofree char *value = escaped (text);
  g_autofree char *line = g_strconcat (name, ":", value, NULL);

  append_line (calendar, line);
}

static char *
basic_date (const GDate *date)
{
  return g_strdup_printf ("%04d%02d%02d", g_date_get_year (date),
                          (int) g_date_get_month (date), g_date_get_day (date));
}

static char *
long_date (const GDate *date)
{
  return g_strdup_printf ("%04d-%02d-%02d", g_date_get_year (date),
                          (int) g_date_get_month (date), g_date_get_day (date));
}

static void
append_days (GString *calendar, const GDate *date)
{
  g_autofree char *start = basic_date (date);
  g_autofree char *line = g_strconcat ("DTSTART;VALUE=DATE:", start, NULL);

  append_line (calendar, line);
}

static void
append_event (GString *calendar, const SwJobCard *card, const SwDue *due,
              const GDate *installed, const SwTexts *texts, const char *id)
{
  const char *code = sw_due_code (due->kind);
  g_autofree char *number = g_strdup_printf ("%d", due->number);
  g_autofree char *title_id = g_strdup_printf ("due.%s", code);
  g_autofree char *what_id = g_strdup_printf ("due.%s.what", code);
  g_autofree char *repair_by = long_date (&due->repair_by);
  g_autofree char *title =
      sw_texts_fill (texts, title_id, "number", number, "job", card->name, NULL);
  g_autofree char *what = sw_texts_fill (texts, what_id, "repair_by", repair_by, NULL);
  g_autofree char *stamp = basic_date (installed);
  g_autofree char *stamp_line = g_strdup_printf ("DTSTAMP:%sT000000Z", stamp);
  g_autofree char *uid =
      g_strdup_printf ("UID:%s-%s-%d@slopewright", id, code, due->number);

  append_line (calendar, "BEGIN:VEVENT");
  append_line (calendar, uid);
  append_line (calendar, stamp_line);
  append_days (calendar, &due->date);
  append_text (calendar, "SUMMARY", title);
  append_text (calendar, "DESCRIPTION", what);
  if (*card->place != '\0')
    append_text (calendar, "LOCATION", card->place);
  append_line (calendar, "TRANSP:TRANSPARENT");
  append_line (calendar, "END:VEVENT");
}

/* The same job gives the same id, whatever else in it has changed. */
static char *
job_id (const SwJobCard *card)
{
  g_autofree char *words = g_strjoin ("\n", card->name, card->number, card->place, NULL);
  g_autofree char *sum = g_compute_checksum_for_string (G_CHECKSUM_SHA256, words, -1);

  return g_strndup (sum, ID_LENGTH);
}

char *
sw_calendar_text (const SwJobCard *card, const GArray *dues, const GDate *installed,
                  const SwTexts *texts)
{
  g_autofree char *id = job_id (card);
  GString *calendar = g_string_new (NULL);

  append_line (calendar, "BEGIN:VCALENDAR");
  append_line (calendar, "VERSION:2.0");
  append_line (calendar, "PRODID:-//Slopewright//slopepack//EN");
  append_line (calendar, "CALSCALE:GREGORIAN");
  for (guint i = 0; i < dues->len; i++)
    append_event (calendar, card, &g_array_index (dues, SwDue, i), installed, texts, id);
  append_line (calendar, "END:VCALENDAR");
  return g_string_free (calendar, FALSE);
}

gboolean
sw_calendar_save (const char *text, GFile *file, GError **error)
{
  g_autoptr (GError) trouble = NULL;

  if (g_file_replace_contents (file, text, strlen (text), NULL, FALSE, G_FILE_CREATE_NONE,
                               NULL, NULL, &trouble))
    return TRUE;
  g_set_error (error, SW_STORE_ERROR, SW_STORE_ERROR_WRITE,
               "cannot write the calendar: %s", trouble->message);
  return FALSE;
}
