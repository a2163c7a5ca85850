/* SPDX-License-Identifier: MIT */
#include <glib/gi18n.h>

#include "export.h"
#include "sw-dialogs.h"
#include "sw-window-private.h"

static const SwFileKind table_kinds[] = {
  { N_ ("Tables for a spreadsheet (CSV)"), "*.csv" }, { NULL, NULL }
};
static const SwFileKind picture_kinds[] = { { N_ ("SVG pictures"), "*.svg" },
                                            { N_ ("PNG pictures"), "*.png" },
                                            { NULL, NULL } };

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

static void
on_quantities_chosen (GtkWindow *window, GFile *file, gpointer data)
{
  SwWindow *self = SW_WINDOW (window);
  g_autoptr (GError) error = NULL;
  g_autoptr (GFile) named = file != NULL ? sw_file_with_suffix (file, ".csv") : NULL;

  if (named == NULL)
    return;
  if (!sw_export_quantities (self->stage, named, &error))
    sw_dialogs_error (window, _ ("The quantities could not be written"), error->message);
  else
    sw_window_tell_file (self, _ ("Wrote the quantities to %s"), named);
}

static void
export_quantities_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  SwWindow *self = SW_WINDOW (widget);
  g_autofree char *stem = NULL;
  g_autofree char *start = NULL;

  sw_window_settle (self);
  stem = sw_export_stem (self->stage);
  start = g_strconcat (stem, ".csv", NULL);
  sw_dialogs_choose_file (GTK_WINDOW (self), _ ("Export Quantities"), TRUE, start,
                          sw_document_file (document_of (self)), table_kinds,
                          on_quantities_chosen, NULL);
}

static void
on_drawing_chosen (GtkWindow *window, GFile *file, gpointer data)
{
  SwWindow *self = SW_WINDOW (window);
  g_autoptr (GError) error = NULL;
  g_autoptr (GFile) named = file != NULL ? sw_file_with_suffix (file, ".svg") : NULL;

  if (named == NULL)
    return;
  if (!sw_export_drawing (self->stage, data, named, &error))
    sw_dialogs_error (window, _ ("The drawing could not be written"), error->message);
  else
    sw_window_tell_file (self, _ ("Wrote the drawing to %s"), named);
}

static void
export_drawing_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  SwWindow *self = SW_WINDOW (widget);
  const SwCanvasKind *kind =
      sw_canvas_kind_of_code (g_variant_get_string (parameter, NULL));
  g_autofree char *stem = NULL;
  g_autofree char *start = NULL;

  g_return_if_fail (kind != NULL);
  sw_window_settle (self);
  stem = sw_export_stem (self->stage);
  start =
      g_strdup_printf ("%s-%s-%s.svg", stem, sw_stage_face (self->stage)->id, kind->code);
  sw_dialogs_choose_file (GTK_WINDOW (self), _ ("Export Drawing"), TRUE, start,
                          sw_document_file (document_of (self)), picture_kinds,
                          on_drawing_chosen, (gpointer) kind);
}

void
sw_window_install_file_actions (GtkWidgetClass *klass)
{
  gtk_widget_class_install_action (klass, "win.open", NULL, open_action);
  gtk_widget_class_install_action (klass, "win.export-quantities", NULL,
                                   export_quantities_action);
  gtk_widget_class_install_action (klass, "win.export-drawing", "s",
                                   export_drawing_action);
}
