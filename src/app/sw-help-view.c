/* SPDX-License-Identifier: MIT */
#include "sw-help-view.h"

#include <glib/gi18n.h>
#include <string.h>

#include "briefing-text.h"
#include "help-figure.h"
#include "help-markup.h"
#include "sw-figure-view.h"
#include "sw-heading.h"

/* A line that is easy to read. */
#define LINE_CHARS 72
#define CELL_CHARS 40
#define FIRST_CELL_CHARS 30

#define FIGURES_CLASS "help-figures"

struct _SwHelpView
{
  GtkWidget parent_instance;
  const SwStock *stock;
  SwUnitSystem units;
  GtkScrolledWindow *scroller;
  GtkBox *box;       /* of the page shown */
  GPtrArray *blocks; /* (element-type GtkWidget): the title, then the page's blocks */
  int wanted;        /* block to bring to the top once there is a layout */
  guint frames;      /* since it was wanted */
  guint tick;
};

G_DEFINE_FINAL_TYPE (SwHelpView, sw_help_view, GTK_TYPE_WIDGET)

static guint follow_signal;

static gboolean
on_link (SwHelpView *self, const char *target)
{
  g_autofree char *kept = g_strdup (target);

  g_signal_emit (self, follow_signal, 0, kept);
  return GDK_EVENT_STOP;
}

static GtkWidget *
make_label (SwHelpView *self, const GPtrArray *line, int chars)
{
  GtkWidget *label = gtk_label_new (NULL);
  g_autofree char *markup = sw_help_markup (line);

  gtk_label_set_markup (GTK_LABEL (label), markup);
  gtk_label_set_wrap (GTK_LABEL (label), TRUE);
  gtk_label_set_xalign (GTK_LABEL (label), 0.0f);
  gtk_label_set_max_width_chars (GTK_LABEL (label), chars);
  gtk_widget_set_halign (label, GTK_ALIGN_START);
  gtk_widget_set_valign (label, GTK_ALIGN_START);
  g_signal_connect_swapped (label, "activate-link", G_CALLBACK (on_link), self);
  return label;
}

static GtkWidget *
make_heading (const SwHelpBlock *block)
{
  g_autofree char *text = sw_help_line_text (g_ptr_array_index (block->lines, 0));

  return sw_heading_new (text, block->kind == SW_HELP_HEADING ? 2 : 3, LINE_CHARS);
}

static GtkWidget *
make_list (SwHelpView *self, const SwHelpBlock *block)
{
  GtkWidget *list =
      g_object_new (GTK_TYPE_GRID, "accessible-role", GTK_ACCESSIBLE_ROLE_LIST,
                    "row-spacing", 4, "column-spacing", 8, NULL);

  for (guint i = 0; i < block->lines->len; i++)
    {
      g_autofree char *number =
          block->kind == SW_HELP_STEPS ? g_strdup_printf ("%u.", i + 1) : g_strdup ("•");
      GtkWidget *mark = gtk_label_new (number);
      gtk_widget_set_valign (mark, GTK_ALIGN_START);
      gtk_label_set_xalign (GTK_LABEL (mark), 1.0f);
      gtk_grid_attach (GTK_GRID (list), mark, 0, (int) i, 1, 1);
      gtk_grid_attach (GTK_GRID (list),
                       make_label (self, g_ptr_array_index (block->lines, i), LINE_CHARS),
                       1, (int) i, 1, 1);
    }
  gtk_widget_add_css_class (list, "help-list");
  return list;
}

static gboolean
is_of_keys (const GPtrArray *line)
{
  gboolean any = FALSE;

  for (guint i = 0; i < line->len; i++)
    {
      const SwHelpSpan *span = g_ptr_array_index (line, i);
      if (span->kind == SW_HELP_KEY)
        any = TRUE;
      else if (span->text[strspn (span->text, " ")] != '\0')
        return FALSE;
    }
  return any;
}

/* Keys alone in a cell are drawn as caps. */
static GtkWidget *
make_keys (const GPtrArray *line)
{
  GtkWidget *row = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 6);

  for (guint i = 0; i < line->len; i++)
    {
      const SwHelpSpan *span = g_ptr_array_index (line, i);
      g_autofree char *name = NULL;
      GtkWidget *cap;
      if (span->kind != SW_HELP_KEY)
        continue;
      name = sw_help_key_name (span->text);
      cap = gtk_label_new (name);
      gtk_widget_add_css_class (cap, "help-key");
      gtk_box_append (GTK_BOX (row), cap);
    }
  gtk_widget_set_valign (row, GTK_ALIGN_START);
  return row;
}

