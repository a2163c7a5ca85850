/* SPDX-License-Identifier: MIT */
#pragma once

#include "sheet.h"

/**
 * sw_sheet_stick:
 * @height_mm: of paper that there is
 *
 * A stick to cut out, at full size: a ruler with a mark at every length that is measured
 * again and again while laying. A length that is longer than the stick has its mark at a
 * whole part of it, and the label says how many times.
 *
 * Returns: (transfer full): as wide as it needs
 */
SwFigure *sw_sheet_stick (const SwSheet *sheet, double height_mm);
