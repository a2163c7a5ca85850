/* SPDX-License-Identifier: MIT */
#include <math.h>

#include <slopewright/figure/mark.h>

/* Proportions of marks on paper; common drafting practice, no source. */
#define HEAD_LENGTH_MM 2.0
#define HEAD_HALF_WIDTH_MM 0.45
#define EXTENSION_GAP_MM 0.8
#define EXTENSION_PAST_MM 1.2
#define OUTSIDE_TAIL_MM 4.0
#define LABEL_PAD_MM 0.6
#define LEADER_DOT_MM 0.35

/* Half the height of a capital, and of a knock-out, in ems. */
#define HALF_CAPITAL 0.36
#define HALF_KNOCK_OUT 0.56

#define SAME_POINT_MM 1e-9

static SwPaperPoint
along (SwPaperPoint from, SwPaperPoint unit, double distance_mm)
{
  return (SwPaperPoint){ from.x_mm + unit.x_mm * distance_mm,
                         from.y_mm + unit.y_mm * distance_mm };
}

/* To the left of the way as one sees it on paper, where y grows downwards. */
static SwPaperPoint
left_of (SwPaperPoint unit)
{
  return (SwPaperPoint){ unit.y_mm, -unit.x_mm };
}

static double
distance_mm (SwPaperPoint a, SwPaperPoint b)
{
  return hypot (b.x_mm - a.x_mm, b.y_mm - a.y_mm);
}

static SwPaperPoint
direction (SwPaperPoint from, SwPaperPoint to, double length_mm)
{
  return (SwPaperPoint){ (to.x_mm - from.x_mm) / length_mm,
                         (to.y_mm - from.y_mm) / length_mm };
}

static void
add_segment (SwFigure *figure, SwRole role, SwPaperPoint from, SwPaperPoint to)
{
  sw_figure_segment (figure, role, from.x_mm, from.y_mm, to.x_mm, to.y_mm);
}

void
sw_mark_arrow (SwFigure *figure, SwRole role, double x0_mm, double y0_mm, double x1_mm,
               double y1_mm)
{
  const SwPaperPoint tail = { x0_mm, y0_mm };
  const SwPaperPoint tip = { x1_mm, y1_mm };
  const double length_mm = distance_mm (tail, tip);

  if (!(length_mm > SAME_POINT_MM))
    return;

  const double head_mm = MIN (HEAD_LENGTH_MM, length_mm * 0.6);
  const double half_mm = HEAD_HALF_WIDTH_MM * head_mm / HEAD_LENGTH_MM;
  const SwPaperPoint unit = direction (tail, tip, length_mm);
  const SwPaperPoint base = along (tip, unit, -head_mm);
  const SwPaperPoint head[] = { tip, along (base, left_of (unit), half_mm),
                                along (base, left_of (unit), -half_mm) };

  /* The shaft ends at the head's base, or its butt would blunt the tip. */
  add_segment (figure, role, tail, base);
  sw_figure_area (figure, role, head, G_N_ELEMENTS (head));
}

/* Anticlockwise turn of text along @unit that reads from below or from the right. */
static double
reading_turn_rad (SwPaperPoint unit)
{
  const double tolerance_rad = 1e-6;
  double turn_rad = atan2 (-unit.y_mm, unit.x_mm);

  if (turn_rad > G_PI_2 + tolerance_rad)
    turn_rad -= G_PI;
  if (turn_rad <= -G_PI_2 + tolerance_rad)
    turn_rad += G_PI;
  return turn_rad;
}

/* Text whose middle is at @middle, on a white ground, turned. */
static void
add_turned_label (SwFigure *figure, SwRole role, SwPaperPoint middle, double width_mm,
                  double size_mm, double turn_rad, SwTypeface typeface, const char *text)
{
  const SwPaperPoint right = { cos (turn_rad), -sin (turn_rad) };
  const SwPaperPoint down = { -right.y_mm, right.x_mm };
  const double half_width_mm = width_mm / 2.0 + LABEL_PAD_MM;
  const double half_height_mm = HALF_KNOCK_OUT * size_mm;
  const SwPaperPoint left_end = along (middle, right, -half_width_mm);
  const SwPaperPoint right_end = along (middle, right, half_width_mm);
  const SwPaperPoint ground[] = { along (left_end, down, -half_height_mm),
                                  along (right_end, down, -half_height_mm),
                                  along (right_end, down, half_height_mm),
                                  along (left_end, down, half_height_mm) };
  const SwPaperPoint base = along (middle, down, HALF_CAPITAL * size_mm);

  sw_figure_area (figure, SW_ROLE_WHITE, ground, G_N_ELEMENTS (ground));
  sw_figure_text (figure, role, base.x_mm, base.y_mm, size_mm, SW_ALIGN_CENTRE, typeface,
                  turn_rad, text);
}

