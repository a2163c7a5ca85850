/* SPDX-License-Identifier: MIT */
#include "ground-private.h"
#include <math.h>

/* Number of stations at or before @along_m. */
static guint
stations_before (const SwGround *ground, double along_m)
{
  guint n = 0;

  while (n < ground->stations && ground->along_m[n] <= along_m)
    n++;
  return n;
}

static SwProfile
station_profile (const SwGround *ground, guint station)
{
  gsize at = (gsize) station * ground->count;

  return (SwProfile){ ground->section + at, ground->down_m + at, ground->count };
}

void
sw_profile_measure (const SwPoint *p, guint count, guint crest, double *down_m)
{
  down_m[crest] = 0.0;
  for (guint i = crest + 1; i < count; i++)
    down_m[i] = down_m[i - 1] + hypot (p[i].x_m - p[i - 1].x_m, p[i].y_m - p[i - 1].y_m);
  for (guint i = crest; i > 0; i--)
    down_m[i - 1] = down_m[i] - hypot (p[i].x_m - p[i - 1].x_m, p[i].y_m - p[i - 1].y_m);
}

SwProfile
sw_profile_at (const SwGround *ground, double along_m, SwPoint *section, double *down_m)
{
  guint after = stations_before (ground, along_m);
  const SwPoint *a, *b;
  double t;

  if (after == 0)
    return station_profile (ground, 0);
  if (after == ground->stations)
    return station_profile (ground, after - 1);
  a = ground->section + (gsize) (after - 1) * ground->count;
  b = a + ground->count;
  t = (along_m - ground->along_m[after - 1])
      / (ground->along_m[after] - ground->along_m[after - 1]);
  for (guint i = 0; i < ground->count; i++)
    section[i] = (SwPoint){ a[i].x_m + t * (b[i].x_m - a[i].x_m),
                            a[i].y_m + t * (b[i].y_m - a[i].y_m) };
  sw_profile_measure (section, ground->count, ground->crest, down_m);
  return (SwProfile){ section, down_m, ground->count };
}

guint
sw_profile_stretch (const SwProfile *profile, double out_m)
{
  guint low = 0, high = profile->count;

  while (low < high)
    {
      guint middle = (low + high) / 2;

      if (profile->section[middle].x_m <= out_m)
        low = middle + 1;
      else
        high = middle;
    }
  return low;
}

double
sw_profile_up_m (const SwProfile *profile, double out_m)
{
  guint i = sw_profile_stretch (profile, out_m);
  const SwPoint *p = profile->section;

  /* Beyond the drawn section the ground is taken as level. */
  if (i == 0)
    return p[0].y_m;
  if (i == profile->count)
    return p[i - 1].y_m;
  return p[i - 1].y_m
         + (p[i].y_m - p[i - 1].y_m) * (out_m - p[i - 1].x_m) / (p[i].x_m - p[i - 1].x_m);
}

double
sw_profile_down_m (const SwProfile *profile, double out_m)
{
  guint i = sw_profile_stretch (profile, out_m);
  const SwPoint *p = profile->section;
  const double *d = profile->down_m;

  if (i == 0)
    return d[0] + (out_m - p[0].x_m);
  if (i == profile->count)
    return d[i - 1] + (out_m - p[i - 1].x_m);
  return d[i - 1]
         + (d[i] - d[i - 1]) * (out_m - p[i - 1].x_m) / (p[i].x_m - p[i - 1].x_m);
}

double
sw_profile_out_m (const SwProfile *profile, double down_m)
{
  const SwPoint *p = profile->section;
  const double *d = profile->down_m;
  guint i = 0;

  while (i < profile->count && d[i] <= down_m)
    i++;
  if (i == 0)
    return p[0].x_m + (down_m - d[0]);
  if (i == profile->count)
    return p[i - 1].x_m + (down_m - d[i - 1]);
  return p[i - 1].x_m
         + (p[i].x_m - p[i - 1].x_m) * (down_m - d[i - 1]) / (d[i] - d[i - 1]);
}
