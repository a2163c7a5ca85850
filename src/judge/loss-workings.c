/* SPDX-License-Identifier: MIT */
#include "judge-workings.h"
#include <math.h>
#include <slopewright/judge/face-loss.h>
#include <slopewright/judge/face-soil.h>

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
  sw_steepness_factor (loss->method, angle_rad, &s);
  sw_length_exponent (loss->method, angle_rad, &m);
  if (index == 0 && here->from_m > 0.0)
    sw_working_typed (ls, "from", here->from_m, SW_UNIT_M);
  else
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

static SwWorking *
add_nomograph (SwTally *tally, const SwFace *face, const SwFaceLoss *loss)
{
  const SwSoilTest *test = &face->soil_test;
  SwWorking *k = sw_judge_append (
      tally,
      sw_working_new ("erodibility_nomograph", loss->erodibility.value,
                      SW_UNIT_ERODIBILITY, SW_ROUNDING_NONE, "%s.erodibility", face->id));

  sw_working_typed (k, "silt", test->silt, SW_UNIT_PERCENT);
  sw_working_typed (k, "fine_sand", test->fine_sand, SW_UNIT_PERCENT);
  sw_working_typed (k, "clay", test->clay, SW_UNIT_PERCENT);
  sw_working_typed (k, "organic", test->organic, SW_UNIT_PERCENT);
  sw_working_typed (k, "structure", test->structure, SW_UNIT_COUNT);
  sw_working_typed (k, "permeability", test->permeability, SW_UNIT_COUNT);
  return k;
}

/* The part of a year that the job looks at. */
static void
add_period (SwTally *tally, const char *face, const SwFaceLoss *loss,
            const SwWorking *year, const char *name, double value)
{
  SwWorking *period;

  if (!isfinite (value))
    return;
  period = sw_judge_append (tally, sw_working_new ("soil_loss_period", value,
                                                   SW_UNIT_LOSS_IN_TIME, SW_ROUNDING_NONE,
                                                   "%s.%s", face, name));
  sw_working_computed (period, "year", year);
  sw_working_typed (period, "part_of_r", loss->share, SW_UNIT_PERCENT);
}

static void
add_losses (SwTally *tally, const SwFace *of_face, const SwFaceLoss *loss)
{
  const char *face = of_face->id;
  SwWorking *ls = add_ls (tally, face, loss), *bare, *covered, *reduction;
  SwWorking *k = loss->nomograph ? add_nomograph (tally, of_face, loss) : NULL;

  bare = sw_judge_append (tally, sw_working_new ("soil_loss_bare", loss->bare_t_per_ha,
                                                 SW_UNIT_LOSS, SW_ROUNDING_NONE,
                                                 "%s.soil-loss-bare", face));
  sw_working_typed (bare, "erosivity", loss->erosivity, SW_UNIT_EROSIVITY);
  if (k != NULL)
    sw_working_computed (bare, "erodibility", k);
  else
    sw_judge_sourced (bare, "erodibility", &loss->erodibility, SW_UNIT_ERODIBILITY);
  sw_working_computed (bare, "ls", ls);
  add_period (tally, face, loss, bare, "soil-loss-bare-period",
              loss->period_bare_t_per_ha);
  if (!isfinite (loss->covered_t_per_ha))
    return;
  covered = sw_judge_append (
      tally, sw_working_new ("soil_loss_covered", loss->covered_t_per_ha, SW_UNIT_LOSS,
                             SW_ROUNDING_NONE, "%s.soil-loss-covered", face));
  sw_working_computed (covered, "bare", bare);
  sw_judge_sourced (covered, "cover", &loss->cover, SW_UNIT_FACTOR);
  add_period (tally, face, loss, covered, "soil-loss-covered-period",
              loss->period_covered_t_per_ha);
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
      add_losses (tally, layout->faces[i].face, &loss);
      sw_face_loss_clear (&loss);
    }
}
