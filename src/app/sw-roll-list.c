/* SPDX-License-Identifier: MIT */
#include "sw-roll-list.h"

#include <glib/gi18n.h>

#include "choice.h"
#include "sw-help-button.h"
#include "sw-value-entry.h"

typedef struct
{
  SwRollList *list;
  guint index;
  GtkDropDown *source;
  SwValueEntry *length;
  GtkSpinButton *count;
} Row;

struct _SwRollList
{
  GtkWidget parent_instance;
  SwStage *stage;
  GtkWidget *box, *add;
  GtkGrid *grid;
  GPtrArray *rows; /* (element-type Row) */
  gboolean refreshing;
};

enum
{
  COLUMN_SOURCE,
  COLUMN_LENGTH,
  COLUMN_COUNT,
  COLUMN_REMOVE
};

G_DEFINE_FINAL_TYPE (SwRollList, sw_roll_list, GTK_TYPE_WIDGET)

/* Which line, and what it is to say. */
typedef struct
{
  guint index;
  SwStockLine line;
} Wish;

static void
set_line (SwJob *job, SwFace *face, gconstpointer data)
{
  const Wish *wish = data;

  g_array_index (job->stock, SwStockLine, wish->index) = wish->line;
}

static void
add_line (SwJob *job, SwFace *face, gconstpointer data)
{
  g_array_append_vals (job->stock, data, 1);
}

static void
remove_line (SwJob *job, SwFace *face, gconstpointer data)
{
  g_array_remove_index (job->stock, *(const guint *) data);
}

static SwStockLine
line_of (const Row *row)
{
  return g_array_index (sw_stage_job (row->list->stage)->stock, SwStockLine, row->index);
}

static void
commit_line (Row *row, SwStockLine line)
{
  /* What lies ready is one at least; only what is ordered can be without end. */
  if (line.source == SW_STOCK_ON_HAND)
    line.count = MAX (line.count, 1);
  sw_stage_edit (row->list->stage, set_line, &(Wish){ row->index, line },
                 _ ("Change Stock"), NULL);
}

static void
on_source (Row *row)
{
  guint selected = gtk_drop_down_get_selected (row->source);
  SwStockLine line;

  if (row->list->refreshing || selected == GTK_INVALID_LIST_POSITION)
    return;
  line = line_of (row);
  line.source = (SwStockSource) selected;
  commit_line (row, line);
}

static void
on_length (Row *row, double length_m)
{
  SwStockLine line = line_of (row);

  line.length_m = length_m;
  commit_line (row, line);
}

static void
on_count (Row *row)
{
  SwStockLine line;

  if (row->list->refreshing)
    return;
  line = line_of (row);
  line.count = (guint) gtk_spin_button_get_value_as_int (row->count);
  commit_line (row, line);
}

static void
on_remove (Row *row)
{
  sw_stage_edit (row->list->stage, remove_line, &row->index, _ ("Remove from Stock"),
                 NULL);
}

/* Begins as one whole roll in the yard. */
static void
on_add (SwRollList *self)
{
  SwStockLine line = { SW_STOCK_ON_HAND, sw_stage_job (self->stage)->roll_length_m, 1 };

  sw_stage_edit (self->stage, add_line, &line, _ ("Add to Stock"), NULL);
}

static void
name_control (gpointer control, const char *words, guint index)
{
  g_autofree char *label = g_strdup_printf (words, index + 1);

  gtk_accessible_update_property (GTK_ACCESSIBLE (control), GTK_ACCESSIBLE_PROPERTY_LABEL,
                                  label, -1);
}

static void
add_source (Row *row)
{
  g_autofree char *label = g_strdup_printf (_ ("Stock %u, source"), row->index + 1);

  row->source = GTK_DROP_DOWN (sw_choice_new (label));
  gtk_widget_set_tooltip_text (GTK_WIDGET (row->source),
                               _ ("Lies ready in the yard, or can be ordered"));
  g_signal_connect_swapped (row->source, "notify::selected", G_CALLBACK (on_source), row);
  gtk_grid_attach (row->list->grid, GTK_WIDGET (row->source), COLUMN_SOURCE,
                   (int) row->index + 1, 1, 1);
}

