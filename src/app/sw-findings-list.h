/* SPDX-License-Identifier: MIT */
#pragma once

#include <gtk/gtk.h>

#include "sw-stage.h"

/** SwFindingsList: what the program doubts about the job; choosing one shows its face and marks its tier. */
#define SW_TYPE_FINDINGS_LIST (sw_findings_list_get_type ())
G_DECLARE_FINAL_TYPE (SwFindingsList, sw_findings_list, SW, FINDINGS_LIST, GtkWidget)

GtkWidget *sw_findings_list_new (void);
void sw_findings_list_set_stage (SwFindingsList *list, SwStage *stage);
/** How many are shown, for tests. */
guint sw_findings_list_count (SwFindingsList *list);
