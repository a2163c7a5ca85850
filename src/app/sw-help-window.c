/* SPDX-License-Identifier: MIT */
#include "sw-help-window.h"

#include <glib/gi18n.h>
#include <slopewright/store/help.h>
#include <slopewright/store/store.h>
#include <string.h>

#include "row-name.h"
#include "sw-help-view.h"

#define SIDE_CHARS 24
#define PAGE_KEY "help-page" /* SwHelpPage of a row of the contents */

/* A place on a page: what back and forward go through. */
typedef struct
{
  const SwHelpPage *page;
  int block;
} Place;

struct _SwHelpWindow
{
  GtkWindow parent_instance;
  const SwTexts *texts; /* of the window's language */
  SwHelp *help;
  GtkSearchEntry *search;
  GtkStack *side;
  GtkListBox *contents, *found;
  GtkLabel *count;
  SwHelpView *view;
  GPtrArray *hits; /* (element-type SwHelpHit): what the search found */
  GArray *history; /* (element-type Place) */
  guint at;        /* which of them is shown */
};

G_DEFINE_FINAL_TYPE (SwHelpWindow, sw_help_window, GTK_TYPE_WINDOW)

static const Place *
place_of (SwHelpWindow *self)
{
  return &g_array_index (self->history, Place, self->at);
}

static GtkListBoxRow *
row_of (SwHelpWindow *self, const SwHelpPage *page)
{
  GtkListBoxRow *row;

  for (int i = 0; (row = gtk_list_box_get_row_at_index (self->contents, i)) != NULL; i++)
    if (g_object_get_data (G_OBJECT (row), PAGE_KEY) == page)
      return row;
  return NULL;
}

/* English pages in place of pages of another language, and pages nobody of the trade has
 * read yet, say so. */
static const char *
notice_of (SwHelpWindow *self, const SwHelpPage *page)
{
  if (strcmp (page->language, sw_texts_language (self->texts)) != 0)
    return _ ("This page is there in English only.");
  if (sw_texts_has (self->texts, "language.review"))
    return sw_texts_get (self->texts, "language.review");
  return NULL;
}

static void
show_place (SwHelpWindow *self)
{
  const Place *place = place_of (self);
  /* Translators: title of the help window: the name of the page */
  g_autofree char *title = g_strdup_printf (_ ("%s – Help"), place->page->title);

  gtk_window_set_title (GTK_WINDOW (self), title);
  gtk_list_box_select_row (self->contents, row_of (self, place->page));
  gtk_widget_action_set_enabled (GTK_WIDGET (self), "help.back", self->at > 0);
  gtk_widget_action_set_enabled (GTK_WIDGET (self), "help.forward",
                                 self->at + 1 < self->history->len);
  sw_help_view_show (self->view, place->page, notice_of (self, place->page),
                     place->block);
}

/* A new place ends what could be gone forward to. */
static void
go_to (SwHelpWindow *self, const SwHelpPage *page, int block)
{
  const Place place = { page, block };

  if (self->history->len > 0)
    g_array_set_size (self->history, self->at + 1);
  g_array_append_val (self->history, place);
  self->at = self->history->len - 1;
  show_place (self);
}

gboolean
sw_help_window_go (SwHelpWindow *self, const char *target)
{
  int block;
  const SwHelpPage *page = sw_help_target (self->help, target, &block);

  if (page == NULL)
    return FALSE;
  go_to (self, page, block);
  return TRUE;
}

static void
on_follow (SwHelpWindow *self, const char *target)
{
  sw_help_window_go (self, target);
}

static void
back_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  SwHelpWindow *self = SW_HELP_WINDOW (widget);

  if (self->at == 0)
    return;
  self->at--;
  show_place (self);
}

static void
forward_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  SwHelpWindow *self = SW_HELP_WINDOW (widget);

  if (self->at + 1 >= self->history->len)
    return;
  self->at++;
  show_place (self);
}

static void
search_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  gtk_widget_grab_focus (GTK_WIDGET (SW_HELP_WINDOW (widget)->search));
}

static void
on_contents_row (SwHelpWindow *self, GtkListBoxRow *row)
{
  go_to (self, g_object_get_data (G_OBJECT (row), PAGE_KEY), -1);
}

static void
on_found_row (SwHelpWindow *self, GtkListBoxRow *row)
{
  const SwHelpHit *hit = g_ptr_array_index (self->hits, gtk_list_box_row_get_index (row));

  go_to (self, hit->page, hit->block);
}

