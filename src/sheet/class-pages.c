/* SPDX-License-Identifier: MIT */
#include "class-exercise.h"
#include "class-sheet.h"
#include "class-taped.h"

#define LABEL_MM 34.0
#define NARROW_MM 20.0
#define NOTES_LEAST_MM 32.0
#define NOTE_MM 11.0
#define SECTION_LEAST_MM 50.0
#define SECTION_MOST_MM 110.0
#define DETAIL_MM 44.0
#define GAP_MM 4.0
#define COLUMN_GAP_MM 7.0

/* What a class reads before it works: what it is about, the words, a worked example. */

void
sw_class_seed (const SwSheet *sheet, SwFlow *flow)
{
  sw_flow_text (
      flow, SW_STYLE_SMALL, SW_ROLE_MUTED,
      sw_sheet_fill (sheet, "class.seed", "seed",
                     sw_sheet_format (sheet, "%u", sw_pack_plan_seed (sheet->plan)),
                     "version", sheet->version, "input", sheet->fingerprint, NULL));
}

/* --- front page --- */

static void
add_names (const SwSheet *sheet, SwFlow *flow)
{
  static const SwPackText lines[] = { SW_PACK_TEXT_COURSE, SW_PACK_TEXT_LEVEL,
                                      SW_PACK_TEXT_TRAINER };
  const SwColumn columns[] = { { "", SW_CELL_TEXT, LABEL_MM },
                               { "", SW_CELL_TEXT, 0.0 } };
  SwTable *table =
      sw_table_new (&sheet->pen, SW_STYLE_BODY, columns, G_N_ELEMENTS (columns));

  for (guint i = 0; i < G_N_ELEMENTS (lines); i++)
    sw_table_row (table, sw_sheet_plan_label (sheet, lines[i]),
                  sw_sheet_plain (sheet, sheet->plan->texts[lines[i]]), NULL);
  sw_table_row (table, sw_sheet_get (sheet, "class.name"), "", NULL);
  sw_table_row (table, sw_sheet_get (sheet, "class.date"), "", NULL);
  sw_flow_table (flow, table);
}

/* Items of a list text, which may be markup. */
static void
add_items (const SwSheet *sheet, SwFlow *flow, const char *title, const char *list)
{
  g_auto (GStrv) lines = g_strsplit (sw_sheet_get (sheet, list), "\n", -1);

  sw_flow_heading (flow, sw_sheet_get (sheet, title));
  for (guint i = 0; lines[i] != NULL; i++)
    sw_flow_item (flow, SW_STYLE_BODY, sw_sheet_format (sheet, "%u", i + 1), lines[i]);
}

static void
add_aims (const SwSheet *sheet, SwFlow *flow)
{
  SwFlow *columns[2];

  for (guint i = 0; i < 2; i++)
    columns[i] = sw_flow_new (&sheet->pen, sw_flow_share_mm (flow, COLUMN_GAP_MM, 2));
  add_items (sheet, columns[0], "class.outcomes.title", "class.outcomes");
  add_items (sheet, columns[1], "class.before.title", "class.before");
  add_items (sheet, columns[1], "class.bring.title", "class.bring");
  sw_flow_space (flow, 2.0 * GAP_MM);
  sw_flow_row (flow, COLUMN_GAP_MM, columns, 2);
}

/* Lines of "part|minutes"; when each begins, the trainer writes in. */
static void
add_times (const SwSheet *sheet, SwFlow *flow)
{
  g_auto (GStrv) lines = g_strsplit (sw_sheet_get (sheet, "class.times"), "\n", -1);
  const SwColumn columns[] = {
    { sw_sheet_get (sheet, "class.column.part"), SW_CELL_TEXT, 0.0 },
    { sw_sheet_get (sheet, "class.column.minutes"), SW_CELL_TEXT, NARROW_MM },
    { sw_sheet_get (sheet, "class.column.begins"), SW_CELL_TEXT, NARROW_MM },
  };
  SwTable *table =
      sw_table_new (&sheet->pen, SW_STYLE_BODY, columns, G_N_ELEMENTS (columns));

  sw_flow_heading (flow, sw_sheet_get (sheet, "class.times.title"));
  sw_table_set_ruled (table);
  for (guint i = 0; lines[i] != NULL; i++)
    {
      g_auto (GStrv) cells = g_strsplit (lines[i], "|", 2);

      sw_table_row (table, cells[0], cells[1] != NULL ? cells[1] : "", "", NULL);
    }
  sw_flow_table (flow, table);
}

