/* SPDX-License-Identifier: MIT */
#include <math.h>
#include <slopewright/judge/face-loss.h>
#include <slopewright/judge/face-soil.h>
#include <string.h>

#define BARE_COVER 1.0
#define NO_SUPPORT 1.0 /* P: nothing but the slope itself holds water back */

static const char nomograph_source[] = "source.nomograph";

static const SwSourced not_known = { NAN, SW_EVIDENCE_USER, NULL };

double
sw_job_erosivity (const SwJob *job)
{
  double typed = job->numbers.values[SW_NUMBER_EROSIVITY];

  return job->numbers.loss_units == SW_LOSS_US ? typed * sw_erosivity_si_per_us ()
                                               : typed;
}

static SwSourced
erodibility_of (const SwJob *job, const SwSoil *soil)
{
  double typed = job->numbers.values[SW_NUMBER_ERODIBILITY];

  if (typed > 0.0)
    return (SwSourced){ job->numbers.loss_units == SW_LOSS_US
                            ? typed * sw_erodibility_si_per_us ()
                            : typed,
                        SW_EVIDENCE_USER, NULL };
  return soil != NULL && soil->erodibility.value > 0.0 ? soil->erodibility : not_known;
}

SwLsMethod
sw_job_ls_method (const SwJob *job)
{
  static const SwLsMethod methods[] = {
    [SW_RILLS_HIGH] = SW_LS_RUSLE_HIGH,
    [SW_RILLS_MODERATE] = SW_LS_RUSLE_MODERATE,
    [SW_RILLS_LOW] = SW_LS_RUSLE_LOW,
  };

  return methods[job->numbers.rills];
}

static gboolean
by_nomograph (const SwJob *job, const SwFace *face, SwSourced *k)
{
  *k = (SwSourced){ NAN, SW_EVIDENCE_DERIVED, (char *) nomograph_source };
  return !(job->numbers.values[SW_NUMBER_ERODIBILITY] > 0.0)
         && sw_face_nomograph (face, &k->value, NULL);
}

SwSourced
sw_face_erodibility (const SwLayout *layout, const SwFace *face)
{
  SwSourced worst;

  if (!by_nomograph (layout->job, face, &worst))
    worst = erodibility_of (layout->job,
                            sw_catalogue_soil (layout->catalogue, face->soil_id));

  for (guint i = 0; i < face->zones->len; i++)
    {
      const SwZone *zone = g_ptr_array_index (face->zones, i);
      SwSourced own = erodibility_of (
          layout->job, sw_catalogue_soil (layout->catalogue, zone->soil_id));

      if (!(own.value <= worst.value))
        worst = isnan (worst.value) ? worst : own;
    }
  return worst;
}

SwSourced
sw_job_cover (const SwJob *job, const SwBlanket *blanket)
{
  double typed = job->numbers.values[SW_NUMBER_COVER];

  if (typed > 0.0)
    return (SwSourced){ typed, SW_EVIDENCE_USER, NULL };
  return blanket->max_c.value > 0.0 ? blanket->max_c : not_known;
}

static SwStatus
find_ls (SwFaceLoss *loss)
{
  guint count = loss->line.count, above = loss->line.run_on_m > 0.0 ? 1 : 0;
  g_autofree SwLsSegment *segments = g_new (SwLsSegment, above + count);
  g_autofree double *ls = g_new (double, above + count);
  SwStatus status;

  for (guint i = 0; i < count; i++)
    segments[above + i] = loss->line.segments[i].segment;
  /* Its own loss is not asked for, only where it lets runoff begin. */
  if (above > 0)
    segments[0] =
        (SwLsSegment){ loss->line.run_on_m, fmax (0.0, segments[1].angle_rad), FALSE };
  status = sw_ls_segments (loss->method, segments, above + count, ls, &loss->limits);
  if (status == SW_OK)
    status =
        sw_ls_segments_mean (segments + above, count, ls + above, NULL, &loss->ls_mean);
  if (status == SW_OK)
    memcpy (loss->ls, ls + above, count * sizeof *ls);
  return status;
}

static gboolean
find_losses (SwFaceLoss *loss)
{
  double k = loss->erodibility.value;

  loss->covered_t_per_ha = loss->reduction = NAN;
  if (sw_soil_loss (loss->erosivity, k, loss->ls_mean, BARE_COVER, NO_SUPPORT,
                    &loss->bare_t_per_ha)
      != SW_OK)
    return FALSE;
  if (isfinite (loss->cover.value)
      && sw_soil_loss (loss->erosivity, k, loss->ls_mean, loss->cover.value, NO_SUPPORT,
                       &loss->covered_t_per_ha)
             == SW_OK)
    sw_soil_loss_reduction (BARE_COVER, loss->cover.value, &loss->reduction);
  loss->period_bare_t_per_ha = loss->share * loss->bare_t_per_ha;
  loss->period_covered_t_per_ha = loss->share * loss->covered_t_per_ha;
  return TRUE;
}

gboolean
sw_face_loss_init (SwFaceLoss *loss, const SwLayout *layout, guint index)
{
  const SwFace *face = layout->faces[index].face;
  double share = layout->job->numbers.values[SW_NUMBER_EROSIVITY_SHARE];
  SwFaceLoss found = {
    .method = sw_job_ls_method (layout->job),
    .share = share > 0.0 ? share : NAN,
    .erosivity = sw_job_erosivity (layout->job),
    .erodibility = sw_face_erodibility (layout, face),
    .cover = sw_job_cover (layout->job, layout->blanket),
  };

  found.nomograph = found.erodibility.source == nomograph_source;
  if (!(found.erosivity > 0.0) || !isfinite (found.erodibility.value))
    return FALSE;
  sw_fall_line_init (&found.line, layout, index);
  found.ls = g_new0 (double, found.line.count);
  if (find_ls (&found) != SW_OK || !find_losses (&found))
    {
      sw_face_loss_clear (&found);
      return FALSE;
    }
  *loss = found;
  return TRUE;
}

void
sw_face_loss_clear (SwFaceLoss *loss)
{
  sw_fall_line_clear (&loss->line);
  g_clear_pointer (&loss->ls, g_free);
}
