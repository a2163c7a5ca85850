/* SPDX-License-Identifier: MIT */
#include <math.h>
#include <slopewright/base/polygon.h>
#include <slopewright/base/range.h>
#include <slopewright/ground/measured.h>

/* Common practice, no source. */
#define ALLOWED_RATIO 0.01

static double
distance (SwPoint a, SwPoint b)
{
  return hypot (b.x_m - a.x_m, b.y_m - a.y_m);
}

/* Where a tape of @from_m at @from and one of @to_m at @to meet, to the right of the way
 * from the one to the other when y points down. */
static gboolean
meet (SwPoint from, SwPoint to, double from_m, double to_m, SwPoint *at)
{
  double base_m = distance (from, to);
  double along_m = (from_m * from_m + base_m * base_m - to_m * to_m) / (2.0 * base_m);
  double off2_m2 = from_m * from_m - along_m * along_m;
  double ux = (to.x_m - from.x_m) / base_m, uy = (to.y_m - from.y_m) / base_m;

  if (!(off2_m2 > 0.0))
    return FALSE;
  at->x_m = from.x_m + along_m * ux - sqrt (off2_m2) * uy;
  at->y_m = from.y_m + along_m * uy + sqrt (off2_m2) * ux;
  return TRUE;
}

/* Angle at @apex between the tapes to @a and @b. */
static double
angle_at (SwPoint apex, SwPoint a, SwPoint b)
{
  double ax = a.x_m - apex.x_m, ay = a.y_m - apex.y_m;
  double bx = b.x_m - apex.x_m, by = b.y_m - apex.y_m;

  return atan2 (fabs (ax * by - ay * bx), ax * bx + ay * by);
}

static void
check (const SwTapedSides *sides, SwTapedShape *shape)
{
  const SwPoint *p = shape->corners;
  double at_c = angle_at (p[2], p[0], p[1]), at_d = angle_at (p[3], p[0], p[2]);

  shape->area_m2 = sw_ring_area_m2 ((SwRing){ p, 4 });
  shape->bd_m = distance (p[1], p[3]);
  shape->checked = sides->bd_m > 0.0;
  shape->residual_m = shape->checked ? sides->bd_m - shape->bd_m : 0.0;
  shape->allowed_m = fmax (SW_TAPED_ALLOWED_M, ALLOWED_RATIO * shape->bd_m);
  shape->sharpest_rad = fmin (at_c, at_d);
  shape->flattest_rad = fmax (at_c, at_d);
}

SwStatus
sw_taped_shape (const SwTapedSides *sides, SwTapedShape *shape)
{
  SwTapedShape made = { 0 };
  SwPoint *p = made.corners;

  if (!sw_is_positive (sides->ab_m) || !sw_is_positive (sides->bc_m)
      || !sw_is_positive (sides->cd_m) || !sw_is_positive (sides->da_m)
      || !sw_is_positive (sides->ac_m) || !sw_is_size (sides->bd_m))
    return SW_E_RANGE;
  p[1].x_m = sides->ab_m;
  if (!meet (p[0], p[1], sides->ac_m, sides->bc_m, &p[2])
      || !meet (p[0], p[2], sides->da_m, sides->cd_m, &p[3]))
    return SW_E_RANGE;
  /* B and D stand on either side of AC, so no sides cross. */
  if (!(p[3].y_m > 0.0))
    return SW_E_OUTLINE;
  check (sides, &made);
  *shape = made;
  return SW_OK;
}

static void
set_shape (SwFace *face, double run_m, double rise_m, const SwPoint *outline, guint count)
{
  const SwPoint section[] = { { 0.0, rise_m }, { run_m, 0.0 } };

  sw_face_set_section (face, section, G_N_ELEMENTS (section));
  sw_face_set_outline (face, outline, count);
  face->section_along_m = 0.0;
  face->crest_form = SW_CREST_STRAIGHT;
  face->crest_radius_m = 0.0;
}

static SwStatus
set_taped (const SwMeasured *measured, SwFace *face)
{
  SwTapedShape shape;
  SwStatus status = sw_taped_shape (&measured->sides, &shape);
  double down_m;

  if (status != SW_OK)
    return status;
  down_m = fmax (shape.corners[2].y_m, shape.corners[3].y_m);
  for (guint i = 0; i < 4; i++)
    shape.corners[i].y_m *= cos (measured->angle_rad);
  set_shape (face, down_m * cos (measured->angle_rad), down_m * sin (measured->angle_rad),
             shape.corners, 4);
  return SW_OK;
}

static SwStatus
set_rectangle (double run_m, double rise_m, double width_m, SwFace *face)
{
  const SwPoint outline[] = {
    { 0.0, 0.0 }, { width_m, 0.0 }, { width_m, run_m }, { 0.0, run_m }
  };

  if (!sw_is_positive (run_m) || !sw_is_positive (rise_m) || !sw_is_positive (width_m))
    return SW_E_RANGE;
  set_shape (face, run_m, rise_m, outline, G_N_ELEMENTS (outline));
  return SW_OK;
}

static gboolean
is_slope (double angle_rad)
{
  return sw_is_positive (angle_rad) && angle_rad < G_PI_2;
}

SwStatus
sw_measured_shape (const SwMeasured *measured, SwFace *face)
{
  SwStatus status = SW_E_RANGE;

  switch (measured->how)
    {
    case SW_OBTAINED_TAPED_ANGLE:
      if (is_slope (measured->angle_rad))
        status = set_rectangle (measured->length_m * cos (measured->angle_rad),
                                measured->length_m * sin (measured->angle_rad),
                                measured->width_m, face);
      break;
    case SW_OBTAINED_RISE_RATIO:
      status = set_rectangle (measured->rise_m * measured->hv, measured->rise_m,
                              measured->width_m, face);
      break;
    case SW_OBTAINED_RUN_RISE:
      status = set_rectangle (measured->run_m, measured->rise_m, measured->width_m, face);
      break;
    case SW_OBTAINED_TAPED_SHAPE:
      if (is_slope (measured->angle_rad))
        status = set_taped (measured, face);
      break;
    default:
      break;
    }
  if (status == SW_OK)
    face->obtained = measured->how;
  return status;
}
