/* SPDX-License-Identifier: MIT */
#include "class-exercise.h"
#include "class-sheet.h"
#include "class-taped.h"

#define NUMBER_MM 9.0
#define QUESTION_MM 52.0
#define ANSWER_MM 34.0
#define KEY_ANSWER_MM 27.0
#define KEY_ACCEPT_MM 28.0
#define POINTS_MM 15.0
#define LEAST_ROW_MM 12.0
#define MOST_ROW_MM 30.0
#define HEAD_MM 12.0 /* of a table, with some air below it */
#define GAP_MM 4.0

/* The exercises, and the answers to them. */

/* A question with its answer, a row of either sheet. */
typedef struct
{
  const SwAskTerms *terms;
  SwAnswerWords words;
} Row;

static const char *
question_of (const SwSheet *sheet, const Row *row)
{
  return sw_sheet_get (sheet, sw_sheet_format (sheet, "class.ask.%s", row->terms->code));
}

/* A question without an answer is not asked. */
static void
add_row (GArray *rows, Row row)
{
  if (row.words.answer != NULL)
    g_array_append_val (rows, row);
}

static GArray *
rows_of_slope (const SwSheet *sheet, const SwResult *result, guint number)
{
  GArray *rows = g_array_new (FALSE, FALSE, sizeof (Row));

  for (int i = 0; i < SW_ASK_COUNT; i++)
    {
      SwAsk ask = (SwAsk) i;

      if (sw_ask_is_of (ask, number))
        add_row (rows,
                 (Row){ sw_ask_terms (ask), sw_exercise_answer (sheet, result, ask) });
    }
  return rows;
}

static GArray *
rows_of_tapes (const SwSheet *sheet, const SwTapedSides *sides)
{
  GArray *rows = g_array_new (FALSE, FALSE, sizeof (Row));

  for (int i = 0; i < SW_TAPED_ASK_COUNT; i++)
    {
      SwTapedAsk ask = (SwTapedAsk) i;

      add_row (rows, (Row){ sw_taped_terms (ask), sw_taped_answer (sheet, sides, ask) });
    }
  return rows;
}

static guint
points_of (const GArray *rows)
{
  guint points = 0;

  for (guint i = 0; i < rows->len; i++)
    points += g_array_index (rows, Row, i).terms->points;
  return points;
}

/* --- tables --- */

static SwTable *
question_table (const SwSheet *sheet, double row_mm)
{
  const SwColumn columns[] = {
    { sw_sheet_get (sheet, "class.column.number"), SW_CELL_TEXT, NUMBER_MM },
    { sw_sheet_get (sheet, "class.column.question"), SW_CELL_TEXT, QUESTION_MM },
    { sw_sheet_get (sheet, "class.column.working"), SW_CELL_TEXT, 0.0 },
    { sw_sheet_get (sheet, "class.column.answer"), SW_CELL_TEXT, ANSWER_MM },
    { sw_sheet_get (sheet, "class.column.points"), SW_CELL_TEXT, POINTS_MM },
  };
  SwTable *table =
      sw_table_new (&sheet->pen, SW_STYLE_BODY, columns, G_N_ELEMENTS (columns));

  sw_table_set_ruled (table);
  sw_table_set_row_mm (table, row_mm);
  return table;
}

static SwTable *
answer_table (const SwSheet *sheet)
{
  const SwColumn columns[] = {
    { sw_sheet_get (sheet, "class.column.number"), SW_CELL_TEXT, NUMBER_MM },
    { sw_sheet_get (sheet, "class.column.question"), SW_CELL_TEXT, 40.0 },
    { sw_sheet_get (sheet, "class.column.answer"), SW_CELL_TEXT, KEY_ANSWER_MM },
    { sw_sheet_get (sheet, "class.column.accept"), SW_CELL_TEXT, KEY_ACCEPT_MM },
    { sw_sheet_get (sheet, "class.column.how"), SW_CELL_TEXT, 0.0 },
    { sw_sheet_get (sheet, "class.column.points"), SW_CELL_TEXT, POINTS_MM },
  };

  return sw_table_new (&sheet->pen, SW_STYLE_SMALL, columns, G_N_ELEMENTS (columns));
}

static const char *
number_words (const SwSheet *sheet, guint number)
{
  return sw_sheet_format (sheet, "%u", number);
}

static const char *
out_of (const SwSheet *sheet, guint points)
{
  return sw_sheet_format (sheet, "/ %u", points);
}

/* Rows share the height that the page leaves: the more room to work in, the better. */
static double
row_height_mm (const SwSheet *sheet, const SwFlow *flow, guint rows)
{
  double room_mm =
      sw_flow_room_mm (flow, sw_sheet_body_height_mm (sheet)) / sheet->pen.scale;

  return CLAMP ((room_mm - HEAD_MM) / rows, LEAST_ROW_MM, MOST_ROW_MM);
}

/* "yd²" behind the line for the answer; "" for a count or a word. */
static const char *
unit_words (const SwSheet *sheet, SwUnit unit)
{
  const char *words = sw_quantity_unit (unit, sheet->draw->style);

  return *words != '\0' ? sw_sheet_fill (sheet, "class.answer.unit", "unit", words, NULL)
                        : "";
}

