/* SPDX-License-Identifier: MIT */
#include "report-words.h"

char *
sw_report_check_looked (const SwCheck *check, const SwTexts *texts, SwNumberStyle style)
{
  g_autoptr (GHashTable) places =
      g_hash_table_new_full (g_str_hash, g_str_equal, NULL, g_free);

  for (guint i = 0; i < check->inputs->len; i++)
    {
      const SwInput *input = &g_array_index (check->inputs, SwInput, i);

      g_hash_table_replace (places, (gpointer) input->symbol,
                            sw_report_limit (input, style));
    }
  return sw_texts_fill_table (texts, check->looked, places);
}

char **
sw_report_check_asks (const SwCheck *check, const SwTexts *texts)
{
  GPtrArray *asks = g_ptr_array_new ();

  for (guint i = 0; i < check->open->len; i++)
    {
      const char *fact = g_ptr_array_index (check->open, i);
      const char *words = sw_texts_get (texts, fact);
      gboolean question = g_str_has_suffix (words, "?");

      g_ptr_array_add (asks,
                       sw_texts_fill (texts, question ? "check.ask" : "check.give",
                                      question ? "question" : "number", words, NULL));
    }
  g_ptr_array_add (asks, NULL);
  return (char **) g_ptr_array_free (asks, FALSE);
}

const char *
sw_report_check_state (const SwCheck *check, const SwTexts *texts)
{
  g_autofree char *id = NULL;

  if (check->state == SW_CHECK_WARN)
    {
      const SwFinding *worst = g_ptr_array_index (check->findings, 0);

      id = g_strconcat ("severity.", sw_severity_code (worst->severity), NULL);
    }
  else
    id = g_strconcat ("check.state.", sw_check_state_code (check->state), NULL);
  return sw_texts_get (texts, id);
}

/* One line for each that speaks; the same words of several places count once. */
static void
add_findings (GString *report, const SwCheck *check, const SwTexts *texts)
{
  const char *before = "";

  for (guint i = 0; i < check->findings->len; i++)
    {
      const SwFinding *finding = g_ptr_array_index (check->findings, i);
      g_autofree char *severity =
          g_strconcat ("severity.", sw_severity_code (finding->severity), NULL);
      g_autofree char *title = sw_report_finding_title (finding, texts);
      g_autofree char *line = NULL;

      if (g_str_equal (finding->code, before))
        continue;
      before = finding->code;
      line = sw_texts_fill (texts, "check.speaks", "severity",
                            sw_texts_get (texts, severity), "title", title, NULL);
      g_string_append_printf (report, "     %s\n", line);
    }
}

static void
add_check (GString *report, const SwCheck *check, const SwTexts *texts,
           SwNumberStyle style)
{
  g_autofree char *id = g_strconcat ("check.", check->failure, ".title", NULL);
  g_autofree char *looked = sw_report_check_looked (check, texts, style);
  g_auto (GStrv) asks = sw_report_check_asks (check, texts);
  g_autofree char *page = sw_texts_fill (texts, "check.page", "page",
                                         sw_texts_get (texts, check->page), NULL);

  g_string_append_printf (report, "%-4s %s: %s\n", check->failure,
                          sw_texts_get (texts, id), sw_report_check_state (check, texts));
  add_findings (report, check, texts);
  g_string_append_printf (report, "     %s\n", looked);
  for (char **ask = asks; *ask != NULL; ask++)
    g_string_append_printf (report, "     %s\n", *ask);
  g_string_append_printf (report, "     %s\n", page);
}

char *
sw_report_checks (const SwResult *result, const SwTexts *texts, SwNumberStyle style)
{
  GString *report = g_string_new (NULL);
  g_autoptr (GPtrArray) checks = NULL;

  if (result->layout == NULL)
    return g_string_free (report, FALSE);
  checks = sw_checks_new (result->layout, result->tally, result->findings);
  g_string_append_printf (report, "%s\n%s\n\n", sw_texts_get (texts, "check.title"),
                          sw_texts_get (texts, "check.how"));
  for (guint i = 0; i < checks->len; i++)
    add_check (report, g_ptr_array_index (checks, i), texts, style);
  return g_string_free (report, FALSE);
}
