/* SPDX-License-Identifier: MIT */
#pragma once

#include <gio/gio.h>

/**
 * SwPreferences: what a user likes of the program. Nothing here changes a job, a result or
 * a sheet: units, paper and language only seed new jobs, which keep their own.
 *
 * Kept by GSettings where the program's schema is installed; else the built-in defaults
 * hold and changes last as long as the program. Properties, all of them to be written:
 *
 * "units": "metric", "us"; "" for those of the locale
 * "paper": as sw_paper_code(); "" for that of the locale
 * "language": a code, "fr"; "" for that of the locale
 * "style": "system", "light", "dark"
 * "remember-recent": whether jobs opened and saved are listed
 * "draft-delay": seconds after a change until it is kept as a draft, 1 to 300
 */
#define SW_TYPE_PREFERENCES (sw_preferences_get_type ())
G_DECLARE_FINAL_TYPE (SwPreferences, sw_preferences, SW, PREFERENCES, GObject)

SwPreferences *sw_preferences_new (void);

const char *sw_preferences_units (SwPreferences *preferences);
const char *sw_preferences_paper (SwPreferences *preferences);
const char *sw_preferences_language (SwPreferences *preferences);
const char *sw_preferences_style (SwPreferences *preferences);
gboolean sw_preferences_remember_recent (SwPreferences *preferences);
guint sw_preferences_draft_delay_s (SwPreferences *preferences);

/** FALSE: the schema is not installed, so that the next start begins with the defaults. */
gboolean sw_preferences_are_kept (SwPreferences *preferences);
