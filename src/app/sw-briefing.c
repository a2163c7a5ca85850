/* SPDX-License-Identifier: MIT */
#include "sw-briefing-private.h"

#include <glib/gi18n.h>

#include "choice.h"
#include "export.h"
#include "sw-page-view.h"
#include "sw-row-layout.h"

/* How much of the width the drawing takes of the words. */
#define VIEW_SHARE 0.6

#define PICTURE_WIDTH_MM 44.0
#define PICTURE_HEIGHT_MM 36.0
#define PICTURE_PX 250

G_DEFINE_FINAL_TYPE (SwBriefingWindow, sw_briefing_window, GTK_TYPE_WINDOW)

static char *
counter_text (SwBriefingWindow *self)
{
  return g_strdup_printf (_ ("Step %u of %u"), self->step + 1, self->sequence->n_steps);
}

static void
speak (SwBriefingWindow *self, const SwBriefingWords *words)
{
  g_autofree char *counter = counter_text (self);
  g_autofree char *spoken = sw_briefing_spoken (counter, words);

  gtk_label_set_text (self->counter, counter);
  gtk_label_set_text (self->spoken, spoken);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self->slider),
                                  GTK_ACCESSIBLE_PROPERTY_VALUE_TEXT, counter, -1);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self->view),
                                  GTK_ACCESSIBLE_PROPERTY_DESCRIPTION, spoken, -1);
}

static void
show_picture (SwBriefingWindow *self)
{
  g_autoptr (GPtrArray) one =
      g_ptr_array_new_with_free_func ((GDestroyNotify) sw_figure_free);
  SwDraw draw = self->draw;

  draw.on_screen = FALSE;
  g_ptr_array_add (
      one, sw_draw_laying_picture (self->result, &self->sequence->steps[self->step],
                                   PICTURE_WIDTH_MM, PICTURE_HEIGHT_MM, &draw));
  sw_page_view_show (SW_PAGE_VIEW (self->picture), one, 0);
}

static void
allow_actions (SwBriefingWindow *self)
{
  static const char *const back[] = { "briefing.back", "briefing.first",
                                      "briefing.run-before" };
  static const char *const forth[] = { "briefing.next", "briefing.last",
                                       "briefing.run-after" };
  GtkWidget *widget = GTK_WIDGET (self);

  for (gsize i = 0; i < G_N_ELEMENTS (back); i++)
    gtk_widget_action_set_enabled (widget, back[i], self->step > 0);
  for (gsize i = 0; i < G_N_ELEMENTS (forth); i++)
    gtk_widget_action_set_enabled (widget, forth[i],
                                   self->step + 1 < self->sequence->n_steps);
  gtk_widget_action_set_enabled (widget, "briefing.play", sw_briefing_window_may_move ());
  gtk_widget_action_set_enabled (widget, "briefing.larger",
                                 sw_briefing_window_can_grow (self));
  gtk_widget_action_set_enabled (widget, "briefing.smaller", self->text > 0);
}

void
sw_briefing_window_show_step (SwBriefingWindow *self)
{
  g_autoptr (SwBriefingWords) words = sw_briefing_words (self->briefing, self->step);

  sw_briefing_window_show_words (self, words);
  speak (self, words);
  show_picture (self);
  gtk_adjustment_set_value (gtk_scrolled_window_get_vadjustment (self->words), 0.0);
  sw_laying_view_show (self->view, self->result, self->sequence, self->step, &self->draw);
  sw_laying_view_show (self->near, self->result, self->sequence, self->step, &self->draw);
  gtk_widget_set_visible (GTK_WIDGET (self->near),
                          sw_laying_has_close_view (self->sequence, self->step));
  gtk_range_set_value (GTK_RANGE (self->slider), self->step + 1);
  allow_actions (self);
}

void
sw_briefing_window_go_to (SwBriefingWindow *self, guint step)
{
  step = MIN (step, self->sequence->n_steps - 1);
  if (step == self->step)
    return;
  self->step = step;
  sw_briefing_window_show_step (self);
}

static void
on_slid (SwBriefingWindow *self)
{
  if (self->sequence != NULL)
    sw_briefing_window_go_to (
        self, (guint) (gtk_range_get_value (GTK_RANGE (self->slider)) - 0.5));
}

static void
on_pace (SwBriefingWindow *self)
{
  sw_briefing_window_take_pace (self);
}

/* Actions. */

