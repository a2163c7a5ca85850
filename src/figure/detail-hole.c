/* SPDX-License-Identifier: MIT */
#include "detail.h"
#include <math.h>

/* Arrows beside a lining: distance, and how much of a wall they take. */
#define BESIDE_MM 1.7
#define SHARE 0.62
#define HEAD_MM 1.4
#define SHORT_WALL_MM 5.0

void
sw_detail_hole (SwDetailSheet *sheet, SwHole hole, const SwPaperPoint *before,
                guint n_before, const SwPaperPoint *after, guint n_after,
                double bottom_mm)
{
  SwPaperPoint corners[4] = { { hole.left, hole.level_left },
                              { hole.left, hole.floor },
                              { hole.right, hole.floor },
                              { hole.right, hole.level_right } };
  g_autoptr (GArray) line = g_array_new (FALSE, FALSE, sizeof (SwPaperPoint));

  g_array_append_vals (line, before, n_before);
  g_array_append_vals (line, corners, 4);
  g_array_append_vals (line, after, n_after);
  sw_detail_ground (sheet, (SwPaperPoint *) line->data, line->len, bottom_mm);
  sw_detail_fill (sheet, SW_ROLE_BACKFILL, corners, 4);
  sw_figure_line (sheet->drawing.figure, SW_ROLE_GROUND, corners, 4);
}

static void
draw_arrow_beside (SwFigure *figure, SwPaperPoint a, SwPaperPoint b, double side)
{
  double dx = b.x_mm - a.x_mm, dy = b.y_mm - a.y_mm, size = hypot (dx, dy);
  double cut = (1.0 - SHARE) / 2.0;
  double nx = dy / size * side * BESIDE_MM, ny = -dx / size * side * BESIDE_MM;

  if (size < SHORT_WALL_MM)
    return;
  sw_draft_arrow (figure, SW_ROLE_DIMENSION, a.x_mm + dx * cut + nx,
                  a.y_mm + dy * cut + ny, b.x_mm - dx * cut + nx, b.y_mm - dy * cut + ny,
                  HEAD_MM);
}

void
sw_detail_lining (SwDetailSheet *sheet, const SwPaperPoint *path, guint count,
                  double side)
{
  SwFigure *figure = sheet->drawing.figure;

  sw_drawing_object (&sheet->drawing, "/tier/0");
  sw_figure_line (figure, SW_ROLE_BLANKET, path, count);
  /* In a narrow slot the arrows of the two walls would run into each other. */
  if (count >= 3
      && hypot (path[2].x_mm - path[1].x_mm, path[2].y_mm - path[1].y_mm) < SHORT_WALL_MM)
    return;
  for (guint i = 1; i < count; i++)
    draw_arrow_beside (figure, path[i - 1], path[i], side);
}
