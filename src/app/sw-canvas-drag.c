/* SPDX-License-Identifier: MIT */
#include "sw-canvas-private.h"

#include <math.h>

#include "point-snap.h"
#include "point-words.h"

#define GRAB_TOUCH_PX 24.0

/* How near a dragged point must come to hold on to something. */
#define HOLD_PX 6.0

/* Up to where a click may tremble without being a drag. */
#define TREMBLE_PX 2.0

static GdkModifierType
modifiers (GtkGesture *gesture)
{
  return gtk_event_controller_get_current_event_state (GTK_EVENT_CONTROLLER (gesture));
}

static gboolean
is_touch (GtkGesture *gesture)
{
  GdkDevice *device =
      gtk_event_controller_get_current_event_device (GTK_EVENT_CONTROLLER (gesture));

  return device != NULL && gdk_device_get_source (device) == GDK_SOURCE_TOUCHSCREEN;
}

static void
on_drag_begin (GtkGestureDrag *drag, double x, double y, SwCanvas *self)
{
  SwPoint px = { x, y };
  SwSpot spot;
  double reach_px = is_touch (GTK_GESTURE (drag)) ? GRAB_TOUCH_PX : SW_CANVAS_GRAB_PX;

  self->press = px;
  self->pan_done = (SwPoint){ 0.0, 0.0 };
  self->dragged = self->space_held || self->measuring
                      ? -1
                      : sw_canvas_spot_under (self, px, reach_px);
  self->panning = self->dragged < 0;
  if (self->dragged < 0)
    {
      gtk_widget_grab_focus (GTK_WIDGET (self));
      return;
    }
  spot = sw_canvas_spot (self, (guint) self->dragged);
  self->drag_from =
      sw_points_get (sw_canvas_committed_face (self), spot.list, spot.index);
  sw_document_close_step (sw_stage_document (self->stage));
  sw_canvas_focus_spot (self, spot);
  gtk_widget_set_cursor_from_name (GTK_WIDGET (self), "grabbing");
}

/* How far the point moves over the face when the pointer has gone @dx_px, @dy_px: as the
 * face lay when the drag began, and the short way round a heap. */
static SwPoint
way_over_face (SwCanvas *self, double dx_px, double dy_px)
{
  const SwFace *face = sw_canvas_committed_face (self);
  double round_m = sw_face_full_circle_m (face);
  SwPoint world = sw_canvas_kind_lay (self->kind, face, self->drag_from);
  SwPoint from = sw_canvas_kind_lift (self->kind, face, world), to;

  world.x_m += dx_px / self->viewport.px_per_m;
  world.y_m +=
      (self->kind->y_up ? -1.0 : 1.0) * dy_px / sw_viewport_y_px_per_m (&self->viewport);
  to = sw_canvas_kind_lift (self->kind, face, world);
  to.x_m -= from.x_m;
  to.y_m -= from.y_m;
  if (!self->kind->y_up && round_m > 0.0)
    to.x_m = remainder (to.x_m, round_m);
  return to;
}

/* Shift keeps to one direction, Alt holds on to nothing. */
static SwSnap
drag_target (SwCanvas *self, SwSpot spot, double dx_px, double dy_px,
             GdkModifierType held)
{
  SwPoint way = way_over_face (self, dx_px, dy_px), to = self->drag_from;

  if (held & GDK_SHIFT_MASK)
    {
      if (fabs (way.x_m) >= fabs (way.y_m))
        way.y_m = 0.0;
      else
        way.x_m = 0.0;
    }
  to.x_m += way.x_m;
  to.y_m += way.y_m;
  if (held & GDK_ALT_MASK)
    return (SwSnap){ .to = to };
  return sw_snap_point (sw_canvas_committed_face (self), spot.list, spot.index,
                        (SwSnapWish){ .wish = to,
                                      .step_m = sw_canvas_step_m (self),
                                      .reach_m = HOLD_PX / self->viewport.px_per_m,
                                      .fix_x = !(fabs (way.x_m) > 0.0),
                                      .fix_y = !(fabs (way.y_m) > 0.0) });
}

static void
tell_snap (SwCanvas *self, SwSnap snap)
{
  g_autofree char *words =
      sw_snap_text (snap, sw_canvas_step_m (self), sw_stage_style (self->stage));

  sw_stage_tell (self->stage, words);
}

