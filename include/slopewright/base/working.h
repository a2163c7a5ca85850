/* SPDX-License-Identifier: MIT */
#pragma once

#include <glib.h>
#include <slopewright/base/catalogue.h>
#include <slopewright/base/units.h>

/** Where an input of a working came from. */
typedef enum
{
  SW_ORIGIN_MEASURED,  /* a length or angle of the face, obtained as the face says */
  SW_ORIGIN_TYPED,     /* a choice of the user */
  SW_ORIGIN_PRACTICE,  /* practice value: see evidence and source */
  SW_ORIGIN_CATALOGUE, /* soil, blanket, roll or pin */
  SW_ORIGIN_COMPUTED,  /* another working: see name */
  SW_ORIGIN_COUNT
} SwOrigin;

typedef enum
{
  SW_ROUNDING_NONE,
  SW_ROUNDING_UP, /* sw_count_up() */
  SW_ROUNDING_DOWN,
  SW_ROUNDING_COUNT
} SwRounding;

typedef struct
{
  const char *symbol; /* static: place in the texts, "width" */
  double value;       /* SI */
  SwUnit unit;
  SwOrigin origin;
  char *name;          /* of the working it is, or of the practice key; NULL */
  SwEvidence evidence; /* when PRACTICE or CATALOGUE */
  char *source;        /* when PRACTICE or CATALOGUE */
} SwInput;

/**
 * SwWorking: one number and how it came about.
 *
 * Words are texts, by formula: "working.<formula>.title", ".formula" (symbols
 * in words), ".check" (one line to check it with a tape and a phone
 * calculator; its {places} are the input symbols and {result}).
 */
typedef struct
{
  char *name;          /* unique in a tally: "A.1.runs", "rolls" */
  const char *formula; /* static: "run_count" */
  double value;        /* SI */
  SwUnit unit;
  SwRounding rounding;
  GArray *inputs; /* (element-type SwInput) */
} SwWorking;

SwWorking *sw_working_new (const char *formula, double value, SwUnit unit,
                           SwRounding rounding, const char *name_format, ...)
    G_GNUC_PRINTF (5, 6);
void sw_working_free (SwWorking *working);

void sw_working_measured (SwWorking *working, const char *symbol, double value,
                          SwUnit unit);
void sw_working_typed (SwWorking *working, const char *symbol, double value, SwUnit unit);
/** A computed number too small to carry a working of its own. */
void sw_working_part (SwWorking *working, const char *symbol, double value, SwUnit unit);
void sw_working_computed (SwWorking *working, const char *symbol, const SwWorking *from);
void sw_working_practice (SwWorking *working, const char *symbol,
                          const SwPractice *practice, SwPracticeValue value);
void sw_working_sourced (SwWorking *working, const char *symbol, const SwSourced *sourced,
                         SwUnit unit);
