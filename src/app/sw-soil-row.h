/* SPDX-License-Identifier: MIT */
#pragma once

#include <gtk/gtk.h>

#include "sw-stage.h"

/** How the soil of the face shown is known, with a button that begins a test. */
GtkWidget *sw_soil_row_new (SwStage *stage);
