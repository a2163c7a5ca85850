/* SPDX-License-Identifier: MIT */
#pragma once

#include "sheet.h"

/* What the pages of the measuring form share. */

/** Height of rows that hold a job's number and room to write below it. */
#define SW_MEASURING_ROW_MM 10.2

/** Whether the form is to hold nothing of the job. */
gboolean sw_measuring_is_blank (const SwSheet *sheet);
/** "job: 13.42 m"; "" in a blank form, or where the job does not have it. */
const char *sw_measuring_holds (const SwSheet *sheet, double value, SwUnit unit);
/** The same of words as read; "" stays "". */
const char *sw_measuring_holds_words (const SwSheet *sheet, const char *words);
/** A text of the form: as it is, or its "-blank" in a blank form. */
const char *sw_measuring_id (const SwSheet *sheet, const char *id);
/** Who measured, when, with what; @face: its index, or -1 for the whole site. */
void sw_measuring_head (const SwSheet *sheet, SwFlow *flow, int face);
/** Grid to sketch on, with the outline of the face unless the form is blank. @square:
 * (out): side of one of its squares as read; "" in a blank form. */
SwFigure *sw_measuring_sketch (const SwSheet *sheet, guint face, double width_mm,
                               double height_mm, const char **square);
/** Heading of "measuring.@part", with its words where it has any, tied to what follows. */
void sw_measuring_title (const SwSheet *sheet, SwFlow *flow, const char *part);
/** What stands on a face; photographs, on the rest of the page. */
void sw_measuring_obstacles (const SwSheet *sheet, SwFlow *flow, guint face);
void sw_measuring_photos (const SwSheet *sheet, SwFlow *flow);
/** Section by points, soil and trial pins of a face. */
void sw_measuring_section (const SwSheet *sheet, SwFlow *flow, guint face);
void sw_measuring_soil (const SwSheet *sheet, SwFlow *flow, guint face);
