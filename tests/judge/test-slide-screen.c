/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "../out-of-range.h"
#include <slopewright/judge/slide-screen.h>

#define DEG (G_PI / 180.0)

static const SwSlideSoil loam = { 30.0 * DEG, 2000.0, 19000.0 };
static const SwSlideSoil clean_sand = { 34.0 * DEG, 0.0, 20000.0 };

static double
factor_of (const SwSlideSoil *soil, double depth_m, double angle, double pore)
{
  double factor = NAN;

  g_assert_cmpint (sw_slide_factor (soil, depth_m, angle, pore, &factor), ==, SW_OK);
  return factor;
}

static double
pore_of (const SwSlideSoil *soil, double wet, double angle)
{
  double pore = NAN;

  g_assert_cmpint (sw_pore_ratio (wet, 9810.0, soil->weight_n_per_m3, angle, &pore), ==,
                   SW_OK);
  return pore;
}

/* The same thing from forces: (c + (g z - m gw z) cos2 tan f) / (g z sin cos). */
static void
test_against_forces (void)
{
  for (double angle = 0.1; angle < 1.2; angle += 0.1)
    for (double wet = 0.0; wet <= 1.0; wet += 0.25)
      for (double depth = 0.2; depth < 5.0; depth *= 2.0)
        {
          double cos2 = cos (angle) * cos (angle);
          double weight = loam.weight_n_per_m3 * depth;
          double holds =
              loam.cohesion_pa
              + (weight - wet * 9810.0 * depth) * cos2 * tan (loam.friction_rad);
          double want = holds / (weight * sin (angle) * cos (angle));

          g_assert_cmpfloat_with_epsilon (
              factor_of (&loam, depth, angle, pore_of (&loam, wet, angle)), want,
              1e-12 * want);
        }
}

static void
test_directions (void)
{
  for (double angle = 0.1; angle < 1.2; angle += 0.1)
    {
      double wet = pore_of (&loam, 0.5, angle);

      g_assert_cmpfloat (factor_of (&loam, 1.0, angle, wet), <,
                         factor_of (&loam, 1.0, angle, 0.0));
      g_assert_cmpfloat (factor_of (&loam, 1.5, angle, wet), <,
                         factor_of (&loam, 1.0, angle, wet));
      if (angle < G_PI_4)
        g_assert_cmpfloat (factor_of (&loam, 1.0, angle + 0.01, 0.0), <,
                           factor_of (&loam, 1.0, angle, 0.0));
    }
}

/* Without cohesion depth does not matter, and at its angle of friction dry soil stands
 * at 1. */
static void
test_clean_sand (void)
{
  g_assert_cmpfloat_with_epsilon (factor_of (&clean_sand, 0.3, 0.5, 0.1),
                                  factor_of (&clean_sand, 3.0, 0.5, 0.1), 1e-12);
  g_assert_cmpfloat_with_epsilon (
      factor_of (&clean_sand, 1.0, clean_sand.friction_rad, 0.0), 1.0, 1e-12);
}

static void
test_depth_is_the_inverse (void)
{
  for (double angle = 0.4; angle < 1.2; angle += 0.1)
    for (double wanted = 0.8; wanted < 3.0; wanted += 0.4)
      {
        double pore = pore_of (&loam, 1.0, angle), depth = NAN;

        g_assert_cmpint (sw_slide_depth (&loam, angle, pore, wanted, &depth), ==, SW_OK);
        if (isfinite (depth))
          g_assert_cmpfloat_with_epsilon (factor_of (&loam, depth, angle, pore), wanted,
                                          1e-12);
        else
          g_assert_cmpfloat (factor_of (&loam, 1e9, angle, pore), >=, wanted);
      }
}

static void
test_depth_at_the_ends (void)
{
  double depth = NAN;

  g_assert_cmpint (sw_slide_depth (&clean_sand, 1.0, 0.0, 1.0, &depth), ==, SW_OK);
  g_assert_cmpfloat (depth, ==, 0.0);
  g_assert_cmpint (sw_slide_depth (&clean_sand, 0.2, 0.0, 1.0, &depth), ==, SW_OK);
  g_assert_true (isinf (depth));
}

/* Sand of 34 degrees at 2:1: 1.349 dry (tan 34 / 0.5 by hand), 0.6873 seeping with
 * 20 kN/m3, half way between them half wet. */
static void
test_screen (void)
{
  SwSlideScreen screen = { .limits = G_MAXUINT };

  g_assert_cmpint (sw_slide_screen (&clean_sand, 0.3, 3.0, atan (0.5), &screen), ==,
                   SW_OK);
  g_assert_cmpfloat_with_epsilon (screen.dry, 1.349017, 1e-6);
  g_assert_cmpfloat_with_epsilon (screen.full_seepage, 0.687324, 1e-6);
  g_assert_cmpfloat_with_epsilon (screen.half_wet, (1.349017 + 0.687324) / 2.0, 1e-6);
  g_assert_cmpfloat (screen.critical_depth_m, ==, 0.0);
  g_assert_cmphex (screen.limits, ==, SW_SLIDE_WITHIN);
  g_assert_cmpint (sw_slide_screen (&clean_sand, 0.301, 3.0, atan (0.5), &screen), ==,
                   SW_OK);
  g_assert_cmphex (screen.limits, ==, SW_SLIDE_NOT_THIN);
}

