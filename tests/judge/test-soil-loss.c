/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "../out-of-range.h"
#include <slopewright/judge/soil-loss.h>

/* A soil of silt loam, as a start for changing one thing. */
static const SwErodibilitySoil plain = { 0.60, 0.15, 0.02, 3, 3 };

static double
k_of (SwErodibilitySoil soil)
{
  double k = NAN;

  g_assert_cmpint (sw_erodibility (&soil, &k, NULL), ==, SW_OK);
  return k;
}

/* A = R K LS C P in US units, converted, is the SI product of the converted factors. */
static void
test_units_agree (void)
{
  for (double r = 10.0; r < 700.0; r *= 1.7)
    for (double k = 0.02; k < 0.7; k *= 1.5)
      {
        double us = NAN, si = NAN;

        g_assert_cmpint (sw_soil_loss (r, k, 6.2, 0.1, 0.9, &us), ==, SW_OK);
        g_assert_cmpint (sw_soil_loss (r * sw_erosivity_si_per_us (),
                                       k * sw_erodibility_si_per_us (), 6.2, 0.1, 0.9,
                                       &si),
                         ==, SW_OK);
        g_assert_cmpfloat_with_epsilon (si, us * sw_soil_loss_si_per_us (), 1e-12 * si);
      }
}

static void
test_cover_scales (void)
{
  double bare = NAN, covered = NAN, kept = NAN;

  g_assert_cmpint (sw_soil_loss (1000.0, 0.04, 6.2, 1.0, 1.0, &bare), ==, SW_OK);
  g_assert_cmpint (sw_soil_loss (1000.0, 0.04, 6.2, 0.13, 1.0, &covered), ==, SW_OK);
  g_assert_cmpint (sw_soil_loss_reduction (1.0, 0.13, &kept), ==, SW_OK);
  g_assert_cmpfloat_with_epsilon (1.0 - covered / bare, kept, 1e-12);
  g_assert_cmpint (sw_soil_loss_reduction (0.5, 1.0, &kept), ==, SW_OK);
  g_assert_cmpfloat_with_epsilon (kept, -1.0, 1e-12);
}

/* October to March: 90 % fallen by the start, 25 % by the end, one new year between:
 * (1 + 0.25 - 0.90) x 100 = 35, by hand. */
static void
test_period_over_new_year (void)
{
  double r = UNTOUCHED;

  g_assert_cmpint (sw_erosivity_of_period (100.0, 1, 0.90, 0.25, &r), ==, SW_OK);
  g_assert_cmpfloat_with_epsilon (r, 35.0, 1e-9);
  r = UNTOUCHED;
  g_assert_cmpint (sw_erosivity_of_period (100.0, 0, 0.90, 0.25, &r), ==, SW_E_RANGE);
  g_assert_cmpfloat (r, ==, UNTOUCHED);
}

/* What the nomograph shows: clay, organic matter and open structure hold the soil;
 * silt and slow drainage do not. */
static void
test_erodibility_directions (void)
{
  SwErodibilitySoil clay = plain, organic = plain, silt = plain, open = plain,
                    slow = plain;

  clay.clay = 0.30;
  organic.organic = 0.03;
  silt.silt_and_fine_sand = 0.68;
  open.structure = 2;
  slow.permeability = 4;
  g_assert_cmpfloat (k_of (clay), <, k_of (plain));
  g_assert_cmpfloat (k_of (organic), <, k_of (plain));
  g_assert_cmpfloat (k_of (silt), >, k_of (plain));
  g_assert_cmpfloat (k_of (open), <, k_of (plain));
  g_assert_cmpfloat (k_of (slow), >, k_of (plain));
}

static void
test_erodibility_limits (void)
{
  SwErodibilitySoil soil = plain;
  double k = NAN;
  guint limits = G_MAXUINT;

  soil.organic = 0.04;
  soil.silt_and_fine_sand = 0.70;
  g_assert_cmpint (sw_erodibility (&soil, &k, &limits), ==, SW_OK);
  g_assert_cmphex (limits, ==, SW_ERODIBILITY_WITHIN);
  soil.organic = 0.10;
  soil.silt_and_fine_sand = 0.71;
  g_assert_cmpint (sw_erodibility (&soil, &k, &limits), ==, SW_OK);
  g_assert_cmphex (limits, ==, SW_ERODIBILITY_TOO_SILTY | SW_ERODIBILITY_ORGANIC_CAPPED);
  soil.organic = 0.04;
  g_assert_cmpfloat_with_epsilon (k, k_of (soil), 1e-15);
}

/* Clean rapid sand: 2.1e-4 x (5 x 98)^1.14 x 12 = 2.94, less 3.25 and 5, is below 0. */
static void
test_erodibility_without_answer (void)
{
  const SwErodibilitySoil sand = { 0.05, 0.02, 0.0, 1, 1 };
  double k = UNTOUCHED;

  g_assert_cmpint (sw_erodibility (&sand, &k, NULL), ==, SW_E_RANGE);
  g_assert_cmpfloat (k, ==, UNTOUCHED);
}

