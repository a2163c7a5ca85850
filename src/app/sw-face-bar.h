/* SPDX-License-Identifier: MIT */
#pragma once

#include <gtk/gtk.h>

#include "sw-stage.h"

/** SwFaceBar: which face is shown; add one, remove one. */
#define SW_TYPE_FACE_BAR (sw_face_bar_get_type ())
G_DECLARE_FINAL_TYPE (SwFaceBar, sw_face_bar, SW, FACE_BAR, GtkWidget)

GtkWidget *sw_face_bar_new (SwStage *stage);