static void
add_length (Row *row)
{
  g_autofree char *label = g_strdup_printf (_ ("Stock %u, length"), row->index + 1);

  row->length = SW_VALUE_ENTRY (sw_value_entry_new (SW_UNIT_M));
  sw_value_entry_set_label (row->length, label);
  sw_value_entry_set_range (row->length, SW_STOCK_LENGTH_LEAST_M, SW_STOCK_LENGTH_MOST_M);
  gtk_widget_set_hexpand (GTK_WIDGET (row->length), TRUE);
  g_signal_connect_swapped (row->length, "committed", G_CALLBACK (on_length), row);
  gtk_grid_attach (row->list->grid, GTK_WIDGET (row->length), COLUMN_LENGTH,
                   (int) row->index + 1, 1, 1);
}

static void
add_count (Row *row)
{
  row->count =
      GTK_SPIN_BUTTON (gtk_spin_button_new_with_range (0.0, SW_STOCK_COUNT_MOST, 1.0));
  gtk_widget_set_tooltip_text (GTK_WIDGET (row->count),
                               _ ("How many there are. 0, to order only: as many as "
                                  "wanted"));
  name_control (row->count, _ ("Stock %u, count"), row->index);
  g_signal_connect_swapped (row->count, "value-changed", G_CALLBACK (on_count), row);
  gtk_grid_attach (row->list->grid, GTK_WIDGET (row->count), COLUMN_COUNT,
                   (int) row->index + 1, 1, 1);
}

static void
add_remove (Row *row)
{
  GtkWidget *button = gtk_button_new_from_icon_name ("list-remove-symbolic");

  gtk_widget_add_css_class (button, "flat");
  gtk_widget_set_tooltip_text (button, _ ("Remove from the stock"));
  name_control (button, _ ("Remove stock %u"), row->index);
  g_signal_connect_swapped (button, "clicked", G_CALLBACK (on_remove), row);
  gtk_grid_attach (row->list->grid, button, COLUMN_REMOVE, (int) row->index + 1, 1, 1);
}

static Row *
add_row (SwRollList *self, guint index)
{
  Row *row = g_new0 (Row, 1);

  row->list = self;
  row->index = index;
  add_source (row);
  add_length (row);
  add_count (row);
  add_remove (row);
  return row;
}

static void
match_rows (SwRollList *self, guint count)
{
  while (self->rows->len > count)
    {
      gtk_grid_remove_row (self->grid, (int) self->rows->len);
      g_ptr_array_set_size (self->rows, (int) self->rows->len - 1);
    }
  while (self->rows->len < count)
    g_ptr_array_add (self->rows, add_row (self, self->rows->len));
}

static void
refresh (SwRollList *self)
{
  const GArray *stock = sw_stage_job (self->stage)->stock;
  const char *const sources[] = { C_ ("source of rolls", "Yard"),
                                  C_ ("source of rolls", "Order"), NULL };

  self->refreshing = TRUE;
  match_rows (self, stock->len);
  for (guint i = 0; i < self->rows->len; i++)
    {
      Row *row = g_ptr_array_index (self->rows, i);
      const SwStockLine *line = &g_array_index (stock, SwStockLine, i);

      sw_choice_show (row->source, sources, (int) line->source);
      sw_value_entry_set_value (row->length, line->length_m,
                                sw_stage_style (self->stage));
      gtk_spin_button_set_range (row->count, line->source == SW_STOCK_ON_HAND ? 1.0 : 0.0,
                                 SW_STOCK_COUNT_MOST);
      gtk_spin_button_set_value (row->count, line->count);
    }
  gtk_widget_set_visible (GTK_WIDGET (self->grid), stock->len > 0);
  gtk_widget_set_sensitive (self->add, stock->len < SW_STOCK_LINES_MOST);
  self->refreshing = FALSE;
}

