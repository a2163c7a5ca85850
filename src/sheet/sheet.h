/* SPDX-License-Identifier: MIT */
#pragma once

#include "report-words.h"
#include "table.h"
#include <slopewright/sheet/pack.h>

/* Parts of a pack. Which ones a pack has, and in which order, is said in pack.c. */
typedef enum
{
  SW_PART_FRONT,
  SW_PART_LAYOUT,
  SW_PART_DETAILS,
  SW_PART_STEPS,
  SW_PART_MATERIALS,
  SW_PART_SAFETY,
  SW_PART_INSPECTION,
  SW_PART_AS_BUILT,
  SW_PART_JUDGEMENT,
  SW_PART_HAND_CHECK,
  SW_PART_MEASURING,
  SW_PART_WORK,
  SW_PART_WORKINGS,
  SW_PART_COST,
  SW_PART_PERMIT,
  SW_PART_CLASS,
  SW_PART_COUNT
} SwPart;

/* A line of the list of contents. */
typedef struct
{
  const char *title; /* of the page, where links lead to */
  SwPart part;
  guint page; /* counted from the end of the front pages, from 0 */
} SwSheetEntry;

/* A pack being made: what all pages need, and the pages so far. */
typedef struct
{
  const SwResult *result;
  const SwLayout *layout;
  const SwTally *tally;
  const SwPractice *practice; /* with the job's overrides */
  const SwJob *job;
  const SwPackPlan *plan; /* what kind of document this is */
  const SwDraw *draw;
  const SwTexts *texts;
  SwPen pen;
  double width_mm, height_mm; /* of the paper, upright */
  const char *version, *fingerprint;
  guint stops;        /* stop findings */
  GPtrArray *pages;   /* (element-type SwFigure): bodies in their places */
  GPtrArray *titles;  /* (element-type utf8): one a page */
  GArray *contents;   /* (element-type SwSheetEntry): of the pages after the front */
  SwPart part;        /* whose pages are being added */
  guint front;        /* how many pages stand before them */
  gboolean short_end; /* what was added last ends high on a page of its own */
  GArray *plans; /* (element-type guint): faces whose plan the layout left to the front */
  GStringChunk *strings; /* of the functions below */
} SwSheet;

/* Words: plain, or markup where said. They live as long as the sheet. */

const char *sw_sheet_get (const SwSheet *sheet, const char *id);
/** As sw_texts_fill(), as markup: the text's own *bold* holds, values are plain. */
const char *sw_sheet_fill (const SwSheet *sheet, const char *id,
                           ...) G_GNUC_NULL_TERMINATED;
const char *sw_sheet_format (const SwSheet *sheet, const char *format, ...)
    G_GNUC_PRINTF (2, 3);
const char *sw_sheet_keep (const SwSheet *sheet, char *taken);
/** User text as markup. */
const char *sw_sheet_plain (const SwSheet *sheet, const char *text);
const char *sw_sheet_quantity (const SwSheet *sheet, double value, SwUnit unit);
/** A length in small units, rounded to the tape's mark on the side of @limit. */
const char *sw_sheet_limit (const SwSheet *sheet, double length_m, SwLimit limit);
/** What a working comes to. */
const char *sw_sheet_working_value (const SwSheet *sheet, const SwWorking *working);
/** In whole metres or feet: "192 m", "1030 ft". */
const char *sw_sheet_whole_length (const SwSheet *sheet, double length_m);
/** What a finding says of these places. */
const char *sw_sheet_finding (const SwSheet *sheet, const SwFinding *finding,
                              const char *places);
const char *sw_sheet_number (const SwSheet *sheet, double value, SwUnit unit);
const char *sw_sheet_count (const SwSheet *sheet, double value);
/** The practice by name, or the job's own copy of it; not markup. */
const char *sw_sheet_practice_name (const SwSheet *sheet);
/** A practice value as read; its source as words. */
const char *sw_sheet_practice (const SwSheet *sheet, SwPracticeValue value);
const char *sw_sheet_practice_source (const SwSheet *sheet, SwPracticeValue value);
/** @id of a text for the practice's toe: "pack.check.toe" to "pack.check.toe-fold". */
const char *sw_sheet_toe_id (const SwSheet *sheet, const char *id);
/** @id of a text about inspections: with "-any-rain" where the practice asks for one after
 * every rain. */
