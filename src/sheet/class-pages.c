/* SPDX-License-Identifier: MIT */
#include "class-quiz.h"

#define LABEL_MM 30.0
#define NUMBER_MM 9.0
#define BLANK_MM 48.0
#define ANSWER_MM 30.0
#define ACCEPT_MM 34.0
#define ROW_MM 8.5
#define WORKING_ROW_MM 14.0 /* room to work in */
#define SECTION_LEAST_MM 45.0
#define SECTION_MOST_MM 110.0
#define GAP_MM 4.0
#define PICTURES 6 /* shown of the SW_FAULT_COUNT kinds */
#define LEAST_WRONG 3
#define FAULT_STREAM 55 /* keeps their dice apart from those of slopes and quiz */

/* The handout of a class, and the answers to it, which are a document of their own. */

/* What both sheets print, so that they find each other again. */
static void
add_seed (const SwSheet *sheet, SwFlow *flow)
{
  sw_flow_text (
      flow, SW_STYLE_SMALL, SW_ROLE_MUTED,
      sw_sheet_fill (sheet, "class.seed", "seed",
                     sw_sheet_format (sheet, "%u", sw_pack_plan_seed (sheet->plan)),
                     "input", sheet->fingerprint, NULL));
}

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

static void
add_items (const SwSheet *sheet, SwFlow *flow, const char *title, const char *list)
{
  g_auto (GStrv) lines = g_strsplit (sw_sheet_get (sheet, list), "\n", -1);

  sw_flow_heading (flow, sw_sheet_get (sheet, title));
  for (guint i = 0; lines[i] != NULL; i++)
    sw_flow_item (flow, SW_STYLE_BODY, sw_sheet_format (sheet, "%u", i + 1),
                  sw_sheet_plain (sheet, lines[i]));
}

/* The section takes the height that the rest of the page leaves. */
static void
add_section (const SwSheet *sheet, SwFlow *flow)
{
  double room_mm = sw_flow_room_mm (flow, sw_sheet_body_height_mm (sheet)) - GAP_MM;

  sw_sheet_section (sheet, flow, 0,
                    CLAMP (room_mm, SECTION_LEAST_MM * sheet->pen.scale,
                           SECTION_MOST_MM * sheet->pen.scale));
}

void
sw_page_class_front (SwSheet *sheet)
{
  SwFlow *flow = sw_sheet_flow (sheet);

  sw_sheet_review (sheet, flow);
  add_names (sheet, flow);
  add_items (sheet, flow, "class.outcomes.title", "class.outcomes");
  add_items (sheet, flow, "class.bring.title", "class.bring");
  add_items (sheet, flow, "class.words.title", "class.words");
  add_seed (sheet, flow);
  sw_flow_heading (flow, sw_sheet_get (sheet, "class.section.title"));
  add_section (sheet, flow);
  sw_sheet_add (sheet, sw_sheet_get (sheet, "class.front.title"), flow);
}

/* A slope whose answers are those of one plain rectangle. */
static gboolean
is_example (const SwSheet *sheet)
{
  const SwFace *face = sheet->layout->faces[0].face;

  return sheet->layout->n_faces == 1 && sheet->layout->faces[0].n_tiers == 1
         && face->crest_form == SW_CREST_STRAIGHT && face->n_further == 0
         && face->obstacles->len == 0 && face->toe == face->crest + 1
         && sheet->job->stock->len == 0 && sheet->tally->joints == 0;
}

static void
add_step (const SwSheet *sheet, SwFlow *flow, guint number, SwAsk ask,
          SwAnswerWords words)
{
  const char *code = sw_ask_code (ask);

  sw_flow_space (flow, 2.5);
  sw_flow_item (
      flow, SW_STYLE_BODY, sw_sheet_format (sheet, "%u", number),
      sw_sheet_fill (
          sheet, "class.example.ask", "ask",
          sw_sheet_get (sheet, sw_sheet_format (sheet, "class.ask.%s", code)), "rule",
          sw_sheet_get (sheet, sw_sheet_format (sheet, "class.rule.%s", code)), NULL));
  sw_flow_tie (flow);
  sw_flow_text (flow, SW_STYLE_BODY, SW_ROLE_TEXT,
                sw_sheet_fill (sheet, "class.example.so", "how", words.how, "answer",
                               words.answer, NULL));
}

/* The same questions as in the exercises, answered step by step: for this slope where it
 * is a plain one, else for another. */
