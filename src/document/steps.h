/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/base/job.h>

/**
 * SwSteps: the values a job has had, and where among them we are. Undo is
 * going back to an earlier value; nothing is ever reversed by hand.
 */
typedef struct SwSteps SwSteps;

/** @job: kept by reference; counts as saved. */
SwSteps *sw_steps_new (const SwJob *job);
void sw_steps_free (SwSteps *steps);

/** The value we are at. (transfer none) */
const SwJob *sw_steps_job (const SwSteps *steps);

/**
 * sw_steps_commit:
 * @key: (nullable): a step with the same key as the one before it, still open,
 *   replaces it
 *
 * Drops what could be redone. Returns: FALSE if @job says the same as the
 * value we are at: then nothing happens.
 */
gboolean sw_steps_commit (SwSteps *steps, const SwJob *job, const char *label,
                          const char *key);

/** The next commit makes a step of its own, whatever its key. */
void sw_steps_close (SwSteps *steps);

/** FALSE when there is nothing to go back or forth to. */
gboolean sw_steps_undo (SwSteps *steps);
gboolean sw_steps_redo (SwSteps *steps);
const char *sw_steps_undo_label (const SwSteps *steps);
const char *sw_steps_redo_label (const SwSteps *steps);

void sw_steps_mark_saved (SwSteps *steps);
/** None of the values stands in the file. */
void sw_steps_forget_saved (SwSteps *steps);
gboolean sw_steps_is_saved (const SwSteps *steps);
