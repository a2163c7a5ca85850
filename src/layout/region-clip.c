/* SPDX-License-Identifier: MIT */
#include "region.h"
#include <geos_c.h>
#include <math.h>

/* Slivers below a square centimetre are clipping dust, not ground. */
#define LEAST_AREA_M2 1e-4

/* A point this near to the line between its neighbours is no corner: far below what is
 * measured, far above what a change of units or a point half-way leaves. */
#define STRAIGHT_M 1e-6

/* A mitred corner reaches at most so many times the offset. */
#define MITRE_LIMIT 5.0

static SwRegion *
empty_region (void)
{
  SwRegion *region = g_new (SwRegion, 1);
  guint zero = 0;

  region->points = g_array_new (FALSE, FALSE, sizeof (SwPoint));
  region->starts = g_array_new (FALSE, FALSE, sizeof (guint));
  g_array_append_val (region->starts, zero);
  return region;
}

/* Append a ring, turned so that ground is on its proper hand. FALSE for dust. */
static gboolean
add_ring (SwRegion *region, const SwPoint *points, guint count, gboolean hole)
{
  double area_m2 = sw_ring_signed_area_m2 ((SwRing){ points, count });

  if (fabs (area_m2) < LEAST_AREA_M2)
    return FALSE;
  if ((area_m2 < 0.0) == hole)
    g_array_append_vals (region->points, points, count);
  else
    for (guint i = count; i-- > 0;)
      g_array_append_val (region->points, points[i]);
  g_array_append_val (region->starts, region->points->len);
  return TRUE;
}

static GEOSGeometry *
line_to_geos (GEOSContextHandle_t geos, SwRing ring)
{
  GEOSCoordSequence *line = GEOSCoordSeq_create_r (geos, ring.count + 1, 2);

  for (guint i = 0; i <= ring.count; i++)
    {
      SwPoint p = ring.points[i % ring.count];

      GEOSCoordSeq_setXY_r (geos, line, i, p.x_m, p.y_m);
    }
  return GEOSGeom_createLinearRing_r (geos, line);
}

static GEOSGeometry *
ring_to_geos (GEOSContextHandle_t geos, SwRing ring)
{
  return GEOSGeom_createPolygon_r (geos, line_to_geos (geos, ring), NULL, 0);
}

static GEOSGeometry *
region_to_geos (GEOSContextHandle_t geos, const SwRegion *region)
{
  g_autoptr (GPtrArray) polygons = g_ptr_array_new ();
  guint rings = sw_region_rings (region);

  for (guint i = 0; i < rings;)
    {
      g_autoptr (GPtrArray) holes = g_ptr_array_new ();
      GEOSGeometry *shell = line_to_geos (geos, sw_region_ring (region, i));

      for (i++; i < rings && sw_region_is_hole (region, i); i++)
        g_ptr_array_add (holes, line_to_geos (geos, sw_region_ring (region, i)));
      g_ptr_array_add (polygons, GEOSGeom_createPolygon_r (geos, shell,
                                                           (GEOSGeometry **) holes->pdata,
                                                           holes->len));
    }
  return GEOSGeom_createCollection_r (geos, GEOS_MULTIPOLYGON,
                                      (GEOSGeometry **) polygons->pdata, polygons->len);
}

/* All points of a line, its last too. */
static GArray *
line_points (GEOSContextHandle_t geos, const GEOSGeometry *geometry)
{
  const GEOSCoordSequence *line = GEOSGeom_getCoordSeq_r (geos, geometry);
  GArray *points = g_array_new (FALSE, FALSE, sizeof (SwPoint));
  unsigned count = 0;

  GEOSCoordSeq_getSize_r (geos, line, &count);
  g_array_set_size (points, count);
  for (unsigned i = 0; i < count; i++)
    {
      SwPoint *p = &g_array_index (points, SwPoint, i);

      GEOSCoordSeq_getXY_r (geos, line, i, &p->x_m, &p->y_m);
    }
  return points;
}

static gboolean
add_geos_ring (GEOSContextHandle_t geos, SwRegion *region, const GEOSGeometry *ring,
               gboolean hole)
{
  g_autoptr (GArray) points = line_points (geos, ring);

  return points->len >= 4
         && add_ring (region, (const SwPoint *) points->data, points->len - 1, hole);
}

static void
add_polygon (GEOSContextHandle_t geos, SwRegion *region, const GEOSGeometry *polygon)
{
  int holes = GEOSGetNumInteriorRings_r (geos, polygon);

  if (!add_geos_ring (geos, region, GEOSGetExteriorRing_r (geos, polygon), FALSE))
    return;
  for (int i = 0; i < holes; i++)
    add_geos_ring (geos, region, GEOSGetInteriorRingN_r (geos, polygon, i), TRUE);
}

