/* SPDX-License-Identifier: MIT */
#pragma once

#include "json-text.h"
#include "report-words.h"

/* The three forms of sw_report_tally(). All (transfer full). */
char *sw_report_tally_text (const SwResult *result, const SwTexts *texts,
                            SwNumberStyle style);
char *sw_report_tally_csv (const SwResult *result, const SwTexts *texts);
char *sw_report_tally_json (const SwResult *result, const SwTexts *texts);

/** Seed, fertiliser, allowance, haulage, crew and cost, as members of an object. */
void sw_report_json_order (SwReportJson *json, const SwResult *result);

/** Symbol of the SI unit a value is stored in: "m", "m2", "rad", "1". */
const char *sw_report_si_unit (SwUnit unit);
/** "A-7": face and run. */
char *sw_report_run_words (const SwLayout *layout, const SwPiece *piece);
