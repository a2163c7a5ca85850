/* SPDX-License-Identifier: MIT */
#include "cutting-swap.h"
#include <math.h>
#include <string.h>

#define PASSES 60
#define WEIGHT 0.20  /* how strongly room in a roll raises its weight */
#define COOLING 0.95 /* per pass */

typedef struct
{
  const gint64 *pieces;
  gint64 capacity;
  int rolls;
  GArray **members; /* per roll: (element-type guint) its pieces */
  gint64 *load;
  double *weight;
} Swaps;

static double
square (const Swaps *s, int roll, gint64 load)
{
  double weighted = s->weight[roll] * (double) load / (double) s->capacity;

  return weighted * weighted;
}

/* Gain of the sum of squares when @out leaves @a for @b and @back comes back. */
static double
gain (const Swaps *s, int a, int b, gint64 out, gint64 back)
{
  return square (s, a, s->load[a] - out + back) + square (s, b, s->load[b] + out - back)
         - square (s, a, s->load[a]) - square (s, b, s->load[b]);
}

static void
move_piece (Swaps *s, int a, guint at, int b)
{
  guint piece = g_array_index (s->members[a], guint, at);

  g_array_remove_index_fast (s->members[a], at);
  g_array_append_val (s->members[b], piece);
  s->load[a] -= s->pieces[piece];
  s->load[b] += s->pieces[piece];
}

/* The best move of one piece from @a to @b, alone or against one that comes back. */
static gboolean
improve_pair (Swaps *s, int a, int b)
{
  double best = 1e-12;
  guint best_out = 0;
  int best_back = -2;

  for (guint i = 0; i < s->members[a]->len; i++)
    {
      gint64 out = s->pieces[g_array_index (s->members[a], guint, i)];

      for (int j = -1; j < (int) s->members[b]->len; j++)
        {
          gint64 back = j < 0 ? 0 : s->pieces[g_array_index (s->members[b], guint, j)];
          double g;

          if (s->load[b] + out - back > s->capacity
              || s->load[a] - out + back > s->capacity || out == back)
            continue;
          g = gain (s, a, b, out, back);
          if (g > best)
            {
              best = g;
              best_out = i;
              best_back = j;
            }
        }
    }
  if (best_back == -2)
    return FALSE;
  if (best_back >= 0)
    move_piece (s, b, (guint) best_back, a);
  move_piece (s, a, best_out, b);
  return TRUE;
}

static void
drop_empty (Swaps *s)
{
  int kept = 0;

  for (int r = 0; r < s->rolls; r++)
    if (s->members[r]->len > 0)
      {
        GArray *members = s->members[kept];

        s->members[kept] = s->members[r];
        s->members[r] = members;
        s->load[kept++] = s->load[r];
      }
  s->rolls = kept;
}

static void
set_weights (Swaps *s, double heat)
{
  for (int r = 0; r < s->rolls; r++)
    s->weight[r] = pow (
        1.0 + WEIGHT * (double) (s->capacity - s->load[r]) / (double) s->capacity, heat);
}

static void
anneal (Swaps *s, int enough)
{
  double heat = 1.0;

  for (int pass = 0; pass < PASSES && s->rolls > enough; pass++, heat *= COOLING)
    {
      set_weights (s, heat);
      for (int a = 0; a < s->rolls; a++)
        for (int b = 0; b < s->rolls; b++)
          if (a != b)
            improve_pair (s, a, b);
      drop_empty (s);
    }
}

int
sw_cutting_by_swaps (const gint64 *pieces, guint count, gint64 capacity, int enough,
                     int *roll_of, int rolls)
{
  g_autofree gint64 *load = g_new0 (gint64, MAX (rolls, 1));
  g_autofree double *weight = g_new0 (double, MAX (rolls, 1));
  g_autofree GArray **members = g_new (GArray *, MAX (rolls, 1));
  Swaps s = { pieces, capacity, rolls, members, load, weight };

  for (int r = 0; r < rolls; r++)
    members[r] = g_array_new (FALSE, FALSE, sizeof (guint));
  for (guint i = 0; i < count; i++)
    {
      g_array_append_val (members[roll_of[i] - 1], i);
      load[roll_of[i] - 1] += pieces[i];
    }
  anneal (&s, enough);
  for (int r = 0; r < s.rolls; r++)
    for (guint m = 0; m < members[r]->len; m++)
      roll_of[g_array_index (members[r], guint, m)] = r + 1;
  for (int r = 0; r < rolls; r++)
    g_array_unref (members[r]);
  return s.rolls;
}
