/* SPDX-License-Identifier: MIT */
#include "detail.h"
#include <math.h>

/* Blankets are drawn as thick lines this far above the soil and above one another. */
#define LAYER_MM 1.1
#define FIRST_MM 0.7

#define LAP_LEVEL_MM 31.0

/* Length over which the upper blanket climbs on the lower one. */
#define CLIMB_MM 2.5

static double
face_side_lap_m (const SwFaceLayout *laid)
{
  double least = INFINITY;

  for (guint t = 0; t < laid->n_tiers; t++)
    if (laid->tiers[t].strips > 1)
      least = fmin (least, laid->tiers[t].side_lap_m);
  return least;
}

/* Section along the crest, seen from the toe: the run laid later lies on the one before it. */
SwFigure *
sw_detail_side_lap (const SwResult *result, guint face_index, double width_mm,
                    double height_mm, const SwDraw *draw)
{
  const SwFaceLayout *laid = &result->layout->faces[face_index];
  double lap_m = face_side_lap_m (laid), pin_m = laid->pin_need_m, lap, scale;
  gboolean left = laid->face->leeward == SW_SIDE_LEFT;
  double sign = left ? 1.0 : -1.0, middle = width_mm / 2.0, level = LAP_LEVEL_MM;
  SwDetailSheet sheet;

  if (!isfinite (lap_m))
    return NULL;
  scale = sw_drawing_scale (draw, lap_m, pin_m, width_mm * 0.45, height_mm - level - 4.0);
  lap = lap_m * 1000.0 / scale;
  sw_detail_begin (&sheet, result, face_index, width_mm, height_mm, middle, level, scale,
                   draw, "drawing.detail.side-lap");
  {
    double low = level - FIRST_MM, high = low - LAYER_MM;
    SwPaperPoint ground[2] = { { 2.0, level }, { width_mm - 2.0, level } };
    SwPaperPoint first[2] = { { middle - sign * (middle - 2.0), low },
                              { middle + sign * lap / 2.0, low } };
    SwPaperPoint second[4] = { { middle + sign * (middle - 2.0), low },
                               { middle + sign * (lap / 2.0 + CLIMB_MM), low },
                               { middle + sign * lap / 2.0, high },
                               { middle - sign * lap / 2.0, high } };

    sw_detail_ground (&sheet, ground, 2, height_mm - 5.0);
    sw_drawing_object (&sheet.drawing, "/run/0");
    sw_detail_line (&sheet, SW_ROLE_BLANKET, first, 2);
    sw_drawing_object (&sheet.drawing, "/run/1");
    sw_detail_line (&sheet, SW_ROLE_BLANKET, second, 4);
    sw_detail_pin (&sheet, (SwPaperPoint){ middle, high - 0.5 }, 0.0, 1.0);
    sw_detail_dimension (
        &sheet, (SwPaperPoint){ middle - lap / 2.0, high },
        (SwPaperPoint){ middle + lap / 2.0, high }, 5.5,
        sw_quantity_limit_text (lap_m, SW_UNIT_SMALL_M, SW_LIMIT_LAID, draw->style));
    sw_detail_callout (&sheet, (SwPaperPoint){ middle - sign * middle * 0.6, low },
                       sw_detail_words (&sheet, "drawing.detail.first-run"));
    sw_detail_callout (&sheet, (SwPaperPoint){ middle + sign * middle * 0.6, low },
                       sw_detail_words (&sheet, "drawing.detail.later-run"));
  }
  {
    double y = 10.5, from = middle + sign * 13.0;
    g_autofree char *every =
        sw_drawing_length (&sheet.drawing, sw_practice_get (sheet.drawing.practice,
                                                            SW_PRACTICE_SIDE_LAP_PIN_M));
    char *words =
        sw_texts_fill (draw->texts, "drawing.detail.lap-pins", "size", every, NULL);

    sw_drawing_object (&sheet.drawing, "/wind");
    sw_draft_arrow (sheet.drawing.figure, SW_ROLE_WIND, from, y, from - sign * 14.0, y,
                    2.8);
    sw_labels_reserve_rect (sheet.drawing.labels, middle - 14.0, y - 1.5, 28.0, 3.0);
    sw_drawing_note (&sheet.drawing, SW_LABEL_NEEDED, SW_ROLE_TEXT, from + sign * 6.0, y,
                     0.0, NULL, sw_drawing_text (&sheet.drawing, "drawing.wind"));
    sw_detail_callout (&sheet, (SwPaperPoint){ middle, level + 6.0 }, words);
    sw_drawing_note (&sheet.drawing, SW_LABEL_USEFUL, SW_ROLE_MUTED, width_mm / 2.0,
                     height_mm - 2.0, 0.0, NULL,
                     sw_drawing_text (&sheet.drawing, "drawing.detail.seen-from-toe"));
  }
  return sw_detail_end (&sheet);
}

