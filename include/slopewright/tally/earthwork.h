/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/base/status.h>

/** Bank volume of a trench with battered sides: (b + z d) d L. @side_hv horizontal per 1 vertical of each side, >= 0. */
SwStatus sw_trench_volume (double bottom_m, double depth_m, double side_hv,
                           double length_m, double *volume_m3);

/** Bank volume between two cross-sections: (A1 + A2) L / 2. */
SwStatus sw_end_area_volume (double area1_m2, double area2_m2, double length_m,
                             double *volume_m3);

/** Bank volume by three cross-sections: (A1 + 4 Am + A2) L / 6, exact for straight batters. */
SwStatus sw_prismoid_volume (double area1_m2, double middle_m2, double area2_m2,
                             double length_m, double *volume_m3);

/** Loose volume from bank: bank (1 + swell); @swell >= 0. */
SwStatus sw_loose_volume (double bank_m3, double swell, double *loose_m3);

/** Compacted volume from bank: bank x factor; @factor > 0. */
SwStatus sw_compacted_volume (double bank_m3, double factor, double *compacted_m3);
