/* SPDX-License-Identifier: MIT */
#include "sheet.h"

#define COLUMN_GAP_MM 7.0
#define DETAIL_MM 62.0
#define ROW_GAP_MM 6.0

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
};

static const char *const title_ids[SW_DETAIL_COUNT] = {
  [SW_DETAIL_KEY_TRENCH] = "pack.detail.key-trench",
  [SW_DETAIL_SIDE_LAP] = "pack.detail.side-lap",
  [SW_DETAIL_END_LAP] = "pack.detail.end-lap",
  [SW_DETAIL_SLOT] = "pack.detail.slot",
  [SW_DETAIL_TOE] = "pack.detail.toe",
  [SW_DETAIL_PIN] = "pack.detail.pin",
  [SW_DETAIL_PIN_PATTERN] = "pack.detail.pin-pattern",
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
         && sheet->practice->values[value].value <= 0.0;
}

static void
add_values (const SwSheet *sheet, SwFlow *flow, SwDetail detail)
{
  const SwColumn columns[] = {
    { sw_sheet_get (sheet, "pack.column.dimension"), SW_CELL_TEXT, 0.0 },
    { "", SW_CELL_NUMBER, 0.0 },
    { sw_sheet_get (sheet, "pack.column.source"), SW_CELL_TEXT, 0.0 },
  };
  SwTable *table =
      sw_table_new (&sheet->pen, SW_STYLE_SMALL, columns, G_N_ELEMENTS (columns));

  for (const SwPracticeValue *value = shown[detail]; *value < SW_PRACTICE_VALUE_COUNT;
       value++)
    if (!is_idle (sheet, *value))
      sw_table_row (table,
                    sw_sheet_get (sheet, sw_sheet_format (sheet, "practice.%s",
                                                          sw_practice_keys[*value].key)),
                    sw_sheet_format (sheet, "*%s*", sw_sheet_practice (sheet, *value)),
                    sw_sheet_plain (sheet, sw_sheet_practice_source (sheet, *value)),
                    NULL);
  sw_flow_space (flow, 2.0);
  sw_flow_table (flow, table);
}

/* A detail with its dimensions; NULL where the job has no such thing. */
static SwFlow *
detail_card (const SwSheet *sheet, guint face, SwDetail detail, double width_mm)
{
  SwFigure *drawing = sw_draw_detail (sheet->result, face, detail, width_mm,
                                      DETAIL_MM * sheet->pen.scale, sheet->draw);
  SwFlow *card;

  if (drawing == NULL)
    return NULL;
  card = sw_flow_new (&sheet->pen, width_mm);
  sw_flow_heading (card, sw_sheet_get (sheet, title_ids[detail]));
  sw_flow_drawing (card, drawing);
  add_values (sheet, card, detail);
  return card;
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
  return detail == SW_DETAIL_PIN && this->pin != first->pin;
}

void
sw_page_details (SwSheet *sheet)
{
  SwFlow *flow = sw_sheet_flow (sheet);
  double width_mm = (sw_flow_width_mm (flow) - COLUMN_GAP_MM) / 2.0;
  SwFlow *row[2];
  guint count = 0;

  sw_flow_text (flow, SW_STYLE_BODY, SW_ROLE_TEXT,
                sw_sheet_fill (sheet, "pack.details.practice", "name",
                               sheet->practice->name, "edition", sheet->practice->edition,
                               "agency", sheet->practice->agency, NULL));
  for (guint face = 0; face < sheet->layout->n_faces; face++)
    for (int detail = 0; detail < SW_DETAIL_COUNT; detail++)
      {
        SwFlow *card = differs (sheet, face, (SwDetail) detail)
                           ? detail_card (sheet, face, (SwDetail) detail, width_mm)
                           : NULL;

        if (card == NULL)
          continue;
        row[count++] = card;
        if (count < 2)
          continue;
        sw_flow_space (flow, ROW_GAP_MM);
        sw_flow_row (flow, COLUMN_GAP_MM, row, count);
        count = 0;
      }
  sw_flow_space (flow, ROW_GAP_MM);
  if (count > 0)
    sw_flow_row (flow, COLUMN_GAP_MM, row, count);
  sw_sheet_add (sheet, sw_sheet_get (sheet, "pack.details.title"), flow);
}
