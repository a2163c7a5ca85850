/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "../out-of-range.h"
#include <slopewright/base/units.h>
#include <slopewright/judge/sheet-flow.h>

#define MM_PER_H (1e-3 / 3600.0)

static SwSheetFlow
flow_of (double mm_per_h, double length_m, double hv, double roughness)
{
  SwSheetFlow flow = { .depth_m = NAN };

  g_assert_cmpint (sw_sheet_flow_on_plane (mm_per_h * MM_PER_H, length_m, atan (1.0 / hv),
                                           roughness, &flow),
                   ==, SW_OK);
  return flow;
}

/* What holds for any sheet: q = v h = i L, Manning's equation, shear = weight down the
 * face, and rain over the developed length fills the depth in the time to equilibrium. */
static void
test_identities (void)
{
  for (double mm_per_h = 5.0; mm_per_h < 200.0; mm_per_h *= 2.1)
    for (double hv = 0.5; hv < 30.0; hv *= 1.9)
      for (double n = 0.01; n < 1.0; n *= 3.0)
        {
          SwSheetFlow flow = flow_of (mm_per_h, 18.0, hv, n);
          double angle = atan (1.0 / hv), q = mm_per_h * MM_PER_H * 18.0;

          g_assert_cmpfloat_with_epsilon (flow.discharge_m2_per_s, q, 1e-12 * q);
          g_assert_cmpfloat_with_epsilon (flow.velocity_m_per_s * flow.depth_m, q,
                                          1e-12 * q);
          g_assert_cmpfloat_with_epsilon (
              pow (flow.depth_m, 5.0 / 3.0) * sqrt (sin (angle)) / n, q, 1e-12 * q);
          g_assert_cmpfloat_with_epsilon (flow.shear_pa,
                                          9810.0 * flow.depth_m * sin (angle), 1e-9);
          g_assert_cmpfloat_with_epsilon (flow.equilibrium_s * mm_per_h * MM_PER_H
                                              * cos (angle),
                                          flow.depth_m, 1e-12);
        }
}

static void
test_directions (void)
{
  SwSheetFlow base = flow_of (50.0, 20.0, 3.0, 0.05);
  SwSheetFlow rain = flow_of (60.0, 20.0, 3.0, 0.05),
              length = flow_of (50.0, 25.0, 3.0, 0.05);
  SwSheetFlow steep = flow_of (50.0, 20.0, 2.0, 0.05),
              rough = flow_of (50.0, 20.0, 3.0, 0.1);

  g_assert_cmpfloat (rain.shear_pa, >, base.shear_pa);
  g_assert_cmpfloat (length.shear_pa, >, base.shear_pa);
  g_assert_cmpfloat (steep.shear_pa, >, base.shear_pa);
  g_assert_cmpfloat (steep.depth_m, <, base.depth_m);
  g_assert_cmpfloat (rough.shear_pa, >, base.shear_pa);
  g_assert_cmpfloat (rough.velocity_m_per_s, <, base.velocity_m_per_s);
  g_assert_cmpfloat (rain.equilibrium_s, <, base.equilibrium_s);
}

/* Scaling by hand: q to the 0.6 for depth, so twice the rain is 2^0.6 deeper. */
static void
test_rain_scales (void)
{
  g_assert_cmpfloat_with_epsilon (flow_of (80.0, 20.0, 2.0, 0.04).depth_m
                                      / flow_of (40.0, 20.0, 2.0, 0.04).depth_m,
                                  pow (2.0, 0.6), 1e-12);
}

/* 100 ft down the face; kinematic number 20; 0.1 ft deep. */
static void
test_limits (void)
{
  double cosine = cos (atan (0.5));
  SwSheetFlow flat = flow_of (100.0, 1.0, 500.0, 0.01);
  SwSheetFlow deep = flow_of (200.0, 30.0, 20.0, 2.0);

  g_assert_cmphex (flow_of (50.0, 30.48 * cosine, 2.0, 0.05).limits, ==, SW_SHEET_WITHIN);
  g_assert_cmphex (flow_of (50.0, 30.49 * cosine, 2.0, 0.05).limits, ==,
                   SW_SHEET_TOO_LONG);
  g_assert_cmpfloat (flat.kinematic_number, <, 20.0);
  g_assert_cmphex (flat.limits & SW_SHEET_NOT_KINEMATIC, !=, 0);
  g_assert_cmpfloat (deep.depth_m, >, 0.03048);
  g_assert_cmphex (deep.limits, ==, SW_SHEET_TOO_DEEP);
}

/* Flags follow the numbers that are given beside them: 20, and 0.1 ft = 0.03048 m. */
static void
test_flags_follow_numbers (void)
{
  guint gentle = 0, deep = 0;

  for (double hv = 50.0; hv < 3000.0; hv *= 1.01)
    {
      SwSheetFlow flow = flow_of (100.0, 1.0, hv, 0.01);
      gboolean flagged = (flow.limits & SW_SHEET_NOT_KINEMATIC) != 0;

      g_assert_cmpint (flagged, ==, flow.kinematic_number <= 20.0);
      gentle += flagged;
    }
  for (double n = 0.3; n < 3.0; n *= 1.01)
    {
      SwSheetFlow flow = flow_of (200.0, 30.0, 20.0, n);
      gboolean flagged = (flow.limits & SW_SHEET_TOO_DEEP) != 0;

      g_assert_cmpint (flagged, ==, flow.depth_m > 0.03048);
      deep += flagged;
    }
  g_assert_cmpuint (gentle, >, 0);
  g_assert_cmpuint (deep, >, 0);
}

