/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include <locale.h>
#include <math.h>

#include <glib/gstdio.h>

#include "sample.h"

typedef struct
{
  char *folder;
} Fixture;

static void
set_up (Fixture *fixture, gconstpointer data)
{
  fixture->folder = sample_folder ();
}

static void
tear_down (Fixture *fixture, gconstpointer data)
{
  sample_folder_remove (fixture->folder);
}

static void
test_valid (Fixture *fixture, gconstpointer data)
{
  g_autoptr (SwFigure) figure = sample_figure ();
  g_autofree char *path = sample_pdf (figure, fixture->folder, "a.pdf");
  g_autofree char *said = sample_tool ((const char *[]){ "qpdf", "--check", path, NULL });

  /* qpdf exits with an error, and sample_tool fails, when there is a fault. */
  g_assert_true (!said || strstr (said, "No syntax or stream encoding errors"));
}

/* Columns of pdffonts from the right: object (two), uni, sub, emb. */
static void
test_fonts_embedded (Fixture *fixture, gconstpointer data)
{
  g_autoptr (SwFigure) figure = sample_figure ();
  g_autofree char *path = sample_pdf (figure, fixture->folder, "a.pdf");
  g_autofree char *said = sample_tool ((const char *[]){ "pdffonts", path, NULL });
  g_auto (GStrv) lines = NULL;
  guint fonts = 0;

  if (!said)
    return;
  lines = g_strsplit (g_strstrip (said), "\n", -1);
  for (guint i = 2; lines[i]; i++, fonts++)
    {
      g_assert_nonnull (strstr (lines[i], "DejaVuSansCondensed"));
      g_assert_nonnull (strstr (lines[i], "yes yes yes"));
    }
  g_assert_cmpuint (fonts, ==, 2); /* one object a face, however often it is used */
}

static void
test_text_found (Fixture *fixture, gconstpointer data)
{
  g_autoptr (SwFigure) figure = sample_figure ();
  g_autofree char *path = sample_pdf (figure, fixture->folder, "a.pdf");
  g_autofree char *said =
      sample_tool ((const char *[]){ "pdftotext", "-layout", path, "-", NULL });

  if (!said)
    return;
  g_assert_nonnull (strstr (said, "33.7° 1.5H:1V · 50 %"));
  g_assert_nonnull (strstr (said, "½ × 3 ft² ≤ 12 m³ → é è ç œ ñ ¿ ¡ ü α τ γ φ ☐ ✓"));
  for (guint i = 0; i < SW_ROLE_COUNT; i++)
    g_assert_nonnull (strstr (said, sw_role_code (i)));
}

static void
test_information (Fixture *fixture, gconstpointer data)
{
  g_autoptr (SwFigure) figure = sample_figure ();
  g_autofree char *path = sample_pdf (figure, fixture->folder, "a.pdf");
  g_autofree char *said = sample_tool ((const char *[]){ "pdfinfo", path, NULL });

  if (!said)
    return;
  g_assert_nonnull (strstr (said, "Probe ½"));
  g_assert_nonnull (strstr (said, "Någon"));
  g_assert_null (strstr (said, "CreationDate"));
  g_assert_null (strstr (said, "ModDate"));
  /* Source: the sample is 6 x 8.5 in; times 72. */
  g_assert_nonnull (strstr (said, "432 x 612 pts"));
}

/* Source: ISO 32000-1, 7.7.2 (Lang) and 12.2 (DisplayDocTitle, PrintScaling). */
static void
test_catalogue (Fixture *fixture, gconstpointer data)
{
  g_autoptr (SwFigure) figure = sample_figure ();
  g_autofree char *path = sample_pdf (figure, fixture->folder, "a.pdf");
  g_autofree char *said =
      sample_tool ((const char *[]){ "qpdf", "--qdf", path, "-", NULL });

  if (!said)
    return;
  g_assert_nonnull (strstr (said, "/Lang (fr)"));
  g_assert_nonnull (strstr (said, "/DisplayDocTitle true"));
  g_assert_nonnull (strstr (said, "/PrintScaling /None"));
}

