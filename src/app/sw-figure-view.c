/* SPDX-License-Identifier: MIT */
#include "sw-figure-view.h"

#include "canvas-paint.h"

/* As on the canvas: text of 2.5 mm is 12 px. */
#define PX_PER_MM 4.8
#define LEAST_PX 200
#define PAD_PX 12.0

struct _SwFigureView
{
  GtkWidget parent_instance;
  SwFigure *figure;
  const SwPalette *palette;
};

G_DEFINE_FINAL_TYPE (SwFigureView, sw_figure_view, GTK_TYPE_WIDGET)

static GtkSizeRequestMode
sw_figure_view_get_request_mode (GtkWidget *widget)
{
  return GTK_SIZE_REQUEST_HEIGHT_FOR_WIDTH;
}

static double
px_per_mm (SwFigureView *self, double width_px)
{
  return MIN ((width_px - 2.0 * PAD_PX) / self->figure->width_mm, PX_PER_MM);
}

static void
sw_figure_view_measure (GtkWidget *widget, GtkOrientation orientation, int for_size,
                        int *least, int *natural, int *least_base, int *natural_base)
{
  SwFigureView *self = SW_FIGURE_VIEW (widget);
  double wide = PX_PER_MM * self->figure->width_mm + 2.0 * PAD_PX;
  double scale = px_per_mm (self, for_size > 0 ? for_size : wide);

  if (orientation == GTK_ORIENTATION_HORIZONTAL)
    {
      *natural = (int) wide;
      *least = MIN (*natural, LEAST_PX);
      return;
    }
  *natural = (int) (scale * self->figure->height_mm + 2.0 * PAD_PX);
  *least = *natural;
}

static void
sw_figure_view_snapshot (GtkWidget *widget, GtkSnapshot *snapshot)
{
  SwFigureView *self = SW_FIGURE_VIEW (widget);
  float width = (float) gtk_widget_get_width (widget);
  float height = (float) gtk_widget_get_height (widget);
  double scale = px_per_mm (self, width);
  SwCanvasPaint paint = { .palette = self->palette, .theme = sw_canvas_theme (widget) };

  paint.cr =
      gtk_snapshot_append_cairo (snapshot, &GRAPHENE_RECT_INIT (0, 0, width, height));
  sw_canvas_paint_ground (&paint);
  cairo_translate (paint.cr, PAD_PX, PAD_PX);
  cairo_scale (paint.cr, scale, scale);
  sw_paint_cairo (self->figure, paint.cr, paint.palette, paint.theme);
  cairo_destroy (paint.cr);
}

static void
sw_figure_view_finalize (GObject *object)
{
  sw_figure_free (SW_FIGURE_VIEW (object)->figure);
  G_OBJECT_CLASS (sw_figure_view_parent_class)->finalize (object);
}

static void
sw_figure_view_class_init (SwFigureViewClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->finalize = sw_figure_view_finalize;
  widget_class->get_request_mode = sw_figure_view_get_request_mode;
  widget_class->measure = sw_figure_view_measure;
  widget_class->snapshot = sw_figure_view_snapshot;
  gtk_widget_class_set_css_name (widget_class, "figure");
  gtk_widget_class_set_accessible_role (widget_class, GTK_ACCESSIBLE_ROLE_IMG);
}

static void
sw_figure_view_init (SwFigureView *self)
{
  gtk_widget_set_halign (GTK_WIDGET (self), GTK_ALIGN_START);
}

GtkWidget *
sw_figure_view_new (SwFigure *figure, const SwPalette *palette, const char *label)
{
  SwFigureView *self = g_object_new (SW_TYPE_FIGURE_VIEW, NULL);

  self->figure = figure;
  self->palette = palette;
  gtk_accessible_update_property (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_LABEL,
                                  label, -1);
  return GTK_WIDGET (self);
}
