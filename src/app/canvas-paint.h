/* SPDX-License-Identifier: MIT */
#pragma once

#include <gtk/gtk.h>
#include <slopewright/paint/paint.h>

#include "viewport.h"

/** Painting on a canvas: pixels, with the figure's millimetres scaled in. */
typedef struct
{
  cairo_t *cr;
  const SwViewport *viewport;
  const SwPalette *palette;
  SwTheme theme;
  double px_per_mm;
} SwCanvasPaint;

/** Dark when the widget's text is light; so high contrast and own styles are met too. */
SwTheme sw_canvas_theme (GtkWidget *widget);

void sw_canvas_paint_ground (SwCanvasPaint *paint);
void sw_canvas_paint_grid (SwCanvasPaint *paint, SwUnitSystem units);
void sw_canvas_paint_figure (SwCanvasPaint *paint, const SwFigure *figure);

/** Paint the items of @object over again as a highlight; NULL for none. */
void sw_canvas_paint_marked (SwCanvasPaint *paint, const SwFigure *figure,
                             const char *object);

/** A thin line at world x (@upright) or y from edge to edge: where the pointer is in another view. */
void sw_canvas_paint_line (SwCanvasPaint *paint, double at_m, gboolean upright);
/** The same along @path, in pixels. */
void sw_canvas_paint_path (SwCanvasPaint *paint, const SwPoint *path, guint count);

/** The mark of a corner, or of a whole shape in its middle (@whole), at @px. */
void sw_canvas_paint_grip (SwCanvasPaint *paint, SwPoint px, gboolean whole);

/** A measured line from @from to @to, pixels. */
void sw_canvas_paint_tape (SwCanvasPaint *paint, SwPoint from, SwPoint to);

/** Object of the topmost area at (@x_px, @y_px), or of a trench or zone whose line is near; "" for none. */
const char *sw_canvas_object_at (const SwFigure *figure, double px_per_mm, double x_px,
                                 double y_px);