/* Lengths of all straight lines "x y m x y l S" in uncompressed page contents. */
static void
check_line_length (const char *contents, double want_pt, double tolerance_pt)
{
  g_auto (GStrv) words = g_strsplit_set (contents, " \n", -1);
  const guint count = g_strv_length (words);
  guint matches = 0;

  for (guint i = 5; i < count; i++)
    if (g_str_equal (words[i], "l") && g_str_equal (words[i - 3], "m"))
      {
        const double dx =
            g_ascii_strtod (words[i - 2], NULL) - g_ascii_strtod (words[i - 5], NULL);
        const double dy =
            g_ascii_strtod (words[i - 1], NULL) - g_ascii_strtod (words[i - 4], NULL);
        matches += fabs (hypot (dx, dy) - want_pt) <= tolerance_pt;
      }
  g_assert_cmpuint (matches, ==, 4);
}

/*
 * Source: PostScript point = 1/72 in exactly, so 100 mm = 100 / 25.4 x 72 =
 * 283.465 pt. Tolerance: coordinates are written to 0.001 pt.
 */
static void
test_100_mm (Fixture *fixture, gconstpointer data)
{
  g_autoptr (SwFigure) figure = sw_figure_new (210.0, 297.0);
  g_autofree char *path = NULL;
  g_autofree char *said = NULL;

  sw_figure_segment (figure, SW_ROLE_SCALE_BAR, 33.3, 50.0, 133.3, 50.0);
  sw_figure_segment (figure, SW_ROLE_SCALE_BAR, 20.0, 60.0, 20.0, 160.0);
  sw_figure_segment (figure, SW_ROLE_SCALE_BAR, 30.0, 70.0, 90.0, 150.0); /* 3-4-5 */
  sw_figure_segment (figure, SW_ROLE_SCALE_BAR, 190.0, 200.0, 90.0, 200.0);
  sw_figure_segment (figure, SW_ROLE_SCALE_BAR, 30.0, 250.0, 129.9, 250.0); /* not it */
  path = sample_pdf (figure, fixture->folder, "line.pdf");
  said = sample_tool ((const char *[]){ "qpdf", "--qdf", path, "-", NULL });
  if (said)
    check_line_length (said, 283.465, 0.003);
}

static char *
read_file (const char *path, gsize *length)
{
  g_autoptr (GError) error = NULL;
  char *bytes = NULL;

  g_file_get_contents (path, &bytes, length, &error);
  g_assert_no_error (error);
  return bytes;
}

static void
assert_same_bytes (const char *path, const char *other)
{
  gsize length = 0;
  gsize other_length = 0;
  g_autofree char *bytes = read_file (path, &length);
  g_autofree char *other_bytes = read_file (other, &other_length);

  g_assert_cmpmem (bytes, length, other_bytes, other_length);
}

static void
test_same_bytes (Fixture *fixture, gconstpointer data)
{
  g_autoptr (SwFigure) figure = sample_figure ();
  g_autofree char *first = sample_pdf (figure, fixture->folder, "a.pdf");
  g_autofree char *second = NULL;

  g_usleep (1100000); /* a hidden time stamp counts seconds */
  second = sample_pdf (figure, fixture->folder, "b.pdf");
  assert_same_bytes (first, second);
}

/* A locale with a decimal comma, made where only this test looks. */
static gboolean
enter_comma_locale (const char *folder)
{
  g_autofree char *place = g_build_filename (folder, "xx.UTF-8", NULL);
  g_autofree char *made = sample_tool ((const char *[]){
      "localedef", "-i", "de_DE", "-f", "UTF-8", "--no-archive", place, NULL });

  if (!made)
    return FALSE;
  g_setenv ("LOCPATH", folder, TRUE);
  if (setlocale (LC_ALL, "xx.UTF-8") && g_str_equal (localeconv ()->decimal_point, ","))
    return TRUE;
  g_test_skip ("no locale with a decimal comma can be made");
  return FALSE;
}

