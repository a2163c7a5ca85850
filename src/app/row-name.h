/* SPDX-License-Identifier: MIT */
#pragma once

#include <gtk/gtk.h>

/**
 * sw_row_name:
 * @row: of a list box; GTK 4.8 gives it no name, whatever it holds
 * @name: what within it has the words that it is called by
 * @text: (nullable): what within it says the rest
 */
void sw_row_name (GtkWidget *row, GtkWidget *name, GtkWidget *text);
