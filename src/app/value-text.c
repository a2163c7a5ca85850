/* SPDX-License-Identifier: MIT */
#include "value-text.h"

#include <glib/gi18n.h>
#include <math.h>
#include <string.h>

#include "gradient-parse.h"
#include "length-text.h"
#include "number-scan.h"

#define KG_PER_M2_PER_LB_PER_ACRE (SW_KG_PER_LB / SW_M2_PER_ACRE)
#define KG_PER_M2_PER_LB_PER_1000_FT2 (SW_KG_PER_LB / (1000.0 * SW_M2_PER_FT2))

typedef struct
{
  SwUnit unit;
  const char *word;
  double si;
} Suffix;

/* Beside the unit that a field shows, in either system. */
static const Suffix suffixes[] = {
  { SW_UNIT_ANGLE, "degrees", G_PI / 180.0 },
  { SW_UNIT_ANGLE, "degree", G_PI / 180.0 },
  { SW_UNIT_ANGLE, "deg", G_PI / 180.0 },
  { SW_UNIT_ANGLE, "degrés", G_PI / 180.0 },
  { SW_UNIT_ANGLE, "degré", G_PI / 180.0 },
  { SW_UNIT_ANGLE, "grados", G_PI / 180.0 },
  { SW_UNIT_ANGLE, "grado", G_PI / 180.0 },
  { SW_UNIT_PER_M2, "/m2", 1.0 },
  { SW_UNIT_PER_M2, "/yd2", 1.0 / SW_M2_PER_YD2 },
  { SW_UNIT_KG_PER_M2, "kg/m²", 1.0 },
  { SW_UNIT_KG_PER_M2, "kg/m2", 1.0 },
  { SW_UNIT_KG_PER_M2, "g/m2", 0.001 },
  { SW_UNIT_KG_PER_M2, "kg/ha", 1.0 / SW_M2_PER_HA },
  { SW_UNIT_KG_PER_M2, "lb/1000 ft2", KG_PER_M2_PER_LB_PER_1000_FT2 },
  { SW_UNIT_KG_PER_M2, "lb/acre", KG_PER_M2_PER_LB_PER_ACRE },
  { SW_UNIT_KG_PER_M2, "lb/ac", KG_PER_M2_PER_LB_PER_ACRE },
  { SW_UNIT_MONTH, "months", 1.0 },
  { SW_UNIT_DAY, "days", 1.0 },
  { SW_UNIT_DAY, "day", 1.0 },
  { SW_UNIT_HOUR, "hours", 1.0 },
  { SW_UNIT_PA, "psf", SW_PA_PER_PSF },
  { SW_UNIT_WIND, "km/h", 1000.0 / SW_S_PER_H },
  { SW_UNIT_M2, "m2", 1.0 },
  { SW_UNIT_M2, "ft²", SW_M2_PER_FT2 },
  { SW_UNIT_M2, "ft2", SW_M2_PER_FT2 },
  { SW_UNIT_M3, "m3", 1.0 },
  { SW_UNIT_N_PER_M3, "kN/m3", 1000.0 },
  { SW_UNIT_SEEDS_PER_M2, "/m2", 1.0 },
  { SW_UNIT_SEEDS_PER_M2, "/ft2", 1.0 / SW_M2_PER_FT2 },
  { SW_UNIT_SEEDS_PER_KG, "/g", 1000.0 },
  { SW_UNIT_H_PER_M2, "h/100 m2", 0.01 },
  { SW_UNIT_H_PER_M2, "h/1000 ft2", 0.001 / SW_M2_PER_FT2 },
};

/* SI of 1 as the reader's fields show it. */
static double
bare_si (SwUnit unit, SwUnitSystem units)
{
  return 1.0 / sw_quantity_per_si (unit, units);
}

/* A temperature names its scale, or has that of the reader. */
static double
scan_kelvin (SwScan *scan, double number)
{
  SwUnitSystem scale = scan->style.units;

  if (sw_scan_word (scan, "°C") || sw_scan_word (scan, "C"))
    scale = SW_UNITS_METRIC;
  else if (sw_scan_word (scan, "°F") || sw_scan_word (scan, "F"))
    scale = SW_UNITS_US;
  return sw_quantity_zero_si (SW_UNIT_KELVIN, scale)
         + number * bare_si (SW_UNIT_KELVIN, scale);
}

/* A sign that fields show, beside one or many. */
static gboolean
scan_sign_of (SwScan *scan, SwUnit unit, SwNumberStyle style)
{
  const char *many = sw_quantity_unit (unit, style);

  return *many != '\0'
         && (sw_scan_word (scan, many)
             || sw_scan_word (scan, sw_quantity_unit_of_one (unit, style)));
}

