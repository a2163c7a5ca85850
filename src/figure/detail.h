/* SPDX-License-Identifier: MIT */
#pragma once

#include "drawing.h"

/** A detail in the making: a drawing at a large scale with its own small world, y up. */
typedef struct
{
  SwDrawing drawing;
  SwView view;
  double scale;
} SwDetailSheet;

/**
 * Starts a detail with caption and scale. World (0, 0) comes to (@x_mm, @y_mm)
 * of the paper, y up.
 */
void sw_detail_begin (SwDetailSheet *sheet, const SwResult *result, guint face,
                      double width_mm, double height_mm, double x_mm, double y_mm,
                      double scale, const SwDraw *draw, const char *title_id);
SwFigure *sw_detail_end (SwDetailSheet *sheet);

/** World point of the sheet on paper. */
SwPaperPoint sw_detail_at (const SwDetailSheet *sheet, double x_m, double y_m);
double sw_detail_mm (const SwDetailSheet *sheet, double length_m);

/** Draw a line through world points and keep labels off it. */
void sw_detail_line (SwDetailSheet *sheet, SwRole role, const SwPaperPoint *points,
                     guint count);

/** Ground line with soil below it down to @bottom_mm; labels keep off the line. */
void sw_detail_ground (SwDetailSheet *sheet, const SwPaperPoint *points, guint count,
                       double bottom_mm);

/** A trench in section, paper mm. */
typedef struct
{
  double left, right, level_left, level_right, floor;
} SwHole;

/** Soil down to @bottom_mm with a backfilled hole between ground that comes and ground that goes on. */
void sw_detail_hole (SwDetailSheet *sheet, SwHole hole, const SwPaperPoint *before,
                     guint n_before, const SwPaperPoint *after, guint n_after,
                     double bottom_mm);

/** Blanket along a hole's walls with arrows beside it that show its way; @side 1: arrows on the left of the way, -1: right. */
void sw_detail_lining (SwDetailSheet *sheet, const SwPaperPoint *path, guint count,
                       double side);

/** Filled hole; labels keep off it. */
void sw_detail_fill (SwDetailSheet *sheet, SwRole role, const SwPaperPoint *points,
                     guint count);

/** A pin driven from (x, y) straight along (dx, dy), to scale in length; labels keep off it. */
void sw_detail_pin (SwDetailSheet *sheet, SwPaperPoint at, double dx, double dy);

/** A text near @target where nothing is, with a leader. @text is taken. */
void sw_detail_callout (SwDetailSheet *sheet, SwPaperPoint target, char *text);

/** Dimension between paper points. @text is taken. */
void sw_detail_dimension (SwDetailSheet *sheet, SwPaperPoint a, SwPaperPoint b,
                          double offset_mm, char *text);

/** Text with one place {size} filled by a small length or a length. (transfer full) */
char *sw_detail_small_text (const SwDetailSheet *sheet, const char *id, double length_m);
/** The same for a spacing. */
char *sw_detail_spacing_text (const SwDetailSheet *sheet, const char *id,
                              double length_m);
char *sw_detail_words (const SwDetailSheet *sheet, const char *id);

/** Pins of this face on the paper. */
double sw_detail_pin_m (const SwDetailSheet *sheet);

/** Steepest gradient of the face, as drawn: at least 10, at most 45 degrees. */
double sw_detail_slope_rad (const SwResult *result, guint face);

SwFigure *sw_detail_key_trench (const SwResult *result, guint face, double width_mm,
                                double height_mm, const SwDraw *draw);
SwFigure *sw_detail_slot (const SwResult *result, guint face, double width_mm,
                          double height_mm, const SwDraw *draw);
SwFigure *sw_detail_side_lap (const SwResult *result, guint face, double width_mm,
                              double height_mm, const SwDraw *draw);
SwFigure *sw_detail_end_lap (const SwResult *result, guint face, double width_mm,
                             double height_mm, const SwDraw *draw);
SwFigure *sw_detail_toe (const SwResult *result, guint face, double width_mm,
                         double height_mm, const SwDraw *draw);
SwFigure *sw_detail_of_pin (const SwResult *result, guint face, double width_mm,
                            double height_mm, const SwDraw *draw);
SwFigure *sw_detail_collar (const SwResult *result, guint face, double width_mm,
                            double height_mm, const SwDraw *draw);
SwFigure *sw_detail_pin_pattern (const SwResult *result, guint face, double width_mm,
                                 double height_mm, const SwDraw *draw);
