/* SPDX-License-Identifier: MIT */
#include "infill.h"
#include "joints.h"
#include <math.h>
#include <slopewright/base/count.h>

SwSpan
sw_strip_edges (const SwLaying *laying, const SwTier *tier, int strip)
{
  const SwJob *job = laying->job;
  double near_m = strip * (job->roll_width_m - tier->side_lap_m);
  double own_m = sw_job_roll_width_m (job, sw_is_narrow (tier, strip));
  double far_m = tier->closed ? near_m + own_m : fmin (near_m + own_m, tier->width_m);

  near_m /= tier->stretch;
  far_m /= tier->stretch;
  if (laying->face->leeward == SW_SIDE_LEFT)
    return (SwSpan){ tier->along_from_m + near_m, tier->along_from_m + far_m };
  return (SwSpan){ tier->along_to_m - far_m, tier->along_to_m - near_m };
}

gboolean
sw_opens_down (const SwTier *tier)
{
  return tier->stretch_to > tier->stretch_from;
}

/* Two strips with one between them. On the contour where a metre of crest has become
 * @stretch metres they lap by width_m - apart_m x stretch. */
typedef struct
{
  double apart_m; /* from middle to middle, along the crest */
  double width_m; /* half of each */
  double skew_m;  /* half the difference of their widths, right less left */
  double middle_m;
} Pair;

static Pair
pair_beside (const SwLaying *laying, const SwTier *tier, int strip)
{
  double round_m = tier->along_to_m - tier->along_from_m;
  SwSpan a = sw_strip_edges (laying, tier, strip - 1);
  SwSpan b = sw_strip_edges (laying, tier, (strip + 1) % tier->strips);
  gboolean left = laying->face->leeward == SW_SIDE_LEFT;
  SwSpan near = left ? a : b, far = left ? b : a;
  double shift_m = strip + 1 == tier->strips ? round_m : 0.0;
  double near_m, far_m;

  /* The last strip of a ring has the first beyond it. */
  if (left)
    far = (SwSpan){ far.from_m + shift_m, far.to_m + shift_m };
  else
    near = (SwSpan){ near.from_m - shift_m, near.to_m - shift_m };
  near_m = (near.from_m + near.to_m) / 2.0;
  far_m = (far.from_m + far.to_m) / 2.0;
  return (Pair){ far_m - near_m,
                 (near.to_m - near.from_m + far.to_m - far.from_m) / 2.0 * tier->stretch,
                 (far.to_m - far.from_m - near.to_m + near.from_m) / 2.0 * tier->stretch,
                 (near_m + far_m) / 2.0 };
}

/* How far down from the crest a metre along it has become @stretch metres. */
static double
down_of_stretch_m (const SwLaying *laying, const SwTier *tier, double stretch)
{
  double share = (stretch - tier->stretch_from) / (tier->stretch_to - tier->stretch_from);
  const SwReach *reach = &tier->reach;
  double out_m = reach->out_from_m + share * (reach->out_to_m - reach->out_from_m);

  return sw_ground_down_m (laying->ground, (SwPoint){ tier->along_from_m, out_m });
}

/* Where the end lap of an infill run may not lie: distances down from the crest. */
static GArray *
barred_spans (const SwLaying *laying, const SwTier *tier, const Pair *pair)
{
  GArray *barred = g_array_new (FALSE, FALSE, sizeof (SwSpan));
  double slot_m = sw_practice_get (laying->practice, SW_PRACTICE_SLOT_WIDTH_M);
  double reach_m = pair->apart_m / 2.0;

  for (guint i = tier->reach.from_break + 1; i < tier->reach.to_break; i++)
    {
      double at_m = sw_ground_break_down_m (laying->ground, i, pair->middle_m);
      SwSpan span = { at_m - SW_BREAK_CLEAR_M, at_m + SW_BREAK_CLEAR_M };

      if (sw_bends_at (laying->ground, i, pair->middle_m))
        g_array_append_val (barred, span);
    }
  for (int i = 0; i < tier->slots; i++)
    {
      double at_m = sw_slot_down_m (laying->ground, tier, pair->middle_m, i);
      SwSpan span = { at_m - slot_m, at_m + slot_m };

      g_array_append_val (barred, span);
    }
  for (guint i = 0; i < laying->stands->len; i++)
    {
      SwBox box = sw_region_box (laying->stands->pdata[i]);
      SwSpan span = { sw_ground_down_m (laying->ground, (SwPoint){ box.x0_m, box.y0_m })
                          - SW_BREAK_CLEAR_M,
                      sw_ground_down_m (laying->ground, (SwPoint){ box.x0_m, box.y1_m })
                          + SW_BREAK_CLEAR_M };

      if (box.x0_m < pair->middle_m + reach_m && box.x1_m > pair->middle_m - reach_m)
        g_array_append_val (barred, span);
    }
  return barred;
}

/* Move @end_m on, away from the wide end, until its lap lies clear of all that is barred. */
static double
clear_end_m (const GArray *barred, double end_m, double lap_m, gboolean down)
{
  for (guint i = 0; i < barred->len;)
    {
      SwSpan span = g_array_index (barred, SwSpan, i);
      double from_m = down ? end_m : end_m - lap_m;

      i++;
      if (sw_ticks (span.from_m - from_m - lap_m) >= 0
          || sw_ticks (from_m - span.to_m) >= 0)
        continue;
      end_m = down ? span.from_m - lap_m : span.to_m + lap_m;
      i = 0;
    }
  return end_m;
}

