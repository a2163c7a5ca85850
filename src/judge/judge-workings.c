/* SPDX-License-Identifier: MIT */
#include "judge-workings.h"

SwWorking *
sw_judge_append (SwTally *tally, SwWorking *working)
{
  g_ptr_array_add (tally->workings, working);
  return working;
}

void
sw_judge_sourced (SwWorking *working, const char *symbol, const SwSourced *number,
                  SwUnit unit)
{
  if (number->evidence == SW_EVIDENCE_USER)
    sw_working_typed (working, symbol, number->value, unit);
  else
    sw_working_sourced (working, symbol, number, unit);
}

void
sw_judge_workings (SwTally *tally, const SwLayout *layout)
{
  sw_judge_loss_workings (tally, layout);
  sw_judge_flow_workings (tally, layout);
  sw_judge_slide_workings (tally, layout);
  sw_judge_lift_workings (tally, layout);
}
