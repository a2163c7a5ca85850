/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/base/job.h>

#include "preferences.h"

/**
 * The job a new window begins with: the default one, in the units, on the paper and in the
 * language that the user prefers, or else those of the locale.
 *
 * @languages: NULL-terminated codes of those that packs are printed in
 *
 * Returns: (transfer full)
 */
SwJob *sw_first_job (SwPreferences *preferences, const char *const *languages);
