/* SPDX-License-Identifier: MIT */
#include "sw-canvas-private.h"

#include <math.h>

#define LINE_PX 9.0

int
sw_canvas_point_under (SwCanvas *self, SwPoint px, double reach_px)
{
  const SwFace *face = sw_stage_face (self->stage);
  int nearest = -1;

  for (guint i = 0; i < self->handles->len; i++)
    {
      SwPoint at =
          sw_viewport_to_px (&self->viewport, sw_points_get (face, self->kind->list, i));
      double distance_px = hypot (at.x_m - px.x_m, at.y_m - px.y_m);
      if (distance_px <= reach_px)
        {
          reach_px = distance_px;
          nearest = (int) i;
        }
    }
  return nearest;
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

int
sw_canvas_line_under (SwCanvas *self, SwPoint px, SwPoint *on)
{
  const SwFace *face = sw_stage_face (self->stage);
  guint count = self->handles->len;
  guint lines = self->kind->list == SW_POINTS_SECTION ? count - 1 : count;
  double reach_px = LINE_PX;
  int nearest = -1;

  for (guint i = 0; count > 1 && i < lines; i++)
    {
      SwPoint a =
          sw_viewport_to_px (&self->viewport, sw_points_get (face, self->kind->list, i));
      SwPoint b = sw_viewport_to_px (
          &self->viewport, sw_points_get (face, self->kind->list, (i + 1) % count));
      SwPoint foot;
      double distance_px = segment_distance (a, b, px, &foot);
      if (distance_px <= reach_px)
        {
          reach_px = distance_px;
          nearest = (int) i;
          *on = foot;
        }
    }
  return nearest;
}
