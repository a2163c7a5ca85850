/* SPDX-License-Identifier: MIT */
#include "slope-checks.h"
#include "../../src/layout/region.h"
#include <math.h>
#include <slopewright/base/count.h>

#define POINTS 150

/* Outlines are met within 0.1 mm. */
#define EDGE_M 2e-4

/* Pins are kept as floats. */
/* A line straight in space from step to step leaves warped ground by a little. */
#define TIER_SLACK_M 0.01
#define PIN_SLACK_M 1e-4

static double
practice_m (const SwLayout *layout, SwPracticeValue value)
{
  return layout->practice->values[value].value;
}

static gboolean
in_tier (const SwFaceLayout *face, const SwTier *tier, SwPoint p)
{
  return p.y_m > sw_ground_break_out_m (face->ground, tier->reach.from_break, p.x_m)
         && p.y_m < sw_ground_break_out_m (face->ground, tier->reach.to_break, p.x_m);
}

static gboolean
in_obstacle (const SwFace *face, SwPoint p)
{
  for (guint i = 0; i < face->obstacles->len; i++)
    {
      const SwObstacle *obstacle = face->obstacles->pdata[i];

      if (sw_ring_contains ((SwRing){ obstacle->outline, obstacle->n_outline }, p))
        return TRUE;
    }
  return FALSE;
}

static double
middle_m (const SwRun *run)
{
  return (run->along_from_m + run->along_to_m) / 2.0;
}

/* True distance along the contour; round a heap the shorter way. */
static double
apart_m (const SwFaceLayout *face, const SwTier *tier, double a_m, double b_m,
         double out_m)
{
  double apart = fabs (a_m - b_m);

  if (tier->closed)
    apart = fmin (apart, tier->along_to_m - tier->along_from_m - apart);
  return apart * sw_ground_stretch (face->ground, out_m);
}

static gboolean
is_covered (const SwFaceLayout *face, const SwTier *tier, SwPoint p)
{
  for (guint r = tier->first_run; r < tier->first_run + tier->n_runs; r++)
    {
      const SwRun *run = &face->runs[r];

      if (p.y_m >= run->out_from_m - EDGE_M && p.y_m <= run->out_to_m + EDGE_M
          && apart_m (face, tier, p.x_m, middle_m (run), p.y_m)
                 <= run->width_m / 2.0 + EDGE_M)
        return TRUE;
    }
  return FALSE;
}

const char *
check_no_bare_ground (const SwLayout *layout, GRand *rand)
{
  const SwFaceLayout *face = &layout->faces[0];
  SwRing outline = { face->face->outline, face->face->n_outline };
  SwBox box = sw_ring_box (outline);

  for (int i = 0; i < POINTS; i++)
    {
      SwPoint p = { g_rand_double_range (rand, box.x0_m, box.x1_m),
                    g_rand_double_range (rand, box.y0_m, box.y1_m) };

      if (!sw_ring_contains (outline, p) || in_obstacle (face->face, p))
        continue;
      for (guint t = 0; t < face->n_tiers; t++)
        if (in_tier (face, &face->tiers[t], p) && !is_covered (face, &face->tiers[t], p))
          return "ground without a run over it";
    }
  return NULL;
}

/* Overlap of two runs at the heights that both reach; 0 where neither is at the other. */
static const char *
check_lap (const SwLayout *layout, const SwTier *tier, const SwRun *a, const SwRun *b)
{
  const SwFaceLayout *face = &layout->faces[0];
  double from_m = fmax (a->out_from_m, b->out_from_m);
  double to_m = fmin (a->out_to_m, b->out_to_m);
  double least_m = practice_m (layout, SW_PRACTICE_SIDE_LAP_M);

  for (int i = 0; i <= 8 && from_m < to_m; i++)
    {
      double out_m = from_m + (to_m - from_m) * i / 8.0;
      double lap_m = (a->width_m + b->width_m) / 2.0
                     - apart_m (face, tier, middle_m (a), middle_m (b), out_m);

      if (lap_m < least_m - 2.0 / SW_TICKS_PER_M)
        return "side lap below the practice's";
    }
  return NULL;
}

