/* SPDX-License-Identifier: MIT */
#include "sheet.h"
#include <math.h>
#include <slopewright/base/count.h>

#define COLUMN_GAP_MM 7.0
#define DETAIL_MM 54.0
#define LONE_DETAIL_MM 110.0
#define ROW_GAP_MM 5.0
#define VALUES_GAP_MM 2.0

/* The practice's dimensions that a detail shows; ends with SW_PRACTICE_VALUE_COUNT. */
#define MOST_VALUES 6
static const SwPracticeValue shown[SW_DETAIL_COUNT][MOST_VALUES + 1] = {
  [SW_DETAIL_KEY_TRENCH] = { SW_PRACTICE_SET_BACK_M, SW_PRACTICE_TRENCH_DEPTH_M,
                             SW_PRACTICE_TRENCH_WIDTH_M, SW_PRACTICE_TRENCH_FOLD_M,
                             SW_PRACTICE_TRENCH_PIN_M, SW_PRACTICE_VALUE_COUNT },
  [SW_DETAIL_SIDE_LAP] = { SW_PRACTICE_SIDE_LAP_M, SW_PRACTICE_SIDE_LAP_PIN_M,
                           SW_PRACTICE_VALUE_COUNT },
  [SW_DETAIL_END_LAP] = { SW_PRACTICE_END_LAP_M, SW_PRACTICE_END_LAP_STEEP_M,
                          SW_PRACTICE_END_LAP_PIN_M, SW_PRACTICE_END_LAP_ROW_GAP_M,
                          SW_PRACTICE_JOINT_STAGGER_M, SW_PRACTICE_VALUE_COUNT },
  [SW_DETAIL_SLOT] = { SW_PRACTICE_SLOT_EVERY_M, SW_PRACTICE_SLOT_DEPTH_M,
                       SW_PRACTICE_SLOT_WIDTH_M, SW_PRACTICE_SLOT_PIN_M,
                       SW_PRACTICE_VALUE_COUNT },
  [SW_DETAIL_TOE] = { SW_PRACTICE_TOE_DEPTH_M, SW_PRACTICE_TOE_WIDTH_M,
                      SW_PRACTICE_TOE_FOLD_M, SW_PRACTICE_TOE_PIN_M,
                      SW_PRACTICE_VALUE_COUNT },
  [SW_DETAIL_PIN] = { SW_PRACTICE_PIN_LENGTH_M, SW_PRACTICE_VALUE_COUNT },
  [SW_DETAIL_PIN_PATTERN] = { SW_PRACTICE_PIN_DOWN_M, SW_PRACTICE_PIN_ACROSS_M,
                              SW_PRACTICE_EDGE_PIN_M, SW_PRACTICE_VALUE_COUNT },
  [SW_DETAIL_COLLAR] = { SW_PRACTICE_COLLAR_M, SW_PRACTICE_RING_PIN_M,
                         SW_PRACTICE_DEDUCT_M2, SW_PRACTICE_VALUE_COUNT },
};

/* A value of the toe that this practice's kind of toe does not use. */
static gboolean
is_idle (const SwSheet *sheet, SwPracticeValue value)
{
  SwToeKind kind = sheet->practice->toe_kind;

  if (value == SW_PRACTICE_TOE_DEPTH_M || value == SW_PRACTICE_TOE_WIDTH_M)
    return kind != SW_TOE_TRENCH;
  if (value == SW_PRACTICE_TOE_FOLD_M)
    return kind != SW_TOE_FOLD;
  return value == SW_PRACTICE_TRENCH_FOLD_M
         && sw_practice_get (sheet->practice, value) <= 0.0;
}

static const char *
see_working (const SwSheet *sheet, const char *name)
{
  return sw_sheet_fill (sheet, "report.origin.computed", "name", name, NULL);
}

static void
as_laid_row (const SwSheet *sheet, SwTable *table, const char *code, double value,
             SwLimit limit, const char *source)
{
  sw_table_row (table,
                sw_sheet_get (sheet, sw_sheet_format (sheet, "pack.as-laid.%s", code)),
                sw_sheet_format (sheet, "*%s*", sw_sheet_limit (sheet, value, limit)),
                source, NULL);
}

