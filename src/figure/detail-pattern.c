/* SPDX-License-Identifier: MIT */
#include "detail.h"
#include <math.h>

/* Rows of the field shown at least, and what is shown beyond the run's edges. */
#define ROWS 1.7
#define BEYOND_M 0.25

#define TOP_MM 11.0
#define SIDE_MM 12.0
#define BOTTOM_MM 8.0
#define PIN_MM 0.55

/* Pins nearer than this stand in one row or column. */
#define SAME_M 1e-3

typedef struct
{
  SwDetailSheet sheet;
  const SwFaceLayout *laid;
  const SwTier *tier;
  const SwRun *run;
  SwBox box; /* along, down */
} Pattern;

static SwPaperPoint
at (const Pattern *pattern, double along_m, double down_m)
{
  /* Details have y up. */
  return sw_detail_at (&pattern->sheet, along_m - pattern->box.x0_m,
                       pattern->box.y0_m - down_m);
}

static void
fill (Pattern *pattern, SwRole role, double x0, double y0, double x1, double y1)
{
  SwPaperPoint a, b;

  x0 = fmax (x0, pattern->box.x0_m);
  x1 = fmin (x1, pattern->box.x1_m);
  y1 = fmin (y1, pattern->box.y1_m);
  if (x0 >= x1 || y0 >= y1)
    return;
  a = at (pattern, x0, y0);
  b = at (pattern, x1, y1);
  sw_figure_box (pattern->sheet.drawing.figure, role, a.x_mm, a.y_mm, b.x_mm - a.x_mm,
                 b.y_mm - a.y_mm);
}

static void
draw_sheets (Pattern *pattern)
{
  const SwSourced *values = pattern->sheet.drawing.practice->values;
  double trench_m = values[SW_PRACTICE_TRENCH_WIDTH_M].value;
  double top_m = pattern->run->down_from_m - values[SW_PRACTICE_SET_BACK_M].value;

  for (guint i = pattern->tier->first_run;
       i < pattern->tier->first_run + pattern->tier->n_runs; i++)
    fill (pattern, SW_ROLE_RUN, pattern->laid->runs[i].along_from_m, top_m - trench_m,
          pattern->laid->runs[i].along_to_m, pattern->box.y1_m);
  for (guint i = pattern->tier->first_run;
       i + 1 < pattern->tier->first_run + pattern->tier->n_runs; i++)
    {
      const SwRun *a = &pattern->laid->runs[i], *b = a + 1;

      fill (pattern, SW_ROLE_LAP, fmax (a->along_from_m, b->along_from_m),
            top_m - trench_m, fmin (a->along_to_m, b->along_to_m), pattern->box.y1_m);
    }
  fill (pattern, SW_ROLE_TRENCH, pattern->tier->along_from_m, top_m - trench_m,
        pattern->tier->along_to_m, top_m);
}

/* Every pin of the layout that lies in the window. */
static void
draw_pins (Pattern *pattern)
{
  SwBox box = pattern->box;

  sw_drawing_object (&pattern->sheet.drawing, "/pins");
  for (gsize i = 0; i < pattern->laid->n_pins; i++)
    {
      const SwPinPlace *pin = &pattern->laid->pins[i];
      double along = (double) pin->along_m, down = (double) pin->down_m;
      SwPaperPoint p;

      if (along < box.x0_m || along > box.x1_m || down < box.y0_m || down > box.y1_m)
        continue;
      p = at (pattern, along, down);
      sw_figure_circle (pattern->sheet.drawing.figure, SW_ROLE_PIN, p.x_mm, p.y_mm,
                        PIN_MM);
    }
}

static gboolean
in_window (const Pattern *pattern, const SwPinPlace *pin)
{
  return (double) pin->down_m >= pattern->box.y0_m
         && (double) pin->down_m <= pattern->box.y1_m
         && (double) pin->along_m >= pattern->run->along_from_m
         && (double) pin->along_m <= pattern->run->along_to_m;
}

/* The field pin of the highest row nearest to the run's middle; NULL: none in the window. */
static const SwPinPlace *
first_field_pin (const Pattern *pattern)
{
  double middle = (pattern->run->along_from_m + pattern->run->along_to_m) / 2.0;
  const SwPinPlace *first = NULL;

  for (gsize i = 0; i < pattern->laid->n_pins; i++)
    {
      const SwPinPlace *pin = &pattern->laid->pins[i];
      double lower;

      if (pin->role != SW_PIN_FIELD || !in_window (pattern, pin))
        continue;
      lower = first != NULL ? (double) pin->down_m - (double) first->down_m : -1.0;
      if (lower < -SAME_M
          || (lower < SAME_M
              && fabs ((double) pin->along_m - middle)
                     < fabs ((double) first->along_m - middle) - SAME_M))
        first = pin;
    }
  return first;
}

/* Distance to the next column on the right, of the field or the lap; infinite without one. */
static double
next_column_m (const Pattern *pattern, double along_m)
{
  double next = INFINITY;

  for (gsize i = 0; i < pattern->laid->n_pins; i++)
    {
      const SwPinPlace *pin = &pattern->laid->pins[i];

      if ((pin->role == SW_PIN_FIELD || pin->role == SW_PIN_SIDE_LAP)
          && in_window (pattern, pin) && (double) pin->along_m > along_m + SAME_M)
        next = fmin (next, (double) pin->along_m);
    }
  return next;
}

