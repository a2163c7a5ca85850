/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/document/draft.h>

#include "sw-canvas-pane.h"
#include "sw-findings-list.h"
#include "sw-inspector.h"
#include "sw-preview.h"
#include "sw-start-page.h"
#include "sw-window.h"

struct _SwWindow
{
  GtkApplicationWindow parent_instance;
  SwStage *stage;
  SwCanvasPane *panes[SW_CANVAS_KIND_COUNT];
  SwTallyBar *tally;
  SwStartPage *start;
  SwDraft *draft;

  /* from the template */
  GtkLabel *title, *subtitle, *status, *place, *problem;
  GtkWidget *problem_bar, *undo, *redo, *side, *foot;
  GtkStack *views;
  GtkBox *section_room, *pack_room, *tally_room, *findings_room;
  GtkPaned *across, *lower;
  SwInspector *inspector;
  SwCanvasView alone; /* the one view shown; SW_CANVAS_KIND_COUNT: all */
  gboolean closing;   /* saving is the last thing to do before the window goes */
};

/** Take what is being typed. */
void sw_window_settle (SwWindow *window);

/** Actions on files: open, save, save-as, export-pack, export-drawing. */
void sw_window_install_file_actions (GtkWidgetClass *klass);

/** Save; asks for a name when there is none. */
void sw_window_save (SwWindow *window);

/** Show all of the drawings, and leave the start page. */
void sw_window_fit (SwWindow *window);
void sw_window_leave_start (SwWindow *window);
gboolean sw_window_is_at_start (SwWindow *window);

/** Load a job without keeping its file; trouble is told in a dialog. */
void sw_window_load_copy (SwWindow *window, GFile *file);

/** Actions of the start page, and win.measure. */
void sw_window_install_start_actions (GtkWidgetClass *klass);

/** Actions on what is shown: show-view, show-alone; to be called once the template is set. */
void sw_window_install_view_actions (GtkWidgetClass *klass);

/** Actions that need a slope, or one that can be laid out, only where there is one. */
void sw_window_allow_actions (SwWindow *window);
