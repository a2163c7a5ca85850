/* SPDX-License-Identifier: MIT */
#include "face-view.h"
#include <math.h>

#define LEAST_BAND_MM 0.7
#define HIDDEN_DASH_MM 1.0

/* On screen, narrower runs have no laps, and the narrowest no edges: they would fill them
 * and take their time. */
#define LEAST_LAPPED_MM 1.4
#define LEAST_EDGED_MM 0.8

/* On screen, a narrower lap is a line: its hatch would not be told from it. */
#define LEAST_HATCHED_MM 0.6

/* A smaller angle is its own sine. */
#define LEAST_SINE 1e-9

/* A narrower lap's hidden edge would run into its full one. */
#define LEAST_DASHED_MM 0.8

/* Top of what lies on the ground: the upslope edge of the key trench, which lies behind the
 * crest but within the run below an obstacle. */
double
sw_face_view_top_m (const SwDrawing *drawing, const SwRun *run)
{
  if (run->obstacle_above || run->infill_above)
    return run->down_from_m;
  return run->down_from_m - sw_drawing_practice (drawing, SW_PRACTICE_SET_BACK_M)
         - sw_drawing_practice (drawing, SW_PRACTICE_TRENCH_WIDTH_M);
}

/* The outer runs are trimmed to the edge of the face. */
double
sw_run_edge_m (const SwDrawing *drawing, const SwRun *run, int side, double stretch)
{
  const SwTier *tier = &drawing->laid->tiers[run->tier];
  double middle_m = (run->along_from_m + run->along_to_m) / 2.0;
  double edge_m = middle_m + side * run->width_m / 2.0 / stretch;

  if (drawing->face->crest_form == SW_CREST_STRAIGHT)
    return side < 0 ? run->along_from_m : run->along_to_m;
  return tier->closed ? edge_m : CLAMP (edge_m, tier->along_from_m, tier->along_to_m);
}

/* Blanket lies flat on a developed cone as a strip of one width, so half of it is the sine,
 * not the arc, of the angle that it takes. */
double
sw_face_view_edge_m (const SwDrawing *drawing, const SwRun *run, int side, double down_m)
{
  double stretch = sw_development_stretch (drawing->development, down_m);
  double bend = run->width_m / 2.0 * drawing->development.turn_per_m;
  double sine = fabs (bend / stretch);

  if (sine > LEAST_SINE && sine < 1.0)
    stretch *= sine / asin (sine);
  return sw_run_edge_m (drawing, run, side, stretch);
}

static gboolean
is_on_sheet (const SwDrawing *drawing, const GArray *path)
{
  SwBox box = { INFINITY, INFINITY, -INFINITY, -INFINITY };

  for (guint i = 0; i < path->len; i++)
    {
      SwPaperPoint at = g_array_index (path, SwPaperPoint, i);

      box = (SwBox){ fmin (box.x0_m, at.x_mm), fmin (box.y0_m, at.y_mm),
                     fmax (box.x1_m, at.x_mm), fmax (box.y1_m, at.y_mm) };
    }
  return box.x1_m >= 0.0 && box.x0_m <= drawing->view->width_mm && box.y1_m >= 0.0
         && box.y0_m <= drawing->view->height_mm;
}

/* Keep of a stretch down the face what is in view, and a little more. Only where down is
 * down the sheet too. */
static void
cut_to_view (const SwDrawing *drawing, double *from_m, double *to_m)
{
  double more_m = (drawing->seen.y1_m - drawing->seen.y0_m) * 0.05;

  if (sw_development_is_bent (drawing->development))
    return;
  *from_m = fmax (*from_m, drawing->seen.y0_m - more_m);
  *to_m = fmin (*to_m, drawing->seen.y1_m + more_m);
}

static double
between_mm (SwPaperPoint a, SwPaperPoint b)
{
  return hypot (b.x_mm - a.x_mm, b.y_mm - a.y_mm);
}

