/* SPDX-License-Identifier: MIT */
#include "joints.h"
#include <math.h>
#include <slopewright/base/count.h>

/* Half a tenth of a millimetre: places nearer to each other are one. */
#define SAME_PLACE_M 5e-5

static double
start_m (const SwRun *run)
{
  return run->terms.set_back + run->terms.key_lining + run->terms.key_fold;
}

/* Walk both ways over the same slots: each takes a fold of blanket and no ground. */
static double
slots_before_m (const SwFaceLayout *face, const SwPractice *practice, const SwRun *run,
                double down_m, int *crossed)
{
  const SwTier *tier = &face->tiers[run->tier];
  double middle_m = (run->along_from_m + run->along_to_m) / 2.0;
  double fold_m = 2.0 * sw_practice_get (practice, SW_PRACTICE_SLOT_DEPTH_M);

  *crossed = 0;
  for (int i = 0; i < tier->slots; i++)
    {
      double slot_m = sw_slot_down_m (face->ground, tier, middle_m, i);

      /* A joint a stagger away from another often stands on the slot: not yet across it. */
      if (slot_m > run->down_from_m && slot_m < run->down_to_m
          && down_m - slot_m > SAME_PLACE_M)
        ++*crossed;
    }
  return *crossed * fold_m;
}

double
sw_blanket_to_down_m (const SwFaceLayout *face, const SwPractice *practice,
                      const SwRun *run, double blanket_m)
{
  const SwTier *tier = &face->tiers[run->tier];
  double middle_m = (run->along_from_m + run->along_to_m) / 2.0;
  double fold_m = 2.0 * sw_practice_get (practice, SW_PRACTICE_SLOT_DEPTH_M);
  double down_m = run->down_from_m + blanket_m - start_m (run);

  for (int i = 0; i < tier->slots; i++)
    {
      double slot_m = sw_slot_down_m (face->ground, tier, middle_m, i);

      if (slot_m > run->down_from_m && slot_m < run->down_to_m && down_m > slot_m)
        down_m = fmax (slot_m, down_m - fold_m);
    }
  return down_m;
}

static double
down_to_blanket_m (const SwJointing *jointing, double down_m)
{
  const SwRun *run = jointing->run;
  int crossed;
  double folds_m =
      slots_before_m (jointing->face, jointing->layout->practice, run, down_m, &crossed);

  return start_m (run) + down_m - run->down_from_m + folds_m;
}

/* Bar lower joint ends between two distances down the face. */
static void
bar (SwJointing *jointing, double down_from_m, double down_to_m)
{
  SwSpan span = { down_to_blanket_m (jointing, down_from_m),
                  down_to_blanket_m (jointing, down_to_m) };

  g_array_append_val (jointing->barred, span);
}

static void
bar_ends (SwJointing *jointing)
{
  const SwPractice *practice = jointing->layout->practice;
  const SwRun *run = jointing->run;
  SwSpan crest = { -INFINITY, 0.0 }, toe = { 0.0, INFINITY };

  /* The upper end of the lap, not the lower, must clear the crest zone. */
  crest.to_m = down_to_blanket_m (
      jointing, run->down_from_m
                    + sw_practice_get (practice, SW_PRACTICE_JOINT_FREE_CREST_M)
                    + jointing->lap_m);
  toe.from_m = down_to_blanket_m (
      jointing,
      run->down_to_m - sw_practice_get (practice, SW_PRACTICE_JOINT_FREE_TOE_M));
  g_array_append_val (jointing->barred, crest);
  g_array_append_val (jointing->barred, toe);
}

static SwPoint
break_point (const SwGround *ground, guint index, double along_m)
{
  double out_m = sw_ground_break_out_m (ground, index, along_m);

  return (SwPoint){ out_m, sw_ground_up_m (ground, (SwPoint){ along_m, out_m }) };
}

gboolean
sw_bends_at (const SwGround *ground, guint index, double along_m)
{
  SwPoint a = break_point (ground, index - 1, along_m);
  SwPoint p = break_point (ground, index, along_m);
  SwPoint b = break_point (ground, index + 1, along_m);
  double chord_m = hypot (b.x_m - a.x_m, b.y_m - a.y_m);
  double off_m =
      ((p.x_m - a.x_m) * (b.y_m - a.y_m) - (p.y_m - a.y_m) * (b.x_m - a.x_m)) / chord_m;

  return sw_ticks (off_m) != 0;
}

static void
bar_breaks (SwJointing *jointing)
{
  const SwGround *ground = jointing->face->ground;
  const SwRun *run = jointing->run;
  const SwReach *reach = &jointing->face->tiers[run->tier].reach;
  double middle_m = (run->along_from_m + run->along_to_m) / 2.0;

  for (guint i = reach->from_break + 1; i < reach->to_break; i++)
    {
      double down_m = sw_ground_break_down_m (ground, i, middle_m);

      if (sw_bends_at (ground, i, middle_m))
        bar (jointing, down_m - SW_BREAK_CLEAR_M,
             down_m + SW_BREAK_CLEAR_M + jointing->lap_m);
    }
}

