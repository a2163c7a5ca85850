/* SPDX-License-Identifier: MIT */
#include <slopewright/judge/sowing-window.h>
#include <string.h>

#define LEAP_YEAR 2024

static int
two_digits (const char *text)
{
  if (!g_ascii_isdigit (text[0]) || !g_ascii_isdigit (text[1]))
    return 0;
  return 10 * g_ascii_digit_value (text[0]) + g_ascii_digit_value (text[1]);
}

gboolean
sw_month_day_parse (const char *text, int *month, int *day)
{
  int found_month, found_day;

  if (strlen (text) != 5 || text[2] != '-')
    return FALSE;
  found_month = two_digits (text);
  found_day = two_digits (text + 3);
  if (!g_date_valid_dmy ((GDateDay) found_day, (GDateMonth) found_month, LEAP_YEAR))
    return FALSE;
  *month = found_month;
  *day = found_day;
  return TRUE;
}

gboolean
sw_sowing_window (const SwJob *job, SwSowingWindow *window)
{
  SwSowingWindow found;

  if (!sw_month_day_parse (job->card.sow_from, &found.from_month, &found.from_day)
      || !sw_month_day_parse (job->card.sow_to, &found.to_month, &found.to_day))
    return FALSE;
  *window = found;
  return TRUE;
}

static int
place_in_year (int month, int day)
{
  return 100 * month + day;
}

gboolean
sw_sowing_window_holds (const SwSowingWindow *window, const GDate *date)
{
  int from = place_in_year (window->from_month, window->from_day);
  int to = place_in_year (window->to_month, window->to_day);
  int at = place_in_year ((int) g_date_get_month (date), (int) g_date_get_day (date));

  return from <= to ? from <= at && at <= to : at >= from || at <= to;
}
