/* SPDX-License-Identifier: MIT */
#pragma once

#include <glib.h>

/* What kind of document a job is printed as, and what its readers have to be told that
 * does not follow from the slope. */

/** File words "crew", "permit", "class", "class-key", "measure", "measure-blank". */
typedef enum
{
  SW_PACK_CREW,
  SW_PACK_PERMIT,    /* guidance of an office for a permit holder */
  SW_PACK_CLASS,     /* handout with exercises */
  SW_PACK_CLASS_KEY, /* its answers, never bound with it */
  SW_PACK_MEASURE,   /* forms to take to the slope, with what the job now holds */
  SW_PACK_MEASURE_BLANK, /* the same for a slope that nobody has measured */
  SW_PACK_KIND_COUNT
} SwPackKind;

/** Words of the file and of the command line; NULL-terminated. Text ids "pack-kind.<code>". */
extern const char *const sw_pack_kind_codes[SW_PACK_KIND_COUNT + 1];

/** Texts of the other kinds, and of the inspection report. Lists have their items separated by ";" or a new line.
 * What is empty is printed as a line to write on. */
typedef enum
{
  SW_PACK_TEXT_OFFICE,      /* that issues the guidance */
  SW_PACK_TEXT_EDITION,     /* of the guidance */
  SW_PACK_TEXT_BASIS,       /* by which law or condition */
  SW_PACK_TEXT_CONTACT,     /* whom to call, when */
  SW_PACK_TEXT_CONDITIONS,  /* list */
  SW_PACK_TEXT_SUBMITTALS,  /* list: what to hand in, by when */
  SW_PACK_TEXT_NOTICE,      /* how long before a hold point, and whom, to tell */
  SW_PACK_TEXT_DEADLINES,   /* list: by which day what must be done */
  SW_PACK_TEXT_RECORDS,     /* what to keep, for how long */
  SW_PACK_TEXT_ENFORCEMENT, /* list: what follows when it is not done */
  SW_PACK_TEXT_CLOSING,     /* list: when the permit can be closed */
  SW_PACK_TEXT_CERTIFICATION, /* what an inspector signs, as the permit words it */
  SW_PACK_TEXT_COURSE,
  SW_PACK_TEXT_LEVEL, /* who the class is for, and what they know before */
  SW_PACK_TEXT_TRAINER,
  SW_PACK_TEXT_COUNT
} SwPackText;

/** Keys of the file. */
extern const char *const sw_pack_text_keys[SW_PACK_TEXT_COUNT];

/** Largest seed; 0 is 1. */
#define SW_PACK_MOST_SEED 999999u

typedef struct
{
  SwPackKind kind;
  guint seed; /* of the class's exercises; the same seed gives the same sheets */
  char *texts[SW_PACK_TEXT_COUNT];
} SwPackPlan;

/** Seed as used: never 0. */
guint sw_pack_plan_seed (const SwPackPlan *plan);

/** Items of a list text, stripped, none empty. (transfer full) */
char **sw_pack_text_items (const SwPackPlan *plan, SwPackText text);
