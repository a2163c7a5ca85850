/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include <glib/gstdio.h>

#include "sw-making-bar.h"
#include "sw-preview.h"
#include "sw-value-entry.h"
#include "sw-window-private.h"
#include "window-fixture.h"

#define EXAMPLE EXAMPLES_DIR "/sallow-bank.slope.json"
#define OLD "what stood there before"

typedef struct
{
  WindowFixture window;
  SwWindow *w;
  char *folder, *path;
  GFile *file;
} Fixture;

static void
load (SwWindow *window)
{
  g_autoptr (GFile) file = g_file_new_for_path (EXAMPLE);

  g_assert_true (sw_window_load (window, file));
}

static void
set_up (Fixture *f, gconstpointer data)
{
  window_fixture_set_up (&f->window);
  f->w = f->window.window;
  f->folder = g_dir_make_tmp ("slopewright-making-XXXXXX", NULL);
  f->path = g_build_filename (f->folder, "pack.pdf", NULL);
  f->file = g_file_new_for_path (f->path);
  load (f->w);
}

static void
tear_down (Fixture *f, gconstpointer data)
{
  window_fixture_tear_down (&f->window);
  g_unlink (f->path);
  g_assert_cmpint (g_rmdir (f->folder), ==, 0);
  g_object_unref (f->file);
  g_free (f->path);
  g_free (f->folder);
}

static void
wait_for_window (SwWindow *window)
{
  while (window->making != NULL)
    g_main_context_iteration (NULL, TRUE);
}

static void
set_paper (Fixture *f, SwPaper paper)
{
  g_autoptr (SwJob) job = sw_job_copy (sw_document_committed (f->window.document));

  job->paper = paper;
  sw_document_commit (f->window.document, job, "Paper", NULL);
}

static void
assert_file_is (const char *path, const char *bytes, gsize length)
{
  g_autofree char *found = NULL;
  gsize found_length;

  g_assert_true (g_file_get_contents (path, &found, &found_length, NULL));
  g_assert_cmpmem (found, found_length, bytes, length);
}

/* What the command line writes of the same file. */
static char *
pack_of_the_command_line (Fixture *f, gsize *length)
{
  g_autofree char *path = g_build_filename (f->folder, "slopepack.pdf", NULL);
  const char *command[] = { SLOPEPACK, "pack", EXAMPLE, "-o", path, NULL };
  char *bytes = NULL;
  int status;

  g_assert_true (g_spawn_sync (NULL, (char **) command, NULL, G_SPAWN_DEFAULT, NULL, NULL,
                               NULL, NULL, &status, NULL));
  g_assert_true (g_file_get_contents (path, &bytes, length, NULL));
  g_unlink (path);
  return bytes;
}

static void
test_writes_the_pack (Fixture *f, gconstpointer data)
{
  gsize length;
  g_autofree char *expected = pack_of_the_command_line (f, &length);

  sw_window_export_pack (f->w, f->file);
  g_assert_nonnull (f->w->making);
  wait_for_window (f->w);
  assert_file_is (f->path, expected, length);
  g_assert_nonnull (strstr (sw_stage_message (f->window.stage), f->path));
  g_assert_null (strstr (sw_stage_message (f->window.stage), "changed"));
}

/* The job may go on meanwhile: the file is of what was asked for, and that is said. */
static void
test_is_of_the_job_asked_for (Fixture *f, gconstpointer data)
{
  gsize length;
  g_autofree char *expected = pack_of_the_command_line (f, &length);

  sw_window_export_pack (f->w, f->file);
  set_paper (f, SW_PAPER_TABLOID);
  wait_for_window (f->w);
  assert_file_is (f->path, expected, length);
  g_assert_nonnull (strstr (sw_stage_message (f->window.stage), "changed"));
}

static SwValueEntry *
first_entry (GtkWidget *widget)
{
  SwValueEntry *found = SW_IS_VALUE_ENTRY (widget) ? SW_VALUE_ENTRY (widget) : NULL;

  for (GtkWidget *child = gtk_widget_get_first_child (widget);
       child != NULL && found == NULL; child = gtk_widget_get_next_sibling (child))
    found = first_entry (child);
  return found;
}

