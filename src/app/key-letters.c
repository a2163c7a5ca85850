/* SPDX-License-Identifier: MIT */
#include "key-letters.h"

/* The label of a button that shows a key letter, NULL of any other. */
static const char *
marked_label (GtkWidget *widget)
{
  if (GTK_IS_CHECK_BUTTON (widget))
    return gtk_check_button_get_use_underline (GTK_CHECK_BUTTON (widget))
               ? gtk_check_button_get_label (GTK_CHECK_BUTTON (widget))
               : NULL;
  return gtk_button_get_use_underline (GTK_BUTTON (widget))
             ? gtk_button_get_label (GTK_BUTTON (widget))
             : NULL;
}

/* Two underlines stand for one. */
static char *
without_mark (const char *label)
{
  GString *words = g_string_new (NULL);

  for (const char *c = label; *c != '\0'; c++)
    {
      if (*c == '_' && c[1] != '\0')
        c++;
      g_string_append_c (words, *c);
    }
  return g_string_free (words, FALSE);
}

static void
say_once (GtkWidget *widget)
{
  const char *label = marked_label (widget);

  if (label == NULL)
    return;
  g_autofree char *words = without_mark (label);
  gtk_accessible_reset_relation (GTK_ACCESSIBLE (widget),
                                 GTK_ACCESSIBLE_RELATION_LABELLED_BY);
  gtk_accessible_update_property (GTK_ACCESSIBLE (widget), GTK_ACCESSIBLE_PROPERTY_LABEL,
                                  words, -1);
}

static gboolean
on_mapped (GSignalInvocationHint *hint, guint count, const GValue *values, gpointer data)
{
  GtkWidget *widget = g_value_get_object (values);

  if (!GTK_IS_BUTTON (widget) && !GTK_IS_CHECK_BUTTON (widget))
    return G_SOURCE_CONTINUE;
  g_signal_handlers_disconnect_by_func (widget, say_once, NULL);
  g_signal_connect (widget, "notify::label", G_CALLBACK (say_once), NULL);
  say_once (widget);
  return G_SOURCE_CONTINUE;
}

void
sw_key_letters_say_once (void)
{
  g_type_class_ref (GTK_TYPE_WIDGET); /* its signals come with its class; for good */
  g_signal_add_emission_hook (g_signal_lookup ("map", GTK_TYPE_WIDGET), 0, on_mapped,
                              NULL, NULL);
}
