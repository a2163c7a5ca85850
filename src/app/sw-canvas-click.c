/* SPDX-License-Identifier: MIT */
#include "sw-canvas-private.h"

#include <math.h>

#include "canvas-paint.h"
#include "point-words.h"

static void
on_pressed (GtkGestureClick *click, int presses, double x, double y, SwCanvas *self)
{
  SwPoint px = { x, y }, on;
  SwSpot before;
  int spot;

  if (presses != 2 || self->measuring || !self->kind->has_points)
    return;
  spot = sw_canvas_spot_under (self, px, SW_CANVAS_GRAB_PX);
  sw_canvas_cancel_drag (self);
  if (spot >= 0)
    sw_canvas_edit_point (self, sw_canvas_spot (self, (guint) spot));
  else if (sw_canvas_line_under (self, px, &before, &on))
    {
      SwPoint at = sw_canvas_point_under (self, on);
      sw_canvas_add_point (self, before, &at);
    }
}

static void
on_released (GtkGestureClick *click, int presses, double x, double y, SwCanvas *self)
{
  const char *object;
  SwPointList list;

  if (self->measuring && hypot (x - self->press.x_m, y - self->press.y_m) <= 4.0)
    {
      sw_canvas_measure_at (self, sw_canvas_place_under (self, (SwPoint){ x, y }));
      return;
    }
  if (presses != 1 || hypot (x - self->press.x_m, y - self->press.y_m) > 4.0
      || sw_canvas_spot_under (self, (SwPoint){ x, y }, SW_CANVAS_GRAB_PX) >= 0
      || self->figure == NULL)
    return;
  object = sw_canvas_object_at (self->figure, sw_canvas_px_per_mm (self), x, y);
  sw_stage_mark (self->stage, *object != '\0' ? object : NULL);
  if (sw_points_of_object (sw_stage_face (self->stage), object, &list))
    sw_stage_select (self->stage, list, SW_WHOLE);
}

static void
on_menu (GtkGestureClick *click, int presses, double x, double y, SwCanvas *self)
{
  int spot = sw_canvas_spot_under (self, (SwPoint){ x, y }, SW_CANVAS_GRAB_PX);

  if (spot >= 0)
    sw_canvas_edit_point (self, sw_canvas_spot (self, (guint) spot));
  else
    sw_canvas_ask_shape (self, SW_LIST_OBSTACLE,
                         sw_canvas_point_under (self, (SwPoint){ x, y }));
}

void
sw_canvas_add_clicks (SwCanvas *self)
{
  GtkGesture *click = gtk_gesture_click_new ();
  GtkGesture *menu = gtk_gesture_click_new ();

  gtk_gesture_single_set_button (GTK_GESTURE_SINGLE (click), GDK_BUTTON_PRIMARY);
  gtk_gesture_single_set_button (GTK_GESTURE_SINGLE (menu), GDK_BUTTON_SECONDARY);
  g_signal_connect (click, "pressed", G_CALLBACK (on_pressed), self);
  g_signal_connect (click, "released", G_CALLBACK (on_released), self);
  g_signal_connect (menu, "pressed", G_CALLBACK (on_menu), self);
  gtk_widget_add_controller (GTK_WIDGET (self), GTK_EVENT_CONTROLLER (click));
  gtk_widget_add_controller (GTK_WIDGET (self), GTK_EVENT_CONTROLLER (menu));
}
