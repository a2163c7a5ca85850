/* SPDX-License-Identifier: MIT */
#include "sw-types-dialog.h"

#include <glib/gi18n.h>
#include <slopewright/sheet/report.h>

#include "text-grid.h"

struct _SwTypesDialog
{
  GtkWindow parent_instance;
  SwStage *stage;
  GtkGrid *grid;
};

G_DEFINE_FINAL_TYPE (SwTypesDialog, sw_types_dialog, GTK_TYPE_WINDOW)

static void
refresh (SwTypesDialog *self)
{
  g_autoptr (GPtrArray) cells = sw_report_choice_cells (
      sw_stage_result (self->stage), sw_stage_stock (self->stage)->texts,
      sw_stage_style (self->stage));

  for (guint i = 0; i < cells->len; i++)
    {
      guint row = i / SW_REPORT_CHOICE_COLUMNS, column = i % SW_REPORT_CHOICE_COLUMNS;

      sw_text_grid_set (self->grid, row, column, cells->pdata[i],
                        row == 0                  ? "heading"
                        : row == 1 || column == 0 ? "unlike"
                                                  : NULL);
    }
  sw_text_grid_keep (self->grid, cells->len / SW_REPORT_CHOICE_COLUMNS);
}

const char *
sw_types_dialog_text (SwTypesDialog *self, guint row, guint column)
{
  return sw_text_grid_get (self->grid, row, column);
}

static void
sw_types_dialog_dispose (GObject *object)
{
  g_clear_object (&SW_TYPES_DIALOG (object)->stage);
  G_OBJECT_CLASS (sw_types_dialog_parent_class)->dispose (object);
}

static void
sw_types_dialog_class_init (SwTypesDialogClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = sw_types_dialog_dispose;
  gtk_widget_class_add_binding_action (GTK_WIDGET_CLASS (klass), GDK_KEY_Escape, 0,
                                       "window.close", NULL);
}

static void
sw_types_dialog_init (SwTypesDialog *self)
{
  GtkWidget *scrolled = gtk_scrolled_window_new ();

  self->grid = GTK_GRID (sw_text_grid_new ());
  gtk_scrolled_window_set_child (GTK_SCROLLED_WINDOW (scrolled), GTK_WIDGET (self->grid));
  gtk_widget_add_css_class (scrolled, "dialog-page");
  gtk_widget_set_vexpand (scrolled, TRUE);
  gtk_window_set_title (GTK_WINDOW (self), _ ("Blanket Types Against This Job"));
  gtk_window_set_default_size (GTK_WINDOW (self), 1120, 560);
  gtk_window_set_child (GTK_WINDOW (self), gtk_box_new (GTK_ORIENTATION_VERTICAL, 0));
  gtk_box_append (GTK_BOX (gtk_window_get_child (GTK_WINDOW (self))), scrolled);
}

static void
add_note (SwTypesDialog *self)
{
  const char *words = sw_texts_get (sw_stage_stock (self->stage)->texts, "choice.note");
  GtkWidget *note = gtk_label_new (words);

  gtk_label_set_wrap (GTK_LABEL (note), TRUE);
  gtk_label_set_xalign (GTK_LABEL (note), 0.0f);
  gtk_widget_add_css_class (note, "dialog-page");
  gtk_box_append (GTK_BOX (gtk_window_get_child (GTK_WINDOW (self))), note);
}

GtkWidget *
sw_types_dialog_new (GtkWindow *parent, SwStage *stage)
{
  SwTypesDialog *self = g_object_new (SW_TYPE_TYPES_DIALOG, "transient-for", parent,
                                      "destroy-with-parent", TRUE, NULL);

  self->stage = g_object_ref (stage);
  add_note (self);
  g_signal_connect_object (stage, "changed", G_CALLBACK (refresh), self,
                           G_CONNECT_SWAPPED);
  refresh (self);
  return GTK_WIDGET (self);
}
