/* SPDX-License-Identifier: MIT */
#include "sheet.h"

#define COLUMN_GAP_MM 6.0
#define TILE_GAP_MM 3.0
#define TILE_PAD_MM 2.2
#define SECTION_LEAST_MM 58.0
#define SECTION_MOST_MM 120.0

/* One line of the job card: a label and what the user wrote, or room to write. */
static void
card_line (const SwSheet *sheet, SwTable *table, const char *id, const char *value)
{
  sw_table_row (table, sw_sheet_get (sheet, id), sw_sheet_plain (sheet, value), NULL);
}

static SwFlow *
job_card (const SwSheet *sheet, double width_mm)
{
  const SwJobCard *card = &sheet->job->card;
  SwFlow *flow = sw_flow_new (&sheet->pen, width_mm);
  const SwColumn columns[] = { { "", SW_CELL_TEXT, 27.0 }, { "", SW_CELL_TEXT, 0.0 } };
  SwTable *table =
      sw_table_new (&sheet->pen, SW_STYLE_BODY, columns, G_N_ELEMENTS (columns));

  card_line (sheet, table, "pack.card.name", card->name);
  card_line (
      sheet, table, "pack.card.number",
      sw_sheet_format (sheet, "%s%s%s", card->number,
                       *card->number != '\0' && *card->revision != '\0' ? " · " : "",
                       *card->revision != '\0' ? sw_sheet_fill (
                           sheet, "pack.revision", "revision", card->revision, NULL)
                                               : ""));
  card_line (sheet, table, "pack.card.date", card->date);
  card_line (sheet, table, "pack.card.client", card->client);
  card_line (sheet, table, "pack.card.place", card->place);
  card_line (sheet, table, "pack.card.permit", card->permit);
  card_line (sheet, table, "pack.card.authority", card->authority);
  card_line (sheet, table, "pack.card.utility-ticket", card->utility_ticket);
  card_line (sheet, table, "pack.card.supervisor", card->supervisor);
  card_line (sheet, table, "pack.card.prepared-by", card->prepared_by);
  card_line (sheet, table, "pack.card.checked-by", card->checked_by);
  sw_flow_table (flow, table);
  return flow;
}

void
sw_sheet_emergency (const SwSheet *sheet, SwFlow *flow)
{
  const SwJobCard *card = &sheet->job->card;
  SwFlow *inner =
      sw_flow_new (&sheet->pen, sw_flow_box_width_mm (sw_flow_width_mm (flow)));

  sw_flow_heading (inner, sw_sheet_get (sheet, "pack.emergency.title"));
  if (*card->emergency != '\0')
    sw_flow_text (inner, SW_STYLE_CREW, SW_ROLE_TEXT,
                  sw_sheet_plain (sheet, card->emergency));
  else
    {
      sw_flow_write_in (inner, sw_sheet_get (sheet, "pack.emergency.number"));
      sw_flow_write_in (inner, sw_sheet_get (sheet, "pack.emergency.tell"));
    }
  sw_flow_space (inner, 2.0);
  if (*card->muster != '\0')
    sw_flow_text (
        inner, SW_STYLE_CREW, SW_ROLE_TEXT,
        sw_sheet_fill (sheet, "pack.emergency.muster-at", "place", card->muster, NULL));
  else
    sw_flow_write_in (inner, sw_sheet_get (sheet, "pack.emergency.muster"));
  sw_flow_write_in (inner, sw_sheet_get (sheet, "pack.emergency.first-aid"));
  sw_flow_box (flow, SW_ROLE_FRAME, inner);
}

static void
add_card_and_emergency (const SwSheet *sheet, SwFlow *flow)
{
  double free_mm = sw_flow_width_mm (flow) - COLUMN_GAP_MM;
  SwFlow *card = job_card (sheet, 0.6 * free_mm);
  SwFlow *emergency = sw_flow_new (&sheet->pen, 0.4 * free_mm);

  sw_sheet_emergency (sheet, emergency);
  sw_flow_row (flow, COLUMN_GAP_MM, (SwFlow *[]){ card, emergency }, 2);
}

