/* SPDX-License-Identifier: MIT */
#include "layout-private.h"
#include <math.h>
#include <slopewright/base/count.h>
#include <slopewright/base/gradient.h>

/* A ratio read as 2.0004:1 is the 2:1 of the table: class limits go to the steeper class. */
#define RATIO_TOLERANCE 1e-3

static gboolean
as_steep_as (double angle_rad, double hv)
{
  return sw_gradient_hv (angle_rad) <= hv + RATIO_TOLERANCE;
}

static double
density_floor_per_m2 (const SwPractice *practice, double angle_rad)
{
  for (guint i = 0; i < practice->n_density; i++)
    if (as_steep_as (angle_rad, practice->density[i].hv))
      return practice->density[i].per_m2.value;
  return 0.0;
}

static int
slots_wanted (const SwPractice *practice, const SwTier *tier)
{
  double every_m = sw_practice_get (practice, SW_PRACTICE_SLOT_EVERY_M);

  if (every_m <= 0.0
      || !as_steep_as (tier->steepest_rad,
                       sw_practice_get (practice, SW_PRACTICE_SLOT_HV)))
    return 0;
  return sw_count_up (tier->length_m, every_m) - 1;
}

double
sw_slot_down_m (const SwGround *ground, const SwTier *tier, double along_m, int index)
{
  double from_m = sw_ground_break_down_m (ground, tier->reach.from_break, along_m);
  double to_m = sw_ground_break_down_m (ground, tier->reach.to_break, along_m);
  double share = tier->share_from
                 + (tier->share_to - tier->share_from) * (index + 1) / (tier->slots + 1);

  return from_m + share * (to_m - from_m);
}

/* Runs move on by less than this only with a lap that is nearly the whole roll. */
#define LEAST_PITCH_M 0.05

/* Whether all strips but the last in the roll, and that in the narrow one, cover. */
static gboolean
narrow_covers (const SwTier *tier, const SwJob *job, double covered_m, double lap_m)
{
  double reach_m =
      (tier->strips - 1) * (job->roll_width_m - lap_m) + job->narrow_width_m - lap_m;

  /* All round there is no last run. */
  return job->surplus == SW_SURPLUS_NARROW && !tier->closed
         && sw_ticks (reach_m) >= sw_ticks (covered_m);
}

/* How many strips, and how wide their laps come out; all true widths, at the longer arc. */
static SwStatus
fit_strips (SwTier *tier, const SwJob *job, double lap_m)
{
  double covered_m = tier->closed ? tier->width_m : tier->width_m - lap_m;
  double roll_m = job->roll_width_m;
  int laps;

  if (roll_m - lap_m < LEAST_PITCH_M)
    return SW_E_ROLL;
  tier->strips = MAX (1, sw_count_up (covered_m, roll_m - lap_m));
  tier->narrow_last = narrow_covers (tier, job, covered_m, lap_m);
  tier->side_lap_m = lap_m;
  tier->surplus_m = tier->strips * (roll_m - lap_m) - covered_m;
  if (tier->narrow_last)
    tier->surplus_m -= roll_m - job->narrow_width_m;
  laps = tier->closed ? tier->strips : tier->strips - 1;
  /* All round there is no last run to trim. */
  if ((job->surplus != SW_SURPLUS_TRIM || tier->closed) && laps > 0)
    tier->side_lap_m = lap_m + tier->surplus_m / laps;
  return SW_OK;
}

static void
fit_grid (SwTier *tier, const SwPractice *practice)
{
  double floor_per_m2 = density_floor_per_m2 (practice, tier->steepest_rad);

  tier->density_floor_per_m2 = floor_per_m2;
  tier->pin_across_m = sw_practice_get (practice, SW_PRACTICE_PIN_ACROSS_M);
  tier->pin_down_m = sw_practice_get (practice, SW_PRACTICE_PIN_DOWN_M);
  /* The tighter of grid and density: rows move together, columns stay. */
  if (floor_per_m2 > 0.0)
    tier->pin_down_m = fmin (tier->pin_down_m, 1.0 / (floor_per_m2 * tier->pin_across_m));
}

/* Take a place of the outline into the tier's extent. */
static void
reach_to (const SwGround *ground, SwPoint p, SwTier *tier)
{
  SwReach *reach = &tier->reach;
  double from_m = sw_ground_break_down_m (ground, reach->from_break, p.x_m);
  double whole_m = sw_ground_break_down_m (ground, reach->to_break, p.x_m) - from_m;
  double down_m = sw_ground_down_m (ground, p);

  reach->down_from_m = fmin (reach->down_from_m, down_m);
  reach->down_to_m = fmax (reach->down_to_m, down_m);
  tier->share_from = fmin (tier->share_from, (down_m - from_m) / whole_m);
  tier->share_to = fmax (tier->share_to, (down_m - from_m) / whole_m);
}

/* Between two sections the fall line's length has its maximum at one of them. */
static double
longest_fall_line_m (const SwGround *ground, SwTier *tier)
{
  g_autoptr (GArray) stations =
      sw_ground_stations_between (ground, tier->along_from_m, tier->along_to_m);
  double longest_m = 0.0;

  for (guint i = 0; i < stations->len; i++)
    {
      double along_m = g_array_index (stations, double, i);
      double length_m =
          sw_ground_break_down_m (ground, tier->reach.to_break, along_m)
          - sw_ground_break_down_m (ground, tier->reach.from_break, along_m);

      if (sw_ticks (length_m - longest_m) > 0)
        {
          longest_m = length_m;
          tier->longest_at_m = along_m;
        }
    }
  return longest_m;
}

