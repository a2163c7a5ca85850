/* SPDX-License-Identifier: MIT */
#include "detail.h"
#include <math.h>

#define OFF_MM 0.55
#define LAYER_MM 1.1

/* A row without trench or fold stands this far above the end. */
#define ROW_UP_MM 5.0

/* Toe point: this part of the figure's width from the left, and of its height from the top. */
#define TOE_X 0.44
#define TOE_Y 0.4

typedef struct
{
  SwDetailSheet sheet;
  double x, y;        /* the toe on paper */
  SwPaperPoint start; /* where the slope comes into the picture */
  double right;       /* end of the level ground */
} ToeSheet;

static void
begin (ToeSheet *toe, const SwResult *result, guint face, double width_mm,
       double height_mm, double scale, const SwDraw *draw)
{
  double slope = sw_detail_slope_rad (result, face);
  double run;

  toe->x = width_mm * TOE_X;
  toe->y = height_mm * TOE_Y;
  toe->right = width_mm - 2.0;
  run = fmin (toe->x - 2.0, (toe->y - 8.0) / tan (slope));
  toe->start = (SwPaperPoint){ toe->x - run, toe->y - run * tan (slope) };
  sw_detail_begin (&toe->sheet, result, face, width_mm, height_mm, toe->x, toe->y, scale,
                   draw, "drawing.detail.toe");
}

static void
note_pins (ToeSheet *toe, SwPaperPoint at)
{
  sw_detail_callout (
      &toe->sheet, at,
      sw_detail_spacing_text (
          &toe->sheet, "drawing.detail.pins-every",
          sw_drawing_practice (&toe->sheet.drawing, SW_PRACTICE_TOE_PIN_M)));
  sw_detail_callout (&toe->sheet,
                     (SwPaperPoint){ (toe->start.x_mm + toe->x) / 2.0,
                                     (toe->start.y_mm + toe->y) / 2.0 - OFF_MM },
                     sw_detail_words (&toe->sheet, "drawing.key.blanket"));
  sw_detail_callout (&toe->sheet, (SwPaperPoint){ toe->x, toe->y },
                     sw_detail_words (&toe->sheet, "drawing.toe-line"));
}

static guint
trench_path (const ToeSheet *toe, SwLining lining, double right, double floor,
             SwPaperPoint path[5])
{
  guint n = 0;

  path[n++] = (SwPaperPoint){ toe->start.x_mm, toe->start.y_mm - OFF_MM * 1.3 };
  path[n++] = (SwPaperPoint){ toe->x + OFF_MM, toe->y - OFF_MM };
  path[n++] = (SwPaperPoint){ toe->x + OFF_MM, floor - OFF_MM };
  if (lining != SW_LINING_DOWN)
    path[n++] = (SwPaperPoint){ right - OFF_MM, floor - OFF_MM };
  if (lining == SW_LINING_DOWN_ACROSS_UP)
    path[n++] = (SwPaperPoint){ right - OFF_MM, toe->y };
  return n;
}

static SwFigure *
draw_trench (const SwResult *result, guint face, double width_mm, double height_mm,
             const SwDraw *draw)
{
  const SwPractice *practice = result->layout->practice;
  double depth_m = sw_practice_get (practice, SW_PRACTICE_TOE_DEPTH_M);
  double trench_m = sw_practice_get (practice, SW_PRACTICE_TOE_WIDTH_M);
  double pin_m = result->layout->faces[face].pin_need_m;
  double scale = sw_drawing_scale (draw, trench_m, depth_m + pin_m, width_mm * 0.3,
                                   height_mm * (1.0 - TOE_Y) - 5.0);
  ToeSheet toe;
  double right, floor;

  begin (&toe, result, face, width_mm, height_mm, scale, draw);
  right = toe.x + sw_detail_mm (&toe.sheet, trench_m);
  floor = toe.y + sw_detail_mm (&toe.sheet, depth_m);
  {
    SwPaperPoint before[1] = { toe.start };
    SwPaperPoint after[1] = { { toe.right, toe.y } };
    SwPaperPoint hole[4] = {
      { toe.x, toe.y }, { toe.x, floor }, { right, floor }, { right, toe.y }
    };
    SwPaperPoint path[5];
    guint n = trench_path (&toe, practice->toe_lining, right, floor, path);

    sw_drawing_object (&toe.sheet.drawing, "/trench");
    sw_detail_hole (&toe.sheet, (SwHole){ toe.x, right, toe.y, toe.y, floor }, before, 1,
                    after, 1, height_mm - 0.5);
    sw_detail_lining (&toe.sheet, path + 1, n - 1, 1.0);
    sw_detail_line (&toe.sheet, SW_ROLE_BLANKET, path, 2);
    sw_detail_dimension (&toe.sheet, hole[0], hole[3], 6.0,
                         sw_drawing_small (&toe.sheet.drawing, trench_m));
    sw_detail_dimension (&toe.sheet, hole[2], hole[3], -7.0,
                         sw_drawing_small (&toe.sheet.drawing, depth_m));
  }
  sw_detail_pin (&toe.sheet, (SwPaperPoint){ (toe.x + right) / 2.0, floor - OFF_MM }, 0.0,
                 1.0);
  sw_detail_callout (&toe.sheet,
                     (SwPaperPoint){ (toe.x + right) / 2.0, (toe.y + floor) / 2.0 },
                     sw_detail_words (&toe.sheet, "drawing.detail.backfill"));
  note_pins (&toe, (SwPaperPoint){ (toe.x + right) / 2.0, floor + 4.0 });
  return sw_detail_end (&toe.sheet);
}

