/* SPDX-License-Identifier: MIT */
#include "pin-lines.h"
#include "ring.h"
#include <math.h>
#include <slopewright/base/count.h>
#include <slopewright/base/order.h>

/* Field pins keep this far from the lower end and from rows of other roles: one hand's
 * breadth. */
#define CLEAR_M 0.10

/* What all columns of a face share. */
typedef struct
{
  SwLaying *laying;
  const SwPiece *pieces;
  guint lines; /* so many pins stand on lines, sorted by along_m */
  double least_stretch;
} Columns;

/* One column of pins down the slope, within the region. */
typedef struct
{
  guint tier;
  SwPinRole role;
  double along_m;
  double first_m, step_m; /* first row below the upper edge, and from row to row */
  double end_clear_m;     /* kept free above the lower edge */
  const GArray *rows_m;   /* other rows to keep clear of, ascending; NULL for none */
  double least_stretch;   /* left out where a fan has drawn in further than this */
} Column;

/* Whether no row lies within @clear_m, in whole ticks: rows that just clear each other must
 * not come and go with rounding. Rows ascend, and so do the places asked for: @next keeps
 * where the last one left off. */
static gboolean
is_clear (double down_m, const GArray *rows_m, double clear_m, guint *next)
{
  gint64 clear = sw_ticks (clear_m);

  while (*next < rows_m->len
         && sw_ticks (down_m - g_array_index (rows_m, double, *next)) >= clear)
    ++*next;
  return *next == rows_m->len
         || sw_ticks (g_array_index (rows_m, double, *next) - down_m) >= clear;
}

static void
pin_span (SwLaying *laying, const Column *column, const GArray *taken_m, double from_m,
          double to_m)
{
  const SwGround *ground = laying->out->ground;
  double room_m = to_m - from_m - column->end_clear_m - column->first_m;
  int last = sw_ticks (room_m) < 0 ? -1 : sw_count_whole (room_m, column->step_m);
  guint next_row = 0, next_taken = 0;

  for (int i = 0; i <= last; i++)
    {
      double down_m = from_m + column->first_m + i * column->step_m;

      if (column->rows_m != NULL
          && !is_clear (down_m, column->rows_m, CLEAR_M, &next_row))
        continue;
      if (!is_clear (down_m, taken_m, SW_DOUBLE_PIN_M, &next_taken))
        continue;
      if (column->least_stretch > 0.0
          && sw_ground_stretch (ground, sw_ground_out_m (ground, column->along_m, down_m))
                 < column->least_stretch)
        continue;
      sw_add_pin (laying, column->tier, column->role, column->along_m, down_m);
    }
}

/* Add those of the pins on lines that stand in the way of a column at @along_m. */
static void
add_taken (const Columns *columns, double along_m, GArray *taken_m)
{
  const SwPinPlace *pins = (const SwPinPlace *) columns->laying->pins->data;
  double reach_m = SW_DOUBLE_PIN_M / columns->least_stretch;
  guint low = 0, high = columns->lines;

  while (low < high)
    {
      guint middle = (low + high) / 2;

      if ((double) pins[middle].along_m < along_m - reach_m)
        low = middle + 1;
      else
        high = middle;
    }
  for (; low < columns->lines && (double) pins[low].along_m < along_m + reach_m; low++)
    {
      double down_m = (double) pins[low].down_m;

      if (sw_ticks (fabs ((double) pins[low].along_m - along_m)
                    * sw_ground_stretch (columns->laying->out->ground,
                                         (double) pins[low].out_m))
          < sw_ticks (SW_DOUBLE_PIN_M))
        g_array_append_val (taken_m, down_m);
    }
}

/* Their distances down, ascending; on a tier that goes all round across its seam, too. */
static GArray *
find_taken (const Columns *columns, const SwTier *tier, double along_m)
{
  GArray *taken_m = g_array_new (FALSE, FALSE, sizeof (double));
  double round_m = tier->along_to_m - tier->along_from_m;

  add_taken (columns, along_m, taken_m);
  if (tier->closed)
    {
      add_taken (columns, along_m - round_m, taken_m);
      add_taken (columns, along_m + round_m, taken_m);
    }
  g_array_sort (taken_m, sw_compare_doubles);
  return taken_m;
}

static void
pin_column (const Columns *columns, Column column)
{
  SwLaying *laying = columns->laying;
  const SwRegion *region = g_ptr_array_index (laying->regions, column.tier);
  g_autoptr (GArray) spans = g_array_new (FALSE, FALSE, sizeof (SwSpan));
  g_autoptr (GArray) taken_m = NULL;

  column.along_m = sw_along_on_tier_m (laying, column.tier, column.along_m);
  taken_m = find_taken (columns, &laying->out->tiers[column.tier], column.along_m);
  sw_region_cut_x (region, column.along_m, spans);
  for (guint s = 0; s < spans->len; s++)
    {
      SwSpan out = g_array_index (spans, SwSpan, s);

      pin_span (
          laying, &column, taken_m,
          sw_ground_down_m (laying->out->ground, (SwPoint){ column.along_m, out.from_m }),
          sw_ground_down_m (laying->out->ground, (SwPoint){ column.along_m, out.to_m }));
    }
}

