/* SPDX-License-Identifier: MIT */
#pragma once

#include <gio/gio.h>
#include <slopewright/base/texts.h>
#include <slopewright/judge/due-dates.h>

/**
 * sw_calendar_text:
 * @card: of the job; its name, number and place also make the events' names, so that a
 *   calendar replaces them when the file is read in again
 * @dues: (element-type SwDue): from sw_due_dates_new()
 * @installed: the day they are counted from; also the stamp of the events, so that the
 *   same job gives the same bytes
 *
 * Returns: (transfer full): iCalendar by RFC 5545: all-day events, lines of at most 75
 *   octets that end in CR LF
 */
char *sw_calendar_text (const SwJobCard *card, const GArray *dues, const GDate *installed,
                        const SwTexts *texts);

/** Write @text to @file, replacing it once complete. */
gboolean sw_calendar_save (const char *text, GFile *file, GError **error);
