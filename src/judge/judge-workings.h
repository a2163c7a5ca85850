/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/tally/tally.h>

/* Append the workings of every subject, for each face that has the numbers for it. */
void sw_judge_workings (SwTally *tally, const SwLayout *layout);

void sw_judge_loss_workings (SwTally *tally, const SwLayout *layout);
void sw_judge_flow_workings (SwTally *tally, const SwLayout *layout);
void sw_judge_slide_workings (SwTally *tally, const SwLayout *layout);
void sw_judge_lift_workings (SwTally *tally, const SwLayout *layout);

/* Append @working and give it back, so that inputs can be added. */
SwWorking *sw_judge_append (SwTally *tally, SwWorking *working);

/* A typed number says so; one of the catalogue gives its source. */
void sw_judge_sourced (SwWorking *working, const char *symbol, const SwSourced *number,
                       SwUnit unit);
