/* SPDX-License-Identifier: MIT */
#include "label-place.h"
#include <math.h>

#define HAIR_MM 0.01

/* A label nearer than this to what it speaks of needs no line to it. */
#define SHORT_LEADER_MM 1.0

/* Half the shadow that @box throws on the axis (@x, @y). */
static double
half_shadow (SwLabelBox box, double x, double y)
{
  double along = fabs (x * cos (box.turn_rad) - y * sin (box.turn_rad));
  double across = fabs (x * sin (box.turn_rad) + y * cos (box.turn_rad));

  return box.half_width_mm * along + box.half_height_mm * across;
}

/* Told without turning them: further apart than both their diagonals. */
static gboolean
are_far_apart (SwLabelBox a, SwLabelBox b)
{
  double x = b.x_mm - a.x_mm, y = b.y_mm - a.y_mm;
  double of_a = a.half_width_mm * a.half_width_mm + a.half_height_mm * a.half_height_mm;
  double of_b = b.half_width_mm * b.half_width_mm + b.half_height_mm * b.half_height_mm;

  /* (p + q)^2 is at most 2 (p^2 + q^2). */
  return x * x + y * y > 2.0 * (of_a + of_b);
}

/* Separating axis theorem: two convex boxes are apart if some side's direction shows a gap. */
gboolean
sw_label_boxes_meet (SwLabelBox a, SwLabelBox b)
{
  const double turns[4] = { a.turn_rad, a.turn_rad + G_PI_2, b.turn_rad,
                            b.turn_rad + G_PI_2 };

  if (are_far_apart (a, b))
    return FALSE;
  for (guint i = 0; i < G_N_ELEMENTS (turns); i++)
    {
      double x = cos (turns[i]), y = -sin (turns[i]);
      double apart = fabs ((b.x_mm - a.x_mm) * x + (b.y_mm - a.y_mm) * y);

      if (apart > half_shadow (a, x, y) + half_shadow (b, x, y) - HAIR_MM)
        return FALSE;
    }
  return TRUE;
}

gboolean
sw_label_box_is_inside (SwLabelBox box, double width_mm, double height_mm)
{
  double x = half_shadow (box, 1.0, 0.0), y = half_shadow (box, 0.0, 1.0);

  return box.x_mm - x >= -HAIR_MM && box.x_mm + x <= width_mm + HAIR_MM
         && box.y_mm - y >= -HAIR_MM && box.y_mm + y <= height_mm + HAIR_MM;
}

SwLabelBox
sw_label_strip (SwPaperPoint a, SwPaperPoint b, double half_mm)
{
  double dx = b.x_mm - a.x_mm, dy = b.y_mm - a.y_mm;

  return (SwLabelBox){ (a.x_mm + b.x_mm) / 2.0, (a.y_mm + b.y_mm) / 2.0,
                       hypot (dx, dy) / 2.0, half_mm, atan2 (-dy, dx) };
}

void
sw_label_round (SwBoxOnPaper thing, double half_width_mm, double half_height_mm,
                double off_mm, SwLabelSpot spots[SW_LABEL_WAYS])
{
  static const int ways[SW_LABEL_WAYS][2] = {
    { 0, -1 }, { 0, 1 }, { 1, 0 }, { -1, 0 }, { 1, -1 }, { -1, -1 }, { 1, 1 }, { -1, 1 }
  };
  double x = (thing.x0_mm + thing.x1_mm) / 2.0, y = (thing.y0_mm + thing.y1_mm) / 2.0;
  double right = (thing.x1_mm - thing.x0_mm) / 2.0 + half_width_mm + off_mm;
  double down = (thing.y1_mm - thing.y0_mm) / 2.0 + half_height_mm + off_mm;

  for (guint i = 0; i < SW_LABEL_WAYS; i++)
    spots[i] = (SwLabelSpot){ x + ways[i][0] * right, y + ways[i][1] * down, 0.0 };
}

double
sw_label_reading_turn_rad (double turn_rad)
{
  while (turn_rad > G_PI_2 + 1e-6)
    turn_rad -= G_PI;
  while (turn_rad <= -G_PI_2 + 1e-6)
    turn_rad += G_PI;
  return turn_rad;
}

double
sw_label_shadow_mm (SwLabelBox box, double turn_rad)
{
  return half_shadow (box, cos (turn_rad), -sin (turn_rad));
}

gboolean
sw_label_leader_end (SwLabelBox box, SwPaperPoint target, SwPaperPoint *end)
{
  double c = cos (box.turn_rad), s = sin (box.turn_rad);
  double u = (target.x_mm - box.x_mm) * c - (target.y_mm - box.y_mm) * s;
  double v = (target.x_mm - box.x_mm) * s + (target.y_mm - box.y_mm) * c;
  double near_u = CLAMP (u, -box.half_width_mm, box.half_width_mm);
  double near_v = CLAMP (v, -box.half_height_mm, box.half_height_mm);

  if (hypot (u - near_u, v - near_v) < SHORT_LEADER_MM)
    return FALSE;
  if (fabs (u) > box.half_width_mm)
    near_v = 0.0;
  *end = (SwPaperPoint){ box.x_mm + near_u * c + near_v * s,
                         box.y_mm - near_u * s + near_v * c };
  return TRUE;
}
