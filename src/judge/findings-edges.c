/* SPDX-License-Identifier: MIT */
#include "findings-private.h"
#include "laying-facts.h"
#include <slopewright/base/count.h>
#include <slopewright/judge/face-flow.h>

/* Sheets have gathered into threads by then; NRCS guidance after TR-55. */
#define SHEET_LONGEST_M (100.0 * SW_M_PER_FT)

#define LENGTH_TOLERANCE_M 1e-4

static double
practice (const SwLayout *layout, SwPracticeValue value)
{
  return sw_practice_get (layout->practice, value);
}

static gboolean
said (const SwLayout *layout, SwSiteQuestion question)
{
  return layout->job->site[question] == SW_ANSWER_YES;
}

/* Where rain is given, the sheet flow itself is looked at instead. */
static void
judge_stretch (GPtrArray *findings, const SwLayout *layout, int face, int tier)
{
  double stretch_m = sw_tier_stretch_m (&layout->faces[face].tiers[tier]);
  SwFaceFlow flow;
  SwFinding *finding;

  if (stretch_m <= SHEET_LONGEST_M + LENGTH_TOLERANCE_M
      || sw_face_flow (layout, (guint) face, &flow))
    return;
  finding =
      sw_finding_add (findings, SW_SEVERITY_CAUTION, "long-stretch", "F1", face, tier);
  sw_finding_number (finding, "length", stretch_m, SW_UNIT_M);
  sw_finding_number (finding, "limit", SHEET_LONGEST_M, SW_UNIT_M);
}

/* Sides are pinned, never buried: with water, animals or wind that is not enough. */
static void
judge_sides (GPtrArray *findings, const SwLayout *layout, int face)
{
  double edge_m = sw_side_edge_m (&layout->faces[face]);
  SwFinding *finding;

  if (!(edge_m > 0.0)
      || !(said (layout, SW_SITE_RUN_ON) || said (layout, SW_SITE_WILDLIFE)
           || said (layout, SW_SITE_WIND_EXPOSED)))
    return;
  finding = sw_finding_add (findings, SW_SEVERITY_CAUTION, "side-edges", "F5", face, -1);
  sw_finding_number (finding, "edge", edge_m, SW_UNIT_M);
  sw_finding_number (finding, "spacing", practice (layout, SW_PRACTICE_EDGE_PIN_M),
                     SW_UNIT_SMALL_M);
}

static void
judge_toe (GPtrArray *findings, const SwLayout *layout)
{
  SwFinding *finding;

  if (layout->practice->toe_kind != SW_TOE_ROW)
    return;
  finding = sw_finding_add (findings,
                            said (layout, SW_SITE_WATER_AT_TOE) ? SW_SEVERITY_CAUTION
                                                                : SW_SEVERITY_NOTE,
                            "toe-row", "F4", -1, -1);
  sw_finding_number (finding, "spacing", practice (layout, SW_PRACTICE_TOE_PIN_M),
                     SW_UNIT_SMALL_M);
}

/* Pins to close the longest run at the end of a day: a row along its open side and one
 * across its loose end. */
static int
closing_pins (const SwLayout *layout)
{
  double longest_m = 0.0, widest_m = 0.0;

  for (guint f = 0; f < layout->n_faces; f++)
    for (guint r = 0; r < layout->faces[f].n_runs; r++)
      {
        longest_m = MAX (longest_m, layout->faces[f].runs[r].terms.face);
        widest_m = MAX (widest_m, layout->faces[f].runs[r].width_m);
      }
  return sw_count_up (longest_m, practice (layout, SW_PRACTICE_SIDE_LAP_PIN_M)) + 1
         + sw_count_up (widest_m, practice (layout, SW_PRACTICE_END_LAP_PIN_M)) + 1;
}

static void
judge_wind (GPtrArray *findings, const SwLayout *layout)
{
  SwFinding *finding;

  if (!said (layout, SW_SITE_WIND_EXPOSED))
    return;
  finding = sw_finding_add (findings, SW_SEVERITY_CAUTION, "wind", "F6", -1, -1);
  sw_finding_number (finding, "side_lap", practice (layout, SW_PRACTICE_SIDE_LAP_M),
                     SW_UNIT_SMALL_M);
  sw_finding_number (finding, "pins", closing_pins (layout), SW_UNIT_COUNT);
}

/* A crew that has laid one face from the left takes the next from the left as well. */
static void
judge_starts (GPtrArray *findings, const SwLayout *layout)
{
  guint from[2] = { 0, 0 };
  SwFinding *finding;

  for (guint f = 0; f < layout->n_faces; f++)
    from[layout->faces[f].face->leeward]++;
  if (from[SW_SIDE_LEFT] == 0 || from[SW_SIDE_RIGHT] == 0)
    return;
  finding = sw_finding_add (findings, SW_SEVERITY_NOTE, "starts-differ", "F7", -1, -1);
  sw_finding_number (finding, "left", from[SW_SIDE_LEFT], SW_UNIT_COUNT);
  sw_finding_number (finding, "right", from[SW_SIDE_RIGHT], SW_UNIT_COUNT);
}

void
sw_judge_edges (GPtrArray *findings, const SwLayout *layout)
{
  for (guint f = 0; f < layout->n_faces; f++)
    {
      for (guint t = 0; t < layout->faces[f].n_tiers; t++)
        judge_stretch (findings, layout, (int) f, (int) t);
      judge_sides (findings, layout, (int) f);
    }
  judge_toe (findings, layout);
  judge_wind (findings, layout);
  judge_starts (findings, layout);
}
