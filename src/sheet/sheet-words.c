/* SPDX-License-Identifier: MIT */
#include "sheet.h"

#include <slopewright/sheet/practices.h>
#include <stdarg.h>

#define NO_BREAK_SPACE "\xc2\xa0"

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

/* The three forms of a gradient are read as one: no line ends between them. */
static char *
unbroken (char *taken)
{
  g_auto (GStrv) parts = g_strsplit (taken, " · ", -1);

  g_free (taken);
  return g_strjoinv (NO_BREAK_SPACE "·" NO_BREAK_SPACE, parts);
}

const char *
sw_sheet_quantity (const SwSheet *sheet, double value, SwUnit unit)
{
  return sw_sheet_keep (sheet,
                        unbroken (sw_report_quantity (value, unit, sheet->draw->style)));
}

const char *
sw_sheet_finding (const SwSheet *sheet, const SwFinding *finding, const char *places)
{
  return sw_sheet_keep (sheet, unbroken (sw_report_finding_text_at (
                                   finding, places, sheet->texts, sheet->draw->style)));
}

const char *
sw_sheet_limit (const SwSheet *sheet, double length_m, SwLimit limit)
{
  return sw_sheet_keep (sheet, sw_quantity_limit_text (length_m, SW_UNIT_SMALL_M, limit,
                                                       sheet->draw->style));
}

const char *
sw_sheet_working_value (const SwSheet *sheet, const SwWorking *working)
{
  return sw_sheet_keep (sheet,
                        unbroken (sw_report_working_value (working, sheet->draw->style)));
}

const char *
sw_sheet_whole_length (const SwSheet *sheet, double length_m)
{
  SwNumberStyle style = sheet->draw->style;
  double whole = style.units == SW_UNITS_US ? length_m / SW_M_PER_FT : length_m;

  return sw_sheet_format (sheet, "%s" NO_BREAK_SPACE "%s", sw_sheet_count (sheet, whole),
                          sw_quantity_unit (SW_UNIT_M, style));
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
sw_sheet_practice_name (const SwSheet *sheet)
{
  return sw_sheet_keep (sheet, sw_report_practice_name (sheet->practice, sheet->texts));
}

const char *
sw_sheet_practice (const SwSheet *sheet, SwPracticeValue value)
{
  double number = sw_practice_get (sheet->practice, value);

  if (sw_practice_keys[value].or_zero && number <= 0.0)
    return sw_sheet_get (sheet, "pack.none");
  if (sw_practice_limit (value) == SW_LIMIT_NONE)
    return sw_sheet_quantity (sheet, number, sw_practice_keys[value].unit);
  return sw_sheet_keep (
      sheet, sw_quantity_limit_text (number, sw_practice_keys[value].unit,
                                     sw_practice_limit (value), sheet->draw->style));
}

const char *
sw_sheet_toe_id (const SwSheet *sheet, const char *id)
{
  static const char *const kinds[] = {
    [SW_TOE_TRENCH] = "trench", [SW_TOE_FOLD] = "fold", [SW_TOE_ROW] = "row"
  };

  return sw_sheet_format (sheet, "%s-%s", id, kinds[sheet->practice->toe_kind]);
}

const char *
sw_sheet_inspect_id (const SwSheet *sheet, const char *id)
{
  return sw_practice_get (sheet->practice, SW_PRACTICE_INSPECT_RAIN_M) > 0.0
             ? id
             : sw_sheet_format (sheet, "%s-any-rain", id);
}

const char *
sw_sheet_plan_label (const SwSheet *sheet, SwPackText text)
{
  return sw_sheet_get (
      sheet, sw_sheet_format (sheet, "permit.label.%s", sw_pack_text_keys[text]));
}

const char *
sw_sheet_blanket (const SwSheet *sheet)
{
  return sw_sheet_keep (sheet, sw_report_blanket (sheet->layout, sheet->texts));
}

const char *
sw_sheet_soil_known (const SwSheet *sheet, guint face)
{
  return sw_sheet_keep (sheet,
                        sw_report_soil_known (&sheet->layout->faces[face].face->soil_test,
                                              sheet->texts, sheet->draw->style));
}

const char *
sw_sheet_practice_source (const SwSheet *sheet, SwPracticeValue value)
{
  const SwSourced *sourced = &sheet->practice->values[value];
  const char *source = sw_practice_source (sheet->practice, value);

  return sw_sheet_keep (sheet,
                        sw_report_source_words (source, sourced->evidence, sheet->texts));
}

const char *
sw_sheet_face (const SwSheet *sheet, guint face)
{
  return sw_sheet_keep (
      sheet, sw_report_face_words (sheet->layout->faces[face].face, sheet->texts));
}

gboolean
sw_sheet_is_plain (const SwSheet *sheet)
{
  return sheet->layout->n_faces == 1 && sheet->layout->faces[0].n_tiers == 1;
}

const char *
sw_sheet_place (const SwSheet *sheet, guint face, guint tier)
{
  gboolean one_face = sheet->layout->n_faces == 1;
  gboolean one_tier = sheet->layout->faces[face].n_tiers == 1;
  const char *id = one_tier ? "report.face" : one_face ? "pack.tier" : "pack.face-tier";

  return sw_sheet_fill (sheet, id, "id", sheet->layout->faces[face].face->id, "tier",
                        sw_sheet_format (sheet, "%u", tier + 1), NULL);
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