static void
add_extension (SwFigure *figure, SwPaperPoint measured, SwPaperPoint side,
               double offset_mm)
{
  const double sign = offset_mm < 0.0 ? -1.0 : 1.0;

  if (fabs (offset_mm) <= EXTENSION_GAP_MM)
    return;
  add_segment (figure, SW_ROLE_DIMENSION, along (measured, side, sign * EXTENSION_GAP_MM),
               along (measured, side, offset_mm + sign * EXTENSION_PAST_MM));
}

void
sw_mark_dimension (SwFigure *figure, const SwTextMeasure *measure, double x0_mm,
                   double y0_mm, double x1_mm, double y1_mm, double offset_mm,
                   double size_mm, const char *label)
{
  const SwPaperPoint start = { x0_mm, y0_mm };
  const SwPaperPoint end = { x1_mm, y1_mm };
  const double length_mm = distance_mm (start, end);

  if (!(length_mm > SAME_POINT_MM))
    return;

  const SwPaperPoint unit = direction (start, end, length_mm);
  const SwPaperPoint side = left_of (unit);
  const SwPaperPoint a = along (start, side, offset_mm);
  const SwPaperPoint b = along (end, side, offset_mm);
  const double width_mm =
      measure->width_mm (SW_FACE_REGULAR, size_mm, label, measure->data);
  const double needed_mm = width_mm + 2.0 * (LABEL_PAD_MM + HEAD_LENGTH_MM + 0.5);
  SwPaperPoint middle = along (a, unit, length_mm / 2.0);

  add_extension (figure, start, side, offset_mm);
  add_extension (figure, end, side, offset_mm);
  if (needed_mm <= length_mm)
    {
      sw_mark_arrow (figure, SW_ROLE_DIMENSION, middle.x_mm, middle.y_mm, a.x_mm, a.y_mm);
      sw_mark_arrow (figure, SW_ROLE_DIMENSION, middle.x_mm, middle.y_mm, b.x_mm, b.y_mm);
    }
  else
    {
      const SwPaperPoint before = along (a, unit, -OUTSIDE_TAIL_MM);
      const SwPaperPoint behind = along (b, unit, OUTSIDE_TAIL_MM);

      add_segment (figure, SW_ROLE_DIMENSION, a, b);
      sw_mark_arrow (figure, SW_ROLE_DIMENSION, before.x_mm, before.y_mm, a.x_mm, a.y_mm);
      sw_mark_arrow (figure, SW_ROLE_DIMENSION, behind.x_mm, behind.y_mm, b.x_mm, b.y_mm);
      middle = along (behind, unit, LABEL_PAD_MM + width_mm / 2.0);
    }
  add_turned_label (figure, SW_ROLE_TEXT, middle, width_mm, size_mm,
                    reading_turn_rad (unit), SW_FACE_REGULAR, label);
}

void
sw_mark_label (SwFigure *figure, const SwTextMeasure *measure, SwRole role, double x_mm,
               double y_mm, double size_mm, SwAlign align, SwTypeface typeface,
               const char *text)
{
  const double width_mm = measure->width_mm (typeface, size_mm, text, measure->data);
  const double to_middle_mm = align == SW_ALIGN_LEFT    ? width_mm / 2.0
                              : align == SW_ALIGN_RIGHT ? -width_mm / 2.0
                                                        : 0.0;
  const SwPaperPoint middle = { x_mm + to_middle_mm, y_mm };

  add_turned_label (figure, role, middle, width_mm, size_mm, 0.0, typeface, text);
}

void
sw_mark_leader (SwFigure *figure, const SwTextMeasure *measure, double x0_mm,
                double y0_mm, double x1_mm, double y1_mm, double size_mm,
                const char *text)
{
  const gboolean to_left = x1_mm < x0_mm;
  const double text_x_mm = x1_mm + (to_left ? -LABEL_PAD_MM : LABEL_PAD_MM);

  sw_figure_segment (figure, SW_ROLE_DIMENSION, x0_mm, y0_mm, x1_mm, y1_mm);
  sw_figure_circle (figure, SW_ROLE_DIMENSION, x0_mm, y0_mm, LEADER_DOT_MM);
  sw_mark_label (figure, measure, SW_ROLE_TEXT, text_x_mm, y1_mm, size_mm,
                 to_left ? SW_ALIGN_RIGHT : SW_ALIGN_LEFT, SW_FACE_REGULAR, text);
}
