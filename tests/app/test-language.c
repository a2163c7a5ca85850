/* SPDX-License-Identifier: MIT */
/* The window in the language of LC_ALL, fr_FR or es_ES; tests/run.sh makes both locales. */
#undef G_DISABLE_ASSERT
#include <glib/gi18n.h>
#include <locale.h>

#include "export.h"
#include "first-job.h"
#include "language.h"
#include "sw-measure-dialog.h"
#include "sw-soil-dialog.h"
#include "sw-value-entry.h"
#include "value-text.h"
#include "window-fixture.h"

typedef WindowFixture Fixture;

#define SCREEN_WIDTH_PX 1280
#define SCREEN_HEIGHT_PX 800

/* Some of what the window must say in a language. */
typedef struct
{
  const char *texts;
  const char *words[8];
  const char *missing; /* of a job file that lacks what it must have */
} Language;

static const Language languages[] = {
  { "fr",
    { "Coupe", "Plan", "Vue développée", "_Enregistrer", "Natte", "Lés", "Agrafes",
      "Sol connu à l'œil" },
    "absent, attendu" },
  { "es",
    { "Sección", "Planta", "Vista desarrollada", "_Guardar", "Manta", "Franjas", "Grapas",
      "Suelo conocido a la vista" },
    "falta, se esperaba" },
};

static const Language *
language_now (void)
{
  for (gsize i = 0; i < G_N_ELEMENTS (languages); i++)
    if (g_str_equal (languages[i].texts, sw_language_of_texts ()))
      return &languages[i];
  g_assert_not_reached ();
}

static void
set_up (Fixture *f, gconstpointer data)
{
  window_fixture_set_up (f);
}

static void
tear_down (Fixture *f, gconstpointer data)
{
  window_fixture_tear_down (f);
}

typedef void (*Look) (GtkWidget *widget, gpointer data);

static void
look_at_all (GtkWidget *widget, Look look, gpointer data)
{
  look (widget, data);
  for (GtkWidget *child = gtk_widget_get_first_child (widget); child != NULL;
       child = gtk_widget_get_next_sibling (child))
    look_at_all (child, look, data);
}

static void
note_label (GtkWidget *widget, gpointer data)
{
  if (GTK_IS_LABEL (widget))
    g_hash_table_add (data, g_strdup (gtk_label_get_label (GTK_LABEL (widget))));
}

static void
test_words (Fixture *f, gconstpointer data)
{
  g_autoptr (GHashTable) shown =
      g_hash_table_new_full (g_str_hash, g_str_equal, g_free, NULL);
  const Language *language = language_now ();

  look_at_all (GTK_WIDGET (f->window), note_label, shown);
  for (gsize i = 0; i < G_N_ELEMENTS (language->words); i++)
    {
      g_test_message ("%s", language->words[i]);
      g_assert_true (g_hash_table_contains (shown, language->words[i]));
    }
}

/* A phrase that has a translation is not shown in English. */
static void
expect_translated (const char *shown)
{
  if (shown == NULL || *shown == '\0')
    return;
  g_test_message ("%s", shown);
  g_assert_cmpstr (_ (shown), ==, shown);
}

static void
expect_no_english (GtkWidget *widget, gpointer data)
{
  expect_translated (gtk_widget_get_tooltip_text (widget));
  if (GTK_IS_LABEL (widget))
    expect_translated (gtk_label_get_label (GTK_LABEL (widget)));
}

static void
test_no_english (Fixture *f, gconstpointer data)
{
  GtkWidget *measure =
      sw_measure_dialog_new (GTK_WINDOW (f->window), f->stage, SW_OBTAINED_TAPED_SHAPE);
  GtkWidget *soil = sw_soil_dialog_new (GTK_WINDOW (f->window), f->stage);

  sw_window_show_start (f->window);
  look_at_all (GTK_WIDGET (f->window), expect_no_english, NULL);
  look_at_all (measure, expect_no_english, NULL);
  look_at_all (soil, expect_no_english, NULL);
  gtk_window_destroy (GTK_WINDOW (measure));
  gtk_window_destroy (GTK_WINDOW (soil));
}

/* Nothing needs more room than a small screen has. */
static void
test_room (Fixture *f, gconstpointer data)
{
  int least;

  gtk_widget_measure (GTK_WIDGET (f->window), GTK_ORIENTATION_HORIZONTAL, -1, &least,
                      NULL, NULL, NULL);
  g_assert_cmpint (least, <=, SCREEN_WIDTH_PX);
  gtk_widget_measure (GTK_WIDGET (f->window), GTK_ORIENTATION_VERTICAL, SCREEN_WIDTH_PX,
                      &least, NULL, NULL, NULL);
  g_assert_cmpint (least, <=, SCREEN_HEIGHT_PX);
}

/* Hints give way to titles and choices show a beginning; every other label is whole. */
static void
expect_whole (GtkWidget *widget, gpointer data)
{
  if (!GTK_IS_LABEL (widget) || !gtk_widget_get_mapped (widget)
      || gtk_widget_has_css_class (widget, "dim-label")
      || gtk_widget_get_ancestor (widget, GTK_TYPE_DROP_DOWN) != NULL)
    return;
  g_test_message ("%s", gtk_label_get_text (GTK_LABEL (widget)));
  g_assert_false (pango_layout_is_ellipsized (gtk_label_get_layout (GTK_LABEL (widget))));
}

static void
test_nothing_clipped (Fixture *f, gconstpointer data)
{
  gtk_window_set_default_size (GTK_WINDOW (f->window), SCREEN_WIDTH_PX, SCREEN_HEIGHT_PX);
  gtk_window_present (GTK_WINDOW (f->window));
  window_settle (GTK_WIDGET (f->window));
  g_assert_cmpint (gtk_widget_get_width (GTK_WIDGET (f->window)), <=, SCREEN_WIDTH_PX);
  look_at_all (GTK_WIDGET (f->window), expect_whole, NULL);
}

