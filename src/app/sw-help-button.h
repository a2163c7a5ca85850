/* SPDX-License-Identifier: MIT */
#pragma once

#include <gtk/gtk.h>

/**
 * sw_help_button_new:
 * @target: page of the help that it opens: "soil" or "findings#F9"
 * @about: what it helps with, as a heading says it; NULL: what is beside it
 *
 * Returns: (transfer floating): a small button with a question mark
 */
GtkWidget *sw_help_button_new (const char *target, const char *about);
