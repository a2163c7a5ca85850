/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include <glib/gstdio.h>
#include <slopewright/store/store.h>

#include "first-job.h"
#include "start-choices.h"
#include "sw-dialogs.h"
#include "sw-file-bar.h"
#include "sw-preferences-window.h"
#include "window-fixture.h"

typedef struct
{
  WindowFixture window;
  char *folder, *path;
} Fixture;

static void
set_up (Fixture *f, gconstpointer data)
{
  g_autofree char *example =
      g_build_filename (EXAMPLES_DIR, "sallow-bank.slope.json", NULL);
  g_autofree char *text = NULL;
  g_autoptr (GFile) file = NULL;

  window_fixture_set_up (&f->window);
  f->folder = g_dir_make_tmp ("slopewright-files-XXXXXX", NULL);
  f->path = g_build_filename (f->folder, "bank.slope.json", NULL);
  g_assert_true (g_file_get_contents (example, &text, NULL, NULL));
  g_assert_true (g_file_set_contents (f->path, text, -1, NULL));
  file = g_file_new_for_path (f->path);
  g_assert_true (sw_window_load (f->window.window, file));
}

static void
tear_down (Fixture *f, gconstpointer data)
{
  window_fixture_tear_down (&f->window);
  g_unlink (f->path);
  g_rmdir (f->folder);
  g_free (f->path);
  g_free (f->folder);
}

static void
act (Fixture *f, const char *action)
{
  gtk_widget_activate_action (GTK_WIDGET (f->window.window), action, NULL);
}

static void
rename_job (Fixture *f, const char *name)
{
  g_autoptr (SwJob) job = sw_job_copy (sw_document_committed (f->window.document));

  sw_text_set (&job->card.name, name);
  sw_document_commit (f->window.document, job, "Name", NULL);
}

static char *
name_in_file (Fixture *f)
{
  g_autoptr (GFile) file = g_file_new_for_path (f->path);
  g_autoptr (SwJob) job = sw_job_load (file, NULL);

  g_assert_nonnull (job);
  return g_strdup (job->card.name);
}

static void
write_theirs (Fixture *f)
{
  g_autoptr (GFile) file = g_file_new_for_path (f->path);
  g_autoptr (SwJob) job = sw_job_load (file, NULL);

  sw_text_set (&job->card.name, "Theirs");
  g_assert_true (sw_job_save (job, file, NULL));
}

static SwFileBar *
bar_in (GtkWidget *widget)
{
  if (SW_IS_FILE_BAR (widget))
    return SW_FILE_BAR (widget);
  for (GtkWidget *w = gtk_widget_get_first_child (widget); w != NULL;
       w = gtk_widget_get_next_sibling (w))
    {
      SwFileBar *bar = bar_in (w);
      if (bar != NULL)
        return bar;
    }
  return NULL;
}

static SwFileBar *
bar_of (Fixture *f)
{
  return bar_in (GTK_WIDGET (f->window.window));
}

static void
settle (void)
{
  while (g_main_context_iteration (NULL, FALSE))
    ;
}

/* The question that is asked, or NULL. */
static GtkDialog *
question (void)
{
  g_autoptr (GList) all = gtk_window_list_toplevels ();

  for (GList *l = all; l != NULL; l = l->next)
    if (GTK_IS_MESSAGE_DIALOG (l->data))
      return l->data;
  return NULL;
}

static void
reply (SwReply answer)
{
  g_assert_nonnull (question ());
  gtk_dialog_response (question (), answer);
  settle ();
}

/* The bar says which file, stays, and goes with the cause. */
static void
test_bar (Fixture *f, gconstpointer data)
{
  g_assert_false (gtk_widget_get_visible (GTK_WIDGET (bar_of (f))));
  write_theirs (f);
  sw_document_look_at_disk (f->window.document);
  g_assert_true (gtk_widget_get_visible (GTK_WIDGET (bar_of (f))));
  g_assert_nonnull (strstr (sw_file_bar_words (bar_of (f)), "bank.slope.json"));
  act (f, "win.reload");
  g_assert_false (gtk_widget_get_visible (GTK_WIDGET (bar_of (f))));
  g_assert_cmpstr (sw_document_committed (f->window.document)->card.name, ==, "Theirs");
}

