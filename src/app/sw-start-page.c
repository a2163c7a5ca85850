/* SPDX-License-Identifier: MIT */
#include "sw-start-page.h"

#include <glib/gi18n.h>
#include <slopewright/document/draft.h>

#include "start-choices.h"

#define MOST_RECENT 8
/* Of a line of a row: two columns of them are as wide as eyes like to go. */
#define MOST_CHARS 52

struct _SwStartPage
{
  GtkWidget parent_instance;
  GtkWidget *scroller;
  GtkBox *drafts, *recent, *templates, *examples;
  GtkWidget *drafts_part, *recent_part, *templates_part;
};

G_DEFINE_FINAL_TYPE (SwStartPage, sw_start_page, GTK_TYPE_WIDGET)

static GtkWidget *
make_label (const char *text, const char *style)
{
  GtkWidget *label = gtk_label_new (text);

  gtk_label_set_xalign (GTK_LABEL (label), 0.0f);
  gtk_label_set_wrap (GTK_LABEL (label), TRUE);
  gtk_label_set_natural_wrap_mode (GTK_LABEL (label), GTK_NATURAL_WRAP_NONE);
  gtk_label_set_max_width_chars (GTK_LABEL (label), MOST_CHARS);
  if (style != NULL)
    gtk_widget_add_css_class (label, style);
  return label;
}

/* A wide button of two lines: what it is, and a word on it. */
static GtkWidget *
make_row (const char *name, const char *note, const char *action, GVariant *target)
{
  GtkWidget *button = gtk_button_new ();
  GtkWidget *lines = gtk_box_new (GTK_ORIENTATION_VERTICAL, 0);
  g_autofree char *spoken = g_strdup_printf ("%s, %s", name, note);

  gtk_box_append (GTK_BOX (lines), make_label (name, NULL));
  gtk_box_append (GTK_BOX (lines), make_label (note, "dim-label"));
  gtk_button_set_child (GTK_BUTTON (button), lines);
  gtk_widget_set_hexpand (button, TRUE);
  gtk_actionable_set_action_target_value (GTK_ACTIONABLE (button), target);
  gtk_actionable_set_action_name (GTK_ACTIONABLE (button), action);
  gtk_accessible_update_property (GTK_ACCESSIBLE (button), GTK_ACCESSIBLE_PROPERTY_LABEL,
                                  spoken, -1);
  return button;
}

static GtkWidget *
make_part (const char *title, GtkBox **rows)
{
  GtkWidget *part = gtk_box_new (GTK_ORIENTATION_VERTICAL, 6);

  *rows = GTK_BOX (gtk_box_new (GTK_ORIENTATION_VERTICAL, 4));
  gtk_box_append (GTK_BOX (part), make_label (title, "heading"));
  gtk_box_append (GTK_BOX (part), GTK_WIDGET (*rows));
  return part;
}

static GtkWidget *
make_new_part (void)
{
  static const struct
  {
    const char *name, *note, *how;
  } ways[] = {
    { N_ ("Face length and angle"),
      N_ ("a tape laid on the face, and a level on a board"), "taped-angle" },
    { N_ ("Rise and gradient"), N_ ("a levelled height, and a gradient from the plans"),
      "rise-ratio" },
    { N_ ("Run and rise"), N_ ("both from a rod and level, or from the plans"),
      "run-rise" },
    { N_ ("Four sides and a diagonal"), N_ ("a tape alone, all of it in the face"),
      "taped-shape" },
  };
  GtkBox *rows;
  GtkWidget *part = make_part (_ ("New slope by what was measured"), &rows);

  for (gsize i = 0; i < G_N_ELEMENTS (ways); i++)
    gtk_box_append (rows, make_row (_ (ways[i].name), _ (ways[i].note), "win.measure",
                                    g_variant_new_string (ways[i].how)));
  gtk_box_append (rows,
                  make_row (_ ("Draw it"), _ ("drag and type the points of a section"),
                            "win.show-view", g_variant_new_string ("drawing")));
  gtk_box_append (rows, make_row (_ ("Nothing yet"),
                                  _ ("a blank form to take to the slope, as a PDF"),
                                  "win.export-form", NULL));
  return part;
}

static void
clear (GtkBox *rows)
{
  GtkWidget *child;

  while ((child = gtk_widget_get_first_child (GTK_WIDGET (rows))) != NULL)
    gtk_box_remove (rows, child);
}

