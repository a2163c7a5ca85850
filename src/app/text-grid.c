/* SPDX-License-Identifier: MIT */
#include "text-grid.h"

#define CELL_CHARS 30

GtkWidget *
sw_text_grid_new (void)
{
  GtkWidget *grid = gtk_grid_new ();

  gtk_grid_set_row_spacing (GTK_GRID (grid), 4);
  gtk_grid_set_column_spacing (GTK_GRID (grid), 12);
  return grid;
}

static GtkLabel *
cell_at (GtkGrid *grid, guint row, guint column)
{
  GtkWidget *label = gtk_grid_get_child_at (grid, (int) column, (int) row);

  return label != NULL ? GTK_LABEL (label) : NULL;
}

static GtkLabel *
make_cell (GtkGrid *grid, guint row, guint column)
{
  GtkWidget *label = gtk_label_new (NULL);

  gtk_label_set_xalign (GTK_LABEL (label), 0.0f);
  gtk_label_set_yalign (GTK_LABEL (label), 0.0f);
  gtk_label_set_wrap (GTK_LABEL (label), TRUE);
  gtk_label_set_max_width_chars (GTK_LABEL (label), CELL_CHARS);
  gtk_grid_attach (grid, label, (int) column, (int) row, 1, 1);
  return GTK_LABEL (label);
}

void
sw_text_grid_set (GtkGrid *grid, guint row, guint column, const char *text,
                  const char *css_class)
{
  const char *const classes[] = { css_class, NULL };
  GtkLabel *label = cell_at (grid, row, column);

  if (label == NULL)
    label = make_cell (grid, row, column);
  gtk_label_set_text (label, text);
  gtk_widget_set_css_classes (GTK_WIDGET (label), (const char **) classes);
  gtk_widget_set_visible (GTK_WIDGET (label), TRUE);
  /* An empty cell must not take width from one that is read. */
  gtk_widget_set_hexpand (GTK_WIDGET (label), column > 0);
}

const char *
sw_text_grid_get (GtkGrid *grid, guint row, guint column)
{
  GtkLabel *label = cell_at (grid, row, column);

  return label != NULL ? gtk_label_get_text (label) : NULL;
}

void
sw_text_grid_keep (GtkGrid *grid, guint n_rows)
{
  for (GtkWidget *child = gtk_widget_get_first_child (GTK_WIDGET (grid)); child != NULL;
       child = gtk_widget_get_next_sibling (child))
    {
      int row;

      gtk_grid_query_child (grid, child, NULL, &row, NULL, NULL);
      gtk_widget_set_visible (child, row < (int) n_rows);
    }
}
