/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include <math.h>
#include <time.h>

#include "canvas-kind.h"
#include "canvas-paint.h"
#include "square-job.h"
#include "stock.h"

/*
 * Processor time of one frame while a point is dragged: the job worked out anew, and each
 * view drawn and painted as a canvas does it, in software. Aim: a frame of a 1 ha face
 * with its views under 16 ms, and so a view with a million pins. Nothing is asserted:
 * other work on the machine would decide.
 */

#define PX_PER_MM 4.8
#define ROUNDS 9

/* Field pins every 1.0 x 0.3 m: some 34 000 to the hectare. */
static SwJob *
job_of (double ha)
{
  SwJob *job = square_job (ha);

  sw_job_set_override (job, SW_PRACTICE_PIN_DOWN_M, 0.3, "");
  sw_job_set_override (job, SW_PRACTICE_PIN_ACROSS_M, 1.0, "");
  return job;
}

static double
processor_ms (void)
{
  return 1e3 * (double) clock () / CLOCKS_PER_SEC;
}

/* The whole face in the room there is, then @closer times as large about its middle. */
static SwViewport
look_at (const SwCanvasKind *kind, const SwResult *result, double width_px,
         double height_px, double closer)
{
  SwViewport viewport = { .width_px = width_px,
                          .height_px = height_px,
                          .y_up = kind->y_up };
  const SwInsets insets = { kind->left_mm * PX_PER_MM, kind->right_mm * PX_PER_MM,
                            kind->top_mm * PX_PER_MM, kind->bottom_mm * PX_PER_MM };

  sw_viewport_fit (&viewport, kind->box (result, 0), insets);
  sw_viewport_zoom (&viewport, closer, (SwPoint){ width_px / 2.0, height_px / 2.0 });
  return viewport;
}

typedef struct
{
  double draw_ms, paint_ms;
  guint items;
} Frame;

/* Draw and paint once. */
static Frame
frame_of (const SwCanvasKind *kind, const SwResult *result, const SwStock *stock,
          const SwViewport *viewport)
{
  Frame frame;
  cairo_surface_t *surface = cairo_image_surface_create (
      CAIRO_FORMAT_ARGB32, (int) viewport->width_px, (int) viewport->height_px);
  const SwDraw draw = { .texts = stock->texts,
                        .measure = stock->measure,
                        .style = sw_stock_style (stock, SW_UNITS_METRIC),
                        .on_screen = TRUE };
  SwView view = sw_viewport_view (viewport, PX_PER_MM);
  SwCanvasPaint paint = { .cr = cairo_create (surface),
                          .viewport = viewport,
                          .palette = stock->palette,
                          .theme = SW_THEME_LIGHT,
                          .px_per_mm = PX_PER_MM };
  double start_ms = processor_ms ();
  SwFigure *figure = kind->draw (result, 0, &view, &draw);

  frame.draw_ms = processor_ms () - start_ms;
  start_ms = processor_ms ();
  sw_canvas_paint_ground (&paint);
  sw_canvas_paint_grid (&paint, SW_UNITS_METRIC);
  sw_canvas_paint_figure (&paint, figure);
  cairo_surface_flush (surface);
  frame.paint_ms = processor_ms () - start_ms;
  frame.items = figure->items->len;
  sw_figure_free (figure);
  cairo_destroy (paint.cr);
  cairo_surface_destroy (surface);
  return frame;
}

/* The fastest of several. */
static Frame
fastest (const SwCanvasKind *kind, const SwResult *result, const SwStock *stock,
         const SwViewport *viewport)
{
  Frame best = frame_of (kind, result, stock, viewport);

  for (int i = 1; i < ROUNDS; i++)
    {
      Frame frame = frame_of (kind, result, stock, viewport);

      best.draw_ms = fmin (best.draw_ms, frame.draw_ms);
      best.paint_ms = fmin (best.paint_ms, frame.paint_ms);
    }
  return best;
}

static double
time_view (SwCanvasView view, const SwResult *result, const SwStock *stock,
           double width_px, double height_px, double closer)
{
  const SwCanvasKind *kind = sw_canvas_kind (view);
  SwViewport viewport = look_at (kind, result, width_px, height_px, closer);
  Frame frame = fastest (kind, result, stock, &viewport);

  g_print ("  %-10s %5.0f x %-5.0f x%-6.0f %8u %8.2f %8.2f\n", kind->code, width_px,
           height_px, closer, frame.items, frame.draw_ms, frame.paint_ms);
  return frame.draw_ms + frame.paint_ms;
}

/* Closer and closer, so that the step at which pins appear is met. */
static void
time_closer (const SwResult *result, const SwStock *stock)
{
  for (double closer = 1.0; closer < 300.0; closer *= 2.0)
    time_view (SW_CANVAS_FACE_VIEW, result, stock, 1400.0, 900.0, closer);
}

static void
time_face (double ha, const SwStock *stock)
{
  g_autoptr (SwJob) job = job_of (ha);
  double start_ms = processor_ms (), recompute_ms, views_ms = 0.0;
  g_autoptr (SwResult) result = sw_result_new (job, stock->catalogue);

  recompute_ms = processor_ms () - start_ms;
  g_assert_cmpint (result->status, ==, SW_OK);
  g_print ("%.0f ha, %" G_GSIZE_FORMAT " pins; worked out in %.1f ms\n"
           "  %-10s %-13s %-7s %8s %8s %8s\n",
           ha, result->tally->pins, recompute_ms, "view", "pixels", "closer", "items",
           "draw ms", "paint ms");
  views_ms += time_view (SW_CANVAS_SECTION, result, stock, 1000.0, 300.0, 1.0);
  views_ms += time_view (SW_CANVAS_PLAN, result, stock, 500.0, 380.0, 1.0);
  views_ms += time_view (SW_CANVAS_FACE_VIEW, result, stock, 500.0, 380.0, 1.0);
  g_print ("  a frame of a drag, all three: %.1f ms\n", recompute_ms + views_ms);
  time_closer (result, stock);
}

int
main (void)
{
  SwStock *stock = sw_stock_new (NULL);

  time_face (1.0, stock);
  time_face (30.0, stock);
  sw_stock_free (stock);
  return 0;
}
