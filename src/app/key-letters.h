/* SPDX-License-Identifier: MIT */
#pragma once

#include <gtk/gtk.h>

/**
 * sw_key_letters_say_once:
 *
 * From now on a button with a key letter is called by its words, "Save". GTK 4.8 calls it
 * by its label as it is written and by its words as well, "_Save Save", and a check button
 * "N_o". Dialogs that GTK makes are included. Called once, after GTK has started.
 */
void sw_key_letters_say_once (void);
