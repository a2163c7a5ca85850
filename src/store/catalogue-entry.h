/* SPDX-License-Identifier: MIT */
#pragma once

#include "json-reader.h"

/*
 * Entries of the catalogue files. Strict: an unknown or missing key is trouble,
 * and so is an entry without a source. Each returns an entry to be freed, even
 * when the reader has noted trouble.
 */
SwPractice *sw_practice_read (const SwJsonPlace *place);
SwSoil *sw_soil_read (const SwJsonPlace *place);
SwBlanket *sw_blanket_read (const SwJsonPlace *place);
SwRoll *sw_roll_read (const SwJsonPlace *place);
SwPin *sw_pin_read (const SwJsonPlace *place);
SwDefault *sw_default_read (const SwJsonPlace *place);
