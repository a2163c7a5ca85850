/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/base/number-text.h>
#include <slopewright/base/texts.h>
#include <slopewright/judge/checks.h>
#include <slopewright/judge/choice.h>
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
 * The nineteen checks, F1 to F19: what speaks, what was looked at, what is to be asked; ""
 * where the job cannot be laid out.
 */
char *sw_report_checks (const SwResult *result, const SwTexts *texts,
                        SwNumberStyle style);

/**
 * The soil of each face: how it is known, what follows from it, and what would follow
 * if it were the class beside it. (transfer full)
 */
char *sw_report_soil (const SwResult *result, const SwTexts *texts, SwNumberStyle style);

/**
 * Every blanket type against what the job asks for, as a table: meets or does not, with
 * the number. A list, never a recommendation.
 */
char *sw_report_choice (const SwResult *result, const SwTexts *texts,
                        SwNumberStyle style);

#define SW_REPORT_CHOICE_COLUMNS (1 + SW_CHOICE_COUNT)

/**
 * The same as cells, (element-type utf8), row by row: a head, what is asked for, then the
 * product and every type; empty where the job cannot be laid out.
 */
GPtrArray *sw_report_choice_cells (const SwResult *result, const SwTexts *texts,
                                   SwNumberStyle style);

/**
 * Inspection and repair dates, one a line, ISO 8601 first. NULL where the job card has no
 * install date.
 */
char *sw_report_dates (const SwResult *result, const SwTexts *texts);

/** Parts of the above, for pages and windows. */
char *sw_report_working_title (const SwWorking *working, const SwTexts *texts);
/** What a working comes to, as read: a lap or a pin never too short. */
char *sw_report_working_value (const SwWorking *working, SwNumberStyle style);
char *sw_report_working_check (const SwWorking *working, const SwTexts *texts,
                               SwNumberStyle style);
/**
 * "Illinois Urban Manual 830 …; read in the agency's own text", and of what is this
 * program's own or common practice the source alone, which says so.
 * @source: of an SwSourced or SwInput with that @evidence; may be NULL
 */
char *sw_report_source_words (const char *source, SwEvidence evidence,
                              const SwTexts *texts);
char *sw_report_input_origin (const SwInput *input, const SwTexts *texts);
char *sw_report_finding_title (const SwFinding *finding, const SwTexts *texts);
char *sw_report_finding_text (const SwResult *result, const SwFinding *finding,
                              const SwTexts *texts, SwNumberStyle style);

/** What a check looked at, one sentence with its numbers. */
char *sw_report_check_looked (const SwCheck *check, const SwTexts *texts,
                              SwNumberStyle style);
/** "Ask on the site visit: …", one for each open fact; (element-type utf8), then NULL. */
char **sw_report_check_asks (const SwCheck *check, const SwTexts *texts);
/** How it stands: the worst severity that speaks, or "nothing found", or "not known". */
const char *sw_report_check_state (const SwCheck *check, const SwTexts *texts);