static void
test_comma_locale (Fixture *fixture, gconstpointer data)
{
  g_autoptr (SwFigure) figure = sample_figure ();
  g_autofree char *points = sample_pdf (figure, fixture->folder, "points.pdf");
  g_autofree char *commas = NULL;

  if (!g_file_test ("/usr/share/i18n/locales/de_DE", G_FILE_TEST_EXISTS))
    {
      g_test_skip ("the sources of locales are not installed");
      return;
    }
  if (!enter_comma_locale (fixture->folder))
    return;
  commas = sample_pdf (figure, fixture->folder, "commas.pdf");
  setlocale (LC_ALL, "C");
  g_unsetenv ("LOCPATH");
  assert_same_bytes (points, commas);
}

static GError *
refused (const SwFigure *figure, const char *folder)
{
  g_autoptr (SwPalette) palette = sample_palette ();
  g_autoptr (GPtrArray) pages = g_ptr_array_new ();
  g_autofree char *path = g_build_filename (folder, "refused.pdf", NULL);
  GError *error = NULL;

  g_ptr_array_add (pages, (gpointer) figure);
  g_assert_false (sw_paint_pdf (pages, palette, NULL, path, NULL, &error));
  g_assert_false (g_file_test (path, G_FILE_TEST_EXISTS));
  return error;
}

/* Source: libharu 2.3 clamps at 32767 pt = 11559.5 mm; its largest page is 14400 pt = 5080 mm. */
static void
test_size_refused (Fixture *fixture, gconstpointer data)
{
  static const struct
  {
    double width_mm, height_mm, x_mm, y_mm, text_mm;
  } rows[] = {
    { 100.0, 100.0, 11560.0, 0.0, 3.0 },  { 100.0, 100.0, -11560.0, 0.0, 3.0 },
    { 100.0, 100.0, 0.0, 11660.0, 3.0 },  { 100.0, 100.0, NAN, 0.0, 3.0 },
    { 100.0, 100.0, 0.0, INFINITY, 3.0 }, { 5081.0, 100.0, 0.0, 0.0, 3.0 },
    { 100.0, 0.5, 0.0, 0.0, 3.0 },        { 100.0, 100.0, 0.0, 0.0, 212.0 },
    { 100.0, 100.0, 0.0, 0.0, -1.0 },
  };

  for (gsize i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr (SwFigure) figure = sw_figure_new (rows[i].width_mm, rows[i].height_mm);
      g_autoptr (GError) error = NULL;

      sw_figure_segment (figure, SW_ROLE_TEXT, 0.0, 0.0, rows[i].x_mm, rows[i].y_mm);
      sw_figure_text (figure, SW_ROLE_TEXT, 1.0, 1.0, rows[i].text_mm, SW_ALIGN_LEFT,
                      SW_FACE_REGULAR, 0.0, "text");
      error = refused (figure, fixture->folder);
      g_assert_error (error, SW_PAINT_ERROR, SW_PAINT_ERROR_SIZE);
      g_assert_nonnull (strstr (error->message, "page 1"));
    }
}

/* Just within the limit is drawn, and as large as it was asked for. */
static void
test_large_kept (Fixture *fixture, gconstpointer data)
{
  g_autoptr (SwFigure) figure = sw_figure_new (5000.0, 5000.0);
  g_autofree char *path = NULL;
  g_autofree char *said = NULL;

  sw_figure_segment (figure, SW_ROLE_SCALE_BAR, -6500.0, 2500.0, 11500.0, 2500.0);
  path = sample_pdf (figure, fixture->folder, "large.pdf");
  said = sample_tool ((const char *[]){ "qpdf", "--qdf", path, "-", NULL });
  /* By hand: 11500 / 25.4 x 72 = 32598.425. */
  g_assert_true (!said || strstr (said, "32598.42"));
}

static void
test_dead_link_refused (Fixture *fixture, gconstpointer data)
{
  g_autoptr (SwFigure) figure = sw_figure_new (100.0, 100.0);
  g_autoptr (GError) error = NULL;

  sw_figure_link (figure, 1.0, 1.0, 5.0, 5.0, "Nowhere");
  error = refused (figure, fixture->folder);
  g_assert_error (error, SW_PAINT_ERROR, SW_PAINT_ERROR_WRITE);
  g_assert_nonnull (strstr (error->message, "Nowhere"));
}

