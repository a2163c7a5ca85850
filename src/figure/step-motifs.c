/* SPDX-License-Identifier: MIT */
#include "step-picture.h"
#include <math.h>

/* All sizes at 30 x 22 mm, times the picture's unit. */
#define OFF 0.45
#define TRENCH 3.4
#define TRENCH_AT 2.2 /* its downslope edge behind the crest */
#define HEAD 1.6

void
sw_step_segment (SwStepPicture *p, SwRole role, double x0, double y0, double x1,
                 double y1)
{
  sw_figure_segment (p->figure, role, x0, y0, x1, y1);
}

SwPaperPoint
sw_step_on_slope (const SwStepPicture *p, double t, double off_mm)
{
  double dx = p->toe.x_mm - p->crest.x_mm, dy = p->toe.y_mm - p->crest.y_mm;
  double size = hypot (dx, dy);

  return (SwPaperPoint){ p->crest.x_mm + dx * t + dy / size * off_mm,
                         p->crest.y_mm + dy * t - dx / size * off_mm };
}

/* Corners of a key trench: upslope edge, floor, floor, downslope edge. */
static void
key_hole (const SwStepPicture *p, SwPaperPoint hole[4])
{
  double u = p->unit_mm, right = p->crest.x_mm - TRENCH_AT * u;
  double left = right - TRENCH * u, top = p->crest.y_mm, floor = top + TRENCH * u;

  hole[0] = (SwPaperPoint){ left, top };
  hole[1] = (SwPaperPoint){ left, floor };
  hole[2] = (SwPaperPoint){ right, floor };
  hole[3] = (SwPaperPoint){ right, top };
}

/* Ground with soil below; @hole: with an open trench behind the crest. */
static void
draw_ground (SwStepPicture *p, gboolean hole)
{
  double w = p->figure->width_mm, h = p->figure->height_mm;
  SwPaperPoint line[10];
  guint n = 0;

  line[n++] = (SwPaperPoint){ 0.0, p->crest.y_mm };
  if (hole)
    {
      key_hole (p, &line[n]);
      n += 4;
    }
  line[n++] = p->crest;
  line[n++] = p->toe;
  line[n++] = (SwPaperPoint){ w, p->toe.y_mm };
  line[n] = (SwPaperPoint){ w, h };
  line[n + 1] = (SwPaperPoint){ 0.0, h };
  sw_figure_area (p->figure, SW_ROLE_SOIL, line, n + 2);
  sw_figure_line (p->figure, SW_ROLE_GROUND, line, n);
}

static void
draw_blanket (SwStepPicture *p, double until)
{
  double off = OFF * p->unit_mm;
  SwPaperPoint hole[4], end = sw_step_on_slope (p, until, off);

  key_hole (p, hole);
  {
    SwPaperPoint line[6] = { { hole[1].x_mm + off, hole[0].y_mm },
                             { hole[1].x_mm + off, hole[1].y_mm - off },
                             { hole[2].x_mm - off, hole[2].y_mm - off },
                             { hole[3].x_mm - off, hole[3].y_mm - off },
                             { p->crest.x_mm, p->crest.y_mm - off },
                             end };

    sw_figure_line (p->figure, SW_ROLE_BLANKET, line, 6);
  }
}

static void
draw_filled (SwStepPicture *p, double until)
{
  SwPaperPoint hole[4];

  draw_ground (p, TRUE);
  key_hole (p, hole);
  sw_figure_area (p->figure, SW_ROLE_BACKFILL, hole, 4);
  draw_blanket (p, until);
}

/* A tool with a handle: from its working end at @at up to the left or right. */
static SwPaperPoint
draw_handle (SwStepPicture *p, SwPaperPoint at, double lean, double length)
{
  SwPaperPoint top = { at.x_mm + lean * p->unit_mm, at.y_mm - length * p->unit_mm };

  sw_step_segment (p, SW_ROLE_FRAME, at.x_mm, at.y_mm, top.x_mm, top.y_mm);
  return top;
}

static void
pin_at (SwStepPicture *p, double t, double off)
{
  SwPaperPoint at = sw_step_on_slope (p, t, off * p->unit_mm);
  SwPaperPoint end = sw_step_on_slope (p, t, -2.6 * p->unit_mm);

  sw_draft_pin (p->figure, at.x_mm, at.y_mm, end.x_mm - at.x_mm, end.y_mm - at.y_mm,
                3.5 * p->unit_mm, 1.3 * p->unit_mm);
}

