/* SPDX-License-Identifier: MIT */
#pragma once

#include <gtk/gtk.h>

#include "sw-stage.h"

/** SwPreview: the pages of the pack as they will be printed, always on white. Actions "preview.next", "preview.previous",
 * "preview.zoom-in", "preview.zoom-out", "preview.zoom-fit". */
#define SW_TYPE_PREVIEW (sw_preview_get_type ())
G_DECLARE_FINAL_TYPE (SwPreview, sw_preview, SW, PREVIEW, GtkWidget)

GtkWidget *sw_preview_new (SwStage *stage);
guint sw_preview_page_count (SwPreview *preview);
