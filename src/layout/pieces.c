/* SPDX-License-Identifier: MIT */
#include "layout-private.h"
#include <math.h>
#include <slopewright/base/count.h>
#include <slopewright/layout/cutting.h>

/* Fewest joints that let every piece come from one roll. */
static int
joints_needed (double cut_m, double roll_m, double lap_m)
{
  return sw_ticks (cut_m) <= sw_ticks (roll_m)
             ? 0
             : sw_count_up (cut_m - roll_m, roll_m - lap_m);
}

/* Whole rolls first and the rest last; every second run the other way round, so that the
 * joints of neighbours do not line up. */
static void
split_run (const SwRun *run, double roll_m, double lap_m, double min_piece_m,
           double *lengths_m, int count)
{
  double rest_m = run->cut_m + (count - 1) * lap_m - (count - 1) * roll_m;
  double short_by_m = count > 1 ? fmax (0.0, min_piece_m - rest_m) : 0.0;
  gboolean reversed = run->number % 2 == 0;

  for (int i = 0; i < count; i++)
    lengths_m[i] = roll_m;
  lengths_m[count - 1] = rest_m + short_by_m;
  if (count > 1)
    lengths_m[0] -= short_by_m;
  if (reversed && count > 1)
    {
      double last_m = lengths_m[count - 1];

      lengths_m[count - 1] = lengths_m[0];
      lengths_m[0] = last_m;
    }
}

/* Where on the face a point of the blanket lies, @along_blanket_m from its start in the
 * key trench. */
static double
blanket_to_down_m (const SwFaceLayout *face, const SwPractice *practice, const SwRun *run,
                   double along_blanket_m)
{
  const SwTier *tier = &face->tiers[run->tier];
  double start_m = run->terms.set_back + run->terms.key_lining + run->terms.key_fold;
  double fold_m = 2.0 * sw_practice_get (practice, SW_PRACTICE_SLOT_DEPTH_M);
  double middle_m = (run->along_from_m + run->along_to_m) / 2.0;
  double down_m = run->down_from_m + along_blanket_m - start_m;

  for (int i = 0; i < tier->slots; i++)
    {
      double slot_m = sw_slot_down_m (face->ground, tier, middle_m, i);

      if (slot_m > run->down_from_m && slot_m < run->down_to_m && down_m > slot_m)
        down_m = fmax (slot_m, down_m - fold_m);
    }
  return down_m;
}

static SwStatus
split_into_pieces (SwLayout *layout, guint face_index, guint run_index, GArray *pieces)
{
  SwFaceLayout *face = &layout->faces[face_index];
  SwRun *run = &face->runs[run_index];
  double roll_m = layout->job->roll_length_m, lap_m = face->tiers[run->tier].end_lap_m;
  double min_piece_m = sw_practice_get (layout->practice, SW_PRACTICE_MIN_PIECE_M);
  g_autofree double *lengths_m = NULL;
  double at_m = 0.0;
  int joints;

  if (sw_ticks (roll_m) <= sw_ticks (lap_m))
    return SW_E_ROLL;
  joints = joints_needed (run->cut_m, roll_m, lap_m);
  if (joints > 0 && sw_ticks (roll_m) < 2 * sw_ticks (min_piece_m))
    return SW_E_ROLL;
  lengths_m = g_new (double, joints + 1);
  split_run (run, roll_m, lap_m, min_piece_m, lengths_m, joints + 1);
  run->first_piece = pieces->len;
  run->n_pieces = (guint) joints + 1;
  for (int i = 0; i <= joints; i++)
    {
      SwPiece piece = { .run = run_index, .face = face_index, .order = (guint) i };

      piece.length_m = (double) sw_ticks (lengths_m[i]) / SW_TICKS_PER_M;
      piece.down_from_m = blanket_to_down_m (face, layout->practice, run, at_m);
      piece.down_to_m =
          blanket_to_down_m (face, layout->practice, run, at_m + lengths_m[i]);
      at_m += lengths_m[i] - lap_m;
      g_array_append_val (pieces, piece);
    }
  run->terms.end_laps = joints * lap_m;
  run->cut_m += run->terms.end_laps;
  return SW_OK;
}

