/* SPDX-License-Identifier: MIT */
#pragma once

#include "site-marks.h"

/*
 * The true shape of a plan. Places of a face are (along the crest, out); on a
 * round crest along is arc length, so the plan is bent to what one sees from above.
 */

/** Whether the plan of this face is bent. */
gboolean sw_plan_is_bent (const SwFace *face);

/** Box of the bent outline, with the ground behind the crest that the key trench takes. */
SwBox sw_plan_bent_box (const SwFace *face, double behind_m);

SwPaperPoint sw_plan_at (const SwDrawing *drawing, double along_m, double out_m);

/** A polyline on paper, curved where the plan is bent. (element-type SwPaperPoint) (transfer full) */
GArray *sw_plan_path (const SwDrawing *drawing, const SwPoint *points, guint count,
                      gboolean closed);

/** Box of the outline on paper, in mm: x0, y0 upper left. */
SwBox sw_plan_paper_box (const SwDrawing *drawing);

/** One arrow down the longest stretch that the outline has at @along_m, and its name. */
void sw_plan_fall_line (SwDrawing *drawing, double along_m, gboolean named);

/** Numbers, names, dimensions, arrows and handles. */
void sw_plan_notes (SwDrawing *drawing);