gboolean
sw_face_view_quad (SwDrawing *drawing, SwRole role, const double along_m[4],
                   double from_m, double to_m, SwPaperPoint quad[4])
{
  g_autoptr (GArray) path = NULL;
  g_autoptr (GArray) lower = NULL;

  cut_to_view (drawing, &from_m, &to_m);
  if (from_m > to_m)
    return FALSE;
  {
    SwPoint top[2] = { { along_m[0], from_m }, { along_m[1], from_m } };
    SwPoint bottom[2] = { { along_m[2], to_m }, { along_m[3], to_m } };

    path = sw_face_view_path (drawing, top, 2, FALSE);
    lower = sw_face_view_path (drawing, bottom, 2, FALSE);
  }
  quad[0] = g_array_index (path, SwPaperPoint, 0);
  quad[1] = g_array_index (path, SwPaperPoint, path->len - 1);
  quad[2] = g_array_index (lower, SwPaperPoint, 0);
  quad[3] = g_array_index (lower, SwPaperPoint, lower->len - 1);
  g_array_append_vals (path, lower->data, lower->len);
  if (!is_on_sheet (drawing, path))
    return FALSE;
  if (role != SW_ROLE_LAP || !drawing->draw->on_screen
      || between_mm (quad[0], quad[1]) >= LEAST_HATCHED_MM
      || between_mm (quad[2], quad[3]) >= LEAST_HATCHED_MM)
    sw_figure_area (drawing->figure, role, (SwPaperPoint *) path->data, path->len);
  return TRUE;
}

/* Whether runs are drawn at least so wide; paper shows all. */
static gboolean
runs_reach (const SwDrawing *drawing, double least_mm)
{
  double run_mm = sw_job_roll_width_m (drawing->result->job, FALSE)
                  * fabs (drawing->view->x_mm_per_m);

  return !drawing->draw->on_screen || run_mm >= least_mm;
}

double
sw_face_view_laid_to_m (const SwDrawing *drawing, guint i)
{
  const SwRun *run = &drawing->laid->runs[i];
  const SwPiece *pieces = sw_layout_run_pieces (drawing->result->layout, run);
  double to_m = -INFINITY;

  if (drawing->sequence == NULL)
    return run->down_to_m;
  if (sw_drawing_is_done (drawing, sw_drawing_run_steps (drawing, i)->anchored))
    to_m = run->down_from_m + SW_HEAD_M;
  for (guint p = 0; p < run->n_pieces; p++)
    if (sw_drawing_is_done (drawing, drawing->sequence->pieces[run->first_piece + p]))
      to_m = p + 1 < run->n_pieces ? pieces[p].down_to_m : run->down_to_m;
  return to_m;
}

static void
draw_run (SwDrawing *drawing, guint i, gboolean with_edges)
{
  const SwRun *run = &drawing->laid->runs[i];
  double from_m = sw_face_view_top_m (drawing, run);
  double to_m = sw_face_view_laid_to_m (drawing, i);
  double along_m[4] = { sw_face_view_edge_m (drawing, run, -1, from_m),
                        sw_face_view_edge_m (drawing, run, 1, from_m),
                        sw_face_view_edge_m (drawing, run, 1, to_m),
                        sw_face_view_edge_m (drawing, run, -1, to_m) };
  SwPaperPoint quad[4];

  sw_drawing_object (drawing, "/run/%u", i);
  if (to_m < from_m
      || !sw_face_view_quad (drawing, SW_ROLE_RUN, along_m, from_m, to_m, quad)
      || !with_edges)
    return;
  for (int side = 0; side <= 1; side++)
    sw_figure_segment (drawing->figure, SW_ROLE_RUN_EDGE, quad[side].x_mm,
                       quad[side].y_mm, quad[3 - side].x_mm, quad[3 - side].y_mm);
}

/* Two runs side by side; across the cut of a closed heap one of them is shifted by a
 * whole turn. */
typedef struct
{
  const SwRun *left, *right;
  double left_shift_m, right_shift_m;
  gboolean right_is_upper;
  const SwRun
      *between; /* infill, beyond whose end the two lap; NULL: they lap all along */
} Neighbours;

/* A nose's infill lies under the runs beside it, a bowl's over them; else the later run
 * is the upper. */
static gboolean
later_is_upper (const SwDrawing *drawing, const SwRun *earlier, const SwRun *later)
{
  if (!earlier->infill == !later->infill)
    return TRUE;
  return !later->infill == (drawing->face->crest_form == SW_CREST_NOSE);
}

