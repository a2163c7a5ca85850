/* SPDX-License-Identifier: MIT */
#pragma once

#include "point-edit.h"

/*
 * Sections elsewhere along the crest. The ground runs straight between them, so they
 * are matched point by point. Each edit gives a new job and leaves the old one alone.
 */

/** Sections nearer to each other along the crest than this are refused. */
#define SW_SECTION_GAP_M 0.01

/** Where section @list was taken. */
double sw_section_along_m (const SwFace *face, SwPointList list);

/** Whether a section other than @list (or any, for @list not a section) stands at @along_m. */
gboolean sw_section_place_taken (const SwFace *face, SwPointList list, double along_m);

/** Whether the face may have sections elsewhere: a round crest has one only. */
gboolean sw_section_can_add (const SwFace *face);

/**
 * sw_section_add:
 * @along_m: not taken
 * @added: (out): the new section
 *
 * It begins as what the ground is there now, so that nothing moves.
 *
 * Returns: (transfer full)
 */
SwJob *sw_section_add (const SwJob *job, guint face, double along_m, SwPointList *added);

/** Move a section along the crest to @along_m, not taken; @moved: which it is then. Returns: (transfer full) */
SwJob *sw_section_move (const SwJob *job, guint face, SwPointList list, double along_m,
                        SwPointList *moved);

/** Take away a section; of the face's own the first further one takes the place. Returns: (transfer full) (nullable): NULL for the only one */
SwJob *sw_section_remove (const SwJob *job, guint face, SwPointList list);
