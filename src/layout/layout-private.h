/* SPDX-License-Identifier: MIT */
#pragma once

#include "region.h"
#include <slopewright/layout/layout.h>

/* One face while it is being laid out: first its ground, tiers, runs and trenches, which
 * move to @out; then, when the pieces are known, its pins. */
typedef struct
{
  const SwFace *face;
  const SwPractice *practice;
  const SwJob *job;
  SwGround *ground;
  SwRegion *outline;
  GPtrArray *regions; /* (element-type SwRegion), one a tier: outline within its reach */
  GArray *tiers;      /* (element-type SwTier) */
  GArray *runs;       /* (element-type SwRun) */
  GArray *trenches;   /* (element-type SwTrench) */
  SwFaceLayout *out;
  GArray *pins; /* (element-type SwPinPlace) */
} SwLaying;

static inline double
sw_practice_get (const SwPractice *practice, SwPracticeValue value)
{
  return practice->values[value].value;
}

/** Tiers with their extent, gradient, area and lap; SW_E_EMPTY if the outline misses the face. */
SwStatus sw_lay_tiers (SwLaying *laying);

/** Strips of every tier, clipped to stretches, with all length terms but the end laps. */
SwStatus sw_lay_runs (SwLaying *laying);

/** Key trench, check slots and toe trench of every tier. */
void sw_lay_trenches (SwLaying *laying);

/** Pins of every role; runs must know their pieces. */
void sw_lay_pins (SwLaying *laying, const SwPiece *pieces);

/** Distance down from the crest, at @along_m, of check slot @index (0-based) of a tier. */
double sw_slot_down_m (const SwGround *ground, const SwTier *tier, double along_m,
                       int index);

/**
 * sw_cut_pieces:
 * @save: whether a run may begin with what is left of the roll before it
 * @pieces: (element-type SwPiece): cleared and filled, grouped by face and run;
 *   roll counts the rolls opened one after the other
 *
 * Fills first_piece and n_pieces of the runs for its own use only.
 */
SwStatus sw_cut_pieces (SwLayout *layout, gboolean save, GArray *pieces);

/** Choose among the ways of cutting, plan the rolls, fill pieces, rolls and off-cuts. */
SwStatus sw_lay_pieces (SwLayout *layout);

/** Length of a trench lining path: down, across, up. */
double sw_lining_m (SwLining lining, double depth_m, double width_m);

/** Length that the toe adds to a run. */
double sw_toe_allowance_m (const SwPractice *practice);
