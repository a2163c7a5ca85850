/* SPDX-License-Identifier: MIT */
#pragma once

#include "sw-canvas.h"

/** SwCanvasPane: a canvas under its title, with fit and zoom. Actions "canvas.fit", "canvas.zoom-in", "canvas.zoom-out". */
#define SW_TYPE_CANVAS_PANE (sw_canvas_pane_get_type ())
G_DECLARE_FINAL_TYPE (SwCanvasPane, sw_canvas_pane, SW, CANVAS_PANE, GtkWidget)

GtkWidget *sw_canvas_pane_new (SwCanvasView view, SwStage *stage);
SwCanvas *sw_canvas_pane_canvas (SwCanvasPane *pane);

/** Say whether this view is the only one shown. */
void sw_canvas_pane_set_alone (SwCanvasPane *pane, gboolean alone);
