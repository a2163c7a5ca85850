/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/base/job.h>

/** Part of every year in which this site may be sown; may run over New Year. */
typedef struct
{
  int from_month, from_day; /* first day within */
  int to_month, to_day;     /* last day within */
} SwSowingWindow;

/**
 * sw_month_day_parse:
 * @text: day of any year, as "09-01"; 29 February counts as a day
 * @month, @day: (out): untouched on FALSE
 *
 * Returns: FALSE where it is no such day.
 */
gboolean sw_month_day_parse (const char *text, int *month, int *day);

/** Window of the job card; FALSE where either end is missing or no day. */
gboolean sw_sowing_window (const SwJob *job, SwSowingWindow *window);

/** Whether the day falls in the window, both ends included. */
gboolean sw_sowing_window_holds (const SwSowingWindow *window, const GDate *date);
