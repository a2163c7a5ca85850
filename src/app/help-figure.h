/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/figure/figure.h>

#include "stock.h"

/**
 * sw_help_figure:
 * @units: of the sizes written into it
 * @name: "sallow-bank/key-trench": an example shipped with the program, and of its first
 *   face "section", "plan", "face-view" or a detail ("key-trench", "slot", "toe",
 *   "side-lap", "end-lap", "collar", "pin", "pin-pattern"); or "right/side-lap" and
 *   "wrong/side-lap", the pictures of sw_draw_fault()
 *
 * Drawn by the same hand as the pack.
 *
 * Returns: (transfer full): NULL when there is no such drawing
 */
SwFigure *sw_help_figure (const SwStock *stock, SwUnitSystem units, const char *name);
