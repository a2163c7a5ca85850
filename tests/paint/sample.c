/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "sample.h"

#include <glib/gstdio.h>
#include <slopewright/figure/mark.h>

SwPalette *
sample_palette (void)
{
  SwPalette *palette = sw_palette_new ();

  for (guint i = 0; i < SW_ROLE_COUNT; i++)
    {
      SwLook *look = &palette->looks[i];
      const double part = (double) i / SW_ROLE_COUNT;

      look->line = (SwColour){ part * 0.8, 0.1, 0.8 - part * 0.8, 1.0 };
      look->fill =
          (SwColour){ 1.0 - part * 0.3, 0.9, 0.7 + part * 0.3, i % 4 ? 1.0 : 0.0 };
      look->width_mm = i % 7 ? 0.18 + 0.05 * (i % 5) : 0.0;
      look->hatch_mm = i % 3 ? 0.0 : (i % 2 ? 1.1 : -1.6);
      look->hatch_width_mm = i % 3 ? 0.0 : 0.18;
      if (i % 5 == 4)
        memcpy (look->dash_mm, (double[]){ 2.1, 1.1, 0.7, 1.1 }, sizeof look->dash_mm);
    }
  palette->looks[SW_ROLE_HIGHLIGHT].fill = (SwColour){ 1.0, 0.4, 0.1, 0.4 };
  palette->looks[SW_ROLE_PIN].fill = palette->looks[SW_ROLE_PIN].line;
  palette->looks[SW_ROLE_TEXT].line = (SwColour){ 0.0, 0.0, 0.0, 1.0 };
  return palette;
}

static void
add_role (SwFigure *figure, SwRole role, double x_mm, double y_mm)
{
  const SwPaperPoint zigzag[] = { { x_mm, y_mm + 9 },
                                  { x_mm + 5, y_mm + 5 },
                                  { x_mm + 10, y_mm + 9 } };

  sw_figure_object (figure, sw_role_code (role));
  sw_figure_text (figure, role, x_mm, y_mm + 3, 2.5, SW_ALIGN_LEFT,
                  role % 2 ? SW_FACE_BOLD : SW_FACE_REGULAR, 0.0, sw_role_code (role));
  sw_figure_line (figure, role, zigzag, G_N_ELEMENTS (zigzag));
  sw_figure_box (figure, role, x_mm + 12, y_mm + 4, 8, 6);
  sw_figure_circle (figure, role, x_mm + 24, y_mm + 7, 2.0);
  sw_mark_arrow (figure, role, x_mm + 28, y_mm + 9, x_mm + 33, y_mm + 3);
}

static void
add_pins (SwFigure *figure)
{
  for (int i = 0; i < 300; i++)
    sw_figure_circle (figure, SW_ROLE_PIN, 85.0 + 1.5 * (i % 40), 165.0 + 3.0 * (i / 40),
                      i < 200 ? 0.25 : 0.5);
}

static void
add_clipped (SwFigure *figure)
{
  const SwPaperPoint diamond[] = {
    { 110, 140 }, { 125, 125 }, { 140, 140 }, { 125, 155 }
  };
  const SwPaperPoint strip[] = { { 118, 120 }, { 132, 120 }, { 132, 160 }, { 118, 160 } };

  sw_figure_clip (figure, diamond, G_N_ELEMENTS (diamond));
  sw_figure_box (figure, SW_ROLE_LAP, 100, 120, 50, 40);
  sw_figure_clip (figure, strip, G_N_ELEMENTS (strip));
  sw_figure_box (figure, SW_ROLE_HIGHLIGHT, 100, 130, 50, 20);
  sw_figure_unclip (figure);
  sw_figure_segment (figure, SW_ROLE_TEXT, 100, 140, 150, 140);
  sw_figure_unclip (figure);
}

SwFigure *
sample_figure (void)
{
  SwFigure *figure = sw_figure_new (152.4, 215.9);

  figure->title = g_strdup ("Échantillon 26.6°");
  for (guint i = 0; i < SW_ROLE_COUNT; i++)
    add_role (figure, i, 4.0 + 36.0 * (i % 4), 4.0 + 13.0 * (i / 4));
  sw_figure_text (figure, SW_ROLE_TEXT, 5.0, 128.0, 3.0, SW_ALIGN_LEFT, SW_FACE_REGULAR,
                  0.0, SAMPLE_TEXT);
  for (int i = 0; i < 8; i++)
    sw_figure_text (figure, SW_ROLE_TEXT, 50.0, 150.0, 3.0, i % 3, i % 2, i * G_PI / 4.0,
                    "      turned text");
  add_clipped (figure);
  add_pins (figure);
  sw_figure_link (figure, 5.0, 200.0, 30.0, 5.0, figure->title);
  return figure;
}

char *
sample_folder (void)
{
  g_autoptr (GError) error = NULL;
  char *folder = g_dir_make_tmp ("slopewright-paint-XXXXXX", &error);

  g_assert_no_error (error);
  return folder;
}

void
sample_folder_remove (char *folder)
{
  g_autoptr (GDir) files = g_dir_open (folder, 0, NULL);
  const char *name;

  while (files && (name = g_dir_read_name (files)))
    {
      g_autofree char *path = g_build_filename (folder, name, NULL);
      if (g_file_test (path, G_FILE_TEST_IS_DIR))
        sample_folder_remove (g_steal_pointer (&path));
      else
        g_assert_cmpint (g_unlink (path), ==, 0);
    }
  g_assert_cmpint (g_rmdir (folder), ==, 0);
  g_free (folder);
}

char *
sample_pdf (const SwFigure *figure, const char *folder, const char *name)
{
  g_autoptr (SwPalette) palette = sample_palette ();
  g_autoptr (GPtrArray) pages = g_ptr_array_new ();
  g_autoptr (GError) error = NULL;
  const SwPdfInfo info = { .title = "Probe ½", .author = "Någon", .language = "fr" };
  char *path = g_build_filename (folder, name, NULL);

  g_ptr_array_add (pages, (gpointer) figure);
  sw_paint_pdf (pages, palette, &info, path, NULL, &error);
  g_assert_no_error (error);
  return path;
}

char *
sample_tool (const char *const *arguments)
{
  g_autofree char *program = g_find_program_in_path (arguments[0]);
  g_autofree char *message = NULL;
  g_autoptr (GError) error = NULL;
  char *output = NULL;
  int status = 0;

  if (!program)
    {
      message = g_strdup_printf ("%s is not installed", arguments[0]);
      g_test_skip (message);
      return NULL;
    }
  /* The tools' own warnings go nowhere: poppler has one about libharu's character map. */
  g_spawn_sync (NULL, (char **) arguments, NULL,
                G_SPAWN_SEARCH_PATH | G_SPAWN_STDERR_TO_DEV_NULL, NULL, NULL, &output,
                NULL, &status, &error);
  g_assert_no_error (error);
  g_spawn_check_wait_status (status, &error);
  g_assert_no_error (error);
  return output;
}
