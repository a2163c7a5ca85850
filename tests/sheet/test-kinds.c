/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "pages-tidy.h"
#include <string.h>

static const SwPackKind kinds[] = { SW_PACK_PERMIT, SW_PACK_CLASS, SW_PACK_CLASS_KEY,
                                    SW_PACK_MEASURE, SW_PACK_MEASURE_BLANK };

static const SwFigure *
page_of (const GPtrArray *pages, guint index)
{
  g_assert_cmpuint (index, <, pages->len);
  return g_ptr_array_index (pages, index);
}

static GPtrArray *
sheets (const Example *example, SwPackKind kind, guint seed)
{
  SwPackPlan plan = example->job->pack;

  plan.kind = kind;
  plan.seed = seed;
  return example_pack_by_plan (example, SW_PAPER_A4, &plan);
}

static void
assert_kinds_tidy (const Example *example, const char *name, SwPaper paper)
{
  for (guint k = 0; k < G_N_ELEMENTS (kinds); k++)
    {
      g_autoptr (GPtrArray) pages = example_pack_of_kind (example, paper, kinds[k]);
      g_autofree char *words = pack_words (pages);
      g_autofree char *what = g_strdup_printf (
          "%s as %s on %s", name, sw_pack_kind_codes[kinds[k]], sw_paper_code (paper));

      assert_pages_tidy (example, pages, what);
      assert_headings_have_bodies (pages, what);
      assert_links_on_page (pages, what);
      assert_no_gaps (words);
    }
}

static void
test_tidy (gconstpointer name)
{
  g_autoptr (Example) example = example_new (name);
  g_auto (GStrv) languages = sw_texts_languages ();

  for (guint i = 0; languages[i] != NULL; i++)
    for (int paper = 0; paper < SW_PAPER_COUNT; paper++)
      for (int units = 0; units < 2; units++)
        {
          example_speak (example, languages[i]);
          example->draw.style.units = (SwUnitSystem) units;
          assert_kinds_tidy (example, name, (SwPaper) paper);
        }
}

/* The sheet for the counter is one page: the second page has another title. */
static void
test_counter_sheet (gconstpointer name)
{
  g_autoptr (Example) example = example_new (name);
  g_auto (GStrv) languages = sw_texts_languages ();

  for (guint i = 0; languages[i] != NULL; i++)
    for (int paper = 0; paper < SW_PAPER_COUNT; paper++)
      {
        g_autoptr (GPtrArray) pages = NULL;

        example_speak (example, languages[i]);
        pages = example_pack_of_kind (example, (SwPaper) paper, SW_PACK_PERMIT);
        g_assert_cmpstr (page_of (pages, 0)->title, ==,
                         sw_texts_get (example->texts, "permit.counter.title"));
        g_assert_cmpstr (page_of (pages, 1)->title, ==,
                         sw_texts_get (example->texts, "permit.guide.title"));
      }
}

/* What the office said stands there; what it did not say leaves lines, never words. */
static void
test_what_the_office_says (void)
{
  g_autoptr (Example) said = example_new ("sandlark-bluff-road");
  g_autoptr (Example) silent = example_new ("kelpie-lane");
  g_autoptr (GPtrArray) pages = example_pack_of_kind (said, SW_PAPER_A4, SW_PACK_PERMIT);
  g_autoptr (GPtrArray) blank =
      example_pack_of_kind (silent, SW_PAPER_A4, SW_PACK_PERMIT);
  g_autofree char *words = pack_words (pages), *blanks = pack_words (blank);

  g_assert_nonnull (strstr (words, "Corvendale County, Land Disturbance Office"));
  g_assert_nonnull (strstr (words, "No plastic netting: snakes live on the bluff"));
  g_assert_nonnull (strstr (words, "Stop-work order"));
  g_assert_nonnull (strstr (words, "257.8")); /* 9.9153 x 26 */
  g_assert_null (strstr (blanks, "Corvendale"));
  g_assert_nonnull (strstr (blanks, "Conditions of this permit"));
}

/*
 * Exercise 1 of seed 7: rise 4, 2:1, 32 wide, rolls 2 x 50, lap 0.10, 0.90 at the crest,
 * 0.30 at the toe, pins every 0.30. By hand: 4 x sqrt 5 = 8.9443; x 32 = 286.22;
 * (32 - 0.1) / 1.9 = 16.8, 17 runs; (34 - 32) / 16 = 0.125; 8.9443 + 1.20 = 10.1443;
 * 50 / 10.1443 = 4.9, 4; 17 / 4 = 4.3, 5 rolls; 32 / 0.3 = 106.7, 107 and 1: 108 pins.
 */