/* Strips without ground have no number: neighbours are those a strip's pitch apart. */
static gboolean
side_by_side (const SwFaceLayout *face, const SwTier *tier, const SwRun *a,
              const SwRun *b)
{
  double widest_out_m = sw_ground_stretch (face->ground, tier->reach.out_from_m)
                                > sw_ground_stretch (face->ground, tier->reach.out_to_m)
                            ? tier->reach.out_from_m
                            : tier->reach.out_to_m;

  return apart_m (face, tier, middle_m (a), middle_m (b), widest_out_m)
         < fmax (a->width_m, b->width_m);
}

const char *
check_side_laps (const SwLayout *layout, GRand *rand)
{
  const SwFaceLayout *face = &layout->faces[0];
  const char *wrong = NULL;

  for (guint t = 0; t < face->n_tiers && wrong == NULL; t++)
    {
      const SwTier *tier = &face->tiers[t];
      const SwRun *runs = face->runs + tier->first_run;

      if (sw_ticks (tier->side_lap_m)
          < sw_ticks (practice_m (layout, SW_PRACTICE_SIDE_LAP_M)))
        wrong = "tier's side lap below the practice's";
      for (guint i = 0; i < tier->n_runs && wrong == NULL; i++)
        for (guint k = i + 1; k < tier->n_runs && wrong == NULL; k++)
          if (runs[k].number == runs[i].number + 1
              && side_by_side (face, tier, &runs[i], &runs[k]))
            wrong = check_lap (layout, tier, &runs[i], &runs[k]);
          else if (runs[k].number > runs[i].number + 1)
            break;
    }
  return wrong;
}

static const char *
check_run_pieces (const SwLayout *layout, const SwTier *tier, const SwRun *run)
{
  const SwPiece *pieces = sw_layout_run_pieces (layout, run);
  gint64 sum = 0;

  for (guint i = 0; i < run->n_pieces; i++)
    {
      sum += sw_ticks (pieces[i].length_m);
      if (run->n_pieces > 1
          && sw_ticks (pieces[i].length_m)
                 < sw_ticks (practice_m (layout, SW_PRACTICE_MIN_PIECE_M)) - 1)
        return "piece below the least length";
      if (i > 0
          && sw_ticks (pieces[i - 1].down_to_m - pieces[i].down_from_m)
                 < sw_ticks (tier->end_lap_m) - 1)
        return "end lap below the practice's";
    }
  return ABS (sum - sw_ticks (run->cut_m)) > (gint64) run->n_pieces
             ? "pieces do not make up their run"
             : NULL;
}

const char *
check_pieces (const SwLayout *layout, GRand *rand)
{
  const SwFaceLayout *face = &layout->faces[0];
  const char *wrong = NULL;

  for (guint r = 0; r < face->n_runs && wrong == NULL; r++)
    wrong = check_run_pieces (layout, &face->tiers[face->runs[r].tier], &face->runs[r]);
  return wrong;
}

const char *
check_rolls (const SwLayout *layout, GRand *rand)
{
  gint64 capacity = sw_ticks (layout->job->roll_length_m);
  g_autofree gint64 *used = g_new0 (gint64, layout->rolls);

  for (guint i = 0; i < layout->n_pieces; i++)
    {
      const SwPiece *piece = &layout->pieces[i];

      if (piece->roll < 1 || piece->roll > layout->rolls)
        return "piece from no roll";
      if (sw_ticks (piece->from_m) != used[piece->roll - 1])
        return "piece that does not follow the one before it on its roll";
      used[piece->roll - 1] += sw_ticks (piece->length_m);
    }
  for (int i = 0; i < layout->rolls; i++)
    if (layout->cut_rolls[i].offcut_m < 0.0
        || used[i] + sw_ticks (layout->cut_rolls[i].offcut_m) != capacity)
      return "pieces and off-cut are not the roll";
  if (layout->rolls_bound > layout->rolls || layout->rolls_bound < 1)
    return "bound above the plan";
  return layout->rolls > layout->rolls_naive ? "more rolls than counted naively" : NULL;
}

