/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/store/help.h>

/* A line of a help page being read. */
typedef struct
{
  const char *where; /* file */
  guint number;      /* of the line, from 1 */
  const SwTexts *texts;
} SwHelpPlace;

/* "file:line: found ..., expected ...". Returns FALSE, for the caller to pass on. */
gboolean sw_help_expected (SwHelpPlace place, const char *found, const char *expected,
                           GError **error);

/* Read the marks in @words. (transfer full) (element-type SwHelpSpan): NULL with @error set. */
GPtrArray *sw_help_spans (SwHelpPlace place, const char *words, GError **error);
