/* SPDX-License-Identifier: MIT */
#include <glib/gi18n.h>
#include <math.h>

#include "canvas-paint.h"
#include "sw-canvas-private.h"

#define GRAB_PX 13.0
#define GRAB_TOUCH_PX 24.0
#define LINE_PX 9.0
#define ZOOM_STEP 1.15

static const SwJob *
committed (SwCanvas *self)
{
  return sw_document_committed (sw_stage_document (self->stage));
}

static const SwFace *
committed_face (SwCanvas *self)
{
  return g_ptr_array_index (committed (self)->faces, sw_stage_face_index (self->stage));
}

static char *
point_step (SwCanvas *self, const char *section, const char *outline, guint index)
{
  const char *format = self->kind->list == SW_POINTS_SECTION ? section : outline;

  return g_strdup_printf ("%s %u", format, index + 1);
}

static char *
move_label (SwCanvas *self, guint index)
{
  return point_step (self, _ ("Move Section Point"), _ ("Move Outline Point"), index);
}

static SwJob *
moved_to (SwCanvas *self, guint index, SwPoint wish)
{
  const SwFace *face = committed_face (self);
  SwPoint to = sw_points_allowed (face, self->kind->list, index, wish);

  return sw_points_move (committed (self), sw_stage_face_index (self->stage),
                         self->kind->list, index, to);
}

void
sw_canvas_nudge (SwCanvas *self, guint index, double dx, double dy)
{
  double step_m = sw_canvas_step_m (self);
  SwPoint to = sw_points_get (committed_face (self), self->kind->list, index);
  g_autofree char *label = move_label (self, index);
  g_autofree char *key = g_strdup_printf ("%s-%u", self->kind->code, index);

  to.x_m += dx * step_m;
  to.y_m += dy * step_m * (self->kind->y_up ? -1.0 : 1.0);
  if (fabs (dx) + fabs (dy) >= 1.0) /* a tenth of a step leaves the grid */
    {
      SwPoint snapped = sw_viewport_snap (to, step_m);
      to.x_m = dx > 0.0 || dx < 0.0 ? snapped.x_m : to.x_m;
      to.y_m = dy > 0.0 || dy < 0.0 ? snapped.y_m : to.y_m;
    }
  g_autoptr (SwJob) job = moved_to (self, index, to);
  sw_document_commit (sw_stage_document (self->stage), job, label, key);
}

void
sw_canvas_edit_point (SwCanvas *self, guint index)
{
  SwPoint px =
      sw_viewport_to_px (&self->viewport, sw_points_get (sw_stage_face (self->stage),
                                                         self->kind->list, index));
  GdkRectangle at = { (int) px.x_m - 4, (int) px.y_m - 4, 8, 8 };

  if (self->popover == NULL)
    {
      self->popover = sw_point_popover_new (self->stage, self->kind);
      gtk_widget_set_parent (self->popover, GTK_WIDGET (self));
    }
  sw_stage_select (self->stage, self->kind->list, (int) index);
  sw_point_popover_open (SW_POINT_POPOVER (self->popover), index, at);
}

void
sw_canvas_add_point (SwCanvas *self, guint after, const SwPoint *at)
{
  SwPoint place =
      at != NULL ? *at
                 : sw_points_between (committed_face (self), self->kind->list, after);
  g_autofree char *label =
      point_step (self, _ ("Add Section Point"), _ ("Add Outline Point"), after + 1);
  g_autoptr (SwJob) job =
      sw_points_add (committed (self), sw_stage_face_index (self->stage),
                     self->kind->list, after, place);

  sw_document_commit (sw_stage_document (self->stage), job, label, NULL);
  sw_canvas_focus_point (self, after + 1);
}