static void
pan_by_drag (SwCanvas *self, double dx_px, double dy_px)
{
  sw_viewport_pan (&self->viewport, dx_px - self->pan_done.x_m,
                   dy_px - self->pan_done.y_m);
  self->pan_done = (SwPoint){ dx_px, dy_px };
  sw_canvas_view_changed (self, TRUE);
}

static void
on_drag_update (GtkGestureDrag *drag, double dx, double dy, SwCanvas *self)
{
  if (self->panning)
    {
      if (hypot (dx, dy) > 4.0 || hypot (self->pan_done.x_m, self->pan_done.y_m) > 0.0)
        pan_by_drag (self, dx, dy);
      return;
    }
  if (self->dragged < 0)
    return;
  SwSpot spot = sw_canvas_spot (self, (guint) self->dragged);
  SwSnap snap = drag_target (self, spot, dx, dy, modifiers (GTK_GESTURE (drag)));
  g_autoptr (SwJob) job = sw_canvas_moved_to (self, spot, snap.to);
  sw_document_preview (sw_stage_document (self->stage), job);
  tell_snap (self, snap);
}

static void
on_drag_end (GtkGestureDrag *drag, double dx, double dy, SwCanvas *self)
{
  int dragged = self->dragged;

  self->dragged = -1;
  self->panning = FALSE;
  gtk_widget_set_cursor (GTK_WIDGET (self), NULL);
  if (dragged < 0)
    return;
  if (hypot (dx, dy) < TREMBLE_PX)
    {
      sw_document_preview (sw_stage_document (self->stage), NULL);
      return;
    }
  SwSpot spot = sw_canvas_spot (self, (guint) dragged);
  SwSnap snap = drag_target (self, spot, dx, dy, modifiers (GTK_GESTURE (drag)));
  g_autoptr (SwJob) job = sw_canvas_moved_to (self, spot, snap.to);
  g_autofree char *label = sw_point_step (SW_STEP_MOVE, sw_canvas_committed_face (self),
                                          spot.list, spot.index);
  sw_document_commit (sw_stage_document (self->stage), job, label, NULL);
}

static void
on_drag_cancel (SwCanvas *self)
{
  if (self->dragged < 0)
    return;
  self->dragged = -1;
  gtk_widget_set_cursor (GTK_WIDGET (self), NULL);
  sw_document_preview (sw_stage_document (self->stage), NULL);
}

gboolean
sw_canvas_cancel_drag (SwCanvas *self)
{
  if (self->dragged < 0)
    return FALSE;
  on_drag_cancel (self);
  gtk_gesture_set_state (self->drag, GTK_EVENT_SEQUENCE_DENIED);
  return TRUE;
}

static void
on_pan_begin (GtkGestureDrag *drag, double x, double y, SwCanvas *self)
{
  self->pan_done = (SwPoint){ 0.0, 0.0 };
}

static void
on_pan_update (GtkGestureDrag *drag, double dx, double dy, SwCanvas *self)
{
  pan_by_drag (self, dx, dy);
}

void
sw_canvas_add_drags (SwCanvas *self)
{
  GtkGesture *pan = gtk_gesture_drag_new ();

  self->drag = gtk_gesture_drag_new ();
  gtk_gesture_single_set_button (GTK_GESTURE_SINGLE (self->drag), GDK_BUTTON_PRIMARY);
  gtk_gesture_single_set_button (GTK_GESTURE_SINGLE (pan), GDK_BUTTON_MIDDLE);
  g_signal_connect (self->drag, "drag-begin", G_CALLBACK (on_drag_begin), self);
  g_signal_connect (self->drag, "drag-update", G_CALLBACK (on_drag_update), self);
  g_signal_connect (self->drag, "drag-end", G_CALLBACK (on_drag_end), self);
  g_signal_connect_swapped (self->drag, "cancel", G_CALLBACK (on_drag_cancel), self);
  g_signal_connect (pan, "drag-begin", G_CALLBACK (on_pan_begin), self);
  g_signal_connect (pan, "drag-update", G_CALLBACK (on_pan_update), self);
  gtk_widget_add_controller (GTK_WIDGET (self), GTK_EVENT_CONTROLLER (self->drag));
  gtk_widget_add_controller (GTK_WIDGET (self), GTK_EVENT_CONTROLLER (pan));
}
