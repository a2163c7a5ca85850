/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include <stdlib.h>

#include <cairo.h>

#include "sample.h"

#define DOTS_PER_INCH 200
#define DOTS_TEXT "200"

/* A dot counts as different when no dot within one of it is about as dark. */
#define SAME_COLOUR 64

/* Rasterisers snap thin lines and letters to dots each in its own way: 0.25 % was
   seen, against 3.5 % for a shift of 1 mm. Common practice, no source. */
#define LARGEST_SHARE 0.004
/* A figure moved by 1 mm must differ at least so much. */
#define SMALLEST_SHIFTED_SHARE 0.02

typedef struct
{
  cairo_surface_t *surface;
  const guint8 *dots;
  int width, height, stride;
} Picture;

static void
open_picture (Picture *picture, const char *path)
{
  picture->surface = cairo_image_surface_create_from_png (path);
  g_assert_cmpint (cairo_surface_status (picture->surface), ==, CAIRO_STATUS_SUCCESS);
  picture->dots = cairo_image_surface_get_data (picture->surface);
  picture->width = cairo_image_surface_get_width (picture->surface);
  picture->height = cairo_image_surface_get_height (picture->surface);
  picture->stride = cairo_image_surface_get_stride (picture->surface);
}

static const guint8 *
dot_at (const Picture *picture, int x, int y)
{
  return picture->dots + (gsize) y * (gsize) picture->stride + 4 * (gsize) x;
}

static gboolean
is_near (const guint8 *dot, const Picture *other, int x, int y)
{
  for (int v = MAX (y - 1, 0); v <= MIN (y + 1, other->height - 1); v++)
    for (int u = MAX (x - 1, 0); u <= MIN (x + 1, other->width - 1); u++)
      {
        const guint8 *there = dot_at (other, u, v);
        if (abs (dot[0] - there[0]) < SAME_COLOUR && abs (dot[1] - there[1]) < SAME_COLOUR
            && abs (dot[2] - there[2]) < SAME_COLOUR)
          return TRUE;
      }
  return FALSE;
}

/* Share of the dots of either picture that the other does not have nearby. */
static double
share_of_difference (const Picture *a, const Picture *b)
{
  const int width = MIN (a->width, b->width);
  const int height = MIN (a->height, b->height);
  guint different = 0;

  /* Page sizes in dots are rounded by each rasteriser on its own. */
  g_assert_cmpint (abs (a->width - b->width), <=, 1);
  g_assert_cmpint (abs (a->height - b->height), <=, 1);
  for (int y = 0; y < height; y++)
    for (int x = 0; x < width; x++)
      different +=
          !is_near (dot_at (a, x, y), b, x, y) || !is_near (dot_at (b, x, y), a, x, y);
  return (double) different / width / height;
}

/* -1 when the PDF cannot be made a picture here. */
static double
compare_painters (const SwFigure *for_pdf, const SwFigure *for_png)
{
  char *folder = sample_folder ();
  g_autoptr (SwPalette) palette = sample_palette ();
  g_autoptr (GError) error = NULL;
  g_autofree char *png = g_build_filename (folder, "cairo.png", NULL);
  g_autofree char *stem = g_build_filename (folder, "haru", NULL);
  g_autofree char *raster = g_strconcat (stem, ".png", NULL);
  g_autofree char *pdf = sample_pdf (for_pdf, folder, "haru.pdf");
  g_autofree char *said = sample_tool ((const char *[]){
      "pdftoppm", "-r", DOTS_TEXT, "-png", "-singlefile", pdf, stem, NULL });
  double share = -1.0;

  sw_paint_png (for_png, palette, DOTS_PER_INCH, png, &error);
  g_assert_no_error (error);
  if (said)
    {
      Picture a, b;

      open_picture (&a, png);
      open_picture (&b, raster);
      share = share_of_difference (&a, &b);
      cairo_surface_destroy (a.surface);
      cairo_surface_destroy (b.surface);
    }
  sample_folder_remove (folder);
  return share;
}

static void
test_agree (void)
{
  g_autoptr (SwFigure) figure = sample_figure ();
  const double share = compare_painters (figure, figure);

  g_test_message ("dots that differ: %.5f of all", share);
  g_assert_cmpfloat (share, <=, LARGEST_SHARE);
}

