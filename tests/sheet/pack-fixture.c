/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "pack-fixture.h"
#include <string.h>

const char *const example_names[] = {
  "pinfold-cutting",
  "sallow-bank",
  "sandlark-bluff-road",
  "cornice-ramp-nose",
  "quernby-heap",
  "halter-brook",
  "brackenholt-spur",
  "ostermill-pond",
  "veldmoor-cell",
  "kelpie-lane",
  "corvendale-interchange",
  "old-weir-terrace",
  NULL,
};

void
example_add_tests (const char *path, GTestDataFunc test)
{
  for (guint i = 0; example_names[i] != NULL; i++)
    {
      g_autofree char *full = g_strdup_printf ("%s/%s", path, example_names[i]);

      g_test_add_data_func (full, example_names[i], test);
    }
}

static SwJob *
load_job (const char *name)
{
  g_autofree char *path =
      g_strdup_printf ("%s/%s.slope.json", g_getenv ("SW_EXAMPLES"), name);
  g_autoptr (GFile) file = g_file_new_for_path (path);
  g_autoptr (GError) error = NULL;
  SwJob *job = sw_job_load (file, &error);

  g_assert_no_error (error);
  return job;
}

Example *
example_new_changed (const char *name, void (*change) (SwJob *job))
{
  Example *example = g_new0 (Example, 1);
  g_autoptr (GError) error = NULL;

  example->catalogue = sw_catalogue_load ();
  example->texts = sw_texts_load ("en");
  example->job = load_job (name);
  if (change != NULL)
    change (example->job);
  example->result = sw_result_new (example->job, example->catalogue);
  g_assert_cmpint (example->result->status, ==, SW_OK);
  example->draw = (SwDraw){ .texts = example->texts,
                            .measure = sw_paint_measure (&error),
                            .style = { example->job->units, '.', example->texts } };
  g_assert_no_error (error);
  return example;
}

gboolean
example_is_tried (const char *name, guint language, guint paper, guint units)
{
  guint turn = 0;

  while (!g_str_equal (example_names[turn], name))
    turn++;
  return g_getenv ("SLOPEWRIGHT_ALL_SHEETS") != NULL
         || (turn + language + paper + 2 * units) % 4 == 0;
}

Example *
example_new (const char *name)
{
  return example_new_changed (name, NULL);
}

void
example_speak (Example *example, const char *code)
{
  SwTexts *texts = sw_texts_load (code);

  g_assert_nonnull (texts);
  sw_texts_unref (example->texts);
  example->texts = texts;
  example->draw.texts = texts;
  example->draw.style.decimal_mark = sw_texts_decimal_mark (texts);
  example->draw.style.texts = texts;
}

void
example_free (Example *example)
{
  sw_result_unref (example->result);
  sw_job_unref (example->job);
  sw_texts_unref (example->texts);
  sw_catalogue_free (example->catalogue);
  g_free (example);
}

GPtrArray *
example_pack (const Example *example, SwPaper paper)
{
  return example_pack_of_kind (example, paper, SW_PACK_CREW);
}

GPtrArray *
example_pack_of_kind (const Example *example, SwPaper paper, SwPackKind kind)
{
  SwPackPlan plan = example->job->pack;

  plan.kind = kind;
  return example_pack_by_plan (example, paper, &plan);
}

GPtrArray *
example_pack_by_plan (const Example *example, SwPaper paper, const SwPackPlan *plan)
{
  return sw_pack_new (example->result, &example->draw, paper, plan, "1.2.3",
                      "0123456789ab", NULL);
}

const SwFigure *
page_titled (const GPtrArray *pages, const char *title)
{
  for (guint i = 0; i < pages->len; i++)
    if (g_strcmp0 (((const SwFigure *) pages->pdata[i])->title, title) == 0)
      return g_ptr_array_index (pages, i);
  g_error ("the pack has no page %s", title);
}

static void
append_words (GString *words, const SwFigure *page)
{
  for (guint i = 0; i < page->items->len; i++)
    {
      const SwItem *item = &g_array_index (page->items, SwItem, i);

      if (item->kind == SW_ITEM_TEXT)
        g_string_append_printf (words, "%s\n", item->text);
    }
}

char *
page_words (const SwFigure *page)
{
  GString *words = g_string_new (NULL);

  append_words (words, page);
  return g_string_free (words, FALSE);
}

char *
pack_words (const GPtrArray *pages)
{
  GString *words = g_string_new (NULL);

  for (guint i = 0; i < pages->len; i++)
    append_words (words, g_ptr_array_index (pages, i));
  return g_string_free (words, FALSE);
}

void
assert_says (const char *words, const char *part)
{
  if (strstr (words, part) == NULL)
    g_error ("no “%s” in:\n%s", part, words);
}

guint
count_of (const char *words, const char *part)
{
  guint count = 0;

  for (const char *at = words; (at = strstr (at, part)) != NULL; at++)
    count++;
  return count;
}
