/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/base/job.h>

/** The job a new window begins with: the default one, in units, paper and language of the pack as in the user’s locale. (transfer full) */
SwJob *sw_first_job (void);
