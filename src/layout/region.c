/* SPDX-License-Identifier: MIT */
#include "region.h"
#include <slopewright/base/order.h>

void
sw_region_free (SwRegion *region)
{
  if (region == NULL)
    return;
  g_array_unref (region->points);
  g_array_unref (region->starts);
  g_free (region);
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

gboolean
sw_region_is_hole (const SwRegion *region, guint index)
{
  return sw_ring_signed_area_m2 (sw_region_ring (region, index)) < 0.0;
}

gboolean
sw_region_contains (const SwRegion *region, SwPoint point)
{
  gboolean inside = FALSE;

  for (guint i = 0; i < sw_region_rings (region); i++)
    if (sw_ring_contains (sw_region_ring (region, i), point))
      inside = !sw_region_is_hole (region, i);
  return inside;
}

gboolean
sw_region_on_edge (const SwRegion *region, SwPoint point)
{
  for (guint i = 0; i < sw_region_rings (region); i++)
    if (sw_ring_on_edge (sw_region_ring (region, i), point))
      return TRUE;
  return FALSE;
}

double
sw_region_area_m2 (const SwRegion *region)
{
  double area = 0.0;

  for (guint i = 0; i < sw_region_rings (region); i++)
    area += sw_ring_signed_area_m2 (sw_region_ring (region, i));
  return area;
}

SwBox
sw_region_box (const SwRegion *region)
{
  return sw_ring_box (
      (SwRing){ &g_array_index (region->points, SwPoint, 0), region->points->len });
}

/* Ends of the spans of all rings, taken in order, lead in and out of the ground by turns. */
static void
cut (const SwRegion *region, double at_m, GArray *spans,
     void (*cut_ring) (SwRing ring, double at_m, GArray *spans))
{
  g_autoptr (GArray) ends = NULL;

  if (sw_region_rings (region) == 1)
    {
      cut_ring (sw_region_ring (region, 0), at_m, spans);
      return;
    }
  ends = g_array_new (FALSE, FALSE, sizeof (double));
  for (guint i = 0; i < sw_region_rings (region); i++)
    {
      cut_ring (sw_region_ring (region, i), at_m, spans);
      g_array_append_vals (ends, spans->data, 2 * spans->len);
    }
  g_array_sort (ends, sw_compare_doubles);
  g_array_set_size (spans, 0);
  for (guint i = 0; i + 1 < ends->len; i += 2)
    {
      SwSpan span = { g_array_index (ends, double, i),
                      g_array_index (ends, double, i + 1) };

      if (span.to_m > span.from_m)
        g_array_append_val (spans, span);
    }
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
