/* SPDX-License-Identifier: MIT */
#include "pin-lines.h"
#include "chain.h"
#include "infill.h"
#include "ring.h"
#include <math.h>
#include <slopewright/base/count.h>

/* Edge rows stand this far inside the edge, so that the pin holds the sheet. */
#define EDGE_INSET_M 0.05

double
sw_along_on_tier_m (const SwLaying *laying, guint tier_index, double along_m)
{
  const SwTier *tier = &laying->out->tiers[tier_index];
  double round_m = tier->along_to_m - tier->along_from_m;
  gint64 seam = laying->face->leeward == SW_SIDE_LEFT ? 0 : 1;

  if (!tier->closed)
    return along_m;
  if (sw_ticks (along_m - tier->along_to_m) >= seam)
    return along_m - round_m;
  return sw_ticks (along_m - tier->along_from_m) < seam ? along_m + round_m : along_m;
}

void
sw_add_pin (SwLaying *laying, guint tier, SwPinRole role, double line_along_m,
            double down_m)
{
  double along_m = sw_along_on_tier_m (laying, tier, line_along_m);
  double out_m = sw_ground_out_m (laying->out->ground, along_m, down_m);
  SwPinPlace pin = { (float) along_m, (float) out_m, (float) down_m,
                     (guint16) tier,  (guint8) role, 0 };

  if (!sw_ring_rows_bar (laying->rings, role, (SwPoint){ along_m, out_m }))
    g_array_append_val (laying->pins, pin);
}

/* The same, if there is ground of the tier: a row across a strip may pass its outline. */
static void
add_pin_inside (SwLaying *laying, guint tier, SwPinRole role, double along_m,
                double down_m)
{
  const SwRegion *region = g_ptr_array_index (laying->regions, tier);
  SwPoint plan;

  along_m = sw_along_on_tier_m (laying, tier, along_m);
  plan = (SwPoint){ along_m, sw_ground_out_m (laying->out->ground, along_m, down_m) };
  if (sw_region_contains (region, plan))
    sw_add_pin (laying, tier, role, along_m, down_m);
}

/* All round a heap a line ends where it began. */
static gboolean
is_ring (const SwLaying *laying, const SwTrench *trench)
{
  const SwTier *tier = &laying->out->tiers[trench->tier];

  return tier->closed && trench->n_line > 1
         && sw_ticks (trench->line[trench->n_line - 1].along_m - trench->line[0].along_m)
                >= sw_ticks (tier->along_to_m - tier->along_from_m);
}

