/* SPDX-License-Identifier: MIT */
#include "sheet.h"
#include <slopewright/base/count.h>

/* What stands on a face, and the soils it is made of, as the crew has to find them. */

static const char *
named (const SwSheet *sheet, const char *id, const char *name)
{
  if (*name == '\0')
    return sw_sheet_plain (sheet, id);
  return sw_sheet_fill (sheet, "pack.id-and-name", "id", id, "name", name, NULL);
}

static const char *
extent (const SwSheet *sheet, double from_m, double to_m)
{
  return sw_sheet_fill (sheet, "pack.from-to", "from",
                        sw_sheet_quantity (sheet, from_m, SW_UNIT_M), "to",
                        sw_sheet_quantity (sheet, to_m, SW_UNIT_M), NULL);
}

static gboolean
has_obstacles (const SwFaceLayout *face)
{
  for (guint i = 0; i < face->n_obstacles; i++)
    if (face->obstacles[i].standing)
      return TRUE;
  return FALSE;
}

void
sw_sheet_obstacles (const SwSheet *sheet, SwFlow *flow, guint face_index)
{
  const SwFaceLayout *face = &sheet->layout->faces[face_index];
  const SwColumn columns[] = {
    { sw_sheet_get (sheet, "pack.column.obstacle"), SW_CELL_TEXT, 0.0 },
    { sw_sheet_get (sheet, "pack.column.along"), SW_CELL_LINE, 0.0 },
    { sw_sheet_get (sheet, "pack.column.down"), SW_CELL_LINE, 0.0 },
    { sw_sheet_get (sheet, "pack.column.area"), SW_CELL_NUMBER, 0.0 },
    { sw_sheet_get (sheet, "pack.column.collar"), SW_CELL_NUMBER, 0.0 },
  };
  SwTable *table;

  if (!has_obstacles (face))
    return;
  table = sw_table_new (&sheet->pen, SW_STYLE_BODY, columns, G_N_ELEMENTS (columns));
  for (guint i = 0; i < face->n_obstacles; i++)
    {
      const SwObstaclePlace *place = &face->obstacles[i];
      const char *area = sw_sheet_quantity (sheet, place->area_m2, SW_UNIT_M2);

      if (!place->standing)
        continue;
      sw_table_row (table, named (sheet, place->obstacle->id, place->obstacle->name),
                    extent (sheet, place->along_from_m, place->along_to_m),
                    extent (sheet, place->down_from_m, place->down_to_m),
                    place->deducted ? sw_sheet_fill (sheet, "pack.obstacle.deducted",
                                                     "area", area, NULL)
                                    : area,
                    sw_sheet_quantity (sheet, place->collar_m2, SW_UNIT_M2), NULL);
    }
  sw_flow_heading (flow, sw_sheet_get (sheet, "pack.obstacles.title"));
  sw_flow_text (
      flow, SW_STYLE_BODY, SW_ROLE_TEXT,
      sw_sheet_fill (sheet, "pack.obstacles.how", "overlap",
                     sw_sheet_practice (sheet, SW_PRACTICE_COLLAR_M), "spacing",
                     sw_sheet_practice (sheet, SW_PRACTICE_RING_PIN_M), "pins",
                     sw_sheet_count (sheet, (double) face->pins_by_role[SW_PIN_RING]),
                     NULL));
  sw_flow_tie (flow);
  sw_flow_space (flow, 1.5);
  sw_flow_table (flow, table);
}

void
sw_sheet_soils (const SwSheet *sheet, SwFlow *flow, guint face_index)
{
  const SwFaceLayout *face = &sheet->layout->faces[face_index];
  const SwColumn columns[] = {
    { sw_sheet_get (sheet, "pack.column.zone"), SW_CELL_TEXT, 0.0 },
    { sw_sheet_get (sheet, "pack.column.soil"), SW_CELL_TEXT, 0.0 },
    { sw_sheet_get (sheet, "pack.column.pin-length"), SW_CELL_NUMBER, 0.0 },
    { sw_sheet_get (sheet, "pack.column.pins"), SW_CELL_NUMBER, 0.0 },
  };
  SwTable *table;

  if (face->n_pin_lengths < 2)
    return;
  table = sw_table_new (&sheet->pen, SW_STYLE_BODY, columns, G_N_ELEMENTS (columns));
  for (guint i = 0; i < face->n_pin_lengths; i++)
    {
      const SwPinLength *length = &face->pin_lengths[i];
      const SwZone *zone = length->zone;
      const SwSoil *soil = sw_catalogue_soil (
          sheet->layout->catalogue, zone != NULL ? zone->soil_id : face->face->soil_id);
      gboolean loose = zone != NULL ? zone->loose : face->face->loose;

      sw_table_row (
          table,
          zone != NULL ? named (sheet, zone->id, zone->name)
                       : sw_sheet_get (sheet, "pack.zone.rest"),
          sw_sheet_fill (sheet, loose ? "pack.soil.loose" : "pack.soil.firm", "soil",
                         sw_sheet_get (sheet, soil->name_id), NULL),
          sw_sheet_limit (sheet,
                          length->pin != NULL ? length->pin->length_m : length->need_m,
                          SW_LIMIT_LEAST),
          sw_sheet_count (sheet, (double) length->count), NULL);
    }
  sw_flow_heading (flow, sw_sheet_get (sheet, "pack.zones.title"));
  sw_flow_text (flow, SW_STYLE_BODY, SW_ROLE_TEXT,
                sw_sheet_get (sheet, sheet->job->zone_rule == SW_ZONE_WORSE
                                         ? "pack.zones.worse"
                                         : "pack.zones.split"));
  sw_flow_tie (flow);
  sw_flow_space (flow, 1.5);
  sw_flow_table (flow, table);
}

double
sw_sheet_longest_pin_m (const SwFaceLayout *face)
{
  double longest_m = 0.0;

  for (guint i = 0; i < face->n_pin_lengths; i++)
    {
      const SwPinLength *length = &face->pin_lengths[i];

      longest_m =
          MAX (longest_m, length->pin != NULL ? length->pin->length_m : length->need_m);
    }
  return longest_m;
}

const char *
sw_sheet_pin_words (const SwSheet *sheet, const SwFaceLayout *face)
{
  double longest_m = sw_sheet_longest_pin_m (face), shortest_m = longest_m;
  const char *longest = sw_sheet_limit (sheet, longest_m, SW_LIMIT_LEAST);

  for (guint i = 0; i < face->n_pin_lengths; i++)
    {
      const SwPinLength *length = &face->pin_lengths[i];

      shortest_m =
          MIN (shortest_m, length->pin != NULL ? length->pin->length_m : length->need_m);
    }
  if (sw_ticks (shortest_m) == sw_ticks (longest_m))
    return longest;
  return sw_sheet_fill (sheet, "pack.zone.pins", "from",
                        sw_sheet_limit (sheet, shortest_m, SW_LIMIT_LEAST), "to", longest,
                        NULL);
}
