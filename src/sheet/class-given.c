/* SPDX-License-Identifier: MIT */
#include "class-answers.h"

static const char *
soil_name (const SwClassSlope *slope)
{
  return sw_sheet_get (slope->sheet, sw_catalogue_soil (slope->result->layout->catalogue,
                                                        slope->face->face->soil_id)
                                         ->name_id);
}

static const char *
small (const SwClassSlope *slope, double length_m)
{
  return sw_sheet_quantity (slope->sheet, length_m, SW_UNIT_SMALL_M);
}

static void
say (const SwSheet *sheet, SwFlow *flow, const char *words)
{
  sw_flow_text (flow, SW_STYLE_BODY, SW_ROLE_TEXT, words);
  sw_flow_tie (flow);
}

static void
say_shape (const SwClassSlope *slope, SwFlow *flow)
{
  const SwSheet *sheet = slope->sheet;

  say (sheet, flow,
       sw_sheet_fill (sheet, "class.given.shape", "rise",
                      sw_sheet_quantity (sheet, sw_slope_rise_m (slope), SW_UNIT_M),
                      "ratio", sw_slope_ratio (slope), "width",
                      sw_sheet_quantity (sheet, slope->tier->width_m, SW_UNIT_M), NULL));
}

static void
say_laying (const SwClassSlope *slope, SwFlow *flow)
{
  const SwSheet *sheet = slope->sheet;
  const SwFace *face = slope->face->face;
  const SwJob *job = slope->result->job;

  say (sheet, flow,
       sw_sheet_fill (
           sheet, "class.given.laying", "roll_width",
           sw_sheet_quantity (sheet, job->roll_width_m, SW_UNIT_M), "roll_length",
           sw_sheet_quantity (sheet, job->roll_length_m, SW_UNIT_M), "side_lap",
           small (slope, sw_slope_practice (slope, SW_PRACTICE_SIDE_LAP_M)), "crest",
           sw_sheet_quantity (sheet, sw_slope_crest_m (slope), SW_UNIT_M), "toe",
           sw_sheet_quantity (sheet, slope->terms->toe, SW_UNIT_M), "spacing",
           small (slope, sw_slope_practice (slope, SW_PRACTICE_TRENCH_PIN_M)),
           "lap_spacing",
           small (slope, sw_slope_practice (slope, SW_PRACTICE_SIDE_LAP_PIN_M)), NULL));
  say (sheet, flow,
       sw_sheet_fill (
           sheet, "class.given.soil", "soil",
           sw_sheet_fill (sheet, face->loose ? "pack.soil.loose" : "pack.soil.firm",
                          "soil", soil_name (slope), NULL),
           "firm", sw_slope_pin (slope, FALSE), "loose", sw_slope_pin (slope, TRUE),
           "wind",
           sw_sheet_get (sheet, face->leeward == SW_SIDE_LEFT ? "class.wind-right"
                                                              : "class.wind-left"),
           NULL));
}

static void
say_trenches (const SwClassSlope *slope, SwFlow *flow)
{
  const SwSheet *sheet = slope->sheet;

  for (guint i = 0; i < slope->face->n_trenches; i++)
    {
      const SwTrench *trench = &slope->face->trenches[i];

      say (sheet, flow,
           sw_sheet_fill (sheet,
                          trench->kind == SW_TRENCH_KEY ? "class.given.key-trench"
                                                        : "class.given.toe-trench",
                          "depth", small (slope, trench->depth_m), "across",
                          small (slope, trench->width_m), NULL));
    }
}

static void
say_earth_and_seed (const SwClassSlope *slope, SwFlow *flow)
{
  const SwSheet *sheet = slope->sheet;
  const double *plan = slope->result->job->plan.values;
  const SwSeedSpecies *species = sw_slope_species (slope);

  say_trenches (slope, flow);
  say (sheet, flow,
       sw_sheet_fill (
           sheet, "class.given.earth", "swell",
           sw_sheet_quantity (sheet, sw_slope_swell (slope), SW_UNIT_PERCENT), "backfill",
           sw_sheet_quantity (sheet, plan[SW_PLAN_BACKFILL], SW_UNIT_PERCENT), "load",
           sw_sheet_quantity (sheet, plan[SW_PLAN_TRUCK_M3], SW_UNIT_M3), NULL));
  say (sheet, flow,
       sw_sheet_fill (
           sheet, "class.given.seed", "rate",
           sw_sheet_quantity (sheet, species->pls_kg_per_m2, SW_UNIT_KG_PER_M2), "purity",
           sw_sheet_quantity (sheet, species->purity, SW_UNIT_PERCENT), "germination",
           sw_sheet_quantity (sheet, species->germination, SW_UNIT_PERCENT), NULL));
}

void
sw_exercise_given (const SwSheet *sheet, SwFlow *flow, const SwResult *result,
                   guint number)
{
  SwClassSlope slope = sw_class_slope_of (sheet, result);

  say_shape (&slope, flow);
  if (sw_ask_is_of (SW_ASK_RUNS, number))
    say_laying (&slope, flow);
  if (sw_ask_is_of (SW_ASK_DUG, number))
    say_earth_and_seed (&slope, flow);
}
