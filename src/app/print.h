/* SPDX-License-Identifier: MIT */
#pragma once

#include <gtk/gtk.h>

#include "sw-making.h"

/** @pages, at least one, of a pack on @paper as something to print. (transfer full) */
GtkPrintOperation *sw_print_new (SwStage *stage, GPtrArray *pages, SwPaper paper);

/**
 * Print the pack that @making, which is done, has made, through the system's dialog, each
 * page in its own size and at its stated scale: whatever scaling the dialog offers is the
 * user's own doing. Trouble is told in a dialog over @window.
 */
void sw_print_pack (GtkWindow *window, SwStage *stage, SwMaking *making);