void
sw_step_arrow (SwStepPicture *p, SwPaperPoint from, SwPaperPoint to)
{
  sw_draft_arrow (p->figure, SW_ROLE_FALL_LINE, from.x_mm, from.y_mm, to.x_mm, to.y_mm,
                  HEAD * p->unit_mm);
}

/* A rake on the bare slope; stones thrown off it. */
void
sw_step_prepare (SwStepPicture *p)
{
  SwPaperPoint at, foot, a, b;
  double u = p->unit_mm;

  draw_ground (p, FALSE);
  at = sw_step_on_slope (p, 0.52, 1.4 * u);
  a = sw_step_on_slope (p, 0.44, 1.4 * u);
  b = sw_step_on_slope (p, 0.60, 1.4 * u);
  sw_step_segment (p, SW_ROLE_FRAME, a.x_mm, a.y_mm, b.x_mm, b.y_mm);
  for (int i = 0; i <= 4; i++)
    {
      SwPaperPoint top = sw_step_on_slope (p, 0.44 + 0.04 * i, 1.4 * u);

      foot = sw_step_on_slope (p, 0.44 + 0.04 * i, 0.2 * u);
      sw_step_segment (p, SW_ROLE_FRAME, top.x_mm, top.y_mm, foot.x_mm, foot.y_mm);
    }
  draw_handle (p, at, 6.0, 8.0);
  for (int i = 0; i < 3; i++)
    sw_figure_circle (p->figure, SW_ROLE_BACKFILL,
                      p->toe.x_mm + (1.4 + 1.5 * i) * u * 0.8, p->toe.y_mm - 0.6 * u,
                      (0.75 - 0.12 * i) * u);
  sw_step_arrow (p, sw_step_on_slope (p, 0.18, 2.6 * u),
                 sw_step_on_slope (p, 0.38, 2.6 * u));
}

/* Seed thrown on the face. */
void
sw_step_seed (SwStepPicture *p)
{
  double u = p->unit_mm;

  draw_ground (p, FALSE);
  for (int row = 0; row < 3; row++)
    for (int i = 0; i < 9; i++)
      {
        SwPaperPoint at =
            sw_step_on_slope (p, 0.08 + 0.1 * i + 0.03 * row, (0.7 + 1.5 * row) * u);

        sw_figure_circle (p->figure, SW_ROLE_PIN, at.x_mm, at.y_mm, 0.28 * u);
      }
  for (int i = 0; i < 3; i++)
    sw_step_arrow (p, sw_step_on_slope (p, 0.2 + 0.3 * i, 8.0 * u),
                   sw_step_on_slope (p, 0.2 + 0.3 * i, 5.0 * u));
}

/* Open trench, spade in it, spoil on the upslope side. */
void
sw_step_dig_key (SwStepPicture *p)
{
  double u = p->unit_mm, y = p->crest.y_mm;
  SwPaperPoint hole[4], heap[3], blade[4];

  draw_ground (p, TRUE);
  key_hole (p, hole);
  heap[0] = (SwPaperPoint){ 0.3 * u, y };
  heap[1] = (SwPaperPoint){ hole[0].x_mm - 1.0 * u, y };
  heap[2] = (SwPaperPoint){ (heap[0].x_mm + heap[1].x_mm) / 2.0, y - 2.2 * u };
  sw_figure_area (p->figure, SW_ROLE_BACKFILL, heap, 3);
  {
    double x = (hole[1].x_mm + hole[2].x_mm) / 2.0 + 0.2 * u,
           foot = hole[1].y_mm - 0.3 * u;

    blade[0] = (SwPaperPoint){ x - 0.9 * u, foot - 2.6 * u };
    blade[1] = (SwPaperPoint){ x + 0.9 * u, foot - 2.6 * u };
    blade[2] = (SwPaperPoint){ x + 0.6 * u, foot };
    blade[3] = (SwPaperPoint){ x - 0.6 * u, foot };
    sw_figure_area (p->figure, SW_ROLE_DIMENSION, blade, 4);
    draw_handle (p, (SwPaperPoint){ x, foot - 2.6 * u }, 1.2, 6.0);
  }
}

