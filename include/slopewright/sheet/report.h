/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/base/number-text.h>
#include <slopewright/base/texts.h>
#include <slopewright/judge/result.h>

/* The same contents as text, for terminals and other programs. All (transfer full). */

typedef enum
{
  SW_TALLY_TEXT,
  SW_TALLY_CSV,
  SW_TALLY_JSON
} SwTallyFormat;

/**
 * Every quantity. TEXT is aligned for a terminal. CSV per RFC 4180, comma and
 * point, SI units in a column: name,title,value,unit; text cells that begin
 * with = + - @ get a leading apostrophe. JSON is one object: areas, runs,
 * rolls, cut list, pins, trenches, seed and all workings.
 */
char *sw_report_tally (const SwResult *result, const SwTexts *texts, SwNumberStyle style,
                       SwTallyFormat format);

/** One working in words: title, formula, inputs with origin and source, rounding, check line. NULL for an unknown name. */
char *sw_report_working (const SwResult *result, const char *name, const SwTexts *texts,
                         SwNumberStyle style);

/** Down the slope against along it, and what measuring errors do to the counts; for a terminal. */
char *sw_report_compare (const SwResult *result, const SwTexts *texts,
                         SwNumberStyle style);

/** Findings, one paragraph each; "" when there are none. */
char *sw_report_findings (const SwResult *result, const SwTexts *texts,
                          SwNumberStyle style);

/**
 * Every blanket type against what the job asks for, as a table: meets or does not, with
 * the number. A list, never a recommendation.
 */
char *sw_report_choice (const SwResult *result, const SwTexts *texts,
                        SwNumberStyle style);

/**
 * Inspection and repair dates, one a line, ISO 8601 first. NULL where the job card has no
 * install date.
 */
char *sw_report_dates (const SwResult *result, const SwTexts *texts);

/** Parts of the above, for pages and windows. */
char *sw_report_working_title (const SwWorking *working, const SwTexts *texts);
char *sw_report_working_check (const SwWorking *working, const SwTexts *texts,
                               SwNumberStyle style);
char *sw_report_input_origin (const SwInput *input, const SwTexts *texts);
char *sw_report_finding_title (const SwFinding *finding, const SwTexts *texts);
char *sw_report_finding_text (const SwResult *result, const SwFinding *finding,
                              const SwTexts *texts, SwNumberStyle style);
