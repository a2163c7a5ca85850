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
  GPtrArray *covers;  /* (element-type SwRegion), one a tier: the same less obstacles */
  GPtrArray *stands;  /* (element-type SwRegion), one an obstacle of the face */
  SwRegion *obstacles, *deductible; /* all, and the large ones; NULL if there are none */
  GPtrArray *infills; /* (element-type GArray of double), one a tier: sw_infill_ends() */
  GArray *cut_outs;   /* (element-type SwCutOut) */
  GArray *tiers;      /* (element-type SwTier) */
  GArray *runs;       /* (element-type SwRun) */
  GArray *trenches;   /* (element-type SwTrench) */
  SwFaceLayout *out;
  GArray *pins;                   /* (element-type SwPinPlace) */
  const struct SwRingRows *rings; /* only while pins are set; NULL without obstacles */
} SwLaying;

/* A joint keeps so far from a break of the section, where blankets are pulled taut, and
 * from an obstacle, where the blanket is cut. */
#define SW_BREAK_CLEAR_M 0.5

/** A tier or the ground, before and after they moved to the layout. */
static inline const SwTier *
sw_laying_tier (const SwLaying *laying, guint tier)
{
  return laying->tiers != NULL ? &g_array_index (laying->tiers, SwTier, tier)
                               : &laying->out->tiers[tier];
}

static inline const SwGround *
sw_laying_ground (const SwLaying *laying)
{
  return laying->ground != NULL ? laying->ground : laying->out->ground;
}

/** Whether the strip, counted from the leeward end, is laid in the narrow roll. */
static inline gboolean
sw_is_narrow (const SwTier *tier, int strip)
{
  return tier->narrow_last && strip == tier->strips - 1;
}

/** Regions of the obstacles; SW_E_OBSTACLE for one that is no simple outline. */
SwStatus sw_lay_obstacles (SwLaying *laying);

/** What is to be covered of a tier in @box, found without the rest of the tier. (transfer full) */
SwRegion *sw_cover_within (const SwLaying *laying, guint tier, SwBox box);

gboolean sw_boxes_meet (SwBox a, SwBox b);

/** Size, edge and collar of every obstacle; tiers must be laid. (transfer full) */
SwObstaclePlace *sw_place_obstacles (const SwLaying *laying);

/** What a chain's edges are told apart by: the tier before obstacles, NULL without any. */
const SwRegion *sw_before_obstacles (const SwLaying *laying, guint tier);

/** True area of the surface over a region, holes left out. */
double sw_region_true_area_m2 (const SwGround *ground, const SwRegion *region);

/** Zones are simple outlines of known soils: SW_E_ZONE, SW_E_UNKNOWN_ID. */
SwStatus sw_check_zones (const SwLayout *layout, const SwFace *face);

/** Fill the pin lengths of a face and the pin of its own soil. */
void sw_lay_pin_lengths (const SwLayout *layout, SwFaceLayout *face);

/** Longest pin length under each run. */
void sw_lay_run_lengths (SwLaying *laying);

/** Give each pin its length. */
void sw_measure_pins (SwLaying *laying);

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
 * @roll_m: length of the job's roll to cut out of; the narrow roll has its own
 * @save: whether a run may begin with what is left of the roll before it
 * @pieces: (element-type SwPiece): cleared and filled, grouped by face and run;
 *   roll counts the rolls opened one after the other, of each width by itself
 *
 * Fills first_piece and n_pieces of the runs for its own use only.
 */
SwStatus sw_cut_pieces (SwLayout *layout, double roll_m, gboolean save, GArray *pieces);

/** Choose among the ways of cutting, plan the rolls, fill pieces, rolls and off-cuts. */
SwStatus sw_lay_pieces (SwLayout *layout);

/** Length of a trench lining path: down, across, up. */
double sw_lining_m (SwLining lining, double depth_m, double width_m);

/** Length that the toe adds to a run. */
double sw_toe_allowance_m (const SwPractice *practice);
