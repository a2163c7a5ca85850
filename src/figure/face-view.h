/* SPDX-License-Identifier: MIT */
#pragma once

#include "site-marks.h"

/** A polyline of the plan on the face laid flat, on paper: breaks of the section added to its
 * edges. (element-type SwPaperPoint) (transfer full) */
GArray *sw_unfold (const SwDrawing *drawing, const SwPoint *points, guint count,
                   gboolean closed);
SwPaperPoint sw_unfold_at (const SwDrawing *drawing, double along_m, double out_m);

/** Whether every two pins are far enough apart on paper to be told apart. */
gboolean sw_face_view_shows_pins (const SwDrawing *drawing);

/** Whether every run has room for its cut length. */
gboolean sw_face_view_shows_lengths (const SwDrawing *drawing);

/** Numbers, lengths, names, arrows and dimensions of a face view. */
void sw_face_view_notes (SwDrawing *drawing, gboolean with_pins);

/** Smallest and largest side lap as laid over the face's tiers, as text. (transfer full) */
char *sw_side_lap_text (const SwFaceLayout *laid, const SwDraw *draw);
char *sw_end_lap_text (const SwFaceLayout *laid, const SwDraw *draw);
