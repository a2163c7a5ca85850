/* SPDX-License-Identifier: MIT */
#include "sw-mark.h"

struct _SwMark
{
  GtkWidget parent_instance;
  char *object, *words;
};

static guint step_signal;

G_DEFINE_FINAL_TYPE (SwMark, sw_mark, GTK_TYPE_WIDGET)

static gboolean
on_step (GtkWidget *widget, GVariant *steps, gpointer data)
{
  int step;

  g_variant_get (steps, "(i)", &step);
  g_signal_emit (widget, step_signal, 0, step);
  return GDK_EVENT_STOP;
}

static void
sw_mark_finalize (GObject *object)
{
  g_free (SW_MARK (object)->object);
  g_free (SW_MARK (object)->words);
  G_OBJECT_CLASS (sw_mark_parent_class)->finalize (object);
}

static void
sw_mark_class_init (SwMarkClass *klass)
{
  static const struct
  {
    guint key;
    int step;
  } keys[] = {
    { GDK_KEY_Left, -1 },    { GDK_KEY_Up, -1 },         { GDK_KEY_Right, 1 },
    { GDK_KEY_Down, 1 },     { GDK_KEY_Home, G_MININT }, { GDK_KEY_End, G_MAXINT },
    { GDK_KEY_KP_Left, -1 }, { GDK_KEY_KP_Right, 1 },
  };
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->finalize = sw_mark_finalize;
  step_signal = g_signal_new ("step", SW_TYPE_MARK, G_SIGNAL_RUN_LAST, 0, NULL, NULL,
                              NULL, G_TYPE_NONE, 1, G_TYPE_INT);
  for (gsize i = 0; i < G_N_ELEMENTS (keys); i++)
    gtk_widget_class_add_binding (widget_class, keys[i].key, 0, on_step, "(i)",
                                  keys[i].step);
  gtk_widget_class_set_css_name (widget_class, "mark");
  gtk_widget_class_set_accessible_role (widget_class, GTK_ACCESSIBLE_ROLE_LIST_ITEM);
}

static void
sw_mark_init (SwMark *self)
{
  gtk_widget_set_can_target (GTK_WIDGET (self), FALSE);
}

GtkWidget *
sw_mark_new (void)
{
  return g_object_new (SW_TYPE_MARK, NULL);
}

void
sw_mark_describe (SwMark *self, const char *object, const char *words)
{
  if (g_strcmp0 (self->object, object) != 0)
    {
      g_free (self->object);
      self->object = g_strdup (object);
    }
  if (g_strcmp0 (self->words, words) == 0)
    return; /* nobody is told twice while a point is dragged */
  g_free (self->words);
  self->words = g_strdup (words);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_LABEL,
                                  words, -1);
}

const char *
sw_mark_object (SwMark *self)
{
  return self->object;
}