static void
add_score (const SwSheet *sheet, SwFlow *flow)
{
  const struct
  {
    const char *title;
    guint points;
  } parts[] = {
    { "class.exercises.title", sw_class_exercise_points (sheet) },
    { "class.faults.title", sw_class_fault_points (sheet) },
    { "class.quiz.title", sw_class_quiz_points (sheet) },
    { "class.practice.title", sw_class_practice_points () },
  };
  const SwColumn columns[] = {
    { sw_sheet_get (sheet, "class.column.part"), SW_CELL_TEXT, 0.0 },
    { sw_sheet_get (sheet, "class.column.given"), SW_CELL_TEXT, NARROW_MM },
    { sw_sheet_get (sheet, "class.column.points"), SW_CELL_TEXT, NARROW_MM },
  };
  SwTable *table =
      sw_table_new (&sheet->pen, SW_STYLE_BODY, columns, G_N_ELEMENTS (columns));
  guint sum = 0;

  sw_flow_heading (flow, sw_sheet_get (sheet, "class.score.title"));
  sw_table_set_ruled (table);
  for (guint i = 0; i < G_N_ELEMENTS (parts); i++)
    {
      sum += parts[i].points;
      sw_table_row (table, sw_sheet_get (sheet, parts[i].title), "",
                    sw_sheet_format (sheet, "/ %u", parts[i].points), NULL);
    }
  sw_table_total (table, sw_sheet_get (sheet, "class.points.sum"), "",
                  sw_sheet_format (sheet, "/ %u", sum), NULL);
  sw_flow_table (flow, table);
}

static void
add_times_and_score (const SwSheet *sheet, SwFlow *flow)
{
  SwFlow *columns[2];

  for (guint i = 0; i < 2; i++)
    columns[i] = sw_flow_new (&sheet->pen, sw_flow_share_mm (flow, COLUMN_GAP_MM, 2));
  add_times (sheet, columns[0]);
  add_score (sheet, columns[1]);
  sw_flow_space (flow, 2.0 * GAP_MM);
  sw_flow_row (flow, COLUMN_GAP_MM, columns, 2);
}

/* Lines to write on, as many as the page has room for. */
static void
add_notes (const SwSheet *sheet, SwFlow *flow)
{
  double body_mm = sw_sheet_body_height_mm (sheet);

  if (sw_flow_room_mm (flow, body_mm) < NOTES_LEAST_MM * sheet->pen.scale)
    return;
  sw_flow_heading (flow, sw_sheet_get (sheet, "class.notes"));
  while (sw_flow_room_mm (flow, body_mm) > NOTE_MM * sheet->pen.scale)
    sw_flow_write_in (flow, "");
}

/* The slope has findings that stop work: a class may still learn on its drawings. */
static void
add_stop (const SwSheet *sheet, SwFlow *flow)
{
  SwFlow *inner;

  if (sheet->stops == 0)
    return;
  inner = sw_flow_new (&sheet->pen, sw_flow_box_width_mm (sw_flow_width_mm (flow)));
  sw_flow_text (inner, SW_STYLE_BODY, SW_ROLE_STOP, sw_sheet_get (sheet, "class.stop"));
  sw_flow_box (flow, SW_ROLE_STOP, inner);
  sw_flow_space (flow, GAP_MM);
}

void
sw_page_class_front (SwSheet *sheet)
{
  SwFlow *flow = sw_sheet_flow (sheet);

  sw_sheet_review (sheet, flow);
  add_stop (sheet, flow);
  add_names (sheet, flow);
  add_aims (sheet, flow);
  add_times_and_score (sheet, flow);
  sw_flow_space (flow, GAP_MM);
  sw_class_seed (sheet, flow);
  add_notes (sheet, flow);
  sw_sheet_add (sheet, sw_sheet_get (sheet, "class.front.title"), flow);
}

/* --- the words --- */

static SwFlow *
detail_column (const SwSheet *sheet, double width_mm, SwDetail detail)
{
  SwFlow *column = sw_flow_new (&sheet->pen, width_mm);
  SwFigure *figure = sw_draw_detail (sheet->result, 0, detail, width_mm,
                                     DETAIL_MM * sheet->pen.scale, sheet->draw);

  if (figure != NULL)
    sw_flow_drawing (column, figure);
  return column;
}

/* Where each word is on this slope: what is buried, and what lies on what. */
static void
add_details (const SwSheet *sheet, SwFlow *flow)
{
  static const SwDetail details[] = { SW_DETAIL_KEY_TRENCH, SW_DETAIL_TOE,
                                      SW_DETAIL_SIDE_LAP,   SW_DETAIL_END_LAP,
                                      SW_DETAIL_SLOT,       SW_DETAIL_PIN };
  double width_mm = sw_flow_share_mm (flow, COLUMN_GAP_MM, 2);
  SwFlow *columns[2];
  guint filled = 0, shown = 0;

  for (guint i = 0; i < G_N_ELEMENTS (details) && shown < 4; i++)
    {
      SwFlow *column = detail_column (sheet, width_mm, details[i]);

      if (sw_flow_is_empty (column))
        {
          sw_flow_free (column);
          continue;
        }
      shown++;
      columns[filled++] = column;
      if (filled < 2)
        continue;
      sw_flow_space (flow, GAP_MM);
      sw_flow_row (flow, COLUMN_GAP_MM, columns, 2);
      filled = 0;
    }
  if (filled > 0)
    sw_flow_row (flow, COLUMN_GAP_MM, columns, filled);
}

