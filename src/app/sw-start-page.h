/* SPDX-License-Identifier: MIT */
#pragma once

#include <gtk/gtk.h>

/**
 * SwStartPage: how to begin: a new slope by what was measured, drafts that a crash
 * left, jobs opened before, and the examples. Each row is an action of the window:
 * win.measure, win.show-view, win.open-uri, win.recover-draft, win.discard-draft,
 * win.open-example.
 */
#define SW_TYPE_START_PAGE (sw_start_page_get_type ())
G_DECLARE_FINAL_TYPE (SwStartPage, sw_start_page, SW, START_PAGE, GtkWidget)

GtkWidget *sw_start_page_new (void);

/** Look again what there is. @folder: of the drafts. @with_recent: jobs opened before, too */
void sw_start_page_refresh (SwStartPage *page, const char *folder, gboolean with_recent);
