/* SPDX-License-Identifier: MIT */
#include "measuring.h"
#include <math.h>

#define ROW_MM 10.0
#define TEXT_GAP_MM 1.5
#define OBSTACLES_LEAST 2
#define OBSTACLES_MOST 5
#define HEADING_MM 20.0
#define PHOTO_ROW_MM 8.0
#define PHOTO_ROWS_LEAST 4
#define PHOTO_ROWS_MOST 24

/* Lists to be written: what stands on a face, and photographs. */

void
sw_measuring_title (const SwSheet *sheet, SwFlow *flow, const char *part)
{
  const char *how = sw_sheet_format (sheet, "measuring.%s.how", part);

  sw_flow_heading (
      flow, sw_sheet_get (sheet, sw_sheet_format (sheet, "measuring.%s.title", part)));
  if (!sw_texts_has (sheet->texts, how))
    return;
  sw_flow_text (flow, SW_STYLE_SMALL, SW_ROLE_TEXT, sw_sheet_get (sheet, how));
  sw_flow_tie (flow);
  sw_flow_space (flow, TEXT_GAP_MM);
}

/* How many rows the page has room for below a title with its words. */
static guint
rows_below_title (const SwSheet *sheet, const SwFlow *flow, double row_mm)
{
  guint rows = sw_sheet_rows_that_fit (sheet, flow, row_mm);

  return rows - MIN (rows, (guint) ceil (HEADING_MM / row_mm));
}

static const char *
extent (const SwSheet *sheet, double from_m, double to_m)
{
  return sw_measuring_holds_words (
      sheet, sw_sheet_fill (sheet, "pack.from-to", "from",
                            sw_sheet_quantity (sheet, from_m, SW_UNIT_M), "to",
                            sw_sheet_quantity (sheet, to_m, SW_UNIT_M), NULL));
}

static void
add_held_obstacles (const SwSheet *sheet, SwTable *table, guint face_index)
{
  const SwFaceLayout *face = &sheet->layout->faces[face_index];

  for (guint i = 0; i < face->n_obstacles; i++)
    {
      const SwObstaclePlace *place = &face->obstacles[i];
      const char *id = place->obstacle->id, *name = place->obstacle->name;

      if (place->standing)
        sw_table_row (table,
                      *name == '\0' ? sw_sheet_plain (sheet, id)
                                    : sw_sheet_fill (sheet, "pack.id-and-name", "id", id,
                                                     "name", name, NULL),
                      extent (sheet, place->along_from_m, place->along_to_m),
                      extent (sheet, place->down_from_m, place->down_to_m), "", "", NULL);
    }
}

void
sw_measuring_obstacles (const SwSheet *sheet, SwFlow *flow, guint face)
{
  const SwColumn columns[] = {
    { sw_sheet_get (sheet, "measuring.column.obstacle"), SW_CELL_TEXT, 0.0 },
    { sw_sheet_get (sheet, "pack.column.along"), SW_CELL_BLANK, 48.0 },
    { sw_sheet_get (sheet, "pack.column.down"), SW_CELL_BLANK, 48.0 },
    { sw_sheet_get (sheet, "measuring.column.height"), SW_CELL_TEXT, 18.0 },
    { sw_sheet_get (sheet, "pack.column.photo"), SW_CELL_TEXT, 13.0 },
  };
  SwTable *table =
      sw_table_new (&sheet->pen, SW_STYLE_SMALL, columns, G_N_ELEMENTS (columns));
  guint rows = rows_below_title (sheet, flow, ROW_MM), held;

  sw_table_set_ruled (table);
  sw_table_set_row_mm (table, ROW_MM);
  if (!sw_measuring_is_blank (sheet))
    add_held_obstacles (sheet, table, face);
  held = sw_table_n_rows (table);
  for (guint i = held; i < MAX (CLAMP (rows, OBSTACLES_LEAST, OBSTACLES_MOST), held + 1);
       i++)
    sw_table_row (table, "", "", "", "", "", NULL);
  sw_measuring_title (sheet, flow, "obstacles");
  sw_flow_table (flow, table);
}

/* As many lines as the page has room for, or a page of them. */
void
sw_measuring_photos (const SwSheet *sheet, SwFlow *flow)
{
  const SwColumn columns[] = {
    { sw_sheet_get (sheet, "measuring.column.photo-number"), SW_CELL_TEXT, 14.0 },
    { sw_sheet_get (sheet, "measuring.column.photo-place"), SW_CELL_TEXT, 46.0 },
    { sw_sheet_get (sheet, "measuring.column.photo-way"), SW_CELL_TEXT, 24.0 },
    { sw_sheet_get (sheet, "measuring.column.photo-shows"), SW_CELL_TEXT, 0.0 },
    { sw_sheet_get (sheet, "pack.column.time"), SW_CELL_TEXT, 18.0 },
  };
  SwTable *table =
      sw_table_new (&sheet->pen, SW_STYLE_SMALL, columns, G_N_ELEMENTS (columns));
  guint rows = rows_below_title (sheet, flow, PHOTO_ROW_MM);

  sw_table_set_ruled (table);
  sw_table_set_row_mm (table, PHOTO_ROW_MM);
  if (rows < PHOTO_ROWS_LEAST)
    rows = PHOTO_ROWS_MOST;
  sw_measuring_title (sheet, flow, "photos");
  for (guint i = 0; i < MIN (rows, PHOTO_ROWS_MOST); i++)
    sw_table_row (table, "", "", "", "", "", NULL);
  sw_flow_table (flow, table);
}
