/* SPDX-License-Identifier: MIT */
#include "face-view.h"
#include <math.h>

#define LEAST_PIN_GAP_MM 1.5
#define PIN_MM 0.26
#define LEAST_BAND_MM 0.7
#define HIDDEN_DASH_MM 1.0

/* Top of what lies on the ground: the upslope edge of the key trench, which lies behind the
 * crest but within the run below an obstacle. */
static double
run_top_m (const SwDrawing *drawing, const SwRun *run)
{
  if (run->obstacle_above)
    return run->down_from_m;
  return run->down_from_m - sw_drawing_practice (drawing, SW_PRACTICE_SET_BACK_M)
         - sw_drawing_practice (drawing, SW_PRACTICE_TRENCH_WIDTH_M);
}

/* Constant width in truth takes more of the shorter arc of a fan; the outer runs are trimmed
 * to the edge of the face. */
double
sw_run_edge_m (const SwDrawing *drawing, const SwRun *run, int side, double down_m)
{
  const SwTier *tier = &drawing->laid->tiers[run->tier];
  const SwGround *ground = drawing->laid->ground;
  double middle_m = (run->along_from_m + run->along_to_m) / 2.0, out_m, edge_m;

  if (drawing->face->crest_form == SW_CREST_STRAIGHT)
    return side < 0 ? run->along_from_m : run->along_to_m;
  out_m = sw_ground_out_m (ground, middle_m, down_m);
  edge_m = middle_m + side * run->width_m / 2.0 / sw_ground_stretch (ground, out_m);
  return tier->closed ? edge_m : CLAMP (edge_m, tier->along_from_m, tier->along_to_m);
}

/* A four-sided piece of the face view; not drawn when out of view, and cut to it when upright. */
static gboolean
draw_quad (SwDrawing *drawing, SwRole role, const double along_m[4], double from_m,
           double to_m, SwPaperPoint quad[4])
{
  SwBox seen = drawing->seen;
  double high = (seen.y1_m - seen.y0_m) * 0.05;
  gboolean straight = drawing->face->crest_form == SW_CREST_STRAIGHT;

  if (fmax (along_m[1], along_m[2]) < seen.x0_m
      || fmin (along_m[0], along_m[3]) > seen.x1_m || to_m < seen.y0_m
      || from_m > seen.y1_m)
    return FALSE;
  if (straight)
    {
      from_m = fmax (from_m, seen.y0_m - high);
      to_m = fmin (to_m, seen.y1_m + high);
    }
  quad[0] = sw_drawing_at (drawing, along_m[0], from_m);
  quad[1] = sw_drawing_at (drawing, along_m[1], from_m);
  quad[2] = sw_drawing_at (drawing, along_m[2], to_m);
  quad[3] = sw_drawing_at (drawing, along_m[3], to_m);
  sw_figure_area (drawing->figure, role, quad, 4);
  return TRUE;
}

static void
draw_run (SwDrawing *drawing, guint i)
{
  const SwRun *run = &drawing->laid->runs[i];
  double from_m = run_top_m (drawing, run), to_m = run->down_to_m;
  double along_m[4] = { sw_run_edge_m (drawing, run, -1, from_m),
                        sw_run_edge_m (drawing, run, 1, from_m),
                        sw_run_edge_m (drawing, run, 1, to_m),
                        sw_run_edge_m (drawing, run, -1, to_m) };
  SwPaperPoint quad[4];

  sw_drawing_object (drawing, "/run/%u", i);
  if (!draw_quad (drawing, SW_ROLE_RUN, along_m, from_m, to_m, quad))
    return;
  for (int side = 0; side <= 1; side++)
    sw_figure_segment (drawing->figure, SW_ROLE_RUN_EDGE, quad[side].x_mm,
                       quad[side].y_mm, quad[3 - side].x_mm, quad[3 - side].y_mm);
}

/* Where run @b, laid later, lies over run @a: hatched, the hidden edge dashed, the
 * upper one full. */
