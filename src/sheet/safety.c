/* SPDX-License-Identifier: MIT */
#include "hazards.h"
#include "tier-numbers.h"

#define COLUMN_GAP_MM 6.0
#define SIGN_ROW_MM 9.0
#define SIGN_ROWS_LEAST 6
#define TALK_POINTS 5
#define TALK_QUESTIONS 3
/* Load constant of the revised NIOSH lifting equation, DHHS (NIOSH) 94-110. */
#define NIOSH_LOAD_KG 23.0

/* Limits that this job sets for itself; one that is not given has no line. */
static const struct
{
  SwSiteNumber number;
  const char *text_id;
} stop_limits[] = {
  { SW_NUMBER_WIND_LIMIT, "pack.stop-work.wind" },
  { SW_NUMBER_RAIN_STOP_M, "pack.stop-work.rain" },
  { SW_NUMBER_TEMPERATURE_LEAST, "pack.stop-work.cold" },
  { SW_NUMBER_FALL_PLAN_RAD, "pack.stop-work.fall-plan" },
};

static void
add_stop_limits (const SwSheet *sheet, SwFlow *flow)
{
  for (guint i = 0; i < G_N_ELEMENTS (stop_limits); i++)
    {
      double limit = sheet->job->numbers.values[stop_limits[i].number];
      SwUnit unit = sw_site_number_keys[stop_limits[i].number].unit;

      if (limit > 0.0)
        sw_flow_item (flow, SW_STYLE_CREW, "–",
                      sw_sheet_fill (sheet, stop_limits[i].text_id, "limit",
                                     sw_sheet_quantity (sheet, limit, unit), NULL));
    }
}

static void
add_stop_and_emergency (const SwSheet *sheet, SwFlow *flow)
{
  double free_mm = sw_flow_width_mm (flow) - COLUMN_GAP_MM;
  SwFlow *left = sw_flow_new (&sheet->pen, 0.58 * free_mm);
  SwFlow *right = sw_flow_new (&sheet->pen, 0.42 * free_mm);
  SwFlow *inner =
      sw_flow_new (&sheet->pen, sw_flow_box_width_mm (sw_flow_width_mm (left)));
  g_auto (GStrv) lines =
      g_strsplit (sw_sheet_get (sheet, "pack.stop-work.list"), "\n", -1);

  sw_flow_text (inner, SW_STYLE_ACTION, SW_ROLE_STOP,
                sw_sheet_get (sheet, "pack.stop-work.title"));
  sw_flow_space (inner, 1.5);
  for (guint i = 0; lines[i] != NULL; i++)
    sw_flow_item (inner, SW_STYLE_CREW, "–", lines[i]);
  add_stop_limits (sheet, inner);
  sw_flow_box (left, SW_ROLE_STOP, inner);
  sw_sheet_emergency (sheet, right, sw_flow_height_mm (left));
  sw_flow_row (flow, COLUMN_GAP_MM, (SwFlow *[]){ left, right }, 2);
}

SwSlopeFacts
sw_sheet_slope_facts (const SwSheet *sheet)
{
  SwSlopeFacts facts = { 0 };

  for (guint f = 0; f < sheet->layout->n_faces; f++)
    {
      const SwFaceLayout *face = &sheet->layout->faces[f];
      const SwPoint *section = face->face->section;

      facts.height_m = MAX (facts.height_m, section[face->face->crest].y_m
                                                - section[face->face->toe].y_m);
      facts.pin_m = MAX (facts.pin_m, sw_sheet_longest_pin_m (face));
      facts.loose |= face->face->loose;
      for (guint t = 0; t < face->n_tiers; t++)
        facts.steepest_rad = MAX (facts.steepest_rad, face->tiers[t].steepest_rad);
    }
  return facts;
}

/* @words: markup */
static void
fact_row (const SwSheet *sheet, SwTable *table, const char *code, const char *value,
          const char *words)
{
  sw_table_row (
      table, sw_sheet_get (sheet, sw_sheet_format (sheet, "pack.fact.%s.title", code)),
      sw_sheet_format (sheet, "*%s*", sw_sheet_plain (sheet, value)), words, NULL);
}

