/* SPDX-License-Identifier: MIT */
#include "label-span.h"
#include "drafting.h"
#include <math.h>

/* A line counts as upright within about 17 degrees. */
#define UPRIGHT_COSINE 0.3

/* A text beside its line may be so many times as long. */
#define BESIDE_RATIO 1.6

/* A text's middle lies so many times its height off a line that it stands beside. */
#define BESIDE_ROWS 1.15

double
sw_span_length_mm (const SwLabelSpan *span)
{
  return hypot (span->x1_mm - span->x0_mm, span->y1_mm - span->y0_mm);
}

gboolean
sw_span_is_cramped (const SwLabelSpan *span, double width_mm)
{
  return width_mm + 2.0 * (SW_LABEL_PAD_MM + SW_ARROW_MM) > sw_span_length_mm (span);
}

/* A place so far along the dimension line from its middle, and so far off it. */
static SwLabelSpot
spot_at (const SwLabelSpan *span, double along_mm, double off_mm, double turn_rad)
{
  double length = sw_span_length_mm (span);
  double ux = (span->x1_mm - span->x0_mm) / length;
  double uy = (span->y1_mm - span->y0_mm) / length;
  double off = span->offset_mm + off_mm;

  return (SwLabelSpot){ (span->x0_mm + span->x1_mm) / 2.0 + ux * along_mm + uy * off,
                        (span->y0_mm + span->y1_mm) / 2.0 + uy * along_mm - ux * off,
                        turn_rad };
}

static guint
roomy_spots (const SwLabelSpan *span, double room_mm, double beside_mm, double turn_rad,
             SwLabelSpot *spots)
{
  static const double shares[] = { 0.0, 0.5, -0.5, 1.0, -1.0 };
  static const double beside_shares[] = { 0.0, 0.75, -0.75 };
  guint n = 0;

  for (; n < G_N_ELEMENTS (shares); n++)
    spots[n] = spot_at (span, room_mm * shares[n], 0.0, turn_rad);
  for (int side = 1; side >= -1; side -= 2)
    for (guint i = 0; i < G_N_ELEMENTS (beside_shares); i++)
      spots[n++] = spot_at (span, room_mm * beside_shares[i], side * beside_mm, turn_rad);
  return n;
}

static guint
cramped_spots (const SwLabelSpan *span, double width_mm, double beside_mm,
               double turn_rad, SwLabelSpot *spots)
{
  double length = sw_span_length_mm (span), sign = beside_mm < 0.0 ? -1.0 : 1.0;
  double beyond_mm =
      length / 2.0 + width_mm / 2.0 + 2.0 * SW_ARROW_MM + 2.0 * SW_LABEL_PAD_MM;
  double level_mm = sign * (width_mm / 2.0 + 2.0 * SW_LABEL_PAD_MM);
  gboolean is_upright = fabs (span->x1_mm - span->x0_mm) < UPRIGHT_COSINE * length;
  guint n = 0;

  /* On the side away from the thing, and level where the line is nearly upright. */
  if (width_mm <= length * BESIDE_RATIO)
    spots[n++] = spot_at (span, 0.0, beside_mm, turn_rad);
  if (is_upright)
    spots[n++] = spot_at (span, 0.0, level_mm, 0.0);
  spots[n++] = spot_at (span, beyond_mm, 0.0, turn_rad);
  spots[n++] = spot_at (span, -beyond_mm, 0.0, turn_rad);
  if (width_mm <= length * BESIDE_RATIO)
    spots[n++] = spot_at (span, 0.0, -beside_mm, turn_rad);
  if (is_upright)
    spots[n++] = spot_at (span, 0.0, -level_mm, 0.0);
  return n;
}

guint
sw_span_spots (const SwLabelSpan *span, double width_mm, double size_mm,
               SwLabelSpot spots[SW_SPAN_SPOTS])
{
  double turn = sw_label_reading_turn_rad (
      atan2 (span->y0_mm - span->y1_mm, span->x1_mm - span->x0_mm));
  double beside_mm = (span->offset_mm < 0.0 ? -1.0 : 1.0) * size_mm * BESIDE_ROWS;
  double room_mm =
      (sw_span_length_mm (span) - width_mm) / 2.0 - SW_LABEL_PAD_MM - SW_ARROW_MM;

  if (sw_span_is_cramped (span, width_mm))
    return cramped_spots (span, width_mm, beside_mm, turn, spots);
  return roomy_spots (span, room_mm, beside_mm, turn, spots);
}

void
sw_span_lines (const SwLabelSpan *span, SwLabelBox lines[SW_SPAN_LINES])
{
  double length = sw_span_length_mm (span), off = span->offset_mm;
  double nx = (span->y1_mm - span->y0_mm) / length;
  double ny = (span->x0_mm - span->x1_mm) / length;
  SwPaperPoint p[2] = { { span->x0_mm, span->y0_mm }, { span->x1_mm, span->y1_mm } };
  SwPaperPoint q[2];

  for (guint i = 0; i < 2; i++)
    {
      q[i] = (SwPaperPoint){ p[i].x_mm + nx * off, p[i].y_mm + ny * off };
      lines[i] = sw_label_strip (p[i], q[i], SW_LABEL_LINE_MM);
    }
  lines[2] = sw_label_strip (q[0], q[1], SW_LABEL_LINE_MM);
}

gboolean
sw_span_tail (const SwLabelSpan *span, SwLabelBox box, SwPaperPoint *from,
              SwPaperPoint *to)
{
  double half = sw_span_length_mm (span) / 2.0;
  SwLabelSpot middle = spot_at (span, 0.0, 0.0, 0.0);
  double ux = (span->x1_mm - span->x0_mm) / half / 2.0;
  double uy = (span->y1_mm - span->y0_mm) / half / 2.0;
  double along = (box.x_mm - middle.x_mm) * ux + (box.y_mm - middle.y_mm) * uy;
  double sign = along < 0.0 ? -1.0 : 1.0, begins = fabs (along) - box.half_width_mm;

  if (begins <= half)
    return FALSE;
  *from =
      (SwPaperPoint){ middle.x_mm + sign * half * ux, middle.y_mm + sign * half * uy };
  *to = (SwPaperPoint){ middle.x_mm + sign * begins * ux,
                        middle.y_mm + sign * begins * uy };
  return TRUE;
}

gboolean
sw_span_is_inside (const SwLabelSpan *span, double width_mm, double height_mm)
{
  SwLabelBox lines[SW_SPAN_LINES];

  sw_span_lines (span, lines);
  lines[2].half_height_mm = 0.0;
  return sw_label_box_is_inside (lines[2], width_mm, height_mm);
}
