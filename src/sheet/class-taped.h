/* SPDX-License-Identifier: MIT */
#pragma once

#include "class-exercise.h"
#include <slopewright/ground/measured.h>

/* A face taped with four sides and both diagonals: is the sketch right? */

/** Text ids "class.ask.<code>". */
typedef enum
{
  SW_TAPED_FIRST_AREA,  /* triangle ABC */
  SW_TAPED_SECOND_AREA, /* triangle ACD */
  SW_TAPED_AREA,
  SW_TAPED_DIAGONAL, /* what the other one must be */
  SW_TAPED_VERDICT,
  SW_TAPED_ASK_COUNT
} SwTapedAsk;

const SwAskTerms *sw_taped_terms (SwTapedAsk ask);

/** Sides by the plan's seed, of the exercise or of the @example; the second diagonal is
 * right or clearly wrong. */
SwTapedSides sw_class_sides (const SwSheet *sheet, gboolean example);

SwAnswerWords sw_taped_answer (const SwSheet *sheet, const SwTapedSides *sides,
                               SwTapedAsk ask);

/** The sketch and what is known; in the answers the tapes in words, without formulas. */
void sw_taped_given (const SwSheet *sheet, SwFlow *flow, const SwTapedSides *sides,
                     gboolean key);
