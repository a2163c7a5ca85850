/* SPDX-License-Identifier: MIT */
#pragma once

#include <gio/gio.h>
#include <slopewright/base/texts.h>
#include <slopewright/judge/due-dates.h>

/**
 * sw_calendar_text:
 * @card: of the job: its name, place and install date
 * @dues: (element-type SwDue): from sw_due_dates_new()
 * @installed: the day they are counted from; also the stamp of the events, so that the
 *   same job gives the same bytes
 * @id: of the job file, letters and digits; makes the events' names unique, and lets a
 *   calendar replace them when the file is read in again
 *
 * Returns: (transfer full): iCalendar by RFC 5545: all-day events, lines of at most 75
 *   octets that end in CR LF
 */
char *sw_calendar_text (const SwJobCard *card, const GArray *dues, const GDate *installed,
                        const SwTexts *texts, const char *id);

/** Write @text to @file, replacing it once complete. */
gboolean sw_calendar_save (const char *text, GFile *file, GError **error);
