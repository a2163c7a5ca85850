/* SPDX-License-Identifier: MIT */
#include "region.h"
#include <geos_c.h>
#include <math.h>

/* Slivers below a square centimetre are clipping dust, not ground. */
#define LEAST_AREA_M2 1e-4

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

void
sw_region_free (SwRegion *region)
{
  if (region == NULL)
    return;
  g_array_unref (region->points);
  g_array_unref (region->starts);
  g_free (region);
}

static void
add_ring (SwRegion *region, const SwPoint *points, guint count)
{
  if (sw_ring_area_m2 ((SwRing){ points, count }) < LEAST_AREA_M2)
    return;
  g_array_append_vals (region->points, points, count);
  g_array_append_val (region->starts, region->points->len);
}

static GEOSGeometry *
ring_to_geos (GEOSContextHandle_t geos, SwRing ring)
{
  GEOSCoordSequence *line = GEOSCoordSeq_create_r (geos, ring.count + 1, 2);

  for (guint i = 0; i <= ring.count; i++)
    {
      SwPoint p = ring.points[i % ring.count];

      GEOSCoordSeq_setXY_r (geos, line, i, p.x_m, p.y_m);
    }
  return GEOSGeom_createPolygon_r (geos, GEOSGeom_createLinearRing_r (geos, line), NULL,
                                   0);
}

static void
add_polygon (GEOSContextHandle_t geos, SwRegion *region, const GEOSGeometry *polygon)
{
  const GEOSGeometry *shell = GEOSGetExteriorRing_r (geos, polygon);
  const GEOSCoordSequence *line = GEOSGeom_getCoordSeq_r (geos, shell);
  unsigned count = 0;
  g_autofree SwPoint *points = NULL;

  GEOSCoordSeq_getSize_r (geos, line, &count);
  if (count < 4)
    return;
  points = g_new (SwPoint, count - 1);
  for (unsigned i = 0; i + 1 < count; i++)
    GEOSCoordSeq_getXY_r (geos, line, i, &points[i].x_m, &points[i].y_m);
  add_ring (region, points, count - 1);
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

SwStatus
sw_region_new (const SwPoint *outline, guint count, SwRegion **region)
{
  GEOSContextHandle_t geos;
  GEOSGeometry *polygon;
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
  add_ring (*region, outline, count);
  return SW_OK;
}

SwRegion *
sw_region_clip (const SwRegion *region, SwRing window_ring)
{
  GEOSContextHandle_t geos = GEOS_init_r ();
  GEOSGeometry *window = ring_to_geos (geos, window_ring);
  SwRegion *clipped = empty_region ();

  for (guint i = 0; i < sw_region_rings (region); i++)
    {
      GEOSGeometry *polygon = ring_to_geos (geos, sw_region_ring (region, i));
      GEOSGeometry *common = GEOSIntersection_r (geos, polygon, window);

      if (common != NULL)
        add_geometry (geos, clipped, common);
      GEOSGeom_destroy_r (geos, common);
      GEOSGeom_destroy_r (geos, polygon);
    }
  GEOSGeom_destroy_r (geos, window);
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

guint
sw_region_rings (const SwRegion *region)
{
  return region->starts->len - 1;
}

SwRing
sw_region_ring (const SwRegion *region, guint index)
{
  guint from = g_array_index (region->starts, guint, index);
  guint to = g_array_index (region->starts, guint, index + 1);

  return (SwRing){ &g_array_index (region->points, SwPoint, from), to - from };
}

double
sw_region_area_m2 (const SwRegion *region)
{
  double area = 0.0;

  for (guint i = 0; i < sw_region_rings (region); i++)
    area += sw_ring_area_m2 (sw_region_ring (region, i));
  return area;
}

SwBox
sw_region_box (const SwRegion *region)
{
  return sw_ring_box (
      (SwRing){ &g_array_index (region->points, SwPoint, 0), region->points->len });
}

static int
compare_spans (gconstpointer a, gconstpointer b)
{
  double x = ((const SwSpan *) a)->from_m, y = ((const SwSpan *) b)->from_m;

  return (x > y) - (x < y);
}

static void
cut (const SwRegion *region, double at_m, GArray *spans,
     void (*cut_ring) (SwRing ring, double at_m, GArray *spans))
{
  g_autoptr (GArray) part = NULL;

  if (sw_region_rings (region) == 1)
    {
      cut_ring (sw_region_ring (region, 0), at_m, spans);
      return;
    }
  g_array_set_size (spans, 0);
  part = g_array_new (FALSE, FALSE, sizeof (SwSpan));
  for (guint i = 0; i < sw_region_rings (region); i++)
    {
      cut_ring (sw_region_ring (region, i), at_m, part);
      g_array_append_vals (spans, part->data, part->len);
    }
  g_array_sort (spans, compare_spans);
}

void
sw_region_cut_x (const SwRegion *region, double x_m, GArray *spans)
{
  cut (region, x_m, spans, sw_ring_cut_x);
}

void
sw_region_cut_y (const SwRegion *region, double y_m, GArray *spans)
{
  cut (region, y_m, spans, sw_ring_cut_y);
}
