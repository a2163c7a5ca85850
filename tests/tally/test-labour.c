/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "../out-of-range.h"
#include <slopewright/tally/labour.h>

static double
rounded (double amount, int decimals)
{
  double got = NAN;

  g_assert_cmpint (sw_price_round (amount, decimals, &got), ==, SW_OK);
  return got;
}

/* By hand; 1.005, 2.675 and 1.115 are doubles just below the half. */
static void
test_rounding (void)
{
  g_assert_cmpfloat_with_epsilon (rounded (1.005, 2), 1.01, 1e-12);
  g_assert_cmpfloat_with_epsilon (rounded (2.675, 2), 2.68, 1e-12);
  g_assert_cmpfloat_with_epsilon (rounded (1.115, 2), 1.12, 1e-12);
  g_assert_cmpfloat_with_epsilon (rounded (-1.005, 2), -1.01, 1e-12);
  g_assert_cmpfloat_with_epsilon (rounded (1.0049, 2), 1.00, 1e-12);
  g_assert_cmpfloat_with_epsilon (rounded (0.5, 0), 1.0, 1e-12);
  g_assert_cmpfloat_with_epsilon (rounded (0.49999, 0), 0.0, 1e-12);
  g_assert_cmpfloat_with_epsilon (rounded (123456789.125, 2), 123456789.13, 1e-7);
  g_assert_cmpfloat_with_epsilon (rounded (12345678901.005, 2), 12345678901.01, 1e-5);
  g_assert_cmpfloat_with_epsilon (rounded (987654321012.0, 0), 987654321012.0, 1e-5);
  g_assert_cmpfloat_with_epsilon (rounded (1.23456, 1), 1.2, 1e-12);
  g_assert_cmpfloat_with_epsilon (rounded (1.23456, 3), 1.235, 1e-12);
  g_assert_cmpfloat_with_epsilon (rounded (1.23456, 4), 1.2346, 1e-12);
}

/* Rounding twice changes nothing, and a half coin is the most that is lost. */
static void
test_rounding_settles (void)
{
  for (double amount = -50.0; amount < 50.0; amount += 0.0371)
    for (int decimals = 0; decimals <= 4; decimals++)
      {
        double once = rounded (amount, decimals), coin = pow (10.0, -decimals);

        g_assert_cmpfloat (rounded (once, decimals), ==, once);
        g_assert_cmpfloat_with_epsilon (once, amount, 0.500001 * coin);
      }
}

/* 120 m2 at 1.85 with 5 % waste: 233.10; 16 h at 42.50: 680.00; 150 to come: 1063.10.
 * Overhead 12 %: 127.57 (127.572). Profit 8 % of 1190.67: 95.25 (95.2536). Net 1285.92.
 * Tax 7.5 %: 96.44 (96.444). Total 1382.36. */
static void
test_price_by_hand (void)
{
  static const SwPriceLine lines[] = { { 120.0, 1.85, 0.05 }, { 16.0, 42.5, 0.0 } };
  static const SwMarkUps marks = { 0.12, 0.08, 0.075 };
  double amounts[2];
  SwPrice price;

  g_assert_cmpint (sw_price (lines, 2, 150.0, &marks, 2, amounts, &price), ==, SW_OK);
  g_assert_cmpfloat_with_epsilon (amounts[0], 233.10, 1e-9);
  g_assert_cmpfloat_with_epsilon (amounts[1], 680.00, 1e-9);
  g_assert_cmpfloat_with_epsilon (price.lines, 913.10, 1e-9);
  g_assert_cmpfloat_with_epsilon (price.direct, 1063.10, 1e-9);
  g_assert_cmpfloat_with_epsilon (price.overhead, 127.57, 1e-9);
  g_assert_cmpfloat_with_epsilon (price.profit, 95.25, 1e-9);
  g_assert_cmpfloat_with_epsilon (price.net, 1285.92, 1e-9);
  g_assert_cmpfloat_with_epsilon (price.tax, 96.44, 1e-9);
  g_assert_cmpfloat_with_epsilon (price.total, 1382.36, 1e-9);
}

/* The order of mark-ups: profit on 1000 with 10 % overhead is on 1100, not on 1000; tax
 * is on all of it. Swapping overhead and profit moves money between them. */