const char *sw_sheet_inspect_id (const SwSheet *sheet, const char *id);
/** What a text of the pack plan is called. */
const char *sw_sheet_plan_label (const SwSheet *sheet, SwPackText text);
/** The blanket as ordered, and how the soil of a face was found out. */
const char *sw_sheet_blanket (const SwSheet *sheet);
const char *sw_sheet_soil_known (const SwSheet *sheet, guint face);
/** "Face A, Upper cutting" */
const char *sw_sheet_face (const SwSheet *sheet, guint face);
/** As short as it can be in this job: "Tier 2", "Face A", "Face A, tier 2". */
const char *sw_sheet_place (const SwSheet *sheet, guint face, guint tier);
/** Whether the job has one face with one tier. */
gboolean sw_sheet_is_plain (const SwSheet *sheet);
/**
 * sw_sheet_alike_runs:
 *
 * Returns: (transfer full) (element-type GArray of guint): the runs of a tier by their
 *   index in the face, those together that are cut and joined alike, wherever they lie.
 */
GPtrArray *sw_sheet_alike_runs (const SwFaceLayout *face, guint tier);
/** "1 to 4, 7, 9 to 12": @runs by their index, in order. */
const char *sw_sheet_runs (const SwSheet *sheet, const SwFaceLayout *face,
                           const GArray *runs);
/** The infill runs of a tier, as "2, 4 … 38". */
const char *sw_sheet_infill_runs (const SwSheet *sheet, const SwFaceLayout *face,
                                  guint tier);
/** Cut length of the runs of a tier: "14.77 m", or "12.10 m to 14.77 m". */
const char *sw_sheet_cut_range (const SwSheet *sheet, guint face, guint tier);

/* Pages. */

/** Width of a page's body between the margins, and its height between the frames. */
double sw_sheet_body_width_mm (const SwSheet *sheet);
double sw_sheet_body_height_mm (const SwSheet *sheet);
/** The same for a page turned on its side. */
void sw_sheet_turned_body_mm (const SwSheet *sheet, double *width_mm, double *height_mm);

SwFlow *sw_sheet_flow (const SwSheet *sheet);
/** Where a part begins in this pack, or NULL; only the front pages can ask. */
const SwSheetEntry *sw_sheet_entry (const SwSheet *sheet, SwPart part);
/** Number of its page, from 1, as printed. */
guint sw_sheet_entry_page (const SwSheet *sheet, const SwSheetEntry *entry);

/** Whether a page with that title has been added: links lead nowhere else. */
gboolean sw_sheet_has_page (const SwSheet *sheet, const char *title);

/** Remember whether a flow ends high on a page of its own, before anything fills that page. */
void sw_sheet_note_end (SwSheet *sheet, const SwFlow *flow);
/** Set a flow on as many pages as it takes; takes it. */
void sw_sheet_add (SwSheet *sheet, const char *title, SwFlow *flow);
/** One page turned on its side with this figure as its body; takes it. */
void sw_sheet_add_turned (SwSheet *sheet, const char *title, SwFigure *drawing);
/** Head and foot of all pages, when their number is known. */
void sw_sheet_frame_pages (SwSheet *sheet);

/* Pages by part. */

void sw_page_glance (SwSheet *sheet);
void sw_page_layout (SwSheet *sheet, guint face);
void sw_page_details (SwSheet *sheet);
/** The section of a face; as low as its scale allows, so that the room goes to what follows. */
void sw_sheet_section (const SwSheet *sheet, SwFlow *flow, guint face, double most_mm);
/** The plan of a face, no higher than @most_mm; as low as its scale allows. */
void sw_sheet_plan (const SwSheet *sheet, SwFlow *flow, guint face, double most_mm);
/** How high a plan can be on the last page of @flow; 0 when it would be too small. */
double sw_sheet_plan_room_mm (const SwSheet *sheet, const SwFlow *flow);
void sw_page_steps (SwSheet *sheet);
void sw_page_materials (SwSheet *sheet);
/** Seed by species, fertiliser, haulage and time; nothing where the job says nothing. */
void sw_page_work (SwSheet *sheet);
void sw_page_safety (SwSheet *sheet);
void sw_page_inspection (SwSheet *sheet);
/** A form for one visit after acceptance, to be copied. */
void sw_page_inspection_report (SwSheet *sheet);
void sw_page_as_built (SwSheet *sheet);
void sw_page_judgement (SwSheet *sheet);
void sw_page_hand_check (SwSheet *sheet);
void sw_page_workings (SwSheet *sheet);
/** Forms to take to the slope: every face with what the job holds of it, or one blank face;
 * then the site. */