/* Where the pieces of the strip that holds @along_m are joined. */
static void
add_joint_rows (const SwLaying *laying, const SwTier *tier, const SwPiece *pieces,
                double along_m, GArray *rows_m)
{
  double half_gap_m =
      sw_practice_get (laying->practice, SW_PRACTICE_END_LAP_ROW_GAP_M) / 2.0;

  for (guint r = tier->first_run; r < tier->first_run + tier->n_runs; r++)
    {
      const SwRun *run = &laying->out->runs[r];

      if (along_m < run->along_from_m || along_m > run->along_to_m)
        continue;
      for (guint p = 1; p < run->n_pieces; p++)
        {
          double middle_m =
              pieces[run->first_piece + p].down_from_m + tier->end_lap_m / 2.0;
          double upper_m = middle_m - half_gap_m, lower_m = middle_m + half_gap_m;

          g_array_append_val (rows_m, upper_m);
          g_array_append_val (rows_m, lower_m);
        }
    }
}

/* Field columns between two neighbouring lap or edge columns, evenly spaced and
 * staggered. */
static void
pin_field_gap (const Columns *all, guint tier_index, double from_m, double to_m)
{
  const SwLaying *laying = all->laying;
  const SwTier *tier = &laying->out->tiers[tier_index];
  int columns = sw_count_up ((to_m - from_m) * tier->stretch, tier->pin_across_m) - 1;
  double gap_m = (to_m - from_m) / (columns + 1);
  g_autoptr (GArray) rows_m = g_array_new (FALSE, FALSE, sizeof (double));

  for (int i = 0; i < tier->slots; i++)
    {
      double down_m =
          sw_slot_down_m (laying->out->ground, tier, (from_m + to_m) / 2.0, i);
      g_array_append_val (rows_m, down_m);
    }
  add_joint_rows (laying, tier, all->pieces, (from_m + to_m) / 2.0, rows_m);
  g_array_sort (rows_m, sw_compare_doubles);
  for (int c = 1; c <= columns; c++)
    {
      /* Counted from the leeward end, so that the mirrored face is pinned as its
       * mirror. */
      int from_leeward = laying->face->leeward == SW_SIDE_LEFT ? c : columns + 1 - c;
      gboolean odd = from_leeward % 2 == 1;
      Column column = { .tier = tier_index,
                        .role = SW_PIN_FIELD,
                        .along_m = from_m + c * gap_m,
                        .first_m = (odd ? 0.5 : 1.0) * tier->pin_down_m,
                        .step_m = tier->pin_down_m,
                        .end_clear_m = CLEAR_M,
                        .rows_m = rows_m };

      /* Where a fan draws in to half the spacing, every second column is enough. */
      column.least_stretch = odd ? tier->pin_across_m / 2.0 / gap_m : 0.0;
      pin_column (all, column);
    }
}

/* Middles of the side laps of a tier, left to right, between its two edges; on a tier
 * that goes all round the edges are the middle of the last lap. */
static GArray *
lap_middles (const SwLaying *laying, const SwTier *tier)
{
  GArray *at_m = g_array_new (FALSE, FALSE, sizeof (double));
  double pitch_m = laying->job->roll_width_m - tier->side_lap_m;
  double half_lap_m = tier->side_lap_m / 2.0;
  gboolean left = laying->face->leeward == SW_SIDE_LEFT;
  double first_m =
      tier->along_from_m
      + (tier->closed ? (left ? half_lap_m : -half_lap_m) / tier->stretch : 0.0);
  double last_m = first_m + tier->width_m / tier->stretch;

  g_array_append_val (at_m, first_m);
  for (int i = 1; i < tier->strips; i++)
    {
      int from_leeward = left ? i : tier->strips - i;
      double near_m = (from_leeward * pitch_m + half_lap_m) / tier->stretch;
      double middle_m = left ? tier->along_from_m + near_m : tier->along_to_m - near_m;

      g_array_append_val (at_m, middle_m);
    }
  g_array_append_val (at_m, last_m);
  return at_m;
}

static void
pin_laps_and_field (const Columns *columns, guint tier_index)
{
  const SwLaying *laying = columns->laying;
  const SwTier *tier = &laying->out->tiers[tier_index];
  g_autoptr (GArray) at_m = lap_middles (laying, tier);
  double lap_step_m = sw_practice_get (laying->practice, SW_PRACTICE_SIDE_LAP_PIN_M);

  for (guint i = 1; i < at_m->len; i++)
    {
      double from_m = g_array_index (at_m, double, i - 1),
             to_m = g_array_index (at_m, double, i);

      pin_field_gap (columns, tier_index, from_m, to_m);
      if (i + 1 < at_m->len || tier->closed)
        pin_column (columns, (Column){ .tier = tier_index,
                                       .role = SW_PIN_SIDE_LAP,
                                       .along_m = to_m,
                                       .step_m = lap_step_m });
    }
}

void
sw_lay_pins (SwLaying *laying, const SwPiece *pieces)
{
  g_autoptr (SwRingRows) rings = sw_ring_rows_new (laying);
  Columns columns = { .laying = laying, .pieces = pieces };

  laying->rings = rings;
  sw_lay_pin_lines (laying, pieces);
  columns.lines = laying->pins->len;
  columns.least_stretch = sw_least_stretch (laying);
  for (guint t = 0; t < laying->out->n_tiers; t++)
    pin_laps_and_field (&columns, t);
  laying->rings = NULL;
  sw_lay_run_lengths (laying);
  sw_measure_pins (laying);
}

const char *
sw_pin_role_code (SwPinRole role)
{
  static const char *const codes[SW_PIN_ROLE_COUNT] = { "key-trench", "slot", "side-lap",
                                                        "end-lap",    "edge", "toe",
                                                        "field",      "ring" };

  return codes[role];
}