static void
test_order_of_mark_ups (void)
{
  static const SwPriceLine line = { 1.0, 1000.0, 0.0 };
  static const SwMarkUps marks = { 0.10, 0.20, 0.05 }, swapped = { 0.20, 0.10, 0.05 };
  SwPrice price, other;

  g_assert_cmpint (sw_price (&line, 1, 0.0, &marks, 2, NULL, &price), ==, SW_OK);
  g_assert_cmpint (sw_price (&line, 1, 0.0, &swapped, 2, NULL, &other), ==, SW_OK);
  g_assert_cmpfloat_with_epsilon (price.overhead, 100.0, 1e-9);
  g_assert_cmpfloat_with_epsilon (price.profit, 220.0, 1e-9);
  g_assert_cmpfloat_with_epsilon (price.tax, 66.0, 1e-9);
  g_assert_cmpfloat_with_epsilon (other.overhead, 200.0, 1e-9);
  g_assert_cmpfloat_with_epsilon (other.profit, 120.0, 1e-9);
}

/* Three thirds of a coin: what is printed adds up, line by line. */
static void
test_what_is_printed_adds_up (void)
{
  static const SwPriceLine lines[] = { { 1.0, 0.333, 0.0 },
                                       { 1.0, 0.333, 0.0 },
                                       { 1.0, 0.333, 0.0 } };
  static const SwMarkUps marks = { 0.333, 0.111, 0.077 };
  double amounts[3];
  SwPrice price;

  g_assert_cmpint (sw_price (lines, 3, 0.335, &marks, 2, amounts, &price), ==, SW_OK);
  g_assert_cmpfloat_with_epsilon (amounts[0] + amounts[1] + amounts[2], price.lines,
                                  1e-9);
  g_assert_cmpfloat_with_epsilon (price.lines, 0.99, 1e-9);
  g_assert_cmpfloat_with_epsilon (price.lines + price.mobilisation, price.direct, 1e-9);
  g_assert_cmpfloat_with_epsilon (price.direct + price.overhead + price.profit, price.net,
                                  1e-9);
  g_assert_cmpfloat_with_epsilon (price.net + price.tax, price.total, 1e-9);
}

/* An amount that no coin can be told in is refused, whether a line or their sum. */
static void
test_amounts_too_large (void)
{
  static const SwMarkUps none = { 0.0, 0.0, 0.0 };
  static const SwMarkUps marks[] = { { 1.0, 0.0, 0.0 },
                                     { 0.0, 1.0, 0.0 },
                                     { 0.0, 0.0, 1.0 } };
  static const SwPriceLine line = { 1e10, 6.0, 0.0 }, waste = { 1e10, 6.0, 1.0 };
  SwPrice price;
  double out = UNTOUCHED;

  g_assert_cmpint (sw_price (&line, 1, 0.0, &none, 2, NULL, &price), ==, SW_OK);
  g_assert_cmpint (sw_price (&waste, 1, 0.0, &none, 2, NULL, &price), ==, SW_E_RANGE);
  g_assert_cmpint (sw_price (&line, 1, 6e10, &none, 2, NULL, &price), ==, SW_E_RANGE);
  for (gsize i = 0; i < G_N_ELEMENTS (marks); i++)
    g_assert_cmpint (sw_price (&line, 1, 0.0, &marks[i], 2, NULL, &price), ==,
                     SW_E_RANGE);
  g_assert_cmpint (sw_price_round (1e13, 0, &out), ==, SW_E_RANGE);
  g_assert_cmpint (sw_price_round (1e11, 2, &out), ==, SW_E_RANGE);
  g_assert_cmpint (sw_price_round (-1e11, 2, &out), ==, SW_E_RANGE);
  g_assert_cmpfloat (out, ==, UNTOUCHED);
}

/* 100 m2 at 4 h for 20 m2 and half as much again for rough ground: 100/20 x 4/8 x 1.5. */
static void
test_difficulty (void)
{
  double days = NAN;

  g_assert_cmpint (sw_man_days (100.0, 20.0, 4.0, 1.5, &days), ==, SW_OK);
  g_assert_cmpfloat_with_epsilon (days, 3.75, 1e-12);
}

/* Nothing to do takes no time; nobody, no rate and no crew are refused. */
static void
test_zeros (void)
{
  double out = NAN;

  g_assert_cmpint (sw_man_days (0.0, 1.0, 0.0, 1.0, &out), ==, SW_OK);
  g_assert_cmpfloat (out, ==, 0.0);
  g_assert_cmpint (sw_duration (0.0, 1, 1.0, 1.0, &out), ==, SW_OK);
  g_assert_cmpfloat (out, ==, 0.0);
  g_assert_cmpint (sw_man_hours (0, 1.0, 24.0, &out), ==, SW_OK);
  g_assert_cmpfloat (out, ==, 0.0);
  g_assert_cmpint (sw_unit_hours (0, 1.0, 1.0, &out), ==, SW_OK);
  g_assert_cmpfloat (out, ==, 0.0);
  g_assert_cmpint (sw_day_equivalent (24.0, &out), ==, SW_OK);
  g_assert_cmpfloat (out, ==, 3.0);
  g_assert_cmpint (sw_crew_days (0.0, 0.005, &out), ==, SW_OK);
  out = UNTOUCHED;
  g_assert_cmpint (sw_man_days (1.0, 0.0, 1.0, 1.0, &out), ==, SW_E_RANGE);
  g_assert_cmpint (sw_crew_days (1.0, 0.0, &out), ==, SW_E_RANGE);
  g_assert_cmpint (sw_man_hours (-1, 1.0, 1.0, &out), ==, SW_E_RANGE);
  g_assert_cmpint (sw_man_hours (1, 1.0, 24.1, &out), ==, SW_E_RANGE);
  g_assert_cmpint (sw_unit_hours (-1, 1.0, 1.0, &out), ==, SW_E_RANGE);
  g_assert_cmpint (sw_unit_hours (1, 1.0, 0.0, &out), ==, SW_E_RANGE);
  g_assert_cmpfloat (out, ==, UNTOUCHED);
}