static void
test_no_folder (Fixture *fixture, gconstpointer data)
{
  g_autofree char *folder = g_build_filename (fixture->folder, "not", "there", NULL);
  g_autoptr (SwFigure) figure = sw_figure_new (100.0, 100.0);
  g_autoptr (GError) error = refused (figure, folder);

  g_assert_error (error, SW_PAINT_ERROR, SW_PAINT_ERROR_WRITE);
  g_assert_nonnull (strstr (error->message, "not/there"));
}

/* A page that cannot be drawn leaves the file of last time as it was. */
static void
test_failure_keeps_old (Fixture *fixture, gconstpointer data)
{
  g_autoptr (SwFigure) good = sample_figure ();
  g_autoptr (SwFigure) bad = sw_figure_new (100.0, 100.0);
  g_autoptr (SwPalette) palette = sample_palette ();
  g_autoptr (GPtrArray) pages = g_ptr_array_new ();
  g_autoptr (GError) error = NULL;
  g_autofree char *path = sample_pdf (good, fixture->folder, "a.pdf");
  g_autofree char *kept = sample_pdf (good, fixture->folder, "b.pdf");

  sw_figure_segment (bad, SW_ROLE_TEXT, 0.0, 0.0, 1e6, 0.0);
  g_ptr_array_add (pages, good);
  g_ptr_array_add (pages, bad);
  g_assert_false (sw_paint_pdf (pages, palette, NULL, path, NULL, &error));
  g_assert_error (error, SW_PAINT_ERROR, SW_PAINT_ERROR_SIZE);
  g_assert_nonnull (strstr (error->message, "page 2"));
  assert_same_bytes (path, kept);
}

static gboolean
stop_after (gpointer data, guint done, guint parts)
{
  return done < GPOINTER_TO_UINT (data);
}

/* Stopped before a page, or before the file is written: what stood there stays. */
static void
test_stopped_writes_nothing (Fixture *fixture, gconstpointer data)
{
  g_autoptr (SwFigure) page = sample_figure ();
  g_autoptr (SwPalette) palette = sample_palette ();
  g_autoptr (GPtrArray) pages = g_ptr_array_new ();
  g_autofree char *kept = sample_pdf (page, fixture->folder, "a.pdf");
  g_autofree char *path = sample_pdf (page, fixture->folder, "b.pdf");

  for (guint i = 0; i < 3; i++)
    g_ptr_array_add (pages, page);
  for (guint done = 0; done <= pages->len; done++)
    {
      const SwLongWork work = { stop_after, GUINT_TO_POINTER (done) };
      g_autoptr (GError) error = NULL;

      g_assert_false (sw_paint_pdf (pages, palette, NULL, path, &work, &error));
      g_assert_error (error, SW_PAINT_ERROR, SW_PAINT_ERROR_STOPPED);
      assert_same_bytes (path, kept);
    }
}

static guint
count_of (const char *text, const char *part)
{
  guint count = 0;

  for (const char *at = text; (at = strstr (at, part)); at++)
    count++;
  return count;
}

/* Codes are said to be characters by ranges of the kind that search and copying read:
 * ISO 32000-1, 9.10.3. A reader that does not understand the map says so. */
static void
test_characters (Fixture *fixture, gconstpointer data)
{
  g_autoptr (SwFigure) figure = sample_figure ();
  g_autofree char *path = sample_pdf (figure, fixture->folder, "a.pdf");
  g_autofree char *said =
      sample_tool ((const char *[]){ "qpdf", "--qdf", path, "-", NULL });

  if (!said)
    return;
  g_assert_cmpuint (count_of (said, "beginbfrange"), ==,
                    count_of (said, "/ToUnicode") * 4);
  g_assert_nonnull (strstr (said, "<2100> <21FF> <2100>")); /* the arrows */
  g_assert_null (strstr (said, "begincidrange"));
}

/* Three titled pages, the first linking to all, forwards too; the last goes on with the
 * one before, and has no bookmark. */
