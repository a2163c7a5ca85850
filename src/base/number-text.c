/* SPDX-License-Identifier: MIT */
#include <slopewright/base/number-text.h>

#include <math.h>
#include <slopewright/base/gradient.h>
#include <string.h>

#define MINUS "\xe2\x88\x92"
#define DASH "\xe2\x80\x93"
#define NO_BREAK_SPACE "\xc2\xa0"
#define DEGREE "\xc2\xb0"
#define MAX_DECIMALS 17

/* How one unit is shown in one system. */
typedef struct
{
  const char *symbol;
  double per_si;  /* shown = SI times this */
  int decimals;   /* at most */
  gboolean fixed; /* keep trailing zeros, so that columns line up */
} Display;

static const Display metric[SW_UNIT_COUNT_OF_UNITS] = {
  [SW_UNIT_RATIO] = { "", 1.0, 2, TRUE },
  [SW_UNIT_COUNT] = { "", 1.0, 0, TRUE },
  [SW_UNIT_PERCENT] = { "%", 100.0, 1, FALSE },
  [SW_UNIT_M] = { "m", 1.0, 2, TRUE },
  [SW_UNIT_SMALL_M] = { "mm", 1000.0, 0, FALSE },
  [SW_UNIT_M2] = { "m²", 1.0, 1, TRUE },
  [SW_UNIT_M3] = { "m³", 1.0, 2, TRUE },
  [SW_UNIT_KG] = { "kg", 1.0, 1, TRUE },
  [SW_UNIT_RAD] = { DEGREE, 180.0 / G_PI, 1, TRUE },
  [SW_UNIT_HV] = { "", 1.0, 2, FALSE },
  [SW_UNIT_PER_M2] = { "/m²", 1.0, 2, TRUE },
  [SW_UNIT_KG_PER_M2] = { "g/m²", 1000.0, 1, FALSE },
  [SW_UNIT_PA] = { "Pa", 1.0, 1, FALSE },
  [SW_UNIT_MONTH] = { "mo", 1.0, 1, FALSE },
  [SW_UNIT_DAY] = { "d", 1.0, 1, FALSE },
  [SW_UNIT_HOUR] = { "h", 1.0, 2, FALSE },
  [SW_UNIT_ANGLE] = { DEGREE, 180.0 / G_PI, 1, TRUE },
  [SW_UNIT_FACTOR] = { "", 1.0, 4, FALSE },
  [SW_UNIT_LOSS] = { "t/(ha·yr)", 1.0, 1, TRUE },
  [SW_UNIT_LOSS_IN_TIME] = { "t/ha", 1.0, 1, TRUE },
  [SW_UNIT_EROSIVITY] = { "MJ·mm/(ha·h·yr)", 1.0, 0, TRUE },
  [SW_UNIT_ERODIBILITY] = { "t·h/(MJ·mm)", 1.0, 5, TRUE },
  [SW_UNIT_RAIN] = { "mm/h", 1000.0 * SW_S_PER_H, 1, FALSE },
  [SW_UNIT_M_PER_S] = { "m/s", 1.0, 3, TRUE },
  [SW_UNIT_N_PER_M3] = { "kN/m³", 0.001, 1, TRUE },
  [SW_UNIT_KELVIN] = { DEGREE "C", 1.0, 1, FALSE },
  [SW_UNIT_WIND] = { "m/s", 1.0, 1, FALSE },
  [SW_UNIT_SEEDS_PER_M2] = { "/m²", 1.0, 0, TRUE },
  [SW_UNIT_SEEDS_PER_KG] = { "/kg", 1.0, 0, TRUE },
  [SW_UNIT_H_PER_M] = { "h/m", 1.0, 3, FALSE },
  [SW_UNIT_H_PER_M2] = { "h/100 m²", 100.0, 2, FALSE },
  [SW_UNIT_MONEY] = { "", 1.0, 2, TRUE },
};

