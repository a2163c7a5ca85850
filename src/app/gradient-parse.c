/* SPDX-License-Identifier: MIT */
#include "gradient-parse.h"

#include <glib/gi18n.h>
#include <math.h>
#include <slopewright/base/gradient.h>

#include "number-scan.h"

#define RAD_PER_DEGREE (G_PI / 180.0)

/* "1" in "2:1": as good as exact, it was typed. */
#define ONE_TOLERANCE 1e-9

static gboolean
is_one (double number)
{
  return fabs (number - 1.0) < ONE_TOLERANCE;
}

static double
of_ratio (double horizontal, double vertical)
{
  return atan2 (vertical, horizontal);
}

/* After "a:", "b", "bV" or "bH". */
static gboolean
scan_ratio (SwScan *scan, double a, gboolean a_is_h, gboolean a_is_v, double *angle_rad,
            char **problem)
{
  double b;

  if (!sw_scan_number (scan, &b))
    return FALSE;
  if (a_is_v && sw_scan_word (scan, "H"))
    *angle_rad = of_ratio (b, a);
  else if (a_is_h && sw_scan_word (scan, "V"))
    *angle_rad = of_ratio (a, b);
  else if (!a_is_h && !a_is_v && is_one (b))
    *angle_rad = of_ratio (a, b);
  else if (!a_is_h && !a_is_v)
    {
      *problem =
          g_strdup (_ ("This is read both ways round. Type 2:1 for 2 horizontal to "
                       "1 vertical, 1V:2H, the angle, or the percentage."));
      return FALSE;
    }
  else
    return FALSE;
  return TRUE;
}

static gboolean
scan_degrees (SwScan *scan)
{
  static const char *const words[] = { "°",      "degrees", "degree", "deg",
                                       "degrés", "degré",   "grados", "grado" };

  for (gsize i = 0; i < G_N_ELEMENTS (words); i++)
    if (sw_scan_word (scan, words[i]))
      return TRUE;
  return FALSE;
}

static gboolean
scan_gradient (SwScan *scan, SwUnit unit, double *angle_rad, char **problem)
{
  double number;
  gboolean h, v;

  if (!sw_scan_number (scan, &number))
    return FALSE;
  sw_scan_blanks (scan);
  if (sw_scan_word (scan, "%"))
    *angle_rad = atan (number / 100.0);
  else if (scan_degrees (scan))
    *angle_rad = number * RAD_PER_DEGREE;
  else
    {
      h = sw_scan_word (scan, "H");
      v = !h && sw_scan_word (scan, "V");
      if (sw_scan_word (scan, ":"))
        return scan_ratio (scan, number, h, v, angle_rad, problem)
               && sw_scan_at_end (scan);
      if (h || v)
        return FALSE;
      *angle_rad = unit == SW_UNIT_HV ? of_ratio (number, 1.0) : number * RAD_PER_DEGREE;
    }
  return sw_scan_at_end (scan);
}

gboolean
sw_gradient_parse (const char *text, SwUnit unit, SwNumberStyle style, double *value,
                   char **problem)
{
  SwScan scan = { text, style, NULL };
  char *trouble = NULL;
  double angle_rad;

  if (sw_scan_at_end (&scan))
    trouble = g_strdup (_ ("Type a gradient: 2:1, 26.6° or 50 %."));
  else if (scan_gradient (&scan, unit, &angle_rad, &trouble))
    {
      *value = unit == SW_UNIT_HV ? sw_gradient_hv (angle_rad) : angle_rad;
      return TRUE;
    }
  if (trouble == NULL)
    trouble = scan.problem != NULL
                  ? g_strdup (scan.problem)
                  : g_strdup_printf (_ ("“%s” cannot be read as a gradient such as 2:1, "
                                        "26.6° or 50 %%."),
                                     text);
  *problem = trouble;
  return FALSE;
}
