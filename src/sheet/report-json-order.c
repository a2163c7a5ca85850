/* SPDX-License-Identifier: MIT */
#include "json-text.h"
#include "report-tally.h"

static void
write_species (SwReportJson *json, const SwSeedSpecies *species, const SwSeedLine *line)
{
  sw_report_json_open (json, NULL, '{');
  sw_report_json_string (json, "name", species->name);
  sw_report_json_number (json, "pls_share", line->pls);
  sw_report_json_number (json, "pls_kg_per_m2", line->pls_kg_per_m2);
  sw_report_json_number (json, "bulk_kg_per_m2", line->bulk_kg_per_m2);
  sw_report_json_number (json, "bulk_kg", line->bulk_kg);
  sw_report_json_number (json, "seeds_per_m2", line->seeds_per_m2);
  sw_report_json_number (json, "share_of_seeds", line->share_of_seeds);
  sw_report_json_number (json, "share_of_bulk", line->share_of_bulk);
  sw_report_json_close (json, '}');
}

static void
write_seed (SwReportJson *json, const SwResult *result)
{
  const SwTally *tally = result->tally;

  sw_report_json_open (json, "seed", '{');
  sw_report_json_string (json, "name", result->job->seed.name);
  sw_report_json_number (json, "pls_kg", tally->seed_pls_kg);
  sw_report_json_number (json, "bulk_kg", tally->seed_bulk_kg);
  sw_report_json_number (json, "seeds_per_m2", tally->seed.seeds_per_m2);
  sw_report_json_open (json, "species", '[');
  for (guint i = 0; i < tally->seed_lines->len; i++)
    write_species (json, &result->job->seed.species[i],
                   &g_array_index (tally->seed_lines, SwSeedLine, i));
  sw_report_json_close (json, ']');
  sw_report_json_close (json, '}');
}

static void
write_fertiliser (SwReportJson *json, const SwResult *result)
{
  const SwTally *tally = result->tally;
  const SwFertiliser *found = &tally->fertiliser;

  sw_report_json_open (json, "fertiliser", '{');
  sw_report_json_string (json, "name", result->job->plan.fertiliser);
  sw_report_json_number (json, "product_kg_per_m2", found->product_kg_per_m2);
  sw_report_json_number (json, "product_kg", tally->fertiliser_kg);
  sw_report_json_number (json, "bags", tally->fertiliser_bags);
  if (found->product_kg_per_m2 > 0.0)
    sw_report_json_string (json, "limiting", sw_nutrient_code (found->limiting));
  sw_report_json_open (json, "missing", '[');
  for (int i = 0; i < SW_NUTRIENT_COUNT; i++)
    if (found->missing & (1u << i))
      sw_report_json_string (json, NULL, sw_nutrient_code ((SwNutrient) i));
  sw_report_json_close (json, ']');
  sw_report_json_close (json, '}');
}

static void
write_allowance (SwReportJson *json, const SwResult *result)
{
  const SwAllowanceTally *allowance = &result->tally->allowance;

  sw_report_json_open (json, "allowance", '{');
  sw_report_json_string (json, "basis", sw_allowance_codes[result->job->plan.allowance]);
  sw_report_json_number (json, "share", allowance->share);
  sw_report_json_number (json, "given_by_rounding", allowance->given);
  sw_report_json_number (json, "rolls_added", allowance->extra);
  sw_report_json_number (json, "spare_rolls", result->job->plan.spare_roll ? 1.0 : 0.0);
  sw_report_json_close (json, '}');
}

static void
write_crew (SwReportJson *json, const SwTally *tally)
{
  sw_report_json_open (json, "haul", '{');
  sw_report_json_number (json, "loose_m3", tally->haul_m3);
  sw_report_json_number (json, "loads", tally->loads);
  sw_report_json_close (json, '}');
  sw_report_json_open (json, "crew", '{');
  sw_report_json_number (json, "hours", tally->crew.hours);
  sw_report_json_number (json, "paid_hours", tally->crew.paid_hours);
  sw_report_json_number (json, "man_days", tally->crew.man_days);
  sw_report_json_number (json, "days", tally->crew.days);
  sw_report_json_number (json, "whole_days", tally->crew.whole_days);
  sw_report_json_close (json, '}');
}

static void
write_cost_line (SwReportJson *json, SwCostKind kind, const SwCostLine *line)
{
  sw_report_json_open (json, NULL, '{');
  sw_report_json_string (json, "line", sw_cost_code (kind));
  sw_report_json_number (json, "quantity", line->quantity);
  sw_report_json_string (json, "unit", sw_report_si_unit (line->unit));
  sw_report_json_number (json, "price", line->price);
  sw_report_json_number (json, "amount", line->amount);
  sw_report_json_close (json, '}');
}

/* Only where a price was given. */
static void
write_cost (SwReportJson *json, const SwResult *result)
{
  const SwTally *tally = result->tally;
  const SwPrice *price = &tally->price;

  if (!tally->priced)
    return;
  sw_report_json_open (json, "cost", '{');
  sw_report_json_string (json, "currency", result->job->plan.currency);
  sw_report_json_open (json, "lines", '[');
  for (int i = 0; i < SW_COST_COUNT; i++)
    if (tally->cost[i].quantity > 0.0)
      write_cost_line (json, (SwCostKind) i, &tally->cost[i]);
  sw_report_json_close (json, ']');
  sw_report_json_number (json, "lump_sum", price->mobilisation);
  sw_report_json_number (json, "direct", price->direct);
  sw_report_json_number (json, "overhead", price->overhead);
  sw_report_json_number (json, "profit", price->profit);
  sw_report_json_number (json, "net", price->net);
  sw_report_json_number (json, "tax", price->tax);
  sw_report_json_number (json, "total", price->total);
  sw_report_json_close (json, '}');
}

void
sw_report_json_order (SwReportJson *json, const SwResult *result)
{
  write_seed (json, result);
  write_fertiliser (json, result);
  write_allowance (json, result);
  write_crew (json, result->tally);
  write_cost (json, result);
}
