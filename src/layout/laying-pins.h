/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/layout/laying-sequence.h>

/** Which pins of a face are driven with which run, and in which step of its work. */
typedef struct SwPinWork SwPinWork;

/** @runs: their places in the laying order; borrowed, as @laid is. (transfer full) */
SwPinWork *sw_pin_work_new (const SwFaceLayout *laid, const SwRunSteps *runs);
void sw_pin_work_free (SwPinWork *work);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (SwPinWork, sw_pin_work_free)

/** How many pins are driven in that step of a run. */
gsize sw_pin_work_count (const SwPinWork *work, guint run, SwLayingAct act);

/**
 * sw_pin_work_share:
 * @steps: all steps of the face; each gets its first pin and their number
 *
 * Returns: (transfer full): indices of all pins of the face, grouped by step, within a
 *   step in the order of the layout
 */
guint32 *sw_pin_work_share (const SwPinWork *work, SwLayingStep *steps, guint n_steps);