static void
add_facts (const SwSheet *sheet, SwFlow *flow)
{
  const SwColumn columns[] = {
    { sw_sheet_get (sheet, "pack.column.fact"), SW_CELL_TEXT, 30.0 },
    { sw_sheet_get (sheet, "pack.column.this-job"), SW_CELL_TEXT, 42.0 },
    { sw_sheet_get (sheet, "pack.column.means"), SW_CELL_TEXT, 0.0 },
  };
  SwTable *table =
      sw_table_new (&sheet->pen, SW_STYLE_BODY, columns, G_N_ELEMENTS (columns));
  SwSlopeFacts facts = sw_sheet_slope_facts (sheet);
  const char *ticket = sheet->job->card.utility_ticket;

  fact_row (sheet, table, "gradient",
            sw_sheet_quantity (sheet, facts.steepest_rad, SW_UNIT_RAD),
            sw_sheet_get (sheet, "pack.fact.gradient"));
  fact_row (sheet, table, "height", sw_sheet_quantity (sheet, facts.height_m, SW_UNIT_M),
            sw_sheet_get (sheet, "pack.fact.height"));
  fact_row (sheet, table, "trench",
            sw_sheet_fill (sheet, "pack.fact.trench.value", "depth",
                           sw_sheet_practice (sheet, SW_PRACTICE_TRENCH_DEPTH_M), "pin",
                           sw_sheet_limit (sheet, facts.pin_m, SW_LIMIT_LEAST), NULL),
            sw_sheet_fill (
                sheet, "pack.fact.trench", "ticket",
                *ticket != '\0' ? ticket : sw_sheet_get (sheet, "pack.not-given"), NULL));
  fact_row (sheet, table, "roll",
            sw_sheet_quantity (sheet, sheet->tally->roll_mass_kg, SW_UNIT_KG),
            sw_sheet_fill (sheet, "pack.fact.roll", "limit",
                           sw_sheet_quantity (sheet, NIOSH_LOAD_KG, SW_UNIT_KG), NULL));
  if (facts.loose)
    fact_row (sheet, table, "loose", sw_sheet_get (sheet, "pack.fact.loose.value"),
              sw_sheet_get (sheet, "pack.fact.loose"));
  sw_flow_heading (flow, sw_sheet_get (sheet, "pack.facts.title"));
  sw_flow_table (flow, table);
}

/* What follows from an answer; an open question is always to be answered first. */
static const char *
answer_means (const SwSheet *sheet, SwSiteQuestion question, SwAnswer answer)
{
  static const char *const codes[] = {
    [SW_ANSWER_UNKNOWN] = "unknown", [SW_ANSWER_NO] = "no", [SW_ANSWER_YES] = "yes"
  };
  const char *id = sw_sheet_format (sheet, "pack.site.%s.%s",
                                    sw_site_question_keys[question], codes[answer]);

  if (answer == SW_ANSWER_UNKNOWN)
    return sw_sheet_get (sheet, "pack.site.find-out");
  return sw_texts_has (sheet->texts, id) ? sw_sheet_get (sheet, id) : "";
}

static const char *
question_words (const SwSheet *sheet, int question)
{
  return sw_sheet_get (
      sheet, sw_sheet_format (sheet, "site.%s", sw_site_question_keys[question]));
}

/* Answers that nothing follows from, one behind the other. */
static void
add_plain_answers (const SwSheet *sheet, SwFlow *flow)
{
  g_autoptr (GString) list = g_string_new (NULL);

  for (int i = 0; i < SW_SITE_QUESTION_COUNT; i++)
    if (*answer_means (sheet, (SwSiteQuestion) i, sheet->job->site[i]) == '\0')
      g_string_append_printf (list, "%s%s", list->len > 0 ? " " : "",
                              question_words (sheet, i));
  if (list->len == 0)
    return;
  sw_flow_space (flow, 1.5);
  sw_flow_text (
      flow, SW_STYLE_BODY, SW_ROLE_TEXT,
      sw_sheet_fill (sheet, "pack.site.answered-no", "questions", list->str, NULL));
}

static void
add_answers (const SwSheet *sheet, SwFlow *flow)
{
  static const char *const answer_ids[] = { "answer.unknown", "answer.no", "answer.yes" };
  const SwColumn columns[] = {
    { sw_sheet_get (sheet, "pack.column.question"), SW_CELL_TEXT, 84.0 },
    { sw_sheet_get (sheet, "pack.column.answer"), SW_CELL_LINE, 0.0 },
    { sw_sheet_get (sheet, "pack.column.means"), SW_CELL_TEXT, 0.0 },
  };
  SwTable *table =
      sw_table_new (&sheet->pen, SW_STYLE_BODY, columns, G_N_ELEMENTS (columns));

  for (int i = 0; i < SW_SITE_QUESTION_COUNT; i++)
    {
      SwAnswer answer = sheet->job->site[i];
      const char *means = answer_means (sheet, (SwSiteQuestion) i, answer);

      if (*means != '\0')
        sw_table_row (
            table, question_words (sheet, i),
            sw_sheet_format (sheet, "*%s*", sw_sheet_get (sheet, answer_ids[answer])),
            means, NULL);
    }
  sw_flow_heading (flow, sw_sheet_get (sheet, "pack.site.title"));
  sw_flow_table (flow, table);
  add_plain_answers (sheet, flow);
}

