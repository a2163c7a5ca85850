/* SPDX-License-Identifier: MIT */
#pragma once

#include <gtk/gtk.h>

/**
 * SwRowLayout:
 *
 * A row, left to right, that leaves out what it has no room for. A child whose layout
 * property "gives-way" is not 0 is shown at its natural width or not at all; where the row
 * is too short, those of the lowest number go first. A child that "stands-in" for a number
 * is there only while one of that number or a higher one is left out, as a menu of what
 * the others do. All other children are always there, from their least width up; room
 * that is left over goes to those that expand. "spacing": pixels between two children.
 */
#define SW_TYPE_ROW_LAYOUT (sw_row_layout_get_type ())
G_DECLARE_FINAL_TYPE (SwRowLayout, sw_row_layout, SW, ROW_LAYOUT, GtkLayoutManager)
