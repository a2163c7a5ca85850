/* SPDX-License-Identifier: MIT */
#include "chain.h"
#include "infill.h"
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

  /* Under an obstacle there is no ground to set the trench back on. */
  if (!run->obstacle_above && !run->infill_above)
    terms->set_back = sw_practice_get (practice, SW_PRACTICE_SET_BACK_M);
  if (!run->infill_above)
    {
      terms->key_lining = sw_lining_m (
          practice->trench_lining, sw_practice_get (practice, SW_PRACTICE_TRENCH_DEPTH_M),
          sw_practice_get (practice, SW_PRACTICE_TRENCH_WIDTH_M));
      terms->key_fold = sw_practice_get (practice, SW_PRACTICE_TRENCH_FOLD_M);
    }
  terms->face = longest_cover_m (laying->ground, run);
  terms->slots = slots_crossed (laying->ground, tier, run) * 2.0
                 * sw_practice_get (practice, SW_PRACTICE_SLOT_DEPTH_M);
  if (!run->infill_below)
    terms->toe = sw_toe_allowance_m (practice);
  run->cut_m = terms->set_back + terms->key_lining + terms->key_fold + terms->face
               + terms->slots + terms->toe;
}

/* Part of a strip that one run covers. */
typedef struct
{
  SwSpan out, along;
  gboolean obstacle_above, obstacle_below;
} Stretch;

/* What of an obstacle stands in a run. */
static SwRegion *
hole_in (const SwLaying *laying, const SwRegion *stand, guint tier, const SwRun *run)
{
  g_autoptr (GPtrArray) parts =
      g_ptr_array_new_with_free_func ((GDestroyNotify) sw_region_free);
  SwBox boxes[3];
  guint count = sw_strip_boxes (laying, tier, run->strip, boxes);

  for (guint i = 0; i < count; i++)
    {
      boxes[i].y0_m = fmax (boxes[i].y0_m, run->out_from_m);
      boxes[i].y1_m = fmin (boxes[i].y1_m, run->out_to_m);
      if (boxes[i].y0_m < boxes[i].y1_m
          && sw_boxes_meet (sw_region_box (stand), boxes[i]))
        g_ptr_array_add (parts, sw_region_clip_box (stand, boxes[i]));
    }
  return parts->len == 1 ? g_ptr_array_steal_index (parts, 0) : sw_region_union (parts);
}

/* Holes that the obstacles of the tier make in a run. */
static void
add_cut_outs (SwLaying *laying, const GPtrArray *stands, guint tier, SwRun *run)
{
  double middle_m = (run->along_from_m + run->along_to_m) / 2.0;

  run->first_cut_out = laying->cut_outs->len;
  for (guint i = 0; i < stands->len; i++)
    {
      const SwRegion *stand = stands->pdata[i];
      g_autoptr (SwRegion) hole = NULL;
      SwCutOut cut_out = { .obstacle = i };
      SwBox extent;

      if (sw_region_rings (stand) == 0)
        continue;
      hole = hole_in (laying, stand, tier, run);
      if (sw_region_rings (hole) == 0)
        continue;
      extent = sw_region_box (hole);
      cut_out.along_from_m = extent.x0_m;
      cut_out.along_to_m = extent.x1_m;
      cut_out.down_from_m =
          sw_ground_down_m (laying->ground, (SwPoint){ middle_m, extent.y0_m });
      cut_out.down_to_m =
          sw_ground_down_m (laying->ground, (SwPoint){ middle_m, extent.y1_m });
      g_array_append_val (laying->cut_outs, cut_out);
    }
  run->n_cut_outs = laying->cut_outs->len - run->first_cut_out;
}

/* An outline or an obstacle may end the strip before its neighbours do. */
static void
find_free_end (const SwLaying *laying, guint tier_index, SwRun *run)
{
  gint64 end = sw_ticks (sw_infill_end_m (laying, tier_index, run->strip));

  if (sw_opens_down (sw_laying_tier (laying, tier_index)))
    run->infill_above = sw_ticks (run->down_from_m) == end;
  else
    run->infill_below = sw_ticks (run->down_to_m) == end;
  run->obstacle_above &= !run->infill_above;
  run->obstacle_below &= !run->infill_below;
}

