/* SPDX-License-Identifier: MIT */
#include "tier-numbers.h"
#include <math.h>

#define GAP_MM 4.0
#define PLAN_GAP_MM 7.0
#define PLAN_LEAST_MM 80.0

static void
add_run_rows (const SwSheet *sheet, SwTable *table, guint face_index, guint tier)
{
  const SwFaceLayout *face = &sheet->layout->faces[face_index];
  g_autoptr (GPtrArray) groups = sw_sheet_alike_runs (face, tier);

  if (face->n_tiers > 1)
    sw_table_band (table, sw_sheet_place (sheet, face_index, tier));
  for (guint i = 0; i < groups->len; i++)
    {
      const GArray *runs = g_ptr_array_index (groups, i);
      const SwRun *run = &face->runs[g_array_index (runs, guint, 0)];

      sw_table_row (table, sw_sheet_runs (sheet, face, runs),
                    sw_sheet_count (sheet, runs->len),
                    sw_sheet_quantity (sheet, run->terms.face, SW_UNIT_M),
                    sw_sheet_quantity (sheet, run->cut_m, SW_UNIT_M),
                    sw_sheet_count (sheet, run->n_pieces), NULL);
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

/* Where the infill runs of a tier end: "3.67 m", or "3.67 m to 3.92 m" beside a narrower
 * last run. */
static const char *
infill_ends (const SwSheet *sheet, const SwFaceLayout *face, const SwTier *tier)
{
  double least_m = INFINITY, most_m = -INFINITY;
  const char *least, *most;

  for (guint i = tier->first_run; i < tier->first_run + tier->n_runs; i++)
    if (face->runs[i].infill)
      {
        double end_m = face->face->crest_form == SW_CREST_NOSE ? face->runs[i].down_from_m
                                                               : face->runs[i].down_to_m;

        least_m = fmin (least_m, end_m);
        most_m = fmax (most_m, end_m);
      }
  least = sw_sheet_quantity (sheet, least_m, SW_UNIT_M);
  most = sw_sheet_quantity (sheet, most_m, SW_UNIT_M);
  return g_str_equal (least, most)
             ? least
             : sw_sheet_fill (sheet, "pack.from-to", "from", least, "to", most, NULL);
}

/* Infill goes out of turn, and its end wants a mark on the ground. */
static void
add_infill (const SwSheet *sheet, SwFlow *flow, guint face_index, guint tier_index)
{
  const SwFaceLayout *face = &sheet->layout->faces[face_index];
  const SwTier *tier = &face->tiers[tier_index];

  if (tier->infill == 0)
    return;
  sw_flow_space (flow, 1.0);
  sw_flow_text (
      flow, SW_STYLE_BODY, SW_ROLE_TEXT,
      sw_sheet_fill (sheet,
                     face->face->crest_form == SW_CREST_NOSE ? "pack.layout.infill-nose"
                                                             : "pack.layout.infill-bowl",
                     "place", sw_sheet_place (sheet, face_index, tier_index), "end_lap",
                     sw_sheet_limit (sheet, tier->end_lap_m, SW_LIMIT_LEAST), "infill",
                     sw_sheet_infill_runs (sheet, face, tier_index), "end",
                     infill_ends (sheet, face, tier), NULL));
}

static gboolean
has_joined_runs (const SwFaceLayout *face, const SwTier *tier)
{
  for (guint i = tier->first_run; i < tier->first_run + tier->n_runs; i++)
    if (face->runs[i].n_pieces > 1)
      return TRUE;
  return FALSE;
}

/* Where to begin and how the laps lie. */
static void
add_order (const SwSheet *sheet, SwFlow *flow, guint face_index)
{
  const SwFaceLayout *face = &sheet->layout->faces[face_index];
  gboolean left = face->face->leeward == SW_SIDE_LEFT;
  const char *order = left ? "pack.layout.from-left" : "pack.layout.from-right";

  if (face->n_tiers > 0 && face->tiers[0].closed)
    order = left ? "pack.layout.round-left" : "pack.layout.round-right";
  sw_flow_text (flow, SW_STYLE_CREW, SW_ROLE_TEXT, sw_sheet_get (sheet, order));
  for (guint t = 0; t < face->n_tiers; t++)
    {
      const SwTier *tier = &face->tiers[t];

      sw_flow_space (flow, 1.0);
      sw_flow_text (
          flow, SW_STYLE_BODY, SW_ROLE_TEXT,
          sw_sheet_fill (sheet,
                         has_joined_runs (face, tier) ? "pack.layout.laps"
                                                      : "pack.layout.laps-whole",
                         "place", sw_sheet_place (sheet, face_index, t), "runs",
                         sw_sheet_count (sheet, tier->n_runs), "lap",
                         sw_sheet_limit (sheet, tier->side_lap_m, SW_LIMIT_LAID),
                         "end_lap",
                         sw_sheet_limit (sheet, tier->end_lap_m, SW_LIMIT_LEAST), NULL));
      add_infill (sheet, flow, face_index, t);
    }
}

static void
add_words (const SwSheet *sheet, SwFlow *flow, guint face)
{
  sw_flow_space (flow, GAP_MM);
  add_order (sheet, flow, face);
  sw_flow_space (flow, GAP_MM);
  sw_flow_table (flow, run_table (sheet, face));
  sw_sheet_obstacles (sheet, flow, face);
  sw_sheet_soils (sheet, flow, face);
}

static SwFigure *
face_view (const SwSheet *sheet, guint face, double width_mm, double height_mm)
{
  SwView view =
      sw_face_view_fit (sheet->result, face, width_mm, height_mm, sheet->draw, NULL);

  return sw_draw_face_view (sheet->result, face, &view, sheet->draw);
}

double
sw_sheet_plan_room_mm (const SwSheet *sheet, const SwFlow *flow)
{
  double room_mm = sw_flow_room_mm (flow, sw_sheet_body_height_mm (sheet)) - PLAN_GAP_MM;

  return room_mm < PLAN_LEAST_MM * sheet->pen.scale ? 0.0 : room_mm;
}

void
sw_sheet_plan (const SwSheet *sheet, SwFlow *flow, guint face, double most_mm)
{
  double width_mm = sw_flow_width_mm (flow);
  double height_mm = sw_sheet_drawing_mm (sheet, sw_plan_fit, face, width_mm, most_mm);
  SwView view = sw_plan_fit (sheet->result, face, width_mm, height_mm, sheet->draw, NULL);

  sw_flow_space (flow, PLAN_GAP_MM);
  sw_flow_drawing (flow, sw_draw_plan (sheet->result, face, &view, sheet->draw));
}

/* The plan stands below the words where there is room; else the front pages take it. */
static void
add_plan (const SwSheet *sheet, SwFlow *flow, guint face)
{
  double room_mm = sw_sheet_plan_room_mm (sheet, flow);

  if (room_mm > 0.0)
    sw_sheet_plan (sheet, flow, face, room_mm);
  else
    g_array_append_val (sheet->plans, face);
}

/* Whether a page on its side shows the face at a larger scale than @height_mm upright. */
static gboolean
is_larger_turned (const SwSheet *sheet, guint face, double width_mm, double height_mm)
{
  double turned_width_mm, turned_height_mm, upright = 0.0, turned = 0.0;

  sw_sheet_turned_body_mm (sheet, &turned_width_mm, &turned_height_mm);
  sw_face_view_fit (sheet->result, face, width_mm, height_mm, sheet->draw, &upright);
  sw_face_view_fit (sheet->result, face, turned_width_mm, turned_height_mm, sheet->draw,
                    &turned);
  return turned < upright;
}

/*
 * The drawing at the largest scale: above the words, on the whole page, or on
 * its side. The words go on below it.
 */
void
sw_page_layout (SwSheet *sheet, guint face)
{
  SwFlow *flow = sw_sheet_flow (sheet);
  double body_mm = sw_sheet_body_height_mm (sheet), width_mm = sw_flow_width_mm (flow);
  const char *title = sw_sheet_fill (sheet, "pack.layout.title", "face",
                                     sheet->layout->faces[face].face->id, NULL);
  double turned_width_mm, turned_height_mm;

  if (is_larger_turned (sheet, face, width_mm, body_mm))
    {
      sw_sheet_turned_body_mm (sheet, &turned_width_mm, &turned_height_mm);
      sw_sheet_add_turned (sheet, title,
                           face_view (sheet, face, turned_width_mm, turned_height_mm));
    }
  else
    sw_flow_drawing (flow, face_view (sheet, face, width_mm,
                                      sw_sheet_drawing_mm (sheet, sw_face_view_fit, face,
                                                           width_mm, body_mm)));
  add_words (sheet, flow, face);
  add_plan (sheet, flow, face);
  sw_sheet_change_notes (sheet, flow);
  sw_sheet_add (sheet, title, flow);
}
