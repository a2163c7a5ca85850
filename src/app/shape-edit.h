/* SPDX-License-Identifier: MIT */
#pragma once

#include "point-edit.h"

/*
 * Obstacles and soil zones as a whole, and the face as a whole: each edit gives a new
 * job and leaves the old one alone.
 */

/** A round obstacle becomes so many corners. */
#define SW_ROUND_CORNERS 16

/**
 * sw_shape_rectangle:
 * @face: on which it stands; on a round crest widths are true at the middle's place
 * @width_m: along the crest, > 0
 * @depth_m: out from it on plan, > 0
 */
void sw_shape_rectangle (const SwFace *face, SwPoint middle, double width_m,
                         double depth_m, SwPoint corners[4]);

/**
 * sw_shape_to_plan:
 * @middle: (inout): along, and how far down the face from the crest; then how far out
 * @depth_m: (inout): down the face; then on plan
 *
 * A tape lies in the face, a plan does not. Its edges, taped, are its edges on plan.
 *
 * Returns: FALSE, and nothing is changed, where the face's section makes no ground
 */
gboolean sw_shape_to_plan (const SwFace *face, SwPoint *middle, double *depth_m);

/** The inverse of sw_shape_to_plan(). */
gboolean sw_shape_to_face (const SwFace *face, SwPoint *middle, double *depth_m);

/** A regular polygon of the same area as the circle: it cuts as much blanket away. */
void sw_shape_round (const SwFace *face, SwPoint middle, double radius_m,
                     SwPoint corners[SW_ROUND_CORNERS]);

/**
 * sw_shapes_add:
 * @kind: obstacle or zone
 * @ring: copied; at least three points
 * @added: (out): the new list
 *
 * It gets the first free number as its id and no name. A zone begins with the
 * face's own soil, so that nothing changes before the user says what is another.
 *
 * Returns: (transfer full)
 */
SwJob *sw_shapes_add (const SwJob *job, guint face, SwListKind kind, SwRing ring,
                      SwPointList *added);

/** Returns: (transfer full) */
SwJob *sw_shapes_remove (const SwJob *job, guint face, SwPointList list);

/**
 * sw_face_mirrored:
 *
 * Left for right about the middle of the outline: outline, obstacles, zones, places
 * of sections, and the end at which the first run lies. Quantities stay as they are.
 *
 * Returns: (transfer full)
 */
SwJob *sw_face_mirrored (const SwJob *job, guint face);
