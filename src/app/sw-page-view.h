/* SPDX-License-Identifier: MIT */
#pragma once

#include <gtk/gtk.h>

#include "stock.h"

/** SwPageView: one page of a pack on white paper, as large as its room allows. */
#define SW_TYPE_PAGE_VIEW (sw_page_view_get_type ())
G_DECLARE_FINAL_TYPE (SwPageView, sw_page_view, SW, PAGE_VIEW, GtkWidget)

/** @natural_px: width asked for */
GtkWidget *sw_page_view_new (const SwStock *stock, int natural_px);

/** @pages: kept by reference; @index: which of them, or NULL for an empty view */
void sw_page_view_show (SwPageView *view, GPtrArray *pages, guint index);

/**
 * sw_page_view_set_scale:
 * @px_per_mm: pixels to a millimetre of paper; 0 to fill the room there is
 */
void sw_page_view_set_scale (SwPageView *view, double px_per_mm);

/** Pixels to a millimetre of paper, as drawn now. */
double sw_page_view_scale (SwPageView *view);

/** Not on paper, but on the ground of the canvas, dark where the window is. */
void sw_page_view_follow_style (SwPageView *view);
