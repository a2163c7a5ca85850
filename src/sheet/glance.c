/* SPDX-License-Identifier: MIT */
#include "sheet.h"
#include <slopewright/judge/spread.h>

#define REVIEW_GAP_MM 3.0
#define COLUMN_GAP_MM 6.0
#define CONTENTS_COLUMNS 3
#define TILE_GAP_MM 3.0
#define MOST_TILES 5
#define SECTION_GAP_MM 4.0
#define SECTION_LEAST_MM 58.0
#define PLAN_MOST_MM 150.0
#define SECTION_MOST_MM 120.0

typedef struct
{
  const char *number, *label;
} Tile;

static guint
collect_pin_tiles (const SwSheet *sheet, Tile *tiles, guint most)
{
  const GArray *orders = sheet->tally->pin_orders;
  guint count = MIN (orders->len, most);

  for (guint i = 0; i < count; i++)
    {
      const SwPinOrder *order = &g_array_index (orders, SwPinOrder, i);
      double length_m = order->pin != NULL ? order->pin->length_m : order->need_m;

      tiles[i].number = sw_sheet_count (sheet, (double) order->order);
      tiles[i].label =
          sw_sheet_fill (sheet,
                         order->boxes == 1  ? "pack.tile.pins-boxed.one"
                         : order->boxes > 0 ? "pack.tile.pins-boxed"
                                            : "pack.tile.pins",
                         "length", sw_sheet_limit (sheet, length_m, SW_LIMIT_LEAST),
                         "boxes", sw_sheet_count (sheet, order->boxes), "count",
                         sw_sheet_count (sheet, (double) order->count), NULL);
    }
  return count;
}

static guint
collect_tiles (const SwSheet *sheet, Tile *tiles)
{
  const SwTally *tally = sheet->tally;
  double trench_m = tally->key_trench_m + tally->slot_m + tally->toe_trench_m;
  guint count = 0;

  tiles[count++] = (Tile){
    sw_sheet_count (sheet, tally->rolls_order),
    sw_sheet_fill (sheet,
                   sw_layout_mixes_rolls (sheet->layout) ? "pack.tile.rolls-mixed"
                                                         : "pack.tile.rolls",
                   "on_hand", sw_sheet_count (sheet, tally->rolls_on_hand), "width",
                   sw_sheet_quantity (sheet, sheet->job->roll_width_m, SW_UNIT_M),
                   "length",
                   sw_sheet_quantity (sheet, sheet->job->roll_length_m, SW_UNIT_M), NULL)
  };
  count += collect_pin_tiles (sheet, tiles + count, 2);
  tiles[count++] =
      (Tile){ sw_sheet_whole_length (sheet, trench_m),
              sw_sheet_fill (sheet, "pack.tile.trench", "key",
                             sw_sheet_whole_length (sheet, tally->key_trench_m), NULL) };
  if (tally->seed_bulk_kg > 0.0)
    tiles[count++] =
        (Tile){ sw_sheet_quantity (sheet, tally->seed_bulk_kg, SW_UNIT_KG),
                sw_sheet_fill (sheet, "pack.tile.seed", "pls",
                               sw_sheet_quantity (sheet, tally->seed_pls_kg, SW_UNIT_KG),
                               NULL) };
  return count;
}

/* Framed numbers that everybody looks for. */
static void
add_tiles (const SwSheet *sheet, SwFlow *flow)
{
  Tile tiles[MOST_TILES];
  guint count = collect_tiles (sheet, tiles);
  double width_mm = sw_flow_share_mm (flow, TILE_GAP_MM, count);
  SwFlow *inners[MOST_TILES];

  for (guint i = 0; i < count; i++)
    {
      inners[i] = sw_flow_new (&sheet->pen, sw_flow_box_width_mm (width_mm));
      sw_flow_text (inners[i], SW_STYLE_NUMBER, SW_ROLE_HEADING, tiles[i].number);
      sw_flow_text (inners[i], SW_STYLE_SMALL, SW_ROLE_TEXT, tiles[i].label);
    }
  sw_flow_space (flow, 4.0);
  sw_flow_boxes (flow, SW_ROLE_FRAME, TILE_GAP_MM, inners, count);
}

