/* SPDX-License-Identifier: MIT */
#pragma once

#include "layout-private.h"

/** Where pins stand round the obstacles of a face, and what other pins keep clear of. */
typedef struct SwRingRows SwRingRows;

/** Returns: (transfer full) (nullable): NULL for a face without obstacles. */
SwRingRows *sw_ring_rows_new (const SwLaying *laying);
void sw_ring_rows_free (SwRingRows *rows);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (SwRingRows, sw_ring_rows_free)

typedef struct
{
  SwPoint at;
  guint tier;
} SwRingPin;

/** (element-type SwRingPin), by along_m. */
const GArray *sw_ring_rows_pins (const SwRingRows *rows);

/**
 * sw_ring_rows_bar:
 * @rows: (nullable)
 *
 * Returns: whether a pin of that role is left out at @plan: inside or too near
 *   to an obstacle; or, for a pin that does not stand in a trench, beside a pin
 *   of the ring or a trench at an obstacle, which do its work.
 */
gboolean sw_ring_rows_bar (const SwRingRows *rows, SwPinRole role, SwPoint plan);
