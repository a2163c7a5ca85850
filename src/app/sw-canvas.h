/* SPDX-License-Identifier: MIT */
#pragma once

#include <gtk/gtk.h>

#include "canvas-kind.h"
#include "sw-stage.h"

/**
 * SwCanvas: one view of the face shown. What can be edited are child widgets
 * (SwHandle); all else is painted from the same figure as the sheets.
 *
 * Actions: "canvas.fit", "canvas.zoom-in", "canvas.zoom-out" stand on its pane.
 */
#define SW_TYPE_CANVAS (sw_canvas_get_type ())
G_DECLARE_FINAL_TYPE (SwCanvas, sw_canvas, SW, CANVAS, GtkWidget)

GtkWidget *sw_canvas_new (SwCanvasView view);
void sw_canvas_set_stage (SwCanvas *canvas, SwStage *stage);

/** Show the whole face, and keep it in view until the user zooms or pans. */
void sw_canvas_fit (SwCanvas *canvas);
/** About the middle. */
void sw_canvas_zoom (SwCanvas *canvas, double factor);

/** Draw heights of a section so many times as large as distances; 1 as they are. */
void sw_canvas_set_stretch (SwCanvas *canvas, double stretch);

/** Scale of the drawing on screen, pixels to a metre. */
double sw_canvas_px_per_m (SwCanvas *canvas);

/** Where a point of the world lies in the widget, for tests. */
SwPoint sw_canvas_to_px (SwCanvas *canvas, SwPoint world);

/** The measure tool: two clicks say length, plan length, rise and gradient. */
void sw_canvas_set_measuring (SwCanvas *canvas, gboolean measuring);
gboolean sw_canvas_is_measuring (SwCanvas *canvas);

/** Ask for a new obstacle or zone, at the pointer when it is on the face, else in its middle. */
void sw_canvas_add_shape (SwCanvas *canvas, SwListKind kind);

/** Give up a drag; FALSE when there was none. */
gboolean sw_canvas_cancel_drag (SwCanvas *canvas);
