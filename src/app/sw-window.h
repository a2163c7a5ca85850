/* SPDX-License-Identifier: MIT */
#pragma once

#include <gtk/gtk.h>

#include "preferences.h"
#include "sw-canvas.h"
#include "sw-stage.h"
#include "sw-tally-bar.h"

/**
 * SwWindow: one job, its three views, its inspector, its tally and its pack.
 *
 * Signal "kept-open": it was to close, but the user took that back, or saving failed
 */
#define SW_TYPE_WINDOW (sw_window_get_type ())
G_DECLARE_FINAL_TYPE (SwWindow, sw_window, SW, WINDOW, GtkApplicationWindow)

/** @stock: borrowed; must outlive the window. @app: (nullable): for tests. */
SwWindow *sw_window_new (GtkApplication *app, const SwStock *stock,
                         SwPreferences *preferences);

SwStage *sw_window_stage (SwWindow *window);
SwTallyBar *sw_window_tally (SwWindow *window);
SwCanvas *sw_window_canvas (SwWindow *window, SwCanvasView view);

/** Whether opening a file may take this window: nothing has been done in it. */
gboolean sw_window_is_fresh (SwWindow *window);

/** Whether closing it asks what becomes of changes. */
gboolean sw_window_is_unsaved (SwWindow *window);

/** Read @file; a failure is shown in words and leaves everything as it was. */
gboolean sw_window_load (SwWindow *window, GFile *file);

/** Let the window begin with the start page instead of the drawings. */
void sw_window_show_start (SwWindow *window);
