/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "rows.h"
#include <slopewright/judge/sheet-flow.h>
#include <slopewright/judge/slide-screen.h>

static double
input_angle (const CheckRow *row)
{
  double hv = check_input_or (row, "hv", NAN), sine = check_input_or (row, "sine", NAN);
  double angle_rad = NAN;

  if (!isnan (sine))
    return asin (sine);
  if (isnan (hv))
    return rows_radians (check_input (row, "angle_deg"));
  MUST (sw_gradient_from_hv (hv, &angle_rad));
  return angle_rad;
}

static SwSheetFlow
sheet (const CheckRow *row)
{
  SwSheetFlow flow = { .depth_m = NAN };

  MUST (sw_sheet_flow_on_plane (check_input (row, "rain_mm_per_h") / 1000.0 / 3600.0,
                                check_input (row, "length_m"), input_angle (row),
                                check_input (row, "n"), &flow));
  return flow;
}

static double
sheet_discharge (const CheckRow *row)
{
  return sheet (row).discharge_m2_per_s;
}

static double
sheet_depth (const CheckRow *row)
{
  return sheet (row).depth_m;
}

static double
sheet_velocity (const CheckRow *row)
{
  return sheet (row).velocity_m_per_s;
}

static double
sheet_shear (const CheckRow *row)
{
  return sheet (row).shear_pa;
}

static double
sheet_froude2 (const CheckRow *row)
{
  return sheet (row).froude2;
}

static double
sheet_kinematic_number (const CheckRow *row)
{
  return sheet (row).kinematic_number;
}

static double
sheet_equilibrium (const CheckRow *row)
{
  return sheet (row).equilibrium_s;
}

static double
sheet_travel_time (const CheckRow *row)
{
  double got = NAN;

  MUST (sw_sheet_travel_time (check_input (row, "n"),
                              check_input (row, "length_ft") * SW_M_PER_FT,
                              check_input (row, "rain_in") * SW_M_PER_IN,
                              check_input (row, "gradient"), &got, NULL));
  return got / 3600.0;
}

static double
bed_shear (const CheckRow *row)
{
  double got = NAN;

  MUST (sw_bed_shear (check_input (row, "depth_m"), check_input (row, "gradient"), &got));
  return got;
}

static double
lining_fails (const CheckRow *row)
{
  double reserve = NAN;

  MUST (sw_shear_reserve (check_input (row, "permissible_pa"),
                          check_input (row, "shear_pa"), &reserve));
  return reserve < 1.0;
}

static double
pore_ratio (const CheckRow *row)
{
  double wet = check_input_or (row, "wet", 0.0), got = NAN;

  if (wet <= 0.0)
    return 0.0;
  MUST (sw_pore_ratio (wet, check_input (row, "water_kn_per_m3") * 1000.0,
                       check_input (row, "weight_kn_per_m3") * 1000.0, input_angle (row),
                       &got));
  return got;
}

static SwSlideSoil
input_soil (const CheckRow *row)
{
  return (SwSlideSoil){
    .friction_rad = rows_radians (check_input (row, "friction_deg")),
    .cohesion_pa = check_input_or (row, "cohesion_kpa", 0.0) * 1000.0,
    .weight_n_per_m3 = check_input (row, "weight_kn_per_m3") * 1000.0,
  };
}

static double
slide_factor (const CheckRow *row)
{
  SwSlideSoil soil = input_soil (row);
  double got = NAN;

  MUST (sw_slide_factor (&soil, check_input (row, "depth_m"), input_angle (row),
                         pore_ratio (row), &got));
  return got;
}

static double
slide_depth (const CheckRow *row)
{
  SwSlideSoil soil = input_soil (row);
  double got = NAN;

  MUST (sw_slide_depth (&soil, input_angle (row), pore_ratio (row),
                        check_input (row, "wanted"), &got));
  return got;
}

/* What the pore ratio leaves of the weight under seepage along the face. */
static double
buoyant_weight (const CheckRow *row)
{
  double cosine = cos (input_angle (row));

  return check_input (row, "weight_kn_per_m3")
         * (1.0 - pore_ratio (row) / (cosine * cosine));
}

const CheckQuantity rows_water[] = {
  { "sheet discharge", sheet_discharge },
  { "sheet depth", sheet_depth },
  { "sheet velocity", sheet_velocity },
  { "sheet shear", sheet_shear },
  { "sheet Froude number squared", sheet_froude2 },
  { "sheet kinematic number", sheet_kinematic_number },
  { "sheet time to equilibrium", sheet_equilibrium },
  { "sheet travel time", sheet_travel_time },
  { "bed shear", bed_shear },
  { "lining fails", lining_fails },
  { "pore ratio", pore_ratio },
  { "slide factor", slide_factor },
  { "slide depth", slide_depth },
  { "buoyant weight", buoyant_weight },
};
const guint n_rows_water = G_N_ELEMENTS (rows_water);
