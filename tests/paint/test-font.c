/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include <cairo-ft.h>
#include <hpdf.h>

#include "sample.h"

static void
test_paths (void)
{
  g_autoptr (GError) error = NULL;
  const char *regular = sw_paint_font_path (SW_FACE_REGULAR, &error);
  const char *bold;

  g_assert_no_error (error);
  bold = sw_paint_font_path (SW_FACE_BOLD, &error);
  g_assert_no_error (error);
  g_assert_true (g_file_test (regular, G_FILE_TEST_IS_REGULAR));
  g_assert_true (g_file_test (bold, G_FILE_TEST_IS_REGULAR));
  g_assert_cmpstr (regular, !=, bold);
  g_assert_true (regular == sw_paint_font_path (SW_FACE_REGULAR, NULL));
}

/* Runs where fontconfig knows no folder at all. */
static void
test_missing_subprocess (void)
{
  g_autofree char *folder = sample_folder ();
  g_autofree char *config = g_build_filename (folder, "fonts.conf", NULL);
  g_autofree char *picture = g_build_filename (folder, "none.png", NULL);
  g_autoptr (SwFigure) figure = sample_figure ();
  g_autoptr (SwPalette) palette = sample_palette ();
  g_autoptr (GError) error = NULL;
  gunichar missing = 7;

  g_file_set_contents (config, "<?xml version=\"1.0\"?><fontconfig></fontconfig>", -1,
                       &error);
  g_assert_no_error (error);
  g_setenv ("FONTCONFIG_FILE", config, TRUE);
  g_assert_null (sw_paint_font_path (SW_FACE_REGULAR, &error));
  g_assert_error (error, SW_PAINT_ERROR, SW_PAINT_ERROR_FONT);
  g_assert_nonnull (strstr (error->message, "DejaVu Sans Condensed"));
  g_assert_nonnull (strstr (error->message, "fonts-dejavu-extra"));
  g_clear_error (&error);
  g_assert_null (sw_paint_measure (&error));
  g_assert_error (error, SW_PAINT_ERROR, SW_PAINT_ERROR_FONT);
  g_clear_error (&error);
  g_assert_false (sw_paint_missing_glyph ("a", &missing, &error));
  g_assert_error (error, SW_PAINT_ERROR, SW_PAINT_ERROR_FONT);
  g_clear_error (&error);
  g_assert_false (sw_paint_png (figure, palette, 50.0, picture, &error));
  g_assert_error (error, SW_PAINT_ERROR, SW_PAINT_ERROR_FONT);
  g_assert_false (g_file_test (picture, G_FILE_TEST_EXISTS));
  sample_folder_remove (g_steal_pointer (&folder));
}

static void
test_missing_font (void)
{
  g_test_trap_subprocess ("/paint/font/missing/subprocess", 0, 0);
  g_test_trap_assert_passed ();
}

static double
haru_width (SwTypeface typeface, double size, const char *text)
{
  HPDF_Doc doc = HPDF_New (NULL, NULL);
  const char *path = sw_paint_font_path (typeface, NULL);
  HPDF_Page page;
  double width;

  HPDF_UseUTFEncodings (doc);
  page = HPDF_AddPage (doc);
  HPDF_Page_SetFontAndSize (
      page, HPDF_GetFont (doc, HPDF_LoadTTFontFromFile (doc, path, HPDF_TRUE), "UTF-8"),
      (HPDF_REAL) size);
  width = HPDF_Page_TextWidth (page, text);
  g_assert_cmpint (HPDF_GetError (doc), ==, HPDF_OK);
  HPDF_Free (doc);
  return width;
}

static double
cairo_width (SwTypeface typeface, double size, const char *text)
{
  cairo_surface_t *surface = cairo_image_surface_create (CAIRO_FORMAT_A8, 1, 1);
  cairo_t *cr = cairo_create (surface);
  cairo_font_options_t *options = cairo_font_options_create ();
  cairo_font_face_t *face;
  cairo_text_extents_t extents;
  FcPattern *pattern =
      FcPatternBuild (NULL, FC_FILE, FcTypeString, sw_paint_font_path (typeface, NULL),
                      FC_INDEX, FcTypeInteger, 0, NULL);

  cairo_font_options_set_hint_style (options, CAIRO_HINT_STYLE_NONE);
  cairo_font_options_set_hint_metrics (options, CAIRO_HINT_METRICS_OFF);
  cairo_set_font_options (cr, options);
  face = cairo_ft_font_face_create_for_pattern (pattern);
  cairo_set_font_face (cr, face);
  cairo_set_font_size (cr, size);
  cairo_text_extents (cr, text, &extents);
  cairo_font_options_destroy (options);
  cairo_destroy (cr);
  cairo_surface_destroy (surface);
  cairo_font_face_destroy (face);
  FcPatternDestroy (pattern);
  return extents.x_advance;
}

