/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/base/number-text.h>
#include <slopewright/judge/result.h>

/**
 * sw_mark_text:
 * @object: of a drawing, as in drawings.h
 *
 * Returns: (transfer full) (nullable): a run, trench, obstacle or zone in words; NULL
 *   for anything else, or when the job could not be laid out
 */
char *sw_mark_text (const SwResult *result, guint face, const char *object,
                    SwNumberStyle style);
