/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/base/number-text.h>
#include <slopewright/base/polygon.h>
#include <slopewright/base/texts.h>
#include <slopewright/figure/figure.h>

/** World (metres) to figure (mm): mm = origin + metres x mm_per_m. A section has negative y_mm_per_m, since up is up. */
typedef struct
{
  double width_mm, height_mm;
  double x_origin_mm, y_origin_mm;
  double x_mm_per_m, y_mm_per_m;
} SwView;

SwPaperPoint sw_view_to_paper (const SwView *view, SwPoint world);
SwPoint sw_view_to_world (const SwView *view, SwPaperPoint paper);

/**
 * sw_view_fit:
 * @world: box to show; y grows downwards on paper unless @y_up
 * @margin_mm: kept free on all four sides
 * @scale: (out) (optional): the chosen scale 1 : @scale
 *
 * Picks the largest true scale of 1 : 10, 20, 25, 50, 100, 125, 200, 250,
 * 500 and tenfolds that fits, and centres the box.
 */
SwView sw_view_fit (SwBox world, double width_mm, double height_mm, double margin_mm,
                    gboolean y_up, double *scale);

/** Everything the drawings need besides the result. All borrowed. */
typedef struct
{
  const SwTexts *texts;
  const SwTextMeasure *measure;
  SwNumberStyle style;
  double text_mm;     /* usual text height; 0: 2.5 */
  gboolean on_screen; /* canvas: no title, no scale bar, handles wanted */
  guint section;      /* drawn in full: 0 the face's own, n the further one n - 1 */
} SwDraw;
