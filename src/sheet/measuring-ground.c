/* SPDX-License-Identifier: MIT */
#include "measuring.h"
#include "tier-numbers.h"

#define SECTION_MM 66.0
#define TEXT_GAP_MM 1.5
#define BLOCK_GAP_MM 3.0
#define ROW_MM 9.0
#define MORE_POINTS 2
#define BLANK_POINTS 6
#define TRIALS 2
#define TRIAL_PINS 5
/* Hand texture and heel: common practice, no source. */
#define RIBBON_M 0.05
#define HEEL_M 0.02

static const char *
point_words (const SwSheet *sheet, const SwFace *face, guint point)
{
  const char *id = point == face->crest  ? "measuring.point.crest"
                   : point == face->toe  ? "measuring.point.toe"
                   : point < face->crest ? "measuring.point.behind"
                   : point > face->toe   ? "measuring.point.beyond"
                                         : "measuring.point.break";

  return sw_sheet_get (sheet, id);
}

static void
add_points (const SwSheet *sheet, SwTable *table, const SwFace *face,
            const SwPoint *points)
{
  for (guint i = 0; i < face->n_section; i++)
    sw_table_row (table, sw_sheet_format (sheet, "%u", i + 1),
                  sw_measuring_holds (sheet, points[i].x_m, SW_UNIT_M),
                  sw_measuring_holds (sheet, points[i].y_m, SW_UNIT_M), "", "",
                  point_words (sheet, face, i), NULL);
}

/* Its own section, and those taken elsewhere under their places. */
static guint
add_sections (const SwSheet *sheet, SwTable *table, const SwFace *face)
{
  if (face->n_further > 0)
    sw_table_band (
        table, sw_sheet_fill (sheet, "measuring.section.at", "along",
                              sw_sheet_quantity (sheet, face->section_along_m, SW_UNIT_M),
                              NULL));
  add_points (sheet, table, face, face->section);
  for (guint i = 0; i < face->n_further; i++)
    {
      const SwCrossSection *further = &face->further[i];

      sw_table_band (
          table,
          sw_sheet_fill (sheet, "measuring.section.at", "along",
                         sw_sheet_quantity (sheet, further->along_m, SW_UNIT_M), NULL));
      add_points (sheet, table, face, further->section);
    }
  return face->n_section;
}

void
sw_measuring_section (const SwSheet *sheet, SwFlow *flow, guint face_index)
{
  const SwFace *face = sheet->layout->faces[face_index].face;
  const SwColumn columns[] = {
    { sw_sheet_get (sheet, "measuring.column.point"), SW_CELL_NUMBER, 0.0 },
    { sw_sheet_get (sheet, "measuring.column.out"), SW_CELL_BLANK, 30.0 },
    { sw_sheet_get (sheet, "measuring.column.up"), SW_CELL_BLANK, 30.0 },
    { sw_sheet_get (sheet, "measuring.column.stretch"), SW_CELL_BLANK, 34.0 },
    { sw_sheet_get (sheet, "measuring.column.stretch-angle"), SW_CELL_BLANK, 28.0 },
    { sw_sheet_get (sheet, "measuring.column.what"), SW_CELL_TEXT, 0.0 },
  };
  SwTable *table =
      sw_table_new (&sheet->pen, SW_STYLE_SMALL, columns, G_N_ELEMENTS (columns));
  gboolean blank = sw_measuring_is_blank (sheet);
  guint points = blank ? 0 : add_sections (sheet, table, face);

  for (guint i = 0; i < (blank ? BLANK_POINTS : MORE_POINTS); i++)
    sw_table_row (table, sw_sheet_format (sheet, "%u", points + i + 1), "", "", "", "",
                  "", NULL);
  sw_table_set_ruled (table);
  sw_table_set_row_mm (table, ROW_MM);
  sw_flow_heading (flow, sw_sheet_get (sheet, "measuring.section.title"));
  sw_flow_text (flow, SW_STYLE_SMALL, SW_ROLE_TEXT,
                sw_sheet_get (sheet, sw_measuring_id (sheet, "measuring.section.how")));
  sw_flow_tie (flow);
  sw_flow_space (flow, TEXT_GAP_MM);
  if (!blank)
    sw_sheet_section (sheet, flow, face_index, SECTION_MM * sheet->pen.scale);
  sw_flow_space (flow, BLOCK_GAP_MM);
  sw_flow_table (flow, table);
}

