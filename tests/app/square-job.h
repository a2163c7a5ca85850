/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/base/job.h>

/** A new job whose face is a square of this size on plan, 3:1. (transfer full) */
SwJob *square_job (double ha);
