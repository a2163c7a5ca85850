/* SPDX-License-Identifier: MIT */
#pragma once

#include "fixture.h"

/* Questions that tests ask a finished figure. */

/** The text item with exactly this text, NULL if none. */
const SwItem *figure_text (const SwFigure *figure, const char *text);

/** Whether some item belongs to @object. */
gboolean figure_has_object (const SwFigure *figure, const char *object);

/** Corners of a text's ink, in order round it. */
void text_corners (const SwFigure *figure, const SwItem *item,
                   const SwTextMeasure *measure, SwPaperPoint corners[4]);

/** A strip as thin as the rounding of millimetres, from @a to @b. */
void strip_corners (SwPaperPoint a, SwPaperPoint b, SwPaperPoint corners[4]);

/** Whether two boxes lie apart, or touch within the rounding. */
gboolean corners_apart (const SwPaperPoint a[4], const SwPaperPoint b[4]);

/** Fails the test if a text lies on a line of @role. */
void assert_no_text_on (const SwFigure *figure, SwRole role, const SwTextMeasure *measure,
                        const char *what);

/** Fails the test if two texts overlap or anything lies outside the figure. */
void assert_tidy (const SwFigure *figure, const SwTextMeasure *measure, const char *what);
