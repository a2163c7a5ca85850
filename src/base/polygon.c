/* SPDX-License-Identifier: MIT */
#include <math.h>
#include <slopewright/base/order.h>
#include <slopewright/base/polygon.h>

/* A point this near to an edge lies on it: a tenth of a millimetre. */
#define EDGE_M 1e-4

double
sw_ring_signed_area_m2 (SwRing ring)
{
  double twice = 0.0;

  /* Around the first point, so that sites far from the datum lose no digits. */
  for (guint i = 1; i + 1 < ring.count; i++)
    {
      double ax = ring.points[i].x_m - ring.points[0].x_m;
      double ay = ring.points[i].y_m - ring.points[0].y_m;
      double bx = ring.points[i + 1].x_m - ring.points[0].x_m;
      double by = ring.points[i + 1].y_m - ring.points[0].y_m;

      twice += ax * by - ay * bx;
    }
  return twice / 2.0;
}

double
sw_ring_area_m2 (SwRing ring)
{
  return fabs (sw_ring_signed_area_m2 (ring));
}

SwBox
sw_ring_box (SwRing ring)
{
  SwBox box = { INFINITY, INFINITY, -INFINITY, -INFINITY };

  for (guint i = 0; i < ring.count; i++)
    {
      box.x0_m = fmin (box.x0_m, ring.points[i].x_m);
      box.y0_m = fmin (box.y0_m, ring.points[i].y_m);
      box.x1_m = fmax (box.x1_m, ring.points[i].x_m);
      box.y1_m = fmax (box.y1_m, ring.points[i].y_m);
    }
  return box;
}

double
sw_segment_distance_m (SwPoint a, SwPoint b, SwPoint p)
{
  double dx = b.x_m - a.x_m, dy = b.y_m - a.y_m;
  double square = dx * dx + dy * dy;
  double t = square > 0.0 ? ((p.x_m - a.x_m) * dx + (p.y_m - a.y_m) * dy) / square : 0.0;

  t = CLAMP (t, 0.0, 1.0);
  return hypot (a.x_m + t * dx - p.x_m, a.y_m + t * dy - p.y_m);
}

gboolean
sw_ring_contains (SwRing ring, SwPoint point)
{
  gboolean inside = FALSE;

  for (guint i = 0, j = ring.count - 1; i < ring.count; j = i++)
    {
      SwPoint a = ring.points[j], b = ring.points[i];

      if (sw_segment_distance_m (a, b, point) <= EDGE_M)
        return TRUE;
      if ((a.y_m > point.y_m) != (b.y_m > point.y_m)
          && point.x_m < a.x_m + (b.x_m - a.x_m) * (point.y_m - a.y_m) / (b.y_m - a.y_m))
        inside = !inside;
    }
  return inside;
}

gboolean
sw_ring_on_edge (SwRing ring, SwPoint point)
{
  for (guint i = 0, j = ring.count - 1; i < ring.count; j = i++)
    if (sw_segment_distance_m (ring.points[j], ring.points[i], point) <= EDGE_M)
      return TRUE;
  return FALSE;
}

/* Crossings come in pairs, because each edge counts its lower end only. */
static void
pair_crossings (double *crossings, guint count, GArray *spans)
{
  qsort (crossings, count, sizeof *crossings, sw_compare_doubles);
  for (guint i = 0; i + 1 < count; i += 2)
    if (crossings[i + 1] - crossings[i] > 0.0)
      {
        SwSpan span = { crossings[i], crossings[i + 1] };
        g_array_append_val (spans, span);
      }
}

/* A point with its axes in the order in which it is cut. */
static SwPoint
turned (SwPoint point, gboolean swapped)
{
  return swapped ? (SwPoint){ point.y_m, point.x_m } : point;
}

static void
cut (SwRing ring, double at_m, gboolean swapped, GArray *spans)
{
  g_autofree double *crossings = g_new (double, ring.count);
  guint count = 0;

  g_array_set_size (spans, 0);
  for (guint i = 0, j = ring.count - 1; i < ring.count; j = i++)
    {
      SwPoint a = turned (ring.points[j], swapped), b = turned (ring.points[i], swapped);

      if ((a.x_m > at_m) != (b.x_m > at_m))
        crossings[count++] = a.y_m + (b.y_m - a.y_m) * (at_m - a.x_m) / (b.x_m - a.x_m);
    }
  pair_crossings (crossings, count, spans);
}

void
sw_ring_cut_x (SwRing ring, double x_m, GArray *spans)
{
  cut (ring, x_m, FALSE, spans);
}

void
sw_ring_cut_y (SwRing ring, double y_m, GArray *spans)
{
  cut (ring, y_m, TRUE, spans);
}
