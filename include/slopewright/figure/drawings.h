/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/figure/view.h>
#include <slopewright/ground/measured.h>
#include <slopewright/judge/result.h>

/*
 * The drawings of a job. Each gives a figure of the view's size. A result that
 * could not be laid out (status not SW_OK) still gets its section and plan
 * from the job itself, without runs. Objects: "A" face id, then "/section/2"
 * and "/outline/3" (points; the outline's side from that point on),
 * "/stretch/2" (dimensions of the section from that point on), "/further/0"
 * (a section taken elsewhere), "/ground", "/outline", "/datum", "/run/7",
 * "/trench/0", "/tier/0", "/lap/1-2" (run numbers), "/pins", "/fall-line",
 * "/wind", "/run-on", "/start", "/order", "/obstacle/1" and "/zone/S" (by their own ids).
 * Without a face: "scale-bar", "check-line".
 */

/**
 * Box of what a drawing shows, in its world metres: section (out, up), plan
 * (x, y of the sheet, seen from above), face view (x, y of the sheet that the face
 * lies flat on).
 */
SwBox sw_section_box (const SwResult *result, guint face);
SwBox sw_plan_box (const SwResult *result, guint face);
SwBox sw_face_view_box (const SwResult *result, guint face);

/**
 * sw_plan_lay:
 * @at: (along, out), metres
 *
 * How a face is seen from above. On a straight crest the two are the same. On a
 * round one along is arc length at the crest: the face turns about the crest's
 * middle, that of its outline staying upright, y towards the toe.
 *
 * Returns: where @at lies in a plan's world
 */
SwPoint sw_plan_lay (const SwFace *face, SwPoint at);

/** The inverse, within half a turn to either side of the middle. */
SwPoint sw_plan_lift (const SwFace *face, SwPoint sheet);

/**
 * sw_face_view_from_plan:
 * @plan: (along, out), metres
 *
 * How a face lies flat. On a straight crest x is along and y the true
 * distance down the fall line. A round crest unrolls as a cone does: to the sector of a
 * ring, the middle fall line upright, all fall lines at true length; where the
 * section is of one gradient every length and area is true, else widths are
 * true along crest and toe. All face views are drawn through this.
 *
 * Returns: where @plan lies in a face view's world; @plan itself when the job
 *   could not be laid out
 */
SwPoint sw_face_view_from_plan (const SwResult *result, guint face, SwPoint plan);

/** The inverse: which plan point lies at @sheet. */
SwPoint sw_face_view_to_plan (const SwResult *result, guint face, SwPoint sheet);

/**
 * sw_section_fit:
 * @width_mm: width of the figure to be drawn
 * @height_mm: its height
 * @scale: (out) (optional): the chosen scale 1 : @scale
 *
 * Returns: the view at the largest true scale of a ruler in the reader's units
 *   (metric 1 : 100, 125, 200, 250, 300, 400, 500 …; US 1 in = 10, 20, 30, 40,
 *   50 ft …) that leaves room for what this drawing writes round itself:
 *   dimensions, key, scale bar.
 */
SwView sw_section_fit (const SwResult *result, guint face, double width_mm,
                       double height_mm, const SwDraw *draw, double *scale);
SwView sw_plan_fit (const SwResult *result, guint face, double width_mm, double height_mm,
                    const SwDraw *draw, double *scale);
SwView sw_face_view_fit (const SwResult *result, guint face, double width_mm,
                         double height_mm, const SwDraw *draw, double *scale);

/* On paper each of the three carries its caption, key and scale bar; on screen it does not. */

SwFigure *sw_draw_section (const SwResult *result, guint face, const SwView *view,
                           const SwDraw *draw);
SwFigure *sw_draw_plan (const SwResult *result, guint face, const SwView *view,
                        const SwDraw *draw);

/** Runs with numbers and cut lengths, laps, joints, trenches, pins (all of them when they are 1.5 mm apart or more, else an inset says so). */
SwFigure *sw_draw_face_view (const SwResult *result, guint face, const SwView *view,
                             const SwDraw *draw);

/** Scale bar with "1 : 100", its upper left at (x, y), and at the figure's right end a line to measure: 100 mm, 50 mm in narrow figures. */
void sw_draw_scale_bar (SwFigure *figure, double x_mm, double y_mm, double mm_per_m,
                        double scale, const SwDraw *draw);

typedef enum
{
  SW_DETAIL_KEY_TRENCH,
  SW_DETAIL_SIDE_LAP,
  SW_DETAIL_END_LAP,
  SW_DETAIL_SLOT,
  SW_DETAIL_TOE,
  SW_DETAIL_PIN,
  SW_DETAIL_PIN_PATTERN,
  SW_DETAIL_COLLAR, /* cut-out and patch round the first obstacle */
  SW_DETAIL_COUNT
} SwDetail;

