/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/judge/findings.h>

/** All that follows from a job: what drawings, packs and windows read. */
typedef struct
{
  SwJob *job;
  const SwCatalogue *catalogue; /* borrowed */
  SwStatus status;              /* not SW_OK: layout, tally and findings are NULL */
  int bad_face;                 /* which face failed, -1 for none or all */
  SwLayout *layout;
  SwTally *tally;
  GPtrArray *findings; /* (element-type SwFinding) */
  gint refs;           /* private */
} SwResult;

/** Compute everything. @catalogue must outlive the result. Never NULL: look at status. */
SwResult *sw_result_new (const SwJob *job, const SwCatalogue *catalogue);
SwResult *sw_result_ref (const SwResult *result);
void sw_result_unref (SwResult *result);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (SwResult, sw_result_unref)
