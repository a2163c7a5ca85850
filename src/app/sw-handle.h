/* SPDX-License-Identifier: MIT */
#pragma once

#include <gtk/gtk.h>

/**
 * SwHandle: one editable point on a canvas, a widget so that the keyboard and
 * assistive tools reach it. It only says what is wanted, by signals: "nudge"
 * (double dx, double dy: steps to the right and down, as seen), "edit", "add",
 * "remove", "cancel", "measure", "step" (int: to the point so many further on), and
 * "type" (string: how a number begins that is typed on it).
 */
#define SW_TYPE_HANDLE (sw_handle_get_type ())
G_DECLARE_FINAL_TYPE (SwHandle, sw_handle, SW, HANDLE, GtkWidget)

/** Size in pixels: small enough to aim, large enough to hit. */
#define SW_HANDLE_PX 26

GtkWidget *sw_handle_new (void);
void sw_handle_describe (SwHandle *handle, const char *label, const char *description);
void sw_handle_set_selected (SwHandle *handle, gboolean selected);