/* A lap across a slot would lie partly in the slot's fold, and lap less on the ground. */
static void
bar_slots (SwJointing *jointing)
{
  const SwRun *run = jointing->run;
  const SwTier *tier = &jointing->face->tiers[run->tier];
  double middle_m = (run->along_from_m + run->along_to_m) / 2.0;
  double fold_m =
      2.0 * sw_practice_get (jointing->layout->practice, SW_PRACTICE_SLOT_DEPTH_M);

  for (int i = 0; i < tier->slots; i++)
    {
      double from_m = down_to_blanket_m (
          jointing, sw_slot_down_m (jointing->face->ground, tier, middle_m, i));
      SwSpan span = { from_m, from_m + fold_m + jointing->lap_m };

      g_array_append_val (jointing->barred, span);
    }
}

static void
bar_holes (SwJointing *jointing)
{
  const SwRun *run = jointing->run;

  for (guint i = 0; i < run->n_cut_outs; i++)
    {
      const SwCutOut *hole = &jointing->face->cut_outs[run->first_cut_out + i];

      bar (jointing, hole->down_from_m - SW_BREAK_CLEAR_M,
           hole->down_to_m + SW_BREAK_CLEAR_M + jointing->lap_m);
    }
}

static void
bar_beside (SwJointing *jointing, const SwRun *beside, const SwPiece *pieces)
{
  double stagger_m =
      sw_practice_get (jointing->layout->practice, SW_PRACTICE_JOINT_STAGGER_M);

  for (guint i = 0; i + 1 < beside->n_pieces; i++)
    {
      double down_m = pieces[beside->first_piece + i].down_to_m;

      bar (jointing, down_m - stagger_m, down_m + stagger_m);
    }
}

/* The end of infill is an end lap like any other. */
static void
bar_free_end (SwJointing *jointing, const SwRun *infill)
{
  double stagger_m =
      sw_practice_get (jointing->layout->practice, SW_PRACTICE_JOINT_STAGGER_M);
  double end_m = infill->infill_above ? infill->down_from_m : infill->down_to_m;

  if (infill->infill_above || infill->infill_below)
    bar (jointing, end_m - stagger_m, end_m + stagger_m);
}

/* The strips before may be in several parts, so all their runs count; beyond infill the
 * next full strip lies beside this one, too. */
static void
bar_strips_before (SwJointing *jointing, const SwPiece *pieces)
{
  const SwRun *run = jointing->run;
  const SwRun *first = jointing->face->runs + jointing->face->tiers[run->tier].first_run;
  int beside = 1;

  for (const SwRun *r = run; r > first && r[-1].strip >= run->strip - beside; r--)
    {
      if (r[-1].strip == run->strip)
        continue;
      if (r[-1].strip == run->strip - 1 && r[-1].infill)
        beside = 2;
      bar_beside (jointing, r - 1, pieces);
    }
}

static void
bar_infill_ends (SwJointing *jointing)
{
  const SwRun *run = jointing->run;
  const SwTier *tier = &jointing->face->tiers[run->tier];
  const SwRun *first = jointing->face->runs + tier->first_run;

  if (tier->infill == 0)
    return;
  for (const SwRun *r = first; r < first + tier->n_runs; r++)
    if (r->infill
        && (ABS (r->strip - run->strip) == 1
            || (tier->closed && ABS (r->strip - run->strip) == tier->strips - 1)))
      bar_free_end (jointing, r);
}

SwJointing *
sw_jointing_new (const SwLayout *layout, guint face, guint run, const SwPiece *pieces,
                 gboolean holes)
{
  SwJointing *jointing = g_new0 (SwJointing, 1);

  jointing->layout = layout;
  jointing->face = &layout->faces[face];
  jointing->run = &layout->faces[face].runs[run];
  jointing->lap_m = jointing->face->tiers[jointing->run->tier].end_lap_m;
  jointing->min_piece_m = sw_practice_get (layout->practice, SW_PRACTICE_MIN_PIECE_M);
  jointing->whole_m = jointing->run->cut_m;
  jointing->barred = g_array_new (FALSE, FALSE, sizeof (SwSpan));
  bar_ends (jointing);
  bar_breaks (jointing);
  bar_slots (jointing);
  if (holes)
    bar_holes (jointing);
  if (pieces != NULL)
    {
      bar_strips_before (jointing, pieces);
      bar_infill_ends (jointing);
    }
  return jointing;
}

void
sw_jointing_free (SwJointing *jointing)
{
  if (jointing == NULL)
    return;
  g_array_unref (jointing->barred);
  g_free (jointing);
}

/* The zone that @at_m lies inside of, its own edges excepted; NULL if it is free. A joint
 * on an edge, as one a stagger away from its neighbour's, is no matter of rounding. */
static const SwSpan *
barring (const SwJointing *jointing, double at_m)
{
  for (guint i = 0; i < jointing->barred->len; i++)
    {
      const SwSpan *span = &g_array_index (jointing->barred, SwSpan, i);

      if (at_m - span->from_m > SAME_PLACE_M && span->to_m - at_m > SAME_PLACE_M)
        return span;
    }
  return NULL;
}

double
sw_jointing_latest (const SwJointing *jointing, double from_m, double room_m)
{
  /* What comes after must be a piece of its own. */
  double at_m =
      fmin (from_m + room_m, jointing->whole_m - jointing->min_piece_m + jointing->lap_m);
  const SwSpan *span;

  while ((span = barring (jointing, at_m)) != NULL)
    at_m = span->from_m;
  return sw_ticks (at_m - from_m) >= sw_ticks (jointing->min_piece_m) ? at_m : -1.0;
}
