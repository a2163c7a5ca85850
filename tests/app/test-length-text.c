/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include <glib.h>
#include <math.h>

#include "length-text.h"
#include "value-text.h"
#include <slopewright/store/store.h>

/* Within the rounding of a sum of a few doubles. */
#define EXACT 1e-12

static SwNumberStyle
style_of (SwUnitSystem units)
{
  return (SwNumberStyle){ units, '.', NULL };
}

typedef struct
{
  const char *text;
  SwUnit unit;
  SwUnitSystem units;
  double want_m;
} Row;

/* Sources: 1 ft = 0.3048 m and 1 in = 25.4 mm exactly (agreement of 1959); sums by hand. */
static const Row read_rows[] = {
  { "1.37", SW_UNIT_M, SW_UNITS_METRIC, 1.37 },
  { "1,37", SW_UNIT_M, SW_UNITS_METRIC, 1.37 },
  { "  1.37 m ", SW_UNIT_M, SW_UNITS_METRIC, 1.37 },
  { "1.37m", SW_UNIT_M, SW_UNITS_US, 1.37 },
  { "137 cm", SW_UNIT_M, SW_UNITS_METRIC, 1.37 },
  { "1370 MM", SW_UNIT_M, SW_UNITS_METRIC, 1.37 },
  { ".5", SW_UNIT_M, SW_UNITS_METRIC, 0.5 },
  { ",5", SW_UNIT_M, SW_UNITS_METRIC, 0.5 },
  { "150", SW_UNIT_SMALL_M, SW_UNITS_METRIC, 0.15 },
  { "0.15 m", SW_UNIT_SMALL_M, SW_UNITS_METRIC, 0.15 },
  { "6", SW_UNIT_SMALL_M, SW_UNITS_US, 0.1524 },
  { "10", SW_UNIT_M, SW_UNITS_US, 3.048 },
  { "60 ft 1 in", SW_UNIT_M, SW_UNITS_US, 18.3134 },
  { "60 ft 1 in", SW_UNIT_M, SW_UNITS_METRIC, 18.3134 },
  { "11' 6 3/4\"", SW_UNIT_M, SW_UNITS_US, 3.52425 },
  { "11'6-3/4\"", SW_UNIT_M, SW_UNITS_US, 3.52425 },
  { "11ft6-7/8in", SW_UNIT_M, SW_UNITS_US, 3.527425 },
  { "11'-6\"", SW_UNIT_M, SW_UNITS_US, 3.5052 },
  { "11' 6", SW_UNIT_M, SW_UNITS_US, 3.5052 },
  { "11′ 6¾″", SW_UNIT_M, SW_UNITS_US, 3.52425 },
  { "11 ft. 6 in.", SW_UNIT_M, SW_UNITS_US, 3.5052 },
  { "4 1/2 ft", SW_UNIT_M, SW_UNITS_METRIC, 1.3716 },
  { "½ in", SW_UNIT_SMALL_M, SW_UNITS_METRIC, 0.0127 },
  { "3/4", SW_UNIT_SMALL_M, SW_UNITS_US, 0.01905 },
  { "2 m 5 cm", SW_UNIT_M, SW_UNITS_METRIC, 2.05 },
  { "2.4 + 30 cm", SW_UNIT_M, SW_UNITS_METRIC, 2.7 },
  { "2.4+0,3-10cm", SW_UNIT_M, SW_UNITS_METRIC, 2.6 },
  { "10 ft - 6 in", SW_UNIT_M, SW_UNITS_US, 2.8956 },
  { "-1.5", SW_UNIT_M, SW_UNITS_METRIC, -1.5 },
  { "−1.5", SW_UNIT_M, SW_UNITS_METRIC, -1.5 },
  { "1 yd", SW_UNIT_M, SW_UNITS_US, 0.9144 },
  { "12 inches", SW_UNIT_M, SW_UNITS_METRIC, 0.3048 },
  { "44\u00a0ft\u00a00¼\u00a0in", SW_UNIT_M, SW_UNITS_US, 13.41755 },
  { "0,125", SW_UNIT_M, SW_UNITS_US, 0.0381 },
  { "1,234", SW_UNIT_M, SW_UNITS_METRIC, 1.234 },
  { "4,5 mètres", SW_UNIT_M, SW_UNITS_US, 4.5 },
  { "1 mètre 20 cm", SW_UNIT_M, SW_UNITS_METRIC, 1.2 },
  { "4.5 metros", SW_UNIT_M, SW_UNITS_US, 4.5 },
  { "11 pieds 6 pouces", SW_UNIT_M, SW_UNITS_METRIC, 3.5052 },
  { "11 pi 6 3/4 po", SW_UNIT_M, SW_UNITS_METRIC, 3.52425 },
  { "11 pies 6 pulgadas", SW_UNIT_M, SW_UNITS_METRIC, 3.5052 },
  { "6 pulg.", SW_UNIT_SMALL_M, SW_UNITS_METRIC, 0.1524 },
};

