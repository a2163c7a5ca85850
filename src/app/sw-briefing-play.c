/* SPDX-License-Identifier: MIT */
#include "sw-briefing-private.h"

#include <glib/gi18n.h>

/* Seconds a step stays while it plays; as the list of paces in the template. */
static const guint paces_s[] = { 2, 4, 8, 15, 30 };

gboolean
sw_briefing_window_may_move (void)
{
  gboolean animations = TRUE;

  g_object_get (gtk_settings_get_default (), "gtk-enable-animations", &animations, NULL);
  return animations;
}

void
sw_briefing_window_show_play (SwBriefingWindow *self)
{
  gboolean playing = self->ticking != 0;
  const char *label = playing ? _ ("Pause") : _ ("Play");

  gtk_button_set_icon_name (GTK_BUTTON (self->play),
                            playing ? "media-playback-pause-symbolic"
                                    : "media-playback-start-symbolic");
  gtk_widget_set_tooltip_text (self->play,
                               sw_briefing_window_may_move ()
                                   ? _ ("Play or pause (P)")
                                   : _ ("The desktop asks for no movement: step "
                                        "by step only"));
  gtk_accessible_update_property (GTK_ACCESSIBLE (self->play),
                                  GTK_ACCESSIBLE_PROPERTY_LABEL, label, -1);
}

void
sw_briefing_window_stand_still (SwBriefingWindow *self)
{
  g_clear_handle_id (&self->ticking, g_source_remove);
  sw_briefing_window_show_play (self);
}

static gboolean
on_tick (gpointer data)
{
  SwBriefingWindow *self = data;

  sw_briefing_window_go_to (self, self->step + 1);
  if (self->step + 1 < self->sequence->n_steps && sw_briefing_window_may_move ())
    return G_SOURCE_CONTINUE;
  self->ticking = 0;
  sw_briefing_window_show_play (self);
  return G_SOURCE_REMOVE;
}

static void
start_playing (SwBriefingWindow *self)
{
  guint pace = gtk_drop_down_get_selected (self->pace);

  sw_briefing_window_stand_still (self);
  if (!sw_briefing_window_may_move ())
    return;
  if (self->step + 1 == self->sequence->n_steps)
    sw_briefing_window_go_to (self, 0);
  self->ticking = g_timeout_add_seconds (paces_s[MIN (pace, G_N_ELEMENTS (paces_s) - 1)],
                                         on_tick, self);
  sw_briefing_window_show_play (self);
}

void
sw_briefing_window_take_pace (SwBriefingWindow *self)
{
  if (self->ticking != 0)
    start_playing (self);
}

void
sw_briefing_window_toggle_play (SwBriefingWindow *self)
{
  if (self->ticking != 0)
    sw_briefing_window_stand_still (self);
  else
    start_playing (self);
}