/* How far apart the field columns stand between two laps; 0 where there are not two,
 * and in a fan, where they draw together. */
static double
columns_apart_m (const SwFaceLayout *layout)
{
  const SwTier *tier = &layout->tiers[0];
  const SwRun *runs = layout->runs + tier->first_run;
  double laps_m[2];

  if (tier->n_runs < 3 || layout->face->crest_form != SW_CREST_STRAIGHT)
    return 0.0;
  for (guint i = 0; i < 2; i++)
    {
      double from_m = fmax (runs[i].along_from_m, runs[i + 1].along_from_m);
      double to_m = fmin (runs[i].along_to_m, runs[i + 1].along_to_m);

      if (from_m >= to_m || runs[i].part + runs[i + 1].part > 0)
        return 0.0;
      laps_m[i] = (from_m + to_m) / 2.0;
    }
  return fabs (laps_m[1] - laps_m[0])
         / (double) sw_count_up (fabs (laps_m[1] - laps_m[0]), tier->pin_across_m);
}

/* What is drawn where it is not the practice's own value. */
static void
add_as_laid (const SwSheet *sheet, SwTable *table, guint face, SwDetail detail)
{
  const SwFaceLayout *layout = &sheet->layout->faces[face];
  const char *id = layout->face->id;

  if (detail == SW_DETAIL_SIDE_LAP)
    as_laid_row (sheet, table, "side-lap", layout->tiers[0].side_lap_m, SW_LIMIT_LEAST,
                 see_working (sheet, sw_sheet_format (sheet, "%s.1.side-lap", id)));
  if (detail == SW_DETAIL_PIN_PATTERN && columns_apart_m (layout) > 0.0)
    as_laid_row (sheet, table, "across", columns_apart_m (layout), SW_LIMIT_MOST,
                 see_working (sheet, sw_sheet_format (sheet, "%s.pins.field", id)));
  if (detail == SW_DETAIL_PIN)
    as_laid_row (sheet, table, "pin-need", layout->pin_need_m, SW_LIMIT_LEAST,
                 see_working (sheet, sw_sheet_format (sheet, "%s.pin-length", id)));
  if (detail == SW_DETAIL_PIN && layout->pin != NULL)
    as_laid_row (sheet, table, "pin", layout->pin->length_m, SW_LIMIT_LEAST,
                 sw_sheet_plain (sheet, sw_sheet_keep (sheet, sw_report_source_words (
                                                                  layout->pin->source_id,
                                                                  layout->pin->evidence,
                                                                  sheet->texts))));
}

static void
add_values (const SwSheet *sheet, SwFlow *flow, guint face, SwDetail detail)
{
  const SwColumn columns[] = {
    { sw_sheet_get (sheet, "pack.column.dimension"), SW_CELL_TEXT, 0.0 },
    { "", SW_CELL_NUMBER, 0.0 },
    { sw_sheet_get (sheet, "pack.column.source"), SW_CELL_TEXT, 0.0 },
  };
  SwTable *table =
      sw_table_new (&sheet->pen, SW_STYLE_SMALL, columns, G_N_ELEMENTS (columns));

  add_as_laid (sheet, table, face, detail);
  for (const SwPracticeValue *value = shown[detail]; *value < SW_PRACTICE_VALUE_COUNT;
       value++)
    if (!is_idle (sheet, *value))
      sw_table_row (table,
                    sw_sheet_get (sheet, sw_sheet_format (sheet, "practice.%s",
                                                          sw_practice_keys[*value].key)),
                    sw_sheet_format (sheet, "*%s*", sw_sheet_practice (sheet, *value)),
                    sw_sheet_plain (sheet, sw_sheet_practice_source (sheet, *value)),
                    NULL);
  sw_flow_table (flow, table);
}

/* A detail and its dimensions, to stand above or beside each other. */
typedef struct
{
  SwFlow *drawing, *values;
} DetailCard;

