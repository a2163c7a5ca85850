/* SPDX-License-Identifier: MIT */
#pragma once

#include "sheet.h"
#include <slopewright/tally/pin-frame.h>

/** What the crew's pages need of one tier beyond its SwTier. */
typedef struct
{
  double key_trench_m, slot_m, toe_m; /* lengths */
  guint joints;
  gsize pins[SW_PIN_ROLE_COUNT];
} SwTierNumbers;

/** End laps in the tier. */
guint sw_tier_joints (const SwFaceLayout *face, guint tier);

SwTierNumbers sw_tier_numbers (const SwFaceLayout *face, guint tier);

/** Field pins in a frame of the reader's units laid on a tier: a metre or a yard wide. */
SwPinFrame sw_tier_frame (const SwSheet *sheet, const SwTier *tier);

/**
 * sw_tier_places:
 *
 * Returns: (transfer full) (element-type utf8 utf8): every number of a tier as
 *   read, by the place names of the step and checklist texts; escaped.
 */
GHashTable *sw_tier_places (const SwSheet *sheet, guint face, guint tier);
