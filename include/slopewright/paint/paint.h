/* SPDX-License-Identifier: MIT */
#pragma once

#include <cairo.h>
#include <gio/gio.h>
#include <slopewright/figure/figure.h>
#include <slopewright/figure/palette.h>

#define SW_PAINT_ERROR (sw_paint_error_quark ())
GQuark sw_paint_error_quark (void);
typedef enum
{
  SW_PAINT_ERROR_FONT,
  SW_PAINT_ERROR_WRITE,
  SW_PAINT_ERROR_SIZE
} SwPaintError;

/** Path of the sheet font, regular or bold, found once through fontconfig. NULL with @error when it is not installed. */
const char *sw_paint_font_path (SwTypeface typeface, GError **error);

/** Unhinted widths of the sheet font. (transfer none): lives as long as the program; one per thread. */
const SwTextMeasure *sw_paint_measure (GError **error);

typedef enum
{
  SW_THEME_PAPER,
  SW_THEME_LIGHT,
  SW_THEME_DARK
} SwTheme;

/** Paint @figure with its top left at the origin; user space must be millimetres. */
void sw_paint_cairo (const SwFigure *figure, cairo_t *cr, const SwPalette *palette,
                     SwTheme theme);

gboolean sw_paint_svg (const SwFigure *figure, const SwPalette *palette, const char *path,
                       GError **error);
gboolean sw_paint_png (const SwFigure *figure, const SwPalette *palette,
                       double dots_per_inch, const char *path, GError **error);

typedef struct
{
  const char *title, *author, *subject, *keywords, *creator; /* NULL: left out */
} SwPdfInfo;

/**
 * sw_paint_pdf:
 * @pages: (element-type SwFigure): one page each, in their own sizes; a title
 *   becomes a bookmark, links lead to bookmarks
 * @info: document information; no dates are written, so equal input gives equal bytes
 *
 * Written through libharu with the sheet font embedded as a subset, atomically.
 */
gboolean sw_paint_pdf (const GPtrArray *pages, const SwPalette *palette,
                       const SwPdfInfo *info, const char *path, GError **error);
