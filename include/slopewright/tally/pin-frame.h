/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/layout/layout.h>

/** How many field pins a square frame laid on the blanket holds. */
typedef struct
{
  double mean;     /* over all places */
  int least, most; /* in one place */
} SwPinFrame;

/**
 * sw_pin_frame:
 * @between_m: from one line of lap or edge pins to the next, > 0
 * @across_m: columns of field pins stand at most so far apart, > 0
 * @down_m: pins of a column stand so far apart, > 0
 * @side_m: of the frame, > 0
 *
 * The columns stand evenly between the two lines, which hold no field pins. The frame
 * lies between the lines with no pin under its sides; where they are nearer to each other
 * than its sides it lies over both, and the pins between them count.
 */
SwPinFrame sw_pin_frame (double between_m, double across_m, double down_m, double side_m);

/** @between_m of a tier: of a run between two side laps where it has three or more, else
 * between a lap and an edge, or between two edges; at the wide end of a round face. */
double sw_tier_between_laps_m (const SwJob *job, const SwTier *tier);