static void
add_sign_in (const SwSheet *sheet, SwFlow *flow)
{
  guint rows;
  const char *name = sw_sheet_get (sheet, "pack.column.name");
  const char *sign = sw_sheet_get (sheet, "pack.column.signature");
  const char *time = sw_sheet_get (sheet, "pack.column.time");
  const SwColumn columns[] = {
    { name, SW_CELL_TEXT, 0.0 },  { sign, SW_CELL_TEXT, 0.0 },
    { time, SW_CELL_TEXT, 15.0 }, { name, SW_CELL_TEXT, 0.0 },
    { sign, SW_CELL_TEXT, 0.0 },  { time, SW_CELL_TEXT, 15.0 },
  };
  SwTable *table =
      sw_table_new (&sheet->pen, SW_STYLE_BODY, columns, G_N_ELEMENTS (columns));

  sw_table_set_ruled (table);
  sw_table_set_row_mm (table, SIGN_ROW_MM);
  sw_flow_heading (flow, sw_sheet_get (sheet, "pack.talk.sign-in"));
  rows = sw_sheet_rows_that_fit (sheet, flow, SIGN_ROW_MM);
  for (guint i = 0; i < MAX (rows, SIGN_ROWS_LEAST); i++)
    sw_table_row (table, "", "", "", "", "", "", NULL);
  sw_flow_table (flow, table);
}

static const char *
talk_words (const SwSheet *sheet, const char *id, guint face_index, guint tier)
{
  const SwFaceLayout *face = &sheet->layout->faces[face_index];
  g_autoptr (GHashTable) places = sw_tier_places (sheet, face_index, tier);
  const char *start = face->tiers[tier].closed              ? "pack.talk.start-round"
                      : face->face->leeward == SW_SIDE_LEFT ? "pack.talk.start-left"
                                                            : "pack.talk.start-right";

  g_hash_table_replace (places, (gpointer) "start",
                        g_strdup (sw_sheet_get (sheet, start)));
  return sw_sheet_keep (sheet, sw_texts_fill_table (sheet->texts, id, places));
}

/* What a point says where it holds for every part of the job; NULL where it does not. */
static const char *
common_talk_words (const SwSheet *sheet, const char *id)
{
  const char *first = talk_words (sheet, id, 0, 0);

  for (guint f = 0; f < sheet->layout->n_faces; f++)
    for (guint t = 0; t < sheet->layout->faces[f].n_tiers; t++)
      if (!g_str_equal (talk_words (sheet, id, f, t), first))
        return NULL;
  return first;
}

/* The point without its numbers, and a line with them for each part of the job. */
static const char *
talk_words_by_place (const SwSheet *sheet, const char *id)
{
  const char *line_id = sw_sheet_format (sheet, "%s-place", id);
  GString *words =
      g_string_new (sw_sheet_get (sheet, sw_sheet_format (sheet, "%s-each", id)));

  for (guint f = 0; f < sheet->layout->n_faces; f++)
    for (guint t = 0; t < sheet->layout->faces[f].n_tiers; t++)
      g_string_append_printf (words, "\n%s", talk_words (sheet, line_id, f, t));
  return sw_sheet_keep (sheet, g_string_free (words, FALSE));
}

static void
add_talk (const SwSheet *sheet, SwFlow *flow)
{
  for (guint i = 1; i <= TALK_POINTS; i++)
    {
      const char *id = sw_sheet_format (sheet, "pack.talk.point-%u", i);
      const char *words = common_talk_words (sheet, id);

      sw_flow_space (flow, 1.2);
      sw_flow_item (flow, SW_STYLE_CREW, sw_sheet_format (sheet, "%u", i),
                    words != NULL ? words : talk_words_by_place (sheet, id));
    }
  sw_flow_heading (flow, sw_sheet_get (sheet, "pack.talk.ask"));
  for (guint i = 1; i <= TALK_QUESTIONS; i++)
    sw_flow_item (
        flow, SW_STYLE_CREW, "?",
        sw_sheet_get (sheet, sw_sheet_format (sheet, "pack.talk.question-%u", i)));
  sw_flow_space (flow, 3.0);
  sw_flow_write_in (flow, sw_sheet_get (sheet, "pack.talk.today"));
  sw_flow_write_in (flow, sw_sheet_get (sheet, "pack.talk.given-by"));
  add_sign_in (sheet, flow);
}

void
sw_page_safety (SwSheet *sheet)
{
  SwFlow *flow = sw_sheet_flow (sheet);

  add_stop_and_emergency (sheet, flow);
  add_facts (sheet, flow);
  add_answers (sheet, flow);
  sw_flow_space (flow, 5.0);
  sw_flow_caution (flow, sw_sheet_get (sheet, "pack.safety.cautions"));
  sw_sheet_hazards (sheet, flow);
  sw_sheet_add (sheet, sw_sheet_get (sheet, "pack.safety.title"), flow);
  flow = sw_sheet_flow (sheet);
  add_talk (sheet, flow);
  sw_sheet_add (sheet, sw_sheet_get (sheet, "pack.talk.title"), flow);
}
