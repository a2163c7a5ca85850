/* SPDX-License-Identifier: MIT */
#pragma once

#include <hpdf.h>

#include "face.h"

/* A document being written. libharu keeps its first error; ask once a page. */
typedef struct
{
  HPDF_Doc doc;
  HPDF_Encoder utf8;
  HPDF_Font fonts[SW_FACE_COUNT]; /* by SwTypeface */
  const SwFaces *faces;
  const SwPalette *palette;
  GHashTable *targets; /* (borrowed title) to HPDF_Destination */
  GArray *veils;       /* (element-type SwPdfVeil) */
  GArray *hatch;       /* (element-type SwPaperPoint) */
  struct SwPdfTags *tags;
} SwPdf;

/* A graphics state that lets what lies below shine through. */
typedef struct
{
  double line_alpha, fill_alpha;
  HPDF_ExtGState state;
} SwPdfVeil;

/*
 * libharu clamps numbers beyond its limits without a word, so a figure that
 * reaches beyond them is refused before anything is drawn. @number is the
 * page's, from 1.
 */
gboolean sw_pdf_check_size (const SwFigure *figure, guint number, GError **error);

/*
 * Say which characters @font's codes are: for search, copying and screen readers.
 * libharu's own map is of another kind (to glyphs), which strict readers refuse. Of a
 * font that could not be loaded nothing is said.
 */
void sw_pdf_map_to_unicode (HPDF_Font font);

/* Draw the figure's items on @page. Links lead to @pdf's targets. */
void sw_pdf_paint_page (SwPdf *pdf, HPDF_Page page, const SwFigure *figure);
