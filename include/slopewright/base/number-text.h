/* SPDX-License-Identifier: MIT */
#pragma once

#include <glib.h>
#include <slopewright/base/texts.h>
#include <slopewright/base/units.h>

/** How numbers are written for one reader. */
typedef struct
{
  SwUnitSystem units;
  char decimal_mark;    /* '.' or ',' */
  const SwTexts *texts; /* whose signs stand for months, days and years; NULL: English */
} SwNumberStyle;

/**
 * sw_quantity_text:
 * @value: in the SI unit of @unit
 * @unit: what it is
 * @style: for whom
 *
 * The one place where a quantity becomes text: "13.42 m", "44 ft 0¼ in",
 * "150 mm", "6 in", "2:1", "26.6°", "50 %". Locale-independent; a minus is
 * U+2212; whole numbers of five digits and more are grouped by threes (no-break
 * space; comma in US units with a decimal point). Not finite gives "–".
 *
 * US readers get what they read off a tape: lengths in feet and inches to the
 * nearest quarter inch, small lengths in inches to the nearest eighth (below
 * half an inch in hundredths, where an eighth would hide the wire), areas in
 * square yards and volumes in cubic yards, as they are ordered and paid.
 *
 * Returns: (transfer full): number, no-break space, unit
 */
char *sw_quantity_text (double value, SwUnit unit, SwNumberStyle style);

/** On which side of a length the tape's mark that is read for it may lie. */
typedef enum
{
  SW_LIMIT_NONE,  /* the nearest */
  SW_LIMIT_LEAST, /* a depth, a pin, a lap called for: what is read is enough */
  SW_LIMIT_LAID,  /* the same of a lap that all runs share: no more than it has to be */
  SW_LIMIT_MOST   /* a spacing: what is read is not too far */
} SwLimit;

/**
 * sw_quantity_limit_text:
 *
 * As sw_quantity_text(), but a US length is rounded to the tape's mark on the side of
 * @limit: at least 150 mm is "6 in", not the 5⅞ in that would fall short of it. What has
 * to be enough is dug, bought and told in half inches: pins of 300 mm are "12 in". A
 * lap as laid keeps to eighths, since half an inch too much in each of twenty leaves the
 * edge bare. Lengths that are exact in eighths stay what they are, and metric ones too.
 *
 * Returns: (transfer full)
 */
char *sw_quantity_limit_text (double value, SwUnit unit, SwLimit limit,
                              SwNumberStyle style);

/** The length that is read so. @unit: SW_UNIT_M or SW_UNIT_SMALL_M. */
double sw_limit_length_m (double length_m, SwUnit unit, SwLimit limit,
                          SwUnitSystem units);

/**
 * The same without the unit, for table columns whose head carries it. A column
 * of US lengths is in decimal feet, "44.03", so that it can be added up.
 */
char *sw_quantity_number (double value, SwUnit unit, SwNumberStyle style);

/** What is shown as 0, in SI: 0, but for the scales of temperature. */
double sw_quantity_zero_si (SwUnit unit, SwUnitSystem units);

/**
 * The unit alone as in a column head: "m", "ft", "mm"; "" for counts. Signs that are
 * words of a language, such as "mo" for months, are those of the style's texts.
 */
const char *sw_quantity_unit (SwUnit unit, SwNumberStyle style);

/** The same as it stands beside exactly 1: "1 mes", but "3 meses". */
const char *sw_quantity_unit_of_one (SwUnit unit, SwNumberStyle style);

/** What 1 in SI is in the unit that sw_quantity_unit() names: 1000 for mm. */
double sw_quantity_per_si (SwUnit unit, SwUnitSystem units);

/**
 * "2H:1V · 26.6° · 50 %", always in this order. @angle_rad in [0, pi/2); level
 * ground has no ratio: "– · 0.0° · 0 %".
 */
char *sw_gradient_text (double angle_rad, SwNumberStyle style);

/** @value with @decimals decimals, trailing zeros kept, decimal mark of @style. */
char *sw_decimal_text (double value, int decimals, SwNumberStyle style);

/**
 * sw_number_exact:
 * @value: finite
 * @buffer: at least G_ASCII_DTOSTR_BUF_SIZE bytes
 *
 * Shortest decimal that reads back as the same double, with a point.
 * Returns: @buffer
 */
char *sw_number_exact (double value, char *buffer);