static void
play_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  sw_briefing_window_toggle_play (SW_BRIEFING_WINDOW (widget));
}

/* Who steps by hand wants it to stand still. */
static void
step_to (GtkWidget *widget, guint step)
{
  SwBriefingWindow *self = SW_BRIEFING_WINDOW (widget);

  sw_briefing_window_stand_still (self);
  sw_briefing_window_go_to (self, step);
}

static void
next_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  step_to (widget, SW_BRIEFING_WINDOW (widget)->step + 1);
}

static void
back_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  step_to (widget, MAX (SW_BRIEFING_WINDOW (widget)->step, 1) - 1);
}

static void
first_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  step_to (widget, 0);
}

static void
last_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  step_to (widget, SW_BRIEFING_WINDOW (widget)->sequence->n_steps - 1);
}

static void
run_after_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  SwBriefingWindow *self = SW_BRIEFING_WINDOW (widget);

  step_to (widget, sw_laying_run_after (self->sequence, self->step));
}

static void
run_before_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  SwBriefingWindow *self = SW_BRIEFING_WINDOW (widget);

  step_to (widget, sw_laying_run_before (self->sequence, self->step));
}

static gboolean
fit_to_screen (gpointer data)
{
  SwBriefingWindow *self = data;

  self->fitting = 0;
  gtk_paned_set_position (self->parts,
                          (int) (VIEW_SHARE * gtk_widget_get_width (GTK_WIDGET (self))));
  sw_briefing_window_fit_text (self);
  return G_SOURCE_REMOVE;
}

/* Not while sizes are being given out. */
static void
on_resized (SwBriefingWindow *self)
{
  if (self->fitting == 0)
    self->fitting = g_idle_add (fit_to_screen, self);
}

static void
larger_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  sw_briefing_window_set_text (SW_BRIEFING_WINDOW (widget),
                               SW_BRIEFING_WINDOW (widget)->text + 1);
}

static void
smaller_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  sw_briefing_window_set_text (SW_BRIEFING_WINDOW (widget),
                               MAX (SW_BRIEFING_WINDOW (widget)->text, 1) - 1);
}

static void
close_up_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  GtkToggleButton *button = SW_BRIEFING_WINDOW (widget)->close_up;

  gtk_toggle_button_set_active (button, !gtk_toggle_button_get_active (button));
}

static void
leave_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  gtk_window_close (GTK_WINDOW (widget));
}

/* The small drawing shows what the large one does not. */
static void
on_close_up (SwBriefingWindow *self)
{
  gboolean close = gtk_toggle_button_get_active (self->close_up);

  sw_laying_view_set_close (self->view, close);
  sw_laying_view_set_close (self->near, !close);
}

/* The job. */

static void
drop_job (SwBriefingWindow *self)
{
  if (self->view != NULL)
    {
      sw_laying_view_show (self->view, NULL, NULL, 0, NULL);
      sw_laying_view_show (self->near, NULL, NULL, 0, NULL);
    }
  g_clear_pointer (&self->briefing, sw_briefing_free);
  g_clear_pointer (&self->sequence, sw_laying_sequence_free);
  g_clear_pointer (&self->texts, sw_texts_unref);
  g_clear_pointer (&self->result, sw_result_unref);
}

static void
take_job (SwBriefingWindow *self)
{
  drop_job (self);
  self->result = sw_result_ref (sw_stage_result (self->stage));
  self->texts = sw_export_texts (self->stage);
  self->draw = (SwDraw){ .texts = self->texts,
                         .measure = sw_stage_stock (self->stage)->measure,
                         .style = { sw_stage_job (self->stage)->units,
                                    sw_texts_decimal_mark (self->texts), self->texts },
                         .on_screen = TRUE };
  self->sequence = sw_laying_sequence_new (self->result->layout);
  self->briefing = sw_briefing_new (self->result, self->sequence, &self->draw);
}

static void
show_job (SwBriefingWindow *self, guint step)
{
  self->step = MIN (step, self->sequence->n_steps - 1);
  gtk_range_set_range (GTK_RANGE (self->slider), 1.0, MAX (2, self->sequence->n_steps));
  gtk_range_set_value (GTK_RANGE (self->slider), self->step + 1);
  sw_briefing_window_show_step (self);
}

