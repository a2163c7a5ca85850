/* SPDX-License-Identifier: MIT */
#include "sw-canvas-private.h"

#include <glib/gi18n.h>
#include <math.h>

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

static void
describe (SwCanvas *self)
{
  g_autofree char *text =
      sw_face_description (sw_stage_face (self->stage), sw_stage_style (self->stage));

  gtk_accessible_update_property (GTK_ACCESSIBLE (self),
                                  GTK_ACCESSIBLE_PROPERTY_DESCRIPTION, text, -1);
}

static void
on_stage_changed (SwCanvas *self)
{
  sw_canvas_match_handles (self);
  sw_canvas_match_marks (self);
  describe (self);
  sw_canvas_show_selected (self);
  refit_if_needed (self);
  sw_canvas_view_changed (self, FALSE);
}

void
sw_canvas_set_stage (SwCanvas *self, SwStage *stage)
{
  g_return_if_fail (self->stage == NULL && SW_IS_STAGE (stage));

  self->stage = g_object_ref (stage);
  g_signal_connect_object (stage, "changed", G_CALLBACK (on_stage_changed), self,
                           G_CONNECT_SWAPPED);
  g_signal_connect_object (stage, "selected", G_CALLBACK (sw_canvas_show_selected), self,
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
  sw_canvas_place_handles (self);
  sw_canvas_place_marks (self);
  if (self->popover != NULL)
    gtk_popover_present (GTK_POPOVER (self->popover));
  if (self->adder != NULL)
    gtk_popover_present (GTK_POPOVER (self->adder));
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
    {
      g_signal_handlers_disconnect_by_data (self->popover, self);
      gtk_popover_popdown (GTK_POPOVER (self->popover));
    }
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
