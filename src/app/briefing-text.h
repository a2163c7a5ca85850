/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/sheet/briefing.h>

/* What a briefing says, as a label shows it and as it is spoken. */

/** A text of the pack (*bold*) as Pango markup, @scale times the usual size. (transfer full) */
char *sw_briefing_markup (const char *text, double scale);

/** All of a step as plain sentences, hold point and caution before the details. (transfer full) */
char *sw_briefing_spoken (const char *counter, const SwBriefingWords *words);
