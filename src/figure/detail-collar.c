/* SPDX-License-Identifier: MIT */
#include "detail.h"
#include <math.h>
#include <slopewright/base/count.h>

/* What the paper shows at least, across and down. */
#define SHOWN_M 1.8
#define TALL_M 0.9

/* A cut-out wider than this is shown by its upper left corner. */
#define WIDEST_M 1.1

/* Blanket shown beyond the patch. */
#define BEYOND_M 0.22

#define TOP_MM 9.0
#define SIDE_MM 4.0
#define BOTTOM_MM 6.5
#define PIN_MM 0.55

/* Beyond the frame, where an edge that is only cut off stays out of sight. */
#define HIDDEN_MM 1.0

/* A cut-out as a plain box on the face laid flat; metres from its upper left corner. */
typedef struct
{
  SwDetailSheet sheet;
  double wide_m, tall_m, overlap_m, every_m;
  SwBox box;
} Cut;

static const SwObstaclePlace *
first_standing (const SwFaceLayout *laid)
{
  for (guint i = 0; i < laid->n_obstacles; i++)
    if (laid->obstacles[i].standing)
      return &laid->obstacles[i];
  return NULL;
}

static SwPaperPoint
at (const Cut *cut, double x_m, double y_m)
{
  /* Details have y up. */
  return sw_detail_at (&cut->sheet, x_m, -y_m);
}

/* The cut-out grown by @by_m, as far as the paper shows it. */
static void
draw_box (Cut *cut, SwRole role, double by_m)
{
  double hidden_m = HIDDEN_MM * cut->sheet.scale / 1000.0;
  double x0 = fmax (-by_m, cut->box.x0_m - hidden_m);
  double y0 = fmax (-by_m, cut->box.y0_m - hidden_m);
  double x1 = fmin (cut->wide_m + by_m, cut->box.x1_m + hidden_m);
  double y1 = fmin (cut->tall_m + by_m, cut->box.y1_m + hidden_m);
  SwPaperPoint a = at (cut, x0, y0), b = at (cut, x1, y1);

  sw_figure_box (cut->sheet.drawing.figure, role, a.x_mm, a.y_mm, b.x_mm - a.x_mm,
                 b.y_mm - a.y_mm);
}

/* A place on the line of pins, walked clockwise from its upper left corner. */
static SwPoint
on_ring (const Cut *cut, double walked_m)
{
  double r = SW_OBSTACLE_CLEAR_M;
  double across = cut->wide_m + 2.0 * r, down = cut->tall_m + 2.0 * r;

  if (walked_m <= across)
    return (SwPoint){ walked_m - r, -r };
  if (walked_m <= across + down)
    return (SwPoint){ cut->wide_m + r, walked_m - across - r };
  if (walked_m <= 2.0 * across + down)
    return (SwPoint){ cut->wide_m + r - (walked_m - across - down), cut->tall_m + r };
  return (SwPoint){ -r, cut->tall_m + r - (walked_m - 2.0 * across - down) };
}

static void
draw_pins (Cut *cut)
{
  double round_m = 2.0 * (cut->wide_m + cut->tall_m) + 8.0 * SW_OBSTACLE_CLEAR_M;
  int pins = sw_count_up (round_m, cut->every_m);

  sw_drawing_object (&cut->sheet.drawing, "/pins");
  for (int i = 0; i < pins; i++)
    {
      SwPoint pin = on_ring (cut, i * round_m / pins);
      SwPaperPoint p = at (cut, pin.x_m, pin.y_m);

      if (pin.x_m < cut->box.x0_m || pin.x_m > cut->box.x1_m || pin.y_m < cut->box.y0_m
          || pin.y_m > cut->box.y1_m)
        continue;
      sw_figure_circle (cut->sheet.drawing.figure, SW_ROLE_PIN, p.x_mm, p.y_mm, PIN_MM);
      sw_labels_reserve_rect (cut->sheet.drawing.labels, p.x_mm - PIN_MM, p.y_mm - PIN_MM,
                              2.0 * PIN_MM, 2.0 * PIN_MM);
    }
}

static void
draw (Cut *cut, const SwObstaclePlace *place)
{
  SwFigure *figure = cut->sheet.drawing.figure;
  SwPaperPoint a = at (cut, cut->box.x0_m, cut->box.y0_m);
  SwPaperPoint b = at (cut, cut->box.x1_m, cut->box.y1_m);
  SwPaperPoint frame[4] = { a, { b.x_mm, a.y_mm }, b, { a.x_mm, b.y_mm } };

  sw_figure_clip (figure, frame, 4);
  sw_drawing_object (&cut->sheet.drawing, "/run/0");
  sw_figure_area (figure, SW_ROLE_RUN, frame, 4);
  sw_drawing_object (&cut->sheet.drawing, "/obstacle/%s", place->obstacle->id);
  draw_box (cut, SW_ROLE_COLLAR, cut->overlap_m);
  draw_box (cut, SW_ROLE_OBSTACLE, 0.0);
  draw_pins (cut);
  sw_figure_unclip (figure);
}