/** A dimensioned detail at this face's sizes. NULL where the job has no such thing (no slot, no end lap, no obstacle). */
SwFigure *sw_draw_detail (const SwResult *result, guint face, SwDetail detail,
                          double width_mm, double height_mm, const SwDraw *draw);

/** Ways of laying that a class learns to see. Text ids "fault.<code>". */
typedef enum
{
  SW_FAULT_CREST,
  SW_FAULT_SIDE_LAP,
  SW_FAULT_END_LAP,
  SW_FAULT_CONTACT,
  SW_FAULT_TOE,
  SW_FAULT_PIN,
  SW_FAULT_JOINTS,
  SW_FAULT_COLLAR,
  SW_FAULT_COUNT
} SwFault;

/** "side-lap". */
const char *sw_fault_code (SwFault fault);

/** A picture of it, done as it should be or @wrong, two thirds as high as wide; not of a
 * job, not to scale. (transfer full) */
SwFigure *sw_draw_fault (SwFault fault, gboolean wrong, double width_mm);

/** What can be wrong where a face has been laid. Text ids "laid-fault.<code>". */
typedef enum
{
  SW_LAID_LAP_REVERSED, /* the first four are of a lap, the others of a run */
  SW_LAID_LAP_NARROW,
  SW_LAID_LAP_UNPINNED,
  SW_LAID_JOINTS_IN_LINE,
  SW_LAID_NOT_BURIED, /* at the crest */
  SW_LAID_PINS_WIDE,  /* in the key trench */
  SW_LAID_TOE_LOOSE,
  SW_LAID_SLOT_MISSING,
  SW_LAID_FAULT_COUNT
} SwLaidFault;

/** Most runs that a drawing of faults shows. */
#define SW_LAID_RUNS 6u

typedef struct
{
  SwLaidFault fault;
  guint place; /* run from 0; of a lap the run before it, from the leeward end */
} SwSeededFault;

const char *sw_laid_fault_code (SwLaidFault fault);
gboolean sw_laid_fault_is_of_lap (SwLaidFault fault);
/** How many runs of its first tier a drawing of this face would show; 0 where infill runs
 * or cut strips make it no plain one. */
guint sw_laid_runs (const SwResult *result, guint face);
/** Whether the fault can be at that place of this face, which has what it is about: joints
 * in both runs, check slots. */
gboolean sw_laid_fault_fits (const SwResult *result, guint face,
                             const SwSeededFault *seeded);
/** Whether it can be anywhere in a drawing of this face. */
gboolean sw_laid_fault_applies (const SwResult *result, guint face, SwLaidFault fault);

/**
 * sw_draw_laid:
 * @marked: with a numbered ring at each of @faults
 *
 * Returns: (transfer full) (nullable): the first runs of the face from above with the
 *   faults in it, not to scale; pin spacing in the key trench above, laps as measured
 *   below. NULL where fewer than two runs are shown.
 */
SwFigure *sw_draw_laid (const SwResult *result, guint face, const SwSeededFault *faults,
                        guint n_faults, gboolean marked, double width_mm,
                        double height_mm, const SwDraw *draw);

/**
 * sw_draw_taped_sides:
 * @sides: of a face, in its plane, with the one diagonal and perhaps the other
 *
 * Returns: (transfer full) (nullable): the four corners and what was taped, the shape
 *   true but not to a stated scale; NULL where sw_taped_shape() finds none
 */
SwFigure *sw_draw_taped_sides (const SwTapedSides *sides, double width_mm,
                               double height_mm, const SwDraw *draw);

/** Small pictures for the steps, drawn for this face. Text id "step.<code>". */
typedef enum
{
  SW_STEP_PREPARE,
  SW_STEP_SEED,
  SW_STEP_DIG_KEY,
  SW_STEP_ANCHOR,
  SW_STEP_BACKFILL,
  SW_STEP_UNROLL,
  SW_STEP_PIN_FIELD,
  SW_STEP_SIDE_LAP,
  SW_STEP_END_LAP,
  SW_STEP_SLOT,
  SW_STEP_TOE,
  SW_STEP_INSPECT,
  SW_STEP_COUNT
} SwStep;

const char *sw_step_code (SwStep step);
/** Whether this job has the step at all. */
gboolean sw_step_applies (const SwResult *result, SwStep step);
SwFigure *sw_draw_step (const SwResult *result, guint face, SwStep step, double width_mm,
                        double height_mm, const SwDraw *draw);
