/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include <math.h>

#include "sample.h"

typedef struct
{
  char *folder;
  SwPalette *palette;
  SwFigure *figure;
} Fixture;

static void
set_up (Fixture *fixture, gconstpointer data)
{
  fixture->folder = sample_folder ();
  fixture->palette = sample_palette ();
  fixture->figure = sample_figure ();
}

static void
tear_down (Fixture *fixture, gconstpointer data)
{
  sample_folder_remove (fixture->folder);
  sw_palette_free (fixture->palette);
  sw_figure_free (fixture->figure);
}

/* Source: the sample is 6 x 8.5 in; at 200 dots an inch 1200 x 1700. */
static void
test_png_size (Fixture *fixture, gconstpointer data)
{
  g_autofree char *path = g_build_filename (fixture->folder, "a.png", NULL);
  g_autoptr (GError) error = NULL;
  cairo_surface_t *surface;

  sw_paint_png (fixture->figure, fixture->palette, 200.0, path, &error);
  g_assert_no_error (error);
  surface = cairo_image_surface_create_from_png (path);
  g_assert_cmpint (cairo_image_surface_get_width (surface), ==, 1200);
  g_assert_cmpint (cairo_image_surface_get_height (surface), ==, 1700);
  cairo_surface_destroy (surface);
}

static void
test_png_refused (Fixture *fixture, gconstpointer data)
{
  static const double resolutions[] = { 0.0, -5.0, 4000.0, NAN, INFINITY };
  g_autofree char *path = g_build_filename (fixture->folder, "a.png", NULL);

  for (gsize i = 0; i < G_N_ELEMENTS (resolutions); i++)
    {
      g_autoptr (GError) error = NULL;

      g_assert_false (
          sw_paint_png (fixture->figure, fixture->palette, resolutions[i], path, &error));
      g_assert_error (error, SW_PAINT_ERROR, SW_PAINT_ERROR_SIZE);
      g_assert_false (g_file_test (path, G_FILE_TEST_EXISTS));
    }
}

static void
test_svg (Fixture *fixture, gconstpointer data)
{
  g_autofree char *path = g_build_filename (fixture->folder, "a.svg", NULL);
  g_autofree char *text = NULL;
  g_autoptr (GError) error = NULL;

  sw_paint_svg (fixture->figure, fixture->palette, path, &error);
  g_assert_no_error (error);
  g_file_get_contents (path, &text, NULL, &error);
  g_assert_no_error (error);
  g_assert_nonnull (strstr (text, "width=\"152.4mm\" height=\"215.9mm\""));
  g_assert_nonnull (strstr (text, "viewBox=\"0 0 152.4 215.9\""));
}

static void
test_no_folder (Fixture *fixture, gconstpointer data)
{
  g_autofree char *path = g_build_filename (fixture->folder, "no", "a.svg", NULL);
  g_autoptr (GError) error = NULL;

  g_assert_false (sw_paint_svg (fixture->figure, fixture->palette, path, &error));
  g_assert_error (error, SW_PAINT_ERROR, SW_PAINT_ERROR_WRITE);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add ("/paint/image/png-size", Fixture, NULL, set_up, test_png_size, tear_down);
  g_test_add ("/paint/image/png-refused", Fixture, NULL, set_up, test_png_refused,
              tear_down);
  g_test_add ("/paint/image/svg", Fixture, NULL, set_up, test_svg, tear_down);
  g_test_add ("/paint/image/no-folder", Fixture, NULL, set_up, test_no_folder, tear_down);
  return g_test_run ();
}
