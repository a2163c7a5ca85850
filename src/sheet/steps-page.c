/* SPDX-License-Identifier: MIT */
#include "tier-numbers.h"

#define NUMBER_MM 13.0
#define PICTURE_MM 47.0
#define PICTURE_HEIGHT_MM 33.0
#define GAP_MM 4.0

/* For which parts a step has its numbers said. */
typedef enum
{
  SCOPE_JOB,
  SCOPE_TIER
} Scope;

static const Scope scope_of[SW_STEP_COUNT] = {
  [SW_STEP_PREPARE] = SCOPE_TIER,   [SW_STEP_SEED] = SCOPE_JOB,
  [SW_STEP_DIG_KEY] = SCOPE_TIER,   [SW_STEP_ANCHOR] = SCOPE_TIER,
  [SW_STEP_BACKFILL] = SCOPE_JOB,   [SW_STEP_UNROLL] = SCOPE_TIER,
  [SW_STEP_PIN_FIELD] = SCOPE_TIER, [SW_STEP_SIDE_LAP] = SCOPE_TIER,
  [SW_STEP_END_LAP] = SCOPE_TIER,   [SW_STEP_SLOT] = SCOPE_TIER,
  [SW_STEP_TOE] = SCOPE_TIER,       [SW_STEP_INSPECT] = SCOPE_JOB,
};

static const char *
step_id (const SwSheet *sheet, SwStep step, const char *part)
{
  return sw_sheet_format (sheet, "pack.step.%s.%s", sw_step_code (step), part);
}

/* What is to be done at the toe depends on the practice. */
static const char *
toe_variant (const SwSheet *sheet, SwStep step, const char *part)
{
  const char *id = step_id (sheet, step, part);

  return step == SW_STEP_TOE ? sw_sheet_toe_id (sheet, id) : id;
}

/* A face that closes on itself has no outer edges; obstacles have a ring of pins. */
static const char *
pin_field_id (const SwSheet *sheet, const SwTierNumbers *numbers)
{
  return step_id (sheet, SW_STEP_PIN_FIELD,
                  numbers->pins[SW_PIN_RING] > 0    ? "number-ring"
                  : numbers->pins[SW_PIN_EDGE] == 0 ? "number-no-edge"
                                                    : "number");
}

/* Infill runs are laid out of turn. */
static const char *
number_id (const SwSheet *sheet, SwStep step, guint face, guint tier)
{
  const SwFaceLayout *layout = &sheet->layout->faces[face];
  SwTierNumbers numbers = sw_tier_numbers (layout, tier);

  if (step == SW_STEP_PIN_FIELD)
    return pin_field_id (sheet, &numbers);
  if (step != SW_STEP_UNROLL || layout->tiers[tier].infill == 0)
    return toe_variant (sheet, step, "number");
  return step_id (sheet, step,
                  layout->face->crest_form == SW_CREST_NOSE ? "number-infill-nose"
                                                            : "number-infill-bowl");
}

static gboolean
tier_has_step (const SwSheet *sheet, guint face, guint tier, SwStep step)
{
  const SwFaceLayout *layout = &sheet->layout->faces[face];

  if (step == SW_STEP_SLOT)
    return layout->tiers[tier].slots > 0;
  if (step == SW_STEP_END_LAP)
    return sw_tier_joints (layout, tier) > 0;
  return step != SW_STEP_SIDE_LAP || layout->tiers[tier].n_runs > 1;
}

static const char *
step_line (const SwSheet *sheet, SwStep step, guint face, guint tier)
{
  g_autoptr (GHashTable) places = sw_tier_places (sheet, face, tier);

  return sw_sheet_keep (
      sheet,
      sw_texts_fill_table (sheet->texts, number_id (sheet, step, face, tier), places));
}

/* A line of the step's numbers and the part of the job that it holds for. */
typedef struct
{
  const char *words, *place;
} StepLine;

static GArray *
step_lines (const SwSheet *sheet, SwStep step)
{
  GArray *lines = g_array_new (FALSE, FALSE, sizeof (StepLine));

  for (guint f = 0; f < sheet->layout->n_faces; f++)
    for (guint t = 0; t < sheet->layout->faces[f].n_tiers; t++)
      if (tier_has_step (sheet, f, t, step))
        {
          StepLine line = { step_line (sheet, step, f, t), sw_sheet_place (sheet, f, t) };

          g_array_append_val (lines, line);
        }
  return lines;
}

static gboolean
all_alike (const GArray *lines)
{
  for (guint i = 1; i < lines->len; i++)
    if (!g_str_equal (g_array_index (lines, StepLine, i).words,
                      g_array_index (lines, StepLine, 0).words))
      return FALSE;
  return TRUE;
}

/* @words are markup already: they are put in as they are. */
static const char *
line_at (const SwSheet *sheet, const char *id, const char *place, const char *words)
{
  return sw_sheet_keep (
      sheet, sw_texts_fill (sheet->texts, id, "place", place, "what", words, NULL));
}

/* The step's numbers: once where they hold for every part, else a line for each. */
static void
add_numbers (const SwSheet *sheet, SwFlow *flow, SwStep step)
{
  g_autoptr (GArray) lines = step_lines (sheet, step);
  gboolean once = scope_of[step] == SCOPE_JOB || sw_sheet_is_plain (sheet);

  if (once || (lines->len > 1 && all_alike (lines)))
    {
      const char *words = g_array_index (lines, StepLine, 0).words;

      sw_flow_text (flow, SW_STYLE_CREW, SW_ROLE_TEXT,
                    once ? words : line_at (sheet, "pack.step.each", "", words));
      return;
    }
  for (guint i = 0; i < lines->len; i++)
    sw_flow_text (flow, SW_STYLE_CREW, SW_ROLE_TEXT,
                  line_at (sheet, "pack.step.at-place",
                           g_array_index (lines, StepLine, i).place,
                           g_array_index (lines, StepLine, i).words));
}

