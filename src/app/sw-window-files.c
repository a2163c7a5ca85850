/* SPDX-License-Identifier: MIT */
#include <glib/gi18n.h>

#include "sw-dialogs.h"
#include "sw-window-private.h"

static SwDocument *
document_of (SwWindow *self)
{
  return sw_stage_document (self->stage);
}

void
sw_window_fit (SwWindow *self)
{
  sw_window_leave_start (self);
  for (guint i = 0; i < SW_CANVAS_KIND_COUNT; i++)
    sw_canvas_fit (sw_canvas_pane_canvas (self->panes[i]));
}

gboolean
sw_window_load (SwWindow *self, GFile *file)
{
  g_autoptr (GError) error = NULL;

  if (!sw_document_load (document_of (self), file, &error))
    {
      sw_dialogs_error (GTK_WINDOW (self), _ ("The job could not be opened"),
                        error->message);
      return FALSE;
    }
  sw_window_remember (self, file);
  sw_window_fit (self);
  sw_window_tell_file (self, _ ("Opened %s"), file);
  return TRUE;
}

void
sw_window_load_copy (SwWindow *self, GFile *file)
{
  g_autoptr (GError) error = NULL;

  if (sw_document_load_copy (document_of (self), file, &error))
    sw_window_fit (self);
  else
    sw_dialogs_error (GTK_WINDOW (self), _ ("The job could not be opened"),
                      error->message);
}

static void
on_open_chosen (GtkWindow *window, GFile *file, gpointer data)
{
  GtkApplication *app = gtk_window_get_application (window);

  if (file == NULL)
    return;
  if (sw_window_is_fresh (SW_WINDOW (window)) || app == NULL)
    sw_window_load (SW_WINDOW (window), file);
  else
    g_application_open (G_APPLICATION (app), &file, 1, "");
}

static void
open_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  SwWindow *self = SW_WINDOW (widget);

  sw_window_settle (self);
  sw_dialogs_choose_file (GTK_WINDOW (self), _ ("Open Job"), FALSE, NULL,
                          sw_document_file (document_of (self)), sw_job_file_kinds,
                          on_open_chosen, NULL);
}

GFile *
sw_file_with_suffix (GFile *file, const char *suffix)
{
  g_autofree char *base = g_file_get_basename (file);
  g_autoptr (GFile) folder = NULL;
  g_autofree char *full = NULL;

  if (g_str_has_suffix (base, suffix) || strchr (base, '.') != NULL)
    return g_object_ref (file);
  folder = g_file_get_parent (file);
  full = g_strconcat (base, suffix, NULL);
  return g_file_get_child (folder, full);
}

void
sw_window_install_file_actions (GtkWidgetClass *klass)
{
  gtk_widget_class_install_action (klass, "win.open", NULL, open_action);
}