/* Shown with the comma of the locale, read with either mark. */
static void
test_numbers (Fixture *f, gconstpointer data)
{
  SwNumberStyle style = sw_stage_style (f->stage);
  static const char *const typed[] = { "1,5 m", "1.5 m" };
  g_autofree char *shown = sw_value_edit_text (1.5, SW_UNIT_M, style);

  g_assert_cmpstr (shown, ==, "1,5 m");
  for (gsize i = 0; i < G_N_ELEMENTS (typed); i++)
    {
      g_autofree char *problem = NULL;
      double value_m = 0.0;

      g_assert_true (sw_value_parse (typed[i], SW_UNIT_M, style, &value_m, &problem));
      g_assert_cmpfloat_with_epsilon (value_m, 1.5, 1e-12);
    }
}

/* 257,8 m² and not 257.8 m². */
static void
test_tally (Fixture *f, gconstpointer data)
{
  const char *area = sw_tally_bar_text (sw_window_tally (f->window), "net-area");

  g_assert_nonnull (strchr (area, ','));
  g_assert_null (strchr (area, '.'));
}

/* What is wrong with a file is said in the language of the window, too. */
static void
test_trouble_with_files (Fixture *f, gconstpointer data)
{
  g_autoptr (GError) error = NULL;

  g_assert_null (sw_job_parse ("{}", 2, "empty", &error));
  g_test_message ("%s", error->message);
  g_assert_nonnull (strstr (error->message, language_now ()->missing));
}

/* A new job prints in the language of the window; the job decides from there on. */
static void
test_pack_has_its_own_language (Fixture *f, gconstpointer data)
{
  g_autoptr (SwJob) first =
      sw_first_job (f->preferences, (const char *const *) f->stock->languages);
  g_autoptr (SwJob) job = sw_job_copy (sw_document_committed (f->document));

  g_assert_cmpstr (first->language, ==, language_now ()->texts);
  sw_text_set (&job->language, "en");
  sw_document_commit (f->document, job, "Speak English", NULL);
  g_assert_cmpstr (sw_texts_language (sw_stage_stock (f->stage)->texts), ==,
                   language_now ()->texts);

  g_autoptr (GPtrArray) english = window_fixture_pages (f);
  g_autoptr (SwTexts) texts = sw_texts_load ("en");
  const SwFigure *last = g_ptr_array_index (english, english->len - 1);

  g_assert_cmpstr (
      last->title, !=,
      sw_texts_get (sw_stage_stock (f->stage)->texts, "pack.workings.title"));
  g_assert_nonnull (strstr (last->title, sw_texts_get (texts, "pack.workings.title")));
}

static void
note_key (GtkWidget *widget, gpointer data)
{
  guint letter;

  if (!GTK_IS_LABEL (widget) || !gtk_widget_get_mapped (widget))
    return;
  letter = gtk_label_get_mnemonic_keyval (GTK_LABEL (widget));
  if (letter == GDK_KEY_VoidSymbol)
    return;
  g_test_message ("%s", gtk_label_get_label (GTK_LABEL (widget)));
  g_assert_true (g_hash_table_add (data, GUINT_TO_POINTER (letter)));
}

static void
expect_own_letters (GtkWidget *dialog)
{
  g_autoptr (GHashTable) letters = g_hash_table_new (NULL, NULL);

  look_at_all (dialog, note_key, letters);
  g_assert_cmpuint (g_hash_table_size (letters), >, 1);
}

/* One letter, one button, on every page of the questions about the soil. */
static void
test_key_letters (Fixture *f, gconstpointer data)
{
  SwSoilDialog *soil =
      SW_SOIL_DIALOG (sw_soil_dialog_new (GTK_WINDOW (f->window), f->stage));

  gtk_window_present (GTK_WINDOW (f->window));
  gtk_window_present (GTK_WINDOW (soil));
  while (!g_str_equal (sw_soil_dialog_page (soil), "result"))
    {
      window_settle (GTK_WIDGET (soil));
      expect_own_letters (GTK_WIDGET (soil));
      if (g_str_equal (sw_soil_dialog_page (soil), "ribbon"))
        sw_value_entry_set_value (SW_VALUE_ENTRY (sw_soil_dialog_field (soil, 0)), 0.03,
                                  sw_stage_style (f->stage));
      else
        sw_soil_dialog_choose (soil, 0);
      sw_soil_dialog_next (soil);
    }
  window_settle (GTK_WIDGET (soil));
  expect_own_letters (GTK_WIDGET (soil));
  gtk_window_destroy (GTK_WINDOW (soil));
}

static void
test_without_locale (void)
{
  g_test_skip ("the locale is not installed");
}

int
main (int argc, char *argv[])
{
  gtk_test_init (&argc, &argv, NULL);
  if (setlocale (LC_ALL, "") == NULL)
    {
      g_test_add_func ("/app/language/without-locale", test_without_locale);
      return g_test_run ();
    }
  sw_language_begin ();
#define ADD(path, function)                                                              \
  g_test_add ("/app/language/" path, Fixture, NULL, set_up, function, tear_down)
  ADD ("words", test_words);
  ADD ("no-english", test_no_english);
  ADD ("room", test_room);
  ADD ("nothing-clipped", test_nothing_clipped);
  ADD ("numbers", test_numbers);
  ADD ("tally", test_tally);
  ADD ("trouble-with-files", test_trouble_with_files);
  ADD ("pack-has-its-own-language", test_pack_has_its_own_language);
  ADD ("key-letters", test_key_letters);
#undef ADD
  return g_test_run ();
}
