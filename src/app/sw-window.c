/* SPDX-License-Identifier: MIT */
#include "sw-window-private.h"

#include <glib/gi18n.h>

#include "first-job.h"
#include "mark-words.h"
#include "shape-edit.h"
#include "sw-briefing.h"
#include "sw-file-bar.h"
#include "sw-practices-dialog.h"
#include "sw-row-layout.h"
#include "sw-text-entry.h"
#include "sw-types-dialog.h"
#include "sw-value-entry.h"

G_DEFINE_FINAL_TYPE (SwWindow, sw_window, GTK_TYPE_APPLICATION_WINDOW)

static SwDocument *
document_of (SwWindow *self)
{
  return sw_stage_document (self->stage);
}

SwStage *
sw_window_stage (SwWindow *self)
{
  return self->stage;
}

SwTallyBar *
sw_window_tally (SwWindow *self)
{
  return self->tally;
}

SwCanvas *
sw_window_canvas (SwWindow *self, SwCanvasView view)
{
  return sw_canvas_pane_canvas (self->panes[view]);
}

/* Leaving a field commits it. */
void
sw_window_settle (SwWindow *self)
{
  GtkWidget *focus = gtk_root_get_focus (GTK_ROOT (self));

  gtk_window_set_focus (GTK_WINDOW (self), NULL);
  if (focus != NULL && gtk_widget_get_root (focus) == GTK_ROOT (self))
    gtk_widget_grab_focus (focus);
}

/* A field half typed: undoing takes back the typing, not the last step. */
static gboolean
restore_edited_field (SwWindow *self)
{
  GtkWidget *focus = gtk_root_get_focus (GTK_ROOT (self));
  GtkWidget *value, *text;

  if (focus == NULL)
    return FALSE;
  value = gtk_widget_get_ancestor (focus, SW_TYPE_VALUE_ENTRY);
  text = gtk_widget_get_ancestor (focus, SW_TYPE_TEXT_ENTRY);
  if (value != NULL && sw_value_entry_is_edited (SW_VALUE_ENTRY (value)))
    sw_value_entry_restore (SW_VALUE_ENTRY (value));
  else if (text != NULL && sw_text_entry_is_edited (SW_TEXT_ENTRY (text)))
    sw_text_entry_restore (SW_TEXT_ENTRY (text));
  else
    return FALSE;
  return TRUE;
}

static void
cancel_drags (SwWindow *self)
{
  for (guint i = 0; i < SW_CANVAS_KIND_COUNT; i++)
    sw_canvas_cancel_drag (sw_canvas_pane_canvas (self->panes[i]));
}

static void
undo_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  SwWindow *self = SW_WINDOW (widget);

  if (restore_edited_field (self))
    return;
  cancel_drags (self);
  sw_document_undo (document_of (self));
}

static void
redo_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  SwWindow *self = SW_WINDOW (widget);

  cancel_drags (self);
  sw_document_redo (document_of (self));
}

static void
show_step (SwWindow *self, GtkWidget *button, const char *action, const char *plain,
           const char *format, const char *label)
{
  g_autofree char *words =
      label != NULL ? g_strdup_printf (format, label) : g_strdup (plain);

  gtk_widget_action_set_enabled (GTK_WIDGET (self), action, label != NULL);
  gtk_widget_set_tooltip_text (button, words);
}

static void
show_title (SwWindow *self)
{
  SwDocument *document = document_of (self);
  GFile *file = sw_document_file (document);
  g_autofree char *title = sw_document_title (document);
  g_autofree char *base = file != NULL ? g_file_get_basename (file) : NULL;
  const char *path = file != NULL ? g_file_peek_path (file) : NULL;
  const char *name = *title != '\0' ? title : _ ("Untitled job");
  gboolean modified = sw_document_modified (document);
  g_autofree char *shown = g_strdup_printf (modified ? "%s •" : "%s", name);
  g_autofree char *tip =
      g_strdup_printf ("%s\n%s", shown, path != NULL ? path : _ ("Not saved yet"));
  g_autofree char *in_window =
      g_strdup_printf (modified ? _ ("%s (changed)") : "%s", name);

  gtk_label_set_text (self->title, shown);
  gtk_label_set_text (self->subtitle, base != NULL ? base : _ ("Not saved yet"));
  gtk_widget_set_tooltip_text (self->title_room, tip);
  gtk_window_set_title (GTK_WINDOW (self), in_window);
}

/* Where the file system tells of no changes, coming back to the window is a time to look. */
static void
on_active (SwWindow *self)
{
  if (gtk_window_is_active (GTK_WINDOW (self)))
    sw_document_look_at_disk (document_of (self));
}

