/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/ground/ground.h>

struct SwGround
{
  SwPoint *section; /* x out, y up */
  double *down_m;   /* true distance from the crest at each point, negative before it */
  guint count, crest, toe;
};
