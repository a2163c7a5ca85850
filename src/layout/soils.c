/* SPDX-License-Identifier: MIT */
#include "layout-private.h"
#include <math.h>

/* A pin must reach so far into firm ground below loose topsoil. */
#define FIRM_HOLD_M 0.075

/* Pins are kept as floats: so much beside the end of a run is still in it. */
#define FLOAT_SLACK_M 1e-3

/* Less of another soil under a run, on plan, is a matter of the zone's line and not counted. */
#define LEAST_SOIL_M2 0.01

SwStatus
sw_check_zones (const SwLayout *layout, const SwFace *face)
{
  if (face->zones->len > G_MAXUINT8 - 1)
    return SW_E_ZONE;
  for (guint i = 0; i < face->zones->len; i++)
    {
      const SwZone *zone = face->zones->pdata[i];
      g_autoptr (SwRegion) region = NULL;

      if (sw_catalogue_soil (layout->catalogue, zone->soil_id) == NULL)
        return SW_E_UNKNOWN_ID;
      if (sw_region_new (zone->outline, zone->n_outline, &region) != SW_OK)
        return SW_E_ZONE;
    }
  return SW_OK;
}

double
sw_layout_pin_need_m (const SwLayout *layout, const SwSoil *soil, gboolean loose,
                      double topsoil_m)
{
  double need_m = fmax (sw_practice_get (layout->practice, SW_PRACTICE_PIN_LENGTH_M),
                        loose ? soil->pin_loose_m.value : soil->pin_firm_m.value);

  return topsoil_m > 0.0 ? fmax (need_m, topsoil_m + FIRM_HOLD_M) : need_m;
}

static SwPinLength
pin_length (const SwLayout *layout, const SwZone *zone, const char *soil_id,
            gboolean loose, double topsoil_m)
{
  const SwSoil *soil = sw_catalogue_soil (layout->catalogue, soil_id);
  SwPinLength length = { .zone = zone };

  length.need_m = sw_layout_pin_need_m (layout, soil, loose, topsoil_m);
  length.pin = layout->job->pin_id[0] != '\0'
                   ? sw_catalogue_pin (layout->catalogue, layout->job->pin_id)
                   : sw_catalogue_pin_of_length (layout->catalogue, length.need_m);
  return length;
}

void
sw_lay_pin_lengths (const SwLayout *layout, SwFaceLayout *laid)
{
  const SwFace *face = laid->face;

  laid->n_pin_lengths = face->zones->len + 1;
  laid->pin_lengths = g_new (SwPinLength, laid->n_pin_lengths);
  laid->pin_lengths[0] =
      pin_length (layout, NULL, face->soil_id, face->loose, face->topsoil_m);
  for (guint i = 0; i < face->zones->len; i++)
    {
      const SwZone *zone = face->zones->pdata[i];

      laid->pin_lengths[i + 1] =
          pin_length (layout, zone, zone->soil_id, zone->loose, zone->topsoil_m);
    }
  laid->pin = laid->pin_lengths[0].pin;
  laid->pin_need_m = laid->pin_lengths[0].need_m;
}

/* Regions of the lengths, in their order: the face's own soil is what the zones leave. */
static GPtrArray *
length_regions (const SwLaying *laying, const SwRegion *cover)
{
  GPtrArray *regions = g_ptr_array_new_with_free_func ((GDestroyNotify) sw_region_free);
  g_autoptr (SwRegion) left = sw_region_copy (cover);

  g_ptr_array_add (regions, NULL);
  for (guint i = 0; i < laying->face->zones->len; i++)
    {
      const SwZone *zone = laying->face->zones->pdata[i];
      g_autoptr (SwRegion) region = NULL;
      SwRegion *rest;

      if (sw_region_new (zone->outline, zone->n_outline, &region) != SW_OK)
        continue; /* not reached: sw_check_zones() was passed */
      g_ptr_array_add (regions, sw_region_common (left, region));
      rest = sw_region_minus (left, region);
      sw_region_free (left);
      left = rest;
    }
  regions->pdata[0] = g_steal_pointer (&left);
  return regions;
}

