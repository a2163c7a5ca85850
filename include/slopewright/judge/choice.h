/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/judge/result.h>

/*
 * Every blanket type of the catalogue against this job. A list of what each meets and
 * what not, with numbers: no order, no score, no recommendation.
 */

/** What a type is held against. Text ids "choice.<code>". */
typedef enum
{
  SW_CHOICE_GRADIENT, /* "gradient": steepest H:V the class table allows */
  SW_CHOICE_LIFE,     /* "life": months until plants hold the soil */
  SW_CHOICE_SHEAR,    /* "shear": of sheet flow; larger in has is better */
  SW_CHOICE_ANIMALS,  /* "animals": plastic netting where wildlife is likely */
  SW_CHOICE_MOWING,   /* "mowing": plastic netting where the face is mown */
  SW_CHOICE_COUNT
} SwChoiceAspect;

const char *sw_choice_code (SwChoiceAspect aspect);

typedef enum
{
  SW_CHOICE_NOT_ASKED, /* the job does not say what is needed */
  SW_CHOICE_MEETS,
  SW_CHOICE_FAILS
} SwChoiceAnswer;

/** @has and @need are numbers for the first three aspects; else 1 for netting, 0 for none. */
typedef struct
{
  SwChoiceAnswer answer;
  double has, need;
  SwUnit unit;
  SwEvidence evidence; /* of @has */
} SwChoiceTest;

typedef struct
{
  const SwBlanket *blanket; /* borrowed from the catalogue */
  gboolean chosen;          /* by the job */
  SwChoiceTest tests[SW_CHOICE_COUNT];
  gboolean meets; /* none of the aspects asked for fails */
} SwChoice;

/** Returns: (transfer full) (element-type SwChoice): one for each type, in the catalogue's order. */
GArray *sw_choices_new (const SwLayout *layout);
