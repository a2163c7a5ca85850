/* SPDX-License-Identifier: MIT */
#include "class-sheet.h"

#define MOST_POINTS 2
#define POINTS_MM 19.0
#define GIVEN_MM 17.0
#define LOOK_MM 62.0
#define SCALE_MM 13.0
#define ROW_MM 7.0
#define GAP_MM 1.0

/* What a trainer looks at on the practice slope, the class's own briefing, and what the
 * class thought of it. */

static const char *const looks[] = { "measure", "trench", "contact", "lap",
                                     "pins",    "toe",    "brief" };

guint
sw_class_practice_points (void)
{
  return MOST_POINTS * G_N_ELEMENTS (looks);
}

/* What it has to be by the practice of this slope. */
static const char *
target (const SwSheet *sheet, const char *look)
{
  const char *id = sw_sheet_format (sheet, "class.target.%s", look);

  if (g_str_equal (look, "toe"))
    id = sw_sheet_toe_id (sheet, id);
  return sw_sheet_fill (sheet, id, "set_back",
                        sw_sheet_practice (sheet, SW_PRACTICE_SET_BACK_M), "depth",
                        sw_sheet_practice (sheet, SW_PRACTICE_TRENCH_DEPTH_M), "across",
                        sw_sheet_practice (sheet, SW_PRACTICE_TRENCH_WIDTH_M), "spacing",
                        sw_sheet_practice (sheet, SW_PRACTICE_TRENCH_PIN_M), "lap",
                        sw_sheet_practice (sheet, SW_PRACTICE_SIDE_LAP_M), "lap_spacing",
                        sw_sheet_practice (sheet, SW_PRACTICE_SIDE_LAP_PIN_M), "down",
                        sw_sheet_practice (sheet, SW_PRACTICE_PIN_DOWN_M), "pin_across",
                        sw_sheet_practice (sheet, SW_PRACTICE_PIN_ACROSS_M), NULL);
}

static void
add_score (const SwSheet *sheet, SwFlow *flow)
{
  const SwColumn columns[] = {
    { sw_sheet_get (sheet, "class.column.look-at"), SW_CELL_TEXT, LOOK_MM },
    { sw_sheet_get (sheet, "class.column.target"), SW_CELL_TEXT, 0.0 },
    { sw_sheet_get (sheet, "class.column.points"), SW_CELL_TEXT, POINTS_MM },
    { sw_sheet_get (sheet, "class.column.given"), SW_CELL_TEXT, GIVEN_MM },
  };
  SwTable *table =
      sw_table_new (&sheet->pen, SW_STYLE_BODY, columns, G_N_ELEMENTS (columns));

  sw_table_set_ruled (table);
  sw_table_set_row_mm (table, ROW_MM);
  for (guint i = 0; i < G_N_ELEMENTS (looks); i++)
    sw_table_row (
        table, sw_sheet_get (sheet, sw_sheet_format (sheet, "class.score.%s", looks[i])),
        target (sheet, looks[i]), "0 · 1 · 2", "", NULL);
  sw_flow_text (flow, SW_STYLE_BODY, SW_ROLE_TEXT,
                sw_sheet_get (sheet, "class.practice.how"));
  sw_flow_tie (flow);
  sw_flow_space (flow, 1.5);
  sw_flow_table (flow, table);
}

/* The outline of a briefing, to be filled in before it is held. */
static void
add_briefing (const SwSheet *sheet, SwFlow *flow)
{
  g_auto (GStrv) lines = g_strsplit (sw_sheet_get (sheet, "class.brief"), "\n", -1);

  sw_flow_heading (flow, sw_sheet_get (sheet, "class.brief.title"));
  for (guint i = 0; lines[i] != NULL; i++)
    sw_flow_write_in (flow, sw_sheet_keep (sheet, g_strdup (lines[i])));
}

static void
add_feedback (const SwSheet *sheet, SwFlow *flow)
{
  g_auto (GStrv) lines = g_strsplit (sw_sheet_get (sheet, "class.feedback"), "\n", -1);
  const SwColumn columns[] = {
    { sw_sheet_get (sheet, "class.column.feedback"), SW_CELL_TEXT, 0.0 },
    { "1", SW_CELL_CHECK, SCALE_MM },
    { "2", SW_CELL_CHECK, SCALE_MM },
    { "3", SW_CELL_CHECK, SCALE_MM },
    { "4", SW_CELL_CHECK, SCALE_MM },
  };
  SwTable *table =
      sw_table_new (&sheet->pen, SW_STYLE_BODY, columns, G_N_ELEMENTS (columns));

  sw_flow_heading (flow, sw_sheet_get (sheet, "class.feedback.title"));
  for (guint i = 0; lines[i] != NULL; i++)
    sw_table_row (table, lines[i], "", "", "", "", NULL);
  sw_flow_table (flow, table);
  sw_flow_space (flow, GAP_MM);
  sw_flow_write_in (flow, sw_sheet_get (sheet, "class.feedback.clear"));
  sw_flow_write_in (flow, sw_sheet_get (sheet, "class.feedback.unclear"));
  sw_flow_write_in (flow, sw_sheet_get (sheet, "class.feedback.use"));
}

void
sw_page_class_practice (SwSheet *sheet)
{
  SwFlow *flow = sw_sheet_flow (sheet);

  add_score (sheet, flow);
  add_briefing (sheet, flow);
  add_feedback (sheet, flow);
  sw_sheet_add (sheet, sw_sheet_get (sheet, "class.practice.title"), flow);
}