static GtkWidget *
make_side_label (const char *text, const char *css_class)
{
  GtkWidget *label = gtk_label_new (text);

  gtk_label_set_xalign (GTK_LABEL (label), 0.0f);
  gtk_label_set_wrap (GTK_LABEL (label), TRUE);
  gtk_label_set_width_chars (GTK_LABEL (label), SIDE_CHARS);
  gtk_label_set_max_width_chars (GTK_LABEL (label), SIDE_CHARS);
  if (css_class != NULL)
    gtk_widget_add_css_class (label, css_class);
  return label;
}

/* "Pins: Trial pins". */
static char *
title_of (const SwHelpHit *hit)
{
  const SwHelpBlock *block =
      hit->block >= 0 ? g_ptr_array_index (hit->page->blocks, (guint) hit->block) : NULL;
  g_autofree char *heading =
      block != NULL ? sw_help_line_text (g_ptr_array_index (block->lines, 0)) : NULL;

  /* Translators: a page of the help and a heading on it */
  return heading != NULL ? g_strdup_printf (_ ("%s: %s"), hit->page->title, heading)
                         : g_strdup (hit->page->title);
}

static GtkWidget *
make_found_row (const SwHelpHit *hit)
{
  GtkWidget *row = gtk_list_box_row_new ();
  GtkWidget *lines = gtk_box_new (GTK_ORIENTATION_VERTICAL, 2);
  g_autofree char *title = title_of (hit);
  GtkWidget *head = make_side_label (title, "finding-head");
  GtkWidget *line = make_side_label (hit->line, "dim-label");

  gtk_label_set_lines (GTK_LABEL (line), 2);
  gtk_label_set_ellipsize (GTK_LABEL (line), PANGO_ELLIPSIZE_END);
  gtk_box_append (GTK_BOX (lines), head);
  gtk_box_append (GTK_BOX (lines), line);
  gtk_list_box_row_set_child (GTK_LIST_BOX_ROW (row), lines);
  sw_row_name (row, head, line);
  return row;
}

static void
show_found (SwHelpWindow *self)
{
  GtkListBoxRow *row;
  g_autofree char *count = g_strdup_printf (
      ngettext ("%u place", "%u places", self->hits->len), self->hits->len);

  while ((row = gtk_list_box_get_row_at_index (self->found, 0)) != NULL)
    gtk_list_box_remove (self->found, GTK_WIDGET (row));
  for (guint i = 0; i < self->hits->len; i++)
    gtk_list_box_append (self->found, make_found_row (g_ptr_array_index (self->hits, i)));
  gtk_label_set_text (self->count,
                      self->hits->len > 0
                          ? count
                          : _ ("Nothing found. Fewer or shorter words find more."));
}

static void
on_search (SwHelpWindow *self)
{
  const char *words = gtk_editable_get_text (GTK_EDITABLE (self->search));
  gboolean any = words[strspn (words, " ")] != '\0';

  g_ptr_array_unref (self->hits);
  self->hits = sw_help_search (self->help, words);
  show_found (self);
  gtk_stack_set_visible_child_name (self->side, any ? "found" : "contents");
}

/* Enter opens what fits best. */
static void
on_search_activated (SwHelpWindow *self)
{
  GtkListBoxRow *row;

  on_search (self); /* the entry waits a moment before it says so itself */
  row = gtk_list_box_get_row_at_index (self->found, 0);
  if (row != NULL)
    on_found_row (self, row);
}

static void
on_search_stopped (SwHelpWindow *self)
{
  gtk_editable_set_text (GTK_EDITABLE (self->search), "");
}

void
sw_help_window_search (SwHelpWindow *self, const char *words)
{
  gtk_editable_set_text (GTK_EDITABLE (self->search), words);
  on_search_activated (self);
}

const char *
sw_help_window_page (SwHelpWindow *self)
{
  return place_of (self)->page->name;
}

guint
sw_help_window_found (SwHelpWindow *self)
{
  return self->hits->len;
}

static void
add_group (SwHelpWindow *self, const char *title)
{
  GtkWidget *row = gtk_list_box_row_new ();
  GtkWidget *label = make_side_label (title, "heading");

  gtk_list_box_row_set_child (GTK_LIST_BOX_ROW (row), label);
  sw_row_name (row, label, NULL);
  gtk_list_box_row_set_selectable (GTK_LIST_BOX_ROW (row), FALSE);
  gtk_list_box_row_set_activatable (GTK_LIST_BOX_ROW (row), FALSE);
  gtk_widget_set_focusable (row, FALSE);
  gtk_list_box_append (self->contents, row);
}

