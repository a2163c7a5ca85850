/* SPDX-License-Identifier: MIT */
#include "sw-laying-view.h"

#include <glib/gi18n.h>

#include "canvas-paint.h"

/* Pixels to a figure's millimetre at the usual text size: its 2.5 mm text is 12 px. */
#define USUAL_PX_PER_MM 4.8

/* Room round the face for notes and dimensions, as much as a face view on a canvas has. */
#define SIDE_MM 17.0
#define TOP_MM 15.0
#define BOTTOM_MM 13.0
#define CLOSE_MM 2.0

struct _SwLayingView
{
  GtkWidget parent_instance;
  const SwStock *stock;
  const SwResult *result;
  const SwLayingSequence *sequence;
  guint step;
  SwDraw draw;
  gboolean close;
  double text_scale;
  SwFigure *figure; /* NULL: to be drawn anew */
};

G_DEFINE_FINAL_TYPE (SwLayingView, sw_laying_view, GTK_TYPE_WIDGET)

static double
px_per_mm (SwLayingView *self)
{
  return USUAL_PX_PER_MM * self->text_scale;
}

static void
drop_figure (SwLayingView *self)
{
  g_clear_pointer (&self->figure, sw_figure_free);
  gtk_widget_queue_draw (GTK_WIDGET (self));
}

static SwInsets
insets (SwLayingView *self)
{
  double scale = px_per_mm (self);

  if (self->close)
    return (SwInsets){ CLOSE_MM * scale, CLOSE_MM * scale, CLOSE_MM * scale,
                       CLOSE_MM * scale };
  return (SwInsets){ SIDE_MM * scale, SIDE_MM * scale, TOP_MM * scale,
                     BOTTOM_MM * scale };
}

static void
ensure_figure (SwLayingView *self)
{
  SwViewport viewport = { .width_px = gtk_widget_get_width (GTK_WIDGET (self)),
                          .height_px = gtk_widget_get_height (GTK_WIDGET (self)) };
  SwView view;

  if (self->figure != NULL)
    return;
  sw_viewport_fit (
      &viewport,
      sw_laying_view_box (self->result, self->sequence, self->step, self->close),
      insets (self));
  view = sw_viewport_view (&viewport, px_per_mm (self));
  self->figure =
      sw_draw_laying_view (self->result, self->sequence, self->step, &view, &self->draw);
}

static void
sw_laying_view_snapshot (GtkWidget *widget, GtkSnapshot *snapshot)
{
  SwLayingView *self = SW_LAYING_VIEW (widget);
  graphene_rect_t bounds =
      GRAPHENE_RECT_INIT (0.0f, 0.0f, (float) gtk_widget_get_width (widget),
                          (float) gtk_widget_get_height (widget));
  SwCanvasPaint paint = { .palette = self->stock->palette,
                          .theme = sw_canvas_theme (widget),
                          .px_per_mm = px_per_mm (self) };

  if (self->result == NULL)
    return;
  ensure_figure (self);
  paint.cr = gtk_snapshot_append_cairo (snapshot, &bounds);
  sw_canvas_paint_ground (&paint);
  sw_canvas_paint_figure (&paint, self->figure);
  cairo_destroy (paint.cr);
}

static void
sw_laying_view_size_allocate (GtkWidget *widget, int width, int height, int baseline)
{
  drop_figure (SW_LAYING_VIEW (widget));
}

static void
sw_laying_view_measure (GtkWidget *widget, GtkOrientation orientation, int for_size,
                        int *least, int *natural, int *least_base, int *natural_base)
{
  *least = orientation == GTK_ORIENTATION_HORIZONTAL ? 160 : 150;
  *natural = orientation == GTK_ORIENTATION_HORIZONTAL ? 320 : 240;
}

static void
sw_laying_view_dispose (GObject *object)
{
  g_clear_pointer (&SW_LAYING_VIEW (object)->figure, sw_figure_free);
  G_OBJECT_CLASS (sw_laying_view_parent_class)->dispose (object);
}

static void
sw_laying_view_class_init (SwLayingViewClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = sw_laying_view_dispose;
  widget_class->snapshot = sw_laying_view_snapshot;
  widget_class->size_allocate = sw_laying_view_size_allocate;
  widget_class->measure = sw_laying_view_measure;
  gtk_widget_class_set_css_name (widget_class, "laying-view");
  gtk_widget_class_set_accessible_role (widget_class, GTK_ACCESSIBLE_ROLE_IMG);
}

static void
sw_laying_view_init (SwLayingView *self)
{
  self->text_scale = 1.0;
  gtk_widget_set_overflow (GTK_WIDGET (self), GTK_OVERFLOW_HIDDEN);
  gtk_widget_set_focusable (GTK_WIDGET (self), TRUE);
  gtk_widget_set_hexpand (GTK_WIDGET (self), TRUE);
  gtk_widget_set_vexpand (GTK_WIDGET (self), TRUE);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_LABEL,
                                  _ ("Face view at this step"), -1);
}

GtkWidget *
sw_laying_view_new (const SwStock *stock)
{
  SwLayingView *self = g_object_new (SW_TYPE_LAYING_VIEW, NULL);

  self->stock = stock;
  return GTK_WIDGET (self);
}

void
sw_laying_view_show (SwLayingView *self, const SwResult *result,
                     const SwLayingSequence *sequence, guint step, const SwDraw *draw)
{
  self->result = result;
  self->sequence = sequence;
  self->step = step;
  if (draw != NULL)
    self->draw = *draw;
  drop_figure (self);
}

void
sw_laying_view_set_close (SwLayingView *self, gboolean close)
{
  self->close = close;
  drop_figure (self);
}

gboolean
sw_laying_view_is_close (SwLayingView *self)
{
  return self->close;
}

void
sw_laying_view_set_text_scale (SwLayingView *self, double scale)
{
  self->text_scale = scale;
  drop_figure (self);
}

const SwFigure *
sw_laying_view_figure (SwLayingView *self)
{
  if (self->result != NULL && gtk_widget_get_width (GTK_WIDGET (self)) > 0)
    ensure_figure (self);
  return self->figure;
}
