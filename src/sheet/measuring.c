/* SPDX-License-Identifier: MIT */
#include "measuring.h"
#include "fall-lines.h"
#include <math.h>
#include <slopewright/ground/measured.h>

#define ROW_MM SW_MEASURING_ROW_MM
#define HEAD_ROW_MM 10.0
#define TEXT_GAP_MM 1.5
#define BLOCK_GAP_MM 3.0
#define SKETCH_LEAST_MM 45.0
#define SKETCH_MOST_MM 120.0
#define SKETCH_HEADING_MM 22.0 /* heading and words above it */
/* A tape pulled twice: common practice, no source. */
#define LENGTH_SHARE 0.01
#define LENGTH_LEAST_M 0.10
#define SLIP_M 0.05

gboolean
sw_measuring_is_blank (const SwSheet *sheet)
{
  return sheet->plan->kind == SW_PACK_MEASURE_BLANK;
}

const char *
sw_measuring_holds_words (const SwSheet *sheet, const char *words)
{
  if (*words == '\0' || sw_measuring_is_blank (sheet))
    return "";
  return sw_sheet_fill (sheet, "measuring.job", "value", words, NULL);
}

const char *
sw_measuring_holds (const SwSheet *sheet, double value, SwUnit unit)
{
  if (!isfinite (value))
    return "";
  return sw_measuring_holds_words (sheet, sw_sheet_quantity (sheet, value, unit));
}

const char *
sw_measuring_id (const SwSheet *sheet, const char *id)
{
  return sw_measuring_is_blank (sheet) ? sw_sheet_format (sheet, "%s-blank", id) : id;
}

void
sw_measuring_head (const SwSheet *sheet, SwFlow *flow, int face)
{
  const SwColumn columns[] = {
    { sw_sheet_get (sheet, "measuring.head.job"), SW_CELL_TEXT, 0.0 },
    { sw_sheet_get (sheet, "measuring.head.face"), SW_CELL_TEXT, 20.0 },
    { sw_sheet_get (sheet, "measuring.head.date"), SW_CELL_TEXT, 24.0 },
    { sw_sheet_get (sheet, "measuring.head.by"), SW_CELL_TEXT, 40.0 },
    { sw_sheet_get (sheet, "measuring.head.weather"), SW_CELL_TEXT, 20.0 },
    { sw_sheet_get (sheet, "measuring.head.instruments"), SW_CELL_TEXT, 36.0 },
  };
  SwTable *table =
      sw_table_new (&sheet->pen, SW_STYLE_SMALL, columns, G_N_ELEMENTS (columns));
  gboolean names_face = face >= 0 && !sw_measuring_is_blank (sheet);

  sw_table_set_ruled (table);
  sw_table_set_row_mm (table, HEAD_ROW_MM);
  sw_table_row (table, sw_sheet_plain (sheet, sheet->job->card.name),
                names_face ? sw_sheet_plain (sheet, sheet->layout->faces[face].face->id)
                           : "",
                "", "", "", "", NULL);
  sw_flow_table (flow, table);
}

/* What can be read on a fall line, and to what the tool is read: common practice, no
 * source; a tape in feet has marks of its own. */
typedef enum
{
  LINE_LENGTH,
  LINE_GRADIENT,
  LINE_RISE,
  LINE_RUN
} LineMeasure;

static const struct
{
  const char *code;
  SwUnit unit;
  double read_to_m, read_to_us_m; /* 0: the text says it */
} line_measures[] = {
  [LINE_LENGTH] = { "length", SW_UNIT_M, 0.05, SW_M_PER_IN },
  [LINE_GRADIENT] = { "gradient", SW_UNIT_RAD, 0.0, 0.0 },
  [LINE_RISE] = { "rise", SW_UNIT_M, 0.02, SW_M_PER_IN },
  [LINE_RUN] = { "run", SW_UNIT_M, 0.10, 3.0 * SW_M_PER_IN },
};

static double
line_value (const SwFallLine *line, LineMeasure measure)
{
  switch (measure)
    {
    case LINE_LENGTH:
      return line->length_m;
    case LINE_GRADIENT:
      return atan2 (line->rise_m, line->run_m);
    case LINE_RISE:
      return line->rise_m;
    default:
      return line->run_m;
    }
}

/* The three forms of a gradient take two lines of a narrow cell. */
static const char *
line_cell (const SwSheet *sheet, const SwFallLine *line, LineMeasure measure)
{
  g_autofree char *words = NULL;

  if (line->length_m <= 0.0)
    return "";
  words = sw_report_quantity (line_value (line, measure), line_measures[measure].unit,
                              sheet->draw->style);
  return sw_measuring_holds_words (sheet, words);
}

