/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/sheet/briefing.h>

#include "briefing-text.h"
#include "sw-briefing.h"
#include "sw-laying-view.h"

struct _SwBriefingWindow
{
  GtkWindow parent_instance;
  SwStage *stage;
  SwResult *result;
  SwLayingSequence *sequence;
  SwTexts *texts;
  SwDraw draw;
  SwBriefing *briefing;
  guint step;
  guint text;    /* of text_scales */
  double growth; /* of text with the screen */
  guint fitting; /* source, 0 while the screen keeps its size */
  guint ticking; /* source, 0 while it stands */
  SwLayingView *view, *near;

  /* from the template */
  GtkWidget *play;
  GtkPaned *parts;
  GtkScrolledWindow *words;
  GtkBox *view_room, *picture_room, *doing;
  GtkLabel *where, *title, *number, *who, *hold, *caution, *so_far, *counter, *spoken;
  GtkWidget *hold_box;
  GtkScale *slider;
  GtkDropDown *pace;
  GtkToggleButton *close_up;
  GtkWidget *picture;
};

/** Show the step that the window is at, in words and drawings. */
void sw_briefing_window_show_step (SwBriefingWindow *window);

/* Words: how large they are, and where they stand. */
void sw_briefing_window_show_words (SwBriefingWindow *window,
                                    const SwBriefingWords *words);
/** The size to begin with, by how large the desktop's text is. */
guint sw_briefing_window_first_text (SwBriefingWindow *window);
/** Size @text of those there are, the largest when there are fewer. */
void sw_briefing_window_set_text (SwBriefingWindow *window, guint text);
gboolean sw_briefing_window_can_grow (SwBriefingWindow *window);
/** Let all text grow and shrink with the screen. */
void sw_briefing_window_fit_text (SwBriefingWindow *window);

/* Playing: step by step, as time goes on. */
/** Whether the desktop allows movement. */
gboolean sw_briefing_window_may_move (void);
void sw_briefing_window_show_play (SwBriefingWindow *window);
void sw_briefing_window_stand_still (SwBriefingWindow *window);
/** Play, or stand still. */
void sw_briefing_window_toggle_play (SwBriefingWindow *window);
/** The pace chosen is another. */
void sw_briefing_window_take_pace (SwBriefingWindow *window);
