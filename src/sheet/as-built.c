/* SPDX-License-Identifier: MIT */
#include "sheet.h"

#define RECORD_ROW_MM 7.5
#define SIGN_ROW_MM 11.7
#define OPEN_ROW_MM 9.0
#define HEADING_ROWS 2 /* height of the heading above them */
#define OPEN_ROWS_LEAST 3
#define OPEN_ROWS_MOST 9

static void
add_runs (const SwSheet *sheet, SwFlow *flow)
{
  const SwColumn columns[] = {
    { sw_sheet_get (sheet, "pack.column.run"), SW_CELL_NUMBER, 0.0 },
    { sw_sheet_get (sheet, "pack.column.planned"), SW_CELL_NUMBER, 0.0 },
    { sw_sheet_get (sheet, "pack.column.lot"), SW_CELL_TEXT, 0.0 },
    { sw_sheet_get (sheet, "pack.column.laid"), SW_CELL_TEXT, 0.0 },
    { sw_sheet_get (sheet, "pack.column.joints-placed"), SW_CELL_TEXT, 0.0 },
    { sw_sheet_get (sheet, "pack.column.pins-used"), SW_CELL_TEXT, 0.0 },
    { sw_sheet_get (sheet, "pack.column.photo"), SW_CELL_TEXT, 13.0 },
    { sw_sheet_get (sheet, "pack.column.changes"), SW_CELL_TEXT, 36.0 },
  };
  SwTable *table =
      sw_table_new (&sheet->pen, SW_STYLE_BODY, columns, G_N_ELEMENTS (columns));

  sw_table_set_ruled (table);
  sw_table_set_row_mm (table, RECORD_ROW_MM);
  for (guint f = 0; f < sheet->layout->n_faces; f++)
    for (guint r = 0; r < sheet->layout->faces[f].n_runs; r++)
      {
        const SwRun *run = &sheet->layout->faces[f].runs[r];
        const char *label = sw_sheet_keep (sheet, sw_run_label (run));

        sw_table_row (
            table,
            sw_sheet_format (sheet, "%s-%s", sheet->layout->faces[f].face->id, label),
            sw_sheet_quantity (sheet, run->cut_m, SW_UNIT_M), "", "", "", "", "", "",
            NULL);
      }
  sw_flow_text (flow, SW_STYLE_BODY, SW_ROLE_TEXT,
                sw_sheet_get (sheet, "pack.as-built.how"));
  sw_flow_tie (flow);
  sw_flow_space (flow, 1.5);
  sw_flow_table (flow, table);
}

static void
used_row (const SwSheet *sheet, SwTable *table, const char *what, const char *planned)
{
  sw_table_row (table, what, planned, "", "", NULL);
}

static void
add_used_pins (const SwSheet *sheet, SwTable *table)
{
  for (guint i = 0; i < sheet->tally->pin_orders->len; i++)
    {
      const SwPinOrder *order = &g_array_index (sheet->tally->pin_orders, SwPinOrder, i);
      double length_m = order->pin != NULL ? order->pin->length_m : order->need_m;

      used_row (sheet, table,
                sw_sheet_fill (sheet, "pack.used.pins", "length",
                               sw_sheet_limit (sheet, length_m, SW_LIMIT_LEAST), NULL),
                sw_sheet_count (sheet, (double) order->count));
    }
}

/* What was used against what was planned, and what is kept. */
static void
add_used (const SwSheet *sheet, SwFlow *flow)
{
  const SwColumn columns[] = {
    { sw_sheet_get (sheet, "pack.used.what"), SW_CELL_TEXT, 52.0 },
    { sw_sheet_get (sheet, "pack.used.planned"), SW_CELL_NUMBER, 26.0 },
    { sw_sheet_get (sheet, "pack.used.used"), SW_CELL_TEXT, 30.0 },
    { sw_sheet_get (sheet, "pack.used.why"), SW_CELL_TEXT, 0.0 },
  };
  SwTable *table =
      sw_table_new (&sheet->pen, SW_STYLE_BODY, columns, G_N_ELEMENTS (columns));
  const SwTally *tally = sheet->tally;

  sw_table_set_ruled (table);
  sw_table_set_whole (table);
  sw_table_set_row_mm (table, RECORD_ROW_MM);
  used_row (sheet, table, sw_sheet_get (sheet, "pack.used.rolls"),
            sw_sheet_count (sheet, sheet->layout->rolls));
  add_used_pins (sheet, table);
  used_row (sheet, table, sw_sheet_get (sheet, "pack.used.trench"),
            sw_sheet_quantity (sheet,
                               tally->key_trench_m + tally->slot_m + tally->toe_trench_m,
                               SW_UNIT_M));
  if (tally->seed_bulk_kg > 0.0)
    used_row (sheet, table, sw_sheet_get (sheet, "pack.used.seed"),
              sw_sheet_quantity (sheet, tally->seed_bulk_kg, SW_UNIT_KG));
  used_row (sheet, table, sw_sheet_get (sheet, "pack.used.offcuts"),
            sw_sheet_quantity (sheet, tally->offcut_length_m, SW_UNIT_M));
  sw_flow_heading (flow, sw_sheet_get (sheet, "pack.used.title"));
  sw_flow_table (flow, table);
}

