/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include <slopewright/base/number-text.h>

#include <float.h>
#include <math.h>
#include <string.h>

#define NBSP "\xc2\xa0"

static const SwNumberStyle metric = { SW_UNITS_METRIC, '.', NULL };
static const SwNumberStyle comma = { SW_UNITS_METRIC, ',', NULL };
static const SwNumberStyle us = { SW_UNITS_US, '.', NULL };

typedef struct
{
  double value;
  SwUnit unit;
  const char *want;
} Row;

static void
check_texts (const Row *rows, gsize count, SwNumberStyle style)
{
  for (gsize i = 0; i < count; i++)
    {
      g_autofree char *got = sw_quantity_text (rows[i].value, rows[i].unit, style);
      g_assert_cmpstr (got, ==, rows[i].want);
    }
}

/* The unit factors are definitions; the numbers are rounded by hand. */
static void
test_metric (void)
{
  static const Row rows[] = {
    { 13.4164, SW_UNIT_M, "13.42" NBSP "m" },
    { 0.15, SW_UNIT_SMALL_M, "150" NBSP "mm" },
    { 0.00305, SW_UNIT_SMALL_M, "3.1" NBSP "mm" },
    { 0.004, SW_UNIT_SMALL_M, "4" NBSP "mm" },
    { 0.1524, SW_UNIT_SMALL_M, "152" NBSP "mm" },
    { 643.99, SW_UNIT_M2, "644.0" NBSP "m²" },
    { 1.35, SW_UNIT_M3, "1.35" NBSP "m³" },
    /* A half goes up, as by hand: 26 x 0.15 x 0.15 = 0.585. */
    { 26.0 * 0.15 * 0.15, SW_UNIT_M3, "0.59" NBSP "m³" },
    { 22.68, SW_UNIT_KG, "22.7" NBSP "kg" },
    { 0.271, SW_UNIT_KG_PER_M2, "271" NBSP "g/m²" },
    { 0.0034, SW_UNIT_KG_PER_M2, "3.4" NBSP "g/m²" },
    { 0.4636476, SW_UNIT_RAD, "26.6°" },
    { 2.0, SW_UNIT_HV, "2:1" },
    { 1.54, SW_UNIT_HV, "1.54:1" },
    { 0.5, SW_UNIT_PERCENT, "50" NBSP "%" },
    { 0.985, SW_UNIT_PERCENT, "98.5" NBSP "%" },
    { 1049.0, SW_UNIT_COUNT, "1049" },
    { 34000.0, SW_UNIT_COUNT, "34" NBSP "000" },
    { 3400000.0, SW_UNIT_COUNT, "3" NBSP "400" NBSP "000" },
    { 2.4, SW_UNIT_PER_M2, "2.40" NBSP "/m²" },
    { 84.0, SW_UNIT_PA, "84" NBSP "Pa" },
    { 7.0, SW_UNIT_DAY, "7" NBSP "d" },
    { 268.15, SW_UNIT_KELVIN, "−5" NBSP "°C" },
    { 273.15, SW_UNIT_KELVIN, "0" NBSP "°C" },
    { 8.0, SW_UNIT_WIND, "8" NBSP "m/s" },
    { 12.0, SW_UNIT_MONTH, "12" NBSP "mo" },
    { 400.0, SW_UNIT_SEEDS_PER_M2, "400" NBSP "/m²" },
    { 550000.0, SW_UNIT_SEEDS_PER_KG, "550" NBSP "000" NBSP "/kg" },
    { 0.08, SW_UNIT_H_PER_M, "0.08" NBSP "h/m" },
    { 0.004, SW_UNIT_H_PER_M2, "0.4" NBSP "h/100 m²" },
    { 12345.5, SW_UNIT_MONEY, "12" NBSP "345.50" },
  };

  check_texts (rows, G_N_ELEMENTS (rows), metric);
}

