/* SPDX-License-Identifier: MIT */
#pragma once

#include <glib.h>
#include <slopewright/base/number-text.h>

/* Where a reader of typed text stands. */
typedef struct
{
  const char *at;
  SwNumberStyle style;
  const char *problem; /* NULL while all is well */
} SwScan;

/** Over blanks, the no-break kinds too. */
void sw_scan_blanks (SwScan *scan);
gboolean sw_scan_at_end (SwScan *scan);

/** Whether @word stands here (ASCII case does not matter) and no letter follows it; goes past it. */
gboolean sw_scan_word (SwScan *scan, const char *word);

/**
 * sw_scan_number:
 * @value: (out): a plain decimal >= 0
 *
 * Returns: FALSE when no number stands here, or with scan->problem set when it
 *   is grouped by thousands
 */
gboolean sw_scan_number (SwScan *scan, double *value);

/** "3/4", "¾", and after a whole number " 3/4" or "-3/4". */
gboolean sw_scan_fraction (SwScan *scan, double *value);

/** A number, a fraction, or a whole number and a fraction. */
gboolean sw_scan_mixed_number (SwScan *scan, double *value);
