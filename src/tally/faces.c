/* SPDX-License-Identifier: MIT */
#include "tally-private.h"
#include <math.h>
#include <slopewright/base/count.h>
#include <slopewright/tally/earthwork.h>
#include <string.h>

/* A face that fills its box but for this share is a rectangle; the rest is rounding. */
#define SAME_AREA 1e-9

/* What the workings of one tier have in common. */
typedef struct
{
  SwTally *tally;
  const SwLayout *layout;
  const SwFaceLayout *face;
  const SwTier *tier;
  guint tier_index;
  char *prefix; /* "A.1" */
} TierTally;

static const SwRun *
longest_run (const TierTally *t, gboolean infill)
{
  const SwRun *longest = NULL;

  for (guint i = t->tier->first_run; i < t->tier->first_run + t->tier->n_runs; i++)
    if (t->face->runs[i].infill == infill
        && (longest == NULL || t->face->runs[i].cut_m > longest->cut_m))
      longest = &t->face->runs[i];
  return longest;
}

/* One straight stretch of the fall line at @along_m. */
static void
add_stretch (const TierTally *t, SwWorking *working, double along_m, double out_from_m,
             double out_to_m)
{
  const SwGround *ground = t->face->ground;

  sw_working_measured (working, "run", out_to_m - out_from_m, SW_UNIT_M);
  sw_working_measured (working, "drop",
                       sw_ground_up_m (ground, (SwPoint){ along_m, out_from_m })
                           - sw_ground_up_m (ground, (SwPoint){ along_m, out_to_m }),
                       SW_UNIT_M);
}

/* The tier's part of the fall line where it is longest, stretch by stretch. */
static void
add_length (const TierTally *t, SwWorking *length)
{
  const SwGround *ground = t->face->ground;
  const SwTier *tier = t->tier;
  double along_m = tier->longest_at_m;
  double first_m = sw_ground_break_down_m (ground, tier->reach.from_break, along_m);
  double whole_m =
      sw_ground_break_down_m (ground, tier->reach.to_break, along_m) - first_m;
  double from_m = first_m + tier->share_from * whole_m;
  double to_m = first_m + tier->share_to * whole_m;
  double out_from_m = sw_ground_out_m (ground, along_m, from_m);

  for (guint i = tier->reach.from_break + 1; i < tier->reach.to_break; i++)
    {
      double down_m = sw_ground_break_down_m (ground, i, along_m);
      double out_m = sw_ground_break_out_m (ground, i, along_m);

      if (sw_ticks (down_m) <= sw_ticks (from_m) || sw_ticks (down_m) >= sw_ticks (to_m))
        continue;
      add_stretch (t, length, along_m, out_from_m, out_m);
      out_from_m = out_m;
    }
  add_stretch (t, length, along_m, out_from_m, sw_ground_out_m (ground, along_m, to_m));
}

/* Length times width is the area of a plain rectangle only; of other outlines it is a box
 * that the ground fills in part. */
static void
add_area (const TierTally *t, const SwWorking *length, const SwWorking *width)
{
  const SwTier *tier = t->tier;
  double box_m2 = tier->length_m * tier->width_m;
  gboolean plain = fabs (box_m2 - tier->net_m2) <= SAME_AREA * box_m2;
  SwWorking *area = sw_tally_add (
      t->tally, sw_working_new (plain ? "tier_area" : "tier_area_outline", tier->net_m2,
                                SW_UNIT_M2, SW_ROUNDING_NONE, "%s.net-area", t->prefix));

  sw_working_computed (area, "length", length);
  sw_working_computed (area, "width", width);
  if (!plain)
    sw_working_part (area, "share", tier->net_m2 / box_m2, SW_UNIT_PERCENT);
}

/* The outline less the obstacles that are large enough to be taken off. */
static void
add_area_less (const TierTally *t)
{
  const SwTier *tier = t->tier;
  SwWorking *area = sw_tally_add (
      t->tally, sw_working_new ("tier_area_less", tier->net_m2, SW_UNIT_M2,
                                SW_ROUNDING_NONE, "%s.net-area", t->prefix));

  sw_working_part (area, "outline", tier->net_m2 + tier->deducted_m2, SW_UNIT_M2);
  sw_working_part (area, "deducted", tier->deducted_m2, SW_UNIT_M2);
  sw_working_practice (area, "limit", t->layout->practice, SW_PRACTICE_DEDUCT_M2);
}