/* FALSE where the job has no such thing. */
static gboolean
detail_card (const SwSheet *sheet, guint face, SwDetail detail, double width_mm,
             double height_mm, DetailCard *card)
{
  SwFigure *drawing = sw_draw_detail (sheet->result, face, detail, width_mm,
                                      height_mm * sheet->pen.scale, sheet->draw);

  if (drawing == NULL)
    return FALSE;
  card->drawing = sw_flow_new (&sheet->pen, width_mm);
  sw_flow_drawing (card->drawing, drawing);
  card->values = sw_flow_new (&sheet->pen, width_mm);
  add_values (sheet, card->values, face, detail);
  return TRUE;
}

/* Two cards side by side, dimensions below; one alone has them beside it. */
static void
add_cards (SwFlow *flow, const DetailCard *cards, guint count)
{
  const SwPen *pen = sw_flow_pen (flow);
  SwFlow *columns[2];

  if (count == 0)
    return;
  sw_flow_space (flow, ROW_GAP_MM);
  if (count == 1)
    {
      sw_flow_row (flow, COLUMN_GAP_MM, (SwFlow *[]){ cards[0].drawing, cards[0].values },
                   2);
      return;
    }
  for (guint i = 0; i < 2; i++)
    {
      columns[i] = sw_flow_new (pen, sw_flow_width_mm (cards[i].drawing));
      sw_flow_add (columns[i], sw_flow_to_figure (cards[i].drawing));
      sw_flow_space (columns[i], VALUES_GAP_MM);
      sw_flow_add (columns[i], sw_flow_to_figure (cards[i].values));
      sw_flow_free (cards[i].drawing);
      sw_flow_free (cards[i].values);
    }
  sw_flow_row (flow, COLUMN_GAP_MM, columns, 2);
}

/* Details are the same for faces with the same pin and end lap: draw the first, and
 * of the others what differs. */
static gboolean
differs (const SwSheet *sheet, guint face, SwDetail detail)
{
  const SwFaceLayout *first = &sheet->layout->faces[0];
  const SwFaceLayout *this = &sheet->layout->faces[face];

  if (face == 0)
    return TRUE;
  if (detail == SW_DETAIL_COLLAR)
    return first->n_obstacles == 0;
  return detail == SW_DETAIL_PIN && this->pin != first->pin;
}

void
sw_page_details (SwSheet *sheet)
{
  SwFlow *flow = sw_sheet_flow (sheet);
  double width_mm = (sw_flow_width_mm (flow) - COLUMN_GAP_MM) / 2.0;
  DetailCard cards[2];
  guint count = 0, last_face = 0;
  SwDetail last = SW_DETAIL_COUNT;

  sw_flow_text (flow, SW_STYLE_BODY, SW_ROLE_TEXT,
                sw_sheet_fill (sheet, "pack.details.practice", "name",
                               sw_sheet_get (sheet, sheet->practice->name_id), "edition",
                               sw_sheet_get (sheet, sheet->practice->edition_id),
                               "agency", sw_sheet_get (sheet, sheet->practice->agency_id),
                               NULL));
  for (guint face = 0; face < sheet->layout->n_faces; face++)
    for (int detail = 0; detail < SW_DETAIL_COUNT; detail++)
      if (differs (sheet, face, (SwDetail) detail)
          && detail_card (sheet, face, (SwDetail) detail, width_mm, DETAIL_MM,
                          &cards[count]))
        {
          last_face = face;
          last = (SwDetail) detail;
          if (++count < 2)
            continue;
          add_cards (flow, cards, count);
          count = 0;
        }
  if (count == 1) /* it has the width of two: draw it larger */
    {
      sw_flow_free (cards[0].drawing);
      sw_flow_free (cards[0].values);
      detail_card (sheet, last_face, last, width_mm, LONE_DETAIL_MM, &cards[0]);
    }
  add_cards (flow, cards, count);
  sw_sheet_add (sheet, sw_sheet_get (sheet, "pack.details.title"), flow);
}
