/* SPDX-License-Identifier: MIT */
#include "sheet.h"
#include <slopewright/base/count.h>

#define GAP_MM 4.0
/* Least height worth a drawing above the table of runs. */
#define DRAWING_LEAST_MM 110.0

/* One past the last run that is cut and joined like the one at @first. */
static guint
alike_end (const SwFaceLayout *face, guint first, guint end)
{
  const SwRun *run = &face->runs[first];
  guint next = first + 1;

  while (next < end && sw_ticks (face->runs[next].cut_m) == sw_ticks (run->cut_m)
         && face->runs[next].n_pieces == run->n_pieces)
    next++;
  return next;
}

/* "7" or "7 to 12". */
static const char *
runs_words (const SwSheet *sheet, const SwFaceLayout *face, guint first, guint end)
{
  const char *from = sw_sheet_keep (sheet, sw_run_label (&face->runs[first]));

  if (end == first + 1)
    return from;
  return sw_sheet_fill (sheet, "pack.from-to", "from", from, "to",
                        sw_sheet_keep (sheet, sw_run_label (&face->runs[end - 1])), NULL);
}

static void
add_run_rows (const SwSheet *sheet, SwTable *table, guint face_index, guint tier)
{
  const SwFaceLayout *face = &sheet->layout->faces[face_index];
  guint end = face->tiers[tier].first_run + face->tiers[tier].n_runs;

  if (face->n_tiers > 1)
    sw_table_band (
        table, sw_sheet_plain (sheet, sw_sheet_place (sheet, face_index, (int) tier)));
  for (guint first = face->tiers[tier].first_run; first < end;)
    {
      guint next = alike_end (face, first, end);
      const SwRun *run = &face->runs[first];

      sw_table_row (table, runs_words (sheet, face, first, next),
                    sw_sheet_count (sheet, next - first),
                    sw_sheet_quantity (sheet, run->terms.face, SW_UNIT_M),
                    sw_sheet_quantity (sheet, run->cut_m, SW_UNIT_M),
                    sw_sheet_count (sheet, run->n_pieces), NULL);
      first = next;
    }
}

static SwTable *
run_table (const SwSheet *sheet, guint face)
{
  const SwColumn columns[] = {
    { sw_sheet_get (sheet, "pack.column.runs-of"), SW_CELL_TEXT, 0.0 },
    { sw_sheet_get (sheet, "pack.column.number-of"), SW_CELL_NUMBER, 0.0 },
    { sw_sheet_get (sheet, "pack.column.on-face"), SW_CELL_NUMBER, 0.0 },
    { sw_sheet_get (sheet, "pack.column.cut-each"), SW_CELL_NUMBER, 0.0 },
    { sw_sheet_get (sheet, "pack.column.pieces-each"), SW_CELL_NUMBER, 0.0 },
  };
  SwTable *table =
      sw_table_new (&sheet->pen, SW_STYLE_BODY, columns, G_N_ELEMENTS (columns));

  for (guint tier = 0; tier < sheet->layout->faces[face].n_tiers; tier++)
    add_run_rows (sheet, table, face, tier);
  return table;
}

/* Where to begin and how the laps lie. */
static void
add_order (const SwSheet *sheet, SwFlow *flow, guint face_index)
{
  const SwFaceLayout *face = &sheet->layout->faces[face_index];
  gboolean left = face->face->leeward == SW_SIDE_LEFT;

  sw_flow_text (
      flow, SW_STYLE_CREW, SW_ROLE_TEXT,
      sw_sheet_get (sheet, left ? "pack.layout.from-left" : "pack.layout.from-right"));
  for (guint t = 0; t < face->n_tiers; t++)
    {
      const SwTier *tier = &face->tiers[t];

      sw_flow_space (flow, 1.0);
      sw_flow_text (
          flow, SW_STYLE_BODY, SW_ROLE_TEXT,
          sw_sheet_fill (
              sheet, "pack.layout.laps", "place",
              sw_sheet_place (sheet, face_index, (int) t), "runs",
              sw_sheet_count (sheet, tier->n_runs), "lap",
              sw_sheet_quantity (sheet, tier->side_lap_m, SW_UNIT_SMALL_M), "end_lap",
              sw_sheet_quantity (sheet, tier->end_lap_m, SW_UNIT_SMALL_M), NULL));
    }
}

static SwFlow *
words_below (const SwSheet *sheet, guint face)
{
  SwFlow *flow = sw_sheet_flow (sheet);

  add_order (sheet, flow, face);
  sw_flow_space (flow, GAP_MM);
  sw_flow_table (flow, run_table (sheet, face));
  return flow;
}

static SwFigure *
face_view (const SwSheet *sheet, guint face, double width_mm, double height_mm,
           double *scale)
{
  SwView view =
      sw_face_view_fit (sheet->result, face, width_mm, height_mm, sheet->draw, scale);

  return sw_draw_face_view (sheet->result, face, &view, sheet->draw);
}

static SwFigure *
plan (const SwSheet *sheet, guint face, double width_mm, double height_mm)
{
  SwView view = sw_plan_fit (sheet->result, face, width_mm, height_mm, sheet->draw, NULL);

  return sw_draw_plan (sheet->result, face, &view, sheet->draw);
}

/* The drawing as large as it can be: beside nothing on a page of its own side, or
 * above the words where that costs no scale. */
void
sw_page_layout (SwSheet *sheet, guint face)
{
  g_autoptr (SwFlow) words = words_below (sheet, face);
  SwFlow *flow = sw_sheet_flow (sheet);
  double body_mm = sw_sheet_body_height_mm (sheet), width_mm = sw_flow_width_mm (flow);
  double left_mm = body_mm - sw_flow_height_mm (words) - GAP_MM;
  double drawing_mm = MAX (left_mm, DRAWING_LEAST_MM * sheet->pen.scale);
  double turned_width_mm, turned_height_mm, upright = 0.0, turned = 0.0;
  const char *title = sw_sheet_fill (sheet, "pack.layout.title", "face",
                                     sheet->layout->faces[face].face->id, NULL);

  sw_sheet_turned_body_mm (sheet, &turned_width_mm, &turned_height_mm);
  sw_face_view_fit (sheet->result, face, width_mm, drawing_mm, sheet->draw, &upright);
  sw_face_view_fit (sheet->result, face, turned_width_mm, turned_height_mm, sheet->draw,
                    &turned);
  if (turned < upright)
    {
      sw_sheet_add_turned (
          sheet, title, face_view (sheet, face, turned_width_mm, turned_height_mm, NULL));
      sw_flow_drawing (flow, plan (sheet, face, width_mm, drawing_mm));
    }
  else
    sw_flow_drawing (flow, face_view (sheet, face, width_mm, drawing_mm, NULL));
  sw_flow_space (flow, GAP_MM);
  add_order (sheet, flow, face);
  sw_flow_space (flow, GAP_MM);
  sw_flow_table (flow, run_table (sheet, face));
  sw_sheet_add (sheet, title, flow);
}
