/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/base/polygon.h>
#include <slopewright/figure/view.h>

/**
 * SwViewport: which part of the world a canvas shows. Plain state: pixels of
 * the widget against metres of the world, the same scale both ways unless
 * heights are stretched.
 */
typedef struct
{
  double width_px, height_px;
  double px_per_m;
  double x_px, y_px; /* where the world's origin lies */
  gboolean y_up;
  double y_stretch; /* y is drawn so many times as large as x; 0 is 1 */
} SwViewport;

/** Room kept free on each side, pixels. */
typedef struct
{
  double left_px, right_px, top_px, bottom_px;
} SwInsets;

/** Pixels to a metre of height, on a section or of distance out, on plan. */
double sw_viewport_y_px_per_m (const SwViewport *viewport);

SwPoint sw_viewport_to_px (const SwViewport *viewport, SwPoint world);
SwPoint sw_viewport_to_world (const SwViewport *viewport, SwPoint px);

/** Show all of @world between @insets, centred; insets shrink before they take half the room. */
void sw_viewport_fit (SwViewport *viewport, SwBox world, SwInsets insets);

/** Whether @world lies wholly between @insets (most of them, so that a fit is not redone for a hair). */
gboolean sw_viewport_shows (const SwViewport *viewport, SwBox world, SwInsets insets);

/** Scale by @factor; the world point under @px stays there. Limits: 1 px is 0.5 mm to 20 m. */
void sw_viewport_zoom (SwViewport *viewport, double factor, SwPoint px);
void sw_viewport_pan (SwViewport *viewport, double dx_px, double dy_px);

/** The drawing's view with @px_per_mm pixels to a figure's millimetre. */
SwView sw_viewport_view (const SwViewport *viewport, double px_per_mm);

/**
 * sw_viewport_step_m:
 *
 * Returns: the finest round step (0.01, 0.05, 0.1, 0.5, 1, 5 … m; 1, 3, 6 in, 1,
 *   5, 10 … ft) that is at least @least_px wide
 */
double sw_viewport_step_m (const SwViewport *viewport, SwUnitSystem units,
                           double least_px);

/** @world on the nearest crossing of a grid of @step_m. */
SwPoint sw_viewport_snap (SwPoint world, double step_m);
