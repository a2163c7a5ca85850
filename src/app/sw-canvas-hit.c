/* SPDX-License-Identifier: MIT */
#include "sw-canvas-private.h"

#include <math.h>

#define LINE_PX 9.0
#define EDGE_PARTS 24
#define SMALL_PX (3.0 * SW_CANVAS_GRAB_PX)

gboolean
sw_canvas_spot_is_offered (SwCanvas *self, SwSpot spot)
{
  SwRing ring;
  SwBox box;

  if (!sw_points_is_shape (spot.list) || spot.index == SW_WHOLE)
    return TRUE;
  ring = sw_points_ring (sw_stage_face (self->stage), spot.list);
  box = sw_ring_box (ring);
  return fmax (box.x1_m - box.x0_m, box.y1_m - box.y0_m) * self->viewport.px_per_m
         > SMALL_PX;
}

static int
body_under (SwCanvas *self, SwPoint px)
{
  SwPoint at = sw_canvas_point_under (self, px);

  for (guint i = 0; i < self->spots->len; i++)
    {
      SwSpot spot = sw_canvas_spot (self, i);

      if (spot.list.kind == SW_LIST_OBSTACLE && spot.index == SW_WHOLE
          && sw_ring_contains (sw_points_ring (sw_stage_face (self->stage), spot.list),
                               at))
        return (int) i;
    }
  return -1;
}

int
sw_canvas_spot_under (SwCanvas *self, SwPoint px, double reach_px)
{
  int nearest = -1;

  for (guint i = 0; i < self->spots->len; i++)
    {
      SwSpot spot = sw_canvas_spot (self, i);
      SwPoint at = sw_canvas_spot_px (self, spot);
      double distance_px = hypot (at.x_m - px.x_m, at.y_m - px.y_m);

      if (distance_px <= reach_px && sw_canvas_spot_is_offered (self, spot))
        {
          reach_px = distance_px;
          nearest = (int) i;
        }
    }
  return nearest >= 0 ? nearest : body_under (self, px);
}

/* Distance from @p to the segment; @on gets the foot of the perpendicular. */
static double
segment_distance (SwPoint a, SwPoint b, SwPoint p, SwPoint *on)
{
  double dx = b.x_m - a.x_m, dy = b.y_m - a.y_m, square = dx * dx + dy * dy;
  double t = square > 0.0 ? ((p.x_m - a.x_m) * dx + (p.y_m - a.y_m) * dy) / square : 0.0;

  t = CLAMP (t, 0.0, 1.0);
  *on = (SwPoint){ a.x_m + t * dx, a.y_m + t * dy };
  return hypot (p.x_m - on->x_m, p.y_m - on->y_m);
}

/* Distance of @px from the line between two points of the face, which is bent on the plan
 * of a round one. */
static double
edge_distance (SwCanvas *self, SwPoint a, SwPoint b, SwPoint px, SwPoint *on)
{
  SwPoint from = sw_canvas_point_px (self, a);
  double nearest_px = INFINITY;

  for (int i = 1; i <= EDGE_PARTS; i++)
    {
      double t = (double) i / EDGE_PARTS;
      SwPoint to = sw_canvas_point_px (
          self, (SwPoint){ a.x_m + (b.x_m - a.x_m) * t, a.y_m + (b.y_m - a.y_m) * t });
      SwPoint foot;
      double distance_px = segment_distance (from, to, px, &foot);

      if (distance_px < nearest_px)
        {
          nearest_px = distance_px;
          *on = foot;
        }
      from = to;
    }
  return nearest_px;
}

gboolean
sw_canvas_line_under (SwCanvas *self, SwPoint px, SwSpot *before, SwPoint *on)
{
  const SwFace *face = sw_stage_face (self->stage);
  double reach_px = LINE_PX;
  gboolean found = FALSE;

  for (guint i = 0; i < self->spots->len; i++)
    {
      SwSpot spot = sw_canvas_spot (self, i), next = spot;
      guint count = sw_points_count (face, spot.list);
      SwPoint foot;

      if (spot.index == SW_WHOLE
          || (spot.list.kind == SW_LIST_SECTION && spot.index + 1 == (int) count))
        continue;
      next.index = (spot.index + 1) % (int) count;
      double distance_px =
          edge_distance (self, sw_points_get (face, spot.list, spot.index),
                         sw_points_get (face, next.list, next.index), px, &foot);
      if (distance_px <= reach_px)
        {
          reach_px = distance_px;
          *before = spot;
          *on = foot;
          found = TRUE;
        }
    }
  return found;
}
