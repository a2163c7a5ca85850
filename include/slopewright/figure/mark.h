/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/figure/figure.h>

/* Drafting marks, expanded to lines so that painters know only lines, areas and text. */

/** Arrow from (x0, y0) to its head at (x1, y1). */
void sw_mark_arrow (SwFigure *figure, SwRole role, double x0_mm, double y0_mm,
                    double x1_mm, double y1_mm);

/**
 * sw_mark_dimension:
 * @offset_mm: dimension line's distance from the measured line, to the left of
 *   the way from (x0, y0) to (x1, y1); may be negative
 * @label: text at its middle, knocked out of what lies behind it
 */
void sw_mark_dimension (SwFigure *figure, const SwTextMeasure *measure, double x0_mm,
                        double y0_mm, double x1_mm, double y1_mm, double offset_mm,
                        double size_mm, const char *label);

/** Text on a white ground, centred at (x, y) vertically and by @align horizontally. */
void sw_mark_label (SwFigure *figure, const SwTextMeasure *measure, SwRole role,
                    double x_mm, double y_mm, double size_mm, SwAlign align,
                    SwTypeface typeface, const char *text);

/** Leader: a thin line from the thing at (x0, y0) to a label that starts at (x1, y1). */
void sw_mark_leader (SwFigure *figure, const SwTextMeasure *measure, double x0_mm,
                     double y0_mm, double x1_mm, double y1_mm, double size_mm,
                     const char *text);
