/* SPDX-License-Identifier: MIT */
#include "layout-private.h"
#include <math.h>
#include <slopewright/base/count.h>

double
sw_lining_m (SwLining lining, double depth_m, double width_m)
{
  switch (lining)
    {
    case SW_LINING_DOWN:
      return depth_m;
    case SW_LINING_DOWN_ACROSS:
      return depth_m + width_m;
    case SW_LINING_DOWN_ACROSS_UP:
    default:
      return 2.0 * depth_m + width_m;
    }
}

double
sw_toe_allowance_m (const SwPractice *practice)
{
  switch (practice->toe_kind)
    {
    case SW_TOE_TRENCH:
      return sw_lining_m (practice->toe_lining,
                          sw_practice_get (practice, SW_PRACTICE_TOE_DEPTH_M),
                          sw_practice_get (practice, SW_PRACTICE_TOE_WIDTH_M));
    case SW_TOE_FOLD:
      /* Carried on over level ground by as much as is turned under it. */
      return 2.0 * sw_practice_get (practice, SW_PRACTICE_TOE_FOLD_M);
    case SW_TOE_ROW:
    default:
      return 0.0;
    }
}

/* Slots that a stretch crosses; each takes a fold down and up again. */
static int
slots_crossed (const SwGround *ground, const SwTier *tier, const SwRun *run)
{
  double middle_m = (run->along_from_m + run->along_to_m) / 2.0;
  int crossed = 0;

  for (int i = 0; i < tier->slots; i++)
    {
      double down_m = sw_slot_down_m (ground, tier, middle_m, i);

      if (down_m > run->down_from_m && down_m < run->down_to_m)
        crossed++;
    }
  return crossed;
}

/* A rectangle is cut, so it must reach over the longest of its two edges and its middle. */
static double
longest_cover_m (const SwGround *ground, const SwRun *run)
{
  double middle_m = (run->along_from_m + run->along_to_m) / 2.0;
  const double at_m[] = { run->along_from_m, middle_m, run->along_to_m };
  double longest_m = 0.0;

  for (guint i = 0; i < G_N_ELEMENTS (at_m); i++)
    longest_m =
        fmax (longest_m,
              sw_ground_down_m (ground, (SwPoint){ at_m[i], run->out_to_m })
                  - sw_ground_down_m (ground, (SwPoint){ at_m[i], run->out_from_m }));
  return longest_m;
}

static void
fill_terms (const SwLaying *laying, const SwTier *tier, SwRun *run)
{
  const SwPractice *practice = laying->practice;
  SwRunTerms *terms = &run->terms;

  terms->set_back = sw_practice_get (practice, SW_PRACTICE_SET_BACK_M);
  terms->key_lining = sw_lining_m (
      practice->trench_lining, sw_practice_get (practice, SW_PRACTICE_TRENCH_DEPTH_M),
      sw_practice_get (practice, SW_PRACTICE_TRENCH_WIDTH_M));
  terms->key_fold = sw_practice_get (practice, SW_PRACTICE_TRENCH_FOLD_M);
  terms->face = longest_cover_m (laying->ground, run);
  terms->slots = slots_crossed (laying->ground, tier, run) * 2.0
                 * sw_practice_get (practice, SW_PRACTICE_SLOT_DEPTH_M);
  terms->toe = sw_toe_allowance_m (practice);
  run->cut_m = terms->set_back + terms->key_lining + terms->key_fold + terms->face
               + terms->slots + terms->toe;
}

static void
add_stretch (SwLaying *laying, guint tier_index, SwRun run, SwSpan out, int part)
{
  const SwTier *tier = &g_array_index (laying->tiers, SwTier, tier_index);
  double middle_m = (run.along_from_m + run.along_to_m) / 2.0;

  run.tier = tier_index;
  run.part = part;
  run.out_from_m = out.from_m;
  run.out_to_m = out.to_m;
  run.down_from_m = sw_ground_down_m (laying->ground, (SwPoint){ middle_m, out.from_m });
  run.down_to_m = sw_ground_down_m (laying->ground, (SwPoint){ middle_m, out.to_m });
  fill_terms (laying, tier, &run);
  g_array_append_val (laying->runs, run);
}

