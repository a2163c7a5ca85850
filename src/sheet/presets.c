/* SPDX-License-Identifier: MIT */
#include "sheet.h"

#include <slopewright/sheet/practices.h>

static gboolean
is_overridden (const SwJob *job, SwPracticeValue value)
{
  for (guint i = 0; i < job->n_overrides; i++)
    if (job->overrides[i].value == value)
      return TRUE;
  return FALSE;
}

static void
add_practice (const SwSheet *sheet, SwFlow *flow)
{
  guint changed = sheet->job->n_overrides + sw_own_practice_ways (&sheet->job->own);
  const SwColumn columns[] = {
    { sw_sheet_get (sheet, "pack.column.preset"), SW_CELL_TEXT, 58.0 },
    { sw_sheet_get (sheet, "pack.column.value"), SW_CELL_NUMBER, 38.0 },
    { sw_sheet_get (sheet, "pack.column.source"), SW_CELL_TEXT, 0.0 },
  };
  SwTable *table =
      sw_table_new (&sheet->pen, SW_STYLE_SMALL, columns, G_N_ELEMENTS (columns));

  for (int i = 0; i < SW_PRACTICE_VALUE_COUNT; i++)
    {
      SwPracticeValue value = (SwPracticeValue) i;
      const char *source = sw_sheet_practice_source (sheet, value);

      sw_table_row (table,
                    sw_sheet_get (sheet, sw_sheet_format (sheet, "practice.%s",
                                                          sw_practice_keys[i].key)),
                    sw_sheet_practice (sheet, value),
                    is_overridden (sheet->job, value) ? sw_sheet_fill (
                        sheet, "pack.preset.changed", "source", source, NULL)
                                                      : sw_sheet_plain (sheet, source),
                    NULL);
    }
  sw_flow_text (flow, SW_STYLE_BODY, SW_ROLE_TEXT,
                sw_sheet_fill (sheet, "pack.presets.practice", "name",
                               sw_sheet_practice_name (sheet), "edition",
                               sw_sheet_get (sheet, sheet->practice->edition_id),
                               "agency", sw_sheet_get (sheet, sheet->practice->agency_id),
                               "source", sw_sheet_get (sheet, sheet->practice->source_id),
                               "changed", sw_sheet_count (sheet, changed),
                               NULL));
  sw_flow_tie (flow);
  sw_flow_space (flow, 1.5);
  sw_flow_table (flow, table);
}

/* Without the evidence, which differs from number to number of an entry. */
static const char *
source_words (const SwSheet *sheet, const char *source_id)
{
  return sw_sheet_plain (sheet, sw_sheet_get (sheet, source_id));
}

/* Soils, blanket and pins as the catalogue has them. */
static void
add_catalogue (const SwSheet *sheet, SwFlow *flow)
{
  const SwColumn columns[] = {
    { sw_sheet_get (sheet, "pack.column.entry"), SW_CELL_TEXT, 58.0 },
    { sw_sheet_get (sheet, "pack.column.source"), SW_CELL_TEXT, 0.0 },
  };
  SwTable *table =
      sw_table_new (&sheet->pen, SW_STYLE_SMALL, columns, G_N_ELEMENTS (columns));
  const SwBlanket *blanket = sheet->layout->blanket;
  const char *before = NULL;

  sw_table_row (table, sw_sheet_get (sheet, blanket->name_id),
                source_words (sheet, blanket->source_id), NULL);
  for (guint f = 0; f < sheet->layout->n_faces; f++)
    {
      const SwSoil *soil = sw_catalogue_soil (sheet->layout->catalogue,
                                              sheet->layout->faces[f].face->soil_id);

      if (g_strcmp0 (soil->id, before) != 0)
        sw_table_row (table, sw_sheet_get (sheet, soil->name_id),
                      source_words (sheet, soil->source_id), NULL);
      before = soil->id;
    }
  for (guint i = 0; i < sheet->tally->pin_orders->len; i++)
    {
      const SwPin *pin = g_array_index (sheet->tally->pin_orders, SwPinOrder, i).pin;

      if (pin != NULL)
        sw_table_row (
            table,
            sw_sheet_format (sheet, "%s %s", sw_sheet_get (sheet, sw_pin_name_id (pin)),
                             sw_sheet_limit (sheet, pin->length_m, SW_LIMIT_LEAST)),
            sw_sheet_plain (sheet,
                            sw_sheet_keep (sheet, sw_report_source_words (pin->source_id,
                                                                          pin->evidence,
                                                                          sheet->texts))),
            NULL);
    }
  sw_flow_space (flow, 4.0);
  sw_flow_table (flow, table);
}