static void
add_pages (SwHelpWindow *self, const SwHelpBlock *block)
{
  for (guint i = 0; i < block->lines->len; i++)
    {
      const GPtrArray *line = g_ptr_array_index (block->lines, i);
      const SwHelpSpan *link = g_ptr_array_index (line, 0);
      const SwHelpPage *page = sw_help_page (self->help, link->target);
      GtkWidget *row = gtk_list_box_row_new ();
      GtkWidget *label = make_side_label (page->title, NULL);

      gtk_list_box_row_set_child (GTK_LIST_BOX_ROW (row), label);
      sw_row_name (row, label, NULL);
      g_object_set_data (G_OBJECT (row), PAGE_KEY, (gpointer) page);
      gtk_list_box_append (self->contents, row);
    }
}

static void
fill_contents (SwHelpWindow *self)
{
  const SwHelpPage *contents = sw_help_page (self->help, SW_HELP_CONTENTS);

  for (guint i = 0; i < contents->blocks->len; i++)
    {
      const SwHelpBlock *block = g_ptr_array_index (contents->blocks, i);
      g_autofree char *text = sw_help_line_text (g_ptr_array_index (block->lines, 0));
      if (block->kind == SW_HELP_HEADING)
        add_group (self, text);
      else
        add_pages (self, block);
    }
}

static GtkWidget *
make_scrolled (GtkWidget *child)
{
  GtkWidget *scrolled = gtk_scrolled_window_new ();

  gtk_scrolled_window_set_policy (GTK_SCROLLED_WINDOW (scrolled), GTK_POLICY_NEVER,
                                  GTK_POLICY_AUTOMATIC);
  gtk_scrolled_window_set_child (GTK_SCROLLED_WINDOW (scrolled), child);
  gtk_widget_set_vexpand (scrolled, TRUE);
  return scrolled;
}

static GtkListBox *
make_list (const char *label)
{
  GtkWidget *list = gtk_list_box_new ();

  gtk_widget_add_css_class (list, "navigation-sidebar");
  gtk_accessible_update_property (GTK_ACCESSIBLE (list), GTK_ACCESSIBLE_PROPERTY_LABEL,
                                  label, -1);
  return GTK_LIST_BOX (list);
}

static GtkWidget *
make_found (SwHelpWindow *self)
{
  GtkWidget *box = gtk_box_new (GTK_ORIENTATION_VERTICAL, 4);

  self->count =
      g_object_new (GTK_TYPE_LABEL, "accessible-role", GTK_ACCESSIBLE_ROLE_STATUS,
                    "xalign", 0.0f, "wrap", TRUE, "max-width-chars", SIDE_CHARS, NULL);
  gtk_widget_add_css_class (GTK_WIDGET (self->count), "help-count");
  self->found = make_list (_ ("Places found"));
  gtk_box_append (GTK_BOX (box), GTK_WIDGET (self->count));
  gtk_box_append (GTK_BOX (box), make_scrolled (GTK_WIDGET (self->found)));
  return box;
}

static void
make_search (SwHelpWindow *self)
{
  self->search = GTK_SEARCH_ENTRY (gtk_search_entry_new ());
  g_object_set (self->search, "placeholder-text", _ ("Search the help"), NULL);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self->search),
                                  GTK_ACCESSIBLE_PROPERTY_LABEL, _ ("Search the help"),
                                  -1);
  gtk_widget_add_css_class (GTK_WIDGET (self->search), "help-search");
  g_signal_connect_swapped (self->search, "search-changed", G_CALLBACK (on_search), self);
  g_signal_connect_swapped (self->search, "activate", G_CALLBACK (on_search_activated),
                            self);
  g_signal_connect_swapped (self->search, "stop-search", G_CALLBACK (on_search_stopped),
                            self);
}

static GtkWidget *
make_side (SwHelpWindow *self)
{
  GtkWidget *box = gtk_box_new (GTK_ORIENTATION_VERTICAL, 0);

  make_search (self);
  self->side = GTK_STACK (gtk_stack_new ());
  self->contents = make_list (_ ("Contents"));
  gtk_stack_add_named (self->side, make_scrolled (GTK_WIDGET (self->contents)),
                       "contents");
  gtk_stack_add_named (self->side, make_found (self), "found");
  g_signal_connect_swapped (self->contents, "row-activated", G_CALLBACK (on_contents_row),
                            self);
  g_signal_connect_swapped (self->found, "row-activated", G_CALLBACK (on_found_row),
                            self);
  gtk_box_append (GTK_BOX (box), GTK_WIDGET (self->search));
  gtk_box_append (GTK_BOX (box), GTK_WIDGET (self->side));
  return box;
}

