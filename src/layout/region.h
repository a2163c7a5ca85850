/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/base/polygon.h>

/**
 * SwRegion: part of a plan: rings round ground, each followed by the rings
 * round its holes. Rings turn from along towards out, holes the other way, so
 * that the ground is always on the same hand. Clipping is GEOS's work; a
 * region only keeps what came out.
 */
typedef struct
{
  GArray *points; /* (element-type SwPoint) of all rings */
  GArray
      *starts; /* (element-type guint) first point of each ring, and one past the end */
} SwRegion;

/** Region of an outline, points on its straight edges left out: SW_OK, SW_E_FEW_POINTS, SW_E_RANGE, SW_E_OUTLINE (crosses or touches itself). */
SwStatus sw_region_new (const SwPoint *outline, guint count, SwRegion **region);

/** What of @region lies in @window, a simple ring; may hold no ring. (transfer full) */
SwRegion *sw_region_clip (const SwRegion *region, SwRing window);

/** The same for an axis-parallel window. */
SwRegion *sw_region_clip_box (const SwRegion *region, SwBox box);

/** What of @a is not in @b, is in both. (transfer full) */
SwRegion *sw_region_minus (const SwRegion *a, const SwRegion *b);
SwRegion *sw_region_common (const SwRegion *a, const SwRegion *b);

/** What is in any of @regions (element-type SwRegion). (transfer full) */
SwRegion *sw_region_union (const GPtrArray *regions);

/** @region and all within @by_m of it; corners stay corners. (transfer full) */
SwRegion *sw_region_grown (const SwRegion *region, double by_m);
SwRegion *sw_region_copy (const SwRegion *region);

/** The region with x and y multiplied, both > 0. (transfer full) */
SwRegion *sw_region_scaled (const SwRegion *region, double x_factor, double y_factor);

/**
 * sw_region_edges_within:
 *
 * Returns: (transfer full) (element-type GArray of SwPoint): the edge of
 *   @region as far as it lies in @area; a closed line repeats its first point
 */
GPtrArray *sw_region_edges_within (const SwRegion *region, const SwRegion *area);
void sw_region_free (SwRegion *region);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (SwRegion, sw_region_free)

guint sw_region_rings (const SwRegion *region);
SwRing sw_region_ring (const SwRegion *region, guint index);
gboolean sw_region_is_hole (const SwRegion *region, guint index);
gboolean sw_region_contains (const SwRegion *region, SwPoint point);

/** Whether @point is within 0.1 mm of an edge. */
gboolean sw_region_on_edge (const SwRegion *region, SwPoint point);
double sw_region_area_m2 (const SwRegion *region);

/** Box of all rings. @region must have one. */
SwBox sw_region_box (const SwRegion *region);

/** Spans of y in which x = @x_m lies in the region, ascending; see sw_ring_cut_x(). */
void sw_region_cut_x (const SwRegion *region, double x_m, GArray *spans);
void sw_region_cut_y (const SwRegion *region, double y_m, GArray *spans);
