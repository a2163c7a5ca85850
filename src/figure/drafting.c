/* SPDX-License-Identifier: MIT */
#include "drafting.h"
#include <math.h>

/* Gap between the thing measured and its extension line, and how far that passes the arrows. */
#define GAP_MM 0.8
#define PAST_MM 1.0

/* Mitres longer than this many offsets are cut. */
#define MITRE_LIMIT 3.0

void
sw_draft_arrow_head (SwFigure *figure, SwRole role, double x_mm, double y_mm, double dx,
                     double dy, double length_mm)
{
  double size = hypot (dx, dy), half = length_mm * 0.22, ux, uy;
  SwPaperPoint points[3];

  if (size <= 0.0)
    return;
  ux = dx / size;
  uy = dy / size;
  points[0] = (SwPaperPoint){ x_mm, y_mm };
  points[1] = (SwPaperPoint){ x_mm - ux * length_mm + uy * half,
                              y_mm - uy * length_mm - ux * half };
  points[2] = (SwPaperPoint){ x_mm - ux * length_mm - uy * half,
                              y_mm - uy * length_mm + ux * half };
  sw_figure_area (figure, role, points, 3);
}

void
sw_draft_arrow (SwFigure *figure, SwRole role, double x0_mm, double y0_mm, double x1_mm,
                double y1_mm, double head_mm)
{
  double dx = x1_mm - x0_mm, dy = y1_mm - y0_mm, size = hypot (dx, dy);

  if (size <= 0.0)
    return;
  sw_figure_segment (figure, role, x0_mm, y0_mm, x1_mm - dx / size * head_mm * 0.8,
                     y1_mm - dy / size * head_mm * 0.8);
  sw_draft_arrow_head (figure, role, x1_mm, y1_mm, dx, dy, head_mm);
}

static void
draw_extension (SwFigure *figure, double x, double y, double nx, double ny, double offset)
{
  double sign = offset < 0.0 ? -1.0 : 1.0, reach = fabs (offset);

  if (reach <= GAP_MM)
    return;
  sw_figure_segment (figure, SW_ROLE_DIMENSION, x + nx * sign * GAP_MM,
                     y + ny * sign * GAP_MM, x + nx * sign * (reach + PAST_MM),
                     y + ny * sign * (reach + PAST_MM));
}

void
sw_draft_dimension (SwFigure *figure, const SwLabelSpan *span, double inside_mm)
{
  double dx = span->x1_mm - span->x0_mm, dy = span->y1_mm - span->y0_mm;
  double length = hypot (dx, dy), ux = dx / length, uy = dy / length;
  double nx = uy, ny = -ux, off = span->offset_mm;
  double ax = span->x0_mm + nx * off, ay = span->y0_mm + ny * off;
  double bx = span->x1_mm + nx * off, by = span->y1_mm + ny * off;
  gboolean inside = length >= MIN (inside_mm, 3.0 * SW_ARROW_MM);
  double turn = inside ? 1.0 : -1.0, tail = inside ? 0.0 : 2.0 * SW_ARROW_MM;

  draw_extension (figure, span->x0_mm, span->y0_mm, nx, ny, off);
  draw_extension (figure, span->x1_mm, span->y1_mm, nx, ny, off);
  sw_figure_segment (figure, SW_ROLE_DIMENSION, ax - ux * tail, ay - uy * tail,
                     bx + ux * tail, by + uy * tail);
  sw_draft_arrow_head (figure, SW_ROLE_DIMENSION, ax, ay, -ux * turn, -uy * turn,
                       SW_ARROW_MM);
  sw_draft_arrow_head (figure, SW_ROLE_DIMENSION, bx, by, ux * turn, uy * turn,
                       SW_ARROW_MM);
}

