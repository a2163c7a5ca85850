/* SPDX-License-Identifier: MIT */
#include "report-words.h"
#include <math.h>

#define COLUMNS SW_REPORT_CHOICE_COLUMNS
#define GAP 2

static char *
has_words (SwChoiceAspect aspect, const SwChoiceTest *test, const SwTexts *texts,
           SwNumberStyle style)
{
  if (aspect == SW_CHOICE_ANIMALS || aspect == SW_CHOICE_MOWING)
    return g_strdup (
        sw_texts_get (texts, test->has > 0.0 ? "choice.plastic" : "choice.not-plastic"));
  if (aspect == SW_CHOICE_LIFE && !isfinite (test->has))
    return g_strdup (sw_texts_get (texts, "choice.permanent"));
  return sw_report_quantity (test->has, test->unit, style);
}

char *
sw_report_choice_cell (SwChoiceAspect aspect, const SwChoiceTest *test,
                       const SwTexts *texts, SwNumberStyle style)
{
  static const char *const ids[] = { "choice.not-asked", "choice.meets", "choice.fails",
                                     "choice.not-stated" };
  g_autofree char *has = has_words (aspect, test, texts, style);

  return sw_texts_fill (texts, ids[test->answer], "has", has, NULL);
}

char *
sw_report_choice_need (SwChoiceAspect aspect, const SwChoiceTest *test,
                       const SwTexts *texts, SwNumberStyle style)
{
  if (test->answer == SW_CHOICE_NOT_ASKED)
    return g_strdup (sw_texts_get (texts, "choice.open"));
  if (aspect == SW_CHOICE_ANIMALS || aspect == SW_CHOICE_MOWING)
    return g_strdup (sw_texts_get (texts, "choice.not-plastic"));
  return sw_report_quantity (test->need, test->unit, style);
}

static void
add_head (GPtrArray *cells, const SwTexts *texts)
{
  g_ptr_array_add (cells, g_strdup (sw_texts_get (texts, "choice.type")));
  for (int i = 0; i < SW_CHOICE_COUNT; i++)
    {
      g_autofree char *id =
          g_strdup_printf ("choice.%s", sw_choice_code ((SwChoiceAspect) i));

      g_ptr_array_add (cells, g_strdup (sw_texts_get (texts, id)));
    }
}

static void
add_needs (GPtrArray *cells, const SwChoice *choice, const SwTexts *texts,
           SwNumberStyle style)
{
  g_ptr_array_add (cells, g_strdup (sw_texts_get (texts, "choice.needed")));
  for (int i = 0; i < SW_CHOICE_COUNT; i++)
    g_ptr_array_add (cells, sw_report_choice_need ((SwChoiceAspect) i, &choice->tests[i],
                                                   texts, style));
}

static const char *
product_name (const SwProduct *product, const SwTexts *texts)
{
  return *product->name != '\0' ? product->name : sw_texts_get (texts, "choice.unnamed");
}

char *
sw_report_choice_type (const SwChoice *choice, gboolean of_sheet, const SwTexts *texts)
{
  const char *name = sw_texts_get (texts, choice->blanket->name_id);

  if (choice->product != NULL)
    return sw_texts_fill (texts, "choice.product", "product",
                          product_name (choice->product, texts), NULL);
  if (!choice->chosen)
    return g_strdup (name);
  return sw_texts_fill (texts, of_sheet ? "choice.claimed" : "choice.chosen", "type",
                        name, NULL);
}

static void
add_type (GPtrArray *cells, const SwChoice *choice, gboolean of_sheet,
          const SwTexts *texts, SwNumberStyle style)
{
  g_ptr_array_add (cells, sw_report_choice_type (choice, of_sheet, texts));
  for (int i = 0; i < SW_CHOICE_COUNT; i++)
    g_ptr_array_add (cells, sw_report_choice_cell ((SwChoiceAspect) i, &choice->tests[i],
                                                   texts, style));
}

static glong
column_width (const GPtrArray *cells, guint column)
{
  glong width = 0;

  for (guint i = column; i < cells->len; i += COLUMNS)
    width = MAX (width, g_utf8_strlen (cells->pdata[i], -1));
  return width;
}

static void
append_table (GString *report, const GPtrArray *cells)
{
  glong widths[COLUMNS];

  for (guint column = 0; column < COLUMNS; column++)
    widths[column] = column_width (cells, column);
  for (guint i = 0; i < cells->len; i++)
    {
      gboolean last = i % COLUMNS == COLUMNS - 1;

      sw_report_pad (report, cells->pdata[i], last ? 0 : widths[i % COLUMNS] + GAP);
      if (last)
        g_string_append_c (report, '\n');
    }
}

char *
sw_report_product (const SwProduct *product, const SwTexts *texts)
{
  const char *unstated = sw_texts_get (texts, "choice.sheet-unstated");

  if (!sw_product_given (product))
    return NULL;
  return sw_texts_fill (
      texts, "choice.sheet", "product", product_name (product, texts), "source",
      *product->source != '\0' ? product->source : unstated, "cover_test",
      *product->cover_test != '\0' ? product->cover_test : unstated, NULL);
}

char *
sw_report_blanket (const SwLayout *layout, const SwTexts *texts)
{
  const char *name = layout->job->product.name;
  const char *type = sw_texts_get (texts, layout->blanket->name_id);

  if (*name == '\0')
    return g_strdup (type);
  return sw_texts_fill (texts, "choice.product-of", "product", name, "type", type, NULL);
}

static void
append_product (GString *report, const SwProduct *product, const SwTexts *texts)
{
  g_autofree char *words = sw_report_product (product, texts);

  if (words != NULL)
    g_string_append_printf (report, "%s\n", words);
}

GPtrArray *
sw_report_choice_cells (const SwResult *result, const SwTexts *texts, SwNumberStyle style)
{
  GPtrArray *cells = g_ptr_array_new_with_free_func (g_free);
  g_autoptr (GArray) choices = NULL;

  if (result->layout == NULL)
    return cells;
  choices = sw_choices_new (result->layout);
  add_head (cells, texts);
  for (guint i = 0; i < choices->len; i++)
    {
      const SwChoice *choice = &g_array_index (choices, SwChoice, i);

      if (i == 0)
        add_needs (cells, choice, texts, style);
      add_type (cells, choice, sw_product_given (&result->job->product), texts, style);
    }
  return cells;
}

char *
sw_report_choice (const SwResult *result, const SwTexts *texts, SwNumberStyle style)
{
  g_autoptr (GPtrArray) cells = sw_report_choice_cells (result, texts, style);
  GString *report;

  if (cells->len == 0)
    return g_strdup ("");
  report = g_string_new (sw_texts_get (texts, "choice.title"));
  g_string_append_c (report, '\n');
  append_table (report, cells);
  append_product (report, &result->job->product, texts);
  g_string_append_printf (report, "%s\n", sw_texts_get (texts, "choice.note"));
  return g_string_free (report, FALSE);
}