static void
set_questions (const SwSheet *sheet, SwFlow *flow, const GArray *rows)
{
  SwTable *table = question_table (sheet, row_height_mm (sheet, flow, rows->len));

  for (guint i = 0; i < rows->len; i++)
    {
      const Row *row = &g_array_index (rows, Row, i);

      sw_table_row (table, number_words (sheet, i + 1), question_of (sheet, row), "",
                    unit_words (sheet, row->terms->unit),
                    out_of (sheet, row->terms->points), NULL);
    }
  sw_flow_table (flow, table);
}

static void
set_answers (const SwSheet *sheet, SwFlow *flow, const GArray *rows)
{
  SwTable *table = answer_table (sheet);

  for (guint i = 0; i < rows->len; i++)
    {
      const Row *row = &g_array_index (rows, Row, i);

      sw_table_row (table, number_words (sheet, i + 1), question_of (sheet, row),
                    sw_sheet_format (sheet, "*%s*", row->words.answer), row->words.accept,
                    row->words.how, number_words (sheet, row->terms->points), NULL);
    }
  sw_flow_table (flow, table);
}

/* Below what is given: rows to work in, or the answers. */
static void
set_rows (const SwSheet *sheet, SwFlow *flow, const GArray *rows, gboolean key)
{
  sw_flow_tie (flow);
  sw_flow_space (flow, 1.5);
  if (key)
    set_answers (sheet, flow, rows);
  else
    set_questions (sheet, flow, rows);
}

/* --- exercises --- */

static void
add_title (const SwSheet *sheet, SwFlow *flow, guint number, const GArray *rows)
{
  const char *about = number < SW_SLOPES - 1    ? "class.exercise.laying"
                      : number == SW_SLOPES - 1 ? "class.exercise.earth"
                                                : "class.exercise.taped";

  sw_flow_heading (flow, sw_sheet_fill (sheet, "class.exercise.title", "number",
                                        number_words (sheet, number + 1), "about",
                                        sw_sheet_get (sheet, about), "points",
                                        number_words (sheet, points_of (rows)), NULL));
}

static void
add_slope (const SwSheet *sheet, SwFlow *flow, guint number, gboolean key)
{
  g_autoptr (SwResult) result = sw_class_slope (sheet, number);
  g_autoptr (GArray) rows = NULL;

  if (result == NULL)
    {
      sw_flow_text (flow, SW_STYLE_BODY, SW_ROLE_TEXT,
                    sw_sheet_get (sheet, "class.exercise.none"));
      return;
    }
  rows = rows_of_slope (sheet, result, number);
  add_title (sheet, flow, number, rows);
  sw_exercise_given (sheet, flow, result, number);
  set_rows (sheet, flow, rows, key);
}

static void
add_tapes (const SwSheet *sheet, SwFlow *flow, gboolean key)
{
  SwTapedSides sides = sw_class_sides (sheet, FALSE);
  g_autoptr (GArray) rows = rows_of_tapes (sheet, &sides);

  add_title (sheet, flow, SW_SLOPES, rows);
  sw_taped_given (sheet, flow, &sides, key);
  set_rows (sheet, flow, rows, key);
}

static const char *
conversions (const SwSheet *sheet)
{
  return sw_sheet_get (sheet, sheet->draw->style.units == SW_UNITS_US
                                  ? "class.conversions.us"
                                  : "class.conversions.metric");
}

void
sw_page_class_exercises (SwSheet *sheet)
{
  SwFlow *flow = sw_sheet_flow (sheet);

  sw_flow_text (flow, SW_STYLE_BODY, SW_ROLE_TEXT,
                sw_sheet_get (sheet, "class.exercises.how"));
  sw_flow_text (flow, SW_STYLE_BODY, SW_ROLE_TEXT, conversions (sheet));
  for (guint i = 0; i < SW_SLOPES; i++)
    {
      if (i > 0)
        sw_flow_break (flow);
      add_slope (sheet, flow, i, FALSE);
    }
  sw_flow_break (flow);
  add_tapes (sheet, flow, FALSE);
  sw_sheet_add (sheet, sw_sheet_get (sheet, "class.exercises.title"), flow);
}

void
sw_class_exercise_answers (SwSheet *sheet)
{
  SwFlow *flow = sw_sheet_flow (sheet);

  sw_flow_text (flow, SW_STYLE_BODY, SW_ROLE_TEXT, sw_sheet_get (sheet, "class.key.how"));
  sw_class_seed (sheet, flow);
  sw_flow_space (flow, GAP_MM);
  sw_flow_text (flow, SW_STYLE_BODY, SW_ROLE_TEXT,
                sw_sheet_get (sheet, "class.exercises.key"));
  for (guint i = 0; i < SW_SLOPES; i++)
    add_slope (sheet, flow, i, TRUE);
  add_tapes (sheet, flow, TRUE);
  sw_sheet_add (sheet, sw_sheet_get (sheet, "class.key.title"), flow);
}

guint
sw_class_exercise_points (const SwSheet *sheet)
{
  SwTapedSides sides = sw_class_sides (sheet, FALSE);
  g_autoptr (GArray) taped = rows_of_tapes (sheet, &sides);
  guint points = points_of (taped);

  for (guint i = 0; i < SW_SLOPES; i++)
    {
      g_autoptr (SwResult) result = sw_class_slope (sheet, i);
      g_autoptr (GArray) rows = NULL;

      if (result == NULL)
        continue;
      rows = rows_of_slope (sheet, result, i);
      points += points_of (rows);
    }
  return points;
}