static void
test_reads (void)
{
  for (gsize i = 0; i < G_N_ELEMENTS (read_rows); i++)
    {
      const Row *row = &read_rows[i];
      g_autofree char *problem = NULL;
      double got_m = 0.0;

      g_test_message ("%s", row->text);
      g_assert_true (sw_length_parse (row->text, row->unit, style_of (row->units), &got_m,
                                      &problem));
      g_assert_cmpfloat_with_epsilon (got_m, row->want_m, EXACT);
    }
}

/* Nothing is guessed, nothing is half taken. */
static void
test_refuses (void)
{
  static const struct
  {
    const char *text;
    SwUnitSystem units;
  } rows[] = {
    { "", SW_UNITS_METRIC },         { "   ", SW_UNITS_METRIC },
    { "abc", SW_UNITS_METRIC },      { "12 ft junk", SW_UNITS_US },
    { "1:2", SW_UNITS_METRIC },      { "2H:1V", SW_UNITS_METRIC },
    { "1,234.5", SW_UNITS_METRIC },  { "1.234,5", SW_UNITS_METRIC },
    { "1,234", SW_UNITS_US },        { "1.234.567", SW_UNITS_METRIC },
    { "1e3", SW_UNITS_METRIC },      { "nan", SW_UNITS_METRIC },
    { "inf", SW_UNITS_METRIC },      { "0x10", SW_UNITS_METRIC },
    { "5 +", SW_UNITS_METRIC },      { "5 5", SW_UNITS_METRIC },
    { "1/0", SW_UNITS_METRIC },      { "6 in 2 ft", SW_UNITS_US },
    { "2 m 3 in", SW_UNITS_METRIC }, { "5 km", SW_UNITS_METRIC },
    { "m", SW_UNITS_METRIC },        { "--5", SW_UNITS_METRIC },
    { "5 cm 3 m", SW_UNITS_METRIC }, { "50 %", SW_UNITS_METRIC },
  };

  for (gsize i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autofree char *problem = NULL;
      double got_m = 77.0;

      g_test_message ("%s", rows[i].text);
      g_assert_false (sw_length_parse (rows[i].text, SW_UNIT_M, style_of (rows[i].units),
                                       &got_m, &problem));
      g_assert_cmpfloat (got_m, ==, 77.0);
      g_assert_nonnull (problem);
      g_assert_cmpstr (problem, !=, "");
    }
}

static void
test_ratio_is_named (void)
{
  g_autofree char *problem = NULL;
  double got_m;

  g_assert_false (
      sw_length_parse ("1:2", SW_UNIT_M, style_of (SW_UNITS_METRIC), &got_m, &problem));
  g_assert_cmpstr (problem, ==, "A ratio is not a length.");
}

/* Sources: 26.6 degrees x pi / 180; scales of temperature meet at -40, and 32 F is 0 C by
 * definition; 1 mph = 0.44704 m/s and 1 lb = 0.45359237 kg and 1 acre = 4046.8564224 m2, exact. */