static void
test_answers_by_hand (void)
{
  static const char *const answers[] = { "8.94 m",  "26.6°", "286.2 m²", "17", "125 mm",
                                         "10.14 m", "4",     "5",        "108" };
  g_autoptr (Example) example = example_new ("old-weir-terrace");
  g_autoptr (GPtrArray) sheet = sheets (example, SW_PACK_CLASS, 7);
  g_autoptr (GPtrArray) key = sheets (example, SW_PACK_CLASS_KEY, 7);
  g_autofree char *asked = pack_words (sheet), *words = page_words (page_of (key, 0));
  const char *at = words;

  g_assert_nonnull (strstr (asked, "4.00 m"));
  g_assert_nonnull (strstr (asked, "32.00 m"));
  at = strstr (words, "Exercise 1");
  for (guint i = 0; i < G_N_ELEMENTS (answers); i++)
    {
      g_autofree char *line = g_strdup_printf ("\n%s\n", answers[i]);

      at = strstr (at, line);
      if (at == NULL)
        g_error ("answer %u is not %s in:\n%s", i + 1, answers[i], words);
      at++;
    }
}

static char *
dump (const GPtrArray *pages)
{
  g_autoptr (GString) text = g_string_new (NULL);

  for (guint i = 0; i < pages->len; i++)
    {
      g_autofree char *page = sw_figure_dump (page_of (pages, i));

      g_string_append (text, page);
    }
  return g_string_free (g_steal_pointer (&text), FALSE);
}

/* The same seed gives the same sheets; another one other slopes, pictures and order. */
static void
test_seed (void)
{
  g_autoptr (Example) example = example_new ("pinfold-cutting");
  g_autoptr (GPtrArray) once = sheets (example, SW_PACK_CLASS, 41);
  g_autoptr (GPtrArray) again = sheets (example, SW_PACK_CLASS, 41);
  g_autoptr (GPtrArray) other = sheets (example, SW_PACK_CLASS, 42);
  g_autofree char *a = dump (once), *b = dump (again), *c = dump (other);

  g_assert_cmpstr (a, ==, b);
  g_assert_cmpstr (a, !=, c);
}

/* A roll too short for any run gives exercises with another roll, never none. */
static void
shorten_roll (SwJob *job)
{
  job->roll_length_m = 8.0;
}

static void
test_short_roll (void)
{
  g_autoptr (Example) example = example_new_changed ("pinfold-cutting", shorten_roll);
  g_autoptr (GPtrArray) sheet = sheets (example, SW_PACK_CLASS, 3);
  g_autofree char *asked = pack_words (sheet);

  g_assert_nonnull (strstr (asked, "Exercise 3"));
  g_assert_nonnull (strstr (asked, "50.00 m"));
  g_assert_null (strstr (asked, "could be laid"));
}

static guint
count_of (const char *words, const char *what)
{
  guint count = 0;

  for (const char *at = strstr (words, what); at != NULL; at = strstr (at + 1, what))
    count++;
  return count;
}

/* Whatever the seed: ten questions with a reason each, and three to five wrong pictures
 * of six, told apart in the key and not in the handout. */
static void
test_quiz_and_faults (void)
{
  g_autoptr (Example) example = example_new ("sandlark-bluff-road");

  for (guint seed = 1; seed <= 40; seed++)
    {
      g_autoptr (GPtrArray) sheet = sheets (example, SW_PACK_CLASS, seed);
      g_autoptr (GPtrArray) key = sheets (example, SW_PACK_CLASS_KEY, seed);
      g_autofree char *asked = pack_words (sheet), *answers = pack_words (key);
      guint wrong = count_of (answers, "\nwrong\n");

      g_assert_cmpuint (count_of (answers, "because:"), ==, 10);
      g_assert_cmpuint (wrong, >=, 3);
      g_assert_cmpuint (wrong, <=, 5);
      g_assert_cmpuint (wrong + count_of (answers, "\nright\n"), ==, 6);
      g_assert_cmpuint (count_of (asked, "because:"), ==, 0);
      g_assert_cmpuint (count_of (asked, "\nwrong\n"), ==, 0);
    }
}

/* Every picture is another one when it is wrong. */
static void
test_fault_pictures (void)
{
  for (int fault = 0; fault < SW_FAULT_COUNT; fault++)
    {
      g_autoptr (SwFigure) right = sw_draw_fault ((SwFault) fault, FALSE);
      g_autoptr (SwFigure) wrong = sw_draw_fault ((SwFault) fault, TRUE);
      g_autofree char *a = sw_figure_dump (right), *b = sw_figure_dump (wrong);

      g_assert_cmpstr (a, !=, b);
    }
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  example_add_tests ("/sheet/kinds/tidy", test_tidy);
  example_add_tests ("/sheet/kinds/counter-sheet", test_counter_sheet);
  g_test_add_func ("/sheet/kinds/what-the-office-says", test_what_the_office_says);
  g_test_add_func ("/sheet/kinds/answers-by-hand", test_answers_by_hand);
  g_test_add_func ("/sheet/kinds/seed", test_seed);
  g_test_add_func ("/sheet/kinds/short-roll", test_short_roll);
  g_test_add_func ("/sheet/kinds/quiz-and-faults", test_quiz_and_faults);
  g_test_add_func ("/sheet/kinds/fault-pictures", test_fault_pictures);
  return g_test_run ();
}
