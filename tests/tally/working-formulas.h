/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/base/working.h>

/*
 * The formulas of the workings once more, as their texts say them and without a look at
 * the program's own: what the inputs give is what the working must say.
 */

/** Input @symbol of a working; the test fails if there is not exactly one. */
double working_input (const SwWorking *working, const char *symbol);

/** What the inputs give. Returns: FALSE when the formula needs more than its inputs. */
gboolean working_by_formula (const SwWorking *working, double *value);

/** Name of the formula, NULL beyond the last. */
const char *working_formula (guint index);
