/* SPDX-License-Identifier: MIT */
#include "sw-point-table.h"

#include <glib/gi18n.h>

#include "choice.h"
#include "point-words.h"
#include "points-paste.h"
#include "sw-continue.h"
#include "sw-help-button.h"
#include "sw-point-popover.h"
#include "sw-value-entry.h"

typedef struct
{
  SwPointTable *table;
  int index;
  GtkWidget *name;
  SwValueEntry *x, *y;
  GtkWidget *add, *remove;
} Row;

struct _SwPointTable
{
  GtkWidget parent_instance;
  SwStage *stage;
  const SwCanvasKind *kind;
  GtkWidget *box;
  GtkLabel *title;
  GtkGrid *grid;
  GtkDropDown *crest, *toe; /* NULL for outlines */
  GPtrArray *rows;          /* (element-type Row) */
  gboolean refreshing;
};

enum
{
  COLUMN_NAME,
  COLUMN_X,
  COLUMN_Y,
  COLUMN_ADD,
  COLUMN_REMOVE
};

G_DEFINE_FINAL_TYPE (SwPointTable, sw_point_table, GTK_TYPE_WIDGET)

static const SwJob *
committed (SwPointTable *self)
{
  return sw_document_committed (sw_stage_document (self->stage));
}

static const SwFace *
committed_face (SwPointTable *self)
{
  return g_ptr_array_index (committed (self)->faces, sw_stage_face_index (self->stage));
}

static SwPointList
list_of (SwPointTable *self)
{
  return sw_stage_list (self->stage, self->kind->y_up);
}

static void
on_x (Row *row, double value_m)
{
  sw_point_type (row->table->stage, list_of (row->table), row->index, TRUE, value_m);
}

static void
on_y (Row *row, double value_m)
{
  sw_point_type (row->table->stage, list_of (row->table), row->index, FALSE, value_m);
}

static void
on_focused (Row *row)
{
  sw_stage_select (row->table->stage, list_of (row->table), row->index);
}

static void
on_add (Row *row)
{
  SwPointTable *self = row->table;
  const SwFace *face = committed_face (self);
  SwPointList list = list_of (self);
  SwPoint at = sw_points_between (face, list, row->index);
  g_autofree char *label = sw_point_step (SW_STEP_ADD, face, list, row->index + 1);
  g_autoptr (SwJob) job = sw_points_add (
      committed (self), sw_stage_face_index (self->stage), list, row->index, at);

  sw_document_commit (sw_stage_document (self->stage), job, label, NULL);
}

static void
on_remove (Row *row)
{
  SwPointTable *self = row->table;
  SwPointList list = list_of (self);
  g_autofree char *label =
      sw_point_step (SW_STEP_REMOVE, committed_face (self), list, row->index);
  g_autoptr (SwJob) job = sw_points_remove (
      committed (self), sw_stage_face_index (self->stage), list, row->index);

  if (job != NULL)
    sw_document_commit (sw_stage_document (self->stage), job, label, NULL);
}

static void
set_break (SwJob *job, SwFace *face, gconstpointer data)
{
  const SwFace *wish = data;

  face->crest = wish->crest;
  face->toe = wish->toe;
}

static void
on_break (SwPointTable *self)
{
  SwFace wish = *committed_face (self);
  guint crest = gtk_drop_down_get_selected (self->crest);
  guint toe = gtk_drop_down_get_selected (self->toe);

  if (self->refreshing || crest == GTK_INVALID_LIST_POSITION
      || toe == GTK_INVALID_LIST_POSITION)
    return;
  wish.crest = crest;
  wish.toe = toe;
  sw_stage_edit (self->stage, set_break, &wish, _ ("Change Crest and Toe"), NULL);
}