static void
add_line_row (const SwSheet *sheet, SwTable *table, const SwFallLine *lines,
              LineMeasure measure)
{
  const char *id = sw_sheet_format (sheet, "measuring.%s", line_measures[measure].code);
  gboolean us = sheet->draw->style.units == SW_UNITS_US;
  double to_m =
      us ? line_measures[measure].read_to_us_m : line_measures[measure].read_to_m;

  sw_table_row (table, sw_sheet_get (sheet, id), line_cell (sheet, &lines[0], measure),
                line_cell (sheet, &lines[1], measure),
                line_cell (sheet, &lines[2], measure),
                sw_sheet_fill (sheet, sw_sheet_format (sheet, "%s.read-to", id), "to",
                               sw_sheet_quantity (sheet, to_m, SW_UNIT_SMALL_M), NULL),
                "", NULL);
}

static void
add_lengths (const SwSheet *sheet, SwFlow *flow, guint face)
{
  const SwColumn columns[] = {
    { sw_sheet_get (sheet, "measuring.column.measure"), SW_CELL_TEXT, 0.0 },
    { sw_sheet_get (sheet, "measuring.column.left"), SW_CELL_BLANK, 25.0 },
    { sw_sheet_get (sheet, "measuring.column.middle"), SW_CELL_BLANK, 25.0 },
    { sw_sheet_get (sheet, "measuring.column.right"), SW_CELL_BLANK, 25.0 },
    { sw_sheet_get (sheet, "measuring.column.read-to"), SW_CELL_TEXT, 36.0 },
    { sw_sheet_get (sheet, "measuring.column.tool"), SW_CELL_BLANK, 26.0 },
  };
  SwTable *table =
      sw_table_new (&sheet->pen, SW_STYLE_SMALL, columns, G_N_ELEMENTS (columns));
  SwFallLine lines[SW_FALL_LINES];

  sw_fall_lines (&sheet->layout->faces[face], lines);
  sw_table_set_ruled (table);
  sw_table_set_whole (table);
  sw_table_set_row_mm (table, ROW_MM);
  for (guint i = 0; i < G_N_ELEMENTS (line_measures); i++)
    add_line_row (sheet, table, lines, (LineMeasure) i);
  sw_measuring_title (sheet, flow, "lengths");
  sw_flow_table (flow, table);
}

static const char *
side_cell (const SwSheet *sheet, guint face, SwTapedSide side)
{
  return sw_measuring_holds (sheet, sw_taped_side_m (&sheet->layout->faces[face], side),
                             SW_UNIT_M);
}

static void
add_sides (const SwSheet *sheet, SwFlow *flow, guint face)
{
  const SwColumn columns[] = {
    { sw_sheet_get (sheet, "measuring.side.ab"), SW_CELL_BLANK, 0.0 },
    { sw_sheet_get (sheet, "measuring.side.bc"), SW_CELL_BLANK, 0.0 },
    { sw_sheet_get (sheet, "measuring.side.cd"), SW_CELL_BLANK, 0.0 },
    { sw_sheet_get (sheet, "measuring.side.da"), SW_CELL_BLANK, 0.0 },
    { sw_sheet_get (sheet, "measuring.side.ac"), SW_CELL_BLANK, 0.0 },
    { sw_sheet_get (sheet, "measuring.side.bd"), SW_CELL_BLANK, 0.0 },
  };
  SwTable *table =
      sw_table_new (&sheet->pen, SW_STYLE_SMALL, columns, G_N_ELEMENTS (columns));

  sw_table_row (table, side_cell (sheet, face, SW_SIDE_AB),
                side_cell (sheet, face, SW_SIDE_BC), side_cell (sheet, face, SW_SIDE_CD),
                side_cell (sheet, face, SW_SIDE_DA), side_cell (sheet, face, SW_SIDE_AC),
                side_cell (sheet, face, SW_SIDE_BD), NULL);
  sw_table_set_ruled (table);
  sw_table_set_row_mm (table, ROW_MM);
  sw_flow_heading (flow, sw_sheet_get (sheet, "measuring.sides.title"));
  sw_flow_text (flow, SW_STYLE_SMALL, SW_ROLE_TEXT,
                sw_sheet_fill (sheet, "measuring.sides.how", "allowed",
                               sw_sheet_limit (sheet, SW_TAPED_ALLOWED_M, SW_LIMIT_MOST),
                               NULL));
  sw_flow_tie (flow);
  sw_flow_space (flow, TEXT_GAP_MM);
  sw_flow_table (flow, table);
}

