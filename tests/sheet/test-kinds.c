/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "boxes.h"
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

/* No page holds only the last line of the one before: what is to be written in takes the
 * height that the paper has. */
#define CLASS_PAGES 13u

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
      assert_titles_whole (pages, what);
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
          if (!example_is_tried (name, i, (guint) paper, (guint) units))
            continue;
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

/* The answers after @title, in their order, each a line of its own. */
static void
assert_answers (const char *words, const char *title, const char *const *answers)
{
  const char *at = strstr (words, title);

  g_assert_nonnull (at);
  for (guint i = 0; answers[i] != NULL; i++)
    {
      g_autofree char *line = g_strdup_printf ("\n%s\n", answers[i]);

      at = strstr (at, line);
      if (at == NULL)
        g_error ("%s: answer %u is not %s in:\n%s", title, i + 1, answers[i], words);
      at++;
    }
}

/*
 * Worked by hand from what the sheet of seed 7 gives (tests/cli/test-class.py works out
 * all others from outside).
 *
 * Exercise 1: rise 3.5, 2:1, 37.5 wide, rolls 2 x 50, lap 0.10, 0.90 at the crest, 0.30 at
 * the toe, pins every 0.30 and every 1.00; firm sand. 3.5 x sqrt 5 = 7.826; x 37.5 =
 * 293.5; 37.4 / 1.9 = 19.7, 20 runs; (40 - 37.5) / 19 = 0.132; 7.826 + 1.20 = 9.026;
 * 50 / 9.026 = 5.5, 5; 20 / 5 = 4 rolls; 37.5 / 0.3 = 125, 126 pins; 7 gaps, 8 pins in
 * each of 19 laps, 152.
 *
 * Exercise 4: rise 4.5, 1.5:1, 24 wide, both trenches 0.15 x 0.15; swell 43 %, 70 % goes
 * back, loads of 0.25; 10 g/m2, 94 % pure, 70 % germinate. 4.5 x sqrt 3.25 = 8.112; x 24 =
 * 194.7; 2 x 24 x 0.0225 = 1.08; x 1.43 = 1.544; x 0.3 = 0.463; / 0.25 = 1.9, 2 loads;
 * 0.658; 1.947 kg; / 0.658 = 2.959.
 *
 * Exercise 5: AB 16, BC 13.6, CD 14, DA 13, AC 19.8, BD taped 20.3. Heron: s 24.7, 108.1;
 * s 23.4, 90.75; 198.9. Angles at A 43.04 and 44.84 degrees: BD^2 = 256 + 169 - 416 x
 * cos 87.88 = 409.6, BD 20.24; 0.06 off.
 */
