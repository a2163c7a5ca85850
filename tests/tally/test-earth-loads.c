/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "../out-of-range.h"
#include <slopewright/tally/earth-loads.h>
#include <slopewright/tally/earthwork.h>

static int
loads_of (double loose_m3, double truck_m3)
{
  int loads = -1;

  g_assert_cmpint (sw_earth_loads (loose_m3, truck_m3, &loads), ==, SW_OK);
  return loads;
}

/* Rounded up, and a whole number of loads is that number: 0.1 x 3 / 0.1 is 3. */
static void
test_loads (void)
{
  g_assert_cmpint (loads_of (0.0, 6.0), ==, 0);
  g_assert_cmpint (loads_of (6.0, 6.0), ==, 1);
  g_assert_cmpint (loads_of (6.01, 6.0), ==, 2);
  g_assert_cmpint (loads_of (0.1 * 3.0, 0.1), ==, 3);
}

static void
test_loads_are_enough (void)
{
  for (double loose = 0.0; loose < 100.0; loose += 0.37)
    for (double truck = 1.0; truck < 15.0; truck += 1.3)
      {
        int loads = loads_of (loose, truck);

        g_assert_cmpfloat (loads * truck, >=, loose - 1e-6);
        g_assert_cmpfloat ((loads - 1) * truck, <, loose + 1e-6);
      }
}

/* 4.5 m3 of bank swelling 25 % is 5.625 m3 loose: two loads of 5 m3. */
static void
test_loads_of_bank (void)
{
  int loads = -1;

  g_assert_cmpint (sw_earth_loads_of_bank (4.5, 0.25, 5.0, &loads), ==, SW_OK);
  g_assert_cmpint (loads, ==, 2);
  g_assert_cmpint (sw_earth_loads_of_bank (4.5, -0.25, 5.0, &loads), ==, SW_E_RANGE);
  g_assert_cmpint (sw_earth_loads_of_bank (-4.5, 0.25, 5.0, &loads), ==, SW_E_RANGE);
}

/* Bank to loose to compacted is bank to compacted; compacted to bank and back. */
static void
test_round_trips (void)
{
  for (double swell = 0.0; swell < 0.7; swell += 0.1)
    for (double factor = 0.7; factor < 1.4; factor += 0.1)
      {
        double loose, direct, by_loose, bank, measured;

        g_assert_cmpint (sw_loose_volume (12.0, swell, &loose), ==, SW_OK);
        g_assert_cmpint (sw_compacted_volume (12.0, factor, &direct), ==, SW_OK);
        g_assert_cmpint (sw_compacted_of_loose (loose, swell, factor, &by_loose), ==,
                         SW_OK);
        g_assert_cmpint (sw_bank_for_compacted (direct, factor, &bank), ==, SW_OK);
        g_assert_cmpint (sw_swell_of_volumes (12.0, loose, &measured), ==, SW_OK);
        g_assert_cmpfloat_with_epsilon (by_loose, direct, 1e-12);
        g_assert_cmpfloat_with_epsilon (bank, 12.0, 1e-12);
        g_assert_cmpfloat_with_epsilon (measured, swell, 1e-12);
      }
}

static void
test_refusals (void)
{
  int loads = -1;
  double out;

  REFUSES (out, sw_bank_for_compacted (bad, 0.9, &out));
  REFUSES (out, sw_bank_for_compacted (1.0, bad, &out));
  REFUSES (out, sw_compacted_of_loose (bad, 0.1, 0.9, &out));
  REFUSES (out, sw_compacted_of_loose (1.0, bad, 0.9, &out));
  REFUSES (out, sw_compacted_of_loose (1.0, 0.1, bad, &out));
  REFUSES (out, sw_swell_of_volumes (bad, 1.0, &out));
  REFUSES (out, sw_swell_of_volumes (1.0, bad, &out));
  REFUSES (out, sw_shrink_of_densities (bad, 1.0, &out));
  REFUSES (out, sw_shrink_of_densities (1.0, bad, &out));
  g_assert_cmpint (sw_swell_of_volumes (1.0, 0.9, &out), ==, SW_E_RANGE);
  g_assert_cmpint (sw_earth_loads (1.0, 0.0, &loads), ==, SW_E_RANGE);
  g_assert_cmpint (sw_earth_loads (0.0, 0.0, &loads), ==, SW_E_RANGE);
  g_assert_cmpint (sw_earth_loads (NAN, 1.0, &loads), ==, SW_E_RANGE);
  g_assert_cmpint (sw_earth_loads (1e30, 1.0, &loads), ==, SW_E_RANGE);
  g_assert_cmpint (loads, ==, -1);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/tally/earth-loads/loads", test_loads);
  g_test_add_func ("/tally/earth-loads/loads-are-enough", test_loads_are_enough);
  g_test_add_func ("/tally/earth-loads/loads-of-bank", test_loads_of_bank);
  g_test_add_func ("/tally/earth-loads/round-trips", test_round_trips);
  g_test_add_func ("/tally/earth-loads/refusals", test_refusals);
  return g_test_run ();
}