static void
test_save_asks_first (Fixture *f, gconstpointer data)
{
  g_autofree char *kept = NULL;
  g_autofree char *saved = NULL;

  rename_job (f, "Mine");
  write_theirs (f);
  act (f, "win.save");
  reply (SW_REPLY_CANCEL);
  kept = name_in_file (f);
  g_assert_cmpstr (kept, ==, "Theirs");
  g_assert_true (sw_document_modified (f->window.document));
  act (f, "win.save");
  reply (SW_REPLY_REPLACE);
  saved = name_in_file (f);
  g_assert_cmpstr (saved, ==, "Mine");
  g_assert_false (sw_document_modified (f->window.document));
}

/* Decided once, it is not asked again. */
static void
test_keep_mine (Fixture *f, gconstpointer data)
{
  g_autofree char *saved = NULL;

  rename_job (f, "Mine");
  write_theirs (f);
  sw_document_look_at_disk (f->window.document);
  act (f, "win.keep-own");
  g_assert_false (gtk_widget_get_visible (GTK_WIDGET (bar_of (f))));
  act (f, "win.save");
  g_assert_null (question ());
  saved = name_in_file (f);
  g_assert_cmpstr (saved, ==, "Mine");
}

/* A file in the place of the folder: nothing can be written there, whoever asks. */
static void
test_failure_is_told (Fixture *f, gconstpointer data)
{
  rename_job (f, "Mine");
  g_unlink (f->path);
  g_rmdir (f->folder);
  g_assert_true (g_file_set_contents (f->folder, "", -1, NULL));
  act (f, "win.save");
  reply (SW_REPLY_CANCEL);
  g_assert_true (sw_document_modified (f->window.document));
  g_assert_cmpstr (sw_document_committed (f->window.document)->card.name, ==, "Mine");
  g_unlink (f->folder);
}

/* Preferences seed new jobs, and change none that is there. */
static void
test_preferences_seed (Fixture *f, gconstpointer data)
{
  SwPreferences *preferences = f->window.preferences;
  const SwJob *open = sw_document_committed (f->window.document);
  SwUnitSystem units = open->units;
  g_autoptr (SwJob) job = NULL;
  const SwFace *face;

  g_object_set (preferences, "units", "us", "paper", "Tabloid", "language", "es", NULL);
  job = sw_first_job (preferences, (const char *const *) f->window.stock->languages);
  g_assert_cmpint (job->units, ==, SW_UNITS_US);
  g_assert_cmpint (job->paper, ==, SW_PAPER_TABLOID);
  g_assert_cmpstr (job->language, ==, "es");
  /* 16 ft high and 64 ft wide: an inch is 25.4 mm. */
  face = g_ptr_array_index (job->faces, 0);
  g_assert_cmpfloat_with_epsilon (face->section[0].y_m, 192.0 * 0.0254, 1e-12);
  g_assert_cmpfloat_with_epsilon (face->outline[1].x_m, 768.0 * 0.0254, 1e-12);
  g_assert_true (sw_document_committed (f->window.document) == open);
  g_assert_cmpint (open->units, ==, units);
  g_assert_false (sw_document_modified (f->window.document));
  g_object_set (preferences, "language", "xx", NULL);
  g_clear_pointer (&job, sw_job_unref);
  job = sw_first_job (preferences, (const char *const *) f->window.stock->languages);
  g_assert_cmpstr (job->language, !=, "xx");
  g_object_set (preferences, "units", "", "paper", "", "language", "", NULL);
}

