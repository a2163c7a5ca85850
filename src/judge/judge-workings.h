/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/tally/tally.h>

/* Append the workings of a subject, for every face that has the numbers for it. */
void sw_judge_loss_workings (SwTally *tally, const SwLayout *layout);