/* Level ground beyond the toe: the end is turned under, or only pinned in a row. */
static SwFigure *
draw_end (const SwResult *result, guint face, double width_mm, double height_mm,
          const SwDraw *draw, gboolean turned)
{
  double fold_m =
      turned ? sw_practice_get (result->layout->practice, SW_PRACTICE_TOE_FOLD_M) : 0.0;
  double pin_m = result->layout->faces[face].pin_need_m;
  double scale = sw_drawing_scale (draw, fmax (fold_m, 0.05), pin_m, width_mm * 0.36,
                                   height_mm * (1.0 - TOE_Y) - 5.0);
  ToeSheet toe;
  double end, high = turned ? OFF_MM + LAYER_MM : OFF_MM;
  double slope = sw_detail_slope_rad (result, face);

  begin (&toe, result, face, width_mm, height_mm, scale, draw);
  end = toe.x + sw_detail_mm (&toe.sheet, fold_m);
  {
    SwPaperPoint ground[3] = { toe.start, { toe.x, toe.y }, { toe.right, toe.y } };
    SwPaperPoint path[5] = { { toe.start.x_mm, toe.start.y_mm - OFF_MM * 1.3 },
                             { toe.x - 3.0, toe.y - 3.0 * tan (slope) - OFF_MM * 1.3 },
                             { toe.x, toe.y - high },
                             { end, toe.y - high },
                             { end, toe.y - OFF_MM } };
    SwPaperPoint under[2] = { { end, toe.y - OFF_MM }, { toe.x, toe.y - OFF_MM } };

    sw_detail_ground (&toe.sheet, ground, 3, height_mm - 0.5);
    sw_detail_line (&toe.sheet, SW_ROLE_BLANKET, path, turned ? 5 : 3);
    if (turned)
      {
        sw_figure_line (toe.sheet.drawing.figure, SW_ROLE_BLANKET, under, 2);
        sw_detail_dimension (&toe.sheet, (SwPaperPoint){ toe.x, toe.y - high },
                             (SwPaperPoint){ end, toe.y - high }, 6.0,
                             sw_drawing_small (&toe.sheet.drawing, fold_m));
        sw_detail_callout (&toe.sheet, (SwPaperPoint){ end - 1.0, toe.y - high },
                           sw_detail_words (&toe.sheet, "drawing.detail.turned-under"));
      }
  }
  if (turned)
    {
      double at = (toe.x + end) / 2.0;

      sw_detail_pin (&toe.sheet, (SwPaperPoint){ at, toe.y - high - 0.6 }, 0.0, 1.0);
      note_pins (&toe, (SwPaperPoint){ at, toe.y + 6.0 });
    }
  else
    {
      double up = ROW_UP_MM;
      SwPaperPoint at = { toe.x - up * cos (slope) + OFF_MM * sin (slope),
                          toe.y - up * sin (slope) - 2.0 * OFF_MM * cos (slope) };

      sw_detail_pin (&toe.sheet, at, -sin (slope), cos (slope));
      note_pins (&toe, (SwPaperPoint){ at.x_mm - 6.0 * sin (slope),
                                       at.y_mm + 6.0 * cos (slope) });
    }
  return sw_detail_end (&toe.sheet);
}

SwFigure *
sw_detail_toe (const SwResult *result, guint face, double width_mm, double height_mm,
               const SwDraw *draw)
{
  SwToeKind kind = result->layout->practice->toe_kind;

  if (kind == SW_TOE_TRENCH)
    return draw_trench (result, face, width_mm, height_mm, draw);
  return draw_end (result, face, width_mm, height_mm, draw, kind == SW_TOE_FOLD);
}
