/* SPDX-License-Identifier: MIT */
#include "ground-private.h"
#include <math.h>

static SwStatus
check_section (const SwFace *face)
{
  if (face->n_section < 2)
    return SW_E_FEW_POINTS;
  for (guint i = 0; i < face->n_section; i++)
    if (!isfinite (face->section[i].x_m) || !isfinite (face->section[i].y_m))
      return SW_E_RANGE;
  for (guint i = 1; i < face->n_section; i++)
    if (face->section[i].x_m <= face->section[i - 1].x_m)
      return SW_E_SECTION;
  if (face->toe >= face->n_section || face->crest >= face->toe
      || face->section[face->crest].y_m <= face->section[face->toe].y_m)
    return SW_E_SECTION;
  return SW_OK;
}

static void
measure_down (SwGround *ground)
{
  const SwPoint *p = ground->section;

  ground->down_m = g_new (double, ground->count);
  ground->down_m[ground->crest] = 0.0;
  for (guint i = ground->crest + 1; i < ground->count; i++)
    ground->down_m[i] =
        ground->down_m[i - 1] + hypot (p[i].x_m - p[i - 1].x_m, p[i].y_m - p[i - 1].y_m);
  for (guint i = ground->crest; i > 0; i--)
    ground->down_m[i - 1] =
        ground->down_m[i] - hypot (p[i].x_m - p[i - 1].x_m, p[i].y_m - p[i - 1].y_m);
}

SwStatus
sw_ground_new (const SwFace *face, SwGround **ground)
{
  SwStatus status = check_section (face);
  SwGround *made;

  if (status != SW_OK)
    return status;
  made = g_new0 (SwGround, 1);
  made->count = face->n_section;
  made->crest = face->crest;
  made->toe = face->toe;
  made->section = g_memdup2 (face->section, face->n_section * sizeof (SwPoint));
  measure_down (made);
  *ground = made;
  return SW_OK;
}

void
sw_ground_free (SwGround *ground)
{
  if (ground == NULL)
    return;
  g_free (ground->section);
  g_free (ground->down_m);
  g_free (ground);
}

double
sw_ground_crest_out_m (const SwGround *ground)
{
  return ground->section[ground->crest].x_m;
}

double
sw_ground_toe_out_m (const SwGround *ground)
{
  return ground->section[ground->toe].x_m;
}

/* Index of the stretch that holds @out_m: 0 before the first point, count after the last. */
static guint
stretch_at (const SwGround *ground, double out_m)
{
  guint low = 0, high = ground->count;

  while (low < high)
    {
      guint middle = (low + high) / 2;

      if (ground->section[middle].x_m <= out_m)
        low = middle + 1;
      else
        high = middle;
    }
  return low;
}

double
sw_ground_up_m (const SwGround *ground, SwPoint plan)
{
  guint i = stretch_at (ground, plan.y_m);
  const SwPoint *p = ground->section;

  /* Beyond the drawn section the ground is taken as level. */
  if (i == 0)
    return p[0].y_m;
  if (i == ground->count)
    return p[i - 1].y_m;
  return p[i - 1].y_m
         + (p[i].y_m - p[i - 1].y_m) * (plan.y_m - p[i - 1].x_m)
               / (p[i].x_m - p[i - 1].x_m);
}

double
sw_ground_down_m (const SwGround *ground, SwPoint plan)
{
  guint i = stretch_at (ground, plan.y_m);
  const SwPoint *p = ground->section;
  const double *d = ground->down_m;

  if (i == 0)
    return d[0] + (plan.y_m - p[0].x_m);
  if (i == ground->count)
    return d[i - 1] + (plan.y_m - p[i - 1].x_m);
  return d[i - 1]
         + (d[i] - d[i - 1]) * (plan.y_m - p[i - 1].x_m) / (p[i].x_m - p[i - 1].x_m);
}

double
sw_ground_out_m (const SwGround *ground, double along_m, double down_m)
{
  const SwPoint *p = ground->section;
  const double *d = ground->down_m;
  guint i = 0;

  while (i < ground->count && d[i] <= down_m)
    i++;
  if (i == 0)
    return p[0].x_m + (down_m - d[0]);
  if (i == ground->count)
    return p[i - 1].x_m + (down_m - d[i - 1]);
  return p[i - 1].x_m
         + (p[i].x_m - p[i - 1].x_m) * (down_m - d[i - 1]) / (d[i] - d[i - 1]);
}

double
sw_ground_length_m (const SwGround *ground, SwPoint a, SwPoint b)
{
  SwPoint from = a.y_m <= b.y_m ? a : b, to = a.y_m <= b.y_m ? b : a;
  double out = to.y_m - from.y_m, along = to.x_m - from.x_m;
  double length_m = 0.0;
  SwPoint at = from;
  guint i;

  if (out <= 0.0)
    return fabs (along);
  for (i = stretch_at (ground, from.y_m); i <= ground->count; i++)
    {
      gboolean last = i == ground->count || ground->section[i].x_m >= to.y_m;
      double y = last ? to.y_m : ground->section[i].x_m;
      SwPoint next = { from.x_m + along * (y - from.y_m) / out, y };
      double rise = sw_ground_up_m (ground, next) - sw_ground_up_m (ground, at);

      length_m += hypot (hypot (next.x_m - at.x_m, next.y_m - at.y_m), rise);
      at = next;
      if (last)
        break;
    }
  return length_m;
}

/* Part of the line integral of down d(along) over one edge; exact, since down is linear
 * between breaks. */
static double
edge_area_m2 (const SwGround *ground, SwPoint a, SwPoint b)
{
  double out = b.y_m - a.y_m, along = b.x_m - a.x_m, area = 0.0;
  SwPoint low = out >= 0.0 ? a : b, high = out >= 0.0 ? b : a, at = low;
  double sign = out >= 0.0 ? 1.0 : -1.0;

  for (guint i = stretch_at (ground, low.y_m);; i++)
    {
      gboolean last = i >= ground->count || ground->section[i].x_m >= high.y_m;
      SwPoint next = high;

      if (!last)
        {
          next.y_m = ground->section[i].x_m;
          next.x_m = a.x_m + along * (next.y_m - a.y_m) / out;
        }
      area += sign * (next.x_m - at.x_m)
              * (sw_ground_down_m (ground, at) + sw_ground_down_m (ground, next)) / 2.0;
      at = next;
      if (last)
        return area;
    }
}

double
sw_ground_area_m2 (const SwGround *ground, SwRing plan)
{
  double area = 0.0;

  /* The extruded surface unfolds without stretch, so its area is that of the
   * unfolded outline: Green's theorem over (along, down). */
  for (guint i = 0, j = plan.count - 1; i < plan.count; j = i++)
    area += edge_area_m2 (ground, plan.points[j], plan.points[i]);
  return fabs (area);
}

double
sw_ground_steepest_rad (const SwGround *ground, double out_from_m, double out_to_m)
{
  const SwPoint *p = ground->section;
  double steepest = 0.0;

  for (guint i = 1; i < ground->count; i++)
    if (p[i].x_m > out_from_m && p[i - 1].x_m < out_to_m)
      steepest = fmax (steepest,
                       atan2 (fabs (p[i].y_m - p[i - 1].y_m), p[i].x_m - p[i - 1].x_m));
  return steepest;
}

double
sw_ground_mean_rad (const SwGround *ground, double out_from_m, double out_to_m)
{
  SwPoint from = { 0.0, out_from_m }, to = { 0.0, out_to_m };

  return atan2 (sw_ground_up_m (ground, from) - sw_ground_up_m (ground, to),
                out_to_m - out_from_m);
}
