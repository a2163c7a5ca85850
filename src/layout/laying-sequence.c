/* SPDX-License-Identifier: MIT */
#include "laying-pins.h"
#include <slopewright/base/seed.h>

const char *
sw_laying_act_code (SwLayingAct act)
{
  static const char *const codes[SW_LAYING_ACT_COUNT] = {
    "prepare", "seed",     "dig-key",   "dig-slots", "anchor", "backfill", "unroll",
    "slot",    "side-lap", "pin-field", "end-lap",   "collar", "toe",      "inspect"
  };

  return codes[act];
}

/* A sequence in the making. */
typedef struct
{
  SwLayingSequence *sequence;
  GArray *steps; /* (element-type SwLayingStep) */
  guint face;
  const SwFaceLayout *laid;
  const SwPinWork *pins; /* of the face */
} Making;

static SwLayingStep *
add_step (Making *making, SwLayingAct act, guint tier, guint run)
{
  SwLayingStep step = { .act = act,
                        .face = making->face,
                        .tier = tier,
                        .run = run,
                        .piece = SW_LAYING_NONE,
                        .obstacle = SW_LAYING_NONE };

  g_array_append_val (making->steps, step);
  return &g_array_index (making->steps, SwLayingStep, making->steps->len - 1);
}

/* Infill of a nose is laid before all full runs, that of a bowl after them. */
static int
turn_of (const SwFaceLayout *laid, const SwRun *run)
{
  if (!run->infill)
    return 1;
  return laid->face->crest_form == SW_CREST_NOSE ? 0 : 2;
}

static int
compare_turns (gconstpointer a, gconstpointer b, gpointer data)
{
  const SwFaceLayout *laid = data;
  guint x = *(const guint *) a, y = *(const guint *) b;
  int turns = turn_of (laid, &laid->runs[x]) - turn_of (laid, &laid->runs[y]);

  /* Runs stand in the layout from the leeward end. */
  return turns != 0 ? turns : (x > y) - (x < y);
}

/* The runs of a tier in the order in which they are laid. (element-type guint) */
static GArray *
laying_order (const SwFaceLayout *laid, const SwTier *tier)
{
  GArray *order = g_array_sized_new (FALSE, FALSE, sizeof (guint), tier->n_runs);

  for (guint i = 0; i < tier->n_runs; i++)
    {
      guint run = tier->first_run + i;

      g_array_append_val (order, run);
    }
  g_array_sort_with_data (order, compare_turns, (gpointer) laid);
  return order;
}

static void
order_runs (const SwFaceLayout *laid, SwRunSteps *runs)
{
  for (guint t = 0; t < laid->n_tiers; t++)
    {
      g_autoptr (GArray) order = laying_order (laid, &laid->tiers[t]);

      for (guint i = 0; i < order->len; i++)
        runs[g_array_index (order, guint, i)] =
            (SwRunSteps){ .place = i,
                          .anchored = SW_LAYING_NONE,
                          .backfilled = SW_LAYING_NONE,
                          .pressed = SW_LAYING_NONE };
    }
}

static void
add_pieces (Making *making, guint run)
{
  const SwRun *of = &making->laid->runs[run];

  for (guint p = of->first_piece; p < of->first_piece + of->n_pieces; p++)
    {
      making->sequence->pieces[p] = making->steps->len;
      add_step (making, SW_LAYING_UNROLL, of->tier, run)->piece = p;
    }
}

static void
add_run (Making *making, guint run)
{
  static const SwLayingAct pinned[] = { SW_LAYING_SLOT, SW_LAYING_SIDE_LAP,
                                        SW_LAYING_PIN_FIELD, SW_LAYING_END_LAP };
  const SwRun *of = &making->laid->runs[run];
  SwRunSteps *steps = &making->sequence->faces[making->face].runs[run];

  steps->first = making->steps->len;
  if (!of->infill_above)
    {
      steps->anchored = making->steps->len;
      add_step (making, SW_LAYING_ANCHOR, of->tier, run);
      steps->backfilled = making->steps->len;
      add_step (making, SW_LAYING_BACKFILL, of->tier, run);
    }
  add_pieces (making, run);
  for (guint i = 0; i < G_N_ELEMENTS (pinned); i++)
    if (sw_pin_work_count (making->pins, run, pinned[i]) > 0)
      {
        if (pinned[i] == SW_LAYING_SLOT)
          steps->pressed = making->steps->len;
        add_step (making, pinned[i], of->tier, run);
      }
  steps->last = making->steps->len - 1;
}

