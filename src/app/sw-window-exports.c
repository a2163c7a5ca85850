/* SPDX-License-Identifier: MIT */
#include <glib/gi18n.h>

#include "export.h"
#include "sw-dialogs.h"
#include "sw-window-private.h"

/* What is written at once; a pack takes longer and is made aside, in sw-window-pack.c. */
typedef struct SwExport SwExport;
struct SwExport
{
  const char *title;
  const char *name; /* NULL: named after the job */
  const char *view; /* code of the drawing; NULL: none */
  const char *ending;
  const SwFileKind *kinds;
  gboolean (*write) (const SwExport *export, SwStage *stage, GFile *file, GError **error);
  const char *failed, *written;
};

static const SwFileKind tables[] = { { N_ ("Tables for a spreadsheet (CSV)"), "*.csv" },
                                     { NULL, NULL } };
static const SwFileKind pictures[] = { { N_ ("SVG pictures"), "*.svg" },
                                       { N_ ("PNG pictures"), "*.png" },
                                       { NULL, NULL } };
static const SwFileKind documents[] = { { N_ ("PDF files"), "*.pdf" }, { NULL, NULL } };

static gboolean
write_quantities (const SwExport *export, SwStage *stage, GFile *file, GError **error)
{
  return sw_export_quantities (stage, file, error);
}

static gboolean
write_form (const SwExport *export, SwStage *stage, GFile *file, GError **error)
{
  return sw_export_form (stage, file, error);
}

static gboolean
write_drawing (const SwExport *export, SwStage *stage, GFile *file, GError **error)
{
  return sw_export_drawing (stage, sw_canvas_kind_of_code (export->view), file, error);
}

static const SwExport quantities = { .title = N_ ("Export Quantities"),
                                     .ending = ".csv",
                                     .kinds = tables,
                                     .write = write_quantities,
                                     .failed = N_ ("The quantities could not be written"),
                                     .written = N_ ("Wrote the quantities to %s") };

static const SwExport form = { .title = N_ ("Export Measuring Form"),
                               .name = "measuring-form",
                               .ending = ".pdf",
                               .kinds = documents,
                               .write = write_form,
                               .failed = N_ ("The measuring form could not be written"),
                               .written = N_ ("Wrote the measuring form to %s") };

#define DRAWING(code)                                                                    \
  {                                                                                      \
    .title = N_ ("Export Drawing"), .view = code, .ending = ".svg", .kinds = pictures,   \
    .write = write_drawing, .failed = N_ ("The drawing could not be written"),           \
    .written = N_ ("Wrote the drawing to %s")                                            \
  }
static const SwExport drawings[] = { DRAWING ("section"), DRAWING ("plan"),
                                     DRAWING ("face") };
#undef DRAWING

/* (transfer full) */
static char *
start_name (const SwExport *export, SwStage *stage)
{
  g_autofree char *stem =
      export->name != NULL ? g_strdup (export->name) : sw_export_stem (stage);

  if (export->view == NULL)
    return g_strconcat (stem, export->ending, NULL);
  return g_strconcat (stem, "-", sw_stage_face (stage)->id, "-", export->view,
                      export->ending, NULL);
}

static void
on_chosen (GtkWindow *window, GFile *file, gpointer data)
{
  SwWindow *self = SW_WINDOW (window);
  const SwExport *export = data;
  g_autoptr (GFile) named = NULL;
  g_autoptr (GError) error = NULL;

  if (file == NULL)
    return;
  named = sw_file_with_suffix (file, export->ending);
  if (export->write (export, self->stage, named, &error))
    sw_window_tell_file (self, _ (export->written), named);
  else
    sw_dialogs_error (window, _ (export->failed), error->message);
}

static void
ask_where (SwWindow *self, const SwExport *export)
{
  g_autofree char *name = NULL;

  sw_window_settle (self);
  name = start_name (export, self->stage);
  sw_dialogs_choose_file (GTK_WINDOW (self), _ (export->title), TRUE, name,
                          sw_document_file (sw_stage_document (self->stage)),
                          export->kinds, on_chosen, (gpointer) export);
}

static void
export_quantities_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  ask_where (SW_WINDOW (widget), &quantities);
}

static void
export_form_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  ask_where (SW_WINDOW (widget), &form);
}

static void
export_drawing_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  const char *view = g_variant_get_string (parameter, NULL);

  for (guint i = 0; i < G_N_ELEMENTS (drawings); i++)
    if (g_str_equal (drawings[i].view, view))
      ask_where (SW_WINDOW (widget), &drawings[i]);
}

void
sw_window_install_export_actions (GtkWidgetClass *klass)
{
  gtk_widget_class_install_action (klass, "win.export-quantities", NULL,
                                   export_quantities_action);
  gtk_widget_class_install_action (klass, "win.export-form", NULL, export_form_action);
  gtk_widget_class_install_action (klass, "win.export-drawing", "s",
                                   export_drawing_action);
}