void
sw_canvas_remove_point (SwCanvas *self, guint index)
{
  g_autofree char *label =
      point_step (self, _ ("Remove Section Point"), _ ("Remove Outline Point"), index);
  g_autoptr (SwJob) job = sw_points_remove (
      committed (self), sw_stage_face_index (self->stage), self->kind->list, index);

  if (job == NULL)
    {
      sw_stage_tell (self->stage, self->kind->list == SW_POINTS_SECTION
                                      ? _ ("A section keeps at least two points.")
                                      : _ ("An outline keeps at least three points."));
      return;
    }
  sw_document_commit (sw_stage_document (self->stage), job, label, NULL);
  sw_canvas_focus_point (self, index > 0 ? index - 1 : 0);
}

static int
point_under (SwCanvas *self, SwPoint px, double reach_px)
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

/* Point before the line under @px, -1 for none; @on: the place on the line, pixels. */
static int
line_under (SwCanvas *self, SwPoint px, SwPoint *on)
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
  double reach_px = is_touch (GTK_GESTURE (drag)) ? GRAB_TOUCH_PX : GRAB_PX;

  self->press = px;
  self->pan_done = (SwPoint){ 0.0, 0.0 };
  self->dragged = self->space_held ? -1 : point_under (self, px, reach_px);
  self->panning = self->dragged < 0;
  if (self->dragged < 0)
    {
      gtk_widget_grab_focus (GTK_WIDGET (self));
      return;
    }
  self->drag_from =
      sw_points_get (committed_face (self), self->kind->list, (guint) self->dragged);
  sw_document_close_step (sw_stage_document (self->stage));
  sw_canvas_focus_point (self, (guint) self->dragged);
  gtk_widget_set_cursor_from_name (GTK_WIDGET (self), "grabbing");
}

/* Shift keeps to one direction, Alt leaves the grid. */
static SwPoint
drag_target (SwCanvas *self, double dx_px, double dy_px, GdkModifierType held)
{
  double down = self->kind->y_up ? -1.0 : 1.0;
  SwPoint to = self->drag_from;

  if (held & GDK_SHIFT_MASK)
    {
      if (fabs (dx_px) >= fabs (dy_px))
        dy_px = 0.0;
      else
        dx_px = 0.0;
    }
  to.x_m += dx_px / self->viewport.px_per_m;
  to.y_m += down * dy_px / self->viewport.px_per_m;
  if (held & GDK_ALT_MASK)
    return to;
  SwPoint snapped = sw_viewport_snap (to, sw_canvas_step_m (self));
  if (fabs (dx_px) > 0.0)
    to.x_m = snapped.x_m;
  if (fabs (dy_px) > 0.0)
    to.y_m = snapped.y_m;
  return to;
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
  SwPoint to = drag_target (self, dx, dy, modifiers (GTK_GESTURE (drag)));
  g_autoptr (SwJob) job = moved_to (self, (guint) self->dragged, to);
  sw_document_preview (sw_stage_document (self->stage), job);
}

/* Up to where a click may tremble without being a drag. */
#define TREMBLE_PX 2.0

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
  SwPoint to = drag_target (self, dx, dy, modifiers (GTK_GESTURE (drag)));
  g_autoptr (SwJob) job = moved_to (self, (guint) dragged, to);
  g_autofree char *label = move_label (self, (guint) dragged);
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

static void
on_pressed (GtkGestureClick *click, int presses, double x, double y, SwCanvas *self)
{
  SwPoint px = { x, y }, on;
  int point, line;

  if (presses != 2 || !self->kind->has_points)
    return;
  point = point_under (self, px, GRAB_PX);
  line = point < 0 ? line_under (self, px, &on) : -1;
  sw_canvas_cancel_drag (self);
  if (point >= 0)
    sw_canvas_edit_point (self, (guint) point);
  else if (line >= 0)
    {
      SwPoint at = sw_viewport_to_world (&self->viewport, on);
      sw_canvas_add_point (self, (guint) line, &at);
    }
}

static void
on_released (GtkGestureClick *click, int presses, double x, double y, SwCanvas *self)
{
  const char *object;

  if (presses != 1 || hypot (x - self->press.x_m, y - self->press.y_m) > 4.0
      || point_under (self, (SwPoint){ x, y }, GRAB_PX) >= 0 || self->figure == NULL)
    return;
  object = sw_canvas_object_at (self->figure, sw_canvas_px_per_mm (self), x, y);
  sw_stage_mark (self->stage, *object != '\0' ? object : NULL);
}

