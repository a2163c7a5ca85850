/* SPDX-License-Identifier: MIT */
#include "layout-private.h"
#include <math.h>
#include <slopewright/base/count.h>
#include <slopewright/layout/along.h>

typedef struct
{
  double roll_m, lap_m, least_m;
  double left_m; /* of the roll in use */
  SwAlongPlan *plan;
} Feed;

static void
open_roll (Feed *feed)
{
  feed->left_m = feed->roll_m;
  feed->plan->rolls++;
}

static void
take (Feed *feed, double length_m)
{
  feed->left_m -= length_m;
  feed->plan->length_m += length_m;
}

/* Off the roll as it comes; a rest shorter than the least piece is left over, and no piece
 * is cut so long that the last would be too short. */
static void
feed_course (Feed *feed, double length_m)
{
  double open_m = length_m;

  for (;;)
    {
      double most_m;

      if (feed->left_m < feed->least_m)
        open_roll (feed);
      if (sw_ticks (open_m) <= sw_ticks (feed->left_m))
        {
          take (feed, open_m);
          return;
        }
      most_m = fmin (feed->left_m, open_m + feed->lap_m - feed->least_m);
      if (most_m < feed->least_m)
        {
          open_roll (feed);
          continue;
        }
      take (feed, most_m);
      open_m -= most_m - feed->lap_m;
      feed->plan->joints++;
    }
}

/* Width of the tier's runs between two distances down, as the strips of the layout cover it. */
static double
course_length_m (const SwFaceLayout *face, const SwTier *tier, double from_m, double to_m)
{
  double left_m = INFINITY, right_m = -INFINITY;

  for (guint i = tier->first_run; i < tier->first_run + tier->n_runs; i++)
    {
      const SwRun *run = &face->runs[i];

      if (run->down_to_m <= from_m || run->down_from_m >= to_m)
        continue;
      left_m = fmin (left_m, run->along_from_m);
      right_m = fmax (right_m, run->along_to_m);
    }
  return right_m > left_m ? (right_m - left_m) * tier->stretch : 0.0;
}

static void
lay_tier (const SwLayout *layout, const SwFaceLayout *face, const SwTier *tier,
          Feed *feed)
{
  const SwRun *run = &face->runs[tier->first_run];
  double lap_m = sw_practice_get (layout->practice, SW_PRACTICE_SIDE_LAP_M);
  double above_m = run->terms.set_back + run->terms.key_lining + run->terms.key_fold;
  double height_m = above_m + tier->length_m + run->terms.toe;
  int courses =
      MAX (1, sw_count_up (height_m - lap_m, layout->job->roll_width_m - lap_m));
  double pitch_m =
      courses > 1 ? (height_m - layout->job->roll_width_m) / (courses - 1) : 0.0;

  if (courses > 1)
    feed->plan->least_lap_m =
        fmin (feed->plan->least_lap_m, layout->job->roll_width_m - pitch_m);
  for (int i = 0; i < courses; i++)
    {
      double from_m = tier->reach.down_from_m - above_m + i * pitch_m;
      double length_m = course_length_m (
          face, tier, fmax (from_m, tier->reach.down_from_m),
          fmin (from_m + layout->job->roll_width_m, tier->reach.down_to_m));

      if (length_m > 0.0)
        feed_course (feed, length_m);
    }
  feed->plan->courses += courses;
}

SwStatus
sw_along_new (const SwLayout *layout, SwAlongPlan *plan)
{
  double least_m = sw_practice_get (layout->practice, SW_PRACTICE_MIN_PIECE_M);
  SwAlongPlan made = { .least_lap_m = INFINITY };
  Feed feed = { layout->job->roll_length_m, 0.0, least_m, 0.0, &made };

  if (sw_ticks (layout->job->roll_length_m) < 2 * sw_ticks (least_m))
    return SW_E_ROLL;
  for (guint f = 0; f < layout->n_faces; f++)
    for (guint t = 0; t < layout->faces[f].n_tiers; t++)
      {
        feed.lap_m = layout->faces[f].tiers[t].end_lap_m;
        if (layout->faces[f].tiers[t].n_runs > 0)
          lay_tier (layout, &layout->faces[f], &layout->faces[f].tiers[t], &feed);
      }
  *plan = made;
  return SW_OK;
}
