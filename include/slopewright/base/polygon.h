/* SPDX-License-Identifier: MIT */
#pragma once

#include <glib.h>
#include <slopewright/base/status.h>

/**
 * SwPoint: a point in metres. In plan, x is along the crest and y is out from
 * it, downhill; in a section, x is out and y is up; in the face view, x is
 * along the crest and y is the true distance down the face.
 *
 *        crest  ------> along (x)
 *          |  \
 *      out |   fall line
 *      (y) v
 */
typedef struct
{
  double x_m, y_m;
} SwPoint;

/** A ring of points, first not repeated at the end; borrowed storage. */
typedef struct
{
  const SwPoint *points;
  guint count;
} SwRing;

typedef struct
{
  double x0_m, y0_m, x1_m, y1_m;
} SwBox;

/** Signed area, m2; positive when x turns towards y (counter-clockwise with y up). */
double sw_ring_signed_area_m2 (SwRing ring);

/** Absolute area, m2. */
double sw_ring_area_m2 (SwRing ring);

/** Smallest axis-parallel box. @ring must not be empty. */
SwBox sw_ring_box (SwRing ring);

/** Distance of @point from the straight line that ends at @a and @b, m. */
double sw_segment_distance_m (SwPoint a, SwPoint b, SwPoint point);

/** Whether @point is inside or within 0.1 mm of the edge. */
gboolean sw_ring_contains (SwRing ring, SwPoint point);

/** Whether @point is within 0.1 mm of the edge. */
gboolean sw_ring_on_edge (SwRing ring, SwPoint point);

typedef struct
{
  double from_m, to_m;
} SwSpan;

/**
 * sw_ring_cut_x:
 * @ring: any simple ring
 * @x_m: where to cut it
 * @spans: (element-type SwSpan): cleared, then filled with the y intervals in
 *   which the line x = @x_m lies in the ring, ascending
 *
 * A vertical line through a vertex is read as its limit from the right.
 */
void sw_ring_cut_x (SwRing ring, double x_m, GArray *spans);

/** The same for the line y = @y_m; intervals of x. */
void sw_ring_cut_y (SwRing ring, double y_m, GArray *spans);
