/* SPDX-License-Identifier: MIT */
#pragma once

#include <gtk/gtk.h>

#include "sw-stage.h"

/**
 * SwSoilDialog: finds the soil class of the face shown, one question at a time: by a
 * wet handful, or from a laboratory's shares. Its end is one step of the document.
 */
#define SW_TYPE_SOIL_DIALOG (sw_soil_dialog_get_type ())
G_DECLARE_FINAL_TYPE (SwSoilDialog, sw_soil_dialog, SW, SOIL_DIALOG, GtkWindow)

/** @parent: (nullable): window it stands over */
GtkWidget *sw_soil_dialog_new (GtkWindow *parent, SwStage *stage);

/** Answers so far, to look at. (transfer none) */
const SwSoilTest *sw_soil_dialog_test (SwSoilDialog *dialog);

/** Name of the page shown: "how", "ball", "ribbon", "feel", "shares", "erodibility", "result". */
const char *sw_soil_dialog_page (SwSoilDialog *dialog);

/** Take the answer shown and go on; on the last page the soil is set and the dialog closes. */
void sw_soil_dialog_next (SwSoilDialog *dialog);
void sw_soil_dialog_back (SwSoilDialog *dialog);

/** Answer number @index of a page of choices, as by a click. */
void sw_soil_dialog_choose (SwSoilDialog *dialog, guint index);

/** Field number @index of the page shown. (transfer none) */
GtkWidget *sw_soil_dialog_field (SwSoilDialog *dialog, guint index);
