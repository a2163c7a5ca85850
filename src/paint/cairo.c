/* SPDX-License-Identifier: MIT */
#include <math.h>

#include <slopewright/base/units.h>
#include <slopewright/figure/mark.h>

#include "face.h"
#include "ink.h"

/* One painting of one figure. */
typedef struct
{
  cairo_t *cr;
  const SwFigure *figure;
  const SwPalette *palette;
  const SwFaces *faces;
  SwTheme theme;
  double thinnest_mm; /* one device dot on screens, or thin lines fade there */
  guint clips;
  GArray *hatch; /* (element-type SwPaperPoint) */
} Canvas;

static SwColour
line_colour (const Canvas *canvas, const SwLook *look)
{
  return canvas->theme == SW_THEME_DARK ? look->line_dark : look->line;
}

static SwColour
fill_colour (const Canvas *canvas, const SwLook *look)
{
  return canvas->theme == SW_THEME_DARK ? look->fill_dark : look->fill;
}

static void
set_colour (cairo_t *cr, SwColour colour)
{
  cairo_set_source_rgba (cr, colour.red, colour.green, colour.blue, colour.alpha);
}

static void
set_pen (const Canvas *canvas, const SwLook *look)
{
  guint16 dash_pt[4];
  const guint count = sw_ink_dash_pt (look, dash_pt);
  double dash_mm[4];

  for (guint i = 0; i < count; i++)
    dash_mm[i] = dash_pt[i] / SW_PT_PER_MM;
  set_colour (canvas->cr, line_colour (canvas, look));
  cairo_set_line_width (canvas->cr, MAX (look->width_mm, canvas->thinnest_mm));
  cairo_set_dash (canvas->cr, dash_mm, (int) count, 0.0);
  cairo_set_line_cap (canvas->cr, count ? CAIRO_LINE_CAP_BUTT : CAIRO_LINE_CAP_ROUND);
}

static void
trace (cairo_t *cr, const SwPaperPoint *points, guint count)
{
  for (guint i = 0; i < count; i++)
    cairo_line_to (cr, points[i].x_mm, points[i].y_mm);
}

static void
paint_line (const Canvas *canvas, const SwLook *look, const SwPaperPoint *points,
            guint count)
{
  if (!sw_ink_strokes (look, line_colour (canvas, look)))
    return;
  set_pen (canvas, look);
  trace (canvas->cr, points, count);
  cairo_stroke (canvas->cr);
}

static void
paint_hatch (const Canvas *canvas, const SwLook *look, const SwPaperPoint *points,
             guint count)
{
  cairo_t *cr = canvas->cr;

  sw_mark_hatch (points, count, look->hatch_mm, canvas->figure->width_mm,
                 canvas->figure->height_mm, canvas->hatch);
  for (guint i = 0; i + 1 < canvas->hatch->len; i += 2)
    {
      const SwPaperPoint *ends = &g_array_index (canvas->hatch, SwPaperPoint, i);
      cairo_move_to (cr, ends[0].x_mm, ends[0].y_mm);
      cairo_line_to (cr, ends[1].x_mm, ends[1].y_mm);
    }
  set_colour (cr, line_colour (canvas, look));
  cairo_set_line_width (cr, MAX (look->hatch_width_mm, canvas->thinnest_mm));
  cairo_set_dash (cr, NULL, 0, 0.0);
  cairo_set_line_cap (cr, CAIRO_LINE_CAP_BUTT);
  cairo_stroke (cr);
}

static void
trace_closed (cairo_t *cr, const SwPaperPoint *points, guint count)
{
  trace (cr, points, count);
  cairo_close_path (cr);
}

static void
paint_area (const Canvas *canvas, const SwLook *look, const SwPaperPoint *points,
            guint count)
{
  const SwColour line = line_colour (canvas, look);
  const SwColour fill = fill_colour (canvas, look);

  if (sw_ink_fills (fill))
    {
      set_colour (canvas->cr, fill);
      trace_closed (canvas->cr, points, count);
      cairo_fill (canvas->cr);
    }
  if (sw_ink_hatches (look, line))
    paint_hatch (canvas, look, points, count);
  if (sw_ink_strokes (look, line))
    {
      set_pen (canvas, look);
      trace_closed (canvas->cr, points, count);
      cairo_stroke (canvas->cr);
    }
}

static void
paint_circle (const Canvas *canvas, const SwLook *look, SwPaperPoint centre,
              double radius_mm)
{
  const SwColour line = line_colour (canvas, look);
  const SwColour fill = fill_colour (canvas, look);

  /* From the left end over the top, as libharu does, so that dashes fall alike. */
  cairo_arc (canvas->cr, centre.x_mm, centre.y_mm, radius_mm, G_PI, 3.0 * G_PI);
  cairo_close_path (canvas->cr);
  if (sw_ink_fills (fill))
    {
      set_colour (canvas->cr, fill);
      cairo_fill_preserve (canvas->cr);
    }
  if (sw_ink_strokes (look, line))
    {
      set_pen (canvas, look);
      cairo_stroke_preserve (canvas->cr);
    }
  cairo_new_path (canvas->cr);
}

