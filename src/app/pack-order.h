/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/base/long-work.h>

#include "sw-stage.h"

/**
 * SwPackOrder: all that a pack is made of, as it was when it was asked for. Nobody changes
 * it, so a pack can be made of it in any thread while the job goes on.
 */
typedef struct SwPackOrder SwPackOrder;

/**
 * sw_pack_order_new:
 *
 * In the thread of the window. Holds the stage; its stock must outlive the order.
 *
 * Returns: (transfer full): the job shown, in its own language, units and paper; NULL when
 *   it cannot be laid out
 */
SwPackOrder *sw_pack_order_new (SwStage *stage);

/** In the thread of the window. */
void sw_pack_order_free (SwPackOrder *order);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (SwPackOrder, sw_pack_order_free)

const SwJob *sw_pack_order_job (const SwPackOrder *order);

/**
 * sw_pack_order_pages:
 * @work: (nullable): see sw_pack_new()
 *
 * Returns: (transfer full) (element-type SwFigure): NULL with @error of SW_PAINT_ERROR set:
 *   no sheet font, or stopped by @work
 */
GPtrArray *sw_pack_order_pages (const SwPackOrder *order, const SwLongWork *work,
                                GError **error);

/** Write @pages as a PDF, the same bytes as slopepack writes for the saved job. */
gboolean sw_pack_order_write (const SwPackOrder *order, const GPtrArray *pages,
                              const char *path, const SwLongWork *work, GError **error);
