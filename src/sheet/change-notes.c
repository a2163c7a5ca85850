/* SPDX-License-Identifier: MIT */
#include "sheet.h"

#define PLACE_MM 36.0
#define WHO_MM 40.0
#define ROW_MM 9.0
#define ROWS_LEAST 4
/* Of the heading above the rows, with its gaps. */
#define HEADING_MM 14.0

void
sw_sheet_change_notes (SwSheet *sheet, SwFlow *flow)
{
  const SwColumn columns[] = {
    { sw_sheet_get (sheet, "pack.changes.place"), SW_CELL_TEXT, PLACE_MM },
    { sw_sheet_get (sheet, "pack.changes.what"), SW_CELL_TEXT, 0.0 },
    { sw_sheet_get (sheet, "pack.changes.who"), SW_CELL_TEXT, WHO_MM },
  };
  double room_mm = sw_flow_room_mm (flow, sw_sheet_body_height_mm (sheet));
  SwTable *table;
  guint rows;

  sw_sheet_note_end (sheet, flow);
  if (room_mm < (HEADING_MM + (ROWS_LEAST + 1) * ROW_MM) * sheet->pen.scale)
    return;
  table = sw_table_new (&sheet->pen, SW_STYLE_BODY, columns, G_N_ELEMENTS (columns));
  sw_table_set_ruled (table);
  sw_table_set_row_mm (table, ROW_MM);
  sw_flow_heading (flow, sw_sheet_get (sheet, "pack.changes.title"));
  rows = sw_sheet_rows_that_fit (sheet, flow, ROW_MM);
  for (guint i = 0; i < rows; i++)
    sw_table_row (table, "", "", "", NULL);
  sw_flow_table (flow, table);
}