static void
add_tiers (const SwSheet *sheet, SwFlow *flow)
{
  const SwColumn columns[] = {
    { sw_sheet_get (sheet, "pack.column.part"), SW_CELL_TEXT, 0.0 },
    { sw_sheet_get (sheet, "pack.column.true-length"), SW_CELL_NUMBER, 0.0 },
    { sw_sheet_get (sheet, "pack.column.gradient"), SW_CELL_LINE, 0.0 },
    { sw_sheet_get (sheet, "pack.column.width"), SW_CELL_NUMBER, 0.0 },
    { sw_sheet_get (sheet, "pack.column.net-area"), SW_CELL_NUMBER, 0.0 },
    { sw_sheet_get (sheet, "pack.column.runs"), SW_CELL_NUMBER, 0.0 },
    { sw_sheet_get (sheet, "pack.column.run-length"), SW_CELL_NUMBER, 0.0 },
  };
  SwTable *table =
      sw_table_new (&sheet->pen, SW_STYLE_BODY, columns, G_N_ELEMENTS (columns));

  for (guint f = 0; f < sheet->layout->n_faces; f++)
    for (guint t = 0; t < sheet->layout->faces[f].n_tiers; t++)
      {
        const SwTier *tier = &sheet->layout->faces[f].tiers[t];

        sw_table_row (table, sw_sheet_place (sheet, f, t),
                      sw_sheet_quantity (sheet, tier->length_m, SW_UNIT_M),
                      sw_sheet_quantity (sheet, tier->mean_rad, SW_UNIT_RAD),
                      sw_sheet_quantity (sheet, tier->width_m, SW_UNIT_M),
                      sw_sheet_quantity (sheet, tier->net_m2, SW_UNIT_M2),
                      sw_sheet_count (sheet, tier->n_runs),
                      sw_sheet_cut_range (sheet, f, t), NULL);
      }
  sw_flow_heading (flow, sw_sheet_get (sheet, "pack.tiers.title"));
  sw_flow_table (flow, table);
}

/* "21", or "21 to 23". */
static const char *
band (const SwSheet *sheet, SwBand of)
{
  const char *low = sw_sheet_count (sheet, of.low);
  const char *high = sw_sheet_count (sheet, of.high);

  if (g_str_equal (low, high))
    return low;
  return sw_sheet_fill (sheet, "pack.from-to", "from", low, "to", high, NULL);
}

/* How far the measuring errors of the faces carry. */
static void
add_spread (const SwSheet *sheet, SwFlow *flow)
{
  g_autoptr (SwSpread) spread = sw_spread_new (sheet->result);
  const char *source;

  if (spread == NULL || !spread->any)
    return;
  source = sw_sheet_get (sheet, sw_sheet_format (sheet, "error-source.%s",
                                                 sw_error_source_code (spread->largest)));
  sw_flow_text (flow, SW_STYLE_BODY, SW_ROLE_TEXT,
                sw_sheet_fill (sheet, "pack.basis.spread", "rolls",
                               band (sheet, spread->rolls), "runs",
                               band (sheet, spread->runs), "pins",
                               band (sheet, spread->pins), "source", source, NULL));
}

/* Soils of a face besides its own. */
static void
add_zone_basis (const SwSheet *sheet, SwFlow *flow, guint face_index)
{
  const GPtrArray *zones = sheet->layout->faces[face_index].face->zones;

  for (guint i = 0; i < zones->len; i++)
    {
      const SwZone *zone = g_ptr_array_index (zones, i);
      const SwSoil *soil = sw_catalogue_soil (sheet->layout->catalogue, zone->soil_id);

      sw_flow_text (
          flow, SW_STYLE_BODY, SW_ROLE_TEXT,
          sw_sheet_fill (sheet,
                         sw_sheet_format (sheet, "pack.basis.zone-%s%s",
                                          zone->loose ? "loose" : "firm",
                                          zone->topsoil_m > 0.0 ? "-topsoil" : ""),
                         "face", sw_sheet_face (sheet, face_index), "zone", zone->id,
                         "soil", sw_sheet_get (sheet, soil->name_id), "topsoil",
                         sw_sheet_quantity (sheet, zone->topsoil_m, SW_UNIT_SMALL_M),
                         NULL));
    }
}

