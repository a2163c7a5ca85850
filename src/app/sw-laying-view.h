/* SPDX-License-Identifier: MIT */
#pragma once

#include <gtk/gtk.h>
#include <slopewright/figure/laying-view.h>

#include "stock.h"

/** SwLayingView: a face view in the making, as large as there is room for. */
#define SW_TYPE_LAYING_VIEW (sw_laying_view_get_type ())
G_DECLARE_FINAL_TYPE (SwLayingView, sw_laying_view, SW, LAYING_VIEW, GtkWidget)

/** @stock: borrowed; must outlive the view. */
GtkWidget *sw_laying_view_new (const SwStock *stock);

/**
 * sw_laying_view_show:
 * @result: borrowed, as @sequence and the texts of @draw are, until another is shown;
 *   NULL: nothing
 * @draw: copied
 */
void sw_laying_view_show (SwLayingView *view, const SwResult *result,
                          const SwLayingSequence *sequence, guint step,
                          const SwDraw *draw);

/** Only what the step is about, instead of the whole face. */
void sw_laying_view_set_close (SwLayingView *view, gboolean close);
gboolean sw_laying_view_is_close (SwLayingView *view);

/** Size of text and marks, 1: the usual one of a canvas. */
void sw_laying_view_set_text_scale (SwLayingView *view, double scale);

/** What is drawn now; NULL before it has a size. For tests. (transfer none) */
const SwFigure *sw_laying_view_figure (SwLayingView *view);
