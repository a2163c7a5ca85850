/* SPDX-License-Identifier: MIT */
#include "sw-briefing-private.h"

#include <math.h>

/* Sizes of text, as shares of the desktop's: read from the back of a room. */
static const double text_scales[] = { 1.0, 1.25, 1.5, 1.75, 2.0, 2.5, 3.0 };
#define USUAL_TEXT 1.5

/* On a larger screen, which stands further off, all text grows with it. */
#define USUAL_HEIGHT_PX 900.0
#define LEAST_GROWTH 0.8
#define MOST_GROWTH 2.5
#define LEAST_CHANGE 0.02
#define USUAL_DPI 96.0

/* The drawing has less room for larger text than the words have. */
#define DRAWING_SHARE 0.85
#define CLOSE_SHARE 0.6

static double
text_scale (SwBriefingWindow *self)
{
  return text_scales[self->text] * self->growth;
}

static void
set_markup (SwBriefingWindow *self, GtkLabel *label, const char *markup)
{
  g_autofree char *shown = sw_briefing_markup (markup, text_scale (self));

  gtk_label_set_markup (label, shown);
}

/* A dash, and the action beside it however many lines it takes. */
static GtkWidget *
action_row (SwBriefingWindow *self, const char *action)
{
  GtkWidget *row = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 10);
  GtkWidget *dash = gtk_label_new (NULL), *words = gtk_label_new (NULL);

  set_markup (self, GTK_LABEL (dash), "–");
  set_markup (self, GTK_LABEL (words), action);
  gtk_widget_set_valign (dash, GTK_ALIGN_START);
  gtk_label_set_wrap (GTK_LABEL (words), TRUE);
  gtk_label_set_xalign (GTK_LABEL (words), 0.0f);
  gtk_widget_set_hexpand (words, TRUE);
  gtk_box_append (GTK_BOX (row), dash);
  gtk_box_append (GTK_BOX (row), words);
  return row;
}

static void
show_doing (SwBriefingWindow *self, const char *const *doing)
{
  GtkWidget *row;

  while ((row = gtk_widget_get_first_child (GTK_WIDGET (self->doing))) != NULL)
    gtk_box_remove (self->doing, row);
  for (guint i = 0; doing[i] != NULL; i++)
    gtk_box_append (self->doing, action_row (self, doing[i]));
}

void
sw_briefing_window_show_words (SwBriefingWindow *self, const SwBriefingWords *words)
{
  set_markup (self, self->where, words->where);
  set_markup (self, self->title, words->title);
  set_markup (self, self->number, words->number);
  show_doing (self, (const char *const *) words->doing);
  set_markup (self, self->who, words->who);
  set_markup (self, self->caution, words->caution);
  set_markup (self, self->so_far, words->so_far);
  gtk_widget_set_visible (self->hold_box, words->hold != NULL);
  if (words->hold != NULL)
    set_markup (self, self->hold, words->hold);
}

/* The desktop may have enlarged all text already. */
static double
desktop_scale (SwBriefingWindow *self)
{
  PangoContext *context = gtk_widget_get_pango_context (GTK_WIDGET (self));

  return pango_cairo_context_get_resolution (context) / USUAL_DPI;
}

guint
sw_briefing_window_first_text (SwBriefingWindow *self)
{
  double wanted = USUAL_TEXT / desktop_scale (self);
  guint text = 0;

  while (text + 1 < G_N_ELEMENTS (text_scales) && text_scales[text] < wanted)
    text++;
  return text;
}

static void
show_text (SwBriefingWindow *self)
{
  double scale = text_scale (self) * desktop_scale (self);

  sw_laying_view_set_text_scale (self->view, MAX (1.0, scale * DRAWING_SHARE));
  sw_laying_view_set_text_scale (self->near, MAX (0.8, scale * CLOSE_SHARE));
  sw_briefing_window_show_step (self);
}

void
sw_briefing_window_set_text (SwBriefingWindow *self, guint text)
{
  self->text = MIN (text, G_N_ELEMENTS (text_scales) - 1);
  show_text (self);
}

gboolean
sw_briefing_window_can_grow (SwBriefingWindow *self)
{
  return self->text + 1 < G_N_ELEMENTS (text_scales);
}

void
sw_briefing_window_fit_text (SwBriefingWindow *self)
{
  double height = gtk_widget_get_height (GTK_WIDGET (self));
  double growth = CLAMP (height / USUAL_HEIGHT_PX, LEAST_GROWTH, MOST_GROWTH);

  if (fabs (growth - self->growth) <= LEAST_CHANGE)
    return;
  self->growth = growth;
  show_text (self);
}
