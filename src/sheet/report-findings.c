/* SPDX-License-Identifier: MIT */
#include "report-words.h"

char *
sw_report_finding_title (const SwFinding *finding, const SwTexts *texts)
{
  g_autofree char *id = g_strdup_printf ("finding.%s.title", finding->code);

  return g_strdup (sw_texts_get (texts, id));
}

char *
sw_report_finding_text_at (const SwFinding *finding, const char *place,
                           const SwTexts *texts, SwNumberStyle style)
{
  g_autofree char *id = g_strdup_printf ("finding.%s.text", finding->code);
  g_autoptr (GHashTable) places =
      g_hash_table_new_full (g_str_hash, g_str_equal, NULL, g_free);

  for (guint i = 0; i < finding->inputs->len; i++)
    {
      const SwInput *input = &g_array_index (finding->inputs, SwInput, i);

      g_hash_table_replace (places, (gpointer) input->symbol,
                            sw_report_limit (input, style));
    }
  g_hash_table_replace (places, (gpointer) "face", g_strdup (place));
  return sw_texts_fill_table (texts, id, places);
}

char *
sw_report_finding_text (const SwResult *result, const SwFinding *finding,
                        const SwTexts *texts, SwNumberStyle style)
{
  g_autofree char *place =
      finding->face >= 0
          ? sw_report_place_words (result, finding->face, finding->tier, texts)
          : g_strdup ("");

  return sw_report_finding_text_at (finding, place, texts, style);
}

char *
sw_report_findings (const SwResult *result, const SwTexts *texts, SwNumberStyle style)
{
  GString *report = g_string_new (NULL);

  for (guint i = 0; result->findings != NULL && i < result->findings->len; i++)
    {
      const SwFinding *finding = g_ptr_array_index (result->findings, i);
      g_autofree char *severity =
          g_strdup_printf ("severity.%s", sw_severity_code (finding->severity));
      g_autofree char *basis = g_strdup_printf ("finding.%s.basis", finding->code);
      g_autofree char *title = sw_report_finding_title (finding, texts);
      g_autofree char *text = sw_report_finding_text (result, finding, texts, style);

      g_string_append_printf (report, "%s%s: %s\n  %s\n  %s %s\n", i > 0 ? "\n" : "",
                              sw_texts_get (texts, severity), title, text,
                              sw_texts_get (texts, "report.basis"),
                              sw_texts_get (texts, basis));
    }
  return g_string_free (report, FALSE);
}
