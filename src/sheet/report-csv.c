/* SPDX-License-Identifier: MIT */
#include "report-tally.h"
#include <string.h>

/*
 * Source: RFC 4180: lines end in CR LF; a field with a comma, a quote or a line
 * end stands in quotes, and its quotes are doubled. A leading = + - @ would be
 * run as a formula by spreadsheets, so text that begins with one gets an apostrophe.
 */
static void
append_text (GString *csv, const char *text)
{
  gboolean quoted = strpbrk (text, ",\"\r\n") != NULL;

  if (quoted)
    g_string_append_c (csv, '"');
  if (*text != '\0' && strchr ("=+-@\t\r", *text) != NULL)
    g_string_append_c (csv, '\'');
  for (const char *c = text; *c != '\0'; c++)
    {
      if (*c == '"')
        g_string_append_c (csv, '"');
      g_string_append_c (csv, *c);
    }
  if (quoted)
    g_string_append_c (csv, '"');
}

static void
append_row (GString *csv, const char *name, const char *title, double value,
            const char *unit)
{
  char number[G_ASCII_DTOSTR_BUF_SIZE];

  append_text (csv, name);
  g_string_append_c (csv, ',');
  append_text (csv, title);
  g_string_append_printf (csv, ",%s,%s\r\n", sw_number_exact (value, number), unit);
}

static void
append_counts (GString *csv, const SwResult *result, const SwTexts *texts)
{
  const SwTally *tally = result->tally;
  const struct
  {
    const char *name;
    double value;
    const char *unit;
  } rows[] = {
    { "runs", tally->runs, "1" },          { "infill-runs", tally->infill_runs, "1" },
    { "pieces", tally->pieces, "1" },      { "joints", tally->joints, "1" },
    { "pins", (double) tally->pins, "1" }, { "key-trench", tally->key_trench_m, "m" },
    { "slots", tally->slot_m, "m" },       { "toe-trench", tally->toe_trench_m, "m" },
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autofree char *id = g_strdup_printf ("report.total.%s", rows[i].name);

      append_row (csv, rows[i].name, sw_texts_get (texts, id), rows[i].value,
                  rows[i].unit);
    }
}

static void
append_pieces (GString *csv, const SwLayout *layout, const SwTexts *texts, int roll)
{
  guint number = 0;

  for (guint i = 0; i < layout->n_pieces; i++)
    if (layout->pieces[i].roll == roll)
      {
        g_autofree char *name = g_strdup_printf ("roll.%d.piece.%u", roll, ++number);
        g_autofree char *run = sw_report_run_words (layout, &layout->pieces[i]);
        g_autofree char *title = sw_texts_fill (texts, "report.piece", "run", run, NULL);

        append_row (csv, name, title, layout->pieces[i].length_m, "m");
      }
  g_autofree char *length = g_strdup_printf ("roll.%d.length", roll);
  append_row (csv, length,
              sw_texts_get (texts, layout->cut_rolls[roll - 1].on_hand
                                       ? "report.total.length-on-hand"
                                       : "report.total.length"),
              layout->cut_rolls[roll - 1].length_m, "m");
  g_autofree char *name = g_strdup_printf ("roll.%d.off-cut", roll);
  append_row (csv, name, sw_texts_get (texts, "report.total.offcut"),
              layout->cut_rolls[roll - 1].offcut_m, "m");
}

char *
sw_report_tally_csv (const SwResult *result, const SwTexts *texts)
{
  GString *csv = g_string_new ("name,title,value,unit\r\n");

  append_counts (csv, result, texts);
  for (guint i = 0; i < result->tally->workings->len; i++)
    {
      const SwWorking *working = g_ptr_array_index (result->tally->workings, i);
      g_autofree char *title = sw_report_working_title (working, texts);

      append_row (csv, working->name, title, working->value,
                  sw_report_si_unit (working->unit));
    }
  for (int roll = 1; roll <= result->layout->rolls; roll++)
    append_pieces (csv, result->layout, texts, roll);
  return g_string_free (csv, FALSE);
}
