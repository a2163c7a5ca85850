/* SPDX-License-Identifier: MIT */
#include "sw-canvas-private.h"

#include <math.h>
#include <string.h>

#define ZOOM_STEP 1.15

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

/* What is under the pointer is marked lightly in all views. */
static void
hover (SwCanvas *self, SwPoint px)
{
  const char *object =
      sw_canvas_object_at (self->figure, sw_canvas_px_per_mm (self), px.x_m, px.y_m);
  gboolean told = strstr (object, "/run/") != NULL || strstr (object, "/trench/") != NULL
                  || strstr (object, "/obstacle/") != NULL
                  || strstr (object, "/zone/") != NULL;

  sw_stage_hover (self->stage, told ? object : NULL);
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
  if (self->measuring)
    sw_canvas_measure_towards (self, sw_canvas_place_under (self, px));
  else if (self->figure != NULL && self->dragged < 0)
    hover (self, px);
}

static void
on_motion_left (SwCanvas *self)
{
  sw_stage_hover (self->stage, NULL);
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
  if (keyval == GDK_KEY_Escape && self->measuring)
    {
      gtk_widget_activate_action (GTK_WIDGET (self), "canvas.measure", NULL);
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
add_pinch (SwCanvas *self)
{
  GtkGesture *pinch = gtk_gesture_zoom_new ();

  g_signal_connect_swapped (pinch, "begin", G_CALLBACK (on_pinch_begin), self);
  g_signal_connect (pinch, "scale-changed", G_CALLBACK (on_pinch), self);
  gtk_widget_add_controller (GTK_WIDGET (self), GTK_EVENT_CONTROLLER (pinch));
}

void
sw_canvas_add_looking (SwCanvas *self)
{
  GtkEventController *scroll =
      gtk_event_controller_scroll_new (GTK_EVENT_CONTROLLER_SCROLL_BOTH_AXES);
  GtkEventController *motion = gtk_event_controller_motion_new ();
  GtkEventController *key = gtk_event_controller_key_new ();
  GtkEventController *own_key = gtk_event_controller_key_new ();

  add_pinch (self);
  g_signal_connect (scroll, "scroll", G_CALLBACK (on_scroll), self);
  g_signal_connect (motion, "motion", G_CALLBACK (on_motion), self);
  g_signal_connect_swapped (motion, "leave", G_CALLBACK (on_motion_left), self);
  g_signal_connect_swapped (key, "key-pressed", G_CALLBACK (on_key_pressed), self);
  g_signal_connect_swapped (key, "key-released", G_CALLBACK (on_key_released), self);
  g_signal_connect_swapped (own_key, "key-pressed", G_CALLBACK (on_canvas_key), self);
  gtk_event_controller_set_propagation_phase (key, GTK_PHASE_CAPTURE);
  gtk_widget_add_controller (GTK_WIDGET (self), scroll);
  gtk_widget_add_controller (GTK_WIDGET (self), motion);
  gtk_widget_add_controller (GTK_WIDGET (self), key);
  gtk_widget_add_controller (GTK_WIDGET (self), own_key);
}
