/* SPDX-License-Identifier: MIT */
#include "sw-window-private.h"

void
sw_window_allow_actions (SwWindow *self)
{
  static const char *const of_slope[] = {
    "win.save",        "win.save-as",           "win.export-drawing",
    "win.mirror-face", "win.compare-practices", "win.compare-types"
  };
  static const char *const of_layout[] = { "win.export-quantities", "win.step-through" };
  static const char *const of_pack[] = { "win.export-pack", "win.print" };
  gboolean drawn = !sw_window_is_at_start (self);
  gboolean laid = drawn && sw_stage_result (self->stage)->status == SW_OK;
  gboolean free_to_make = laid && self->making == NULL;

  for (gsize i = 0; i < G_N_ELEMENTS (of_slope); i++)
    gtk_widget_action_set_enabled (GTK_WIDGET (self), of_slope[i], drawn);
  for (gsize i = 0; i < G_N_ELEMENTS (of_layout); i++)
    gtk_widget_action_set_enabled (GTK_WIDGET (self), of_layout[i], laid);
  for (gsize i = 0; i < G_N_ELEMENTS (of_pack); i++)
    gtk_widget_action_set_enabled (GTK_WIDGET (self), of_pack[i], free_to_make);
}

/* Where there is room for one of them only, asking for a view hides the side. */
static void
show_main (SwWindow *self)
{
  if (sw_fold_is_folded (self->across))
    sw_fold_set_side_shown (self->across, FALSE);
}

/* A slope that nobody measured has no numbers worth showing. */
static void
on_view (SwWindow *self)
{
  gboolean at_start = sw_window_is_at_start (self);

  sw_fold_set_side_allowed (self->across, !at_start);
  show_main (self);
  gtk_widget_set_visible (self->foot, !at_start);
  sw_window_allow_actions (self);
}

/* So that keys mean what is looked at. */
static void
focus_part (SwWindow *self, GtkWidget *part)
{
  GtkWidget *focus = gtk_root_get_focus (GTK_ROOT (self));

  if (gtk_widget_get_mapped (GTK_WIDGET (self))
      && (focus == NULL || !gtk_widget_is_ancestor (focus, part)))
    gtk_widget_child_focus (part, GTK_DIR_TAB_FORWARD);
}

static void
focus_view (SwWindow *self)
{
  focus_part (self, gtk_stack_get_visible_child (self->views));
}

/* GTK leaves the focus in a submenu that was gone through by keys, where it is lost. */
static gboolean
find_focus (gpointer data)
{
  SwWindow *self = data;
  GtkWidget *focus = gtk_root_get_focus (GTK_ROOT (self));

  if (gtk_widget_get_mapped (GTK_WIDGET (self))
      && (focus == NULL || !gtk_widget_get_mapped (focus)))
    focus_view (self);
  return G_SOURCE_REMOVE;
}

static void
on_menu_closed (SwWindow *self)
{
  g_idle_add_full (G_PRIORITY_DEFAULT_IDLE, find_focus, g_object_ref (self),
                   g_object_unref);
}

void
sw_window_watch_menu (SwWindow *self)
{
  GtkPopover *popover = gtk_menu_button_get_popover (self->menu_button);

  g_signal_connect_object (popover, "closed", G_CALLBACK (on_menu_closed), self,
                           G_CONNECT_SWAPPED);
}

/* What had the focus may be hidden now. */
static void
on_side (SwWindow *self)
{
  GtkWidget *focus = gtk_root_get_focus (GTK_ROOT (self));

  if (focus == NULL || !gtk_widget_get_mapped (focus))
    {
      if (sw_fold_side_shown (self->across))
        focus_part (self, GTK_WIDGET (self->inspector));
      else
        focus_view (self);
    }
}

static void
side_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  SwWindow *self = SW_WINDOW (widget);

  sw_window_settle (self);
  sw_fold_set_side_shown (self->across, !sw_fold_side_shown (self->across));
}

