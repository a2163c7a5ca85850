/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/layout/layout.h>

/*
 * The work on a laid-out job, step by step in the order in which a crew does it: face
 * after face, from the upper tier down, run after run from the leeward end. For a
 * briefing or a class; what a step adds to the ground is said here, how it is shown
 * elsewhere.
 *
 * On each tier: prepare, sow, open the key trench and the check slots; then for every run:
 * anchor it, backfill its stretch of the trench, unroll its pieces, press it into the
 * slots, pin its side lap, its field and its end laps; then the collars round obstacles
 * and the toe. Last on each face: inspect. Source of the order: the pack's own steps
 * (anchor, backfill, unroll, pin from the top down); slots are open before blanket lies
 * over them, since they cannot be dug through it.
 */

typedef enum
{
  SW_LAYING_PREPARE,
  SW_LAYING_SEED, /* only where the job sows */
  SW_LAYING_DIG_KEY,
  SW_LAYING_DIG_SLOTS,
  SW_LAYING_ANCHOR,   /* from here on: of one run */
  SW_LAYING_BACKFILL, /* the run's stretch of the key trench */
  SW_LAYING_UNROLL,   /* one piece; the upslope one first */
  SW_LAYING_SLOT,     /* pinned in the check slots, which are filled over it */
  SW_LAYING_SIDE_LAP,
  SW_LAYING_PIN_FIELD, /* field and edges */
  SW_LAYING_END_LAP,   /* up to here */
  SW_LAYING_COLLAR,    /* round one obstacle */
  SW_LAYING_TOE,       /* of a tier */
  SW_LAYING_INSPECT,   /* a face */
  SW_LAYING_ACT_COUNT
} SwLayingAct;

/** "prepare", "dig-key", "pin-field": the codes of the pack's steps where it has one. */
const char *sw_laying_act_code (SwLayingAct act);

/** Index of nothing, and the step of what never comes. */
#define SW_LAYING_NONE G_MAXUINT

typedef struct
{
  SwLayingAct act;
  guint face, tier;
  guint run;               /* into the face's runs, or SW_LAYING_NONE */
  guint piece;             /* UNROLL: into the layout's pieces */
  guint obstacle;          /* COLLAR: into the face's obstacles */
  gsize first_pin, n_pins; /* driven in this step: into the face's pins by step */
} SwLayingStep;

/** At which steps a run is worked on. */
typedef struct
{
  guint place;               /* 0.. in the laying order of its tier */
  guint first, last;         /* step */
  guint anchored;            /* NONE: infill that begins under the runs beside it */
  guint backfilled, pressed; /* key trench; check slots, NONE without any */
} SwRunSteps;

typedef struct
{
  guint first_step, end_step;
  SwRunSteps *runs;
  guint *trenches; /* step at which each is dug */
  guint *collars;  /* step at which each obstacle gets its collar; NONE: not standing */
  guint *toes;     /* step at which the toe of each tier is closed; NONE: no runs in it */
  guint32 *pins;   /* indices of all pins of the face, those of one step together */
} SwFaceSequence;

typedef struct
{
  const SwLayout *layout; /* borrowed */
  SwLayingStep *steps;
  guint n_steps; /* at least 1 */
  SwFaceSequence *faces;
  guint *pieces; /* step at which each piece of the layout is unrolled */
} SwLayingSequence;

/**
 * sw_laying_sequence_new:
 * @layout: borrowed; must outlive the sequence
 *
 * Each pin is driven once, through all that lies there: with the last run that comes to
 * cover its place, in the step of its role. Grows linearly with the number of pins.
 *
 * Returns: (transfer full)
 */
SwLayingSequence *sw_laying_sequence_new (const SwLayout *layout);
void sw_laying_sequence_free (SwLayingSequence *sequence);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (SwLayingSequence, sw_laying_sequence_free)

/** The pins of @step, as indices into its face's pins. */
const guint32 *sw_laying_step_pins (const SwLayingSequence *sequence,
                                    const SwLayingStep *step);

/**
 * sw_laying_run_after:
 *
 * Returns: the first step of the next run, or of the work between runs; the last step of
 *   all when there is none
 */
guint sw_laying_run_after (const SwLayingSequence *sequence, guint step);

/** The first step of this run, or, from there, of the one before; 0 when there is none. */
guint sw_laying_run_before (const SwLayingSequence *sequence, guint step);

/**
 * sw_laying_runs_under:
 * @runs: (element-type guint): cleared, then filled with the runs side by side with @run
 *   that were laid before it, so that it laps over them, by their index in the face
 */
void sw_laying_runs_under (const SwLayingSequence *sequence, guint face, guint run,
                           GArray *runs);
