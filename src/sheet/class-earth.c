/* SPDX-License-Identifier: MIT */
#include "class-answers.h"

/* Soil dug from the trenches, what of it is hauled away, and seed by its tag. */

#define MASS_SHARE 0.02 /* of a volume or a mass, which hang on several numbers */
#define LIVE_SHARE 0.005

/* "45.00 m × 0.15 m × 0.15 m", one for each trench, with a plus between them. */
static const char *
trench_products (const SwClassSlope *slope)
{
  const SwSheet *sheet = slope->sheet;
  const char *words = NULL;

  for (guint i = 0; i < slope->face->n_trenches; i++)
    {
      const SwTrench *trench = &slope->face->trenches[i];
      const char *product = sw_sheet_format (
          sheet, "%s × %s × %s", sw_class_calculator (sheet, trench->length_m, SW_UNIT_M),
          sw_class_calculator (sheet, trench->depth_m, SW_UNIT_M),
          sw_class_calculator (sheet, trench->width_m, SW_UNIT_M));

      words =
          words == NULL ? product : sw_sheet_format (sheet, "%s + %s", words, product);
    }
  return words;
}

SwAnswerWords
sw_answer_dug (const SwClassSlope *slope)
{
  const SwSheet *sheet = slope->sheet;
  double bank_m3 = slope->result->tally->trench_bank_m3;

  if (slope->face->n_trenches == 0)
    return (SwAnswerWords){ 0 };
  return sw_answer_measured (
      sheet, bank_m3, SW_UNIT_M3, MASS_SHARE,
      sw_sheet_fill (sheet, "class.how.dug", "products", trench_products (slope),
                     "result", sw_class_result (sheet, bank_m3, SW_UNIT_M3), NULL));
}

SwAnswerWords
sw_answer_loose (const SwClassSlope *slope)
{
  const SwSheet *sheet = slope->sheet;
  const SwTally *tally = slope->result->tally;

  return sw_answer_measured (
      sheet, tally->trench_loose_m3, SW_UNIT_M3, MASS_SHARE,
      sw_sheet_fill (
          sheet, "class.how.loose", "bank",
          sw_class_calculator (sheet, tally->trench_bank_m3, SW_UNIT_M3), "swell",
          sw_class_calculator (sheet, sw_slope_swell (slope), SW_UNIT_PERCENT), "result",
          sw_class_result (sheet, tally->trench_loose_m3, SW_UNIT_M3), NULL));
}

SwAnswerWords
sw_answer_haul (const SwClassSlope *slope)
{
  const SwSheet *sheet = slope->sheet;
  const SwTally *tally = slope->result->tally;

  return sw_answer_measured (
      sheet, tally->haul_m3, SW_UNIT_M3, MASS_SHARE,
      sw_sheet_fill (
          sheet, "class.how.haul", "loose",
          sw_class_calculator (sheet, tally->trench_loose_m3, SW_UNIT_M3), "backfill",
          sw_class_calculator (sheet, slope->result->job->plan.values[SW_PLAN_BACKFILL],
                               SW_UNIT_PERCENT),
          "result", sw_class_result (sheet, tally->haul_m3, SW_UNIT_M3), NULL));
}

SwAnswerWords
sw_answer_loads (const SwClassSlope *slope)
{
  const SwSheet *sheet = slope->sheet;
  const SwTally *tally = slope->result->tally;
  double load_m3 = slope->result->job->plan.values[SW_PLAN_TRUCK_M3];

  return sw_answer_counted (
      sheet, tally->loads,
      sw_sheet_fill (sheet, "class.how.loads", "haul",
                     sw_sheet_quantity (sheet, tally->haul_m3, SW_UNIT_M3), "load",
                     sw_sheet_quantity (sheet, load_m3, SW_UNIT_M3), "ratio",
                     sw_sheet_number (sheet, tally->haul_m3 / load_m3, SW_UNIT_RATIO),
                     NULL));
}

static double
live_share (const SwClassSlope *slope)
{
  return sw_slope_species (slope)->purity * sw_slope_species (slope)->germination;
}

SwAnswerWords
sw_answer_live_share (const SwClassSlope *slope)
{
  const SwSheet *sheet = slope->sheet;
  const SwSeedSpecies *species = sw_slope_species (slope);
  const char *share = sw_sheet_quantity (sheet, live_share (slope), SW_UNIT_PERCENT);

  return (SwAnswerWords){
    share, sw_class_within (sheet, LIVE_SHARE, SW_UNIT_PERCENT),
    sw_sheet_fill (sheet, "class.how.live-share", "purity",
                   sw_class_calculator (sheet, species->purity, SW_UNIT_PERCENT),
                   "germination",
                   sw_class_calculator (sheet, species->germination, SW_UNIT_PERCENT),
                   "result", share, NULL)
  };
}

/* US rates go by a thousand square feet, metric ones by grams: what the area is divided
 * by to get pounds and kilograms. */
SwAnswerWords
sw_answer_live_seed (const SwClassSlope *slope)
{
  const SwSheet *sheet = slope->sheet;
  double live_kg = slope->result->tally->seed_pls_kg;

  return sw_answer_measured (
      sheet, live_kg, SW_UNIT_KG, MASS_SHARE,
      sw_sheet_fill (sheet, "class.how.live-seed", "area",
                     sw_class_calculator (sheet, slope->tier->net_m2, SW_UNIT_M2), "rate",
                     sw_sheet_number (sheet, sw_slope_species (slope)->pls_kg_per_m2,
                                      SW_UNIT_KG_PER_M2),
                     "result", sw_class_result (sheet, live_kg, SW_UNIT_KG), NULL));
}

SwAnswerWords
sw_answer_seed (const SwClassSlope *slope)
{
  const SwSheet *sheet = slope->sheet;
  const SwTally *tally = slope->result->tally;

  return sw_answer_measured (
      sheet, tally->seed_bulk_kg, SW_UNIT_KG, MASS_SHARE,
      sw_sheet_fill (sheet, "class.how.seed", "live",
                     sw_sheet_quantity (sheet, tally->seed_pls_kg, SW_UNIT_KG), "share",
                     sw_class_calculator (sheet, live_share (slope), SW_UNIT_PERCENT),
                     "result", sw_class_result (sheet, tally->seed_bulk_kg, SW_UNIT_KG),
                     NULL));
}
