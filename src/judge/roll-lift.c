/* SPDX-License-Identifier: MIT */
#include <math.h>
#include <slopewright/judge/roll-lift.h>

/* Seldom: table 5 of the equation begins there. */
#define LIFTS_PER_MIN 0.2

static guint
circumstances (const SwLayout *layout)
{
  guint limits = SW_LIFT_CARRIED | SW_LIFT_POOR_FOOTING | SW_LIFT_UNSTEADY_LOAD;

  if (layout->job->site[SW_SITE_HOT_WEATHER] == SW_ANSWER_YES)
    limits |= SW_LIFT_HOT_OR_COLD;
  return limits;
}

static SwStatus
lift_at (const SwRollLift *lift, double height_m, guint limits, SwLiftResult *result)
{
  const SwLift one = {
    .mass_kg = lift->mass_kg,
    .reach_m = lift->reach_m,
    .height_m = height_m,
    .begin_height_m = lift->from_m,
    .travel_m = fabs (lift->to_m.value - lift->from_m),
    .per_min = LIFTS_PER_MIN,
    .duration = SW_LIFT_SHORT,
    .grip = SW_GRIP_POOR,
    .circumstances = limits,
  };

  return sw_lift (SW_UNITS_METRIC, &one, result);
}

/* The end with the lower limit governs; a load must be set down with care here. */
static gboolean
find_lower_limit (SwRollLift *lift, guint limits)
{
  SwLiftResult begin, end;

  if (lift_at (lift, lift->from_m, limits, &begin) != SW_OK
      || lift_at (lift, lift->to_m.value, limits, &end) != SW_OK)
    return FALSE;
  lift->at_end = end.limit_kg < begin.limit_kg;
  lift->result = lift->at_end ? end : begin;
  return TRUE;
}

gboolean
sw_roll_lift (const SwLayout *layout, const SwTally *tally, SwRollLift *lift)
{
  const double *typed = layout->job->numbers.values;
  double wet_ratio = typed[SW_NUMBER_WET_RATIO];
  SwRollLift found = {
    .mass_kg = tally->roll_mass_kg,
    .wet_mass_kg = wet_ratio > 0.0 ? tally->roll_mass_kg * wet_ratio : NAN,
    .from_typed = typed[SW_NUMBER_LIFT_FROM_M] > 0.0,
    .reach_typed = typed[SW_NUMBER_LIFT_REACH_M] > 0.0,
    .to_m = sw_job_site_number (layout->job, layout->catalogue, SW_NUMBER_LIFT_TO_M),
  };

  if (!(found.to_m.value > 0.0))
    return FALSE;
  found.from_m =
      found.from_typed ? typed[SW_NUMBER_LIFT_FROM_M] : tally->roll_diameter_m / 2.0;
  found.reach_m = typed[SW_NUMBER_LIFT_REACH_M];
  if (!found.reach_typed
      && sw_lift_reach (SW_UNITS_METRIC, tally->roll_diameter_m, found.from_m,
                        &found.reach_m)
             != SW_OK)
    return FALSE;
  if (!find_lower_limit (&found, circumstances (layout)))
    return FALSE;
  found.wet_index = found.wet_mass_kg / found.result.limit_kg;
  *lift = found;
  return TRUE;
}
