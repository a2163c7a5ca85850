/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/ground/ground.h>

/* A ruled surface: at each station one section; between two stations every
 * break runs straight from its place in the one to its place in the other. One
 * station alone is extruded both ways, and so are the first and the last. */
struct SwGround
{
  guint count;      /* points of a section */
  guint crest, toe; /* which of them */
  guint stations;
  double
      bend_per_m; /* of the crest on plan: 1 / radius of a nose, negative of a bowl, else 0 */
  double *along_m;  /* per station, growing */
  SwPoint *section; /* stations x count: x out, y up */
  double *down_m; /* stations x count: true distance from the crest, negative before it */
};

/** The section at one place along the crest; points into the ground or into the room given. */
typedef struct
{
  const SwPoint *section;
  const double *down_m;
  guint count;
} SwProfile;

/** Room for a profile that has to be interpolated: count points and distances. */
#define SW_PROFILE_ROOM(ground)                                                          \
  g_newa (SwPoint, (ground)->count), g_newa (double, (ground)->count)

SwProfile sw_profile_at (const SwGround *ground, double along_m, SwPoint *section,
                         double *down_m);

/** Fill the true distances of a section from its crest. */
void sw_profile_measure (const SwPoint *section, guint count, guint crest,
                         double *down_m);

/** Index of the stretch that holds @out_m: 0 before the first point, count after the last. */
guint sw_profile_stretch (const SwProfile *profile, double out_m);
double sw_profile_up_m (const SwProfile *profile, double out_m);
double sw_profile_down_m (const SwProfile *profile, double out_m);
double sw_profile_out_m (const SwProfile *profile, double down_m);