static void
test_other_values (void)
{
  static const Row rows[] = {
    { "26.6", SW_UNIT_RAD, SW_UNITS_METRIC, 0.464257581035 },
    { "26,6°", SW_UNIT_RAD, SW_UNITS_METRIC, 0.464257581035 },
    { "26,6 degrés", SW_UNIT_RAD, SW_UNITS_METRIC, 0.464257581035 },
    { "26.6 grados", SW_UNIT_ANGLE, SW_UNITS_METRIC, 0.464257581035 },
    { "85", SW_UNIT_PERCENT, SW_UNITS_METRIC, 0.85 },
    { "85 %", SW_UNIT_PERCENT, SW_UNITS_US, 0.85 },
    { "2:1", SW_UNIT_HV, SW_UNITS_METRIC, 2.0 },
    { "2.5H:1V", SW_UNIT_HV, SW_UNITS_METRIC, 2.5 },
    { "3", SW_UNIT_HV, SW_UNITS_METRIC, 3.0 },
    { "1V:2H", SW_UNIT_HV, SW_UNITS_METRIC, 2.0 },
    { "50 %", SW_UNIT_HV, SW_UNITS_METRIC, 2.0 },
    { "45°", SW_UNIT_HV, SW_UNITS_METRIC, 1.0 },
    { "2:1", SW_UNIT_RAD, SW_UNITS_METRIC, 0.463647609001 }, /* atan 1/2 */
    { "50 %", SW_UNIT_RAD, SW_UNITS_US, 0.463647609001 },
    { "0.5:1", SW_UNIT_RAD, SW_UNITS_US, 1.107148717794 }, /* atan 2 */
    { "1.5H:1V", SW_UNIT_RAD, SW_UNITS_US, 0.588002603548 },
    { "2.5", SW_UNIT_ANGLE, SW_UNITS_METRIC, 0.043633231300 },
    { "25 mm/h", SW_UNIT_RAIN, SW_UNITS_METRIC, 0.025 / 3600.0 },
    { "1 in/h", SW_UNIT_RAIN, SW_UNITS_METRIC, 0.0254 / 3600.0 },
    { "1.5 lb/ft²", SW_UNIT_PA, SW_UNITS_US, 1.5 * 47.880258980335840 },
    { "17 kN/m³", SW_UNIT_N_PER_M3, SW_UNITS_US, 17000.0 },
    { "4.5 g/m²", SW_UNIT_KG_PER_M2, SW_UNITS_METRIC, 0.0045 },
    { "4,5", SW_UNIT_KG_PER_M2, SW_UNITS_METRIC, 0.0045 },
    { "45 kg/ha", SW_UNIT_KG_PER_M2, SW_UNITS_US, 0.0045 },
    { "40 lb/ac", SW_UNIT_KG_PER_M2, SW_UNITS_METRIC, 0.004483404 },
    { "7 days", SW_UNIT_DAY, SW_UNITS_METRIC, 7.0 },
    { "24 h", SW_UNIT_HOUR, SW_UNITS_METRIC, 24.0 },
    { "5", SW_UNIT_KELVIN, SW_UNITS_METRIC, 278.15 },
    { "-5 °C", SW_UNIT_KELVIN, SW_UNITS_US, 268.15 },
    { "0", SW_UNIT_KELVIN, SW_UNITS_METRIC, 273.15 },
    { "32 °F", SW_UNIT_KELVIN, SW_UNITS_METRIC, 273.15 },
    { "−40", SW_UNIT_KELVIN, SW_UNITS_US, 233.15 },
    { "8", SW_UNIT_WIND, SW_UNITS_METRIC, 8.0 },
    { "36 km/h", SW_UNIT_WIND, SW_UNITS_METRIC, 10.0 },
    { "20", SW_UNIT_WIND, SW_UNITS_US, 8.9408 },
    { "2 psf", SW_UNIT_PA, SW_UNITS_METRIC, 95.76051796067 },
  };

  for (gsize i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autofree char *problem = NULL;
      double got = 0.0;

      g_test_message ("%s", rows[i].text);
      g_assert_true (sw_value_parse (rows[i].text, rows[i].unit, style_of (rows[i].units),
                                     &got, &problem));
      g_assert_cmpfloat_with_epsilon (got, rows[i].want_m, 1e-9);
    }
}

