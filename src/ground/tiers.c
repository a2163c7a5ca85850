/* SPDX-License-Identifier: MIT */
#include "ground-private.h"
#include <math.h>
#include <slopewright/base/count.h>

/* A tier shorter than this is no ground to lay on: a millimetre. */
#define SHORTEST_TIER_M 1e-3

static void
add_reach (const SwGround *ground, double out_from_m, double out_to_m, GArray *reaches)
{
  SwReach reach = { .out_from_m = out_from_m, .out_to_m = out_to_m };

  if (out_to_m - out_from_m < SHORTEST_TIER_M)
    return;
  reach.down_from_m = sw_ground_down_m (ground, (SwPoint){ 0.0, out_from_m });
  reach.down_to_m = sw_ground_down_m (ground, (SwPoint){ 0.0, out_to_m });
  g_array_append_val (reaches, reach);
}

/* Last point of the flat stretch that begins at @first, @first itself if it is not flat. */
static guint
flat_until (const SwGround *ground, guint first, double bench_hv)
{
  const SwPoint *p = ground->section; /* of the first station */
  guint i = first;

  while (i < ground->toe
         && fabs (p[i + 1].y_m - p[i].y_m) * bench_hv < p[i + 1].x_m - p[i].x_m)
    i++;
  return i;
}

SwStatus
sw_ground_tiers (const SwGround *ground, double bench_hv, double bench_min_m,
                 GArray *reaches)
{
  const SwPoint *p = ground->section; /* of the first station */
  double from_m = p[ground->crest].x_m;
  guint i = ground->crest;

  if (!isfinite (bench_hv) || !isfinite (bench_min_m) || bench_hv <= 0.0
      || bench_min_m <= 0.0)
    return SW_E_RANGE;
  g_array_set_size (reaches, 0);
  while (i < ground->toe)
    {
      guint end = flat_until (ground, i, bench_hv);

      if (end > i && sw_ticks (p[end].x_m - p[i].x_m) >= sw_ticks (bench_min_m))
        {
          add_reach (ground, from_m, p[i].x_m, reaches);
          from_m = p[end].x_m;
        }
      i = MAX (end, i + 1);
    }
  add_reach (ground, from_m, p[ground->toe].x_m, reaches);
  return reaches->len > 0 ? SW_OK : SW_E_SECTION;
}
