/* SPDX-License-Identifier: MIT */
#include "sw-canvas-private.h"

#include <glib/gi18n.h>
#include <math.h>

#include "canvas-paint.h"
#include "point-words.h"

/* Pixels to a figure's millimetre at the usual text size: its 2.5 mm text is 12 px. */
#define USUAL_PX_PER_MM 4.8
/* Larger text is followed this far in a small canvas, and as far as it has room. */
#define SMALL_CANVAS_TEXT 1.35
#define ROOM_WIDTH_PX 420.0
#define ROOM_HEIGHT_PX 320.0
#define USUAL_FONT_PX (10.0 * 96.0 / 72.0)

/* Pointer and arrows move by a round step of at least this. */
#define STEP_PX 3.0

#define HOVER_ALPHA 0.45

G_DEFINE_FINAL_TYPE (SwCanvas, sw_canvas, GTK_TYPE_WIDGET)

static double
largest_text (SwCanvas *self)
{
  return fmax (SMALL_CANVAS_TEXT, fmin (self->viewport.width_px / ROOM_WIDTH_PX,
                                        self->viewport.height_px / ROOM_HEIGHT_PX));
}

/* Larger text of the desktop enlarges the drawing's text and marks too, as far as they
 * leave room. */
double
sw_canvas_px_per_mm (SwCanvas *self)
{
  PangoContext *context = gtk_widget_get_pango_context (GTK_WIDGET (self));
  const PangoFontDescription *font = pango_context_get_font_description (context);
  double size = pango_font_description_get_size (font) / (double) PANGO_SCALE;

  if (!pango_font_description_get_size_is_absolute (font))
    size *= pango_cairo_context_get_resolution (context) / 72.0;
  return USUAL_PX_PER_MM
         * (size > 0.0 ? fmin (size / USUAL_FONT_PX, largest_text (self)) : 1.0);
}

double
sw_canvas_px_per_m (SwCanvas *self)
{
  return self->viewport.px_per_m;
}

SwPoint
sw_canvas_to_px (SwCanvas *self, SwPoint world)
{
  return sw_viewport_to_px (&self->viewport, world);
}

double
sw_canvas_step_m (SwCanvas *self)
{
  return sw_viewport_step_m (&self->viewport, sw_stage_job (self->stage)->units, STEP_PX);
}

static SwInsets
insets (SwCanvas *self)
{
  double px_per_mm = sw_canvas_px_per_mm (self);

  return (SwInsets){ self->kind->left_mm * px_per_mm, self->kind->right_mm * px_per_mm,
                     self->kind->top_mm * px_per_mm, self->kind->bottom_mm * px_per_mm };
}

static SwBox
shown_box (SwCanvas *self)
{
  return self->kind->box (sw_stage_result (self->stage),
                          sw_stage_face_index (self->stage));
}

static void
drop_figure (SwCanvas *self)
{
  g_clear_pointer (&self->figure, sw_figure_free);
  gtk_widget_queue_draw (GTK_WIDGET (self));
}

void
sw_canvas_view_changed (SwCanvas *self, gboolean by_user)
{
  if (by_user)
    self->auto_fit = FALSE;
  drop_figure (self);
  gtk_widget_queue_allocate (GTK_WIDGET (self));
}

void
sw_canvas_fit (SwCanvas *self)
{
  self->auto_fit = TRUE;
  if (self->stage == NULL || self->viewport.width_px <= 0.0)
    return;
  sw_viewport_fit (&self->viewport, shown_box (self), insets (self));
  sw_canvas_view_changed (self, FALSE);
}

void
sw_canvas_zoom (SwCanvas *self, double factor)
{
  sw_viewport_zoom (
      &self->viewport, factor,
      (SwPoint){ self->viewport.width_px / 2.0, self->viewport.height_px / 2.0 });
  sw_canvas_view_changed (self, TRUE);
}

void
sw_canvas_set_stretch (SwCanvas *self, double stretch)
{
  g_return_if_fail (self->kind->y_up && stretch >= 1.0);

  self->viewport.y_stretch = stretch;
  sw_canvas_fit (self);
}

/* The view stands still while a point is dragged; afterwards it follows. */
static void
refit_if_needed (SwCanvas *self)
{
  SwBox box = shown_box (self);
  SwViewport fitted = self->viewport;

  if (!self->auto_fit || self->dragged >= 0 || self->viewport.width_px <= 0.0)
    return;
  sw_viewport_fit (&fitted, box, insets (self));
  if (!sw_viewport_shows (&self->viewport, box, insets (self))
      || fitted.px_per_m > 1.35 * self->viewport.px_per_m)
    self->viewport = fitted;
}

