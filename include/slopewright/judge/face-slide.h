/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/judge/slide-screen.h>
#include <slopewright/layout/layout.h>

/** The first look at shallow slides on the steepest tier of a face. */
typedef struct
{
  guint tier;
  SwSourced friction_rad, weight_n_per_m3; /* typed or of class and catalogue; borrowed */
  double cohesion_pa; /* typed; 0 where the angle is that of a class */
  double depth_m;     /* typed */
  double angle_rad;   /* steepest of the tier */
  SwSlideScreen screen;
} SwFaceSlide;

/**
 * sw_face_friction:
 *
 * Returns: the angle typed for the job, or the smallest of the face's soils, its zones
 *   included; NaN where one of them has none. Source is borrowed.
 */
SwSourced sw_face_friction (const SwLayout *layout, const SwFace *face);

/**
 * sw_face_slide:
 * @slide: (out): untouched on FALSE
 *
 * Of a typed angle the typed cohesion counts, of a class none: what a class holds
 * together by is gone when it is wet and loose.
 *
 * Returns: FALSE where no depth is given, or no angle of friction or weight is known.
 */
gboolean sw_face_slide (const SwLayout *layout, guint face, SwFaceSlide *slide);
