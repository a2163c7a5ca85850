/* SPDX-License-Identifier: MIT */
#include "judge-workings.h"
#include <math.h>
#include <slopewright/judge/face-loss.h>

/* Length of the plot that LS compares with, and below which no rills form. */
#define UNIT_PLOT_M (72.6 * SW_M_PER_FT)

/* Length of the whole stretch that the runoff of segment @index passes. */
static double
stretch_m (const SwFallLine *line, guint index)
{
  while (index + 1 < line->count && line->segments[index + 1].from_m > 0.0)
    index++;
  return line->segments[index].to_m;
}

static SwWorking *
add_segment (SwTally *tally, const char *face, const SwFaceLoss *loss, guint index)
{
  const SwFallSegment *here = &loss->line.segments[index];
  double angle_rad = fabs (here->segment.angle_rad), whole_m, s = 0.0, m = 0.0;
  gboolean is_short;
  SwWorking *ls;

  whole_m = stretch_m (&loss->line, index);
  is_short = sw_ls_limits (whole_m, angle_rad) & SW_LS_SHORT;
  ls = sw_judge_append (tally,
                        sw_working_new (is_short ? "ls_short" : "ls_segment",
                                        loss->ls[index], SW_UNIT_FACTOR, SW_ROUNDING_NONE,
                                        "%s.ls.%u", face, index + 1));
  sw_working_measured (ls, "gradient", angle_rad, SW_UNIT_RAD);
  if (is_short)
    {
      sw_working_measured (ls, "length", whole_m, SW_UNIT_M);
      return ls;
    }
  sw_steepness_factor (SW_LS_RUSLE_HIGH, angle_rad, &s);
  sw_length_exponent (SW_LS_RUSLE_HIGH, angle_rad, &m);
  sw_working_measured (ls, "from", here->from_m, SW_UNIT_M);
  sw_working_measured (ls, "to", here->to_m, SW_UNIT_M);
  sw_working_part (ls, "steepness", s, SW_UNIT_FACTOR);
  sw_working_part (ls, "exponent", m, SW_UNIT_FACTOR);
  sw_working_part (ls, "plot", UNIT_PLOT_M, SW_UNIT_M);
  return ls;
}

static SwWorking *
add_ls (SwTally *tally, const char *face, const SwFaceLoss *loss)
{
  g_autofree SwWorking **segments = g_new0 (SwWorking *, loss->line.count);
  SwWorking *ls;

  for (guint i = 0; i < loss->line.count; i++)
    segments[i] = add_segment (tally, face, loss, i);
  ls = sw_judge_append (tally, sw_working_new ("ls", loss->ls_mean, SW_UNIT_FACTOR,
                                               SW_ROUNDING_NONE, "%s.ls", face));
  for (guint i = 0; i < loss->line.count; i++)
    {
      sw_working_computed (ls, "ls", segments[i]);
      sw_working_measured (ls, "stretch_length", loss->line.segments[i].segment.length_m,
                           SW_UNIT_M);
    }
  sw_working_measured (ls, "length", loss->line.length_m, SW_UNIT_M);
  return ls;
}

static void
add_losses (SwTally *tally, const char *face, const SwFaceLoss *loss)
{
  SwWorking *ls = add_ls (tally, face, loss), *bare, *covered, *reduction;

  bare = sw_judge_append (tally, sw_working_new ("soil_loss_bare", loss->bare_t_per_ha,
                                                 SW_UNIT_LOSS, SW_ROUNDING_NONE,
                                                 "%s.soil-loss-bare", face));
  sw_working_typed (bare, "erosivity", loss->erosivity, SW_UNIT_EROSIVITY);
  sw_judge_sourced (bare, "erodibility", &loss->erodibility, SW_UNIT_ERODIBILITY);
  sw_working_computed (bare, "ls", ls);
  if (!isfinite (loss->covered_t_per_ha))
    return;
  covered = sw_judge_append (
      tally, sw_working_new ("soil_loss_covered", loss->covered_t_per_ha, SW_UNIT_LOSS,
                             SW_ROUNDING_NONE, "%s.soil-loss-covered", face));
  sw_working_computed (covered, "bare", bare);
  sw_judge_sourced (covered, "cover", &loss->cover, SW_UNIT_FACTOR);
  reduction = sw_judge_append (
      tally, sw_working_new ("soil_loss_reduction", loss->reduction, SW_UNIT_PERCENT,
                             SW_ROUNDING_NONE, "%s.soil-loss-reduction", face));
  sw_judge_sourced (reduction, "cover", &loss->cover, SW_UNIT_FACTOR);
}

void
sw_judge_loss_workings (SwTally *tally, const SwLayout *layout)
{
  for (guint i = 0; i < layout->n_faces; i++)
    {
      SwFaceLoss loss;

      if (!sw_face_loss_init (&loss, layout, i))
        continue;
      add_losses (tally, layout->faces[i].face->id, &loss);
      sw_face_loss_clear (&loss);
    }
}
