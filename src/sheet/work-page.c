/* SPDX-License-Identifier: MIT */
#include "sheet.h"

/* A page on what a crew does besides laying: only where the job says something of it. */

gboolean
sw_sheet_has_mix (const SwSheet *sheet)
{
  return sheet->tally->seed_lines->len > 1;
}

static gboolean
has_fertiliser (const SwSheet *sheet)
{
  const SwFertiliser *found = &sheet->tally->fertiliser;

  return found->product_kg_per_m2 > 0.0 || found->missing != 0;
}

/* "98 % pure, 92 % germinate, 5 % hard" */
static const char *
tag_words (const SwSheet *sheet, const SwSeedSpecies *species)
{
  return sw_sheet_fill (
      sheet, species->hard > 0.0 ? "pack.work.tag-hard" : "pack.work.tag", "purity",
      sw_sheet_quantity (sheet, species->purity, SW_UNIT_PERCENT), "germination",
      sw_sheet_quantity (sheet, species->germination, SW_UNIT_PERCENT), "hard",
      sw_sheet_quantity (sheet, species->hard, SW_UNIT_PERCENT), NULL);
}

/* Ten grams matter where seed is dear and the area small. */
static const char *
seed_mass (const SwSheet *sheet, double kg)
{
  SwNumberStyle style = sheet->draw->style;

  return sw_sheet_format (
      sheet, "%s\xc2\xa0%s",
      sw_sheet_keep (
          sheet,
          sw_decimal_text (kg * sw_quantity_per_si (SW_UNIT_KG, style.units), 2, style)),
      sw_quantity_unit (SW_UNIT_KG, style));
}

/* What is not counted is a dash, not a nought. */
static const char *
counted (const SwSheet *sheet, double value, SwUnit unit)
{
  return value > 0.0 ? sw_sheet_quantity (sheet, value, unit) : "\xe2\x80\x93";
}

static void
species_row (const SwSheet *sheet, SwTable *table, guint index)
{
  const SwSeedSpecies *species = &sheet->job->seed.species[index];
  const SwSeedLine *line = &g_array_index (sheet->tally->seed_lines, SwSeedLine, index);

  sw_table_row (table,
                sw_sheet_format (sheet, "%u  *%s*  %s", index + 1,
                                 sw_sheet_plain (sheet, species->name),
                                 tag_words (sheet, species)),
                sw_sheet_quantity (sheet, line->pls_kg_per_m2, SW_UNIT_KG_PER_M2),
                counted (sheet, line->seeds_per_m2, SW_UNIT_SEEDS_PER_M2),
                counted (sheet, line->share_of_seeds, SW_UNIT_PERCENT),
                seed_mass (sheet, line->pls_kg_per_m2 * sheet->tally->areas.net_m2),
                sw_sheet_format (sheet, "*%s*", seed_mass (sheet, line->bulk_kg)),
                sw_sheet_quantity (sheet, line->share_of_bulk, SW_UNIT_PERCENT), NULL);
}

static void
add_seed (const SwSheet *sheet, SwFlow *flow)
{
  const SwColumn columns[] = {
    { sw_sheet_get (sheet, "pack.column.species"), SW_CELL_TEXT, 0.0 },
    { sw_sheet_get (sheet, "pack.column.pls-rate"), SW_CELL_NUMBER, 0.0 },
    { sw_sheet_get (sheet, "pack.column.seeds"), SW_CELL_NUMBER, 0.0 },
    { sw_sheet_get (sheet, "pack.column.share-seeds"), SW_CELL_NUMBER, 0.0 },
    { sw_sheet_get (sheet, "pack.column.pls"), SW_CELL_NUMBER, 0.0 },
    { sw_sheet_get (sheet, "pack.column.bulk"), SW_CELL_NUMBER, 0.0 },
    { sw_sheet_get (sheet, "pack.column.share-bulk"), SW_CELL_NUMBER, 0.0 },
  };
  const SwTally *tally = sheet->tally;
  SwTable *table =
      sw_table_new (&sheet->pen, SW_STYLE_BODY, columns, G_N_ELEMENTS (columns));

  for (guint i = 0; i < tally->seed_lines->len; i++)
    species_row (sheet, table, i);
  sw_table_total (table, sw_sheet_get (sheet, "pack.total"),
                  sw_sheet_quantity (sheet, tally->seed.pls_kg_per_m2, SW_UNIT_KG_PER_M2),
                  counted (sheet, tally->seed.seeds_per_m2, SW_UNIT_SEEDS_PER_M2), "",
                  seed_mass (sheet, tally->seed_pls_kg),
                  seed_mass (sheet, tally->seed_bulk_kg), "", NULL);
  sw_flow_heading (flow, sw_sheet_get (sheet, "pack.work.seed"));
  sw_flow_text (flow, SW_STYLE_BODY, SW_ROLE_TEXT,
                sw_sheet_fill (sheet, "pack.work.seed-how", "area",
                               sw_sheet_quantity (sheet, tally->areas.net_m2, SW_UNIT_M2),
                               NULL));
  sw_flow_space (flow, 1.5);
  sw_flow_table (flow, table);
  if (!(tally->seed.seeds_per_m2 > 0.0))
    sw_flow_text (flow, SW_STYLE_SMALL, SW_ROLE_MUTED,
                  sw_sheet_get (sheet, "pack.work.seed-uncounted"));
}

