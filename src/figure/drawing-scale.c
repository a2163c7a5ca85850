/* SPDX-License-Identifier: MIT */
#include "drawing.h"

/* Room for the rounding of millimetres. */
#define SLACK_MM 1e-6

/* Scales of the usual rulers, largest first; from FIRST_TENFOLD on they repeat by tenfolds.
 * Metric: triangular rulers. US: architect's rulers to 1/4 in, engineer's rulers from 10 ft
 * to the inch. Common practice, no source. */
static const double metric_scales[] = { 1,   2,   5,   10,  20,  25,  50, 100,
                                        125, 200, 250, 300, 400, 500, 750 };
static const double us_scales[] = { 1,  2,   4,   8,   12,  16,  24, 48,
                                    60, 120, 240, 360, 480, 600, 720 };
#define FIRST_TENFOLD 100.0
#define TENFOLDS 7

static const double *
scales_of (SwUnitSystem units)
{
  G_STATIC_ASSERT (G_N_ELEMENTS (metric_scales) == G_N_ELEMENTS (us_scales));
  return units == SW_UNITS_US ? us_scales : metric_scales;
}

double
sw_drawing_scale (const SwDraw *draw, double width_m, double height_m, double width_mm,
                  double height_mm)
{
  const double *scales = scales_of (draw->style.units);
  double tenfold = 1.0, scale = scales[0];

  for (guint decade = 0; decade <= TENFOLDS; decade++, tenfold *= 10.0)
    for (guint i = 0; i < G_N_ELEMENTS (metric_scales); i++)
      {
        if (decade > 0 && scales[i] < FIRST_TENFOLD)
          continue;
        scale = scales[i] * tenfold;
        if (width_m * 1000.0 / scale <= width_mm + SLACK_MM
            && height_m * 1000.0 / scale <= height_mm + SLACK_MM)
          return scale;
      }
  return scale;
}

/* "Scale 1 : 200", in US units also as feet to the inch. */
char *
sw_scale_text (double scale, const SwDraw *draw)
{
  int whole = (int) (scale + 0.5);
  g_autofree char *number = sw_decimal_text (scale, 0, draw->style);
  g_autofree char *feet = sw_decimal_text (whole / 12, 0, draw->style);
  gboolean is_feet = draw->style.units == SW_UNITS_US && whole >= 12 && whole % 12 == 0;

  return sw_texts_fill (draw->texts, is_feet ? "drawing.scale-feet" : "drawing.scale",
                        "scale", number, "feet", feet, NULL);
}
