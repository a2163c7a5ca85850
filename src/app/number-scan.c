/* SPDX-License-Identifier: MIT */
#include "number-scan.h"

#include <glib/gi18n.h>
#include <string.h>

void
sw_scan_blanks (SwScan *scan)
{
  while (g_unichar_isspace (g_utf8_get_char (scan->at)))
    scan->at = g_utf8_next_char (scan->at);
}

gboolean
sw_scan_at_end (SwScan *scan)
{
  sw_scan_blanks (scan);
  return *scan->at == '\0';
}

gboolean
sw_scan_word (SwScan *scan, const char *word)
{
  gsize length = strlen (word);

  if (g_ascii_strncasecmp (scan->at, word, length) != 0)
    return FALSE;
  /* "m" does not begin "mm", but a mark such as ' ends by itself. */
  if (g_ascii_isalpha (word[length - 1])
      && g_unichar_isalpha (g_utf8_get_char (scan->at + length)))
    return FALSE;
  scan->at += length;
  return TRUE;
}

static gsize
digits_at (const char *at)
{
  return strspn (at, "0123456789");
}

static gboolean
is_mark (char c)
{
  return c == '.' || c == ',';
}

/* Where the point is the decimal mark, a US reader's "1,250" is twelve hundred and fifty. */
static gboolean
is_grouped (const SwScan *scan, gsize whole)
{
  const char *mark = scan->at + whole;
  gsize part = is_mark (*mark) ? digits_at (mark + 1) : 0;

  if (part > 0 && is_mark (mark[1 + part]) && digits_at (mark + 2 + part) > 0)
    return TRUE;
  return scan->style.units == SW_UNITS_US && scan->style.decimal_mark == '.'
         && *mark == ',' && part == 3 && whole > 0 && whole <= 3 && scan->at[0] != '0';
}

gboolean
sw_scan_number (SwScan *scan, double *value)
{
  gsize whole = digits_at (scan->at), part = 0, length;
  g_autofree char *plain = NULL;

  if (is_grouped (scan, whole))
    {
      scan->problem =
          _ ("Write the number without marks between thousands: 1250, not 1,250.");
      return FALSE;
    }
  if (is_mark (scan->at[whole]))
    part = digits_at (scan->at + whole + 1);
  if (whole + part == 0)
    return FALSE;
  length = whole + (part > 0 ? part + 1 : 0);
  plain = g_strndup (scan->at, length);
  g_strdelimit (plain, ",", '.');
  *value = g_ascii_strtod (plain, NULL);
  scan->at += length;
  return TRUE;
}

static gboolean
scan_vulgar (SwScan *scan, double *value)
{
  static const struct
  {
    gunichar sign;
    double value;
  } vulgar[] = { { 0xBD, 1.0 / 2 },   { 0xBC, 1.0 / 4 },   { 0xBE, 3.0 / 4 },
                 { 0x215B, 1.0 / 8 }, { 0x215C, 3.0 / 8 }, { 0x215D, 5.0 / 8 },
                 { 0x215E, 7.0 / 8 }, { 0x2153, 1.0 / 3 }, { 0x2154, 2.0 / 3 } };
  gunichar sign = g_utf8_get_char (scan->at);

  for (gsize i = 0; i < G_N_ELEMENTS (vulgar); i++)
    if (vulgar[i].sign == sign)
      {
        *value = vulgar[i].value;
        scan->at = g_utf8_next_char (scan->at);
        return TRUE;
      }
  return FALSE;
}

gboolean
sw_scan_fraction (SwScan *scan, double *value)
{
  gsize above = digits_at (scan->at), below;
  double divisor;

  if (scan_vulgar (scan, value))
    return TRUE;
  if (above == 0 || above > 4 || scan->at[above] != '/')
    return FALSE;
  below = digits_at (scan->at + above + 1);
  if (below == 0 || below > 4)
    return FALSE;
  divisor = g_ascii_strtod (scan->at + above + 1, NULL);
  if (divisor < 1.0)
    return FALSE;
  *value = (double) g_ascii_strtoull (scan->at, NULL, 10) / divisor;
  scan->at += above + 1 + below;
  return TRUE;
}

/* What follows the 6 of "6 3/4", "6-3/4", "6¾". */
static gboolean
scan_fraction_behind (SwScan *scan, double *value)
{
  SwScan ahead = *scan;

  if (*ahead.at == '-')
    ahead.at++;
  else
    sw_scan_blanks (&ahead);
  if (!sw_scan_fraction (&ahead, value))
    return FALSE;
  *scan = ahead;
  return TRUE;
}

gboolean
sw_scan_mixed_number (SwScan *scan, double *value)
{
  double whole, fraction;
  const char *start = scan->at;

  if (sw_scan_fraction (scan, value))
    return TRUE;
  if (!sw_scan_number (scan, &whole))
    return FALSE;
  *value = whole;
  if (digits_at (start) == (gsize) (scan->at - start)
      && scan_fraction_behind (scan, &fraction))
    *value = whole + fraction;
  return TRUE;
}
