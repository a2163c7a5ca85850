/* SPDX-License-Identifier: MIT */
#include "chain.h"
#include "layout-private.h"
#include <math.h>
#include <slopewright/base/count.h>

/* Field pins keep this far from the lower end and from rows of other roles: one hand's breadth. */
#define CLEAR_M 0.10

/* Edge rows stand this far inside the edge, so that the pin holds the sheet. */
#define EDGE_INSET_M 0.05

static void
add_pin (SwLaying *laying, guint tier, SwPinRole role, double along_m, double down_m)
{
  SwPinPlace pin = { (float) along_m,
                     (float) sw_ground_out_m (laying->out->ground, along_m, down_m),
                     (float) down_m, (guint16) role, (guint16) tier };

  g_array_append_val (laying->pins, pin);
}

/* Pins from end to end of a line, evenly, no further apart than @spacing_m. */
static void
pin_line (SwLaying *laying, const SwTrench *trench, SwPinRole role, double spacing_m)
{
  int gaps = sw_count_up (trench->length_m, spacing_m), next = 0;
  double step_m = trench->length_m / MAX (gaps, 1), walked_m = 0.0;

  for (guint i = 1; i < trench->n_line; i++)
    {
      SwPlace a = trench->line[i - 1], b = trench->line[i];
      double length_m =
          sw_ground_length_m (laying->out->ground, (SwPoint){ a.along_m, a.out_m },
                              (SwPoint){ b.along_m, b.out_m });
      gboolean last = i + 1 == trench->n_line;

      for (; next <= gaps && (last || next * step_m <= walked_m + length_m); next++)
        {
          double t = length_m > 0.0 ? (next * step_m - walked_m) / length_m : 0.0;

          t = CLAMP (t, 0.0, 1.0);
          add_pin (laying, trench->tier, role, a.along_m + t * (b.along_m - a.along_m),
                   a.down_m + t * (b.down_m - a.down_m));
        }
      walked_m += length_m;
    }
}

static void
pin_trenches (SwLaying *laying)
{
  static const struct
  {
    SwPinRole role;
    SwPracticeValue spacing;
  } rows[] = { [SW_TRENCH_KEY] = { SW_PIN_KEY_TRENCH, SW_PRACTICE_TRENCH_PIN_M },
               [SW_TRENCH_SLOT] = { SW_PIN_SLOT, SW_PRACTICE_SLOT_PIN_M },
               [SW_TRENCH_TOE] = { SW_PIN_TOE, SW_PRACTICE_TOE_PIN_M } };

  for (guint i = 0; i < laying->out->n_trenches; i++)
    {
      const SwTrench *trench = &laying->out->trenches[i];

      pin_line (laying, trench, rows[trench->kind].role,
                sw_practice_get (laying->practice, rows[trench->kind].spacing));
    }
}

/* Rows that field pins keep clear of in one tier: check slots and the joints of one strip. */
static gboolean
is_clear (double down_m, const GArray *rows_m)
{
  for (guint i = 0; i < rows_m->len; i++)
    if (fabs (down_m - g_array_index (rows_m, double, i)) < CLEAR_M)
      return FALSE;
  return TRUE;
}

/* Back onto a tier that goes all round. */
static double
wrap (const SwTier *tier, double along_m)
{
  double round_m = tier->along_to_m - tier->along_from_m;

  if (!tier->closed)
    return along_m;
  return along_m >= tier->along_to_m    ? along_m - round_m
         : along_m < tier->along_from_m ? along_m + round_m
                                        : along_m;
}

/* One column of pins down the slope, within the region. */
typedef struct
{
  guint tier;
  SwPinRole role;
  double along_m;
  double first_m, step_m; /* first row below the upper edge, and from row to row */
  double end_clear_m;     /* kept free above the lower edge */
  const GArray *rows_m;   /* other rows to keep clear of; NULL for none */
  double least_stretch;   /* left out where a fan has drawn in further than this */
} Column;

static void
pin_span (SwLaying *laying, const Column *column, double from_m, double to_m)
{
  const SwGround *ground = laying->out->ground;
  double room_m = to_m - from_m - column->end_clear_m - column->first_m;
  int last = sw_ticks (room_m) < 0 ? -1 : sw_count_whole (room_m, column->step_m);

  for (int i = 0; i <= last; i++)
    {
      double down_m = from_m + column->first_m + i * column->step_m;

      if (column->rows_m != NULL && !is_clear (down_m, column->rows_m))
        continue;
      if (column->least_stretch > 0.0
          && sw_ground_stretch (ground, sw_ground_out_m (ground, column->along_m, down_m))
                 < column->least_stretch)
        continue;
      add_pin (laying, column->tier, column->role, column->along_m, down_m);
    }
}

