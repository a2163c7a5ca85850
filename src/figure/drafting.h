/* SPDX-License-Identifier: MIT */
#pragma once

#include "label-place.h"

/* Strokes of a draughtsman that the drawings share. */

#define SW_ARROW_MM 1.6

/** Dimension lines, extension lines and arrows, without text; arrows outside when shorter than @inside_mm. */
void sw_draft_dimension (SwFigure *figure, const SwLabelSpan *span, double inside_mm);

/** Closed arrow head with its point at (x, y), pointing along (dx, dy). */
void sw_draft_arrow_head (SwFigure *figure, SwRole role, double x_mm, double y_mm,
                          double dx, double dy, double length_mm);

/** Shaft with one head at its second end, of a given head length. */
void sw_draft_arrow (SwFigure *figure, SwRole role, double x0_mm, double y0_mm,
                     double x1_mm, double y1_mm, double head_mm);

/** A line of dashes, for hidden edges. */
void sw_draft_dashes (SwFigure *figure, SwRole role, double x0_mm, double y0_mm,
                      double x1_mm, double y1_mm, double dash_mm);

/** The polyline moved by @offset_mm to the left of its way, mitred; @out has room for @count points. */
void sw_draft_offset (const SwPaperPoint *points, guint count, double offset_mm,
                      SwPaperPoint *out);

/** The zigzag that says: part of this length is left out. Crosses the line from 0 to 1 at its middle. */
void sw_draft_break_mark (SwFigure *figure, SwRole role, double x_mm, double y_mm,
                          double height_mm);

/** Seen from the side: a U of two legs, or one leg under a head when @crown_mm is 0. Driven along (dx, dy). */
void sw_draft_pin (SwFigure *figure, double x_mm, double y_mm, double dx, double dy,
                   double length_mm, double crown_mm);

/** Soil below a ground line: a band of @depth_mm hatched, its lower edge left open. */
void sw_draft_soil_band (SwFigure *figure, const SwPaperPoint *points, guint count,
                         double depth_mm);
