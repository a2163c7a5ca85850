/* SPDX-License-Identifier: MIT */
#pragma once

#include <gtk/gtk.h>

#include "canvas-kind.h"
#include "sw-stage.h"

/** SwPointPopover: the numbers of one point, to be typed. Same edits as dragging. */
#define SW_TYPE_POINT_POPOVER (sw_point_popover_get_type ())
G_DECLARE_FINAL_TYPE (SwPointPopover, sw_point_popover, SW, POINT_POPOVER, GtkPopover)

GtkWidget *sw_point_popover_new (SwStage *stage, const SwCanvasKind *kind);

/** @index: a point or SW_WHOLE; @at: where it lies in the parent widget */
void sw_point_popover_open (SwPointPopover *popover, SwPointList list, int index,
                            GdkRectangle at);

/** Begin its first number with what has been typed already; once it is open. */
void sw_point_popover_type (SwPointPopover *popover, const char *typed);

/** Keep a typed section point between its neighbours; the same rule for table and popover. */
void sw_point_limits (const SwFace *face, SwPointList list, int index, double *least_m,
                      double *most_m);

/** Move one coordinate of a point as one step. */
void sw_point_type (SwStage *stage, SwPointList list, int index, gboolean is_x,
                    double value_m);
