/* SPDX-License-Identifier: MIT */
#include "class-answers.h"
#include <math.h>
#include <slopewright/base/count.h>

static const struct
{
  SwAskTerms terms;
  gboolean earth; /* asked where earth and seed are */
} asks[SW_ASK_COUNT] = {
  [SW_ASK_LENGTH] = { { "length", 2, SW_UNIT_M }, TRUE },
  [SW_ASK_ANGLE] = { { "angle", 1, SW_UNIT_ANGLE }, FALSE },
  [SW_ASK_AREA] = { { "area", 1, SW_UNIT_M2 }, TRUE },
  [SW_ASK_RUNS] = { { "runs", 2, SW_UNIT_COUNT }, FALSE },
  [SW_ASK_LAP] = { { "lap", 2, SW_UNIT_SMALL_M }, FALSE },
  [SW_ASK_CUT] = { { "cut", 1, SW_UNIT_M }, FALSE },
  [SW_ASK_PER_ROLL] = { { "per-roll", 1, SW_UNIT_COUNT }, FALSE },
  [SW_ASK_ROLLS] = { { "rolls", 1, SW_UNIT_COUNT }, FALSE },
  [SW_ASK_TRENCH_PINS] = { { "trench-pins", 1, SW_UNIT_COUNT }, FALSE },
  [SW_ASK_LAP_PINS] = { { "lap-pins", 2, SW_UNIT_COUNT }, FALSE },
  [SW_ASK_PIN] = { { "pin", 1, SW_UNIT_SMALL_M }, FALSE },
  [SW_ASK_START] = { { "start", 1, SW_UNIT_COUNT }, FALSE },
  [SW_ASK_DUG] = { { "dug", 2, SW_UNIT_M3 }, TRUE },
  [SW_ASK_LOOSE] = { { "loose", 1, SW_UNIT_M3 }, TRUE },
  [SW_ASK_HAUL] = { { "haul", 1, SW_UNIT_M3 }, TRUE },
  [SW_ASK_LOADS] = { { "loads", 1, SW_UNIT_COUNT }, TRUE },
  [SW_ASK_LIVE_SHARE] = { { "live-share", 1, SW_UNIT_PERCENT }, TRUE },
  [SW_ASK_LIVE_SEED] = { { "live-seed", 2, SW_UNIT_KG }, TRUE },
  [SW_ASK_SEED] = { { "seed", 2, SW_UNIT_KG }, TRUE },
};

const SwAskTerms *
sw_ask_terms (SwAsk ask)
{
  return &asks[ask].terms;
}

gboolean
sw_ask_is_of (SwAsk ask, guint number)
{
  if (number == SW_SLOPE_EXAMPLE)
    return TRUE;
  return number == SW_SLOPES - 1 ? asks[ask].earth : ask < SW_ASK_DUG;
}

const char *
sw_class_within (const SwSheet *sheet, double value, SwUnit unit)
{
  return sw_sheet_fill (sheet, "class.accept.within", "value",
                        sw_sheet_quantity (sheet, value, unit), NULL);
}

const char *
sw_class_calculator (const SwSheet *sheet, double value, SwUnit unit)
{
  return sw_sheet_keep (sheet, sw_report_calculator (value, unit, sheet->draw->style));
}

const char *
sw_class_result (const SwSheet *sheet, double value, SwUnit unit)
{
  const char *read = sw_sheet_quantity (sheet, value, unit);

  if (sheet->draw->style.units == SW_UNITS_METRIC || unit == SW_UNIT_KG)
    return read;
  return sw_sheet_format (sheet, "%s = %s", sw_class_calculator (sheet, value, unit),
                          read);
}

const char *
sw_class_ratio (const SwSheet *sheet, double hv)
{
  int decimals = 0;

  while (decimals < 2
         && fabs (hv * pow (10.0, decimals) - round (hv * pow (10.0, decimals))) > 0.05)
    decimals++;
  return sw_sheet_keep (sheet, sw_decimal_text (hv, decimals, sheet->draw->style));
}

/* Never less than what two ways of rounding leave: a tenth of a kilogram or a pound, two
 * hundredths of a cubic metre or yard. */
static double
least_tolerance (const SwSheet *sheet, SwUnit unit)
{
  double shown = unit == SW_UNIT_KG ? 0.1 : unit == SW_UNIT_M3 ? 0.02 : 0.0;

  return shown / sw_quantity_per_si (unit, sheet->draw->style.units);
}