/* Blanket's end in the trench, pinned to its floor. */
void
sw_step_anchor (SwStepPicture *p)
{
  double u = p->unit_mm, x;
  SwPaperPoint hole[4];

  draw_ground (p, TRUE);
  draw_blanket (p, 0.25);
  key_hole (p, hole);
  x = (hole[1].x_mm + hole[2].x_mm) / 2.0;
  sw_draft_pin (p->figure, x, hole[1].y_mm - 0.9 * u, 0.0, 1.0, 4.5 * u, 1.3 * u);
  sw_step_arrow (p, (SwPaperPoint){ x, hole[0].y_mm - 5.0 * u },
                 (SwPaperPoint){ x, hole[0].y_mm + 0.6 * u });
}

/* Trench filled and stamped down. */
void
sw_step_backfill (SwStepPicture *p)
{
  double u = p->unit_mm, x, y = p->crest.y_mm - 0.6 * u;
  SwPaperPoint hole[4];

  draw_filled (p, 0.25);
  key_hole (p, hole);
  x = (hole[1].x_mm + hole[2].x_mm) / 2.0;
  sw_figure_box (p->figure, SW_ROLE_DIMENSION, x - 1.7 * u, y - 0.8 * u, 3.4 * u,
                 0.8 * u);
  draw_handle (p, (SwPaperPoint){ x, y - 0.8 * u }, 0.0, 4.6);
  for (int side = -1; side <= 1; side += 2)
    sw_step_arrow (p, (SwPaperPoint){ x + side * 2.4 * u, y - 4.2 * u },
                   (SwPaperPoint){ x + side * 2.4 * u, y - 1.2 * u });
}

/* The roll on its way down the fall line. */
void
sw_step_unroll (SwStepPicture *p)
{
  double u = p->unit_mm;
  SwPaperPoint roll;

  draw_filled (p, 0.52);
  roll = sw_step_on_slope (p, 0.52, 2.3 * u);
  sw_figure_circle (p->figure, SW_ROLE_RUN, roll.x_mm, roll.y_mm, 1.9 * u);
  for (int ring = 0; ring < 3; ring++)
    {
      SwPaperPoint round[25];
      double radius = (1.9 - 0.6 * ring) * u;

      for (int i = 0; i <= 24; i++)
        round[i] = (SwPaperPoint){ roll.x_mm + radius * cos (i * G_PI / 12.0),
                                   roll.y_mm + radius * sin (i * G_PI / 12.0) };
      sw_figure_line (p->figure, SW_ROLE_RUN_EDGE, round, 25);
    }
  sw_step_arrow (p, sw_step_on_slope (p, 0.66, 3.4 * u),
                 sw_step_on_slope (p, 0.94, 3.4 * u));
}

/* Upslope piece over the downslope piece. */
void
sw_step_end_lap (SwStepPicture *p)
{
  double u = p->unit_mm;
  SwPaperPoint lower[2], upper[4];

  draw_ground (p, FALSE);
  lower[0] = sw_step_on_slope (p, 0.38, 0.5 * u);
  lower[1] = sw_step_on_slope (p, 1.0, 0.5 * u);
  upper[0] = sw_step_on_slope (p, 0.0, 0.5 * u);
  upper[1] = sw_step_on_slope (p, 0.34, 0.5 * u);
  upper[2] = sw_step_on_slope (p, 0.38, 1.5 * u);
  upper[3] = sw_step_on_slope (p, 0.64, 1.5 * u);
  sw_figure_line (p->figure, SW_ROLE_BLANKET, lower, 2);
  sw_figure_line (p->figure, SW_ROLE_BLANKET, upper, 4);
  pin_at (p, 0.46, 1.9);
  pin_at (p, 0.58, 1.9);
  sw_step_arrow (p, sw_step_on_slope (p, 0.12, 4.2 * u),
                 sw_step_on_slope (p, 0.5, 4.2 * u));
}

