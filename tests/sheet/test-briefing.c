/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "pack-fixture.h"
#include <slopewright/sheet/briefing.h>
#include <string.h>

/* Everything said at one step, for looking into. (transfer full) */
static char *
all_said (const SwBriefingWords *words)
{
  g_autofree char *doing = g_strjoinv ("\n", words->doing);

  return g_strjoin ("\n", words->where, words->title, words->number, doing, words->who,
                    words->caution, words->so_far, words->hold, NULL);
}

/* A place that no number was put in still has its braces; an id that has no text is shown
 * as it is. */
static void
check_said (const char *said)
{
  g_assert_null (strchr (said, '{'));
  g_assert_null (strstr (said, "briefing."));
  g_assert_null (strstr (said, "pack."));
  g_assert_null (strstr (said, "  over"));
  g_assert_false (g_str_has_prefix (said, "\n"));
}

static void
check_language (Example *example)
{
  g_autoptr (SwLayingSequence) sequence =
      sw_laying_sequence_new (example->result->layout);
  g_autoptr (SwBriefing) briefing =
      sw_briefing_new (example->result, sequence, &example->draw);
  gboolean any_hold = FALSE;

  for (guint i = 0; i < sequence->n_steps; i++)
    {
      g_autoptr (SwBriefingWords) words = sw_briefing_words (briefing, i);
      g_autofree char *said = all_said (words);

      g_assert_cmpuint (g_strv_length (words->doing), >, 0);
      g_assert_cmpuint (strlen (words->title), >, 0);
      g_assert_cmpuint (strlen (words->number), >, 0);
      check_said (said);
      any_hold |= words->hold != NULL;
      if (sequence->steps[i].act == SW_LAYING_SIDE_LAP)
        {
          g_autoptr (GArray) under = g_array_new (FALSE, FALSE, sizeof (guint));

          sw_laying_runs_under (sequence, sequence->steps[i].face, sequence->steps[i].run,
                                under);
          g_assert_cmpuint (under->len, >, 0);
        }
    }
  g_assert_true (any_hold);
}

static void
test_says_all (gconstpointer name)
{
  static const char *const languages[] = { "en", "fr", "es" };
  g_autoptr (Example) example = example_new (name);

  for (gsize i = 0; i < G_N_ELEMENTS (languages); i++)
    {
      example_speak (example, languages[i]);
      check_language (example);
    }
}

static guint
find_step (const SwLayingSequence *sequence, SwLayingAct act, guint from)
{
  while (from < sequence->n_steps && sequence->steps[from].act != act)
    from++;
  g_assert_cmpuint (from, <, sequence->n_steps);
  return from;
}

/* The cutting's numbers as worked by hand in examples/pinfold-cutting.expected.md: runs of
 * the upper tier cut at 14.77 m; and pins in the first run's trench: a pin every 0.30 m
 * over 48.00 m, 161 in all, stand at 0.00, 0.30 … of which 0.00 to 2.10 lie in run 1 and
 * not in the lap that run 2 lays over it, from 2.44 - 0.162 = 2.28 m on: 8 pins. */
static void
test_numbers (void)
{
  g_autoptr (Example) example = example_new ("pinfold-cutting");
  g_autoptr (SwLayingSequence) sequence =
      sw_laying_sequence_new (example->result->layout);
  g_autoptr (SwBriefing) briefing =
      sw_briefing_new (example->result, sequence, &example->draw);
  g_autoptr (SwBriefingWords) anchor =
      sw_briefing_words (briefing, find_step (sequence, SW_LAYING_ANCHOR, 0));
  g_autoptr (SwBriefingWords) unroll =
      sw_briefing_words (briefing, find_step (sequence, SW_LAYING_UNROLL, 0));
  g_autoptr (SwBriefingWords) last = sw_briefing_words (briefing, sequence->n_steps - 1);

  g_assert_nonnull (strstr (anchor->number, "*8* pins"));
  g_assert_nonnull (strstr (unroll->number, "*14.77"));
  g_assert_nonnull (strstr (last->so_far, "42 of 42 runs"));
}

/* The hold point before run 3 comes when run 3 comes. */
static void
test_hold_before_run_3 (void)
{
  g_autoptr (Example) example = example_new ("sandlark-bluff-road");
  g_autoptr (SwLayingSequence) sequence =
      sw_laying_sequence_new (example->result->layout);
  g_autoptr (SwBriefing) briefing =
      sw_briefing_new (example->result, sequence, &example->draw);
  const SwRun *runs = example->result->layout->faces[0].runs;

  for (guint i = 0; i < sequence->n_steps; i++)
    if (sequence->steps[i].act == SW_LAYING_ANCHOR)
      {
        g_autoptr (SwBriefingWords) words = sw_briefing_words (briefing, i);

        g_assert_cmpint (words->hold != NULL, ==,
                         runs[sequence->steps[i].run].number == 3);
      }
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  example_add_tests ("/sheet/briefing/says-all", test_says_all);
  g_test_add_func ("/sheet/briefing/numbers", test_numbers);
  g_test_add_func ("/sheet/briefing/hold-before-run-3", test_hold_before_run_3);
  return g_test_run ();
}
