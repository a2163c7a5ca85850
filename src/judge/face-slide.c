/* SPDX-License-Identifier: MIT */
#include <math.h>
#include <slopewright/judge/face-slide.h>

static SwSourced
friction_of (const SwLayout *layout, const char *soil_id)
{
  const SwSoil *soil = sw_catalogue_soil (layout->catalogue, soil_id);

  return soil != NULL && soil->friction_rad.value > 0.0
             ? soil->friction_rad
             : (SwSourced){ NAN, SW_EVIDENCE_USER, NULL };
}

SwSourced
sw_face_friction (const SwLayout *layout, const SwFace *face)
{
  double typed = layout->job->numbers.values[SW_NUMBER_FRICTION_RAD];
  SwSourced least = friction_of (layout, face->soil_id);

  if (typed > 0.0)
    return (SwSourced){ typed, SW_EVIDENCE_USER, NULL };
  for (guint i = 0; i < face->zones->len; i++)
    {
      const SwZone *zone = g_ptr_array_index (face->zones, i);
      SwSourced own = friction_of (layout, zone->soil_id);

      if (!(own.value >= least.value))
        least = isnan (least.value) ? least : own;
    }
  return least;
}

static guint
steepest_tier (const SwFaceLayout *face)
{
  guint steepest = 0;

  for (guint i = 1; i < face->n_tiers; i++)
    if (face->tiers[i].steepest_rad > face->tiers[steepest].steepest_rad)
      steepest = i;
  return steepest;
}

gboolean
sw_face_slide (const SwLayout *layout, guint index, SwFaceSlide *slide)
{
  const SwFaceLayout *face = &layout->faces[index];
  const double *typed = layout->job->numbers.values;
  SwFaceSlide found = {
    .tier = steepest_tier (face),
    .friction_rad = sw_face_friction (layout, face->face),
    .weight_n_per_m3 =
        sw_job_site_number (layout->job, layout->catalogue, SW_NUMBER_SOIL_WEIGHT),
    .depth_m = typed[SW_NUMBER_SLIDE_DEPTH_M],
  };
  SwSlideSoil soil;

  if (typed[SW_NUMBER_FRICTION_RAD] > 0.0)
    found.cohesion_pa = typed[SW_NUMBER_COHESION_PA];
  found.angle_rad = face->tiers[found.tier].steepest_rad;
  soil = (SwSlideSoil){ .friction_rad = found.friction_rad.value,
                        .cohesion_pa = found.cohesion_pa,
                        .weight_n_per_m3 = found.weight_n_per_m3.value };
  if (sw_slide_screen (&soil, found.depth_m, face->tiers[found.tier].length_m,
                       found.angle_rad, &found.screen)
      != SW_OK)
    return FALSE;
  *slide = found;
  return TRUE;
}