static void
add_sign_off (const SwSheet *sheet, SwFlow *flow)
{
  static const char *const roles[] = { "crew-lead", "supervisor", "inspector" };
  const SwColumn columns[] = {
    { sw_sheet_get (sheet, "pack.column.role"), SW_CELL_TEXT, 30.0 },
    { sw_sheet_get (sheet, "pack.column.name"), SW_CELL_TEXT, 0.0 },
    { sw_sheet_get (sheet, "pack.column.signature"), SW_CELL_TEXT, 0.0 },
    { sw_sheet_get (sheet, "pack.column.date"), SW_CELL_TEXT, 24.0 },
    { sw_sheet_get (sheet, "pack.column.open-items"), SW_CELL_TEXT, 0.0 },
  };
  SwTable *table =
      sw_table_new (&sheet->pen, SW_STYLE_BODY, columns, G_N_ELEMENTS (columns));

  sw_table_set_ruled (table);
  sw_table_set_whole (table);
  sw_table_set_row_mm (table, SIGN_ROW_MM);
  for (guint i = 0; i < G_N_ELEMENTS (roles); i++)
    sw_table_row (table,
                  sw_sheet_get (sheet, sw_sheet_format (sheet, "pack.role.%s", roles[i])),
                  "", "", "", "", NULL);
  sw_flow_heading (flow, sw_sheet_get (sheet, "pack.sign-off.title"));
  sw_flow_text (flow, SW_STYLE_BODY, SW_ROLE_TEXT,
                sw_sheet_get (sheet, "pack.sign-off.how"));
  sw_flow_tie (flow);
  sw_flow_space (flow, 1.5);
  sw_flow_table (flow, table);
  sw_flow_write_in (flow, sw_sheet_get (sheet, "pack.sign-off.next"));
}

/* As many lines as the page has room for; the sign-off has a column for them too. */
static void
add_open_items (const SwSheet *sheet, SwFlow *flow)
{
  const SwColumn columns[] = {
    { sw_sheet_get (sheet, "pack.open.item"), SW_CELL_TEXT, 0.0 },
    { sw_sheet_get (sheet, "pack.open.who"), SW_CELL_TEXT, 30.0 },
    { sw_sheet_get (sheet, "pack.open.due"), SW_CELL_TEXT, 24.0 },
    { sw_sheet_get (sheet, "pack.open.closed"), SW_CELL_TEXT, 34.0 },
  };
  guint rows = sw_sheet_rows_that_fit (sheet, flow, OPEN_ROW_MM);
  SwTable *table;

  if (rows < OPEN_ROWS_LEAST + HEADING_ROWS)
    return;
  table = sw_table_new (&sheet->pen, SW_STYLE_BODY, columns, G_N_ELEMENTS (columns));
  sw_table_set_ruled (table);
  sw_table_set_row_mm (table, OPEN_ROW_MM);
  for (guint i = 0; i < MIN (rows - HEADING_ROWS, OPEN_ROWS_MOST); i++)
    sw_table_row (table, "", "", "", "", NULL);
  sw_flow_heading (flow, sw_sheet_get (sheet, "pack.open.title"));
  sw_flow_table (flow, table);
}

void
sw_page_as_built (SwSheet *sheet)
{
  SwFlow *flow = sw_sheet_flow (sheet);

  add_runs (sheet, flow);
  add_used (sheet, flow);
  add_sign_off (sheet, flow);
  add_open_items (sheet, flow);
  sw_sheet_add (sheet, sw_sheet_get (sheet, "pack.as-built.title"), flow);
}
