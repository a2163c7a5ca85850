/* SPDX-License-Identifier: MIT */
#pragma once

#include <gtk/gtk.h>

#include "sw-stage.h"

/**
 * SwPracticesDialog: the job under its own practice beside the same job under another
 * one. It follows the job while it stands open; taking the other practice is one step.
 */
#define SW_TYPE_PRACTICES_DIALOG (sw_practices_dialog_get_type ())
G_DECLARE_FINAL_TYPE (SwPracticesDialog, sw_practices_dialog, SW, PRACTICES_DIALOG,
                      GtkWindow)

/** @parent: (nullable): window it stands over */
GtkWidget *sw_practices_dialog_new (GtkWindow *parent, SwStage *stage);

/** Hold the job against practice @index of the catalogue. */
void sw_practices_dialog_choose (SwPracticesDialog *dialog, guint index);

/** Take the other practice for the job. */
void sw_practices_dialog_use (SwPracticesDialog *dialog);

/** What stands in line @index: 0 the label, 1 the job's own, 2 the other; to look at. */
const char *sw_practices_dialog_text (SwPracticesDialog *dialog, guint index,
                                      guint column);
