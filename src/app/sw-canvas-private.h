/* SPDX-License-Identifier: MIT */
#pragma once

#include "sw-canvas.h"
#include "sw-handle.h"
#include "sw-point-popover.h"

struct _SwCanvas
{
  GtkWidget parent_instance;
  const SwCanvasKind *kind;
  SwStage *stage;
  SwViewport viewport;
  gboolean auto_fit;
  SwFigure *figure;   /* of the viewport and the job shown; NULL: to be drawn anew */
  GPtrArray *handles; /* (element-type SwHandle), as many as points */
  GtkWidget *popover; /* SwPointPopover, NULL until first wanted */

  /* a drag lasts */
  GtkGesture *drag;
  int dragged;       /* point, -1 for none */
  SwPoint drag_from; /* where the point was, world */
  SwPoint press;     /* where the pointer went down, pixels */
  SwPoint pan_done;  /* of a pan: how far it has come, pixels */
  gboolean panning;  /* with the first button */
  gboolean space_held;
  double pinch_done; /* scale of a pinch so far */
  SwPoint pointer;   /* last seen, pixels */
};

/** Figure millimetres on screen. */
double sw_canvas_px_per_mm (SwCanvas *canvas);

/* Input, one file a kind of gesture. */
void sw_canvas_add_drags (SwCanvas *canvas);
void sw_canvas_add_clicks (SwCanvas *canvas);
void sw_canvas_add_looking (SwCanvas *canvas); /* zoom, pan, keys of the canvas */
/** The viewport moved: draw anew, place the handles. @by_user: stop fitting. */
void sw_canvas_view_changed (SwCanvas *canvas, gboolean by_user);
/** Take focus to point @index. */
void sw_canvas_focus_point (SwCanvas *canvas, guint index);
/** Step by which pointer and arrows move a point. */
double sw_canvas_step_m (SwCanvas *canvas);

/* What the handles ask for. */
void sw_canvas_nudge (SwCanvas *canvas, guint index, double dx, double dy);
void sw_canvas_edit_point (SwCanvas *canvas, guint index);
void sw_canvas_add_point (SwCanvas *canvas, guint after, const SwPoint *at);
void sw_canvas_remove_point (SwCanvas *canvas, guint index);

/* What the pointer is at; -1 for nothing. */

/** How near a pointer takes hold of a point. */
#define SW_CANVAS_GRAB_PX 13.0

int sw_canvas_point_under (SwCanvas *canvas, SwPoint px, double reach_px);
/** Point before the line under @px; @on: the place on the line, pixels. */
int sw_canvas_line_under (SwCanvas *canvas, SwPoint px, SwPoint *on);

const SwFace *sw_canvas_committed_face (SwCanvas *canvas);
/** The committed job with point @index as near to @wish as it may lie. (transfer full) */
SwJob *sw_canvas_moved_to (SwCanvas *canvas, guint index, SwPoint wish);
/** Name of that step. (transfer full) */
char *sw_canvas_move_label (SwCanvas *canvas, guint index);

