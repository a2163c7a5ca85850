/* SPDX-License-Identifier: MIT */
#include "fall-lines.h"
#include <math.h>

#define CORNERS 4

static const double shares[SW_FALL_LINES] = { 0.1, 0.5, 0.9 };

static SwRing
outline_of (const SwFaceLayout *face)
{
  return (SwRing){ face->face->outline, face->face->n_outline };
}

static SwFallLine
line_at (const SwFaceLayout *face, double along_m)
{
  const SwGround *ground = face->ground;
  g_autoptr (GArray) spans = g_array_new (FALSE, FALSE, sizeof (SwSpan));
  SwFallLine line = { .along_m = along_m };
  double from_m, to_m;

  sw_ring_cut_x (outline_of (face), along_m, spans);
  if (spans->len == 0)
    return line;
  from_m = fmax (g_array_index (spans, SwSpan, 0).from_m,
                 sw_ground_break_out_m (ground, face->face->crest, along_m));
  to_m = fmin (g_array_index (spans, SwSpan, spans->len - 1).to_m,
               sw_ground_break_out_m (ground, face->face->toe, along_m));
  if (from_m >= to_m)
    return line;
  line.length_m = sw_ground_down_m (ground, (SwPoint){ along_m, to_m })
                  - sw_ground_down_m (ground, (SwPoint){ along_m, from_m });
  line.rise_m = sw_ground_up_m (ground, (SwPoint){ along_m, from_m })
                - sw_ground_up_m (ground, (SwPoint){ along_m, to_m });
  line.run_m = to_m - from_m;
  return line;
}

void
sw_fall_lines (const SwFaceLayout *face, SwFallLine lines[SW_FALL_LINES])
{
  SwBox box = sw_ring_box (outline_of (face));

  for (guint i = 0; i < SW_FALL_LINES; i++)
    lines[i] = line_at (face, box.x0_m + shares[i] * (box.x1_m - box.x0_m));
}

static int
by_out (gconstpointer a, gconstpointer b)
{
  double one_m = ((const SwPoint *) a)->y_m, other_m = ((const SwPoint *) b)->y_m;

  return (one_m > other_m) - (one_m < other_m);
}

static void
put_left_first (SwPoint *left, SwPoint *right)
{
  SwPoint first = *left;

  if (left->x_m <= right->x_m)
    return;
  *left = *right;
  *right = first;
}

gboolean
sw_corners (const SwFaceLayout *face, SwPoint corners[4])
{
  SwPoint sorted[CORNERS];

  if (face->face->n_outline != CORNERS)
    return FALSE;
  for (guint i = 0; i < CORNERS; i++)
    sorted[i] = face->face->outline[i];
  qsort (sorted, CORNERS, sizeof *sorted, by_out);
  put_left_first (&sorted[0], &sorted[1]);
  put_left_first (&sorted[3], &sorted[2]);
  for (guint i = 0; i < CORNERS; i++)
    corners[i] = sorted[i];
  return TRUE;
}

double
sw_taped_side_m (const SwFaceLayout *face, SwTapedSide side)
{
  static const struct
  {
    guint from, to;
  } ends[SW_SIDE_COUNT] = {
    [SW_SIDE_AB] = { 0, 1 }, [SW_SIDE_BC] = { 1, 2 }, [SW_SIDE_CD] = { 2, 3 },
    [SW_SIDE_DA] = { 3, 0 }, [SW_SIDE_AC] = { 0, 2 }, [SW_SIDE_BD] = { 1, 3 }
  };
  gboolean diagonal = side == SW_SIDE_AC || side == SW_SIDE_BD;
  SwPoint corners[CORNERS], from, to;

  if (!sw_corners (face, corners)
      || (diagonal && face->face->crest_form != SW_CREST_STRAIGHT))
    return (double) NAN;
  from = corners[ends[side].from];
  to = corners[ends[side].to];
  return sw_ground_length_m (face->ground, from, to);
}