/* What the product brings of a nutrient, and whether it governs or is missing. */
static const char *
brought_words (const SwSheet *sheet, int nutrient)
{
  const SwFertiliser *found = &sheet->tally->fertiliser;
  const char *amount =
      sw_sheet_quantity (sheet, found->given_kg_per_m2[nutrient], SW_UNIT_KG_PER_M2);

  if (found->missing & (1u << nutrient))
    return sw_sheet_get (sheet, "pack.work.missing");
  if (found->product_kg_per_m2 > 0.0 && (int) found->limiting == nutrient)
    return sw_sheet_fill (sheet, "pack.work.governs", "amount", amount, NULL);
  return amount;
}

static void
add_fertiliser (const SwSheet *sheet, SwFlow *flow)
{
  const SwColumn columns[] = {
    { sw_sheet_get (sheet, "pack.column.nutrient"), SW_CELL_TEXT, 0.0 },
    { sw_sheet_get (sheet, "pack.column.on-label"), SW_CELL_NUMBER, 0.0 },
    { sw_sheet_get (sheet, "pack.column.asked"), SW_CELL_NUMBER, 0.0 },
    { sw_sheet_get (sheet, "pack.column.brought"), SW_CELL_NUMBER, 0.0 },
  };
  const double *values = sheet->job->plan.values;
  SwTable *table =
      sw_table_new (&sheet->pen, SW_STYLE_BODY, columns, G_N_ELEMENTS (columns));

  for (int i = 0; i < SW_NUTRIENT_COUNT; i++)
    sw_table_row (
        table,
        sw_sheet_get (sheet, sw_sheet_format (sheet, "nutrient.%s",
                                              sw_nutrient_code ((SwNutrient) i))),
        sw_sheet_quantity (sheet, values[SW_PLAN_N + i], SW_UNIT_PERCENT),
        sw_sheet_quantity (sheet, values[SW_PLAN_NEED_N + i], SW_UNIT_KG_PER_M2),
        brought_words (sheet, i), NULL);
  sw_flow_heading (flow, sw_sheet_get (sheet, "pack.work.fertiliser"));
  sw_flow_table (flow, table);
}

static void
add_haul (const SwSheet *sheet, SwFlow *flow)
{
  const SwTally *tally = sheet->tally;
  const double *values = sheet->job->plan.values;

  sw_flow_heading (flow, sw_sheet_get (sheet, "pack.work.haul"));
  sw_flow_text (
      flow, SW_STYLE_BODY, SW_ROLE_TEXT,
      sw_sheet_fill (
          sheet, "pack.work.haul-how", "bank",
          sw_sheet_quantity (sheet, tally->trench_bank_m3, SW_UNIT_M3), "loose",
          sw_sheet_quantity (sheet, tally->trench_loose_m3, SW_UNIT_M3), "backfill",
          sw_sheet_quantity (sheet, values[SW_PLAN_BACKFILL], SW_UNIT_PERCENT), "haul",
          sw_sheet_quantity (sheet, tally->haul_m3, SW_UNIT_M3), "loads",
          sw_sheet_fill (sheet, "pack.work.loads", "count",
                         sw_sheet_count (sheet, tally->loads), NULL),
          "truck", sw_sheet_quantity (sheet, values[SW_PLAN_TRUCK_M3], SW_UNIT_M3),
          NULL));
}