static void
test_erodibility_refusals (void)
{
  double k;

  for (guint i = 0; i < 7; i++)
    {
      SwErodibilitySoil soil = plain;

      k = UNTOUCHED;
      soil.structure = i == 0 ? 0 : i == 1 ? 5 : 3;
      soil.permeability = i == 2 ? 0 : i == 3 ? 7 : 3;
      soil.clay = i == 4 ? 0.41 : i == 5 ? NAN : 0.15;
      soil.organic = i == 6 ? -0.01 : 0.02;
      g_assert_cmpint (sw_erodibility (&soil, &k, NULL), ==, SW_E_RANGE);
      g_assert_cmpfloat (k, ==, UNTOUCHED);
    }
}

/* The last allowed value of each: all silt, finest structure, slowest drainage. */
static void
test_erodibility_corners (void)
{
  SwErodibilitySoil silt = { 1.0, 0.0, 0.0, 4, 6 }, clay = { 0.0, 1.0, 0.0, 4, 6 };
  SwErodibilitySoil full = { 0.7, 0.3, 0.04, 1, 1 };

  g_assert_cmpfloat (k_of (silt), >, k_of (full));
  g_assert_cmpfloat_with_epsilon (k_of (clay) / sw_erodibility_si_per_us (), 0.14, 1e-12);
}

/* Nothing falls, nothing goes. */
static void
test_zeros (void)
{
  double out = NAN;

  g_assert_cmpint (sw_soil_loss (0.0, 0.1, 1.0, 1.0, 1.0, &out), ==, SW_OK);
  g_assert_cmpfloat (out, ==, 0.0);
  g_assert_cmpint (sw_soil_loss_reduction (0.005, 0.0, &out), ==, SW_OK);
  g_assert_cmpfloat (out, ==, 1.0);
  g_assert_cmpint (sw_erosivity_of_period (100.0, 0, 0.3, 0.3, &out), ==, SW_OK);
  g_assert_cmpfloat (out, ==, 0.0);
  g_assert_cmpint (sw_erosivity_of_period (100.0, 0, 0.0, 1.0, &out), ==, SW_OK);
  g_assert_cmpfloat (out, ==, 100.0);
}

static void
test_refusals (void)
{
  SwSedimentClass risk = SW_SEDIMENT_CLASS_COUNT;
  double out;

  REFUSES (out, sw_soil_loss (bad, 0.1, 1.0, 1.0, 1.0, &out));
  REFUSES (out, sw_soil_loss (1.0, bad, 1.0, 1.0, 1.0, &out));
  REFUSES (out, sw_soil_loss (1.0, 0.1, bad, 1.0, 1.0, &out));
  REFUSES (out, sw_soil_loss (1.0, 0.1, 1.0, bad, 1.0, &out));
  REFUSES (out, sw_soil_loss (1.0, 0.1, 1.0, 1.0, bad, &out));
  REFUSES (out, sw_soil_loss_reduction (bad, 0.5, &out));
  REFUSES (out, sw_soil_loss_reduction (1.0, bad, &out));
  REFUSES (out, sw_erosivity_of_period (bad, 1, 0.0, 0.5, &out));
  REFUSES (out, sw_erosivity_of_period (1.0, 1, bad, 0.5, &out));
  REFUSES (out, sw_erosivity_of_period (1.0, 1, 0.0, bad, &out));
  out = UNTOUCHED;
  g_assert_cmpint (sw_soil_loss_reduction (0.0, 0.0, &out), ==, SW_E_RANGE);
  g_assert_cmpint (sw_erosivity_of_period (1.0, 0, 0.0, 1.1, &out), ==, SW_E_RANGE);
  g_assert_cmpfloat (out, ==, UNTOUCHED);
  g_assert_cmpint (sw_sediment_class (NAN, &risk), ==, SW_E_RANGE);
  g_assert_cmpint (risk, ==, SW_SEDIMENT_CLASS_COUNT);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/judge/soil-loss/units-agree", test_units_agree);
  g_test_add_func ("/judge/soil-loss/cover-scales", test_cover_scales);
  g_test_add_func ("/judge/soil-loss/period-over-new-year", test_period_over_new_year);
  g_test_add_func ("/judge/soil-loss/erodibility-directions",
                   test_erodibility_directions);
  g_test_add_func ("/judge/soil-loss/erodibility-limits", test_erodibility_limits);
  g_test_add_func ("/judge/soil-loss/erodibility-without-answer",
                   test_erodibility_without_answer);
  g_test_add_func ("/judge/soil-loss/erodibility-refusals", test_erodibility_refusals);
  g_test_add_func ("/judge/soil-loss/erodibility-corners", test_erodibility_corners);
  g_test_add_func ("/judge/soil-loss/zeros", test_zeros);
  g_test_add_func ("/judge/soil-loss/refusals", test_refusals);
  return g_test_run ();
}