/* 1 in = 0.0254 m exactly; 44 ft = 13.4112 m; 13.4176 m = 44 ft 0.252 in. */
static void
test_us (void)
{
  static const Row rows[] = {
    { 13.4112, SW_UNIT_M, "44" NBSP "ft" NBSP "0" NBSP "in" },
    { 13.4176, SW_UNIT_M, "44" NBSP "ft" NBSP "0¼" NBSP "in" },
    { 0.3048 - 0.0001, SW_UNIT_M, "1" NBSP "ft" NBSP "0" NBSP "in" },
    { 0.1524, SW_UNIT_M, "6" NBSP "in" },
    { 0.1524, SW_UNIT_SMALL_M, "6" NBSP "in" },
    { 0.150, SW_UNIT_SMALL_M, "5⅞" NBSP "in" },
    { 0.0127, SW_UNIT_SMALL_M, "½" NBSP "in" },
    { 0.00305, SW_UNIT_SMALL_M, "0.12" NBSP "in" },
    { 0.0, SW_UNIT_SMALL_M, "0" NBSP "in" },
    { 83.6127, SW_UNIT_M2, "100.0" NBSP "yd²" },
    { 0.764555, SW_UNIT_M3, "1.00" NBSP "yd³" },
    { 22.6796, SW_UNIT_KG, "50.0" NBSP "lb" },
    { 83.79, SW_UNIT_PA, "1.75" NBSP "lb/ft²" },
    { 34000.0, SW_UNIT_COUNT, "34,000" },
    { 2.0, SW_UNIT_HV, "2:1" },
    /* 1 lb/1000 ft2 = 4.882427636 g/m2 (computations: seed units). */
    { 0.004882427636, SW_UNIT_KG_PER_M2, "1" NBSP "lb/1000 ft²" },
    /* 35 seeds per ft2 and 250 000 per lb (computations: seed units); 33 man-hours per
     * 1000 ft2 (US Navy Seabee manual 14045). 1 ft2 = 0.09290304 m2. */
    { 35.0 / 0.09290304, SW_UNIT_SEEDS_PER_M2, "35.0" NBSP "/ft²" },
    { 250000.0 / 0.45359237, SW_UNIT_SEEDS_PER_KG, "250,000" NBSP "/lb" },
    { 33.0 / 92.90304, SW_UNIT_H_PER_M2, "33" NBSP "h/1000 ft²" },
    { 0.05 / 0.3048, SW_UNIT_H_PER_M, "0.05" NBSP "h/ft" },
    /* 2.392 per m2 = 2.0 per yd2 */
    { 2.3919801, SW_UNIT_PER_M2, "2.00" NBSP "/yd²" },
  };

  check_texts (rows, G_N_ELEMENTS (rows), us);
}

static void
test_signs_and_gaps (void)
{
  static const Row plain[] = {
    { -1.5, SW_UNIT_M,
      "\xe2\x88\x92"
      "1.50" NBSP "m" },
    { -0.001, SW_UNIT_M, "0.00" NBSP "m" },
    { NAN, SW_UNIT_M, "–" },
    { INFINITY, SW_UNIT_COUNT, "–" },
    { INFINITY, SW_UNIT_HV, "–" },
  };
  static const Row tape[] = {
    { -1.5240, SW_UNIT_M,
      "\xe2\x88\x92"
      "5" NBSP "ft" NBSP "0" NBSP "in" },
    { -0.0254, SW_UNIT_SMALL_M,
      "\xe2\x88\x92"
      "1" NBSP "in" },
    { -0.0001, SW_UNIT_M, "0" NBSP "in" },
    { NAN, SW_UNIT_M, "–" },
    { NAN, SW_UNIT_SMALL_M, "–" },
  };
  static const Row with_comma[] = {
    { 13.4164, SW_UNIT_M, "13,42" NBSP "m" },
    { 34000.5, SW_UNIT_KG, "34" NBSP "000,5" NBSP "kg" },
  };

  check_texts (plain, G_N_ELEMENTS (plain), metric);
  check_texts (tape, G_N_ELEMENTS (tape), us);
  check_texts (with_comma, G_N_ELEMENTS (with_comma), comma);
}

static void
test_columns (void)
{
  g_autofree char *feet = sw_quantity_number (13.4164, SW_UNIT_M, us);
  g_autofree char *inches = sw_quantity_number (0.150, SW_UNIT_SMALL_M, us);
  g_autofree char *metres = sw_quantity_number (13.4164, SW_UNIT_M, metric);
  g_autofree char *angle = sw_quantity_number (0.4636476, SW_UNIT_RAD, metric);

  /* 13.4164 / 0.3048 = 44.0171 */
  g_assert_cmpstr (feet, ==, "44.02");
  g_assert_cmpstr (inches, ==, "5⅞");
  g_assert_cmpstr (metres, ==, "13.42");
  g_assert_cmpstr (angle, ==, "26.6");
  g_assert_cmpstr (sw_quantity_unit (SW_UNIT_M, metric), ==, "m");
  g_assert_cmpstr (sw_quantity_unit (SW_UNIT_M, us), ==, "ft");
  g_assert_cmpstr (sw_quantity_unit (SW_UNIT_SMALL_M, metric), ==, "mm");
  g_assert_cmpstr (sw_quantity_unit (SW_UNIT_COUNT, us), ==, "");
}