static const Display us[SW_UNIT_COUNT_OF_UNITS] = {
  [SW_UNIT_RATIO] = { "", 1.0, 2, TRUE },
  [SW_UNIT_COUNT] = { "", 1.0, 0, TRUE },
  [SW_UNIT_PERCENT] = { "%", 100.0, 1, FALSE },
  [SW_UNIT_M] = { "ft", 1.0 / SW_M_PER_FT, 2, TRUE },
  [SW_UNIT_SMALL_M] = { "in", 1.0 / SW_M_PER_IN, 2, FALSE },
  [SW_UNIT_M2] = { "yd²", 1.0 / SW_M2_PER_YD2, 1, TRUE },
  [SW_UNIT_M3] = { "yd³", 1.0 / SW_M3_PER_YD3, 2, TRUE },
  [SW_UNIT_KG] = { "lb", 1.0 / SW_KG_PER_LB, 1, TRUE },
  [SW_UNIT_RAD] = { DEGREE, 180.0 / G_PI, 1, TRUE },
  [SW_UNIT_HV] = { "", 1.0, 2, FALSE },
  [SW_UNIT_PER_M2] = { "/yd²", SW_M2_PER_YD2, 2, TRUE },
  [SW_UNIT_KG_PER_M2] = { "lb/1000 ft²", 1000.0 * SW_M2_PER_FT2 / SW_KG_PER_LB, 2,
                          FALSE },
  [SW_UNIT_PA] = { "lb/ft²", 1.0 / SW_PA_PER_PSF, 2, TRUE },
  [SW_UNIT_MONTH] = { "mo", 1.0, 1, FALSE },
  [SW_UNIT_DAY] = { "d", 1.0, 1, FALSE },
  [SW_UNIT_HOUR] = { "h", 1.0, 2, FALSE },
  [SW_UNIT_ANGLE] = { DEGREE, 180.0 / G_PI, 1, TRUE },
  [SW_UNIT_FACTOR] = { "", 1.0, 4, FALSE },
  [SW_UNIT_LOSS] = { "ton/(ac·yr)", 1.0 / SW_LOSS_SI_PER_US, 1, TRUE },
  [SW_UNIT_LOSS_IN_TIME] = { "ton/ac", 1.0 / SW_LOSS_SI_PER_US, 1, TRUE },
  [SW_UNIT_EROSIVITY] = { "US units", 1.0 / SW_EROSIVITY_SI_PER_US, 1, FALSE },
  [SW_UNIT_ERODIBILITY] = { "US units", 1.0 / SW_ERODIBILITY_SI_PER_US, 3, TRUE },
  [SW_UNIT_RAIN] = { "in/h", SW_S_PER_H / SW_M_PER_IN, 2, TRUE },
  [SW_UNIT_M_PER_S] = { "ft/s", 1.0 / SW_M_PER_FT, 2, TRUE },
  [SW_UNIT_N_PER_M3] = { "lb/ft³", 1.0 / SW_N_PER_M3_PER_PCF, 1, TRUE },
  [SW_UNIT_KELVIN] = { DEGREE "F", 1.0 / SW_K_PER_F, 1, FALSE },
  [SW_UNIT_WIND] = { "mph", 1.0 / SW_M_PER_S_PER_MPH, 1, FALSE },
  [SW_UNIT_SEEDS_PER_M2] = { "/ft²", SW_M2_PER_FT2, 1, TRUE },
  [SW_UNIT_SEEDS_PER_KG] = { "/lb", SW_KG_PER_LB, 0, TRUE },
  [SW_UNIT_H_PER_M] = { "h/ft", SW_M_PER_FT, 3, FALSE },
  [SW_UNIT_H_PER_M2] = { "h/1000 ft²", 1000.0 * SW_M2_PER_FT2, 2, FALSE },
  [SW_UNIT_MONEY] = { "", 1.0, 2, TRUE },
};

