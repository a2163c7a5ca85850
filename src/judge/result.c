/* SPDX-License-Identifier: MIT */
#include "judge-workings.h"
#include <slopewright/judge/result.h>

SwResult *
sw_result_new (const SwJob *job, const SwCatalogue *catalogue)
{
  SwResult *result = g_new0 (SwResult, 1);

  result->refs = 1;
  result->job = sw_job_ref (job);
  result->catalogue = catalogue;
  result->status = sw_layout_new (job, catalogue, &result->layout, &result->bad_face);
  if (result->status != SW_OK)
    return result;
  result->tally = sw_tally_new (result->layout);
  sw_judge_workings (result->tally, result->layout);
  result->findings = sw_findings_new (result->layout, result->tally);
  return result;
}

SwResult *
sw_result_ref (const SwResult *result)
{
  SwResult *mine = (SwResult *) result;

  g_atomic_int_inc (&mine->refs);
  return mine;
}

void
sw_result_unref (SwResult *result)
{
  if (result == NULL || !g_atomic_int_dec_and_test (&result->refs))
    return;
  g_clear_pointer (&result->findings, g_ptr_array_unref);
  sw_tally_free (result->tally);
  sw_layout_free (result->layout);
  sw_job_unref (result->job);
  g_free (result);
}
