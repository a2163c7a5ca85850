/* SPDX-License-Identifier: MIT */
#include "sw-help-button.h"

#include <glib/gi18n.h>

GtkWidget *
sw_help_button_new (const char *target, const char *about)
{
  GtkWidget *button = gtk_button_new_with_label ("?");
  /* Translators: a heading of the window, such as "Seed" */
  g_autofree char *label =
      about != NULL ? g_strdup_printf (_ ("Help: %s"), about) : g_strdup (_ ("Help"));

  gtk_actionable_set_action_target (GTK_ACTIONABLE (button), "s", target);
  gtk_actionable_set_action_name (GTK_ACTIONABLE (button), "app.help");
  gtk_widget_set_tooltip_text (button, label);
  gtk_accessible_update_property (GTK_ACCESSIBLE (button), GTK_ACCESSIBLE_PROPERTY_LABEL,
                                  label, -1);
  gtk_widget_set_valign (button, GTK_ALIGN_CENTER);
  gtk_widget_add_css_class (button, "help-button");
  gtk_widget_add_css_class (button, "flat");
  return button;
}
