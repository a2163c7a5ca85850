/* SPDX-License-Identifier: MIT */
#pragma once

#include <gtk/gtk.h>

#include "stock.h"

/**
 * SwHelpWindow: the help pages: contents and search at the side, the page beside them,
 * back and forward. In the language of the window where a page is there in it, else
 * in English, and says so.
 */
#define SW_TYPE_HELP_WINDOW (sw_help_window_get_type ())
G_DECLARE_FINAL_TYPE (SwHelpWindow, sw_help_window, SW, HELP_WINDOW, GtkWindow)

/** @stock: borrowed; must outlive the window. @units: of the sizes in drawings */
GtkWidget *sw_help_window_new (const SwStock *stock, SwUnitSystem units);

/**
 * sw_help_window_go:
 * @target: "soil" or "findings#F9"
 *
 * Returns: FALSE when it leads nowhere; nothing happens then
 */
gboolean sw_help_window_go (SwHelpWindow *window, const char *target);

/** What a user types into the search. */
void sw_help_window_search (SwHelpWindow *window, const char *words);

/** Name of the page shown, and how many places the search found, for tests. */
const char *sw_help_window_page (SwHelpWindow *window);
guint sw_help_window_found (SwHelpWindow *window);
