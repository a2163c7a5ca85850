/* SPDX-License-Identifier: MIT */
#pragma once

#include "boxes.h"

/**
 * figure_clashes:
 *
 * What keeps the texts of a drawing from being read: a text on another text, on a line
 * that says something itself (dimension and its extensions, leader, crest, toe, bench,
 * ground, arrow) or under a handle; and a dimension's text that stands away from its line.
 * The line a dimension's text interrupts is its own.
 *
 * Returns: (element-type utf8) (transfer full): a sentence for each
 */
GPtrArray *figure_clashes (const SwFigure *figure, const SwTextMeasure *measure);

/** Prints them, and fails the test if there are any. */
void assert_readable (const SwFigure *figure, const SwTextMeasure *measure,
                      const char *what);
