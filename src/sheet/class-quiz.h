/* SPDX-License-Identifier: MIT */
#pragma once

#include "class-exercise.h"

/* Questions of several kinds, in the seed's order. */
#define SW_QUIZ_ITEMS 10
#define SW_QUIZ_MOST_CHOICES 5

typedef enum
{
  SW_QUIZ_CHOICE,     /* one of three */
  SW_QUIZ_TRUE_FALSE, /* right or wrong, and why; no choices */
  SW_QUIZ_ORDER,      /* the choices are steps to be put in order */
  SW_QUIZ_NUMBER      /* to be worked out; no choices */
} SwQuizKind;

typedef struct
{
  SwQuizKind kind;
  const char *ask;
  const char *choices[SW_QUIZ_MOST_CHOICES];
  guint n_choices;
  guint right;        /* CHOICE: index of the right choice */
  const char *answer; /* all others: what is right, and what is right, too */
  const char *why;
  guint points;
} SwQuizItem;

/** @items: SW_QUIZ_ITEMS of them, words of the sheet. */
void sw_quiz (const SwSheet *sheet, SwQuizItem *items);