/*
 * Source: two independent readers of the font file, libharu and cairo with
 * hinting off. Tolerance 0.2 %: libharu rounds advances to 1/1000 em.
 */
static void
test_widths_agree (void)
{
  g_autoptr (GError) error = NULL;
  const SwTextMeasure *measure = sw_paint_measure (&error);

  g_assert_no_error (error);
  for (guint face = 0; face <= SW_FACE_BOLD; face++)
    for (double size = 4.0; size < 40.0; size *= 1.7)
      {
        const double ours = measure->width_mm (face, size, SAMPLE_TEXT, measure->data);

        g_assert_cmpfloat_with_epsilon (ours, haru_width (face, size, SAMPLE_TEXT),
                                        0.002 * ours);
        g_assert_cmpfloat_with_epsilon (ours, cairo_width (face, size, SAMPLE_TEXT),
                                        0.002 * ours);
      }
}

/* Source: DejaVu's horizontal header, 1901 and 483 of 2048 units (fontTools: hhea). */
static void
test_ascent (void)
{
  const SwTextMeasure *measure = sw_paint_measure (NULL);

  g_assert_cmpfloat_with_epsilon (measure->ascent, 1901.0 / 2048.0, 1e-3);
  g_assert_cmpfloat_with_epsilon (measure->descent, 483.0 / 2048.0, 1e-3);
}

/* The font has no Han and no emoji; a newline would print as a box. */
static void
test_missing_glyph (void)
{
  static const struct
  {
    const char *text;
    gunichar want;
  } rows[] = {
    { "", 0 },          { SAMPLE_TEXT, 0 },     { "no\u00a0break", 0 },
    { "a水b", 0x6C34 }, { "two\nlines", '\n' }, { "tab\there", '\t' },
    { "🚜", 0x1F69C },
  };

  for (gsize i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr (GError) error = NULL;
      gunichar missing = 1;

      g_assert_true (sw_paint_missing_glyph (rows[i].text, &missing, &error));
      g_assert_no_error (error);
      g_assert_cmphex (missing, ==, rows[i].want);
    }
}

static gpointer
measure_elsewhere (gpointer data)
{
  const SwTextMeasure *measure = sw_paint_measure (NULL);
  g_autoptr (SwPalette) palette = sample_palette ();
  g_autoptr (SwFigure) figure = sample_figure ();
  cairo_surface_t *surface = cairo_image_surface_create (CAIRO_FORMAT_RGB24, 50, 50);
  cairo_t *cr = cairo_create (surface);
  double *width_mm = data;

  *width_mm = measure->width_mm (SW_FACE_REGULAR, 3.0, SAMPLE_TEXT, measure->data);
  sw_paint_cairo (figure, cr, palette, SW_THEME_LIGHT);
  g_assert_cmpint (cairo_status (cr), ==, CAIRO_STATUS_SUCCESS);
  cairo_destroy (cr);
  cairo_surface_destroy (surface);
  return NULL;
}

/* Threads come and go while cairo keeps what they drew with. */
static void
test_threads (void)
{
  const SwTextMeasure *measure = sw_paint_measure (NULL);
  const double here_mm =
      measure->width_mm (SW_FACE_REGULAR, 3.0, SAMPLE_TEXT, measure->data);

  for (int i = 0; i < 20; i++)
    {
      double there_mm = 0.0;

      g_thread_join (g_thread_new ("measure", measure_elsewhere, &there_mm));
      g_assert_cmpfloat_with_epsilon (here_mm, there_mm, 1e-12);
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/paint/font/paths", test_paths);
  g_test_add_func ("/paint/font/missing", test_missing_font);
  g_test_add_func ("/paint/font/missing/subprocess", test_missing_subprocess);
  g_test_add_func ("/paint/font/widths-agree", test_widths_agree);
  g_test_add_func ("/paint/font/ascent", test_ascent);
  g_test_add_func ("/paint/font/missing-glyph", test_missing_glyph);
  g_test_add_func ("/paint/font/threads", test_threads);
  return g_test_run ();
}