static void
add_stretch (SwLaying *laying, guint tier_index, const GPtrArray *stands, SwRun run,
             const Stretch *stretch)
{
  const SwTier *tier = &g_array_index (laying->tiers, SwTier, tier_index);
  double middle_m = (run.along_from_m + run.along_to_m) / 2.0;

  run.tier = tier_index;
  run.out_from_m = stretch->out.from_m;
  run.out_to_m = stretch->out.to_m;
  run.obstacle_above = stretch->obstacle_above;
  run.obstacle_below = stretch->obstacle_below;
  run.down_from_m =
      sw_ground_down_m (laying->ground, (SwPoint){ middle_m, run.out_from_m });
  run.down_to_m = sw_ground_down_m (laying->ground, (SwPoint){ middle_m, run.out_to_m });
  if (run.infill)
    find_free_end (laying, tier_index, &run);
  fill_terms (laying, tier, &run);
  add_cut_outs (laying, stands, tier_index, &run);
  g_array_append_val (laying->runs, run);
}

/* Upper first; of two that begin together the longer, which then takes the other in. */
static int
compare_stretches (gconstpointer a, gconstpointer b)
{
  const Stretch *x = a, *y = b;
  gint64 from = sw_ticks (x->out.from_m - y->out.from_m);
  gint64 to = sw_ticks (y->out.to_m - x->out.to_m);

  return from != 0 ? (from > 0 ? 1 : -1) : (to > 0) - (to < 0);
}

/* Whether an edge crosses the strip rather than runs down it. */
static gboolean
crosses (SwPoint a, SwPoint b)
{
  return sw_ticks (fabs (b.x_m - a.x_m)) > 0
         && fabs (b.x_m - a.x_m) > SW_SIDE_TAN * fabs (b.y_m - a.y_m);
}

/* Whether all that bounds a piece of a strip at its topmost (lowest) place is obstacle: any
 * outline there leaves ground for a trench. */
static gboolean
ends_at_obstacle (SwRing ring, const SwRegion *whole, gboolean top)
{
  SwBox box = sw_ring_box (ring);
  double end_m = top ? box.y0_m : box.y1_m;
  gboolean obstacle = FALSE;

  for (guint i = 0, j = ring.count - 1; i < ring.count && whole != NULL; j = i++)
    {
      SwPoint a = ring.points[j], b = ring.points[i];

      if (!crosses (a, b)
          || (sw_ticks (a.y_m - end_m) != 0 && sw_ticks (b.y_m - end_m) != 0))
        continue;
      if (sw_region_on_edge (whole,
                             (SwPoint){ (a.x_m + b.x_m) / 2.0, (a.y_m + b.y_m) / 2.0 }))
        return FALSE;
      obstacle = TRUE;
    }
  return obstacle;
}

/* Two pieces side by side take one run; where one lies mostly below the other, the strip
 * is cut through. */
static gboolean
in_one_run (const Stretch *above, const Stretch *below)
{
  double both_m = fmin (above->along.to_m, below->along.to_m)
                  - fmax (above->along.from_m, below->along.from_m);
  double narrower_m = fmin (above->along.to_m - above->along.from_m,
                            below->along.to_m - below->along.from_m);

  if (sw_ticks (below->out.from_m) > sw_ticks (above->out.to_m))
    return FALSE;
  return sw_ticks (below->out.to_m) <= sw_ticks (above->out.to_m)
         || both_m < narrower_m / 2.0;
}

static void
join (Stretch *above, const Stretch *below)
{
  if (below->out.to_m > above->out.to_m)
    {
      above->out.to_m = below->out.to_m;
      above->obstacle_below = below->obstacle_below;
    }
  above->along.from_m = fmin (above->along.from_m, below->along.from_m);
  above->along.to_m = fmax (above->along.to_m, below->along.to_m);
}

/* Stretches of a strip: extents down the slope of what the strip covers. */
static void
find_stretches (const SwRegion *strip, const SwRegion *whole, GArray *stretches)
{
  g_array_set_size (stretches, 0);
  for (guint i = 0; i < sw_region_rings (strip); i++)
    {
      SwRing ring = sw_region_ring (strip, i);
      SwBox box = sw_ring_box (ring);
      Stretch stretch = { { box.y0_m, box.y1_m },
                          { box.x0_m, box.x1_m },
                          ends_at_obstacle (ring, whole, TRUE),
                          ends_at_obstacle (ring, whole, FALSE) };

      if (!sw_region_is_hole (strip, i))
        g_array_append_val (stretches, stretch);
    }
  g_array_sort (stretches, compare_stretches);
  for (guint i = 1; i < stretches->len;)
    {
      Stretch *above = &g_array_index (stretches, Stretch, i - 1);
      const Stretch *below = &g_array_index (stretches, Stretch, i);

      if (!in_one_run (above, below))
        i++;
      else
        {
          join (above, below);
          g_array_remove_index (stretches, i);
        }
    }
}

