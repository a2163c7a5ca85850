/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include <cairo-pdf.h>
#include <glib/gstdio.h>
#include <slopewright/base/units.h>

#include "sample.h"

/*
 * A 24-page pack through libharu and through cairo's own PDF surface: one page
 * with the 34 000 pins of a face of 1 ha, the others with text and drawings.
 * Prints times, sizes and their ratios; asserts nothing about speed.
 */
#define PAGES 24
#define PINS_ACROSS 200
#define PINS_DOWN 170
#define ROUNDS 5

static SwFigure *
pin_page (void)
{
  SwFigure *page = sw_figure_new (297.0, 420.0);

  for (int i = 0; i < PINS_ACROSS; i++)
    for (int j = 0; j < PINS_DOWN; j++)
      sw_figure_circle (page, SW_ROLE_PIN, 15.0 + 1.3 * i + 0.65 * (j % 2),
                        20.0 + 2.2 * j, 0.25);
  return page;
}

static SwFigure *
text_page (void)
{
  SwFigure *page = sample_figure ();

  for (int line = 0; line < 45; line++)
    sw_figure_text (page, SW_ROLE_TEXT, 5.0, 8.0 + 4.5 * line, 3.0, SW_ALIGN_LEFT,
                    line % 9 ? SW_FACE_REGULAR : SW_FACE_BOLD, 0.0, SAMPLE_TEXT);
  return page;
}

static GPtrArray *
make_pages (void)
{
  GPtrArray *pages = g_ptr_array_new_with_free_func ((GDestroyNotify) sw_figure_free);

  g_ptr_array_add (pages, pin_page ());
  while (pages->len < PAGES)
    g_ptr_array_add (pages, text_page ());
  return pages;
}

static void
write_haru (const GPtrArray *pages, const SwPalette *palette, const char *path)
{
  g_autoptr (GError) error = NULL;

  sw_paint_pdf (pages, palette, NULL, path, NULL, &error);
  g_assert_no_error (error);
}

static void
write_cairo (const GPtrArray *pages, const SwPalette *palette, const char *path)
{
  cairo_surface_t *surface = cairo_pdf_surface_create (path, 100.0, 100.0);
  cairo_t *cr = cairo_create (surface);

  cairo_scale (cr, SW_PT_PER_MM, SW_PT_PER_MM);
  for (guint i = 0; i < pages->len; i++)
    {
      const SwFigure *page = g_ptr_array_index (pages, i);

      cairo_pdf_surface_set_size (surface, page->width_mm * SW_PT_PER_MM,
                                  page->height_mm * SW_PT_PER_MM);
      sw_paint_cairo (page, cr, palette, SW_THEME_PAPER);
      cairo_show_page (cr);
    }
  cairo_destroy (cr);
  cairo_surface_finish (surface);
  g_assert_cmpint (cairo_surface_status (surface), ==, CAIRO_STATUS_SUCCESS);
  cairo_surface_destroy (surface);
}

typedef void (*Writer) (const GPtrArray *pages, const SwPalette *palette,
                        const char *path);

/* The fastest of some rounds: the others were disturbed. */
static double
measure_ms (Writer write, const GPtrArray *pages, const SwPalette *palette,
            const char *path)
{
  double best_ms = G_MAXDOUBLE;

  for (int round = 0; round < ROUNDS; round++)
    {
      const gint64 start_us = g_get_monotonic_time ();

      write (pages, palette, path);
      best_ms = MIN (best_ms, (double) (g_get_monotonic_time () - start_us) / 1000.0);
    }
  return best_ms;
}

static double
size_kib (const char *path)
{
  GStatBuf status;

  g_assert_cmpint (g_stat (path, &status), ==, 0);
  return (double) status.st_size / 1024.0;
}

int
main (void)
{
  char *folder = sample_folder ();
  g_autofree char *haru = g_build_filename (folder, "haru.pdf", NULL);
  g_autofree char *cairo = g_build_filename (folder, "cairo.pdf", NULL);
  g_autoptr (SwPalette) palette = sample_palette ();
  g_autoptr (GPtrArray) pages = make_pages ();
  double haru_ms, cairo_ms;

  /* As in the palette shipped: a pin is one colour through and through. */
  palette->looks[SW_ROLE_PIN].fill = palette->looks[SW_ROLE_PIN].line;
  haru_ms = measure_ms (write_haru, pages, palette, haru);
  cairo_ms = measure_ms (write_cairo, pages, palette, cairo);

  g_print ("24 pages, 34 000 pins: libharu %.0f ms, %.0f KiB; cairo %.0f ms, %.0f KiB\n",
           haru_ms, size_kib (haru), cairo_ms, size_kib (cairo));
  g_print ("libharu / cairo: time %.2f, size %.2f\n", haru_ms / cairo_ms,
           size_kib (haru) / size_kib (cairo));
  sample_folder_remove (folder);
  return 0;
}