static void
draw_lap (SwDrawing *drawing, const SwRun *a, const SwRun *b)
{
  gboolean left = drawing->face->leeward == SW_SIDE_LEFT;
  const SwRun *at_left = left ? a : b, *at_right = left ? b : a;
  double from_m = fmax (run_top_m (drawing, a), run_top_m (drawing, b));
  double to_m = fmin (a->down_to_m, b->down_to_m);
  double along_m[4] = { sw_run_edge_m (drawing, at_right, -1, from_m),
                        sw_run_edge_m (drawing, at_left, 1, from_m),
                        sw_run_edge_m (drawing, at_left, 1, to_m),
                        sw_run_edge_m (drawing, at_right, -1, to_m) };
  guint upper = left ? 0 : 1, hidden = 1 - upper;
  SwPaperPoint quad[4];

  sw_drawing_object (drawing, "/lap/%d-%d", a->number, b->number);
  if (to_m <= from_m || along_m[1] <= along_m[0]
      || !draw_quad (drawing, SW_ROLE_LAP, along_m, from_m, to_m, quad))
    return;
  sw_figure_segment (drawing->figure, SW_ROLE_RUN_EDGE, quad[upper].x_mm,
                     quad[upper].y_mm, quad[3 - upper].x_mm, quad[3 - upper].y_mm);
  if (quad[1].x_mm - quad[0].x_mm > 0.8)
    sw_draft_dashes (drawing->figure, SW_ROLE_MUTED, quad[hidden].x_mm, quad[hidden].y_mm,
                     quad[3 - hidden].x_mm, quad[3 - hidden].y_mm, HIDDEN_DASH_MM);
}

static void
draw_laps (SwDrawing *drawing)
{
  const SwFaceLayout *laid = drawing->laid;

  for (guint t = 0; t < laid->n_tiers; t++)
    {
      guint end = laid->tiers[t].first_run + laid->tiers[t].n_runs;

      for (guint i = laid->tiers[t].first_run; i < end; i++)
        for (guint k = i + 1; k < end && laid->runs[k].number <= laid->runs[i].number + 1;
             k++)
          if (laid->runs[k].number == laid->runs[i].number + 1)
            draw_lap (drawing, &laid->runs[i], &laid->runs[k]);
    }
}

static void
draw_joints (SwDrawing *drawing, guint i)
{
  const SwRun *run = &drawing->laid->runs[i];
  const SwPiece *pieces = sw_layout_run_pieces (drawing->result->layout, run);

  for (guint p = 1; p < run->n_pieces; p++)
    {
      SwBox box = { run->along_from_m, pieces[p].down_from_m, run->along_to_m,
                    pieces[p - 1].down_to_m };
      SwLabelBox rect;

      if (!sw_drawing_rect (drawing, box, &rect))
        continue;
      rect.half_height_mm = fmax (rect.half_height_mm, LEAST_BAND_MM / 2.0);
      sw_drawing_object (drawing, "/run/%u", i);
      sw_drawing_fill (drawing, SW_ROLE_JOINT, rect);
      sw_labels_reserve (drawing->labels, rect);
    }
}

/* A band along a trench's centre line; a row without depth is not drawn. */
static void
draw_trench (SwDrawing *drawing, guint i)
{
  static const SwRole roles[] = { [SW_TRENCH_KEY] = SW_ROLE_TRENCH,
                                  [SW_TRENCH_SLOT] = SW_ROLE_SLOT,
                                  [SW_TRENCH_TOE] = SW_ROLE_TRENCH };
  const SwTrench *trench = &drawing->laid->trenches[i];
  double half =
      fmax (trench->width_m * fabs (drawing->view->y_mm_per_m), LEAST_BAND_MM) / 2.0;
  guint n = trench->n_line;
  g_autofree SwPaperPoint *band = g_new (SwPaperPoint, 2 * n);

  if (n < 2 || trench->depth_m <= 0.0)
    return;
  for (guint k = 0; k < n; k++)
    {
      SwPaperPoint at =
          sw_drawing_at (drawing, trench->line[k].along_m, trench->line[k].down_m);

      band[k] = (SwPaperPoint){ at.x_mm, at.y_mm - half };
      band[2 * n - 1 - k] = (SwPaperPoint){ at.x_mm, at.y_mm + half };
    }
  sw_drawing_object (drawing, "/trench/%u", i);
  sw_figure_area (drawing->figure, roles[trench->kind], band, 2 * n);
}