/* Dry or level, nothing drags; a lining that bears nothing has no reserve. */
static void
test_zeros (void)
{
  double out = NAN;

  g_assert_cmpint (sw_bed_shear (0.0, 0.5, &out), ==, SW_OK);
  g_assert_cmpfloat (out, ==, 0.0);
  g_assert_cmpint (sw_bed_shear (0.1, 0.0, &out), ==, SW_OK);
  g_assert_cmpfloat (out, ==, 0.0);
  g_assert_cmpint (sw_shear_reserve (0.0, 10.0, &out), ==, SW_OK);
  g_assert_cmpfloat (out, ==, 0.0);
}

/* TR-55 eq. 3-3 is commonly given in metres and mm with 0.0913 in place of 0.007. */
static void
test_travel_time_in_metres (void)
{
  double time_s = NAN,
         metric_h = 0.0913 * pow (0.15 * 25.0, 0.8) / (sqrt (80.0) * pow (0.4, 0.4));
  guint limits = G_MAXUINT;

  g_assert_cmpint (sw_sheet_travel_time (0.15, 25.0, 0.080, 0.4, &time_s, &limits), ==,
                   SW_OK);
  g_assert_cmpfloat_with_epsilon (time_s / 3600.0, metric_h, 1e-3 * metric_h);
  g_assert_cmphex (limits, ==, SW_SHEET_WITHIN);
  g_assert_cmpint (sw_sheet_travel_time (0.15, 30.48, 0.080, 0.4, &time_s, &limits), ==,
                   SW_OK);
  g_assert_cmphex (limits, ==, SW_SHEET_WITHIN);
  g_assert_cmpint (sw_sheet_travel_time (0.15, 31.0, 0.080, 0.4, &time_s, &limits), ==,
                   SW_OK);
  g_assert_cmphex (limits, ==, SW_SHEET_TOO_LONG);
}

/* At 2:1 the tangent would give 0.5 / 0.4472 = 1.118 times the shear. */
static void
test_sine_not_tangent (void)
{
  SwSheetFlow flow = flow_of (75.0, 30.0, 2.0, 0.04);
  double by_tangent = NAN;

  g_assert_cmpint (sw_bed_shear (flow.depth_m, 0.5, &by_tangent), ==, SW_OK);
  g_assert_cmpfloat_with_epsilon (by_tangent / flow.shear_pa, 1.118034, 1e-6);
}

static void
test_refusals (void)
{
  SwSheetFlow flow = { 0 };
  double out;

  REFUSES (flow.depth_m, sw_sheet_flow_on_plane (bad, 10.0, 0.3, 0.05, &flow));
  REFUSES (flow.depth_m, sw_sheet_flow_on_plane (1e-5, bad, 0.3, 0.05, &flow));
  REFUSES (flow.depth_m, sw_sheet_flow_on_plane (1e-5, 10.0, bad, 0.05, &flow));
  REFUSES (flow.depth_m, sw_sheet_flow_on_plane (1e-5, 10.0, 0.3, bad, &flow));
  REFUSES (out, sw_sheet_travel_time (bad, 1.0, 1.0, 1.0, &out, NULL));
  REFUSES (out, sw_sheet_travel_time (1.0, bad, 1.0, 1.0, &out, NULL));
  REFUSES (out, sw_sheet_travel_time (1.0, 1.0, bad, 1.0, &out, NULL));
  REFUSES (out, sw_sheet_travel_time (1.0, 1.0, 1.0, bad, &out, NULL));
  REFUSES (out, sw_bed_shear (bad, 0.5, &out));
  REFUSES (out, sw_bed_shear (0.5, bad, &out));
  REFUSES (out, sw_shear_reserve (bad, 10.0, &out));
  REFUSES (out, sw_shear_reserve (10.0, bad, &out));
  g_assert_cmpint (sw_sheet_flow_on_plane (0.0, 10.0, 0.3, 0.05, &flow), ==, SW_E_RANGE);
  g_assert_cmpint (sw_sheet_flow_on_plane (1e-5, 10.0, 0.0, 0.05, &flow), ==, SW_E_RANGE);
  g_assert_cmpint (sw_sheet_flow_on_plane (1e-5, 10.0, G_PI_2, 0.05, &flow), ==,
                   SW_E_RANGE);
  g_assert_cmpint (sw_shear_reserve (10.0, 0.0, &out), ==, SW_E_RANGE);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/judge/sheet-flow/identities", test_identities);
  g_test_add_func ("/judge/sheet-flow/directions", test_directions);
  g_test_add_func ("/judge/sheet-flow/rain-scales", test_rain_scales);
  g_test_add_func ("/judge/sheet-flow/limits", test_limits);
  g_test_add_func ("/judge/sheet-flow/flags-follow-numbers", test_flags_follow_numbers);
  g_test_add_func ("/judge/sheet-flow/zeros", test_zeros);
  g_test_add_func ("/judge/sheet-flow/travel-time-in-metres", test_travel_time_in_metres);
  g_test_add_func ("/judge/sheet-flow/sine-not-tangent", test_sine_not_tangent);
  g_test_add_func ("/judge/sheet-flow/refusals", test_refusals);
  return g_test_run ();
}
