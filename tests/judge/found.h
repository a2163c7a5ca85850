/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/judge/result.h>

/* The first finding of that code, NULL for none. */
const SwFinding *found_finding (const SwResult *result, const char *code);

/* Whether the job, laid out, has a finding of that code. */
gboolean found_in (const SwJob *job, const SwCatalogue *catalogue, const char *code);

/* That the finding is there and rests on @want under that symbol, to 1e-6. */
void found_number (const SwJob *job, const SwCatalogue *catalogue, const char *code,
                   const char *symbol, double want);
