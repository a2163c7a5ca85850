/* SPDX-License-Identifier: MIT */
#include "canvas-paint.h"

#include <math.h>
#include <string.h>

#define GRID_PX 48.0
#define GRID_ALPHA 0.10
#define GRIP_PX 7.0
#define NEAR_PX 5.0

SwTheme
sw_canvas_theme (GtkWidget *widget)
{
  GdkRGBA text;

  gtk_style_context_get_color (gtk_widget_get_style_context (widget), &text);
  return 0.3f * text.red + 0.59f * text.green + 0.11f * text.blue > 0.5f ? SW_THEME_DARK
                                                                         : SW_THEME_LIGHT;
}

static SwColour
line_of (const SwCanvasPaint *paint, SwRole role)
{
  const SwLook *look = &paint->palette->looks[role];

  return paint->theme == SW_THEME_DARK ? look->line_dark : look->line;
}

/* The colour behind knocked-out labels is the colour of the canvas. */
void
sw_canvas_paint_ground (SwCanvasPaint *paint)
{
  const SwLook *look = &paint->palette->looks[SW_ROLE_WHITE];
  SwColour colour = paint->theme == SW_THEME_DARK ? look->fill_dark : look->fill;

  cairo_set_source_rgb (paint->cr, colour.red, colour.green, colour.blue);
  cairo_paint (paint->cr);
}

static void
grid_lines (SwCanvasPaint *paint, double step_m, gboolean upright)
{
  const SwViewport *viewport = paint->viewport;
  double step_px =
      step_m * (upright ? viewport->px_per_m : sw_viewport_y_px_per_m (viewport));
  double origin_px = upright ? viewport->x_px : viewport->y_px;
  double across_px = upright ? viewport->width_px : viewport->height_px;
  double along_px = upright ? viewport->height_px : viewport->width_px;

  for (double at = fmod (origin_px, step_px); at < across_px; at += step_px)
    {
      double crisp = floor (at) + 0.5;

      cairo_move_to (paint->cr, upright ? crisp : 0.0, upright ? 0.0 : crisp);
      cairo_line_to (paint->cr, upright ? crisp : along_px, upright ? along_px : crisp);
    }
}

void
sw_canvas_paint_grid (SwCanvasPaint *paint, SwUnitSystem units)
{
  double step_m = sw_viewport_step_m (paint->viewport, units, GRID_PX);
  SwColour colour = line_of (paint, SW_ROLE_TEXT);

  cairo_set_source_rgba (paint->cr, colour.red, colour.green, colour.blue, GRID_ALPHA);
  cairo_set_line_width (paint->cr, 1.0);
  grid_lines (paint, step_m, TRUE);
  grid_lines (paint, step_m, FALSE);
  cairo_stroke (paint->cr);
}

void
sw_canvas_paint_figure (SwCanvasPaint *paint, const SwFigure *figure)
{
  cairo_save (paint->cr);
  cairo_scale (paint->cr, paint->px_per_mm, paint->px_per_mm);
  sw_paint_cairo (figure, paint->cr, paint->palette, paint->theme);
  cairo_restore (paint->cr);
}

void
sw_canvas_paint_marked (SwCanvasPaint *paint, const SwFigure *figure, const char *object)
{
  g_autoptr (SwFigure) marks = NULL;

  if (object == NULL)
    return;
  marks = sw_figure_new (figure->width_mm, figure->height_mm);
  for (guint i = 0; i < figure->items->len; i++)
    {
      const SwItem *item = &g_array_index (figure->items, SwItem, i);
      const SwPaperPoint *points = sw_figure_item_points (figure, item);

      if (g_strcmp0 (item->object, object) != 0)
        continue;
      if (item->kind == SW_ITEM_AREA)
        sw_figure_area (marks, SW_ROLE_HIGHLIGHT, points, item->n_points);
      else if (item->kind == SW_ITEM_LINE)
        sw_figure_line (marks, SW_ROLE_HIGHLIGHT, points, item->n_points);
    }
  sw_canvas_paint_figure (paint, marks);
}

void
sw_canvas_paint_path (SwCanvasPaint *paint, const SwPoint *path, guint count)
{
  SwColour colour = line_of (paint, SW_ROLE_HIGHLIGHT);
  static const double dash[] = { 4.0, 4.0 };

  cairo_set_source_rgba (paint->cr, colour.red, colour.green, colour.blue, 0.8);
  cairo_set_line_width (paint->cr, 1.0);
  cairo_set_dash (paint->cr, dash, G_N_ELEMENTS (dash), 0.0);
  for (guint i = 0; i < count; i++)
    cairo_line_to (paint->cr, path[i].x_m, path[i].y_m);
  cairo_stroke (paint->cr);
  cairo_set_dash (paint->cr, NULL, 0, 0.0);
}

