/* SPDX-License-Identifier: MIT */
#include "laying-facts.h"
#include <math.h>

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

/* A joint is where the upper of its two pieces ends. */
static void
stagger_less (SwJointFacts *facts, const SwLayout *layout, const SwRun *run,
              const SwRun *beside)
{
  const SwPiece *pieces = sw_layout_run_pieces (layout, run);
  const SwPiece *others = sw_layout_run_pieces (layout, beside);

  for (guint i = 0; i + 1 < run->n_pieces; i++)
    for (guint j = 0; j + 1 < beside->n_pieces; j++)
      {
        facts->pairs++;
        facts->least_stagger_m = fmin (facts->least_stagger_m,
                                       fabs (pieces[i].down_to_m - others[j].down_to_m));
      }
}

static void
look_along (SwJointFacts *facts, const SwLayout *layout, const SwRun *run, double lap_m)
{
  const SwPiece *pieces = sw_layout_run_pieces (layout, run);

  if (run->n_pieces < 2)
    return;
  for (guint i = 0; i < run->n_pieces; i++)
    facts->shortest_piece_m = fmin (facts->shortest_piece_m, pieces[i].length_m);
  for (guint i = 0; i + 1 < run->n_pieces; i++)
    {
      facts->joints++;
      facts->least_crest_m =
          fmin (facts->least_crest_m, pieces[i].down_to_m - lap_m - run->down_from_m);
      facts->least_toe_m =
          fmin (facts->least_toe_m, run->down_to_m - pieces[i].down_to_m);
    }
}

SwJointFacts
sw_joint_facts (const SwLayout *layout, guint face)
{
  const SwFaceLayout *laid = &layout->faces[face];
  SwJointFacts facts = { 0, 0, INFINITY, INFINITY, INFINITY, INFINITY };

  for (guint t = 0; t < laid->n_tiers; t++)
    {
      const SwTier *tier = &laid->tiers[t];
      const SwRun *first = laid->runs + tier->first_run;

      for (const SwRun *run = first; run < first + tier->n_runs; run++)
        {
          look_along (&facts, layout, run, tier->end_lap_m);
          for (const SwRun *r = run; r > first && r[-1].number >= run->number - 1; r--)
            if (r[-1].number == run->number - 1)
              stagger_less (&facts, layout, run, r - 1);
        }
    }
  return facts;
}