/* Ids of the signs that are words of a language; those of the tables are English. */
static const char *const sign_ids[SW_UNIT_COUNT_OF_UNITS][SW_UNITS_US + 1] = {
  [SW_UNIT_MONTH] = { "unit.month", "unit.month" },
  [SW_UNIT_DAY] = { "unit.day", "unit.day" },
  [SW_UNIT_LOSS] = { "unit.loss.metric", "unit.loss.us" },
  [SW_UNIT_EROSIVITY] = { "unit.erosivity.metric", "unit.us-units" },
  [SW_UNIT_ERODIBILITY] = { NULL, "unit.us-units" },
  [SW_UNIT_WIND] = { NULL, "unit.wind.us" },
};

static const Display *
display_of (SwUnit unit, SwUnitSystem units)
{
  return units == SW_UNITS_US ? &us[unit] : &metric[unit];
}

/* "-0.00" and "0.00" are the same number to a reader. */
static gboolean
shows_zero (const char *digits)
{
  return strspn (digits, "-0.") == strlen (digits);
}

/* Digits with a point and an ASCII minus, as the C locale has them. */
static char *
plain_decimals (double value, int decimals)
{
  /* The largest double has 309 digits before the point. */
  char buffer[309 + MAX_DECIMALS + 4];
  char format[8];

  g_snprintf (format, sizeof format, "%%.%df", CLAMP (decimals, 0, MAX_DECIMALS));
  g_ascii_formatd (buffer, sizeof buffer, format, value);
  return g_strdup (buffer[0] == '-' && shows_zero (buffer) ? buffer + 1 : buffer);
}

static void
drop_trailing_zeros (char *digits)
{
  if (strchr (digits, '.') == NULL)
    return;
  char *end = digits + strlen (digits);
  while (end[-1] == '0')
    end--;
  if (end[-1] == '.')
    end--;
  *end = '\0';
}

/* Replace the ASCII minus and point; put @group (may be "") between thousands. */
static char *
dress (const char *digits, const char *group, char decimal_mark)
{
  GString *text = g_string_new (NULL);
  gboolean negative = digits[0] == '-';
  const char *whole = digits + (negative ? 1 : 0);
  gsize n_whole = strcspn (whole, ".");

  if (negative)
    g_string_append (text, MINUS);
  for (gsize i = 0; i < n_whole; i++)
    {
      if (i > 0 && n_whole >= 5 && (n_whole - i) % 3 == 0)
        g_string_append (text, group);
      g_string_append_c (text, whole[i]);
    }
  if (whole[n_whole] == '.')
    {
      g_string_append_c (text, decimal_mark);
      g_string_append (text, whole + n_whole + 1);
    }
  return g_string_free (text, FALSE);
}

static const char *
group_mark (SwNumberStyle style)
{
  return style.units == SW_UNITS_US && style.decimal_mark == '.' ? "," : NO_BREAK_SPACE;
}

/* Halves go up, as by hand: 26 x 0.15 x 0.15 = 0.585 is 0.59, though the nearest double
 * lies below it. Far more than a double's error, far less than any digit shown. */
#define HALF_NUDGE 1e-13

static char *
shown_number (double shown, int decimals, gboolean fixed, SwNumberStyle style)
{
  g_autofree char *digits = plain_decimals (shown * (1.0 + HALF_NUDGE), decimals);

  if (!fixed)
    drop_trailing_zeros (digits);
  return dress (digits, group_mark (style), style.decimal_mark);
}

/* Whole inches and eighths: "5⅞", "½", "0"; after feet a lone fraction gets a zero. */
static char *
inches_text (gint64 eighths, gboolean after_feet, SwNumberStyle style)
{
  static const char *const fractions[8] = { "", "⅛", "¼", "⅜", "½", "⅝", "¾", "⅞" };
  gint64 whole = eighths / 8;
  const char *fraction = fractions[eighths % 8];

  if (whole == 0 && *fraction != '\0' && !after_feet)
    return g_strdup (fraction);
  g_autofree char *digits = shown_number ((double) whole, 0, TRUE, style);
  return g_strconcat (digits, fraction, NULL);
}

/* Beyond this a count of eighths is no tape reading, and gint64 has an end. */
#define LARGEST_TAPE_M 1e9