/* Twice the crew, half the days; and man-days come back from days. */
static void
test_duration (void)
{
  double four = NAN, eight = NAN;

  g_assert_cmpint (sw_duration (30.0, 4, 0.8, 1.25, &four), ==, SW_OK);
  g_assert_cmpint (sw_duration (30.0, 8, 0.8, 1.25, &eight), ==, SW_OK);
  g_assert_cmpfloat_with_epsilon (four, 2.0 * eight, 1e-12);
  g_assert_cmpfloat_with_epsilon (four * 4.0 * 0.8 * 1.25, 30.0, 1e-12);
}

static void
test_refusals (void)
{
  static const SwMarkUps marks = { 0.1, 0.1, 0.1 };
  SwPrice price = { 0 };
  double out;

  REFUSES (out, sw_man_days (bad, 1.0, 1.0, 1.0, &out));
  REFUSES (out, sw_man_days (1.0, bad, 1.0, 1.0, &out));
  REFUSES (out, sw_man_days (1.0, 1.0, bad, 1.0, &out));
  REFUSES (out, sw_man_days (1.0, 1.0, 1.0, bad, &out));
  REFUSES (out, sw_day_equivalent (bad, &out));
  REFUSES (out, sw_duration (bad, 1, 1.0, 1.0, &out));
  REFUSES (out, sw_duration (1.0, 1, bad, 1.0, &out));
  REFUSES (out, sw_duration (1.0, 1, 1.0, bad, &out));
  REFUSES (out, sw_crew_days (1.0, bad, &out));
  REFUSES (out, sw_man_hours (1, bad, 8.0, &out));
  REFUSES (out, sw_man_hours (1, 1.0, bad, &out));
  REFUSES (out, sw_unit_hours (1, bad, 1.0, &out));
  REFUSES (out, sw_unit_hours (1, 8.0, bad, &out));
  REFUSES (price.total,
           sw_price (&(SwPriceLine){ bad, 1.0, 0.0 }, 1, 0.0, &marks, 2, NULL, &price));
  REFUSES (price.total, sw_price (NULL, 0, bad, &marks, 2, NULL, &price));
  REFUSES (price.total,
           sw_price (NULL, 0, 1.0, &(SwMarkUps){ 0.1, bad, 0.1 }, 2, NULL, &price));
  out = UNTOUCHED;
  g_assert_cmpint (sw_duration (1.0, 0, 1.0, 1.0, &out), ==, SW_E_RANGE);
  g_assert_cmpint (sw_duration (1.0, 1, 1.1, 1.0, &out), ==, SW_E_RANGE);
  g_assert_cmpint (sw_day_equivalent (25.0, &out), ==, SW_E_RANGE);
  g_assert_cmpint (sw_price_round (NAN, 2, &out), ==, SW_E_RANGE);
  g_assert_cmpint (sw_price_round (1.0, 5, &out), ==, SW_E_RANGE);
  g_assert_cmpint (sw_price_round (1.0, -1, &out), ==, SW_E_RANGE);
  g_assert_cmpfloat (out, ==, UNTOUCHED);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/tally/labour/rounding", test_rounding);
  g_test_add_func ("/tally/labour/rounding-settles", test_rounding_settles);
  g_test_add_func ("/tally/labour/price-by-hand", test_price_by_hand);
  g_test_add_func ("/tally/labour/order-of-mark-ups", test_order_of_mark_ups);
  g_test_add_func ("/tally/labour/what-is-printed-adds-up", test_what_is_printed_adds_up);
  g_test_add_func ("/tally/labour/amounts-too-large", test_amounts_too_large);
  g_test_add_func ("/tally/labour/difficulty", test_difficulty);
  g_test_add_func ("/tally/labour/zeros", test_zeros);
  g_test_add_func ("/tally/labour/duration", test_duration);
  g_test_add_func ("/tally/labour/refusals", test_refusals);
  return g_test_run ();
}