static int
compare_spans (gconstpointer a, gconstpointer b)
{
  double x = ((const SwSpan *) a)->from_m, y = ((const SwSpan *) b)->from_m;

  return (x > y) - (x < y);
}

/* Stretches of a strip: extents down the slope of what the strip covers, joined where they
 * overlap. */
static void
find_stretches (const SwRegion *strip, GArray *stretches)
{
  g_array_set_size (stretches, 0);
  for (guint i = 0; i < sw_region_rings (strip); i++)
    {
      SwBox box = sw_ring_box (sw_region_ring (strip, i));
      SwSpan span = { box.y0_m, box.y1_m };

      g_array_append_val (stretches, span);
    }
  g_array_sort (stretches, compare_spans);
  for (guint i = 1; i < stretches->len;)
    {
      SwSpan *above = &g_array_index (stretches, SwSpan, i - 1);
      SwSpan *below = &g_array_index (stretches, SwSpan, i);

      if (sw_ticks (below->from_m) > sw_ticks (above->to_m))
        i++;
      else
        {
          above->to_m = fmax (above->to_m, below->to_m);
          g_array_remove_index (stretches, i);
        }
    }
}

/* Edges of strip @index, counted from the leeward end; a fan is widest at its longer arc. */
static SwSpan
strip_edges (const SwLaying *laying, const SwTier *tier, int index)
{
  double roll_m = laying->job->roll_width_m;
  double near_m = index * (roll_m - tier->side_lap_m);
  double far_m = tier->closed ? near_m + roll_m : fmin (near_m + roll_m, tier->width_m);

  near_m /= tier->stretch;
  far_m /= tier->stretch;
  if (laying->face->leeward == SW_SIDE_LEFT)
    return (SwSpan){ tier->along_from_m + near_m, tier->along_from_m + far_m };
  return (SwSpan){ tier->along_to_m - far_m, tier->along_to_m - near_m };
}

static int
lay_strips (SwLaying *laying, guint tier_index, int number)
{
  const SwRegion *region = g_ptr_array_index (laying->regions, tier_index);
  SwTier *tier = &g_array_index (laying->tiers, SwTier, tier_index);
  SwBox box = sw_region_box (region);
  g_autoptr (GArray) stretches = g_array_new (FALSE, FALSE, sizeof (SwSpan));

  tier->first_run = laying->runs->len;
  for (int i = 0; i < tier->strips; i++)
    {
      SwSpan along = strip_edges (laying, tier, i);
      g_autoptr (SwRegion) strip = sw_region_clip_box (
          region, (SwBox){ along.from_m, box.y0_m, along.to_m, box.y1_m });
      SwRun run = { .number = number,
                    .along_from_m = along.from_m,
                    .along_to_m = along.to_m,
                    .width_m = (along.to_m - along.from_m) * tier->stretch };

      find_stretches (strip, stretches);
      for (guint s = 0; s < stretches->len; s++)
        add_stretch (laying, tier_index, run, g_array_index (stretches, SwSpan, s),
                     stretches->len > 1 ? (int) s + 1 : 0);
      if (stretches->len > 0)
        number++;
    }
  tier->n_runs = laying->runs->len - tier->first_run;
  return number;
}

SwStatus
sw_lay_runs (SwLaying *laying)
{
  int number = 1;

  for (guint i = 0; i < laying->tiers->len; i++)
    number = lay_strips (laying, i, number);
  return SW_OK;
}

char *
sw_run_label (const SwRun *run)
{
  if (run->part == 0)
    return g_strdup_printf ("%d", run->number);
  return g_strdup_printf ("%d%c", run->number, 'a' + (run->part - 1) % 26);
}