static void
test_other_refusals (void)
{
  static const struct
  {
    const char *text;
    SwUnit unit;
  } rows[] = { { "85 m", SW_UNIT_PERCENT }, { "1:2", SW_UNIT_HV },
               { "2:1:1", SW_UNIT_HV },     { "x", SW_UNIT_RAD },
               { "1:2", SW_UNIT_RAD },      { "", SW_UNIT_PERCENT },
               { "2H:1H", SW_UNIT_RAD },    { "2V:1", SW_UNIT_HV },
               { "2.5:1", SW_UNIT_ANGLE },  { "26.6 m", SW_UNIT_RAD },
               { "-5", SW_UNIT_PERCENT } };

  for (gsize i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autofree char *problem = NULL;
      double got = 77.0;

      g_test_message ("%s", rows[i].text);
      g_assert_false (sw_value_parse (rows[i].text, rows[i].unit,
                                      style_of (SW_UNITS_METRIC), &got, &problem));
      g_assert_cmpfloat (got, ==, 77.0);
      g_assert_nonnull (problem);
    }
}

/* What a field shows, it also reads: to half its last decimal or a sixteenth of an inch. */
static void
test_round_trip (void)
{
  static const SwNumberStyle styles[] = { { SW_UNITS_METRIC, '.', NULL },
                                          { SW_UNITS_METRIC, ',', NULL },
                                          { SW_UNITS_US, '.', NULL },
                                          { SW_UNITS_US, ',', NULL } };
  static const struct
  {
    SwUnit unit;
    double value, within;
  } rows[] = {
    { SW_UNIT_M, 13.417, 0.0032 },       { SW_UNIT_M, -0.25, 0.0032 },
    { SW_UNIT_M, 1234.5, 0.0032 },       { SW_UNIT_M, 0.0, 1e-9 },
    { SW_UNIT_SMALL_M, 0.1524, 0.0016 }, { SW_UNIT_SMALL_M, 0.004, 0.0016 },
    { SW_UNIT_PERCENT, 0.85, 1e-5 },     { SW_UNIT_RAD, 0.0174533, 1e-5 },
    { SW_UNIT_HV, 2.5, 1e-9 },           { SW_UNIT_KG_PER_M2, 0.0045, 3e-6 },
    { SW_UNIT_PER_M2, 1.35, 1e-3 },      { SW_UNIT_DAY, 14.0, 1e-9 },
    { SW_UNIT_HOUR, 24.0, 1e-9 },        { SW_UNIT_RATIO, 1.25, 1e-9 },
    { SW_UNIT_KELVIN, 268.15, 1e-3 },    { SW_UNIT_WIND, 8.0, 1e-3 },
    { SW_UNIT_FACTOR, 0.0395, 1e-6 },
    { SW_UNIT_ANGLE, 0.0174533, 1e-5 },  { SW_UNIT_RAIN, 0.025 / 3600.0, 1e-8 },
    { SW_UNIT_PA, 84.0, 0.03 },          { SW_UNIT_N_PER_M3, 17000.0, 0.6 },
    { SW_UNIT_M2, 12.5, 1e-3 },          { SW_UNIT_M3, 3.25, 1e-3 },
    { SW_UNIT_KG, 23.0, 1e-3 },          { SW_UNIT_M_PER_S, 12.0, 1e-3 },
  };

  for (gsize s = 0; s < G_N_ELEMENTS (styles); s++)
    for (gsize i = 0; i < G_N_ELEMENTS (rows); i++)
      {
        g_autofree char *text =
            sw_value_edit_text (rows[i].value, rows[i].unit, styles[s]);
        g_autofree char *problem = NULL;
        double got = NAN;

        g_test_message ("%s", text);
        g_assert_true (sw_value_parse (text, rows[i].unit, styles[s], &got, &problem));
        g_assert_cmpfloat_with_epsilon (got, rows[i].value, rows[i].within);
      }
}

