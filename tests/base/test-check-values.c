/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "../check-rows.h"
#include <math.h>
#include <slopewright/base/count.h>
#include <slopewright/base/gradient.h>
#include <slopewright/base/polygon.h>
#include <slopewright/base/units.h>

static double
angle_rad (const CheckRow *row)
{
  double angle = check_input_or (row, "deg", NAN) * G_PI / 180.0;
  double hv = check_input_or (row, "hv", NAN);
  double percent = check_input_or (row, "percent", NAN);

  if (!isnan (hv))
    g_assert_cmpint (sw_gradient_from_hv (hv, &angle), ==, SW_OK);
  if (!isnan (percent))
    g_assert_cmpint (sw_gradient_from_ratio (percent / 100.0, &angle), ==, SW_OK);
  return angle;
}

static double
slope_degrees (const CheckRow *row)
{
  return angle_rad (row) * 180.0 / G_PI;
}

static double
slope_percent (const CheckRow *row)
{
  return 100.0 * sw_gradient_ratio (angle_rad (row));
}

static double
slope_tangent (const CheckRow *row)
{
  return sw_gradient_ratio (angle_rad (row));
}

static double
length_per_height (const CheckRow *row)
{
  double length_m = NAN;

  g_assert_cmpint (sw_ramp_length (check_input (row, "hv"), 1.0, &length_m), ==, SW_OK);
  return length_m;
}

static double
length_per_plan (const CheckRow *row)
{
  return length_per_height (row) / check_input (row, "hv");
}

static double
unit_factor (const CheckRow *row)
{
  g_autofree char *from = check_input_text (row, "from");

  if (g_str_equal (from, "lb/ft2"))
    return SW_PA_PER_PSF;
  if (g_str_equal (from, "lb/acre"))
    return SW_KG_PER_LB / SW_M2_PER_ACRE * SW_M2_PER_HA;
  g_assert_cmpstr (from, ==, "lb/1000ft2");
  return 1000.0 * SW_KG_PER_LB / (1000.0 * SW_M2_PER_FT2);
}

static double
count_up (const CheckRow *row)
{
  return sw_count_up_ratio (check_input (row, "quantity") / check_input (row, "each"));
}

static double
polygon_area (const CheckRow *row)
{
  g_autoptr (GArray) p = check_input_list (row, "p");
  SwRing ring = { (const SwPoint *) p->data, p->len / 2 };

  return sw_ring_area_m2 (ring);
}

static void
test_check_values (void)
{
  static const CheckQuantity quantities[] = {
    { "slope angle", slope_degrees },
    { "slope percent", slope_percent },
    { "slope length / plan length", length_per_plan },
    { "slope length / height", length_per_height },
    { "slope to degrees", slope_degrees },
    { "slope to percent", slope_percent },
    { "slope to tangent", slope_tangent },
    { "unit factor", unit_factor },
    { "count up", count_up },
    { "polygon area", polygon_area },
  };

  check_rows_run ("base", quantities, G_N_ELEMENTS (quantities));
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/base/check-values", test_check_values);
  return g_test_run ();
}