/* Critical depth as textbooks write it: c / (cos2 (g tan a - g' tan f)), g' = g - 9810. */
static void
test_critical_depth (void)
{
  double angle = 0.6, cos2 = cos (angle) * cos (angle);
  double lacking = 19000.0 * tan (angle) - (19000.0 - 9810.0) * tan (loam.friction_rad);
  SwSlideScreen screen = { .critical_depth_m = NAN };

  g_assert_cmpint (sw_slide_screen (&loam, 0.3, 9.0, angle, &screen), ==, SW_OK);
  g_assert_cmpfloat_with_epsilon (screen.critical_depth_m, 2000.0 / (cos2 * lacking),
                                  1e-12);
}

/* A soil without friction stands by cohesion alone: c / (g z sin cos). */
static void
test_cohesion_alone (void)
{
  static const SwSlideSoil clay = { 0.0, 10000.0, 18000.0 };

  g_assert_cmpfloat_with_epsilon (factor_of (&clay, 2.0, G_PI_4, 0.0),
                                  10000.0 / (18000.0 * 2.0 * 0.5), 1e-12);
  g_assert_cmpfloat_with_epsilon (factor_of (&clay, 2.0, G_PI_4, 0.5),
                                  10000.0 / (18000.0 * 2.0 * 0.5), 1e-12);
}

static void
test_refusals (void)
{
  SwSlideSoil soil = loam;
  SwSlideScreen screen = { 0 };
  double out;

  REFUSES (out, sw_pore_ratio (bad, 9810.0, 2e4, 0.5, &out));
  REFUSES (out, sw_pore_ratio (0.5, bad, 2e4, 0.5, &out));
  REFUSES (out, sw_pore_ratio (0.5, 9810.0, bad, 0.5, &out));
  REFUSES (out, sw_pore_ratio (0.5, 9810.0, 2e4, bad, &out));
  REFUSES (out, sw_slide_factor (&loam, bad, 0.5, 0.1, &out));
  REFUSES (out, sw_slide_factor (&loam, 1.0, bad, 0.1, &out));
  REFUSES (out, sw_slide_factor (&loam, 1.0, 0.5, bad, &out));
  REFUSES (out, sw_slide_depth (&loam, 0.5, 0.1, bad, &out));
  REFUSES (screen.dry, sw_slide_screen (&loam, bad, 9.0, 0.5, &screen));
  REFUSES (screen.dry, sw_slide_screen (&loam, 1.0, bad, 0.5, &screen));
  REFUSES (screen.dry, sw_slide_screen (&loam, 1.0, 9.0, bad, &screen));
  REFUSES (out, (soil.cohesion_pa = bad, sw_slide_factor (&soil, 1.0, 0.5, 0.1, &out)));
  soil = loam;
  REFUSES (out, (soil.friction_rad = bad, sw_slide_factor (&soil, 1.0, 0.5, 0.1, &out)));
  soil = loam;
  REFUSES (out,
           (soil.weight_n_per_m3 = bad, sw_slide_factor (&soil, 1.0, 0.5, 0.1, &out)));
  soil = loam;
  soil.friction_rad = G_PI_2;
  out = UNTOUCHED;
  g_assert_cmpint (sw_slide_factor (&soil, 1.0, 0.5, 0.1, &out), ==, SW_E_RANGE);
  g_assert_cmpint (sw_slide_factor (&loam, 0.0, 0.5, 0.1, &out), ==, SW_E_RANGE);
  g_assert_cmpint (sw_slide_factor (&loam, 1.0, 0.0, 0.1, &out), ==, SW_E_RANGE);
  g_assert_cmpint (sw_slide_factor (&loam, 1.0, G_PI_2, 0.0, &out), ==, SW_E_RANGE);
  g_assert_cmpint (sw_slide_depth (&soil, 0.5, 0.1, 1.0, &out), ==, SW_E_RANGE);
  g_assert_cmpint (sw_slide_depth (&loam, NAN, 0.1, 1.0, &out), ==, SW_E_RANGE);
  g_assert_cmpint (sw_slide_depth (&loam, 0.5, 0.9, 1.0, &out), ==, SW_E_RANGE);
  g_assert_cmpint (sw_pore_ratio (1.1, 9810.0, 2e4, 0.5, &out), ==, SW_E_RANGE);
  g_assert_cmpint (sw_slide_factor (&loam, 1.0, 0.5, 0.9, &out), ==, SW_E_RANGE);
  g_assert_cmpfloat (out, ==, UNTOUCHED);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/judge/slide-screen/against-forces", test_against_forces);
  g_test_add_func ("/judge/slide-screen/directions", test_directions);
  g_test_add_func ("/judge/slide-screen/clean-sand", test_clean_sand);
  g_test_add_func ("/judge/slide-screen/depth-is-the-inverse", test_depth_is_the_inverse);
  g_test_add_func ("/judge/slide-screen/depth-at-the-ends", test_depth_at_the_ends);
  g_test_add_func ("/judge/slide-screen/screen", test_screen);
  g_test_add_func ("/judge/slide-screen/critical-depth", test_critical_depth);
  g_test_add_func ("/judge/slide-screen/cohesion-alone", test_cohesion_alone);
  g_test_add_func ("/judge/slide-screen/refusals", test_refusals);
  return g_test_run ();
}