static void
show_view_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  SwWindow *self = SW_WINDOW (widget);

  sw_window_settle (self);
  gtk_stack_set_visible_child_name (self->views, g_variant_get_string (parameter, NULL));
  show_main (self);
  focus_view (self);
}

static SwCanvasView
view_of_code (const char *code)
{
  SwCanvasView view = 0;

  while (view < SW_CANVAS_KIND_COUNT && !g_str_equal (sw_canvas_kind (view)->code, code))
    view++;
  return view;
}

/* SW_CANVAS_KIND_COUNT: all of them. */
static void
show_alone (SwWindow *self, SwCanvasView alone)
{
  gboolean all = alone == SW_CANVAS_KIND_COUNT;

  self->alone = alone;
  for (SwCanvasView view = 0; view < SW_CANVAS_KIND_COUNT; view++)
    {
      gtk_widget_set_visible (GTK_WIDGET (self->panes[view]), all || view == alone);
      sw_canvas_pane_set_alone (self->panes[view], view == alone);
    }
  gtk_widget_set_visible (GTK_WIDGET (self->section_room),
                          all || alone == SW_CANVAS_SECTION);
  gtk_widget_set_visible (GTK_WIDGET (self->lower), all || alone != SW_CANVAS_SECTION);
}

/* The same view once more brings the others back; so does any other word. */
static void
show_alone_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  SwWindow *self = SW_WINDOW (widget);
  SwCanvasView view = view_of_code (g_variant_get_string (parameter, NULL));

  sw_window_settle (self);
  gtk_stack_set_visible_child_name (self->views, "drawing");
  show_main (self);
  show_alone (self, view == self->alone ? SW_CANVAS_KIND_COUNT : view);
  if (view != SW_CANVAS_KIND_COUNT && gtk_widget_get_mapped (widget))
    gtk_widget_grab_focus (GTK_WIDGET (sw_window_canvas (self, view)));
}

/* Into a part: a view of the drawing itself, elsewhere what Tab would come to first. */
static gboolean
enter_part (SwWindow *self, GtkWidget *part)
{
  for (guint i = 0; part == GTK_WIDGET (self->views) && i < SW_CANVAS_KIND_COUNT; i++)
    {
      GtkWidget *canvas = GTK_WIDGET (sw_window_canvas (self, (SwCanvasView) i));

      if (gtk_widget_get_mapped (canvas))
        return gtk_widget_grab_focus (canvas);
    }
  return gtk_widget_get_mapped (part)
         && gtk_widget_child_focus (part, GTK_DIR_TAB_FORWARD);
}

/* Drawing or pack, form, findings, quantities, and round again. */
static void
step_part_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  SwWindow *self = SW_WINDOW (widget);
  GtkWidget *const parts[] = { GTK_WIDGET (self->views), GTK_WIDGET (self->inspector),
                               GTK_WIDGET (self->findings_room),
                               GTK_WIDGET (self->tally_room) };
  const guint count = G_N_ELEMENTS (parts);
  guint step = g_variant_get_int32 (parameter) > 0 ? 1 : count - 1;
  GtkWidget *focus = gtk_root_get_focus (GTK_ROOT (self));
  guint now = 0;

  for (guint i = 0; i < count && focus != NULL; i++)
    if (focus == parts[i] || gtk_widget_is_ancestor (focus, parts[i]))
      now = i;
  for (guint tried = 1; tried <= count; tried++)
    if (enter_part (self, parts[(now + tried * step) % count]))
      return;
}

void
sw_window_install_view_actions (GtkWidgetClass *klass)
{
  gtk_widget_class_bind_template_callback (klass, on_view);
  gtk_widget_class_bind_template_callback (klass, on_side);
  gtk_widget_class_install_action (klass, "win.side", NULL, side_action);
  gtk_widget_class_install_action (klass, "win.step-part", "i", step_part_action);
  gtk_widget_class_install_action (klass, "win.show-view", "s", show_view_action);
  gtk_widget_class_install_action (klass, "win.show-alone", "s", show_alone_action);
}
