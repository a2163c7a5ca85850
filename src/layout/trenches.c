/* SPDX-License-Identifier: MIT */
#include "chain.h"
#include "layout-private.h"
#include <math.h>
#include <slopewright/base/count.h>
#include <slopewright/base/order.h>

static SwPlace
place_at (const SwGround *ground, double along_m, double down_m)
{
  return (SwPlace){ along_m, sw_ground_out_m (ground, along_m, down_m), down_m };
}

static double
true_length_m (const SwGround *ground, SwPlace a, SwPlace b)
{
  return sw_ground_length_m (ground, (SwPoint){ a.along_m, a.out_m },
                             (SwPoint){ b.along_m, b.out_m });
}

static void
finish_trench (SwLaying *laying, SwTrench *trench)
{
  trench->volume_m3 = trench->length_m * trench->depth_m * trench->width_m;
  g_array_append_vals (laying->trenches, trench, 1);
}

/* Places between @a and @b where the line between them, straight on the face view, crosses a
 * break of the section; so the line is straight in space from place to place. */
static void
add_bends (const SwLaying *laying, SwPlace a, SwPlace b, GArray *line)
{
  const SwGround *ground = laying->ground;
  g_autoptr (GArray) shares = g_array_new (FALSE, FALSE, sizeof (double));

  for (guint i = 0; i < laying->face->n_section; i++)
    {
      double gap_a = a.down_m - sw_ground_break_down_m (ground, i, a.along_m);
      double gap_b = b.down_m - sw_ground_break_down_m (ground, i, b.along_m);
      double share = gap_a / (gap_a - gap_b);

      if ((gap_a < 0.0 && gap_b > 0.0) || (gap_a > 0.0 && gap_b < 0.0))
        g_array_append_val (shares, share);
    }
  g_array_sort (shares, sw_compare_doubles);
  for (guint i = 0; i < shares->len; i++)
    {
      double share = g_array_index (shares, double, i);
      SwPlace bend = place_at (ground, a.along_m + share * (b.along_m - a.along_m),
                               a.down_m + share * (b.down_m - a.down_m));

      g_array_append_val (line, bend);
    }
}

/* @beyond_m: how far past the chain, down the slope, the centre line lies; negative is upslope. */
static void
add_along_chain (SwLaying *laying, SwTrench trench, const SwChain *chain, double beyond_m)
{
  const SwPoint *p = (const SwPoint *) chain->points->data;
  GArray *line = g_array_new (FALSE, FALSE, sizeof (SwPlace));

  for (guint i = 0; i < chain->points->len; i++)
    {
      SwPlace place = place_at (laying->ground, p[i].x_m,
                                sw_ground_down_m (laying->ground, p[i]) + beyond_m);

      if (i > 0)
        add_bends (laying, g_array_index (line, SwPlace, line->len - 1), place, line);
      g_array_append_val (line, place);
    }
  trench.n_line = line->len;
  trench.line = (SwPlace *) g_array_free (line, FALSE);
  for (guint i = 1; i < trench.n_line; i++)
    trench.length_m += true_length_m (laying->ground, trench.line[i - 1], trench.line[i]);
  finish_trench (laying, &trench);
}

/* An obstacle stands where the set-back would be: the trench begins clear of it. */
static double
beyond_obstacle_m (const SwLaying *laying, const SwTrench *trench)
{
  const SwTier *tier = &g_array_index (laying->tiers, SwTier, trench->tier);

  /* Clear on plan, too, on steep ground. */
  return SW_OBSTACLE_CLEAR_M / cos (tier->steepest_rad) + trench->width_m / 2.0;
}

static void
add_key (SwLaying *laying, guint tier, const SwChain *chain)
{
  SwTrench key = { .kind = SW_TRENCH_KEY, .tier = tier, .obstacle = chain->obstacle };

  key.depth_m = sw_practice_get (laying->practice, SW_PRACTICE_TRENCH_DEPTH_M);
  key.width_m = sw_practice_get (laying->practice, SW_PRACTICE_TRENCH_WIDTH_M);
  add_along_chain (laying, key, chain,
                   chain->obstacle
                       ? beyond_obstacle_m (laying, &key)
                       : -sw_practice_get (laying->practice, SW_PRACTICE_SET_BACK_M)
                             - key.width_m / 2.0);
}

/* A fold and a plain row have a line, for their pins, but no depth; against an obstacle
 * the ring of pins holds them. */
