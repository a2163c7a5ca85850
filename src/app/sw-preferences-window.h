/* SPDX-License-Identifier: MIT */
#pragma once

#include <gtk/gtk.h>

#include "preferences.h"
#include "stock.h"

/** SwPreferencesWindow: every choice holds at once. */
#define SW_TYPE_PREFERENCES_WINDOW (sw_preferences_window_get_type ())
G_DECLARE_FINAL_TYPE (SwPreferencesWindow, sw_preferences_window, SW, PREFERENCES_WINDOW,
                      GtkWindow)

/** @parent: (nullable): the window it belongs to. @stock: borrowed while it is made. */
GtkWidget *sw_preferences_window_new (GtkWindow *parent, SwPreferences *preferences,
                                      const SwStock *stock);
