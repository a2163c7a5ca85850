/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/tally/tally.h>

/* Parts of a tally, in the order in which they are read. Each adds its numbers
 * to @tally and their workings to its list. */

void sw_tally_faces (SwTally *tally, const SwLayout *layout);
void sw_tally_pins (SwTally *tally, const SwLayout *layout);
void sw_tally_material (SwTally *tally, const SwLayout *layout);

/* The order of rolls, from the practice or the job's allowance. */
void sw_tally_order_rolls (SwTally *tally, const SwLayout *layout);
void sw_tally_seed (SwTally *tally, const SwLayout *layout);
void sw_tally_fertiliser (SwTally *tally, const SwLayout *layout);
void sw_tally_haul (SwTally *tally, const SwLayout *layout);
void sw_tally_crew (SwTally *tally, const SwLayout *layout);
void sw_tally_cost (SwTally *tally, const SwLayout *layout);

/** Append @working and give it back, so that inputs can be added. */
SwWorking *sw_tally_add (SwTally *tally, SwWorking *working);
