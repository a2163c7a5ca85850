/* SPDX-License-Identifier: MIT */
#include "ink.h"

#include <math.h>

#include <slopewright/base/units.h>

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
