/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include <glib/gstdio.h>
#include <slopewright/document/document.h>
#include <slopewright/store/store.h>

typedef struct
{
  SwCatalogue *catalogue;
  SwDocument *document;
  int changes;
} Fixture;

static void
count_change (SwDocument *document, gpointer data)
{
  ((Fixture *) data)->changes++;
}

static void
set_up (Fixture *f, gconstpointer data)
{
  f->catalogue = sw_catalogue_load ();
  f->document = sw_document_new (f->catalogue, NULL);
  g_signal_connect (f->document, "changed", G_CALLBACK (count_change), f);
}

static void
tear_down (Fixture *f, gconstpointer data)
{
  g_assert_finalize_object (f->document);
  sw_catalogue_free (f->catalogue);
}

static SwJob *
with_toe_at (Fixture *f, double out_m)
{
  SwJob *job = sw_job_copy (sw_document_job (f->document));
  SwFace *face = g_ptr_array_index (job->faces, 0);

  face->section[face->toe].x_m = out_m;
  return job;
}

static void
commit_toe (Fixture *f, double out_m, const char *label, const char *key)
{
  g_autoptr (SwJob) job = with_toe_at (f, out_m);

  sw_document_commit (f->document, job, label, key);
}

static double
toe_out_m (Fixture *f)
{
  const SwFace *face = g_ptr_array_index (sw_document_job (f->document)->faces, 0);

  return face->section[face->toe].x_m;
}

static void
test_fresh (Fixture *f, gconstpointer data)
{
  g_assert_false (sw_document_modified (f->document));
  g_assert_false (sw_document_can_undo (f->document));
  g_assert_null (sw_document_file (f->document));
  g_assert_cmpint (sw_document_result (f->document)->status, ==, SW_OK);
}

static void
test_one_gesture_one_step (Fixture *f, gconstpointer data)
{
  double first_m = toe_out_m (f);

  for (int i = 1; i <= 20; i++) /* a drag */
    {
      g_autoptr (SwJob) job = with_toe_at (f, first_m + 0.1 * i);
      sw_document_preview (f->document, job);
    }
  g_assert_cmpint (f->changes, ==, 20);
  g_assert_false (sw_document_modified (f->document));
  commit_toe (f, first_m + 2.0, "Move toe", NULL);
  g_assert_true (sw_document_modified (f->document));
  g_assert_cmpstr (sw_document_undo_label (f->document), ==, "Move toe");
  sw_document_undo (f->document);
  g_assert_cmpfloat (toe_out_m (f), ==, first_m);
  g_assert_false (sw_document_can_undo (f->document));
  g_assert_false (sw_document_modified (f->document));
  sw_document_redo (f->document);
  g_assert_cmpfloat (toe_out_m (f), ==, first_m + 2.0);
}

static void
test_cancelled_drag (Fixture *f, gconstpointer data)
{
  double first_m = toe_out_m (f);
  g_autoptr (SwJob) job = with_toe_at (f, first_m + 3.0);

  sw_document_preview (f->document, job);
  g_assert_cmpfloat (toe_out_m (f), ==, first_m + 3.0);
  sw_document_preview (f->document, NULL);
  g_assert_cmpfloat (toe_out_m (f), ==, first_m);
  g_assert_false (sw_document_can_undo (f->document));
}

/* Nothing to undo, but a drag to end: what is shown is the committed job again. */
static void
test_undo_ends_a_drag (Fixture *f, gconstpointer data)
{
  double first_m = toe_out_m (f);
  g_autoptr (SwJob) job = with_toe_at (f, first_m + 3.0);

  sw_document_preview (f->document, job);
  sw_document_undo (f->document);
  g_assert_cmpfloat (toe_out_m (f), ==, first_m);
  g_assert_true (sw_document_result (f->document)->job
                 == sw_document_committed (f->document));
}

static void
test_no_empty_step (Fixture *f, gconstpointer data)
{
  commit_toe (f, toe_out_m (f), "Nothing", NULL);
  g_assert_false (sw_document_can_undo (f->document));
  g_assert_cmpint (f->changes, ==, 0);
}

static void
test_merge_by_key (Fixture *f, gconstpointer data)
{
  double first_m = toe_out_m (f);

  commit_toe (f, first_m + 1.0, "Move toe", "toe");
  commit_toe (f, first_m + 2.0, "Move toe", "toe");
  commit_toe (f, first_m + 3.0, "Move toe", "toe");
  sw_document_close_step (f->document);
  commit_toe (f, first_m + 4.0, "Move toe", "toe");
  sw_document_undo (f->document);
  g_assert_cmpfloat (toe_out_m (f), ==, first_m + 3.0);
  sw_document_undo (f->document);
  g_assert_cmpfloat (toe_out_m (f), ==, first_m);
  g_assert_false (sw_document_can_undo (f->document));
}