static void
add_shape (const TierTally *t)
{
  const SwTier *tier = t->tier;
  double middle_m = (tier->along_from_m + tier->along_to_m) / 2.0;
  SwWorking *length, *angle, *width;

  length =
      sw_tally_add (t->tally, sw_working_new ("tier_length", tier->length_m, SW_UNIT_M,
                                              SW_ROUNDING_NONE, "%s.length", t->prefix));
  add_length (t, length);
  angle = sw_tally_add (t->tally,
                        sw_working_new ("tier_gradient", tier->mean_rad, SW_UNIT_RAD,
                                        SW_ROUNDING_NONE, "%s.gradient", t->prefix));
  add_stretch (t, angle, middle_m,
               sw_ground_break_out_m (t->face->ground, tier->reach.from_break, middle_m),
               sw_ground_break_out_m (t->face->ground, tier->reach.to_break, middle_m));
  width =
      sw_tally_add (t->tally, sw_working_new ("tier_width", tier->width_m, SW_UNIT_M,
                                              SW_ROUNDING_NONE, "%s.width", t->prefix));
  sw_working_measured (width, "from", tier->along_from_m, SW_UNIT_M);
  sw_working_measured (width, "to", tier->along_to_m, SW_UNIT_M);
  sw_working_part (width, "stretch", tier->stretch, SW_UNIT_RATIO);
  if (tier->deducted_m2 > 0.0)
    add_area_less (t);
  else
    add_area (t, length, width);
}

static void
add_runs (const TierTally *t)
{
  const SwTier *tier = t->tier;
  double roll_m = t->layout->job->roll_width_m;
  char *width_name = g_strdup_printf ("%s.width", t->prefix);
  const SwWorking *width = sw_tally_working (t->tally, width_name);
  gboolean spread =
      tier->closed || (t->layout->job->surplus != SW_SURPLUS_TRIM && tier->strips > 1);
  SwWorking *runs, *lap;

  g_free (width_name);
  runs = sw_tally_add (t->tally,
                       sw_working_new (tier->closed ? "run_count_round" : "run_count",
                                       tier->strips, SW_UNIT_COUNT, SW_ROUNDING_UP,
                                       "%s.runs", t->prefix));
  sw_working_computed (runs, "width", width);
  sw_working_typed (runs, "roll", roll_m, SW_UNIT_M);
  sw_working_practice (runs, "lap", t->layout->practice, SW_PRACTICE_SIDE_LAP_M);
  lap = sw_tally_add (t->tally,
                      sw_working_new (tier->closed        ? "lap_round"
                                      : !spread           ? "lap_kept"
                                      : tier->narrow_last ? "lap_narrow"
                                                          : "lap_spread",
                                      tier->side_lap_m, SW_UNIT_SMALL_M, SW_ROUNDING_NONE,
                                      "%s.side-lap", t->prefix));
  if (spread)
    {
      sw_working_computed (lap, "runs", runs);
      sw_working_computed (lap, "width", width);
      sw_working_typed (lap, "roll", roll_m, SW_UNIT_M);
      if (tier->narrow_last)
        sw_working_typed (lap, "narrow", t->layout->job->narrow_width_m, SW_UNIT_M);
    }
  sw_working_practice (lap, "least", t->layout->practice, SW_PRACTICE_SIDE_LAP_M);
}

static void
add_cut_of (const TierTally *t, const SwRun *run, const char *name)
{
  SwWorking *cut = sw_tally_add (
      t->tally, sw_working_new (run->infill ? "cut_length_infill" : "cut_length",
                                run->cut_m, SW_UNIT_M, SW_ROUNDING_NONE, "%s", name));

  if (run->obstacle_above || run->infill_above)
    sw_working_part (cut, "set_back", run->terms.set_back, SW_UNIT_M);
  else
    sw_working_practice (cut, "set_back", t->layout->practice, SW_PRACTICE_SET_BACK_M);
  sw_working_part (cut, "key_lining", run->terms.key_lining, SW_UNIT_M);
  if (run->infill_above)
    sw_working_part (cut, "fold", run->terms.key_fold, SW_UNIT_M);
  else
    sw_working_practice (cut, "fold", t->layout->practice, SW_PRACTICE_TRENCH_FOLD_M);
  sw_working_part (cut, "face", run->terms.face, SW_UNIT_M);
  sw_working_part (cut, "slots", run->terms.slots, SW_UNIT_M);
  sw_working_part (cut, "end_laps", run->terms.end_laps, SW_UNIT_M);
  sw_working_part (cut, "toe", run->terms.toe, SW_UNIT_M);
}