static char *
feet_and_inches (double value_m, SwNumberStyle style)
{
  gint64 quarters = (gint64) floor (fabs (value_m) / SW_M_PER_IN * 4.0 + 0.5);
  g_autofree char *feet = shown_number ((double) (quarters / 48), 0, TRUE, style);
  g_autofree char *inches = inches_text (quarters % 48 * 2, quarters >= 48, style);
  const char *sign = value_m < 0.0 && quarters > 0 ? MINUS : "";

  if (quarters < 48)
    return g_strconcat (sign, inches, NO_BREAK_SPACE "in", NULL);
  return g_strconcat (sign, feet, NO_BREAK_SPACE "ft" NO_BREAK_SPACE, inches,
                      NO_BREAK_SPACE "in", NULL);
}

static char *
small_inches (double value_m, SwNumberStyle style)
{
  double inches = fabs (value_m) / SW_M_PER_IN;
  const char *sign = value_m < 0.0 ? MINUS : "";

  if (inches < 0.5 - 1e-6)
    return shown_number (value_m / SW_M_PER_IN, 2, FALSE, style);
  g_autofree char *text = inches_text ((gint64) floor (inches * 8.0 + 0.5), FALSE, style);
  return g_strconcat (sign, text, NULL);
}

/* Ten and more millimetres, grams or pascals: a decimal would be false precision. */
static int
decimals_of (double shown, SwUnit unit, const Display *display, SwUnitSystem units)
{
  if (unit == SW_UNIT_SMALL_M && units == SW_UNITS_METRIC)
    return fabs (shown) < 9.95 ? 1 : 0;
  if (unit == SW_UNIT_KG_PER_M2 || unit == SW_UNIT_PA)
    return fabs (shown) < 99.95 ? display->decimals : 0;
  return display->decimals;
}

double
sw_quantity_zero_si (SwUnit unit, SwUnitSystem units)
{
  if (unit != SW_UNIT_KELVIN)
    return 0.0;
  return units == SW_UNITS_US ? SW_K_AT_0_F : SW_K_AT_0_C;
}

char *
sw_quantity_number (double value, SwUnit unit, SwNumberStyle style)
{
  g_return_val_if_fail ((unsigned) unit < SW_UNIT_COUNT_OF_UNITS, NULL);
  if (!isfinite (value))
    return g_strdup (DASH);
  if (unit == SW_UNIT_SMALL_M && style.units == SW_UNITS_US
      && fabs (value) < LARGEST_TAPE_M)
    return small_inches (value, style);

  const Display *display = display_of (unit, style.units);
  double shown = (value - sw_quantity_zero_si (unit, style.units)) * display->per_si;
  int decimals = decimals_of (shown, unit, display, style.units);
  g_autofree char *number = shown_number (shown, decimals, display->fixed, style);
  return g_strconcat (number, unit == SW_UNIT_HV ? ":1" : "", NULL);
}

char *
sw_quantity_text (double value, SwUnit unit, SwNumberStyle style)
{
  if (unit == SW_UNIT_M && style.units == SW_UNITS_US && fabs (value) < LARGEST_TAPE_M)
    return feet_and_inches (value, style);

  g_autofree char *number = sw_quantity_number (value, unit, style);
  const char *symbol = g_strcmp0 (number, "1") == 0
                           ? sw_quantity_unit_of_one (unit, style)
                           : sw_quantity_unit (unit, style);
  gboolean alone = number == NULL || *symbol == '\0' || !isfinite (value);
  if (alone)
    return g_steal_pointer (&number);
  return g_strconcat (number,
                      unit == SW_UNIT_RAD || unit == SW_UNIT_ANGLE ? "" : NO_BREAK_SPACE,
                      symbol, NULL);
}

double
sw_quantity_per_si (SwUnit unit, SwUnitSystem units)
{
  return display_of (unit, units)->per_si;
}

/* Of a mark: less than a tape shows, more than the error of a sum of doubles. */
#define MARK_SLACK 1e-6
/* Below half an inch there are hundredths, not marks. */
#define FEWEST_MARKS 4.0
/* Trenches are dug and pins sold in half inches. */
#define EIGHTHS_OF_SIZE 4.0

