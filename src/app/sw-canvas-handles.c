/* SPDX-License-Identifier: MIT */
#include "sw-canvas-private.h"

#include "point-words.h"

static SwSpot
spot_of (SwCanvas *self, SwHandle *handle)
{
  guint index = 0;

  g_ptr_array_find (self->handles, handle, &index);
  return sw_canvas_spot (self, index);
}

static void
on_nudge (SwHandle *handle, double dx, double dy, SwCanvas *self)
{
  sw_canvas_nudge (self, spot_of (self, handle), dx, dy);
}

static void
on_edit (SwHandle *handle, SwCanvas *self)
{
  sw_canvas_edit_point (self, spot_of (self, handle));
}

/* What is typed goes before what the pointer is at. */
static void
on_type (SwHandle *handle, const char *typed, SwCanvas *self)
{
  sw_canvas_cancel_drag (self);
  sw_canvas_edit_point (self, spot_of (self, handle));
  sw_point_popover_type (SW_POINT_POPOVER (self->popover), typed);
}

static void
on_add (SwHandle *handle, SwCanvas *self)
{
  sw_canvas_add_point (self, spot_of (self, handle), NULL);
}

static void
on_remove (SwHandle *handle, SwCanvas *self)
{
  sw_canvas_remove (self, spot_of (self, handle));
}

static void
on_cancel (SwHandle *handle, SwCanvas *self)
{
  if (!sw_canvas_cancel_drag (self))
    sw_stage_select (self->stage, sw_stage_list (self->stage, self->kind->y_up), -1);
}

static void
on_measure (SwHandle *handle, SwCanvas *self)
{
  SwSpot spot = spot_of (self, handle);

  sw_canvas_measure_at (
      self, sw_viewport_to_world (&self->viewport, sw_canvas_spot_px (self, spot)));
}

static void
on_step (SwHandle *handle, int step, SwCanvas *self)
{
  int last = (int) self->handles->len - 1;
  guint index = 0;

  g_ptr_array_find (self->handles, handle, &index);
  index = (guint) CLAMP ((int) index + step, 0, last);
  gtk_widget_grab_focus (g_ptr_array_index (self->handles, index));
}

static void
on_handle_focused (GtkEventController *controller, SwCanvas *self)
{
  SwHandle *handle = SW_HANDLE (gtk_event_controller_get_widget (controller));
  SwSpot spot = spot_of (self, handle);

  sw_stage_select (self->stage, spot.list, spot.index);
}

static GtkWidget *
make_handle (SwCanvas *self)
{
  GtkWidget *handle = sw_handle_new ();
  GtkEventController *focus = gtk_event_controller_focus_new ();

  g_signal_connect (handle, "nudge", G_CALLBACK (on_nudge), self);
  g_signal_connect (handle, "edit", G_CALLBACK (on_edit), self);
  g_signal_connect (handle, "type", G_CALLBACK (on_type), self);
  g_signal_connect (handle, "add", G_CALLBACK (on_add), self);
  g_signal_connect (handle, "remove", G_CALLBACK (on_remove), self);
  g_signal_connect (handle, "cancel", G_CALLBACK (on_cancel), self);
  g_signal_connect (handle, "measure", G_CALLBACK (on_measure), self);
  g_signal_connect (handle, "step", G_CALLBACK (on_step), self);
  g_signal_connect (focus, "enter", G_CALLBACK (on_handle_focused), self);
  gtk_widget_add_controller (handle, focus);
  gtk_widget_set_parent (handle, GTK_WIDGET (self));
  return handle;
}

static void
add_points (SwCanvas *self, SwPointList list)
{
  guint count = sw_points_count (sw_stage_face (self->stage), list);

  for (guint i = 0; i < count; i++)
    g_array_append_val (self->spots, ((SwSpot){ list, (int) i }));
}

static void
add_wholes (SwCanvas *self, SwListKind kind)
{
  for (SwPointList list = { kind, 0 };
       sw_points_exist (sw_stage_face (self->stage), list); list.which++)
    g_array_append_val (self->spots, ((SwSpot){ list, SW_WHOLE }));
}

/* The points of a shape stand at the end: choosing it leaves all other handles alone. */
static void
find_spots (SwCanvas *self)
{
  SwPointList shown = sw_stage_list (self->stage, self->kind->y_up);

  g_array_set_size (self->spots, 0);
  if (!self->kind->has_points)
    return;
  add_points (self, self->kind->y_up ? shown : SW_POINTS_OUTLINE);
  if (self->kind->y_up)
    return;
  add_wholes (self, SW_LIST_OBSTACLE);
  add_wholes (self, SW_LIST_ZONE);
  if (sw_points_is_shape (shown))
    add_points (self, shown);
}

static void
describe_handle (SwCanvas *self, guint index)
{
  const SwFace *face = sw_stage_face (self->stage);
  SwSpot spot = sw_canvas_spot (self, index);
  g_autofree char *label = sw_point_label (face, spot.list, spot.index);
  g_autofree char *text =
      sw_point_description (face, spot.list, spot.index, sw_stage_style (self->stage));

  sw_handle_describe (g_ptr_array_index (self->handles, index), label, text);
}

void
sw_canvas_match_handles (SwCanvas *self)
{
  find_spots (self);
  while (self->handles->len > self->spots->len)
    {
      gtk_widget_unparent (g_ptr_array_index (self->handles, self->handles->len - 1));
      g_ptr_array_set_size (self->handles, (int) self->handles->len - 1);
    }
  while (self->handles->len < self->spots->len)
    g_ptr_array_add (self->handles, make_handle (self));
  for (guint i = 0; i < self->spots->len; i++)
    describe_handle (self, i);
}

static gboolean
is_selected (SwCanvas *self, SwSpot spot)
{
  SwPointList shown = sw_stage_list (self->stage, self->kind->y_up);

  return sw_points_same (spot.list, shown)
         && sw_stage_selected (self->stage, spot.list) == spot.index;
}

void
sw_canvas_show_selected (SwCanvas *self)
{
  for (guint i = 0; i < self->handles->len; i++)
    sw_handle_set_selected (g_ptr_array_index (self->handles, i),
                            is_selected (self, sw_canvas_spot (self, i)));
}

void
sw_canvas_focus_spot (SwCanvas *self, SwSpot spot)
{
  sw_stage_show_list (self->stage, spot.list);
  for (guint i = 0; i < self->handles->len; i++)
    {
      SwSpot of_handle = sw_canvas_spot (self, i);

      if (sw_points_same (of_handle.list, spot.list) && of_handle.index == spot.index)
        gtk_widget_grab_focus (g_ptr_array_index (self->handles, i));
    }
}

void
sw_canvas_place_handles (SwCanvas *self)
{
  for (guint i = 0; i < self->handles->len; i++)
    {
      GtkWidget *handle = g_ptr_array_index (self->handles, i);
      SwPoint at = sw_canvas_spot_px (self, sw_canvas_spot (self, i));
      graphene_point_t corner = GRAPHENE_POINT_INIT (
          (float) (at.x_m - SW_HANDLE_PX / 2.0), (float) (at.y_m - SW_HANDLE_PX / 2.0));

      gtk_widget_allocate (handle, SW_HANDLE_PX, SW_HANDLE_PX, -1,
                           gsk_transform_translate (NULL, &corner));
    }
}
