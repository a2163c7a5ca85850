/* SPDX-License-Identifier: MIT */
#include <math.h>
#include <slopewright/judge/sheet-flow.h>
#include <slopewright/judge/slide-screen.h>

/* Ends of the face stop mattering about here: depth over length. */
#define THIN_LENGTHS 10.0

/* A pore ratio from sw_pore_ratio() may pass cos2 by a trace. */
#define RATIO_SLACK 1e-12

static gboolean
is_size (double size)
{
  return isfinite (size) && size > 0.0;
}

static gboolean
is_face (double angle_rad)
{
  return is_size (angle_rad) && angle_rad < G_PI_2;
}

static gboolean
is_soil (const SwSlideSoil *soil)
{
  return isfinite (soil->friction_rad) && soil->friction_rad >= 0.0
         && soil->friction_rad < G_PI_2 && isfinite (soil->cohesion_pa)
         && soil->cohesion_pa >= 0.0 && is_size (soil->weight_n_per_m3);
}

static gboolean
is_pore_ratio (double pore_ratio, double angle_rad)
{
  double cosine = cos (angle_rad);

  return isfinite (pore_ratio) && pore_ratio >= 0.0
         && pore_ratio <= cosine * cosine + RATIO_SLACK;
}

SwStatus
sw_pore_ratio (double wet_share, double water_n_per_m3, double soil_n_per_m3,
               double angle_rad, double *ratio)
{
  double cosine = cos (angle_rad);

  if (!isfinite (wet_share) || wet_share < 0.0 || wet_share > 1.0
      || !is_size (water_n_per_m3) || !is_size (soil_n_per_m3) || !is_face (angle_rad))
    return SW_E_RANGE;
  *ratio = wet_share * water_n_per_m3 / soil_n_per_m3 * cosine * cosine;
  return SW_OK;
}

static double
friction_part (const SwSlideSoil *soil, double angle_rad, double pore_ratio)
{
  double cosine = cos (angle_rad);

  return (1.0 - pore_ratio / (cosine * cosine)) * tan (soil->friction_rad)
         / tan (angle_rad);
}

/* Cohesion's part of the factor, times depth. */
static double
cohesion_depth (const SwSlideSoil *soil, double angle_rad)
{
  return soil->cohesion_pa / (soil->weight_n_per_m3 * sin (angle_rad) * cos (angle_rad));
}

SwStatus
sw_slide_factor (const SwSlideSoil *soil, double depth_m, double angle_rad,
                 double pore_ratio, double *factor)
{
  if (!is_soil (soil) || !is_size (depth_m) || !is_face (angle_rad)
      || !is_pore_ratio (pore_ratio, angle_rad))
    return SW_E_RANGE;
  *factor = friction_part (soil, angle_rad, pore_ratio)
            + cohesion_depth (soil, angle_rad) / depth_m;
  return SW_OK;
}

SwStatus
sw_slide_depth (const SwSlideSoil *soil, double angle_rad, double pore_ratio,
                double wanted, double *depth_m)
{
  double lacking;

  if (!is_soil (soil) || !is_face (angle_rad) || !is_pore_ratio (pore_ratio, angle_rad)
      || !is_size (wanted))
    return SW_E_RANGE;
  lacking = wanted - friction_part (soil, angle_rad, pore_ratio);
  *depth_m = lacking > 0.0 ? cohesion_depth (soil, angle_rad) / lacking : INFINITY;
  return SW_OK;
}

SwStatus
sw_slide_screen (const SwSlideSoil *soil, double depth_m, double length_m,
                 double angle_rad, SwSlideScreen *screen)
{
  SwSlideScreen found = { .limits = SW_SLIDE_WITHIN };
  double full_ratio = 0.0;
  SwStatus status = is_soil (soil) && is_size (length_m) ? SW_OK : SW_E_RANGE;

  if (status == SW_OK)
    status = sw_pore_ratio (1.0, SW_WATER_N_PER_M3, soil->weight_n_per_m3, angle_rad,
                            &full_ratio);
  if (status == SW_OK)
    status = sw_slide_factor (soil, depth_m, angle_rad, 0.0, &found.dry);
  if (status == SW_OK)
    status =
        sw_slide_factor (soil, depth_m, angle_rad, full_ratio / 2.0, &found.half_wet);
  if (status == SW_OK)
    status = sw_slide_factor (soil, depth_m, angle_rad, full_ratio, &found.full_seepage);
  if (status == SW_OK)
    status = sw_slide_depth (soil, angle_rad, full_ratio, 1.0, &found.critical_depth_m);
  if (status != SW_OK)
    return status;
  if (length_m < THIN_LENGTHS * depth_m)
    found.limits |= SW_SLIDE_NOT_THIN;
  *screen = found;
  return SW_OK;
}
