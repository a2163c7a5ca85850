/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/base/status.h>

/**
 * sw_roll_diameter:
 * @length_m, @thickness_m: of the sheet, > 0
 * @core_m: outside diameter of the core, >= 0
 * @diameter_m: (out): outside diameter of the roll
 *
 * D = sqrt (d2 + 4 L t / pi), by area conservation. An estimate: a wound
 * blanket is pressed together.
 */
SwStatus sw_roll_diameter (double length_m, double thickness_m, double core_m,
                           double *diameter_m);

/** Inverse: L = pi (D2 - d2) / (4 t). SW_E_RANGE unless D > d >= 0 and t > 0. */
SwStatus sw_roll_length (double diameter_m, double thickness_m, double core_m,
                         double *length_m);
