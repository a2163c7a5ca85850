/* SPDX-License-Identifier: MIT */
#pragma once

#include "layout-private.h"

/** One run with the places where it may not be joined. */
typedef struct
{
  const SwLayout *layout;
  const SwFaceLayout *face;
  const SwRun *run;
  double lap_m, min_piece_m;
  double whole_m; /* blanket along the run without end laps */
  GArray *barred; /* (element-type SwSpan) of lower joint ends, in blanket metres */
} SwJointing;

/**
 * sw_jointing_new:
 * @pieces: (nullable): what is cut already; NULL to stagger with nothing
 * @holes: whether joints keep clear of the run's cut-outs
 *
 * Bars the zones below the crest and above the toe, the breaks of the section,
 * the check slots and the stagger round the joints of the strip before, all by the practice.
 */
SwJointing *sw_jointing_new (const SwLayout *layout, guint face, guint run,
                             const SwPiece *pieces, gboolean holes);
void sw_jointing_free (SwJointing *jointing);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (SwJointing, sw_jointing_free)

/**
 * sw_jointing_latest:
 * @from_m: where on the blanket the piece begins
 * @room_m: how long it may be at most
 *
 * Returns: where the piece ends, as far down as is allowed; negative when
 *   there is no allowed place.
 */
double sw_jointing_latest (const SwJointing *jointing, double from_m, double room_m);

/** Whether break @index of the section bends it at @along_m: a point that someone set on a
 * straight stretch is no break. @index is neither the first nor the last. */
gboolean sw_bends_at (const SwGround *ground, guint index, double along_m);

/** Where on the face a point of the blanket lies, @blanket_m from its start in the key trench. */
double sw_blanket_to_down_m (const SwFaceLayout *face, const SwPractice *practice,
                             const SwRun *run, double blanket_m);
