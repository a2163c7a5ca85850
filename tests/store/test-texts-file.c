/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include <slopewright/base/number-text.h>
#include <slopewright/store/store.h>

#include <string.h>

static void
test_load (void)
{
  g_autoptr (SwTexts) texts = sw_texts_load ("en");
  g_autoptr (GPtrArray) ids = sw_texts_ids (texts);

  g_assert_cmpstr (sw_texts_language (texts), ==, "en");
  g_assert_cmpuint (ids->len, >, 100);
  g_assert_true (sw_texts_has (texts, "practice.side_lap_m"));
  g_assert_null (sw_texts_load ("xx"));
  g_assert_null (sw_texts_load (""));
}

static void
check_refused (const char *text, SwStoreError code, const char *message)
{
  g_autoptr (SwTexts) texts = sw_texts_new ("en");
  g_autoptr (GError) error = NULL;

  sw_texts_add (texts, "known", "already here");
  g_assert_false (sw_texts_parse (texts, text, strlen (text), "t.json", &error));
  g_assert_error (error, SW_STORE_ERROR, (int) code);
  g_assert_cmpstr (error->message, ==, message);
}

static void
test_refused (void)
{
  check_refused ("{\n \"a\": \"x\",\n \"known\": \"y\" }", SW_STORE_ERROR_VALUE,
                 "t.json:3: known: this text id stands in another file already");
  check_refused ("{\n \"a\": 1 }", SW_STORE_ERROR_VALUE,
                 "t.json:2: a: found 1, expected text in quotes");
  check_refused ("{ \"a\": \"\" }", SW_STORE_ERROR_VALUE,
                 "t.json:1: a: found \"\", expected text in quotes, not empty");
  check_refused (
      "[]", SW_STORE_ERROR_VALUE,
      "t.json:1: found an empty list, expected an object of text ids and texts");
  check_refused (
      "{ \"a\": \"x\",\n \"a\": \"y\" }", SW_STORE_ERROR_SYNTAX,
      "t.json:2: not a JSON file: duplicate object key near '\"a\"' (column 4)");
}

/* Without texts numbers carry English signs: those of the English texts. */
static void
test_english_signs (void)
{
  g_autoptr (SwTexts) texts = sw_texts_load ("en");

  for (int units = SW_UNITS_METRIC; units <= SW_UNITS_US; units++)
    for (int unit = 0; unit < SW_UNIT_COUNT_OF_UNITS; unit++)
      {
        const SwNumberStyle bare = { (SwUnitSystem) units, '.', NULL };
        const SwNumberStyle spoken = { (SwUnitSystem) units, '.', texts };

        g_assert_cmpstr (sw_quantity_unit ((SwUnit) unit, spoken), ==,
                         sw_quantity_unit ((SwUnit) unit, bare));
      }
}

/* Every sign is there in every language: a gap would show its id. */
static void
test_signs (void)
{
  g_auto (GStrv) languages = sw_texts_languages ();

  for (guint i = 0; languages[i] != NULL; i++)
    {
      g_autoptr (SwTexts) texts = sw_texts_load (languages[i]);

      for (int units = SW_UNITS_METRIC; units <= SW_UNITS_US; units++)
        for (int unit = 0; unit < SW_UNIT_COUNT_OF_UNITS; unit++)
          {
            const SwNumberStyle style = { (SwUnitSystem) units, '.', texts };

            g_assert_false (
                g_str_has_prefix (sw_quantity_unit ((SwUnit) unit, style), "unit."));
            g_assert_false (g_str_has_prefix (
                sw_quantity_unit_of_one ((SwUnit) unit, style), "unit."));
          }
    }
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/store/texts/load", test_load);
  g_test_add_func ("/store/texts/refused", test_refused);
  g_test_add_func ("/store/texts/english-signs", test_english_signs);
  g_test_add_func ("/store/texts/signs", test_signs);
  return g_test_run ();
}