static SwValueEntry *
add_entry (Row *row, const char *axis, int column, GCallback on_committed)
{
  GtkWidget *entry = sw_value_entry_new (SW_UNIT_M);
  GtkEventController *focus = gtk_event_controller_focus_new ();
  g_autofree char *label = g_strdup_printf (_ ("Point %d, %s"), row->index + 1, axis);

  sw_value_entry_set_label (SW_VALUE_ENTRY (entry), label);
  gtk_widget_set_hexpand (entry, TRUE);
  g_signal_connect_swapped (entry, "committed", on_committed, row);
  g_signal_connect_swapped (focus, "enter", G_CALLBACK (on_focused), row);
  gtk_widget_add_controller (entry, focus);
  gtk_grid_attach (row->table->grid, entry, column, row->index + 1, 1, 1);
  return SW_VALUE_ENTRY (entry);
}

static GtkWidget *
add_button (Row *row, int column, const char *icon, const char *words, GCallback clicked)
{
  GtkWidget *button = gtk_button_new_from_icon_name (icon);
  g_autofree char *label = g_strdup_printf (words, row->index + 1);

  gtk_widget_add_css_class (button, "flat");
  gtk_widget_set_tooltip_text (button, label);
  gtk_accessible_update_property (GTK_ACCESSIBLE (button), GTK_ACCESSIBLE_PROPERTY_LABEL,
                                  label, -1);
  g_signal_connect_swapped (button, "clicked", clicked, row);
  gtk_grid_attach (row->table->grid, button, column, row->index + 1, 1, 1);
  return button;
}

static Row *
add_row (SwPointTable *self, int index)
{
  Row *row = g_new0 (Row, 1);
  g_autofree char *number = g_strdup_printf ("%d", index + 1);

  row->table = self;
  row->index = index;
  row->name = gtk_label_new (number);
  gtk_widget_add_css_class (row->name, "point-number");
  gtk_widget_set_valign (row->name, GTK_ALIGN_CENTER);
  gtk_grid_attach (self->grid, row->name, COLUMN_NAME, index + 1, 1, 1);
  row->x = add_entry (row, sw_canvas_kind_coordinate (self->kind->x_label), COLUMN_X,
                      G_CALLBACK (on_x));
  row->y = add_entry (row, sw_canvas_kind_coordinate (self->kind->y_label), COLUMN_Y,
                      G_CALLBACK (on_y));
  row->add = add_button (row, COLUMN_ADD, "list-add-symbolic",
                         _ ("Add a point after point %d"), G_CALLBACK (on_add));
  row->remove = add_button (row, COLUMN_REMOVE, "list-remove-symbolic",
                            _ ("Remove point %d"), G_CALLBACK (on_remove));
  return row;
}

static void
refresh_row (SwPointTable *self, Row *row)
{
  const SwFace *face = sw_stage_face (self->stage);
  SwNumberStyle style = sw_stage_style (self->stage);
  SwPoint p = sw_points_get (face, list_of (self), row->index);
  double least_m, most_m;

  sw_point_limits (face, list_of (self), row->index, &least_m, &most_m);
  sw_value_entry_set_range (row->x, least_m, most_m);
  sw_value_entry_set_value (row->x, p.x_m, style);
  sw_value_entry_set_value (row->y, p.y_m, style);
  gtk_widget_set_sensitive (row->remove, sw_points_can_remove (face, list_of (self)));
}

static void
match_rows (SwPointTable *self, guint count)
{
  while (self->rows->len > count)
    {
      /* The focus must not be on what goes. */
      gtk_grid_remove_row (self->grid, (int) self->rows->len);
      g_ptr_array_set_size (self->rows, (int) self->rows->len - 1);
    }
  while (self->rows->len < count)
    g_ptr_array_add (self->rows, add_row (self, (int) self->rows->len));
}

static void
refresh_breaks (SwPointTable *self)
{
  const SwFace *face = sw_stage_face (self->stage);
  g_auto (GStrv) names = g_new0 (char *, face->n_section + 1);

  for (guint i = 0; i < face->n_section; i++)
    names[i] = g_strdup_printf (_ ("Point %u"), i + 1);
  sw_choice_show (self->crest, (const char *const *) names, (int) face->crest);
  sw_choice_show (self->toe, (const char *const *) names, (int) face->toe);
}

