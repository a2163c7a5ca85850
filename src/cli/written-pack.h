/* SPDX-License-Identifier: MIT */
#pragma once

#include "opened-job.h"

/**
 * slopepack_choose_paper:
 * @name: (nullable): what --paper said
 * @paper: (out): that, or the job's own
 *
 * Returns: SLOPEPACK_DONE, or SLOPEPACK_USAGE after having complained.
 */
SlopepackExit slopepack_choose_paper (const char *name, const SwJob *job, SwPaper *paper);

/**
 * slopepack_write_pack:
 * @plan: which document
 * @as_text: plain text instead of PDF
 * @output: where to; an existing file is replaced once the new one is complete
 *
 * Returns: SLOPEPACK_DONE, or the code to exit with after having complained.
 */
SlopepackExit slopepack_write_pack (const SlopepackJob *opened, SwPaper paper,
                                    const SwPackPlan *plan, gboolean as_text,
                                    const char *output);
