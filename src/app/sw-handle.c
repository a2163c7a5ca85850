/* SPDX-License-Identifier: MIT */
#include "sw-handle.h"

struct _SwHandle
{
  GtkWidget parent_instance;
};

enum
{
  NUDGE,
  EDIT,
  ADD,
  REMOVE,
  CANCEL,
  MEASURE,
  STEP,
  TYPE,
  N_SIGNALS
};

static guint signals[N_SIGNALS];

G_DEFINE_FINAL_TYPE (SwHandle, sw_handle, GTK_TYPE_WIDGET)

static void
nudge_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  static const struct
  {
    const char *name;
    double dx, dy;
  } ways[] = { { "handle.nudge-left", -1.0, 0.0 },
               { "handle.nudge-right", 1.0, 0.0 },
               { "handle.nudge-up", 0.0, -1.0 },
               { "handle.nudge-down", 0.0, 1.0 } };

  for (gsize i = 0; i < G_N_ELEMENTS (ways); i++)
    if (g_str_equal (ways[i].name, name))
      g_signal_emit (widget, signals[NUDGE], 0, ways[i].dx, ways[i].dy);
}

static void
plain_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  static const struct
  {
    const char *name;
    int signal;
  } plain[] = { { "handle.edit", EDIT },
                { "handle.add", ADD },
                { "handle.remove", REMOVE },
                { "handle.cancel", CANCEL },
                { "handle.measure", MEASURE } };

  for (gsize i = 0; i < G_N_ELEMENTS (plain); i++)
    if (g_str_equal (plain[i].name, name))
      g_signal_emit (widget, signals[plain[i].signal], 0);
}

static gboolean
nudge_key (GtkWidget *widget, GVariant *args, gpointer data)
{
  double dx, dy;

  g_variant_get (args, "(dd)", &dx, &dy);
  g_signal_emit (widget, signals[NUDGE], 0, dx, dy);
  return GDK_EVENT_STOP;
}

static gboolean
step_key (GtkWidget *widget, GVariant *args, gpointer data)
{
  int step;

  g_variant_get (args, "(i)", &step);
  g_signal_emit (widget, signals[STEP], 0, step);
  return GDK_EVENT_STOP;
}

static gboolean
type_key (GtkWidget *widget, GVariant *args, gpointer data)
{
  const char *typed;

  g_variant_get (args, "(&s)", &typed);
  g_signal_emit (widget, signals[TYPE], 0, typed);
  return GDK_EVENT_STOP;
}

/* What a number can begin with. */
static void
bind_numbers (GtkWidgetClass *klass)
{
  for (guint i = 0; i <= 9; i++)
    {
      const char digit[] = { (char) ('0' + i), '\0' };

      gtk_widget_class_add_binding (klass, GDK_KEY_0 + i, 0, type_key, "(s)", digit);
      gtk_widget_class_add_binding (klass, GDK_KEY_KP_0 + i, 0, type_key, "(s)", digit);
    }
  gtk_widget_class_add_binding (klass, GDK_KEY_minus, 0, type_key, "(s)", "-");
  gtk_widget_class_add_binding (klass, GDK_KEY_KP_Subtract, 0, type_key, "(s)", "-");
}

static void
bind_nudge (GtkWidgetClass *klass, guint key, guint keypad, double dx, double dy)
{
  static const struct
  {
    GdkModifierType held;
    double steps;
  } sizes[] = { { 0, 1.0 }, { GDK_SHIFT_MASK, 10.0 }, { GDK_CONTROL_MASK, 0.1 } };

  for (gsize i = 0; i < G_N_ELEMENTS (sizes); i++)
    {
      gtk_widget_class_add_binding (klass, key, sizes[i].held, nudge_key, "(dd)",
                                    dx * sizes[i].steps, dy * sizes[i].steps);
      gtk_widget_class_add_binding (klass, keypad, sizes[i].held, nudge_key, "(dd)",
                                    dx * sizes[i].steps, dy * sizes[i].steps);
    }
}

