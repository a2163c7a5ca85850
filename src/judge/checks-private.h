/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/judge/checks.h>

/* Add a number that was looked at. */
void sw_check_number (SwCheck *check, const char *symbol, double value, SwUnit unit);

/* Add the text id of a fact that the check needs and the job does not give. */
void sw_check_open (SwCheck *check, const char *text_id);

/* Fills looked, inputs and open facts beyond the site's questions. */
typedef void (*SwCheckLook) (SwCheck *check, const SwLayout *layout,
                             const SwTally *tally);

/* One for each failure mode, by its number less one. */
extern const SwCheckLook sw_check_looks[SW_CHECK_COUNT];