static GtkWidget *
make_cell (SwHelpView *self, const SwHelpBlock *block, guint index)
{
  const GPtrArray *line = g_ptr_array_index (block->lines, index);
  gboolean first = index % block->columns == 0;
  GtkWidget *cell = is_of_keys (line)
                        ? make_keys (line)
                        : make_label (self, line, first ? FIRST_CELL_CHARS : CELL_CHARS);

  gtk_widget_add_css_class (cell, index < block->columns ? "help-head" : "help-cell");
  gtk_widget_set_halign (cell, GTK_ALIGN_FILL); /* its rule goes on to the next */
  gtk_widget_set_valign (cell, GTK_ALIGN_FILL);
  if (GTK_IS_LABEL (cell))
    gtk_label_set_yalign (GTK_LABEL (cell), 0.0f);
  return cell;
}

static GtkWidget *
make_table (SwHelpView *self, const SwHelpBlock *block)
{
  GtkWidget *table = gtk_grid_new ();

  for (guint i = 0; i < block->lines->len; i++)
    gtk_grid_attach (GTK_GRID (table), make_cell (self, block, i),
                     (int) (i % block->columns), (int) (i / block->columns), 1, 1);
  gtk_widget_set_halign (table, GTK_ALIGN_START);
  gtk_widget_add_css_class (table, "help-table");
  return table;
}

static GtkWidget *
make_caution (SwHelpView *self, const SwHelpBlock *block)
{
  GtkWidget *row = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 10);
  GtkWidget *icon = gtk_image_new_from_icon_name ("dialog-warning-symbolic");

  gtk_widget_set_valign (icon, GTK_ALIGN_START);
  gtk_widget_set_halign (row, GTK_ALIGN_START);
  gtk_accessible_update_property (GTK_ACCESSIBLE (icon), GTK_ACCESSIBLE_PROPERTY_LABEL,
                                  _ ("Caution"), -1);
  gtk_box_append (GTK_BOX (row), icon);
  gtk_box_append (GTK_BOX (row),
                  make_label (self, g_ptr_array_index (block->lines, 0), LINE_CHARS - 4));
  gtk_widget_add_css_class (row, "help-caution");
  return row;
}

static GtkWidget *
make_figure (SwHelpView *self, const SwHelpBlock *block)
{
  g_autofree char *label = sw_help_line_text (g_ptr_array_index (block->lines, 0));
  SwFigure *figure = sw_help_figure (self->stock, self->units, block->figure);
  GtkWidget *box = gtk_box_new (GTK_ORIENTATION_VERTICAL, 4);
  GtkWidget *caption = make_label (self, g_ptr_array_index (block->lines, 0), CELL_CHARS);

  g_return_val_if_fail (figure != NULL, caption);
  gtk_box_append (GTK_BOX (box),
                  sw_figure_view_new (figure, self->stock->palette, label));
  gtk_widget_add_css_class (caption, "dim-label");
  gtk_box_append (GTK_BOX (box), caption);
  return box;
}

static GtkWidget *
make_block (SwHelpView *self, const SwHelpBlock *block)
{
  switch (block->kind)
    {
    case SW_HELP_HEADING:
    case SW_HELP_SUBHEADING:
      return make_heading (block);
    case SW_HELP_POINTS:
    case SW_HELP_STEPS:
      return make_list (self, block);
    case SW_HELP_TABLE:
      return make_table (self, block);
    case SW_HELP_CAUTION:
      return make_caution (self, block);
    case SW_HELP_FIGURE:
      return make_figure (self, block);
    default:
      return make_label (self, g_ptr_array_index (block->lines, 0), LINE_CHARS);
    }
}

/* Drawings one after the other stand side by side. */
static void
add_figure (SwHelpView *self, GtkWidget *figure)
{
  GtkWidget *last = gtk_widget_get_last_child (GTK_WIDGET (self->box));

  if (last == NULL || !gtk_widget_has_css_class (last, FIGURES_CLASS))
    {
      last = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 18);
      gtk_widget_add_css_class (last, FIGURES_CLASS);
      gtk_box_append (self->box, last);
    }
  gtk_box_append (GTK_BOX (last), figure);
}

static void
add_block (SwHelpView *self, GtkWidget *block, gboolean is_figure)
{
  if (is_figure)
    add_figure (self, block);
  else
    gtk_box_append (self->box, block);
  g_ptr_array_add (self->blocks, block);
}

GtkWidget *
sw_help_view_block (SwHelpView *self, int block)
{
  g_return_val_if_fail (block >= -1 && block + 1 < (int) self->blocks->len, NULL);
  return g_ptr_array_index (self->blocks, block + 1);
}

