/* SPDX-License-Identifier: MIT */
#include "length-text.h"

#include <glib/gi18n.h>

#include "number-scan.h"

typedef enum
{
  FAMILY_METRIC,
  FAMILY_US
} Family;

typedef struct
{
  const char *word;
  double m;
  Family family;
} Unit;

/* Longer words before those they begin with. */
static const Unit unit_words[] = {
  { "metres", 1.0, FAMILY_METRIC },
  { "meters", 1.0, FAMILY_METRIC },
  { "metre", 1.0, FAMILY_METRIC },
  { "meter", 1.0, FAMILY_METRIC },
  { "mm", 0.001, FAMILY_METRIC },
  { "cm", 0.01, FAMILY_METRIC },
  { "m", 1.0, FAMILY_METRIC },
  { "feet", SW_M_PER_FT, FAMILY_US },
  { "foot", SW_M_PER_FT, FAMILY_US },
  { "ft", SW_M_PER_FT, FAMILY_US },
  { "''", SW_M_PER_IN, FAMILY_US },
  { "'", SW_M_PER_FT, FAMILY_US },
  { "′′", SW_M_PER_IN, FAMILY_US },
  { "′", SW_M_PER_FT, FAMILY_US },
  { "’", SW_M_PER_FT, FAMILY_US },
  { "inches", SW_M_PER_IN, FAMILY_US },
  { "inch", SW_M_PER_IN, FAMILY_US },
  { "in", SW_M_PER_IN, FAMILY_US },
  { "\"", SW_M_PER_IN, FAMILY_US },
  { "″", SW_M_PER_IN, FAMILY_US },
  { "”", SW_M_PER_IN, FAMILY_US },
  { "yd", SW_M_PER_YD, FAMILY_US },
  /* as spoken where French or Spanish is */
  { "mètres", 1.0, FAMILY_METRIC },
  { "mètre", 1.0, FAMILY_METRIC },
  { "metros", 1.0, FAMILY_METRIC },
  { "metro", 1.0, FAMILY_METRIC },
  { "pieds", SW_M_PER_FT, FAMILY_US },
  { "pied", SW_M_PER_FT, FAMILY_US },
  { "pies", SW_M_PER_FT, FAMILY_US },
  { "pie", SW_M_PER_FT, FAMILY_US },
  { "pi", SW_M_PER_FT, FAMILY_US },
  { "pouces", SW_M_PER_IN, FAMILY_US },
  { "pouce", SW_M_PER_IN, FAMILY_US },
  { "po", SW_M_PER_IN, FAMILY_US },
  { "pulgadas", SW_M_PER_IN, FAMILY_US },
  { "pulgada", SW_M_PER_IN, FAMILY_US },
  { "pulg", SW_M_PER_IN, FAMILY_US },
};

static const Unit *
scan_unit (SwScan *scan)
{
  sw_scan_blanks (scan);
  for (gsize i = 0; i < G_N_ELEMENTS (unit_words); i++)
    if (sw_scan_word (scan, unit_words[i].word))
      {
        /* "ft." and "in." end in a point that is no decimal mark. */
        if (*scan->at == '.' && g_ascii_isalpha (scan->at[-1])
            && !g_ascii_isdigit (scan->at[1]))
          scan->at++;
        return &unit_words[i];
      }
  return NULL;
}

static double
bare_unit_m (SwUnit unit, SwUnitSystem units)
{
  if (units == SW_UNITS_US)
    return unit == SW_UNIT_SMALL_M ? SW_M_PER_IN : SW_M_PER_FT;
  return unit == SW_UNIT_SMALL_M ? 0.001 : 1.0;
}

/* The next smaller part of "11' 6 3/4\"", "11'-6\"", "2 m 5 cm". FALSE: there is none. */
static gboolean
scan_smaller_part (SwScan *scan, const Unit **larger, double *length_m)
{
  SwScan ahead = *scan;
  double number;
  const Unit *unit;

  if (*ahead.at == '-' && g_ascii_isdigit (ahead.at[1]))
    ahead.at++;
  else
    sw_scan_blanks (&ahead);
  if (!sw_scan_mixed_number (&ahead, &number))
    {
      scan->problem = ahead.problem;
      return FALSE;
    }
  unit = scan_unit (&ahead);
  if (unit == NULL && (*larger)->m == SW_M_PER_FT)
    *length_m += number * SW_M_PER_IN;
  else if (unit != NULL && unit->family == (*larger)->family && unit->m < (*larger)->m)
    *length_m += number * unit->m;
  else
    return FALSE;
  *larger = unit;
  *scan = ahead;
  return TRUE;
}

static gboolean
scan_term (SwScan *scan, double bare_m, double *length_m)
{
  double number;
  const Unit *unit;

  sw_scan_blanks (scan);
  if (!sw_scan_mixed_number (scan, &number))
    return FALSE;
  unit = scan_unit (scan);
  *length_m = number * (unit != NULL ? unit->m : bare_m);
  while (unit != NULL && scan_smaller_part (scan, &unit, length_m))
    ;
  return scan->problem == NULL;
}

/* +1, -1, or 0 when no sign stands here. */
static int
scan_sign (SwScan *scan)
{
  static const struct
  {
    const char *word;
    int sign;
  } signs[] = { { "+", 1 }, { "-", -1 }, { "−", -1 }, { "–", -1 } };

  sw_scan_blanks (scan);
  for (gsize i = 0; i < G_N_ELEMENTS (signs); i++)
    if (sw_scan_word (scan, signs[i].word))
      return signs[i].sign;
  return 0;
}

static const char *
usual_problem (const SwScan *scan)
{
  if (scan->problem != NULL)
    return scan->problem;
  if (*scan->at == ':')
    return _ ("A ratio is not a length.");
  if (*scan->at == '\0')
    return _ ("A number is missing at the end.");
  return NULL;
}

gboolean
sw_length_parse (const char *text, SwUnit unit, SwNumberStyle style, double *length_m,
                 char **problem)
{
  SwScan scan = { text, style, NULL };
  double bare_m = bare_unit_m (unit, style.units), sum_m = 0.0, term_m;
  int sign;

  if (sw_scan_at_end (&scan))
    {
      *problem = g_strdup (_ ("Type a length."));
      return FALSE;
    }
  sign = scan_sign (&scan);
  for (sign = sign == 0 ? 1 : sign; sign != 0; sign = scan_sign (&scan))
    {
      if (!scan_term (&scan, bare_m, &term_m))
        break;
      sum_m += sign * term_m;
    }
  if (sign == 0 && sw_scan_at_end (&scan))
    {
      *length_m = sum_m;
      return TRUE;
    }
  sw_scan_blanks (&scan);
  const char *usual = usual_problem (&scan);
  *problem = usual != NULL
                 ? g_strdup (usual)
                 : g_strdup_printf (_ ("“%s” cannot be read as a length."), scan.at);
  return FALSE;
}
