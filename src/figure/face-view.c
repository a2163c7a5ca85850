/* SPDX-License-Identifier: MIT */
#include "face-view.h"
#include <math.h>

#define LEAST_PIN_GAP_MM 1.5
#define PIN_MM 0.26
#define LEAST_BAND_MM 0.7
#define HIDDEN_DASH_MM 1.0

/* Top of what lies on the ground: the upslope edge of the key trench. */
static double
run_top_m (const SwDrawing *drawing, const SwRun *run)
{
  return run->down_from_m - sw_drawing_practice (drawing, SW_PRACTICE_SET_BACK_M)
         - sw_drawing_practice (drawing, SW_PRACTICE_TRENCH_WIDTH_M);
}

static void
draw_run (SwDrawing *drawing, guint i)
{
  const SwRun *run = &drawing->laid->runs[i];
  SwBox box = { run->along_from_m, run_top_m (drawing, run), run->along_to_m,
                run->down_to_m };
  SwLabelBox rect;

  if (!sw_drawing_rect (drawing, box, &rect))
    return;
  sw_drawing_object (drawing, "/run/%u", i);
  sw_drawing_fill (drawing, SW_ROLE_RUN, rect);
  for (int side = -1; side <= 1; side += 2)
    sw_figure_segment (
        drawing->figure, SW_ROLE_RUN_EDGE, rect.x_mm + side * rect.half_width_mm,
        rect.y_mm - rect.half_height_mm, rect.x_mm + side * rect.half_width_mm,
        rect.y_mm + rect.half_height_mm);
}

/* Where run @b, laid later, lies over run @a: hatched, the hidden edge dashed, the upper one full. */
static void
draw_lap (SwDrawing *drawing, const SwRun *a, const SwRun *b)
{
  SwBox box = { fmax (a->along_from_m, b->along_from_m),
                fmax (run_top_m (drawing, a), run_top_m (drawing, b)),
                fmin (a->along_to_m, b->along_to_m), fmin (a->down_to_m, b->down_to_m) };
  gboolean left = drawing->face->leeward == SW_SIDE_LEFT;
  SwLabelBox rect;
  double sign = left ? -1.0 : 1.0, hidden, top;

  if (box.x1_m <= box.x0_m || box.y1_m <= box.y0_m
      || !sw_drawing_rect (drawing, box, &rect))
    return;
  sw_drawing_object (drawing, "/lap/%d-%d", a->number, b->number);
  sw_drawing_fill (drawing, SW_ROLE_LAP, rect);
  top = rect.x_mm + sign * rect.half_width_mm;
  hidden = rect.x_mm - sign * rect.half_width_mm;
  sw_figure_segment (drawing->figure, SW_ROLE_RUN_EDGE, top,
                     rect.y_mm - rect.half_height_mm, top,
                     rect.y_mm + rect.half_height_mm);
  if (rect.half_width_mm > 0.4)
    sw_draft_dashes (drawing->figure, SW_ROLE_MUTED, hidden,
                     rect.y_mm - rect.half_height_mm, hidden,
                     rect.y_mm + rect.half_height_mm, HIDDEN_DASH_MM);
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

GArray *
sw_unfold_outline (const SwFaceLayout *laid, guint *n_own)
{
  const SwFace *face = laid->face;
  GArray *flat = g_array_new (FALSE, FALSE, sizeof (SwPoint));

  *n_own = face->n_outline;
  for (guint i = 0; i < face->n_outline; i++)
    {
      SwPoint a = face->outline[i], b = face->outline[(i + 1) % face->n_outline];
      SwPoint at = { a.x_m, sw_ground_down_m (laid->ground, a) };
      gboolean outwards = b.y_m > a.y_m;

      g_array_append_val (flat, at);
      for (guint k = 0; k < face->n_section; k++)
        {
          double out = face->section[outwards ? k : face->n_section - 1 - k].x_m;

          if (out <= fmin (a.y_m, b.y_m) || out >= fmax (a.y_m, b.y_m))
            continue;
          at.x_m = a.x_m + (b.x_m - a.x_m) * (out - a.y_m) / (b.y_m - a.y_m);
          at.y_m = sw_ground_down_m (laid->ground, (SwPoint){ at.x_m, out });
          g_array_append_val (flat, at);
        }
    }
  return flat;
}

static void
draw_outline (SwDrawing *drawing)
{
  guint n_own;
  g_autoptr (GArray) flat = sw_unfold_outline (drawing->laid, &n_own);
  g_autofree SwPaperPoint *ring = g_new (SwPaperPoint, flat->len + 1);

  for (guint i = 0; i <= flat->len; i++)
    {
      SwPoint at = g_array_index (flat, SwPoint, i % flat->len);

      ring[i] = sw_drawing_at (drawing, at.x_m, at.y_m);
    }
  sw_drawing_object (drawing, "/outline");
  sw_figure_line (drawing->figure, SW_ROLE_GROUND, ring, flat->len + 1);
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
  const SwFaceLayout *laid = drawing->laid;
  gboolean with_pins = sw_face_view_shows_pins (drawing);

  for (guint i = 0; i < laid->n_runs; i++)
    draw_run (drawing, i);
  draw_laps (drawing);
  for (guint i = 0; i < laid->n_runs; i++)
    draw_joints (drawing, i);
  for (guint i = 0; i < laid->n_trenches; i++)
    draw_trench (drawing, i);
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
          sw_face_view_key (result, face_index, draw, sw_face_view_shows_pins (&drawing));

      sw_drawing_foot (&drawing, key);
      draw_laid (&drawing);
    }
  else
    sw_drawing_note (&drawing, SW_LABEL_NEEDED, SW_ROLE_TEXT, view->width_mm / 2.0,
                     view->height_mm / 2.0, 0.0, NULL,
                     sw_drawing_text (&drawing, "drawing.not-laid"));
  return sw_drawing_end (&drawing);
}
