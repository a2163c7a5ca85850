/* SPDX-License-Identifier: MIT */
#include <math.h>
#include <slopewright/base/count.h>
#include <slopewright/tally/pin-frame.h>

/* Columns under the frame, averaged over all its places: each column is under it for
 * that part of the frame's play in which its left side has not passed the column, and
 * its right side has. */
static double
mean_columns (int columns, double gap_m, double side_m, double play_m)
{
  double under_m = 0.0;

  for (int i = 1; i <= columns; i++)
    under_m += fmax (fmin (i * gap_m, play_m) - fmax (i * gap_m - side_m, 0.0), 0.0);
  return under_m / play_m;
}

SwPinFrame
sw_pin_frame (double between_m, double across_m, double down_m, double side_m)
{
  int columns = sw_count_up (between_m, across_m) - 1;
  double gap_m = between_m / (columns + 1), rows = side_m / down_m;
  double play_m = between_m - side_m;
  int least = columns, most = columns;
  double mean = columns;

  if (sw_ticks (play_m) > 0)
    {
      least = MIN (columns, sw_count_whole (side_m, gap_m));
      most = MIN (columns, sw_count_up (side_m, gap_m));
      mean = mean_columns (columns, gap_m, side_m, play_m);
    }
  return (SwPinFrame){ .mean = mean * rows,
                       .least = least * sw_count_whole (side_m, down_m),
                       .most = most * sw_count_up (side_m, down_m) };
}

double
sw_tier_between_laps_m (const SwJob *job, const SwTier *tier)
{
  if (tier->closed || tier->strips > 2)
    return job->roll_width_m - tier->side_lap_m;
  if (tier->strips == 2)
    return job->roll_width_m - tier->side_lap_m / 2.0;
  return tier->width_m;
}