static void
refresh (SwPointTable *self)
{
  static const char *const titles[SW_LIST_KIND_COUNT] = { N_ ("Section Points"),
                                                          N_ ("Outline Points"),
                                                          N_ ("Obstacle Points"),
                                                          N_ ("Zone Points") };

  self->refreshing = TRUE;
  gtk_label_set_text (self->title, _ (titles[list_of (self).kind]));
  match_rows (self, sw_points_count (sw_stage_face (self->stage), list_of (self)));
  for (guint i = 0; i < self->rows->len; i++)
    refresh_row (self, g_ptr_array_index (self->rows, i));
  if (self->crest != NULL)
    refresh_breaks (self);
  self->refreshing = FALSE;
}

static void
show_selected (SwPointTable *self)
{
  int selected = sw_stage_selected (self->stage, list_of (self));

  for (guint i = 0; i < self->rows->len; i++)
    {
      Row *row = g_ptr_array_index (self->rows, i);
      if ((int) i == selected)
        gtk_widget_add_css_class (row->name, "selected");
      else
        gtk_widget_remove_css_class (row->name, "selected");
    }
}

/* Sections elsewhere are matched point by point, and none of them is guessed. */
static void
paste (SwPointTable *self, const GArray *points)
{
  g_autoptr (SwJob) job =
      sw_points_replace (committed (self), sw_stage_face_index (self->stage),
                         list_of (self), (const SwPoint *) points->data, points->len);

  if (job != NULL)
    {
      sw_document_commit (sw_stage_document (self->stage), job, _ ("Paste Points"), NULL);
      return;
    }
  g_autofree char *problem = g_strdup_printf (
      _ ("Sections along one crest are matched point by point: %u points are expected; "
         "%u were found."),
      committed_face (self)->n_section, points->len);
  sw_stage_tell (self->stage, problem);
}

static void
on_clipboard (GObject *source, GAsyncResult *result, gpointer data)
{
  g_autoptr (SwPointTable) self = data;
  g_autoptr (GError) error = NULL;
  g_autofree char *text =
      gdk_clipboard_read_text_finish (GDK_CLIPBOARD (source), result, &error);
  g_autofree char *problem = NULL;
  g_autoptr (GArray) points = NULL;

  if (text == NULL)
    {
      sw_stage_tell (self->stage, _ ("There is no text on the clipboard."));
      return;
    }
  points =
      sw_points_from_text (text, sw_stage_style (self->stage), list_of (self), &problem);
  sw_stage_tell (self->stage, points == NULL ? problem : "");
  if (points != NULL)
    paste (self, points);
}

static void
on_paste (SwPointTable *self)
{
  gdk_clipboard_read_text_async (gtk_widget_get_clipboard (GTK_WIDGET (self)), NULL,
                                 on_clipboard, g_object_ref (self));
}

static void
sw_point_table_dispose (GObject *object)
{
  SwPointTable *self = SW_POINT_TABLE (object);

  g_clear_pointer (&self->box, gtk_widget_unparent);
  g_clear_object (&self->stage);
  G_OBJECT_CLASS (sw_point_table_parent_class)->dispose (object);
}

static void
sw_point_table_finalize (GObject *object)
{
  g_ptr_array_unref (SW_POINT_TABLE (object)->rows);
  G_OBJECT_CLASS (sw_point_table_parent_class)->finalize (object);
}

static void
sw_point_table_class_init (SwPointTableClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = sw_point_table_dispose;
  G_OBJECT_CLASS (klass)->finalize = sw_point_table_finalize;
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BIN_LAYOUT);
  gtk_widget_class_set_css_name (widget_class, "point-table");
}

static void
sw_point_table_init (SwPointTable *self)
{
  self->rows = g_ptr_array_new_with_free_func (g_free);
  self->box = gtk_box_new (GTK_ORIENTATION_VERTICAL, 6);
  gtk_widget_set_parent (self->box, GTK_WIDGET (self));
}

