/* SPDX-License-Identifier: MIT */
#include "drawing.h"
#include <math.h>

/* The measured bar is about this long, and has this height. */
#define LONGEST_MM 48.0
#define BAR_MM 1.3
#define TICK_MM 1.2

/* A line of a known length, to find out whether the paper was printed at its size. */
#define CHECK_MM 100.0
#define SHORT_CHECK_MM 50.0
#define NEEDED_MM 165.0

double
sw_scale_bar_height_mm (const SwDraw *draw)
{
  return 2.0 * sw_draw_text_mm (draw) * 0.92 + TICK_MM + 2.2;
}

/* Largest 1, 2 or 5 times a power of ten that is not above @limit. */
static double
round_step (double limit)
{
  double power = pow (10.0, floor (log10 (limit) + 1e-9));
  double rest = limit / power;

  return power * (rest >= 5.0 - 1e-9 ? 5.0 : rest >= 2.0 - 1e-9 ? 2.0 : 1.0);
}

/* As few decimals as write @value exactly: steps are 1, 2 or 5 and their halves. */
static int
decimals_of (double value)
{
  int decimals = 0;

  while (decimals < 4 && fabs (value - round (value)) > 1e-9 * pow (10.0, decimals))
    {
      value *= 10.0;
      decimals++;
    }
  return decimals;
}

static void
put (SwFigure *figure, SwAlign align, double x_mm, double y_mm, double size_mm,
     const char *text)
{
  sw_figure_text (figure, SW_ROLE_TEXT, x_mm, y_mm, size_mm, align, SW_FACE_REGULAR, 0.0,
                  text);
}

/* Four boxes, every second filled; number at the ends and the middle. Returns: its length. */
static double
draw_bar (SwFigure *figure, double x_mm, double y_mm, double mm_per_m, double size_mm,
          const SwDraw *draw)
{
  double unit_m = draw->style.units == SW_UNITS_US ? SW_M_PER_FT : 1.0;
  double whole = round_step (LONGEST_MM / (mm_per_m * unit_m));
  double length = whole * unit_m * mm_per_m, quarter = length / 4.0;
  int decimals = decimals_of (whole / 2.0);
  g_autofree char *half = sw_decimal_text (whole / 2.0, decimals, draw->style);
  g_autofree char *all = sw_decimal_text (whole, decimals_of (whole), draw->style);
  g_autofree char *end =
      g_strconcat (all, " ", sw_quantity_unit (SW_UNIT_M, draw->style), NULL);

  sw_figure_segment (figure, SW_ROLE_SCALE_BAR, x_mm, y_mm, x_mm + length, y_mm);
  sw_figure_segment (figure, SW_ROLE_SCALE_BAR, x_mm, y_mm + BAR_MM, x_mm + length,
                     y_mm + BAR_MM);
  for (int i = 0; i <= 4; i++)
    sw_figure_segment (figure, SW_ROLE_SCALE_BAR, x_mm + i * quarter, y_mm,
                       x_mm + i * quarter, y_mm + BAR_MM);
  sw_figure_box (figure, SW_ROLE_SCALE_BAR, x_mm, y_mm, quarter, BAR_MM);
  sw_figure_box (figure, SW_ROLE_SCALE_BAR, x_mm + 2.0 * quarter, y_mm, quarter, BAR_MM);
  put (figure, SW_ALIGN_LEFT, x_mm, y_mm + BAR_MM + size_mm * 1.05, size_mm, "0");
  put (figure, SW_ALIGN_CENTRE, x_mm + length / 2.0, y_mm + BAR_MM + size_mm * 1.05,
       size_mm, half);
  put (figure, SW_ALIGN_LEFT, x_mm + length - size_mm * 0.4,
       y_mm + BAR_MM + size_mm * 1.05, size_mm, end);
  return length;
}

static void
draw_check_line (SwFigure *figure, double x_mm, double y_mm, double length_mm,
                 double size_mm, const SwDraw *draw)
{
  /* One place, whatever the units: paper is checked with the same 100 mm. */
  g_autofree char *length = sw_decimal_text (length_mm, 0, draw->style);
  g_autofree char *inches = sw_decimal_text (length_mm / SW_MM_PER_IN, 2, draw->style);
  g_autofree char *words = sw_texts_fill (
      draw->texts,
      draw->style.units == SW_UNITS_US ? "drawing.check-line-us" : "drawing.check-line",
      "length", length, "inches", inches, NULL);

  sw_figure_segment (figure, SW_ROLE_SCALE_BAR, x_mm, y_mm, x_mm + length_mm, y_mm);
  for (int i = 0; i <= 1; i++)
    sw_figure_segment (figure, SW_ROLE_SCALE_BAR, x_mm + i * length_mm, y_mm - TICK_MM,
                       x_mm + i * length_mm, y_mm + TICK_MM);
  put (figure, SW_ALIGN_CENTRE, x_mm + length_mm / 2.0, y_mm + size_mm * 1.25, size_mm,
       words);
}

void
sw_draw_scale_bar (SwFigure *figure, double x_mm, double y_mm, double mm_per_m,
                   double scale, const SwDraw *draw)
{
  double size = sw_draw_text_mm (draw) * 0.92;
  double room = figure->width_mm - x_mm, bar_y = y_mm + size + 1.2;
  double check = room >= NEEDED_MM ? CHECK_MM : SHORT_CHECK_MM;
  g_autofree char *words = sw_scale_text (scale, draw);
  double length;

  sw_figure_object (figure, "scale-bar");
  sw_figure_text (figure, SW_ROLE_TEXT, x_mm, y_mm + size, size, SW_ALIGN_LEFT,
                  SW_FACE_BOLD, 0.0, words);
  length = draw_bar (figure, x_mm, bar_y, mm_per_m, size, draw);
  sw_figure_object (figure, "check-line");
  if (length + check + 12.0 <= room)
    draw_check_line (figure, figure->width_mm - check - 0.2, bar_y + BAR_MM / 2.0, check,
                     size, draw);
  sw_figure_object (figure, "");
}
