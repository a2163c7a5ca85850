/* SPDX-License-Identifier: MIT */
#include "report-tally.h"
#include <slopewright/layout/along.h>

#define TITLE_WIDTH 44
#define VALUE_WIDTH 26

char *
sw_report_tally (const SwResult *result, const SwTexts *texts, SwNumberStyle style,
                 SwTallyFormat format)
{
  g_return_val_if_fail (result->status == SW_OK, NULL);
  if (format == SW_TALLY_CSV)
    return sw_report_tally_csv (result, texts);
  if (format == SW_TALLY_JSON)
    return sw_report_tally_json (result, texts);
  return sw_report_tally_text (result, texts, style);
}

char *
sw_report_run_words (const SwLayout *layout, const SwPiece *piece)
{
  const SwFaceLayout *face = &layout->faces[piece->face];
  g_autofree char *label = sw_run_label (&face->runs[piece->run]);

  return g_strdup_printf ("%s-%s", face->face->id, label);
}

const char *
sw_report_si_unit (SwUnit unit)
{
  switch (unit)
    {
    case SW_UNIT_M:
    case SW_UNIT_SMALL_M:
      return "m";
    case SW_UNIT_M2:
      return "m2";
    case SW_UNIT_M3:
      return "m3";
    case SW_UNIT_KG:
      return "kg";
    case SW_UNIT_RAD:
    case SW_UNIT_ANGLE:
      return "rad";
    case SW_UNIT_PER_M2:
      return "1/m2";
    case SW_UNIT_KG_PER_M2:
      return "kg/m2";
    case SW_UNIT_PA:
      return "Pa";
    case SW_UNIT_MONTH:
      return "month";
    case SW_UNIT_DAY:
      return "d";
    case SW_UNIT_HOUR:
      return "h";
    case SW_UNIT_LOSS:
      return "t/(ha yr)";
    case SW_UNIT_LOSS_IN_TIME:
      return "t/ha";
    case SW_UNIT_EROSIVITY:
      return "MJ mm/(ha h yr)";
    case SW_UNIT_ERODIBILITY:
      return "t h/(MJ mm)";
    case SW_UNIT_RAIN:
    case SW_UNIT_M_PER_S:
    case SW_UNIT_WIND:
      return "m/s";
    case SW_UNIT_N_PER_M3:
      return "N/m3";
    case SW_UNIT_KELVIN:
      return "K";
    case SW_UNIT_SEEDS_PER_M2:
      return "1/m2";
    case SW_UNIT_SEEDS_PER_KG:
      return "1/kg";
    case SW_UNIT_H_PER_M:
      return "h/m";
    case SW_UNIT_H_PER_M2:
      return "h/m2";
    default:
      return "1";
    }
}

/* A heading with its underline. */
static void
head (GString *report, const char *text)
{
  g_string_append_printf (report, "%s%s\n", report->len > 0 ? "\n" : "", text);
  for (glong i = g_utf8_strlen (text, -1); i > 0; i--)
    g_string_append_c (report, '-');
  g_string_append_c (report, '\n');
}

static void
line (GString *report, const char *title, const char *value)
{
  sw_report_pad (report, title, TITLE_WIDTH);
  g_string_append_printf (report, "  %s\n", value);
}

static void
working_line (GString *report, const SwWorking *working, const SwTexts *texts,
              SwNumberStyle style)
{
  g_autofree char *title = sw_report_working_title (working, texts);
  g_autofree char *value = sw_report_working_value (working, style);

  sw_report_pad (report, title, TITLE_WIDTH);
  g_string_append (report, "  ");
  sw_report_pad (report, value, VALUE_WIDTH);
  g_string_append_printf (report, "  %s\n", working->name);
}

/* All workings whose name begins with @prefix, or those of no face when NULL. */
static void
append_workings (GString *report, const SwResult *result, const char *prefix,
                 const SwTexts *texts, SwNumberStyle style)
{
  for (guint i = 0; i < result->tally->workings->len; i++)
    {
      const SwWorking *working = g_ptr_array_index (result->tally->workings, i);

      if (g_str_has_prefix (working->name, prefix))
        working_line (report, working, texts, style);
    }
}

