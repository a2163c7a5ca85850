/* SPDX-License-Identifier: MIT */
#include "sw-text-entry.h"

#include <glib/gi18n.h>

struct _SwTextEntry
{
  GtkWidget parent_instance;
  GtkEntry *field;
  char *shown;
  SwTextCheck check;
};

static guint committed_signal;

G_DEFINE_FINAL_TYPE (SwTextEntry, sw_text_entry, GTK_TYPE_WIDGET)

gboolean
sw_text_entry_is_edited (SwTextEntry *self)
{
  return g_strcmp0 (gtk_editable_get_text (GTK_EDITABLE (self->field)), self->shown) != 0;
}

static void
show_problem (SwTextEntry *self, const char *problem)
{
  GtkWidget *field = GTK_WIDGET (self->field);

  if (problem != NULL)
    gtk_widget_add_css_class (field, "error");
  else
    gtk_widget_remove_css_class (field, "error");
  gtk_widget_set_tooltip_text (field, problem);
  gtk_accessible_update_state (
      GTK_ACCESSIBLE (field), GTK_ACCESSIBLE_STATE_INVALID,
      problem != NULL ? GTK_ACCESSIBLE_INVALID_TRUE : GTK_ACCESSIBLE_INVALID_FALSE, -1);
}

void
sw_text_entry_restore (SwTextEntry *self)
{
  gtk_editable_set_text (GTK_EDITABLE (self->field), self->shown);
  show_problem (self, NULL);
}

static void
commit (SwTextEntry *self)
{
  const char *problem = NULL;

  if (!sw_text_entry_is_edited (self))
    return;
  if (self->check != NULL)
    problem = self->check (gtk_editable_get_text (GTK_EDITABLE (self->field)));
  show_problem (self, problem != NULL ? _ (problem) : NULL);
  if (problem != NULL)
    return;
  g_free (self->shown);
  self->shown = g_strdup (gtk_editable_get_text (GTK_EDITABLE (self->field)));
  g_signal_emit (self, committed_signal, 0, self->shown);
}

static gboolean
on_key (SwTextEntry *self, guint keyval)
{
  if (keyval != GDK_KEY_Escape || !sw_text_entry_is_edited (self))
    return GDK_EVENT_PROPAGATE;
  sw_text_entry_restore (self);
  return GDK_EVENT_STOP;
}

/* The field alone has the focus; the widget round it would take it back from Shift+Tab. */
static gboolean
sw_text_entry_focus (GtkWidget *widget, GtkDirectionType direction)
{
  return gtk_widget_child_focus (GTK_WIDGET (SW_TEXT_ENTRY (widget)->field), direction);
}

static gboolean
sw_text_entry_grab_focus (GtkWidget *widget)
{
  return gtk_widget_grab_focus (GTK_WIDGET (SW_TEXT_ENTRY (widget)->field));
}

static void
sw_text_entry_dispose (GObject *object)
{
  SwTextEntry *self = SW_TEXT_ENTRY (object);

  if (self->field != NULL)
    gtk_widget_unparent (GTK_WIDGET (self->field));
  self->field = NULL;
  G_OBJECT_CLASS (sw_text_entry_parent_class)->dispose (object);
}

static void
sw_text_entry_finalize (GObject *object)
{
  g_free (SW_TEXT_ENTRY (object)->shown);
  G_OBJECT_CLASS (sw_text_entry_parent_class)->finalize (object);
}

static void
sw_text_entry_class_init (SwTextEntryClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = sw_text_entry_dispose;
  G_OBJECT_CLASS (klass)->finalize = sw_text_entry_finalize;
  widget_class->focus = sw_text_entry_focus;
  widget_class->grab_focus = sw_text_entry_grab_focus;
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BIN_LAYOUT);
  gtk_widget_class_set_css_name (widget_class, "text-entry");
  committed_signal = g_signal_new ("committed", SW_TYPE_TEXT_ENTRY, G_SIGNAL_RUN_LAST, 0,
                                   NULL, NULL, NULL, G_TYPE_NONE, 1, G_TYPE_STRING);
}

static void
sw_text_entry_init (SwTextEntry *self)
{
  GtkEventController *focus = gtk_event_controller_focus_new ();
  GtkEventController *key = gtk_event_controller_key_new ();

  self->shown = g_strdup ("");
  self->field = GTK_ENTRY (gtk_entry_new ());
  gtk_widget_set_parent (GTK_WIDGET (self->field), GTK_WIDGET (self));
  g_signal_connect_swapped (self->field, "activate", G_CALLBACK (commit), self);
  g_signal_connect_swapped (focus, "leave", G_CALLBACK (commit), self);
  g_signal_connect_swapped (key, "key-pressed", G_CALLBACK (on_key), self);
  gtk_event_controller_set_propagation_phase (key, GTK_PHASE_CAPTURE);
  gtk_widget_add_controller (GTK_WIDGET (self), focus);
  gtk_widget_add_controller (GTK_WIDGET (self), key);
}

GtkWidget *
sw_text_entry_new (void)
{
  return g_object_new (SW_TYPE_TEXT_ENTRY, NULL);
}

void
sw_text_entry_set_check (SwTextEntry *self, SwTextCheck check)
{
  self->check = check;
}

void
sw_text_entry_set_label (SwTextEntry *self, const char *label)
{
  gtk_accessible_update_property (GTK_ACCESSIBLE (self->field),
                                  GTK_ACCESSIBLE_PROPERTY_LABEL, label, -1);
}

void
sw_text_entry_set_text (SwTextEntry *self, const char *text)
{
  gboolean edited = sw_text_entry_is_edited (self);

  if (g_strcmp0 (text, self->shown) == 0)
    return;
  g_free (self->shown);
  self->shown = g_strdup (text);
  if (!edited)
    gtk_editable_set_text (GTK_EDITABLE (self->field), text);
}

GtkEntry *
sw_text_entry_field (SwTextEntry *self)
{
  return self->field;
}