/** A frame laid on the slope: s down the face, n up from it, both in paper mm. */
typedef struct
{
  double x_mm, y_mm, slope_rad;
} Slant;

static SwPaperPoint
on_slant (Slant slant, double s_mm, double n_mm)
{
  double c = cos (slant.slope_rad), s = sin (slant.slope_rad);

  return (SwPaperPoint){ slant.x_mm + s_mm * c + n_mm * s,
                         slant.y_mm + s_mm * s - n_mm * c };
}

static gboolean
find_end_lap (const SwFaceLayout *laid, double *lap_m)
{
  for (guint i = 0; i < laid->n_runs; i++)
    if (sw_run_end_laps (&laid->runs[i]) > 0)
      {
        *lap_m = laid->tiers[laid->runs[i].tier].end_lap_m;
        return TRUE;
      }
  return FALSE;
}

static void
draw_two_pieces (SwDetailSheet *sheet, Slant slant, double reach, double lap)
{
  double low = FIRST_MM, high = FIRST_MM + LAYER_MM;
  SwPaperPoint ground[2] = { on_slant (slant, -reach, 0.0),
                             on_slant (slant, reach, 0.0) };
  SwPaperPoint lower[2] = { on_slant (slant, -lap / 2.0, low),
                            on_slant (slant, reach, low) };
  SwPaperPoint upper[4] = { on_slant (slant, -reach, low),
                            on_slant (slant, -lap / 2.0 - CLIMB_MM, low),
                            on_slant (slant, -lap / 2.0, high),
                            on_slant (slant, lap / 2.0, high) };

  sw_detail_ground (sheet, ground, 2, sheet->drawing.figure->height_mm - 0.5);
  sw_detail_line (sheet, SW_ROLE_BLANKET, lower, 2);
  sw_detail_line (sheet, SW_ROLE_BLANKET, upper, 4);
  sw_detail_callout (sheet, on_slant (slant, -reach * 0.72, low),
                     sw_detail_words (sheet, "drawing.detail.upslope-piece"));
  sw_detail_callout (sheet, on_slant (slant, reach * 0.72, low),
                     sw_detail_words (sheet, "drawing.detail.downslope-piece"));
}

SwFigure *
sw_detail_end_lap (const SwResult *result, guint face_index, double width_mm,
                   double height_mm, const SwDraw *draw)
{
  const SwFaceLayout *laid = &result->layout->faces[face_index];
  const SwSourced *values = result->layout->practice->values;
  double slope = sw_detail_slope_rad (result, face_index), lap_m = 0.0, lap, scale, gap;
  double gap_m = values[SW_PRACTICE_END_LAP_ROW_GAP_M].value;
  double reach =
      fmin ((width_mm / 2.0 - 3.0) / cos (slope), (height_mm / 2.0 - 13.0) / sin (slope));
  SwDetailSheet sheet;
  Slant slant = { width_mm / 2.0, height_mm * 0.5 + 2.0, slope };

  if (!find_end_lap (laid, &lap_m))
    return NULL;
  scale = sw_drawing_scale (draw, lap_m, laid->pin_need_m, fmin (reach * 1.1, 42.0),
                            height_mm * 0.5 - 8.0);
  lap = lap_m * 1000.0 / scale;
  gap = gap_m * 1000.0 / scale;
  sw_detail_begin (&sheet, result, face_index, width_mm, height_mm, slant.x_mm,
                   slant.y_mm, scale, draw, "drawing.detail.end-lap");
  draw_two_pieces (&sheet, slant, reach, lap);
  for (int row = -1; row <= 1; row += 2)
    sw_detail_pin (&sheet, on_slant (slant, row * gap / 2.0, FIRST_MM + LAYER_MM + 0.5),
                   -sin (slope), cos (slope));
  sw_detail_dimension (&sheet, on_slant (slant, -lap / 2.0, 2.5),
                       on_slant (slant, lap / 2.0, 2.5), 11.0,
                       sw_drawing_small (&sheet.drawing, lap_m));
  sw_detail_dimension (&sheet, on_slant (slant, -gap / 2.0, 2.5),
                       on_slant (slant, gap / 2.0, 2.5), 4.2,
                       sw_drawing_small (&sheet.drawing, gap_m));
  sw_detail_callout (&sheet, on_slant (slant, gap / 2.0, -7.0),
                     sw_detail_spacing_text (&sheet, "drawing.detail.end-lap-pins",
                                             values[SW_PRACTICE_END_LAP_PIN_M].value));
  return sw_detail_end (&sheet);
}
