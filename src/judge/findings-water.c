/* SPDX-License-Identifier: MIT */
#include "findings-private.h"
#include <math.h>
#include <slopewright/judge/face-flow.h>

/* Ends of the data behind RUSLE, as sw_ls_factor() flags them; Handbook 703. */
#define PLOTS_STEEPEST 0.18
#define TABLES_STEEPEST 0.60
#define LONG_FT 400.0
#define LONGEST_FT 1000.0

/* Sheets have gathered into threads by then; NRCS guidance after TR-55. */
#define SHEET_LONGEST_FT 100.0

static double
steepest_rad (const SwFallLine *line)
{
  double steepest = 0.0;

  for (guint i = 0; i < line->count; i++)
    steepest = fmax (steepest, line->segments[i].segment.angle_rad);
  return steepest;
}

static double
longest_m (const SwFallLine *line)
{
  double longest = 0.0;

  for (guint i = 0; i < line->count; i++)
    longest = fmax (longest, line->segments[i].to_m);
  return longest;
}

static gboolean
has_bench (const SwFallLine *line)
{
  for (guint i = 0; i < line->count; i++)
    if (line->segments[i].bench)
      return TRUE;
  return FALSE;
}

static void
judge_loss_gradient (GPtrArray *findings, const SwFaceLoss *loss, int face)
{
  gboolean tables = loss->limits & SW_LS_STEEPER_THAN_TABLES;
  SwFinding *finding;

  if (!(loss->limits & (SW_LS_STEEPER_THAN_PLOTS | SW_LS_STEEPER_THAN_TABLES)))
    return;
  finding =
      sw_finding_add (findings, tables ? SW_SEVERITY_CAUTION : SW_SEVERITY_NOTE,
                      tables ? "loss-beyond-tables" : "loss-beyond-plots", "", face, -1);
  sw_finding_number (finding, "gradient", steepest_rad (&loss->line), SW_UNIT_RAD);
  sw_finding_number (finding, "limit", atan (tables ? TABLES_STEEPEST : PLOTS_STEEPEST),
                     SW_UNIT_RAD);
}

static void
judge_loss_length (GPtrArray *findings, const SwFaceLoss *loss, int face)
{
  gboolean too_long = loss->limits & SW_LS_TOO_LONG;
  SwFinding *finding;

  if (!(loss->limits & (SW_LS_LONG | SW_LS_TOO_LONG)))
    return;
  finding = sw_finding_add (findings, too_long ? SW_SEVERITY_CAUTION : SW_SEVERITY_NOTE,
                            too_long ? "loss-too-long" : "loss-long", "F1", face, -1);
  sw_finding_number (finding, "length", longest_m (&loss->line), SW_UNIT_M);
  sw_finding_number (finding, "limit", (too_long ? LONGEST_FT : LONG_FT) * SW_M_PER_FT,
                     SW_UNIT_M);
}

static void
judge_loss (GPtrArray *findings, const SwLayout *layout, int face)
{
  SwFaceLoss loss;

  if (!sw_face_loss_init (&loss, layout, (guint) face))
    return;
  judge_loss_gradient (findings, &loss, face);
  judge_loss_length (findings, &loss, face);
  if (loss.limits & SW_LS_FLATTENS)
    sw_finding_add (findings, SW_SEVERITY_NOTE, "loss-flattens", "", face, -1);
  sw_face_loss_clear (&loss);
}

/* Why there is no soil loss line although R is given, and what was taken for granted. */
static void
judge_loss_inputs (GPtrArray *findings, const SwLayout *layout, const SwFallLine *line,
                   int face)
{
  if (!(sw_job_erosivity (layout->job) > 0.0))
    return;
  if (!isfinite (sw_face_erodibility (layout, layout->faces[face].face).value))
    sw_finding_add (findings, SW_SEVERITY_NOTE, "erodibility-missing", "", face, -1);
  if (layout->job->site[SW_SITE_RUN_ON] == SW_ANSWER_YES && !(line->run_on_m > 0.0))
    sw_finding_add (findings, SW_SEVERITY_NOTE, "loss-run-on", "F1", face, -1);
  if (has_bench (line) && !line->ponds
      && layout->job->numbers.bench_drained == SW_ANSWER_UNKNOWN)
    sw_finding_add (findings, SW_SEVERITY_NOTE, "bench-drain-unknown", "", face, -1);
}

/* What the water pulls against what the class takes; a design asks for more than equality. */
static void
judge_flow (GPtrArray *findings, const SwLayout *layout, int face)
{
  double takes_pa = layout->blanket->shear_pa.value;
  SwFinding *finding;
  SwFaceFlow flow;

  if (!sw_face_flow (layout, (guint) face, &flow))
    return;
  if (takes_pa < flow.flow.shear_pa)
    {
      finding =
          sw_finding_add (findings, SW_SEVERITY_CAUTION, "flow-shear", "F1", face, -1);
      sw_finding_number (finding, "shear", flow.flow.shear_pa, SW_UNIT_PA);
      sw_finding_number (finding, "takes", takes_pa, SW_UNIT_PA);
      sw_finding_number (finding, "rain", flow.rain_m_per_s, SW_UNIT_RAIN);
    }
  if (flow.flow.limits & SW_SHEET_TOO_LONG)
    {
      finding =
          sw_finding_add (findings, SW_SEVERITY_CAUTION, "flow-gathers", "F1", face, -1);
      sw_finding_number (finding, "length", flow.length_m / cos (flow.angle_rad),
                         SW_UNIT_M);
      sw_finding_number (finding, "limit", SHEET_LONGEST_FT * SW_M_PER_FT, SW_UNIT_M);
    }
  if (flow.flow.limits & (SW_SHEET_NOT_KINEMATIC | SW_SHEET_TOO_DEEP))
    {
      finding =
          sw_finding_add (findings, SW_SEVERITY_CAUTION, "flow-outside", "F1", face, -1);
      sw_finding_number (finding, "depth", flow.flow.depth_m, SW_UNIT_SMALL_M);
      sw_finding_number (finding, "kinematic", flow.flow.kinematic_number, SW_UNIT_COUNT);
    }
}

void
sw_judge_water (GPtrArray *findings, const SwLayout *layout)
{
  for (guint i = 0; i < layout->n_faces; i++)
    {
      SwFallLine line;

      sw_fall_line_init (&line, layout, i);
      if (line.ponds)
        sw_finding_add (findings, SW_SEVERITY_CAUTION, "bench-ponds", "F1", (int) i, -1);
      judge_loss_inputs (findings, layout, &line, (int) i);
      judge_loss (findings, layout, (int) i);
      judge_flow (findings, layout, (int) i);
      sw_fall_line_clear (&line);
    }
}