static void
add_round (const SwSheet *sheet, SwFlow *flow, guint face)
{
  const SwColumn columns[] = {
    { sw_sheet_get (sheet, "measuring.round.crest"), SW_CELL_BLANK, 0.0 },
    { sw_sheet_get (sheet, "measuring.round.toe"), SW_CELL_BLANK, 0.0 },
    { sw_sheet_get (sheet, "measuring.round.chord"), SW_CELL_BLANK, 0.0 },
    { sw_sheet_get (sheet, "measuring.round.offset"), SW_CELL_BLANK, 0.0 },
    { sw_sheet_get (sheet, "measuring.round.radius"), SW_CELL_BLANK, 0.0 },
    { sw_sheet_get (sheet, "measuring.round.side"), SW_CELL_BLANK, 0.0 },
  };
  SwTable *table =
      sw_table_new (&sheet->pen, SW_STYLE_SMALL, columns, G_N_ELEMENTS (columns));
  double radius_m = sheet->layout->faces[face].face->crest_radius_m;

  sw_table_row (table, side_cell (sheet, face, SW_SIDE_AB),
                side_cell (sheet, face, SW_SIDE_CD), "", "",
                sw_measuring_holds (sheet, radius_m, SW_UNIT_M), "", NULL);
  sw_table_set_ruled (table);
  sw_table_set_row_mm (table, ROW_MM);
  sw_measuring_title (sheet, flow, "round");
  sw_flow_table (flow, table);
}

/* A straight face is taped by its sides, a round one by its arcs; who has seen neither
 * gets both. */
static void
add_shape (const SwSheet *sheet, SwFlow *flow, guint face)
{
  gboolean blank = sw_measuring_is_blank (sheet);
  gboolean straight = sheet->layout->faces[face].face->crest_form == SW_CREST_STRAIGHT;

  if (blank || straight)
    add_sides (sheet, flow, face);
  if (blank || !straight)
    add_round (sheet, flow, face);
}

static void
add_tolerance (const SwSheet *sheet, SwFlow *flow, guint face)
{
  SwFallLine lines[SW_FALL_LINES];
  double off_m;

  sw_fall_lines (&sheet->layout->faces[face], lines);
  off_m = fmax (LENGTH_SHARE * lines[SW_FALL_LINES / 2].length_m, LENGTH_LEAST_M);
  sw_flow_space (flow, BLOCK_GAP_MM);
  sw_flow_text (flow, SW_STYLE_SMALL, SW_ROLE_TEXT,
                sw_sheet_fill (sheet, sw_measuring_id (sheet, "measuring.tolerance"),
                               "slip", sw_sheet_limit (sheet, SLIP_M, SW_LIMIT_MOST),
                               "length", sw_sheet_limit (sheet, off_m, SW_LIMIT_MOST),
                               NULL));
}

/* The rest of the page, or a page that it shares with what follows. */
static void
add_sketch (const SwSheet *sheet, SwFlow *flow, guint face)
{
  double scale = sheet->pen.scale;
  double room_mm =
      sw_flow_room_mm (flow, sw_sheet_body_height_mm (sheet)) - SKETCH_HEADING_MM * scale;
  double height_mm = room_mm >= SKETCH_LEAST_MM * scale
                         ? MIN (room_mm, SKETCH_MOST_MM * scale)
                         : SKETCH_MOST_MM * scale;
  const char *square;
  SwFigure *sketch =
      sw_measuring_sketch (sheet, face, sw_flow_width_mm (flow), height_mm, &square);

  sw_flow_heading (flow, sw_sheet_get (sheet, "measuring.sketch.title"));
  sw_flow_text (flow, SW_STYLE_SMALL, SW_ROLE_TEXT,
                sw_sheet_fill (sheet, sw_measuring_id (sheet, "measuring.sketch.how"),
                               "square", square, NULL));
  sw_flow_tie (flow);
  sw_flow_space (flow, TEXT_GAP_MM);
  sw_flow_drawing (flow, sketch);
}

static void
add_face (SwSheet *sheet, guint face)
{
  SwFlow *flow = sw_sheet_flow (sheet);

  if (sheet->pages->len == 0)
    sw_sheet_review (sheet, flow);
  sw_measuring_head (sheet, flow, (int) face);
  sw_flow_space (flow, BLOCK_GAP_MM);
  sw_flow_text (flow, SW_STYLE_SMALL, SW_ROLE_TEXT,
                sw_sheet_get (sheet, sw_measuring_id (sheet, "measuring.how")));
  sw_flow_space (flow, BLOCK_GAP_MM);
  sw_flow_caution (flow, sw_sheet_get (sheet, "measuring.caution"));
  add_lengths (sheet, flow, face);
  add_shape (sheet, flow, face);
  add_tolerance (sheet, flow, face);
  sw_measuring_obstacles (sheet, flow, face);
  sw_measuring_section (sheet, flow, face);
  add_sketch (sheet, flow, face);
  sw_measuring_soil (sheet, flow, face);
  sw_measuring_photos (sheet, flow);
  sw_sheet_add (sheet,
                sw_measuring_is_blank (sheet)
                    ? sw_sheet_get (sheet, "measuring.title-blank")
                    : sw_sheet_fill (sheet, "measuring.title", "face",
                                     sheet->layout->faces[face].face->id, NULL),
                flow);
}

/* A blank form is one face's; more of them are copied. */
void
sw_page_measuring (SwSheet *sheet)
{
  guint n_faces = sw_measuring_is_blank (sheet) ? 1 : sheet->layout->n_faces;

  for (guint face = 0; face < n_faces; face++)
    add_face (sheet, face);
}
