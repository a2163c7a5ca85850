/* SPDX-License-Identifier: MIT */
#include "class-sheet.h"
#include "class-slope.h"

#define ROW_MM 8.5
#define FOUND_ROW_MM 13.0
#define GAP_MM 4.0
#define PICTURES 6 /* shown of the SW_FAULT_COUNT kinds */
#define LEAST_WRONG 3
#define FAULT_STREAM 55 /* keeps their dice apart from those of slopes and quiz */
#define SEEDED 5        /* faults in the drawing of the slope */
#define SEED_STREAM 56
#define LEAST_RUNS 4
#define LAID_LEAST_MM 70.0
#define LAID_MOST_MM 130.0
#define TABLE_HEAD_MM 12.0
#define PICTURE_POINTS 1
#define PICTURE_SHARE (34.0 / 52.0) /* of its width, as high */
#define PICTURE_LEAST_MM 44.0
#define PICTURE_HEAD_MM 11.0 /* its letter and words, which may take two lines */
#define PICTURE_ROW_MM 10.5  /* in the answers, where a cell has two lines */
#define SEEDED_POINTS 2

/* Faults to find: in this slope as somebody has laid it, and in six pictures. */

/* --- this slope, laid with faults --- */

typedef struct
{
  SwResult *result; /* owned */
  gboolean own;     /* the job's, not the one of the worked example */
  SwSeededFault faults[SEEDED];
  guint n_faults;
} Laid;

/* Takes the first of @places, in its order, that the fault can be at; FALSE if none. */
static gboolean
take_place (const SwResult *result, SwLaidFault fault, GArray *places,
            SwSeededFault *seeded)
{
  for (guint i = 0; i < places->len; i++)
    {
      *seeded = (SwSeededFault){ fault, g_array_index (places, guint, i) };
      if (!sw_laid_fault_fits (result, 0, seeded))
        continue;
      g_array_remove_index (places, i);
      return TRUE;
    }
  return FALSE;
}

static GArray *
shuffled (SwDice *dice, guint count)
{
  GArray *numbers = g_array_sized_new (FALSE, FALSE, sizeof (guint), count);

  g_array_set_size (numbers, count);
  sw_dice_order (dice, (guint *) (void *) numbers->data, count);
  return numbers;
}

/* Each in a run or a lap of its own. */
static void
seed_faults (const SwSheet *sheet, Laid *laid)
{
  SwDice dice = sw_class_dice (sheet, SEED_STREAM);
  guint n_runs = sw_laid_runs (laid->result, 0);
  g_autoptr (GArray) kinds = shuffled (&dice, SW_LAID_FAULT_COUNT);
  g_autoptr (GArray) runs = shuffled (&dice, n_runs);
  g_autoptr (GArray) laps = shuffled (&dice, n_runs - 1);

  for (guint i = 0; i < kinds->len && laid->n_faults < SEEDED; i++)
    {
      SwLaidFault fault = (SwLaidFault) g_array_index (kinds, guint, i);
      GArray *places = sw_laid_fault_is_of_lap (fault) ? laps : runs;

      if (take_place (laid->result, fault, places, &laid->faults[laid->n_faults]))
        laid->n_faults++;
    }
}

/* FALSE where neither this slope nor another can be shown so. */
static gboolean
lay (const SwSheet *sheet, Laid *laid)
{
  *laid = (Laid){ .own = sw_laid_runs (sheet->result, 0) >= LEAST_RUNS };
  laid->result = laid->own ? sw_result_ref ((SwResult *) sheet->result)
                           : sw_class_slope (sheet, SW_SLOPE_EXAMPLE);
  if (laid->result == NULL || sw_laid_runs (laid->result, 0) < 2)
    return FALSE;
  seed_faults (sheet, laid);
  return TRUE;
}

static const char *
number_words (const SwSheet *sheet, guint number)
{
  return sw_sheet_format (sheet, "%u", number);
}

static const char *
small (const SwSheet *sheet, const Laid *laid, SwPracticeValue value)
{
  return sw_sheet_limit (sheet, sw_practice_get (laid->result->layout->practice, value),
                         sw_practice_limit (value));
}

static void
say (const SwSheet *sheet, SwFlow *flow, const char *words)
{
  sw_flow_text (flow, SW_STYLE_BODY, SW_ROLE_TEXT, words);
}

