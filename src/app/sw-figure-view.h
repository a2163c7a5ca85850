/* SPDX-License-Identifier: MIT */
#pragma once

#include <gtk/gtk.h>
#include <slopewright/figure/figure.h>
#include <slopewright/figure/palette.h>

/** SwFigureView: one figure as a picture, as large as its room allows, dark on dark desktops. */
#define SW_TYPE_FIGURE_VIEW (sw_figure_view_get_type ())
G_DECLARE_FINAL_TYPE (SwFigureView, sw_figure_view, SW, FIGURE_VIEW, GtkWidget)

/** @figure: (transfer full). @palette: borrowed. @label: what it shows, for who does not see it. */
GtkWidget *sw_figure_view_new (SwFigure *figure, const SwPalette *palette,
                               const char *label);
