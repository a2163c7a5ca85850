/* SPDX-License-Identifier: MIT */
#include "conditions.h"
#include "tier-numbers.h"

#define SECTION_MM 78.0 /* less where the sheet would not stay one */
#define SECTION_LEAST_MM 40.0
#define SECTION_STEP_MM 6.0
#define GAP_MM 3.0
#define LABEL_MM 40.0
#define TICK_MM 10.0
#define LIST_ROWS 3 /* left to write in where the office gave no list */
#define LIST_ROW_MM 8.0
#define NOTE_BLOCK_MM 150.0
#define COLUMN_GAP_MM 7.0

/* What an office tells a permit holder: a sheet for the counter, a guide, and notes for a
 * drawing. What the office has not said is left to be written in. */

static void
add_field (const SwSheet *sheet, SwTable *table, const char *name, const char *value)
{
  sw_table_row (table, name, sw_sheet_plain (sheet, value), NULL);
}

/* Who issues it, for which permit, and whom to call. */
static void
add_head (const SwSheet *sheet, SwFlow *flow)
{
  const SwJobCard *card = &sheet->job->card;
  static const SwPackText lines[] = { SW_PACK_TEXT_OFFICE, SW_PACK_TEXT_EDITION,
                                      SW_PACK_TEXT_BASIS, SW_PACK_TEXT_CONTACT };
  const SwColumn columns[] = { { "", SW_CELL_TEXT, LABEL_MM },
                               { "", SW_CELL_TEXT, 0.0 } };
  SwTable *table =
      sw_table_new (&sheet->pen, SW_STYLE_BODY, columns, G_N_ELEMENTS (columns));

  for (guint i = 0; i < G_N_ELEMENTS (lines); i++)
    add_field (sheet, table, sw_sheet_plan_label (sheet, lines[i]),
               sheet->plan->texts[lines[i]]);
  add_field (sheet, table, sw_sheet_get (sheet, "pack.card.permit"), card->permit);
  add_field (sheet, table, sw_sheet_get (sheet, "pack.card.place"), card->place);
  add_field (sheet, table, sw_sheet_get (sheet, "permit.label.holder"), card->client);
  add_field (sheet, table, sw_sheet_get (sheet, "permit.label.contractor"),
             card->supervisor);
  sw_flow_table (flow, table);
}

/* Some rules are said in one of several ways. */
static const char *
rule_id (const SwSheet *sheet, const char *code)
{
  const char *id = sw_sheet_format (sheet, "permit.rule.%s", code);

  if (g_str_equal (code, "toe"))
    return sw_sheet_toe_id (sheet, id);
  return g_str_equal (code, "inspect") ? sw_sheet_inspect_id (sheet, id) : id;
}

/* What must be done, with the numbers of this slope. */
static void
add_rules (const SwSheet *sheet, SwFlow *flow, SwStyle style)
{
  static const struct
  {
    const char *code;
    SwCondition condition;
  } rules[] = {
    { "cover", SW_IF_ALWAYS },        { "seedbed", SW_IF_ALWAYS },
    { "key-trench", SW_IF_ALWAYS },   { "side-lap", SW_IF_ALWAYS },
    { "end-lap", SW_IF_JOINTS },      { "slots", SW_IF_SLOTS },
    { "pins", SW_IF_ALWAYS },         { "toe", SW_IF_ALWAYS },
    { "obstacles", SW_IF_OBSTACLES }, { "inspect", SW_IF_ALWAYS },
  };
  g_autoptr (GHashTable) places = sw_tier_places (sheet, 0, 0);
  guint number = 0;

  g_hash_table_replace (places, "blanket", sw_markup_escape (sw_sheet_blanket (sheet)));
  g_hash_table_replace (places, "pins_all",
                        g_strdup (sw_sheet_count (sheet, (double) sheet->tally->pins)));
  for (guint i = 0; i < G_N_ELEMENTS (rules); i++)
    if (sw_sheet_holds (sheet, rules[i].condition))
      sw_flow_item (flow, style, sw_sheet_format (sheet, "%u", ++number),
                    sw_sheet_keep (sheet, sw_texts_fill_table (
                                              sheet->texts,
                                              rule_id (sheet, rules[i].code), places)));
}

/* A list of the office with boxes to tick, or lines to write it in. */
static void
add_list (const SwSheet *sheet, SwFlow *flow, SwPackText text)
{
  const SwColumn columns[] = { { "", SW_CELL_CHECK, TICK_MM },
                               { "", SW_CELL_TEXT, 0.0 } };
  g_auto (GStrv) items = sw_pack_text_items (sheet->plan, text);
  SwTable *table =
      sw_table_new (&sheet->pen, SW_STYLE_BODY, columns, G_N_ELEMENTS (columns));
  guint count = g_strv_length (items);

  sw_table_set_whole (table);
  if (count == 0)
    sw_table_set_row_mm (table, LIST_ROW_MM);
  for (guint i = 0; i < MAX (count, LIST_ROWS) && (count == 0 || i < count); i++)
    sw_table_row (table, "", count > 0 ? sw_sheet_plain (sheet, items[i]) : "", NULL);
  sw_flow_heading (flow, sw_sheet_plan_label (sheet, text));
  sw_flow_table (flow, table);
}

static void
add_line (const SwSheet *sheet, SwFlow *flow, SwPackText text)
{
  const char *said = sheet->plan->texts[text];

  sw_flow_heading (flow, sw_sheet_plan_label (sheet, text));
  if (*said != '\0')
    sw_flow_text (flow, SW_STYLE_BODY, SW_ROLE_TEXT, sw_sheet_plain (sheet, said));
  else
    sw_flow_write_in (flow, "");
}