static void
sw_roll_list_dispose (GObject *object)
{
  SwRollList *self = SW_ROLL_LIST (object);

  g_clear_pointer (&self->box, gtk_widget_unparent);
  g_clear_object (&self->stage);
  G_OBJECT_CLASS (sw_roll_list_parent_class)->dispose (object);
}

static void
sw_roll_list_finalize (GObject *object)
{
  g_ptr_array_unref (SW_ROLL_LIST (object)->rows);
  G_OBJECT_CLASS (sw_roll_list_parent_class)->finalize (object);
}

static void
sw_roll_list_class_init (SwRollListClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = sw_roll_list_dispose;
  G_OBJECT_CLASS (klass)->finalize = sw_roll_list_finalize;
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BIN_LAYOUT);
  gtk_widget_class_set_css_name (widget_class, "roll-list");
}

static void
sw_roll_list_init (SwRollList *self)
{
  self->rows = g_ptr_array_new_with_free_func (g_free);
  self->box = gtk_box_new (GTK_ORIENTATION_VERTICAL, 6);
  gtk_widget_set_parent (self->box, GTK_WIDGET (self));
}

static void
add_head (SwRollList *self)
{
  GtkWidget *line = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 6);
  GtkWidget *title = gtk_label_new (_ ("Rolls on Hand, Other Lengths"));

  self->add = gtk_button_new_with_label (_ ("Add"));
  gtk_widget_add_css_class (title, "heading");
  gtk_widget_set_hexpand (title, TRUE);
  gtk_label_set_xalign (GTK_LABEL (title), 0.0f);
  gtk_label_set_wrap (GTK_LABEL (title), TRUE);
  gtk_widget_add_css_class (self->add, "flat");
  gtk_widget_set_tooltip_text (
      self->add, _ ("Rolls or off-cuts of this width that lie ready, or another length "
                    "that can be ordered"));
  g_signal_connect_swapped (self->add, "clicked", G_CALLBACK (on_add), self);
  gtk_box_append (GTK_BOX (line), title);
  gtk_box_append (GTK_BOX (line), self->add);
  gtk_box_append (
      GTK_BOX (line),
      sw_help_button_new ("rolls#stock", gtk_label_get_text (GTK_LABEL (title))));
  gtk_box_append (GTK_BOX (self->box), line);
}

static void
add_column_head (SwRollList *self, int column, const char *words)
{
  GtkWidget *label = gtk_label_new (words);

  gtk_label_set_xalign (GTK_LABEL (label), 0.0f);
  gtk_widget_add_css_class (label, "dim-label");
  gtk_grid_attach (self->grid, label, column, 0, 1, 1);
}

GtkWidget *
sw_roll_list_new (SwStage *stage)
{
  SwRollList *self = g_object_new (SW_TYPE_ROLL_LIST, NULL);

  self->stage = g_object_ref (stage);
  add_head (self);
  self->grid = GTK_GRID (gtk_grid_new ());
  gtk_grid_set_row_spacing (self->grid, 4);
  gtk_grid_set_column_spacing (self->grid, 6);
  add_column_head (self, COLUMN_SOURCE, C_ ("rolls", "Source"));
  add_column_head (self, COLUMN_LENGTH, C_ ("rolls", "Length"));
  add_column_head (self, COLUMN_COUNT, C_ ("rolls", "Count"));
  gtk_box_append (GTK_BOX (self->box), GTK_WIDGET (self->grid));
  g_signal_connect_object (stage, "changed", G_CALLBACK (refresh), self,
                           G_CONNECT_SWAPPED);
  refresh (self);
  return GTK_WIDGET (self);
}

GtkWidget *
sw_roll_list_add_button (SwRollList *self)
{
  return self->add;
}

GtkWidget *
sw_roll_list_length (SwRollList *self, guint index)
{
  Row *row;

  g_return_val_if_fail (index < self->rows->len, NULL);
  row = g_ptr_array_index (self->rows, index);
  return GTK_WIDGET (row->length);
}