/* Points and lines, where two outlines only touch, are no ground and are left out. */
static void
add_geometry (GEOSContextHandle_t geos, SwRegion *region, const GEOSGeometry *geometry)
{
  int count = GEOSGetNumGeometries_r (geos, geometry);

  for (int i = 0; i < count; i++)
    {
      const GEOSGeometry *part = GEOSGetGeometryN_r (geos, geometry, i);

      if (GEOSGeomTypeId_r (geos, part) == GEOS_POLYGON && !GEOSisEmpty_r (geos, part))
        add_polygon (geos, region, part);
      else if (GEOSGeomTypeId_r (geos, part) == GEOS_GEOMETRYCOLLECTION)
        add_geometry (geos, region, part);
    }
}

static gboolean
is_corner (SwPoint a, SwPoint p, SwPoint b)
{
  double chord_m = hypot (b.x_m - a.x_m, b.y_m - a.y_m);
  double off_m2 = (p.x_m - a.x_m) * (b.y_m - a.y_m) - (p.y_m - a.y_m) * (b.x_m - a.x_m);

  return fabs (off_m2) > STRAIGHT_M * chord_m;
}

/* On curved ground what lies along an edge is walked from corner to corner, so a point that
 * someone set on a straight edge must not begin a new one. (transfer full) */
static GArray *
find_corners (const SwPoint *outline, guint count)
{
  GArray *corners = g_array_new (FALSE, FALSE, sizeof (SwPoint));

  for (guint i = 0; i < count; i++)
    {
      SwPoint before = corners->len > 0
                           ? g_array_index (corners, SwPoint, corners->len - 1)
                           : outline[count - 1];

      if (is_corner (before, outline[i], outline[(i + 1) % count]))
        g_array_append_val (corners, outline[i]);
    }
  return corners;
}

SwStatus
sw_region_new (const SwPoint *outline, guint count, SwRegion **region)
{
  GEOSContextHandle_t geos;
  GEOSGeometry *polygon;
  g_autoptr (GArray) corners = NULL;
  gboolean valid;

  if (count < 3)
    return SW_E_FEW_POINTS;
  for (guint i = 0; i < count; i++)
    if (!isfinite (outline[i].x_m) || !isfinite (outline[i].y_m))
      return SW_E_RANGE;
  geos = GEOS_init_r ();
  polygon = ring_to_geos (geos, (SwRing){ outline, count });
  valid = GEOSisValid_r (geos, polygon) == 1;
  GEOSGeom_destroy_r (geos, polygon);
  GEOS_finish_r (geos);
  if (!valid || sw_ring_area_m2 ((SwRing){ outline, count }) < LEAST_AREA_M2)
    return SW_E_OUTLINE;
  *region = empty_region ();
  corners = find_corners (outline, count);
  add_ring (*region, (const SwPoint *) corners->data, corners->len, FALSE);
  return SW_OK;
}

typedef GEOSGeometry *(*Combine) (GEOSContextHandle_t geos, const GEOSGeometry *a,
                                  const GEOSGeometry *b);

/* Takes both geometries. */
static SwRegion *
overlay (GEOSContextHandle_t geos, GEOSGeometry *a, GEOSGeometry *b, Combine function)
{
  GEOSGeometry *made = function (geos, a, b);
  SwRegion *region = empty_region ();

  if (made != NULL)
    add_geometry (geos, region, made);
  GEOSGeom_destroy_r (geos, made);
  GEOSGeom_destroy_r (geos, a);
  GEOSGeom_destroy_r (geos, b);
  return region;
}

SwRegion *
sw_region_clip (const SwRegion *region, SwRing window_ring)
{
  GEOSContextHandle_t geos = GEOS_init_r ();
  SwRegion *clipped = overlay (geos, region_to_geos (geos, region),
                               ring_to_geos (geos, window_ring), GEOSIntersection_r);

  GEOS_finish_r (geos);
  return clipped;
}

SwRegion *
sw_region_clip_box (const SwRegion *region, SwBox box)
{
  SwPoint corners[] = { { box.x0_m, box.y0_m },
                        { box.x1_m, box.y0_m },
                        { box.x1_m, box.y1_m },
                        { box.x0_m, box.y1_m } };

  return sw_region_clip (region, (SwRing){ corners, G_N_ELEMENTS (corners) });
}