/* An input of a working by its symbol; the tasks have each once. */
static const char *
input_words (const SwSheet *sheet, const SwWorking *working, const char *symbol)
{
  for (guint i = 0; i < working->inputs->len; i++)
    {
      const SwInput *input = &g_array_index (working->inputs, SwInput, i);

      if (g_str_equal (input->symbol, symbol))
        return sw_sheet_quantity (sheet, input->value, input->unit);
    }
  return "";
}

static void
add_task_rows (const SwSheet *sheet, SwTable *table)
{
  for (guint i = 0; i < sheet->tally->workings->len; i++)
    {
      const SwWorking *working = g_ptr_array_index (sheet->tally->workings, i);
      const char *id = sw_sheet_format (sheet, "pack.task.%s", working->formula);

      if (sw_texts_has (sheet->texts, id))
        sw_table_row (table, sw_sheet_get (sheet, id),
                      input_words (sheet, working, "amount"),
                      input_words (sheet, working, "time"),
                      sw_sheet_quantity (sheet, working->value, SW_UNIT_HOUR), NULL);
    }
}

static const char *
days_words (const SwSheet *sheet)
{
  const SwCrewTime *crew = &sheet->tally->crew;
  const double *values = sheet->job->plan.values;

  if (!(crew->days > 0.0))
    return sw_sheet_get (sheet, "pack.work.no-days");
  return sw_sheet_fill (
      sheet, "pack.work.days", "days",
      sw_sheet_fill (sheet, "pack.work.whole-days", "count",
                     sw_sheet_count (sheet, crew->whole_days), NULL),
      "people", sw_sheet_count (sheet, values[SW_PLAN_PEOPLE]), "day",
      sw_sheet_quantity (sheet, values[SW_PLAN_DAY_H], SW_UNIT_HOUR), "at_work",
      sw_sheet_quantity (sheet, values[SW_PLAN_AT_WORK], SW_UNIT_PERCENT), "exact",
      sw_sheet_quantity (sheet, crew->days, SW_UNIT_DAY), NULL);
}

static void
add_time (const SwSheet *sheet, SwFlow *flow)
{
  const SwColumn columns[] = {
    { sw_sheet_get (sheet, "pack.column.task"), SW_CELL_TEXT, 0.0 },
    { sw_sheet_get (sheet, "pack.column.amount"), SW_CELL_NUMBER, 0.0 },
    { sw_sheet_get (sheet, "pack.column.each"), SW_CELL_NUMBER, 0.0 },
    { sw_sheet_get (sheet, "pack.column.hours"), SW_CELL_NUMBER, 0.0 },
  };
  double difficulty = sheet->job->plan.values[SW_PLAN_DIFFICULTY];
  gboolean usual = difficulty >= 1.0 && difficulty <= 1.0;
  SwTable *table =
      sw_table_new (&sheet->pen, SW_STYLE_BODY, columns, G_N_ELEMENTS (columns));

  add_task_rows (sheet, table);
  sw_table_total (
      table,
      usual ? sw_sheet_get (sheet, "pack.work.all")
            : sw_sheet_fill (sheet, "pack.work.difficulty", "factor",
                             sw_sheet_number (sheet, difficulty, SW_UNIT_RATIO), NULL),
      "", "", sw_sheet_quantity (sheet, sheet->tally->crew.hours, SW_UNIT_HOUR), NULL);
  sw_flow_heading (flow, sw_sheet_get (sheet, "pack.work.time"));
  sw_flow_text (flow, SW_STYLE_BODY, SW_ROLE_TEXT,
                sw_sheet_get (sheet, "pack.work.time-how"));
  sw_flow_space (flow, 1.5);
  sw_flow_table (flow, table);
  sw_flow_space (flow, 1.5);
  sw_flow_text (flow, SW_STYLE_BODY, SW_ROLE_TEXT, days_words (sheet));
}

void
sw_page_work (SwSheet *sheet)
{
  SwFlow *flow = sw_sheet_flow (sheet);

  if (sw_sheet_has_mix (sheet))
    add_seed (sheet, flow);
  if (has_fertiliser (sheet))
    add_fertiliser (sheet, flow);
  if (sheet->job->plan.values[SW_PLAN_TRUCK_M3] > 0.0)
    add_haul (sheet, flow);
  if (sheet->tally->crew.hours > 0.0)
    add_time (sheet, flow);
  if (sw_flow_is_empty (flow))
    sw_flow_free (flow);
  else
    sw_sheet_add (sheet, sw_sheet_get (sheet, "pack.work.title"), flow);
}
