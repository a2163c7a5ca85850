/* SPDX-License-Identifier: MIT */
#pragma once

#include <gtk/gtk.h>

#include "sw-stage.h"

/**
 * SwContinue: a popover that continues the section shown from its last point by a
 * gradient and a length: "2:1 for 5 m". Each use is one step.
 */
#define SW_TYPE_CONTINUE (sw_continue_get_type ())
G_DECLARE_FINAL_TYPE (SwContinue, sw_continue, SW, CONTINUE, GtkPopover)

GtkWidget *sw_continue_new (SwStage *stage);

/** Add the point, as the button does; nothing happens while a field makes no sense. */
void sw_continue_add (SwContinue *popover);

/** Gradient and length, and whether the length is true, on plan or the fall, for tests. */
GtkWidget *sw_continue_gradient (SwContinue *popover);
GtkWidget *sw_continue_length (SwContinue *popover);
GtkDropDown *sw_continue_measured (SwContinue *popover);
