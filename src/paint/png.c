/* SPDX-License-Identifier: MIT */
#include <glib/gi18n.h>
#include <math.h>

#include <slopewright/base/units.h>

#include "face.h"
#include "image.h"
#include "write.h"

#define LARGEST_DOTS 32767.0 /* a side of a cairo image */

static cairo_surface_t *
paint_image (const SwFigure *figure, const SwPalette *palette, double dots_per_mm)
{
  cairo_surface_t *surface = cairo_image_surface_create (
      CAIRO_FORMAT_RGB24, (int) ceil (figure->width_mm * dots_per_mm),
      (int) ceil (figure->height_mm * dots_per_mm));
  cairo_t *cr = cairo_create (surface);

  cairo_set_source_rgb (cr, 1.0, 1.0, 1.0);
  cairo_paint (cr);
  cairo_scale (cr, dots_per_mm, dots_per_mm);
  sw_paint_cairo (figure, cr, palette, SW_THEME_PAPER);
  cairo_destroy (cr);
  return surface;
}

gboolean
sw_paint_png (const SwFigure *figure, const SwPalette *palette, double dots_per_inch,
              const char *path, GError **error)
{
  const double dots_per_mm = dots_per_inch / SW_MM_PER_IN;
  const double longest = MAX (figure->width_mm, figure->height_mm) * dots_per_mm;
  g_autoptr (GByteArray) bytes = g_byte_array_new ();
  cairo_surface_t *surface;
  cairo_status_t status;

  if (!sw_faces_get (error))
    return FALSE;
  if (!(longest > 0.0 && longest <= LARGEST_DOTS))
    {
      g_set_error (error, SW_PAINT_ERROR, SW_PAINT_ERROR_SIZE,
                   _ ("%s: the picture would be %.0f dots long; 1 to %.0f can be made"),
                   path, longest, LARGEST_DOTS);
      return FALSE;
    }
  surface = paint_image (figure, palette, dots_per_mm);
  status = cairo_surface_write_to_png_stream (surface, sw_image_collect, bytes);
  cairo_surface_destroy (surface);
  return sw_image_check (status, "PNG picture", path, error)
         && sw_write_whole (path, bytes->data, bytes->len, error);
}
