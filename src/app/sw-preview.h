/* SPDX-License-Identifier: MIT */
#pragma once

#include <gtk/gtk.h>

#include "sw-making.h"

/** SwPreview: the pages of the pack as they will be printed, always on white. Actions "preview.next", "preview.previous",
 * "preview.zoom-in", "preview.zoom-out", "preview.zoom-fit", "preview.renew". The pages
 * are made aside; those of before stay until the new ones are there, and are marked as old
 * where that takes long or is cancelled. */
#define SW_TYPE_PREVIEW (sw_preview_get_type ())
G_DECLARE_FINAL_TYPE (SwPreview, sw_preview, SW, PREVIEW, GtkWidget)

GtkWidget *sw_preview_new (SwStage *stage);
/** The pages shown; NULL before the first are made. (transfer none) */
GPtrArray *sw_preview_pages (SwPreview *preview);

/** What is being made, NULL when nothing is; and whether it says that the pages shown are old. */
SwMaking *sw_preview_making (SwPreview *preview);
gboolean sw_preview_says_old (SwPreview *preview);