static void
add_toe (SwLaying *laying, guint tier, const SwChain *chain)
{
  const SwPractice *practice = laying->practice;
  SwTrench toe = { .kind = SW_TRENCH_TOE, .tier = tier, .obstacle = chain->obstacle };
  double beyond_m = 0.0;

  if (practice->toe_kind != SW_TOE_TRENCH && chain->obstacle)
    return;
  if (practice->toe_kind == SW_TOE_TRENCH)
    {
      toe.depth_m = sw_practice_get (practice, SW_PRACTICE_TOE_DEPTH_M);
      toe.width_m = sw_practice_get (practice, SW_PRACTICE_TOE_WIDTH_M);
      beyond_m = toe.width_m / 2.0;
    }
  else if (practice->toe_kind == SW_TOE_FOLD)
    beyond_m = sw_practice_get (practice, SW_PRACTICE_TOE_FOLD_M) / 2.0;
  if (chain->obstacle)
    beyond_m = -beyond_obstacle_m (laying, &toe);
  add_along_chain (laying, toe, chain, beyond_m);
}

/* The uppermost (lowest) place of the run at @along_m; infinite if it covers none there. */
static double
run_end_m (const SwRun *run, const GArray *spans, gboolean begins)
{
  double end_m = begins ? INFINITY : -INFINITY;

  for (guint s = 0; s < spans->len; s++)
    {
      SwSpan span = g_array_index (spans, SwSpan, s);

      if (begins && sw_ticks (span.from_m) >= sw_ticks (run->out_from_m))
        end_m = fmin (end_m, span.from_m);
      if (!begins && sw_ticks (span.to_m) <= sw_ticks (run->out_to_m))
        end_m = fmax (end_m, span.to_m);
    }
  return end_m;
}

/* Whether at @at, on the edge of an obstacle, a run begins (ends). */
static gboolean
run_ends_at (const SwLaying *laying, guint tier_index, SwPoint at, gboolean begins,
             GArray *spans)
{
  const SwTier *tier = &g_array_index (laying->tiers, SwTier, tier_index);
  gboolean cut = FALSE;

  for (guint r = tier->first_run; r < tier->first_run + tier->n_runs; r++)
    {
      const SwRun *run = &g_array_index (laying->runs, SwRun, r);

      if (at.x_m < run->along_from_m || at.x_m > run->along_to_m
          || !(begins ? run->obstacle_above : run->obstacle_below))
        continue;
      if (!cut)
        sw_region_cut_x (g_ptr_array_index (laying->covers, tier_index), at.x_m, spans);
      cut = TRUE;
      if (fabs (run_end_m (run, spans, begins) - at.y_m) < 2.0 / SW_TICKS_PER_M)
        return TRUE;
    }
  return FALSE;
}

static void
add_stop (GArray *stops, SwPoint a, SwPoint b, double along_m)
{
  if (along_m > a.x_m && along_m < b.x_m)
    g_array_append_val (stops, along_m);
}

/* Where along an edge the answer of run_ends_at() may change: its ends, the edges of runs,
 * and wherever another edge of the ground begins or ends above or below it. */
static GArray *
edge_stops (const SwLaying *laying, guint tier_index, SwPoint a, SwPoint b)
{
  const SwTier *tier = &g_array_index (laying->tiers, SwTier, tier_index);
  const SwRegion *cover = g_ptr_array_index (laying->covers, tier_index);
  GArray *stops = g_array_new (FALSE, FALSE, sizeof (double));

  g_array_append_val (stops, a.x_m);
  g_array_append_val (stops, b.x_m);
  for (guint r = tier->first_run; r < tier->first_run + tier->n_runs; r++)
    {
      const SwRun *run = &g_array_index (laying->runs, SwRun, r);

      add_stop (stops, a, b, run->along_from_m);
      add_stop (stops, a, b, run->along_to_m);
    }
  for (guint i = 0; i < cover->points->len; i++)
    add_stop (stops, a, b, g_array_index (cover->points, SwPoint, i).x_m);
  g_array_sort (stops, sw_compare_doubles);
  return stops;
}

static void
finish_part (SwLaying *laying, guint tier, SwChain *part)
{
  if (part->points->len > 1)
    {
      if (part->kind == SW_CHAIN_CREST)
        add_key (laying, tier, part);
      else
        add_toe (laying, tier, part);
    }
  g_array_set_size (part->points, 0);
}