/* What the drawing is held against. */
static void
add_rules (const SwSheet *sheet, SwFlow *flow, const Laid *laid)
{
  const SwLayout *layout = laid->result->layout;
  static const char *const toes[] = {
    [SW_TOE_TRENCH] = "class.laid.toe-trench",
    [SW_TOE_FOLD] = "class.laid.toe-fold",
    [SW_TOE_ROW] = "class.laid.toe-row",
  };

  say (sheet, flow,
       sw_sheet_fill (sheet, "class.laid.rules", "spacing",
                      small (sheet, laid, SW_PRACTICE_TRENCH_PIN_M), "lap",
                      small (sheet, laid, SW_PRACTICE_SIDE_LAP_M), "lap_spacing",
                      small (sheet, laid, SW_PRACTICE_SIDE_LAP_PIN_M), NULL));
  say (sheet, flow, sw_sheet_get (sheet, toes[layout->practice->toe_kind]));
  if (sw_laid_fault_applies (laid->result, 0, SW_LAID_SLOT_MISSING))
    say (sheet, flow, sw_sheet_get (sheet, "class.laid.slots"));
  if (sw_laid_fault_applies (laid->result, 0, SW_LAID_JOINTS_IN_LINE))
    say (sheet, flow,
         sw_sheet_fill (sheet, "class.laid.joints", "stagger",
                        sw_sheet_quantity (sheet,
                                           sw_practice_get (layout->practice,
                                                            SW_PRACTICE_JOINT_STAGGER_M),
                                           SW_UNIT_M),
                        NULL));
}

/* The drawing takes the height that the rows to write in leave of the page; as high in the
 * answers, so that one can be held against the other. */
static double
drawing_mm (const SwSheet *sheet, const SwFlow *flow, const Laid *laid)
{
  double scale = sheet->pen.scale;
  double rows_mm = TABLE_HEAD_MM + FOUND_ROW_MM * laid->n_faults + 2.0 * GAP_MM;

  return CLAMP (sw_flow_room_mm (flow, sw_sheet_body_height_mm (sheet)) - rows_mm * scale,
                LAID_LEAST_MM * scale, LAID_MOST_MM * scale);
}

static void
add_drawing (const SwSheet *sheet, SwFlow *flow, const Laid *laid, gboolean key)
{
  SwFigure *figure =
      sw_draw_laid (laid->result, 0, laid->faults, laid->n_faults, key,
                    sw_flow_width_mm (flow), drawing_mm (sheet, flow, laid), sheet->draw);

  figure->title = g_strdup (sw_sheet_get (sheet, "class.laid.drawing"));
  sw_flow_tie (flow);
  sw_flow_space (flow, GAP_MM);
  sw_flow_drawing (flow, figure);
}

/* "run 3", or "lap of runs 3 and 4". */
static const char *
place_words (const SwSheet *sheet, const SwSeededFault *fault)
{
  return sw_sheet_fill (sheet,
                        sw_laid_fault_is_of_lap (fault->fault) ? "class.laid.at-lap"
                                                               : "class.laid.at-run",
                        "run", number_words (sheet, fault->place + 1), "next",
                        number_words (sheet, fault->place + 2), NULL);
}

static void
add_found (const SwSheet *sheet, SwFlow *flow, const Laid *laid, gboolean key)
{
  const SwColumn columns[] = {
    { sw_sheet_get (sheet, "class.column.number"), SW_CELL_TEXT, 9.0 },
    { sw_sheet_get (sheet, "class.column.where"), SW_CELL_TEXT, 36.0 },
    { sw_sheet_get (sheet, "class.column.fault"), SW_CELL_TEXT, 0.0 },
    { sw_sheet_get (sheet, "class.column.points"), SW_CELL_TEXT, 15.0 },
  };
  SwTable *table =
      sw_table_new (&sheet->pen, SW_STYLE_BODY, columns, G_N_ELEMENTS (columns));

  sw_table_set_ruled (table);
  if (!key)
    sw_table_set_row_mm (table, FOUND_ROW_MM);
  for (guint i = 0; i < laid->n_faults; i++)
    {
      const SwSeededFault *fault = &laid->faults[i];
      const char *what =
          sw_sheet_format (sheet, "laid-fault.%s", sw_laid_fault_code (fault->fault));

      sw_table_row (table, number_words (sheet, i + 1),
                    key ? place_words (sheet, fault) : "",
                    key ? sw_sheet_get (sheet, what) : "",
                    sw_sheet_format (sheet, key ? "%u" : "/ %u", SEEDED_POINTS), NULL);
    }
  sw_flow_space (flow, GAP_MM);
  sw_flow_table (flow, table);
}

