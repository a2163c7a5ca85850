/* SPDX-License-Identifier: MIT */
#include <slopewright/figure/view.h>

/* Scales found on a scale rule; from 1 : 100 on they repeat tenfold. */
static const double small_scales[] = { 10.0, 20.0, 25.0, 50.0 };
static const double decade_scales[] = { 100.0, 125.0, 200.0, 250.0, 500.0 };
#define DECADES 7 /* up to 1 : 500 000 000: more than the earth's face */

/* A box that fits exactly must not fail by rounding. */
#define FIT_SLACK_MM 1e-6

SwPaperPoint
sw_view_to_paper (const SwView *view, SwPoint world)
{
  return (SwPaperPoint){ view->x_origin_mm + world.x_m * view->x_mm_per_m,
                         view->y_origin_mm + world.y_m * view->y_mm_per_m };
}

SwPoint
sw_view_to_world (const SwView *view, SwPaperPoint paper)
{
  return (SwPoint){ (paper.x_mm - view->x_origin_mm) / view->x_mm_per_m,
                    (paper.y_mm - view->y_origin_mm) / view->y_mm_per_m };
}

static gboolean
fits (SwBox world, double scale, double free_width_mm, double free_height_mm)
{
  const double mm_per_m = 1000.0 / scale;

  return (world.x1_m - world.x0_m) * mm_per_m <= free_width_mm + FIT_SLACK_MM
         && (world.y1_m - world.y0_m) * mm_per_m <= free_height_mm + FIT_SLACK_MM;
}

static double
pick_scale (SwBox world, double free_width_mm, double free_height_mm)
{
  double scale = 0.0;
  double tenfold = 1.0;

  for (guint i = 0; i < G_N_ELEMENTS (small_scales); i++)
    if (fits (world, small_scales[i], free_width_mm, free_height_mm))
      return small_scales[i];
  for (guint decade = 0; decade < DECADES; decade++, tenfold *= 10.0)
    for (guint i = 0; i < G_N_ELEMENTS (decade_scales); i++)
      {
        scale = decade_scales[i] * tenfold;
        if (fits (world, scale, free_width_mm, free_height_mm))
          return scale;
      }
  return scale;
}

SwView
sw_view_fit (SwBox world, double width_mm, double height_mm, double margin_mm,
             gboolean y_up, double *scale)
{
  const double picked =
      pick_scale (world, width_mm - 2.0 * margin_mm, height_mm - 2.0 * margin_mm);
  const double mm_per_m = 1000.0 / picked;
  const double x_middle_m = (world.x0_m + world.x1_m) / 2.0;
  const double y_middle_m = (world.y0_m + world.y1_m) / 2.0;
  SwView view = { .width_mm = width_mm,
                  .height_mm = height_mm,
                  .x_mm_per_m = mm_per_m,
                  .y_mm_per_m = y_up ? -mm_per_m : mm_per_m };

  view.x_origin_mm = width_mm / 2.0 - x_middle_m * view.x_mm_per_m;
  view.y_origin_mm = height_mm / 2.0 - y_middle_m * view.y_mm_per_m;
  if (scale)
    *scale = picked;
  return view;
}
