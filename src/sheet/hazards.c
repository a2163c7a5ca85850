/* SPDX-License-Identifier: MIT */
#include "hazards.h"
#include "tier-numbers.h"

#define WORK_MM 30.0
#define HAZARD_MM 40.0
#define WHO_MM 23.0
#define BLANK_ROW_MM 9.0
#define BLANK_ROWS_MOST 3

/* Rows of the table. One that belongs to a question is left out for "no", one that belongs
 * to a finding where it does not speak. */
static const struct
{
  const char *code;
  SwSiteQuestion question; /* SW_SITE_QUESTION_COUNT: always */
  const char *finding;     /* code; NULL: always */
} hazards[] = {
  { "traffic", SW_SITE_TRAFFIC, NULL },
  { "walk", SW_SITE_QUESTION_COUNT, NULL },
  { "ropes", SW_SITE_ROPES, NULL },
  { "trench", SW_SITE_QUESTION_COUNT, NULL },
  { "deep", SW_SITE_QUESTION_COUNT, "trench-deep" },
  { "carry", SW_SITE_QUESTION_COUNT, NULL },
  { "unroll", SW_SITE_QUESTION_COUNT, NULL },
  { "pins", SW_SITE_QUESTION_COUNT, NULL },
  { "left-pins", SW_SITE_PUBLIC, NULL },
  { "cut", SW_SITE_QUESTION_COUNT, NULL },
  { "chemicals", SW_SITE_CHEMICALS, NULL },
  { "edges", SW_SITE_WILDLIFE, NULL },
  { "water", SW_SITE_WATER_AT_TOE, NULL },
  { "heat", SW_SITE_HOT_WEATHER, NULL },
  { "cold", SW_SITE_COLD_WEATHER, NULL },
  { "lone", SW_SITE_LONE_WORK, NULL },
  { "remote", SW_SITE_REMOTE, NULL },
  { "plant", SW_SITE_MACHINES, NULL },
  { "lines", SW_SITE_OVERHEAD_LINES, NULL },
  { "fire", SW_SITE_QUESTION_COUNT, NULL },
  { "end", SW_SITE_QUESTION_COUNT, NULL },
};

static gboolean
speaks (const SwSheet *sheet, const char *code)
{
  const GPtrArray *findings = sheet->result->findings;

  for (guint i = 0; i < findings->len; i++)
    if (g_str_equal (((const SwFinding *) g_ptr_array_index (findings, i))->code, code))
      return TRUE;
  return FALSE;
}

static gboolean
is_here (const SwSheet *sheet, guint row)
{
  return (hazards[row].question == SW_SITE_QUESTION_COUNT
          || sheet->job->site[hazards[row].question] != SW_ANSWER_NO)
         && (hazards[row].finding == NULL || speaks (sheet, hazards[row].finding));
}

static const char *
hazard_text (const SwSheet *sheet, GHashTable *places, const char *code, const char *part)
{
  const char *id = sw_sheet_format (sheet, "pack.hazard.%s.%s", code, part);

  return sw_sheet_keep (sheet, sw_texts_fill_table (sheet->texts, id, places));
}

/* Lines below the hazard table to write on, as many as the page has room for. */
static void
add_blank_rows (const SwSheet *sheet, SwFlow *flow)
{
  const SwColumn columns[] = {
    { "", SW_CELL_TEXT, WORK_MM },
    { "", SW_CELL_TEXT, HAZARD_MM },
    { "", SW_CELL_TEXT, 0.0 },
    { "", SW_CELL_TEXT, WHO_MM },
  };
  SwTable *table =
      sw_table_new (&sheet->pen, SW_STYLE_BODY, columns, G_N_ELEMENTS (columns));
  guint rows = sw_sheet_rows_that_fit (sheet, flow, BLANK_ROW_MM);

  sw_table_set_ruled (table);
  sw_table_set_row_mm (table, BLANK_ROW_MM);
  for (guint i = 0; i < MIN (rows, BLANK_ROWS_MOST); i++)
    sw_table_row (table, "", "", "", "", NULL);
  sw_flow_table (flow, table);
}