/* Signs of the reader's language, and the English ones. */
static double
scan_suffix (SwScan *scan, SwUnit unit)
{
  const SwTexts *const languages[] = { scan->style.texts, NULL };

  for (gsize i = 0; i < G_N_ELEMENTS (suffixes); i++)
    if (suffixes[i].unit == unit && sw_scan_word (scan, suffixes[i].word))
      return suffixes[i].si;
  for (gsize i = 0; i < G_N_ELEMENTS (languages); i++)
    for (SwUnitSystem units = SW_UNITS_METRIC; units <= SW_UNITS_US; units++)
      if (scan_sign_of (scan, unit, (SwNumberStyle){ units, '.', languages[i] }))
        return bare_si (unit, units);
  return bare_si (unit, scan->style.units);
}

static double
scan_unit (SwScan *scan, SwUnit unit, double number)
{
  sw_scan_blanks (scan);
  return unit == SW_UNIT_KELVIN ? scan_kelvin (scan, number)
                                : number * scan_suffix (scan, unit);
}

/* Only temperatures go below 0. */
static double
scan_sign (SwScan *scan, SwUnit unit)
{
  if (unit != SW_UNIT_KELVIN)
    return 1.0;
  return sw_scan_word (scan, "-") || sw_scan_word (scan, "−") ? -1.0 : 1.0;
}

gboolean
sw_value_parse (const char *text, SwUnit unit, SwNumberStyle style, double *value,
                char **problem)
{
  SwScan scan = { text, style, NULL };
  double number, sign, si;

  if (unit == SW_UNIT_M || unit == SW_UNIT_SMALL_M)
    return sw_length_parse (text, unit, style, value, problem);
  if (unit == SW_UNIT_RAD || unit == SW_UNIT_HV)
    return sw_gradient_parse (text, unit, style, value, problem);
  if (sw_scan_at_end (&scan))
    {
      *problem = g_strdup (_ ("Type a number."));
      return FALSE;
    }
  sign = scan_sign (&scan, unit);
  if (sw_scan_number (&scan, &number))
    {
      si = scan_unit (&scan, unit, sign * number);
      if (unit == SW_UNIT_COUNT && floor (number) < number)
        scan.problem = _ ("Type a whole number.");
      else if (sw_scan_at_end (&scan))
        {
          *value = si;
          return TRUE;
        }
    }
  *problem = scan.problem != NULL
                 ? g_strdup (scan.problem)
                 : g_strdup_printf (_ ("“%s” cannot be read as a number here."), scan.at);
  return FALSE;
}

/* At most so many decimals in a field; what is stored stays exact. */
static int
edit_decimals (SwUnit unit, SwUnitSystem units)
{
  switch (unit)
    {
    case SW_UNIT_M:
      return 3;
    case SW_UNIT_SMALL_M:
      return units == SW_UNITS_US ? 2 : 1;
    case SW_UNIT_COUNT:
      return 0;
    case SW_UNIT_FACTOR:
      return 5;
    default:
      return 3;
    }
}

static char *
trimmed (char *digits, char decimal_mark)
{
  char *end = digits + strlen (digits);

  if (strchr (digits, decimal_mark) == NULL)
    return digits;
  while (end[-1] == '0')
    *--end = '\0';
  if (end[-1] == decimal_mark)
    *--end = '\0';
  return digits;
}

static const char *
edit_unit (SwUnit unit, SwNumberStyle style)
{
  return unit == SW_UNIT_HV ? ":1" : sw_quantity_unit (unit, style);
}

char *
sw_value_edit_text (double value, SwUnit unit, SwNumberStyle style)
{
  const char *symbol = edit_unit (unit, style);
  gboolean joined = unit == SW_UNIT_HV || unit == SW_UNIT_RAD || unit == SW_UNIT_ANGLE
                    || *symbol == '\0';
  double shown = value;
  g_autofree char *digits = NULL;

  if (unit == SW_UNIT_M && style.units == SW_UNITS_US)
    return sw_quantity_text (value, unit, style);
  if (unit == SW_UNIT_SMALL_M && style.units == SW_UNITS_US)
    return sw_quantity_text (value, unit, style);
  if (unit == SW_UNIT_SMALL_M)
    shown = value * 1000.0;
  else if (unit != SW_UNIT_M)
    shown =
        (value - sw_quantity_zero_si (unit, style.units)) / bare_si (unit, style.units);
  digits = trimmed (sw_decimal_text (shown, edit_decimals (unit, style.units), style),
                    style.decimal_mark);
  return g_strconcat (digits, joined ? "" : " ", symbol, NULL);
}
