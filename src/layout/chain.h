/* SPDX-License-Identifier: MIT */
#pragma once

#include "region.h"

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
  GArray *points;        /* (element-type SwPoint) on plan */
} SwChain;

/** Returns: (transfer full) (element-type SwChain): all edges of @region, each in one chain. */
GPtrArray *sw_chains_new (const SwRegion *region);
