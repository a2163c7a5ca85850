/* SPDX-License-Identifier: MIT */
#include "detail.h"
#include <math.h>

/* Paper kept for title and dimensions above the ground, and below the pins. */
#define ABOVE_MM 24.0
#define BELOW_MM 4.0

/* Ground drawn upslope of the trench and down the slope, and of a set-back cut short. */
#define UPSLOPE_MM 13.0
#define SLOPE_MM 17.0
#define LONGEST_GAP_MM 24.0
#define CUT_GAP_MM 20.0

/* The blanket lies this far off the soil, so that both lines are seen. */
#define OFF_MM 0.55

#define LINING_HEAD_MM 1.7

typedef struct
{
  double left, right, level, floor; /* paper mm */
} Hole;

/* Walls and floor that the lining takes, from its downslope edge; then where its fold begins. */
static guint
lining_path (SwLining lining, Hole hole, SwPaperPoint path[4])
{
  guint n = 0;

  path[n++] = (SwPaperPoint){ hole.right - OFF_MM, hole.level };
  path[n++] = (SwPaperPoint){ hole.right - OFF_MM, hole.floor - OFF_MM };
  if (lining == SW_LINING_DOWN)
    return n;
  path[n++] = (SwPaperPoint){ hole.left + OFF_MM, hole.floor - OFF_MM };
  if (lining == SW_LINING_DOWN_ACROSS)
    return n;
  path[n++] = (SwPaperPoint){ hole.left + OFF_MM, hole.level - OFF_MM };
  return n;
}

static void
draw_path_heads (SwFigure *figure, const SwPaperPoint *path, guint n)
{
  for (guint i = 1; i < n; i++)
    {
      double dx = path[i].x_mm - path[i - 1].x_mm, dy = path[i].y_mm - path[i - 1].y_mm;
      double size = hypot (dx, dy);

      if (size < 3.0 * LINING_HEAD_MM)
        continue;
      sw_draft_arrow_head (figure, SW_ROLE_BLANKET,
                           path[i - 1].x_mm + dx * 0.5 + dx / size * LINING_HEAD_MM / 2.0,
                           path[i - 1].y_mm + dy * 0.5 + dy / size * LINING_HEAD_MM / 2.0,
                           dx, dy, LINING_HEAD_MM);
    }
}

/* Soil, hole, backfill and the line of the ground, which runs round the hole. */
static void
draw_hole (SwDetailSheet *sheet, Hole hole, const SwPaperPoint *before, guint n_before,
           const SwPaperPoint *after, guint n_after)
{
  SwPaperPoint corners[4] = { { hole.left, before[n_before - 1].y_mm },
                              { hole.left, hole.floor },
                              { hole.right, hole.floor },
                              { hole.right, after[0].y_mm } };
  g_autoptr (GArray) line = g_array_new (FALSE, FALSE, sizeof (SwPaperPoint));

  g_array_append_vals (line, before, n_before);
  g_array_append_vals (line, corners, 4);
  g_array_append_vals (line, after, n_after);
  sw_detail_ground (sheet, before, n_before);
  sw_detail_ground (sheet, after, n_after);
  sw_detail_fill (sheet, SW_ROLE_BACKFILL, corners, 4);
  sw_figure_line (sheet->drawing.figure, SW_ROLE_GROUND, (SwPaperPoint *) line->data,
                  line->len);
}

/* Blanket from the slope over the set-back into the hole, and back over it as the fold. */
static void
draw_lining (SwDetailSheet *sheet, Hole hole, double crest_mm, SwPaperPoint slope_end,
             double fold_mm)
{
  const SwPractice *practice = sheet->drawing.practice;
  SwPaperPoint path[4], sheet_line[3] = { slope_end,
                                          { crest_mm, hole.level - OFF_MM },
                                          { hole.right - OFF_MM, hole.level - OFF_MM } };
  guint n = lining_path (practice->trench_lining, hole, path);
  SwPaperPoint fold[3] = { path[n - 1],
                           { hole.left + OFF_MM, hole.level - 3.0 * OFF_MM },
                           { hole.left + fold_mm, hole.level - 3.0 * OFF_MM } };

  sw_drawing_object (&sheet->drawing, "/tier/0");
  sw_detail_line (sheet, SW_ROLE_BLANKET, sheet_line, 3);
  sw_figure_line (sheet->drawing.figure, SW_ROLE_BLANKET, path, n);
  if (fold_mm > 0.0)
    sw_detail_line (sheet, SW_ROLE_BLANKET, fold, 3);
  draw_path_heads (sheet->drawing.figure, path, n);
}

static void
dimension_hole (SwDetailSheet *sheet, Hole hole, double depth_m, double width_m,
                double above_mm)
{
  SwPaperPoint left = { hole.left, hole.level }, right = { hole.right, hole.level };

  sw_detail_dimension (sheet, left, (SwPaperPoint){ hole.left, hole.floor }, -6.5,
                       sw_drawing_small (&sheet->drawing, depth_m));
  sw_detail_dimension (sheet, left, right, above_mm,
                       sw_drawing_small (&sheet->drawing, width_m));
}

