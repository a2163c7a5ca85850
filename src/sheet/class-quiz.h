/* SPDX-License-Identifier: MIT */
#pragma once

#include "class-exercise.h"

/* Questions with three choices each, in the seed's order. */
#define SW_QUIZ_ITEMS 10
#define SW_QUIZ_CHOICES 3

typedef struct
{
  const char *ask;
  const char *choices[SW_QUIZ_CHOICES];
  guint right; /* index of the right choice */
  const char *why;
} SwQuizItem;

/** @items: SW_QUIZ_ITEMS of them, words of the sheet. */
void sw_quiz (const SwSheet *sheet, SwQuizItem *items);
