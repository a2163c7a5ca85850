/* SPDX-License-Identifier: MIT */
#pragma once

#include <gtk/gtk.h>

/* A table of words to read, in a GtkGrid: labels that wrap, renewed in place. */

GtkWidget *sw_text_grid_new (void);

/**
 * sw_text_grid_set:
 * @css_class: (nullable): style of the words; replaces the one given before
 *
 * Put @text into a cell, which is made when it is first set.
 */
void sw_text_grid_set (GtkGrid *grid, guint row, guint column, const char *text,
                       const char *css_class);

/** What stands in a cell, NULL where there is none. */
const char *sw_text_grid_get (GtkGrid *grid, guint row, guint column);

/** Hide the rows from @n_rows on. */
void sw_text_grid_keep (GtkGrid *grid, guint n_rows);