/* No paper of the value before, as if it were the one typed. */
static void
test_refused_field_stops_it (Fixture *f, gconstpointer data)
{
  SwValueEntry *entry = first_entry (GTK_WIDGET (f->w->inspector));
  GtkEditable *field = GTK_EDITABLE (sw_value_entry_field (entry));

  gtk_editable_set_text (field, "abc");
  g_assert_false (sw_value_entry_commit (entry));
  gtk_widget_activate_action (GTK_WIDGET (f->w), "win.print", NULL);
  g_assert_null (f->w->making);
  g_assert_nonnull (strstr (sw_stage_message (f->window.stage), "abc"));
  g_assert_nonnull (
      strstr (sw_stage_message (f->window.stage), sw_value_entry_label (entry)));
  sw_value_entry_restore (entry);
  gtk_widget_activate_action (GTK_WIDGET (f->w), "win.print", NULL);
  g_assert_nonnull (f->w->making);
  gtk_widget_activate_action (GTK_WIDGET (f->w->making_bar), "making.cancel", NULL);
  wait_for_window (f->w);
}

static void
test_cancel_keeps_the_old_file (Fixture *f, gconstpointer data)
{
  g_assert_true (g_file_set_contents (f->path, OLD, -1, NULL));
  sw_window_export_pack (f->w, f->file);
  gtk_widget_activate_action (GTK_WIDGET (f->w->making_bar), "making.cancel", NULL);
  wait_for_window (f->w);
  assert_file_is (f->path, OLD, strlen (OLD));
  g_assert_nonnull (strstr (sw_stage_message (f->window.stage), "Cancelled"));
}

static void
test_cancel_leaves_no_file (Fixture *f, gconstpointer data)
{
  sw_window_export_pack (f->w, f->file);
  sw_making_stop (f->w->making);
  wait_for_window (f->w);
  g_assert_false (g_file_test (f->path, G_FILE_TEST_EXISTS));
}

/* A second window, so that the fixture's own is there to end with. */
static void
test_closing_cancels (Fixture *f, gconstpointer data)
{
  SwWindow *other = sw_window_new (NULL, f->window.stock, f->window.preferences);
  SwStage *stage = g_object_ref (sw_window_stage (other));
  g_autoptr (SwMaking) making = NULL;

  load (other);
  sw_window_export_pack (other, f->file);
  making = g_object_ref (other->making);
  gtk_window_destroy (GTK_WINDOW (other));
  while (sw_making_state (making) == SW_MAKING_ON)
    g_main_context_iteration (NULL, TRUE);
  g_assert_cmpint (sw_making_state (making), ==, SW_MAKING_STOPPED);
  g_assert_false (g_file_test (f->path, G_FILE_TEST_EXISTS));
  g_clear_object (&making);
  g_assert_finalize_object (stage);
}

static void
test_failure_is_told (Fixture *f, gconstpointer data)
{
  g_autofree char *nowhere = g_build_filename (f->folder, "none", "pack.pdf", NULL);
  g_autoptr (GFile) file = g_file_new_for_path (nowhere);
  g_autoptr (SwMaking) making = NULL;

  sw_window_export_pack (f->w, file);
  making = g_object_ref (f->w->making);
  wait_for_window (f->w);
  g_assert_cmpint (sw_making_state (making), ==, SW_MAKING_FAILED);
  g_assert_nonnull (strstr (sw_making_error (making)->message, "folder"));
}

/* Only what takes long is shown; while it lasts, no second one is begun. */
/* On a screen of 960 px the drawing has some 560 px beside the form: a bar that comes and
 * goes must not push the form away. */
#define ROOM_OF_BAR_PX 400

static void
test_bar (Fixture *f, gconstpointer data)
{
  GtkWidget *bar = GTK_WIDGET (f->w->making_bar);
  int least_px;

  g_assert_false (gtk_widget_get_visible (bar));
  sw_window_export_pack (f->w, f->file);
  g_assert_false (gtk_widget_get_visible (bar));
  g_signal_emit_by_name (f->w->making, "progressed");
  g_assert_true (gtk_widget_get_visible (bar));
  g_assert_nonnull (strstr (sw_making_bar_words (f->w->making_bar), "part "));
  g_assert_cmpfloat (sw_making_share (f->w->making), <, 1.0);
  gtk_widget_measure (bar, GTK_ORIENTATION_HORIZONTAL, -1, &least_px, NULL, NULL, NULL);
  g_assert_cmpint (least_px, <=, ROOM_OF_BAR_PX);
  gtk_widget_activate_action (bar, "making.cancel", NULL);
  g_assert_cmpstr (sw_making_bar_words (f->w->making_bar), ==, "Stopping…");
  wait_for_window (f->w);
  g_assert_false (gtk_widget_get_visible (bar));
}