static void
test_answers_by_hand (void)
{
  static const char *const laying[] = {
    "7.83 m", "26.6°", "293.5 m²", "20",     "132 mm",           "9.03 m", "5",
    "4",      "126",   "152",      "200 mm", "at the right end", NULL
  };
  static const char *const earth[] = { "8.11 m",  "194.7 m²", "1.08 m³", "1.54 m³",
                                       "0.46 m³", "2",        "65.8 %",  "1.9 kg",
                                       "3.0 kg",  NULL };
  static const char *const taped[] = { "108.1 m²", "90.7 m²", "198.9 m²",
                                       "20.24 m",  "right",   NULL };
  g_autoptr (Example) example = example_new ("old-weir-terrace");
  g_autoptr (GPtrArray) sheet = sheets (example, SW_PACK_CLASS, 7);
  g_autoptr (GPtrArray) key = sheets (example, SW_PACK_CLASS_KEY, 7);
  g_autofree char *asked = pack_words (sheet), *words = pack_words (key);

  g_assert_nonnull (strstr (asked, "3.50 m"));
  g_assert_nonnull (strstr (asked, "37.50 m"));
  g_assert_nonnull (strstr (asked, "20.30 m"));
  assert_answers (words, "Exercise 1", laying);
  assert_answers (words, "Exercise 4", earth);
  assert_answers (words, "Exercise 5", taped);
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

/* Whatever the seed: ten questions with a reason each, of every kind, and three to five
 * wrong pictures of six, told apart in the key and not in the handout. */
static void
test_quiz_and_faults (void)
{
  g_autoptr (Example) example = example_new ("sandlark-bluff-road");

  for (guint seed = 1; seed <= 15; seed++)
    {
      g_autoptr (GPtrArray) sheet = sheets (example, SW_PACK_CLASS, seed);
      g_autoptr (GPtrArray) key = sheets (example, SW_PACK_CLASS_KEY, seed);
      g_autofree char *asked = pack_words (sheet), *answers = pack_words (key);
      char *pictures = strstr (answers, "\nSix pictures\n"), *quiz;
      guint wrong, right;

      g_assert_nonnull (pictures);
      quiz = strstr (pictures, "\nQuiz\n");
      g_assert_nonnull (quiz);
      *quiz = '\0';
      wrong = count_of (pictures, "\nwrong\n");
      right = count_of (pictures, "\nright\n");
      g_assert_cmpuint (wrong, >=, 3);
      g_assert_cmpuint (wrong, <=, 5);
      g_assert_cmpuint (wrong + right, ==, 6);
      g_assert_cmpuint (count_of (asked, "\nwrong\n"), ==, 0);
      g_assert_cmpuint (count_of (asked, "Right or wrong, and why:"), ==, 2);
      g_assert_cmpuint (count_of (asked, "Order, by letters:"), ==, 1);
      g_assert_cmpuint (count_of (asked, "Answer, and how:"), ==, 2);
    }
}

/* The right one of three values is now the smallest, now the middle, now the largest. */
static void
test_no_pattern_in_values (void)
{
  g_autoptr (Example) example = example_new ("old-weir-terrace");
  g_autoptr (GRegex) value = g_regex_new ("\\n(\\d+)\\x{a0}mm(?=\\n)", 0, 0, NULL);
  guint smaller_than_right[3] = { 0 };

  for (guint seed = 1; seed <= 30; seed++)
    {
      g_autoptr (GPtrArray) sheet = sheets (example, SW_PACK_CLASS, seed);
      g_autofree char *asked = pack_words (sheet);
      const char *at = strstr (asked, "How deep is the key trench");
      g_autoptr (GMatchInfo) match = NULL;
      guint smaller = 0;

      if (at == NULL)
        continue;
      g_regex_match (value, at, 0, &match);
      for (guint i = 0; i < 3; i++)
        {
          g_autofree char *digits = g_match_info_fetch (match, 1);

          smaller += g_ascii_strtoull (digits, NULL, 10) < 150;
          g_match_info_next (match, NULL);
        }
      g_assert_cmpuint (smaller, <, 3);
      smaller_than_right[smaller]++;
    }
  for (guint i = 0; i < 3; i++)
    g_assert_cmpuint (smaller_than_right[i], >, 0);
}

static SwFigure *
laid_with (const Example *example, const SwSeededFault *seeded, gboolean marked)
{
  return sw_draw_laid (example->result, 0, seeded, seeded != NULL ? 1 : 0, marked, 170.0,
                       100.0, &example->draw);
}

/* The fault is seen in the drawing, and the answers mark it and change nothing else. */
static void
assert_fault_is_seen (const Example *example, const SwSeededFault *seeded)
{
  g_autoptr (SwFigure) right = laid_with (example, NULL, FALSE);
  g_autoptr (SwFigure) wrong = laid_with (example, seeded, FALSE);
  g_autoptr (SwFigure) marked = laid_with (example, seeded, TRUE);
  g_autofree char *a = sw_figure_dump (right), *b = sw_figure_dump (wrong);
  g_autofree char *c = sw_figure_dump (marked);

  g_assert_cmpstr (a, !=, b);
  g_assert_true (g_str_has_prefix (c, b));
  g_assert_cmpstr (b, !=, c);
  assert_tidy (marked, example->draw.measure, sw_laid_fault_code (seeded->fault));
}

static guint
assert_faults_are_seen (const Example *example)
{
  guint applying = 0;

  for (int i = 0; i < SW_LAID_FAULT_COUNT; i++)
    {
      for (guint place = 0; place < SW_LAID_RUNS; place++)
        {
          SwSeededFault seeded = { (SwLaidFault) i, place };

          if (sw_laid_fault_fits (example->result, 0, &seeded))
            assert_fault_is_seen (example, &seeded);
        }
      applying += sw_laid_fault_applies (example->result, 0, (SwLaidFault) i);
    }
  return applying;
}

/* Six kinds on every slope that is shown; with joints or check slots one more each. */
static void
test_laid_faults (gconstpointer name)
{
  g_autoptr (Example) example = example_new (name);

  if (sw_laid_runs (example->result, 0) >= 2)
    g_assert_cmpuint (assert_faults_are_seen (example), >=, 6);
}

static void
add_slots_below_bench (SwJob *job)
{
  sw_job_set_override (job, SW_PRACTICE_SLOT_EVERY_M, 15.0, "");
}

/* examples/pinfold-cutting: 13.42 m above the bench take no slot every 15 m, 17.89 m below
 * it take one: the holder of the permit reads of it. */
static void
test_permit_tells_of_lower_slots (void)
{
  g_autoptr (Example) example =
      example_new_changed ("pinfold-cutting", add_slots_below_bench);
  g_autoptr (GPtrArray) pages =
      example_pack_of_kind (example, SW_PAPER_A4, SW_PACK_PERMIT);
  g_autofree char *words = pack_words (pages);
  const SwFaceLayout *face = &example->result->layout->faces[0];

  g_assert_cmpuint (face->tiers[0].slots, ==, 0);
  g_assert_cmpuint (face->tiers[1].slots, ==, 1);
  g_assert_nonnull (strstr (words, "Check slots across the run"));
}

static void
add_slots_and_joints (SwJob *job)
{
  sw_job_set_override (job, SW_PRACTICE_SLOT_EVERY_M, 5.0, "");
  job->roll_length_m = 9.0;
}

/* Runs of 9.3 m from rolls of 9 m all have a joint; 8.1 m at 1.5:1 take a slot every 5 m. */
static void
test_laid_slots_and_joints (void)
{
  g_autoptr (Example) example =
      example_new_changed ("old-weir-terrace", add_slots_and_joints);

  g_assert_cmpuint (assert_faults_are_seen (example), ==, SW_LAID_FAULT_COUNT);
}

static guint
count_of_places (const char *words)
{
  g_autoptr (GRegex) place =
      g_regex_new ("\n(Lap of runs \\d+ and \\d+|Run \\d+)(?=\n)", 0, 0, NULL);
  g_autoptr (GMatchInfo) match = NULL;
  guint count = 0;

  g_regex_match (place, words, 0, &match);
  for (; g_match_info_matches (match); g_match_info_next (match, NULL))
    count++;
  return count;
}

/* Five faults are asked and none told; the answers list five places. */
static void
test_faults_are_asked (gconstpointer name)
{
  g_autoptr (Example) example = example_new (name);

  for (guint seed = 1; seed <= 2; seed++)
    {
      g_autoptr (GPtrArray) sheet = sheets (example, SW_PACK_CLASS, seed);
      g_autoptr (GPtrArray) key = sheets (example, SW_PACK_CLASS_KEY, seed);
      g_autofree char *asked = pack_words (sheet), *answers = pack_words (key);

      g_assert_nonnull (strstr (asked, "Laid with faults"));
      g_assert_cmpuint (count_of_places (asked), ==, 0);
      g_assert_cmpuint (count_of_places (answers), ==, 5);
    }
}

/* A slope that stops work is no hindrance to a class, but its first page says so. */
static void
test_stop_in_class (void)
{
  g_autoptr (Example) example = example_new ("sallow-bank");
  g_autoptr (GPtrArray) sheet = sheets (example, SW_PACK_CLASS, 1);
  g_autofree char *first = page_words (page_of (sheet, 0)), *all = pack_words (sheet);

  g_assert_cmpuint (count_of (first, "STOP:"), ==, 1);
  g_assert_cmpuint (count_of (all, "STOP:"), ==, 1);
}

/* Every picture is another one when it is wrong. */
static void
test_fault_pictures (void)
{
  for (int fault = 0; fault < SW_FAULT_COUNT; fault++)
    {
      g_autoptr (SwFigure) right = sw_draw_fault ((SwFault) fault, FALSE, 52.0);
      g_autoptr (SwFigure) wrong = sw_draw_fault ((SwFault) fault, TRUE, 52.0);
      g_autofree char *a = sw_figure_dump (right), *b = sw_figure_dump (wrong);

      g_assert_cmpstr (a, !=, b);
    }
}

/* Asked how far a pack is, and stopping it once @stop_after parts are done. */
typedef struct
{
  guint asked, parts, stop_after;
} Watch;

static gboolean
on_part (gpointer data, guint done, guint parts)
{
  Watch *watch = data;

  g_assert_cmpuint (done, ==, watch->asked++);
  g_assert_true (watch->parts == 0 || parts == watch->parts);
  watch->parts = parts;
  return done < watch->stop_after;
}

static GPtrArray *
watched_pack (const Example *example, SwPackKind kind, Watch *watch)
{
  SwPackPlan plan = example->job->pack;
  const SwLongWork work = { on_part, watch };

  plan.kind = kind;
  return sw_pack_new (example->result, &example->draw, SW_PAPER_A4, &plan, "1.2.3",
                      "0123456789ab", &work);
}

/* A pack says how far it is, is the same when it is asked, and stops before any part. */
static void
test_stops_between_parts (void)
{
  g_autoptr (Example) example = example_new ("sallow-bank");

  for (int kind = 0; kind < SW_PACK_KIND_COUNT; kind++)
    {
      Watch to_the_end = { .stop_after = G_MAXUINT };
      g_autoptr (GPtrArray) usual =
          example_pack_of_kind (example, SW_PAPER_A4, (SwPackKind) kind);
      g_autoptr (GPtrArray) whole =
          watched_pack (example, (SwPackKind) kind, &to_the_end);
      g_autofree char *usual_words = pack_words (usual);
      g_autofree char *whole_words = pack_words (whole);

      g_assert_cmpstr (whole_words, ==, usual_words);
      g_assert_cmpuint (to_the_end.asked, ==, to_the_end.parts);
      for (guint k = 0; k < to_the_end.parts; k++)
        {
          Watch stopping = { .stop_after = k };

          g_assert_null (watched_pack (example, (SwPackKind) kind, &stopping));
          g_assert_cmpuint (stopping.asked, ==, k + 1);
        }
    }
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  example_add_tests ("/sheet/kinds/tidy", test_tidy);
  example_add_tests ("/sheet/kinds/counter-sheet", test_counter_sheet);
  g_test_add_func ("/sheet/kinds/what-the-office-says", test_what_the_office_says);
  g_test_add_func ("/sheet/kinds/permit-tells-of-lower-slots",
                   test_permit_tells_of_lower_slots);
  g_test_add_func ("/sheet/kinds/answers-by-hand", test_answers_by_hand);
  g_test_add_func ("/sheet/kinds/seed", test_seed);
  g_test_add_func ("/sheet/kinds/short-roll", test_short_roll);
  g_test_add_func ("/sheet/kinds/quiz-and-faults", test_quiz_and_faults);
  g_test_add_func ("/sheet/kinds/no-pattern-in-values", test_no_pattern_in_values);
  example_add_tests ("/sheet/kinds/laid-faults", test_laid_faults);
  g_test_add_func ("/sheet/kinds/laid-slots-and-joints", test_laid_slots_and_joints);
  example_add_tests ("/sheet/kinds/faults-are-asked", test_faults_are_asked);
  g_test_add_func ("/sheet/kinds/stop-in-class", test_stop_in_class);
  g_test_add_func ("/sheet/kinds/fault-pictures", test_fault_pictures);
  g_test_add_func ("/sheet/kinds/stops-between-parts", test_stops_between_parts);
  return g_test_run ();
}
