/* SPDX-License-Identifier: MIT */
#include "joints.h"
#include <math.h>
#include <slopewright/base/count.h>

/* Rolls of one width. */
typedef struct
{
  double roll_m;
  double left_m; /* of the roll in use */
  int roll;      /* its number, 1.. */
} Feed;

/* Runs are cut one after the other, so that each knows the joints of its neighbour. */
typedef struct
{
  SwLayout *layout;
  GArray *pieces; /* (element-type SwPiece) */
  gboolean save;  /* begin a run with what is left of the roll before, where allowed */
  Feed wide, narrow;
} Cutter;

static Feed *
feed_of (Cutter *cutter, const SwRun *run)
{
  return run->narrow ? &cutter->narrow : &cutter->wide;
}

static void
add_piece (Cutter *cutter, guint face_index, guint run_index, guint order, double from_m,
           double to_m)
{
  const SwFaceLayout *face = &cutter->layout->faces[face_index];
  const SwRun *run = &face->runs[run_index];
  SwPiece piece = { .run = run_index, .face = face_index, .order = order };
  Feed *feed = feed_of (cutter, run);

  piece.length_m = (double) sw_ticks (to_m - from_m) / SW_TICKS_PER_M;
  piece.down_from_m = sw_blanket_to_down_m (face, cutter->layout->practice, run, from_m);
  piece.down_to_m = sw_blanket_to_down_m (face, cutter->layout->practice, run, to_m);
  piece.roll = feed->roll;
  feed->left_m -= piece.length_m;
  g_array_append_val (cutter->pieces, piece);
}

static void
open_roll (Feed *feed)
{
  feed->left_m = feed->roll_m;
  feed->roll++;
}

static gboolean
fits (double length_m, double room_m)
{
  return sw_ticks (length_m) <= sw_ticks (room_m);
}

/* Where the next piece ends: at the run's end, or at the last allowed joint within the room. */
static double
piece_end_m (const SwJointing *jointing, double from_m, double room_m)
{
  if (fits (jointing->whole_m - from_m, room_m))
    return jointing->whole_m;
  return sw_jointing_latest (jointing, from_m, room_m);
}

/* End of the next piece; opens a fresh roll when the one in use will not do. Only a plan
 * that saves rolls joins where a fresh roll would reach further. */
static double
next_end_m (Cutter *cutter, const SwJointing *jointing, double from_m)
{
  Feed *feed = feed_of (cutter, jointing->run);
  double to_m = piece_end_m (jointing, from_m, feed->left_m);

  if (to_m >= jointing->whole_m || (to_m >= 0.0 && cutter->save))
    return to_m;
  open_roll (feed);
  return piece_end_m (jointing, from_m, feed->roll_m);
}

static SwStatus
cut_run_by (Cutter *cutter, const SwJointing *jointing, guint face_index, guint run_index)
{
  SwRun *run = &cutter->layout->faces[face_index].runs[run_index];
  double from_m = 0.0, to_m;

  run->first_piece = cutter->pieces->len;
  run->n_pieces = 0;
  do
    {
      to_m = next_end_m (cutter, jointing, from_m);
      if (to_m < 0.0)
        return SW_E_ROLL;
      add_piece (cutter, face_index, run_index, run->n_pieces++, from_m, to_m);
      from_m = to_m - jointing->lap_m;
    }
  while (to_m < jointing->whole_m);
  return SW_OK;
}

/* Where the joints of the strip before and the obstacles leave no room at all, a joint
 * beside one of them is better than no plan. */
static SwStatus
cut_run (Cutter *cutter, guint face_index, guint run_index)
{
  const SwPiece *cut = (const SwPiece *) cutter->pieces->data;
  Cutter before = *cutter;
  guint pieces = cutter->pieces->len;
  g_autoptr (SwJointing) staggered =
      sw_jointing_new (cutter->layout, face_index, run_index, cut, TRUE);
  g_autoptr (SwJointing) alone = NULL;
  SwStatus status = cut_run_by (cutter, staggered, face_index, run_index);

  if (status == SW_OK)
    return status;
  *cutter = before;
  g_array_set_size (cutter->pieces, pieces);
  alone = sw_jointing_new (cutter->layout, face_index, run_index, NULL, FALSE);
  return cut_run_by (cutter, alone, face_index, run_index);
}

SwStatus
sw_cut_pieces (SwLayout *layout, double roll_m, gboolean save, GArray *pieces)
{
  Cutter cutter = {
    layout, pieces, save, { roll_m, 0.0, 0 }, { layout->job->narrow_length_m, 0.0, 0 }
  };

  g_array_set_size (pieces, 0);
  for (guint f = 0; f < layout->n_faces; f++)
    for (guint r = 0; r < layout->faces[f].n_runs; r++)
      {
        SwStatus status = cut_run (&cutter, f, r);

        if (status != SW_OK)
          return status;
      }
  return pieces->len > 0 ? SW_OK : SW_E_EMPTY;
}