static void
dig (Making *making, guint tier, SwTrenchKind kind, SwLayingAct act)
{
  gboolean any = FALSE;

  for (guint i = 0; i < making->laid->n_trenches; i++)
    if (making->laid->trenches[i].tier == tier && making->laid->trenches[i].kind == kind)
      {
        making->sequence->faces[making->face].trenches[i] = making->steps->len;
        any = TRUE;
      }
  if (any)
    add_step (making, act, tier, SW_LAYING_NONE);
}

/* The last tier that an obstacle stands in: until then the blanket round it is not whole. */
static guint
tier_of (const SwFaceLayout *laid, const SwObstaclePlace *place)
{
  guint tier = 0;

  for (guint t = 0; t < laid->n_tiers; t++)
    if (laid->tiers[t].n_runs > 0 && laid->tiers[t].reach.down_from_m < place->down_to_m)
      tier = t;
  return tier;
}

static void
add_collars (Making *making, guint tier)
{
  for (guint i = 0; i < making->laid->n_obstacles; i++)
    if (making->laid->obstacles[i].standing
        && tier_of (making->laid, &making->laid->obstacles[i]) == tier)
      {
        making->sequence->faces[making->face].collars[i] = making->steps->len;
        add_step (making, SW_LAYING_COLLAR, tier, SW_LAYING_NONE)->obstacle = i;
      }
}

static void
close_toe (Making *making, guint tier)
{
  SwFaceSequence *face = &making->sequence->faces[making->face];

  for (guint i = 0; i < making->laid->n_trenches; i++)
    if (making->laid->trenches[i].tier == tier
        && making->laid->trenches[i].kind == SW_TRENCH_TOE)
      face->trenches[i] = making->steps->len;
  face->toes[tier] = making->steps->len;
  add_step (making, SW_LAYING_TOE, tier, SW_LAYING_NONE);
}

static void
add_tier (Making *making, guint tier)
{
  g_autoptr (GArray) order = laying_order (making->laid, &making->laid->tiers[tier]);

  if (order->len == 0)
    return;
  add_step (making, SW_LAYING_PREPARE, tier, SW_LAYING_NONE);
  if (sw_seed_mix_is_sown (&making->sequence->layout->job->seed))
    add_step (making, SW_LAYING_SEED, tier, SW_LAYING_NONE);
  dig (making, tier, SW_TRENCH_KEY, SW_LAYING_DIG_KEY);
  dig (making, tier, SW_TRENCH_SLOT, SW_LAYING_DIG_SLOTS);
  for (guint i = 0; i < order->len; i++)
    add_run (making, g_array_index (order, guint, i));
  add_collars (making, tier);
  close_toe (making, tier);
}

static guint *
none_of (guint count)
{
  guint *none = g_new (guint, count);

  for (guint i = 0; i < count; i++)
    none[i] = SW_LAYING_NONE;
  return none;
}

static void
add_face (Making *making, guint index)
{
  const SwFaceLayout *laid = &making->sequence->layout->faces[index];
  SwFaceSequence *face = &making->sequence->faces[index];
  g_autoptr (SwPinWork) pins = NULL;

  face->first_step = making->steps->len;
  face->runs = g_new0 (SwRunSteps, laid->n_runs);
  face->trenches = none_of (laid->n_trenches);
  face->collars = none_of (laid->n_obstacles);
  face->toes = none_of (laid->n_tiers);
  order_runs (laid, face->runs);
  pins = sw_pin_work_new (laid, face->runs);
  making->face = index;
  making->laid = laid;
  making->pins = pins;
  for (guint t = 0; t < laid->n_tiers; t++)
    add_tier (making, t);
  add_step (making, SW_LAYING_INSPECT, MAX (laid->n_tiers, 1) - 1, SW_LAYING_NONE);
  face->end_step = making->steps->len;
  face->pins = sw_pin_work_share (
      pins, &g_array_index (making->steps, SwLayingStep, face->first_step),
      face->end_step - face->first_step);
}

