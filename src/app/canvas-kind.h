/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/figure/drawings.h>

#include "point-edit.h"
#include "viewport.h"

typedef enum
{
  SW_CANVAS_SECTION,
  SW_CANVAS_PLAN,
  SW_CANVAS_FACE_VIEW,
  SW_CANVAS_KIND_COUNT
} SwCanvasView;

/** What tells the three views apart. */
typedef struct
{
  const char *code;    /* "section": for actions and file names */
  const char *title;   /* marked for translation */
  gboolean y_up;       /* a section; the others are seen from above */
  gboolean has_points; /* whether points can be edited here */
  /* Fields of a point, "Out" and "Up"; in the language of the window by
     sw_canvas_kind_coordinate(). */
  const char *x_label, *y_label;
  SwBox (*box) (const SwResult *result, guint face);
  SwView (*fit) (const SwResult *result, guint face, double width_mm, double height_mm,
                 const SwDraw *draw, double *scale);
  SwFigure *(*draw) (const SwResult *result, guint face, const SwView *view,
                     const SwDraw *draw);
  /* room for what the drawing writes round itself on screen */
  double left_mm, right_mm, top_mm, bottom_mm;
} SwCanvasKind;

const SwCanvasKind *sw_canvas_kind (SwCanvasView view);

/** Returns: @label of one of a point's two fields in the language of the window. */
const char *sw_canvas_kind_coordinate (const char *label);

/** The kind with that code, NULL if none. */
const SwCanvasKind *sw_canvas_kind_of_code (const char *code);

/** Where a point as it is edited in a view (out and up, or along and out) lies in its world. */
SwPoint sw_canvas_kind_lay (const SwCanvasKind *kind, const SwFace *face, SwPoint point);
/** The inverse. */
SwPoint sw_canvas_kind_lift (const SwCanvasKind *kind, const SwFace *face, SwPoint world);

/** Where a plan point lies in a view; the face view needs a result that was laid out. */
SwPoint sw_canvas_kind_from_plan (const SwCanvasKind *kind, const SwResult *result,
                                  guint face, SwPoint plan);
/** The inverse; in the section the place along the crest stays unknown, 0. */
SwPoint sw_canvas_kind_to_plan (const SwCanvasKind *kind, const SwResult *result,
                                guint face, SwPoint world);
