/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include <string.h>

#include "help-figure.h"
#include "help-markup.h"
#include "sw-help-view.h"
#include "sw-help-window.h"
#include "value-text.h"

typedef struct
{
  SwStock *stock;
  SwHelpWindow *window;
} Fixture;

static void
set_up (Fixture *f, gconstpointer data)
{
  f->stock = sw_stock_new (NULL);
  f->window = SW_HELP_WINDOW (sw_help_window_new (f->stock, SW_UNITS_METRIC));
}

static void
tear_down (Fixture *f, gconstpointer data)
{
  SwHelpWindow *window = g_object_ref (f->window);

  gtk_window_destroy (GTK_WINDOW (window));
  while (g_main_context_iteration (NULL, FALSE))
    ;
  g_assert_finalize_object (window);
  sw_stock_free (f->stock);
}

static void
assert_page (Fixture *f, const char *page)
{
  g_assert_cmpstr (sw_help_window_page (f->window), ==, page);
}

static void
act (Fixture *f, const char *action)
{
  gtk_widget_activate_action (GTK_WIDGET (f->window), action, NULL);
}

/* Back and forward go through what was read; a new page ends what lies ahead. */
static void
test_history (Fixture *f, gconstpointer data)
{
  assert_page (f, "start");
  g_assert_true (sw_help_window_go (f->window, "soil#hand"));
  g_assert_true (sw_help_window_go (f->window, "pins"));
  g_assert_false (sw_help_window_go (f->window, "moon"));
  assert_page (f, "pins");
  act (f, "help.back");
  assert_page (f, "soil");
  act (f, "help.back");
  act (f, "help.back"); /* nothing lies behind the first */
  assert_page (f, "start");
  act (f, "help.forward");
  assert_page (f, "soil");
  sw_help_window_go (f->window, "keys");
  act (f, "help.forward");
  assert_page (f, "keys");
}

/* Enter opens what fits best; what is not there changes nothing. */
static void
test_search (Fixture *f, gconstpointer data)
{
  sw_help_window_search (f->window, "f9 pins");
  g_assert_cmpuint (sw_help_window_found (f->window), ==, 1);
  assert_page (f, "findings");
  sw_help_window_search (f->window, "moon");
  g_assert_cmpuint (sw_help_window_found (f->window), ==, 0);
  assert_page (f, "findings");
}

/* Each page becomes widgets, and each drawing that it names is drawn: what fails says so
 * with a critical message, which ends the test. */
static void
test_pages (Fixture *f, gconstpointer data)
{
  g_autoptr (SwHelp) help = sw_help_load ("en");
  guint figures = 0;

  for (guint i = 0; i < help->pages->len; i++)
    {
      const SwHelpPage *page = g_ptr_array_index (help->pages, i);
      g_assert_true (sw_help_window_go (f->window, page->name));
      for (guint k = 0; k < page->blocks->len; k++)
        figures += ((SwHelpBlock *) g_ptr_array_index (page->blocks, k))->figure != NULL;
    }
  g_assert_cmpuint (figures, >, 5);
  g_assert_null (sw_help_figure (f->stock, SW_UNITS_US, "moon/section"));
  g_assert_null (sw_help_figure (f->stock, SW_UNITS_US, "sallow-bank/moon"));
  g_assert_null (sw_help_figure (f->stock, SW_UNITS_US, "right/moon"));
  g_assert_null (sw_help_figure (f->stock, SW_UNITS_US, "section"));
}

static void
test_accessible (Fixture *f, gconstpointer data)
{
  g_autoptr (SwHelp) help = sw_help_load ("en");
  const SwHelpPage *page = sw_help_page (help, "soil");
  GtkWidget *view = g_object_ref_sink (sw_help_view_new (f->stock, SW_UNITS_US));
  GtkWidget *title, *heading;

  sw_help_view_show (SW_HELP_VIEW (view), page, NULL, -1);
  title = sw_help_view_block (SW_HELP_VIEW (view), -1);
  heading = sw_help_view_block (SW_HELP_VIEW (view), sw_help_page_place (page, "hand"));
  gtk_test_accessible_assert_role (title, GTK_ACCESSIBLE_ROLE_HEADING);
  gtk_test_accessible_assert_property (title, GTK_ACCESSIBLE_PROPERTY_LEVEL, 1);
  gtk_test_accessible_assert_property (title, GTK_ACCESSIBLE_PROPERTY_LABEL, page->title);
  gtk_test_accessible_assert_role (heading, GTK_ACCESSIBLE_ROLE_HEADING);
  gtk_test_accessible_assert_property (heading, GTK_ACCESSIBLE_PROPERTY_LEVEL, 2);
  g_assert_true (gtk_widget_get_focusable (heading));
  g_object_unref (view);
}