static double
laid_to_m (const SwDrawing *drawing, const SwRun *run)
{
  return sw_face_view_laid_to_m (drawing, (guint) (run - drawing->laid->runs));
}

/* Where the one lies over the other: hatched, the hidden edge dashed, the upper one full. */
static void
draw_lap (SwDrawing *drawing, Neighbours pair)
{
  double from_m = fmax (sw_face_view_top_m (drawing, pair.left),
                        sw_face_view_top_m (drawing, pair.right));
  double to_m = fmin (laid_to_m (drawing, pair.left), laid_to_m (drawing, pair.right));
  SwRole role = drawing->marked != NULL ? SW_ROLE_NEW : SW_ROLE_LAP;

  if (pair.between != NULL && pair.between->infill_above)
    to_m = fmin (to_m, pair.between->down_from_m);
  else if (pair.between != NULL)
    from_m = fmax (from_m, pair.between->down_to_m);
  double along_m[4] = {
    sw_face_view_edge_m (drawing, pair.right, -1, from_m) + pair.right_shift_m,
    sw_face_view_edge_m (drawing, pair.left, 1, from_m) + pair.left_shift_m,
    sw_face_view_edge_m (drawing, pair.left, 1, to_m) + pair.left_shift_m,
    sw_face_view_edge_m (drawing, pair.right, -1, to_m) + pair.right_shift_m
  };
  guint upper = pair.right_is_upper ? 0 : 1, hidden = 1 - upper;
  SwPaperPoint quad[4];

  if (to_m <= from_m || along_m[1] <= along_m[0]
      || !sw_face_view_quad (drawing, role, along_m, from_m, to_m, quad)
      || drawing->marked != NULL)
    return;
  sw_figure_segment (drawing->figure, SW_ROLE_RUN_EDGE, quad[upper].x_mm,
                     quad[upper].y_mm, quad[3 - upper].x_mm, quad[3 - upper].y_mm);
  if (between_mm (quad[0], quad[1]) > LEAST_DASHED_MM)
    sw_draft_dashes (drawing->figure, SW_ROLE_MUTED, quad[hidden].x_mm, quad[hidden].y_mm,
                     quad[3 - hidden].x_mm, quad[3 - hidden].y_mm, HIDDEN_DASH_MM);
}

/* The lap of run @a with @b, which comes later. */
static void
draw_lap_of (SwDrawing *drawing, const SwRun *a, const SwRun *b, const SwRun *between)
{
  gboolean left = drawing->face->leeward == SW_SIDE_LEFT;
  gboolean upper = later_is_upper (drawing, a, b);

  if (drawing->marked != NULL && drawing->marked != a && drawing->marked != b)
    return;
  sw_drawing_object (drawing, "/lap/%d-%d", a->number, b->number);
  draw_lap (drawing, left ? (Neighbours){ a, b, 0.0, 0.0, upper, between }
                          : (Neighbours){ b, a, 0.0, 0.0, !upper, between });
}

/* All round a heap the last run lies over the first. */
static void
draw_closing_lap (SwDrawing *drawing, const SwTier *tier, const SwRun *last,
                  const SwRun *between)
{
  const SwRun *first = &drawing->laid->runs[tier->first_run];
  double round_m = tier->along_to_m - tier->along_from_m;
  gboolean upper = later_is_upper (drawing, first, last);

  if (drawing->marked != NULL && drawing->marked != first && drawing->marked != last)
    return;
  sw_drawing_object (drawing, "/lap/%d-%d", first->number, last->number);
  draw_lap (drawing, drawing->face->leeward == SW_SIDE_LEFT
                         ? (Neighbours){ last, first, 0.0, round_m, !upper, between }
                         : (Neighbours){ first, last, -round_m, 0.0, upper, between });
}

static void
draw_closing_laps (SwDrawing *drawing, const SwTier *tier)
{
  const SwRun *last = &drawing->laid->runs[tier->first_run + tier->n_runs - 1];

  draw_closing_lap (drawing, tier, last, NULL);
  if (last->infill)
    draw_closing_lap (drawing, tier, last - 1, last);
}