/* What a field shows in any language it reads back, and the English signs with it: a
 * notebook from elsewhere may have them. */
static void
test_signs_of_languages (void)
{
  static const struct
  {
    const char *language, *text;
    SwUnit unit;
    double want;
  } rows[] = {
    { "fr", "7 j", SW_UNIT_DAY, 7.0 },     { "fr", "7 d", SW_UNIT_DAY, 7.0 },
    { "fr", "12 mois", SW_UNIT_MONTH, 12 }, { "fr", "12 mo", SW_UNIT_MONTH, 12 },
    { "es", "7 d", SW_UNIT_DAY, 7.0 },     { "es", "12 meses", SW_UNIT_MONTH, 12 },
    { "es", "1 mes", SW_UNIT_MONTH, 1.0 }, { "es", "12 months", SW_UNIT_MONTH, 12 },
    { "fr", "36 km/h", SW_UNIT_WIND, 10 }, { "fr", "20 mi/h", SW_UNIT_WIND, 8.9408 },
    { "fr", "20 mph", SW_UNIT_WIND, 8.9408 },
  };

  for (gsize i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr (SwTexts) texts = sw_texts_load (rows[i].language);
      const SwNumberStyle style = { SW_UNITS_METRIC, ',', texts };
      g_autofree char *problem = NULL;
      double got = 0.0;

      g_test_message ("%s: %s", rows[i].language, rows[i].text);
      g_assert_true (sw_value_parse (rows[i].text, rows[i].unit, style, &got, &problem));
      g_assert_cmpfloat_with_epsilon (got, rows[i].want, 1e-9);
    }
}

static void
check_reads_back (double value, SwUnit unit, SwNumberStyle style)
{
  g_autofree char *text = sw_value_edit_text (value, unit, style);
  g_autofree char *problem = NULL;
  double got = 0.0;

  if (!sw_value_parse (text, unit, style, &got, &problem))
    g_error ("%s: \"%s\": %s", sw_texts_language (style.texts), text, problem);
  /* Fields show three decimals of their own unit, lengths in feet a quarter of an inch. */
  g_assert_cmpfloat_with_epsilon (got, value, value * 0.2);
}

static void
test_every_unit_reads_back (void)
{
  g_auto (GStrv) languages = sw_texts_languages ();

  for (guint i = 0; languages[i] != NULL; i++)
    {
      g_autoptr (SwTexts) texts = sw_texts_load (languages[i]);

      for (int units = SW_UNITS_METRIC; units <= SW_UNITS_US; units++)
        for (int unit = 0; unit < SW_UNIT_COUNT_OF_UNITS; unit++)
          {
            const SwNumberStyle style = { (SwUnitSystem) units, ',', texts };
            double si = 3.0 / sw_quantity_per_si ((SwUnit) unit, style.units)
                        + sw_quantity_zero_si ((SwUnit) unit, style.units);

            check_reads_back (unit == SW_UNIT_RAD ? 0.5 : si, (SwUnit) unit, style);
          }
    }
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/app/length-text/reads", test_reads);
  g_test_add_func ("/app/length-text/refuses", test_refuses);
  g_test_add_func ("/app/length-text/ratio-is-named", test_ratio_is_named);
  g_test_add_func ("/app/value-text/others", test_other_values);
  g_test_add_func ("/app/value-text/refuses", test_other_refusals);
  g_test_add_func ("/app/value-text/round-trip", test_round_trip);
  g_test_add_func ("/app/length/signs-of-languages", test_signs_of_languages);
  g_test_add_func ("/app/length/every-unit-reads-back", test_every_unit_reads_back);
  return g_test_run ();
}
