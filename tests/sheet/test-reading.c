/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "pack-fixture.h"

#include <slopewright/sheet/reading.h>
#include <string.h>

static const char *const names[] = { "pinfold-cutting", "quernby-heap", "halter-brook",
                                     "sallow-bank" };

/* Only rows hold tags, every tag ends, and each text of a page is held by one. */
static void
check_nesting (const SwFigure *page)
{
  SwTag held[2];
  guint depth = 0;

  for (guint i = 0; i < page->items->len; i++)
    {
      const SwItem *item = &g_array_index (page->items, SwItem, i);

      if (item->kind == SW_ITEM_TAG)
        {
          g_assert_cmpuint (depth, <, 2);
          g_assert_true (depth == 0 || held[0] == SW_TAG_ROW);
          g_assert_true ((item->tag == SW_TAG_CELL || item->tag == SW_TAG_HEAD_CELL
                          || item->tag == SW_TAG_BAND)
                         == (depth == 1));
          held[depth++] = item->tag;
        }
      else if (item->kind == SW_ITEM_UNTAG)
        {
          g_assert_cmpuint (depth, >, 0);
          depth--;
        }
    }
  g_assert_cmpuint (depth, ==, 0);
}

static void
test_tags_nest (void)
{
  for (gsize n = 0; n < G_N_ELEMENTS (names); n++)
    {
      Example *example = example_new (names[n]);
      g_autoptr (GPtrArray) pages = example_pack (example, SW_PAPER_A4);

      for (guint p = 0; p < pages->len; p++)
        check_nesting (g_ptr_array_index (pages, p));
      example_free (example);
    }
}

static char *
without_blanks (const char *text)
{
  GString *bare = g_string_new (NULL);

  for (const char *c = text; *c != '\0'; c = g_utf8_next_char (c))
    if (!g_unichar_isspace (g_utf8_get_char (c)))
      g_string_append_len (bare, c, g_utf8_next_char (c) - c);
  return g_string_free (bare, FALSE);
}

/* Everything that is printed is said: each text outside the furniture is in the reading. */
static void
test_says_what_is_printed (void)
{
  for (gsize n = 0; n < G_N_ELEMENTS (names); n++)
    {
      Example *example = example_new (names[n]);
      g_autoptr (GPtrArray) pages = example_pack (example, SW_PAPER_A4);
      g_autofree char *text = sw_pages_text (pages);
      g_autofree char *said = without_blanks (text);
      gboolean furniture = FALSE;

      for (guint p = 0; p < pages->len; p++)
        {
          const SwFigure *page = g_ptr_array_index (pages, p);

          for (guint i = 0; i < page->items->len; i++)
            {
              const SwItem *item = &g_array_index (page->items, SwItem, i);

              if (item->kind == SW_ITEM_TAG)
                furniture = item->tag == SW_TAG_FURNITURE;
              else if (item->kind == SW_ITEM_UNTAG)
                furniture = FALSE;
              else if (item->kind == SW_ITEM_TEXT && !furniture)
                {
                  g_autofree char *bare = without_blanks (item->text);

                  if (strstr (said, bare) == NULL)
                    g_error ("%s, page %u: “%s” is printed but not said", names[n], p + 1,
                             item->text);
                }
            }
        }
      example_free (example);
    }
}

static void
add_text (SwFigure *page, SwTag tag, const char *words)
{
  sw_figure_tag (page, tag, words);
  sw_figure_text (page, SW_ROLE_TEXT, 10.0, 10.0, 3.0, SW_ALIGN_LEFT, SW_FACE_REGULAR,
                  0.0, words);
  sw_figure_untag (page);
}

static void
test_text (void)
{
  g_autoptr (GPtrArray) pages =
      g_ptr_array_new_with_free_func ((GDestroyNotify) sw_figure_free);
  SwFigure *page = sw_figure_new (100.0, 100.0);
  g_autofree char *text = NULL;

  g_ptr_array_add (pages, page);
  add_text (page, SW_TAG_FURNITURE, "job 7");
  add_text (page, SW_TAG_TITLE, "Steps");
  add_text (page, SW_TAG_HEADING, "Dig");
  add_text (page, SW_TAG_PARAGRAPH, "Dig the trench\nby hand.");
  add_text (page, SW_TAG_MORE, "");
  sw_figure_tag (page, SW_TAG_ROW, "");
  add_text (page, SW_TAG_CELL, "depth");
  add_text (page, SW_TAG_CELL, "150 mm");
  sw_figure_untag (page);
  sw_figure_text (page, SW_ROLE_TEXT, 10.0, 10.0, 3.0, SW_ALIGN_LEFT, SW_FACE_REGULAR,
                  0.0, "loose words");
  add_text (page, SW_TAG_PICTURE, "Section; 2H:1V");
  text = sw_pages_text (pages);
  g_assert_cmpstr (text, ==,
                   "Steps\n=====\n\n\nDig\n---\n\nDig the trench by hand.\n"
                   "depth | 150 mm\nloose words\n[Section; 2H:1V]\n");
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/sheet/reading/text", test_text);
  g_test_add_func ("/sheet/reading/tags-nest", test_tags_nest);
  g_test_add_func ("/sheet/reading/says-what-is-printed", test_says_what_is_printed);
  return g_test_run ();
}