static void
on_menu (GtkGestureClick *click, int presses, double x, double y, SwCanvas *self)
{
  int point = point_under (self, (SwPoint){ x, y }, GRAB_PX);

  if (point >= 0)
    sw_canvas_edit_point (self, (guint) point);
}

static gboolean
on_scroll (GtkEventControllerScroll *scroll, double dx, double dy, SwCanvas *self)
{
  GdkModifierType held =
      gtk_event_controller_get_current_event_state (GTK_EVENT_CONTROLLER (scroll));
  gboolean fingers =
      gtk_event_controller_scroll_get_unit (scroll) == GDK_SCROLL_UNIT_SURFACE;

  if (fingers && !(held & GDK_CONTROL_MASK)) /* two fingers pan, a wheel zooms */
    sw_viewport_pan (&self->viewport, -dx, -dy);
  else
    sw_viewport_zoom (&self->viewport, pow (ZOOM_STEP, fingers ? -dy / 40.0 : -dy),
                      self->pointer);
  sw_canvas_view_changed (self, TRUE);
  return GDK_EVENT_STOP;
}

static void
on_pinch_begin (SwCanvas *self)
{
  self->pinch_done = 1.0;
}

static void
on_pinch (GtkGestureZoom *zoom, double scale, SwCanvas *self)
{
  SwPoint centre;

  if (!gtk_gesture_get_bounding_box_center (GTK_GESTURE (zoom), &centre.x_m, &centre.y_m))
    return;
  sw_viewport_zoom (&self->viewport, scale / self->pinch_done, centre);
  self->pinch_done = scale;
  sw_canvas_view_changed (self, TRUE);
}

static void
on_motion (GtkEventControllerMotion *motion, double x, double y, SwCanvas *self)
{
  SwPoint px = { x, y }, plan;

  self->pointer = px;
  plan = sw_canvas_kind_to_plan (self->kind, sw_stage_result (self->stage),
                                 sw_stage_face_index (self->stage),
                                 sw_viewport_to_world (&self->viewport, px));
  sw_stage_point_at (self->stage, &plan, !self->kind->y_up);
}

static void
on_motion_left (SwCanvas *self)
{
  sw_stage_point_at (self->stage, NULL, FALSE);
}

static gboolean
on_key_pressed (SwCanvas *self, guint keyval)
{
  if (keyval == GDK_KEY_space)
    {
      self->space_held = TRUE;
      return GDK_EVENT_STOP;
    }
  if (keyval == GDK_KEY_Escape)
    return sw_canvas_cancel_drag (self);
  return GDK_EVENT_PROPAGATE;
}

static void
on_key_released (SwCanvas *self, guint keyval)
{
  if (keyval == GDK_KEY_space)
    self->space_held = FALSE;
}

/* Arrows on the canvas itself look around. */
static gboolean
on_canvas_key (SwCanvas *self, guint keyval)
{
  static const struct
  {
    guint key;
    double dx, dy;
  } ways[] = { { GDK_KEY_Left, 40.0, 0.0 },
               { GDK_KEY_Right, -40.0, 0.0 },
               { GDK_KEY_Up, 0.0, 40.0 },
               { GDK_KEY_Down, 0.0, -40.0 } };

  if (!gtk_widget_is_focus (GTK_WIDGET (self)))
    return GDK_EVENT_PROPAGATE;
  for (gsize i = 0; i < G_N_ELEMENTS (ways); i++)
    if (ways[i].key == keyval)
      {
        sw_viewport_pan (&self->viewport, ways[i].dx, ways[i].dy);
        sw_canvas_view_changed (self, TRUE);
        return GDK_EVENT_STOP;
      }
  return GDK_EVENT_PROPAGATE;
}

static void
add (SwCanvas *self, gpointer controller, const char *signal, GCallback callback)
{
  g_signal_connect (controller, signal, callback, self);
}

