/* SPDX-License-Identifier: MIT */
#include "ground-private.h"
#include <math.h>
#include <string.h>

/* A bowl narrower at its toe than a hundredth of its crest is a funnel, not a face. */
#define LEAST_STRETCH 0.01

static SwStatus
check_section (const SwPoint *section, guint count, guint crest, guint toe)
{
  for (guint i = 0; i < count; i++)
    if (!isfinite (section[i].x_m) || !isfinite (section[i].y_m))
      return SW_E_RANGE;
  for (guint i = 1; i < count; i++)
    if (section[i].x_m <= section[i - 1].x_m)
      return SW_E_SECTION;
  if (toe >= count || crest >= toe || section[crest].y_m <= section[toe].y_m)
    return SW_E_SECTION;
  return SW_OK;
}

static SwStatus
check_stations (const SwStation *stations, guint n_stations, guint n_points, guint crest,
                guint toe)
{
  if (n_stations == 0 || n_points < 2)
    return SW_E_FEW_POINTS;
  for (guint s = 0; s < n_stations; s++)
    {
      SwStatus status = check_section (stations[s].section, n_points, crest, toe);

      if (status != SW_OK)
        return status;
      if (!isfinite (stations[s].along_m))
        return SW_E_RANGE;
      if (s > 0 && stations[s].along_m <= stations[s - 1].along_m)
        return SW_E_SECTION;
    }
  return SW_OK;
}

SwStatus
sw_ground_new_ruled (const SwStation *stations, guint n_stations, guint n_points,
                     guint crest, guint toe, SwGround **ground)
{
  SwStatus status = check_stations (stations, n_stations, n_points, crest, toe);
  SwGround *made;

  if (status != SW_OK)
    return status;
  made = g_new0 (SwGround, 1);
  made->count = n_points;
  made->crest = crest;
  made->toe = toe;
  made->stations = n_stations;
  made->along_m = g_new (double, n_stations);
  made->section = g_new (SwPoint, (gsize) n_stations * n_points);
  made->down_m = g_new (double, (gsize) n_stations *n_points);
  for (guint s = 0; s < n_stations; s++)
    {
      SwPoint *section = made->section + (gsize) s * n_points;

      made->along_m[s] = stations[s].along_m;
      memcpy (section, stations[s].section, n_points * sizeof *section);
      sw_profile_measure (section, n_points, crest, made->down_m + (gsize) s * n_points);
    }
  *ground = made;
  return SW_OK;
}

static SwStatus
bend (SwGround *ground, const SwFace *face)
{
  const SwPoint *last = &ground->section[ground->count - 1];

  if (face->crest_form == SW_CREST_STRAIGHT)
    return SW_OK;
  if (!isfinite (face->crest_radius_m) || face->crest_radius_m <= 0.0
      || ground->stations > 1)
    return SW_E_SECTION;
  ground->bend_per_m =
      (face->crest_form == SW_CREST_NOSE ? 1.0 : -1.0) / face->crest_radius_m;
  /* Both ends of the section must lie off the axis. */
  if (sw_ground_stretch (ground, last->x_m) <= LEAST_STRETCH
      || sw_ground_stretch (ground, ground->section[0].x_m) <= LEAST_STRETCH)
    return SW_E_SECTION;
  return SW_OK;
}

/* The face's own section among the further ones, by place along the crest. */
static GArray *
sort_stations (const SwFace *face)
{
  GArray *stations = g_array_new (FALSE, FALSE, sizeof (SwStation));
  SwStation own = { face->section_along_m, face->section };
  guint at = 0;

  while (at < face->n_further && face->further[at].along_m < own.along_m)
    at++;
  for (guint i = 0; i < face->n_further; i++)
    {
      SwStation station = { face->further[i].along_m, face->further[i].section };
      g_array_append_val (stations, station);
    }
  g_array_insert_val (stations, at, own);
  return stations;
}

SwStatus
sw_ground_new (const SwFace *face, SwGround **ground)
{
  g_autoptr (GArray) stations = sort_stations (face);
  g_autoptr (SwGround) made = NULL;
  SwStatus status =
      sw_ground_new_ruled ((const SwStation *) stations->data, stations->len,
                           face->n_section, face->crest, face->toe, &made);

  if (status == SW_OK)
    status = bend (made, face);
  if (status == SW_OK)
    *ground = g_steal_pointer (&made);
  return status;
}

double
sw_ground_stretch (const SwGround *ground, double out_m)
{
  return 1.0 + ground->bend_per_m * (out_m - sw_ground_crest_out_m (ground));
}

void
sw_ground_free (SwGround *ground)
{
  if (ground == NULL)
    return;
  g_free (ground->along_m);
  g_free (ground->section);
  g_free (ground->down_m);
  g_free (ground);
}

double
sw_ground_break_out_m (const SwGround *ground, guint point, double along_m)
{
  SwProfile profile = sw_profile_at (ground, along_m, SW_PROFILE_ROOM (ground));

  return profile.section[point].x_m;
}

double
sw_ground_break_down_m (const SwGround *ground, guint point, double along_m)
{
  SwProfile profile = sw_profile_at (ground, along_m, SW_PROFILE_ROOM (ground));

  return profile.down_m[point];
}

double
sw_ground_crest_out_m (const SwGround *ground)
{
  return ground->section[ground->crest].x_m;
}

double
sw_ground_toe_out_m (const SwGround *ground)
{
  return ground->section[ground->toe].x_m;
}

double
sw_ground_up_m (const SwGround *ground, SwPoint plan)
{
  SwProfile profile = sw_profile_at (ground, plan.x_m, SW_PROFILE_ROOM (ground));

  return sw_profile_up_m (&profile, plan.y_m);
}

double
sw_ground_down_m (const SwGround *ground, SwPoint plan)
{
  SwProfile profile = sw_profile_at (ground, plan.x_m, SW_PROFILE_ROOM (ground));

  return sw_profile_down_m (&profile, plan.y_m);
}

double
sw_ground_out_m (const SwGround *ground, double along_m, double down_m)
{
  SwProfile profile = sw_profile_at (ground, along_m, SW_PROFILE_ROOM (ground));

  return sw_profile_out_m (&profile, down_m);
}

GArray *
sw_ground_stations_between (const SwGround *ground, double along_from_m,
                            double along_to_m)
{
  GArray *at_m = g_array_new (FALSE, FALSE, sizeof (double));

  g_array_append_val (at_m, along_from_m);
  for (guint s = 0; s < ground->stations; s++)
    if (ground->along_m[s] > along_from_m && ground->along_m[s] < along_to_m)
      g_array_append_val (at_m, ground->along_m[s]);
  g_array_append_val (at_m, along_to_m);
  return at_m;
}

gboolean
sw_ground_is_curved (const SwGround *ground)
{
  return ground->stations > 1 || fabs (ground->bend_per_m) > 0.0;
}
