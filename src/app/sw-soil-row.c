/* SPDX-License-Identifier: MIT */
#include "sw-soil-row.h"

#include <glib/gi18n.h>

#include "sw-help-button.h"
#include "sw-soil-dialog.h"

static void
refresh (SwStage *stage, GtkLabel *label)
{
  static const char *const ids[] = { "soil-known.eye", "soil-known.feel",
                                     "soil-known.laboratory" };
  const SwFace *face = sw_stage_face (stage);
  const char *known = face != NULL ? sw_texts_get (sw_stage_stock (stage)->texts,
                                                   ids[face->soil_test.known])
                                   : "";
  g_autofree char *words = g_strdup_printf (_ ("Soil known %s"), known);

  gtk_label_set_text (label, words);
}

static void
on_test (GtkWidget *button, SwStage *stage)
{
  GtkRoot *root = gtk_widget_get_root (button);

  gtk_window_present (GTK_WINDOW (
      sw_soil_dialog_new (GTK_IS_WINDOW (root) ? GTK_WINDOW (root) : NULL, stage)));
}

GtkWidget *
sw_soil_row_new (SwStage *stage)
{
  GtkWidget *row = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 12);
  GtkWidget *label = gtk_label_new (NULL);
  GtkWidget *button = gtk_button_new_with_mnemonic (_ ("_Test the Soil…"));

  gtk_label_set_xalign (GTK_LABEL (label), 0.0f);
  gtk_label_set_wrap (GTK_LABEL (label), TRUE);
  gtk_widget_set_hexpand (label, TRUE);
  gtk_box_append (GTK_BOX (row), label);
  gtk_box_append (GTK_BOX (row), button);
  gtk_box_append (GTK_BOX (row), sw_help_button_new ("soil", _ ("Soil")));
  refresh (stage, GTK_LABEL (label));
  g_signal_connect_object (stage, "changed", G_CALLBACK (refresh), label, 0);
  g_signal_connect_object (button, "clicked", G_CALLBACK (on_test), stage, 0);
  return row;
}