static void
add_swapped (SwCanvas *self, gpointer controller, const char *signal, GCallback callback)
{
  g_signal_connect_swapped (controller, signal, callback, self);
}

static void
add_drags (SwCanvas *self)
{
  GtkGesture *pan = gtk_gesture_drag_new ();
  GtkGesture *pinch = gtk_gesture_zoom_new ();

  self->drag = gtk_gesture_drag_new ();
  gtk_gesture_single_set_button (GTK_GESTURE_SINGLE (self->drag), GDK_BUTTON_PRIMARY);
  gtk_gesture_single_set_button (GTK_GESTURE_SINGLE (pan), GDK_BUTTON_MIDDLE);
  add (self, self->drag, "drag-begin", G_CALLBACK (on_drag_begin));
  add (self, self->drag, "drag-update", G_CALLBACK (on_drag_update));
  add (self, self->drag, "drag-end", G_CALLBACK (on_drag_end));
  add_swapped (self, self->drag, "cancel", G_CALLBACK (on_drag_cancel));
  add (self, pan, "drag-begin", G_CALLBACK (on_pan_begin));
  add (self, pan, "drag-update", G_CALLBACK (on_pan_update));
  add_swapped (self, pinch, "begin", G_CALLBACK (on_pinch_begin));
  add (self, pinch, "scale-changed", G_CALLBACK (on_pinch));
  gtk_widget_add_controller (GTK_WIDGET (self), GTK_EVENT_CONTROLLER (self->drag));
  gtk_widget_add_controller (GTK_WIDGET (self), GTK_EVENT_CONTROLLER (pan));
  gtk_widget_add_controller (GTK_WIDGET (self), GTK_EVENT_CONTROLLER (pinch));
}

static void
add_clicks (SwCanvas *self)
{
  GtkGesture *click = gtk_gesture_click_new ();
  GtkGesture *menu = gtk_gesture_click_new ();

  gtk_gesture_single_set_button (GTK_GESTURE_SINGLE (click), GDK_BUTTON_PRIMARY);
  gtk_gesture_single_set_button (GTK_GESTURE_SINGLE (menu), GDK_BUTTON_SECONDARY);
  add (self, click, "pressed", G_CALLBACK (on_pressed));
  add (self, click, "released", G_CALLBACK (on_released));
  add (self, menu, "pressed", G_CALLBACK (on_menu));
  gtk_widget_add_controller (GTK_WIDGET (self), GTK_EVENT_CONTROLLER (click));
  gtk_widget_add_controller (GTK_WIDGET (self), GTK_EVENT_CONTROLLER (menu));
}

void
sw_canvas_add_input (SwCanvas *self)
{
  GtkEventController *scroll =
      gtk_event_controller_scroll_new (GTK_EVENT_CONTROLLER_SCROLL_BOTH_AXES);
  GtkEventController *motion = gtk_event_controller_motion_new ();
  GtkEventController *key = gtk_event_controller_key_new ();
  GtkEventController *own_key = gtk_event_controller_key_new ();

  add_drags (self);
  add_clicks (self);
  add (self, scroll, "scroll", G_CALLBACK (on_scroll));
  add (self, motion, "motion", G_CALLBACK (on_motion));
  add_swapped (self, motion, "leave", G_CALLBACK (on_motion_left));
  add_swapped (self, key, "key-pressed", G_CALLBACK (on_key_pressed));
  add_swapped (self, key, "key-released", G_CALLBACK (on_key_released));
  add_swapped (self, own_key, "key-pressed", G_CALLBACK (on_canvas_key));
  gtk_event_controller_set_propagation_phase (key, GTK_PHASE_CAPTURE);
  gtk_widget_add_controller (GTK_WIDGET (self), scroll);
  gtk_widget_add_controller (GTK_WIDGET (self), motion);
  gtk_widget_add_controller (GTK_WIDGET (self), key);
  gtk_widget_add_controller (GTK_WIDGET (self), own_key);
}
