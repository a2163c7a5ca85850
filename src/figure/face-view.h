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

/** Where a tier begins or ends at a place along the crest: on ruled ground it is not the
 * same all along. */
double sw_face_view_tier_down_m (const SwDrawing *drawing, const SwTier *tier,
                                 gboolean at_end, double along_m);

/**
 * sw_face_view_name_line:
 * @box: the reach of the face
 * @down_m: of a line across the face
 * @inwards: 1.0: its tier is below it, -1.0: above it
 *
 * The line's name at its right end, inside the tier, else just outside it, else further
 * along the line; round a face also at the left end, or further out.
 */
void sw_face_view_name_line (SwDrawing *drawing, SwBox box, double down_m, double inwards,
                             const char *text, const char *object);

/** The fall line and its name, beside the longest tier. */
void sw_face_view_fall_line (SwDrawing *drawing, SwBox box);

/** Ground covered by the head of a run that is anchored and still rolled up. */
#define SW_HEAD_M 0.5

/** Left (-1) or right (1) edge of a run as laid, @down_m down, as along_m. */
double sw_face_view_edge_m (const SwDrawing *drawing, const SwRun *run, int side,
                            double down_m);

/** Top of what lies on the ground of a run: the upslope edge of its key trench. */
double sw_face_view_top_m (const SwDrawing *drawing, const SwRun *run);

/** How far down the run is laid at the drawing's step; negative infinity: not at all. */
double sw_face_view_laid_to_m (const SwDrawing *drawing, guint run);

/**
 * sw_face_view_quad:
 * @along_m: of its corners from the upper left round
 * @quad: (out): its corners on paper
 *
 * A piece of blanket, its sides straight, its ends along the contour.
 *
 * Returns: FALSE: out of view, and not drawn
 */
gboolean sw_face_view_quad (SwDrawing *drawing, SwRole role, const double along_m[4],
                            double from_m, double to_m, SwPaperPoint quad[4]);

/** All runs with their laps and joints, as far as they are laid. */
void sw_face_view_runs (SwDrawing *drawing);

/** Where runs lie over each other; only those with the drawing's marked run, as marks. */
void sw_face_view_laps (SwDrawing *drawing);

/** Bands between the pieces of a run, and at the free end of infill. */
void sw_face_view_end_laps (SwDrawing *drawing, guint run, SwRole role);

/** A band along a trench between two places along the crest; none for a row without depth. */
void sw_face_view_trench (SwDrawing *drawing, guint trench, SwRole role, double from_m,
                          double to_m);

/** Half of a band's width that is still seen on paper. */
double sw_face_view_least_half_band_m (const SwDrawing *drawing);

void sw_face_view_outline (SwDrawing *drawing);

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

/** True lengths down the edges of this reach. */
void sw_face_view_dimension_tiers (SwDrawing *drawing, SwBox reach);

/** Start, laying order, wind, lengths and first lap of a round face of this reach. */
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
