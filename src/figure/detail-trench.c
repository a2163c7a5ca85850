/* SPDX-License-Identifier: MIT */
#include "detail.h"
#include <math.h>

/* Paper kept for title and dimensions above the ground, and below the pins. */
#define ABOVE_MM 20.5
#define BELOW_MM 4.0

/* Ground drawn upslope of the trench and down the slope, and of a set-back cut short. */
#define UPSLOPE_MM 13.0
#define SLOPE_MM 17.0
#define LONGEST_GAP_MM 24.0
#define CUT_GAP_MM 20.0

/* The blanket lies this far off the soil, so that both lines are seen. */
#define OFF_MM 0.55

/* Walls and floor that the lining takes, from the downslope edge. */
static guint
lining_path (SwLining lining, SwHole hole, SwPaperPoint path[4])
{
  guint n = 0;

  path[n++] = (SwPaperPoint){ hole.right - OFF_MM, hole.level_right - OFF_MM };
  path[n++] = (SwPaperPoint){ hole.right - OFF_MM, hole.floor - OFF_MM };
  if (lining == SW_LINING_DOWN)
    return n;
  path[n++] = (SwPaperPoint){ hole.left + OFF_MM, hole.floor - OFF_MM };
  if (lining == SW_LINING_DOWN_ACROSS)
    return n;
  path[n++] = (SwPaperPoint){ hole.left + OFF_MM, hole.level_left - OFF_MM };
  return n;
}

/** Sizes of the key trench on paper. */
typedef struct
{
  SwDetailSheet sheet;
  SwHole hole;
  double crest, fold, bottom;
  gboolean is_cut; /* the set-back is drawn shorter than it is */
} KeySheet;

static void
begin_key (KeySheet *key, const SwResult *result, guint face, double width_mm,
           double height_mm, const SwDraw *draw)
{
  const SwSourced *values = result->layout->practice->values;
  double depth_m = values[SW_PRACTICE_TRENCH_DEPTH_M].value;
  double trench_m = values[SW_PRACTICE_TRENCH_WIDTH_M].value;
  double pin_m = result->layout->faces[face].pin_need_m;
  double scale = sw_drawing_scale (draw, trench_m, depth_m + pin_m,
                                   width_mm - UPSLOPE_MM - SLOPE_MM - LONGEST_GAP_MM,
                                   height_mm - ABOVE_MM - BELOW_MM);
  double mm = 1000.0 / scale, gap = values[SW_PRACTICE_SET_BACK_M].value * mm, spare;

  key->is_cut = gap > LONGEST_GAP_MM;
  gap = key->is_cut ? CUT_GAP_MM : gap;
  spare = fmax (0.0, width_mm - UPSLOPE_MM - trench_m * mm - gap - SLOPE_MM) / 2.0;
  key->hole.left = UPSLOPE_MM + spare;
  key->hole.right = key->hole.left + trench_m * mm;
  key->hole.level_left = key->hole.level_right = ABOVE_MM;
  key->hole.floor = ABOVE_MM + depth_m * mm;
  key->crest = key->hole.right + gap;
  key->fold =
      fmin (values[SW_PRACTICE_TRENCH_FOLD_M].value * mm, trench_m * mm + gap * 0.35);
  key->bottom = height_mm - 0.5;
  sw_detail_begin (&key->sheet, result, face, width_mm, height_mm, 0.0, ABOVE_MM, scale,
                   draw, "drawing.detail.key-trench");
}

/* Ground, and the blanket from the slope over the set-back into the hole, and back
 * over it as the fold. */
