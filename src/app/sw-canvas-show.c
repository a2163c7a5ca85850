/* SPDX-License-Identifier: MIT */
#include "sw-canvas-private.h"

#include "point-words.h"

/* Parts into which a line of the face is cut that may be bent here. */
#define WAY_PARTS 96

#define HOVER_ALPHA 0.45

void
sw_canvas_ensure_figure (SwCanvas *self)
{
  const SwStock *stock = sw_stage_stock (self->stage);
  const SwDraw draw = { .texts = stock->texts,
                        .measure = stock->measure,
                        .style = sw_stage_style (self->stage),
                        .on_screen = TRUE,
                        .section = sw_stage_list (self->stage, TRUE).which };
  SwView view = sw_viewport_view (&self->viewport, sw_canvas_px_per_mm (self));

  if (self->figure == NULL)
    self->figure = self->kind->draw (sw_stage_result (self->stage),
                                     sw_stage_face_index (self->stage), &view, &draw);
}

/* A straight line over the plan, from @a to @b, as it lies in this view. */
static void
paint_way (SwCanvas *self, SwCanvasPaint *paint, SwPoint a, SwPoint b)
{
  SwPoint path[WAY_PARTS + 1];

  for (guint i = 0; i <= WAY_PARTS; i++)
    {
      double t = (double) i / WAY_PARTS;
      SwPoint plan = { a.x_m + (b.x_m - a.x_m) * t, a.y_m + (b.y_m - a.y_m) * t };

      path[i] = sw_canvas_to_px (
          self, sw_canvas_kind_from_plan (self->kind, sw_stage_result (self->stage),
                                          sw_stage_face_index (self->stage), plan));
    }
  sw_canvas_paint_path (paint, path, WAY_PARTS + 1);
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

static void
paint_pointed (SwCanvas *self, SwCanvasPaint *paint)
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

static void
paint_hovered (SwCanvas *self, SwCanvasPaint *paint)
{
  const char *object = sw_stage_hovered (self->stage);

  if (object == NULL || g_strcmp0 (object, sw_stage_marked (self->stage)) == 0)
    return;
  cairo_push_group (paint->cr);
  sw_canvas_paint_marked (paint, self->figure, object);
  cairo_pop_group_to_source (paint->cr);
  cairo_paint_with_alpha (paint->cr, HOVER_ALPHA);
}

/* A section shows of an obstacle or zone how far out it begins and ends. */
static void
paint_extent (SwCanvas *self, SwCanvasPaint *paint)
{
  const SwFace *face = sw_stage_face (self->stage);
  const char *object = sw_stage_hovered (self->stage);
  SwPointList list;
  SwBox box;

  if (!sw_points_of_object (face, object, &list)
      && !sw_points_of_object (face, sw_stage_marked (self->stage), &list))
    return;
  box = sw_ring_box (sw_points_ring (face, list));
  sw_canvas_paint_line (paint, box.y0_m, TRUE);
  sw_canvas_paint_line (paint, box.y1_m, TRUE);
}

/* Outline and section bring their marks with them. */
static void
paint_shapes (SwCanvas *self, SwCanvasPaint *paint)
{
  for (guint i = 0; i < self->spots->len; i++)
    {
      SwSpot spot = sw_canvas_spot (self, i);

      if (sw_points_is_shape (spot.list) && sw_canvas_spot_is_offered (self, spot))
        sw_canvas_paint_grip (paint, sw_canvas_spot_px (self, spot),
                              spot.index == SW_WHOLE);
    }
}

void
sw_canvas_snapshot (GtkWidget *widget, GtkSnapshot *snapshot)
{
  SwCanvas *self = SW_CANVAS (widget);
  graphene_rect_t bounds =
      GRAPHENE_RECT_INIT (0.0f, 0.0f, (float) gtk_widget_get_width (widget),
                          (float) gtk_widget_get_height (widget));

  if (self->stage == NULL || self->viewport.px_per_m <= 0.0)
    return;
  sw_canvas_ensure_figure (self);
  gtk_snapshot_push_clip (snapshot, &bounds);
  SwCanvasPaint paint = {
    .cr = gtk_snapshot_append_cairo (snapshot, &bounds),
    .viewport = &self->viewport,
    .palette = sw_stage_stock (self->stage)->palette,
    .theme = sw_canvas_theme (widget),
    .px_per_mm = sw_canvas_px_per_mm (self),
  };
  sw_canvas_paint_ground (&paint);
  sw_canvas_paint_grid (&paint, sw_stage_job (self->stage)->units);
  sw_canvas_paint_figure (&paint, self->figure);
  paint_hovered (self, &paint);
  sw_canvas_paint_marked (&paint, self->figure, sw_stage_marked (self->stage));
  if (self->kind->y_up)
    paint_extent (self, &paint);
  paint_shapes (self, &paint);
  paint_pointed (self, &paint);
  sw_canvas_paint_measured (self, &paint);
  cairo_destroy (paint.cr);
  for (guint i = 0; i < self->marks->len; i++)
    gtk_widget_snapshot_child (widget, g_ptr_array_index (self->marks, i), snapshot);
  for (guint i = 0; i < self->handles->len; i++)
    gtk_widget_snapshot_child (widget, g_ptr_array_index (self->handles, i), snapshot);
  gtk_snapshot_pop (snapshot);
}