/* The obstacles as far as they stand in the tier, in their order. */
static GPtrArray *
stands_in (const SwLaying *laying, const SwRegion *region)
{
  GPtrArray *stands = g_ptr_array_new_with_free_func ((GDestroyNotify) sw_region_free);

  for (guint i = 0; i < laying->stands->len; i++)
    g_ptr_array_add (stands, sw_region_common (laying->stands->pdata[i], region));
  return stands;
}

/* What a full run reaches beyond infill, past the seam of a round that is closed, too. */
static void
add_beyond (const SwLaying *laying, guint tier_index, SwBox box, GPtrArray *parts)
{
  const SwTier *tier = sw_laying_tier (laying, tier_index);
  double round_m = tier->along_to_m - tier->along_from_m;

  g_ptr_array_add (parts, sw_cover_within (laying, tier_index, box));
  if (!tier->closed)
    return;
  if (box.x1_m > tier->along_to_m)
    round_m = -round_m;
  else if (box.x0_m >= tier->along_from_m)
    return;
  box.x0_m += round_m;
  box.x1_m += round_m;
  g_ptr_array_add (parts, sw_cover_within (laying, tier_index, box));
}

/* What is to be covered of a strip. */
static SwRegion *
strip_cover (const SwLaying *laying, guint tier, int strip)
{
  SwBox boxes[3];
  guint count = sw_strip_boxes (laying, tier, strip, boxes);
  g_autoptr (GPtrArray) parts = NULL;

  if (count == 1)
    return sw_cover_within (laying, tier, boxes[0]);
  parts = g_ptr_array_new_with_free_func ((GDestroyNotify) sw_region_free);
  g_ptr_array_add (parts, sw_cover_within (laying, tier, boxes[0]));
  for (guint i = 1; i < count; i++)
    add_beyond (laying, tier, boxes[i], parts);
  return sw_region_union (parts);
}

static int
lay_strips (SwLaying *laying, guint tier_index, int number)
{
  const SwRegion *region = g_ptr_array_index (laying->regions, tier_index);
  SwTier *tier = &g_array_index (laying->tiers, SwTier, tier_index);
  g_autoptr (GPtrArray) stands = stands_in (laying, region);
  g_autoptr (GArray) stretches = g_array_new (FALSE, FALSE, sizeof (Stretch));

  tier->first_run = laying->runs->len;
  g_ptr_array_add (laying->infills, sw_infill_ends (laying, tier_index));
  for (int i = 0; i < tier->strips; i++)
    {
      SwSpan along = sw_strip_edges (laying, tier, i);
      g_autoptr (SwRegion) strip = strip_cover (laying, tier_index, i);
      SwRun run = { .number = number,
                    .strip = i,
                    .infill = !isnan (sw_infill_end_m (laying, tier_index, i)),
                    .along_from_m = along.from_m,
                    .along_to_m = along.to_m,
                    .width_m = (along.to_m - along.from_m) * tier->stretch,
                    .narrow = sw_is_narrow (tier, i) };

      find_stretches (strip, sw_before_obstacles (laying, tier_index), stretches);
      for (guint s = 0; s < stretches->len; s++)
        {
          run.part = stretches->len > 1 ? (int) s + 1 : 0;
          add_stretch (laying, tier_index, stands, run,
                       &g_array_index (stretches, Stretch, s));
        }
      if (stretches->len == 0)
        continue;
      number++;
      tier->infill += run.infill;
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

guint
sw_run_end_laps (const SwRun *run)
{
  return run->n_pieces - 1 + (run->infill_above || run->infill_below ? 1 : 0);
}

char *
sw_run_label (const SwRun *run)
{
  if (run->part == 0)
    return g_strdup_printf ("%d", run->number);
  return g_strdup_printf ("%d%c", run->number, 'a' + (run->part - 1) % 26);
}