static const char *
held_soil (const SwSheet *sheet, guint face_index)
{
  const SwFace *face = sheet->layout->faces[face_index].face;
  const SwSoil *soil = sw_catalogue_soil (sheet->layout->catalogue, face->soil_id);

  return sw_sheet_fill (
      sheet, "measuring.soil.holds", "soil", sw_sheet_get (sheet, soil->name_id), "state",
      sw_sheet_get (sheet, face->loose ? "measuring.soil.loose" : "measuring.soil.firm"),
      "topsoil", sw_sheet_quantity (sheet, face->topsoil_m, SW_UNIT_SMALL_M), "known",
      sw_sheet_soil_known (sheet, face_index), NULL);
}

static void
add_soil_table (const SwSheet *sheet, SwFlow *flow)
{
  static const char *const places[] = { "measuring.soil.crest", "measuring.soil.middle",
                                        "measuring.soil.toe" };
  const SwColumn columns[] = {
    { sw_sheet_get (sheet, "measuring.column.soil-place"), SW_CELL_TEXT, 26.0 },
    { sw_sheet_get (sheet, "measuring.column.ball"), SW_CELL_TEXT, 22.0 },
    { sw_sheet_get (sheet, "measuring.column.ribbon"), SW_CELL_TEXT, 24.0 },
    { sw_sheet_get (sheet, "measuring.column.heel"), SW_CELL_TEXT, 24.0 },
    { sw_sheet_get (sheet, "measuring.column.depth"), SW_CELL_TEXT, 24.0 },
    { sw_sheet_get (sheet, "measuring.column.class"), SW_CELL_TEXT, 0.0 },
  };
  SwTable *table =
      sw_table_new (&sheet->pen, SW_STYLE_SMALL, columns, G_N_ELEMENTS (columns));

  sw_table_set_ruled (table);
  sw_table_set_whole (table);
  sw_table_set_row_mm (table, ROW_MM);
  for (guint i = 0; i < G_N_ELEMENTS (places); i++)
    sw_table_row (table, sw_sheet_get (sheet, places[i]), "", "", "", "", "", NULL);
  sw_flow_table (flow, table);
}

/* Five pins driven in one place, each pulled by hand. */
static void
add_trial (const SwSheet *sheet, SwFlow *flow, guint face)
{
  const char *pin = sw_sheet_pin_words (sheet, &sheet->layout->faces[face]);
  const SwColumn columns[] = {
    { sw_sheet_get (sheet, "measuring.column.trial-place"), SW_CELL_TEXT, 38.0 },
    { sw_sheet_get (sheet, "measuring.column.trial-pin"), SW_CELL_TEXT, 24.0 },
    { "1", SW_CELL_TEXT, 11.0 },
    { "2", SW_CELL_TEXT, 11.0 },
    { "3", SW_CELL_TEXT, 11.0 },
    { "4", SW_CELL_TEXT, 11.0 },
    { "5", SW_CELL_TEXT, 11.0 },
    { sw_sheet_get (sheet, "measuring.column.trial-result"), SW_CELL_TEXT, 0.0 },
  };
  SwTable *table =
      sw_table_new (&sheet->pen, SW_STYLE_SMALL, columns, G_N_ELEMENTS (columns));

  G_STATIC_ASSERT (G_N_ELEMENTS (columns) == TRIAL_PINS + 3);
  sw_table_set_ruled (table);
  sw_table_set_whole (table);
  sw_table_set_row_mm (table, ROW_MM);
  for (guint i = 0; i < TRIALS; i++)
    sw_table_row (table, "", "", "", "", "", "", "", "", NULL);
  sw_flow_heading (flow, sw_sheet_get (sheet, "measuring.trial.title"));
  sw_flow_text (flow, SW_STYLE_SMALL, SW_ROLE_TEXT,
                sw_sheet_fill (sheet, sw_measuring_id (sheet, "measuring.trial.how"),
                               "pin", pin, NULL));
  sw_flow_tie (flow);
  sw_flow_space (flow, TEXT_GAP_MM);
  sw_flow_table (flow, table);
}

void
sw_measuring_soil (const SwSheet *sheet, SwFlow *flow, guint face)
{
  sw_flow_heading (flow, sw_sheet_get (sheet, "measuring.soil.title"));
  sw_flow_text (flow, SW_STYLE_SMALL, SW_ROLE_TEXT,
                sw_sheet_fill (sheet, "measuring.soil.how", "ribbon",
                               sw_sheet_quantity (sheet, RIBBON_M, SW_UNIT_SMALL_M),
                               "heel", sw_sheet_quantity (sheet, HEEL_M, SW_UNIT_SMALL_M),
                               NULL));
  sw_flow_tie (flow);
  if (!sw_measuring_is_blank (sheet))
    {
      sw_flow_text (flow, SW_STYLE_SMALL, SW_ROLE_MUTED, held_soil (sheet, face));
      sw_flow_tie (flow);
    }
  sw_flow_space (flow, TEXT_GAP_MM);
  add_soil_table (sheet, flow);
  add_trial (sheet, flow, face);
}
