/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/tally/tally.h>

/* Parts of a tally, in the order in which they are read. Each adds its numbers
 * to @tally and their workings to its list. */

void sw_tally_faces (SwTally *tally, const SwLayout *layout);
void sw_tally_pins (SwTally *tally, const SwLayout *layout);
void sw_tally_material (SwTally *tally, const SwLayout *layout);

/* What whole rolls leave over, and the order of rolls of one size. */
void sw_tally_rounding (SwTally *tally, const SwLayout *layout);
void sw_tally_order_rolls (SwTally *tally, const SwLayout *layout);
/* Spare rolls of a width, by the practice or the job's allowance; notes the allowance.
 * @first: the size they are ordered in. @cut: how many of the width are ordered to cut. */
int sw_tally_spare_rolls (SwTally *tally, const SwLayout *layout,
                          const SwRollOrder *first, int cut);
/* Give @working the share that spare rolls come from. */
void sw_tally_add_share (const SwTally *tally, const SwLayout *layout,
                         SwWorking *working);
void sw_tally_seed (SwTally *tally, const SwLayout *layout);
void sw_tally_fertiliser (SwTally *tally, const SwLayout *layout);
void sw_tally_haul (SwTally *tally, const SwLayout *layout);
void sw_tally_crew (SwTally *tally, const SwLayout *layout);
void sw_tally_cost (SwTally *tally, const SwLayout *layout);
/* Parts of the material: pieces, rolls and off-cuts; the area they are ordered with; the
 * roll to carry. */
void sw_tally_rolls (SwTally *tally, const SwLayout *layout);
void sw_tally_order_area (SwTally *tally, const SwLayout *layout);
void sw_tally_roll_size (SwTally *tally, const SwLayout *layout);

/** Append @working and give it back, so that inputs can be added. */
SwWorking *sw_tally_add (SwTally *tally, SwWorking *working);
