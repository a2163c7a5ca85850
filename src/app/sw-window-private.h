/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/document/draft.h>

#include "sw-canvas-pane.h"
#include "sw-dialogs.h"
#include "sw-findings-list.h"
#include "sw-fold.h"
#include "sw-inspector.h"
#include "sw-making-bar.h"
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
  SwPreferences *preferences;
  SwMaking *making; /* of a pack to write or to print; NULL: none */
  SwMakingBar *making_bar;

  /* from the template */
  GtkLabel *title, *subtitle, *status, *place, *problem;
  GtkWidget *problem_bar, *undo, *redo, *title_room, *foot;
  GtkMenuButton *menu_button;
  GtkStack *views;
  GtkBox *bars, *section_room, *pack_room, *tally_room, *findings_room;
  SwFold *across;
  GtkPaned *lower;
  SwInspector *inspector;
  GMenu *examples;
  SwCanvasView alone; /* the one view shown; SW_CANVAS_KIND_COUNT: all */
  gboolean closing;   /* saving is the last thing to do before the window goes */
  guint hold;         /* on the session, while something is not saved; 0 for none */
};

/** Take what is being typed. */
void sw_window_settle (SwWindow *window);

/** open */
void sw_window_install_file_actions (GtkWidgetClass *klass);
/** export-quantities, export-form, export-drawing */
void sw_window_install_export_actions (GtkWidgetClass *klass);
/** export-pack, print */
void sw_window_install_pack_actions (GtkWidgetClass *klass);
/** Write the pack to @file; it is told in the window how that ends. */
void sw_window_export_pack (SwWindow *window, GFile *file);
/** No file is written, nothing is printed, and nobody is told. */
void sw_window_stop_making (SwWindow *window);
/** save, save-as, reload, keep-own */
void sw_window_install_save_actions (GtkWidgetClass *klass);

extern const SwFileKind sw_job_file_kinds[];

/** A name typed without an ending gets the one it needs. (transfer full) */
GFile *sw_file_with_suffix (GFile *file, const char *suffix);

/** Among the recent jobs, where they are wanted. */
void sw_window_remember (SwWindow *window, GFile *file);
/** @format: with a %s for the name of @file */
void sw_window_tell_file (SwWindow *window, const char *format, GFile *file);

/** Save; asks for a name when there is none, and before writing over what another wrote. */
void sw_window_save (SwWindow *window);

/** What becomes of changes that are not saved: emits "kept-open" when the window stays. */
void sw_window_ask_to_close (SwWindow *window);

/** Hold the end of the user's session, or let go of it. */
void sw_window_hold_session (SwWindow *window, gboolean hold);

/** Keys go to the view again once the menu has closed. */
void sw_window_watch_menu (SwWindow *window);

/** Show all of the drawings, and leave the start page. */
void sw_window_fit (SwWindow *window);
void sw_window_leave_start (SwWindow *window);
/** Once the window is idle, in its menu. */
void sw_window_list_examples (SwWindow *window);
gboolean sw_window_is_at_start (SwWindow *window);

/** What the start page lists may be another. */
void sw_window_refresh_start (SwWindow *window);

/** Read @file as the start of a new job: the file is not kept. Trouble is told in a dialog. */
void sw_window_load_copy (SwWindow *window, GFile *file);

/** Actions of the start page, and win.measure. */
void sw_window_install_start_actions (GtkWidgetClass *klass);

/** Actions on what is shown: show-view, show-alone, side; to be called once the template is set. */
void sw_window_install_view_actions (GtkWidgetClass *klass);

/** Actions that need a slope, or one that can be laid out, only where there is one. */
void sw_window_allow_actions (SwWindow *window);