static void
add_continue (SwPointTable *self, GtkWidget *line)
{
  GtkWidget *button = gtk_menu_button_new ();

  gtk_menu_button_set_label (GTK_MENU_BUTTON (button), _ ("Continue"));
  gtk_accessible_update_property (GTK_ACCESSIBLE (button), GTK_ACCESSIBLE_PROPERTY_LABEL,
                                  _ ("Continue"), -1);
  gtk_menu_button_set_popover (GTK_MENU_BUTTON (button), sw_continue_new (self->stage));
  gtk_widget_add_css_class (button, "flat");
  gtk_widget_set_tooltip_text (button,
                               _ ("Go on from the last point by gradient and length"));
  gtk_box_append (GTK_BOX (line), button);
}

static void
add_head (SwPointTable *self)
{
  GtkWidget *line = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 6);
  GtkWidget *title = gtk_label_new (NULL);
  GtkWidget *button = gtk_button_new_with_label (_ ("Paste"));

  self->title = GTK_LABEL (title);
  gtk_widget_add_css_class (title, "heading");
  gtk_widget_set_hexpand (title, TRUE);
  gtk_label_set_xalign (GTK_LABEL (title), 0.0f);
  gtk_widget_add_css_class (button, "flat");
  gtk_widget_set_tooltip_text (
      button, _ ("Replace all points by rows of two numbers from the clipboard"));
  g_signal_connect_swapped (button, "clicked", G_CALLBACK (on_paste), self);
  gtk_box_append (GTK_BOX (line), title);
  if (self->kind->y_up)
    add_continue (self, line);
  gtk_box_append (GTK_BOX (line), button);
  gtk_box_append (GTK_BOX (line), sw_help_button_new ("draw#points", _ ("Points")));
  gtk_box_append (GTK_BOX (self->box), line);
}

static void
add_column_head (SwPointTable *self, int column, const char *words)
{
  GtkWidget *label = gtk_label_new (words);

  gtk_label_set_xalign (GTK_LABEL (label), 0.0f);
  gtk_widget_add_css_class (label, "dim-label");
  gtk_grid_attach (self->grid, label, column, 0, 1, 1);
}

static GtkDropDown *
add_break (SwPointTable *self, GtkWidget *line, const char *name)
{
  GtkWidget *choice = sw_choice_new (name);

  gtk_box_append (GTK_BOX (line), gtk_label_new (name));
  gtk_widget_set_hexpand (choice, TRUE);
  gtk_box_append (GTK_BOX (line), choice);
  g_signal_connect_swapped (choice, "notify::selected", G_CALLBACK (on_break), self);
  return GTK_DROP_DOWN (choice);
}

static void
add_breaks (SwPointTable *self)
{
  GtkWidget *line = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 6);

  self->crest = add_break (self, line, _ ("Crest"));
  self->toe = add_break (self, line, _ ("Toe"));
  gtk_box_append (GTK_BOX (self->box), line);
}

GtkWidget *
sw_point_table_new (SwStage *stage, const SwCanvasKind *kind)
{
  SwPointTable *self = g_object_new (SW_TYPE_POINT_TABLE, NULL);

  self->stage = g_object_ref (stage);
  self->kind = kind;
  add_head (self);
  self->grid = GTK_GRID (gtk_grid_new ());
  gtk_grid_set_row_spacing (self->grid, 4);
  gtk_grid_set_column_spacing (self->grid, 6);
  add_column_head (self, COLUMN_X, sw_canvas_kind_coordinate (kind->x_label));
  add_column_head (self, COLUMN_Y, sw_canvas_kind_coordinate (kind->y_label));
  gtk_box_append (GTK_BOX (self->box), GTK_WIDGET (self->grid));
  if (kind->y_up)
    add_breaks (self);
  g_signal_connect_object (stage, "changed", G_CALLBACK (refresh), self,
                           G_CONNECT_SWAPPED);
  g_signal_connect_object (stage, "selected", G_CALLBACK (show_selected), self,
                           G_CONNECT_SWAPPED);
  refresh (self);
  return GTK_WIDGET (self);
}

GtkWidget *
sw_point_table_entry (SwPointTable *self, guint index, gboolean is_x)
{
  Row *row;

  g_return_val_if_fail (index < self->rows->len, NULL);
  row = g_ptr_array_index (self->rows, index);
  return GTK_WIDGET (is_x ? row->x : row->y);
}
