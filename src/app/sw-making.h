/* SPDX-License-Identifier: MIT */
#pragma once

#include "pack-order.h"

/**
 * SwMaking: a pack being made in a thread of its own, so that the window never waits.
 * Signals, in the thread of the window, without arguments:
 *
 * "progressed": it takes long enough to be told, and is farther than before
 * "finished": once, at the end; also when it was stopped or failed
 */
#define SW_TYPE_MAKING (sw_making_get_type ())
G_DECLARE_FINAL_TYPE (SwMaking, sw_making, SW, MAKING, GObject)

typedef enum
{
  SW_MAKING_ON,
  SW_MAKING_DONE,
  SW_MAKING_STOPPED,
  SW_MAKING_FAILED
} SwMakingState;

/**
 * sw_making_start:
 * @order: (transfer full)
 * @path: (nullable): where to write the pack as a PDF; NULL: only its pages are wanted
 *
 * Keeps itself, and the application running, until it has finished. A file is written
 * whole or not at all, over what was there.
 *
 * Returns: (transfer full)
 */
SwMaking *sw_making_start (SwPackOrder *order, const char *path);

/** Ask it to stop: it does so after the part or page it is at, and says so by "finished". */
void sw_making_stop (SwMaking *making);

SwMakingState sw_making_state (SwMaking *making);

/** The job that it is a pack of. */
const SwJob *sw_making_job (SwMaking *making);
/** Where the PDF goes to; NULL where only pages are wanted. */
const char *sw_making_path (SwMaking *making);

/** What is being made: "Making the pack: part 5 of 14". (transfer full) */
char *sw_making_words (SwMaking *making);
/** How much is behind it, 0 to 1. */
double sw_making_share (SwMaking *making);

/** (transfer none) (element-type SwFigure): NULL unless it is done. */
GPtrArray *sw_making_pages (SwMaking *making);
/** (transfer none): what went wrong; NULL unless it failed. */
const GError *sw_making_error (SwMaking *making);
