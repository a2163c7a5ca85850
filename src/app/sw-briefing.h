/* SPDX-License-Identifier: MIT */
#pragma once

#include <gtk/gtk.h>

#include "sw-stage.h"

/**
 * SwBriefing is what is said; SwBriefingWindow shows it to a crew or a class: the work on
 * the job step by step, over the whole screen. Speaks the language of the pack. Follows
 * the stage; closes when the job can no longer be laid out.
 */
#define SW_TYPE_BRIEFING_WINDOW (sw_briefing_window_get_type ())
G_DECLARE_FINAL_TYPE (SwBriefingWindow, sw_briefing_window, SW, BRIEFING_WINDOW,
                      GtkWindow)

/**
 * sw_briefing_window_new:
 * @parent: the window it stands over
 * @stage: its result must have been laid out; begins with the face shown
 */
GtkWidget *sw_briefing_window_new (GtkWindow *parent, SwStage *stage);

guint sw_briefing_window_n_steps (SwBriefingWindow *window);
/** From 0. */
guint sw_briefing_window_step (SwBriefingWindow *window);
void sw_briefing_window_go_to (SwBriefingWindow *window, guint step);

gboolean sw_briefing_window_is_playing (SwBriefingWindow *window);

/** What assistive technology is told at this step. (transfer none) */
const char *sw_briefing_window_spoken (SwBriefingWindow *window);