static void
bind_keys (GtkWidgetClass *klass)
{
  static const struct
  {
    guint key;
    const char *action;
  } plain[] = {
    { GDK_KEY_Return, "handle.edit" },      { GDK_KEY_KP_Enter, "handle.edit" },
    { GDK_KEY_F2, "handle.edit" },          { GDK_KEY_Insert, "handle.add" },
    { GDK_KEY_KP_Insert, "handle.add" },    { GDK_KEY_Delete, "handle.remove" },
    { GDK_KEY_KP_Delete, "handle.remove" }, { GDK_KEY_BackSpace, "handle.remove" },
    { GDK_KEY_Escape, "handle.cancel" },    { GDK_KEY_m, "handle.measure" },
  };

  bind_nudge (klass, GDK_KEY_Left, GDK_KEY_KP_Left, -1.0, 0.0);
  bind_nudge (klass, GDK_KEY_Right, GDK_KEY_KP_Right, 1.0, 0.0);
  bind_nudge (klass, GDK_KEY_Up, GDK_KEY_KP_Up, 0.0, -1.0);
  bind_nudge (klass, GDK_KEY_Down, GDK_KEY_KP_Down, 0.0, 1.0);
  for (gsize i = 0; i < G_N_ELEMENTS (plain); i++)
    gtk_widget_class_add_binding_action (klass, plain[i].key, 0, plain[i].action, NULL);
  bind_numbers (klass);
  gtk_widget_class_add_binding (klass, GDK_KEY_Page_Down, 0, step_key, "(i)", 1);
  gtk_widget_class_add_binding (klass, GDK_KEY_Page_Up, 0, step_key, "(i)", -1);
  gtk_widget_class_add_binding (klass, GDK_KEY_Home, 0, step_key, "(i)", -G_MAXINT16);
  gtk_widget_class_add_binding (klass, GDK_KEY_End, 0, step_key, "(i)", G_MAXINT16);
}

static void
sw_handle_measure (GtkWidget *widget, GtkOrientation orientation, int for_size,
                   int *least, int *natural, int *least_base, int *natural_base)
{
  *least = *natural = SW_HANDLE_PX;
}

static void
sw_handle_class_init (SwHandleClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);
  static const char *const nudges[] = { "handle.nudge-left", "handle.nudge-right",
                                        "handle.nudge-up", "handle.nudge-down" };
  static const char *const plain[] = { "handle.edit", "handle.add", "handle.remove",
                                       "handle.cancel", "handle.measure" };
  static const char *const names[] = { "edit", "add", "remove", "cancel", "measure" };

  widget_class->measure = sw_handle_measure;
  gtk_widget_class_set_css_name (widget_class, "handle");
  gtk_widget_class_set_accessible_role (widget_class, GTK_ACCESSIBLE_ROLE_LIST_ITEM);
  signals[NUDGE] =
      g_signal_new ("nudge", SW_TYPE_HANDLE, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL,
                    G_TYPE_NONE, 2, G_TYPE_DOUBLE, G_TYPE_DOUBLE);
  signals[STEP] = g_signal_new ("step", SW_TYPE_HANDLE, G_SIGNAL_RUN_LAST, 0, NULL, NULL,
                                NULL, G_TYPE_NONE, 1, G_TYPE_INT);
  signals[TYPE] = g_signal_new ("type", SW_TYPE_HANDLE, G_SIGNAL_RUN_LAST, 0, NULL, NULL,
                                NULL, G_TYPE_NONE, 1, G_TYPE_STRING);
  for (gsize i = 0; i < G_N_ELEMENTS (nudges); i++)
    gtk_widget_class_install_action (widget_class, nudges[i], NULL, nudge_action);
  for (gsize i = 0; i < G_N_ELEMENTS (plain); i++)
    {
      gtk_widget_class_install_action (widget_class, plain[i], NULL, plain_action);
      signals[EDIT + i] = g_signal_new (names[i], SW_TYPE_HANDLE, G_SIGNAL_RUN_LAST, 0,
                                        NULL, NULL, NULL, G_TYPE_NONE, 0);
    }
  bind_keys (widget_class);
}

static void
sw_handle_init (SwHandle *handle)
{
  gtk_widget_set_focusable (GTK_WIDGET (handle), TRUE);
  gtk_widget_set_cursor_from_name (GTK_WIDGET (handle), "grab");
}

GtkWidget *
sw_handle_new (void)
{
  return g_object_new (SW_TYPE_HANDLE, NULL);
}

void
sw_handle_describe (SwHandle *handle, const char *label, const char *description)
{
  gtk_accessible_update_property (GTK_ACCESSIBLE (handle), GTK_ACCESSIBLE_PROPERTY_LABEL,
                                  label, GTK_ACCESSIBLE_PROPERTY_DESCRIPTION, description,
                                  -1);
}

void
sw_handle_set_selected (SwHandle *handle, gboolean selected)
{
  if (selected)
    gtk_widget_set_state_flags (GTK_WIDGET (handle), GTK_STATE_FLAG_SELECTED, FALSE);
  else
    gtk_widget_unset_state_flags (GTK_WIDGET (handle), GTK_STATE_FLAG_SELECTED);
  gtk_accessible_update_state (GTK_ACCESSIBLE (handle), GTK_ACCESSIBLE_STATE_SELECTED,
                               selected, -1);
}