static SwPreview *
preview_in (GtkWidget *widget)
{
  SwPreview *preview = SW_IS_PREVIEW (widget) ? SW_PREVIEW (widget) : NULL;

  for (GtkWidget *w = gtk_widget_get_first_child (widget); w != NULL && preview == NULL;
       w = gtk_widget_get_next_sibling (w))
    preview = preview_in (w);
  return preview;
}

static SwPreview *
show_preview (Fixture *f)
{
  SwPreview *preview = preview_in (GTK_WIDGET (f->w));

  gtk_window_present (GTK_WINDOW (f->w));
  gtk_widget_activate_action (GTK_WIDGET (f->w), "win.show-view", "s", "pack");
  while (!gtk_widget_get_mapped (GTK_WIDGET (preview)))
    g_main_context_iteration (NULL, TRUE);
  return preview;
}

static void
wait_for_preview (SwPreview *preview)
{
  while (sw_preview_making (preview) != NULL)
    g_main_context_iteration (NULL, TRUE);
}

static double
width_mm (SwPreview *preview)
{
  return ((const SwFigure *) g_ptr_array_index (sw_preview_pages (preview), 0))->width_mm;
}

/* Old pages stay until the newest are there. Widths: ANSI/ASME Y14.1, 11 x 17 in; ISO 216. */
static void
test_newest_wins (Fixture *f, gconstpointer data)
{
  SwPreview *preview = show_preview (f);
  GPtrArray *before;

  wait_for_preview (preview);
  before = sw_preview_pages (preview);
  set_paper (f, SW_PAPER_A3);
  set_paper (f, SW_PAPER_A4);
  set_paper (f, SW_PAPER_TABLOID);
  g_assert_true (sw_preview_pages (preview) == before);
  g_assert_cmpint (sw_making_job (sw_preview_making (preview))->paper, ==, SW_PAPER_A3);
  wait_for_preview (preview);
  g_assert_cmpfloat_with_epsilon (width_mm (preview), 11.0 * 25.4, 0.01);
  g_assert_false (sw_preview_says_old (preview));
}

/* Cancelled, the pages of before are marked as old until they are renewed. */
static void
test_old_pages_are_marked (Fixture *f, gconstpointer data)
{
  SwPreview *preview = show_preview (f);
  GPtrArray *before;

  wait_for_preview (preview);
  before = sw_preview_pages (preview);
  gtk_widget_activate_action (GTK_WIDGET (preview), "preview.renew", NULL);
  g_assert_false (sw_preview_says_old (preview));
  g_signal_emit_by_name (sw_preview_making (preview), "progressed");
  g_assert_true (sw_preview_says_old (preview));
  sw_making_stop (sw_preview_making (preview));
  wait_for_preview (preview);
  g_assert_true (sw_preview_says_old (preview));
  g_assert_true (sw_preview_pages (preview) == before);
  set_paper (f, SW_PAPER_A3);
  wait_for_preview (preview);
  g_assert_false (sw_preview_says_old (preview));
  g_assert_cmpfloat_with_epsilon (width_mm (preview), 297.0, 0.01);
}

int
main (int argc, char *argv[])
{
  gtk_test_init (&argc, &argv, NULL);
#define ADD(name, function)                                                              \
  g_test_add ("/app/making/" name, Fixture, NULL, set_up, function, tear_down)
  ADD ("writes-the-pack", test_writes_the_pack);
  ADD ("is-of-the-job-asked-for", test_is_of_the_job_asked_for);
  ADD ("refused-field-stops-it", test_refused_field_stops_it);
  ADD ("cancel-keeps-the-old-file", test_cancel_keeps_the_old_file);
  ADD ("cancel-leaves-no-file", test_cancel_leaves_no_file);
  ADD ("closing-cancels", test_closing_cancels);
  ADD ("failure-is-told", test_failure_is_told);
  ADD ("bar", test_bar);
  ADD ("newest-wins", test_newest_wins);
  ADD ("old-pages-are-marked", test_old_pages_are_marked);
#undef ADD
  return g_test_run ();
}