static void
paint_dots (const Canvas *canvas, guint first, guint count)
{
  const SwItem *items = &g_array_index (canvas->figure->items, SwItem, first);
  const SwLook *look = &canvas->palette->looks[items->role];
  const double width_mm = sw_ink_dot_width_mm (canvas->figure, first, look);

  set_pen (canvas, look);
  cairo_set_line_width (canvas->cr, MAX (width_mm, canvas->thinnest_mm));
  for (guint i = 0; i < count; i++)
    {
      const SwPaperPoint centre = *sw_figure_item_points (canvas->figure, &items[i]);
      cairo_move_to (canvas->cr, centre.x_mm, centre.y_mm);
      cairo_line_to (canvas->cr, centre.x_mm, centre.y_mm);
    }
  cairo_stroke (canvas->cr);
}

static void
paint_text (const Canvas *canvas, const SwLook *look, const SwItem *item, SwPaperPoint at)
{
  cairo_t *cr = canvas->cr;
  const double width_mm =
      item->size_mm * sw_faces_width (canvas->faces, item->typeface, item->text);
  const SwPaperPoint start = sw_ink_text_start (item, at, width_mm);
  cairo_matrix_t user;

  if (!*item->text || !(item->size_mm > 0.0))
    return;
  cairo_get_matrix (cr, &user);
  cairo_translate (cr, start.x_mm, start.y_mm);
  cairo_rotate (cr, -item->turn_rad);
  cairo_set_font_face (cr, canvas->faces->for_cairo[item->typeface]);
  cairo_set_font_size (cr, item->size_mm);
  set_colour (cr, line_colour (canvas, look));
  cairo_move_to (cr, 0.0, 0.0);
  cairo_show_text (cr, item->text);
  cairo_new_path (cr);
  cairo_set_matrix (cr, &user);
}

static void
begin_clip (Canvas *canvas, const SwPaperPoint *points, guint count)
{
  cairo_save (canvas->cr);
  canvas->clips++;
  trace_closed (canvas->cr, points, count);
  cairo_clip (canvas->cr);
}

static void
end_clip (Canvas *canvas)
{
  if (canvas->clips == 0)
    return;
  canvas->clips--;
  cairo_restore (canvas->cr);
}

static void
paint_item (Canvas *canvas, const SwItem *item)
{
  const SwLook *look = &canvas->palette->looks[item->role];
  const SwPaperPoint *points = sw_figure_item_points (canvas->figure, item);

  switch (item->kind)
    {
    case SW_ITEM_LINE:
      paint_line (canvas, look, points, item->n_points);
      break;
    case SW_ITEM_AREA:
      paint_area (canvas, look, points, item->n_points);
      break;
    case SW_ITEM_CIRCLE:
      paint_circle (canvas, look, points[0], points[1].x_mm);
      break;
    case SW_ITEM_TEXT:
      paint_text (canvas, look, item, points[0]);
      break;
    case SW_ITEM_CLIP:
      begin_clip (canvas, points, item->n_points);
      break;
    case SW_ITEM_UNCLIP:
      end_clip (canvas);
      break;
    case SW_ITEM_LINK:
    case SW_ITEM_TAG:
    case SW_ITEM_UNTAG:
      break;
    }
}

static void
paint_items (Canvas *canvas)
{
  const GArray *items = canvas->figure->items;

  for (guint i = 0; i < items->len;)
    {
      const SwItem *item = &g_array_index (items, SwItem, i);
      const SwLook *look = &canvas->palette->looks[item->role];
      const guint dots = sw_ink_dots (canvas->figure, i, look, line_colour (canvas, look),
                                      fill_colour (canvas, look));

      if (dots > 0)
        paint_dots (canvas, i, dots);
      else
        paint_item (canvas, item);
      i += MAX (dots, 1);
    }
}

/* Metrics and hinting off: widths then agree with the PDF to 0.1 %. */
static void
set_up (cairo_t *cr)
{
  cairo_font_options_t *options = cairo_font_options_create ();

  cairo_font_options_set_hint_style (options, CAIRO_HINT_STYLE_NONE);
  cairo_font_options_set_hint_metrics (options, CAIRO_HINT_METRICS_OFF);
  cairo_font_options_set_antialias (options, CAIRO_ANTIALIAS_GRAY);
  cairo_set_font_options (cr, options);
  cairo_font_options_destroy (options);
  cairo_set_line_join (cr, CAIRO_LINE_JOIN_ROUND);
  cairo_set_fill_rule (cr, CAIRO_FILL_RULE_EVEN_ODD);
  cairo_new_path (cr);
}

static double
dot_mm (cairo_t *cr, SwTheme theme)
{
  double x_mm = 1.0;
  double y_mm = 0.0;

  if (theme == SW_THEME_PAPER)
    return 0.0;
  cairo_device_to_user_distance (cr, &x_mm, &y_mm);
  return hypot (x_mm, y_mm);
}

void
sw_paint_cairo (const SwFigure *figure, cairo_t *cr, const SwPalette *palette,
                SwTheme theme)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (GArray) hatch = g_array_new (FALSE, FALSE, sizeof (SwPaperPoint));
  Canvas canvas = { .cr = cr,
                    .figure = figure,
                    .palette = palette,
                    .faces = sw_faces_get (&error),
                    .theme = theme,
                    .thinnest_mm = dot_mm (cr, theme),
                    .hatch = hatch };

  if (!canvas.faces)
    {
      g_critical ("%s", error->message);
      return;
    }
  cairo_save (cr);
  set_up (cr);
  paint_items (&canvas);
  while (canvas.clips > 0)
    end_clip (&canvas);
  cairo_restore (cr);
}
