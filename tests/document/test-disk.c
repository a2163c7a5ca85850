/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include <glib/gstdio.h>
#include <signal.h>
#include <slopewright/document/document.h>
#include <slopewright/store/store.h>
#include <sys/resource.h>

/* Longer than any watching takes, shorter than anybody's patience. */
#define PATIENCE_S 10

typedef struct
{
  SwCatalogue *catalogue;
  SwDocument *document;
  char *folder, *path;
  GFile *file;
} Fixture;

static void
name_job (SwDocument *document, const char *name)
{
  g_autoptr (SwJob) job = sw_job_copy (sw_document_committed (document));

  sw_text_set (&job->card.name, name);
  sw_document_commit (document, job, "Name", NULL);
}

static const char *
name_of (SwDocument *document)
{
  return sw_document_committed (document)->card.name;
}

static void
set_up (Fixture *f, gconstpointer data)
{
  f->folder = g_dir_make_tmp ("slopewright-disk-XXXXXX", NULL);
  f->path = g_build_filename (f->folder, "bank.slope.json", NULL);
  f->file = g_file_new_for_path (f->path);
  f->catalogue = sw_catalogue_load ();
  f->document = sw_document_new (f->catalogue, NULL);
  name_job (f->document, "Mine");
  g_assert_true (sw_document_save (f->document, f->file, NULL));
}

static void
tear_down (Fixture *f, gconstpointer data)
{
  g_assert_finalize_object (f->document);
  sw_catalogue_free (f->catalogue);
  g_unlink (f->path);
  g_assert_cmpint (g_rmdir (f->folder), ==, 0);
  g_object_unref (f->file);
  g_free (f->path);
  g_free (f->folder);
}

/* Another program, which knows nothing of this one. */
static void
write_theirs (Fixture *f)
{
  g_autoptr (SwDocument) other = sw_document_new (f->catalogue, NULL);

  name_job (other, "Theirs");
  g_assert_true (sw_document_save (other, f->file, NULL));
}

static char *
contents (Fixture *f)
{
  char *text = NULL;

  g_assert_true (g_file_get_contents (f->path, &text, NULL, NULL));
  return text;
}

static gboolean
give_up (gpointer data)
{
  *(gboolean *) data = TRUE;
  return G_SOURCE_REMOVE;
}

static void
wait_for (Fixture *f, SwOnDisk state)
{
  gboolean too_late = FALSE;
  guint timer = g_timeout_add_seconds (PATIENCE_S, give_up, &too_late);

  while (sw_document_on_disk (f->document) != state && !too_late)
    g_main_context_iteration (NULL, TRUE);
  g_assert_false (too_late);
  g_source_remove (timer);
}

/* Without being asked, whoever wrote: and it makes the job here an unsaved one. */
static void
test_noticed (Fixture *f, gconstpointer data)
{
  write_theirs (f);
  g_assert_false (sw_document_modified (f->document));
  wait_for (f, SW_ON_DISK_CHANGED);
  g_assert_true (sw_document_modified (f->document));
  g_assert_cmpstr (name_of (f->document), ==, "Mine");
}

static void
test_vanishing_noticed (Fixture *f, gconstpointer data)
{
  g_unlink (f->path);
  wait_for (f, SW_ON_DISK_GONE);
  g_assert_true (sw_document_modified (f->document));
  g_assert_true (sw_document_save (f->document, f->file, NULL));
  g_assert_cmpint (sw_document_on_disk (f->document), ==, SW_ON_DISK_SAME);
  g_assert_false (sw_document_modified (f->document));
}

/* Written again with the same bytes, moved away and back: nothing has changed. */
static void
test_same_bytes (Fixture *f, gconstpointer data)
{
  g_autofree char *text = contents (f);

  g_unlink (f->path);
  sw_document_look_at_disk (f->document);
  g_assert_cmpint (sw_document_on_disk (f->document), ==, SW_ON_DISK_GONE);
  g_assert_true (g_file_set_contents (f->path, text, -1, NULL));
  sw_document_look_at_disk (f->document);
  g_assert_cmpint (sw_document_on_disk (f->document), ==, SW_ON_DISK_SAME);
  g_assert_false (sw_document_modified (f->document));
}

static void
test_own_saving_is_no_change (Fixture *f, gconstpointer data)
{
  for (int i = 0; i < 3; i++)
    {
      name_job (f->document, i % 2 ? "One" : "Other");
      g_assert_true (sw_document_save (f->document, f->file, NULL));
      sw_document_look_at_disk (f->document);
      g_assert_cmpint (sw_document_on_disk (f->document), ==, SW_ON_DISK_SAME);
    }
}

/* What was not saved comes back with one undo, and is unsaved then. */
static void
test_reload_is_undone (Fixture *f, gconstpointer data)
{
  name_job (f->document, "Mine, not saved");
  write_theirs (f);
  sw_document_look_at_disk (f->document);
  g_assert_true (sw_document_reload (f->document, "Reload", NULL));
  g_assert_cmpstr (name_of (f->document), ==, "Theirs");
  g_assert_false (sw_document_modified (f->document));
  sw_document_undo (f->document);
  g_assert_cmpstr (name_of (f->document), ==, "Mine, not saved");
  g_assert_true (sw_document_modified (f->document));
  sw_document_redo (f->document);
  g_assert_false (sw_document_modified (f->document));
}