SwSpot
sw_canvas_spot (SwCanvas *self, guint index)
{
  return g_array_index (self->spots, SwSpot, index);
}

SwPoint
sw_canvas_point_px (SwCanvas *self, SwPoint point)
{
  return sw_viewport_to_px (
      &self->viewport,
      sw_canvas_kind_lay (self->kind, sw_stage_face (self->stage), point));
}

SwPoint
sw_canvas_point_under (SwCanvas *self, SwPoint px)
{
  return sw_canvas_kind_lift (self->kind, sw_stage_face (self->stage),
                              sw_viewport_to_world (&self->viewport, px));
}

SwPoint
sw_canvas_spot_px (SwCanvas *self, SwSpot spot)
{
  return sw_canvas_point_px (
      self, sw_points_get (sw_stage_face (self->stage), spot.list, spot.index));
}

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

static void
match_handles (SwCanvas *self)
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

static void
describe (SwCanvas *self)
{
  g_autofree char *text =
      sw_face_description (sw_stage_face (self->stage), sw_stage_style (self->stage));

  gtk_accessible_update_property (GTK_ACCESSIBLE (self),
                                  GTK_ACCESSIBLE_PROPERTY_DESCRIPTION, text, -1);
}

static gboolean
is_selected (SwCanvas *self, SwSpot spot)
{
  SwPointList shown = sw_stage_list (self->stage, self->kind->y_up);

  return sw_points_same (spot.list, shown)
         && sw_stage_selected (self->stage, spot.list) == spot.index;
}

static void
on_selected (SwCanvas *self)
{
  for (guint i = 0; i < self->handles->len; i++)
    sw_handle_set_selected (g_ptr_array_index (self->handles, i),
                            is_selected (self, sw_canvas_spot (self, i)));
}

static void
on_stage_changed (SwCanvas *self)
{
  match_handles (self);
  sw_canvas_match_marks (self);
  describe (self);
  on_selected (self);
  refit_if_needed (self);
  sw_canvas_view_changed (self, FALSE);
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
sw_canvas_set_stage (SwCanvas *self, SwStage *stage)
{
  g_return_if_fail (self->stage == NULL && SW_IS_STAGE (stage));

  self->stage = g_object_ref (stage);
  g_signal_connect_object (stage, "changed", G_CALLBACK (on_stage_changed), self,
                           G_CONNECT_SWAPPED);
  g_signal_connect_object (stage, "selected", G_CALLBACK (on_selected), self,
                           G_CONNECT_SWAPPED);
  g_signal_connect_object (stage, "marked", G_CALLBACK (gtk_widget_queue_draw), self,
                           G_CONNECT_SWAPPED);
  g_signal_connect_object (stage, "hovered", G_CALLBACK (gtk_widget_queue_draw), self,
                           G_CONNECT_SWAPPED);
  g_signal_connect_object (stage, "pointed", G_CALLBACK (gtk_widget_queue_draw), self,
                           G_CONNECT_SWAPPED);
  on_stage_changed (self);
}

static void
sw_canvas_measure (GtkWidget *widget, GtkOrientation orientation, int for_size,
                   int *least, int *natural, int *least_base, int *natural_base)
{
  *least = orientation == GTK_ORIENTATION_HORIZONTAL ? 240 : 120;
  *natural = orientation == GTK_ORIENTATION_HORIZONTAL ? 480 : 260;
}

static void
place_handles (SwCanvas *self)
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

static void
sw_canvas_size_allocate (GtkWidget *widget, int width, int height, int baseline)
{
  SwCanvas *self = SW_CANVAS (widget);
  gboolean resized = fabs (self->viewport.width_px - width) > 0.5
                     || fabs (self->viewport.height_px - height) > 0.5;

  if (self->stage == NULL)
    return;
  if (resized)
    {
      self->viewport.width_px = width;
      self->viewport.height_px = height;
      g_clear_pointer (&self->figure, sw_figure_free);
      if (self->auto_fit)
        sw_viewport_fit (&self->viewport, shown_box (self), insets (self));
    }
  place_handles (self);
  sw_canvas_place_marks (self);
  if (self->popover != NULL)
    gtk_popover_present (GTK_POPOVER (self->popover));
  if (self->adder != NULL)
    gtk_popover_present (GTK_POPOVER (self->adder));
}

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

static void
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
  sw_canvas_paint_pointed (self, &paint);
  sw_canvas_paint_measured (self, &paint);
  cairo_destroy (paint.cr);
  for (guint i = 0; i < self->marks->len; i++)
    gtk_widget_snapshot_child (widget, g_ptr_array_index (self->marks, i), snapshot);
  for (guint i = 0; i < self->handles->len; i++)
    gtk_widget_snapshot_child (widget, g_ptr_array_index (self->handles, i), snapshot);
  gtk_snapshot_pop (snapshot);
}