static void
draw_key (KeySheet *key, double slope)
{
  SwHole hole = key->hole;
  double level = hole.level_left, width = key->sheet.drawing.figure->width_mm;
  double run = fmin (width - 1.0 - key->crest, (key->bottom - 6.0 - level) / tan (slope));
  SwPaperPoint before[1] = { { 1.0, level } };
  SwPaperPoint after[2] = { { key->crest, level },
                            { key->crest + run, level + run * tan (slope) } };
  SwPaperPoint end = { after[1].x_mm, after[1].y_mm - OFF_MM / cos (slope) };
  SwPaperPoint on_ground[3] = { end,
                                { key->crest, level - OFF_MM },
                                { hole.right - OFF_MM, level - OFF_MM } };
  SwPaperPoint path[4];
  SwLining lining = key->sheet.drawing.practice->trench_lining;
  guint n = lining_path (lining, hole, path);
  double up = lining == SW_LINING_DOWN ? hole.right - 3.0 * OFF_MM : hole.left + OFF_MM;
  SwPaperPoint fold[4] = { path[n - 1],
                           { up, path[n - 1].y_mm },
                           { up, level - 3.2 * OFF_MM },
                           { hole.left + key->fold, level - 3.2 * OFF_MM } };

  sw_drawing_object (&key->sheet.drawing, "/trench");
  sw_detail_hole (&key->sheet, hole, before, 1, after, 2, key->bottom);
  sw_detail_lining (&key->sheet, path, n, -1.0);
  sw_detail_line (&key->sheet, SW_ROLE_BLANKET, on_ground, 3);
  if (key->fold > 0.0)
    sw_detail_line (&key->sheet, SW_ROLE_BLANKET, fold, 4);
  sw_detail_callout (
      &key->sheet,
      (SwPaperPoint){ (key->crest + end.x_mm) / 2.0, (level - OFF_MM + end.y_mm) / 2.0 },
      sw_detail_words (&key->sheet, "drawing.key.blanket"));
}

static void
dimension_key (KeySheet *key)
{
  SwDrawing *drawing = &key->sheet.drawing;
  SwHole hole = key->hole;
  double level = hole.level_left;
  double set_back_m = sw_drawing_practice (drawing, SW_PRACTICE_SET_BACK_M);
  SwPaperPoint left = { hole.left, level }, right = { hole.right, level };

  sw_detail_dimension (
      &key->sheet, left, (SwPaperPoint){ hole.left, hole.floor }, -7.0,
      sw_drawing_small (drawing,
                        sw_drawing_practice (drawing, SW_PRACTICE_TRENCH_DEPTH_M)));
  sw_detail_dimension (
      &key->sheet, left, right, 6.0,
      sw_drawing_small (drawing,
                        sw_drawing_practice (drawing, SW_PRACTICE_TRENCH_WIDTH_M)));
  if (set_back_m > 0.0)
    sw_detail_dimension (&key->sheet, right, (SwPaperPoint){ key->crest, level }, 6.0,
                         sw_drawing_small (drawing, set_back_m));
  if (key->fold > 0.0)
    sw_detail_dimension (
        &key->sheet, left, (SwPaperPoint){ hole.left + key->fold, level }, 11.5,
        sw_detail_small_text (&key->sheet, "drawing.detail.fold",
                              sw_drawing_practice (drawing, SW_PRACTICE_TRENCH_FOLD_M)));
}

SwFigure *
sw_detail_key_trench (const SwResult *result, guint face, double width_mm,
                      double height_mm, const SwDraw *draw)
{
  KeySheet key;
  double middle;

  begin_key (&key, result, face, width_mm, height_mm, draw);
  middle = (key.hole.left + key.hole.right) / 2.0;
  draw_key (&key, sw_detail_slope_rad (result, face));
  sw_detail_pin (&key.sheet, (SwPaperPoint){ middle, key.hole.floor - OFF_MM }, 0.0, 1.0);
  dimension_key (&key);
  if (key.is_cut)
    sw_labels_reserve_rect (key.sheet.drawing.labels,
                            (key.hole.right + key.crest) / 2.0 + 1.5,
                            key.hole.level_left - 3.0, 3.0, 9.0);
  if (key.is_cut)
    sw_draft_break_mark (key.sheet.drawing.figure, SW_ROLE_GROUND,
                         (key.hole.right + key.crest) / 2.0 + 3.0,
                         key.hole.level_left + 1.5, 9.0);
  sw_detail_callout (&key.sheet, (SwPaperPoint){ key.crest, key.hole.level_right },
                     sw_detail_words (&key.sheet, "drawing.crest-line"));
  sw_detail_callout (
      &key.sheet,
      (SwPaperPoint){ middle, key.hole.level_left * 0.55 + key.hole.floor * 0.45 },
      sw_detail_words (&key.sheet, "drawing.detail.backfill"));
  sw_detail_callout (
      &key.sheet, (SwPaperPoint){ middle, key.hole.floor + 3.0 },
      sw_detail_spacing_text (
          &key.sheet, "drawing.detail.pins-every",
          sw_drawing_practice (&key.sheet.drawing, SW_PRACTICE_TRENCH_PIN_M)));
  return sw_detail_end (&key.sheet);
}