static void
add_table (const SwSheet *sheet, SwFlow *flow, GHashTable *places)
{
  const SwColumn columns[] = {
    { sw_sheet_get (sheet, "pack.column.work"), SW_CELL_TEXT, WORK_MM },
    { sw_sheet_get (sheet, "pack.column.hazard"), SW_CELL_TEXT, HAZARD_MM },
    { sw_sheet_get (sheet, "pack.column.control"), SW_CELL_TEXT, 0.0 },
    { sw_sheet_get (sheet, "pack.column.who"), SW_CELL_TEXT, WHO_MM },
  };
  SwTable *table =
      sw_table_new (&sheet->pen, SW_STYLE_BODY, columns, G_N_ELEMENTS (columns));

  sw_table_set_ruled (table);
  for (guint i = 0; i < G_N_ELEMENTS (hazards); i++)
    if (is_here (sheet, i))
      sw_table_row (table, hazard_text (sheet, places, hazards[i].code, "work"),
                    hazard_text (sheet, places, hazards[i].code, "hazard"),
                    hazard_text (sheet, places, hazards[i].code, "control"),
                    hazard_text (sheet, places, hazards[i].code, "who"), NULL);
  sw_flow_table (flow, table);
}

/* Clause numbers for those who look the rule up; one without has no line. */
static void
add_references (const SwSheet *sheet, SwFlow *flow, GHashTable *places)
{
  const SwColumn columns[] = {
    { sw_sheet_get (sheet, "pack.column.work"), SW_CELL_TEXT, WORK_MM },
    { sw_sheet_get (sheet, "pack.column.reference"), SW_CELL_TEXT, 0.0 },
  };
  SwTable *table =
      sw_table_new (&sheet->pen, SW_STYLE_BODY, columns, G_N_ELEMENTS (columns));

  sw_table_row (table, sw_sheet_get (sheet, "pack.reference.always"),
                sw_sheet_get (sheet, "pack.reference.duty"), NULL);
  for (guint i = 0; i < G_N_ELEMENTS (hazards); i++)
    if (is_here (sheet, i)
        && sw_texts_has (sheet->texts, sw_sheet_format (sheet, "pack.hazard.%s.reference",
                                                        hazards[i].code)))
      sw_table_row (table, hazard_text (sheet, places, hazards[i].code, "work"),
                    hazard_text (sheet, places, hazards[i].code, "reference"), NULL);
  sw_flow_heading (flow, sw_sheet_get (sheet, "pack.reference.title"));
  sw_flow_text (flow, SW_STYLE_BODY, SW_ROLE_TEXT,
                sw_sheet_get (sheet, "pack.reference.how"));
  sw_flow_tie (flow);
  sw_flow_space (flow, 1.5);
  sw_flow_table (flow, table);
}

void
sw_sheet_put_slope_facts (const SwSheet *sheet, GHashTable *places)
{
  SwSlopeFacts facts = sw_sheet_slope_facts (sheet);

  g_hash_table_replace (
      places, (gpointer) "steepest",
      g_strdup (sw_sheet_quantity (sheet, facts.steepest_rad, SW_UNIT_RAD)));
  g_hash_table_replace (places, (gpointer) "height",
                        g_strdup (sw_sheet_quantity (sheet, facts.height_m, SW_UNIT_M)));
}

void
sw_sheet_hazards (const SwSheet *sheet, SwFlow *flow)
{
  g_autoptr (GHashTable) places = sw_tier_places (sheet, 0, 0);

  sw_sheet_put_slope_facts (sheet, places);
  sw_flow_heading (flow, sw_sheet_get (sheet, "pack.hazards.title"));
  sw_flow_text (flow, SW_STYLE_BODY, SW_ROLE_TEXT,
                sw_sheet_get (sheet, "pack.hazards.how"));
  sw_flow_tie (flow);
  sw_flow_space (flow, 1.5);
  add_table (sheet, flow, places);
  add_blank_rows (sheet, flow);
  add_references (sheet, flow, places);
}
