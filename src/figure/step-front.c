/* SPDX-License-Identifier: MIT */
#include "step-picture.h"

/* Runs seen from the toe: how many, and the laps between them hatched. */
static void
draw_front (SwStepPicture *p, guint runs, gboolean leeward_left)
{
  double w = p->figure->width_mm, h = p->figure->height_mm, u = p->unit_mm;
  double left = 2.0 * u, top = 3.0 * u, pitch = (w - 4.0 * u) / runs;

  sw_step_segment (p, SW_ROLE_TRENCH, left, top - 1.0 * u, left + runs * pitch,
                   top - 1.0 * u);
  for (guint i = 0; i < runs; i++)
    sw_figure_box (p->figure, SW_ROLE_RUN, left + i * pitch, top, pitch,
                   h - top - 2.0 * u);
  for (guint i = 0; i <= runs; i++)
    sw_step_segment (p, SW_ROLE_RUN_EDGE, left + i * pitch, top, left + i * pitch,
                     h - 2.0 * u);
  for (guint i = 1; i < runs; i++)
    sw_figure_box (p->figure, SW_ROLE_LAP,
                   left + i * pitch - (leeward_left ? 0.0 : 1.8 * u), top, 1.8 * u,
                   h - top - 2.0 * u);
}

static void
draw_dots (SwStepPicture *p, double x, double step, double shift)
{
  for (double y = 5.0 + shift; y < 19.6; y += step)
    sw_figure_circle (p->figure, SW_ROLE_PIN, x, y * p->unit_mm, 0.42 * p->unit_mm);
}

/* Staggered pins from the top down. */
void
sw_step_pin_field (SwStepPicture *p)
{
  double u = p->unit_mm, w = p->figure->width_mm;

  draw_front (p, 1, TRUE);
  for (int column = 0; column < 6; column++)
    if (column != 3)
      draw_dots (p, (4.0 + column * 4.4) * w / 30.0, 4.0, column % 2 == 0 ? 0.0 : 2.0);
  sw_step_arrow (p, (SwPaperPoint){ 17.2 * w / 30.0, 5.0 * u },
                 (SwPaperPoint){ 17.2 * w / 30.0, 18.5 * u });
}

/* The next run over the edge of the one before, pinned through both. */
void
sw_step_side_lap (SwStepPicture *p)
{
  gboolean left = p->face->leeward == SW_SIDE_LEFT;
  double w = p->figure->width_mm, u = p->unit_mm, sign = left ? 1.0 : -1.0;
  double lap = w / 2.0 + sign * 0.9 * u;

  draw_front (p, 2, left);
  draw_dots (p, lap, 3.2, 0.5);
  sw_step_arrow (p, (SwPaperPoint){ lap + sign * 10.5 * u, 11.0 * u },
                 (SwPaperPoint){ lap + sign * 3.0 * u, 11.0 * u });
}
