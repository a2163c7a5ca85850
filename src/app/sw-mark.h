/* SPDX-License-Identifier: MIT */
#pragma once

#include <gtk/gtk.h>

/**
 * SwMark: something drawn on a canvas that is looked at, not edited, as a child that a
 * screen reader reads and the keyboard reaches: a run, a trench. It paints nothing but
 * the outline of its focus, and the pointer goes through it. Arrows step to its
 * neighbours, Home and End to the first and the last: signal "step" (int), the number of
 * steps.
 */
#define SW_TYPE_MARK (sw_mark_get_type ())
G_DECLARE_FINAL_TYPE (SwMark, sw_mark, SW, MARK, GtkWidget)

GtkWidget *sw_mark_new (void);

/** @object: of the drawing; @words: what it is, for those who cannot see it */
void sw_mark_describe (SwMark *mark, const char *object, const char *words);
const char *sw_mark_object (SwMark *mark);
