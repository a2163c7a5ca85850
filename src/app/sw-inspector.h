/* SPDX-License-Identifier: MIT */
#pragma once

#include <gtk/gtk.h>

#include "sw-stage.h"

/** SwInspector: everything about the job that is not drawn, in five pages, and the findings. */
#define SW_TYPE_INSPECTOR (sw_inspector_get_type ())
G_DECLARE_FINAL_TYPE (SwInspector, sw_inspector, SW, INSPECTOR, GtkWidget)

void sw_inspector_set_stage (SwInspector *inspector, SwStage *stage);
/** @page: "face", "blanket", "practice", "site", "job" */
void sw_inspector_show_page (SwInspector *inspector, const char *page);
