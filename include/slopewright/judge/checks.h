/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/judge/findings.h>

/*
 * The nineteen ways in which a blanket on a slope fails, each as a named check of the
 * job: what was found, or what was looked at and found nothing, or what nobody has said.
 */

typedef enum
{
  SW_CHECK_PASS,   /* nothing found; no proof that nothing is there */
  SW_CHECK_WARN,   /* at least one finding speaks */
  SW_CHECK_UNKNOWN /* no caution speaks, and a fact it needs is not given */
} SwCheckState;

/** "pass", "warn", "unknown"; text id "check.state.<code>". */
const char *sw_check_state_code (SwCheckState state);

#define SW_CHECK_COUNT 19

/** One row. Text ids "check.<failure>.title" and ".why". */
typedef struct
{
  const char *failure; /* static: "F1" */
  SwCheckState state;
  GPtrArray
      *findings; /* (element-type SwFinding) borrowed: those that speak, worst first */
  const char *looked; /* static: text of what was looked at; {places} are the inputs */
  GArray *inputs;     /* (element-type SwInput) numbers that were looked at */
  GPtrArray *open;    /* (element-type utf8) text ids of the facts that are not given */
  const char *page; /* static: text id of the title of the page where the crew reads it */
} SwCheck;

/**
 * sw_checks_new:
 * @layout, @tally: of one job
 * @findings: (element-type SwFinding): of the same job; must outlive the checks
 *
 * Pure: the same job gives the same rows. Limits are those of the findings.
 *
 * Returns: (transfer full) (element-type SwCheck): SW_CHECK_COUNT rows, F1 to F19
 */
GPtrArray *sw_checks_new (const SwLayout *layout, const SwTally *tally,
                          const GPtrArray *findings);
