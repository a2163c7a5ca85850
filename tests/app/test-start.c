/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include <glib/gstdio.h>
#include <math.h>

#include "export.h"
#include "measured-face.h"
#include "point-edit.h"
#include "start-choices.h"
#include "sw-measure-dialog.h"
#include "sw-value-entry.h"
#include "window-fixture.h"

typedef WindowFixture Fixture;

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

static void
type (SwMeasureDialog *dialog, guint field, const char *text)
{
  SwValueEntry *entry = SW_VALUE_ENTRY (sw_measure_dialog_field (dialog, field));

  gtk_editable_set_text (GTK_EDITABLE (sw_value_entry_field (entry)), text);
  g_assert_true (sw_value_entry_commit (entry));
}

/* 13 m taped at 5 in 12 (a 5-12-13 triangle): run 12, rise 5; one step, undone in one. */
static void
test_taped (Fixture *f, gconstpointer data)
{
  SwMeasureDialog *dialog = SW_MEASURE_DIALOG (
      sw_measure_dialog_new (GTK_WINDOW (f->window), f->stage, SW_OBTAINED_TAPED_ANGLE));
  const SwFace *face;

  type (dialog, 0, "13 m");
  type (dialog, 4, "12H:5V");
  type (dialog, 5, "30");
  sw_measure_dialog_use (dialog);
  face = sw_stage_face (f->stage);
  g_assert_cmpfloat_with_epsilon (face->section[0].y_m, 5.0, 1e-9);
  g_assert_cmpfloat_with_epsilon (face->section[1].x_m, 12.0, 1e-9);
  g_assert_cmpint (face->obtained, ==, SW_OBTAINED_TAPED_ANGLE);
  g_assert_cmpfloat_with_epsilon (sw_stage_result (f->stage)->tally->areas.net_m2, 390.0,
                                  1e-6);
  sw_document_undo (f->document);
  g_assert_false (sw_document_can_undo (f->document));
}

static void
type_and_enter (SwMeasureDialog *dialog, guint field, const char *text)
{
  SwValueEntry *entry = SW_VALUE_ENTRY (sw_measure_dialog_field (dialog, field));

  g_assert_true (gtk_widget_is_ancestor (gtk_root_get_focus (GTK_ROOT (dialog)),
                                         GTK_WIDGET (entry)));
  gtk_editable_set_text (GTK_EDITABLE (sw_value_entry_field (entry)), text);
  g_signal_emit_by_name (sw_value_entry_field (entry), "activate");
}

/* Enter goes from question to question, stays where the text makes no sense, and takes
 * the shape from the last one. */
static void
test_enter_goes_on (Fixture *f, gconstpointer data)
{
  SwMeasureDialog *dialog = SW_MEASURE_DIALOG (
      sw_measure_dialog_new (GTK_WINDOW (f->window), f->stage, SW_OBTAINED_TAPED_ANGLE));

  type_and_enter (dialog, 0, "thirteen");
  type_and_enter (dialog, 0, "13 m");
  type_and_enter (dialog, 4, "12H:5V");
  g_assert_false (sw_document_can_undo (f->document));
  type_and_enter (dialog, 5, "30");
  g_assert_true (sw_document_can_undo (f->document));
  g_assert_cmpfloat_with_epsilon (sw_stage_face (f->stage)->section[1].x_m, 12.0, 1e-9);
}

/* The numbers a dialog begins with give the face back. */
static void
test_begins_with_the_face (void)
{
  g_autoptr (SwJob) job = sw_job_new_default ();
  const SwFace *face = g_ptr_array_index (job->faces, 0);
  SwFace *again = sw_face_copy (face);

  for (SwObtained how = SW_OBTAINED_TAPED_ANGLE; how <= SW_OBTAINED_TAPED_SHAPE; how++)
    {
      SwMeasured measured = sw_measured_from_face (face);

      measured.how = how;
      g_assert_cmpint (sw_measured_shape (&measured, again), ==, SW_OK);
      for (guint i = 0; i < face->n_section; i++)
        {
          g_assert_cmpfloat_with_epsilon (again->section[i].x_m, face->section[i].x_m,
                                          1e-9);
          g_assert_cmpfloat_with_epsilon (again->section[i].y_m, face->section[i].y_m,
                                          1e-9);
        }
    }
  sw_face_free (again);
}