void
sw_page_class_example (SwSheet *sheet)
{
  SwFlow *flow = sw_sheet_flow (sheet);
  gboolean own = is_example (sheet);
  g_autoptr (SwResult) result =
      own ? sw_result_ref (sheet->result) : sw_exercise_new (sheet, SW_EXERCISES);
  guint number = 0;

  sw_flow_text (flow, SW_STYLE_BODY, SW_ROLE_TEXT,
                own ? sw_sheet_fill (sheet, "class.example.how", "place",
                                     sw_sheet_face (sheet, 0), NULL)
                    : sw_sheet_get (sheet, "class.example.other"));
  if (result != NULL && !own)
    sw_exercise_given (sheet, flow, result);
  for (int ask = 0; result != NULL && ask < SW_ASK_COUNT; ask++)
    {
      SwAnswerWords words = sw_exercise_answer (sheet, result, (SwAsk) ask);

      if (words.answer != NULL)
        add_step (sheet, flow, ++number, (SwAsk) ask, words);
    }
  sw_sheet_add (sheet, sw_sheet_get (sheet, "class.example.title"), flow);
}

static SwTable *
question_table (const SwSheet *sheet)
{
  const SwColumn columns[] = {
    { sw_sheet_get (sheet, "class.column.number"), SW_CELL_TEXT, NUMBER_MM },
    { sw_sheet_get (sheet, "class.column.question"), SW_CELL_TEXT, 0.0 },
    { sw_sheet_get (sheet, "class.column.working"), SW_CELL_TEXT, BLANK_MM },
    { sw_sheet_get (sheet, "class.column.answer"), SW_CELL_TEXT, ANSWER_MM },
  };
  SwTable *table =
      sw_table_new (&sheet->pen, SW_STYLE_BODY, columns, G_N_ELEMENTS (columns));

  sw_table_set_ruled (table);
  sw_table_set_row_mm (table, WORKING_ROW_MM);
  return table;
}

static SwTable *
answer_table (const SwSheet *sheet)
{
  const SwColumn columns[] = {
    { sw_sheet_get (sheet, "class.column.number"), SW_CELL_TEXT, NUMBER_MM },
    { sw_sheet_get (sheet, "class.column.question"), SW_CELL_TEXT, 46.0 },
    { sw_sheet_get (sheet, "class.column.answer"), SW_CELL_TEXT, ANSWER_MM },
    { sw_sheet_get (sheet, "class.column.accept"), SW_CELL_TEXT, ACCEPT_MM },
    { sw_sheet_get (sheet, "class.column.how"), SW_CELL_TEXT, 0.0 },
  };

  return sw_table_new (&sheet->pen, SW_STYLE_SMALL, columns, G_N_ELEMENTS (columns));
}

static void
add_exercise (const SwSheet *sheet, SwFlow *flow, guint number, gboolean key)
{
  g_autoptr (SwResult) result = sw_exercise_new (sheet, number);
  SwTable *table = key ? answer_table (sheet) : question_table (sheet);
  guint row = 0;

  sw_flow_heading (flow, sw_sheet_fill (sheet, "class.exercise.title", "number",
                                        sw_sheet_format (sheet, "%u", number + 1), NULL));
  if (result == NULL)
    {
      sw_flow_text (flow, SW_STYLE_BODY, SW_ROLE_TEXT,
                    sw_sheet_get (sheet, "class.exercise.none"));
      sw_table_free (table);
      return;
    }
  sw_exercise_given (sheet, flow, result);
  sw_flow_tie (flow);
  sw_flow_space (flow, 1.5);
  for (int ask = 0; ask < SW_ASK_COUNT; ask++)
    {
      SwAnswerWords words = sw_exercise_answer (sheet, result, (SwAsk) ask);
      const char *at = sw_sheet_format (sheet, "%u", ++row);
      const char *question = sw_sheet_get (
          sheet, sw_sheet_format (sheet, "class.ask.%s", sw_ask_code ((SwAsk) ask)));

      if (words.answer == NULL)
        row--;
      else if (key)
        sw_table_row (table, at, question, sw_sheet_format (sheet, "*%s*", words.answer),
                      words.accept, words.how, NULL);
      else
        sw_table_row (table, at, question, "", "", NULL);
    }
  sw_flow_table (flow, table);
}