/* What does not read is not taken. */
static void
test_broken_is_not_reloaded (Fixture *f, gconstpointer data)
{
  g_autoptr (GError) error = NULL;

  g_assert_true (g_file_set_contents (f->path, "{", -1, NULL));
  sw_document_look_at_disk (f->document);
  g_assert_false (sw_document_reload (f->document, "Reload", &error));
  g_assert_error (error, SW_STORE_ERROR, SW_STORE_ERROR_SYNTAX);
  g_assert_cmpstr (name_of (f->document), ==, "Mine");
  g_assert_cmpint (sw_document_on_disk (f->document), ==, SW_ON_DISK_CHANGED);
}

/* Kept, the job is an unsaved change of the other's file, until that changes again. */
static void
test_keep_own (Fixture *f, gconstpointer data)
{
  write_theirs (f);
  sw_document_look_at_disk (f->document);
  sw_document_keep_own (f->document);
  g_assert_cmpint (sw_document_on_disk (f->document), ==, SW_ON_DISK_SAME);
  g_assert_true (sw_document_modified (f->document));
  g_assert_cmpstr (name_of (f->document), ==, "Mine");
  g_assert_true (g_file_set_contents (f->path, "{", -1, NULL));
  sw_document_look_at_disk (f->document);
  g_assert_cmpint (sw_document_on_disk (f->document), ==, SW_ON_DISK_CHANGED);
}

/* A later format: read as far as it is known, the rest kept, and said so. */
static void
test_newer (Fixture *f, gconstpointer data)
{
  g_autofree char *text = contents (f);
  g_autofree char *again = NULL;
  g_auto (GStrv) parts = g_strsplit (text, "\"slopewright\": 1,", 2);
  g_autofree char *newer =
      g_strjoinv ("\"slopewright\": 2, \"drones\": [\"two\"],", parts);

  g_assert_true (g_file_set_contents (f->path, newer, -1, NULL));
  g_assert_true (sw_document_load (f->document, f->file, NULL));
  g_assert_true (sw_document_newer (f->document));
  g_assert_false (sw_document_modified (f->document));
  g_assert_cmpstr (name_of (f->document), ==, "Mine");
  again = sw_job_write (sw_document_committed (f->document));
  g_assert_nonnull (strstr (again, "\"drones\""));
  g_assert_true (sw_document_save (f->document, f->file, NULL));
  g_assert_false (sw_document_newer (f->document));
}

/* A later format in which a known key means something else: only that it is later. */
static void
test_newer_unreadable (Fixture *f, gconstpointer data)
{
  g_autoptr (GError) error = NULL;

  g_assert_true (
      g_file_set_contents (f->path, "{ \"slopewright\": 2, \"faces\": 7 }", -1, NULL));
  g_assert_false (sw_document_load (f->document, f->file, &error));
  g_assert_error (error, SW_STORE_ERROR, SW_STORE_ERROR_VERSION);
  g_assert_cmpstr (name_of (f->document), ==, "Mine");
}

/* A disk that is full after 100 bytes: setrlimit(2), which then fails with EFBIG. */
static void
test_full_disk (Fixture *f, gconstpointer data)
{
  g_autofree char *before = contents (f);
  g_autofree char *after = NULL;
  g_autoptr (GError) error = NULL;
  struct rlimit all, little;

  name_job (f->document, "Much more");
  getrlimit (RLIMIT_FSIZE, &all);
  little = (struct rlimit){ 100, all.rlim_max };
  signal (SIGXFSZ, SIG_IGN);
  setrlimit (RLIMIT_FSIZE, &little);
  gboolean saved = sw_document_save (f->document, f->file, &error);
  setrlimit (RLIMIT_FSIZE, &all);
  signal (SIGXFSZ, SIG_DFL);
  g_assert_false (saved);
  g_assert_error (error, SW_STORE_ERROR, SW_STORE_ERROR_WRITE);
  g_assert_nonnull (strstr (error->message, f->path));
  after = contents (f);
  g_assert_cmpstr (after, ==, before);
  g_assert_true (sw_document_modified (f->document));
  g_assert_cmpstr (name_of (f->document), ==, "Much more");
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
#define ADD(name, function)                                                              \
  g_test_add ("/document/disk/" name, Fixture, NULL, set_up, function, tear_down)
  ADD ("noticed", test_noticed);
  ADD ("vanishing-noticed", test_vanishing_noticed);
  ADD ("same-bytes", test_same_bytes);
  ADD ("own-saving-is-no-change", test_own_saving_is_no_change);
  ADD ("reload-is-undone", test_reload_is_undone);
  ADD ("broken-is-not-reloaded", test_broken_is_not_reloaded);
  ADD ("keep-own", test_keep_own);
  ADD ("newer", test_newer);
  ADD ("newer-unreadable", test_newer_unreadable);
  ADD ("full-disk", test_full_disk);
#undef ADD
  return g_test_run ();
}
