/* SPDX-License-Identifier: MIT */
#include "laying-pins.h"
#include <math.h>

/* A pin at the very edge of a run belongs to it, whatever the last digit says. */
#define EDGE_M 0.002

/* Pins of one run and act, of one tier's toe or of one obstacle stand in one group:
 * first the runs, then the tiers, then the obstacles. */
struct SwPinWork
{
  const SwFaceLayout *laid;
  const SwRunSteps *runs;
  GArray **strips;     /* one a tier: (element-type Strip), by place along the crest */
  double widest_m;     /* run */
  guint32 *groups;     /* one a pin */
  gsize *group_counts; /* pins in each group */
  guint n_groups;
};

/* A run by its middle along the crest. */
typedef struct
{
  double middle_m;
  guint run;
} Strip;

static int
compare_strips (gconstpointer a, gconstpointer b)
{
  const Strip *x = a, *y = b;

  return (x->middle_m > y->middle_m) - (x->middle_m < y->middle_m);
}

static GArray *
strips_of (const SwFaceLayout *laid, const SwTier *tier)
{
  GArray *strips = g_array_sized_new (FALSE, FALSE, sizeof (Strip), tier->n_runs);

  for (guint i = tier->first_run; i < tier->first_run + tier->n_runs; i++)
    {
      const SwRun *run = &laid->runs[i];
      Strip strip = { (run->along_from_m + run->along_to_m) / 2.0, i };

      g_array_append_val (strips, strip);
    }
  g_array_sort (strips, compare_strips);
  return strips;
}

/* How far a place lies above or below what a run covers in the middle. */
static double
gap_m (const SwRun *run, double down_m)
{
  return fmax (0.0, fmax (run->down_from_m - down_m, down_m - run->down_to_m));
}

/* Infill covers nothing beyond its free end; everything else goes as far as the ground. */
static gboolean
reaches_down (const SwRun *run, double down_m)
{
  return (!run->infill_above || down_m >= run->down_from_m - EDGE_M)
         && (!run->infill_below || down_m <= run->down_to_m + EDGE_M);
}

/* The run that comes last of those that cover a pin's place; of the parts of a strip the
 * one that lies there. */
typedef struct
{
  guint best;    /* run, or SW_LAYING_NONE */
  guint nearest; /* the same if none covers it to its edge */
  double nearest_m;
} Found;

static gboolean
comes_after (const SwPinWork *work, guint run, guint best, double down_m)
{
  const SwRun *a = &work->laid->runs[run], *b = &work->laid->runs[best];

  if (a->strip == b->strip)
    return gap_m (a, down_m) < gap_m (b, down_m);
  return work->runs[run].place > work->runs[best].place;
}

static void
look_from (const SwPinWork *work, const SwPinPlace *pin, double along_m, Found *found)
{
  const GArray *strips = work->strips[pin->tier];
  const SwFaceLayout *laid = work->laid;
  double stretch = sw_ground_stretch (laid->ground, (double) pin->out_m);
  double reach_m = work->widest_m / 2.0 / stretch + EDGE_M;
  guint low = 0, high = strips->len;

  while (low < high)
    {
      guint middle = (low + high) / 2;

      if (g_array_index (strips, Strip, middle).middle_m < along_m - reach_m)
        low = middle + 1;
      else
        high = middle;
    }
  for (; low < strips->len; low++)
    {
      const Strip *strip = &g_array_index (strips, Strip, low);
      const SwRun *run = &laid->runs[strip->run];
      double off_m = fabs (strip->middle_m - along_m);

      if (strip->middle_m > along_m + reach_m)
        break;
      if (!reaches_down (run, (double) pin->down_m))
        continue;
      if (off_m < found->nearest_m)
        {
          found->nearest_m = off_m;
          found->nearest = strip->run;
        }
      if (off_m > run->width_m / 2.0 / stretch + EDGE_M)
        continue;
      if (found->best == SW_LAYING_NONE
          || comes_after (work, strip->run, found->best, (double) pin->down_m))
        found->best = strip->run;
    }
}

static guint
run_at (const SwPinWork *work, const SwPinPlace *pin)
{
  const SwTier *tier = &work->laid->tiers[pin->tier];
  double round_m = tier->along_to_m - tier->along_from_m;
  Found found = { SW_LAYING_NONE, tier->first_run, INFINITY };

  look_from (work, pin, (double) pin->along_m, &found);
  if (tier->closed)
    {
      look_from (work, pin, (double) pin->along_m - round_m, &found);
      look_from (work, pin, (double) pin->along_m + round_m, &found);
    }
  return found.best != SW_LAYING_NONE ? found.best : found.nearest;
}

static guint
nearest_obstacle (const SwFaceLayout *laid, const SwPinPlace *pin)
{
  SwPoint at = { (double) pin->along_m, (double) pin->out_m };
  double least_m = INFINITY;
  guint nearest = 0;

  for (guint i = 0; i < laid->n_obstacles; i++)
    {
      const SwObstacle *obstacle = laid->obstacles[i].obstacle;

      for (guint k = 0; laid->obstacles[i].standing && k < obstacle->n_outline; k++)
        {
          double off_m = sw_segment_distance_m (
              obstacle->outline[k], obstacle->outline[(k + 1) % obstacle->n_outline], at);

          if (off_m < least_m)
            {
              least_m = off_m;
              nearest = i;
            }
        }
    }
  return nearest;
}

