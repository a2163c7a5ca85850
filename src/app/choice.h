/* SPDX-License-Identifier: MIT */
#pragma once

#include <gtk/gtk.h>

/* A drop-down of plain words; long ones are cut in the button, not in the list. */

GtkWidget *sw_choice_new (const char *label);

/**
 * Say to assistive technology what a drop-down of plain words asks for, and what is
 * chosen. Called once for each.
 * @label: its name; the button inside, which has the keyboard, gets it too
 */
void sw_choice_name (GtkDropDown *choice, const char *label);

/**
 * @names: what can be chosen; the list is only made anew when they differ
 * @selected: index, -1 for none of them
 */
void sw_choice_show (GtkDropDown *choice, const char *const *names, int selected);