/* A place is known once the page is laid out: in the second frame at the latest. */
static gboolean
on_frame (GtkWidget *widget, GdkFrameClock *clock, gpointer data)
{
  SwHelpView *self = SW_HELP_VIEW (widget);
  GtkAdjustment *down = gtk_scrolled_window_get_vadjustment (self->scroller);
  graphene_rect_t at;

  if (self->frames++ < 2)
    return G_SOURCE_CONTINUE;
  if (self->wanted < 0)
    gtk_adjustment_set_value (down, 0.0);
  else if (gtk_widget_compute_bounds (sw_help_view_block (self, self->wanted),
                                      GTK_WIDGET (self->box), &at))
    gtk_adjustment_set_value (down, at.origin.y);
  self->tick = 0;
  return G_SOURCE_REMOVE;
}

static void
bring_to_top (SwHelpView *self, int block)
{
  gtk_widget_grab_focus (sw_help_view_block (self, block));
  self->wanted = block;
  self->frames = 0;
  if (self->tick == 0)
    self->tick = gtk_widget_add_tick_callback (GTK_WIDGET (self), on_frame, NULL, NULL);
}

void
sw_help_view_show (SwHelpView *self, const SwHelpPage *page, const char *notice,
                   int block)
{
  self->box = GTK_BOX (gtk_box_new (GTK_ORIENTATION_VERTICAL, 10));
  gtk_widget_add_css_class (GTK_WIDGET (self->box), "help-page");
  g_ptr_array_set_size (self->blocks, 0);
  add_block (self, sw_heading_new (page->title, 1, LINE_CHARS), FALSE);
  if (notice != NULL)
    {
      g_autofree char *markup = sw_briefing_markup (notice, 1.0);
      GtkWidget *label = gtk_label_new (NULL);
      gtk_label_set_markup (GTK_LABEL (label), markup);
      gtk_label_set_wrap (GTK_LABEL (label), TRUE);
      gtk_label_set_xalign (GTK_LABEL (label), 0.0f);
      gtk_widget_add_css_class (label, "help-notice");
      gtk_box_append (self->box, label);
    }
  for (guint i = 0; i < page->blocks->len; i++)
    {
      const SwHelpBlock *of_page = g_ptr_array_index (page->blocks, i);
      add_block (self, make_block (self, of_page), of_page->kind == SW_HELP_FIGURE);
    }
  gtk_scrolled_window_set_child (self->scroller, GTK_WIDGET (self->box));
  bring_to_top (self, block);
}

static void
sw_help_view_dispose (GObject *object)
{
  SwHelpView *self = SW_HELP_VIEW (object);

  if (self->tick != 0)
    gtk_widget_remove_tick_callback (GTK_WIDGET (self), self->tick);
  self->tick = 0;
  if (self->scroller != NULL)
    gtk_widget_unparent (GTK_WIDGET (self->scroller));
  self->scroller = NULL;
  G_OBJECT_CLASS (sw_help_view_parent_class)->dispose (object);
}

static void
sw_help_view_finalize (GObject *object)
{
  g_ptr_array_unref (SW_HELP_VIEW (object)->blocks);
  G_OBJECT_CLASS (sw_help_view_parent_class)->finalize (object);
}

static void
sw_help_view_class_init (SwHelpViewClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = sw_help_view_dispose;
  G_OBJECT_CLASS (klass)->finalize = sw_help_view_finalize;
  gtk_widget_class_set_layout_manager_type (GTK_WIDGET_CLASS (klass),
                                            GTK_TYPE_BIN_LAYOUT);
  gtk_widget_class_set_css_name (GTK_WIDGET_CLASS (klass), "help");
  follow_signal = g_signal_new ("follow", G_TYPE_FROM_CLASS (klass), G_SIGNAL_RUN_LAST, 0,
                                NULL, NULL, NULL, G_TYPE_NONE, 1, G_TYPE_STRING);
}

static void
sw_help_view_init (SwHelpView *self)
{
  self->blocks = g_ptr_array_new ();
  self->scroller = GTK_SCROLLED_WINDOW (gtk_scrolled_window_new ());
  gtk_widget_set_hexpand (GTK_WIDGET (self->scroller), TRUE);
  gtk_widget_set_vexpand (GTK_WIDGET (self->scroller), TRUE);
  gtk_widget_set_parent (GTK_WIDGET (self->scroller), GTK_WIDGET (self));
}

GtkWidget *
sw_help_view_new (const SwStock *stock, SwUnitSystem units)
{
  SwHelpView *self = g_object_new (SW_TYPE_HELP_VIEW, NULL);

  self->stock = stock;
  self->units = units;
  return GTK_WIDGET (self);
}