static double
clip_m2 (const SwFaceLayout *face, const SwRegion *clip)
{
  double area_m2 = 0.0;

  for (guint i = 0; i < sw_region_rings (clip); i++)
    {
      double ring_m2 = sw_ground_area_m2 (face->ground, sw_region_ring (clip, i));

      area_m2 += sw_region_is_hole (clip, i) ? -ring_m2 : ring_m2;
    }
  return area_m2;
}

/* Outline within the tier's reach. */
static SwRegion *
tier_region (const SwFaceLayout *face, const SwTier *tier)
{
  g_autoptr (GArray) band = g_array_new (FALSE, FALSE, sizeof (SwPoint));
  g_autoptr (SwRegion) outline = NULL;

  sw_ground_band (face->ground, tier->reach, tier->along_from_m, tier->along_to_m, band);
  if (sw_region_new (face->face->outline, face->face->n_outline, &outline) != SW_OK)
    return NULL;
  return sw_region_clip (outline, (SwRing){ (SwPoint *) band->data, band->len });
}

const char *
check_clips_add_up (const SwLayout *layout, GRand *rand)
{
  const SwFaceLayout *face = &layout->faces[0];

  for (guint t = 0; t < face->n_tiers; t++)
    {
      const SwTier *tier = &face->tiers[t];
      double pitch_m = (tier->along_to_m - tier->along_from_m) / tier->strips;
      double sum_m2 = -tier->deducted_m2, whole_m2 = tier->net_m2 + tier->deducted_m2;
      g_autoptr (SwRegion) region = tier_region (face, tier);

      for (int s = 0; s < tier->strips; s++)
        {
          double from_m = tier->along_from_m + s * pitch_m;
          g_autoptr (SwRegion) clip = sw_region_clip_box (
              region, (SwBox){ from_m, tier->reach.out_from_m - 1.0, from_m + pitch_m,
                               tier->reach.out_to_m + 1.0 });

          sum_m2 += clip_m2 (face, clip);
        }
      if (fabs (sum_m2 - tier->net_m2) > 1e-6 * whole_m2 + 1e-3)
        return "clips that are not the net area";
    }
  return NULL;
}

/* Trenches lie beyond crest and toe; all other pins hold ground of their tier. */
static gboolean
off_tier (const SwFaceLayout *face, const SwPinPlace *pin)
{
  const SwTier *tier = &face->tiers[pin->tier];
  double along_m = (double) pin->along_m, down_m = (double) pin->down_m;

  if (pin->role == SW_PIN_KEY_TRENCH || pin->role == SW_PIN_SLOT
      || pin->role == SW_PIN_TOE)
    return FALSE;
  return down_m < sw_ground_break_down_m (face->ground, tier->reach.from_break, along_m)
                      - TIER_SLACK_M
         || down_m > sw_ground_break_down_m (face->ground, tier->reach.to_break, along_m)
                         + TIER_SLACK_M;
}

const char *
check_pins (const SwLayout *layout, GRand *rand)
{
  const SwFaceLayout *face = &layout->faces[0];
  gsize by_role = 0, by_length = 0;

  for (guint role = 0; role < SW_PIN_ROLE_COUNT; role++)
    by_role += face->pins_by_role[role];
  for (guint i = 0; i < face->n_pin_lengths; i++)
    by_length += face->pin_lengths[i].count;
  if (by_role != face->n_pins || by_length != face->n_pins)
    return "pins counted wrongly";
  for (gsize i = 0; i < face->n_pins; i++)
    {
      SwPoint at = { (double) face->pins[i].along_m, (double) face->pins[i].out_m };
      double down_m = (double) face->pins[i].down_m;

      if (in_obstacle (face->face, at))
        return "pin in an obstacle";
      if (off_tier (face, &face->pins[i]))
        return "pin off its tier";
      if (fabs (sw_ground_down_m (face->ground, at) - down_m) > 100.0 * PIN_SLACK_M
          && face->pins[i].role == SW_PIN_FIELD)
        return "field pin that is not where its distance says";
    }
  return NULL;
}