static void
find_longest (const SwPinLength *lengths, const GPtrArray *regions, SwRun *run)
{
  SwBox box = { run->along_from_m, run->out_from_m, run->along_to_m, run->out_to_m };
  double longest_m = -INFINITY;

  for (guint i = 0; i < regions->len; i++)
    {
      g_autoptr (SwRegion) under = NULL;

      if (lengths[i].need_m <= longest_m)
        continue;
      under = sw_region_clip_box (regions->pdata[i], box);
      if (sw_region_area_m2 (under) < LEAST_SOIL_M2)
        continue;
      longest_m = lengths[i].need_m;
      run->pin_length = (guint8) i;
    }
}

void
sw_lay_run_lengths (SwLaying *laying)
{
  const SwFaceLayout *out = laying->out;

  if (laying->face->zones->len == 0)
    return;
  for (guint t = 0; t < out->n_tiers; t++)
    {
      const SwTier *tier = &out->tiers[t];
      g_autoptr (GPtrArray) regions =
          length_regions (laying, g_ptr_array_index (laying->covers, t));

      for (guint r = tier->first_run; r < tier->first_run + tier->n_runs; r++)
        find_longest (out->pin_lengths, regions, &out->runs[r]);
    }
}

static guint8
length_at (const SwFace *face, const SwPinPlace *pin)
{
  const SwZone *zone =
      sw_face_zone_at (face, (SwPoint){ (double) pin->along_m, (double) pin->out_m });

  for (guint i = 0; i < face->zones->len; i++)
    if (face->zones->pdata[i] == zone)
      return (guint8) (i + 1);
  return 0;
}

/* Distance of the run's far edge, or of a place, from the leeward end. */
static double
from_leeward_m (const SwLaying *laying, const SwTier *tier, double along_m)
{
  return laying->face->leeward == SW_SIDE_LEFT ? along_m - tier->along_from_m
                                               : tier->along_to_m - along_m;
}

/* First run, in laying order, whose strip reaches @along_m. */
static guint
first_reaching (const SwLaying *laying, const SwTier *tier, double along_m)
{
  gboolean left = laying->face->leeward == SW_SIDE_LEFT;
  double at_m = from_leeward_m (laying, tier, along_m);
  guint low = tier->first_run, high = tier->first_run + tier->n_runs;

  while (low < high)
    {
      guint middle = low + (high - low) / 2;
      const SwRun *run = &laying->out->runs[middle];
      double far_m =
          from_leeward_m (laying, tier, left ? run->along_to_m : run->along_from_m);

      if (far_m < at_m - FLOAT_SLACK_M)
        low = middle + 1;
      else
        high = middle;
    }
  return low;
}

/* The longest of the runs that the pin goes through, and never shorter than @own, which the
 * ground calls for where it stands. */
static guint8
length_of_runs (const SwLaying *laying, const SwPinPlace *pin, guint8 own)
{
  const SwFaceLayout *out = laying->out;
  const SwTier *tier = &out->tiers[pin->tier];
  double along_m = (double) pin->along_m, out_m = (double) pin->out_m;
  guint8 longest = own;

  for (guint r = first_reaching (laying, tier, along_m);
       r < tier->first_run + tier->n_runs; r++)
    {
      const SwRun *run = &out->runs[r];

      if (along_m < run->along_from_m - FLOAT_SLACK_M
          || along_m > run->along_to_m + FLOAT_SLACK_M)
        break;
      if (out_m >= run->out_from_m - FLOAT_SLACK_M
          && out_m <= run->out_to_m + FLOAT_SLACK_M
          && out->pin_lengths[run->pin_length].need_m > out->pin_lengths[longest].need_m)
        longest = run->pin_length;
    }
  return longest;
}

/* Trench rows cross the runs and go by the ground they are driven in. */
static gboolean
belongs_to_run (guint8 role)
{
  return role != SW_PIN_KEY_TRENCH && role != SW_PIN_SLOT && role != SW_PIN_TOE;
}

void
sw_measure_pins (SwLaying *laying)
{
  gboolean worse = laying->job->zone_rule == SW_ZONE_WORSE;

  if (laying->face->zones->len == 0)
    return;
  for (guint i = 0; i < laying->pins->len; i++)
    {
      SwPinPlace *pin = &g_array_index (laying->pins, SwPinPlace, i);

      guint8 own = length_at (laying->face, pin);

      pin->length =
          worse && belongs_to_run (pin->role) ? length_of_runs (laying, pin, own) : own;
    }
}
