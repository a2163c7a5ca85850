/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "../out-of-range.h"
#include <slopewright/tally/fertiliser.h>

static const double ten_twenty_ten[] = { 0.10, 0.20, 0.10 };

/* 5, 8 and 3 g/m2 from 10-20-10: 50, 40 and 30 g of product; nitrogen governs, and 10 g
 * of phosphate come along. */
static void
test_limiting_nutrient (void)
{
  static const double need[] = { 0.005, 0.008, 0.003 };
  SwFertiliser got;

  g_assert_cmpint (sw_fertiliser (ten_twenty_ten, need, &got), ==, SW_OK);
  g_assert_cmpfloat_with_epsilon (got.product_kg_per_m2, 0.050, 1e-12);
  g_assert_cmpint (got.limiting, ==, SW_NUTRIENT_N);
  g_assert_cmpfloat_with_epsilon (got.given_kg_per_m2[SW_NUTRIENT_P2O5], 0.010, 1e-12);
  g_assert_cmphex (got.missing, ==, 0);
}

static void
test_every_need_is_met (void)
{
  for (double n = 0.0; n < 0.02; n += 0.003)
    for (double p = 0.0; p < 0.02; p += 0.003)
      for (double k = 0.0; k < 0.02; k += 0.003)
        {
          const double need[] = { n, p, k };
          SwFertiliser got;

          g_assert_cmpint (sw_fertiliser (ten_twenty_ten, need, &got), ==, SW_OK);
          for (guint i = 0; i < SW_NUTRIENT_COUNT; i++)
            g_assert_cmpfloat (got.given_kg_per_m2[i], >=, need[i] - 1e-15);
          g_assert_cmpfloat_with_epsilon (got.given_kg_per_m2[got.limiting],
                                          need[got.limiting], 1e-15);
        }
}

/* Urea holds nitrogen only: what else is needed is named, not lost. */
static void
test_missing_nutrient (void)
{
  static const double urea[] = { 0.46, 0.0, 0.0 }, need[] = { 0.0046, 0.004, 0.0 };
  SwFertiliser got;

  g_assert_cmpint (sw_fertiliser (urea, need, &got), ==, SW_OK);
  g_assert_cmpfloat_with_epsilon (got.product_kg_per_m2, 0.010, 1e-12);
  g_assert_cmphex (got.missing, ==, 1u << SW_NUTRIENT_P2O5);
}

/* The least and the most a label can hold: 0.5 % of one; all of it, with no filler. */
static void
test_grades_at_the_ends (void)
{
  static const double thin[] = { 0.005, 0.0, 0.0 }, full[] = { 0.3, 0.3, 0.4 };
  static const double need[] = { 0.001, 0.0, 0.0 };
  double nutrient[SW_NUTRIENT_COUNT], filler = NAN;
  SwFertiliser got;

  g_assert_cmpint (sw_fertiliser (thin, need, &got), ==, SW_OK);
  g_assert_cmpfloat_with_epsilon (got.product_kg_per_m2, 0.2, 1e-12);
  g_assert_cmphex (got.missing, ==, 0);
  g_assert_cmpint (sw_fertiliser_contents (full, 25.0, nutrient, &filler), ==, SW_OK);
  g_assert_cmpfloat_with_epsilon (filler, 0.0, 1e-12);
}

/* Nutrients and filler make up the bag. */
static void
test_contents (void)
{
  double nutrient[SW_NUTRIENT_COUNT], filler = NAN;

  g_assert_cmpint (sw_fertiliser_contents (ten_twenty_ten, 25.0, nutrient, &filler), ==,
                   SW_OK);
  g_assert_cmpfloat_with_epsilon (nutrient[0] + nutrient[1] + nutrient[2] + filler, 25.0,
                                  1e-12);
  g_assert_cmpfloat_with_epsilon (filler, 15.0, 1e-12);
}

/* A whole number of bags is that number, however it was reached. */
static void
test_bags (void)
{
  int bags = -1;

  g_assert_cmpint (sw_bags (0.1 * 3.0 * 25.0, 2.5, &bags), ==, SW_OK);
  g_assert_cmpint (bags, ==, 3);
  g_assert_cmpint (sw_bags (7.51, 2.5, &bags), ==, SW_OK);
  g_assert_cmpint (bags, ==, 4);
  g_assert_cmpint (sw_bags (0.0, 2.5, &bags), ==, SW_OK);
  g_assert_cmpint (bags, ==, 0);
  bags = -1;
  g_assert_cmpint (sw_bags (0.01, 0.005, &bags), ==, SW_OK);
  g_assert_cmpint (bags, ==, 2);
  bags = -1;
  g_assert_cmpint (sw_bags (0.0, 0.0, &bags), ==, SW_E_RANGE);
  g_assert_cmpint (sw_bags (1.0, NAN, &bags), ==, SW_E_RANGE);
  g_assert_cmpint (sw_bags (1.0, 0.0, &bags), ==, SW_E_RANGE);
  g_assert_cmpint (sw_bags (1e30, 1.0, &bags), ==, SW_E_RANGE);
  g_assert_cmpint (sw_bags (NAN, 1.0, &bags), ==, SW_E_RANGE);
  g_assert_cmpint (bags, ==, -1);
}

static void
test_refusals (void)
{
  static const double none[] = { 0.0, 0.0, 0.0 }, too_much[] = { 0.5, 0.4, 0.2 };
  static const double need[] = { 0.001, 0.0, 0.0 };
  double nutrient[SW_NUTRIENT_COUNT], out;
  SwFertiliser got = { .product_kg_per_m2 = UNTOUCHED };

  g_assert_cmpint (sw_fertiliser (none, need, &got), ==, SW_E_RANGE);
  g_assert_cmpint (sw_fertiliser (too_much, need, &got), ==, SW_E_RANGE);
  REFUSES (got.product_kg_per_m2,
           sw_fertiliser (((const double[]){ 0.1, bad, 0.1 }), need, &got));
  REFUSES (got.product_kg_per_m2,
           sw_fertiliser (ten_twenty_ten, ((const double[]){ 0.1, bad, 0.1 }), &got));
  REFUSES (got.product_kg_per_m2,
           sw_fertiliser (ten_twenty_ten, ((const double[]){ bad, 0.1, 0.1 }), &got));
  REFUSES (out, sw_fertiliser_contents (ten_twenty_ten, bad, nutrient, &out));
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/tally/fertiliser/limiting-nutrient", test_limiting_nutrient);
  g_test_add_func ("/tally/fertiliser/every-need-is-met", test_every_need_is_met);
  g_test_add_func ("/tally/fertiliser/missing-nutrient", test_missing_nutrient);
  g_test_add_func ("/tally/fertiliser/grades-at-the-ends", test_grades_at_the_ends);
  g_test_add_func ("/tally/fertiliser/contents", test_contents);
  g_test_add_func ("/tally/fertiliser/bags", test_bags);
  g_test_add_func ("/tally/fertiliser/refusals", test_refusals);
  return g_test_run ();
}
