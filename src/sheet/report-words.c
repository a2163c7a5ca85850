/* SPDX-License-Identifier: MIT */
#include "report-words.h"
#include <slopewright/base/gradient.h>
#include <string.h>

char *
sw_report_face_words (const SwFace *face, const SwTexts *texts)
{
  gboolean named =
      face->name != NULL && *face->name != '\0' && !g_str_equal (face->name, face->id);

  return sw_texts_fill (texts, named ? "report.face-named" : "report.face", "id",
                        face->id, "name", face->name, NULL);
}

char *
sw_report_place_words (const SwResult *result, int face, int tier, const SwTexts *texts)
{
  const SwFaceLayout *layout = &result->layout->faces[face];
  g_autofree char *words = sw_report_face_words (layout->face, texts);

  if (tier < 0 || layout->n_tiers < 2)
    return g_steal_pointer (&words);
  g_autofree char *number = g_strdup_printf ("%d", tier + 1);
  return sw_texts_fill (texts, "report.face-tier", "face", words, "tier", number, NULL);
}

char *
sw_report_quantity (double value, SwUnit unit, SwNumberStyle style)
{
  double angle_rad = value;

  if (unit == SW_UNIT_RAD)
    return sw_gradient_text (value, style);
  if (unit == SW_UNIT_HV && sw_gradient_from_hv (value, &angle_rad) == SW_OK)
    return sw_gradient_text (angle_rad, style);
  return sw_quantity_text (value, unit, style);
}

/* Up to so many decimals, at least two, so that 0.075 stays 0.075 and 12.5 is 12.50. */
static char *
calculator_digits (double value, int decimals, SwNumberStyle style)
{
  char *digits = sw_decimal_text (value, decimals, style);
  gsize length = strlen (digits);

  for (int spare = decimals - 2; spare > 0 && length > 0 && digits[length - 1] == '0';
       spare--)
    digits[--length] = '\0';
  return digits;
}

/* What a calculator works in; the SI value is divided by the factor. Where no sign stands,
 * the unit is that of the quantity. */
static const struct
{
  SwUnit unit;
  const char *metric, *us;
  double us_factor;
  int decimals;
} calculator[] = {
  { SW_UNIT_M, "m", "ft", SW_M_PER_FT, 4 },
  { SW_UNIT_SMALL_M, "m", "ft", SW_M_PER_FT, 4 },
  { SW_UNIT_M2, "m²", "ft²", SW_M2_PER_FT2, 4 },
  { SW_UNIT_M3, "m³", "ft³", SW_M_PER_FT *SW_M2_PER_FT2, 4 },
  { SW_UNIT_KG, "kg", "lb", SW_KG_PER_LB, 4 },
  { SW_UNIT_KG_PER_M2, "kg/m²", "lb/ft²", SW_KG_PER_LB / SW_M2_PER_FT2, 6 },
  { SW_UNIT_PERCENT, "", "", 1.0, 4 },
  { SW_UNIT_HOUR, "h", "h", 1.0, 4 },
  { SW_UNIT_DAY, NULL, NULL, 1.0, 4 },
};

char *
sw_report_calculator (double value, SwUnit unit, SwNumberStyle style)
{
  gboolean us = style.units == SW_UNITS_US;

  for (guint i = 0; i < G_N_ELEMENTS (calculator); i++)
    if (calculator[i].unit == unit)
      {
        const char *own = us ? calculator[i].us : calculator[i].metric;
        const char *symbol = own != NULL ? own : sw_quantity_unit (unit, style);
        g_autofree char *digits = calculator_digits (
            us ? value / calculator[i].us_factor : value, calculator[i].decimals, style);

        return g_strconcat (digits, *symbol != '\0' ? "\xc2\xa0" : "", symbol, NULL);
      }
  return sw_report_quantity (value, unit, style);
}

/* A value of the practice as everywhere, others by what their place is called. */
static SwLimit
limit_of (const SwInput *input)
{
  static const char *const spacings[] = { "spacing", "every", NULL };
  static const char *const sizes[] = { "depth", "trench", "set_back", "end_lap",
                                       "fold",  "need",   "least",    "overlap",
                                       "pin",   "length", "by_soil",  "collar",
                                       NULL };
  static const char *const laid[] = { "side_lap", "lap", NULL };
  SwPracticeValue value = input->origin == SW_ORIGIN_PRACTICE
                              ? sw_practice_value_from_key (input->name)
                              : SW_PRACTICE_VALUE_COUNT;

  if (value < SW_PRACTICE_VALUE_COUNT)
    return sw_practice_limit (value);
  return g_strv_contains (spacings, input->symbol) ? SW_LIMIT_MOST
         : g_strv_contains (sizes, input->symbol)  ? SW_LIMIT_LEAST
         : g_strv_contains (laid, input->symbol)   ? SW_LIMIT_LAID
                                                   : SW_LIMIT_NONE;
}

char *
sw_report_limit (const SwInput *input, SwNumberStyle style)
{
  if (input->unit == SW_UNIT_SMALL_M)
    return sw_quantity_limit_text (input->value, input->unit, limit_of (input), style);
  return sw_report_quantity (input->value, input->unit, style);
}

char *
sw_report_working_value (const SwWorking *working, SwNumberStyle style)
{
  static const char *const sizes[] = { "pin_length", "pin_length_zone", NULL };
  static const char *const laid[] = { "lap_round", "lap_kept", "lap_narrow", "lap_spread",
                                      NULL };

  if (g_strv_contains (sizes, working->formula))
    return sw_quantity_limit_text (working->value, working->unit, SW_LIMIT_LEAST, style);
  if (g_strv_contains (laid, working->formula))
    return sw_quantity_limit_text (working->value, working->unit, SW_LIMIT_LAID, style);
  return sw_report_quantity (working->value, working->unit, style);
}

char *
sw_report_input_words (const SwInput *input, const SwTexts *texts)
{
  g_autofree char *practice =
      g_strdup_printf ("practice.%s", input->name != NULL ? input->name : "");
  g_autofree char *id = g_strdup_printf ("report.input.%s", input->symbol);

  if (input->origin == SW_ORIGIN_PRACTICE && sw_texts_has (texts, practice))
    return g_strdup (sw_texts_get (texts, practice));
  return g_strdup (sw_texts_get (texts, id));
}

const char *
sw_report_source (const char *source, SwEvidence evidence, const SwTexts *texts)
{
  return source == NULL || evidence == SW_EVIDENCE_USER ? source
                                                        : sw_texts_get (texts, source);
}

char *
sw_report_source_words (const char *source, SwEvidence evidence, const SwTexts *texts)
{
  g_autofree char *id = g_strdup_printf ("evidence.%s", sw_evidence_code (evidence));
  const char *how = sw_texts_get (texts, id);

  if (source == NULL || *source == '\0')
    return g_strdup (how);
  const char *words = sw_report_source (source, evidence, texts);
  if (sw_evidence_is_source (evidence))
    return g_strdup (words);
  return sw_texts_fill (texts, "report.source", "source", words, "evidence", how, NULL);
}

void
sw_report_pad (GString *report, const char *text, glong width)
{
  g_string_append (report, text);
  for (glong i = g_utf8_strlen (text, -1); i < width; i++)
    g_string_append_c (report, ' ');
}
