/* SPDX-License-Identifier: MIT */
#include "layout-private.h"
#include <math.h>
#include <slopewright/base/count.h>
#include <slopewright/layout/cutting.h>

/* Whole runs out of fresh rolls; a fresh roll for each piece of runs longer than a roll. */
static int
count_naive_tier (const SwLayout *layout, const SwFaceLayout *face, const SwTier *tier)
{
  double longest_m = 0.0;
  int pieces = 0, each;

  for (guint r = tier->first_run; r < tier->first_run + tier->n_runs; r++)
    {
      longest_m = fmax (longest_m, face->runs[r].cut_m);
      pieces += (int) face->runs[r].n_pieces;
    }
  each = tier->n_runs > 0 ? sw_count_whole (layout->job->roll_length_m, longest_m) : 0;
  return each > 0 ? ((int) tier->n_runs + each - 1) / each : pieces;
}

/* What a tape and a flat rule would order, face by face and tier by tier. */
static int
count_naive (const SwLayout *layout)
{
  int rolls = 0;

  for (guint f = 0; f < layout->n_faces; f++)
    for (guint t = 0; t < layout->faces[f].n_tiers; t++)
      rolls += count_naive_tier (layout, &layout->faces[f], &layout->faces[f].tiers[t]);
  return rolls;
}

static SwCutting *
plan (const SwLayout *layout, const GArray *pieces)
{
  g_autofree gint64 *ticks = g_new (gint64, pieces->len);

  for (guint i = 0; i < pieces->len; i++)
    ticks[i] = sw_ticks (g_array_index (pieces, SwPiece, i).length_m);
  return sw_cutting_new (ticks, pieces->len, sw_ticks (layout->job->roll_length_m));
}

/* A set of pieces and the rolls they come from. */
typedef struct
{
  GArray *pieces; /* each with its roll */
  int rolls;
} Option;

/* The better of the cutting plan and the rolls as the pieces were cut one after the other. */
static SwStatus
work_out (SwLayout *layout, gboolean save, Option *option)
{
  SwStatus status = sw_cut_pieces (layout, save, option->pieces);
  g_autoptr (SwCutting) cutting = NULL;

  if (status != SW_OK)
    return status;
  option->rolls = g_array_index (option->pieces, SwPiece, option->pieces->len - 1).roll;
  cutting = plan (layout, option->pieces);
  if (cutting == NULL)
    return SW_E_ROLL;
  if (cutting->rolls < option->rolls)
    {
      option->rolls = cutting->rolls;
      for (guint i = 0; i < option->pieces->len; i++)
        g_array_index (option->pieces, SwPiece, i).roll = cutting->roll_of[i];
    }
  layout->rolls_bound = cutting->bound;
  return SW_OK;
}

/* Rolls get their numbers in the order in which the crew opens them. */
static void
number_rolls (SwLayout *layout)
{
  g_autofree int *number_of = g_new0 (int, layout->rolls + 1);
  g_autofree gint64 *used = g_new0 (gint64, layout->rolls + 1);
  gint64 capacity = sw_ticks (layout->job->roll_length_m);
  int next = 1;

  for (guint i = 0; i < layout->n_pieces; i++)
    {
      SwPiece *piece = &layout->pieces[i];

      if (number_of[piece->roll] == 0)
        number_of[piece->roll] = next++;
      piece->roll = number_of[piece->roll];
      piece->from_m = (double) used[piece->roll] / SW_TICKS_PER_M;
      used[piece->roll] += sw_ticks (piece->length_m);
    }
  layout->offcuts_m = g_new (double, layout->rolls);
  for (int i = 0; i < layout->rolls; i++)
    layout->offcuts_m[i] = (double) (capacity - used[i + 1]) / SW_TICKS_PER_M;
}

/* Runs point at their pieces and carry their end laps. */
static void
settle_runs (SwLayout *layout)
{
  for (guint f = 0; f < layout->n_faces; f++)
    for (guint r = 0; r < layout->faces[f].n_runs; r++)
      layout->faces[f].runs[r].n_pieces = 0;
  for (guint i = 0; i < layout->n_pieces; i++)
    {
      SwRun *run = &layout->faces[layout->pieces[i].face].runs[layout->pieces[i].run];

      if (run->n_pieces++ == 0)
        run->first_piece = i;
    }
  for (guint f = 0; f < layout->n_faces; f++)
    for (guint r = 0; r < layout->faces[f].n_runs; r++)
      {
        SwRun *run = &layout->faces[f].runs[r];

        run->terms.end_laps =
            (run->n_pieces - 1) * layout->faces[f].tiers[run->tier].end_lap_m;
        run->cut_m += run->terms.end_laps;
      }
}

/* Where runs are joined, other joints might have saved a roll: only their length bounds all
 * plans. */
static void
bound_by_length (SwLayout *layout, guint n_pieces)
{
  double length_m = 0.0;
  guint runs = 0;

  for (guint f = 0; f < layout->n_faces; f++)
    for (guint r = 0; r < layout->faces[f].n_runs; r++, runs++)
      length_m += layout->faces[f].runs[r].cut_m;
  if (n_pieces > runs)
    layout->rolls_bound =
        MIN (layout->rolls_bound, sw_count_up (length_m, layout->job->roll_length_m));
}

SwStatus
sw_lay_pieces (SwLayout *layout)
{
  Option whole = { g_array_new (FALSE, TRUE, sizeof (SwPiece)), 0 };
  Option joined = { g_array_new (FALSE, TRUE, sizeof (SwPiece)), 0 };
  SwStatus status = work_out (layout, FALSE, &whole);
  int bound = layout->rolls_bound;
  Option *chosen = &whole;

  if (status == SW_OK)
    layout->rolls_naive = count_naive (layout);
  if (status == SW_OK && layout->job->joints == SW_JOINTS_SAVE_ROLLS
      && work_out (layout, TRUE, &joined) == SW_OK && joined.rolls < whole.rolls)
    chosen = &joined;
  else
    layout->rolls_bound = bound;
  if (status == SW_OK)
    {
      bound_by_length (layout, chosen->pieces->len);
      layout->rolls = chosen->rolls;
      layout->n_pieces = chosen->pieces->len;
      layout->pieces =
          (SwPiece *) g_array_free (g_steal_pointer (&chosen->pieces), FALSE);
      settle_runs (layout);
      number_rolls (layout);
    }
  g_clear_pointer (&whole.pieces, g_array_unref);
  g_clear_pointer (&joined.pieces, g_array_unref);
  return status;
}

const SwPiece *
sw_layout_run_pieces (const SwLayout *layout, const SwRun *run)
{
  return &layout->pieces[run->first_piece];
}