/* From the middle of what is shown of its left side. */
static void
note_sizes (Cut *cut, const SwObstaclePlace *place)
{
  SwDrawing *drawing = &cut->sheet.drawing;
  double middle_m = fmin (cut->tall_m, cut->box.y1_m) / 2.0;
  double right_m = fmin (cut->wide_m, cut->box.x1_m);
  g_autofree char *wide =
      sw_drawing_length (drawing, place->along_to_m - place->along_from_m);
  g_autofree char *tall =
      sw_drawing_length (drawing, place->down_to_m - place->down_from_m);
  g_autofree char *words = sw_texts_fill (drawing->draw->texts, "drawing.detail.cut-out",
                                          "wide", wide, "tall", tall, NULL);
  SwPaperPoint in = at (cut, right_m / 2.0, middle_m);

  sw_drawing_note (drawing, SW_LABEL_NEEDED, SW_ROLE_TEXT, in.x_mm, in.y_mm, 0.0, NULL,
                   words);
  sw_detail_dimension (&cut->sheet, at (cut, -cut->overlap_m, middle_m),
                       at (cut, 0.0, middle_m), 0.0,
                       sw_drawing_small (drawing, cut->overlap_m));
}

/* Words go beside the patch, or into the middle of the cut-out. */
static void
keep_clear (Cut *cut)
{
  double o = cut->overlap_m, right_m = fmin (cut->wide_m + o, cut->box.x1_m);
  double end_m = fmin (cut->tall_m + o, cut->box.y1_m);
  SwPaperPoint a = at (cut, -o, -o), b = at (cut, right_m, end_m), c = at (cut, 0.0, 0.0);

  sw_labels_reserve_rect (cut->sheet.drawing.labels, a.x_mm, a.y_mm, b.x_mm - a.x_mm,
                          c.y_mm - a.y_mm + 0.6);
  sw_labels_reserve_rect (cut->sheet.drawing.labels, a.x_mm, a.y_mm, c.x_mm - a.x_mm,
                          b.y_mm - a.y_mm);
}

static void
note (Cut *cut, const SwObstaclePlace *place)
{
  SwDetailSheet *sheet = &cut->sheet;
  double right_m = fmin (cut->wide_m, cut->box.x1_m);
  double round_m = 2.0 * (cut->wide_m + cut->tall_m) + 8.0 * SW_OBSTACLE_CLEAR_M;
  SwPoint second = on_ring (cut, round_m / sw_count_up (round_m, cut->every_m));

  keep_clear (cut);
  note_sizes (cut, place);
  sw_detail_callout (
      sheet, at (cut, second.x_m, second.y_m),
      sw_detail_spacing_text (sheet, "drawing.detail.ring-pins", cut->every_m));
  sw_detail_callout (sheet, at (cut, right_m * 0.75, -cut->overlap_m * 0.9),
                     sw_detail_words (sheet, "drawing.detail.patch"));
  sw_drawing_note (&sheet->drawing, SW_LABEL_USEFUL, SW_ROLE_MUTED,
                   sheet->drawing.figure->width_mm / 2.0,
                   sheet->drawing.figure->height_mm - 2.4, 0.0, NULL,
                   sw_drawing_text (&sheet->drawing, "drawing.detail.laid-flat"));
}

/* Round the cut-out, or from its upper left corner as far as the paper reaches. */
static SwBox
window (const Cut *cut, double across_m, double down_m)
{
  double beyond_m = cut->overlap_m + BEYOND_M;
  double x0 = cut->wide_m <= WIDEST_M ? (cut->wide_m - across_m) / 2.0 : -beyond_m - 0.25;
  double y0 =
      cut->tall_m + 2.0 * beyond_m <= down_m ? (cut->tall_m - down_m) / 2.0 : -beyond_m;

  return (SwBox){ x0, y0, x0 + across_m, y0 + down_m };
}

SwFigure *
sw_detail_collar (const SwResult *result, guint face_index, double width_mm,
                  double height_mm, const SwDraw *style)
{
  const SwSourced *values = result->layout->practice->values;
  const SwObstaclePlace *place = first_standing (&result->layout->faces[face_index]);
  double across_mm = width_mm - 2.0 * SIDE_MM, down_mm = height_mm - TOP_MM - BOTTOM_MM;
  double scale = sw_drawing_scale (style, SHOWN_M, TALL_M, across_mm, down_mm);
  Cut cut;

  if (place == NULL)
    return NULL;
  cut.wide_m = place->along_to_m - place->along_from_m;
  cut.tall_m = place->down_to_m - place->down_from_m;
  cut.overlap_m = values[SW_PRACTICE_COLLAR_M].value;
  cut.every_m = values[SW_PRACTICE_RING_PIN_M].value;
  cut.box = window (&cut, across_mm * scale / 1000.0, down_mm * scale / 1000.0);
  sw_detail_begin (&cut.sheet, result, face_index, width_mm, height_mm,
                   SIDE_MM - cut.box.x0_m * 1000.0 / scale,
                   TOP_MM - cut.box.y0_m * 1000.0 / scale, scale, style,
                   "drawing.detail.collar");
  draw (&cut, place);
  note (&cut, place);
  return sw_detail_end (&cut.sheet);
}
