/* SPDX-License-Identifier: MIT */
#pragma once

#include "site-marks.h"

/* Room for the dimensions at the right edge of ruled ground. */
#define SW_RULED_ROW_MM 6.5

/** Where a place of the face lies on paper: every face view is drawn through this. */
SwPaperPoint sw_face_view_at (const SwDrawing *drawing, double along_m, double down_m);

/** The same, moved on paper along the contour and down the fall line there. */
SwPaperPoint sw_face_view_beside (const SwDrawing *drawing, double along_m, double down_m,
                                  double across_mm, double down_mm);

/** How far the contour is turned there, anticlockwise; texts along it take this. */
double sw_face_view_turn_rad (const SwDrawing *drawing, double along_m);

/** A polyline (along, down) on paper, contours as arcs where the crest is round.
 * (element-type SwPaperPoint) (transfer full) */
GArray *sw_face_view_path (const SwDrawing *drawing, const SwPoint *points, guint count,
                           gboolean closed);

/** The same for a polyline of the plan, breaks of the section added to its edges. */
GArray *sw_unfold (const SwDrawing *drawing, const SwPoint *points, guint count,
                   gboolean closed);
SwPaperPoint sw_unfold_at (const SwDrawing *drawing, double along_m, double out_m);

/** What a face view shows in (along, down), trenches included. Needs a layout. */
SwBox sw_face_view_reach (const SwResult *result, guint face);

/** Whether every two pins are far enough apart on paper to be told apart. */
gboolean sw_face_view_shows_pins (const SwDrawing *drawing);

/** Whether every run has room for its cut length. */
gboolean sw_face_view_shows_lengths (const SwDrawing *drawing);

/** Numbers, lengths, names, arrows and dimensions of a face view. */
void sw_face_view_notes (SwDrawing *drawing, gboolean with_pins);

/** Numbers and cut lengths of the runs. */
void sw_face_view_number_runs (SwDrawing *drawing, gboolean with_pins);

/** Start, laying order, wind, arc lengths and first lap of a round face of this reach. */
void sw_face_view_round_notes (SwDrawing *drawing, SwBox reach);

/** How far runs reach past the cut of a closed heap there, on paper; else 0. */
double sw_face_view_past_cut_mm (const SwDrawing *drawing, double down_m);

/** The first two runs of the lowest tier. FALSE: there are not two. */
gboolean sw_face_view_first_lap (const SwDrawing *drawing, const SwRun **lower,
                                 const SwRun **upper);

/** "Side lap 150 mm, run 2 lies over run 1". (transfer full) */
char *sw_first_lap_text (const SwDrawing *drawing, const SwRun *lower,
                         const SwRun *upper);

/** Smallest and largest side lap as laid over the face's tiers, as text. (transfer full) */
char *sw_side_lap_text (const SwFaceLayout *laid, const SwDraw *draw);
char *sw_end_lap_text (const SwFaceLayout *laid, const SwDraw *draw);