static void
on_changed (SwBriefingWindow *self)
{
  if (sw_stage_result (self->stage) == self->result)
    return;
  if (sw_stage_result (self->stage)->status != SW_OK)
    {
      sw_briefing_window_stand_still (self);
      gtk_window_close (GTK_WINDOW (self));
      return;
    }
  take_job (self);
  show_job (self, self->step);
}

static void
sw_briefing_window_dispose (GObject *object)
{
  SwBriefingWindow *self = SW_BRIEFING_WINDOW (object);

  g_clear_handle_id (&self->ticking, g_source_remove);
  g_clear_handle_id (&self->fitting, g_source_remove);
  drop_job (self);
  self->view = NULL;
  gtk_widget_dispose_template (GTK_WIDGET (self), SW_TYPE_BRIEFING_WINDOW);
  g_clear_object (&self->stage);
  G_OBJECT_CLASS (sw_briefing_window_parent_class)->dispose (object);
}

static void
bind_children (GtkWidgetClass *klass)
{
  gtk_widget_class_bind_template_child (klass, SwBriefingWindow, play);
  gtk_widget_class_bind_template_child (klass, SwBriefingWindow, parts);
  gtk_widget_class_bind_template_child (klass, SwBriefingWindow, words);
  gtk_widget_class_bind_template_child (klass, SwBriefingWindow, view_room);
  gtk_widget_class_bind_template_child (klass, SwBriefingWindow, picture_room);
  gtk_widget_class_bind_template_child (klass, SwBriefingWindow, where);
  gtk_widget_class_bind_template_child (klass, SwBriefingWindow, title);
  gtk_widget_class_bind_template_child (klass, SwBriefingWindow, number);
  gtk_widget_class_bind_template_child (klass, SwBriefingWindow, doing);
  gtk_widget_class_bind_template_child (klass, SwBriefingWindow, who);
  gtk_widget_class_bind_template_child (klass, SwBriefingWindow, hold);
  gtk_widget_class_bind_template_child (klass, SwBriefingWindow, hold_box);
  gtk_widget_class_bind_template_child (klass, SwBriefingWindow, caution);
  gtk_widget_class_bind_template_child (klass, SwBriefingWindow, so_far);
  gtk_widget_class_bind_template_child (klass, SwBriefingWindow, counter);
  gtk_widget_class_bind_template_child (klass, SwBriefingWindow, spoken);
  gtk_widget_class_bind_template_child (klass, SwBriefingWindow, slider);
  gtk_widget_class_bind_template_child (klass, SwBriefingWindow, pace);
  gtk_widget_class_bind_template_child (klass, SwBriefingWindow, close_up);
  gtk_widget_class_bind_template_callback (klass, on_resized);
  gtk_widget_class_bind_template_callback (klass, on_slid);
  gtk_widget_class_bind_template_callback (klass, on_pace);
  gtk_widget_class_bind_template_callback (klass, on_close_up);
}

/* Keys reach them when the part that has the focus has no use of its own for them. */
static const struct
{
  guint key;
  GdkModifierType held;
  const char *action;
} keys[] = {
  { GDK_KEY_Right, 0, "briefing.next" },
  { GDK_KEY_space, 0, "briefing.next" },
  { GDK_KEY_Page_Down, 0, "briefing.next" },
  { GDK_KEY_Left, 0, "briefing.back" },
  { GDK_KEY_BackSpace, 0, "briefing.back" },
  { GDK_KEY_Page_Up, 0, "briefing.back" },
  { GDK_KEY_Home, 0, "briefing.first" },
  { GDK_KEY_End, 0, "briefing.last" },
  { GDK_KEY_Down, 0, "briefing.run-after" },
  { GDK_KEY_Up, 0, "briefing.run-before" },
  { GDK_KEY_p, 0, "briefing.play" },
  { GDK_KEY_F5, 0, "briefing.play" },
  { GDK_KEY_c, 0, "briefing.close-up" },
  { GDK_KEY_plus, 0, "briefing.larger" },
  { GDK_KEY_equal, 0, "briefing.larger" },
  { GDK_KEY_KP_Add, 0, "briefing.larger" },
  { GDK_KEY_minus, 0, "briefing.smaller" },
  { GDK_KEY_KP_Subtract, 0, "briefing.smaller" },
  { GDK_KEY_Escape, 0, "briefing.leave" },
};

