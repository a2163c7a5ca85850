/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/judge/findings.h>

/* Append a finding without numbers; @face and @tier are -1 for the whole job or face. */
SwFinding *sw_finding_add (GPtrArray *findings, SwSeverity severity, const char *code,
                           const char *failure, int face, int tier);

/* Give it a number that it rests on. */
void sw_finding_number (SwFinding *finding, const char *symbol, double value,
                        SwUnit unit);

/* Rules by subject. */
void sw_judge_site (GPtrArray *findings, const SwLayout *layout);
void sw_judge_people (GPtrArray *findings, const SwLayout *layout);
void sw_judge_laying (GPtrArray *findings, const SwLayout *layout);
void sw_judge_water (GPtrArray *findings, const SwLayout *layout);
void sw_judge_slides (GPtrArray *findings, const SwLayout *layout);
void sw_judge_lifting (GPtrArray *findings, const SwLayout *layout, const SwTally *tally);
void sw_judge_edges (GPtrArray *findings, const SwLayout *layout);
void sw_judge_fit (GPtrArray *findings, const SwLayout *layout, const SwTally *tally);