/* What a page holds is words, never markup of its own. */
static void
test_markup (void)
{
  static const char text[] = "# T\na < b & **c**, `1\"`, [d](t), [[F1]] [[Ctrl+comma]]\n";
  g_autoptr (SwTexts) texts = sw_texts_new ("en");
  g_autoptr (SwHelpPage) page =
      sw_help_page_parse ("t", text, strlen (text), texts, "t.md", NULL);
  const SwHelpBlock *block = g_ptr_array_index (page->blocks, 0);
  g_autofree char *markup = sw_help_markup (g_ptr_array_index (block->lines, 0));

  g_assert_cmpstr (markup, ==,
                   "a &lt; b &amp; <b>c</b>, <tt>1&quot;</tt>, <a href=\"t\">d</a>, "
                   "<tt><b>F1</b></tt> <tt><b>Ctrl+,</b></tt>");
}

/* How often the first column of the table under @place can be read as a number of @unit;
 * what stands in a row of its own to be refused is not counted. */
static guint
typed_of (const SwHelpPage *page, const char *place, SwUnit unit, SwNumberStyle style)
{
  int heading = sw_help_page_place (page, place);
  const SwHelpBlock *table;
  guint read = 0;

  g_assert_cmpint (heading, >=, 0);
  table = g_ptr_array_index (page->blocks, (guint) heading + 1);
  g_assert_cmpint (table->kind, ==, SW_HELP_TABLE);
  for (guint i = table->columns; i < table->lines->len; i += table->columns)
    {
      const GPtrArray *cell = g_ptr_array_index (table->lines, i);
      for (guint k = 0; k < cell->len; k++)
        {
          const SwHelpSpan *span = g_ptr_array_index (cell, k);
          g_autofree char *problem = NULL;
          double value;
          if (span->kind != SW_HELP_TYPED)
            continue;
          if (sw_value_parse (span->text, unit, style, &value, &problem))
            read++;
          else
            g_assert_cmpstr (span->text, ==, "1:2");
        }
    }
  return read;
}

/* The forms of numbers that the help tells are understood, all but 1:2. */
static void
test_typed_numbers (Fixture *f, gconstpointer data)
{
  SwNumberStyle style = sw_stock_style (f->stock, SW_UNITS_METRIC);
  g_auto (GStrv) languages = sw_texts_languages ();

  for (char **language = languages; *language != NULL; language++)
    {
      g_autoptr (SwHelp) help = sw_help_load (*language);
      const SwHelpPage *page = sw_help_page (help, "typing");

      g_assert_cmpuint (typed_of (page, "lengths", SW_UNIT_M, style), ==, 8);
      g_assert_cmpuint (typed_of (page, "gradients", SW_UNIT_RAD, style), ==, 6);
    }
}

int
main (int argc, char **argv)
{
  gtk_test_init (&argc, &argv, NULL);
  g_test_add ("/app/help/history", Fixture, NULL, set_up, test_history, tear_down);
  g_test_add ("/app/help/search", Fixture, NULL, set_up, test_search, tear_down);
  g_test_add ("/app/help/pages", Fixture, NULL, set_up, test_pages, tear_down);
  g_test_add ("/app/help/accessible", Fixture, NULL, set_up, test_accessible, tear_down);
  g_test_add_func ("/app/help/markup", test_markup);
  g_test_add ("/app/help/typed-numbers", Fixture, NULL, set_up, test_typed_numbers,
              tear_down);
  return g_test_run ();
}