static gboolean
is_of_a_face (const SwResult *result, const SwWorking *working)
{
  for (guint f = 0; f < result->layout->n_faces; f++)
    {
      g_autofree char *prefix =
          g_strdup_printf ("%s.", result->layout->faces[f].face->id);

      /* "pins.150" is an order even where a face is called "pins". */
      if (g_str_has_prefix (working->name, prefix)
          && !g_str_equal (working->formula, "pins_order"))
        return TRUE;
    }
  return FALSE;
}

static void
append_job (GString *report, const SwResult *result, const SwTexts *texts,
            SwNumberStyle style)
{
  head (report, sw_texts_get (texts, "report.head.job"));
  for (guint i = 0; i < result->tally->workings->len; i++)
    {
      const SwWorking *working = g_ptr_array_index (result->tally->workings, i);

      if (!is_of_a_face (result, working))
        working_line (report, working, texts, style);
    }
}

static char *
roll_title (const SwLayout *layout, int roll, const SwTexts *texts, SwNumberStyle style)
{
  const SwCutRoll *cut = &layout->cut_rolls[roll - 1];
  g_autofree char *number = g_strdup_printf ("%d", roll);
  g_autofree char *width = sw_quantity_text (cut->width_m, SW_UNIT_M, style);
  g_autofree char *length = sw_quantity_text (cut->length_m, SW_UNIT_M, style);

  return sw_texts_fill (texts,
                        !sw_layout_mixes_rolls (layout) ? "report.roll"
                        : cut->on_hand                  ? "report.roll-on-hand"
                                                        : "report.roll-size",
                        "number", number, "width", width, "length", length, NULL);
}

static void
append_cut_list (GString *report, const SwResult *result, const SwTexts *texts,
                 SwNumberStyle style)
{
  const SwLayout *layout = result->layout;

  head (report, sw_texts_get (texts, "report.head.cut-list"));
  for (int roll = 1; roll <= layout->rolls; roll++)
    {
      g_autoptr (GString) pieces = g_string_new (NULL);
      g_autofree char *title = roll_title (layout, roll, texts, style);
      g_autofree char *rest =
          sw_quantity_text (layout->cut_rolls[roll - 1].offcut_m, SW_UNIT_M, style);

      for (guint i = 0; i < layout->n_pieces; i++)
        if (layout->pieces[i].roll == roll)
          {
            g_autofree char *run = sw_report_run_words (layout, &layout->pieces[i]);
            g_autofree char *length =
                sw_quantity_text (layout->pieces[i].length_m, SW_UNIT_M, style);

            g_string_append_printf (pieces, "%s %s + ", run, length);
          }
      g_autofree char *offcut =
          sw_texts_fill (texts, "report.offcut", "length", rest, NULL);
      g_string_append (pieces, offcut);
      line (report, title, pieces->str);
    }
}

static void
count_line (GString *report, const SwTexts *texts, const char *id, int count)
{
  g_autofree char *number = g_strdup_printf ("%d", count);

  line (report, sw_texts_get (texts, id), number);
}

/* Short wide faces may take fewer rolls laid the other way; round crests cannot be. */
static void
append_along (GString *report, const SwResult *result, const SwTexts *texts,
              SwNumberStyle style)
{
  SwAlongPlan plan;
  g_autofree char *length = NULL;

  for (guint f = 0; f < result->layout->n_faces; f++)
    if (result->layout->faces[f].face->crest_form != SW_CREST_STRAIGHT)
      return;
  if (sw_along_new (result->layout, &plan) != SW_OK)
    return;
  length = sw_quantity_text (plan.length_m, SW_UNIT_M, style);
  head (report, sw_texts_get (texts, "report.head.along"));
  count_line (report, texts, "report.along.courses", plan.courses);
  line (report, sw_texts_get (texts, "report.along.length"), length);
  count_line (report, texts, "report.along.joints", plan.joints);
  count_line (report, texts, "report.along.rolls", plan.rolls);
}

char *
sw_report_tally_text (const SwResult *result, const SwTexts *texts, SwNumberStyle style)
{
  GString *report = g_string_new (NULL);

  append_job (report, result, texts, style);
  for (guint f = 0; f < result->layout->n_faces; f++)
    {
      const SwFace *face = result->layout->faces[f].face;
      g_autofree char *words = sw_report_face_words (face, texts);
      g_autofree char *prefix = g_strdup_printf ("%s.", face->id);

      head (report, words);
      append_workings (report, result, prefix, texts, style);
    }
  append_cut_list (report, result, texts, style);
  append_along (report, result, texts, style);
  return g_string_free (report, FALSE);
}
