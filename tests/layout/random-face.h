/* SPDX-License-Identifier: MIT */
#pragma once

#include "fixture.h"

typedef enum
{
  OUTLINE_RECTANGLE,
  OUTLINE_TRAPEZOID,
  OUTLINE_TRIANGLE,
  OUTLINE_L,
  OUTLINE_U_OPEN_AT_TOE,
  OUTLINE_U_OPEN_AT_CREST,
  OUTLINE_C, /* a notch from the right: strips in two parts */
  OUTLINE_SKEW,
  OUTLINE_KIND_COUNT
} OutlineKind;

/**
 * random_job:
 * @rand: seeded, so that a failure can be run again
 * @kind: shape of the outline on plan
 *
 * Returns: a job with one face of that shape, 4 to 60 m along and 3 to 40 m
 *   out, on a plane, a bent or a benched section; any of several rolls; spread
 *   or trim; leeward left or right.
 */
SwJob *random_job (GRand *rand, OutlineKind kind);