static void
on_modified (SwWindow *self)
{
  sw_window_hold_session (self, sw_document_modified (document_of (self)));
}

static void
show_problem (SwWindow *self)
{
  const SwResult *result = sw_stage_result (self->stage);
  g_autofree char *text = NULL;

  gtk_widget_set_visible (self->problem_bar, result->status != SW_OK);
  if (result->status == SW_OK)
    return;
  if (result->bad_face >= 0)
    {
      const SwFace *face = g_ptr_array_index (result->job->faces, result->bad_face);
      text = g_strdup_printf (_ ("Face %s cannot be laid out: %s."), face->id,
                              _ (sw_status_text (result->status)));
    }
  else
    text = g_strdup_printf (_ ("The job cannot be laid out: %s."),
                            _ (sw_status_text (result->status)));
  gtk_label_set_text (self->problem, text);
}

static void
on_changed (SwWindow *self)
{
  SwDocument *document = document_of (self);

  show_step (self, self->undo, "win.undo", _ ("Undo"), _ ("Undo: %s"),
             sw_document_undo_label (document));
  show_step (self, self->redo, "win.redo", _ ("Redo"), _ ("Redo: %s"),
             sw_document_redo_label (document));
  sw_window_allow_actions (self);
  show_title (self);
  show_problem (self);
}

/* It is shortened where there is no room for it. */
static void
say (GtkLabel *label, const char *text)
{
  gtk_label_set_text (label, text);
  gtk_widget_set_tooltip_text (GTK_WIDGET (label), *text != '\0' ? text : NULL);
}

static void
on_told (SwWindow *self)
{
  say (self->status, sw_stage_message (self->stage));
}

static char *
place_text (SwWindow *self, SwPoint plan, gboolean along_known)
{
  SwNumberStyle style = sw_stage_style (self->stage);
  double up_m = sw_face_up_m (sw_stage_face (self->stage), plan.y_m);
  g_autofree char *out = sw_quantity_text (plan.y_m, SW_UNIT_M, style);
  g_autofree char *up = sw_quantity_text (up_m, SW_UNIT_M, style);
  g_autofree char *along = sw_quantity_text (plan.x_m, SW_UNIT_M, style);

  if (!along_known)
    return g_strdup_printf (_ ("%s out · ground %s up"), out, up);
  return g_strdup_printf (_ ("%s along · %s out · ground %s up"), along, out, up);
}

static void
on_pointed (SwWindow *self)
{
  SwPoint plan;
  gboolean along_known;
  g_autofree char *text = sw_stage_pointed (self->stage, &plan, &along_known)
                              ? place_text (self, plan, along_known)
                              : g_strdup ("");

  say (self->place, text);
}

static void
on_selected (SwWindow *self)
{
  for (int in_section = 0; in_section <= 1; in_section++)
    if (sw_stage_selected (self->stage, sw_stage_list (self->stage, in_section)) >= 0)
      sw_stage_tell (self->stage,
                     _ ("Arrows move the point · Enter types it · Insert adds · "
                        "Delete removes · Alt leaves the grid"));
}

static void
on_marked (SwWindow *self)
{
  const char *object = sw_stage_marked (self->stage);
  g_autofree char *message = object == NULL
                                 ? NULL
                                 : sw_mark_text (sw_stage_result (self->stage),
                                                 sw_stage_face_index (self->stage),
                                                 object, sw_stage_style (self->stage));

  if (message != NULL)
    sw_stage_tell (self->stage, message);
}

static void
mirror_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  SwWindow *self = SW_WINDOW (widget);
  g_autoptr (SwJob) mirrored = NULL;

  sw_window_settle (self);
  mirrored = sw_face_mirrored (sw_document_committed (document_of (self)),
                               sw_stage_face_index (self->stage));
  sw_document_commit (document_of (self), mirrored, _ ("Mirror Face"), NULL);
}

static void
compare_practices_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  SwWindow *self = SW_WINDOW (widget);

  sw_window_settle (self);
  gtk_window_present (
      GTK_WINDOW (sw_practices_dialog_new (GTK_WINDOW (self), self->stage)));
}

static void
compare_types_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  SwWindow *self = SW_WINDOW (widget);

  sw_window_settle (self);
  gtk_window_present (GTK_WINDOW (sw_types_dialog_new (GTK_WINDOW (self), self->stage)));
}

static void
step_through_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  SwWindow *self = SW_WINDOW (widget);

  sw_window_settle (self);
  if (sw_stage_result (self->stage)->status == SW_OK)
    gtk_window_present (
        GTK_WINDOW (sw_briefing_window_new (GTK_WINDOW (self), self->stage)));
}