static void
pin_column (SwLaying *laying, Column column)
{
  const SwRegion *region = g_ptr_array_index (laying->regions, column.tier);
  g_autoptr (GArray) spans = g_array_new (FALSE, FALSE, sizeof (SwSpan));

  column.along_m = wrap (&laying->out->tiers[column.tier], column.along_m);
  sw_region_cut_x (region, column.along_m, spans);
  for (guint s = 0; s < spans->len; s++)
    {
      SwSpan out = g_array_index (spans, SwSpan, s);

      pin_span (
          laying, &column,
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

/* Field columns between two neighbouring lap or edge columns, evenly spaced and staggered. */
static void
pin_field_gap (SwLaying *laying, guint tier_index, const SwPiece *pieces, double from_m,
               double to_m)
{
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
  add_joint_rows (laying, tier, pieces, (from_m + to_m) / 2.0, rows_m);
  for (int c = 1; c <= columns; c++)
    {
      /* Counted from the leeward end, so that the mirrored face is pinned as its mirror. */
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
      pin_column (laying, column);
    }
}

/* Middles of the side laps of a tier, left to right, between its two edges; on a tier that
 * goes all round the edges are the middle of the last lap. */
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
pin_laps_and_field (SwLaying *laying, guint tier_index, const SwPiece *pieces)
{
  const SwTier *tier = &laying->out->tiers[tier_index];
  g_autoptr (GArray) at_m = lap_middles (laying, tier);
  double lap_step_m = sw_practice_get (laying->practice, SW_PRACTICE_SIDE_LAP_PIN_M);

  for (guint i = 1; i < at_m->len; i++)
    {
      double from_m = g_array_index (at_m, double, i - 1),
             to_m = g_array_index (at_m, double, i);

      pin_field_gap (laying, tier_index, pieces, from_m, to_m);
      if (i + 1 < at_m->len || tier->closed)
        pin_column (laying, (Column){ .tier = tier_index,
                                      .role = SW_PIN_SIDE_LAP,
                                      .along_m = to_m,
                                      .step_m = lap_step_m });
    }
}

static void
pin_edge (SwLaying *laying, guint tier, const SwChain *chain)
{
  const SwPoint *p = (const SwPoint *) chain->points->data;
  double step_m = sw_practice_get (laying->practice, SW_PRACTICE_EDGE_PIN_M);
  double inset_m = chain->ground_right ? EDGE_INSET_M : -EDGE_INSET_M;
  double walked_m = 0.0, next_m = 0.0;

  for (guint i = 1; i < chain->points->len; i++)
    {
      double length_m = sw_ground_length_m (laying->out->ground, p[i - 1], p[i]);
      double from_m = sw_ground_down_m (laying->out->ground, p[i - 1]);
      double to_m = sw_ground_down_m (laying->out->ground, p[i]);

      for (; sw_ticks (next_m) <= sw_ticks (walked_m + length_m); next_m += step_m)
        {
          double t = (next_m - walked_m) / length_m;

          add_pin (laying, tier, SW_PIN_EDGE,
                   p[i - 1].x_m + t * (p[i].x_m - p[i - 1].x_m) + inset_m,
                   from_m + t * (to_m - from_m));
        }
      walked_m += length_m;
    }
}

/* Two staggered rows through both layers of an end lap. */
static void
pin_joint (SwLaying *laying, const SwRun *run, double middle_m)
{
  double gap_m = sw_practice_get (laying->practice, SW_PRACTICE_END_LAP_ROW_GAP_M);
  double width_m = run->along_to_m - run->along_from_m;
  int pins = sw_count_up (run->width_m,
                          sw_practice_get (laying->practice, SW_PRACTICE_END_LAP_PIN_M));
  double step_m = width_m / pins;

  for (int i = 0; i < pins; i++)
    add_pin (laying, run->tier, SW_PIN_END_LAP, run->along_from_m + (i + 0.5) * step_m,
             middle_m - gap_m / 2.0);
  for (int i = 1; i < pins; i++)
    add_pin (laying, run->tier, SW_PIN_END_LAP, run->along_from_m + i * step_m,
             middle_m + gap_m / 2.0);
}

static void
pin_joints (SwLaying *laying, const SwPiece *pieces)
{
  for (guint r = 0; r < laying->out->n_runs; r++)
    {
      const SwRun *run = &laying->out->runs[r];
      const SwTier *tier = &laying->out->tiers[run->tier];

      for (guint p = 1; p < run->n_pieces; p++)
        pin_joint (laying, run,
                   pieces[run->first_piece + p].down_from_m + tier->end_lap_m / 2.0);
    }
}

void
sw_lay_pins (SwLaying *laying, const SwPiece *pieces)
{
  pin_trenches (laying);
  for (guint t = 0; t < laying->out->n_tiers; t++)
    {
      g_autoptr (GPtrArray) chains =
          sw_chains_new (g_ptr_array_index (laying->regions, t), laying->out->ground);

      for (guint i = 0; i < chains->len; i++)
        if (((SwChain *) chains->pdata[i])->kind == SW_CHAIN_SIDE
            && !laying->out->tiers[t].closed)
          pin_edge (laying, t, chains->pdata[i]);
      pin_laps_and_field (laying, t, pieces);
    }
  pin_joints (laying, pieces);
}

const char *
sw_pin_role_code (SwPinRole role)
{
  static const char *const codes[SW_PIN_ROLE_COUNT] = { "key-trench", "slot", "side-lap",
                                                        "end-lap",    "edge", "toe",
                                                        "field" };

  return codes[role];
}
