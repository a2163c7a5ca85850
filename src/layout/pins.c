/* SPDX-License-Identifier: MIT */
#include "infill.h"
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
  SwSpan within_m;        /* rows outside of it are left out: distances down */
  double least_stretch;   /* left out where a fan has drawn in further than this */
} Column;

/* Whether no row lies within @clear, in whole ticks: rows that just clear each other must
 * not come and go with rounding. Rows ascend, and so do the places asked for: @next keeps
 * where the last one left off. */
static gboolean
is_clear (double down_m, const GArray *rows_m, double clear, guint *next)
{
  while (*next < rows_m->len
         && sw_reaches_ticks (down_m - g_array_index (rows_m, double, *next), clear))
    ++*next;
  return *next == rows_m->len
         || sw_reaches_ticks (g_array_index (rows_m, double, *next) - down_m, clear);
}

static void
pin_span (SwLaying *laying, const Column *column, const GArray *taken_m, double from_m,
          double to_m)
{
  const SwGround *ground = laying->out->ground;
  double room_m = to_m - from_m - column->end_clear_m - column->first_m;
  int last = sw_ticks (room_m) < 0 ? -1 : sw_count_whole (room_m, column->step_m);
  double clear_of_rows = sw_least_ticks (CLEAR_M);
  double clear_of_taken = sw_least_ticks (SW_DOUBLE_PIN_M);
  guint next_row = 0, next_taken = 0;

  for (int i = 0; i <= last; i++)
    {
      double down_m = from_m + column->first_m + i * column->step_m;

      if (down_m < column->within_m.from_m || down_m >= column->within_m.to_m)
        continue;
      if (column->rows_m != NULL
          && !is_clear (down_m, column->rows_m, clear_of_rows, &next_row))
        continue;
      if (!is_clear (down_m, taken_m, clear_of_taken, &next_taken))
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
  double clear = sw_least_ticks (SW_DOUBLE_PIN_M);
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

      if (!sw_reaches_ticks (fabs ((double) pins[low].along_m - along_m)
                                 * sw_ground_stretch (columns->laying->out->ground,
                                                      (double) pins[low].out_m),
                             clear))
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

static void
add_rows (const SwLaying *laying, double middle_m, GArray *rows_m)
{
  SwSpan rows = sw_end_lap_rows (laying, middle_m);

  g_array_append_val (rows_m, rows.from_m);
  g_array_append_val (rows_m, rows.to_m);
}

/* Where the pieces of the strip that holds @along_m are joined, and where infill in it or
 * beside it ends. */
static void
add_joint_rows (const SwLaying *laying, const SwTier *tier, const SwPiece *pieces,
                double along_m, int strip, GArray *rows_m)
{
  for (guint r = tier->first_run; r < tier->first_run + tier->n_runs; r++)
    {
      const SwRun *run = &laying->out->runs[r];

      if ((run->infill_above || run->infill_below)
          && (ABS (run->strip - strip) <= 1
              || (tier->closed && ABS (run->strip - strip) == tier->strips - 1)))
        add_rows (laying, sw_free_end_lap_m (run, tier), rows_m);
      if (along_m < run->along_from_m || along_m > run->along_to_m)
        continue;
      for (guint p = 1; p < run->n_pieces; p++)
        add_rows (laying,
                  pieces[run->first_piece + p].down_from_m + tier->end_lap_m / 2.0,
                  rows_m);
    }
}

/* Part of a strip between two lines of side laps or edges that do not change within it. */
typedef struct
{
  guint tier;
  int strip;
  SwSpan along, down;
} Panel;

static double
stretch_at (const SwLaying *laying, const Panel *panel, double down_m)
{
  const SwGround *ground = laying->out->ground;

  return sw_ground_stretch (ground,
                            sw_ground_out_m (ground, panel->along.from_m, down_m));
}

/* Width of a panel where it is widest. */
static double
widest_m (const SwLaying *laying, const Panel *panel)
{
  const SwTier *tier = &laying->out->tiers[panel->tier];
  double stretch = tier->stretch;

  if (sw_opens_down (tier) && panel->down.to_m < tier->reach.down_to_m)
    stretch = stretch_at (laying, panel, panel->down.to_m);
  if (!sw_opens_down (tier) && panel->down.from_m > tier->reach.down_from_m)
    stretch = stretch_at (laying, panel, panel->down.from_m);
  return (panel->along.to_m - panel->along.from_m) * stretch;
}

/* Field columns between two neighbouring lap or edge columns, evenly spaced and
 * staggered. */
static void
pin_panel (const Columns *all, const Panel *panel)
{
  const SwLaying *laying = all->laying;
  const SwTier *tier = &laying->out->tiers[panel->tier];
  double middle_m = (panel->along.from_m + panel->along.to_m) / 2.0;
  int columns = sw_count_up (widest_m (laying, panel), tier->pin_across_m) - 1;
  double gap_m = (panel->along.to_m - panel->along.from_m) / (columns + 1);
  g_autoptr (GArray) rows_m = g_array_new (FALSE, FALSE, sizeof (double));

  for (int i = 0; i < tier->slots; i++)
    {
      double down_m = sw_slot_down_m (laying->out->ground, tier, middle_m, i);
      g_array_append_val (rows_m, down_m);
    }
  add_joint_rows (laying, tier, all->pieces, middle_m, panel->strip, rows_m);
  g_array_sort (rows_m, sw_compare_doubles);
  for (int c = 1; c <= columns; c++)
    {
      /* Counted from the leeward end, so that the mirrored face is pinned as its
       * mirror. */
      int from_leeward = laying->face->leeward == SW_SIDE_LEFT ? c : columns + 1 - c;
      gboolean odd = from_leeward % 2 == 1;
      Column column = { .tier = panel->tier,
                        .role = SW_PIN_FIELD,
                        .along_m = panel->along.from_m + c * gap_m,
                        .first_m = (odd ? 0.5 : 1.0) * tier->pin_down_m,
                        .step_m = tier->pin_down_m,
                        .end_clear_m = CLEAR_M,
                        .rows_m = rows_m,
                        .within_m = panel->down };

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

/* A strip from left to right, beside the @side strip; -1 where there is none. */
static int
strip_beside (const SwLaying *laying, const SwTier *tier, int strip, int side)
{
  int beside = laying->face->leeward == SW_SIDE_LEFT ? strip + side : strip - side;

  if (tier->closed)
    return (beside + tier->strips) % tier->strips;
  return beside < tier->strips ? beside : -1;
}

static double
end_of_m (const SwLaying *laying, guint tier, int strip)
{
  return strip >= 0 ? sw_infill_end_m (laying, tier, strip) : (double) NAN;
}

/* Whether infill that ends at @end_m lies beside the middle of @down. */
static gboolean
lies_beside (const SwTier *tier, double end_m, SwSpan down)
{
  double from_m = fmax (down.from_m, tier->reach.down_from_m);
  double to_m = fmin (down.to_m, tier->reach.down_to_m);

  return isnan (end_m) || ((from_m + to_m) / 2.0 > end_m) == sw_opens_down (tier);
}

/* Where on the @side of a strip its lap lies: at @lap_m, or beyond the end of infill in
 * the middle of the lap with the strip on its other side. */
static double
line_beside_m (const SwLaying *laying, const Panel *panel, int side, double lap_m)
{
  const SwTier *tier = &laying->out->tiers[panel->tier];
  double round_m = tier->along_to_m - tier->along_from_m, at_m;
  int beside = strip_beside (laying, tier, panel->strip, side);
  double end_m = end_of_m (laying, panel->tier, beside);

  if (lies_beside (tier, end_m, panel->down))
    return lap_m;
  at_m = sw_infill_lap_middle_m (laying, panel->tier, beside);
  if (tier->closed && fabs (at_m - lap_m) > round_m / 2.0)
    at_m += at_m < lap_m ? round_m : -round_m;
  return at_m;
}

/* Where infill beside a full strip ends, between no bound above and none below. */
static GArray *
panel_ends (const SwLaying *laying, guint tier_index, int strip)
{
  const SwTier *tier = &laying->out->tiers[tier_index];
  double bounds[] = { -INFINITY, INFINITY };
  GArray *ends_m = g_array_new (FALSE, FALSE, sizeof (double));

  g_array_append_vals (ends_m, bounds, G_N_ELEMENTS (bounds));
  for (int side = -1; side <= 1; side += 2)
    {
      double end_m =
          end_of_m (laying, tier_index, strip_beside (laying, tier, strip, side));

      if (!isnan (end_m))
        g_array_append_val (ends_m, end_m);
    }
  g_array_sort (ends_m, sw_compare_doubles);
  return ends_m;
}

/* The field of a strip, in panels that end where infill beside it does. */
static void
pin_strip (const Columns *columns, guint tier_index, int strip, SwSpan laps)
{
  const SwLaying *laying = columns->laying;
  double own_m = sw_infill_end_m (laying, tier_index, strip);
  g_autoptr (GArray) ends_m = NULL;

  if (!isnan (own_m))
    {
      gboolean down = sw_opens_down (&laying->out->tiers[tier_index]);
      Panel panel = {
        tier_index, strip, laps, { down ? own_m : -INFINITY, down ? INFINITY : own_m }
      };

      pin_panel (columns, &panel);
      return;
    }
  ends_m = panel_ends (laying, tier_index, strip);
  for (guint i = 1; i < ends_m->len; i++)
    {
      Panel panel = { tier_index,
                      strip,
                      laps,
                      { g_array_index (ends_m, double, i - 1),
                        g_array_index (ends_m, double, i) } };

      if (panel.down.from_m >= panel.down.to_m)
        continue;
      panel.along.from_m = line_beside_m (laying, &panel, -1, laps.from_m);
      panel.along.to_m = line_beside_m (laying, &panel, 1, laps.to_m);
      pin_panel (columns, &panel);
    }
}

/* The side lap right of a strip, as far as both lie there. */
static void
pin_lap (const Columns *columns, guint tier_index, int strip, double along_m)
{
  const SwLaying *laying = columns->laying;
  const SwTier *tier = &laying->out->tiers[tier_index];
  int beside = strip_beside (laying, tier, strip, 1);
  double end_m = end_of_m (laying, tier_index, strip);
  Column column = { .tier = tier_index,
                    .role = SW_PIN_SIDE_LAP,
                    .along_m = along_m,
                    .step_m =
                        sw_practice_get (laying->practice, SW_PRACTICE_SIDE_LAP_PIN_M),
                    .within_m = { -INFINITY, INFINITY } };

  if (isnan (end_m))
    end_m = end_of_m (laying, tier_index, beside);
  if (!isnan (end_m) && sw_opens_down (tier))
    column.within_m.from_m = end_m + CLEAR_M;
  else if (!isnan (end_m))
    column.within_m.to_m = end_m - CLEAR_M;
  pin_column (columns, column);
}

/* The lap of the two strips beside infill, beyond its end. */
static void
pin_lap_beyond (const Columns *columns, guint tier_index, int strip)
{
  const SwLaying *laying = columns->laying;
  const SwTier *tier = &laying->out->tiers[tier_index];
  double end_m = sw_infill_end_m (laying, tier_index, strip);
  Column column = { .tier = tier_index,
                    .role = SW_PIN_SIDE_LAP,
                    .along_m = sw_infill_lap_middle_m (laying, tier_index, strip),
                    .step_m =
                        sw_practice_get (laying->practice, SW_PRACTICE_SIDE_LAP_PIN_M),
                    .within_m = { -INFINITY, INFINITY } };

  if (sw_opens_down (tier))
    column.within_m.to_m = end_m;
  else
    column.within_m.from_m = end_m;
  pin_column (columns, column);
}

static void
pin_laps_and_field (const Columns *columns, guint tier_index)
{
  const SwLaying *laying = columns->laying;
  const SwTier *tier = &laying->out->tiers[tier_index];
  g_autoptr (GArray) at_m = lap_middles (laying, tier);

  for (int i = 0; i < tier->strips; i++)
    {
      int strip = laying->face->leeward == SW_SIDE_LEFT ? i : tier->strips - 1 - i;
      SwSpan laps = { g_array_index (at_m, double, i),
                      g_array_index (at_m, double, i + 1) };

      pin_strip (columns, tier_index, strip, laps);
      if (i + 1 < tier->strips || tier->closed)
        pin_lap (columns, tier_index, strip, laps.to_m);
      if (!isnan (sw_infill_end_m (laying, tier_index, strip)))
        pin_lap_beyond (columns, tier_index, strip);
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