/* A fold of the blanket in a slot across the slope. */
void
sw_step_slot (SwStepPicture *p)
{
  double u = p->unit_mm, half = 1.3 * u, depth = 3.6 * u;
  SwPaperPoint at = sw_step_on_slope (p, 0.5, 0.0), a, b;

  draw_ground (p, FALSE);
  a = sw_step_on_slope (p, 0.0, OFF * u);
  b = sw_step_on_slope (p, 1.0, OFF * u);
  {
    double fall = half * tan (p->slope_rad), floor = at.y_mm + depth;
    SwPaperPoint hole[4] = { { at.x_mm - half, at.y_mm - fall },
                             { at.x_mm - half, floor },
                             { at.x_mm + half, floor },
                             { at.x_mm + half, at.y_mm + fall } };

    sw_figure_area (p->figure, SW_ROLE_BACKFILL, hole, 4);
    {
      SwPaperPoint line[6] = { a,       { hole[0].x_mm, hole[0].y_mm - OFF * u }, hole[1],
                               hole[2], { hole[3].x_mm, hole[3].y_mm - OFF * u }, b };

      sw_figure_line (p->figure, SW_ROLE_BLANKET, line, 6);
    }
    sw_draft_pin (p->figure, at.x_mm, floor, 0.0, 1.0, 3.2 * u, 1.3 * u);
  }
}

/* The lower end as this practice wants it. */
void
sw_step_toe (SwStepPicture *p)
{
  double u = p->unit_mm, x = p->toe.x_mm, y = p->toe.y_mm, off = OFF * u;
  SwToeKind kind = p->result->layout ? p->result->layout->practice->toe_kind : SW_TOE_ROW;
  SwPaperPoint top = sw_step_on_slope (p, 0.0, off);
  double right = fmin (x + 2.8 * u, p->figure->width_mm - 0.5);
  SwPaperPoint trench[4] = {
    top, { x + off, y - off }, { x + off, y + 3.0 * u }, { right, y + 3.0 * u }
  };
  SwPaperPoint fold[5] = { top,
                           { x, y - 3.0 * off },
                           { right, y - 3.0 * off },
                           { right, y - off },
                           { x, y - off } };
  SwPaperPoint row[2] = { top, { x, y - off } };

  draw_ground (p, FALSE);
  if (kind == SW_TOE_TRENCH)
    {
      sw_figure_box (p->figure, SW_ROLE_BACKFILL, x, y, right - x, 3.0 * u + off);
      sw_figure_line (p->figure, SW_ROLE_BLANKET, trench, 4);
      sw_draft_pin (p->figure, (x + right) / 2.0, y + 2.6 * u, 0.0, 1.0, 2.6 * u,
                    1.2 * u);
    }
  else if (kind == SW_TOE_FOLD)
    {
      sw_figure_line (p->figure, SW_ROLE_BLANKET, fold, 5);
      sw_draft_pin (p->figure, (x + right) / 2.0, y - 1.6 * u, 0.0, 1.0, 4.4 * u,
                    1.2 * u);
    }
  else
    {
      sw_figure_line (p->figure, SW_ROLE_BLANKET, row, 2);
      pin_at (p, 0.9, 0.9);
    }
}

/* A hard look at the finished face. */
void
sw_step_inspect (SwStepPicture *p)
{
  double u = p->unit_mm, radius = 3.6 * u;
  SwPaperPoint middle, ring[37];

  draw_filled (p, 1.0);
  for (int i = 1; i <= 4; i++)
    pin_at (p, 0.2 * i, 0.9);
  middle = sw_step_on_slope (p, 0.62, 4.6 * u);
  for (int i = 0; i <= 36; i++)
    ring[i] = (SwPaperPoint){ middle.x_mm + radius * cos (i * G_PI / 18.0),
                              middle.y_mm + radius * sin (i * G_PI / 18.0) };
  sw_figure_area (p->figure, SW_ROLE_WHITE, ring, 36);
  sw_figure_line (p->figure, SW_ROLE_FRAME, ring, 37);
  sw_step_segment (p, SW_ROLE_GROUND, middle.x_mm + radius * 0.72,
                   middle.y_mm - radius * 0.72, middle.x_mm + radius * 1.7,
                   middle.y_mm - radius * 1.7);
  {
    SwPaperPoint tick[3] = { { middle.x_mm - 1.7 * u, middle.y_mm + 0.1 * u },
                             { middle.x_mm - 0.4 * u, middle.y_mm + 1.5 * u },
                             { middle.x_mm + 1.9 * u, middle.y_mm - 1.5 * u } };

    sw_figure_line (p->figure, SW_ROLE_BLANKET, tick, 3);
  }
}