static GtkWidget *
nth_of_type (GtkWidget *widget, GType type, int *n)
{
  if (G_TYPE_CHECK_INSTANCE_TYPE (widget, type) && (*n)-- == 0)
    return widget;
  for (GtkWidget *w = gtk_widget_get_first_child (widget); w != NULL;
       w = gtk_widget_get_next_sibling (w))
    {
      GtkWidget *found = nth_of_type (w, type, n);
      if (found != NULL)
        return found;
    }
  return NULL;
}

/* Choosing is all there is to do: no button to apply it. */
static void
test_preferences_window (Fixture *f, gconstpointer data)
{
  SwPreferences *preferences = f->window.preferences;
  GtkWidget *window = sw_preferences_window_new (GTK_WINDOW (f->window.window),
                                                 preferences, f->window.stock);
  int first = 0, last = 4;
  GtkWidget *units = nth_of_type (window, GTK_TYPE_DROP_DOWN, &first);
  GtkWidget *delay = nth_of_type (window, GTK_TYPE_DROP_DOWN, &last);

  gtk_drop_down_set_selected (GTK_DROP_DOWN (units), 2);
  g_assert_cmpstr (sw_preferences_units (preferences), ==, "us");
  gtk_drop_down_set_selected (GTK_DROP_DOWN (delay), 3);
  g_assert_cmpuint (sw_preferences_draft_delay_s (preferences), ==, 60);
  g_object_set (preferences, "units", "", "draft-delay", 5, NULL);
  g_assert_cmpuint (gtk_drop_down_get_selected (GTK_DROP_DOWN (units)), ==, 0);
  g_assert_cmpuint (gtk_drop_down_get_selected (GTK_DROP_DOWN (delay)), ==, 1);
  g_object_set (preferences, "draft-delay", 1, NULL);
  gtk_window_destroy (GTK_WINDOW (window));
}

static gboolean
is_recent (const char *path)
{
  g_autofree char *uri = g_filename_to_uri (path, NULL, NULL);

  return gtk_recent_manager_has_item (gtk_recent_manager_get_default (), uri);
}

/* The list asks a thread for the kind of a file before it takes the file in. */
static void
wait_until_recent (const char *path)
{
  for (int ms = 0; ms < 10000 && !is_recent (path); ms++)
    if (!g_main_context_iteration (NULL, FALSE))
      g_usleep (1000);
  g_assert_true (is_recent (path));
}

/* By when another file is in the list, one asked for before it would be. */
static void
wait_for_another (void)
{
  static const char *another = EXAMPLES_DIR "/pinfold-cutting.slope.json";
  g_autofree char *uri = g_filename_to_uri (another, NULL, NULL);

  gtk_recent_manager_add_item (gtk_recent_manager_get_default (), uri);
  wait_until_recent (another);
}

static void
test_recent (Fixture *f, gconstpointer data)
{
  wait_until_recent (f->path);
  sw_start_forget_recent ();
  g_assert_false (is_recent (f->path));
  g_object_set (f->window.preferences, "remember-recent", FALSE, NULL);
  rename_job (f, "Not listed");
  act (f, "win.save");
  wait_for_another ();
  g_assert_false (is_recent (f->path));
  g_object_set (f->window.preferences, "remember-recent", TRUE, NULL);
  rename_job (f, "Listed");
  act (f, "win.save");
  wait_until_recent (f->path);
  sw_start_forget_recent ();
}

int
main (int argc, char *argv[])
{
  gtk_test_init (&argc, &argv, NULL);
#define ADD(name, function)                                                              \
  g_test_add ("/app/files/" name, Fixture, NULL, set_up, function, tear_down)
  ADD ("bar", test_bar);
  ADD ("save-asks-first", test_save_asks_first);
  ADD ("keep-mine", test_keep_mine);
  ADD ("failure-is-told", test_failure_is_told);
  ADD ("preferences-seed", test_preferences_seed);
  ADD ("preferences-window", test_preferences_window);
  ADD ("recent", test_recent);
#undef ADD
  return g_test_run ();
}