/* What the numbers rest on, in a few lines. */
static void
add_basis (const SwSheet *sheet, SwFlow *flow)
{
  const SwPractice *practice = sheet->practice;
  const SwJob *job = sheet->job;

  sw_flow_heading (flow, sw_sheet_get (sheet, "pack.basis.title"));
  sw_flow_text (flow, SW_STYLE_BODY, SW_ROLE_TEXT,
                sw_sheet_fill (sheet, "pack.basis.practice", "name",
                               sw_sheet_practice_name (sheet), "edition",
                               sw_sheet_get (sheet, practice->edition_id), "agency",
                               sw_sheet_get (sheet, practice->agency_id), NULL));
  sw_flow_text (
      flow, SW_STYLE_BODY, SW_ROLE_TEXT,
      sw_sheet_fill (sheet, "pack.basis.blanket", "blanket", sw_sheet_blanket (sheet),
                     "width", sw_sheet_quantity (sheet, job->roll_width_m, SW_UNIT_M),
                     "length", sw_sheet_quantity (sheet, job->roll_length_m, SW_UNIT_M),
                     NULL));
  for (guint f = 0; f < sheet->layout->n_faces; f++)
    {
      const SwFace *face = sheet->layout->faces[f].face;
      const SwSoil *soil = sw_catalogue_soil (sheet->layout->catalogue, face->soil_id);
      const char *obtained =
          sw_sheet_get (sheet, sw_sheet_format (sheet, "obtained.%s",
                                                sw_obtained_code (face->obtained)));

      sw_flow_text (
          flow, SW_STYLE_BODY, SW_ROLE_TEXT,
          sw_sheet_fill (sheet,
                         sw_sheet_format (sheet, "pack.basis.face-%s%s",
                                          face->loose ? "loose" : "firm",
                                          face->topsoil_m > 0.0 ? "-topsoil" : ""),
                         "face", sw_sheet_face (sheet, f), "obtained", obtained, "soil",
                         sw_sheet_get (sheet, soil->name_id), "topsoil",
                         sw_sheet_quantity (sheet, face->topsoil_m, SW_UNIT_SMALL_M),
                         NULL));
      sw_flow_text (flow, SW_STYLE_BODY, SW_ROLE_TEXT,
                    sw_sheet_fill (sheet, "pack.basis.soil-known", "face",
                                   sw_sheet_face (sheet, f), "known",
                                   sw_sheet_soil_known (sheet, f), NULL));
      add_zone_basis (sheet, flow, f);
    }
  add_spread (sheet, flow);
}

void
sw_sheet_section (const SwSheet *sheet, SwFlow *flow, guint face, double most_mm)
{
  double width_mm = sw_flow_width_mm (flow);
  double height_mm = sw_sheet_drawing_mm (sheet, sw_section_fit, face, width_mm, most_mm);
  SwView view =
      sw_section_fit (sheet->result, face, width_mm, height_mm, sheet->draw, NULL);

  sw_flow_drawing (flow, sw_draw_section (sheet->result, face, &view, sheet->draw));
}

