/* SPDX-License-Identifier: MIT */
#include "conditions.h"
#include "tier-numbers.h"

#define WRITE_ROW_MM 9.0
#define CHECK_ROW_MM 7.5
#define LOG_ROWS_LEAST 4
#define LOG_ROWS_MOST 16
#define LOG_HEAD_ROWS 1 /* what the further lines of its head take */

static const char *
filled (const SwSheet *sheet, GHashTable *places, const char *id)
{
  return sw_sheet_keep (sheet, sw_texts_fill_table (sheet->texts, id, places));
}

static const struct
{
  const char *code;
  SwCondition condition;
} hold_points[] = {
  { "seedbed", SW_IF_ALWAYS },   { "key-trench", SW_IF_ALWAYS },
  { "first-run", SW_IF_ALWAYS }, { "joints", SW_IF_JOINTS },
  { "toe", SW_IF_ALWAYS },       { "final", SW_IF_ALWAYS },
};

static const struct
{
  const char *code;
  SwCondition condition;
} checks[] = {
  { "contact", SW_IF_ALWAYS },  { "trench", SW_IF_ALWAYS },
  { "key-pins", SW_IF_ALWAYS }, { "slots", SW_IF_SLOTS },
  { "edges", SW_IF_ALWAYS },    { "toe", SW_IF_ALWAYS },
  { "run-on", SW_IF_ALWAYS },   { "obstacles", SW_IF_OBSTACLES },
};

/* What acceptance is measured by, and in how many places. */
#define PLACES_MOST 5

static const struct
{
  const char *code;
  SwCondition condition;
  guint places;
} pocket_tests[] = {
  { "side-lap", SW_IF_LAPS, 5 },     { "end-lap", SW_IF_JOINTS, 5 },
  { "frame", SW_IF_FIELD, 3 },       { "pull", SW_IF_ALWAYS, 5 },
  { "key-trench", SW_IF_ALWAYS, 5 },
};

void
sw_sheet_hold_points (const SwSheet *sheet, SwFlow *flow)
{
  g_autoptr (GHashTable) places = sw_tier_places (sheet, 0, 0);
  guint number = 0;
  const SwColumn columns[] = {
    { sw_sheet_get (sheet, "pack.column.hold-point"), SW_CELL_TEXT, 34.0 },
    { sw_sheet_get (sheet, "pack.column.see"), SW_CELL_TEXT, 0.0 },
    { sw_sheet_get (sheet, "pack.column.released-by"), SW_CELL_TEXT, 42.0 },
    { sw_sheet_get (sheet, "pack.column.date-time"), SW_CELL_TEXT, 26.0 },
  };
  SwTable *table =
      sw_table_new (&sheet->pen, SW_STYLE_BODY, columns, G_N_ELEMENTS (columns));

  sw_table_set_ruled (table);
  sw_table_set_row_mm (table, WRITE_ROW_MM);
  for (guint i = 0; i < G_N_ELEMENTS (hold_points); i++)
    if (sw_sheet_holds (sheet, hold_points[i].condition))
      sw_table_row (table,
                    sw_sheet_format (
                        sheet, "%u  %s", ++number,
                        sw_sheet_get (sheet, sw_sheet_format (sheet, "pack.hold.%s.title",
                                                              hold_points[i].code))),
                    filled (sheet, places,
                            sw_sheet_format (sheet, "pack.hold.%s", hold_points[i].code)),
                    "", "", NULL);
  sw_flow_heading (flow, sw_sheet_get (sheet, "pack.hold.title"));
  sw_flow_text (flow, SW_STYLE_BODY, SW_ROLE_TEXT, sw_sheet_get (sheet, "pack.hold.how"));
  sw_flow_tie (flow);
  sw_flow_space (flow, 1.5);
  sw_flow_table (flow, table);
}

/* The toe's target depends on the practice; a frame is a metre or a yard wide. */
static const char *
check_id (const SwSheet *sheet, const char *code)
{
  const char *id = sw_sheet_format (sheet, "pack.check.%s", code);

  if (g_str_equal (code, "toe"))
    return sw_sheet_toe_id (sheet, id);
  if (g_str_equal (code, "frame") && sheet->draw->style.units == SW_UNITS_US)
    return "pack.check.frame-us";
  return id;
}

