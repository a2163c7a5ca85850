/* SPDX-License-Identifier: MIT */
#pragma once

#include "region.h"
#include <slopewright/ground/ground.h>

/** An edge within 15 degrees of the fall line on plan is a side; tan 15 degrees. */
#define SW_SIDE_TAN 0.2679491924311227

/** What part of its tier an edge of the region bounds. */
typedef enum
{
  SW_CHAIN_CREST, /* ground lies downslope of it: the key trench runs here */
  SW_CHAIN_TOE,   /* ground lies upslope of it: the toe end runs here */
  SW_CHAIN_SIDE   /* near to the fall line: an edge row of pins */
} SwChainKind;

/** Neighbouring edges of one kind; points from left to right, a side from its upper end. */
typedef struct
{
  SwChainKind kind;
  gboolean ground_right; /* SIDE: the ground lies towards larger along_m */
  gboolean obstacle;     /* against an obstacle, not along the outline */
  GArray *points;        /* (element-type SwPoint) on plan */
} SwChain;

/**
 * sw_chains_new:
 * @region: ground to be covered in a tier
 * @ground: what it lies on; an edge gets a point where the ground under it
 *   bends, so that between two points it is straight in space
 * @whole: (nullable): the region before obstacles were taken out of it, NULL if
 *   there are none
 *
 * Returns: (transfer full) (element-type SwChain): all edges of @region, each
 *   in one chain; from left to right, whatever point the outline begins with.
 */
GPtrArray *sw_chains_new (const SwRegion *region, const SwGround *ground,
                          const SwRegion *whole);