/* Nudged there and back: nothing happened. */
static void
test_merge_to_nothing (Fixture *f, gconstpointer data)
{
  double first_m = toe_out_m (f);

  commit_toe (f, first_m + 1.0, "Move toe", "toe");
  commit_toe (f, first_m, "Move toe", "toe");
  g_assert_false (sw_document_can_undo (f->document));
  g_assert_false (sw_document_modified (f->document));
}

static void
test_new_step_drops_redo (Fixture *f, gconstpointer data)
{
  double first_m = toe_out_m (f);

  commit_toe (f, first_m + 1.0, "One", NULL);
  sw_document_undo (f->document);
  commit_toe (f, first_m + 5.0, "Other", NULL);
  g_assert_false (sw_document_can_redo (f->document));
  g_assert_cmpfloat (toe_out_m (f), ==, first_m + 5.0);
}

static void
test_bad_job_is_kept (Fixture *f, gconstpointer data)
{
  g_autoptr (SwJob) job = sw_job_copy (sw_document_job (f->document));
  const SwPoint bow_tie[] = { { 0, 0 }, { 10, 10 }, { 10, 0 }, { 0, 10 } };

  sw_face_set_outline (g_ptr_array_index (job->faces, 0), bow_tie, 4);
  sw_document_commit (f->document, job, "Cross", NULL);
  g_assert_cmpint (sw_document_result (f->document)->status, ==, SW_E_OUTLINE);
  sw_document_undo (f->document);
  g_assert_cmpint (sw_document_result (f->document)->status, ==, SW_OK);
}

static void
test_save_and_load (Fixture *f, gconstpointer data)
{
  g_autoptr (GError) error = NULL;
  g_autofree char *folder = g_dir_make_tmp ("slopewright-document-XXXXXX", NULL);
  g_autofree char *path = g_build_filename (folder, "kept.slope.json", NULL);
  g_autofree char *broken = g_build_filename (folder, "broken.slope.json", NULL);
  g_autoptr (GFile) file = g_file_new_for_path (path);
  g_autoptr (GFile) broken_file = g_file_new_for_path (broken);
  g_autoptr (SwDocument) other = sw_document_new (f->catalogue, NULL);

  commit_toe (f, 17.25, "Move toe", NULL);
  g_assert_true (sw_document_save (f->document, file, &error));
  g_assert_no_error (error);
  g_assert_false (sw_document_modified (f->document));
  g_assert_true (sw_document_can_undo (f->document));
  sw_document_undo (f->document);
  g_assert_true (sw_document_modified (f->document));

  g_assert_true (sw_document_load (other, file, &error));
  g_assert_no_error (error);
  g_assert_false (sw_document_modified (other));

  /* A file that does not read leaves everything as it was. */
  g_assert_true (g_file_set_contents (broken, "{", -1, NULL));
  g_assert_false (sw_document_load (other, broken_file, &error));
  g_assert_error (error, SW_STORE_ERROR, SW_STORE_ERROR_SYNTAX);
  g_assert_true (g_file_equal (sw_document_file (other), file));
  g_assert_false (sw_document_modified (other));
  g_unlink (path);
  g_unlink (broken);
  g_rmdir (folder);
}

/* Two documents at once do not disturb each other. */
static void
test_two_documents (Fixture *f, gconstpointer data)
{
  g_autoptr (SwDocument) other = sw_document_new (f->catalogue, NULL);

  commit_toe (f, 19.0, "Move toe", NULL);
  g_assert_false (sw_document_can_undo (other));
  g_assert_cmpint (f->changes, ==, 1);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
#define ADD(path, function)                                                              \
  g_test_add ("/document/" path, Fixture, NULL, set_up, function, tear_down)
  ADD ("fresh", test_fresh);
  ADD ("one-gesture-one-step", test_one_gesture_one_step);
  ADD ("cancelled-drag", test_cancelled_drag);
  ADD ("undo-ends-a-drag", test_undo_ends_a_drag);
  ADD ("no-empty-step", test_no_empty_step);
  ADD ("merge-by-key", test_merge_by_key);
  ADD ("merge-to-nothing", test_merge_to_nothing);
  ADD ("new-step-drops-redo", test_new_step_drops_redo);
  ADD ("bad-job-is-kept", test_bad_job_is_kept);
  ADD ("save-and-load", test_save_and_load);
  ADD ("two-documents", test_two_documents);
#undef ADD
  return g_test_run ();
}
