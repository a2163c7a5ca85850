/* SPDX-License-Identifier: MIT */
#include "face.h"

#include FT_ADVANCES_H

/* libharu's font dictionaries know the basic plane only. */
#define LAST_CHARACTER 0xFFFF

/* In the font's own units, so no hinting and no rounding to pixels comes in. */
static FT_Fixed
look_up_advance (FT_Face font, gunichar character)
{
  FT_Fixed advance = 0;

  if (FT_Get_Advance (font, FT_Get_Char_Index (font, character), FT_LOAD_NO_SCALE,
                      &advance)
      != 0)
    return 0;
  return advance;
}

void
sw_faces_learn_advances (SwFaces *faces, SwTypeface typeface)
{
  for (gunichar c = 0; c < SW_FACE_KNOWN; c++)
    faces->advances[typeface][c] = look_up_advance (faces->fonts[typeface], c);
}

double
sw_faces_width (const SwFaces *faces, SwTypeface typeface, const char *text)
{
  const FT_Face font = faces->fonts[typeface];
  glong sum = 0;

  for (const char *c = text; *c; c = g_utf8_next_char (c))
    {
      const gunichar character = g_utf8_get_char (c);

      sum += character < SW_FACE_KNOWN ? faces->advances[typeface][character]
                                       : look_up_advance (font, character);
    }
  return (double) sum / font->units_per_EM;
}

const SwTextMeasure *
sw_paint_measure (GError **error)
{
  const SwFaces *faces = sw_faces_get (error);

  return faces ? &faces->measure : NULL;
}

gboolean
sw_paint_missing_glyph (const char *text, gunichar *missing, GError **error)
{
  const SwFaces *faces = sw_faces_get (error);

  if (!faces)
    return FALSE;
  *missing = 0;
  for (const char *c = text; *c; c = g_utf8_next_char (c))
    {
      const gunichar character = g_utf8_get_char (c);

      if (character > LAST_CHARACTER
          || FT_Get_Char_Index (faces->fonts[SW_FACE_REGULAR], character) == 0
          || FT_Get_Char_Index (faces->fonts[SW_FACE_BOLD], character) == 0)
        {
          *missing = character;
          break;
        }
    }
  return TRUE;
}
