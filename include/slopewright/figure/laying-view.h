/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/figure/drawings.h>
#include <slopewright/layout/laying-sequence.h>

/*
 * The face view of a job in the making: what is done up to one step of its laying
 * sequence, and what is new in it. What is new has heavy lines, hatching and large dots,
 * so that it is seen in black and white too.
 */

/**
 * sw_laying_view_box:
 * @step: of @sequence
 * @close: only what the step is about instead of the whole face
 *
 * Returns: what to show, in the world metres of sw_draw_face_view()
 */
SwBox sw_laying_view_box (const SwResult *result, const SwLayingSequence *sequence,
                          guint step, gboolean close);

/** Whether a close view of the step is another than the whole face. */
gboolean sw_laying_has_close_view (const SwLayingSequence *sequence, guint step);

/**
 * sw_draw_laying_view:
 * @sequence: of the result's layout
 * @step: of @sequence; the face is the step's own
 * @view: of sw_draw_face_view()
 *
 * Pins of earlier steps are left out where they are too many or too close to be seen.
 *
 * Returns: (transfer full)
 */
SwFigure *sw_draw_laying_view (const SwResult *result, const SwLayingSequence *sequence,
                               guint step, const SwView *view, const SwDraw *draw);

/** The small picture of what is done in a step, as in the pack. (transfer full) */
SwFigure *sw_draw_laying_picture (const SwResult *result, const SwLayingStep *step,
                                  double width_mm, double height_mm, const SwDraw *draw);
