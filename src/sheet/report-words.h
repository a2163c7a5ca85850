/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/judge/choice.h>
#include <slopewright/judge/face-soil.h>
#include <slopewright/sheet/report.h>

/* Words that reports and pages share. All (transfer full). */

/** "Face A, Upper cutting", or "Face A" when its name is empty or the same. */
char *sw_report_face_words (const SwFace *face, const SwTexts *texts);
/** The same with ", tier 2" where the face has more than one; @tier < 0: no tier. */
char *sw_report_place_words (const SwResult *result, int face, int tier,
                             const SwTexts *texts);
/** A quantity as read; a gradient always in its three forms. */
char *sw_report_quantity (double value, SwUnit unit, SwNumberStyle style);
/**
 * A quantity as keyed into a pocket calculator: lengths in metres or decimal
 * feet however small, ratios as decimals, areas in the square of the length.
 */
char *sw_report_calculator (double value, SwUnit unit, SwNumberStyle style);
/** As sw_report_finding_text(), for places that are told together. */
char *sw_report_finding_text_at (const SwFinding *finding, const char *place,
                                 const SwTexts *texts, SwNumberStyle style);
/** "meets: 2:1": what a blanket type has, and whether it is enough. */
char *sw_report_choice_cell (SwChoiceAspect aspect, const SwChoiceTest *test,
                             const SwTexts *texts, SwNumberStyle style);
/** What the job asks for. */
char *sw_report_choice_need (SwChoiceAspect aspect, const SwChoiceTest *test,
                             const SwTexts *texts, SwNumberStyle style);
/** The type of a row of the choice: a class, or the product whose data sheet was typed.
 * @of_sheet: whether the job has a data sheet, so the chosen class is what it claims. */
char *sw_report_choice_type (const SwChoice *choice, gboolean of_sheet,
                             const SwTexts *texts);
/** Whose data sheet the choice reads, of what date; NULL where the job has none. */
char *sw_report_product (const SwProduct *product, const SwTexts *texts);
/** The blanket as ordered: the product by name, where it has one, and its class. */
char *sw_report_blanket (const SwLayout *layout, const SwTexts *texts);
/** How the soil of a face was found out, and how sure that is. */
char *sw_report_soil_known (const SwSoilTest *test, const SwTexts *texts,
                            SwNumberStyle style);
/** What one reading of the soil means: pins, K, friction. */
char *sw_report_soil_reading (const SwSoilReading *reading, gboolean itself,
                              const SwTexts *texts, SwNumberStyle style);
/** A number of a finding, a check or a working as read: a depth or a lap never too small, a
 * spacing never too large. */
char *sw_report_limit (const SwInput *input, SwNumberStyle style);
/** Name of an input: "side lap". */
char *sw_report_input_words (const SwInput *input, const SwTexts *texts);
/** The source alone, without its evidence. Returns: (transfer none) (nullable): like @source */
const char *sw_report_source (const char *source, SwEvidence evidence,
                              const SwTexts *texts);

/** Append @text and fill up to @width characters. */
void sw_report_pad (GString *report, const char *text, glong width);
