/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/base/catalogue.h>

/**
 * SwOwnPractice: what a job's own copy of a practice is called, where its values come
 * from, and the ways in which it is not laid as the practice is. The numbers it replaces
 * stand beside it, as the job's overrides. File words "as-practice", then those of the
 * catalogue.
 */
typedef struct
{
  char *name;          /* "County drawing D-14"; "": the practice with changes, unnamed */
  char *source;        /* of every change that gives no reason of its own; may be "" */
  guint toe_kind;      /* 0: as the practice has it; else 1 + SwToeKind */
  guint trench_lining; /* 0: as the practice has it; else 1 + SwLining */
  guint toe_lining;    /* likewise */
} SwOwnPractice;

/** Whether there is a copy: a name, a source or a way of its own. */
gboolean sw_own_practice_given (const SwOwnPractice *own);

/** How many of the ways it is laid in are not the practice's: 0 to 3. */
guint sw_own_practice_ways (const SwOwnPractice *own);

/**
 * sw_own_practice_lay_over:
 * @own: of a job
 * @practice: as published; changed: it takes the copy's name, its source and its ways
 */
void sw_own_practice_lay_over (const SwOwnPractice *own, SwPractice *practice);