/* What a program and an input made can be made again from them, and from nothing else. */
static void
add_origin (const SwSheet *sheet, SwFlow *flow)
{
  sw_flow_text (flow, SW_STYLE_BODY, SW_ROLE_TEXT,
                sw_sheet_fill (sheet, "pack.presets.origin", "version", sheet->version,
                               "fingerprint", sheet->fingerprint, NULL));
}

static const char *
reason_words (const SwSheet *sheet, const char *why)
{
  return sw_sheet_plain (
      sheet, why != NULL && *why != '\0' ? why : sw_sheet_get (sheet, "pack.not-given"));
}

static void
add_override_rows (const SwSheet *sheet, const SwPractice *published, SwTable *table)
{
  for (guint i = 0; i < sheet->job->n_overrides; i++)
    {
      SwPracticeValue value = sheet->job->overrides[i].value;
      const char *id =
          sw_sheet_format (sheet, "practice.%s", sw_practice_keys[value].key);
      const char *before = sw_sheet_keep (
          sheet, sw_quantity_limit_text (
                     published->values[value].value, sw_practice_keys[value].unit,
                     sw_practice_limit (value), sheet->draw->style));

      sw_table_row (table, sw_sheet_get (sheet, id), before,
                    sw_sheet_format (sheet, "*%s*", sw_sheet_practice (sheet, value)),
                    reason_words (sheet, sheet->practice->values[value].source), NULL);
    }
}

static void
add_way_rows (const SwSheet *sheet, const SwPractice *published, SwTable *table)
{
  const SwOwnPractice *own = &sheet->job->own;
  const guint changed[SW_WAY_COUNT] = { [SW_WAY_TOE_KIND] = own->toe_kind,
                                        [SW_WAY_TRENCH_LINING] = own->trench_lining,
                                        [SW_WAY_TOE_LINING] = own->toe_lining };

  for (int i = 0; i < SW_WAY_COUNT; i++)
    {
      SwPracticeWay way = (SwPracticeWay) i;

      if (changed[i] > 0)
        sw_table_row (
            table, sw_sheet_get (sheet, sw_practice_way_id (way)),
            sw_report_practice_way (published, way, sheet->texts),
            sw_sheet_format (sheet, "*%s*", sw_report_practice_way (sheet->practice, way,
                                                                    sheet->texts)),
            reason_words (sheet, own->source), NULL);
    }
}

/* What the user put in the place of the practice's values, with the reason typed. */
static void
add_overrides (const SwSheet *sheet, SwFlow *flow)
{
  const SwPractice *published =
      sw_catalogue_practice (sheet->layout->catalogue, sheet->job->practice_id);
  /* Numbers stand close; a way to lay is a sentence and has to wrap. */
  gboolean sentences = sw_own_practice_ways (&sheet->job->own) > 0;
  SwCellKind kind = sentences ? SW_CELL_TEXT : SW_CELL_NUMBER;
  double width_mm = sentences ? 40.0 : 0.0;
  const SwColumn columns[] = {
    { sw_sheet_get (sheet, "pack.column.preset"), SW_CELL_TEXT, 50.0 },
    { sw_sheet_get (sheet, "pack.column.value-practice"), kind, width_mm },
    { sw_sheet_get (sheet, "pack.column.value-here"), kind, width_mm },
    { sw_sheet_get (sheet, "pack.column.reason"), SW_CELL_TEXT, 0.0 },
  };
  SwTable *table =
      sw_table_new (&sheet->pen, SW_STYLE_SMALL, columns, G_N_ELEMENTS (columns));

  add_override_rows (sheet, published, table);
  add_way_rows (sheet, published, table);
  sw_flow_heading (flow, sw_sheet_get (sheet, "pack.overrides.title"));
  if (sw_table_n_rows (table) == 0)
    sw_flow_text (flow, SW_STYLE_BODY, SW_ROLE_TEXT,
                  sw_sheet_get (sheet, "pack.overrides.none"));
  if (*sheet->job->own.source != '\0')
    sw_flow_text (flow, SW_STYLE_BODY, SW_ROLE_TEXT,
                  sw_sheet_fill (sheet, "pack.overrides.source", "source",
                                 sheet->job->own.source, NULL));
  sw_flow_table (flow, table);
}

void
sw_sheet_presets (const SwSheet *sheet, SwFlow *flow)
{
  add_origin (sheet, flow);
  add_overrides (sheet, flow);
  sw_flow_heading (flow, sw_sheet_get (sheet, "pack.presets.values"));
  add_practice (sheet, flow);
  add_catalogue (sheet, flow);
}