void
sw_draft_dashes (SwFigure *figure, SwRole role, double x0_mm, double y0_mm, double x1_mm,
                 double y1_mm, double dash_mm)
{
  double dx = x1_mm - x0_mm, dy = y1_mm - y0_mm, length = hypot (dx, dy);

  for (double at = 0.0; at < length; at += 2.0 * dash_mm)
    {
      double from = at / length, to = MIN (at + dash_mm, length) / length;

      sw_figure_segment (figure, role, x0_mm + dx * from, y0_mm + dy * from,
                         x0_mm + dx * to, y0_mm + dy * to);
    }
}

/* Unit normal to the left of the way from @a to @b, as seen on paper. */
static SwPaperPoint
left_normal (SwPaperPoint a, SwPaperPoint b)
{
  double dx = b.x_mm - a.x_mm, dy = b.y_mm - a.y_mm, size = hypot (dx, dy);

  if (size <= 0.0)
    return (SwPaperPoint){ 0.0, 0.0 };
  return (SwPaperPoint){ dy / size, -dx / size };
}

void
sw_draft_offset (const SwPaperPoint *points, guint count, double offset_mm,
                 SwPaperPoint *out)
{
  for (guint i = 0; i < count; i++)
    {
      SwPaperPoint before =
          left_normal (points[i > 0 ? i - 1 : 0], points[i > 0 ? i : 1]);
      SwPaperPoint after =
          i + 1 < count ? left_normal (points[i], points[i + 1]) : before;
      double dot = before.x_mm * after.x_mm + before.y_mm * after.y_mm;
      double mitre = fmin (2.0 / fmax (1.0 + dot, 1e-6), MITRE_LIMIT) / 2.0;

      out[i].x_mm = points[i].x_mm + offset_mm * mitre * (before.x_mm + after.x_mm);
      out[i].y_mm = points[i].y_mm + offset_mm * mitre * (before.y_mm + after.y_mm);
    }
}

void
sw_draft_break_mark (SwFigure *figure, SwRole role, double x_mm, double y_mm,
                     double height_mm)
{
  double half = height_mm / 2.0, step = 0.7;

  for (int side = -1; side <= 1; side += 2)
    {
      double x = x_mm + side * 0.6;
      SwPaperPoint zigzag[6] = {
        { x, y_mm - half },
        { x, y_mm - step },
        { x - step, y_mm - step / 3 },
        { x + step, y_mm + step / 3 },
        { x, y_mm + step },
        { x, y_mm + half },
      };

      sw_figure_line (figure, role, zigzag, 6);
    }
}

void
sw_draft_pin (SwFigure *figure, double x_mm, double y_mm, double dx, double dy,
              double length_mm, double crown_mm)
{
  double size = hypot (dx, dy), ux = dx / size, uy = dy / size;
  double half = fmax (crown_mm, 1.6) / 2.0;
  double lx = x_mm - uy * half, ly = y_mm + ux * half;
  double rx = x_mm + uy * half, ry = y_mm - ux * half;
  SwPaperPoint staple[4] = { { lx + ux * length_mm, ly + uy * length_mm },
                             { lx, ly },
                             { rx, ry },
                             { rx + ux * length_mm, ry + uy * length_mm } };

  if (crown_mm > 0.0)
    {
      sw_figure_line (figure, SW_ROLE_PIN, staple, 4);
      return;
    }
  sw_figure_segment (figure, SW_ROLE_PIN, lx, ly, rx, ry);
  sw_figure_segment (figure, SW_ROLE_PIN, x_mm, y_mm, x_mm + ux * length_mm,
                     y_mm + uy * length_mm);
}

void
sw_draft_soil_band (SwFigure *figure, const SwPaperPoint *points, guint count,
                    double depth_mm)
{
  g_autofree SwPaperPoint *band = g_new (SwPaperPoint, 2 * count);

  for (guint i = 0; i < count; i++)
    {
      band[i] = points[i];
      band[2 * count - 1 - i] =
          (SwPaperPoint){ points[i].x_mm, points[i].y_mm + depth_mm };
    }
  sw_figure_area (figure, SW_ROLE_SOIL, band, 2 * count);
}
