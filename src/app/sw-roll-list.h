/* SPDX-License-Identifier: MIT */
#pragma once

#include <gtk/gtk.h>

#include "sw-stage.h"

/**
 * SwRollList: the job's stock beside its own roll, a row a length, with buttons to add
 * and remove rows. Each change is one step of the document.
 */
#define SW_TYPE_ROLL_LIST (sw_roll_list_get_type ())
G_DECLARE_FINAL_TYPE (SwRollList, sw_roll_list, SW, ROLL_LIST, GtkWidget)

GtkWidget *sw_roll_list_new (SwStage *stage);

/** The button that adds a row, and the length of row @index: for tests. (transfer none) */
GtkWidget *sw_roll_list_add_button (SwRollList *self);
GtkWidget *sw_roll_list_length (SwRollList *self, guint index);
