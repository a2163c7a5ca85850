/* SPDX-License-Identifier: MIT */
#include "chain.h"
#include "layout-private.h"

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

static int
compare_doubles (gconstpointer a, gconstpointer b)
{
  double x = *(const double *) a, y = *(const double *) b;

  return (x > y) - (x < y);
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
  g_array_sort (shares, compare_doubles);
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

static void
add_key (SwLaying *laying, guint tier, const SwChain *chain)
{
  SwTrench key = { .kind = SW_TRENCH_KEY, .tier = tier };

  key.depth_m = sw_practice_get (laying->practice, SW_PRACTICE_TRENCH_DEPTH_M);
  key.width_m = sw_practice_get (laying->practice, SW_PRACTICE_TRENCH_WIDTH_M);
  add_along_chain (laying, key, chain,
                   -sw_practice_get (laying->practice, SW_PRACTICE_SET_BACK_M)
                       - key.width_m / 2.0);
}

/* A fold and a plain row have a line, for their pins, but no depth. */
static void
add_toe (SwLaying *laying, guint tier, const SwChain *chain)
{
  const SwPractice *practice = laying->practice;
  SwTrench toe = { .kind = SW_TRENCH_TOE, .tier = tier };
  double beyond_m = 0.0;

  if (practice->toe_kind == SW_TOE_TRENCH)
    {
      toe.depth_m = sw_practice_get (practice, SW_PRACTICE_TOE_DEPTH_M);
      toe.width_m = sw_practice_get (practice, SW_PRACTICE_TOE_WIDTH_M);
      beyond_m = toe.width_m / 2.0;
    }
  else if (practice->toe_kind == SW_TOE_FOLD)
    beyond_m = sw_practice_get (practice, SW_PRACTICE_TOE_FOLD_M) / 2.0;
  add_along_chain (laying, toe, chain, beyond_m);
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
  const SwRegion *region = g_ptr_array_index (laying->regions, tier_index);
  g_autoptr (GArray) spans = g_array_new (FALSE, FALSE, sizeof (SwSpan));
  double middle_m = (tier->along_from_m + tier->along_to_m) / 2.0;

  for (int i = 0; i < tier->slots; i++)
    {
      double down_m = sw_slot_down_m (laying->ground, tier, middle_m, i);

      sw_region_cut_y (region, sw_ground_out_m (laying->ground, middle_m, down_m), spans);
      for (guint s = 0; s < spans->len; s++)
        add_slot (laying, tier_index, i, g_array_index (spans, SwSpan, s));
    }
}

void
sw_lay_trenches (SwLaying *laying)
{
  for (guint t = 0; t < laying->tiers->len; t++)
    {
      g_autoptr (GPtrArray) chains =
          sw_chains_new (g_ptr_array_index (laying->regions, t), laying->ground);

      for (guint i = 0; i < chains->len; i++)
        if (((SwChain *) chains->pdata[i])->kind == SW_CHAIN_CREST)
          add_key (laying, t, chains->pdata[i]);
      add_slots (laying, t);
      for (guint i = 0; i < chains->len; i++)
        if (((SwChain *) chains->pdata[i])->kind == SW_CHAIN_TOE)
          add_toe (laying, t, chains->pdata[i]);
    }
}