/* Trenches only along the parts of an obstacle's edge where runs begin or end. */
static void
add_at_obstacle (SwLaying *laying, guint tier, const SwChain *chain)
{
  const SwPoint *p = (const SwPoint *) chain->points->data;
  g_autoptr (GArray) spans = g_array_new (FALSE, FALSE, sizeof (SwSpan));
  g_autoptr (GArray) line = g_array_new (FALSE, FALSE, sizeof (SwPoint));
  SwChain part = { chain->kind, FALSE, TRUE, line };

  for (guint i = 1; i < chain->points->len; i++)
    {
      g_autoptr (GArray) stops = edge_stops (laying, tier, p[i - 1], p[i]);
      double slope = (p[i].y_m - p[i - 1].y_m) / (p[i].x_m - p[i - 1].x_m);

      for (guint s = 1; s < stops->len; s++)
        {
          double from_m = g_array_index (stops, double, s - 1);
          double to_m = g_array_index (stops, double, s);
          double middle_m = (from_m + to_m) / 2.0;
          SwPoint from = { from_m, p[i - 1].y_m + slope * (from_m - p[i - 1].x_m) };
          SwPoint to = { to_m, p[i - 1].y_m + slope * (to_m - p[i - 1].x_m) };
          SwPoint at = { middle_m, p[i - 1].y_m + slope * (middle_m - p[i - 1].x_m) };

          if (sw_ticks (to_m - from_m) == 0)
            continue;
          if (!run_ends_at (laying, tier, at, chain->kind == SW_CHAIN_CREST, spans))
            {
              finish_part (laying, tier, &part);
              continue;
            }
          if (line->len == 0)
            g_array_append_val (line, from);
          g_array_append_val (line, to);
        }
    }
  finish_part (laying, tier, &part);
}

/* A slot follows its share of the way between the tier's breaks, bending at stations only. */
static void
add_slot (SwLaying *laying, guint tier_index, int index, SwSpan along)
{
  const SwTier *tier = &g_array_index (laying->tiers, SwTier, tier_index);
  SwTrench slot = { .kind = SW_TRENCH_SLOT, .tier = tier_index };
  g_autoptr (GArray) at_m =
      sw_ground_stations_between (laying->ground, along.from_m, along.to_m);

  slot.depth_m = sw_practice_get (laying->practice, SW_PRACTICE_SLOT_DEPTH_M);
  slot.width_m = sw_practice_get (laying->practice, SW_PRACTICE_SLOT_WIDTH_M);
  slot.n_line = at_m->len;
  slot.line = g_new (SwPlace, slot.n_line);
  for (guint i = 0; i < at_m->len; i++)
    {
      double along_m = g_array_index (at_m, double, i);
      SwPlace *p = slot.line;

      p[i] = place_at (laying->ground, along_m,
                       sw_slot_down_m (laying->ground, tier, along_m, index));
      if (i > 0)
        slot.length_m += true_length_m (laying->ground, p[i - 1], p[i]);
    }
  finish_trench (laying, &slot);
}

static void
add_slots (SwLaying *laying, guint tier_index)
{
  const SwTier *tier = &g_array_index (laying->tiers, SwTier, tier_index);
  const SwRegion *cover = g_ptr_array_index (laying->covers, tier_index);
  g_autoptr (GArray) spans = g_array_new (FALSE, FALSE, sizeof (SwSpan));
  double middle_m = (tier->along_from_m + tier->along_to_m) / 2.0;

  for (int i = 0; i < tier->slots; i++)
    {
      double down_m = sw_slot_down_m (laying->ground, tier, middle_m, i);

      sw_region_cut_y (cover, sw_ground_out_m (laying->ground, middle_m, down_m), spans);
      for (guint s = 0; s < spans->len; s++)
        add_slot (laying, tier_index, i, g_array_index (spans, SwSpan, s));
    }
}

static void
add_ends (SwLaying *laying, guint tier, const GPtrArray *chains, SwChainKind kind)
{
  for (guint i = 0; i < chains->len; i++)
    {
      const SwChain *chain = chains->pdata[i];

      if (chain->kind != kind)
        continue;
      if (chain->obstacle)
        add_at_obstacle (laying, tier, chain);
      else if (kind == SW_CHAIN_CREST)
        add_key (laying, tier, chain);
      else
        add_toe (laying, tier, chain);
    }
}

void
sw_lay_trenches (SwLaying *laying)
{
  for (guint t = 0; t < laying->tiers->len; t++)
    {
      g_autoptr (GPtrArray) chains =
          sw_chains_new (g_ptr_array_index (laying->covers, t), laying->ground,
                         sw_before_obstacles (laying, t));

      add_ends (laying, t, chains, SW_CHAIN_CREST);
      add_slots (laying, t);
      add_ends (laying, t, chains, SW_CHAIN_TOE);
    }
}
