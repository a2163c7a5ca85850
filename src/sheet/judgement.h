/* SPDX-License-Identifier: MIT */
#pragma once

#include "sheet.h"
#include <slopewright/judge/checks.h>

/* Parts of the page "Will it hold?". Each says what is missing where it has no numbers. */

void sw_judge_add_soil (const SwSheet *sheet, SwFlow *flow);
void sw_judge_add_borderline (const SwSheet *sheet, SwFlow *flow);
void sw_judge_add_loss (const SwSheet *sheet, SwFlow *flow);
void sw_judge_add_water (const SwSheet *sheet, SwFlow *flow);
void sw_judge_add_slide (const SwSheet *sheet, SwFlow *flow);
void sw_judge_add_handling (const SwSheet *sheet, SwFlow *flow);