/* The targets of a check, one a part of the job; @alike where one says it for all. */
static GPtrArray *
check_targets (const SwSheet *sheet, const char *id, gboolean *alike)
{
  GPtrArray *targets = g_ptr_array_new ();

  *alike = TRUE;
  for (guint f = 0; f < sheet->layout->n_faces; f++)
    for (guint t = 0; t < sheet->layout->faces[f].n_tiers; t++)
      {
        g_autoptr (GHashTable) places = sw_tier_places (sheet, f, t);
        const char *target = filled (sheet, places, id);

        *alike &=
            targets->len == 0 || g_str_equal (g_ptr_array_index (targets, 0), target);
        g_ptr_array_add (targets, (gpointer) target);
      }
  return targets;
}

#define NOTHING "–" /* where nothing is to be written */

/* @places: how many results the row has room for, 0 for the one of a check by eye. */
static void
add_check_row (SwTable *table, const char *title, const char *target, guint places)
{

  if (places == 0)
    sw_table_row (table, title, target, "", "", NULL);
  else
    sw_table_row (table, title, target, "", "", "", places > 3 ? "" : NOTHING,
                  places > 4 ? "" : NOTHING, "", NULL);
}

static void
add_check_rows (const SwSheet *sheet, SwTable *table, const char *id, guint places)
{
  gboolean alike;
  g_autoptr (GPtrArray) targets = check_targets (sheet, id, &alike);
  const char *title = sw_sheet_get (sheet, sw_sheet_format (sheet, "%s.title", id));
  guint part = 0;

  if (alike)
    {
      add_check_row (table, title, g_ptr_array_index (targets, 0), places);
      return;
    }
  for (guint f = 0; f < sheet->layout->n_faces; f++)
    for (guint t = 0; t < sheet->layout->faces[f].n_tiers; t++, part++)
      add_check_row (
          table, sw_sheet_format (sheet, "%s\n*%s*", title, sw_sheet_place (sheet, f, t)),
          g_ptr_array_index (targets, part), places);
}

static void
add_checks (const SwSheet *sheet, SwFlow *flow)
{
  const SwColumn columns[] = {
    { sw_sheet_get (sheet, "pack.column.check"), SW_CELL_TEXT, 36.0 },
    { sw_sheet_get (sheet, "pack.column.target"), SW_CELL_TEXT, 0.0 },
    { sw_sheet_get (sheet, "pack.column.found"), SW_CELL_TEXT, 42.0 },
    { sw_sheet_get (sheet, "pack.column.meets"), SW_CELL_CHECK, 0.0 },
  };
  SwTable *table =
      sw_table_new (&sheet->pen, SW_STYLE_BODY, columns, G_N_ELEMENTS (columns));

  sw_table_set_ruled (table);
  sw_table_set_row_mm (table, CHECK_ROW_MM);
  for (guint i = 0; i < G_N_ELEMENTS (checks); i++)
    if (sw_sheet_holds (sheet, checks[i].condition))
      add_check_rows (sheet, table, check_id (sheet, checks[i].code), 0);
  sw_flow_heading (flow, sw_sheet_get (sheet, "pack.check.title"));
  sw_flow_table (flow, table);
}

