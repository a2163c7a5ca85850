/* SPDX-License-Identifier: MIT */
#pragma once

#include "site-marks.h"

/*
 * The true shape of a plan. The world of a plan is (along the crest, out); on a
 * round crest along is arc length, so on paper the plan is bent to what one
 * sees from above. On screen it stays straight, so that points can be dragged.
 */

/** Whether the plan of this face is bent when drawn with @draw. */
gboolean sw_plan_is_bent (const SwFace *face, const SwDraw *draw);

/** Where (along, out) lies on the bent plan; metres, y down. The middle of the outline stays upright. */
SwPoint sw_plan_bend (const SwFace *face, SwPoint at);

/** Box of the bent outline, with the ground behind the crest that the key trench takes. */
SwBox sw_plan_bent_box (const SwFace *face, double behind_m);

SwPaperPoint sw_plan_at (const SwDrawing *drawing, double along_m, double out_m);

/** A polyline on paper, curved where the plan is bent. (element-type SwPaperPoint) (transfer full) */
GArray *sw_plan_path (const SwDrawing *drawing, const SwPoint *points, guint count,
                      gboolean closed);

/** Box of the outline on paper, in mm: x0, y0 upper left. */
SwBox sw_plan_paper_box (const SwDrawing *drawing);

/** Numbers, names, dimensions, arrows and handles. */
void sw_plan_notes (SwDrawing *drawing);
