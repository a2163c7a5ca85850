/* SPDX-License-Identifier: MIT */
#include "crest-edit.h"

#include <math.h>
#include <slopewright/base/polygon.h>

#define FIRST_RADIUS_M 50.0

static SwBox
outline_box (const SwFace *face)
{
  return sw_ring_box ((SwRing){ face->outline, face->n_outline });
}

static double
width_m (const SwFace *face)
{
  SwBox box = outline_box (face);

  return face->n_outline >= 3 ? box.x1_m - box.x0_m : 0.0;
}

SwCrestKind
sw_crest_kind (const SwFace *face)
{
  return sw_face_is_heap (face) ? SW_CREST_KIND_HEAP : (SwCrestKind) face->crest_form;
}

static double
radius_of (const SwFace *face, SwCrestKind kind, gboolean was_heap)
{
  if (kind == SW_CREST_KIND_HEAP && width_m (face) > 0.0)
    return width_m (face) / (2.0 * G_PI);
  if (was_heap)
    return width_m (face) / G_PI;
  return face->crest_radius_m > 0.0 ? face->crest_radius_m
                                    : fmax (FIRST_RADIUS_M, width_m (face));
}

void
sw_crest_set_kind (SwFace *face, SwCrestKind kind)
{
  gboolean was_heap = sw_face_is_heap (face);

  face->crest_form = kind == SW_CREST_KIND_HEAP ? SW_CREST_NOSE : (SwCrestForm) kind;
  if (kind != SW_CREST_KIND_STRAIGHT)
    face->crest_radius_m = radius_of (face, kind, was_heap);
}

void
sw_crest_set_radius (SwFace *face, double radius_m)
{
  double grow = radius_m / face->crest_radius_m, from_m = outline_box (face).x0_m;

  if (sw_face_is_heap (face))
    for (guint i = 0; i < face->n_outline; i++)
      face->outline[i].x_m = from_m + (face->outline[i].x_m - from_m) * grow;
  face->crest_radius_m = radius_m;
}