static void
draw_outline (SwDrawing *drawing)
{
  const SwFace *face = drawing->face;
  g_autoptr (GArray) ring = sw_unfold (drawing, face->outline, face->n_outline, TRUE);

  sw_drawing_object (drawing, "/outline");
  sw_figure_line (drawing->figure, SW_ROLE_GROUND, (SwPaperPoint *) ring->data,
                  ring->len);
}

gboolean
sw_face_view_shows_pins (const SwDrawing *drawing)
{
  const SwFaceLayout *laid = drawing->laid;
  double least_m = fmin (sw_drawing_practice (drawing, SW_PRACTICE_TRENCH_PIN_M),
                         sw_drawing_practice (drawing, SW_PRACTICE_TOE_PIN_M));

  least_m = fmin (least_m, sw_drawing_practice (drawing, SW_PRACTICE_SIDE_LAP_PIN_M));
  for (guint t = 0; t < laid->n_tiers; t++)
    {
      least_m = fmin (least_m, laid->tiers[t].pin_down_m / 2.0);
      if (laid->tiers[t].slots > 0)
        least_m = fmin (least_m, sw_drawing_practice (drawing, SW_PRACTICE_SLOT_PIN_M));
    }
  /* The two rows of an end lap are staggered. */
  if (laid->pins_by_role[SW_PIN_END_LAP] > 0)
    least_m = fmin (
        least_m, hypot (sw_drawing_practice (drawing, SW_PRACTICE_END_LAP_ROW_GAP_M),
                        sw_drawing_practice (drawing, SW_PRACTICE_END_LAP_PIN_M) / 2.0));
  if (laid->pins_by_role[SW_PIN_RING] > 0)
    least_m = fmin (least_m, sw_drawing_practice (drawing, SW_PRACTICE_RING_PIN_M));
  return laid->n_pins > 0
         && least_m * fabs (drawing->view->x_mm_per_m) >= LEAST_PIN_GAP_MM;
}

static void
draw_pins (SwDrawing *drawing)
{
  const SwFaceLayout *laid = drawing->laid;
  SwBox seen = drawing->seen;

  sw_drawing_object (drawing, "/pins");
  for (gsize i = 0; i < laid->n_pins; i++)
    {
      const SwPinPlace *pin = &laid->pins[i];
      double along = (double) pin->along_m, down = (double) pin->down_m;
      SwPaperPoint at;

      if (along < seen.x0_m || along > seen.x1_m || down < seen.y0_m || down > seen.y1_m)
        continue;
      at = sw_drawing_at (drawing, along, down);
      sw_figure_circle (drawing->figure, SW_ROLE_PIN, at.x_mm, at.y_mm, PIN_MM);
    }
}

static void
draw_laid (SwDrawing *drawing)
{
  const SwLie lie = { sw_unfold, sw_unfold_at };
  const SwFaceLayout *laid = drawing->laid;
  gboolean with_pins = sw_face_view_shows_pins (drawing);

  for (guint i = 0; i < laid->n_runs; i++)
    draw_run (drawing, i);
  draw_laps (drawing);
  for (guint i = 0; i < laid->n_runs; i++)
    draw_joints (drawing, i);
  for (guint i = 0; i < laid->n_trenches; i++)
    draw_trench (drawing, i);
  sw_draw_zones (drawing, &lie);
  sw_draw_obstacles (drawing, &lie);
  draw_outline (drawing);
  if (with_pins)
    draw_pins (drawing);
  sw_face_view_notes (drawing, with_pins);
}

SwFigure *
sw_draw_face_view (const SwResult *result, guint face_index, const SwView *view,
                   const SwDraw *draw)
{
  SwDrawing drawing;

  sw_drawing_begin (&drawing, result, face_index, view, draw, "drawing.face-view-title");
  sw_drawing_caption (&drawing, drawing.figure->title);
  if (drawing.laid != NULL)
    {
      g_autoptr (GArray) key =
          sw_face_view_key (result, face_index, draw, sw_face_view_shows_pins (&drawing),
                            sw_face_view_shows_lengths (&drawing));

      sw_drawing_foot (&drawing, key);
      draw_laid (&drawing);
    }
  else
    sw_drawing_note (&drawing, SW_LABEL_NEEDED, SW_ROLE_TEXT, view->width_mm / 2.0,
                     view->height_mm / 2.0, 0.0, NULL,
                     sw_drawing_text (&drawing, "drawing.not-laid"));
  return sw_drawing_end (&drawing);
}
