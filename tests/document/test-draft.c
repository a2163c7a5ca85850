/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include <glib/gstdio.h>
#include <signal.h>
#include <slopewright/document/draft.h>
#include <slopewright/store/store.h>
#include <sys/wait.h>
#include <unistd.h>

typedef struct
{
  SwCatalogue *catalogue;
  SwDocument *document;
  SwDraft *draft;
  char *folder;
} Fixture;

static void
set_up (Fixture *f, gconstpointer data)
{
  f->folder = g_dir_make_tmp ("slopewright-draft-XXXXXX", NULL);
  f->catalogue = sw_catalogue_load ();
  f->document = sw_document_new (f->catalogue, NULL);
  f->draft = sw_draft_new (f->document, f->folder);
}

static guint
files_in (const char *folder)
{
  g_autoptr (GDir) dir = g_dir_open (folder, 0, NULL);
  guint count = 0;

  while (dir != NULL && g_dir_read_name (dir) != NULL)
    count++;
  return count;
}

static void
tear_down (Fixture *f, gconstpointer data)
{
  if (f->draft != NULL)
    g_assert_finalize_object (f->draft);
  g_assert_finalize_object (f->document);
  sw_catalogue_free (f->catalogue);
  g_assert_cmpuint (files_in (f->folder), ==, 0);
  g_rmdir (f->folder);
  g_free (f->folder);
}

static void
name_job (SwDocument *document, const char *name)
{
  g_autoptr (SwJob) job = sw_job_copy (sw_document_committed (document));

  sw_text_set (&job->card.name, name);
  sw_document_commit (document, job, "Name", NULL);
}

/* A running program's own draft is nobody else's to recover. */
static void
test_kept_and_owned (Fixture *f, gconstpointer data)
{
  g_autoptr (GPtrArray) lost = NULL;

  g_assert_cmpuint (files_in (f->folder), ==, 0);
  name_job (f->document, "North bank");
  sw_draft_flush (f->draft);
  g_assert_cmpuint (files_in (f->folder), ==, 2);
  lost = sw_draft_lost (f->folder);
  g_assert_cmpuint (lost->len, ==, 0);
}

static void
test_written_by_itself (Fixture *f, gconstpointer data)
{
  gint64 end = g_get_monotonic_time () + 10 * G_USEC_PER_SEC;

  name_job (f->document, "North bank");
  while (files_in (f->folder) < 2 && g_get_monotonic_time () < end)
    g_main_context_iteration (NULL, TRUE);
  g_assert_cmpuint (files_in (f->folder), ==, 2);
}

static void
test_saving_ends_it (Fixture *f, gconstpointer data)
{
  g_autofree char *other = g_dir_make_tmp ("slopewright-save-XXXXXX", NULL);
  g_autofree char *path = g_build_filename (other, "bank.slope.json", NULL);
  g_autoptr (GFile) file = g_file_new_for_path (path);

  name_job (f->document, "North bank");
  sw_draft_flush (f->draft);
  g_assert_true (sw_document_save (f->document, file, NULL));
  g_assert_cmpuint (files_in (f->folder), ==, 0);
  g_unlink (path);
  g_rmdir (other);
}

static void
test_undoing_all_ends_it (Fixture *f, gconstpointer data)
{
  name_job (f->document, "North bank");
  sw_draft_flush (f->draft);
  sw_document_undo (f->document);
  g_assert_cmpuint (files_in (f->folder), ==, 0);
}

/* What a killed process leaves: a child keeps a draft and dies without a word. */
static void
leave_behind (Fixture *f, const char *origin_path)
{
  pid_t child = fork ();
  int how;

  if (child == 0)
    {
      SwDocument *document = sw_document_new (f->catalogue, NULL);
      SwDraft *draft = sw_draft_new (document, f->folder);

      if (origin_path != NULL)
        {
          g_autoptr (GFile) file = g_file_new_for_path (origin_path);
          name_job (document, "Saved");
          sw_document_save (document, file, NULL);
        }
      name_job (document, "South bank");
      sw_draft_flush (draft);
      kill (getpid (), SIGKILL);
    }
  g_assert_cmpint (waitpid (child, &how, 0), ==, child);
  g_assert_true (WIFSIGNALED (how));
}

static void
test_recovered_after_a_kill (Fixture *f, gconstpointer data)
{
  g_autoptr (GPtrArray) lost = NULL;
  const SwLostDraft *draft;

  leave_behind (f, NULL);
  lost = sw_draft_lost (f->folder);
  g_assert_cmpuint (lost->len, ==, 1);
  draft = g_ptr_array_index (lost, 0);
  g_assert_cmpstr (draft->name, ==, "South bank");
  g_assert_null (draft->origin);
  g_assert_true (sw_draft_recover (draft, f->document, "Recover", NULL));
  g_assert_cmpstr (sw_document_committed (f->document)->card.name, ==, "South bank");
  g_assert_true (sw_document_modified (f->document));
  sw_draft_flush (f->draft);
  sw_draft_discard (draft);
  g_assert_cmpuint (files_in (f->folder), ==, 2);
}

