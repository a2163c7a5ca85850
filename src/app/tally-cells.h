/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/base/number-text.h>
#include <slopewright/base/texts.h>
#include <slopewright/judge/result.h>

/** One quantity of the tally line. */
typedef struct
{
  const char *code;
  const char *title; /* marked for translation */
  /* names of the workings behind it, in reading order; "*" before a name: of every tier or face that ends so */
  const char *workings[4];
} SwTallyCell;

#define SW_TALLY_CELLS 7

const SwTallyCell *sw_tally_cell (guint index);

/** The quantity as read, "–" when the job could not be laid out. (transfer full) */
char *sw_tally_cell_text (const SwTallyCell *cell, const SwResult *result,
                          SwNumberStyle style);

/** The workings behind it in words. (transfer full) */
char *sw_tally_cell_working (const SwTallyCell *cell, const SwResult *result,
                             const SwTexts *texts, SwNumberStyle style);
