/* SPDX-License-Identifier: MIT */
#pragma once

#include <gtk/gtk.h>

#include "sw-stage.h"

/**
 * SwAddShape: a popover that asks for a new obstacle or soil zone: rectangle or
 * round, where its middle lies and how large it is, on plan or as taped down the face.
 * Adding is one step, and shows
 * what was added.
 */
#define SW_TYPE_ADD_SHAPE (sw_add_shape_get_type ())
G_DECLARE_FINAL_TYPE (SwAddShape, sw_add_shape, SW, ADD_SHAPE, GtkPopover)

GtkWidget *sw_add_shape_new (SwStage *stage);

/** @middle: where it is to lie, NULL for the middle of the face; call before it pops up */
void sw_add_shape_begin (SwAddShape *popover, SwListKind kind, const SwPoint *middle);

/** Add it, as the button does; nothing happens while a field makes no sense. */
void sw_add_shape_add (SwAddShape *popover);

typedef enum
{
  SW_SHAPE_ALONG, /* of the middle */
  SW_SHAPE_OUT,
  SW_SHAPE_WIDTH,
  SW_SHAPE_DEPTH,
  SW_SHAPE_RADIUS,
  SW_SHAPE_FIELD_COUNT
} SwShapeField;

/** For tests. */
GtkWidget *sw_add_shape_entry (SwAddShape *popover, SwShapeField field);
GtkDropDown *sw_add_shape_form (SwAddShape *popover);
GtkDropDown *sw_add_shape_taped (SwAddShape *popover);
