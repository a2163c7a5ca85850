/* SPDX-License-Identifier: MIT */
#pragma once

#include "class-slope.h"

/* What is asked of the slopes of a class, and what the program answers. */

/** Text ids "class.ask.<code>", "class.rule.<code>". */
typedef enum
{
  SW_ASK_LENGTH,
  SW_ASK_ANGLE,
  SW_ASK_AREA,
  SW_ASK_RUNS,
  SW_ASK_LAP,
  SW_ASK_CUT,
  SW_ASK_PER_ROLL,
  SW_ASK_ROLLS,
  SW_ASK_TRENCH_PINS,
  SW_ASK_LAP_PINS,
  SW_ASK_PIN,
  SW_ASK_START,
  SW_ASK_DUG,
  SW_ASK_LOOSE,
  SW_ASK_HAUL,
  SW_ASK_LOADS,
  SW_ASK_LIVE_SHARE,
  SW_ASK_LIVE_SEED,
  SW_ASK_SEED,
  SW_ASK_COUNT
} SwAsk;

/** Words of the sheet; answer is NULL where the slope has none. */
typedef struct
{
  const char *answer;
  const char *accept; /* how far from it is right, too */
  const char *how;    /* how it comes about, numbers put in */
} SwAnswerWords;

/** What stands with a question on the sheets. */
typedef struct
{
  const char *code;
  guint points; /* for a right answer */
  SwUnit unit;  /* that the answer is written in; SW_UNIT_COUNT for a count or a word */
} SwAskTerms;

const SwAskTerms *sw_ask_terms (SwAsk ask);
/** Whether slope @number asks it: the last one asks for earth and seed, the others for
 * what is laid, the example for all. */
gboolean sw_ask_is_of (SwAsk ask, guint number);

/** The answer for the face of @result, which is one of sw_class_slope(). */
SwAnswerWords sw_exercise_answer (const SwSheet *sheet, const SwResult *result,
                                  SwAsk ask);

/** What is known of slope @number: all that its questions need, and no more. */
void sw_exercise_given (const SwSheet *sheet, SwFlow *flow, const SwResult *result,
                        guint number);

/** Words for answers of other exercises. */
const char *sw_class_within (const SwSheet *sheet, double value, SwUnit unit);
/** "2", "2.5", or "2.25": what a gradient is across for 1 down. */
const char *sw_class_ratio (const SwSheet *sheet, double hv);
/** A quantity as keyed into a calculator; with "= " and how it is read, if otherwise. */
const char *sw_class_calculator (const SwSheet *sheet, double value, SwUnit unit);
const char *sw_class_result (const SwSheet *sheet, double value, SwUnit unit);
