/* SPDX-License-Identifier: MIT */
#pragma once

#include <cairo.h>
#include <gio/gio.h>
#include <slopewright/base/long-work.h>
#include <slopewright/figure/figure.h>
#include <slopewright/figure/palette.h>

#define SW_PAINT_ERROR (sw_paint_error_quark ())
GQuark sw_paint_error_quark (void);
typedef enum
{
  SW_PAINT_ERROR_FONT,   /* the sheet font is not installed or does not read */
  SW_PAINT_ERROR_WRITE,  /* the file cannot be made or written; a link leads nowhere */
  SW_PAINT_ERROR_SIZE,   /* larger than the file kind can hold */
  SW_PAINT_ERROR_STOPPED /* by the one who asked for it; nothing is written */
} SwPaintError;

/** Path of the sheet font, regular or bold, found once through fontconfig. NULL with @error when it is not installed. */
const char *sw_paint_font_path (SwTypeface typeface, GError **error);

/** Unhinted widths of the sheet font. (transfer none): lives as long as the program; one per thread. */
const SwTextMeasure *sw_paint_measure (GError **error);

/**
 * sw_paint_missing_glyph:
 * @text: UTF-8
 * @missing: (out): the first character that the regular or the bold sheet
 *   font lacks and would print as a box; 0 when all are there. A newline is
 *   missing too: a figure's text is one line.
 *
 * Returns: FALSE with @error set when the font is not installed
 */
gboolean sw_paint_missing_glyph (const char *text, gunichar *missing, GError **error);

typedef enum
{
  SW_THEME_PAPER,
  SW_THEME_LIGHT,
  SW_THEME_DARK
} SwTheme;

/**
 * sw_paint_cairo:
 * @cr: user space in millimetres; the figure's top left comes to its origin
 * @theme: on screens (not SW_THEME_PAPER) no line is thinner than one dot
 *
 * Paints no ground behind the figure.
 */
void sw_paint_cairo (const SwFigure *figure, cairo_t *cr, const SwPalette *palette,
                     SwTheme theme);

gboolean sw_paint_svg (const SwFigure *figure, const SwPalette *palette, const char *path,
                       GError **error);
gboolean sw_paint_png (const SwFigure *figure, const SwPalette *palette,
                       double dots_per_inch, const char *path, GError **error);

typedef struct
{
  const char *title, *author, *subject, *keywords, *creator; /* NULL: left out */
  const char *language; /* of the words, "en", for screen readers; NULL: left out */
} SwPdfInfo;

/**
 * sw_paint_pdf:
 * @pages: (element-type SwFigure): one page each, in their own sizes; a title
 *   becomes a bookmark, but for a page that goes on; links lead to titles
 * @info: document information; no dates are written, so equal input gives equal bytes
 * @work: (nullable): asked before each page is painted, and once all are, before the file
 *   is written
 *
 * Written through libharu with the sheet font embedded as a subset, atomically. May be
 * called in any thread.
 */
gboolean sw_paint_pdf (const GPtrArray *pages, const SwPalette *palette,
                       const SwPdfInfo *info, const char *path, const SwLongWork *work,
                       GError **error);
