/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/store/help.h>

/** A line of a help page for a label, its links as they stand in the page. (transfer full) */
char *sw_help_markup (const GPtrArray *line);

/** A key of a help page, "Ctrl+Page_Down", as the desktop names it in its language. (transfer full) */
char *sw_help_key_name (const char *key);