/* The whole number of marks that @marks are read as. */
static double
marks_read (double marks, SwUnit unit, SwLimit limit)
{
  double enough = ceil (marks - MARK_SLACK);

  if (limit == SW_LIMIT_MOST)
    return floor (marks + MARK_SLACK);
  if (limit == SW_LIMIT_LEAST && unit == SW_UNIT_SMALL_M && enough > marks + MARK_SLACK)
    return EIGHTHS_OF_SIZE * ceil (enough / EIGHTHS_OF_SIZE);
  return enough;
}

double
sw_limit_length_m (double length_m, SwUnit unit, SwLimit limit, SwUnitSystem units)
{
  double mark_m = SW_M_PER_IN / (unit == SW_UNIT_M ? 4.0 : 8.0);
  double marks = length_m / mark_m;

  if (limit == SW_LIMIT_NONE || units != SW_UNITS_US || !isfinite (length_m)
      || fabs (length_m) >= LARGEST_TAPE_M || marks < FEWEST_MARKS)
    return length_m;
  return mark_m * marks_read (marks, unit, limit);
}

char *
sw_quantity_limit_text (double value, SwUnit unit, SwLimit limit, SwNumberStyle style)
{
  if (unit == SW_UNIT_SMALL_M || unit == SW_UNIT_M)
    value = sw_limit_length_m (value, unit, limit, style.units);
  return sw_quantity_text (value, unit, style);
}

const char *
sw_quantity_unit (SwUnit unit, SwNumberStyle style)
{
  g_return_val_if_fail ((unsigned) unit < SW_UNIT_COUNT_OF_UNITS, "");
  const char *id = sign_ids[unit][style.units];

  return id != NULL && style.texts != NULL ? sw_texts_get (style.texts, id)
                                           : display_of (unit, style.units)->symbol;
}

const char *
sw_quantity_unit_of_one (SwUnit unit, SwNumberStyle style)
{
  return unit == SW_UNIT_MONTH && style.texts != NULL
             ? sw_texts_get (style.texts, "unit.month.one")
             : sw_quantity_unit (unit, style);
}

static char *
ratio_text (double hv, SwNumberStyle style)
{
  /* Nearly level ground: the ratio grows without end and says nothing. */
  if (!isfinite (hv) || hv >= 1e5)
    return g_strdup (DASH);
  g_autofree char *number = shown_number (hv,
                                          hv < 10.0    ? 2
                                          : hv < 100.0 ? 1
                                                       : 0,
                                          FALSE, style);
  return g_strconcat (number, "H:1V", NULL);
}

char *
sw_gradient_text (double angle_rad, SwNumberStyle style)
{
  g_autofree char *ratio = ratio_text (sw_gradient_hv (angle_rad), style);
  g_autofree char *degrees = shown_number (angle_rad * 180.0 / G_PI, 1, TRUE, style);
  double percent = 100.0 * sw_gradient_ratio (angle_rad);
  g_autofree char *grade = shown_number (percent, percent < 100.0 ? 1 : 0, FALSE, style);

  return g_strconcat (ratio, " · ", degrees, DEGREE " · ", grade, NO_BREAK_SPACE "%",
                      NULL);
}

char *
sw_decimal_text (double value, int decimals, SwNumberStyle style)
{
  if (!isfinite (value))
    return g_strdup (DASH);
  g_autofree char *digits = plain_decimals (value, decimals);
  return dress (digits, "", style.decimal_mark);
}

char *
sw_number_exact (double value, char *buffer)
{
  static const char *const formats[] = { "%.15g", "%.16g", "%.17g" };
  gsize i = 0;

  /* "-0" would be read back as the integer 0. */
  if (value == 0.0 && signbit (value))
    return strcpy (buffer, "-0.0");
  do
    g_ascii_formatd (buffer, G_ASCII_DTOSTR_BUF_SIZE, formats[i], value);
  while (g_ascii_strtod (buffer, NULL) != value && ++i < G_N_ELEMENTS (formats));
  return buffer;
}
