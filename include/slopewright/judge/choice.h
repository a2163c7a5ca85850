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
  SW_CHOICE_FAILS,
  SW_CHOICE_NOT_STATED /* asked for, but the product's data sheet is silent */
} SwChoiceAnswer;

/**
 * @has and @need are numbers for the first three aspects; else 1 for netting, 0 for none.
 * Where a data sheet is silent, @has is the figure of the class it claims.
 */
typedef struct
{
  SwChoiceAnswer answer;
  double has, need;
  SwUnit unit;
  SwEvidence evidence; /* of @has */
} SwChoiceTest;

typedef struct
{
  const SwBlanket *blanket; /* borrowed from catalogue or layout */
  const SwProduct *product; /* borrowed from the job: its data sheet; NULL for a class */
  gboolean chosen;          /* class of the job */
  SwChoiceTest tests[SW_CHOICE_COUNT];
  gboolean meets; /* none of the aspects asked for fails or is not stated */
} SwChoice;

/** Returns: (transfer full) (element-type SwChoice): the job's product first where it has a data sheet, then each type in the catalogue's order. */
GArray *sw_choices_new (const SwLayout *layout);