/* The tier is what the outline leaves of the reach. */
static void
measure_tier (const SwGround *ground, const SwRegion *region, SwTier *tier)
{
  SwBox box = sw_region_box (region);
  SwReach *reach = &tier->reach;

  tier->along_from_m = box.x0_m;
  tier->along_to_m = box.x1_m;
  *reach = (SwReach){ reach->from_break, reach->to_break, box.y0_m,
                      box.y1_m,          INFINITY,        -INFINITY };
  tier->share_from = 1.0;
  tier->share_to = 0.0;
  for (guint i = 0; i < region->points->len; i++)
    reach_to (ground, g_array_index (region->points, SwPoint, i), tier);
  tier->length_m =
      longest_fall_line_m (ground, tier) * (tier->share_to - tier->share_from);
  tier->stretch_from = sw_ground_stretch (ground, box.y0_m);
  tier->stretch_to = sw_ground_stretch (ground, box.y1_m);
  tier->stretch = fmax (tier->stretch_from, tier->stretch_to);
  tier->width_m = (box.x1_m - box.x0_m) * tier->stretch;
  tier->mean_rad = sw_ground_mean_rad (ground, *reach, (box.x0_m + box.x1_m) / 2.0);
  tier->steepest_rad = sw_ground_steepest_rad (ground, *reach);
}

static gboolean
goes_all_round (const SwFace *face, const SwTier *tier)
{
  return sw_face_is_heap (face)
         && sw_ticks (tier->along_to_m - tier->along_from_m)
                >= sw_ticks (sw_face_full_circle_m (face));
}

static SwRegion *
clip_to_reach (const SwLaying *laying, SwReach reach)
{
  SwBox box = sw_region_box (laying->outline);
  g_autoptr (GArray) band = g_array_new (FALSE, FALSE, sizeof (SwPoint));

  sw_ground_band (laying->ground, reach, box.x0_m, box.x1_m, band);
  return sw_region_clip (laying->outline, (SwRing){ (SwPoint *) band->data, band->len });
}

/* Ten times the largest site this is meant for: 100 ha at three pins a square metre. */
#define MOST_PINS 3e7
#define MOST_STRIPS 100000

static SwStatus
check_counts (const SwTier *tier)
{
  return tier->strips > MOST_STRIPS
                 || tier->net_m2 / (tier->pin_down_m * tier->pin_across_m) > MOST_PINS
             ? SW_E_TOO_MANY
             : SW_OK;
}

static SwRegion *
less (const SwRegion *region, const SwRegion *obstacles)
{
  return obstacles != NULL ? sw_region_minus (region, obstacles)
                           : sw_region_copy (region);
}

static void
measure_net (const SwLaying *laying, const SwRegion *region, SwTier *tier)
{
  double whole_m2 = sw_region_true_area_m2 (laying->ground, region);
  g_autoptr (SwRegion) net = less (region, laying->deductible);

  tier->net_m2 = laying->deductible != NULL ? sw_region_true_area_m2 (laying->ground, net)
                                            : whole_m2;
  tier->deducted_m2 = whole_m2 - tier->net_m2;
}

static SwStatus
lay_tier (SwLaying *laying, SwReach reach)
{
  const SwPractice *practice = laying->practice;
  SwTier tier = { .reach = reach };
  g_autoptr (SwRegion) region = clip_to_reach (laying, reach);
  g_autoptr (SwRegion) cover = less (region, laying->obstacles);
  SwStatus status;

  if (sw_region_rings (cover) == 0)
    return SW_OK;
  measure_tier (laying->ground, region, &tier);
  tier.closed = goes_all_round (laying->face, &tier);
  measure_net (laying, region, &tier);
  tier.end_lap_m = sw_practice_get (
      practice,
      as_steep_as (tier.steepest_rad, sw_practice_get (practice, SW_PRACTICE_STEEP_HV))
          ? SW_PRACTICE_END_LAP_STEEP_M
          : SW_PRACTICE_END_LAP_M);
  tier.slots = slots_wanted (practice, &tier);
  status =
      fit_strips (&tier, laying->job, sw_practice_get (practice, SW_PRACTICE_SIDE_LAP_M));
  fit_grid (&tier, practice);
  if (status == SW_OK)
    status = check_counts (&tier);
  g_array_append_val (laying->tiers, tier);
  g_ptr_array_add (laying->regions, g_steal_pointer (&region));
  g_ptr_array_add (laying->covers, g_steal_pointer (&cover));
  return status;
}

SwStatus
sw_lay_tiers (SwLaying *laying)
{
  g_autoptr (GArray) reaches = g_array_new (FALSE, FALSE, sizeof (SwReach));
  SwStatus status = SW_OK;

  if (laying->face->bench == SW_BENCH_CONTINUOUS)
    status = sw_ground_whole (laying->ground, reaches);
  else
    status = sw_ground_tiers (
        laying->ground, sw_practice_get (laying->practice, SW_PRACTICE_BENCH_HV),
        sw_practice_get (laying->practice, SW_PRACTICE_BENCH_MIN_M), reaches);
  for (guint i = 0; i < reaches->len && status == SW_OK; i++)
    status = lay_tier (laying, g_array_index (reaches, SwReach, i));
  if (status == SW_OK && laying->tiers->len == 0)
    return SW_E_EMPTY;
  return status;
}