static void
add_exercises (SwSheet *sheet, gboolean key)
{
  SwFlow *flow = sw_sheet_flow (sheet);

  if (key)
    {
      sw_flow_text (flow, SW_STYLE_BODY, SW_ROLE_TEXT,
                    sw_sheet_get (sheet, "class.key.how"));
      add_seed (sheet, flow);
      sw_flow_space (flow, GAP_MM);
    }
  sw_flow_text (
      flow, SW_STYLE_BODY, SW_ROLE_TEXT,
      sw_sheet_get (sheet, key ? "class.exercises.key" : "class.exercises.how"));
  for (guint i = 0; i < SW_EXERCISES; i++)
    {
      if (i > 0 && !key)
        sw_flow_break (flow);
      add_exercise (sheet, flow, i, key);
    }
  sw_sheet_add (sheet,
                sw_sheet_get (sheet, key ? "class.key.title" : "class.exercises.title"),
                flow);
}

void
sw_page_class_exercises (SwSheet *sheet)
{
  add_exercises (sheet, FALSE);
}

/* --- pictures with faults --- */

typedef struct
{
  SwFault fault;
  gboolean wrong;
} Picture;

/* Some are as they should be: who finds a fault in each has guessed. */
static void
choose_pictures (const SwSheet *sheet, Picture pictures[PICTURES])
{
  SwDice dice = sw_class_dice (sheet, FAULT_STREAM);
  guint kinds[SW_FAULT_COUNT], places[PICTURES];
  guint wrong = LEAST_WRONG + sw_dice_throw (&dice, PICTURES - LEAST_WRONG);

  for (guint i = 0; i < SW_FAULT_COUNT; i++)
    kinds[i] = i;
  for (guint i = 0; i < PICTURES; i++)
    places[i] = i;
  sw_dice_shuffle (&dice, kinds, SW_FAULT_COUNT);
  sw_dice_shuffle (&dice, places, PICTURES);
  for (guint i = 0; i < PICTURES; i++)
    pictures[places[i]] = (Picture){ (SwFault) kinds[i], i < wrong };
}

static const char *
picture_mark (const SwSheet *sheet, guint index)
{
  return sw_sheet_format (sheet, "%c", 'A' + (char) index);
}

/* Two side by side, each with its letter. */
static void
add_pictures (const SwSheet *sheet, SwFlow *flow, const Picture *pictures)
{
  for (guint i = 0; i < PICTURES; i += 2)
    {
      double width_mm = sw_flow_share_mm (flow, GAP_MM, 2);
      SwFlow *columns[2];

      for (guint k = 0; k < 2; k++)
        {
          const Picture *picture = &pictures[i + k];

          columns[k] = sw_flow_new (&sheet->pen, width_mm);
          sw_flow_text (
              columns[k], SW_STYLE_BODY, SW_ROLE_TEXT,
              sw_sheet_fill (
                  sheet, "class.picture", "mark", picture_mark (sheet, i + k), "shows",
                  sw_sheet_get (sheet, sw_sheet_format (sheet, "fault.%s",
                                                        sw_fault_code (picture->fault))),
                  NULL));
          sw_flow_tie (columns[k]);
          sw_flow_drawing (columns[k], sw_draw_fault (picture->fault, picture->wrong));
        }
      sw_flow_space (flow, GAP_MM);
      sw_flow_row (flow, GAP_MM, columns, 2);
    }
}

static void
add_picture_rows (const SwSheet *sheet, SwFlow *flow, const Picture *pictures,
                  gboolean key)
{
  const SwColumn columns[] = {
    { sw_sheet_get (sheet, "class.column.picture"), SW_CELL_TEXT, 16.0 },
    { sw_sheet_get (sheet, "class.column.right-wrong"), SW_CELL_TEXT, 34.0 },
    { sw_sheet_get (sheet, "class.column.fault"), SW_CELL_TEXT, 0.0 },
  };
  SwTable *table =
      sw_table_new (&sheet->pen, SW_STYLE_BODY, columns, G_N_ELEMENTS (columns));

  sw_table_set_ruled (table);
  sw_table_set_row_mm (table, ROW_MM);
  for (guint i = 0; i < PICTURES; i++)
    {
      const char *code = sw_fault_code (pictures[i].fault);
      gboolean wrong = pictures[i].wrong;

      sw_table_row (
          table, picture_mark (sheet, i),
          key ? sw_sheet_get (sheet, wrong ? "class.wrong" : "class.right-done") : "",
          key ? sw_sheet_get (
              sheet,
              sw_sheet_format (sheet, wrong ? "fault.%s.wrong" : "fault.%s.right", code))
              : "",
          NULL);
    }
  sw_flow_space (flow, GAP_MM);
  sw_flow_table (flow, table);
}

