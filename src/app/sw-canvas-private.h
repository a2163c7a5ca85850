/* SPDX-License-Identifier: MIT */
#pragma once

#include "canvas-paint.h"
#include "sw-canvas.h"
#include "sw-handle.h"
#include "sw-point-popover.h"

/** What a handle stands for: a point, or a whole obstacle or zone (SW_WHOLE). */
typedef struct
{
  SwPointList list;
  int index;
} SwSpot;

struct _SwCanvas
{
  GtkWidget parent_instance;
  const SwCanvasKind *kind;
  SwStage *stage;
  SwViewport viewport;
  gboolean auto_fit;
  SwFigure *figure;   /* of the viewport and the job shown; NULL: to be drawn anew */
  GArray *spots;      /* (element-type SwSpot) what can be edited here */
  GPtrArray *handles; /* (element-type SwHandle), one for each */
  GPtrArray *marks;   /* (element-type SwMark): runs and trenches of the face view */
  GtkWidget *popover; /* SwPointPopover, NULL until first wanted */
  SwSpot typed;       /* whose numbers it has */

  /* a drag lasts */
  GtkGesture *drag;
  int dragged;       /* index of a spot, -1 for none */
  SwPoint drag_from; /* where the point was */
  SwPoint press;     /* where the pointer went down, pixels */
  SwPoint pan_done;  /* of a pan: how far it has come, pixels */
  gboolean panning;  /* with the first button */
  gboolean space_held;
  double pinch_done; /* scale of a pinch so far */
  SwPoint pointer;   /* last seen, pixels */

  /* of the measure tool */
  gboolean measuring;
  guint n_measured;    /* places so far, 0 to 2 */
  SwPoint measured[2]; /* world; the second follows the pointer until it is set */

  GtkWidget *adder; /* SwAddShape, NULL until first wanted */
};

/** Figure millimetres on screen. */
double sw_canvas_px_per_mm (SwCanvas *canvas);

/* Input, one file a kind of gesture. */
void sw_canvas_add_drags (SwCanvas *canvas);
void sw_canvas_add_clicks (SwCanvas *canvas);
void sw_canvas_add_looking (SwCanvas *canvas); /* zoom, pan, keys of the canvas */
/** The viewport moved: draw anew, place the handles. @by_user: stop fitting. */
void sw_canvas_view_changed (SwCanvas *canvas, gboolean by_user);
/** Where a point of the face shown lies on screen, and the inverse. */
SwPoint sw_canvas_point_px (SwCanvas *canvas, SwPoint point);
SwPoint sw_canvas_point_under (SwCanvas *canvas, SwPoint px);
/** Spot @index, and where it lies on screen. */
SwSpot sw_canvas_spot (SwCanvas *canvas, guint index);
SwPoint sw_canvas_spot_px (SwCanvas *canvas, SwSpot spot);

/* The handles of what can be edited, as children. */
void
sw_canvas_match_handles (SwCanvas *canvas); /* as many as the job shown has, described */
void sw_canvas_place_handles (SwCanvas *canvas);
void sw_canvas_show_selected (SwCanvas *canvas);

/** Take focus to what was just made or is to be gone on with. */
void sw_canvas_focus_spot (SwCanvas *canvas, SwSpot spot);
/** Step by which pointer and arrows move a point. */
double sw_canvas_step_m (SwCanvas *canvas);

/* What the handles ask for. */
void sw_canvas_nudge (SwCanvas *canvas, SwSpot spot, double dx, double dy);
void sw_canvas_edit_point (SwCanvas *canvas, SwSpot spot);
void sw_canvas_add_point (SwCanvas *canvas, SwSpot after, const SwPoint *at);
void sw_canvas_remove (SwCanvas *canvas, SwSpot spot);

/* What the pointer is at. */

/** How near a pointer takes hold of a point. */
#define SW_CANVAS_GRAB_PX 13.0

/** Of a shape that is small on screen only the whole is drawn and taken hold of. */
gboolean sw_canvas_spot_is_offered (SwCanvas *canvas, SwSpot spot);
/** Index of a spot; an obstacle's body is its whole. -1 for nothing. */
int sw_canvas_spot_under (SwCanvas *canvas, SwPoint px, double reach_px);
/** The point before the line under @px, FALSE for none; @on: the place on the line, pixels. */
gboolean sw_canvas_line_under (SwCanvas *canvas, SwPoint px, SwSpot *before, SwPoint *on);

/** World place under @px; a point near it is meant. */
SwPoint sw_canvas_place_under (SwCanvas *canvas, SwPoint px);

/* Measuring: places in the canvas's world. */
void sw_canvas_measure_at (SwCanvas *canvas, SwPoint world);
void sw_canvas_measure_towards (SwCanvas *canvas, SwPoint world);
void sw_canvas_paint_measured (SwCanvas *canvas, SwCanvasPaint *paint);

/** Ask for a new obstacle or zone with its middle at (along, out) @at; only on plan. */
void sw_canvas_ask_shape (SwCanvas *canvas, SwListKind kind, SwPoint at);

/** The face as committed, whatever is previewed. */
const SwFace *sw_canvas_committed_face (SwCanvas *canvas);
/** The committed job with the spot as near to @wish as it may lie. (transfer full) */
SwJob *sw_canvas_moved_to (SwCanvas *canvas, SwSpot spot, SwPoint wish);

/** The drawing of the viewport and the job shown, made when it is not there. */
void sw_canvas_ensure_figure (SwCanvas *canvas);
/** Ground, drawing and all that is marked on it; a GtkWidget's snapshot. */
void sw_canvas_snapshot (GtkWidget *widget, GtkSnapshot *snapshot);

/* What is looked at, as children. */
void sw_canvas_match_marks (SwCanvas *canvas);
void sw_canvas_place_marks (SwCanvas *canvas);
void sw_canvas_drop_marks (SwCanvas *canvas);
