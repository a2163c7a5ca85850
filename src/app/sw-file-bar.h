/* SPDX-License-Identifier: MIT */
#pragma once

#include <gtk/gtk.h>
#include <slopewright/document/document.h>

/**
 * SwFileBar: stays over the drawings while a job and its file do not go together: the file
 * changed, went, or is of a later format. Offers what can be done about it.
 */
#define SW_TYPE_FILE_BAR (sw_file_bar_get_type ())
G_DECLARE_FINAL_TYPE (SwFileBar, sw_file_bar, SW, FILE_BAR, GtkWidget)

GtkWidget *sw_file_bar_new (SwDocument *document);

/** What it says now; "" while it is hidden. */
const char *sw_file_bar_words (SwFileBar *bar);
