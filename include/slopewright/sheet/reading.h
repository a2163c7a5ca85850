/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/figure/figure.h>

/**
 * sw_pages_text:
 * @pages: (element-type SwFigure): of a pack
 *
 * The pages as plain text, for screen readers, braille lines and the radio: titles and
 * headings underlined, a paragraph a line, the cells of a row in one line with " | "
 * between, pictures by their words. What stands on every page is left out.
 *
 * Returns: (transfer full): UTF-8, a newline at the end
 */
char *sw_pages_text (const GPtrArray *pages);