/* The comparison would see a fault: everything moved by 1 mm. */
static void
test_shift_is_seen (void)
{
  g_autoptr (SwFigure) figure = sample_figure ();
  g_autoptr (SwFigure) shifted = sw_figure_new (figure->width_mm, figure->height_mm);
  double share;

  sw_figure_place (shifted, figure, 1.0, 0.0);
  share = compare_painters (figure, shifted);
  g_test_message ("dots that differ: %.5f of all", share);
  if (share >= 0.0)
    g_assert_cmpfloat (share, >=, SMALLEST_SHIFTED_SHARE);
}

/* One item left out of twenty-eight roles is seen too. */
static void
test_missing_item_is_seen (void)
{
  g_autoptr (SwFigure) figure = sample_figure ();
  g_autoptr (SwFigure) poorer = sample_figure ();
  double share;

  sw_figure_text (figure, SW_ROLE_TEXT, 20.0, 200.0, 5.0, SW_ALIGN_LEFT, SW_FACE_BOLD,
                  0.0, "left out by one of the two");
  share = compare_painters (figure, poorer);
  g_test_message ("dots that differ: %.5f of all", share);
  if (share >= 0.0)
    g_assert_cmpfloat (share, >, LARGEST_SHARE);
}

/*
 * Dark screens use the dark colours: a white figure's ink is light. The dot
 * at the centre of a filled circle is its fill.
 */
static void
test_dark_theme (void)
{
  g_autoptr (SwFigure) figure = sw_figure_new (10.0, 10.0);
  g_autoptr (SwPalette) palette = sample_palette ();
  cairo_surface_t *surface = cairo_image_surface_create (CAIRO_FORMAT_RGB24, 10, 10);
  cairo_t *cr = cairo_create (surface);
  Picture picture = { .surface = surface };

  palette->looks[SW_ROLE_PIN].fill = (SwColour){ 1.0, 0.0, 0.0, 1.0 };
  palette->looks[SW_ROLE_PIN].fill_dark = (SwColour){ 0.0, 0.0, 1.0, 1.0 };
  sw_figure_circle (figure, SW_ROLE_PIN, 5.0, 5.0, 4.0);
  sw_paint_cairo (figure, cr, palette, SW_THEME_DARK);
  cairo_surface_flush (surface);
  picture.dots = cairo_image_surface_get_data (surface);
  picture.stride = cairo_image_surface_get_stride (surface);
  /* Source: cairo's RGB24 is a native 32-bit word, red above green above blue. */
  g_assert_cmphex (*(const guint32 *) dot_at (&picture, 5, 5) & 0xFFFFFF, ==, 0x0000FF);
  sw_paint_cairo (figure, cr, palette, SW_THEME_LIGHT);
  cairo_surface_flush (surface);
  g_assert_cmphex (*(const guint32 *) dot_at (&picture, 5, 5) & 0xFFFFFF, ==, 0xFF0000);
  cairo_destroy (cr);
  cairo_surface_destroy (surface);
}

/* Clips left open must not leak into what is painted next. */
static void
test_open_clip_ends (void)
{
  const SwPaperPoint corner[] = { { 0, 0 }, { 2, 0 }, { 0, 2 } };
  g_autoptr (SwFigure) figure = sw_figure_new (10.0, 10.0);
  g_autoptr (SwPalette) palette = sample_palette ();
  cairo_surface_t *surface = cairo_image_surface_create (CAIRO_FORMAT_RGB24, 10, 10);
  cairo_t *cr = cairo_create (surface);
  double x0, y0, x1, y1;

  sw_figure_unclip (figure);
  sw_figure_clip (figure, corner, G_N_ELEMENTS (corner));
  sw_paint_cairo (figure, cr, palette, SW_THEME_LIGHT);
  cairo_clip_extents (cr, &x0, &y0, &x1, &y1);
  g_assert_cmpfloat_with_epsilon (x1 - x0, 10.0, 1e-9);
  g_assert_cmpfloat_with_epsilon (y1 - y0, 10.0, 1e-9);
  g_assert_cmpint (cairo_status (cr), ==, CAIRO_STATUS_SUCCESS);
  cairo_destroy (cr);
  cairo_surface_destroy (surface);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/paint/painters/agree", test_agree);
  g_test_add_func ("/paint/painters/shift-is-seen", test_shift_is_seen);
  g_test_add_func ("/paint/painters/missing-item-is-seen", test_missing_item_is_seen);
  g_test_add_func ("/paint/painters/dark-theme", test_dark_theme);
  g_test_add_func ("/paint/painters/open-clip-ends", test_open_clip_ends);
  return g_test_run ();
}