static SwTable *
contents_table (const SwSheet *sheet, guint from, guint to)
{
  const SwColumn columns[] = { { "", SW_CELL_TEXT, 0.0 }, { "", SW_CELL_NUMBER, 14.0 } };
  SwTable *table =
      sw_table_new (&sheet->pen, SW_STYLE_BODY, columns, G_N_ELEMENTS (columns));

  for (guint i = from; i < to; i++)
    {
      const SwSheetEntry *entry = &g_array_index (sheet->contents, SwSheetEntry, i);

      sw_table_row (table, sw_sheet_plain (sheet, entry->title),
                    sw_sheet_format (sheet, "%u", sw_sheet_entry_page (sheet, entry)),
                    NULL);
      sw_table_link (table, entry->title);
    }
  return table;
}

/* The other pages with their numbers, in columns. */
static void
add_contents (const SwSheet *sheet, SwFlow *flow)
{
  double width_mm = sw_flow_share_mm (flow, COLUMN_GAP_MM, CONTENTS_COLUMNS);
  guint count = sheet->contents->len;
  guint each = (count + CONTENTS_COLUMNS - 1) / CONTENTS_COLUMNS;
  SwFlow *columns[CONTENTS_COLUMNS];

  for (guint i = 0; i < CONTENTS_COLUMNS; i++)
    {
      columns[i] = sw_flow_new (&sheet->pen, width_mm);
      sw_flow_table (columns[i], contents_table (sheet, MIN (i * each, count),
                                                 MIN ((i + 1) * each, count)));
    }
  sw_flow_heading (flow, sw_sheet_get (sheet, "pack.contents.title"));
  sw_flow_row (flow, COLUMN_GAP_MM, columns, CONTENTS_COLUMNS);
}

static void
add_notes (const SwSheet *sheet, SwFlow *flow)
{
  if (*sheet->job->card.notes == '\0')
    return;
  sw_flow_heading (flow, sw_sheet_get (sheet, "pack.card.notes"));
  sw_flow_text (flow, SW_STYLE_BODY, SW_ROLE_TEXT,
                sw_sheet_plain (sheet, sheet->job->card.notes));
}

/* Plans that found no room on their layout page. */
static void
add_plans (const SwSheet *sheet, SwFlow *flow)
{
  for (guint i = 0; i < sheet->plans->len; i++)
    {
      double room_mm = sw_sheet_plan_room_mm (sheet, flow);

      sw_sheet_plan (sheet, flow, g_array_index (sheet->plans, guint, i),
                     room_mm > 0.0 ? room_mm : PLAN_MOST_MM * sheet->pen.scale);
    }
}

/* A translation that nobody of the trade has read says so before anything else. */
void
sw_sheet_review (const SwSheet *sheet, SwFlow *flow)
{
  if (!sw_texts_has (sheet->texts, "language.review"))
    return;
  sw_flow_text (flow, SW_STYLE_BODY, SW_ROLE_TEXT,
                sw_sheet_get (sheet, "language.review"));
  sw_flow_space (flow, REVIEW_GAP_MM);
}

/* The section takes the height that the rest of the first page leaves. */
void
sw_page_glance (SwSheet *sheet)
{
  SwFlow *flow = sw_sheet_flow (sheet);
  double body_mm = sw_sheet_body_height_mm (sheet);

  sw_sheet_review (sheet, flow);
  sw_sheet_job_card (sheet, flow);
  add_tiles (sheet, flow);
  add_tiers (sheet, flow);
  for (guint face = 0; face < sheet->layout->n_faces; face++)
    {
      double room_mm = sw_flow_room_mm (flow, body_mm) - SECTION_GAP_MM;

      sw_flow_space (flow, SECTION_GAP_MM);
      sw_sheet_section (sheet, flow, face,
                        CLAMP (room_mm, SECTION_LEAST_MM * sheet->pen.scale,
                               SECTION_MOST_MM * sheet->pen.scale));
    }
  sw_sheet_findings (sheet, flow);
  add_contents (sheet, flow);
  add_notes (sheet, flow);
  add_basis (sheet, flow);
  sw_sheet_before (sheet, flow);
  add_plans (sheet, flow);
  sw_sheet_change_notes (sheet, flow);
  sw_sheet_add (sheet, sw_sheet_get (sheet, "pack.glance.title"), flow);
}
