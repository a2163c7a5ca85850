/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/figure/figure.h>

/* Setting text: styles, bold runs and line breaks. */

typedef enum
{
  SW_STYLE_BODY,
  SW_STYLE_SMALL,   /* sources, notes */
  SW_STYLE_TINY,    /* the page frame */
  SW_STYLE_CREW,    /* read at arm's length on the face */
  SW_STYLE_ACTION,  /* what to do, on the crew's pages */
  SW_STYLE_HEADING, /* of a part of a page */
  SW_STYLE_TITLE,   /* of a page */
  SW_STYLE_NUMBER,  /* the few numbers that everybody looks for */
  SW_STYLE_COUNT
} SwStyle;

/** What text is set with. */
typedef struct
{
  const SwTextMeasure *measure;
  double scale; /* of all type sizes: 1 on A4, more on large paper */
  double tight; /* 0: as usual; 1: as little air between lines as reads well */
} SwPen;

/** What is left of a gap when set so tight. */
double sw_pen_gap_mm (const SwPen *pen, double gap_mm);

double sw_pen_size_mm (const SwPen *pen, SwStyle style);
double sw_pen_line_mm (const SwPen *pen, SwStyle style);

/**
 * Text of several lines. Markup: *bold*, ** for an asterisk; a newline begins a
 * new line. Lines break at spaces, never at no-break spaces; a word wider than
 * the line is broken where it must.
 */
typedef struct
{
  char *text;      /* without markup */
  double *upto_mm; /* width of the text up to each byte */
  guint8 *bold;    /* per byte of text */
  GArray *lines;   /* (element-type SwTextLine) */
  SwStyle style;
  double widest_mm; /* line */
} SwTextBlock;

typedef struct
{
  gsize from, to; /* bytes of the text */
  double width_mm;
} SwTextLine;

SwTextBlock *sw_text_block_new (const SwPen *pen, SwStyle style, const char *markup,
                                double width_mm);
void sw_text_block_free (SwTextBlock *block);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (SwTextBlock, sw_text_block_free)

/** Height of @count lines. */
double sw_text_block_height_mm (const SwPen *pen, const SwTextBlock *block, guint count);

/** Width of the widest word. */
double sw_text_word_mm (const SwPen *pen, SwStyle style, const char *markup);

/** Draw @count lines from @first on in a box with its left top at (x, y). */
void sw_text_block_draw (const SwPen *pen, const SwTextBlock *block, guint first,
                         guint count, SwFigure *figure, SwRole role, double x_mm,
                         double y_mm, double width_mm, SwAlign align);

/** One line of plain text with its top left, centre or right at (x, y). */
void sw_pen_write (const SwPen *pen, SwStyle style, SwFigure *figure, SwRole role,
                   double x_mm, double y_mm, SwAlign align, const char *text);
double sw_pen_width_mm (const SwPen *pen, SwStyle style, const char *text);

/** @text with its asterisks doubled: it stays what the user wrote. (transfer full) */
char *sw_markup_escape (const char *text);