static guint
run_group (guint run, SwLayingAct act)
{
  return run * SW_LAYING_ACT_COUNT + act;
}

static guint
tier_group (const SwPinWork *work, guint tier)
{
  return work->laid->n_runs * SW_LAYING_ACT_COUNT + tier;
}

static guint
obstacle_group (const SwPinWork *work, guint obstacle)
{
  return tier_group (work, work->laid->n_tiers) + obstacle;
}

static guint
group_of (const SwPinWork *work, const SwPinPlace *pin)
{
  static const SwLayingAct acts[SW_PIN_ROLE_COUNT] = {
    [SW_PIN_KEY_TRENCH] = SW_LAYING_ANCHOR, [SW_PIN_SLOT] = SW_LAYING_SLOT,
    [SW_PIN_SIDE_LAP] = SW_LAYING_SIDE_LAP, [SW_PIN_END_LAP] = SW_LAYING_END_LAP,
    [SW_PIN_EDGE] = SW_LAYING_PIN_FIELD,    [SW_PIN_FIELD] = SW_LAYING_PIN_FIELD
  };
  SwLayingAct act = acts[pin->role];
  guint run;

  if (pin->role == SW_PIN_TOE || work->laid->tiers[pin->tier].n_runs == 0)
    return tier_group (work, pin->tier);
  if (pin->role == SW_PIN_RING)
    return obstacle_group (work, nearest_obstacle (work->laid, pin));
  run = run_at (work, pin);
  if (act == SW_LAYING_ANCHOR && work->laid->runs[run].infill_above)
    act = SW_LAYING_PIN_FIELD;
  return run_group (run, act);
}

SwPinWork *
sw_pin_work_new (const SwFaceLayout *laid, const SwRunSteps *runs)
{
  SwPinWork *work = g_new0 (SwPinWork, 1);

  work->laid = laid;
  work->runs = runs;
  work->strips = g_new (GArray *, laid->n_tiers);
  for (guint t = 0; t < laid->n_tiers; t++)
    work->strips[t] = strips_of (laid, &laid->tiers[t]);
  for (guint i = 0; i < laid->n_runs; i++)
    work->widest_m = fmax (work->widest_m, laid->runs[i].width_m);
  work->n_groups = obstacle_group (work, laid->n_obstacles);
  work->groups = g_new (guint32, laid->n_pins);
  work->group_counts = g_new0 (gsize, work->n_groups);
  for (gsize i = 0; i < laid->n_pins; i++)
    {
      work->groups[i] = group_of (work, &laid->pins[i]);
      work->group_counts[work->groups[i]]++;
    }
  return work;
}

void
sw_pin_work_free (SwPinWork *work)
{
  if (work == NULL)
    return;
  for (guint t = 0; t < work->laid->n_tiers; t++)
    g_array_unref (work->strips[t]);
  g_free (work->strips);
  g_free (work->groups);
  g_free (work->group_counts);
  g_free (work);
}

gsize
sw_pin_work_count (const SwPinWork *work, guint run, SwLayingAct act)
{
  return work->group_counts[run_group (run, act)];
}

static guint
group_of_step (const SwPinWork *work, const SwLayingStep *step)
{
  if (step->act == SW_LAYING_TOE)
    return tier_group (work, step->tier);
  if (step->act == SW_LAYING_COLLAR)
    return obstacle_group (work, step->obstacle);
  return step->run != SW_LAYING_NONE ? run_group (step->run, step->act) : work->n_groups;
}

/* Pins of a tier that obstacles leave no run of have no step: they are seen to last. */
static void
share_rest (const SwPinWork *work, gsize *next, SwLayingStep *last)
{
  gsize end = last->first_pin;

  for (guint g = 0; g < work->n_groups; g++)
    if (next[g] == G_MAXSIZE)
      {
        next[g] = end;
        end += work->group_counts[g];
      }
  last->n_pins = end - last->first_pin;
}

guint32 *
sw_pin_work_share (const SwPinWork *work, SwLayingStep *steps, guint n_steps)
{
  guint32 *pins = g_new (guint32, work->laid->n_pins);
  g_autofree gsize *next = g_new (gsize, work->n_groups);
  gsize first = 0;

  for (guint g = 0; g < work->n_groups; g++)
    next[g] = G_MAXSIZE;
  for (guint i = 0; i < n_steps; i++)
    {
      guint group = group_of_step (work, &steps[i]);

      steps[i].first_pin = first;
      if (group == work->n_groups)
        continue;
      steps[i].n_pins = work->group_counts[group];
      next[group] = first;
      first += steps[i].n_pins;
    }
  share_rest (work, next, &steps[n_steps - 1]);
  for (gsize i = 0; i < work->laid->n_pins; i++)
    pins[next[work->groups[i]]++] = (guint32) i;
  return pins;
}
