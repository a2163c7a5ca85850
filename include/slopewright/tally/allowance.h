/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/base/status.h>

/**
 * sw_allowance_rolls:
 * @pieces_m: length of all pieces, >= 0
 * @spare_m: what whole rolls leave over and can be laid, >= 0
 * @roll_m: length of a roll, > 0
 * @share: allowance on @pieces_m, >= 0
 * @extra: (out): rolls to add so that the spare is at least the allowance; 0 where
 *   rounding up to whole rolls gives it already
 *
 * Allowance and rounding are never both added in full: (share x pieces - spare) / roll,
 * rounded up.
 *
 * Returns: SW_OK or SW_E_RANGE.
 */
SwStatus sw_allowance_rolls (double pieces_m, double spare_m, double roll_m, double share,
                             int *extra);
