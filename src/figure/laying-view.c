/* SPDX-License-Identifier: MIT */
#include "laying-marks.h"
#include <math.h>
#include <slopewright/figure/laying-view.h>

/* Pins of earlier steps: when they are closer on paper, or more than so many in view, they
 * say nothing and take long. */
#define LEAST_PIN_GAP_MM 0.8
#define MOST_PINS 6000
#define LEAST_PIN_MM 0.06
#define LARGEST_PIN_MM 0.26
#define PIN_SHARE 0.12

/* A trench at an obstacle belongs to the runs that begin so near to it. */
#define AT_OBSTACLE_M 1.5

static void
draw_ground (SwDrawing *drawing)
{
  const SwFace *face = drawing->face;
  g_autoptr (GArray) ring = sw_unfold (drawing, face->outline, face->n_outline, TRUE);

  sw_drawing_object (drawing, "/ground");
  sw_figure_area (drawing->figure, SW_ROLE_SOIL, (SwPaperPoint *) ring->data,
                  ring->len - 1);
}

static const guint *
trench_steps (const SwDrawing *drawing)
{
  return drawing->sequence->faces[drawing->face_index].trenches;
}

/* Open trenches lie below the blanket, closed toes above. */
static void
draw_trenches (SwDrawing *drawing, gboolean toes)
{
  for (guint i = 0; i < drawing->laid->n_trenches; i++)
    if (sw_drawing_is_done (drawing, trench_steps (drawing)[i])
        && toes == (drawing->laid->trenches[i].kind == SW_TRENCH_TOE))
      sw_face_view_trench (drawing, i, toes ? SW_ROLE_TRENCH : SW_ROLE_OPEN_TRENCH,
                           -INFINITY, INFINITY);
}

/* Whether the run is laid into the trench. */
static gboolean
crosses (const SwDrawing *drawing, const SwTrench *trench, guint run)
{
  const SwRun *of = &drawing->laid->runs[run];
  double down_m = trench->line[trench->n_line / 2].down_m;

  if (of->tier != trench->tier)
    return FALSE;
  if (trench->kind == SW_TRENCH_SLOT)
    return sw_drawing_run_steps (drawing, run)->pressed != SW_LAYING_NONE
           && of->down_from_m < down_m && of->down_to_m > down_m;
  if (sw_drawing_run_steps (drawing, run)->anchored == SW_LAYING_NONE)
    return FALSE;
  return trench->obstacle
             ? of->obstacle_above && fabs (of->down_from_m - down_m) < AT_OBSTACLE_M
             : !of->obstacle_above;
}

static guint
filled_at (const SwDrawing *drawing, const SwTrench *trench, guint run)
{
  const SwRunSteps *steps = sw_drawing_run_steps (drawing, run);

  return trench->kind == SW_TRENCH_SLOT ? steps->pressed : steps->backfilled;
}

static int
compare_spans (gconstpointer a, gconstpointer b)
{
  const SwSpan *x = a, *y = b;

  return (x->from_m > y->from_m) - (x->from_m < y->from_m);
}

/* Stretches that are kept open for the runs still to come. @any: whether any is filled. */
static GArray *
open_stretches (const SwDrawing *drawing, const SwTrench *trench, gboolean *any)
{
  const SwTier *tier = &drawing->laid->tiers[trench->tier];
  GArray *open = g_array_new (FALSE, FALSE, sizeof (SwSpan));
  double down_m = trench->line[trench->n_line / 2].down_m;
  double round_m = tier->closed ? tier->along_to_m - tier->along_from_m : 0.0;

  *any = FALSE;
  for (guint i = tier->first_run; i < tier->first_run + tier->n_runs; i++)
    {
      const SwRun *run = &drawing->laid->runs[i];
      SwSpan span = { sw_face_view_edge_m (drawing, run, -1, down_m),
                      sw_face_view_edge_m (drawing, run, 1, down_m) };

      if (!crosses (drawing, trench, i))
        continue;
      if (sw_drawing_is_done (drawing, filled_at (drawing, trench, i)))
        {
          *any = TRUE;
          continue;
        }
      for (int turn = tier->closed ? -1 : 0; turn <= (tier->closed ? 1 : 0); turn++)
        {
          SwSpan shifted = { span.from_m + turn * round_m, span.to_m + turn * round_m };

          g_array_append_val (open, shifted);
        }
    }
  g_array_sort (open, compare_spans);
  return open;
}

/* A trench is filled where all runs that lie in it are held. */
static void
draw_filled (SwDrawing *drawing, guint i)
{
  const SwTrench *trench = &drawing->laid->trenches[i];
  SwRole role = trench->kind == SW_TRENCH_SLOT ? SW_ROLE_SLOT : SW_ROLE_TRENCH;
  double from_m = -INFINITY;
  gboolean any;
  g_autoptr (GArray) open = open_stretches (drawing, trench, &any);

  for (guint k = 0; any && k < open->len; k++)
    {
      SwSpan span = g_array_index (open, SwSpan, k);

      if (span.from_m > from_m)
        sw_face_view_trench (drawing, i, role, from_m, span.from_m);
      from_m = fmax (from_m, span.to_m);
    }
  if (any)
    sw_face_view_trench (drawing, i, role, from_m, INFINITY);
}