/* Every unit has words in both systems, or is a bare number on purpose. */
static void
test_every_unit (void)
{
  for (int unit = 0; unit < SW_UNIT_COUNT_OF_UNITS; unit++)
    for (int units = SW_UNITS_METRIC; units <= SW_UNITS_US; units++)
      {
        const char *symbol = sw_quantity_unit (
            (SwUnit) unit, (SwNumberStyle){ (SwUnitSystem) units, '.', NULL });
        gboolean bare = unit == SW_UNIT_RATIO || unit == SW_UNIT_COUNT
                        || unit == SW_UNIT_HV || unit == SW_UNIT_FACTOR
                        || unit == SW_UNIT_MONEY;
        g_assert_nonnull (symbol);
        g_assert_cmpint (*symbol == '\0', ==, bare);
      }
}

/* Signs that are words are those of the texts, in the number that stands beside them; the
 * others are everybody's. */
static void
test_signs_of_a_language (void)
{
  static const struct
  {
    double value;
    SwUnit unit;
    const char *want;
  } rows[] = {
    { 1.0, SW_UNIT_MONTH, "1" NBSP "mes" },  { 3.0, SW_UNIT_MONTH, "3" NBSP "meses" },
    { 7.0, SW_UNIT_DAY, "7" NBSP "días" },   { 2.0, SW_UNIT_LOSS, "2.0" NBSP "t/(ha·año)" },
    { 1.5, SW_UNIT_M, "1.50" NBSP "m" },
  };
  g_autoptr (SwTexts) texts = sw_texts_new ("es");
  const SwNumberStyle style = { SW_UNITS_METRIC, '.', texts };

  sw_texts_add (texts, "unit.month", "meses");
  sw_texts_add (texts, "unit.month.one", "mes");
  sw_texts_add (texts, "unit.day", "días");
  sw_texts_add (texts, "unit.loss.metric", "t/(ha·año)");
  for (gsize i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autofree char *got = sw_quantity_text (rows[i].value, rows[i].unit, style);
      g_assert_cmpstr (got, ==, rows[i].want);
    }
}

/* Ratio, degrees and percent of the usual gradients: atan (1 / hv), by calculator. */
static void
test_gradient_three_ways (void)
{
  static const struct
  {
    double hv;
    const char *want;
  } rows[] = {
    { 5.0, "5H:1V · 11.3° · 20" NBSP "%" },
    { 3.0, "3H:1V · 18.4° · 33.3" NBSP "%" },
    { 2.5, "2.5H:1V · 21.8° · 40" NBSP "%" },
    { 2.0, "2H:1V · 26.6° · 50" NBSP "%" },
    { 1.5, "1.5H:1V · 33.7° · 66.7" NBSP "%" },
    { 1.0, "1H:1V · 45.0° · 100" NBSP "%" },
    { 0.5, "0.5H:1V · 63.4° · 200" NBSP "%" },
    { 33.3333, "33.3H:1V · 1.7° · 3" NBSP "%" },
  };

  for (gsize i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autofree char *got = sw_gradient_text (atan (1.0 / rows[i].hv), metric);
      g_assert_cmpstr (got, ==, rows[i].want);
    }
  g_autofree char *level = sw_gradient_text (0.0, metric);
  g_autofree char *french = sw_gradient_text (atan (1.0 / 1.5), comma);
  g_assert_cmpstr (level, ==, "– · 0.0° · 0" NBSP "%");
  g_assert_cmpstr (french, ==, "1,5H:1V · 33,7° · 66,7" NBSP "%");
}

static void
test_decimals (void)
{
  g_autofree char *kept = sw_decimal_text (2.5, 3, comma);
  g_autofree char *none = sw_decimal_text (-12345.4, 0, us);
  g_autofree char *huge = sw_decimal_text (-DBL_MAX, 17, metric);

  g_assert_cmpstr (kept, ==, "2,500");
  g_assert_cmpstr (none, ==,
                   "\xe2\x88\x92"
                   "12345");
  g_assert_cmpuint (strlen (huge), ==, 3 + 309 + 1 + 17);
}

static void
test_exact_shortest (void)
{
  static const struct
  {
    double value;
    const char *want;
  } rows[] = {
    { 2.44, "2.44" },
    { 34.3, "34.3" },
    { 0.1524, "0.1524" },
    { 150.0, "150" },
    { 0.1 + 0.2, "0.30000000000000004" },
    { -0.0, "-0.0" },
    { 0.0, "0" },
    { -1.5, "-1.5" },
  };
  char buffer[G_ASCII_DTOSTR_BUF_SIZE];

  for (gsize i = 0; i < G_N_ELEMENTS (rows); i++)
    g_assert_cmpstr (sw_number_exact (rows[i].value, buffer), ==, rows[i].want);
}

