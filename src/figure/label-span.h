/* SPDX-License-Identifier: MIT */
#pragma once

#include "label-place.h"

/* A dimension: its line beside what is measured, two extension lines, and where its text
 * can stand. */

/** Air round a text, and the gap between a dimension's text and its arrows. */
#define SW_LABEL_PAD_MM 0.5

/** Half the strip along a line that texts keep off. */
#define SW_LABEL_LINE_MM 0.3

/** Most places for a dimension's text; its lines. */
#define SW_SPAN_SPOTS 11
#define SW_SPAN_LINES 3

double sw_span_length_mm (const SwLabelSpan *span);

/** Whether a text of this width has no room between the arrows. */
gboolean sw_span_is_cramped (const SwLabelSpan *span, double width_mm);

/**
 * sw_span_spots:
 * @width_mm: of the text, whose height is @size_mm
 * @spots: (out): in order of preference
 *
 * In the line at its middle, to either side of that, else beside it. A text too wide for
 * that stands beside it, else beyond an end, where the arrows are.
 *
 * Returns: how many
 */
guint sw_span_spots (const SwLabelSpan *span, double width_mm, double size_mm,
                     SwLabelSpot spots[SW_SPAN_SPOTS]);

/** The strips of paper that its line and its extension lines take. */
void sw_span_lines (const SwLabelSpan *span, SwLabelBox lines[SW_SPAN_LINES]);

/**
 * sw_span_tail:
 * @box: of its text
 * @from: (out): the end of its line
 * @to: (out): where the text begins
 *
 * Returns: whether the text stands beyond an end of the line, which then goes on to it
 */
gboolean sw_span_tail (const SwLabelSpan *span, SwLabelBox box, SwPaperPoint *from,
                       SwPaperPoint *to);

/** Whether its line lies on a sheet of this size. */
gboolean sw_span_is_inside (const SwLabelSpan *span, double width_mm, double height_mm);