static void
sw_canvas_system_setting_changed (GtkWidget *widget, GtkSystemSetting setting)
{
  SwCanvas *self = SW_CANVAS (widget);

  GTK_WIDGET_CLASS (sw_canvas_parent_class)->system_setting_changed (widget, setting);
  if (setting != GTK_SYSTEM_SETTING_DPI && setting != GTK_SYSTEM_SETTING_FONT_NAME)
    return;
  if (self->auto_fit)
    sw_canvas_fit (self);
  else
    sw_canvas_view_changed (self, FALSE);
}

/* An open popover would keep the canvas it belongs to alive. */
static void
sw_canvas_unroot (GtkWidget *widget)
{
  SwCanvas *self = SW_CANVAS (widget);

  if (self->popover != NULL)
    gtk_popover_popdown (GTK_POPOVER (self->popover));
  g_clear_pointer (&self->popover, gtk_widget_unparent);
  if (self->adder != NULL)
    gtk_popover_popdown (GTK_POPOVER (self->adder));
  g_clear_pointer (&self->adder, gtk_widget_unparent);
  GTK_WIDGET_CLASS (sw_canvas_parent_class)->unroot (widget);
}

static void
sw_canvas_dispose (GObject *object)
{
  SwCanvas *self = SW_CANVAS (object);

  while (self->handles->len > 0)
    {
      gtk_widget_unparent (g_ptr_array_index (self->handles, self->handles->len - 1));
      g_ptr_array_set_size (self->handles, (int) self->handles->len - 1);
    }
  sw_canvas_drop_marks (self);
  g_clear_pointer (&self->popover, gtk_widget_unparent);
  g_clear_pointer (&self->adder, gtk_widget_unparent);
  g_clear_pointer (&self->figure, sw_figure_free);
  g_clear_object (&self->stage);
  G_OBJECT_CLASS (sw_canvas_parent_class)->dispose (object);
}

static void
sw_canvas_finalize (GObject *object)
{
  g_ptr_array_unref (SW_CANVAS (object)->handles);
  g_ptr_array_unref (SW_CANVAS (object)->marks);
  g_array_unref (SW_CANVAS (object)->spots);
  G_OBJECT_CLASS (sw_canvas_parent_class)->finalize (object);
}

static void
sw_canvas_class_init (SwCanvasClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = sw_canvas_dispose;
  G_OBJECT_CLASS (klass)->finalize = sw_canvas_finalize;
  widget_class->measure = sw_canvas_measure;
  widget_class->size_allocate = sw_canvas_size_allocate;
  widget_class->snapshot = sw_canvas_snapshot;
  widget_class->system_setting_changed = sw_canvas_system_setting_changed;
  widget_class->unroot = sw_canvas_unroot;
  gtk_widget_class_set_css_name (widget_class, "canvas");
  gtk_widget_class_set_accessible_role (widget_class, GTK_ACCESSIBLE_ROLE_LIST);
}

static void
sw_canvas_init (SwCanvas *self)
{
  self->handles = g_ptr_array_new ();
  self->marks = g_ptr_array_new ();
  self->spots = g_array_new (FALSE, FALSE, sizeof (SwSpot));
  self->dragged = -1;
  self->auto_fit = TRUE;
  gtk_widget_set_overflow (GTK_WIDGET (self), GTK_OVERFLOW_HIDDEN);
  gtk_widget_set_focusable (GTK_WIDGET (self), TRUE);
  gtk_widget_set_hexpand (GTK_WIDGET (self), TRUE);
  gtk_widget_set_vexpand (GTK_WIDGET (self), TRUE);
}

GtkWidget *
sw_canvas_new (SwCanvasView view)
{
  SwCanvas *self = g_object_new (SW_TYPE_CANVAS, NULL);

  self->kind = sw_canvas_kind (view);
  self->viewport.y_up = self->kind->y_up;
  gtk_accessible_update_property (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_LABEL,
                                  _ (self->kind->title), -1);
  sw_canvas_add_drags (self);
  sw_canvas_add_clicks (self);
  sw_canvas_add_looking (self);
  return GTK_WIDGET (self);
}
