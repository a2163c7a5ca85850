/* SPDX-License-Identifier: MIT */
#include "sw-canvas-pane.h"

#include <glib/gi18n.h>

#include "sw-row-layout.h"

#define ZOOM_STEP 1.25

/* How many times as large as distances heights are drawn. */
static const guint stretches[] = { 1, 2, 5, 10 };

struct _SwCanvasPane
{
  GtkWidget parent_instance;
  GtkWidget *box;
  GtkLabel *title, *hint;
  GtkWidget *add, *enlarge, *heights, *step_through;
  SwCanvas *canvas;
  guint stretch; /* index of how much larger heights are drawn */
  guint key;     /* with Ctrl, shows this view alone */
};

G_DEFINE_FINAL_TYPE (SwCanvasPane, sw_canvas_pane, GTK_TYPE_WIDGET)

static void
fit_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  sw_canvas_fit (SW_CANVAS_PANE (widget)->canvas);
}

static void
zoom_in_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  sw_canvas_zoom (SW_CANVAS_PANE (widget)->canvas, ZOOM_STEP);
}

static void
zoom_out_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  sw_canvas_zoom (SW_CANVAS_PANE (widget)->canvas, 1.0 / ZOOM_STEP);
}

static void
measure_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  SwCanvas *canvas = SW_CANVAS_PANE (widget)->canvas;

  sw_canvas_set_measuring (canvas, !sw_canvas_is_measuring (canvas));
}

static void
add_obstacle_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  sw_canvas_add_shape (SW_CANVAS_PANE (widget)->canvas, SW_LIST_OBSTACLE);
}

static void
add_zone_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  sw_canvas_add_shape (SW_CANVAS_PANE (widget)->canvas, SW_LIST_ZONE);
}

static void
show_stretch (SwCanvasPane *self)
{
  g_autofree char *label = g_strdup_printf (_ ("Heights × %u"), stretches[self->stretch]);

  gtk_button_set_label (GTK_BUTTON (self->heights), label);
}

/* One after the other, and back to true. */
static void
heights_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  SwCanvasPane *self = SW_CANVAS_PANE (widget);

  if (!gtk_widget_get_visible (self->heights))
    return;
  self->stretch = (self->stretch + 1) % G_N_ELEMENTS (stretches);
  sw_canvas_set_stretch (self->canvas, stretches[self->stretch]);
  show_stretch (self);
}

static void
sw_canvas_pane_dispose (GObject *object)
{
  gtk_widget_dispose_template (GTK_WIDGET (object), SW_TYPE_CANVAS_PANE);
  G_OBJECT_CLASS (sw_canvas_pane_parent_class)->dispose (object);
}

static void
bind_keys (GtkWidgetClass *klass)
{
  static const struct
  {
    guint key;
    GdkModifierType held;
    const char *action;
  } keys[] = {
    { GDK_KEY_f, 0, "canvas.fit" },
    { GDK_KEY_h, 0, "canvas.heights" },
    { GDK_KEY_m, 0, "canvas.measure" },
    { GDK_KEY_o, 0, "canvas.add-obstacle" },
    { GDK_KEY_z, 0, "canvas.add-zone" },
    { GDK_KEY_0, GDK_CONTROL_MASK, "canvas.fit" },
    { GDK_KEY_plus, GDK_CONTROL_MASK, "canvas.zoom-in" },
    { GDK_KEY_equal, GDK_CONTROL_MASK, "canvas.zoom-in" },
    { GDK_KEY_KP_Add, GDK_CONTROL_MASK, "canvas.zoom-in" },
    { GDK_KEY_minus, GDK_CONTROL_MASK, "canvas.zoom-out" },
    { GDK_KEY_KP_Subtract, GDK_CONTROL_MASK, "canvas.zoom-out" },
  };

  gtk_widget_class_install_action (klass, "canvas.fit", NULL, fit_action);
  gtk_widget_class_install_action (klass, "canvas.zoom-in", NULL, zoom_in_action);
  gtk_widget_class_install_action (klass, "canvas.zoom-out", NULL, zoom_out_action);
  gtk_widget_class_install_action (klass, "canvas.heights", NULL, heights_action);
  gtk_widget_class_install_action (klass, "canvas.measure", NULL, measure_action);
  gtk_widget_class_install_action (klass, "canvas.add-obstacle", NULL,
                                   add_obstacle_action);
  gtk_widget_class_install_action (klass, "canvas.add-zone", NULL, add_zone_action);
  for (gsize i = 0; i < G_N_ELEMENTS (keys); i++)
    gtk_widget_class_add_binding_action (klass, keys[i].key, keys[i].held, keys[i].action,
                                         NULL);
}