void
sw_face_view_laps (SwDrawing *drawing)
{
  const SwFaceLayout *laid = drawing->laid;

  for (guint t = 0; t < laid->n_tiers; t++)
    {
      guint end = laid->tiers[t].first_run + laid->tiers[t].n_runs;
      const SwRun *runs = laid->runs, *between = NULL;

      for (guint i = laid->tiers[t].first_run; i < end; i++)
        {
          between = NULL;
          for (guint k = i + 1; k < end && runs[k].strip <= runs[i].strip + 2; k++)
            if (runs[k].strip == runs[i].strip + 1)
              {
                draw_lap_of (drawing, &runs[i], &runs[k], NULL);
                if (runs[k].infill_above || runs[k].infill_below)
                  between = &runs[k];
              }
            else if (runs[k].strip == runs[i].strip + 2 && between != NULL)
              draw_lap_of (drawing, &runs[i], &runs[k], between);
        }
      if (laid->tiers[t].closed && laid->tiers[t].n_runs > 2)
        draw_closing_laps (drawing, &laid->tiers[t]);
    }
}

double
sw_face_view_least_half_band_m (const SwDrawing *drawing)
{
  return LEAST_BAND_MM / 2.0 / fabs (drawing->view->y_mm_per_m);
}

static void
draw_end_lap (SwDrawing *drawing, guint i, SwRole role, double from_m, double to_m)
{
  const SwRun *run = &drawing->laid->runs[i];
  double middle_m = (from_m + to_m) / 2.0;
  double half_m = fmax ((to_m - from_m) / 2.0, sw_face_view_least_half_band_m (drawing));
  double left_m = sw_face_view_edge_m (drawing, run, -1, middle_m);
  double right_m = sw_face_view_edge_m (drawing, run, 1, middle_m);
  double along_m[4] = { left_m, right_m, right_m, left_m };
  SwPaperPoint quad[4];

  sw_drawing_object (drawing, "/run/%u", i);
  if (sw_face_view_quad (drawing, role, along_m, middle_m - half_m, middle_m + half_m,
                         quad))
    sw_labels_reserve (
        drawing->labels,
        (SwLabelBox){ (quad[0].x_mm + quad[2].x_mm) / 2.0,
                      (quad[0].y_mm + quad[2].y_mm) / 2.0,
                      between_mm (quad[0], quad[1]) / 2.0,
                      half_m * fabs (drawing->view->y_mm_per_m),
                      sw_face_view_turn_rad (drawing, (left_m + right_m) / 2.0) });
}

void
sw_face_view_end_laps (SwDrawing *drawing, guint i, SwRole role)
{
  const SwRun *run = &drawing->laid->runs[i];
  const SwPiece *pieces = sw_layout_run_pieces (drawing->result->layout, run);
  double lap_m = drawing->laid->tiers[run->tier].end_lap_m;
  double to_m = sw_face_view_laid_to_m (drawing, i);

  for (guint p = 1; p < run->n_pieces && pieces[p].down_from_m < to_m; p++)
    draw_end_lap (drawing, i, role, pieces[p].down_from_m, pieces[p - 1].down_to_m);
  if (run->down_to_m > to_m)
    return;
  if (run->infill_above)
    draw_end_lap (drawing, i, role, run->down_from_m, run->down_from_m + lap_m);
  if (run->infill_below)
    draw_end_lap (drawing, i, role, run->down_to_m - lap_m, run->down_to_m);
}

/* What is covered by other runs is drawn first. */
#define LAYERS 3

static int
layer_of (const SwDrawing *drawing, const SwRun *run)
{
  if (!run->infill)
    return 1;
  return drawing->face->crest_form == SW_CREST_NOSE ? 0 : 2;
}

void
sw_face_view_runs (SwDrawing *drawing)
{
  const SwFaceLayout *laid = drawing->laid;
  gboolean with_edges = runs_reach (drawing, LEAST_EDGED_MM);
  gboolean with_laps = runs_reach (drawing, LEAST_LAPPED_MM);

  for (int layer = 0; layer < LAYERS; layer++)
    for (guint i = 0; i < laid->n_runs; i++)
      if (layer_of (drawing, &laid->runs[i]) == layer)
        draw_run (drawing, i, with_edges);
  if (with_laps)
    sw_face_view_laps (drawing);
  for (guint i = 0; with_laps && i < laid->n_runs; i++)
    sw_face_view_end_laps (drawing, i, SW_ROLE_JOINT);
}