static gboolean
sw_window_close_request (GtkWindow *window)
{
  SwWindow *self = SW_WINDOW (window);

  sw_window_settle (self);
  if (!sw_document_modified (document_of (self)))
    return GTK_WINDOW_CLASS (sw_window_parent_class)->close_request (window);
  sw_window_ask_to_close (self);
  return TRUE;
}

gboolean
sw_window_is_unsaved (SwWindow *self)
{
  return sw_document_modified (document_of (self));
}

gboolean
sw_window_is_fresh (SwWindow *self)
{
  SwDocument *document = document_of (self);

  return sw_document_file (document) == NULL && !sw_document_modified (document)
         && !sw_document_can_undo (document) && !sw_document_can_redo (document);
}

static void
sw_window_dispose (GObject *object)
{
  SwWindow *self = SW_WINDOW (object);

  sw_window_hold_session (self, FALSE);
  sw_window_stop_making (self);
  gtk_widget_dispose_template (GTK_WIDGET (self), SW_TYPE_WINDOW);
  g_clear_object (&self->draft);
  g_clear_object (&self->preferences);
  g_clear_object (&self->stage);
  G_OBJECT_CLASS (sw_window_parent_class)->dispose (object);
}

static void
bind_children (GtkWidgetClass *klass)
{
  gtk_widget_class_bind_template_child (klass, SwWindow, title);
  gtk_widget_class_bind_template_child (klass, SwWindow, subtitle);
  gtk_widget_class_bind_template_child (klass, SwWindow, status);
  gtk_widget_class_bind_template_child (klass, SwWindow, place);
  gtk_widget_class_bind_template_child (klass, SwWindow, problem);
  gtk_widget_class_bind_template_child (klass, SwWindow, problem_bar);
  gtk_widget_class_bind_template_child (klass, SwWindow, undo);
  gtk_widget_class_bind_template_child (klass, SwWindow, redo);
  gtk_widget_class_bind_template_child (klass, SwWindow, views);
  gtk_widget_class_bind_template_child (klass, SwWindow, bars);
  gtk_widget_class_bind_template_child (klass, SwWindow, section_room);
  gtk_widget_class_bind_template_child (klass, SwWindow, across);
  gtk_widget_class_bind_template_child (klass, SwWindow, lower);
  gtk_widget_class_bind_template_child (klass, SwWindow, pack_room);
  gtk_widget_class_bind_template_child (klass, SwWindow, tally_room);
  gtk_widget_class_bind_template_child (klass, SwWindow, findings_room);
  gtk_widget_class_bind_template_child (klass, SwWindow, inspector);
  gtk_widget_class_bind_template_child (klass, SwWindow, examples);
  gtk_widget_class_bind_template_child (klass, SwWindow, title_room);
  gtk_widget_class_bind_template_child (klass, SwWindow, foot);
  gtk_widget_class_bind_template_child (klass, SwWindow, menu_button);
}

static void
add_style (void)
{
  g_autoptr (GtkCssProvider) provider = gtk_css_provider_new ();

  gtk_css_provider_load_from_resource (provider, "/io/slopewright/Slopewright/style.css");
  gtk_style_context_add_provider_for_display (gdk_display_get_default (),
                                              GTK_STYLE_PROVIDER (provider),
                                              GTK_STYLE_PROVIDER_PRIORITY_APPLICATION);
}

static void
sw_window_class_init (SwWindowClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = sw_window_dispose;
  g_signal_new ("kept-open", SW_TYPE_WINDOW, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL,
                G_TYPE_NONE, 0);
  GTK_WINDOW_CLASS (klass)->close_request = sw_window_close_request;
  g_type_ensure (SW_TYPE_INSPECTOR);
  g_type_ensure (SW_TYPE_FOLD);
  g_type_ensure (SW_TYPE_ROW_LAYOUT);
  gtk_widget_class_set_template_from_resource (
      widget_class, "/io/slopewright/Slopewright/sw-window.ui");
  bind_children (widget_class);
  add_style ();
  gtk_widget_class_install_action (widget_class, "win.undo", NULL, undo_action);
  gtk_widget_class_install_action (widget_class, "win.redo", NULL, redo_action);
  gtk_widget_class_install_action (widget_class, "win.mirror-face", NULL, mirror_action);
  gtk_widget_class_install_action (widget_class, "win.compare-types", NULL,
                                   compare_types_action);
  gtk_widget_class_install_action (widget_class, "win.compare-practices", NULL,
                                   compare_practices_action);
  gtk_widget_class_install_action (widget_class, "win.step-through", NULL,
                                   step_through_action);
  sw_window_install_file_actions (widget_class);
  sw_window_install_export_actions (widget_class);
  sw_window_install_pack_actions (widget_class);
  sw_window_install_save_actions (widget_class);
  sw_window_install_start_actions (widget_class);
  sw_window_install_view_actions (widget_class);
}

