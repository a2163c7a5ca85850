/* SPDX-License-Identifier: MIT */
#pragma once

#include <gtk/gtk.h>

#include "sw-stage.h"

/** SwTallyBar: the quantities that matter most, always true; each opens its working. */
#define SW_TYPE_TALLY_BAR (sw_tally_bar_get_type ())
G_DECLARE_FINAL_TYPE (SwTallyBar, sw_tally_bar, SW, TALLY_BAR, GtkWidget)

GtkWidget *sw_tally_bar_new (void);
void sw_tally_bar_set_stage (SwTallyBar *bar, SwStage *stage);

/** What stands in the cell of @code ("net-area", "runs", "rolls", "pins", "trench", "seed"). (transfer none) */
const char *sw_tally_bar_text (SwTallyBar *bar, const char *code);
