/* SPDX-License-Identifier: MIT */
#pragma once

#include <gtk/gtk.h>
#include <slopewright/store/help.h>

#include "stock.h"

/**
 * SwHelpView: one help page, to be read and scrolled. Its title, headings and links take
 * the keyboard's focus. Signal "follow" (const char *target): a link was chosen.
 */
#define SW_TYPE_HELP_VIEW (sw_help_view_get_type ())
G_DECLARE_FINAL_TYPE (SwHelpView, sw_help_view, SW, HELP_VIEW, GtkWidget)

/** @stock: borrowed. @units: of the sizes in drawings */
GtkWidget *sw_help_view_new (const SwStock *stock, SwUnitSystem units);

/**
 * sw_help_view_show:
 * @page: borrowed for the call
 * @notice: said above the page; NULL for nothing
 * @block: comes to the top and gets the focus; -1 for the page's beginning
 */
void sw_help_view_show (SwHelpView *view, const SwHelpPage *page, const char *notice,
                        int block);

/** The widget of @block, -1 for the title, for tests. */
GtkWidget *sw_help_view_block (SwHelpView *view, int block);
