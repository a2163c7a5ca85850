/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/base/working.h>
#include <slopewright/layout/layout.h>
#include <slopewright/tally/tally.h>

typedef enum
{
  SW_SEVERITY_NOTE,
  SW_SEVERITY_CAUTION,
  SW_SEVERITY_STOP
} SwSeverity;

/** "note", "caution", "stop"; text id "severity.<code>". */
const char *sw_severity_code (SwSeverity severity);

/**
 * SwFinding: a named engineering doubt. Words are texts: "finding.<code>.title",
 * ".text" ({places} are the input symbols and {face}) and ".basis".
 */
typedef struct
{
  const char *code;    /* static: "pin-short", stable across versions */
  const char *failure; /* static: failure mode "F9", or "" */
  SwSeverity severity;
  int face;       /* index, or -1 for the whole job */
  int tier;       /* index, or -1 */
  int obstacle;   /* index into the face's obstacles, or -1 */
  int zone;       /* index into the face's soil zones, or -1 */
  GArray *inputs; /* (element-type SwInput) numbers it rests on */
} SwFinding;

/** Returns: (transfer full) (element-type SwFinding): stops first, then cautions, then notes; order is stable. */
GPtrArray *sw_findings_new (const SwLayout *layout, const SwTally *tally);

/** How many of @findings (nullable: none) are of that severity. */
guint sw_findings_count (const GPtrArray *findings, SwSeverity severity);