static gboolean
on_key (SwBriefingWindow *self, guint keyval, guint keycode, GdkModifierType state)
{
  if (state & (GDK_CONTROL_MASK | GDK_ALT_MASK))
    return GDK_EVENT_PROPAGATE;
  for (gsize i = 0; i < G_N_ELEMENTS (keys); i++)
    if (keys[i].key == gdk_keyval_to_lower (keyval))
      {
        gtk_widget_activate_action (GTK_WIDGET (self), keys[i].action, NULL);
        return GDK_EVENT_STOP;
      }
  return GDK_EVENT_PROPAGATE;
}

static void
install_actions (GtkWidgetClass *klass)
{
  static const struct
  {
    const char *name;
    GtkWidgetActionActivateFunc act;
  } actions[] = {
    { "briefing.next", next_action },
    { "briefing.back", back_action },
    { "briefing.first", first_action },
    { "briefing.last", last_action },
    { "briefing.run-after", run_after_action },
    { "briefing.run-before", run_before_action },
    { "briefing.play", play_action },
    { "briefing.larger", larger_action },
    { "briefing.smaller", smaller_action },
    { "briefing.close-up", close_up_action },
    { "briefing.leave", leave_action },
  };

  for (gsize i = 0; i < G_N_ELEMENTS (actions); i++)
    gtk_widget_class_install_action (klass, actions[i].name, NULL, actions[i].act);
}

static void
sw_briefing_window_class_init (SwBriefingWindowClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = sw_briefing_window_dispose;
  g_type_ensure (SW_TYPE_ROW_LAYOUT);
  gtk_widget_class_set_template_from_resource (
      widget_class, "/io/slopewright/Slopewright/sw-briefing.ui");
  bind_children (widget_class);
  install_actions (widget_class);
}

static void
sw_briefing_window_init (SwBriefingWindow *self)
{
  GtkEventController *key = gtk_event_controller_key_new ();

  gtk_widget_init_template (GTK_WIDGET (self));
  sw_choice_name (self->pace, _ ("Pace"));
  self->growth = 1.0;
  g_signal_connect_swapped (key, "key-pressed", G_CALLBACK (on_key), self);
  gtk_widget_add_controller (gtk_window_get_child (GTK_WINDOW (self)), key);
}

static void
add_drawings (SwBriefingWindow *self)
{
  const SwStock *stock = sw_stage_stock (self->stage);

  self->view = SW_LAYING_VIEW (sw_laying_view_new (stock));
  gtk_box_append (self->view_room, GTK_WIDGET (self->view));
  self->picture = sw_page_view_new (stock, PICTURE_PX);
  sw_page_view_follow_style (SW_PAGE_VIEW (self->picture));
  self->near = SW_LAYING_VIEW (sw_laying_view_new (stock));
  sw_laying_view_set_close (self->near, TRUE);
  gtk_widget_set_focusable (GTK_WIDGET (self->near), FALSE);
  gtk_box_append (self->picture_room, self->picture);
  gtk_box_append (self->picture_room, GTK_WIDGET (self->near));
}

GtkWidget *
sw_briefing_window_new (GtkWindow *parent, SwStage *stage)
{
  SwBriefingWindow *self =
      g_object_new (SW_TYPE_BRIEFING_WINDOW, "transient-for", parent, "modal", TRUE,
                    "destroy-with-parent", TRUE, NULL);

  self->stage = g_object_ref (stage);
  add_drawings (self);
  take_job (self);
  sw_briefing_window_set_text (self, sw_briefing_window_first_text (self));
  show_job (self, self->sequence->faces[sw_stage_face_index (stage)].first_step);
  sw_briefing_window_show_play (self);
  g_signal_connect_object (stage, "changed", G_CALLBACK (on_changed), self,
                           G_CONNECT_SWAPPED);
  g_signal_connect_object (gtk_settings_get_default (), "notify::gtk-enable-animations",
                           G_CALLBACK (allow_actions), self, G_CONNECT_SWAPPED);
  gtk_widget_grab_focus (GTK_WIDGET (self->view));
  gtk_window_fullscreen (GTK_WINDOW (self));
  return GTK_WIDGET (self);
}

guint
sw_briefing_window_n_steps (SwBriefingWindow *self)
{
  return self->sequence->n_steps;
}

guint
sw_briefing_window_step (SwBriefingWindow *self)
{
  return self->step;
}

gboolean
sw_briefing_window_is_playing (SwBriefingWindow *self)
{
  return self->ticking != 0;
}

const char *
sw_briefing_window_spoken (SwBriefingWindow *self)
{
  return gtk_label_get_text (self->spoken);
}
