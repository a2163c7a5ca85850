/* SPDX-License-Identifier: MIT */
#include "sw-tally-bar.h"

#include <glib/gi18n.h>
#include <slopewright/sheet/report.h>

#include "tally-cells.h"

typedef struct
{
  SwTallyBar *bar;
  const SwTallyCell *cell;
  GtkMenuButton *button;
  GtkLabel *value, *why;
} Cell;

struct _SwTallyBar
{
  GtkWidget parent_instance;
  SwStage *stage;
  GtkWidget *box;
  Cell *cells; /* as many as sw_tally_cells() */
};

G_DEFINE_FINAL_TYPE (SwTallyBar, sw_tally_bar, GTK_TYPE_WIDGET)

static void
refresh_cell (Cell *cell)
{
  SwStage *stage = cell->bar->stage;
  g_autofree char *text =
      sw_tally_cell_text (cell->cell, sw_stage_result (stage), sw_stage_style (stage));
  const char *title = _ (cell->cell->title);

  gtk_label_set_text (cell->value, text);
  gtk_accessible_update_property (GTK_ACCESSIBLE (cell->button),
                                  GTK_ACCESSIBLE_PROPERTY_LABEL, title,
                                  GTK_ACCESSIBLE_PROPERTY_DESCRIPTION, text, -1);
}

static void
refresh (SwTallyBar *self)
{
  for (guint i = 0; i < SW_TALLY_CELLS; i++)
    refresh_cell (&self->cells[i]);
}

/* Made when it opens: nobody reads a working that is not on show. */
static void
on_open (Cell *cell)
{
  SwStage *stage = cell->bar->stage;
  g_autofree char *words =
      sw_tally_cell_working (cell->cell, sw_stage_result (stage),
                             sw_stage_stock (stage)->texts, sw_stage_style (stage));

  gtk_label_set_text (cell->why, words);
}

static GtkWidget *
make_why (Cell *cell)
{
  GtkWidget *popover = gtk_popover_new ();
  GtkWidget *scrolled = gtk_scrolled_window_new ();

  cell->why = GTK_LABEL (gtk_label_new (NULL));
  gtk_label_set_wrap (cell->why, TRUE);
  gtk_label_set_selectable (cell->why, TRUE);
  gtk_label_set_xalign (cell->why, 0.0f);
  gtk_label_set_yalign (cell->why, 0.0f);
  gtk_label_set_width_chars (cell->why, 52);
  gtk_label_set_max_width_chars (cell->why, 60);
  gtk_scrolled_window_set_policy (GTK_SCROLLED_WINDOW (scrolled), GTK_POLICY_NEVER,
                                  GTK_POLICY_AUTOMATIC);
  gtk_scrolled_window_set_propagate_natural_height (GTK_SCROLLED_WINDOW (scrolled), TRUE);
  gtk_scrolled_window_set_max_content_height (GTK_SCROLLED_WINDOW (scrolled), 420);
  gtk_scrolled_window_set_child (GTK_SCROLLED_WINDOW (scrolled), GTK_WIDGET (cell->why));
  gtk_popover_set_child (GTK_POPOVER (popover), scrolled);
  gtk_widget_add_css_class (popover, "working");
  g_signal_connect_swapped (popover, "show", G_CALLBACK (on_open), cell);
  return popover;
}

static void
make_cell (SwTallyBar *self, Cell *cell, const SwTallyCell *kind)
{
  GtkWidget *lines = gtk_box_new (GTK_ORIENTATION_VERTICAL, 0);
  GtkWidget *title = gtk_label_new (_ (kind->title));

  *cell = (Cell){ .bar = self, .cell = kind };
  cell->button = GTK_MENU_BUTTON (gtk_menu_button_new ());
  cell->value = GTK_LABEL (gtk_label_new ("–"));
  gtk_label_set_xalign (GTK_LABEL (title), 0.0f);
  gtk_label_set_xalign (cell->value, 0.0f);
  gtk_widget_add_css_class (title, "tally-title");
  gtk_widget_add_css_class (GTK_WIDGET (cell->value), "tally-value");
  gtk_box_append (GTK_BOX (lines), title);
  gtk_box_append (GTK_BOX (lines), GTK_WIDGET (cell->value));
  gtk_menu_button_set_child (cell->button, lines);
  gtk_menu_button_set_has_frame (cell->button, FALSE);
  gtk_menu_button_set_direction (cell->button, GTK_ARROW_UP);
  gtk_menu_button_set_popover (cell->button, make_why (cell));
  gtk_widget_set_tooltip_text (GTK_WIDGET (cell->button), _ ("Why this number?"));
  gtk_box_append (GTK_BOX (self->box), GTK_WIDGET (cell->button));
}

static void
sw_tally_bar_dispose (GObject *object)
{
  SwTallyBar *self = SW_TALLY_BAR (object);

  g_clear_pointer (&self->box, gtk_widget_unparent);
  g_clear_object (&self->stage);
  G_OBJECT_CLASS (sw_tally_bar_parent_class)->dispose (object);
}

static void
sw_tally_bar_finalize (GObject *object)
{
  g_free (SW_TALLY_BAR (object)->cells);
  G_OBJECT_CLASS (sw_tally_bar_parent_class)->finalize (object);
}

static void
sw_tally_bar_class_init (SwTallyBarClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = sw_tally_bar_dispose;
  G_OBJECT_CLASS (klass)->finalize = sw_tally_bar_finalize;
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BIN_LAYOUT);
  gtk_widget_class_set_css_name (widget_class, "tally-bar");
}

static void
sw_tally_bar_init (SwTallyBar *self)
{
  self->cells = g_new0 (Cell, SW_TALLY_CELLS);
  self->box = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 6);
  gtk_widget_set_parent (self->box, GTK_WIDGET (self));
  for (guint i = 0; i < SW_TALLY_CELLS; i++)
    make_cell (self, &self->cells[i], sw_tally_cell (i));
}

GtkWidget *
sw_tally_bar_new (void)
{
  return g_object_new (SW_TYPE_TALLY_BAR, NULL);
}

void
sw_tally_bar_set_stage (SwTallyBar *self, SwStage *stage)
{
  g_return_if_fail (self->stage == NULL && SW_IS_STAGE (stage));

  self->stage = g_object_ref (stage);
  g_signal_connect_object (stage, "changed", G_CALLBACK (refresh), self,
                           G_CONNECT_SWAPPED);
  refresh (self);
}

const char *
sw_tally_bar_text (SwTallyBar *self, const char *code)
{
  for (guint i = 0; i < SW_TALLY_CELLS; i++)
    if (g_str_equal (self->cells[i].cell->code, code))
      return gtk_label_get_text (self->cells[i].value);
  return NULL;
}
