/* SPDX-License-Identifier: MIT */
#include "sw-canvas-private.h"

/* Parts into which a line of the face is cut that may be bent here. */
#define PARTS 96

/* A straight line over the plan, from @a to @b, as it lies in this view. */
static void
paint_way (SwCanvas *self, SwCanvasPaint *paint, SwPoint a, SwPoint b)
{
  SwPoint path[PARTS + 1];

  for (guint i = 0; i <= PARTS; i++)
    {
      double t = (double) i / PARTS;
      SwPoint plan = { a.x_m + (b.x_m - a.x_m) * t, a.y_m + (b.y_m - a.y_m) * t };

      path[i] = sw_canvas_to_px (
          self, sw_canvas_kind_from_plan (self->kind, sw_stage_result (self->stage),
                                          sw_stage_face_index (self->stage), plan));
    }
  sw_canvas_paint_path (paint, path, PARTS + 1);
}

/* On a round face: the contour through the place, and its fall line where that is known. */
static void
paint_round (SwCanvas *self, SwCanvasPaint *paint, SwPoint plan, gboolean along_known)
{
  SwBox box =
      sw_ring_box (sw_points_ring (sw_stage_face (self->stage), SW_POINTS_OUTLINE));

  paint_way (self, paint, (SwPoint){ box.x0_m, plan.y_m },
             (SwPoint){ box.x1_m, plan.y_m });
  if (along_known)
    paint_way (self, paint, (SwPoint){ plan.x_m, box.y0_m },
               (SwPoint){ plan.x_m, box.y1_m });
}

void
sw_canvas_paint_pointed (SwCanvas *self, SwCanvasPaint *paint)
{
  SwPoint plan, world;
  gboolean along_known;

  if (!sw_stage_pointed (self->stage, &plan, &along_known))
    return;
  world = sw_canvas_kind_from_plan (self->kind, sw_stage_result (self->stage),
                                    sw_stage_face_index (self->stage), plan);
  if (self->kind->y_up)
    sw_canvas_paint_line (paint, world.x_m, TRUE);
  else if (sw_stage_face (self->stage)->crest_form != SW_CREST_STRAIGHT)
    paint_round (self, paint, plan, along_known);
  else
    {
      sw_canvas_paint_line (paint, world.y_m, FALSE);
      if (along_known)
        sw_canvas_paint_line (paint, world.x_m, TRUE);
    }
}