static void
note_key (SwDetailSheet *sheet, Hole hole, double crest_mm, double fold_mm,
          gboolean is_cut)
{
  SwDrawing *drawing = &sheet->drawing;
  double set_back_m = sw_drawing_practice (drawing, SW_PRACTICE_SET_BACK_M);
  double middle = (hole.left + hole.right) / 2.0;

  dimension_hole (sheet, hole, sw_drawing_practice (drawing, SW_PRACTICE_TRENCH_DEPTH_M),
                  sw_drawing_practice (drawing, SW_PRACTICE_TRENCH_WIDTH_M), 6.0);
  if (set_back_m > 0.0)
    sw_detail_dimension (sheet, (SwPaperPoint){ hole.right, hole.level },
                         (SwPaperPoint){ crest_mm, hole.level }, 6.0,
                         sw_drawing_small (drawing, set_back_m));
  if (fold_mm > 0.0)
    sw_detail_dimension (
        sheet, (SwPaperPoint){ hole.left, hole.level },
        (SwPaperPoint){ hole.left + fold_mm, hole.level }, 11.5,
        sw_detail_small_text (sheet, "drawing.detail.fold",
                              sw_drawing_practice (drawing, SW_PRACTICE_TRENCH_FOLD_M)));
  sw_detail_callout (sheet, (SwPaperPoint){ crest_mm, hole.level },
                     sw_detail_words (sheet, "drawing.crest-line"));
  sw_detail_callout (sheet,
                     (SwPaperPoint){ middle, (hole.level * 0.55 + hole.floor * 0.45) },
                     sw_detail_words (sheet, "drawing.detail.backfill"));
  sw_detail_callout (
      sheet, (SwPaperPoint){ middle, hole.floor + 3.0 },
      sw_detail_small_text (sheet, "drawing.detail.pins-every",
                            sw_drawing_practice (drawing, SW_PRACTICE_TRENCH_PIN_M)));
  if (is_cut)
    sw_draft_break_mark (drawing->figure, SW_ROLE_GROUND,
                         (hole.right + crest_mm) / 2.0 + 3.0, hole.level + 1.5, 9.0);
}

SwFigure *
sw_detail_key_trench (const SwResult *result, guint face, double width_mm,
                      double height_mm, const SwDraw *draw)
{
  const SwSourced *values = result->layout->practice->values;
  const SwFaceLayout *laid = &result->layout->faces[face];
  double depth_m = values[SW_PRACTICE_TRENCH_DEPTH_M].value;
  double trench_m = values[SW_PRACTICE_TRENCH_WIDTH_M].value;
  double pin_m = laid->pin != NULL ? laid->pin->length_m : laid->pin_need_m;
  double scale = sw_detail_scale (trench_m, depth_m + pin_m,
                                  width_mm - UPSLOPE_MM - SLOPE_MM - LONGEST_GAP_MM,
                                  height_mm - ABOVE_MM - BELOW_MM);
  double mm = 1000.0 / scale, gap = values[SW_PRACTICE_SET_BACK_M].value * mm;
  gboolean is_cut = gap > LONGEST_GAP_MM;
  double slope = sw_detail_slope_rad (result, face), fold, spare, crest;
  SwDetailSheet sheet;
  Hole hole;

  gap = is_cut ? CUT_GAP_MM : gap;
  spare = fmax (0.0, width_mm - UPSLOPE_MM - trench_m * mm - gap - SLOPE_MM) / 2.0;
  hole.left = UPSLOPE_MM + spare;
  hole.right = hole.left + trench_m * mm;
  hole.level = ABOVE_MM;
  hole.floor = ABOVE_MM + depth_m * mm;
  crest = hole.right + gap;
  fold = fmin (values[SW_PRACTICE_TRENCH_FOLD_M].value * mm, trench_m * mm + gap * 0.35);
  sw_detail_begin (&sheet, result, face, width_mm, height_mm, 0.0, ABOVE_MM, scale, draw,
                   "drawing.detail.key-trench");
  {
    double run =
        fmin (width_mm - 1.0 - crest, (height_mm - 6.0 - hole.level) / tan (slope));
    SwPaperPoint before[2] = { { 1.0, hole.level }, { hole.left, hole.level } };
    SwPaperPoint after[3] = { { hole.right, hole.level },
                              { crest, hole.level },
                              { crest + run, hole.level + run * tan (slope) } };
    SwPaperPoint end = { after[2].x_mm + OFF_MM * sin (slope),
                         after[2].y_mm - OFF_MM * cos (slope) };

    sw_drawing_object (&sheet.drawing, "/trench");
    draw_hole (&sheet, hole, before, 2, after, 3);
    draw_lining (&sheet, hole, crest, end, fold);
    sw_detail_callout (
        &sheet, (SwPaperPoint){ (crest + end.x_mm) / 2.0, (hole.level + end.y_mm) / 2.0 },
        sw_detail_words (&sheet, "drawing.key.blanket"));
  }
  sw_detail_pin (&sheet,
                 (SwPaperPoint){ (hole.left + hole.right) / 2.0, hole.floor - OFF_MM },
                 0.0, 1.0);
  note_key (&sheet, hole, crest, fold, is_cut);
  return sw_detail_end (&sheet);
}

