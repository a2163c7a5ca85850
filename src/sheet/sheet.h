/* SPDX-License-Identifier: MIT */
#pragma once

#include "report-words.h"
#include "table.h"
#include <slopewright/sheet/pack.h>

/* A pack being made: what all pages need, and the pages so far. */
typedef struct
{
  const SwResult *result;
  const SwLayout *layout;
  const SwTally *tally;
  const SwPractice *practice; /* with the job's overrides */
  const SwJob *job;
  const SwDraw *draw;
  const SwTexts *texts;
  SwPen pen;
  double width_mm, height_mm; /* of the paper, upright */
  const char *version, *fingerprint;
  guint stops;           /* stop findings */
  GPtrArray *pages;      /* (element-type SwFigure): bodies in their places */
  GPtrArray *titles;     /* (element-type utf8): one a page */
  GStringChunk *strings; /* of the functions below */
} SwSheet;

/* Words. What comes back is plain, or markup where said, and lives as long as the sheet. */

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
const char *sw_sheet_number (const SwSheet *sheet, double value, SwUnit unit);
const char *sw_sheet_count (const SwSheet *sheet, double value);
/** A practice value as read; its source as words. */
const char *sw_sheet_practice (const SwSheet *sheet, SwPracticeValue value);
const char *sw_sheet_practice_source (const SwSheet *sheet, SwPracticeValue value);
/** "Face A, Upper cutting, tier 2" */
const char *sw_sheet_place (const SwSheet *sheet, guint face, int tier);
/** Cut length of the runs of a tier: "14.77 m", or "12.10 m to 14.77 m". */
const char *sw_sheet_cut_range (const SwSheet *sheet, guint face, guint tier);

/* Pages. */

/** Width of a page's body between the margins, and its height between the frames. */
double sw_sheet_body_width_mm (const SwSheet *sheet);
double sw_sheet_body_height_mm (const SwSheet *sheet);
/** The same for a page turned on its side. */
void sw_sheet_turned_body_mm (const SwSheet *sheet, double *width_mm, double *height_mm);

SwFlow *sw_sheet_flow (const SwSheet *sheet);
/** Set a flow on as many pages as it takes; takes it. */
void sw_sheet_add (SwSheet *sheet, const char *title, SwFlow *flow);
/** One page turned on its side with this figure as its body; takes it. */
void sw_sheet_add_turned (SwSheet *sheet, const char *title, SwFigure *body);
/** Head and foot of all pages, when their number is known. */
void sw_sheet_frame_pages (SwSheet *sheet);

/* The pages of the crew pack, in order. */

void sw_page_glance (SwSheet *sheet);
void sw_page_layout (SwSheet *sheet, guint face);
void sw_page_details (SwSheet *sheet);
void sw_page_steps (SwSheet *sheet);
void sw_page_materials (SwSheet *sheet);
void sw_page_safety (SwSheet *sheet);
void sw_page_inspection (SwSheet *sheet);
void sw_page_workings (SwSheet *sheet);

/** The box with whom to call and where to meet; on several pages. */
void sw_sheet_emergency (const SwSheet *sheet, SwFlow *flow);
