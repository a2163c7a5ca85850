/* SPDX-License-Identifier: MIT */
#include "choice.h"

static void
set_up_item (GtkSignalListItemFactory *factory, GtkListItem *item, gpointer ellipsize)
{
  GtkWidget *label = gtk_label_new (NULL);

  gtk_label_set_xalign (GTK_LABEL (label), 0.0f);
  if (ellipsize != NULL)
    {
      gtk_label_set_ellipsize (GTK_LABEL (label), PANGO_ELLIPSIZE_END);
      gtk_label_set_width_chars (GTK_LABEL (label), 6);
    }
  gtk_list_item_set_child (item, label);
}

static void
bind_item (GtkSignalListItemFactory *factory, GtkListItem *item)
{
  GtkStringObject *string = gtk_list_item_get_item (item);

  gtk_label_set_text (GTK_LABEL (gtk_list_item_get_child (item)),
                      gtk_string_object_get_string (string));
}

static GtkListItemFactory *
make_factory (gboolean ellipsize)
{
  GtkListItemFactory *factory = gtk_signal_list_item_factory_new ();

  g_signal_connect (factory, "setup", G_CALLBACK (set_up_item),
                    GINT_TO_POINTER (ellipsize));
  g_signal_connect (factory, "bind", G_CALLBACK (bind_item), NULL);
  return factory;
}

/* The button inside has the keyboard, and without words of its own is read as its type. */
static void
describe_button (GtkDropDown *choice)
{
  GtkWidget *button = gtk_widget_get_first_child (GTK_WIDGET (choice));
  gpointer item = gtk_drop_down_get_selected_item (choice);
  const char *words = GTK_IS_STRING_OBJECT (item)
                          ? gtk_string_object_get_string (GTK_STRING_OBJECT (item))
                          : "";

  gtk_accessible_update_property (GTK_ACCESSIBLE (button),
                                  GTK_ACCESSIBLE_PROPERTY_DESCRIPTION, words, -1);
}

void
sw_choice_name (GtkDropDown *choice, const char *label)
{
  GtkWidget *button = gtk_widget_get_first_child (GTK_WIDGET (choice));

  /* Not by the label beside it as well, whose key letter leads here. */
  gtk_accessible_reset_relation (GTK_ACCESSIBLE (choice),
                                 GTK_ACCESSIBLE_RELATION_LABELLED_BY);
  gtk_accessible_update_property (GTK_ACCESSIBLE (choice), GTK_ACCESSIBLE_PROPERTY_LABEL,
                                  label, -1);
  gtk_accessible_update_property (GTK_ACCESSIBLE (button), GTK_ACCESSIBLE_PROPERTY_LABEL,
                                  label, -1);
  g_signal_connect (choice, "notify::selected-item", G_CALLBACK (describe_button), NULL);
  describe_button (choice);
}

GtkWidget *
sw_choice_new (const char *label)
{
  GtkWidget *choice = gtk_drop_down_new (NULL, NULL);
  g_autoptr (GtkListItemFactory) in_button = make_factory (TRUE);
  g_autoptr (GtkListItemFactory) in_list = make_factory (FALSE);

  gtk_drop_down_set_factory (GTK_DROP_DOWN (choice), in_button);
  gtk_drop_down_set_list_factory (GTK_DROP_DOWN (choice), in_list);
  sw_choice_name (GTK_DROP_DOWN (choice), label);
  return choice;
}

static gboolean
shows_already (GListModel *model, const char *const *names)
{
  guint count = g_strv_length ((char **) names);

  if (model == NULL || g_list_model_get_n_items (model) != count)
    return FALSE;
  for (guint i = 0; i < count; i++)
    if (g_strcmp0 (gtk_string_list_get_string (GTK_STRING_LIST (model), i), names[i])
        != 0)
      return FALSE;
  return TRUE;
}

void
sw_choice_show (GtkDropDown *choice, const char *const *names, int selected)
{
  guint position = selected < 0 ? GTK_INVALID_LIST_POSITION : (guint) selected;

  if (!shows_already (gtk_drop_down_get_model (choice), names))
    {
      g_autoptr (GtkStringList) list = gtk_string_list_new (names);
      gtk_drop_down_set_model (choice, G_LIST_MODEL (list));
    }
  if (gtk_drop_down_get_selected (choice) != position)
    gtk_drop_down_set_selected (choice, position);
}