static void
test_bookmarks_and_links (Fixture *fixture, gconstpointer data)
{
  g_autoptr (GPtrArray) pages =
      g_ptr_array_new_with_free_func ((GDestroyNotify) sw_figure_free);
  g_autoptr (SwPalette) palette = sample_palette ();
  g_autoptr (GError) error = NULL;
  g_autofree char *path = g_build_filename (fixture->folder, "linked.pdf", NULL);
  g_autofree char *said = NULL;

  for (guint i = 0; i < 3; i++)
    {
      SwFigure *page = sw_figure_new (100.0 + i, 80.0);
      page->title = g_strdup_printf ("Seite %u", i + 1);
      g_ptr_array_add (pages, page);
      sw_figure_link (g_ptr_array_index (pages, 0), 10.0, 10.0 * (i + 1), 30.0, 5.0,
                      page->title);
    }
  ((SwFigure *) g_ptr_array_index (pages, 2))->goes_on = TRUE;
  sw_paint_pdf (pages, palette, NULL, path, NULL, &error);
  g_assert_no_error (error);
  said = sample_tool ((const char *[]){ "qpdf", "--qdf", path, "-", NULL });
  if (!said)
    return;
  g_assert_cmpuint (count_of (said, "/Subtype /Link"), ==, 3);
  g_assert_cmpuint (count_of (said, "/PageMode /UseOutlines"), ==, 1);
  g_assert_cmpuint (count_of (said, "/PrintScaling /None"), ==, 1);
  g_assert_cmpuint (count_of (said, "/PageLabels"), ==, 1);
  g_assert_cmpuint (count_of (said, "/Title"), ==, 2);
}

/* As another reader decodes it: a title keeps its accents and its degree sign. */
static void
test_bookmark_text (Fixture *fixture, gconstpointer data)
{
  g_autoptr (SwFigure) figure = sample_figure ();
  g_autofree char *path = sample_pdf (figure, fixture->folder, "a.pdf");
  g_autofree char *said = sample_tool (
      (const char *[]){ "qpdf", "--json", "--json-key=outlines", path, NULL });

  if (!said)
    return;
  g_assert_nonnull (strstr (said, "\"title\": \"Échantillon 26.6°\""));
  g_assert_nonnull (strstr (said, "\"destpageposfrom1\": 1"));
}

static void
add_tagged (SwFigure *page, SwTag tag, double y_mm, const char *words)
{
  sw_figure_tag (page, tag, words);
  sw_figure_text (page, SW_ROLE_TEXT, 10.0, y_mm, 4.0, SW_ALIGN_LEFT, SW_FACE_REGULAR,
                  0.0, words);
  sw_figure_untag (page);
}

/* As another reader finds it: the structure in the order of the page, types by ISO
 * 32000-1, 14.8.4, lines of the frame left out. */
static void
test_structure (Fixture *fixture, gconstpointer data)
{
  g_autoptr (SwFigure) page = sw_figure_new (100.0, 80.0);
  g_autofree char *path = NULL;
  g_autofree char *said = NULL;

  sw_figure_segment (page, SW_ROLE_FRAME, 5.0, 5.0, 95.0, 5.0);
  add_tagged (page, SW_TAG_TITLE, 10.0, "Stufen");
  sw_figure_tag (page, SW_TAG_ROW, "");
  add_tagged (page, SW_TAG_HEAD_CELL, 20.0, "Tiefe");
  add_tagged (page, SW_TAG_CELL, 20.0, "150 mm");
  sw_figure_untag (page);
  add_tagged (page, SW_TAG_PARAGRAPH, 30.0, "Graben");
  add_tagged (page, SW_TAG_MORE, 40.0, "von Hand");
  add_tagged (page, SW_TAG_FURNITURE, 70.0, "Blatt 1");
  path = sample_pdf (page, fixture->folder, "tagged.pdf");
  said = sample_tool ((const char *[]){ "pdfinfo", "-struct-text", path, NULL });
  if (!said)
    return;
  g_assert_cmpstr (said, ==,
                   "Document\n"
                   "  H1 (block)\n    \"Stufen\"\n"
                   "  Table (block)\n    TR\n      TH:\n         /Scope /Column\n"
                   "        \"Tiefe\"\n      TD\n        \"150 mm\"\n"
                   "  P (block)\n    \"Graben\"\n    \"von Hand\"\n");
}

