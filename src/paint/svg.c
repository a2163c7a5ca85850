/* SPDX-License-Identifier: MIT */
#include <cairo-svg.h>

#include "face.h"
#include "image.h"
#include "write.h"

gboolean
sw_paint_svg (const SwFigure *figure, const SwPalette *palette, const char *path,
              GError **error)
{
  g_autoptr (GByteArray) bytes = g_byte_array_new ();
  cairo_surface_t *surface;
  cairo_t *cr;
  cairo_status_t status;

  if (!sw_faces_get (error))
    return FALSE;
  surface = cairo_svg_surface_create_for_stream (sw_image_collect, bytes,
                                                 figure->width_mm, figure->height_mm);
  cairo_svg_surface_set_document_unit (surface, CAIRO_SVG_UNIT_MM);
  cr = cairo_create (surface);
  sw_paint_cairo (figure, cr, palette, SW_THEME_PAPER);
  cairo_destroy (cr);
  cairo_surface_finish (surface);
  status = cairo_surface_status (surface);
  cairo_surface_destroy (surface);
  return sw_image_check (status, "SVG drawing", path, error)
         && sw_write_whole (path, bytes->data, bytes->len, error);
}
