/* SPDX-License-Identifier: MIT */
#include "face.h"

#include <cairo-ft.h>

static double
measure_width_mm (SwTypeface typeface, double size_mm, const char *text, gpointer data)
{
  return size_mm * sw_faces_width (data, typeface, text);
}

static void
close_fonts (gpointer data)
{
  SwFaces *faces = data;

  for (guint i = 0; i < SW_FACE_COUNT; i++)
    if (faces->fonts[i])
      FT_Done_Face (faces->fonts[i]);
  if (faces->library)
    FT_Done_FreeType (faces->library);
}

static void
release_fonts (gpointer faces)
{
  g_atomic_rc_box_release_full (faces, close_fonts);
}

static void
free_faces (gpointer data)
{
  SwFaces *faces = data;

  for (guint i = 0; i < SW_FACE_COUNT; i++)
    if (faces->for_cairo[i])
      cairo_font_face_destroy (faces->for_cairo[i]);
  release_fonts (faces);
}

/* cairo's caches may keep a face longer than the thread lives that opened it,
   so each holds on to the fonts. */
static cairo_font_face_t *
face_for_cairo (SwFaces *faces, SwTypeface typeface)
{
  static const cairo_user_data_key_t key;
  cairo_font_face_t *face =
      cairo_ft_font_face_create_for_ft_face (faces->fonts[typeface], 0);

  if (cairo_font_face_set_user_data (face, &key, g_atomic_rc_box_acquire (faces),
                                     release_fonts)
      != CAIRO_STATUS_SUCCESS)
    g_error ("out of memory");
  return face;
}

static gboolean
open_face (SwFaces *faces, SwTypeface typeface, GError **error)
{
  const char *path = sw_paint_font_path (typeface, error);

  if (!path)
    return FALSE;
  if (FT_New_Face (faces->library, path, 0, &faces->fonts[typeface]) != 0)
    {
      g_set_error (error, SW_PAINT_ERROR, SW_PAINT_ERROR_FONT,
                   "%s: the sheet font cannot be read", path);
      return FALSE;
    }
  faces->for_cairo[typeface] = face_for_cairo (faces, typeface);
  sw_faces_learn_advances (faces, typeface);
  return TRUE;
}

static SwFaces *
open_faces (GError **error)
{
  SwFaces *faces = g_atomic_rc_box_new0 (SwFaces);

  if (FT_Init_FreeType (&faces->library) != 0)
    g_error ("FreeType cannot be started");
  if (!open_face (faces, SW_FACE_REGULAR, error)
      || !open_face (faces, SW_FACE_BOLD, error))
    {
      free_faces (faces);
      return NULL;
    }

  const FT_Face regular = faces->fonts[SW_FACE_REGULAR];
  faces->measure = (SwTextMeasure){
    .width_mm = measure_width_mm,
    .data = faces,
    .ascent = (double) regular->ascender / regular->units_per_EM,
    .descent = -(double) regular->descender / regular->units_per_EM,
  };
  return faces;
}

const SwFaces *
sw_faces_get (GError **error)
{
  static GPrivate of_this_thread = G_PRIVATE_INIT (free_faces);
  SwFaces *faces = g_private_get (&of_this_thread);

  if (!faces)
    {
      faces = open_faces (error);
      if (faces)
        g_private_set (&of_this_thread, faces);
    }
  return faces;
}
