/* SPDX-License-Identifier: MIT */
#include "viewport.h"

#include <math.h>

#define LEAST_PX_PER_M 0.05
#define MOST_PX_PER_M 2000.0

/* Of a widget not yet allocated. */
#define LEAST_ROOM_PX 4.0

static double
y_stretch (const SwViewport *viewport)
{
  return viewport->y_stretch > 0.0 ? viewport->y_stretch : 1.0;
}

double
sw_viewport_y_px_per_m (const SwViewport *viewport)
{
  return y_stretch (viewport) * viewport->px_per_m;
}

/* Downwards on screen. */
static double
down_px_per_m (const SwViewport *viewport)
{
  return (viewport->y_up ? -1.0 : 1.0) * sw_viewport_y_px_per_m (viewport);
}

SwPoint
sw_viewport_to_px (const SwViewport *viewport, SwPoint world)
{
  return (SwPoint){ viewport->x_px + world.x_m * viewport->px_per_m,
                    viewport->y_px + world.y_m * down_px_per_m (viewport) };
}

SwPoint
sw_viewport_to_world (const SwViewport *viewport, SwPoint px)
{
  return (SwPoint){ (px.x_m - viewport->x_px) / viewport->px_per_m,
                    (px.y_m - viewport->y_px) / down_px_per_m (viewport) };
}

/* Labels may run into each other before the drawing gets less than half the room. */
static void
keep_half (double room_px, double *before_px, double *after_px)
{
  double most_px = room_px / 2.0, both_px = *before_px + *after_px;

  if (both_px <= most_px)
    return;
  *before_px *= most_px / both_px;
  *after_px *= most_px / both_px;
}

void
sw_viewport_fit (SwViewport *viewport, SwBox world, SwInsets insets)
{
  keep_half (viewport->width_px, &insets.left_px, &insets.right_px);
  keep_half (viewport->height_px, &insets.top_px, &insets.bottom_px);
  double width_px = viewport->width_px - insets.left_px - insets.right_px;
  double height_px = viewport->height_px - insets.top_px - insets.bottom_px;
  double width_m = fmax (world.x1_m - world.x0_m, 0.1);
  double height_m = fmax (world.y1_m - world.y0_m, 0.1) * y_stretch (viewport);
  double px_per_m = fmin (fmax (width_px, LEAST_ROOM_PX) / width_m,
                          fmax (height_px, LEAST_ROOM_PX) / height_m);

  viewport->px_per_m = CLAMP (px_per_m, LEAST_PX_PER_M, MOST_PX_PER_M);
  viewport->x_px = insets.left_px + width_px / 2.0
                   - (world.x0_m + world.x1_m) / 2.0 * viewport->px_per_m;
  viewport->y_px = insets.top_px + height_px / 2.0
                   - (world.y0_m + world.y1_m) / 2.0 * down_px_per_m (viewport);
}

/* What is written round a drawing is cut off when less of its room is left; when more had
 * to be, each nudge would move the view. */
#define KEPT_ROOM 0.8

gboolean
sw_viewport_shows (const SwViewport *viewport, SwBox world, SwInsets insets)
{
  keep_half (viewport->width_px, &insets.left_px, &insets.right_px);
  keep_half (viewport->height_px, &insets.top_px, &insets.bottom_px);
  SwPoint a = sw_viewport_to_px (viewport, (SwPoint){ world.x0_m, world.y0_m });
  SwPoint b = sw_viewport_to_px (viewport, (SwPoint){ world.x1_m, world.y1_m });

  return a.x_m >= KEPT_ROOM * insets.left_px
         && b.x_m <= viewport->width_px - KEPT_ROOM * insets.right_px
         && fmin (a.y_m, b.y_m) >= KEPT_ROOM * insets.top_px
         && fmax (a.y_m, b.y_m) <= viewport->height_px - KEPT_ROOM * insets.bottom_px;
}

void
sw_viewport_zoom (SwViewport *viewport, double factor, SwPoint px)
{
  SwPoint held = sw_viewport_to_world (viewport, px);
  SwPoint now;

  viewport->px_per_m = CLAMP (viewport->px_per_m * factor, LEAST_PX_PER_M, MOST_PX_PER_M);
  now = sw_viewport_to_px (viewport, held);
  sw_viewport_pan (viewport, px.x_m - now.x_m, px.y_m - now.y_m);
}

void
sw_viewport_pan (SwViewport *viewport, double dx_px, double dy_px)
{
  viewport->x_px += dx_px;
  viewport->y_px += dy_px;
}

SwView
sw_viewport_view (const SwViewport *viewport, double px_per_mm)
{
  return (SwView){
    .width_mm = viewport->width_px / px_per_mm,
    .height_mm = viewport->height_px / px_per_mm,
    .x_origin_mm = viewport->x_px / px_per_mm,
    .y_origin_mm = viewport->y_px / px_per_mm,
    .x_mm_per_m = viewport->px_per_m / px_per_mm,
    .y_mm_per_m = down_px_per_m (viewport) / px_per_mm,
  };
}

double
sw_viewport_step_m (const SwViewport *viewport, SwUnitSystem units, double least_px)
{
  static const double metric_m[] = { 0.01, 0.05, 0.1, 0.5, 1.0, 5.0, 10.0, 50.0, 100.0 };
  static const double us_m[] = { SW_M_PER_IN,        3.0 * SW_M_PER_IN,
                                 6.0 * SW_M_PER_IN,  SW_M_PER_FT,
                                 5.0 * SW_M_PER_FT,  10.0 * SW_M_PER_FT,
                                 50.0 * SW_M_PER_FT, 100.0 * SW_M_PER_FT,
                                 500.0 * SW_M_PER_FT };
  const double *steps_m = units == SW_UNITS_US ? us_m : metric_m;
  guint last = G_N_ELEMENTS (metric_m) - 1;

  for (guint i = 0; i < last; i++)
    if (steps_m[i] * viewport->px_per_m >= least_px)
      return steps_m[i];
  return steps_m[last];
}

/* In whole steps first, so that 0.1 x 3 is the double nearest to 0.3. */
static double
snap (double value_m, double step_m)
{
  double steps = round (value_m / step_m);
  double per_m = round (1.0 / step_m);

  return fabs (per_m * step_m - 1.0) < 1e-9 ? steps / per_m : steps * step_m;
}

SwPoint
sw_viewport_snap (SwPoint world, double step_m)
{
  return (SwPoint){ snap (world.x_m, step_m), snap (world.y_m, step_m) };
}