/* What forbids to begin, one line each: the banner over the pages tells of it. */
static void
add_stops (const SwSheet *sheet, SwFlow *flow)
{
  const GPtrArray *findings = sheet->result->findings;

  for (guint i = 0; i < findings->len; i++)
    {
      const SwFinding *finding = g_ptr_array_index (findings, i);

      if (finding->severity == SW_SEVERITY_STOP)
        sw_flow_text (
            flow, SW_STYLE_BODY, SW_ROLE_STOP,
            sw_sheet_fill (
                sheet, "permit.stop", "stop", sw_sheet_get (sheet, "severity.stop"),
                "title",
                sw_sheet_plain (sheet, sw_sheet_keep (sheet, sw_report_finding_title (
                                                                 finding, sheet->texts))),
                NULL));
    }
}

static SwFlow *
counter_flow (const SwSheet *sheet, double section_mm)
{
  SwFlow *flow = sw_sheet_flow (sheet);

  sw_sheet_review (sheet, flow);
  add_stops (sheet, flow);
  add_head (sheet, flow);
  sw_flow_space (flow, GAP_MM);
  sw_sheet_section (sheet, flow, 0, section_mm * sheet->pen.scale);
  sw_flow_heading (flow, sw_sheet_get (sheet, "permit.rules.title"));
  add_rules (sheet, flow, SW_STYLE_BODY);
  sw_flow_space (flow, GAP_MM);
  sw_flow_caution (flow, sw_sheet_get (sheet, "permit.limits"));
  return flow;
}

void
sw_page_permit_counter (SwSheet *sheet)
{
  double section_mm = SECTION_MM, body_mm = sw_sheet_body_height_mm (sheet);
  SwFlow *flow = counter_flow (sheet, section_mm);

  while (sw_flow_height_mm (flow) > body_mm && section_mm > SECTION_LEAST_MM)
    {
      sw_flow_free (flow);
      section_mm -= SECTION_STEP_MM;
      flow = counter_flow (sheet, section_mm);
    }
  sw_sheet_add (sheet, sw_sheet_get (sheet, "permit.counter.title"), flow);
}

/* A text that names the practice which the numbers come from. */
static const char *
practice_words (const SwSheet *sheet, const char *id)
{
  const SwPractice *practice = sheet->practice;

  return sw_sheet_fill (sheet, id, "practice", sw_sheet_practice_name (sheet),
                        "edition", sw_sheet_get (sheet, practice->edition_id), "agency",
                        sw_sheet_get (sheet, practice->agency_id), NULL);
}

void
sw_page_permit_guide (SwSheet *sheet)
{
  SwFlow *flow = sw_sheet_flow (sheet);

  sw_flow_text (flow, SW_STYLE_BODY, SW_ROLE_TEXT,
                practice_words (sheet, "permit.guide.who"));
  add_list (sheet, flow, SW_PACK_TEXT_CONDITIONS);
  add_list (sheet, flow, SW_PACK_TEXT_DEADLINES);
  add_list (sheet, flow, SW_PACK_TEXT_SUBMITTALS);
  sw_judge_add_choice (sheet, flow, TRUE);
  sw_sheet_add (sheet, sw_sheet_get (sheet, "permit.guide.title"), flow);
}

void
sw_page_permit_control (SwSheet *sheet)
{
  SwFlow *flow = sw_sheet_flow (sheet);

  add_line (sheet, flow, SW_PACK_TEXT_NOTICE);
  sw_sheet_hold_points (sheet, flow);
  sw_flow_heading (flow, sw_sheet_get (sheet, "pack.after.title"));
  sw_sheet_inspection_rule (sheet, flow);
  sw_sheet_due_dates (sheet, flow);
  add_line (sheet, flow, SW_PACK_TEXT_RECORDS);
  add_list (sheet, flow, SW_PACK_TEXT_ENFORCEMENT);
  add_list (sheet, flow, SW_PACK_TEXT_CLOSING);
  sw_sheet_add (sheet, sw_sheet_get (sheet, "permit.control.title"), flow);
}

/* One block, as wide as a note block of a drawing, at its true size. */
void
sw_page_permit_notes (SwSheet *sheet)
{
  SwFlow *flow = sw_sheet_flow (sheet);
  double width_mm = MIN (NOTE_BLOCK_MM * sheet->pen.scale, sw_flow_width_mm (flow));
  SwFlow *block = sw_flow_new (&sheet->pen, width_mm);
  SwFlow *inner = sw_flow_new (&sheet->pen, sw_flow_box_width_mm (width_mm));

  sw_flow_text (
      inner, SW_STYLE_BODY, SW_ROLE_TEXT,
      sw_sheet_format (sheet, "*%s*", sw_sheet_get (sheet, "permit.notes.head")));
  sw_flow_space (inner, 1.5);
  add_stops (sheet, inner);
  add_rules (sheet, inner, SW_STYLE_SMALL);
  sw_flow_space (inner, 1.5);
  sw_flow_text (inner, SW_STYLE_SMALL, SW_ROLE_TEXT,
                practice_words (sheet, "permit.notes.source"));
  sw_flow_box (block, SW_ROLE_FRAME, inner);
  sw_flow_text (flow, SW_STYLE_BODY, SW_ROLE_TEXT,
                sw_sheet_fill (sheet, "permit.notes.how", "width",
                               sw_sheet_format (sheet, "%.0f mm", width_mm), NULL));
  sw_flow_space (flow, 4.0);
  sw_flow_row (flow, COLUMN_GAP_MM, (SwFlow *[]){ block }, 1);
  sw_sheet_add (sheet, sw_sheet_get (sheet, "permit.notes.title"), flow);
}
