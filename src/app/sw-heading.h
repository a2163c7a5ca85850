/* SPDX-License-Identifier: MIT */
#pragma once

#include <gtk/gtk.h>

/** SwHeading: a heading that takes the keyboard's focus, so that Tab steps from one to the next. */
#define SW_TYPE_HEADING (sw_heading_get_type ())
G_DECLARE_FINAL_TYPE (SwHeading, sw_heading, SW, HEADING, GtkWidget)

/** @level: 1 for a page's title. @chars: characters that a line has room for */
GtkWidget *sw_heading_new (const char *text, int level, int chars);
