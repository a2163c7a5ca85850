/* SPDX-License-Identifier: MIT */
#include "laying-facts.h"
#include <math.h>
#include <slopewright/judge/due-dates.h>
#include <slopewright/judge/sowing-window.h>

static double
bend_rad (const SwPoint *p)
{
  double before = atan2 (p[-1].y_m - p[0].y_m, p[0].x_m - p[-1].x_m);
  double after = atan2 (p[0].y_m - p[1].y_m, p[1].x_m - p[0].x_m);

  return before - after;
}

static void
bend_more (SwHollow *hollow, const SwFaceLayout *face, const SwReach *reach,
           const SwPoint *section, double along_m)
{
  for (guint i = reach->from_break + 1; i < reach->to_break; i++)
    if (bend_rad (section + i) > hollow->bend_rad)
      *hollow = (SwHollow){ bend_rad (section + i),
                            sw_ground_break_down_m (face->ground, i, along_m) };
}

SwHollow
sw_sharpest_hollow (const SwFaceLayout *face, const SwReach *reach)
{
  SwHollow hollow = { 0.0, 0.0 };

  bend_more (&hollow, face, reach, face->face->section, face->face->section_along_m);
  for (guint i = 0; i < face->face->n_further; i++)
    bend_more (&hollow, face, reach, face->face->further[i].section,
               face->face->further[i].along_m);
  return hollow;
}

double
sw_tier_stretch_m (const SwTier *tier)
{
  return tier->length_m / (tier->slots + 1);
}

double
sw_side_edge_m (const SwFaceLayout *face)
{
  double edge_m = 0.0;

  for (guint t = 0; t < face->n_tiers; t++)
    {
      const SwTier *tier = &face->tiers[t];
      const SwRun *runs = face->runs + tier->first_run;

      if (tier->closed || tier->n_runs == 0)
        continue;
      for (guint r = 0; r < tier->n_runs; r++)
        edge_m += runs[r].terms.face
                  * ((runs[r].number == runs[0].number)
                     + (runs[r].number == runs[tier->n_runs - 1].number));
    }
  return edge_m;
}

double
sw_face_steepest_rad (const SwFaceLayout *face)
{
  double steepest_rad = 0.0;

  for (guint t = 0; t < face->n_tiers; t++)
    steepest_rad = fmax (steepest_rad, face->tiers[t].steepest_rad);
  return steepest_rad;
}

double
sw_steepest_rad (const SwLayout *layout)
{
  double steepest_rad = 0.0;

  for (guint f = 0; f < layout->n_faces; f++)
    steepest_rad = fmax (steepest_rad, sw_face_steepest_rad (&layout->faces[f]));
  return steepest_rad;
}

double
sw_fall_height_m (const SwFaceLayout *face)
{
  const SwFace *said = face->face;
  double height_m = said->section[said->crest].y_m - said->section[said->toe].y_m;

  for (guint i = 0; i < said->n_further; i++)
    height_m = fmax (height_m, said->further[i].section[said->crest].y_m
                                   - said->further[i].section[said->toe].y_m);
  return height_m;
}

double
sw_deepest_trench_m (const SwLayout *layout)
{
  double depth_m = 0.0;

  for (guint f = 0; f < layout->n_faces; f++)
    for (guint i = 0; i < layout->faces[f].n_trenches; i++)
      depth_m = fmax (depth_m, layout->faces[f].trenches[i].depth_m);
  return depth_m;
}

/* A joint is where the upper of its two pieces ends. */
static void
stagger_less (SwJointFacts *facts, const SwLayout *layout, const SwRun *run,
              const SwRun *beside)
{
  const SwPiece *pieces = sw_layout_run_pieces (layout, run);
  const SwPiece *others = sw_layout_run_pieces (layout, beside);

  for (guint i = 0; i + 1 < run->n_pieces; i++)
    for (guint j = 0; j + 1 < beside->n_pieces; j++)
      facts->least_stagger_m =
          fmin (facts->least_stagger_m, fabs (pieces[i].down_to_m - others[j].down_to_m));
}

static double
shortest_piece_m (const SwLayout *layout, const SwRun *run)
{
  const SwPiece *pieces = sw_layout_run_pieces (layout, run);
  double shortest_m = INFINITY;

  for (guint i = 0; run->n_pieces > 1 && i < run->n_pieces; i++)
    shortest_m = fmin (shortest_m, pieces[i].length_m);
  return shortest_m;
}

SwJointFacts
sw_joint_facts (const SwLayout *layout, guint face)
{
  const SwFaceLayout *laid = &layout->faces[face];
  SwJointFacts facts = { INFINITY, INFINITY };

  for (guint t = 0; t < laid->n_tiers; t++)
    {
      const SwTier *tier = &laid->tiers[t];
      const SwRun *first = laid->runs + tier->first_run;

      for (const SwRun *run = first; run < first + tier->n_runs; run++)
        {
          facts.shortest_piece_m =
              fmin (facts.shortest_piece_m, shortest_piece_m (layout, run));
          for (const SwRun *r = run; r > first && r[-1].number >= run->number - 1; r--)
            if (r[-1].number == run->number - 1)
              stagger_less (&facts, layout, run, r - 1);
        }
    }
  return facts;
}

SwAnswer
sw_sown_in_season (const SwJob *job)
{
  static const SwAnswer said[] = { [SW_ANSWER_UNKNOWN] = SW_ANSWER_UNKNOWN,
                                   [SW_ANSWER_NO] = SW_ANSWER_YES,
                                   [SW_ANSWER_YES] = SW_ANSWER_NO };
  SwSowingWindow window;
  GDate installed;

  if (!sw_sowing_window (job, &window) || !sw_install_date (job, &installed))
    return said[job->site[SW_SITE_LATE_SOWING]];
  return sw_sowing_window_holds (&window, &installed) ? SW_ANSWER_YES : SW_ANSWER_NO;
}
