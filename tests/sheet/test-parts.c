/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "boxes.h"
#include "pages-tidy.h"
#include <string.h>

/* What the pages say of jobs that are not one plain face. */

/* Wherever the lines of the page break. */
static void
assert_says_in_lines (const char *words, const char *text)
{
  g_autofree char *one_line = g_strdelimit (g_strdup (words), "\n", ' ');

  if (strstr (one_line, text) == NULL)
    g_error ("\"%s\" is not said in:\n%s", text, words);
}

/* examples/corvendale-interchange: west ramp and nose begin on the left, the east ramp on
 * the right; laps 138, 211 and 143 mm. */
static void
test_talk_names_every_face (void)
{
  static const char *const lines[] = {
    "Face W: run 1 is on the left, seen from the toe looking up; side laps of 138",
    "Face N: run 1 is on the left, seen from the toe looking up; side laps of 211",
    "Face E: run 1 is on the right, seen from the toe looking up; side laps of 143",
  };
  g_autoptr (Example) example = example_new ("corvendale-interchange");
  g_autoptr (GPtrArray) pages = example_pack (example, SW_PAPER_A4);
  g_autofree char *words = page_words (page_titled (pages, "Toolbox talk"));

  for (guint i = 0; i < G_N_ELEMENTS (lines); i++)
    assert_says_in_lines (words, lines[i]);
}

/* The side lap is drawn once; its detail says what it is on each face. */
static void
test_detail_has_every_lap (void)
{
  g_autoptr (Example) example = example_new ("corvendale-interchange");
  g_autoptr (GPtrArray) pages = example_pack (example, SW_PAPER_A4);
  g_autofree char *words = page_words (page_titled (pages, "Details"));

  assert_says_in_lines (words, "Side lap as laid, Face W 138");
  assert_says_in_lines (words, "Side lap as laid, Face N 211");
  assert_says_in_lines (words, "Side lap as laid, Face E 143");
}

/* The pins of all steps are the pins of the job: 61 + 59 + 402 + 18 + 28 + 46 = 614 by
 * examples/halter-brook.expected.md, 28 of them round the headwall. */
static void
test_steps_have_every_pin (void)
{
  g_autoptr (Example) example = example_new ("halter-brook");
  g_autoptr (GPtrArray) pages = example_pack (example, SW_PAPER_A4);
  g_autofree char *words = pack_words (pages);

  g_assert_cmpuint (example->result->tally->pins, ==, 614);
  g_assert_nonnull (strstr (words, "\n28\n"));
  assert_says_in_lines (words, "round obstacles, every 300");
}

/* Two tiers with the same numbers: said once. */
static void
test_talk_says_what_is_alike_once (void)
{
  g_autoptr (Example) example = example_new ("pinfold-cutting");
  g_autoptr (GPtrArray) pages = example_pack (example, SW_PAPER_A4);
  g_autofree char *words = page_words (page_titled (pages, "Toolbox talk"));

  assert_says_in_lines (
      words, "Run 1 is on the left, seen from the toe looking up; each run laps");
  g_assert_null (strstr (words, "Tier 1"));
}

/* By hand, examples/quernby-heap.expected.md: the key trench goes round, 20.892 m at 0.30 m
 * are 70 gaps and 70 pins; there is no outer edge. */
static void
test_a_heap_closes_on_itself (void)
{
  g_autoptr (Example) example = example_new ("quernby-heap");
  g_autoptr (GPtrArray) pages = example_pack (example, SW_PAPER_A4);
  g_autofree char *hand = page_words (page_titled (pages, "Check this pack by hand"));
  g_autofree char *all = pack_words (pages);

  assert_says_in_lines (hand, "next whole number: 70.");
  assert_says_in_lines (hand, "The line closes on itself");
  g_assert_null (strstr (hand, "\n71\n"));
  g_assert_null (strstr (all, "0 at the edges"));
}

static void
use_us_units (SwJob *job)
{
  job->units = SW_UNITS_US;
}

/* 150 mm read off a US tape as a least length is 6 in; nothing says 5 7/8 of the same pin,
 * nor metres between people. */
static void
test_us_units_throughout (void)
{
  g_autoptr (Example) example = example_new_changed ("kelpie-lane", use_us_units);
  g_autoptr (GPtrArray) pages = NULL;
  g_autofree char *words = NULL;

  example->draw.style.units = SW_UNITS_US;
  pages = example_pack (example, SW_PAPER_LETTER);
  words = pack_words (pages);
  assert_says_in_lines (words, "pins of 6\xc2\xa0in or longer");
  g_assert_null (strstr (words, "pins of 5"));
  g_assert_null (strstr (words, "chosen there: 5"));
  assert_says_in_lines (words, "all, 7\xc2\xa0"
                               "ft apart");
  g_assert_null (strstr (words, "2 m apart"));
}

