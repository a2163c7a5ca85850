/* SPDX-License-Identifier: MIT */
#include "class-answers.h"
#include <math.h>
#include <slopewright/base/count.h>

/* What a crew works out before it lays a face. */

#define ANGLE_RAD (1.0 * G_PI / 180.0)

static const char *
pinning (const SwSheet *sheet, double length_m, double spacing_m, const char *id)
{
  return sw_sheet_fill (
      sheet, id, "length", sw_class_calculator (sheet, length_m, SW_UNIT_M), "spacing",
      sw_class_calculator (sheet, spacing_m, SW_UNIT_M), "ratio",
      sw_sheet_number (sheet, length_m / spacing_m, SW_UNIT_RATIO), NULL);
}

SwAnswerWords
sw_answer_length (const SwClassSlope *slope)
{
  const SwSheet *sheet = slope->sheet;

  return sw_answer_measured (
      sheet, slope->tier->length_m, SW_UNIT_M, SW_LENGTH_SHARE,
      sw_sheet_fill (sheet, "class.how.length", "rise",
                     sw_class_calculator (sheet, sw_slope_rise_m (slope), SW_UNIT_M),
                     "ratio", sw_slope_ratio (slope), "run",
                     sw_class_calculator (sheet, sw_slope_run_m (slope), SW_UNIT_M),
                     "result", sw_class_result (sheet, slope->tier->length_m, SW_UNIT_M),
                     NULL));
}

SwAnswerWords
sw_answer_angle (const SwClassSlope *slope)
{
  const SwSheet *sheet = slope->sheet;
  const char *angle = sw_sheet_quantity (sheet, slope->tier->mean_rad, SW_UNIT_ANGLE);

  return (SwAnswerWords){ angle, sw_class_within (sheet, ANGLE_RAD, SW_UNIT_ANGLE),
                          sw_sheet_fill (sheet, "class.how.angle", "ratio",
                                         sw_slope_ratio (slope), "angle", angle, NULL) };
}

SwAnswerWords
sw_answer_area (const SwClassSlope *slope)
{
  const SwSheet *sheet = slope->sheet;

  return sw_answer_measured (
      sheet, slope->tier->net_m2, SW_UNIT_M2, SW_LENGTH_SHARE,
      sw_sheet_fill (
          sheet, "class.how.area", "length",
          sw_class_calculator (sheet, slope->tier->length_m, SW_UNIT_M), "width",
          sw_class_calculator (sheet, slope->tier->width_m, SW_UNIT_M), "result",
          sw_class_result (sheet, slope->tier->net_m2, SW_UNIT_M2), NULL));
}

SwAnswerWords
sw_answer_runs (const SwClassSlope *slope)
{
  const SwSheet *sheet = slope->sheet;
  double lap_m = sw_slope_practice (slope, SW_PRACTICE_SIDE_LAP_M);
  double roll_m = slope->result->job->roll_width_m, width_m = slope->tier->width_m;

  return sw_answer_counted (
      sheet, slope->tier->n_runs,
      sw_sheet_fill (
          sheet, "class.how.runs", "width",
          sw_class_calculator (sheet, width_m, SW_UNIT_M), "lap",
          sw_class_calculator (sheet, lap_m, SW_UNIT_M), "roll",
          sw_class_calculator (sheet, roll_m, SW_UNIT_M), "ratio",
          sw_sheet_number (sheet, (width_m - lap_m) / (roll_m - lap_m), SW_UNIT_RATIO),
          NULL));
}

SwAnswerWords
sw_answer_lap (const SwClassSlope *slope)
{
  const SwSheet *sheet = slope->sheet;
  guint n = slope->tier->n_runs;

  return (SwAnswerWords){
    sw_sheet_quantity (sheet, slope->tier->side_lap_m, SW_UNIT_SMALL_M),
    sw_class_within (sheet,
                     sheet->draw->style.units == SW_UNITS_US ? 0.5 * SW_M_PER_IN : 0.010,
                     SW_UNIT_SMALL_M),
    sw_sheet_fill (
        sheet, "class.how.lap", "runs", sw_sheet_count (sheet, n), "roll",
        sw_class_calculator (sheet, slope->result->job->roll_width_m, SW_UNIT_M), "width",
        sw_class_calculator (sheet, slope->tier->width_m, SW_UNIT_M), "laps",
        sw_sheet_count (sheet, n - 1), "result",
        sw_class_calculator (sheet, slope->tier->side_lap_m, SW_UNIT_M), NULL)
  };
}

