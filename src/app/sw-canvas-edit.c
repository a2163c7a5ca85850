/* SPDX-License-Identifier: MIT */
#include "sw-canvas-private.h"

#include <glib/gi18n.h>
#include <math.h>

#include "point-words.h"
#include "shape-edit.h"
#include "sw-add-shape.h"

static const SwJob *
committed (SwCanvas *self)
{
  return sw_document_committed (sw_stage_document (self->stage));
}

const SwFace *
sw_canvas_committed_face (SwCanvas *self)
{
  return g_ptr_array_index (committed (self)->faces, sw_stage_face_index (self->stage));
}

SwJob *
sw_canvas_moved_to (SwCanvas *self, SwSpot spot, SwPoint wish)
{
  SwPoint to =
      sw_points_allowed (sw_canvas_committed_face (self), spot.list, spot.index, wish);

  return sw_points_move (committed (self), sw_stage_face_index (self->stage), spot.list,
                         spot.index, to);
}

void
sw_canvas_nudge (SwCanvas *self, SwSpot spot, double dx, double dy)
{
  double step_m = sw_canvas_step_m (self);
  const SwFace *face = sw_canvas_committed_face (self);
  SwPoint to = sw_points_get (face, spot.list, spot.index);
  g_autofree char *label = sw_point_step (SW_STEP_MOVE, face, spot.list, spot.index);
  g_autofree char *key =
      g_strdup_printf ("%d-%u-%d", spot.list.kind, spot.list.which, spot.index);

  to.x_m += dx * step_m;
  to.y_m += dy * step_m * (self->kind->y_up ? -1.0 : 1.0);
  if (fabs (dx) + fabs (dy) >= 1.0) /* a tenth of a step leaves the grid */
    {
      SwPoint snapped = sw_viewport_snap (to, step_m);
      to.x_m = dx > 0.0 || dx < 0.0 ? snapped.x_m : to.x_m;
      to.y_m = dy > 0.0 || dy < 0.0 ? snapped.y_m : to.y_m;
    }
  g_autoptr (SwJob) job = sw_canvas_moved_to (self, spot, to);
  sw_document_commit (sw_stage_document (self->stage), job, label, key);
}

/* The keyboard goes on where it was, at the point that was typed. */
static void
on_typed (SwCanvas *self)
{
  GtkWidget *focus = gtk_root_get_focus (gtk_widget_get_root (GTK_WIDGET (self)));

  if (focus == NULL || gtk_widget_is_ancestor (focus, GTK_WIDGET (self))
      || focus == GTK_WIDGET (self))
    sw_canvas_focus_spot (self, self->typed);
}

void
sw_canvas_edit_point (SwCanvas *self, SwSpot spot)
{
  SwPoint px = sw_canvas_spot_px (self, spot);
  GdkRectangle at = { (int) px.x_m - 4, (int) px.y_m - 4, 8, 8 };

  if (self->popover == NULL)
    {
      self->popover = sw_point_popover_new (self->stage, self->kind);
      gtk_widget_set_parent (self->popover, GTK_WIDGET (self));
      g_signal_connect_object (self->popover, "closed", G_CALLBACK (on_typed), self,
                               G_CONNECT_SWAPPED);
    }
  self->typed = spot;
  sw_stage_select (self->stage, spot.list, spot.index);
  sw_point_popover_open (SW_POINT_POPOVER (self->popover), spot.list, spot.index, at);
}

void
sw_canvas_add_point (SwCanvas *self, SwSpot after, const SwPoint *at)
{
  const SwFace *face = sw_canvas_committed_face (self);
  SwSpot added = { after.list, after.index + 1 };

  if (after.index == SW_WHOLE) /* a shape has a point after each of its own, not itself */
    return;
  SwPoint place = at != NULL ? *at : sw_points_between (face, after.list, after.index);
  g_autofree char *label = sw_point_step (SW_STEP_ADD, face, added.list, added.index);
  g_autoptr (SwJob) job =
      sw_points_add (committed (self), sw_stage_face_index (self->stage), after.list,
                     after.index, place);

  sw_document_commit (sw_stage_document (self->stage), job, label, NULL);
  sw_canvas_focus_spot (self, added);
}

static SwJob *
without (SwCanvas *self, SwSpot spot)
{
  guint face = sw_stage_face_index (self->stage);

  return spot.index == SW_WHOLE
             ? sw_shapes_remove (committed (self), face, spot.list)
             : sw_points_remove (committed (self), face, spot.list, spot.index);
}

void
sw_canvas_remove (SwCanvas *self, SwSpot spot)
{
  const SwFace *face = sw_canvas_committed_face (self);
  g_autofree char *label = sw_point_step (SW_STEP_REMOVE, face, spot.list, spot.index);
  g_autoptr (SwJob) job = without (self, spot);

  if (job == NULL)
    {
      sw_stage_tell (self->stage, spot.list.kind == SW_LIST_SECTION
                                      ? _ ("A section keeps at least two points.")
                                      : _ ("An outline keeps at least three points."));
      return;
    }
  if (spot.index == SW_WHOLE)
    gtk_widget_grab_focus (GTK_WIDGET (self));
  sw_document_commit (sw_stage_document (self->stage), job, label, NULL);
  if (spot.index != SW_WHOLE)
    sw_canvas_focus_spot (self, (SwSpot){ spot.list, MAX (spot.index - 1, 0) });
}

void
sw_canvas_ask_shape (SwCanvas *self, SwListKind kind, SwPoint at)
{
  SwPoint px = sw_canvas_point_px (self, at);
  SwPoint snapped = sw_viewport_snap (at, sw_canvas_step_m (self));
  GdkRectangle place = { (int) px.x_m - 4, (int) px.y_m - 4, 8, 8 };

  if (!self->kind->has_points || self->kind->y_up)
    return;
  if (self->adder == NULL)
    {
      self->adder = sw_add_shape_new (self->stage);
      gtk_widget_set_parent (self->adder, GTK_WIDGET (self));
    }
  sw_add_shape_begin (SW_ADD_SHAPE (self->adder), kind, &snapped);
  gtk_popover_set_pointing_to (GTK_POPOVER (self->adder), &place);
  gtk_popover_popup (GTK_POPOVER (self->adder));
  gtk_widget_grab_focus (sw_add_shape_entry (SW_ADD_SHAPE (self->adder), SW_SHAPE_ALONG));
}

void
sw_canvas_add_shape (SwCanvas *self, SwListKind kind)
{
  SwRing ring = sw_points_ring (sw_stage_face (self->stage), SW_POINTS_OUTLINE);
  SwPoint at = sw_canvas_point_under (self, self->pointer);
  SwBox box = sw_ring_box (ring);

  if (!sw_ring_contains (ring, at))
    at = (SwPoint){ (box.x0_m + box.x1_m) / 2.0, (box.y0_m + box.y1_m) / 2.0 };
  sw_canvas_ask_shape (self, kind, at);
}
