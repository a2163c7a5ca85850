/* SPDX-License-Identifier: MIT */
#pragma once

#include <gtk/gtk.h>

#include "sw-stage.h"

/**
 * SwTypesDialog: every blanket type against what the job asks for, with the numbers. A
 * list to choose by, never a recommendation. It follows the job while it stands open.
 */
#define SW_TYPE_TYPES_DIALOG (sw_types_dialog_get_type ())
G_DECLARE_FINAL_TYPE (SwTypesDialog, sw_types_dialog, SW, TYPES_DIALOG, GtkWindow)

/** @parent: (nullable): window it stands over */
GtkWidget *sw_types_dialog_new (GtkWindow *parent, SwStage *stage);

/** What stands in a cell, to look at; NULL where there is none. */
const char *sw_types_dialog_text (SwTypesDialog *dialog, guint row, guint column);