/* Undoing the recovery goes back to what was saved. */
static void
test_recovered_onto_its_file (Fixture *f, gconstpointer data)
{
  g_autofree char *other = g_dir_make_tmp ("slopewright-save-XXXXXX", NULL);
  g_autofree char *path = g_build_filename (other, "bank.slope.json", NULL);
  g_autoptr (GFile) file = g_file_new_for_path (path);
  g_autoptr (GPtrArray) lost = NULL;

  leave_behind (f, path);
  lost = sw_draft_lost (f->folder);
  g_assert_cmpuint (lost->len, ==, 1);
  g_assert_false (((const SwLostDraft *) g_ptr_array_index (lost, 0))->origin_changed);
  g_assert_true (
      sw_draft_recover (g_ptr_array_index (lost, 0), f->document, "Recover", NULL));
  sw_draft_discard (g_ptr_array_index (lost, 0));
  g_assert_true (g_file_equal (sw_document_file (f->document), file));
  g_assert_cmpstr (sw_document_committed (f->document)->card.name, ==, "South bank");
  sw_document_undo (f->document);
  g_assert_cmpstr (sw_document_committed (f->document)->card.name, ==, "Saved");
  g_assert_false (sw_document_modified (f->document));
  g_unlink (path);
  g_rmdir (other);
}

/* The file was changed after the draft was written: neither is lost, and saving must ask. */
static void
test_origin_changed (Fixture *f, gconstpointer data)
{
  g_autofree char *other = g_dir_make_tmp ("slopewright-save-XXXXXX", NULL);
  g_autofree char *path = g_build_filename (other, "bank.slope.json", NULL);
  g_autoptr (GFile) file = g_file_new_for_path (path);
  g_autoptr (SwDocument) theirs = sw_document_new (f->catalogue, NULL);
  g_autoptr (GPtrArray) lost = NULL;
  const SwLostDraft *draft;

  leave_behind (f, path);
  name_job (theirs, "Theirs");
  g_assert_true (sw_document_save (theirs, file, NULL));
  lost = sw_draft_lost (f->folder);
  draft = g_ptr_array_index (lost, 0);
  g_assert_true (draft->origin_changed);
  g_assert_true (sw_draft_recover (draft, f->document, "Recover", NULL));
  sw_draft_discard (draft);
  g_assert_cmpint (sw_document_on_disk (f->document), ==, SW_ON_DISK_CHANGED);
  g_assert_cmpstr (sw_document_committed (f->document)->card.name, ==, "South bank");
  sw_document_undo (f->document);
  g_assert_cmpstr (sw_document_committed (f->document)->card.name, ==, "Theirs");
  sw_document_redo (f->document);
  sw_document_keep_own (f->document);
  g_assert_cmpstr (sw_document_committed (f->document)->card.name, ==, "South bank");
  g_unlink (path);
  g_rmdir (other);
}

/* A draft that does not read stays where it is, and says so. */
static void
test_damaged_draft (Fixture *f, gconstpointer data)
{
  g_autoptr (GPtrArray) lost = NULL;
  g_autoptr (GError) error = NULL;

  leave_behind (f, NULL);
  lost = sw_draft_lost (f->folder);
  g_assert_true (g_file_set_contents (
      ((const SwLostDraft *) g_ptr_array_index (lost, 0))->path, "{", -1, NULL));
  g_assert_false (
      sw_draft_recover (g_ptr_array_index (lost, 0), f->document, "Recover", &error));
  g_assert_error (error, SW_STORE_ERROR, SW_STORE_ERROR_SYNTAX);
  g_assert_false (sw_document_modified (f->document));
  g_assert_cmpuint (files_in (f->folder), ==, 2);
  sw_draft_discard (g_ptr_array_index (lost, 0));
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
#define ADD(name, function)                                                              \
  g_test_add ("/document/draft/" name, Fixture, NULL, set_up, function, tear_down)
  ADD ("kept-and-owned", test_kept_and_owned);
  ADD ("written-by-itself", test_written_by_itself);
  ADD ("saving-ends-it", test_saving_ends_it);
  ADD ("undoing-all-ends-it", test_undoing_all_ends_it);
  ADD ("recovered-after-a-kill", test_recovered_after_a_kill);
  ADD ("recovered-onto-its-file", test_recovered_onto_its_file);
  ADD ("origin-changed", test_origin_changed);
  ADD ("damaged-draft", test_damaged_draft);
#undef ADD
  return g_test_run ();
}