/* A link is an element round the words that follow it, or round none; heads of columns and
 * of bands say what they head. Types and attributes: ISO 32000-1, tables 338 and 349. */
static void
test_links_in_structure (Fixture *fixture, gconstpointer data)
{
  g_autoptr (SwFigure) page = sw_figure_new (100.0, 80.0);
  g_autofree char *path = NULL;
  g_autofree char *said = NULL;
  g_autofree char *attributes = NULL;

  page->title = g_strdup ("Graben");
  sw_figure_tag (page, SW_TAG_ROW, "");
  add_tagged (page, SW_TAG_HEAD_CELL, 10.0, "Blatt");
  add_tagged (page, SW_TAG_HEAD_CELL, 10.0, "Seite");
  sw_figure_untag (page);
  sw_figure_tag (page, SW_TAG_ROW, "");
  add_tagged (page, SW_TAG_BAND, 20.0, "Boden");
  sw_figure_untag (page);
  sw_figure_tag (page, SW_TAG_ROW, "");
  add_tagged (page, SW_TAG_CELL, 30.0, "Graben");
  sw_figure_link (page, 10.0, 28.0, 80.0, 5.0, "Graben");
  add_tagged (page, SW_TAG_CELL, 30.0, "1");
  sw_figure_untag (page);
  sw_figure_link (page, 10.0, 48.0, 80.0, 5.0, "Graben");
  path = sample_pdf (page, fixture->folder, "links.pdf");
  said = sample_tool ((const char *[]){ "pdfinfo", "-struct-text", path, NULL });
  attributes = sample_tool ((const char *[]){ "pdfinfo", "-struct", path, NULL });
  if (!said || !attributes)
    return;
  g_assert_nonnull (strstr (said, "      TD\n        Link (inline)\n          Object "));
  g_assert_nonnull (
      strstr (said, " 0\n          \"1\"\n  P (block)\n    Link (inline)\n"));
  g_assert_cmpuint (count_of (attributes, "/Scope /Column"), ==, 3);
  g_assert_cmpuint (count_of (attributes, "/ColSpan 2"), ==, 1);
}

int
main (int argc, char **argv)
{
  static const struct
  {
    const char *path;
    void (*run) (Fixture *fixture, gconstpointer data);
  } cases[] = {
    { "/paint/pdf/valid", test_valid },
    { "/paint/pdf/fonts-embedded", test_fonts_embedded },
    { "/paint/pdf/text-found", test_text_found },
    { "/paint/pdf/information", test_information },
    { "/paint/pdf/catalogue", test_catalogue },
    { "/paint/pdf/100-mm", test_100_mm },
    { "/paint/pdf/same-bytes", test_same_bytes },
    { "/paint/pdf/comma-locale", test_comma_locale },
    { "/paint/pdf/size-refused", test_size_refused },
    { "/paint/pdf/stopped-writes-nothing", test_stopped_writes_nothing },
    { "/paint/pdf/large-kept", test_large_kept },
    { "/paint/pdf/dead-link-refused", test_dead_link_refused },
    { "/paint/pdf/no-folder", test_no_folder },
    { "/paint/pdf/failure-keeps-old", test_failure_keeps_old },
    { "/paint/pdf/bookmarks-and-links", test_bookmarks_and_links },
    { "/paint/pdf/bookmark-text", test_bookmark_text },
    { "/paint/pdf/structure", test_structure },
    { "/paint/pdf/characters", test_characters },
    { "/paint/pdf/links-in-structure", test_links_in_structure },
  };

  g_test_init (&argc, &argv, NULL);
  for (gsize i = 0; i < G_N_ELEMENTS (cases); i++)
    g_test_add (cases[i].path, Fixture, NULL, set_up, cases[i].run, tear_down);
  return g_test_run ();
}
