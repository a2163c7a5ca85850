/* SPDX-License-Identifier: MIT */
#pragma once

#include <gtk/gtk.h>

/**
 * SwFold: a main part and a side part next to one another, with a handle between them; one
 * at a time where there is no room for both. It never needs more width than the wider of
 * the two.
 *
 * Properties, for bindings: "main" and "side", the two parts; "side-shown", whether the
 * side is wanted, which is remembered apart for both ways of showing it: next to the main
 * part it is there until it is hidden, in place of the main part only when it is asked for;
 * "side-allowed", whether there is anything to show in it; "folded", read-only.
 */
#define SW_TYPE_FOLD (sw_fold_get_type ())
G_DECLARE_FINAL_TYPE (SwFold, sw_fold, SW, FOLD, GtkWidget)

/** One at a time? */
gboolean sw_fold_is_folded (SwFold *fold);

gboolean sw_fold_side_shown (SwFold *fold);
void sw_fold_set_side_shown (SwFold *fold, gboolean shown);

void sw_fold_set_side_allowed (SwFold *fold, gboolean allowed);
