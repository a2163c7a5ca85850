/* SPDX-License-Identifier: MIT */
#include "row-name.h"

void
sw_row_name (GtkWidget *row, GtkWidget *name, GtkWidget *text)
{
  gtk_accessible_update_relation (GTK_ACCESSIBLE (row),
                                  GTK_ACCESSIBLE_RELATION_LABELLED_BY, name, NULL, -1);
  if (text != NULL)
    gtk_accessible_update_relation (GTK_ACCESSIBLE (row),
                                    GTK_ACCESSIBLE_RELATION_DESCRIBED_BY, text, NULL, -1);
}
