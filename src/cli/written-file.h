/* SPDX-License-Identifier: MIT */
#pragma once

#include "command.h"

/**
 * slopepack_check_output:
 * @output: (nullable): what -o said
 * @job_path: (nullable): the job, which must not be written over
 *
 * Returns: SLOPEPACK_DONE, or SLOPEPACK_USAGE after having complained.
 */
SlopepackExit slopepack_check_output (const SlopepackCommand *command, const char *output,
                                      const char *job_path);

/** Write @text, whole or not at all. Returns: SLOPEPACK_DONE, or the code after having complained. */
SlopepackExit slopepack_write_text (const char *text, const char *output);

/** Complain about trouble of the paint room. Returns: the code to exit with. */
SlopepackExit slopepack_paint_complaint (const GError *error);
