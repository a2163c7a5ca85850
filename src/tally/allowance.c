/* SPDX-License-Identifier: MIT */
#include "tally-private.h"
#include <math.h>
#include <slopewright/base/count.h>
#include <slopewright/base/range.h>
#include <slopewright/tally/allowance.h>

SwStatus
sw_allowance_rolls (double pieces_m, double spare_m, double roll_m, double share,
                    int *extra)
{
  if (!sw_is_size (pieces_m) || !sw_is_size (spare_m) || !sw_is_positive (roll_m)
      || !sw_is_size (share) || share * pieces_m / roll_m > G_MAXINT - 1)
    return SW_E_RANGE;
  *extra = sw_count_up (fmax (share * pieces_m - spare_m, 0.0), roll_m);
  return SW_OK;
}

/* Off-cuts too short to lay are no spare. */
static double
offcut_to_lay_m (const SwLayout *layout, const SwCutRoll *roll)
{
  double least_m = sw_practice_get (layout->practice, SW_PRACTICE_MIN_PIECE_M);

  return sw_ticks (roll->offcut_m) >= sw_ticks (least_m) ? roll->offcut_m : 0.0;
}

static double
spare_of_rounding_m (const SwLayout *layout)
{
  double spare_m = 0.0;

  for (int i = 0; i < layout->rolls; i++)
    spare_m += offcut_to_lay_m (layout, &layout->cut_rolls[i]);
  return spare_m;
}

void
sw_tally_rounding (SwTally *tally, const SwLayout *layout)
{
  SwAllowanceTally *allowance = &tally->allowance;
  SwWorking *spare, *gives;

  allowance->spare_m = spare_of_rounding_m (layout);
  allowance->given =
      tally->piece_length_m > 0.0 ? allowance->spare_m / tally->piece_length_m : 0.0;
  spare = sw_tally_add (tally,
                        sw_working_new ("rounding_spare", allowance->spare_m, SW_UNIT_M,
                                        SW_ROUNDING_NONE, "rounding-spare"));
  sw_working_computed (spare, "offcuts", sw_tally_working (tally, "offcuts"));
  sw_working_part (spare, "too_short", tally->offcut_length_m - allowance->spare_m,
                   SW_UNIT_M);
  sw_working_practice (spare, "shortest", layout->practice, SW_PRACTICE_MIN_PIECE_M);
  gives = sw_tally_add (tally, sw_working_new ("rounding_gives", allowance->given,
                                               SW_UNIT_PERCENT, SW_ROUNDING_NONE,
                                               "rounding-gives"));
  sw_working_computed (gives, "rounding", spare);
  sw_working_computed (gives, "pieces", sw_tally_working (tally, "piece-length"));
}

/* The practice's share of the rolls, or the user's of the length. */
static SwSourced
share_of (const SwLayout *layout)
{
  const SwWorkPlan *plan = &layout->job->plan;

  switch (plan->allowance)
    {
    case SW_ALLOWANCE_PRACTICE:
      return layout->practice->values[SW_PRACTICE_ROLL_SPARE];
    case SW_ALLOWANCE_OWN:
      return (SwSourced){ plan->values[SW_PLAN_SHARE], SW_EVIDENCE_USER, NULL };
    default:
      return (SwSourced){ sw_allowance_shares[plan->allowance], SW_EVIDENCE_PROPOSED,
                          NULL };
    }
}

void
sw_tally_add_share (const SwTally *tally, const SwLayout *layout, SwWorking *working)
{
  SwSourced share = share_of (layout);

  if (layout->job->plan.allowance == SW_ALLOWANCE_OWN)
    sw_working_typed (working, "allowance", share.value, SW_UNIT_PERCENT);
  else
    sw_working_sourced (working, "allowance", &share, SW_UNIT_PERCENT);
}

static SwWorking *
order_by_practice (SwTally *tally, const SwLayout *layout)
{
  SwWorking *order = sw_working_new ("rolls_order", tally->rolls_order, SW_UNIT_COUNT,
                                     SW_ROUNDING_UP, "rolls-order");

  sw_working_computed (order, "rolls", sw_tally_working (tally, "rolls"));
  sw_working_practice (order, "spare", layout->practice, SW_PRACTICE_ROLL_SPARE);
  return order;
}

/* The user's rule: a share of the length, less what rounding gives. */
static SwWorking *
order_by_length (SwTally *tally, const SwLayout *layout)
{
  SwWorking *order = sw_working_new ("rolls_order_length", tally->rolls_order,
                                     SW_UNIT_COUNT, SW_ROUNDING_UP, "rolls-order");

  sw_working_computed (order, "rolls", sw_tally_working (tally, "rolls"));
  sw_tally_add_share (tally, layout, order);
  sw_working_computed (order, "pieces", sw_tally_working (tally, "piece-length"));
  sw_working_computed (order, "rounding", sw_tally_working (tally, "rounding-spare"));
  sw_working_typed (order, "roll", layout->job->roll_length_m, SW_UNIT_M);
  return order;
}

void
sw_tally_order_rolls (SwTally *tally, const SwLayout *layout)
{
  const SwWorkPlan *plan = &layout->job->plan;
  SwWorking *order = plan->allowance == SW_ALLOWANCE_PRACTICE
                         ? order_by_practice (tally, layout)
                         : order_by_length (tally, layout);

  sw_working_typed (order, "spare_rolls", plan->spare_roll ? 1.0 : 0.0, SW_UNIT_COUNT);
  sw_tally_add (tally, order);
}

/* Rolls to add so that the off-cuts of a width are the allowance on its pieces. */
static int
extra_rolls (const SwLayout *layout, const SwRollOrder *first)
{
  double opened_m = 0.0, offcuts_m = 0.0, spare_m = 0.0;
  int extra = 0;

  for (int r = 0; r < layout->rolls; r++)
    {
      const SwCutRoll *roll = &layout->cut_rolls[r];

      if (sw_ticks (roll->width_m) != sw_ticks (first->width_m))
        continue;
      opened_m += roll->length_m;
      offcuts_m += roll->offcut_m;
      spare_m += offcut_to_lay_m (layout, roll);
    }
  if (sw_allowance_rolls (fmax (opened_m - offcuts_m, 0.0), spare_m, first->length_m,
                          share_of (layout).value, &extra)
      != SW_OK)
    return 0;
  return extra;
}

int
sw_tally_spare_rolls (SwTally *tally, const SwLayout *layout, const SwRollOrder *first,
                      int cut)
{
  const SwWorkPlan *plan = &layout->job->plan;
  double share = share_of (layout).value;
  gboolean own_width = sw_ticks (first->width_m) == sw_ticks (layout->job->roll_width_m);
  int spare;

  tally->allowance.share = share;
  if (plan->allowance == SW_ALLOWANCE_PRACTICE)
    spare = sw_count_up_ratio (cut * (1.0 + share)) - cut;
  else
    {
      spare = extra_rolls (layout, first);
      tally->allowance.extra += spare;
    }
  return spare + (plan->spare_roll && own_width ? 1 : 0);
}