/* The end of infill between two full strips; NAN where it is no use. */
static double
end_between_m (const SwLaying *laying, const SwTier *tier, const Pair *pair)
{
  const SwPractice *practice = laying->practice;
  double lap_m = sw_practice_get (practice, SW_PRACTICE_SIDE_LAP_M);
  double at_lap = (pair->width_m - lap_m) / pair->apart_m;
  double at_gap = pair->width_m / pair->apart_m;
  gboolean down = sw_opens_down (tier);
  double narrow = fmin (tier->stretch_from, tier->stretch_to), end_m;
  g_autoptr (GArray) barred = NULL;

  if (at_lap <= narrow || at_lap >= tier->stretch)
    return (double) NAN;
  end_m = down_of_stretch_m (laying, tier, at_lap);
  if (at_gap < tier->stretch && down)
    end_m = fmin (end_m, down_of_stretch_m (laying, tier, at_gap) - tier->end_lap_m);
  else if (at_gap < tier->stretch)
    end_m = fmax (end_m, down_of_stretch_m (laying, tier, at_gap) + tier->end_lap_m);
  barred = barred_spans (laying, tier, pair);
  end_m = clear_end_m (barred, end_m, tier->end_lap_m, down);
  if (down ? end_m <= tier->reach.down_from_m
                          + sw_practice_get (practice, SW_PRACTICE_JOINT_FREE_CREST_M)
           : end_m >= tier->reach.down_to_m
                          - sw_practice_get (practice, SW_PRACTICE_JOINT_FREE_TOE_M))
    return (double) NAN;
  return end_m;
}

/* A fan's outer runs hold its edges; all round, the last run may be infill beside the first. */
static gboolean
may_be_infill (const SwTier *tier, int strip)
{
  return strip % 2 == 1 && (strip + 1 < tier->strips || (tier->closed && strip > 1));
}

GArray *
sw_infill_ends (const SwLaying *laying, guint tier_index)
{
  const SwTier *tier = sw_laying_tier (laying, tier_index);
  GArray *ends = g_array_new (FALSE, FALSE, sizeof (double));
  gboolean wanted =
      laying->face->fan == SW_FAN_INFILL && laying->face->crest_form != SW_CREST_STRAIGHT;

  for (int i = 0; i < tier->strips; i++)
    {
      double end_m = (double) NAN;

      if (wanted && may_be_infill (tier, i))
        {
          Pair pair = pair_beside (laying, tier, i);
          end_m = end_between_m (laying, tier, &pair);
        }
      g_array_append_val (ends, end_m);
    }
  return ends;
}

static double
out_at_m (const SwLaying *laying, const SwTier *tier, double down_m)
{
  const SwGround *ground = sw_laying_ground (laying);

  return sw_ground_out_m (ground, tier->along_from_m, down_m);
}

double
sw_infill_lap_middle_m (const SwLaying *laying, guint tier_index, int strip)
{
  const SwTier *tier = sw_laying_tier (laying, tier_index);
  const SwGround *ground = sw_laying_ground (laying);
  Pair pair = pair_beside (laying, tier, strip);
  double out_m = out_at_m (laying, tier, sw_infill_end_m (laying, tier_index, strip));

  return pair.middle_m - pair.skew_m / 2.0 / sw_ground_stretch (ground, out_m);
}

/* Beyond the end of infill @strip, from @edge_m to as far as @full reaches there. */
static gboolean
box_beyond (const SwLaying *laying, guint tier_index, int full, int infill, SwBox whole,
            SwBox *box)
{
  const SwTier *tier = sw_laying_tier (laying, tier_index);
  SwSpan edges = sw_strip_edges (laying, tier, full);
  double middle_m = (edges.from_m + edges.to_m) / 2.0, end_m, out_m, half_m;
  gboolean to_leeward = infill < full;

  if (infill < 0 && tier->closed)
    infill += tier->strips;
  if (infill < 0 || infill >= tier->strips)
    return FALSE;
  end_m = sw_infill_end_m (laying, tier_index, infill);
  if (isnan (end_m))
    return FALSE;
  out_m = out_at_m (laying, tier, end_m);
  half_m = (edges.to_m - edges.from_m) / 2.0 * tier->stretch
           / sw_ground_stretch (laying->ground, out_m);
  *box = whole;
  if (to_leeward == (laying->face->leeward == SW_SIDE_LEFT))
    {
      box->x0_m = middle_m - half_m;
      box->x1_m = edges.from_m;
    }
  else
    {
      box->x0_m = edges.to_m;
      box->x1_m = middle_m + half_m;
    }
  if (sw_opens_down (tier))
    box->y1_m = out_m;
  else
    box->y0_m = out_m;
  return TRUE;
}

guint
sw_strip_boxes (const SwLaying *laying, guint tier_index, int strip, SwBox boxes[3])
{
  const SwTier *tier = sw_laying_tier (laying, tier_index);
  SwSpan along = sw_strip_edges (laying, tier, strip);
  SwBox whole = { along.from_m, tier->reach.out_from_m, along.to_m,
                  tier->reach.out_to_m };
  double end_m = sw_infill_end_m (laying, tier_index, strip);
  guint count = 1;

  boxes[0] = whole;
  if (!isnan (end_m) && sw_opens_down (tier))
    boxes[0].y0_m = out_at_m (laying, tier, end_m);
  else if (!isnan (end_m))
    boxes[0].y1_m = out_at_m (laying, tier, end_m);
  else
    for (int side = -1; side <= 1; side += 2)
      if (box_beyond (laying, tier_index, strip, strip + side, whole, &boxes[count]))
        count++;
  return count;
}
