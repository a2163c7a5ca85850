/* SPDX-License-Identifier: MIT */
#pragma once

#include "dice.h"
#include "sheet.h"

/* Exercises of the class handout: slopes with round numbers, worked out like any job. */

#define SW_EXERCISES 3

/** What is asked of a slope, in order. Text ids "class.ask.<code>", "class.how.<code>". */
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
  SW_ASK_PIN,
  SW_ASK_START,
  SW_ASK_COUNT
} SwAsk;

/** Words of the sheet; NULL where this slope has no answer to the question. */
typedef struct
{
  const char *answer;
  const char *accept; /* how far from it is right, too */
  const char *how;    /* how it comes about, numbers put in */
} SwAnswerWords;

const char *sw_ask_code (SwAsk ask);

/**
 * sw_exercise_new:
 * @sheet: whose practice, roll and blanket hold
 * @number: 0 .. SW_EXERCISES - 1; SW_EXERCISES for a worked example
 *
 * Returns: (transfer full): a plane face of round rise, gradient and width chosen by the
 *   plan's seed, not far from the job's own, laid out; of runs that one roll holds,
 *   without a joint, and of counts that no rounding changes. NULL where the practice lays
 *   none such.
 */
SwResult *sw_exercise_new (const SwSheet *sheet, guint number);

/** The answer for the first tier of the first face of @result. */
SwAnswerWords sw_exercise_answer (const SwSheet *sheet, const SwResult *result,
                                  SwAsk ask);

/** What is known of the slope: rise, gradient, width, roll, laps, allowances, soil, wind. */
void sw_exercise_given (const SwSheet *sheet, SwFlow *flow, const SwResult *result);

/** Dice by the plan's seed. @stream: below 1000; each has throws of its own. */
SwDice sw_class_dice (const SwSheet *sheet, guint stream);
