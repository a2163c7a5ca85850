/* SPDX-License-Identifier: MIT */
#include <math.h>
#include <slopewright/base/units.h>
#include <slopewright/judge/sheet-flow.h>

#define KINEMATIC_LEAST 20.0
#define SHEET_LONGEST_M (100.0 * SW_M_PER_FT)
#define SHEET_DEEPEST_M (0.1 * SW_M_PER_FT)
#define S_PER_H 3600.0

/* Lengths from feet meet their limit with so much slack, metres. */
#define LENGTH_SLACK_M 1e-9

static gboolean
is_size (double size)
{
  return isfinite (size) && size > 0.0;
}

static guint
sheet_limits (const SwSheetFlow *flow, double length_m)
{
  guint limits = SW_SHEET_WITHIN;

  if (flow->kinematic_number <= KINEMATIC_LEAST)
    limits |= SW_SHEET_NOT_KINEMATIC;
  if (length_m > SHEET_LONGEST_M + LENGTH_SLACK_M)
    limits |= SW_SHEET_TOO_LONG;
  if (flow->depth_m > SHEET_DEEPEST_M + LENGTH_SLACK_M)
    limits |= SW_SHEET_TOO_DEEP;
  return limits;
}

SwStatus
sw_sheet_flow_on_plane (double rain_m_per_s, double length_m, double angle_rad,
                        double roughness, SwSheetFlow *flow)
{
  double sine, discharge, depth, velocity, froude2;

  if (!is_size (rain_m_per_s) || !is_size (length_m) || !is_size (angle_rad)
      || !is_size (roughness) || angle_rad >= G_PI_2)
    return SW_E_RANGE;
  sine = sin (angle_rad);
  discharge = rain_m_per_s * length_m;
  depth = pow (roughness * discharge / sqrt (sine), 0.6);
  velocity = discharge / depth;
  froude2 = velocity * velocity / (SW_STANDARD_GRAVITY_M_PER_S2 * depth);
  *flow = (SwSheetFlow){
    .discharge_m2_per_s = discharge,
    .depth_m = depth,
    .velocity_m_per_s = velocity,
    .shear_pa = SW_WATER_N_PER_M3 * depth * sine,
    .froude2 = froude2,
    .kinematic_number = length_m * tan (angle_rad) / (froude2 * depth),
    .equilibrium_s = depth / (rain_m_per_s * cos (angle_rad)),
  };
  flow->limits = sheet_limits (flow, length_m / cos (angle_rad));
  return SW_OK;
}

SwStatus
sw_sheet_travel_time (double roughness, double length_m, double rain_m, double gradient,
                      double *time_s, guint *limits)
{
  double path, rain_in;

  if (!is_size (roughness) || !is_size (length_m) || !is_size (rain_m)
      || !is_size (gradient))
    return SW_E_RANGE;
  path = roughness * length_m / SW_M_PER_FT;
  rain_in = rain_m / SW_M_PER_IN;
  *time_s = S_PER_H * 0.007 * pow (path, 0.8) / (sqrt (rain_in) * pow (gradient, 0.4));
  if (limits != NULL)
    *limits =
        length_m > SHEET_LONGEST_M + LENGTH_SLACK_M ? SW_SHEET_TOO_LONG : SW_SHEET_WITHIN;
  return SW_OK;
}

SwStatus
sw_bed_shear (double depth_m, double gradient, double *shear_pa)
{
  if (!isfinite (depth_m) || !isfinite (gradient) || depth_m < 0.0 || gradient < 0.0)
    return SW_E_RANGE;
  *shear_pa = SW_WATER_N_PER_M3 * depth_m * gradient;
  return SW_OK;
}

SwStatus
sw_shear_reserve (double permissible_pa, double shear_pa, double *reserve)
{
  if (!isfinite (permissible_pa) || permissible_pa < 0.0 || !is_size (shear_pa))
    return SW_E_RANGE;
  *reserve = permissible_pa / shear_pa;
  return SW_OK;
}
