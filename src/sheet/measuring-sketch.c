/* SPDX-License-Identifier: MIT */
#include "fall-lines.h"
#include "measuring.h"
#include <math.h>

#define SQUARE_MM 5.0
#define SQUARE_US_MM (SW_MM_PER_IN / 4.0)
#define SIDE_PARTS 24 /* of a side that a round crest bends */
#define CORNER_GAP_MM 1.5
#define MARGIN_MM 8.0 /* for the names of the corners */

static double
square_mm (const SwSheet *sheet)
{
  return sheet->draw->style.units == SW_UNITS_US ? SQUARE_US_MM : SQUARE_MM;
}

/* Whole squares, as many as there is room for. */
static SwFigure *
grid (const SwSheet *sheet, double width_mm, double height_mm)
{
  double step_mm = square_mm (sheet);
  guint columns = (guint) (width_mm / step_mm), rows = (guint) (height_mm / step_mm);
  SwFigure *figure = sw_figure_new (columns * step_mm, rows * step_mm);

  for (guint i = 1; i < columns; i++)
    sw_figure_segment (figure, SW_ROLE_GRID, i * step_mm, 0.0, i * step_mm,
                       figure->height_mm);
  for (guint i = 1; i < rows; i++)
    sw_figure_segment (figure, SW_ROLE_GRID, 0.0, i * step_mm, figure->width_mm,
                       i * step_mm);
  sw_figure_box (figure, SW_ROLE_FRAME, 0.0, 0.0, figure->width_mm, figure->height_mm);
  return figure;
}

/* Squares stand for 1, 2 or 5 metres or feet, or for tenfolds of them. */
static double
square_m (const SwSheet *sheet, SwBox world, const SwFigure *figure)
{
  static const double steps[] = { 1.0, 2.0, 5.0 };
  double unit_m = sheet->draw->style.units == SW_UNITS_US ? SW_M_PER_FT : 1.0;
  double most = fmax ((world.x1_m - world.x0_m) / (figure->width_mm - 2.0 * MARGIN_MM),
                      (world.y1_m - world.y0_m) / (figure->height_mm - 2.0 * MARGIN_MM));
  double least_m = most * square_mm (sheet); /* a square for less would not hold it */

  for (double tenfold = 0.1;; tenfold *= 10.0)
    for (guint i = 0; i < G_N_ELEMENTS (steps); i++)
      if (steps[i] * tenfold * unit_m >= least_m)
        return steps[i] * tenfold * unit_m;
}

static SwView
centred_view (SwBox world, const SwFigure *figure, double mm_per_m)
{
  return (SwView){
    .width_mm = figure->width_mm,
    .height_mm = figure->height_mm,
    .x_origin_mm = figure->width_mm / 2.0 - (world.x0_m + world.x1_m) / 2.0 * mm_per_m,
    .y_origin_mm = figure->height_mm / 2.0 - (world.y0_m + world.y1_m) / 2.0 * mm_per_m,
    .x_mm_per_m = mm_per_m,
    .y_mm_per_m = mm_per_m,
  };
}

static SwPaperPoint
on_paper (const SwSheet *sheet, guint face, const SwView *view, SwPoint plan)
{
  return sw_view_to_paper (view, sw_face_view_from_plan (sheet->result, face, plan));
}

static void
draw_ring (const SwSheet *sheet, SwFigure *figure, guint face, const SwView *view,
           SwRole role, const SwPoint *points, guint count)
{
  g_autoptr (GArray) bent = g_array_new (FALSE, FALSE, sizeof (SwPaperPoint));

  for (guint i = 0; i < count * SIDE_PARTS; i++)
    {
      SwPoint from = points[i / SIDE_PARTS], to = points[(i / SIDE_PARTS + 1) % count];
      double share = (double) (i % SIDE_PARTS) / SIDE_PARTS;
      SwPaperPoint at = on_paper (sheet, face, view,
                                  (SwPoint){ from.x_m + share * (to.x_m - from.x_m),
                                             from.y_m + share * (to.y_m - from.y_m) });

      g_array_append_val (bent, at);
    }
  g_array_append_val (bent, g_array_index (bent, SwPaperPoint, 0));
  sw_figure_line (figure, role, (const SwPaperPoint *) bent->data, bent->len);
}

/* A and B stand above their corners, C and D below; a face all round has none. */
static void
name_corners (const SwSheet *sheet, SwFigure *figure, guint face, const SwView *view)
{
  static const char *const names[] = { "A", "B", "C", "D" };
  double line_mm = sw_pen_line_mm (&sheet->pen, SW_STYLE_BODY);
  SwPoint corners[4];

  if (sheet->layout->faces[face].tiers[0].closed
      || !sw_corners (&sheet->layout->faces[face], corners))
    return;
  for (guint i = 0; i < G_N_ELEMENTS (names); i++)
    {
      SwPaperPoint at = on_paper (sheet, face, view, corners[i]);
      gboolean left = i == 0 || i == 3, above = i < 2;

      sw_pen_write (&sheet->pen, SW_STYLE_BODY, figure, SW_ROLE_HEADING,
                    at.x_mm + (left ? -CORNER_GAP_MM : CORNER_GAP_MM),
                    above ? at.y_mm - line_mm : at.y_mm,
                    left ? SW_ALIGN_RIGHT : SW_ALIGN_LEFT, names[i]);
    }
}

static void
draw_outline (const SwSheet *sheet, SwFigure *figure, guint face, const SwView *view)
{
  const SwFace *of = sheet->layout->faces[face].face;

  draw_ring (sheet, figure, face, view, SW_ROLE_GROUND, of->outline, of->n_outline);
  for (guint i = 0; i < of->obstacles->len; i++)
    {
      const SwObstacle *obstacle = g_ptr_array_index (of->obstacles, i);

      draw_ring (sheet, figure, face, view, SW_ROLE_OBSTACLE, obstacle->outline,
                 obstacle->n_outline);
    }
  name_corners (sheet, figure, face, view);
}

SwFigure *
sw_measuring_sketch (const SwSheet *sheet, guint face, double width_mm, double height_mm,
                     const char **square)
{
  SwFigure *figure = grid (sheet, width_mm, height_mm);

  figure->title = g_strdup (sw_sheet_get (sheet, "measuring.sketch.words"));
  *square = "";
  if (!sw_measuring_is_blank (sheet))
    {
      SwBox world = sw_face_view_box (sheet->result, face);
      double side_m = square_m (sheet, world, figure);
      SwView view = centred_view (world, figure, square_mm (sheet) / side_m);

      draw_outline (sheet, figure, face, &view);
      *square = sw_sheet_quantity (sheet, side_m, SW_UNIT_M);
    }
  return figure;
}
