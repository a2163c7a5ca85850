/* SPDX-License-Identifier: MIT */
#pragma once

#include "report-words.h"

/* The three forms of sw_report_tally(). All (transfer full). */
char *sw_report_tally_text (const SwResult *result, const SwTexts *texts,
                            SwNumberStyle style);
char *sw_report_tally_csv (const SwResult *result, const SwTexts *texts);
char *sw_report_tally_json (const SwResult *result, const SwTexts *texts);

/** Symbol of the SI unit a value is stored in: "m", "m2", "rad", "1". */
const char *sw_report_si_unit (SwUnit unit);
/** "A-7": face and run. */
char *sw_report_run_words (const SwLayout *layout, const SwPiece *piece);