static gboolean
face_has_slots (const SwFaceLayout *laid, guint *tier)
{
  for (guint t = 0; t < laid->n_tiers; t++)
    if (laid->tiers[t].slots > 0)
      {
        *tier = t;
        return TRUE;
      }
  return FALSE;
}

/* A slot in the slope: the blanket goes down one wall and up the other, pinned and filled. */
SwFigure *
sw_detail_slot (const SwResult *result, guint face, double width_mm, double height_mm,
                const SwDraw *draw)
{
  const SwSourced *values = result->layout->practice->values;
  const SwFaceLayout *laid = &result->layout->faces[face];
  double depth_m = values[SW_PRACTICE_SLOT_DEPTH_M].value;
  double slot_m = values[SW_PRACTICE_SLOT_WIDTH_M].value;
  double slope = sw_detail_slope_rad (result, face), pin_m = laid->pin_need_m;
  double middle = width_mm * 0.5, reach = width_mm * 0.5 - 2.0, scale, half;
  double rise = fmin (reach * tan (slope), height_mm * 0.26), fall;
  SwDetailSheet sheet;
  Hole hole;
  guint t;

  if (!face_has_slots (laid, &t))
    return NULL;
  reach = rise / tan (slope);
  scale =
      sw_detail_scale (slot_m, depth_m + pin_m, width_mm * 0.3, height_mm * 0.74 - 14.0);
  half = slot_m * 500.0 / scale;
  fall = half * tan (slope);
  hole = (Hole){ middle - half, middle + half, height_mm * 0.36,
                 height_mm * 0.36 + depth_m * 1000.0 / scale };
  sw_detail_begin (&sheet, result, face, width_mm, height_mm, 0.0, hole.level, scale,
                   draw, "drawing.detail.slot");
  {
    SwPaperPoint before[2] = { { middle - reach, hole.level - rise },
                               { hole.left, hole.level - fall } };
    SwPaperPoint after[2] = { { hole.right, hole.level + fall },
                              { middle + reach, hole.level + rise } };
    SwPaperPoint fold[6] = { { before[0].x_mm, before[0].y_mm - OFF_MM },
                             { hole.left + OFF_MM, before[1].y_mm - OFF_MM },
                             { hole.left + OFF_MM, hole.floor - OFF_MM },
                             { hole.right - OFF_MM, hole.floor - OFF_MM },
                             { hole.right - OFF_MM, after[0].y_mm - OFF_MM },
                             { after[1].x_mm, after[1].y_mm - OFF_MM } };

    sw_drawing_object (&sheet.drawing, "/trench");
    draw_hole (&sheet, hole, before, 2, after, 2);
    sw_drawing_object (&sheet.drawing, "/tier/%u", t);
    sw_detail_line (&sheet, SW_ROLE_BLANKET, fold, 6);
    draw_path_heads (sheet.drawing.figure, fold + 1, 4);
    sw_detail_callout (&sheet,
                       (SwPaperPoint){ (after[0].x_mm + after[1].x_mm) / 2.0,
                                       (after[0].y_mm + after[1].y_mm) / 2.0 - OFF_MM },
                       sw_detail_words (&sheet, "drawing.key.blanket"));
    sw_detail_dimension (&sheet, (SwPaperPoint){ hole.left, before[1].y_mm },
                         (SwPaperPoint){ hole.right, before[1].y_mm }, 6.0,
                         sw_drawing_small (&sheet.drawing, slot_m));
  }
  sw_detail_pin (&sheet, (SwPaperPoint){ middle, hole.floor - OFF_MM }, 0.0, 1.0);
  sw_detail_dimension (&sheet, (SwPaperPoint){ hole.left, hole.level },
                       (SwPaperPoint){ hole.left, hole.floor }, -7.0,
                       sw_drawing_small (&sheet.drawing, depth_m));
  sw_detail_callout (&sheet, (SwPaperPoint){ middle, (hole.level + hole.floor) / 2.0 },
                     sw_detail_words (&sheet, "drawing.detail.backfill"));
  sw_detail_callout (&sheet, (SwPaperPoint){ middle, hole.floor + 3.0 },
                     sw_detail_small_text (&sheet, "drawing.detail.pins-every",
                                           values[SW_PRACTICE_SLOT_PIN_M].value));
  {
    double apart_m = laid->tiers[t].length_m / (laid->tiers[t].slots + 1);
    g_autofree char *size = sw_drawing_length (&sheet.drawing, apart_m);
    g_autofree char *words =
        sw_texts_fill (draw->texts, "drawing.detail.slots-every", "size", size, NULL);

    sw_drawing_note (&sheet.drawing, SW_LABEL_MAIN, SW_ROLE_TEXT, width_mm / 2.0,
                     height_mm - 2.0, 0.0, NULL, words);
  }
  return sw_detail_end (&sheet);
}