void
sw_canvas_paint_line (SwCanvasPaint *paint, double at_m, gboolean upright)
{
  const SwViewport *viewport = paint->viewport;
  SwPoint px = sw_viewport_to_px (viewport, (SwPoint){ at_m, at_m });
  SwPoint ends[] = { { upright ? px.x_m : 0.0, upright ? 0.0 : px.y_m },
                     { upright ? px.x_m : viewport->width_px,
                       upright ? viewport->height_px : px.y_m } };

  sw_canvas_paint_path (paint, ends, G_N_ELEMENTS (ends));
}

void
sw_canvas_paint_grip (SwCanvasPaint *paint, SwPoint px, gboolean whole)
{
  const SwLook *look = &paint->palette->looks[SW_ROLE_HANDLE];
  gboolean dark = paint->theme == SW_THEME_DARK;
  SwColour fill = dark ? look->fill_dark : look->fill;
  SwColour line = line_of (paint, SW_ROLE_HANDLE);

  cairo_new_sub_path (paint->cr);
  if (whole) /* a diamond, so that it is told from a corner without colour */
    {
      cairo_move_to (paint->cr, px.x_m - GRIP_PX, px.y_m);
      cairo_line_to (paint->cr, px.x_m, px.y_m - GRIP_PX);
      cairo_line_to (paint->cr, px.x_m + GRIP_PX, px.y_m);
      cairo_line_to (paint->cr, px.x_m, px.y_m + GRIP_PX);
      cairo_close_path (paint->cr);
    }
  else
    cairo_arc (paint->cr, px.x_m, px.y_m, GRIP_PX * 0.75, 0.0, 2.0 * G_PI);
  cairo_set_source_rgb (paint->cr, fill.red, fill.green, fill.blue);
  cairo_fill_preserve (paint->cr);
  cairo_set_source_rgb (paint->cr, line.red, line.green, line.blue);
  cairo_set_line_width (paint->cr, 1.5);
  cairo_stroke (paint->cr);
}

void
sw_canvas_paint_tape (SwCanvasPaint *paint, SwPoint from, SwPoint to)
{
  SwColour colour = line_of (paint, SW_ROLE_HIGHLIGHT);

  cairo_set_source_rgb (paint->cr, colour.red, colour.green, colour.blue);
  cairo_set_line_width (paint->cr, 2.0);
  cairo_move_to (paint->cr, from.x_m, from.y_m);
  cairo_line_to (paint->cr, to.x_m, to.y_m);
  cairo_stroke (paint->cr);
  for (int end = 0; end < 2; end++)
    {
      SwPoint at = end ? to : from;

      cairo_arc (paint->cr, at.x_m, at.y_m, 4.0, 0.0, 2.0 * G_PI);
      cairo_fill (paint->cr);
    }
}

static gboolean
area_holds (const SwPaperPoint *p, guint count, double x, double y)
{
  gboolean inside = FALSE;

  for (guint i = 0, j = count - 1; i < count; j = i++)
    if ((p[i].y_mm > y) != (p[j].y_mm > y)
        && x < (p[j].x_mm - p[i].x_mm) * (y - p[i].y_mm) / (p[j].y_mm - p[i].y_mm)
                   + p[i].x_mm)
      inside = !inside;
  return inside;
}

/* Lines of dimensions and edges are no things to point at. */
static gboolean
line_is_near (const SwItem *item, const SwPaperPoint *p, double x, double y,
              double reach_mm)
{
  if (strstr (item->object, "/trench/") == NULL
      && strstr (item->object, "/zone/") == NULL)
    return FALSE;
  for (guint i = 1; i < item->n_points; i++)
    {
      double dx = p[i].x_mm - p[i - 1].x_mm, dy = p[i].y_mm - p[i - 1].y_mm;
      double square = fmax (dx * dx + dy * dy, 1e-9);
      double t = ((x - p[i - 1].x_mm) * dx + (y - p[i - 1].y_mm) * dy) / square;

      t = CLAMP (t, 0.0, 1.0);
      if (hypot (p[i - 1].x_mm + t * dx - x, p[i - 1].y_mm + t * dy - y) <= reach_mm)
        return TRUE;
    }
  return FALSE;
}

static gboolean
item_is_at (const SwFigure *figure, const SwItem *item, double x, double y,
            double reach_mm)
{
  const SwPaperPoint *points = sw_figure_item_points (figure, item);

  if (item->object == NULL || *item->object == '\0')
    return FALSE;
  if (item->kind == SW_ITEM_AREA)
    return area_holds (points, item->n_points, x, y);
  return item->kind == SW_ITEM_LINE && line_is_near (item, points, x, y, reach_mm);
}

const char *
sw_canvas_object_at (const SwFigure *figure, double px_per_mm, double x_px, double y_px)
{
  double x = x_px / px_per_mm, y = y_px / px_per_mm, reach_mm = NEAR_PX / px_per_mm;

  for (guint i = figure->items->len; i > 0; i--)
    {
      const SwItem *item = &g_array_index (figure->items, SwItem, i - 1);

      if (item_is_at (figure, item, x, y, reach_mm))
        return item->object;
    }
  return "";
}