static SwRegion *
combine (const SwRegion *a, const SwRegion *b, Combine function)
{
  GEOSContextHandle_t geos = GEOS_init_r ();
  SwRegion *region =
      overlay (geos, region_to_geos (geos, a), region_to_geos (geos, b), function);

  GEOS_finish_r (geos);
  return region;
}

SwRegion *
sw_region_minus (const SwRegion *a, const SwRegion *b)
{
  return combine (a, b, GEOSDifference_r);
}

SwRegion *
sw_region_common (const SwRegion *a, const SwRegion *b)
{
  return combine (a, b, GEOSIntersection_r);
}

SwRegion *
sw_region_union (const GPtrArray *regions)
{
  GEOSContextHandle_t geos = GEOS_init_r ();
  g_autofree GEOSGeometry **parts = g_new (GEOSGeometry *, regions->len);
  GEOSGeometry *all, *made;
  SwRegion *region = empty_region ();

  for (guint i = 0; i < regions->len; i++)
    parts[i] = region_to_geos (geos, regions->pdata[i]);
  all = GEOSGeom_createCollection_r (geos, GEOS_GEOMETRYCOLLECTION, parts, regions->len);
  made = GEOSUnaryUnion_r (geos, all);
  if (made != NULL)
    add_geometry (geos, region, made);
  GEOSGeom_destroy_r (geos, made);
  GEOSGeom_destroy_r (geos, all);
  GEOS_finish_r (geos);
  return region;
}

SwRegion *
sw_region_grown (const SwRegion *region, double by_m)
{
  GEOSContextHandle_t geos = GEOS_init_r ();
  GEOSGeometry *whole = region_to_geos (geos, region);
  GEOSGeometry *made = GEOSBufferWithStyle_r (geos, whole, by_m, 8, GEOSBUF_CAP_FLAT,
                                              GEOSBUF_JOIN_MITRE, MITRE_LIMIT);
  SwRegion *grown = empty_region ();

  if (made != NULL)
    add_geometry (geos, grown, made);
  GEOSGeom_destroy_r (geos, made);
  GEOSGeom_destroy_r (geos, whole);
  GEOS_finish_r (geos);
  return grown;
}

SwRegion *
sw_region_copy (const SwRegion *region)
{
  SwRegion *copy = g_new (SwRegion, 1);

  copy->points = g_array_copy (region->points);
  copy->starts = g_array_copy (region->starts);
  return copy;
}

SwRegion *
sw_region_scaled (const SwRegion *region, double x_factor, double y_factor)
{
  SwRegion *scaled = sw_region_copy (region);

  for (guint i = 0; i < scaled->points->len; i++)
    {
      SwPoint *point = &g_array_index (scaled->points, SwPoint, i);

      point->x_m *= x_factor;
      point->y_m *= y_factor;
    }
  return scaled;
}

static void
add_lines (GEOSContextHandle_t geos, GPtrArray *lines, const GEOSGeometry *geometry)
{
  int count = GEOSGetNumGeometries_r (geos, geometry);

  for (int i = 0; i < count; i++)
    {
      const GEOSGeometry *part = GEOSGetGeometryN_r (geos, geometry, i);
      int type = GEOSGeomTypeId_r (geos, part);

      if ((type == GEOS_LINESTRING || type == GEOS_LINEARRING)
          && !GEOSisEmpty_r (geos, part))
        g_ptr_array_add (lines, line_points (geos, part));
      else if (type == GEOS_MULTILINESTRING || type == GEOS_GEOMETRYCOLLECTION)
        add_lines (geos, lines, part);
    }
}

GPtrArray *
sw_region_edges_within (const SwRegion *region, const SwRegion *area)
{
  GPtrArray *lines = g_ptr_array_new_with_free_func ((GDestroyNotify) g_array_unref);
  GEOSContextHandle_t geos = GEOS_init_r ();
  GEOSGeometry *whole = region_to_geos (geos, region);
  GEOSGeometry *within = region_to_geos (geos, area);
  GEOSGeometry *edge = GEOSBoundary_r (geos, whole);
  GEOSGeometry *cut = edge != NULL ? GEOSIntersection_r (geos, edge, within) : NULL;
  GEOSGeometry *merged = cut != NULL ? GEOSLineMerge_r (geos, cut) : NULL;

  if (merged != NULL)
    add_lines (geos, lines, merged);
  GEOSGeom_destroy_r (geos, merged);
  GEOSGeom_destroy_r (geos, cut);
  GEOSGeom_destroy_r (geos, edge);
  GEOSGeom_destroy_r (geos, within);
  GEOSGeom_destroy_r (geos, whole);
  GEOS_finish_r (geos);
  return lines;
}
