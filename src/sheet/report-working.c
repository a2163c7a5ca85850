/* SPDX-License-Identifier: MIT */
#include "report-words.h"
#include <string.h>

static char *
formula_text_id (const SwWorking *working, const char *part)
{
  return g_strdup_printf ("working.%s.%s", working->formula, part);
}

/* What a working is about beyond its formula: a kind of trench or pin, a run. */
static char *
subject_words (const SwWorking *working, const SwTexts *texts)
{
  const char *last = strrchr (working->name, '.');
  const char *run = strstr (working->name, ".run.");
  const char *zone = strstr (working->name, ".zone.");

  last = last != NULL ? last + 1 : working->name;
  if (g_str_has_prefix (working->formula, "trench_"))
    {
      g_autofree char *id = g_strdup_printf ("report.trench.%s", last);
      return g_strdup (sw_texts_get (texts, id));
    }
  if (g_str_equal (working->formula, "rolls_of_size"))
    return g_strdup (last);
  if (g_str_equal (working->formula, "pins_order"))
    return g_strdup_printf ("%s mm", last);
  if (g_str_has_prefix (working->formula, "pins_") && strstr (working->name, ".pins."))
    {
      g_autofree char *id = g_strdup_printf ("pin-role.%s", last);
      return g_strdup (sw_texts_get (texts, id));
    }
  if (g_str_equal (working->formula, "fertiliser_given"))
    {
      g_autofree char *id = g_strdup_printf ("nutrient.%s", last);
      return g_strdup (sw_texts_get (texts, id));
    }
  if (g_str_has_prefix (working->name, "cost-"))
    {
      g_autofree char *id = g_strdup_printf ("cost.%s", last + strlen ("cost-"));
      return g_strdup (sw_texts_get (texts, id));
    }
  if (g_str_has_prefix (working->name, "seed-species."))
    {
      const char *from = working->name + strlen ("seed-species.");
      g_autofree char *number = g_strndup (from, strcspn (from, "."));
      return sw_texts_fill (texts, "report.species", "number", number, NULL);
    }
  if (zone != NULL)
    return g_strndup (zone + strlen (".zone."), strcspn (zone + strlen (".zone."), "."));
  if (run != NULL)
    return g_strndup (run + strlen (".run."), strcspn (run + strlen (".run."), "."));
  return NULL;
}

char *
sw_report_working_title (const SwWorking *working, const SwTexts *texts)
{
  g_autofree char *id = formula_text_id (working, "title");
  g_autofree char *subject = subject_words (working, texts);

  if (subject == NULL)
    return g_strdup (sw_texts_get (texts, id));
  return sw_texts_fill (texts, "report.title-of", "title", sw_texts_get (texts, id),
                        "what", subject, NULL);
}

/* US sums are worked in decimal feet, then read off a tape or ordered in yards. */
static char *
result_words (const SwWorking *working, SwNumberStyle style)
{
  g_autofree char *worked = sw_report_calculator (working->value, working->unit, style);
  g_autofree char *read = sw_quantity_text (working->value, working->unit, style);
  gboolean us = style.units == SW_UNITS_US;

  switch (working->unit)
    {
    case SW_UNIT_M:
    case SW_UNIT_M2:
    case SW_UNIT_M3:
      return us ? g_strconcat (worked, " = ", read, NULL) : g_steal_pointer (&read);
    case SW_UNIT_KG:
      return g_steal_pointer (&read);
    default:
      return g_steal_pointer (&worked);
    }
}

char *
sw_report_working_check (const SwWorking *working, const SwTexts *texts,
                         SwNumberStyle style)
{
  g_autofree char *id = formula_text_id (working, "check");
  g_autoptr (GHashTable) places =
      g_hash_table_new_full (g_str_hash, g_str_equal, NULL, g_free);

  for (guint i = 0; i < working->inputs->len; i++)
    {
      const SwInput *input = &g_array_index (working->inputs, SwInput, i);

      g_hash_table_replace (places, (gpointer) input->symbol,
                            sw_report_calculator (input->value, input->unit, style));
    }
  g_hash_table_replace (places, (gpointer) "result", result_words (working, style));
  return sw_texts_fill_table (texts, id, places);
}

char *
sw_report_input_origin (const SwInput *input, const SwTexts *texts)
{
  g_autofree char *source = NULL;

  switch (input->origin)
    {
    case SW_ORIGIN_MEASURED:
      return g_strdup (sw_texts_get (texts, "report.origin.measured"));
    case SW_ORIGIN_TYPED:
      return g_strdup (sw_texts_get (texts, "report.origin.typed"));
    case SW_ORIGIN_PRACTICE:
    case SW_ORIGIN_CATALOGUE:
      source = sw_report_source_words (input->source, input->evidence, texts);
      return sw_texts_fill (texts,
                            input->origin == SW_ORIGIN_PRACTICE
                                ? "report.origin.practice"
                                : "report.origin.catalogue",
                            "source", source, NULL);
    default:
      if (input->name == NULL)
        return g_strdup (sw_texts_get (texts, "report.origin.part"));
      return sw_texts_fill (texts, "report.origin.computed", "name", input->name, NULL);
    }
}

static void
append_inputs (GString *report, const SwWorking *working, const SwTexts *texts,
               SwNumberStyle style)
{
  g_autoptr (GPtrArray) cells = g_ptr_array_new_with_free_func (g_free);
  glong widest[2] = { 0, 0 };

  for (guint i = 0; i < working->inputs->len; i++)
    {
      const SwInput *input = &g_array_index (working->inputs, SwInput, i);

      g_ptr_array_add (cells, sw_report_input_words (input, texts));
      g_ptr_array_add (cells, sw_report_limit (input, style));
      g_ptr_array_add (cells, sw_report_input_origin (input, texts));
      for (guint column = 0; column < 2; column++)
        widest[column] =
            MAX (widest[column], g_utf8_strlen (cells->pdata[3 * i + column], -1));
    }
  for (guint i = 0; i < cells->len; i += 3)
    {
      g_string_append (report, "    ");
      sw_report_pad (report, cells->pdata[i], widest[0] + 2);
      sw_report_pad (report, cells->pdata[i + 1], widest[1] + 2);
      g_string_append (report, cells->pdata[i + 2]);
      g_string_append_c (report, '\n');
    }
}

char *
sw_report_working (const SwResult *result, const char *name, const SwTexts *texts,
                   SwNumberStyle style)
{
  const SwWorking *working =
      result->tally != NULL ? sw_tally_working (result->tally, name) : NULL;
  GString *report;

  if (working == NULL)
    return NULL;
  g_autofree char *title = sw_report_working_title (working, texts);
  g_autofree char *value = sw_report_working_value (working, style);
  g_autofree char *formula = formula_text_id (working, "formula");
  g_autofree char *check = sw_report_working_check (working, texts, style);
  g_autofree char *rounding = g_strdup_printf ("report.rounding.%d", working->rounding);
  g_autofree char *head = sw_texts_fill (texts, "report.working.head", "title", title,
                                         "name", working->name, "value", value, NULL);

  report = g_string_new (NULL);
  g_string_append_printf (report, "%s\n  = %s\n", head, sw_texts_get (texts, formula));
  append_inputs (report, working, texts, style);
  if (working->rounding != SW_ROUNDING_NONE)
    g_string_append_printf (report, "  %s\n", sw_texts_get (texts, rounding));
  g_string_append_printf (report, "  %s %s\n", sw_texts_get (texts, "report.check"),
                          check);
  return g_string_free (report, FALSE);
}