/* One measured gradient takes the place of a bench: not without a word. */
static void
test_bench_is_not_lost_silently (Fixture *f, gconstpointer data)
{
  g_autoptr (SwJob) job = sw_points_add (sw_document_committed (f->document), 0,
                                         SW_POINTS_SECTION, 0, (SwPoint){ 4.0, 2.0 });
  SwMeasureDialog *dialog;

  sw_document_commit (f->document, job, "Add Point", NULL);
  dialog = SW_MEASURE_DIALOG (
      sw_measure_dialog_new (GTK_WINDOW (f->window), f->stage, SW_OBTAINED_TAPED_ANGLE));
  g_assert_true (sw_measure_dialog_warns (dialog));
  gtk_window_destroy (GTK_WINDOW (dialog));
}

/* Tapes that do not meet are told, and nothing changes. */
static void
test_tapes_do_not_meet (Fixture *f, gconstpointer data)
{
  SwMeasureDialog *dialog = SW_MEASURE_DIALOG (
      sw_measure_dialog_new (GTK_WINDOW (f->window), f->stage, SW_OBTAINED_TAPED_SHAPE));

  type (dialog, 6, "100");
  g_assert_nonnull (strstr (sw_measure_dialog_message (dialog), "do not meet"));
  g_assert_false (sw_measure_dialog_warns (dialog));
  sw_measure_dialog_use (dialog);
  g_assert_false (sw_document_can_undo (f->document));
  gtk_window_destroy (GTK_WINDOW (dialog));
}

/* Every example opens from the start page, as a job that is not saved yet. */
static void
test_examples (Fixture *f, gconstpointer data)
{
  g_autoptr (GPtrArray) examples = sw_start_examples ();
  g_autoptr (GDir) dir = g_dir_open (EXAMPLES_DIR, 0, NULL);
  const char *base;
  guint files = 0;

  while ((base = g_dir_read_name (dir)) != NULL)
    files += g_str_has_suffix (base, ".slope.json");
  g_assert_cmpuint (examples->len, ==, files);
  for (guint i = 0; i < examples->len; i++)
    {
      const SwStartChoice *choice = g_ptr_array_index (examples, i);
      g_autofree char *uri = g_file_get_uri (choice->file);

      gtk_widget_activate_action (GTK_WIDGET (f->window), "win.open-example", "s", uri);
      g_assert_cmpstr (sw_document_committed (f->document)->card.name, ==, choice->name);
      g_assert_null (sw_document_file (f->document));
      g_assert_false (sw_document_modified (f->document));
    }
}