SwAnswerWords
sw_answer_measured (const SwSheet *sheet, double value, SwUnit unit, double share,
                    const char *how)
{
  double tolerance = fmax (share * value, least_tolerance (sheet, unit));

  return (SwAnswerWords){ sw_sheet_quantity (sheet, value, unit),
                          sw_class_within (sheet, tolerance, unit), how };
}

SwAnswerWords
sw_answer_counted (const SwSheet *sheet, double count, const char *how)
{
  return (SwAnswerWords){ sw_sheet_count (sheet, count),
                          sw_sheet_get (sheet, "class.accept.exact"), how };
}

double
sw_slope_practice (const SwClassSlope *slope, SwPracticeValue value)
{
  return sw_practice_get (slope->result->layout->practice, value);
}

double
sw_slope_rise_m (const SwClassSlope *slope)
{
  return slope->face->face->section[0].y_m;
}

double
sw_slope_run_m (const SwClassSlope *slope)
{
  return slope->face->face->section[1].x_m;
}

const char *
sw_slope_ratio (const SwClassSlope *slope)
{
  return sw_class_ratio (slope->sheet, sw_slope_run_m (slope) / sw_slope_rise_m (slope));
}

double
sw_slope_crest_m (const SwClassSlope *slope)
{
  return slope->terms->set_back + slope->terms->key_lining + slope->terms->key_fold;
}

double
sw_slope_swell (const SwClassSlope *slope)
{
  return sw_catalogue_soil (slope->result->layout->catalogue, slope->face->face->soil_id)
      ->swell.value;
}

const char *
sw_slope_pin (const SwClassSlope *slope, gboolean loose)
{
  const SwLayout *layout = slope->result->layout;
  const SwSoil *soil = sw_catalogue_soil (layout->catalogue, slope->face->face->soil_id);
  double need_m = sw_layout_pin_need_m (layout, soil, loose, 0.0);

  if (slope->sheet->draw->style.units == SW_UNITS_US)
    need_m = SW_M_PER_IN * (double) sw_count_up (need_m, SW_M_PER_IN);
  return sw_sheet_quantity (slope->sheet, need_m, SW_UNIT_SMALL_M);
}

const SwSeedSpecies *
sw_slope_species (const SwClassSlope *slope)
{
  return &slope->result->job->seed.species[0];
}

SwClassSlope
sw_class_slope_of (const SwSheet *sheet, const SwResult *result)
{
  const SwFaceLayout *face = &result->layout->faces[0];

  return (SwClassSlope){ sheet, result, face, &face->tiers[0], &face->runs[0].terms };
}

SwAnswerWords
sw_exercise_answer (const SwSheet *sheet, const SwResult *result, SwAsk ask)
{
  static SwAnswerWords (*const answers[SW_ASK_COUNT]) (const SwClassSlope *) = {
    [SW_ASK_LENGTH] = sw_answer_length,
    [SW_ASK_ANGLE] = sw_answer_angle,
    [SW_ASK_AREA] = sw_answer_area,
    [SW_ASK_RUNS] = sw_answer_runs,
    [SW_ASK_LAP] = sw_answer_lap,
    [SW_ASK_CUT] = sw_answer_cut,
    [SW_ASK_PER_ROLL] = sw_answer_per_roll,
    [SW_ASK_ROLLS] = sw_answer_rolls,
    [SW_ASK_TRENCH_PINS] = sw_answer_trench_pins,
    [SW_ASK_LAP_PINS] = sw_answer_lap_pins,
    [SW_ASK_PIN] = sw_answer_pin,
    [SW_ASK_START] = sw_answer_start,
    [SW_ASK_DUG] = sw_answer_dug,
    [SW_ASK_LOOSE] = sw_answer_loose,
    [SW_ASK_HAUL] = sw_answer_haul,
    [SW_ASK_LOADS] = sw_answer_loads,
    [SW_ASK_LIVE_SHARE] = sw_answer_live_share,
    [SW_ASK_LIVE_SEED] = sw_answer_live_seed,
    [SW_ASK_SEED] = sw_answer_seed,
  };
  SwClassSlope slope = sw_class_slope_of (sheet, result);

  return answers[ask](&slope);
}