/* Any finite bit pattern must come back as itself. */
static void
test_exact_round_trip (void)
{
  char buffer[G_ASCII_DTOSTR_BUF_SIZE];
  guint64 bits = 0x9e3779b97f4a7c15u;

  for (int i = 0; i < 20000; i++)
    {
      double value, back;
      /* xorshift, any odd start */
      bits ^= bits << 13;
      bits ^= bits >> 7;
      bits ^= bits << 17;
      memcpy (&value, &bits, sizeof value);
      if (!isfinite (value))
        continue;
      back = g_ascii_strtod (sw_number_exact (value, buffer), NULL);
      g_assert_true (memcmp (&back, &value, sizeof value) == 0);
    }
}

/* By hand: 150 / 25.4 = 5.906 in, 47.2 eighths; 1000 / 25.4 = 39.37 in, 314.96 eighths;
 * 0.1524 m is exactly 6 in; 3 m is 9 ft 10.11 in, 472.4 quarters. 200, 300 and 600 mm are
 * 7.874, 11.811 and 23.622 in, the 8, 12 and 24 in of the trade (common practice, no
 * source); 104 mm is 4.094 in. 3.375 in is 0.085725 m. */
static void
test_limits (void)
{
  static const struct
  {
    double value;
    SwUnit unit;
    SwLimit limit;
    const char *want;
  } rows[] = {
    { 0.150, SW_UNIT_SMALL_M, SW_LIMIT_NONE, "5⅞" NBSP "in" },
    { 0.150, SW_UNIT_SMALL_M, SW_LIMIT_LEAST, "6" NBSP "in" },
    { 0.100, SW_UNIT_SMALL_M, SW_LIMIT_LEAST, "4" NBSP "in" },
    { 0.1524, SW_UNIT_SMALL_M, SW_LIMIT_LEAST, "6" NBSP "in" },
    { 0.200, SW_UNIT_SMALL_M, SW_LIMIT_LEAST, "8" NBSP "in" },
    { 0.300, SW_UNIT_SMALL_M, SW_LIMIT_LEAST, "12" NBSP "in" },
    { 0.600, SW_UNIT_SMALL_M, SW_LIMIT_LEAST, "24" NBSP "in" },
    { 0.104, SW_UNIT_SMALL_M, SW_LIMIT_LEAST, "4½" NBSP "in" },
    { 0.104, SW_UNIT_SMALL_M, SW_LIMIT_LAID, "4⅛" NBSP "in" },
    { 0.300, SW_UNIT_SMALL_M, SW_LIMIT_LAID, "11⅞" NBSP "in" },
    { 0.085725, SW_UNIT_SMALL_M, SW_LIMIT_LEAST, "3⅜" NBSP "in" },
    { 0.085725, SW_UNIT_SMALL_M, SW_LIMIT_LAID, "3⅜" NBSP "in" },
    { 0.1524, SW_UNIT_SMALL_M, SW_LIMIT_MOST, "6" NBSP "in" },
    { 0.300, SW_UNIT_SMALL_M, SW_LIMIT_MOST, "11¾" NBSP "in" },
    { 1.000, SW_UNIT_SMALL_M, SW_LIMIT_MOST, "39¼" NBSP "in" },
    { 3.0, SW_UNIT_M, SW_LIMIT_LEAST, "9" NBSP "ft" NBSP "10¼" NBSP "in" },
    { 3.0, SW_UNIT_M, SW_LIMIT_MOST, "9" NBSP "ft" NBSP "10" NBSP "in" },
    { 0.003, SW_UNIT_SMALL_M, SW_LIMIT_LEAST, "0.12" NBSP "in" },
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autofree char *us_text =
          sw_quantity_limit_text (rows[i].value, rows[i].unit, rows[i].limit, us);

      g_assert_cmpstr (us_text, ==, rows[i].want);
    }
  g_autofree char *metric_text =
      sw_quantity_limit_text (0.1524, SW_UNIT_SMALL_M, SW_LIMIT_LEAST,
                              (SwNumberStyle){ SW_UNITS_METRIC, '.', NULL });

  g_assert_cmpstr (metric_text, ==, "152" NBSP "mm");
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/base/number-text/metric", test_metric);
  g_test_add_func ("/base/number-text/us", test_us);
  g_test_add_func ("/base/number-text/signs-and-gaps", test_signs_and_gaps);
  g_test_add_func ("/base/number-text/columns", test_columns);
  g_test_add_func ("/base/number-text/every-unit", test_every_unit);
  g_test_add_func ("/base/number-text/signs-of-a-language", test_signs_of_a_language);
  g_test_add_func ("/base/number-text/gradient-three-ways", test_gradient_three_ways);
  g_test_add_func ("/base/number-text/decimals", test_decimals);
  g_test_add_func ("/base/number-text/exact-shortest", test_exact_shortest);
  g_test_add_func ("/base/number-text/exact-round-trip", test_exact_round_trip);
  g_test_add_func ("/base/number-text/limits", test_limits);
  return g_test_run ();
}
