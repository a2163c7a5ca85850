/* SPDX-License-Identifier: MIT */
#pragma once

#include "layout-private.h"

/** The rolls of one width that a set of pieces is cut from. */
typedef struct
{
  int rolls;
  SwCutRoll *cut_rolls;  /* without what is left of each */
  gint64 ordered, bound; /* ticks of length */
  int rolls_bound;       /* to be ordered */
} SwRollPlan;

/**
 * sw_roll_plan_new:
 * @pieces: (inout) (element-type SwPiece): pieces of other widths are passed over. The
 *   rolls they come from, 1.. in this width as they were cut one after the other, are
 *   replaced by those of the plan
 * @narrow: which of the two widths
 *
 * Off the job's own roll when there is no other, and from the stock when there is.
 *
 * Returns: (transfer full) (nullable): NULL when a piece is longer than its rolls.
 */
SwRollPlan *sw_roll_plan_new (const SwLayout *layout, GArray *pieces, gboolean narrow);
void sw_roll_plan_free (SwRollPlan *plan);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (SwRollPlan, sw_roll_plan_free)

/** Ticks of length to be ordered at least for so much blanket in any pieces. */
gint64 sw_roll_least_order (const SwLayout *layout, gint64 blanket, gboolean narrow);

/** Rolls at least that are ordered with so many ticks of length. */
int sw_roll_least_count (const SwLayout *layout, gint64 ordered, gboolean narrow);
