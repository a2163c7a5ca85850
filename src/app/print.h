/* SPDX-License-Identifier: MIT */
#pragma once

#include "sw-stage.h"

#include <gtk/gtk.h>

/** The pack as something to print; NULL when the job cannot be laid out. (transfer full) */
GtkPrintOperation *sw_print_new (SwStage *stage);

/**
 * Print the pack through the system's dialog, each page in its own size and at its
 * stated scale: whatever scaling the dialog offers is the user's own doing. Trouble is
 * told in a dialog over @window.
 */
void sw_print_pack (GtkWindow *window, SwStage *stage);
