/* SPDX-License-Identifier: MIT */
#pragma once

#include <gtk/gtk.h>

/** SwApplication: the program; a window per job. */
#define SW_TYPE_APPLICATION (sw_application_get_type ())
G_DECLARE_FINAL_TYPE (SwApplication, sw_application, SW, APPLICATION, GtkApplication)

SwApplication *sw_application_new (void);
