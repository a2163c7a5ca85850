/* SPDX-License-Identifier: MIT */
#pragma once

#include <gtk/gtk.h>
#include <slopewright/ground/measured.h>

#include "sw-stage.h"

/**
 * SwMeasureDialog: the shape of the face shown, by what was measured on the slope.
 * Says all the while what follows from the numbers, and what does not fit.
 */
#define SW_TYPE_MEASURE_DIALOG (sw_measure_dialog_get_type ())
G_DECLARE_FINAL_TYPE (SwMeasureDialog, sw_measure_dialog, SW, MEASURE_DIALOG, GtkWindow)

/**
 * sw_measure_dialog_new:
 * @parent: the window it stands over
 * @stage: whose face it shapes; begins with that face's own numbers
 * @how: which of the measurements it begins with
 */
GtkWidget *sw_measure_dialog_new (GtkWindow *parent, SwStage *stage, SwObtained how);

/** The field of a measurement, for tests; @index as it stands in the dialog. */
GtkWidget *sw_measure_dialog_field (SwMeasureDialog *dialog, guint index);

/** What it says about the numbers. (transfer none) */
const char *sw_measure_dialog_message (SwMeasureDialog *dialog);

/** Whether it says that a bench of the face goes, for tests. */
gboolean sw_measure_dialog_warns (SwMeasureDialog *dialog);

/** One step of the document, and away; nothing when the numbers make no shape. */
void sw_measure_dialog_use (SwMeasureDialog *dialog);
