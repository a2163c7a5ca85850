/* SPDX-License-Identifier: MIT */
#include <math.h>

#include <slopewright/base/order.h>
#include <slopewright/figure/mark.h>

/* Closer lines than this are a fill; it also bounds the work. */
#define CLOSEST_MM 0.1

/*
 * In turned axes a hatch line is one value of u, and v runs along it. Rising
 * to the right on paper, where y grows downwards, is x + y = const.
 */
typedef struct
{
  double u_mm, v_mm;
} Turned;

static Turned
turn (SwPaperPoint p, double sense)
{
  return (Turned){ (p.x_mm + sense * p.y_mm) * G_SQRT2 / 2.0,
                   (p.x_mm - sense * p.y_mm) * G_SQRT2 / 2.0 };
}

static SwPaperPoint
turn_back (Turned t, double sense)
{
  return (SwPaperPoint){ (t.u_mm + t.v_mm) * G_SQRT2 / 2.0,
                         sense * (t.u_mm - t.v_mm) * G_SQRT2 / 2.0 };
}

/* Where the line u = @u_mm crosses the polygon's edges, ascending. */
static void
find_crossings (const SwPaperPoint *points, guint count, double sense, double u_mm,
                GArray *crossings)
{
  g_array_set_size (crossings, 0);
  for (guint i = 0; i < count; i++)
    {
      const Turned a = turn (points[i], sense);
      const Turned b = turn (points[(i + 1) % count], sense);

      /* Half open, so a line through a corner counts it once or not at all. */
      if ((a.u_mm <= u_mm) == (b.u_mm <= u_mm))
        continue;
      const double part = (u_mm - a.u_mm) / (b.u_mm - a.u_mm);
      const double v_mm = a.v_mm + part * (b.v_mm - a.v_mm);
      g_array_append_val (crossings, v_mm);
    }
  g_array_sort (crossings, sw_compare_doubles);
}

typedef struct
{
  double lowest_mm, highest_mm; /* of u */
} Reach;

static Reach
reach_of (const SwPaperPoint *points, guint count, double sense)
{
  Reach reach = { INFINITY, -INFINITY };

  for (guint i = 0; i < count; i++)
    {
      const double u_mm = turn (points[i], sense).u_mm;
      reach.lowest_mm = MIN (reach.lowest_mm, u_mm);
      reach.highest_mm = MAX (reach.highest_mm, u_mm);
    }
  return reach;
}

static gboolean
all_finite (const SwPaperPoint *points, guint count)
{
  for (guint i = 0; i < count; i++)
    if (!isfinite (points[i].x_mm) || !isfinite (points[i].y_mm))
      return FALSE;
  return TRUE;
}

void
sw_mark_hatch (const SwPaperPoint *points, guint count, double spacing_mm,
               double width_mm, double height_mm, GArray *ends)
{
  const SwPaperPoint sheet[] = {
    { 0.0, 0.0 }, { width_mm, 0.0 }, { width_mm, height_mm }, { 0.0, height_mm }
  };
  const double sense = spacing_mm < 0.0 ? -1.0 : 1.0;
  const double step_mm = MAX (fabs (spacing_mm), CLOSEST_MM);
  const Reach of_area = reach_of (points, count, sense);
  const Reach of_sheet = reach_of (sheet, G_N_ELEMENTS (sheet), sense);
  const double first = ceil (MAX (of_area.lowest_mm, of_sheet.lowest_mm) / step_mm);
  const double last = floor (MIN (of_area.highest_mm, of_sheet.highest_mm) / step_mm);
  g_autoptr (GArray) crossings = g_array_new (FALSE, FALSE, sizeof (double));

  g_array_set_size (ends, 0);
  if (!all_finite (points, count))
    return;
  for (double k = first; k <= last; k += 1.0)
    {
      find_crossings (points, count, sense, k * step_mm, crossings);
      for (guint i = 0; i + 1 < crossings->len; i += 2)
        for (guint j = i; j < i + 2; j++)
          {
            const Turned end = { k * step_mm, g_array_index (crossings, double, j) };
            const SwPaperPoint point = turn_back (end, sense);
            g_array_append_val (ends, point);
          }
    }
}