/* Whole runs counted out of fresh rolls, face by face: what a tape and a flat rule would order. */
static int
count_naive (const SwLayout *layout)
{
  int rolls = 0;

  for (guint f = 0; f < layout->n_faces; f++)
    for (guint t = 0; t < layout->faces[f].n_tiers; t++)
      {
        const SwFaceLayout *face = &layout->faces[f];
        const SwTier *tier = &face->tiers[t];
        double longest_m = 0.0;
        guint pieces = 1;
        int each;

        for (guint r = tier->first_run; r < tier->first_run + tier->n_runs; r++)
          {
            longest_m = fmax (longest_m, face->runs[r].cut_m);
            pieces = MAX (pieces, face->runs[r].n_pieces);
          }
        if (tier->n_runs == 0)
          continue;
        each = sw_count_whole (layout->job->roll_length_m, longest_m);
        rolls += each > 0 ? ((int) tier->n_runs + each - 1) / each
                          : (int) (tier->n_runs * pieces);
      }
  return rolls;
}

/* Rolls get their numbers in the order in which the crew opens them. */
static void
number_rolls (SwLayout *layout, const SwCutting *cutting)
{
  g_autofree int *number_of = g_new0 (int, cutting->rolls + 1);
  g_autofree gint64 *used = g_new0 (gint64, cutting->rolls + 1);
  gint64 capacity = sw_ticks (layout->job->roll_length_m);
  int next = 1;

  for (guint i = 0; i < layout->n_pieces; i++)
    {
      SwPiece *piece = &layout->pieces[i];
      int roll = cutting->roll_of[i];

      if (number_of[roll] == 0)
        number_of[roll] = next++;
      piece->roll = number_of[roll];
      piece->from_m = (double) used[piece->roll] / SW_TICKS_PER_M;
      used[piece->roll] += sw_ticks (piece->length_m);
    }
  layout->offcuts_m = g_new (double, cutting->rolls);
  for (int i = 0; i < cutting->rolls; i++)
    layout->offcuts_m[i] = (double) (capacity - used[i + 1]) / SW_TICKS_PER_M;
}

static SwStatus
plan_rolls (SwLayout *layout)
{
  g_autofree gint64 *ticks = g_new (gint64, layout->n_pieces);
  g_autoptr (SwCutting) cutting = NULL;

  for (guint i = 0; i < layout->n_pieces; i++)
    ticks[i] = sw_ticks (layout->pieces[i].length_m);
  cutting =
      sw_cutting_new (ticks, layout->n_pieces, sw_ticks (layout->job->roll_length_m));
  if (cutting == NULL)
    return SW_E_ROLL;
  layout->rolls = cutting->rolls;
  layout->rolls_bound = cutting->bound;
  layout->rolls_naive = count_naive (layout);
  number_rolls (layout, cutting);
  return SW_OK;
}

SwStatus
sw_lay_pieces (SwLayout *layout)
{
  g_autoptr (GArray) pieces = g_array_new (FALSE, TRUE, sizeof (SwPiece));

  for (guint f = 0; f < layout->n_faces; f++)
    for (guint r = 0; r < layout->faces[f].n_runs; r++)
      {
        SwStatus status = split_into_pieces (layout, f, r, pieces);

        if (status != SW_OK)
          return status;
      }
  layout->n_pieces = pieces->len;
  layout->pieces = (SwPiece *) g_array_free (g_steal_pointer (&pieces), FALSE);
  return layout->n_pieces > 0 ? plan_rolls (layout) : SW_E_EMPTY;
}

const SwPiece *
sw_layout_run_pieces (const SwLayout *layout, const SwRun *run)
{
  return &layout->pieces[run->first_piece];
}