static void
add_draft (SwStartPage *self, const SwLostDraft *draft)
{
  GtkWidget *row = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 4);
  GtkWidget *discard = gtk_button_new_from_icon_name ("user-trash-symbolic");
  g_autoptr (GDateTime) time = g_date_time_new_from_unix_local (draft->saved_at);
  g_autofree char *date = g_date_time_format (time, "%x %X");
  g_autofree char *when =
      draft->origin_changed
          ? g_strdup_printf (_ ("%s; its file was changed since then"), date)
          : g_strdup (date);
  const char *name = draft->name[0] != '\0' ? draft->name : _ ("Untitled job");
  g_autofree char *words = g_strdup_printf (_ ("Discard the draft of %s"), name);

  gtk_actionable_set_action_target_value (GTK_ACTIONABLE (discard),
                                          g_variant_new_string (draft->path));
  gtk_actionable_set_action_name (GTK_ACTIONABLE (discard), "win.discard-draft");
  gtk_widget_set_tooltip_text (discard, words);
  gtk_accessible_update_property (GTK_ACCESSIBLE (discard), GTK_ACCESSIBLE_PROPERTY_LABEL,
                                  words, -1);
  gtk_box_append (GTK_BOX (row), make_row (name, when, "win.recover-draft",
                                           g_variant_new_string (draft->path)));
  gtk_box_append (GTK_BOX (row), discard);
  gtk_box_append (self->drafts, row);
}

static void
add_choices (GtkBox *rows, GPtrArray *choices, const char *action)
{
  for (guint i = 0; i < choices->len; i++)
    {
      const SwStartChoice *choice = g_ptr_array_index (choices, i);

      gtk_box_append (
          rows, make_row (choice->name, choice->note, action,
                          g_variant_new_take_string (g_file_get_uri (choice->file))));
    }
}

/* They are read to be named, which a window that opens a file need not wait for. */
static void
add_examples (SwStartPage *self)
{
  g_autoptr (GPtrArray) examples = sw_start_examples ();

  add_choices (self->examples, examples, "win.open-example");
}

void
sw_start_page_refresh (SwStartPage *self, const char *folder, gboolean with_recent)
{
  g_autoptr (GPtrArray) drafts = sw_draft_lost (folder);
  g_autoptr (GPtrArray) recent = sw_start_recent (with_recent ? MOST_RECENT : 0);
  g_autoptr (GPtrArray) templates = sw_start_templates (sw_start_template_folder ());

  clear (self->drafts);
  clear (self->recent);
  clear (self->templates);
  for (guint i = 0; i < drafts->len; i++)
    add_draft (self, g_ptr_array_index (drafts, i));
  add_choices (self->recent, recent, "win.open-uri");
  add_choices (self->templates, templates, "win.open-example");
  if (gtk_widget_get_first_child (GTK_WIDGET (self->examples)) == NULL)
    add_examples (self);
  gtk_widget_set_visible (self->drafts_part, drafts->len > 0);
  gtk_widget_set_visible (self->recent_part, recent->len > 0);
  gtk_widget_set_visible (self->templates_part, templates->len > 0);
}

static GtkWidget *
make_open_part (SwStartPage *self)
{
  GtkWidget *column = gtk_box_new (GTK_ORIENTATION_VERTICAL, 18);

  self->drafts_part = make_part (_ ("Not saved when the program ended"), &self->drafts);
  self->recent_part = make_part (_ ("Opened before"), &self->recent);
  gtk_box_append (GTK_BOX (column), self->drafts_part);
  self->templates_part = make_part (_ ("Your templates"), &self->templates);
  gtk_box_append (GTK_BOX (column), self->recent_part);
  gtk_box_append (GTK_BOX (column), self->templates_part);
  gtk_box_append (GTK_BOX (column), make_part (_ ("Examples"), &self->examples));
  return column;
}

static void
sw_start_page_dispose (GObject *object)
{
  g_clear_pointer (&SW_START_PAGE (object)->scroller, gtk_widget_unparent);
  G_OBJECT_CLASS (sw_start_page_parent_class)->dispose (object);
}

static void
sw_start_page_class_init (SwStartPageClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = sw_start_page_dispose;
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BIN_LAYOUT);
  gtk_widget_class_set_css_name (widget_class, "start-page");
}

static void
sw_start_page_init (SwStartPage *self)
{
  GtkWidget *columns = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 36);

  self->scroller = gtk_scrolled_window_new ();
  gtk_box_set_homogeneous (GTK_BOX (columns), TRUE);
  gtk_box_append (GTK_BOX (columns), make_new_part ());
  gtk_box_append (GTK_BOX (columns), make_open_part (self));
  gtk_widget_set_halign (columns, GTK_ALIGN_CENTER);
  gtk_widget_set_margin_top (columns, 24);
  gtk_widget_set_margin_bottom (columns, 24);
  gtk_widget_set_margin_start (columns, 36);
  gtk_widget_set_margin_end (columns, 36);
  gtk_scrolled_window_set_policy (GTK_SCROLLED_WINDOW (self->scroller), GTK_POLICY_NEVER,
                                  GTK_POLICY_AUTOMATIC);
  gtk_scrolled_window_set_child (GTK_SCROLLED_WINDOW (self->scroller), columns);
  gtk_widget_set_parent (self->scroller, GTK_WIDGET (self));
}

GtkWidget *
sw_start_page_new (void)
{
  return g_object_new (SW_TYPE_START_PAGE, NULL);
}
