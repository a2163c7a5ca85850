/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/base/status.h>

/*
 * Earth to haul or to keep. Bank is as it lies, loose is as dug, compacted is as
 * filled; see tally/earthwork.h for bank to loose and to compacted. Factors by
 * soil: US Army FM 5-434, table of soil conversion, in the soil catalogue.
 */

/** Truckloads of loose soil, rounded up. @loose_m3 >= 0, @truck_m3 > 0. */
SwStatus sw_earth_loads (double loose_m3, double truck_m3, int *loads);

/** Loads for a bank volume: swells it, then sw_earth_loads(). */
SwStatus sw_earth_loads_of_bank (double bank_m3, double swell, double truck_m3,
                                 int *loads);

/** Bank volume to dig for a fill: compacted / factor; @factor > 0. */
SwStatus sw_bank_for_compacted (double compacted_m3, double factor, double *bank_m3);

/** Fill that a loose volume makes: loose x factor / (1 + swell). */
SwStatus sw_compacted_of_loose (double loose_m3, double swell, double factor,
                                double *compacted_m3);

/**
 * Swell measured on site: loose / bank - 1. SW_E_RANGE if bank is not > 0 or loose is
 * less than bank.
 */
SwStatus sw_swell_of_volumes (double bank_m3, double loose_m3, double *swell);

/**
 * Shrinkage from dry densities: 1 - bank / fill; negative where the fill stays looser
 * than the bank. Both > 0.
 */
SwStatus sw_shrink_of_densities (double bank_kg_per_m3, double fill_kg_per_m3,
                                 double *shrink);