/* Two jobs, by name; what is no job is left out, and a folder that is not there is none. */
static void
test_templates (void)
{
  static const char *const kept[] = { "kelpie-lane.slope.json",
                                      "cornice-ramp-nose.slope.json" };
  g_autofree char *folder = g_dir_make_tmp ("slopewright-templates-XXXXXX", NULL);
  g_autofree char *broken = g_build_filename (folder, "broken.slope.json", NULL);
  g_autoptr (GPtrArray) templates = NULL;
  g_autoptr (GPtrArray) none = sw_start_templates (NULL);

  g_assert_cmpuint (none->len, ==, 0);
  g_assert_true (g_file_set_contents (broken, "{", -1, NULL));
  for (guint i = 0; i < G_N_ELEMENTS (kept); i++)
    {
      g_autoptr (GFile) from = g_file_new_build_filename (EXAMPLES_DIR, kept[i], NULL);
      g_autoptr (GFile) to = g_file_new_build_filename (folder, kept[i], NULL);

      g_assert_true (g_file_copy (from, to, G_FILE_COPY_NONE, NULL, NULL, NULL, NULL));
    }
  templates = sw_start_templates (folder);
  g_assert_cmpuint (templates->len, ==, 2);
  g_assert_cmpstr (((SwStartChoice *) templates->pdata[0])->name, ==,
                   "Cornice Ramp Nose");
  g_assert_cmpstr (((SwStartChoice *) templates->pdata[1])->name, ==,
                   "Kelpie Lane ditch backslope");
  for (guint i = 0; i < 2; i++)
    g_assert_true (
        g_file_delete (((SwStartChoice *) templates->pdata[i])->file, NULL, NULL));
  g_assert_cmpint (g_unlink (broken), ==, 0);
  g_assert_cmpint (g_rmdir (folder), ==, 0);
}

/* Numbers of a slope that nobody measured are not shown; a shape brings them. */
static void
test_start_has_no_numbers (Fixture *f, gconstpointer data)
{
  GtkWidget *tally = GTK_WIDGET (sw_window_tally (f->window));

  gtk_window_present (GTK_WINDOW (f->window));
  sw_window_show_start (f->window);
  g_assert_false (gtk_widget_is_visible (tally));
  gtk_widget_activate_action (GTK_WIDGET (f->window), "win.show-view", "s", "drawing");
  g_assert_true (gtk_widget_is_visible (tally));
}

static void
check_blank_form (Fixture *f)
{
  g_autofree char *folder = g_dir_make_tmp ("slopewright-form-XXXXXX", NULL);
  g_autofree char *path = g_build_filename (folder, "form.pdf", NULL);
  g_autoptr (GFile) file = g_file_new_for_path (path);
  g_autoptr (GError) error = NULL;
  g_autofree char *bytes = NULL;
  gsize length = 0;

  g_assert_true (sw_export_form (f->stage, file, &error));
  g_assert_no_error (error);
  g_assert_true (g_file_get_contents (path, &bytes, &length, NULL));
  g_assert_cmpuint (length, >, 1000);
  g_assert_true (g_str_has_prefix (bytes, "%PDF-"));
  g_assert_cmpint (g_unlink (path), ==, 0);
  g_assert_cmpint (g_rmdir (folder), ==, 0);
}

/* A form for a slope that nobody measured needs no more than a new job, nor one that can
 * be laid out. */
static void
test_blank_form (Fixture *f, gconstpointer data)
{
  g_autoptr (SwJob) job = NULL;

  check_blank_form (f);
  job = sw_points_move (sw_document_committed (f->document), 0, SW_POINTS_OUTLINE, 1,
                        (SwPoint){ 10.0, 15.0 });
  sw_document_commit (f->document, job, "Cross", NULL);
  g_assert_cmpint (sw_stage_result (f->stage)->status, ==, SW_E_OUTLINE);
  check_blank_form (f);
}

int
main (int argc, char *argv[])
{
  gtk_test_init (&argc, &argv, NULL);
#define ADD(name, function)                                                              \
  g_test_add ("/app/start/" name, Fixture, NULL, set_up, function, tear_down)
  g_test_add_func ("/app/start/begins-with-the-face", test_begins_with_the_face);
  ADD ("taped", test_taped);
  ADD ("enter-goes-on", test_enter_goes_on);
  ADD ("tapes-do-not-meet", test_tapes_do_not_meet);
  ADD ("bench-is-not-lost-silently", test_bench_is_not_lost_silently);
  ADD ("examples", test_examples);
  g_test_add_func ("/app/start/templates", test_templates);
  ADD ("blank-form", test_blank_form);
  ADD ("start-has-no-numbers", test_start_has_no_numbers);
#undef ADD
  return g_test_run ();
}