SwAnswerWords
sw_answer_cut (const SwClassSlope *slope)
{
  const SwSheet *sheet = slope->sheet;
  double cut_m = slope->face->runs[0].cut_m;

  return sw_answer_measured (
      sheet, cut_m, SW_UNIT_M, SW_LENGTH_SHARE,
      sw_sheet_fill (sheet, "class.how.cut", "crest",
                     sw_class_calculator (sheet, sw_slope_crest_m (slope), SW_UNIT_M),
                     "length",
                     sw_class_calculator (sheet, slope->tier->length_m, SW_UNIT_M), "toe",
                     sw_class_calculator (sheet, slope->terms->toe, SW_UNIT_M), "result",
                     sw_class_result (sheet, cut_m, SW_UNIT_M), NULL));
}

static guint
runs_of_a_roll (const SwClassSlope *slope)
{
  return (guint) sw_count_whole (slope->result->job->roll_length_m,
                                 slope->face->runs[0].cut_m);
}

SwAnswerWords
sw_answer_per_roll (const SwClassSlope *slope)
{
  const SwSheet *sheet = slope->sheet;
  double roll_m = slope->result->job->roll_length_m, cut_m = slope->face->runs[0].cut_m;

  return sw_answer_counted (
      sheet, runs_of_a_roll (slope),
      sw_sheet_fill (sheet, "class.how.per-roll", "roll",
                     sw_class_calculator (sheet, roll_m, SW_UNIT_M), "cut",
                     sw_class_calculator (sheet, cut_m, SW_UNIT_M), "ratio",
                     sw_sheet_number (sheet, roll_m / cut_m, SW_UNIT_RATIO), NULL));
}

SwAnswerWords
sw_answer_rolls (const SwClassSlope *slope)
{
  const SwSheet *sheet = slope->sheet;
  double ratio = (double) slope->tier->n_runs / runs_of_a_roll (slope);

  return sw_answer_counted (
      sheet, slope->result->tally->rolls,
      sw_sheet_fill (sheet, "class.how.rolls", "runs",
                     sw_sheet_count (sheet, slope->tier->n_runs), "per_roll",
                     sw_sheet_count (sheet, runs_of_a_roll (slope)), "ratio",
                     sw_sheet_number (sheet, ratio, SW_UNIT_RATIO), NULL));
}

/* One row of pins along the key trench: gaps and one more. */
SwAnswerWords
sw_answer_trench_pins (const SwClassSlope *slope)
{
  double spacing_m = sw_slope_practice (slope, SW_PRACTICE_TRENCH_PIN_M);
  double length_m = slope->tier->width_m;

  return sw_answer_counted (
      slope->sheet, sw_count_up (length_m, spacing_m) + 1,
      pinning (slope->sheet, length_m, spacing_m, "class.how.trench-pins"));
}

/* Where the layout puts a row down every lap and no row shares pins with another. */
SwAnswerWords
sw_answer_lap_pins (const SwClassSlope *slope)
{
  const SwSheet *sheet = slope->sheet;
  double spacing_m = sw_slope_practice (slope, SW_PRACTICE_SIDE_LAP_PIN_M);
  double length_m = slope->tier->length_m;
  int row = sw_count_whole (length_m, spacing_m) + 1;
  gsize pins = slope->face->pins_by_role[SW_PIN_SIDE_LAP];

  if (pins != (gsize) row * (slope->tier->n_runs - 1))
    return (SwAnswerWords){ 0 };
  return sw_answer_counted (
      sheet, (double) pins,
      sw_sheet_fill (sheet, "class.how.lap-pins", "length",
                     sw_class_calculator (sheet, length_m, SW_UNIT_M), "spacing",
                     sw_class_calculator (sheet, spacing_m, SW_UNIT_M), "ratio",
                     sw_sheet_number (sheet, length_m / spacing_m, SW_UNIT_RATIO), "row",
                     sw_sheet_count (sheet, row), "laps",
                     sw_sheet_count (sheet, slope->tier->n_runs - 1), NULL));
}

SwAnswerWords
sw_answer_pin (const SwClassSlope *slope)
{
  return (SwAnswerWords){ sw_slope_pin (slope, slope->face->face->loose),
                          sw_sheet_get (slope->sheet, "class.accept.exact"),
                          sw_sheet_get (slope->sheet, slope->face->face->loose
                                                          ? "class.how.pin-loose"
                                                          : "class.how.pin-firm") };
}

SwAnswerWords
sw_answer_start (const SwClassSlope *slope)
{
  return (SwAnswerWords){ sw_sheet_get (slope->sheet,
                                        slope->face->face->leeward == SW_SIDE_LEFT
                                            ? "class.left"
                                            : "class.right"),
                          sw_sheet_get (slope->sheet, "class.accept.exact"),
                          sw_sheet_get (slope->sheet, "class.how.start") };
}
