/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/judge/ls-factor.h>
#include <slopewright/layout/layout.h>

/*
 * The section of a face as water sees it: where runoff begins, where a drained
 * bench ends it, and the soil loss along it.
 */

/** One straight stretch of the section, from the crest down. */
typedef struct
{
  SwLsSegment segment;
  double from_m, to_m; /* on plan, from where its runoff begins */
  gboolean bench;      /* flatter and longer than the practice's bench limit */
} SwFallSegment;

typedef struct
{
  SwFallSegment *segments;
  guint count;
  double length_m; /* on plan, crest to toe */
  double run_on_m; /* ground above the crest whose water runs on, on plan; 0: none known */
  double along_m;  /* where the section was taken: the face's longest fall line */
  gboolean ponds;  /* a bench falls back into the hill and is not known to be drained */
} SwFallLine;

/**
 * sw_fall_line_init:
 * @layout: a layout
 * @face: index
 * @line: (out caller-allocates): freed with sw_fall_line_clear()
 *
 * Runoff begins at the crest, or on the ground above it whose water runs on where
 * the job says how much that is, as USDA Agriculture Handbook 703 measures a
 * slope's length: from where overland flow begins. It begins again below a bench if
 * the job says that benches are drained; unanswered counts as no, which makes
 * slopes longer.
 */
void sw_fall_line_init (SwFallLine *line, const SwLayout *layout, guint face);
void sw_fall_line_clear (SwFallLine *line);

/** Mean yearly loss of one face. */
typedef struct
{
  SwFallLine line;
  SwLsMethod method; /* of RUSLE, by the job's rill ratio */
  double *ls;            /* of each segment */
  double ls_mean;        /* by length */
  guint limits;          /* SwLsLimit flags */
  double erosivity;      /* R, SI */
  SwSourced erodibility; /* K, SI; evidence "user" when typed; borrowed source */
  gboolean nomograph;    /* K is of the nomograph equation */
  SwSourced cover;       /* C; NaN where neither product nor class has one */
  double bare_t_per_ha, covered_t_per_ha; /* covered is NaN without C */
  double reduction;                       /* ratio; NaN without C */
  double share;                           /* of a year's R; NaN where not given */
  double period_bare_t_per_ha, period_covered_t_per_ha; /* of that share; NaN likewise */
} SwFaceLoss;

/**
 * sw_face_loss_init:
 * @loss: (out caller-allocates): untouched on FALSE, else sw_face_loss_clear()
 *
 * A = R K LS C P with P 1, C 1 for bare graded ground, and LS of RUSLE by the rill ratio
 * of the job (high, for freshly graded ground, unless it says otherwise), each segment in
 * its place on the slope.
 *
 * Returns: FALSE where R is not given, K is neither typed nor known for the soil,
 *   or water would stand on a bench.
 */
gboolean sw_face_loss_init (SwFaceLoss *loss, const SwLayout *layout, guint face);
void sw_face_loss_clear (SwFaceLoss *loss);

/** R of the job in SI; 0 if not given. */
double sw_job_erosivity (const SwJob *job);

/** LS method of RUSLE by the job's rill ratio. */
SwLsMethod sw_job_ls_method (const SwJob *job);

/**
 * K in SI: typed, or the largest of the face's soils, its zones included; NaN where one
 * of them has none. The face's own soil has that of the nomograph equation where its
 * laboratory test allows it, see sw_face_nomograph(). Source is borrowed.
 */
SwSourced sw_face_erodibility (const SwLayout *layout, const SwFace *face);

/** C of the blanket: the product's own, or the ceiling of its class; NaN if neither. */
SwSourced sw_job_cover (const SwJob *job, const SwBlanket *blanket);