void sw_page_measuring (SwSheet *sheet);
void sw_page_site_visit (SwSheet *sheet);
/** Money: only where the job asks for it. */
void sw_page_cost (SwSheet *sheet);

/* Guidance for a permit holder: on the counter, at home, and for the plan sheet. */
void sw_page_permit_counter (SwSheet *sheet);
void sw_page_permit_guide (SwSheet *sheet);
void sw_page_permit_control (SwSheet *sheet);
void sw_page_permit_notes (SwSheet *sheet);

/* Handout of a class, and its answers. */
void sw_page_class_front (SwSheet *sheet);
void sw_page_class_words (SwSheet *sheet);
void sw_page_class_example (SwSheet *sheet);
void sw_page_class_exercises (SwSheet *sheet);
void sw_page_class_faults (SwSheet *sheet);
void sw_page_class_quiz (SwSheet *sheet);
void sw_page_class_practice (SwSheet *sheet);
void sw_page_class_key (SwSheet *sheet);

/** Hold points to be signed; when to inspect, with the source of the rule. */
void sw_sheet_hold_points (const SwSheet *sheet, SwFlow *flow);
void sw_sheet_inspection_rule (const SwSheet *sheet, SwFlow *flow);
/** What is done about what an inspection sees. */
void sw_sheet_repairs (const SwSheet *sheet, SwFlow *flow);
/** Every blanket type held against this job, or only those that meet all it asks for. */
void sw_judge_add_choice (const SwSheet *sheet, SwFlow *flow, gboolean meeting);

/** Whether the job's seed has species that need a table. */
gboolean sw_sheet_has_mix (const SwSheet *sheet);

/** What stands on the face and has to be cut round; nothing where nothing does. */
void sw_sheet_obstacles (const SwSheet *sheet, SwFlow *flow, guint face);
/** Which pin goes where, on a face of several soils; nothing where it has one. */
void sw_sheet_soils (const SwSheet *sheet, SwFlow *flow, guint face);
double sw_sheet_longest_pin_m (const SwFaceLayout *face);
/** "150 mm", or "150 mm or 300 mm, by soil zone". */
const char *sw_sheet_pin_words (const SwSheet *sheet, const SwFaceLayout *face);
/** How many rows to write in are left room for below a table head on the last page. */
guint sw_sheet_rows_that_fit (const SwSheet *sheet, const SwFlow *flow, double row_mm);
/** Height of the lowest drawing that still has the scale which @most_mm allows. */
double sw_sheet_drawing_mm (const SwSheet *sheet,
                            SwView (*fit) (const SwResult *result, guint face,
                                           double width_mm, double height_mm,
                                           const SwDraw *draw, double *scale),
                            guint face, double width_mm, double most_mm);

/** All findings, each code once with its places and the page where it is read. */
void sw_sheet_findings (const SwSheet *sheet, SwFlow *flow);
/** As items: the findings whose code begins so. Returns: whether there are any. */
gboolean sw_sheet_findings_about (const SwSheet *sheet, SwFlow *flow, const char *code);
/** When inspections and repairs are due, by the install date. */
void sw_sheet_due_dates (const SwSheet *sheet, SwFlow *flow);
/** Program, input, what the user changed, and every preset with its source. */
void sw_sheet_presets (const SwSheet *sheet, SwFlow *flow);
/** On the first page: that a translation waits for a reader of the trade, where it does. */
void sw_sheet_review (const SwSheet *sheet, SwFlow *flow);
/** The job card with the emergency box beside it. */
void sw_sheet_job_card (const SwSheet *sheet, SwFlow *flow);
/** Lines for what the job file does not hold: drawings, hours, limits. */
void sw_sheet_before (const SwSheet *sheet, SwFlow *flow);
/** On what is left of the last page: lines for changes that are agreed on site. Nothing where
 * that is too little. */
void sw_sheet_change_notes (SwSheet *sheet, SwFlow *flow);
/** The box with whom to call and where to meet; on several pages. */
void sw_sheet_emergency (const SwSheet *sheet, SwFlow *flow, double least_mm);
