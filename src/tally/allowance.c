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
spare_of_rounding_m (const SwLayout *layout)
{
  double least_m = sw_practice_get (layout->practice, SW_PRACTICE_MIN_PIECE_M);
  double spare_m = 0.0;

  for (int i = 0; i < layout->rolls; i++)
    if (sw_ticks (layout->offcuts_m[i]) >= sw_ticks (least_m))
      spare_m += layout->offcuts_m[i];
  return spare_m;
}

static SwWorking *
add_rounding (SwTally *tally, const SwLayout *layout)
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
  return spare;
}

/* The practice's spare rolls, as a share of the rolls. */
static SwWorking *
order_by_practice (SwTally *tally, const SwLayout *layout)
{
  double share = sw_practice_get (layout->practice, SW_PRACTICE_ROLL_SPARE);
  SwWorking *order;

  tally->allowance.share = share;
  tally->rolls_order = sw_count_up_ratio (layout->rolls * (1.0 + share));
  order = sw_working_new ("rolls_order", tally->rolls_order, SW_UNIT_COUNT,
                          SW_ROUNDING_UP, "rolls-order");
  sw_working_computed (order, "rolls", sw_tally_working (tally, "rolls"));
  sw_working_practice (order, "spare", layout->practice, SW_PRACTICE_ROLL_SPARE);
  return order;
}

/* The user's rule: a share of the length, less what rounding gives. */
static SwWorking *
order_by_length (SwTally *tally, const SwLayout *layout, const SwWorking *spare)
{
  const SwWorkPlan *plan = &layout->job->plan;
  SwAllowanceTally *allowance = &tally->allowance;
  gboolean own = plan->allowance == SW_ALLOWANCE_OWN;
  const SwSourced ladder = { sw_allowance_shares[plan->allowance], SW_EVIDENCE_PROPOSED,
                             NULL };
  SwWorking *order;

  allowance->share = own ? plan->values[SW_PLAN_SHARE] : ladder.value;
  if (sw_allowance_rolls (tally->piece_length_m, allowance->spare_m,
                          layout->job->roll_length_m, allowance->share, &allowance->extra)
      != SW_OK)
    allowance->extra = 0;
  tally->rolls_order = layout->rolls + allowance->extra;
  order = sw_working_new ("rolls_order_length", tally->rolls_order, SW_UNIT_COUNT,
                          SW_ROUNDING_UP, "rolls-order");
  sw_working_computed (order, "rolls", sw_tally_working (tally, "rolls"));
  if (own)
    sw_working_typed (order, "allowance", allowance->share, SW_UNIT_PERCENT);
  else
    sw_working_sourced (order, "allowance", &ladder, SW_UNIT_PERCENT);
  sw_working_computed (order, "pieces", sw_tally_working (tally, "piece-length"));
  sw_working_computed (order, "rounding", spare);
  sw_working_typed (order, "roll", layout->job->roll_length_m, SW_UNIT_M);
  return order;
}

void
sw_tally_order_rolls (SwTally *tally, const SwLayout *layout)
{
  const SwWorkPlan *plan = &layout->job->plan;
  const SwWorking *spare = add_rounding (tally, layout);
  SwWorking *order = plan->allowance == SW_ALLOWANCE_PRACTICE
                         ? order_by_practice (tally, layout)
                         : order_by_length (tally, layout, spare);

  if (plan->spare_roll)
    {
      tally->rolls_order++;
      order->value++;
    }
  sw_working_typed (order, "spare_rolls", plan->spare_roll ? 1.0 : 0.0, SW_UNIT_COUNT);
  tally->rolls_spare = tally->rolls_order - layout->rolls;
  sw_tally_add (tally, order);
}
