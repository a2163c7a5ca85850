/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/figure/figure.h>

/* Drafting marks, expanded to lines so that painters know only lines, areas and text. */

/** Arrow from (x0, y0) to its head at (x1, y1); nothing when they coincide. */
void sw_mark_arrow (SwFigure *figure, SwRole role, double x0_mm, double y0_mm,
                    double x1_mm, double y1_mm);

/**
 * sw_mark_dimension:
 * @offset_mm: dimension line's distance from the measured line, to the left of
 *   the way from (x0, y0) to (x1, y1); may be negative
 * @label: text at its middle, knocked out of what lies behind it
 *
 * Runs along the measured line and reads from below or from the right. Where
 * the label does not fit between the arrows, they stand outside and the label
 * follows behind (x1, y1).
 */
void sw_mark_dimension (SwFigure *figure, const SwTextMeasure *measure, double x0_mm,
                        double y0_mm, double x1_mm, double y1_mm, double offset_mm,
                        double size_mm, const char *label);

/** Text on a white ground, centred at (x, y) vertically and by @align horizontally. */
void sw_mark_label (SwFigure *figure, const SwTextMeasure *measure, SwRole role,
                    double x_mm, double y_mm, double size_mm, SwAlign align,
                    SwTypeface typeface, const char *text);

/** Leader: a thin line from the thing at (x0, y0) to a label that starts at (x1, y1)
 * and runs on to the right, or to the left when the thing lies to its right. */
void sw_mark_leader (SwFigure *figure, const SwTextMeasure *measure, double x0_mm,
                     double y0_mm, double x1_mm, double y1_mm, double size_mm,
                     const char *text);

/**
 * sw_mark_hatch:
 * @points: closed polygon, may be concave; even-odd where it crosses itself
 * @spacing_mm: distance between neighbouring lines; negative: lines fall to
 *   the right instead of rising
 * @width_mm: of the sheet; lines that miss it are left out, so that a view
 * @height_mm:  far into a drawing costs no more than the whole
 * @ends: (element-type SwPaperPoint): cleared, then filled with the hatch
 *   lines, two points each
 *
 * Lines under 45 degrees, cut at the polygon's edge. They lie on one grid for
 * the whole figure, so areas side by side are hatched through. Both painters
 * call this with the spacing of the palette.
 */
void sw_mark_hatch (const SwPaperPoint *points, guint count, double spacing_mm,
                    double width_mm, double height_mm, GArray *ends);