SwLayingSequence *
sw_laying_sequence_new (const SwLayout *layout)
{
  SwLayingSequence *sequence = g_new0 (SwLayingSequence, 1);
  Making making = { .sequence = sequence,
                    .steps = g_array_new (FALSE, FALSE, sizeof (SwLayingStep)) };

  sequence->layout = layout;
  sequence->faces = g_new0 (SwFaceSequence, layout->n_faces);
  sequence->pieces = none_of (layout->n_pieces);
  for (guint f = 0; f < layout->n_faces; f++)
    add_face (&making, f);
  sequence->n_steps = making.steps->len;
  sequence->steps = (SwLayingStep *) g_array_free (making.steps, FALSE);
  return sequence;
}

void
sw_laying_sequence_free (SwLayingSequence *sequence)
{
  if (sequence == NULL)
    return;
  for (guint f = 0; f < sequence->layout->n_faces; f++)
    {
      g_free (sequence->faces[f].runs);
      g_free (sequence->faces[f].trenches);
      g_free (sequence->faces[f].collars);
      g_free (sequence->faces[f].toes);
      g_free (sequence->faces[f].pins);
    }
  g_free (sequence->faces);
  g_free (sequence->pieces);
  g_free (sequence->steps);
  g_free (sequence);
}

const guint32 *
sw_laying_step_pins (const SwLayingSequence *sequence, const SwLayingStep *step)
{
  return sequence->faces[step->face].pins + step->first_pin;
}

static gboolean
belong_together (const SwLayingStep *a, const SwLayingStep *b)
{
  return a->face == b->face && a->tier == b->tier && a->run == b->run;
}

guint
sw_laying_run_after (const SwLayingSequence *sequence, guint step)
{
  guint after = step + 1;

  while (after < sequence->n_steps
         && belong_together (&sequence->steps[after], &sequence->steps[step]))
    after++;
  return MIN (after, sequence->n_steps - 1);
}

guint
sw_laying_run_before (const SwLayingSequence *sequence, guint step)
{
  guint before = step > 0 ? step - 1 : 0;

  while (before > 0
         && belong_together (&sequence->steps[before - 1], &sequence->steps[before]))
    before--;
  return before;
}

/* Whether two strips lie side by side, all round a heap across its seam, too; or with
 * infill between them, beyond whose end they lap. */
static gboolean
are_neighbours (const SwFaceLayout *laid, const SwRun *a, const SwRun *b)
{
  const SwTier *tier = &laid->tiers[a->tier];
  int apart = ABS (a->strip - b->strip);

  if (tier->closed)
    apart = MIN (apart, tier->strips - apart);
  return apart == 1 || (apart == 2 && !a->infill && !b->infill && tier->infill > 0);
}

void
sw_laying_runs_under (const SwLayingSequence *sequence, guint face, guint run,
                      GArray *runs)
{
  const SwFaceLayout *laid = &sequence->layout->faces[face];
  const SwRunSteps *steps = sequence->faces[face].runs;
  const SwTier *tier = &laid->tiers[laid->runs[run].tier];

  g_array_set_size (runs, 0);
  for (guint i = tier->first_run; i < tier->first_run + tier->n_runs; i++)
    if (steps[i].place < steps[run].place
        && are_neighbours (laid, &laid->runs[i], &laid->runs[run])
        && laid->runs[i].down_from_m < laid->runs[run].down_to_m
        && laid->runs[i].down_to_m > laid->runs[run].down_from_m)
      g_array_append_val (runs, i);
}
