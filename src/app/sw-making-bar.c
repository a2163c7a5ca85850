/* SPDX-License-Identifier: MIT */
#include "sw-making-bar.h"

struct _SwMakingBar
{
  GtkWidget parent_instance;
  SwMaking *making;
  GtkWidget *box;
  GtkLabel *words;
  GtkProgressBar *share;
};

G_DEFINE_FINAL_TYPE (SwMakingBar, sw_making_bar, GTK_TYPE_WIDGET)

static void
show (SwMakingBar *self)
{
  g_autofree char *words = sw_making_words (self->making);

  gtk_label_set_text (self->words, words);
  gtk_progress_bar_set_fraction (self->share, sw_making_share (self->making));
  gtk_widget_set_visible (GTK_WIDGET (self), TRUE);
}

static void
forget (SwMakingBar *self)
{
  if (self->making != NULL)
    g_signal_handlers_disconnect_by_data (self->making, self);
  g_clear_object (&self->making);
}

static void
on_finished (SwMakingBar *self)
{
  forget (self);
  gtk_widget_set_visible (GTK_WIDGET (self), FALSE);
  gtk_widget_action_set_enabled (GTK_WIDGET (self), "making.cancel", FALSE);
}

static void
cancel_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  SwMakingBar *self = SW_MAKING_BAR (widget);

  sw_making_stop (self->making);
  gtk_widget_action_set_enabled (widget, "making.cancel", FALSE);
  show (self);
}

static gboolean
on_escape (GtkWidget *widget, GVariant *arguments, gpointer data)
{
  return gtk_widget_get_visible (widget)
         && gtk_widget_activate_action (widget, "making.cancel", NULL);
}

/* Wherever the keyboard is, unless what has it makes something of Escape itself. */
static void
cancel_by_key (SwMakingBar *self)
{
  GtkEventController *keys = gtk_shortcut_controller_new ();

  gtk_shortcut_controller_set_scope (GTK_SHORTCUT_CONTROLLER (keys),
                                     GTK_SHORTCUT_SCOPE_GLOBAL);
  gtk_shortcut_controller_add_shortcut (
      GTK_SHORTCUT_CONTROLLER (keys),
      gtk_shortcut_new (gtk_keyval_trigger_new (GDK_KEY_Escape, 0),
                        gtk_callback_action_new (on_escape, NULL, NULL)));
  gtk_widget_add_controller (GTK_WIDGET (self), keys);
}

static void
sw_making_bar_dispose (GObject *object)
{
  forget (SW_MAKING_BAR (object));
  gtk_widget_dispose_template (GTK_WIDGET (object), SW_TYPE_MAKING_BAR);
  G_OBJECT_CLASS (sw_making_bar_parent_class)->dispose (object);
}

static void
sw_making_bar_class_init (SwMakingBarClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = sw_making_bar_dispose;
  gtk_widget_class_set_template_from_resource (
      widget_class, "/io/slopewright/Slopewright/sw-making-bar.ui");
  gtk_widget_class_bind_template_child (widget_class, SwMakingBar, box);
  gtk_widget_class_bind_template_child (widget_class, SwMakingBar, words);
  gtk_widget_class_bind_template_child (widget_class, SwMakingBar, share);
  gtk_widget_class_install_action (widget_class, "making.cancel", NULL, cancel_action);
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BIN_LAYOUT);
  gtk_widget_class_set_css_name (widget_class, "making-bar");
}

static void
sw_making_bar_init (SwMakingBar *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
  gtk_widget_action_set_enabled (GTK_WIDGET (self), "making.cancel", FALSE);
  cancel_by_key (self);
}

GtkWidget *
sw_making_bar_new (void)
{
  return g_object_new (SW_TYPE_MAKING_BAR, "visible", FALSE, NULL);
}

void
sw_making_bar_follow (SwMakingBar *self, SwMaking *making)
{
  forget (self);
  self->making = g_object_ref (making);
  gtk_widget_action_set_enabled (GTK_WIDGET (self), "making.cancel", TRUE);
  g_signal_connect_object (making, "progressed", G_CALLBACK (show), self,
                           G_CONNECT_SWAPPED);
  g_signal_connect_object (making, "finished", G_CALLBACK (on_finished), self,
                           G_CONNECT_SWAPPED);
}

const char *
sw_making_bar_words (SwMakingBar *self)
{
  return gtk_label_get_text (self->words);
}
