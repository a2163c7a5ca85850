/* SPDX-License-Identifier: MIT */
#include "sw-page-view.h"

#include <math.h>
#include <slopewright/paint/paint.h>

#include "canvas-paint.h"

struct _SwPageView
{
  GtkWidget parent_instance;
  const SwStock *stock;
  GPtrArray *pages;
  guint index;
  int natural_px;
  double px_per_mm; /* 0: as large as the room allows */
  gboolean follows_style;
};

G_DEFINE_FINAL_TYPE (SwPageView, sw_page_view, GTK_TYPE_WIDGET)

/* Before there is a page, room for an A4 one. */
#define EMPTY_RATIO 1.414

static const SwFigure *
page_of (SwPageView *self)
{
  return self->pages != NULL ? g_ptr_array_index (self->pages, self->index) : NULL;
}

static double
ratio (SwPageView *self)
{
  const SwFigure *page = page_of (self);

  return page != NULL ? page->height_mm / page->width_mm : EMPTY_RATIO;
}

static GtkSizeRequestMode
sw_page_view_get_request_mode (GtkWidget *widget)
{
  return GTK_SIZE_REQUEST_HEIGHT_FOR_WIDTH;
}

static void
sw_page_view_measure (GtkWidget *widget, GtkOrientation orientation, int for_size,
                      int *least, int *natural, int *least_base, int *natural_base)
{
  SwPageView *self = SW_PAGE_VIEW (widget);
  const SwFigure *page = page_of (self);

  if (page != NULL && self->px_per_mm > 0.0)
    {
      double size_mm =
          orientation == GTK_ORIENTATION_HORIZONTAL ? page->width_mm : page->height_mm;
      *least = *natural = (int) ceil (size_mm * self->px_per_mm);
      return;
    }
  *least = 80;
  *natural = self->natural_px;
  if (orientation == GTK_ORIENTATION_HORIZONTAL)
    return;
  *natural = (int) (ratio (self) * (for_size > 0 ? for_size : self->natural_px));
  *least = for_size > 0 && self->natural_px < 200 ? *natural : 100;
}

/* Largest page that fits, in the middle. */
static graphene_rect_t
paper (SwPageView *self, double *px_per_mm)
{
  const SwFigure *page = page_of (self);
  double width = gtk_widget_get_width (GTK_WIDGET (self));
  double height = gtk_widget_get_height (GTK_WIDGET (self));

  *px_per_mm = self->px_per_mm > 0.0
                   ? self->px_per_mm
                   : MIN (width / page->width_mm, height / page->height_mm);
  return GRAPHENE_RECT_INIT ((float) ((width - page->width_mm * *px_per_mm) / 2.0),
                             (float) ((height - page->height_mm * *px_per_mm) / 2.0),
                             (float) (page->width_mm * *px_per_mm),
                             (float) (page->height_mm * *px_per_mm));
}

static void
sw_page_view_snapshot (GtkWidget *widget, GtkSnapshot *snapshot)
{
  SwPageView *self = SW_PAGE_VIEW (widget);
  const SwFigure *page = page_of (self);
  double px_per_mm;
  graphene_rect_t rect;
  SwCanvasPaint paint = { .palette = self->stock->palette,
                          .theme = self->follows_style ? sw_canvas_theme (widget)
                                                       : SW_THEME_PAPER };

  if (page == NULL)
    return;
  rect = paper (self, &px_per_mm);
  paint.cr = gtk_snapshot_append_cairo (snapshot, &rect);
  sw_canvas_paint_ground (&paint);
  cairo_translate (paint.cr, rect.origin.x, rect.origin.y);
  cairo_scale (paint.cr, px_per_mm, px_per_mm);
  sw_paint_cairo (page, paint.cr, paint.palette, paint.theme);
  cairo_destroy (paint.cr);
}

static void
sw_page_view_dispose (GObject *object)
{
  g_clear_pointer (&SW_PAGE_VIEW (object)->pages, g_ptr_array_unref);
  G_OBJECT_CLASS (sw_page_view_parent_class)->dispose (object);
}

static void
sw_page_view_class_init (SwPageViewClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = sw_page_view_dispose;
  widget_class->get_request_mode = sw_page_view_get_request_mode;
  widget_class->measure = sw_page_view_measure;
  widget_class->snapshot = sw_page_view_snapshot;
  gtk_widget_class_set_css_name (widget_class, "page");
  gtk_widget_class_set_accessible_role (widget_class, GTK_ACCESSIBLE_ROLE_IMG);
}

static void
sw_page_view_init (SwPageView *self)
{
}

GtkWidget *
sw_page_view_new (const SwStock *stock, int natural_px)
{
  SwPageView *self = g_object_new (SW_TYPE_PAGE_VIEW, NULL);

  self->stock = stock;
  self->natural_px = natural_px;
  return GTK_WIDGET (self);
}

void
sw_page_view_show (SwPageView *self, GPtrArray *pages, guint index)
{
  GPtrArray *old = self->pages;
  gboolean any = pages != NULL && index < pages->len;

  self->pages = any ? g_ptr_array_ref (pages) : NULL;
  self->index = index;
  g_clear_pointer (&old, g_ptr_array_unref);
  if (any && page_of (self)->title != NULL)
    gtk_accessible_update_property (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_LABEL,
                                    page_of (self)->title, -1);
  gtk_widget_queue_resize (GTK_WIDGET (self));
}

void
sw_page_view_set_scale (SwPageView *self, double px_per_mm)
{
  self->px_per_mm = px_per_mm;
  gtk_widget_queue_resize (GTK_WIDGET (self));
}

double
sw_page_view_scale (SwPageView *self)
{
  double px_per_mm = 0.0;

  if (page_of (self) != NULL)
    paper (self, &px_per_mm);
  return px_per_mm;
}

void
sw_page_view_follow_style (SwPageView *self)
{
  self->follows_style = TRUE;
  gtk_widget_queue_draw (GTK_WIDGET (self));
}