static void
sw_canvas_pane_class_init (SwCanvasPaneClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = sw_canvas_pane_dispose;
  g_type_ensure (SW_TYPE_ROW_LAYOUT);
  gtk_widget_class_set_template_from_resource (
      widget_class, "/io/slopewright/Slopewright/sw-canvas-pane.ui");
  gtk_widget_class_bind_template_child (widget_class, SwCanvasPane, box);
  gtk_widget_class_bind_template_child (widget_class, SwCanvasPane, title);
  gtk_widget_class_bind_template_child (widget_class, SwCanvasPane, hint);
  gtk_widget_class_bind_template_child (widget_class, SwCanvasPane, add);
  gtk_widget_class_bind_template_child (widget_class, SwCanvasPane, enlarge);
  gtk_widget_class_bind_template_child (widget_class, SwCanvasPane, heights);
  gtk_widget_class_bind_template_child (widget_class, SwCanvasPane, step_through);
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BIN_LAYOUT);
  gtk_widget_class_set_css_name (widget_class, "canvas-pane");
  bind_keys (widget_class);
}

static void
sw_canvas_pane_init (SwCanvasPane *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
  gtk_widget_set_hexpand (GTK_WIDGET (self), TRUE);
  gtk_widget_set_vexpand (GTK_WIDGET (self), TRUE);
}

GtkWidget *
sw_canvas_pane_new (SwCanvasView view, SwStage *stage)
{
  SwCanvasPane *self = g_object_new (SW_TYPE_CANVAS_PANE, NULL);
  const SwCanvasKind *kind = sw_canvas_kind (view);

  gtk_label_set_text (self->title, _ (kind->title));
  gtk_label_set_text (
      self->hint, kind->has_points ? _ ("Drag a point · double-click a line to add one")
                                   : _ ("Seen from the toe, laid flat"));
  /* In a short head there is no room for the hint. */
  gtk_widget_set_tooltip_text (GTK_WIDGET (self->title), gtk_label_get_text (self->hint));
  gtk_widget_set_visible (self->add, view == SW_CANVAS_PLAN);
  gtk_widget_set_visible (self->heights, kind->y_up);
  show_stretch (self);
  gtk_widget_set_visible (self->step_through, view == SW_CANVAS_FACE_VIEW);
  self->canvas = SW_CANVAS (sw_canvas_new (view));
  gtk_actionable_set_action_target (GTK_ACTIONABLE (self->enlarge), "s", kind->code);
  self->key = (guint) view + 1;
  sw_canvas_pane_set_alone (self, FALSE);
  gtk_box_append (GTK_BOX (self->box), GTK_WIDGET (self->canvas));
  sw_canvas_set_stage (self->canvas, stage);
  return GTK_WIDGET (self);
}

SwCanvas *
sw_canvas_pane_canvas (SwCanvasPane *self)
{
  return self->canvas;
}

void
sw_canvas_pane_set_alone (SwCanvasPane *self, gboolean alone)
{
  const char *label = alone ? _ ("All three views") : _ ("This view alone");
  g_autofree char *tip = g_strdup_printf ("%s (Ctrl+%u)", label, self->key);

  gtk_button_set_icon_name (GTK_BUTTON (self->enlarge),
                            alone ? "view-restore-symbolic" : "view-fullscreen-symbolic");
  gtk_widget_set_tooltip_text (self->enlarge, tip);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self->enlarge),
                                  GTK_ACCESSIBLE_PROPERTY_LABEL, label, -1);
}