static void
draw_all_filled (SwDrawing *drawing)
{
  for (guint i = 0; i < drawing->laid->n_trenches; i++)
    if (drawing->laid->trenches[i].kind != SW_TRENCH_TOE
        && drawing->laid->trenches[i].n_line > 1)
      draw_filled (drawing, i);
}

/* Whether pins of a run may be in view. */
static gboolean
is_in_view (const SwDrawing *drawing, const SwLayingStep *step)
{
  const SwRun *run;

  if (step->run == SW_LAYING_NONE || sw_development_is_bent (drawing->development))
    return TRUE;
  run = &drawing->laid->runs[step->run];
  return run->along_to_m >= drawing->seen.x0_m && run->along_from_m <= drawing->seen.x1_m;
}

static double
gap_mm (const SwDrawing *drawing, const SwLayingStep *step)
{
  return sw_laying_pin_gap_m (drawing, step) * fabs (drawing->view->x_mm_per_m);
}

static gboolean
is_drawn (const SwDrawing *drawing, const SwLayingStep *step)
{
  return step->n_pins > 0 && is_in_view (drawing, step)
         && gap_mm (drawing, step) >= LEAST_PIN_GAP_MM;
}

/* Pins of all steps before this one, or none of them. */
static void
draw_earlier_pins (SwDrawing *drawing)
{
  const SwLayingSequence *sequence = drawing->sequence;
  const SwLayingStep *steps = sequence->steps;
  guint first = sequence->faces[drawing->face_index].first_step;
  gsize count = 0;

  for (guint i = first; i < drawing->step; i++)
    if (is_drawn (drawing, &steps[i]))
      count += steps[i].n_pins;
  if (count > MOST_PINS)
    return;
  sw_drawing_object (drawing, "/pins");
  for (guint i = first; i < drawing->step; i++)
    if (is_drawn (drawing, &steps[i]))
      sw_laying_draw_pins (
          drawing, &steps[i], SW_ROLE_PIN,
          CLAMP (gap_mm (drawing, &steps[i]) * PIN_SHARE, LEAST_PIN_MM, LARGEST_PIN_MM),
          1);
}

static void
draw_so_far (SwDrawing *drawing)
{
  const SwLie lie = { sw_unfold, sw_unfold_at };

  draw_ground (drawing);
  draw_trenches (drawing, FALSE);
  sw_face_view_runs (drawing);
  draw_all_filled (drawing);
  draw_trenches (drawing, TRUE);
  sw_draw_zones (drawing, &lie);
  sw_draw_obstacles (drawing, &lie);
  sw_face_view_outline (drawing);
  draw_earlier_pins (drawing);
  sw_laying_mark_new (drawing);
  sw_face_view_notes (drawing, TRUE);
}

SwFigure *
sw_draw_laying_view (const SwResult *result, const SwLayingSequence *sequence, guint step,
                     const SwView *view, const SwDraw *draw)
{
  guint face = sequence->steps[step].face;
  SwDrawing drawing;

  sw_drawing_begin (&drawing, result, face, view, draw, "drawing.face-view-title");
  drawing.sequence = sequence;
  drawing.step = step;
  draw_so_far (&drawing);
  return sw_drawing_end (&drawing);
}

SwFigure *
sw_draw_laying_picture (const SwResult *result, const SwLayingStep *step, double width_mm,
                        double height_mm, const SwDraw *draw)
{
  static const SwStep steps[SW_LAYING_ACT_COUNT] = {
    [SW_LAYING_PREPARE] = SW_STEP_PREPARE,   [SW_LAYING_SEED] = SW_STEP_SEED,
    [SW_LAYING_DIG_KEY] = SW_STEP_DIG_KEY,   [SW_LAYING_DIG_SLOTS] = SW_STEP_SLOT,
    [SW_LAYING_ANCHOR] = SW_STEP_ANCHOR,     [SW_LAYING_BACKFILL] = SW_STEP_BACKFILL,
    [SW_LAYING_UNROLL] = SW_STEP_UNROLL,     [SW_LAYING_SLOT] = SW_STEP_SLOT,
    [SW_LAYING_SIDE_LAP] = SW_STEP_SIDE_LAP, [SW_LAYING_PIN_FIELD] = SW_STEP_PIN_FIELD,
    [SW_LAYING_END_LAP] = SW_STEP_END_LAP,   [SW_LAYING_TOE] = SW_STEP_TOE,
    [SW_LAYING_INSPECT] = SW_STEP_INSPECT
  };

  if (step->act == SW_LAYING_COLLAR)
    return sw_draw_detail (result, step->face, SW_DETAIL_COLLAR, width_mm, height_mm,
                           draw);
  return sw_draw_step (result, step->face, steps[step->act], width_mm, height_mm, draw);
}
