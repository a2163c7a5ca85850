/* SPDX-License-Identifier: MIT */
#pragma once

#include <gtk/gtk.h>

#include "canvas-kind.h"
#include "sw-stage.h"

/**
 * SwPointTable: the points of what the stage shows, of the section or on plan, as
 * numbers: the exact way to edit them and the way without a pointer. Pasting rows
 * of two numbers from a spreadsheet replaces all points.
 */
#define SW_TYPE_POINT_TABLE (sw_point_table_get_type ())
G_DECLARE_FINAL_TYPE (SwPointTable, sw_point_table, SW, POINT_TABLE, GtkWidget)

GtkWidget *sw_point_table_new (SwStage *stage, const SwCanvasKind *kind);

/** Entry of a point's x or y, for tests. */
GtkWidget *sw_point_table_entry (SwPointTable *table, guint index, gboolean is_x);
