/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/layout/layout.h>

/*
 * What holds of every layout of one face, whatever the face. Each check returns NULL, or
 * what is wrong.
 */
typedef const char *(*SlopeCheck) (const SwLayout *layout, GRand *rand);

/** Ground of a tier, sampled, lies under one of its runs; on a fan by true width. */
const char *check_no_bare_ground (const SwLayout *layout, GRand *rand);

/** Runs side by side lap by the practice's side lap at every height, sampled. */
const char *check_side_laps (const SwLayout *layout, GRand *rand);

/** Pieces lap by the end lap, make up their runs, and none is below the least length. */
const char *check_pieces (const SwLayout *layout, GRand *rand);

/** Pieces and off-cuts are rolls x length, in whole tenths of a millimetre, and bounds
 * are in order. */
const char *check_rolls (const SwLayout *layout, GRand *rand);

/** Strips without laps share out the net area. */
const char *check_clips_add_up (const SwLayout *layout, GRand *rand);

/** Pins are counted by role and length, stand in no obstacle, and are where their distance
 * down the face says. */
const char *check_pins (const SwLayout *layout, GRand *rand);
