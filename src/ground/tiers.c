/* SPDX-License-Identifier: MIT */
#include "ground-private.h"
#include <math.h>
#include <slopewright/base/count.h>

static const SwPoint *
station_section (const SwGround *ground, guint station)
{
  return ground->section + (gsize) station * ground->count;
}

/* Whether the stretch below break @i is flatter than the ratio at every station. */
static gboolean
is_flat (const SwGround *ground, guint i, double bench_hv)
{
  for (guint s = 0; s < ground->stations; s++)
    {
      const SwPoint *p = station_section (ground, s);

      if (fabs (p[i + 1].y_m - p[i].y_m) * bench_hv >= p[i + 1].x_m - p[i].x_m)
        return FALSE;
    }
  return TRUE;
}

static gboolean
is_long_enough (const SwGround *ground, guint from, guint to, double least_m)
{
  for (guint s = 0; s < ground->stations; s++)
    {
      const SwPoint *p = station_section (ground, s);

      if (sw_ticks (p[to].x_m - p[from].x_m) < sw_ticks (least_m))
        return FALSE;
    }
  return TRUE;
}

static void
add_reach (const SwGround *ground, GArray *reaches, guint from, guint to)
{
  SwReach reach = { from, to, INFINITY, -INFINITY, INFINITY, -INFINITY };

  if (to <= from)
    return;
  for (guint s = 0; s < ground->stations; s++)
    {
      const SwPoint *p = station_section (ground, s);
      const double *down_m = ground->down_m + (gsize) s * ground->count;

      reach.out_from_m = fmin (reach.out_from_m, p[from].x_m);
      reach.out_to_m = fmax (reach.out_to_m, p[to].x_m);
      reach.down_from_m = fmin (reach.down_from_m, down_m[from]);
      reach.down_to_m = fmax (reach.down_to_m, down_m[to]);
    }
  g_array_append_val (reaches, reach);
}

SwStatus
sw_ground_tiers (const SwGround *ground, double bench_hv, double bench_min_m,
                 GArray *reaches)
{
  guint from = ground->crest, i = ground->crest;

  if (!isfinite (bench_hv) || !isfinite (bench_min_m) || bench_hv <= 0.0
      || bench_min_m <= 0.0)
    return SW_E_RANGE;
  g_array_set_size (reaches, 0);
  while (i < ground->toe)
    {
      guint end = i;

      while (end < ground->toe && is_flat (ground, end, bench_hv))
        end++;
      if (end > i && is_long_enough (ground, i, end, bench_min_m))
        {
          add_reach (ground, reaches, from, i);
          from = end;
        }
      i = MAX (end, i + 1);
    }
  add_reach (ground, reaches, from, ground->toe);
  return reaches->len > 0 ? SW_OK : SW_E_SECTION;
}

SwStatus
sw_ground_whole (const SwGround *ground, GArray *reaches)
{
  g_array_set_size (reaches, 0);
  add_reach (ground, reaches, ground->crest, ground->toe);
  return SW_OK;
}

double
sw_ground_steepest_rad (const SwGround *ground, SwReach reach)
{
  double steepest = 0.0;

  for (guint s = 0; s < ground->stations; s++)
    {
      const SwPoint *p = station_section (ground, s);

      for (guint i = reach.from_break + 1; i <= reach.to_break; i++)
        steepest = fmax (steepest,
                         atan2 (fabs (p[i].y_m - p[i - 1].y_m), p[i].x_m - p[i - 1].x_m));
    }
  return steepest;
}

double
sw_ground_mean_rad (const SwGround *ground, SwReach reach, double along_m)
{
  SwProfile profile = sw_profile_at (ground, along_m, SW_PROFILE_ROOM (ground));
  const SwPoint *from = &profile.section[reach.from_break];
  const SwPoint *to = &profile.section[reach.to_break];

  return atan2 (from->y_m - to->y_m, to->x_m - from->x_m);
}

void
sw_ground_band (const SwGround *ground, SwReach reach, double along_from_m,
                double along_to_m, GArray *ring)
{
  g_autoptr (GArray) at_m = sw_ground_stations_between (ground, along_from_m, along_to_m);

  g_array_set_size (ring, 0);
  for (guint i = 0; i < at_m->len; i++)
    {
      SwPoint p = { g_array_index (at_m, double, i), 0.0 };

      p.y_m = sw_ground_break_out_m (ground, reach.from_break, p.x_m);
      g_array_append_val (ring, p);
    }
  for (guint i = at_m->len; i > 0; i--)
    {
      SwPoint p = { g_array_index (at_m, double, i - 1), 0.0 };

      p.y_m = sw_ground_break_out_m (ground, reach.to_break, p.x_m);
      g_array_append_val (ring, p);
    }
}