/* One working where all runs of the kind are alike, else one a run. */
static void
add_cuts (const TierTally *t, gboolean infill)
{
  const SwRun *longest = longest_run (t, infill);
  g_autofree char *name =
      g_strdup_printf ("%s.%s", t->prefix, infill ? "infill-cut-length" : "cut-length");
  gboolean alike = TRUE;

  if (longest == NULL)
    return;
  add_cut_of (t, longest, name);
  for (guint i = t->tier->first_run; i < t->tier->first_run + t->tier->n_runs; i++)
    if (t->face->runs[i].infill == infill
        && sw_ticks (t->face->runs[i].cut_m) != sw_ticks (longest->cut_m))
      alike = FALSE;
  for (guint i = t->tier->first_run; !alike && i < t->tier->first_run + t->tier->n_runs;
       i++)
    {
      const SwRun *run = &t->face->runs[i];
      g_autofree char *label = sw_run_label (run);
      g_autofree char *own =
          g_strdup_printf ("%s.run.%s.cut-length", t->face->face->id, label);

      if (run->infill == infill)
        add_cut_of (t, run, own);
    }
}

/* Where infill ends, how many runs are infill, and what they save against full runs. */
static void
add_infill (const TierTally *t)
{
  const SwTier *tier = t->tier;
  const SwRun *longest = longest_run (t, TRUE), *full = longest_run (t, FALSE);
  double roll_m = t->layout->job->roll_width_m, saved_m = 0.0, laid_m = 0.0;
  SwWorking *end, *runs, *saving;

  runs = sw_tally_add (t->tally,
                       sw_working_new ("infill_runs", tier->infill, SW_UNIT_COUNT,
                                       SW_ROUNDING_NONE, "%s.infill-runs", t->prefix));
  sw_working_part (runs, "all", tier->strips, SW_UNIT_COUNT);
  sw_working_part (runs, "full", tier->strips - tier->infill, SW_UNIT_COUNT);
  end = sw_tally_add (
      t->tally,
      sw_working_new (longest->infill_below ? "infill_end_bowl" : "infill_end_nose",
                      longest->infill_below ? longest->down_to_m : longest->down_from_m,
                      SW_UNIT_M, SW_ROUNDING_NONE, "%s.infill-end", t->prefix));
  sw_working_typed (end, "roll", roll_m, SW_UNIT_M);
  sw_working_practice (end, "least", t->layout->practice, SW_PRACTICE_SIDE_LAP_M);
  sw_working_part (end, "lap", tier->side_lap_m, SW_UNIT_SMALL_M);
  sw_working_part (end, "end_lap", tier->end_lap_m, SW_UNIT_SMALL_M);
  add_cuts (t, TRUE);
  for (guint i = tier->first_run; i < tier->first_run + tier->n_runs; i++)
    if (t->face->runs[i].infill)
      {
        saved_m += full->cut_m - t->face->runs[i].cut_m;
        laid_m += t->face->runs[i].cut_m;
      }
  saving = sw_tally_add (t->tally, sw_working_new ("infill_saving", saved_m, SW_UNIT_M,
                                                   SW_ROUNDING_NONE, "%s.infill-saving",
                                                   t->prefix));
  sw_working_part (saving, "full", saved_m + laid_m, SW_UNIT_M);
  sw_working_part (saving, "laid", laid_m, SW_UNIT_M);
}

static double
trench_length_m (const TierTally *t, SwTrenchKind kind)
{
  double length_m = 0.0;

  for (guint i = 0; i < t->face->n_trenches; i++)
    if (t->face->trenches[i].kind == kind && t->face->trenches[i].tier == t->tier_index)
      length_m += t->face->trenches[i].length_m;
  return length_m;
}

static void
add_trench (const TierTally *t, SwTrenchKind kind, const char *name,
            SwPracticeValue depth, SwPracticeValue width)
{
  double length_m = trench_length_m (t, kind);
  const SwPractice *practice = t->layout->practice;
  SwWorking *length, *volume;

  if (length_m <= 0.0)
    return;
  length = sw_tally_add (t->tally,
                         sw_working_new ("trench_length", length_m, SW_UNIT_M,
                                         SW_ROUNDING_NONE, "%s.%s", t->prefix, name));
  sw_working_measured (length, "length", length_m, SW_UNIT_M);
  volume =
      sw_tally_add (t->tally, sw_working_new ("trench_volume",
                                              length_m * sw_practice_get (practice, depth)
                                                  * sw_practice_get (practice, width),
                                              SW_UNIT_M3, SW_ROUNDING_NONE,
                                              "%s.%s-volume", t->prefix, name));
  sw_working_computed (volume, "length", length);
  sw_working_practice (volume, "depth", practice, depth);
  sw_working_practice (volume, "width", practice, width);
}

