/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "../check-rows.h"
#include <math.h>
#include <slopewright/base/units.h>
#include <slopewright/tally/earthwork.h>
#include <slopewright/tally/roll.h>
#include <slopewright/tally/seed.h>

/* One length that the row gives in metres, millimetres or inches. */
static double
input_m (const CheckRow *row, const char *stem)
{
  static const struct
  {
    const char *suffix;
    double m;
  } units[] = { { "_m", 1.0 }, { "_mm", 1e-3 }, { "_in", SW_M_PER_IN } };

  for (guint i = 0; i < G_N_ELEMENTS (units); i++)
    {
      g_autofree char *key = g_strconcat (stem, units[i].suffix, NULL);
      double value = check_input_or (row, key, NAN);

      if (!isnan (value))
        return value * units[i].m;
    }
  g_error ("row %s has no length \"%s\"", row->id, stem);
}

static double
in_row_unit (const CheckRow *row, double length_m)
{
  return g_str_equal (row->unit, "in") ? length_m / SW_M_PER_IN : length_m;
}

static double
roll_length (const CheckRow *row)
{
  double length_m = NAN;

  g_assert_cmpint (sw_roll_length (input_m (row, "d"), input_m (row, "t"),
                                   input_m (row, "core"), &length_m),
                   ==, SW_OK);
  return in_row_unit (row, length_m);
}

static double
roll_diameter (const CheckRow *row)
{
  double diameter_m = NAN;

  g_assert_cmpint (sw_roll_diameter (input_m (row, "l"), input_m (row, "t"),
                                     input_m (row, "core"), &diameter_m),
                   ==, SW_OK);
  return in_row_unit (row, diameter_m);
}

static double
pure_live_seed (const CheckRow *row)
{
  double germination = check_input (row, "germ") + check_input_or (row, "hard", 0.0)
                       + check_input_or (row, "dormant", 0.0);
  double pls = NAN;

  g_assert_cmpint (sw_seed_pls (check_input (row, "purity"), germination, &pls), ==,
                   SW_OK);
  return g_str_equal (row->unit, "%") ? 100.0 * pls : pls;
}

/* Linear in the rate, so any unit of mass per area serves. */
static double
bulk_seed (const CheckRow *row)
{
  double bulk = NAN;
  double purity = check_input_or (row, "pls", NAN);
  double germination = check_input_or (row, "germ", 1.0);

  if (isnan (purity))
    purity = check_input (row, "purity");
  g_assert_cmpint (
      sw_seed_bulk_kg (check_input (row, "pls_rate"), purity, germination, &bulk), ==,
      SW_OK);
  return bulk;
}

static double
trench_volume (const CheckRow *row)
{
  gboolean feet = !isnan (check_input_or (row, "length_ft", NAN));
  double m = feet ? SW_M_PER_FT : 1.0, volume_m3 = NAN;

  g_assert_cmpint (sw_trench_volume (m * check_input (row, feet ? "bottom_ft" : "bottom"),
                                     m * check_input (row, feet ? "depth_ft" : "depth"),
                                     check_input_or (row, "side_hv", 0.0),
                                     m * check_input (row, feet ? "length_ft" : "length"),
                                     &volume_m3),
                   ==, SW_OK);
  return g_str_equal (row->unit, "yd3") ? volume_m3 / SW_M3_PER_YD3 : volume_m3;
}

static double
loose_volume (const CheckRow *row)
{
  double bank = check_input_or (row, "bank", NAN), loose = NAN;

  if (isnan (bank))
    bank = trench_volume (row);
  g_assert_cmpint (sw_loose_volume (bank, check_input (row, "swell"), &loose), ==, SW_OK);
  return loose;
}

/* The program goes from bank to compacted, in proportion. */
static double
bank_for_compacted (const CheckRow *row)
{
  double of_one = NAN;

  g_assert_cmpint (sw_compacted_volume (1.0, check_input (row, "factor"), &of_one), ==,
                   SW_OK);
  return check_input (row, "compacted") / of_one;
}

static double
compacted_per_loose (const CheckRow *row)
{
  double loose = NAN, compacted = NAN;

  g_assert_cmpint (sw_loose_volume (1.0, check_input (row, "swell"), &loose), ==, SW_OK);
  g_assert_cmpint (sw_compacted_volume (1.0, check_input (row, "factor"), &compacted), ==,
                   SW_OK);
  return compacted / loose;
}

static double
end_areas (const CheckRow *row)
{
  double volume = NAN;

  g_assert_cmpint (sw_end_area_volume (check_input (row, "a1"), check_input (row, "a2"),
                                       check_input (row, "length"), &volume),
                   ==, SW_OK);
  return volume;
}

static double
prismoid (const CheckRow *row)
{
  double volume = NAN;

  g_assert_cmpint (
      sw_prismoid_volume (check_input (row, "a1"), check_input (row, "middle"),
                          check_input (row, "a2"), check_input (row, "length"), &volume),
      ==, SW_OK);
  return volume;
}

static void
test_check_values (void)
{
  static const CheckQuantity quantities[] = {
    { "length in roll", roll_length },
    { "outside diameter", roll_diameter },
    { "pure live seed", pure_live_seed },
    { "bulk seed", bulk_seed },
    { "trench volume", trench_volume },
    { "loose volume", loose_volume },
    { "bank for compacted", bank_for_compacted },
    { "compacted per loose", compacted_per_loose },
    { "end areas", end_areas },
    { "prismoid", prismoid },
  };

  check_rows_run ("tally", quantities, G_N_ELEMENTS (quantities));
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/tally/check-values", test_check_values);
  return g_test_run ();
}
