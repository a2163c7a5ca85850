/* SPDX-License-Identifier: MIT */
#include "drawing.h"
#include <math.h>

/* Four corners and six tapes, as someone would sketch them on the back of a notebook. */

#define EDGE_MM 11.0 /* for letters and lengths outside the shape */
#define LETTER_MM 4.0
#define BESIDE_MM 3.6
#define SPOTS 5

typedef struct
{
  SwLabels *labels;
  SwFigure *figure;
  SwPaperPoint corners[4];
  double text_mm;
  SwNumberStyle style;
} Sketch;

static SwPaperPoint
middle_of (const Sketch *sketch)
{
  SwPaperPoint middle = { 0.0, 0.0 };

  for (int i = 0; i < 4; i++)
    {
      middle.x_mm += sketch->corners[i].x_mm / 4.0;
      middle.y_mm += sketch->corners[i].y_mm / 4.0;
    }
  return middle;
}

static void
add_letters (const Sketch *sketch)
{
  SwPaperPoint middle = middle_of (sketch);

  for (int i = 0; i < 4; i++)
    {
      SwPaperPoint at = sketch->corners[i];
      double dx = at.x_mm - middle.x_mm, dy = at.y_mm - middle.y_mm;
      double away = LETTER_MM / hypot (dx, dy);
      const char letter[] = { (char) ('A' + i), '\0' };
      SwLabelSpot spot = { at.x_mm + away * dx, at.y_mm + away * dy, 0.0 };

      sw_labels_wish (sketch->labels, &(SwLabelWish){ .rank = SW_LABEL_NEEDED,
                                                      .role = SW_ROLE_TEXT,
                                                      .style = SW_LABEL_BOLD,
                                                      .size_mm = 1.2 * sketch->text_mm,
                                                      .text = letter,
                                                      .spots = &spot,
                                                      .n_spots = 1 });
    }
}

/* "AB 20.0 m" along the tape, outside the shape or, for a diagonal, on the line, away from
 * where both cross. */
static void
add_tape (const Sketch *sketch, int from, int to, double length_m, double beside_mm)
{
  static const double shares[SPOTS] = { 0.30, 0.70, 0.36, 0.24, 0.76 };
  SwPaperPoint a = sketch->corners[from], b = sketch->corners[to];
  double dx = b.x_mm - a.x_mm, dy = b.y_mm - a.y_mm, long_mm = hypot (dx, dy);
  g_autofree char *length = sw_quantity_text (length_m, SW_UNIT_M, sketch->style);
  g_autofree char *text = g_strdup_printf ("%c%c  %s", 'A' + from, 'A' + to, length);
  SwLabelSpot spots[SPOTS];

  for (int i = 0; i < SPOTS; i++)
    {
      double share = beside_mm > 0.0 ? 0.5 : shares[i];

      spots[i] = (SwLabelSpot){ a.x_mm + share * dx + beside_mm * dy / long_mm,
                                a.y_mm + share * dy - beside_mm * dx / long_mm,
                                sw_label_reading_turn_rad (-atan2 (dy, dx)) };
    }
  sw_labels_wish (sketch->labels,
                  &(SwLabelWish){ .rank = SW_LABEL_NEEDED,
                                  .role = SW_ROLE_TEXT,
                                  .style = SW_LABEL_KNOCK_OUT,
                                  .size_mm = sketch->text_mm,
                                  .text = text,
                                  .spots = spots,
                                  .n_spots = beside_mm > 0.0 ? 1 : SPOTS });
}

/* The shape as large as it fits, crest on top. */
static void
set_corners (Sketch *sketch, const SwTapedShape *shape, double width_mm, double height_mm)
{
  SwBox box = { INFINITY, INFINITY, -INFINITY, -INFINITY };
  double mm_per_m;

  for (int i = 0; i < 4; i++)
    {
      box.x0_m = fmin (box.x0_m, shape->corners[i].x_m);
      box.y0_m = fmin (box.y0_m, shape->corners[i].y_m);
      box.x1_m = fmax (box.x1_m, shape->corners[i].x_m);
      box.y1_m = fmax (box.y1_m, shape->corners[i].y_m);
    }
  mm_per_m = fmin ((width_mm - 2.0 * EDGE_MM) / (box.x1_m - box.x0_m),
                   (height_mm - 2.0 * EDGE_MM) / (box.y1_m - box.y0_m));
  for (int i = 0; i < 4; i++)
    sketch->corners[i] = (SwPaperPoint){
      width_mm / 2.0 + mm_per_m * (shape->corners[i].x_m - (box.x0_m + box.x1_m) / 2.0),
      height_mm / 2.0 + mm_per_m * (shape->corners[i].y_m - (box.y0_m + box.y1_m) / 2.0)
    };
}

SwFigure *
sw_draw_taped_sides (const SwTapedSides *sides, double width_mm, double height_mm,
                     const SwDraw *draw)
{
  Sketch sketch = { .text_mm = sw_draw_text_mm (draw), .style = draw->style };
  const SwPaperPoint *at = sketch.corners;
  SwTapedShape shape;

  if (sw_taped_shape (sides, &shape) != SW_OK)
    return NULL;
  sketch.figure = sw_figure_new (width_mm, height_mm);
  sketch.labels = sw_labels_new (width_mm, height_mm, draw->measure);
  set_corners (&sketch, &shape, width_mm, height_mm);
  sw_figure_area (sketch.figure, SW_ROLE_RUN, at, 4);
  for (int i = 0; i < 4; i++)
    sw_figure_segment (sketch.figure, SW_ROLE_GROUND, at[i].x_mm, at[i].y_mm,
                       at[(i + 1) % 4].x_mm, at[(i + 1) % 4].y_mm);
  sw_figure_segment (sketch.figure, SW_ROLE_DIMENSION, at[0].x_mm, at[0].y_mm, at[2].x_mm,
                     at[2].y_mm);
  if (sides->bd_m > 0.0)
    sw_draft_dashes (sketch.figure, SW_ROLE_DIMENSION, at[1].x_mm, at[1].y_mm, at[3].x_mm,
                     at[3].y_mm, 2.0);
  add_letters (&sketch);
  add_tape (&sketch, 0, 1, sides->ab_m, BESIDE_MM);
  add_tape (&sketch, 1, 2, sides->bc_m, BESIDE_MM);
  add_tape (&sketch, 2, 3, sides->cd_m, BESIDE_MM);
  add_tape (&sketch, 3, 0, sides->da_m, BESIDE_MM);
  add_tape (&sketch, 0, 2, sides->ac_m, 0.0);
  if (sides->bd_m > 0.0)
    add_tape (&sketch, 1, 3, sides->bd_m, 0.0);
  sw_labels_place (sketch.labels, sketch.figure);
  sw_labels_free (sketch.labels);
  return sketch.figure;
}