static void
add_laid (const SwSheet *sheet, SwFlow *flow, gboolean key)
{
  Laid laid;

  if (!lay (sheet, &laid))
    {
      g_clear_pointer (&laid.result, sw_result_unref);
      return;
    }
  sw_flow_heading (flow, sw_sheet_get (sheet, "class.laid.title"));
  say (sheet, flow,
       sw_sheet_fill (sheet, laid.own ? "class.laid.own" : "class.laid.other", "place",
                      laid.own ? sw_sheet_place (sheet, 0, 0) : "", "shown",
                      number_words (sheet, sw_laid_runs (laid.result, 0)), "runs",
                      number_words (sheet, laid.result->layout->faces[0].tiers[0].n_runs),
                      "faults", number_words (sheet, laid.n_faults), NULL));
  add_rules (sheet, flow, &laid);
  add_drawing (sheet, flow, &laid, key);
  add_found (sheet, flow, &laid, key);
  sw_result_unref (laid.result);
}

/* --- pictures --- */

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

  sw_dice_order (&dice, kinds, SW_FAULT_COUNT);
  sw_dice_order (&dice, places, PICTURES);
  for (guint i = 0; i < PICTURES; i++)
    pictures[places[i]] = (Picture){ (SwFault) kinds[i], i < wrong };
}

static const char *
picture_mark (const SwSheet *sheet, guint index)
{
  return sw_sheet_format (sheet, "%c", 'A' + (char) index);
}

/* Who listens hears what is drawn, never whether it is right, and judges like who looks. */
static SwFigure *
picture_drawing (const SwSheet *sheet, const Picture *picture, double width_mm)
{
  SwFigure *figure = sw_draw_fault (picture->fault, picture->wrong, width_mm);

  figure->title = g_strdup (sw_sheet_get (
      sheet, sw_sheet_format (sheet, "fault.%s.%s.drawn", sw_fault_code (picture->fault),
                              picture->wrong ? "wrong" : "right")));
  return figure;
}

/* Width of a picture: three rows of them leave the height that the table below needs. */
static double
picture_mm (const SwSheet *sheet, const SwFlow *flow)
{
  double scale = sheet->pen.scale;
  double room_mm = sw_flow_room_mm (flow, sw_sheet_body_height_mm (sheet));
  double rest_mm = (TABLE_HEAD_MM + PICTURES * PICTURE_ROW_MM + GAP_MM) * scale;
  double high_mm = (room_mm - rest_mm) / (PICTURES / 2) - PICTURE_HEAD_MM * scale;

  return CLAMP (high_mm / PICTURE_SHARE, PICTURE_LEAST_MM * scale,
                sw_flow_share_mm (flow, GAP_MM, 2));
}

/* Two side by side, each with its letter. */
static void
add_pictures (const SwSheet *sheet, SwFlow *flow, const Picture *pictures)
{
  double drawn_mm = picture_mm (sheet, flow);

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
          sw_flow_drawing (columns[k], picture_drawing (sheet, picture, drawn_mm));
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
    { sw_sheet_get (sheet, "class.column.points"), SW_CELL_TEXT, 15.0 },
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
          sw_sheet_format (sheet, key ? "%u" : "/ %u", PICTURE_POINTS), NULL);
    }
  sw_flow_space (flow, GAP_MM);
  sw_flow_table (flow, table);
}

static void
add_faults (SwSheet *sheet, gboolean key)
{
  SwFlow *flow = sw_sheet_flow (sheet);
  Picture pictures[PICTURES];

  add_laid (sheet, flow, key);
  if (!sw_flow_is_empty (flow))
    sw_flow_break (flow);
  choose_pictures (sheet, pictures);
  sw_flow_heading (flow, sw_sheet_get (sheet, "class.pictures.title"));
  say (sheet, flow, sw_sheet_get (sheet, key ? "class.faults.key" : "class.faults.how"));
  sw_flow_tie (flow);
  add_pictures (sheet, flow, pictures);
  add_picture_rows (sheet, flow, pictures, key);
  sw_sheet_add (sheet, sw_sheet_get (sheet, "class.faults.title"), flow);
}

void
sw_page_class_faults (SwSheet *sheet)
{
  add_faults (sheet, FALSE);
}

void
sw_class_fault_answers (SwSheet *sheet)
{
  add_faults (sheet, TRUE);
}

guint
sw_class_fault_points (const SwSheet *sheet)
{
  Laid laid;
  guint points = PICTURES * PICTURE_POINTS;

  if (lay (sheet, &laid))
    points += laid.n_faults * SEEDED_POINTS;
  g_clear_pointer (&laid.result, sw_result_unref);
  return points;
}