/* Laps and trench at five places, pins in three frames, five pins pulled. */
static void
add_pocket_tests (const SwSheet *sheet, SwFlow *flow)
{
  const SwColumn columns[] = {
    { sw_sheet_get (sheet, "pack.column.measure"), SW_CELL_TEXT, 30.0 },
    { sw_sheet_get (sheet, "pack.column.target"), SW_CELL_TEXT, 0.0 },
    { "1", SW_CELL_TEXT, 14.0 },
    { "2", SW_CELL_TEXT, 14.0 },
    { "3", SW_CELL_TEXT, 14.0 },
    { "4", SW_CELL_TEXT, 14.0 },
    { "5", SW_CELL_TEXT, 14.0 },
    { sw_sheet_get (sheet, "pack.column.meets"), SW_CELL_CHECK, 0.0 },
  };
  SwTable *table =
      sw_table_new (&sheet->pen, SW_STYLE_SMALL, columns, G_N_ELEMENTS (columns));

  G_STATIC_ASSERT (G_N_ELEMENTS (columns) == PLACES_MOST + 3);
  sw_table_set_ruled (table);
  sw_table_set_row_mm (table, WRITE_ROW_MM);
  sw_table_row (table, sw_sheet_get (sheet, "pack.measure.place"), "", "", "", "", "", "",
                NOTHING, NULL);
  for (guint i = 0; i < G_N_ELEMENTS (pocket_tests); i++)
    if (sw_sheet_holds (sheet, pocket_tests[i].condition))
      add_check_rows (sheet, table, check_id (sheet, pocket_tests[i].code),
                      pocket_tests[i].places);
  sw_flow_heading (flow, sw_sheet_get (sheet, "pack.measure.title"));
  sw_flow_text (flow, SW_STYLE_BODY, SW_ROLE_TEXT,
                sw_sheet_get (sheet, "pack.measure.how"));
  sw_flow_tie (flow);
  sw_flow_space (flow, 1.5);
  sw_flow_table (flow, table);
}

void
sw_sheet_inspection_rule (const SwSheet *sheet, SwFlow *flow)
{
  g_autoptr (GHashTable) places = sw_tier_places (sheet, 0, 0);

  sw_flow_text (flow, SW_STYLE_BODY, SW_ROLE_TEXT,
                filled (sheet, places, sw_sheet_inspect_id (sheet, "pack.after.rule")));
  sw_flow_tie (flow);
  sw_flow_text (flow, SW_STYLE_SMALL, SW_ROLE_MUTED,
                sw_sheet_fill (sheet, "pack.after.source", "source",
                               sw_sheet_practice_source (sheet, SW_PRACTICE_INSPECT_DAYS),
                               NULL));
}

static void
add_rule (const SwSheet *sheet, SwFlow *flow)
{
  guint rows;
  const SwColumn columns[] = {
    { sw_sheet_get (sheet, "pack.column.date-why"), SW_CELL_TEXT, 26.0 },
    { sw_sheet_get (sheet, "pack.column.rain"), SW_CELL_TEXT, 19.0 },
    { sw_sheet_get (sheet, "pack.column.place"), SW_CELL_TEXT, 28.0 },
    { sw_sheet_get (sheet, "pack.column.seen"), SW_CELL_TEXT, 0.0 },
    { sw_sheet_get (sheet, "pack.column.photo"), SW_CELL_TEXT, 13.0 },
    { sw_sheet_get (sheet, "pack.column.mend-by"), SW_CELL_TEXT, 24.0 },
    { sw_sheet_get (sheet, "pack.column.done"), SW_CELL_TEXT, 25.0 },
  };
  SwTable *table =
      sw_table_new (&sheet->pen, SW_STYLE_BODY, columns, G_N_ELEMENTS (columns));

  sw_flow_heading (flow, sw_sheet_get (sheet, "pack.after.title"));
  sw_sheet_inspection_rule (sheet, flow);
  sw_flow_tie (flow);
  sw_flow_space (flow, 1.5);
  sw_table_set_ruled (table);
  sw_table_set_row_mm (table, WRITE_ROW_MM);
  rows = sw_sheet_rows_that_fit (sheet, flow, WRITE_ROW_MM);
  rows -= MIN (rows, LOG_HEAD_ROWS);
  if (rows < LOG_ROWS_LEAST)
    rows = LOG_ROWS_MOST; /* a page of their own */
  for (guint i = 0; i < MIN (rows, LOG_ROWS_MOST); i++)
    sw_table_row (table, "", "", "", "", "", "", "", NULL);
  sw_flow_table (flow, table);
}

void
sw_page_inspection (SwSheet *sheet)
{
  SwFlow *flow = sw_sheet_flow (sheet);

  sw_sheet_hold_points (sheet, flow);
  add_checks (sheet, flow);
  add_pocket_tests (sheet, flow);
  sw_sheet_due_dates (sheet, flow);
  sw_sheet_repairs (sheet, flow);
  add_rule (sheet, flow);
  sw_sheet_add (sheet, sw_sheet_get (sheet, "pack.inspection.title"), flow);
}