static void
add_glossary (const SwSheet *sheet, SwFlow *flow)
{
  g_auto (GStrv) lines = g_strsplit (sw_sheet_get (sheet, "class.words"), "\n", -1);
  guint count = g_strv_length (lines);
  SwFlow *columns[2];

  sw_flow_heading (flow, sw_sheet_get (sheet, "class.words.title"));
  for (guint i = 0; i < 2; i++)
    columns[i] = sw_flow_new (&sheet->pen, sw_flow_share_mm (flow, COLUMN_GAP_MM, 2));
  for (guint i = 0; i < count; i++)
    {
      SwFlow *column = columns[i < (count + 1) / 2 ? 0 : 1];

      sw_flow_text (column, SW_STYLE_SMALL, SW_ROLE_TEXT, lines[i]);
      sw_flow_space (column, 1.0);
    }
  sw_flow_row (flow, COLUMN_GAP_MM, columns, 2);
}

/* The section takes the height that details and glossary leave of one page. */
static double
section_mm (const SwSheet *sheet)
{
  g_autoptr (SwFlow) rest = sw_sheet_flow (sheet);

  add_details (sheet, rest);
  add_glossary (sheet, rest);
  return CLAMP (sw_sheet_body_height_mm (sheet) - sw_flow_height_mm (rest) - GAP_MM,
                SECTION_LEAST_MM * sheet->pen.scale, SECTION_MOST_MM * sheet->pen.scale);
}

void
sw_page_class_words (SwSheet *sheet)
{
  SwFlow *flow = sw_sheet_flow (sheet);

  sw_sheet_section (sheet, flow, 0, section_mm (sheet));
  add_details (sheet, flow);
  add_glossary (sheet, flow);
  sw_sheet_add (sheet, sw_sheet_get (sheet, "class.section.title"), flow);
}

/* --- worked example --- */

static void
add_step (const SwSheet *sheet, SwFlow *flow, guint number, const char *code,
          SwAnswerWords words)
{
  sw_flow_space (flow, 2.0);
  sw_flow_item (
      flow, SW_STYLE_BODY, sw_sheet_format (sheet, "%u", number),
      sw_sheet_fill (
          sheet, "class.example.ask", "ask",
          sw_sheet_get (sheet, sw_sheet_format (sheet, "class.ask.%s", code)), "rule",
          sw_sheet_get (sheet, sw_sheet_format (sheet, "class.rule.%s", code)), NULL));
  sw_flow_tie (flow);
  sw_flow_item (flow, SW_STYLE_BODY, "",
                sw_sheet_fill (sheet, "class.example.so", "how", words.how, "answer",
                               words.answer, NULL));
}

/* A face taped with both diagonals, worked out likewise. */
static void
add_taped (const SwSheet *sheet, SwFlow *flow)
{
  SwTapedSides sides = sw_class_sides (sheet, TRUE);

  sw_flow_heading (flow, sw_sheet_get (sheet, "class.example.taped"));
  sw_taped_given (sheet, flow, &sides, FALSE);
  for (int i = 0; i < SW_TAPED_ASK_COUNT; i++)
    {
      SwAnswerWords words = sw_taped_answer (sheet, &sides, (SwTapedAsk) i);

      if (words.answer != NULL)
        add_step (sheet, flow, i + 1, sw_taped_terms ((SwTapedAsk) i)->code, words);
    }
}

/* The same questions as in the exercises, answered step by step: for this slope where it
 * is a plain one, else for another. */
void
sw_page_class_example (SwSheet *sheet)
{
  SwFlow *flow = sw_sheet_flow (sheet);
  SwResult *own = sw_class_own_slope (sheet);
  g_autoptr (SwResult) result =
      own != NULL ? own : sw_class_slope (sheet, SW_SLOPE_EXAMPLE);
  guint number = 0;

  sw_flow_text (flow, SW_STYLE_BODY, SW_ROLE_TEXT,
                own != NULL ? sw_sheet_fill (sheet, "class.example.how", "place",
                                             sw_sheet_face (sheet, 0), NULL)
                            : sw_sheet_get (sheet, "class.example.other"));
  sw_flow_space (flow, 1.5);
  if (result != NULL)
    sw_exercise_given (sheet, flow, result, SW_SLOPE_EXAMPLE);
  else
    sw_flow_text (flow, SW_STYLE_BODY, SW_ROLE_TEXT,
                  sw_sheet_get (sheet, "class.exercise.none"));
  for (int ask = 0; result != NULL && ask < SW_ASK_COUNT; ask++)
    {
      SwAnswerWords words = sw_exercise_answer (sheet, result, (SwAsk) ask);

      if (words.answer != NULL)
        add_step (sheet, flow, ++number, sw_ask_terms ((SwAsk) ask)->code, words);
    }
  add_taped (sheet, flow);
  sw_sheet_add (sheet, sw_sheet_get (sheet, "class.example.title"), flow);
}

/* --- answers --- */

void
sw_page_class_key (SwSheet *sheet)
{
  sw_class_exercise_answers (sheet);
  sw_class_fault_answers (sheet);
  sw_class_quiz_answers (sheet);
}