/* 614 pins of examples/halter-brook and 5 in a hundred are one box of 1000. */
static void
test_one_box (void)
{
  g_autoptr (Example) example = example_new ("halter-brook");
  g_autoptr (GPtrArray) pages = example_pack (example, SW_PAPER_A4);
  g_autofree char *words = pack_words (pages);

  assert_says_in_lines (words, "1 box;");
  g_assert_null (strstr (words, "1 boxes"));
}

/* How far down the last thing reaches, as a part of the page between head and foot. */
static double
filled (const SwFigure *page)
{
  double top_mm = 30.0, bottom_mm = page->height_mm - 30.0, lowest_mm = top_mm;

  for (guint k = 0; k < page->items->len; k++)
    {
      const SwItem *item = &g_array_index (page->items, SwItem, k);
      const SwPaperPoint *points = sw_figure_item_points (page, item);

      if (item->kind == SW_ITEM_TEXT && points->y_mm < bottom_mm)
        lowest_mm = MAX (lowest_mm, points->y_mm);
      for (guint p = 0; item->kind == SW_ITEM_LINE && p < item->n_points; p++)
        if (points[p].y_mm < bottom_mm)
          lowest_mm = MAX (lowest_mm, points[p].y_mm);
    }
  return (lowest_mm - top_mm) / (bottom_mm - top_mm);
}

/* A page that only goes on with what the page before began is worth its paper. */
static void
test_no_stubs (gconstpointer name)
{
  g_autoptr (Example) example = example_new (name);

  for (int paper = 0; paper < SW_PAPER_COUNT; paper++)
    {
      g_autoptr (GPtrArray) pages = example_pack (example, (SwPaper) paper);

      for (guint i = 0; i < pages->len; i++)
        {
          const SwFigure *page = g_ptr_array_index (pages, i);

          if (page->goes_on && filled (page) < 0.25)
            g_error ("%s on %s: page %u, %s, is filled by %.2f", (const char *) name,
                     sw_paper_code ((SwPaper) paper), i + 1, page->title, filled (page));
        }
    }
}

/* Sections as wide as A4's body, in every language and both unit systems: no text on the
 * ground, and the arrow that shows the fall line is named wherever there is one. */
static void
assert_section_reads (Example *example, const char *name, guint face)
{
  SwView view = sw_section_fit (example->result, face, 175.0, 90.0, &example->draw, NULL);
  g_autoptr (SwFigure) figure =
      sw_draw_section (example->result, face, &view, &example->draw);
  g_autofree char *what = g_strdup_printf ("section %u of %s in %s", face, name,
                                           sw_texts_language (example->texts));
  g_autofree char *arrow =
      g_strdup_printf ("%s/fall-line", example->result->layout->faces[face].face->id);

  assert_no_text_on (figure, SW_ROLE_GROUND, example->draw.measure, what);
  if (figure_has_object (figure, arrow)
      && figure_text (figure, sw_texts_get (example->texts, "drawing.fall-line")) == NULL)
    g_error ("%s: the arrow down the face has no name", what);
}

static void
test_sections_read (gconstpointer name)
{
  g_autoptr (Example) example = example_new (name);
  g_auto (GStrv) languages = sw_texts_languages ();

  for (guint i = 0; languages[i] != NULL; i++)
    for (int units = SW_UNITS_METRIC; units <= SW_UNITS_US; units++)
      for (guint face = 0; face < example->result->layout->n_faces; face++)
        {
          example_speak (example, languages[i]);
          example->draw.style.units = units;
          assert_section_reads (example, name, face);
        }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/sheet/parts/talk-names-every-face", test_talk_names_every_face);
  g_test_add_func ("/sheet/parts/talk-says-what-is-alike-once",
                   test_talk_says_what_is_alike_once);
  g_test_add_func ("/sheet/parts/detail-has-every-lap", test_detail_has_every_lap);
  g_test_add_func ("/sheet/parts/steps-have-every-pin", test_steps_have_every_pin);
  g_test_add_func ("/sheet/parts/heap-closes-on-itself", test_a_heap_closes_on_itself);
  g_test_add_func ("/sheet/parts/us-units-throughout", test_us_units_throughout);
  g_test_add_func ("/sheet/parts/one-box", test_one_box);
  example_add_tests ("/sheet/parts/no-stubs", test_no_stubs);
  example_add_tests ("/sheet/parts/section-reads", test_sections_read);
  return g_test_run ();
}