static GtkWidget *
make_header_button (const char *icon, const char *action, const char *tooltip,
                    const char *label)
{
  GtkWidget *button = gtk_button_new_from_icon_name (icon);

  gtk_actionable_set_action_name (GTK_ACTIONABLE (button), action);
  gtk_widget_set_tooltip_text (button, tooltip);
  gtk_accessible_update_property (GTK_ACCESSIBLE (button), GTK_ACCESSIBLE_PROPERTY_LABEL,
                                  label, -1);
  return button;
}

static GtkWidget *
make_header (void)
{
  GtkWidget *header = gtk_header_bar_new ();

  gtk_header_bar_pack_start (GTK_HEADER_BAR (header),
                             make_header_button ("go-previous-symbolic", "help.back",
                                                 _ ("Back (Alt+Left)"), _ ("Back")));
  gtk_header_bar_pack_start (GTK_HEADER_BAR (header),
                             make_header_button ("go-next-symbolic", "help.forward",
                                                 _ ("Forward (Alt+Right)"),
                                                 _ ("Forward")));
  return header;
}

static void
sw_help_window_finalize (GObject *object)
{
  SwHelpWindow *self = SW_HELP_WINDOW (object);

  sw_help_free (self->help);
  g_ptr_array_unref (self->hits);
  g_array_unref (self->history);
  G_OBJECT_CLASS (sw_help_window_parent_class)->finalize (object);
}

static void
sw_help_window_class_init (SwHelpWindowClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->finalize = sw_help_window_finalize;
  gtk_widget_class_install_action (widget_class, "help.back", NULL, back_action);
  gtk_widget_class_install_action (widget_class, "help.forward", NULL, forward_action);
  gtk_widget_class_install_action (widget_class, "help.search", NULL, search_action);
  gtk_widget_class_add_binding_action (widget_class, GDK_KEY_Left, GDK_ALT_MASK,
                                       "help.back", NULL);
  gtk_widget_class_add_binding_action (widget_class, GDK_KEY_Right, GDK_ALT_MASK,
                                       "help.forward", NULL);
  gtk_widget_class_add_binding_action (widget_class, GDK_KEY_f, GDK_CONTROL_MASK,
                                       "help.search", NULL);
  gtk_widget_class_add_binding_action (widget_class, GDK_KEY_Escape, 0, "window.close",
                                       NULL);
}

static void
sw_help_window_init (SwHelpWindow *self)
{
  self->hits = g_ptr_array_new ();
  self->history = g_array_new (FALSE, FALSE, sizeof (Place));
  gtk_window_set_default_size (GTK_WINDOW (self), 980, 760);
  gtk_window_set_titlebar (GTK_WINDOW (self), make_header ());
}

GtkWidget *
sw_help_window_new (const SwStock *stock, SwUnitSystem units)
{
  SwHelpWindow *self = g_object_new (SW_TYPE_HELP_WINDOW, NULL);
  GtkWidget *paned = gtk_paned_new (GTK_ORIENTATION_HORIZONTAL);
  g_autoptr (GtkWindowGroup) group = NULL;

  self->texts = stock->texts;
  self->help = sw_help_load (sw_texts_language (stock->texts));
  self->view = SW_HELP_VIEW (sw_help_view_new (stock, units));
  g_signal_connect_swapped (self->view, "follow", G_CALLBACK (on_follow), self);
  gtk_paned_set_wide_handle (GTK_PANED (paned), TRUE);
  gtk_accessible_update_property (GTK_ACCESSIBLE (paned), GTK_ACCESSIBLE_PROPERTY_LABEL,
                                  _ ("Movable border"), -1);
  gtk_paned_set_start_child (GTK_PANED (paned), make_side (self));
  gtk_paned_set_end_child (GTK_PANED (paned), GTK_WIDGET (self->view));
  gtk_paned_set_resize_start_child (GTK_PANED (paned), FALSE);
  gtk_paned_set_shrink_start_child (GTK_PANED (paned), FALSE);
  gtk_paned_set_shrink_end_child (GTK_PANED (paned), FALSE);
  gtk_window_set_child (GTK_WINDOW (self), paned);
  /* Of a group of its own: a dialog that waits for an answer does not keep it waiting. */
  group = gtk_window_group_new ();
  gtk_window_group_add_window (group, GTK_WINDOW (self));
  fill_contents (self);
  gtk_search_entry_set_key_capture_widget (self->search, GTK_WIDGET (self));
  go_to (self, g_ptr_array_index (self->help->pages, 1), -1);
  return GTK_WIDGET (self);
}
