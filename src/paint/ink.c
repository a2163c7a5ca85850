/* SPDX-License-Identifier: MIT */
#include "ink.h"

#include <math.h>
#include <string.h>

#include <slopewright/base/units.h>

#define DOTS_A_PATH 256       /* longer paths make some readers slow */
#define WIDEST_DOT_MM 35.0    /* libharu's widest line is 100 pt */
#define SAME_RADIUS_MM 0.0002 /* less than a PDF's last decimal */

gboolean
sw_ink_fills (SwColour fill)
{
  return fill.alpha > 0.0;
}

gboolean
sw_ink_hatches (const SwLook *look, SwColour line)
{
  return fabs (look->hatch_mm) > 0.0 && look->hatch_width_mm > 0.0 && line.alpha > 0.0;
}

gboolean
sw_ink_strokes (const SwLook *look, SwColour line)
{
  return look->width_mm > 0.0 && line.alpha > 0.0;
}

guint
sw_ink_dash_pt (const SwLook *look, guint16 dash_pt[4])
{
  guint count = 0;

  while (count < 4 && look->dash_mm[count] > 0.0)
    {
      const double whole_pt = round (look->dash_mm[count] * SW_PT_PER_MM);
      dash_pt[count++] = (guint16) CLAMP (whole_pt, 1.0, 100.0);
    }
  return count - count % 2;
}

SwPaperPoint
sw_ink_text_start (const SwItem *item, SwPaperPoint at, double width_mm)
{
  const double back_mm = item->align == SW_ALIGN_LEFT     ? 0.0
                         : item->align == SW_ALIGN_CENTRE ? width_mm / 2.0
                                                          : width_mm;

  return (SwPaperPoint){ at.x_mm - back_mm * cos (item->turn_rad),
                         at.y_mm + back_mm * sin (item->turn_rad) };
}

static double
radius_mm (const SwFigure *figure, guint index)
{
  const SwItem *item = &g_array_index (figure->items, SwItem, index);

  return sw_figure_item_points (figure, item)[1].x_mm;
}

static gboolean
look_makes_dots (const SwLook *look, SwColour line, SwColour fill)
{
  guint16 dash_pt[4];

  return sw_ink_strokes (look, line) && line.alpha >= 1.0
         && memcmp (&line, &fill, sizeof line) == 0
         && sw_ink_dash_pt (look, dash_pt) == 0;
}

guint
sw_ink_dots (const SwFigure *figure, guint first, const SwLook *look, SwColour line,
             SwColour fill)
{
  const SwItem *items = &g_array_index (figure->items, SwItem, first);
  const guint left = figure->items->len - first;
  guint count = 0;
  double model_mm;

  if (items->kind != SW_ITEM_CIRCLE || !look_makes_dots (look, line, fill))
    return 0;
  model_mm = radius_mm (figure, first);
  if (!(model_mm > 0.0) || sw_ink_dot_width_mm (figure, first, look) > WIDEST_DOT_MM)
    return 0;
  while (count < MIN (left, DOTS_A_PATH) && items[count].kind == SW_ITEM_CIRCLE
         && items[count].role == items->role
         && fabs (radius_mm (figure, first + count) - model_mm) < SAME_RADIUS_MM)
    count++;
  return count;
}

double
sw_ink_dot_width_mm (const SwFigure *figure, guint first, const SwLook *look)
{
  return 2.0 * radius_mm (figure, first) + look->width_mm;
}
