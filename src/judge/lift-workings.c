/* SPDX-License-Identifier: MIT */
#include "judge-workings.h"
#include <math.h>
#include <slopewright/judge/roll-lift.h>

#define LOAD_CONSTANT_KG 23.0

static void
add_given (SwWorking *working, const char *symbol, gboolean typed, double value)
{
  if (typed)
    sw_working_typed (working, symbol, value, SW_UNIT_SMALL_M);
  else
    sw_working_part (working, symbol, value, SW_UNIT_SMALL_M);
}

static SwWorking *
add_limit (SwTally *tally, const SwRollLift *lift)
{
  const SwLiftResult *result = &lift->result;
  SwWorking *limit =
      sw_judge_append (tally, sw_working_new ("lift_limit", result->limit_kg, SW_UNIT_KG,
                                              SW_ROUNDING_NONE, "lift-limit"));

  add_given (limit, "reach", lift->reach_typed, lift->reach_m);
  add_given (limit, "hands_from", lift->from_typed, lift->from_m);
  sw_judge_sourced (limit, "hands_to", &lift->to_m, SW_UNIT_SMALL_M);
  sw_working_part (limit, "load", LOAD_CONSTANT_KG, SW_UNIT_KG);
  sw_working_part (limit, "hm", result->reach, SW_UNIT_FACTOR);
  sw_working_part (limit, "vm", result->height, SW_UNIT_FACTOR);
  sw_working_part (limit, "dm", result->travel, SW_UNIT_FACTOR);
  sw_working_part (limit, "am", result->twist, SW_UNIT_FACTOR);
  sw_working_part (limit, "fm", result->frequency, SW_UNIT_FACTOR);
  sw_working_part (limit, "cm", result->grip, SW_UNIT_FACTOR);
  return limit;
}

void
sw_judge_lift_workings (SwTally *tally, const SwLayout *layout)
{
  const SwWorking *mass = sw_tally_working (tally, "roll-mass");
  SwWorking *limit, *index;
  SwRollLift lift;

  if (mass == NULL || !sw_roll_lift (layout, tally, &lift))
    return;
  limit = add_limit (tally, &lift);
  index = sw_judge_append (tally,
                           sw_working_new ("lift_index", lift.result.index, SW_UNIT_RATIO,
                                           SW_ROUNDING_NONE, "lift-index"));
  sw_working_computed (index, "roll_mass", mass);
  sw_working_computed (index, "weight_limit", limit);
  if (isnan (lift.wet_index))
    return;
  index = sw_judge_append (tally, sw_working_new ("lift_index_wet", lift.wet_index,
                                                  SW_UNIT_RATIO, SW_ROUNDING_NONE,
                                                  "lift-index-wet"));
  sw_working_computed (index, "roll_mass", mass);
  sw_working_typed (index, "wet_ratio", layout->job->numbers.values[SW_NUMBER_WET_RATIO],
                    SW_UNIT_RATIO);
  sw_working_computed (index, "weight_limit", limit);
}
