/* SPDX-License-Identifier: MIT */
#include <glib/gi18n.h>

#include "export.h"
#include "print.h"
#include "sw-dialogs.h"
#include "sw-value-entry.h"
#include "sw-window-private.h"

static const SwFileKind pdf_kinds[] = { { N_ ("PDF files"), "*.pdf" }, { NULL, NULL } };

/* A field whose text made no sense: on paper its value before would pass for it. */
static SwValueEntry *
refused_in (GtkWidget *widget)
{
  SwValueEntry *found = NULL;

  if (SW_IS_VALUE_ENTRY (widget))
    return sw_value_entry_is_refused (SW_VALUE_ENTRY (widget)) ? SW_VALUE_ENTRY (widget)
                                                               : NULL;
  for (GtkWidget *child = gtk_widget_get_first_child (widget);
       child != NULL && found == NULL; child = gtk_widget_get_next_sibling (child))
    found = refused_in (child);
  return found;
}

static void
bring_up (GtkWidget *widget)
{
  for (GtkWidget *at = widget; at != NULL; at = gtk_widget_get_parent (at))
    if (GTK_IS_STACK (gtk_widget_get_parent (at)))
      gtk_stack_set_visible_child (GTK_STACK (gtk_widget_get_parent (at)), at);
  gtk_widget_grab_focus (widget);
}

static gboolean
has_refused (SwWindow *self)
{
  SwValueEntry *entry = refused_in (GTK_WIDGET (self->inspector));
  g_autofree char *text = NULL;

  if (entry == NULL)
    return FALSE;
  text = g_strdup_printf (
      /* Translators: the name of a field, and what was typed into it */
      _ ("“%s” was not understood: “%s”. Correct it first, or take it back with Escape."),
      sw_value_entry_label (entry),
      gtk_editable_get_text (GTK_EDITABLE (sw_value_entry_field (entry))));
  bring_up (GTK_WIDGET (entry));
  sw_stage_tell (self->stage, text);
  return TRUE;
}

/* One at a time: the actions that begin another wait for the end of this. */
static void
begin (SwWindow *self, const char *path, GCallback on_finished)
{
  SwPackOrder *order = sw_pack_order_new (self->stage);

  if (order == NULL || self->making != NULL)
    {
      sw_pack_order_free (order);
      return;
    }
  self->making = sw_making_start (order, path);
  g_signal_connect_object (self->making, "finished", on_finished, self,
                           G_CONNECT_SWAPPED);
  sw_making_bar_follow (self->making_bar, self->making);
  sw_window_allow_actions (self);
}

/* (transfer full) */
static SwMaking *
end (SwWindow *self)
{
  SwMaking *making = g_steal_pointer (&self->making);

  sw_window_allow_actions (self);
  return making;
}

void
sw_window_stop_making (SwWindow *self)
{
  if (self->making != NULL)
    sw_making_stop (self->making);
  g_clear_object (&self->making);
}

static void
tell_written (SwWindow *self, SwMaking *making)
{
  g_autoptr (GFile) file = g_file_new_for_path (sw_making_path (making));

  if (sw_job_equal (sw_making_job (making), sw_stage_job (self->stage)))
    sw_window_tell_file (self, _ ("Wrote the pack to %s"), file);
  else
    sw_window_tell_file (
        self, _ ("Wrote the pack to %s; the job has been changed since it was begun"),
        file);
}

static void
tell_failure (SwWindow *self, const GError *error)
{
  sw_dialogs_error (GTK_WINDOW (self), _ ("The pack could not be written"),
                    error->message);
}

static void
on_written (SwWindow *self)
{
  g_autoptr (SwMaking) making = end (self);

  if (sw_making_state (making) == SW_MAKING_DONE)
    tell_written (self, making);
  else if (sw_making_state (making) == SW_MAKING_FAILED)
    tell_failure (self, sw_making_error (making));
  else
    sw_stage_tell (self->stage, _ ("Cancelled: no pack was written"));
}

void
sw_window_export_pack (SwWindow *self, GFile *file)
{
  g_autoptr (GError) error = NULL;
  g_autofree char *path = sw_export_path (file, &error);

  if (path != NULL)
    begin (self, path, G_CALLBACK (on_written));
  else
    tell_failure (self, error);
}

static void
on_pack_chosen (GtkWindow *window, GFile *file, gpointer data)
{
  g_autoptr (GFile) named = file != NULL ? sw_file_with_suffix (file, ".pdf") : NULL;

  if (named != NULL)
    sw_window_export_pack (SW_WINDOW (window), named);
}

static void
export_pack_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  SwWindow *self = SW_WINDOW (widget);
  g_autofree char *stem = NULL;
  g_autofree char *start = NULL;

  sw_window_settle (self);
  if (has_refused (self))
    return;
  stem = sw_export_stem (self->stage);
  start = g_strconcat (stem, ".pdf", NULL);
  sw_dialogs_choose_file (GTK_WINDOW (self), _ ("Export Pack"), TRUE, start,
                          sw_document_file (sw_stage_document (self->stage)), pdf_kinds,
                          on_pack_chosen, NULL);
}

static void
on_pages_to_print (SwWindow *self)
{
  g_autoptr (SwMaking) making = end (self);

  if (sw_making_state (making) == SW_MAKING_DONE)
    sw_print_pack (GTK_WINDOW (self), self->stage, making);
  else if (sw_making_state (making) == SW_MAKING_FAILED)
    sw_dialogs_error (GTK_WINDOW (self), _ ("The pack could not be printed"),
                      sw_making_error (making)->message);
  else
    sw_stage_tell (self->stage, _ ("Cancelled: nothing was printed"));
}

static void
print_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  SwWindow *self = SW_WINDOW (widget);

  sw_window_settle (self);
  if (!has_refused (self))
    begin (self, NULL, G_CALLBACK (on_pages_to_print));
}

void
sw_window_install_pack_actions (GtkWidgetClass *klass)
{
  gtk_widget_class_install_action (klass, "win.export-pack", NULL, export_pack_action);
  gtk_widget_class_install_action (klass, "win.print", NULL, print_action);
}
