/* SPDX-License-Identifier: MIT */
#pragma once

#include <gtk/gtk.h>

#include "sw-stage.h"

/**
 * SwListBar: which section is looked at and edited, or which of outline, obstacles
 * and zones on plan; adds and removes them, and has the fields of the one shown.
 */
#define SW_TYPE_LIST_BAR (sw_list_bar_get_type ())
G_DECLARE_FINAL_TYPE (SwListBar, sw_list_bar, SW, LIST_BAR, GtkWidget)

GtkWidget *sw_list_bar_new (SwStage *stage, gboolean in_section);

/** Add a section at @along_m as its popover does; a place that is taken is refused in the status line. */
void sw_list_bar_add_section (SwListBar *bar, double along_m);

/** The choice, and the place of a section along the crest (NULL on plan), for tests. */
GtkDropDown *sw_list_bar_choice (SwListBar *bar);
GtkWidget *sw_list_bar_along (SwListBar *bar);
