/* SPDX-License-Identifier: MIT */
#pragma once

#include <gtk/gtk.h>

#include "sw-making.h"

/**
 * SwMakingBar: what is being made, how far it is, and a button that stops it (Escape too).
 * Not to be seen while there is nothing that takes long.
 */
#define SW_TYPE_MAKING_BAR (sw_making_bar_get_type ())
G_DECLARE_FINAL_TYPE (SwMakingBar, sw_making_bar, SW, MAKING_BAR, GtkWidget)

GtkWidget *sw_making_bar_new (void);

/** Show @making from now on, in place of another, until it has finished. */
void sw_making_bar_follow (SwMakingBar *bar, SwMaking *making);

/** What it says, for tests. */
const char *sw_making_bar_words (SwMakingBar *bar);