/* A framed number that everybody looks for. */
static SwFlow *
tile (const SwSheet *sheet, double width_mm, const char *number, const char *label)
{
  SwFlow *inner = sw_flow_new (&sheet->pen, sw_flow_box_width_mm (width_mm));
  SwFlow *outer = sw_flow_new (&sheet->pen, width_mm);

  sw_flow_text (inner, SW_STYLE_NUMBER, SW_ROLE_HEADING, number);
  sw_flow_text (inner, SW_STYLE_SMALL, SW_ROLE_TEXT, label);
  sw_flow_box (outer, SW_ROLE_FRAME, inner);
  return outer;
}

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
      tiles[i].label = sw_sheet_fill (
          sheet, order->boxes > 0 ? "pack.tile.pins-boxed" : "pack.tile.pins", "length",
          sw_sheet_quantity (sheet, length_m, SW_UNIT_SMALL_M), "boxes",
          sw_sheet_count (sheet, order->boxes), "count",
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
    sw_sheet_fill (sheet, "pack.tile.rolls", "width",
                   sw_sheet_quantity (sheet, sheet->job->roll_width_m, SW_UNIT_M),
                   "length",
                   sw_sheet_quantity (sheet, sheet->job->roll_length_m, SW_UNIT_M), NULL)
  };
  count += collect_pin_tiles (sheet, tiles + count, 2);
  tiles[count++] =
      (Tile){ sw_sheet_quantity (sheet, trench_m, SW_UNIT_M),
              sw_sheet_fill (sheet, "pack.tile.trench", "key",
                             sw_sheet_quantity (sheet, tally->key_trench_m, SW_UNIT_M),
                             NULL) };
  if (tally->seed_bulk_kg > 0.0)
    tiles[count++] =
        (Tile){ sw_sheet_quantity (sheet, tally->seed_bulk_kg, SW_UNIT_KG),
                sw_sheet_fill (sheet, "pack.tile.seed", "pls",
                               sw_sheet_quantity (sheet, tally->seed_pls_kg, SW_UNIT_KG),
                               NULL) };
  return count;
}

static void
add_tiles (const SwSheet *sheet, SwFlow *flow)
{
  Tile tiles[6];
  guint count = collect_tiles (sheet, tiles);
  double width_mm = (sw_flow_width_mm (flow) - (count - 1) * TILE_GAP_MM) / count;
  SwFlow *columns[6];

  for (guint i = 0; i < count; i++)
    columns[i] = tile (sheet, width_mm, tiles[i].number, tiles[i].label);
  sw_flow_space (flow, 4.0);
  sw_flow_row (flow, TILE_GAP_MM, columns, count);
}

static void
add_tiers (const SwSheet *sheet, SwFlow *flow)
{
  const SwColumn columns[] = {
    { sw_sheet_get (sheet, "pack.column.part"), SW_CELL_TEXT, 0.0 },
    { sw_sheet_get (sheet, "pack.column.true-length"), SW_CELL_NUMBER, 0.0 },
    { sw_sheet_get (sheet, "pack.column.gradient"), SW_CELL_TEXT, 0.0 },
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

        sw_table_row (
            table, sw_sheet_plain (sheet, sw_sheet_place (sheet, f, (int) t)),
            sw_sheet_quantity (sheet, tier->length_m, SW_UNIT_M),
            sw_sheet_quantity (sheet, tier->mean_rad, SW_UNIT_RAD),
            sw_sheet_quantity (sheet, tier->along_to_m - tier->along_from_m, SW_UNIT_M),
            sw_sheet_quantity (sheet, tier->net_m2, SW_UNIT_M2),
            sw_sheet_count (sheet, tier->n_runs), sw_sheet_cut_range (sheet, f, t), NULL);
      }
  sw_flow_heading (flow, sw_sheet_get (sheet, "pack.tiers.title"));
  sw_flow_table (flow, table);
}

