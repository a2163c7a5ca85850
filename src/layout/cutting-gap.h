/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/layout/cutting.h>

/**
 * sw_cutting_close_gap:
 * @cutting: (inout): a plan and a lower bound; roll_of is 1..rolls
 *
 * Tries for fewer rolls, by swaps first, then by search from what the linear
 * relaxation says; raises the bound where fewer rolls are proved impossible.
 * Does nothing when plan and bound agree.
 */
void sw_cutting_close_gap (SwCutting *cutting, const gint64 *pieces, guint count,
                           gint64 capacity);