/* Pins from end to end of a line, evenly, no further apart than @spacing_m. */
static void
pin_line (SwLaying *laying, const SwTrench *trench, SwPinRole role, double spacing_m)
{
  int gaps = sw_count_up (trench->length_m, spacing_m), next = 0;
  int last_pin = is_ring (laying, trench) ? gaps - 1 : gaps;
  double step_m = trench->length_m / MAX (gaps, 1), walked_m = 0.0;

  for (guint i = 1; i < trench->n_line; i++)
    {
      SwPlace a = trench->line[i - 1], b = trench->line[i];
      double length_m =
          sw_ground_length_m (laying->out->ground, (SwPoint){ a.along_m, a.out_m },
                              (SwPoint){ b.along_m, b.out_m });
      gboolean last = i + 1 == trench->n_line;

      for (; next <= last_pin && (last || next * step_m <= walked_m + length_m); next++)
        {
          double t = length_m > 0.0 ? (next * step_m - walked_m) / length_m : 0.0;

          t = CLAMP (t, 0.0, 1.0);
          sw_add_pin (laying, trench->tier, role, a.along_m + t * (b.along_m - a.along_m),
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

          add_pin_inside (laying, tier, SW_PIN_EDGE,
                          p[i - 1].x_m + t * (p[i].x_m - p[i - 1].x_m) + inset_m,
                          from_m + t * (to_m - from_m));
        }
      walked_m += length_m;
    }
}

SwSpan
sw_end_lap_rows (const SwLaying *laying, double middle_m)
{
  double gap_m = sw_practice_get (laying->practice, SW_PRACTICE_END_LAP_ROW_GAP_M);

  return (SwSpan){ middle_m - gap_m / 2.0, middle_m + gap_m / 2.0 };
}

/* Two staggered rows through both layers of an end lap. */
static void
pin_joint (SwLaying *laying, const SwRun *run, SwSpan along, double middle_m)
{
  SwSpan rows = sw_end_lap_rows (laying, middle_m);
  int pins = sw_count_up (run->width_m,
                          sw_practice_get (laying->practice, SW_PRACTICE_END_LAP_PIN_M));
  double step_m = (along.to_m - along.from_m) / pins;

  for (int i = 0; i < pins; i++)
    add_pin_inside (laying, run->tier, SW_PIN_END_LAP, along.from_m + (i + 0.5) * step_m,
                    rows.from_m);
  for (int i = 1; i < pins; i++)
    add_pin_inside (laying, run->tier, SW_PIN_END_LAP, along.from_m + i * step_m,
                    rows.to_m);
}

/* The end of infill is held over its whole width, like an end lap, through the runs that
 * lie over it or under it. */
static void
pin_free_end (SwLaying *laying, const SwRun *run)
{
  const SwTier *tier = &laying->out->tiers[run->tier];
  double middle_m = (run->along_from_m + run->along_to_m) / 2.0;
  double lap_m = sw_free_end_lap_m (run, tier);
  double out_m = sw_ground_out_m (laying->out->ground, middle_m, lap_m);
  double half_m = run->width_m / 2.0 / sw_ground_stretch (laying->out->ground, out_m);

  pin_joint (laying, run, (SwSpan){ middle_m - half_m, middle_m + half_m }, lap_m);
}

static void
pin_joints (SwLaying *laying, const SwPiece *pieces)
{
  for (guint r = 0; r < laying->out->n_runs; r++)
    {
      const SwRun *run = &laying->out->runs[r];
      const SwTier *tier = &laying->out->tiers[run->tier];

      for (guint p = 1; p < run->n_pieces; p++)
        pin_joint (laying, run, (SwSpan){ run->along_from_m, run->along_to_m },
                   pieces[run->first_piece + p].down_from_m + tier->end_lap_m / 2.0);
      if (run->infill_above || run->infill_below)
        pin_free_end (laying, run);
    }
}

static void
pin_edges (SwLaying *laying)
{
  for (guint t = 0; t < laying->out->n_tiers; t++)
    {
      g_autoptr (GPtrArray) chains = sw_chains_new (
          g_ptr_array_index (laying->regions, t), laying->out->ground, NULL);

      for (guint i = 0; i < chains->len && !laying->out->tiers[t].closed; i++)
        if (((SwChain *) chains->pdata[i])->kind == SW_CHAIN_SIDE)
          pin_edge (laying, t, chains->pdata[i]);
    }
}

static void
pin_rings (SwLaying *laying)
{
  const GArray *pins = laying->rings != NULL ? sw_ring_rows_pins (laying->rings) : NULL;

  for (guint i = 0; pins != NULL && i < pins->len; i++)
    {
      SwRingPin pin = g_array_index (pins, SwRingPin, i);

      sw_add_pin (laying, pin.tier, SW_PIN_RING, pin.at.x_m,
                  sw_ground_down_m (laying->out->ground, pin.at));
    }
}

/* From the leeward end, so that the mirrored face keeps the mirrored pins. */
static int
compare_from_leeward (gconstpointer a, gconstpointer b, gpointer side)
{
  const SwPinPlace *x = a, *y = b;
  gint64 along = sw_ticks ((double) x->along_m) - sw_ticks ((double) y->along_m);
  gint64 down = sw_ticks ((double) x->down_m) - sw_ticks ((double) y->down_m);

  if (along != 0)
    return (along < 0) == (GPOINTER_TO_INT (side) == SW_SIDE_LEFT) ? -1 : 1;
  if (down != 0)
    return down < 0 ? -1 : 1;
  return (int) x->role - (int) y->role;
}

/* By place along, so that neighbours are soon found; then in a fixed order. */
static int
compare_places (gconstpointer a, gconstpointer b)
{
  const SwPinPlace *x = a, *y = b;

  if (x->along_m < y->along_m || x->along_m > y->along_m)
    return x->along_m < y->along_m ? -1 : 1;
  if (x->down_m < y->down_m || x->down_m > y->down_m)
    return x->down_m < y->down_m ? -1 : 1;
  return (int) x->role - (int) y->role;
}

/* Pins of lines, those that stay first. */
typedef struct
{
  const SwLaying *laying;
  SwPinPlace *pins;
  guint kept;
  double reach_m; /* along: doubles lie within it */
  double apart;   /* what sw_reaches_ticks() asks of two that are no double */
} Kept;

static gboolean
is_double (const Kept *all, const SwPinPlace *a, const SwPinPlace *b)
{
  const SwLaying *laying = all->laying;
  const SwTier *tier = &laying->out->tiers[a->tier];
  double stretch = sw_ground_stretch (laying->out->ground, (double) a->out_m);
  double along_m = fabs ((double) b->along_m - (double) a->along_m);

  if (tier->closed)
    along_m = fmin (along_m, tier->along_to_m - tier->along_from_m - along_m);
  return !sw_reaches_ticks (
      hypot (stretch * along_m, (double) b->down_m - (double) a->down_m), all->apart);
}

/* Where two rows meet, the pin of the row of lower rank stays: trenches before laps
 * and edges. */
static int
rank (const SwPinPlace *pin)
{
  static const int ranks[SW_PIN_ROLE_COUNT] = {
    [SW_PIN_KEY_TRENCH] = 0, [SW_PIN_TOE] = 1,  [SW_PIN_SLOT] = 2,     [SW_PIN_RING] = 3,
    [SW_PIN_END_LAP] = 4,    [SW_PIN_EDGE] = 5, [SW_PIN_SIDE_LAP] = 6, [SW_PIN_FIELD] = 7
  };

  return ranks[pin->role];
}

/* Whether @pin is no double of the kept ones from @k on, step by step, as far as they are
 * within reach; a double of higher rank is replaced by it. */
static gboolean
stands_alone (const Kept *all, guint k, int step, double from_along_m,
              const SwPinPlace *pin)
{
  for (; k < all->kept
         && fabs ((double) all->pins[k].along_m - from_along_m) <= all->reach_m;
       k = (guint) ((int) k + step))
    if (is_double (all, &all->pins[k], pin))
      {
        if (rank (pin) < rank (&all->pins[k]))
          all->pins[k] = *pin;
        return FALSE;
      }
  return TRUE;
}

static void
drop_doubles (SwLaying *laying)
{
  Kept all = { .laying = laying,
               .pins = (SwPinPlace *) laying->pins->data,
               .reach_m = SW_DOUBLE_PIN_M / sw_least_stretch (laying),
               .apart = sw_least_ticks (SW_DOUBLE_PIN_M) };
  const SwTier *tier = &laying->out->tiers[0];
  double round_m = tier->along_to_m - tier->along_from_m;

  if (laying->face->leeward == SW_SIDE_RIGHT)
    round_m = -round_m;
  for (guint i = 0; i < laying->pins->len; i++)
    {
      SwPinPlace pin = all.pins[i];
      double along_m = (double) pin.along_m;

      if (stands_alone (&all, all.kept - 1, -1, along_m, &pin)
          && (!tier->closed || stands_alone (&all, 0, 1, along_m - round_m, &pin)))
        all.pins[all.kept++] = pin;
    }
  g_array_set_size (laying->pins, all.kept);
}

double
sw_least_stretch (const SwLaying *laying)
{
  const SwGround *ground = laying->out->ground;

  return fmin (1.0, fmin (sw_ground_stretch (ground, sw_ground_crest_out_m (ground)),
                          sw_ground_stretch (ground, sw_ground_toe_out_m (ground))));
}

void
sw_lay_pin_lines (SwLaying *laying, const SwPiece *pieces)
{
  pin_trenches (laying);
  pin_edges (laying);
  pin_joints (laying, pieces);
  pin_rings (laying);
  g_array_sort_with_data (laying->pins, compare_from_leeward,
                          GINT_TO_POINTER (laying->face->leeward));
  drop_doubles (laying);
  g_array_sort (laying->pins, compare_places);
}
