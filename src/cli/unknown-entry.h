/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/base/catalogue.h>
#include <slopewright/base/job.h>

/**
 * slopepack_unknown_entry:
 * @job: a job that cannot be laid out with SW_E_UNKNOWN_ID
 * @catalogue: what it was looked up in
 *
 * Returns: (transfer full): key of the file, what was found and what was expected,
 *   for the first choice that is not in the catalogue; NULL when all are
 */
char *slopepack_unknown_entry (const SwJob *job, const SwCatalogue *catalogue);
