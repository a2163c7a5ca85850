/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/base/job.h>

/** What a user calls the shape of a crest line; a heap is a nose that goes all round. */
typedef enum
{
  SW_CREST_KIND_STRAIGHT,
  SW_CREST_KIND_NOSE,
  SW_CREST_KIND_BOWL,
  SW_CREST_KIND_HEAP
} SwCrestKind;

SwCrestKind sw_crest_kind (const SwFace *face);

/**
 * sw_crest_set_kind:
 *
 * The face stays as wide at its crest as it is. Round a heap that width is the
 * way all round, from which the radius follows; a heap that becomes a nose goes
 * half round. A nose or bowl without a radius begins with a wide one.
 */
void sw_crest_set_kind (SwFace *face, SwCrestKind kind);

/**
 * sw_crest_set_radius:
 * @radius_m: on plan, > 0
 *
 * A heap stays one: its outline grows or shrinks with the circle.
 */
void sw_crest_set_radius (SwFace *face, double radius_m);
