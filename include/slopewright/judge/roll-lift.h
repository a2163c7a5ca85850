/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/judge/lifting.h>
#include <slopewright/tally/tally.h>

/** One person lifting one roll from the ground to the waist. */
typedef struct
{
  double mass_kg;     /* dry */
  double wet_mass_kg; /* NaN where the job gives no wet ratio */
  double reach_m;     /* typed, or of the roll held close */
  gboolean reach_typed;
  double from_m; /* of the hands: typed, or half the roll's diameter */
  gboolean from_typed;
  SwSourced to_m;      /* typed, or the catalogue's default; borrowed source */
  SwLiftResult result; /* of the end with the lower limit, for the dry roll */
  gboolean at_end;     /* that end is where the lift ends */
  double wet_index;    /* NaN without a wet ratio */
} SwRollLift;

/**
 * sw_roll_lift:
 * @lift: (out): untouched on FALSE
 *
 * A lift now and then, for less than an hour, straight ahead, by a smooth roll without
 * handles; metric form of the equation. Carrying, walking on the slope and rolls that
 * sag lie outside of it: see its limits.
 *
 * Returns: FALSE where the height to lift to is neither typed nor a default.
 */
gboolean sw_roll_lift (const SwLayout *layout, const SwTally *tally, SwRollLift *lift);
