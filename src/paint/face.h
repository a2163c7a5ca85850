/* SPDX-License-Identifier: MIT */
#pragma once

#include <cairo.h>
#include <ft2build.h>
#include FT_FREETYPE_H
#include <slopewright/paint/paint.h>

#define SW_FACE_COUNT 2

/* Letters of Latin scripts, whose widths are looked up once: a pack measures each thousands
   of times. */
#define SW_FACE_KNOWN 0x250

/* The sheet font, opened. FreeType faces serve one thread each. */
typedef struct
{
  FT_Library library;
  FT_Face fonts[SW_FACE_COUNT];                    /* by SwTypeface */
  cairo_font_face_t *for_cairo[SW_FACE_COUNT];     /* by SwTypeface */
  FT_Fixed advances[SW_FACE_COUNT][SW_FACE_KNOWN]; /* in the font's own units */
  SwTextMeasure measure;
} SwFaces;

/* This thread's faces, opened at first need. NULL with @error set. */
const SwFaces *sw_faces_get (GError **error);

/* Look up the widths that are known beforehand. */
void sw_faces_learn_advances (SwFaces *faces, SwTypeface typeface);

/* Width of text of 1 mm. */
double sw_faces_width (const SwFaces *faces, SwTypeface typeface, const char *text);
