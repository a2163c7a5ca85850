/* SPDX-License-Identifier: MIT */
#include "findings-private.h"
#include "laying-facts.h"
#include <math.h>
#include <slopewright/base/count.h>

/* Lengths of the layout are good to a tenth of a millimetre. */
#define LENGTH_TOLERANCE_M 1e-4

static double
practice (const SwLayout *layout, SwPracticeValue value)
{
  return sw_practice_get (layout->practice, value);
}

/* Joints and slots are worth a look while laying. */
static void
judge_tier (GPtrArray *findings, const SwLayout *layout, int face_index, int index)
{
  const SwFaceLayout *face = &layout->faces[face_index];
  const SwTier *tier = &face->tiers[index];
  guint joints = 0;
  SwFinding *finding;

  for (guint r = tier->first_run; r < tier->first_run + tier->n_runs; r++)
    joints += face->runs[r].n_pieces - 1;
  if (joints > 0)
    {
      finding =
          sw_finding_add (findings, SW_SEVERITY_NOTE, "joints", "F8", face_index, index);
      sw_finding_number (finding, "joints", joints, SW_UNIT_COUNT);
      sw_finding_number (finding, "end_lap", tier->end_lap_m, SW_UNIT_SMALL_M);
    }
  if (tier->infill > 0)
    {
      finding =
          sw_finding_add (findings, SW_SEVERITY_NOTE, "infill", "", face_index, index);
      sw_finding_number (finding, "infill", tier->infill, SW_UNIT_COUNT);
    }
  if (tier->slots > 0)
    {
      finding =
          sw_finding_add (findings, SW_SEVERITY_NOTE, "slots", "F1", face_index, index);
      sw_finding_number (finding, "slots", tier->slots, SW_UNIT_COUNT);
    }
}

/* Where a blanket hangs free over a hollow, and the row of pins that holds it down. */
static void
judge_hollow (GPtrArray *findings, const SwLayout *layout, int face_index, int index)
{
  const SwFaceLayout *face = &layout->faces[face_index];
  const SwTier *tier = &face->tiers[index];
  SwHollow hollow = sw_sharpest_hollow (face, &tier->reach);
  SwFinding *finding;

  if (!(hollow.bend_rad > SW_HOLLOW_RAD))
    return;
  finding =
      sw_finding_add (findings, SW_SEVERITY_CAUTION, "bridging", "F2", face_index, index);
  sw_finding_number (finding, "bend", hollow.bend_rad, SW_UNIT_ANGLE);
  sw_finding_number (finding, "down", hollow.down_m, SW_UNIT_M);
  sw_finding_number (finding, "spacing", tier->pin_across_m, SW_UNIT_SMALL_M);
  sw_finding_number (finding, "pins", sw_count_up (tier->width_m, tier->pin_across_m) + 1,
                     SW_UNIT_COUNT);
}

/* Where nothing else is left, a joint is made beside its neighbour's. */
static void
judge_joints (GPtrArray *findings, const SwLayout *layout, int face)
{
  double is_m = sw_joint_facts (layout, (guint) face).least_stagger_m;
  double asked_m = practice (layout, SW_PRACTICE_JOINT_STAGGER_M);
  SwFinding *finding;

  if (!(is_m < asked_m - LENGTH_TOLERANCE_M))
    return;
  finding =
      sw_finding_add (findings, SW_SEVERITY_CAUTION, "joints-in-line", "F8", face, -1);
  sw_finding_number (finding, "is", is_m, SW_UNIT_M);
  sw_finding_number (finding, "asked", asked_m, SW_UNIT_M);
}

void
sw_judge_laying (GPtrArray *findings, const SwLayout *layout)
{
  for (guint f = 0; f < layout->n_faces; f++)
    {
      for (guint t = 0; t < layout->faces[f].n_tiers; t++)
        {
          judge_tier (findings, layout, (int) f, (int) t);
          judge_hollow (findings, layout, (int) f, (int) t);
        }
      judge_joints (findings, layout, (int) f);
    }
}
