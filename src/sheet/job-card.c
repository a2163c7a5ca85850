/* SPDX-License-Identifier: MIT */
#include "sheet.h"

#define COLUMN_GAP_MM 6.0

/* One line of the job card: a label and what the user wrote, or room to write. */
static void
card_line (const SwSheet *sheet, SwTable *table, const char *id, const char *value)
{
  sw_table_row (table, sw_sheet_get (sheet, id), sw_sheet_plain (sheet, value), NULL);
}

/* "12 · rev B · 2026-09-21", of what there is. */
static const char *
joined (const SwSheet *sheet, const char *first, const char *second, const char *third)
{
  const char *parts[] = { first, second, third };
  g_autoptr (GString) text = g_string_new (NULL);

  for (guint i = 0; i < G_N_ELEMENTS (parts); i++)
    if (*parts[i] != '\0')
      g_string_append_printf (text, "%s%s", text->len > 0 ? " · " : "", parts[i]);
  return sw_sheet_format (sheet, "%s", text->str);
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
  card_line (sheet, table, "pack.card.number",
             joined (sheet, card->number,
                     *card->revision != '\0' ? sw_sheet_fill (
                         sheet, "pack.revision", "revision", card->revision, NULL)
                                             : "",
                     card->date));
  card_line (sheet, table, "pack.card.client", card->client);
  card_line (sheet, table, "pack.card.place", card->place);
  card_line (sheet, table, "pack.card.permit", card->permit);
  card_line (sheet, table, "pack.card.authority", card->authority);
  card_line (sheet, table, "pack.card.utility-ticket", card->utility_ticket);
  card_line (sheet, table, "pack.card.supervisor", card->supervisor);
  card_line (sheet, table, "pack.card.prepared-by",
             joined (sheet, card->prepared_by, card->checked_by, ""));
  sw_flow_table (flow, table);
  return flow;
}

void
sw_sheet_emergency (const SwSheet *sheet, SwFlow *flow, double least_mm)
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
  sw_flow_write_in (inner, sw_sheet_get (sheet, "pack.emergency.hospital"));
  sw_flow_write_in (inner, sw_sheet_get (sheet, "pack.emergency.first-aid"));
  sw_flow_write_in (inner, sw_sheet_get (sheet, "pack.emergency.reach"));
  sw_flow_box_tall (flow, SW_ROLE_FRAME, inner, least_mm);
}

/* What a pack cannot know and a crew must. */
void
sw_sheet_before (const SwSheet *sheet, SwFlow *flow)
{
  static const char *const lines[] = { "contract",  "drawings", "coordinates",
                                       "alternate", "hours",    "weather" };
  double width_mm = sw_flow_share_mm (flow, COLUMN_GAP_MM, 2);
  SwFlow *columns[] = { sw_flow_new (&sheet->pen, width_mm),
                        sw_flow_new (&sheet->pen, width_mm) };

  for (guint i = 0; i < G_N_ELEMENTS (lines); i++)
    sw_flow_write_in (
        columns[i % 2],
        sw_sheet_get (sheet, sw_sheet_format (sheet, "pack.before.%s", lines[i])));
  sw_flow_heading (flow, sw_sheet_get (sheet, "pack.before.title"));
  sw_flow_row (flow, COLUMN_GAP_MM, columns, 2);
  sw_flow_space (flow, 2.0);
  sw_flow_text (flow, SW_STYLE_BODY, SW_ROLE_TEXT,
                sw_sheet_get (sheet, "pack.before.superseded"));
}

void
sw_sheet_job_card (const SwSheet *sheet, SwFlow *flow)
{
  double free_mm = sw_flow_width_mm (flow) - COLUMN_GAP_MM;
  SwFlow *card = job_card (sheet, 0.6 * free_mm);
  SwFlow *emergency = sw_flow_new (&sheet->pen, 0.4 * free_mm);

  sw_sheet_emergency (sheet, emergency, sw_flow_height_mm (card));
  sw_flow_row (flow, COLUMN_GAP_MM, (SwFlow *[]){ card, emergency }, 2);
}
