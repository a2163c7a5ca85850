/* SPDX-License-Identifier: MIT */
#include "face-view.h"
#include <math.h>

#define LEAST_PIN_GAP_MM 1.5
#define PIN_MM 0.26

static void
draw_trenches (SwDrawing *drawing)
{
  static const SwRole roles[] = { [SW_TRENCH_KEY] = SW_ROLE_TRENCH,
                                  [SW_TRENCH_SLOT] = SW_ROLE_SLOT,
                                  [SW_TRENCH_TOE] = SW_ROLE_TRENCH };

  for (guint i = 0; i < drawing->laid->n_trenches; i++)
    sw_face_view_trench (drawing, i, roles[drawing->laid->trenches[i].kind], -INFINITY,
                         INFINITY);
}

void
sw_face_view_outline (SwDrawing *drawing)
{
  const SwFace *face = drawing->face;
  g_autoptr (GArray) ring = sw_unfold (drawing, face->outline, face->n_outline, TRUE);

  sw_drawing_object (drawing, "/outline");
  sw_drawing_line (drawing, SW_ROLE_GROUND, ring);
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

/* Whether a pin can be in view, told without laying it; a round face needs that. */
static gboolean
may_be_seen (const SwDrawing *drawing, const SwPinPlace *pin)
{
  const SwBox seen = drawing->seen;

  return sw_development_is_bent (drawing->development)
         || ((double) pin->along_m >= seen.x0_m && (double) pin->along_m <= seen.x1_m
             && (double) pin->down_m >= seen.y0_m && (double) pin->down_m <= seen.y1_m);
}

static void
draw_pins (SwDrawing *drawing)
{
  const SwFaceLayout *laid = drawing->laid;
  const SwView *view = drawing->view;

  sw_drawing_object (drawing, "/pins");
  for (gsize i = 0; i < laid->n_pins; i++)
    {
      const SwPinPlace *pin = &laid->pins[i];
      SwPaperPoint at;

      if (!may_be_seen (drawing, pin))
        continue;
      at = sw_face_view_at (drawing, (double) pin->along_m, (double) pin->down_m);
      if (at.x_mm < 0.0 || at.x_mm > view->width_mm || at.y_mm < 0.0
          || at.y_mm > view->height_mm)
        continue;
      sw_figure_circle (drawing->figure, SW_ROLE_PIN, at.x_mm, at.y_mm, PIN_MM);
    }
}

static void
draw_laid (SwDrawing *drawing)
{
  const SwLie lie = { sw_unfold, sw_unfold_at };
  gboolean with_pins = sw_face_view_shows_pins (drawing);

  sw_face_view_runs (drawing);
  draw_trenches (drawing);
  sw_draw_zones (drawing, &lie);
  sw_draw_obstacles (drawing, &lie);
  sw_face_view_outline (drawing);
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