static void
sw_window_init (SwWindow *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
  self->alone = SW_CANVAS_KIND_COUNT;
}

static void
add_panes (SwWindow *self)
{
  for (guint i = 0; i < SW_CANVAS_KIND_COUNT; i++)
    self->panes[i] = SW_CANVAS_PANE (sw_canvas_pane_new ((SwCanvasView) i, self->stage));
  gtk_box_append (self->section_room, GTK_WIDGET (self->panes[SW_CANVAS_SECTION]));
  gtk_paned_set_start_child (self->lower, GTK_WIDGET (self->panes[SW_CANVAS_PLAN]));
  gtk_paned_set_end_child (self->lower, GTK_WIDGET (self->panes[SW_CANVAS_FACE_VIEW]));
}

static void
add_parts (SwWindow *self)
{
  GtkWidget *findings = sw_findings_list_new ();

  add_panes (self);
  gtk_box_append (self->bars, sw_file_bar_new (document_of (self)));
  self->making_bar = SW_MAKING_BAR (sw_making_bar_new ());
  gtk_box_append (self->bars, GTK_WIDGET (self->making_bar));
  self->start = SW_START_PAGE (sw_start_page_new ());
  gtk_stack_add_named (self->views, GTK_WIDGET (self->start), "start");
  self->tally = SW_TALLY_BAR (sw_tally_bar_new ());
  sw_tally_bar_set_stage (self->tally, self->stage);
  gtk_box_append (self->tally_room, GTK_WIDGET (self->tally));
  gtk_widget_set_hexpand (findings, TRUE);
  gtk_widget_set_vexpand (findings, TRUE);
  sw_findings_list_set_stage (SW_FINDINGS_LIST (findings), self->stage);
  gtk_box_append (self->findings_room, findings);
  gtk_box_append (self->pack_room, sw_preview_new (self->stage));
  sw_inspector_set_stage (self->inspector, self->stage);
  sw_window_list_examples (self);
  sw_window_watch_menu (self);
}

static void
on_preferences (SwWindow *self)
{
  sw_draft_set_delay (self->draft, sw_preferences_draft_delay_s (self->preferences));
  sw_window_refresh_start (self);
}

static void
listen (SwWindow *self)
{
  static const struct
  {
    const char *signal;
    GCallback callback;
  } of_stage[] = { { "changed", G_CALLBACK (on_changed) },
                   { "told", G_CALLBACK (on_told) },
                   { "pointed", G_CALLBACK (on_pointed) },
                   { "selected", G_CALLBACK (on_selected) },
                   { "marked", G_CALLBACK (on_marked) } };

  for (gsize i = 0; i < G_N_ELEMENTS (of_stage); i++)
    g_signal_connect_object (self->stage, of_stage[i].signal, of_stage[i].callback, self,
                             G_CONNECT_SWAPPED);
  g_signal_connect_object (document_of (self), "notify", G_CALLBACK (show_title), self,
                           G_CONNECT_SWAPPED);
  g_signal_connect_object (document_of (self), "notify::modified",
                           G_CALLBACK (on_modified), self, G_CONNECT_SWAPPED);
  g_signal_connect (self, "notify::is-active", G_CALLBACK (on_active), NULL);
  g_signal_connect_object (self->preferences, "notify", G_CALLBACK (on_preferences), self,
                           G_CONNECT_SWAPPED);
  g_signal_connect_object (gtk_recent_manager_get_default (), "changed",
                           G_CALLBACK (sw_window_refresh_start), self, G_CONNECT_SWAPPED);
}

SwWindow *
sw_window_new (GtkApplication *app, const SwStock *stock, SwPreferences *preferences)
{
  SwWindow *self = g_object_new (SW_TYPE_WINDOW, "application", app, NULL);
  g_autoptr (SwJob) first =
      sw_first_job (preferences, (const char *const *) stock->languages);
  g_autoptr (SwDocument) document = sw_document_new (stock->catalogue, first);
  g_autofree char *drafts = sw_draft_folder ();

  self->preferences = g_object_ref (preferences);
  self->draft = sw_draft_new (document, drafts);
  self->stage = sw_stage_new (document, stock);
  add_parts (self);
  listen (self);
  on_preferences (self);
  on_changed (self);
  return self;
}