static void
add_findings (const SwSheet *sheet, SwFlow *flow)
{
  const SwColumn columns[] = { { "", SW_CELL_TEXT, 18.0 }, { "", SW_CELL_TEXT, 0.0 } };
  SwTable *table =
      sw_table_new (&sheet->pen, SW_STYLE_BODY, columns, G_N_ELEMENTS (columns));
  const GPtrArray *findings = sheet->result->findings;

  sw_flow_heading (flow, sw_sheet_get (sheet, "pack.findings.title"));
  for (guint i = 0; i < findings->len; i++)
    {
      const SwFinding *finding = g_ptr_array_index (findings, i);
      const char *severity =
          sw_sheet_get (sheet, sw_sheet_format (sheet, "severity.%s",
                                                sw_severity_code (finding->severity)));
      const char *basis = sw_sheet_get (
          sheet, sw_sheet_format (sheet, "finding.%s.basis", finding->code));
      const char *title =
          sw_sheet_keep (sheet, sw_report_finding_title (finding, sheet->texts));
      const char *text = sw_sheet_keep (
          sheet, sw_report_finding_text (sheet->result, finding, sheet->texts,
                                         sheet->draw->style));

      sw_table_row (table, sw_sheet_format (sheet, "*%s*", severity),
                    sw_sheet_fill (sheet, "pack.findings.row", "title", title, "text",
                                   text, "basis", basis, NULL),
                    NULL);
    }
  if (findings->len == 0)
    sw_flow_text (flow, SW_STYLE_BODY, SW_ROLE_TEXT,
                  sw_sheet_get (sheet, "pack.findings.none"));
  sw_flow_table (flow, table);
}

/* What the numbers rest on, in a few lines. */
static void
add_basis (const SwSheet *sheet, SwFlow *flow)
{
  const SwPractice *practice = sheet->practice;
  const SwJob *job = sheet->job;

  sw_flow_heading (flow, sw_sheet_get (sheet, "pack.basis.title"));
  sw_flow_text (flow, SW_STYLE_BODY, SW_ROLE_TEXT,
                sw_sheet_fill (sheet, "pack.basis.practice", "name", practice->name,
                               "edition", practice->edition, "agency", practice->agency,
                               NULL));
  sw_flow_text (
      flow, SW_STYLE_BODY, SW_ROLE_TEXT,
      sw_sheet_fill (sheet, "pack.basis.blanket", "blanket",
                     sw_sheet_get (sheet, sheet->layout->blanket->name_id), "width",
                     sw_sheet_quantity (sheet, job->roll_width_m, SW_UNIT_M), "length",
                     sw_sheet_quantity (sheet, job->roll_length_m, SW_UNIT_M), NULL));
  for (guint f = 0; f < sheet->layout->n_faces; f++)
    {
      const SwFace *face = sheet->layout->faces[f].face;
      const SwSoil *soil = sw_catalogue_soil (sheet->layout->catalogue, face->soil_id);
      const char *obtained =
          sw_sheet_get (sheet, sw_sheet_format (sheet, "obtained.%s",
                                                sw_obtained_code (face->obtained)));

      sw_flow_text (
          flow, SW_STYLE_BODY, SW_ROLE_TEXT,
          sw_sheet_fill (
              sheet, face->loose ? "pack.basis.face-loose" : "pack.basis.face-firm",
              "face", sw_sheet_place (sheet, f, -1), "obtained", obtained, "soil",
              sw_sheet_get (sheet, soil->name_id), "topsoil",
              sw_sheet_quantity (sheet, face->topsoil_m, SW_UNIT_SMALL_M), NULL));
    }
}

static void
add_section (const SwSheet *sheet, SwFlow *flow, guint face, double height_mm)
{
  SwView view = sw_section_fit (sheet->result, face, sw_flow_width_mm (flow), height_mm,
                                sheet->draw, NULL);

  sw_flow_space (flow, 4.0);
  sw_flow_drawing (flow, sw_draw_section (sheet->result, face, &view, sheet->draw));
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

/* The section takes the height that the rest of the first page leaves. */
void
sw_page_glance (SwSheet *sheet)
{
  SwFlow *flow = sw_sheet_flow (sheet), *tiers = sw_sheet_flow (sheet);
  double body_mm = sw_sheet_body_height_mm (sheet), free_mm;

  add_card_and_emergency (sheet, flow);
  add_tiles (sheet, flow);
  add_tiers (sheet, tiers);
  free_mm = body_mm - sw_flow_height_mm (flow) - sw_flow_height_mm (tiers) - 12.0;
  sw_flow_free (tiers);
  for (guint face = 0; face < sheet->layout->n_faces; face++)
    add_section (sheet, flow, face,
                 CLAMP (free_mm, SECTION_LEAST_MM * sheet->pen.scale,
                        SECTION_MOST_MM * sheet->pen.scale));
  add_tiers (sheet, flow);
  add_findings (sheet, flow);
  add_notes (sheet, flow);
  add_basis (sheet, flow);
  sw_sheet_add (sheet, sw_sheet_get (sheet, "pack.glance.title"), flow);
}