/* One action a line, each behind a dash. */
static void
add_actions (const SwSheet *sheet, SwFlow *flow, SwStep step)
{
  g_autoptr (GHashTable) places = sw_tier_places (sheet, 0, 0);
  g_autofree char *words =
      sw_texts_fill_table (sheet->texts, toe_variant (sheet, step, "do"), places);
  g_auto (GStrv) lines = g_strsplit (words, "\n", -1);

  for (guint i = 0; lines[i] != NULL; i++)
    sw_flow_item (flow, SW_STYLE_CREW, "–", lines[i]);
}

static void
add_who (const SwSheet *sheet, SwFlow *flow, SwStep step)
{
  const char *hold = step_id (sheet, step, "hold");
  g_autoptr (GHashTable) places = sw_tier_places (sheet, 0, 0);
  g_autofree char *who =
      sw_texts_fill_table (sheet->texts, step_id (sheet, step, "who"), places);

  sw_flow_space (flow, 1.0);
  sw_flow_text (flow, SW_STYLE_SMALL, SW_ROLE_MUTED,
                sw_sheet_fill (sheet, "pack.step.tool-and-who", "tool",
                               sw_sheet_get (sheet, step_id (sheet, step, "tool")), "who",
                               who, NULL));
  if (!sw_texts_has (sheet->texts, hold))
    return;
  sw_flow_space (flow, 1.5);
  sw_flow_caution (flow, sw_sheet_fill (sheet, "pack.step.hold-point", "what",
                                        sw_sheet_get (sheet, hold), NULL));
}

static SwFlow *
number_column (const SwSheet *sheet, guint number)
{
  double scale = sheet->pen.scale, radius_mm = 0.4 * NUMBER_MM * scale;
  SwFlow *flow = sw_flow_new (&sheet->pen, NUMBER_MM * scale);
  SwFigure *figure = sw_figure_new (NUMBER_MM * scale, 2.0 * radius_mm);
  double line_mm = sw_pen_line_mm (&sheet->pen, SW_STYLE_NUMBER);

  sw_figure_circle (figure, SW_ROLE_FRAME, radius_mm, radius_mm, radius_mm);
  sw_pen_write (&sheet->pen, SW_STYLE_NUMBER, figure, SW_ROLE_HEADING, radius_mm,
                radius_mm - line_mm / 2.0, SW_ALIGN_CENTRE,
                sw_sheet_format (sheet, "%u", number));
  sw_flow_add (flow, figure);
  return flow;
}

static SwFlow *
picture_column (const SwSheet *sheet, SwStep step)
{
  double scale = sheet->pen.scale;
  SwFlow *flow = sw_flow_new (&sheet->pen, PICTURE_MM * scale);

  sw_flow_drawing (flow, sw_draw_step (sheet->result, 0, step, PICTURE_MM * scale,
                                       PICTURE_HEIGHT_MM * scale, sheet->draw));
  return flow;
}

static SwFlow *
words_column (const SwSheet *sheet, SwStep step, double width_mm)
{
  SwFlow *flow = sw_flow_new (&sheet->pen, width_mm);

  sw_flow_text (flow, SW_STYLE_ACTION, SW_ROLE_HEADING,
                sw_sheet_get (sheet, step_id (sheet, step, "title")));
  sw_flow_space (flow, 0.8);
  add_numbers (sheet, flow, step);
  sw_flow_space (flow, 1.2);
  add_actions (sheet, flow, step);
  add_who (sheet, flow, step);
  return flow;
}

static void
add_step (const SwSheet *sheet, SwFlow *flow, SwStep step, guint number)
{
  double scale = sheet->pen.scale;
  double words_mm =
      sw_flow_width_mm (flow) - (NUMBER_MM + PICTURE_MM) * scale - GAP_MM * 2.0;
  SwFlow *columns[] = { number_column (sheet, number), picture_column (sheet, step),
                        words_column (sheet, step, words_mm) };

  sw_flow_space (flow, 3.0);
  sw_flow_row (flow, GAP_MM, columns, G_N_ELEMENTS (columns));
}

/* Below a step, on its page. */
static void
add_rule (SwFlow *flow)
{
  SwFigure *rule = sw_figure_new (sw_flow_width_mm (flow), 0.3);

  sw_figure_segment (rule, SW_ROLE_TABLE_RULE, 0.0, 0.15, sw_flow_width_mm (flow), 0.15);
  sw_flow_tie (flow);
  sw_flow_space (flow, 3.0);
  sw_flow_add (flow, rule);
}

void
sw_page_steps (SwSheet *sheet)
{
  SwFlow *flow = sw_sheet_flow (sheet);
  guint number = 0;

  sw_flow_text (flow, SW_STYLE_CREW, SW_ROLE_TEXT,
                sw_sheet_get (sheet, "pack.steps.before"));
  for (int step = 0; step < SW_STEP_COUNT; step++)
    if (sw_step_applies (sheet->result, (SwStep) step))
      {
        add_step (sheet, flow, (SwStep) step, ++number);
        add_rule (flow);
      }
  sw_sheet_change_notes (sheet, flow);
  sw_sheet_add (sheet, sw_sheet_get (sheet, "pack.steps.title"), flow);
}