static void
note_field (Pattern *pattern)
{
  SwDrawing *drawing = &pattern->sheet.drawing;
  const SwPinPlace *pin = first_field_pin (pattern);
  double first_m, second_m, row_m, step_m = pattern->tier->pin_down_m;
  SwPaperPoint left = at (pattern, pattern->box.x0_m, 0.0);

  if (pin == NULL)
    return;
  first_m = (double) pin->along_m;
  row_m = (double) pin->down_m;
  second_m = next_column_m (pattern, first_m);
  if (row_m + step_m <= pattern->box.y1_m)
    sw_detail_dimension (
        &pattern->sheet, (SwPaperPoint){ left.x_mm, at (pattern, 0.0, row_m).y_mm },
        (SwPaperPoint){ left.x_mm, at (pattern, 0.0, row_m + step_m).y_mm }, -5.0,
        sw_drawing_spacing (drawing, step_m));
  if (isfinite (second_m))
    {
      double y = at (pattern, 0.0, pattern->box.y1_m).y_mm;

      sw_detail_dimension (&pattern->sheet,
                           (SwPaperPoint){ at (pattern, first_m, 0.0).x_mm, y },
                           (SwPaperPoint){ at (pattern, second_m, 0.0).x_mm, y }, -4.5,
                           sw_drawing_spacing (drawing, second_m - first_m));
    }
}

/* Pins along the lap at the right edge, and in the trench. */
static void
note_rows (Pattern *pattern)
{
  SwDrawing *drawing = &pattern->sheet.drawing;
  const SwSourced *values = drawing->practice->values;
  double lap_m = values[SW_PRACTICE_SIDE_LAP_PIN_M].value;
  SwPaperPoint right = at (pattern, pattern->box.x1_m, pattern->run->down_from_m);
  SwPaperPoint below = at (pattern, pattern->box.x1_m, pattern->run->down_from_m + lap_m);
  SwPaperPoint top = at (pattern, (pattern->box.x0_m + pattern->box.x1_m) / 2.0,
                         pattern->run->down_from_m - values[SW_PRACTICE_SET_BACK_M].value
                             - values[SW_PRACTICE_TRENCH_WIDTH_M].value);
  g_autofree char *trench =
      sw_detail_spacing_text (&pattern->sheet, "drawing.detail.trench-pins",
                              values[SW_PRACTICE_TRENCH_PIN_M].value);

  if (pattern->run->down_from_m + lap_m <= pattern->box.y1_m && pattern->tier->strips > 1)
    sw_detail_dimension (
        &pattern->sheet, right, below, 5.0,
        sw_detail_spacing_text (&pattern->sheet, "drawing.detail.along-lap", lap_m));
  sw_drawing_note (drawing, SW_LABEL_MAIN, SW_ROLE_TEXT, drawing->figure->width_mm / 2.0,
                   top.y_mm - 3.0, 0.0, NULL, trench);
}

static void
draw_crest (Pattern *pattern)
{
  SwPaperPoint a = at (pattern, pattern->box.x0_m, pattern->run->down_from_m);
  SwPaperPoint b = at (pattern, pattern->box.x1_m, pattern->run->down_from_m);

  sw_figure_object (pattern->sheet.drawing.figure, "");
  sw_figure_segment (pattern->sheet.drawing.figure, SW_ROLE_BREAK, a.x_mm, a.y_mm, b.x_mm,
                     b.y_mm);
}

/* One run's width at the crest, with the pins that this layout puts there. */
SwFigure *
sw_detail_pin_pattern (const SwResult *result, guint face, double width_mm,
                       double height_mm, const SwDraw *draw)
{
  const SwSourced *values = result->layout->practice->values;
  Pattern pattern = { .laid = &result->layout->faces[face] };
  double scale, x;

  if (pattern.laid->n_runs == 0 || pattern.laid->n_pins == 0)
    return NULL;
  pattern.tier = &pattern.laid->tiers[0];
  pattern.run =
      &pattern.laid->runs[pattern.tier->first_run + (pattern.tier->n_runs > 2 ? 1 : 0)];
  pattern.box = (SwBox){ pattern.run->along_from_m - BEYOND_M,
                         pattern.run->down_from_m - values[SW_PRACTICE_SET_BACK_M].value
                             - values[SW_PRACTICE_TRENCH_WIDTH_M].value,
                         pattern.run->along_to_m + BEYOND_M,
                         pattern.run->down_from_m + ROWS * pattern.tier->pin_down_m };
  scale = sw_drawing_scale (draw, pattern.box.x1_m - pattern.box.x0_m,
                            pattern.box.y1_m - pattern.box.y0_m, width_mm - 2.0 * SIDE_MM,
                            height_mm - TOP_MM - BOTTOM_MM);
  pattern.box.y1_m =
      fmin (pattern.run->down_to_m,
            pattern.box.y0_m + (height_mm - TOP_MM - BOTTOM_MM) * scale / 1000.0);
  x = (width_mm - (pattern.box.x1_m - pattern.box.x0_m) * 1000.0 / scale) / 2.0;
  sw_detail_begin (&pattern.sheet, result, face, width_mm, height_mm, x, TOP_MM, scale,
                   draw, "drawing.detail.pin-pattern");
  draw_sheets (&pattern);
  draw_crest (&pattern);
  draw_pins (&pattern);
  note_field (&pattern);
  note_rows (&pattern);
  return sw_detail_end (&pattern.sheet);
}
