/* SPDX-License-Identifier: MIT */
#include "sw-heading.h"

struct _SwHeading
{
  GtkWidget parent_instance;
  GtkWidget *label;
};

/* A label takes no focus unless its text can be selected. */
G_DEFINE_FINAL_TYPE (SwHeading, sw_heading, GTK_TYPE_WIDGET)

static void
sw_heading_dispose (GObject *object)
{
  g_clear_pointer (&SW_HEADING (object)->label, gtk_widget_unparent);
  G_OBJECT_CLASS (sw_heading_parent_class)->dispose (object);
}

static void
sw_heading_class_init (SwHeadingClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = sw_heading_dispose;
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BIN_LAYOUT);
  gtk_widget_class_set_css_name (widget_class, "heading");
  gtk_widget_class_set_accessible_role (widget_class, GTK_ACCESSIBLE_ROLE_HEADING);
}

static void
sw_heading_init (SwHeading *self)
{
  self->label = gtk_label_new (NULL);
  gtk_label_set_wrap (GTK_LABEL (self->label), TRUE);
  gtk_label_set_xalign (GTK_LABEL (self->label), 0.0f);
  gtk_widget_set_parent (self->label, GTK_WIDGET (self));
  gtk_widget_set_focusable (GTK_WIDGET (self), TRUE);
}

GtkWidget *
sw_heading_new (const char *text, int level, int chars)
{
  static const char *const classes[] = { "title", "section", "part" };
  SwHeading *self = g_object_new (SW_TYPE_HEADING, NULL);

  g_return_val_if_fail (level >= 1 && level <= (int) G_N_ELEMENTS (classes), NULL);
  gtk_label_set_text (GTK_LABEL (self->label), text);
  gtk_label_set_max_width_chars (GTK_LABEL (self->label), chars);
  gtk_widget_add_css_class (GTK_WIDGET (self), classes[level - 1]);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_LABEL,
                                  text, GTK_ACCESSIBLE_PROPERTY_LEVEL, level, -1);
  return GTK_WIDGET (self);
}
