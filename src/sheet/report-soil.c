/* SPDX-License-Identifier: MIT */
#include "report-words.h"
#include <math.h>
#include <slopewright/judge/face-soil.h>
#include <slopewright/sheet/report.h>

static char *
quantity (double value, SwUnit unit, const SwTexts *texts, SwNumberStyle style)
{
  return isfinite (value) ? sw_report_quantity (value, unit, style)
                          : g_strdup (sw_texts_get (texts, "soil-report.none"));
}

char *
sw_report_soil_known (const SwSoilTest *test, const SwTexts *texts, SwNumberStyle style)
{
  static const char *const feels[] = { "feel.gritty", "feel.smooth", "feel.neither" };
  g_autofree char *ribbon = sw_report_quantity (test->ribbon_m, SW_UNIT_SMALL_M, style);
  g_autofree char *sand = sw_report_quantity (test->sand, SW_UNIT_PERCENT, style);
  g_autofree char *silt = sw_report_quantity (test->silt, SW_UNIT_PERCENT, style);
  g_autofree char *clay = sw_report_quantity (test->clay, SW_UNIT_PERCENT, style);

  if (test->known == SW_SOIL_BY_EYE)
    return g_strdup (sw_texts_get (texts, "soil-report.eye"));
  if (test->known == SW_SOIL_BY_LABORATORY)
    return sw_texts_fill (texts, "soil-report.laboratory", "sand", sand, "silt", silt,
                          "clay", clay, NULL);
  if (!test->holds)
    return g_strdup (sw_texts_get (texts, "soil-report.loose"));
  if (!(test->ribbon_m > 0.0))
    return g_strdup (sw_texts_get (texts, "soil-report.ball"));
  return sw_texts_fill (texts, "soil-report.ribbon", "ribbon", ribbon, "feel",
                        sw_texts_get (texts, feels[test->feel]), NULL);
}

char *
sw_report_soil_reading (const SwSoilReading *reading, gboolean itself,
                        const SwTexts *texts, SwNumberStyle style)
{
  g_autofree char *pin =
      sw_quantity_limit_text (reading->pin_m, SW_UNIT_SMALL_M, SW_LIMIT_LEAST, style);
  g_autofree char *k =
      quantity (reading->erodibility.value, SW_UNIT_ERODIBILITY, texts, style);
  g_autofree char *friction =
      quantity (reading->friction_rad.value, SW_UNIT_ANGLE, texts, style);

  return sw_texts_fill (texts, itself ? "soil-report.itself" : "soil-report.other",
                        "soil", sw_texts_get (texts, reading->soil->name_id), "pin", pin,
                        "k", k, "friction", friction, NULL);
}

static void
append_reading (GString *report, const SwSoilReading *reading, gboolean itself,
                const SwTexts *texts, SwNumberStyle style)
{
  g_autofree char *words = sw_report_soil_reading (reading, itself, texts, style);

  g_string_append_printf (report, "  %s\n", words);
}

static void
append_face (GString *report, const SwLayout *layout, guint index, const SwTexts *texts,
             SwNumberStyle style)
{
  const SwFace *face = layout->faces[index].face;
  g_autofree char *known = sw_report_soil_known (&face->soil_test, texts, style);
  g_autofree char *head = NULL;
  SwFaceSoil soil;

  if (!sw_face_soil (layout, index, &soil))
    return;
  head =
      sw_texts_fill (texts, "soil-report.face", "face", face->id, "known", known, NULL);
  g_string_append_printf (report, "%s\n", head);
  append_reading (report, &soil.itself, TRUE, texts, style);
  for (guint i = 0; i < soil.n_others; i++)
    append_reading (report, &soil.others[i], FALSE, texts, style);
}

char *
sw_report_soil (const SwResult *result, const SwTexts *texts, SwNumberStyle style)
{
  GString *report = g_string_new (NULL);

  if (result->layout == NULL)
    return g_string_free (report, FALSE);
  g_string_append_printf (report, "%s\n", sw_texts_get (texts, "soil-report.title"));
  for (guint i = 0; i < result->layout->n_faces; i++)
    append_face (report, result->layout, i, texts, style);
  return g_string_free (report, FALSE);
}
