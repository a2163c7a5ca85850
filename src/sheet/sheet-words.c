/* SPDX-License-Identifier: MIT */
#include "sheet.h"
#include <stdarg.h>

const char *
sw_sheet_keep (const SwSheet *sheet, char *taken)
{
  const char *kept = g_string_chunk_insert (sheet->strings, taken);

  g_free (taken);
  return kept;
}

const char *
sw_sheet_get (const SwSheet *sheet, const char *id)
{
  return sw_texts_get (sheet->texts, id);
}

const char *
sw_sheet_fill (const SwSheet *sheet, const char *id, ...)
{
  g_autoptr (GHashTable) places =
      g_hash_table_new_full (g_str_hash, g_str_equal, NULL, g_free);
  va_list pairs;

  va_start (pairs, id);
  for (const char *name = va_arg (pairs, const char *); name != NULL;
       name = va_arg (pairs, const char *))
    g_hash_table_replace (places, (gpointer) name,
                          sw_markup_escape (va_arg (pairs, const char *)));
  va_end (pairs);
  return sw_sheet_keep (sheet, sw_texts_fill_table (sheet->texts, id, places));
}

const char *
sw_sheet_format (const SwSheet *sheet, const char *format, ...)
{
  va_list args;
  char *text;

  va_start (args, format);
  text = g_strdup_vprintf (format, args);
  va_end (args);
  return sw_sheet_keep (sheet, text);
}

const char *
sw_sheet_plain (const SwSheet *sheet, const char *text)
{
  return sw_sheet_keep (sheet, sw_markup_escape (text));
}

const char *
sw_sheet_quantity (const SwSheet *sheet, double value, SwUnit unit)
{
  return sw_sheet_keep (sheet, sw_report_quantity (value, unit, sheet->draw->style));
}

const char *
sw_sheet_number (const SwSheet *sheet, double value, SwUnit unit)
{
  return sw_sheet_keep (sheet, sw_quantity_number (value, unit, sheet->draw->style));
}

const char *
sw_sheet_count (const SwSheet *sheet, double value)
{
  return sw_sheet_number (sheet, value, SW_UNIT_COUNT);
}

const char *
sw_sheet_practice (const SwSheet *sheet, SwPracticeValue value)
{
  return sw_sheet_quantity (sheet, sheet->practice->values[value].value,
                            sw_practice_keys[value].unit);
}

const char *
sw_sheet_practice_source (const SwSheet *sheet, SwPracticeValue value)
{
  const SwSourced *sourced = &sheet->practice->values[value];
  const char *source =
      sourced->source != NULL ? sourced->source : sheet->practice->source;

  return sw_sheet_keep (sheet,
                        sw_report_source_words (source, sourced->evidence, sheet->texts));
}

const char *
sw_sheet_place (const SwSheet *sheet, guint face, int tier)
{
  return sw_sheet_keep (
      sheet, sw_report_place_words (sheet->result, (int) face, tier, sheet->texts));
}

const char *
sw_sheet_cut_range (const SwSheet *sheet, guint face, guint tier)
{
  const SwFaceLayout *layout = &sheet->layout->faces[face];
  const SwTier *of = &layout->tiers[tier];
  double least_m = G_MAXDOUBLE, most_m = 0.0;

  if (of->n_runs == 0)
    return "";
  for (guint i = of->first_run; i < of->first_run + of->n_runs; i++)
    {
      least_m = MIN (least_m, layout->runs[i].cut_m);
      most_m = MAX (most_m, layout->runs[i].cut_m);
    }
  const char *most = sw_sheet_quantity (sheet, most_m, SW_UNIT_M);
  const char *least = sw_sheet_quantity (sheet, least_m, SW_UNIT_M);

  if (g_str_equal (least, most))
    return most;
  return sw_sheet_fill (sheet, "pack.from-to", "from", least, "to", most, NULL);
}
