/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/base/job.h>

/** The job a new window begins with: the default one, in the units and on the paper of the user's locale. (transfer full) */
SwJob *sw_first_job (void);