static void
add_faults (SwSheet *sheet, gboolean key)
{
  SwFlow *flow = sw_sheet_flow (sheet);
  Picture pictures[PICTURES];

  choose_pictures (sheet, pictures);
  sw_flow_text (flow, SW_STYLE_BODY, SW_ROLE_TEXT,
                sw_sheet_get (sheet, key ? "class.faults.key" : "class.faults.how"));
  add_pictures (sheet, flow, pictures);
  add_picture_rows (sheet, flow, pictures, key);
  sw_sheet_add (sheet, sw_sheet_get (sheet, "class.faults.title"), flow);
}

void
sw_page_class_faults (SwSheet *sheet)
{
  add_faults (sheet, FALSE);
}

/* --- quiz --- */

static void
add_quiz_item (const SwSheet *sheet, SwFlow *flow, guint number, const SwQuizItem *item,
               gboolean key)
{
  sw_flow_space (flow, 2.0);
  sw_flow_item (flow, SW_STYLE_BODY, sw_sheet_format (sheet, "%u", number),
                sw_sheet_format (sheet, "*%s*", item->ask));
  for (guint i = 0; i < SW_QUIZ_CHOICES; i++)
    {
      sw_flow_tie (flow);
      sw_flow_item (flow, SW_STYLE_BODY, sw_sheet_format (sheet, "%c", 'a' + (char) i),
                    key && i == item->right
                        ? sw_sheet_format (sheet, "*%s*", item->choices[i])
                        : item->choices[i]);
    }
  if (!key)
    return;
  sw_flow_tie (flow);
  sw_flow_text (flow, SW_STYLE_SMALL, SW_ROLE_TEXT,
                sw_sheet_fill (sheet, "class.quiz.because", "letter",
                               sw_sheet_format (sheet, "%c", 'a' + (char) item->right),
                               "why", item->why, NULL));
}

static void
add_quiz (SwSheet *sheet, gboolean key)
{
  SwFlow *flow = sw_sheet_flow (sheet);
  SwQuizItem items[SW_QUIZ_ITEMS];

  sw_quiz (sheet, items);
  sw_flow_text (flow, SW_STYLE_BODY, SW_ROLE_TEXT,
                sw_sheet_get (sheet, key ? "class.quiz.key" : "class.quiz.how"));
  for (guint i = 0; i < SW_QUIZ_ITEMS && items[i].ask != NULL; i++)
    add_quiz_item (sheet, flow, i + 1, &items[i], key);
  sw_sheet_add (sheet, sw_sheet_get (sheet, "class.quiz.title"), flow);
}

void
sw_page_class_quiz (SwSheet *sheet)
{
  add_quiz (sheet, FALSE);
}

/* What a trainer looks at on the practice slope, and what the class thought of it. */
void
sw_page_class_practice (SwSheet *sheet)
{
  static const char *const codes[] = { "trench", "contact", "lap",  "pins",
                                       "toe",    "tidy",    "brief" };
  const SwColumn columns[] = {
    { sw_sheet_get (sheet, "class.column.look-at"), SW_CELL_TEXT, 0.0 },
    { sw_sheet_get (sheet, "class.column.points"), SW_CELL_TEXT, 24.0 },
    { sw_sheet_get (sheet, "class.column.given"), SW_CELL_TEXT, 24.0 },
  };
  SwFlow *flow = sw_sheet_flow (sheet);
  SwTable *table =
      sw_table_new (&sheet->pen, SW_STYLE_BODY, columns, G_N_ELEMENTS (columns));

  sw_table_set_ruled (table);
  sw_table_set_row_mm (table, ROW_MM);
  for (guint i = 0; i < G_N_ELEMENTS (codes); i++)
    sw_table_row (
        table, sw_sheet_get (sheet, sw_sheet_format (sheet, "class.score.%s", codes[i])),
        "0 · 1 · 2", "", NULL);
  sw_flow_text (flow, SW_STYLE_BODY, SW_ROLE_TEXT,
                sw_sheet_get (sheet, "class.practice.how"));
  sw_flow_tie (flow);
  sw_flow_space (flow, 1.5);
  sw_flow_table (flow, table);
  sw_flow_heading (flow, sw_sheet_get (sheet, "class.feedback.title"));
  sw_flow_write_in (flow, sw_sheet_get (sheet, "class.feedback.clear"));
  sw_flow_write_in (flow, sw_sheet_get (sheet, "class.feedback.unclear"));
  sw_flow_write_in (flow, sw_sheet_get (sheet, "class.feedback.use"));
  sw_sheet_add (sheet, sw_sheet_get (sheet, "class.practice.title"), flow);
}

/* --- answers --- */

void
sw_page_class_key (SwSheet *sheet)
{
  add_exercises (sheet, TRUE);
  add_faults (sheet, TRUE);
  add_quiz (sheet, TRUE);
}
