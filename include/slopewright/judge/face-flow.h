/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/judge/face-loss.h>
#include <slopewright/judge/sheet-flow.h>

/** Sheet flow where it pulls most at the blanket of a face. */
typedef struct
{
  double rain_m_per_s; /* typed */
  SwSourced roughness; /* typed, or the catalogue's default; borrowed source */
  guint segment;       /* of the fall line, from 0 at the crest */
  double run_on_m;     /* typed ground above the crest that adds to it; 0: none */
  double length_m;     /* on plan, from where runoff begins to that segment's low end */
  double angle_rad;    /* of that segment */
  SwSheetFlow flow;    /* at that low end */
} SwFaceFlow;

/**
 * sw_face_flow:
 * @layout: a layout
 * @face: index
 * @flow: (out): untouched on FALSE
 *
 * Each segment of the fall line is taken as running at the depth that its own
 * gradient gives to all the rain from above; the one with the largest shear counts.
 * Nothing soaks in. Ground above the crest whose water runs on as a sheet counts with
 * its typed length, down to the first drain; channels are a question of the site visit.
 *
 * Returns: FALSE where rain is not given, no roughness is known, or water would stand
 *   on a bench.
 */
gboolean sw_face_flow (const SwLayout *layout, guint face, SwFaceFlow *flow);
