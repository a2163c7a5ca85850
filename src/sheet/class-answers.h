/* SPDX-License-Identifier: MIT */
#pragma once

#include "class-exercise.h"

/* The answers to a class's questions, one function each. */

#define SW_LENGTH_SHARE 0.01 /* of a length or an area, right all the same */

/** A face and what lies on it, at hand for the answers. */
typedef struct
{
  const SwSheet *sheet;
  const SwResult *result;
  const SwFaceLayout *face;
  const SwTier *tier;
  const SwRunTerms *terms;
} SwClassSlope;

SwClassSlope sw_class_slope_of (const SwSheet *sheet, const SwResult *result);

/** A value of the practice as the slope is laid by. */
double sw_slope_practice (const SwClassSlope *slope, SwPracticeValue value);
double sw_slope_rise_m (const SwClassSlope *slope);
/** On plan. */
double sw_slope_run_m (const SwClassSlope *slope);
/** "2", "2.5", or "2.25": what the gradient is across for 1 down. */
const char *sw_slope_ratio (const SwClassSlope *slope);
/** What a run takes beyond the crest. */
double sw_slope_crest_m (const SwClassSlope *slope);
/** Loose soil per soil in the bank, less 1. */
double sw_slope_swell (const SwClassSlope *slope);
/** Length of pin that this soil asks for in that state, in US units in whole inches, as
 * pins are sold. */
const char *sw_slope_pin (const SwClassSlope *slope, gboolean loose);
const SwSeedSpecies *sw_slope_species (const SwClassSlope *slope);

/** An answer that is right within a share of it. */
SwAnswerWords sw_answer_measured (const SwSheet *sheet, double value, SwUnit unit,
                                  double share, const char *how);
/** A count, which is right or not. */
SwAnswerWords sw_answer_counted (const SwSheet *sheet, double count, const char *how);

/** Each the answer to the question of its name; without an answer where the slope has
 * none. */
SwAnswerWords sw_answer_length (const SwClassSlope *slope);
SwAnswerWords sw_answer_angle (const SwClassSlope *slope);
SwAnswerWords sw_answer_area (const SwClassSlope *slope);
SwAnswerWords sw_answer_runs (const SwClassSlope *slope);
SwAnswerWords sw_answer_lap (const SwClassSlope *slope);
SwAnswerWords sw_answer_cut (const SwClassSlope *slope);
SwAnswerWords sw_answer_per_roll (const SwClassSlope *slope);
SwAnswerWords sw_answer_rolls (const SwClassSlope *slope);
SwAnswerWords sw_answer_trench_pins (const SwClassSlope *slope);
SwAnswerWords sw_answer_lap_pins (const SwClassSlope *slope);
SwAnswerWords sw_answer_pin (const SwClassSlope *slope);
SwAnswerWords sw_answer_start (const SwClassSlope *slope);
SwAnswerWords sw_answer_dug (const SwClassSlope *slope);
SwAnswerWords sw_answer_loose (const SwClassSlope *slope);
SwAnswerWords sw_answer_haul (const SwClassSlope *slope);
SwAnswerWords sw_answer_loads (const SwClassSlope *slope);
SwAnswerWords sw_answer_live_share (const SwClassSlope *slope);
SwAnswerWords sw_answer_live_seed (const SwClassSlope *slope);
SwAnswerWords sw_answer_seed (const SwClassSlope *slope);
