/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/base/number-text.h>
#include <slopewright/base/texts.h>
#include <slopewright/judge/result.h>

/** One line of two practices held against each other. */
typedef struct
{
  char *label;
  char *now, *other; /* both NULL: a heading */
  gboolean differs;  /* as read, so what rounds to the same is the same */
} SwPracticeLine;

/** What of a practice is a way to lay it, not a number. */
typedef enum
{
  SW_WAY_TOE_KIND,
  SW_WAY_TRENCH_LINING,
  SW_WAY_TOE_LINING,
  SW_WAY_COUNT
} SwPracticeWay;

/** Id of the text that names @way: "End at the toe". */
const char *sw_practice_way_id (SwPracticeWay way);
/** Ids of the texts for what @way can be, in the order of its enumeration. */
const char *const *sw_practice_way_values (SwPracticeWay way, guint *count);
/** "Toe trench". Returns: (transfer none) */
const char *sw_report_practice_way (const SwPractice *practice, SwPracticeWay way,
                                    const SwTexts *texts);
/** "County drawing D-14, own copy of Common practice", or the practice's name alone.
 * (transfer full) */
char *sw_report_practice_name (const SwPractice *practice, const SwTexts *texts);

/**
 * sw_result_of_practice:
 * @result: of any status
 * @practice_id: of a practice in the result's catalogue
 *
 * Returns: (transfer full): what follows for the same job under that practice. The job's
 *   own copy stands for what it replaces in either; but of the job's own practice it is
 *   what follows as published, so that the copy can be held against it. Read its status
 */
SwResult *sw_result_of_practice (const SwResult *result, const char *practice_id);

/**
 * sw_report_practices:
 * @now: the job as it stands
 * @other: the same job under another practice, of the same catalogue
 *
 * Returns: (transfer full) (element-type SwPracticeLine): source, what has to be ordered
 *   and done on this slope, and each value; no order and no recommendation. A quantity
 *   of a job that cannot be laid out reads "–"
 */
GPtrArray *sw_report_practices (const SwResult *now, const SwResult *other,
                                const SwTexts *texts, SwNumberStyle style);

/** The same for a terminal, "≠" before what differs. (transfer full) */
char *sw_report_practices_text (const SwResult *now, const SwResult *other,
                                const SwTexts *texts, SwNumberStyle style);