static void
add_trenches (const TierTally *t)
{
  add_trench (t, SW_TRENCH_KEY, "key-trench", SW_PRACTICE_TRENCH_DEPTH_M,
              SW_PRACTICE_TRENCH_WIDTH_M);
  add_trench (t, SW_TRENCH_SLOT, "slots", SW_PRACTICE_SLOT_DEPTH_M,
              SW_PRACTICE_SLOT_WIDTH_M);
  if (t->layout->practice->toe_kind == SW_TOE_TRENCH)
    add_trench (t, SW_TRENCH_TOE, "toe-trench", SW_PRACTICE_TOE_DEPTH_M,
                SW_PRACTICE_TOE_WIDTH_M);
  t->tally->key_trench_m += trench_length_m (t, SW_TRENCH_KEY);
  t->tally->slot_m += trench_length_m (t, SW_TRENCH_SLOT);
  if (t->layout->practice->toe_kind == SW_TOE_TRENCH)
    t->tally->toe_trench_m += trench_length_m (t, SW_TRENCH_TOE);
}

static void
add_spoil (SwTally *tally, const SwLayout *layout, const SwFaceLayout *face)
{
  const SwSoil *soil = sw_catalogue_soil (layout->catalogue, face->face->soil_id);
  double bank_m3 = 0.0, loose_m3 = 0.0;
  SwWorking *bank, *loose;

  for (guint i = 0; i < face->n_trenches; i++)
    bank_m3 += face->trenches[i].volume_m3;
  if (sw_loose_volume (bank_m3, soil->swell.value, &loose_m3) != SW_OK)
    return;
  bank =
      sw_tally_add (tally, sw_working_new ("spoil_bank", bank_m3, SW_UNIT_M3,
                                           SW_ROUNDING_NONE, "%s.spoil", face->face->id));
  for (guint i = 0; i < tally->workings->len; i++)
    {
      const SwWorking *part = g_ptr_array_index (tally->workings, i);

      if (g_str_equal (part->formula, "trench_volume")
          && g_str_has_prefix (part->name, face->face->id)
          && part->name[strlen (face->face->id)] == '.')
        sw_working_computed (bank, "trench", part);
    }
  loose = sw_tally_add (tally, sw_working_new ("spoil_loose", loose_m3, SW_UNIT_M3,
                                               SW_ROUNDING_NONE, "%s.spoil-loose",
                                               face->face->id));
  sw_working_computed (loose, "bank", bank);
  sw_working_sourced (loose, "swell", &soil->swell, SW_UNIT_PERCENT);
  tally->trench_bank_m3 += bank_m3;
  tally->trench_loose_m3 += loose_m3;
}

/* A patch a side of the slit that lets the obstacle through; from off-cuts, so no rolls. */
static void
add_collars (SwTally *tally, const SwLayout *layout, const SwFaceLayout *face)
{
  double collar_m2 = 0.0, around_m = 0.0;
  int collars = 0;
  SwWorking *working;

  for (guint i = 0; i < face->n_obstacles; i++)
    if (face->obstacles[i].standing)
      {
        collar_m2 += face->obstacles[i].collar_m2;
        around_m += face->obstacles[i].around_m;
        collars++;
      }
  if (collars == 0)
    return;
  working = sw_tally_add (tally, sw_working_new ("collar_area", collar_m2, SW_UNIT_M2,
                                                 SW_ROUNDING_NONE, "%s.collars",
                                                 face->face->id));
  sw_working_part (working, "obstacles", collars, SW_UNIT_COUNT);
  sw_working_part (working, "around", around_m, SW_UNIT_M);
  sw_working_practice (working, "overlap", layout->practice, SW_PRACTICE_COLLAR_M);
  tally->collars += collars;
  tally->collar_m2 += collar_m2;
}

void
sw_tally_faces (SwTally *tally, const SwLayout *layout)
{
  for (guint f = 0; f < layout->n_faces; f++)
    {
      const SwFaceLayout *face = &layout->faces[f];

      for (guint i = 0; i < face->n_tiers; i++)
        {
          g_autofree char *prefix = g_strdup_printf ("%s.%u", face->face->id, i + 1);
          TierTally t = { tally, layout, face, &face->tiers[i], i, prefix };

          add_shape (&t);
          add_runs (&t);
          add_cuts (&t, FALSE);
          if (t.tier->infill > 0)
            add_infill (&t);
          add_trenches (&t);
          tally->areas.net_m2 += face->tiers[i].net_m2;
        }
      add_spoil (tally, layout, face);
      add_collars (tally, layout, face);
      tally->runs += (int) face->n_runs;
      for (guint r = 0; r < face->n_runs; r++)
        tally->infill_runs += face->runs[r].infill;
    }
}
