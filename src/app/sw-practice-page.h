/* SPDX-License-Identifier: MIT */
#pragma once

#include <gtk/gtk.h>

#include "sw-stage.h"

/**
 * SwPracticePage: the practice and its numbers. A number typed here replaces
 * the practice's own for this job, with a reason that the pack prints.
 */
#define SW_TYPE_PRACTICE_PAGE (sw_practice_page_get_type ())
G_DECLARE_FINAL_TYPE (SwPracticePage, sw_practice_page, SW, PRACTICE_PAGE, GtkWidget)

GtkWidget *sw_practice_page_new (SwStage *stage);
