/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include <slopewright/base/texts.h>

static SwTexts *
sample (void)
{
  SwTexts *texts = sw_texts_new ("en");

  sw_texts_add (texts, "cut", "Cut {count} pieces of {length} from {count} rolls.");
  sw_texts_add (texts, "brace", "open { and {unknown} end");
  sw_texts_add (texts, "again", "old");
  sw_texts_add (texts, "again", "new");
  return texts;
}

static void
test_get (void)
{
  g_autoptr (SwTexts) texts = sample ();

  g_assert_cmpstr (sw_texts_language (texts), ==, "en");
  g_assert_cmpstr (sw_texts_get (texts, "again"), ==, "new");
  g_assert_true (sw_texts_has (texts, "cut"));
  g_assert_false (sw_texts_has (texts, "gap"));
  g_assert_cmpstr (sw_texts_get (texts, "gap"), ==, "gap");
}

static void
test_fill (void)
{
  g_autoptr (SwTexts) texts = sample ();
  g_autofree char *cut =
      sw_texts_fill (texts, "cut", "count", "12", "length", "14.77 m", NULL);
  g_autofree char *gap = sw_texts_fill (texts, "gap", "count", "12", NULL);

  g_assert_cmpstr (cut, ==, "Cut 12 pieces of 14.77 m from 12 rolls.");
  g_assert_cmpstr (gap, ==, "gap");
}

/* A value that looks like a place is the user's text, not ours. */
static void
test_fill_does_not_fill_values (void)
{
  g_autoptr (SwTexts) texts = sample ();
  g_autofree char *cut =
      sw_texts_fill (texts, "cut", "count", "{length}", "length", "{count}", NULL);
  g_autofree char *left = sw_texts_fill (texts, "brace", "count", "1", NULL);

  g_assert_cmpstr (cut, ==, "Cut {length} pieces of {count} from {length} rolls.");
  g_assert_cmpstr (left, ==, "open { and {unknown} end");
}

static void
test_ids_sorted (void)
{
  g_autoptr (SwTexts) texts = sample ();
  g_autoptr (GPtrArray) ids = sw_texts_ids (texts);

  g_assert_cmpuint (ids->len, ==, 3);
  g_assert_cmpstr (ids->pdata[0], ==, "again");
  g_assert_cmpstr (ids->pdata[1], ==, "brace");
  g_assert_cmpstr (ids->pdata[2], ==, "cut");
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/base/texts/get", test_get);
  g_test_add_func ("/base/texts/fill", test_fill);
  g_test_add_func ("/base/texts/fill-does-not-fill-values",
                   test_fill_does_not_fill_values);
  g_test_add_func ("/base/texts/ids-sorted", test_ids_sorted);
  return g_test_run ();
}
