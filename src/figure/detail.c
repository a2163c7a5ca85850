/* SPDX-License-Identifier: MIT */
#include "detail.h"
#include <math.h>

/* Callouts try every place of a grid this fine, nearest first, but not nearer than this. */
#define GRID_MM 2.0
#define NEAREST_MM 5.0

SwFigure *
sw_draw_detail (const SwResult *result, guint face, SwDetail detail, double width_mm,
                double height_mm, const SwDraw *draw)
{
  static SwFigure *(*const draw_one[SW_DETAIL_COUNT]) (
      const SwResult *, guint, double, double,
      const SwDraw *) = { [SW_DETAIL_KEY_TRENCH] = sw_detail_key_trench,
                          [SW_DETAIL_SIDE_LAP] = sw_detail_side_lap,
                          [SW_DETAIL_END_LAP] = sw_detail_end_lap,
                          [SW_DETAIL_SLOT] = sw_detail_slot,
                          [SW_DETAIL_TOE] = sw_detail_toe,
                          [SW_DETAIL_PIN] = sw_detail_of_pin,
                          [SW_DETAIL_PIN_PATTERN] = sw_detail_pin_pattern,
                          [SW_DETAIL_COLLAR] = sw_detail_collar };

  if (result->layout == NULL || result->layout->faces[face].n_tiers == 0)
    return NULL;
  return draw_one[detail](result, face, width_mm, height_mm, draw);
}

static void
caption (SwDetailSheet *sheet, double scale)
{
  SwDrawing *drawing = &sheet->drawing;
  const SwDraw *draw = drawing->draw;
  double size = drawing->text_mm;
  g_autofree char *words = sw_scale_text (scale, draw);

  sw_drawing_caption (drawing, drawing->figure->title);
  sw_figure_text (drawing->figure, SW_ROLE_MUTED, drawing->figure->width_mm, size * 1.1,
                  size, SW_ALIGN_RIGHT, SW_FACE_REGULAR, 0.0, words);
  sw_labels_reserve_rect (drawing->labels, 0.0, 0.0, drawing->figure->width_mm,
                          size * 1.5);
}

void
sw_detail_begin (SwDetailSheet *sheet, const SwResult *result, guint face,
                 double width_mm, double height_mm, double x_mm, double y_mm,
                 double scale, const SwDraw *draw, const char *title_id)
{
  double mm_per_m = 1000.0 / scale;

  sheet->scale = scale;
  sheet->view = (SwView){ width_mm, height_mm, x_mm, y_mm, mm_per_m, -mm_per_m };
  sw_drawing_begin (&sheet->drawing, result, face, &sheet->view, draw, title_id);
  sheet->drawing.text_mm *= 0.92;
  caption (sheet, scale);
}

SwFigure *
sw_detail_end (SwDetailSheet *sheet)
{
  return sw_drawing_end (&sheet->drawing);
}

SwPaperPoint
sw_detail_at (const SwDetailSheet *sheet, double x_m, double y_m)
{
  return sw_view_to_paper (&sheet->view, (SwPoint){ x_m, y_m });
}

double
sw_detail_mm (const SwDetailSheet *sheet, double length_m)
{
  return length_m * sheet->view.x_mm_per_m;
}

static void
reserve_line (SwDetailSheet *sheet, const SwPaperPoint *p, guint count, double half_mm)
{
  for (guint i = 1; i < count; i++)
    {
      double dx = p[i].x_mm - p[i - 1].x_mm, dy = p[i].y_mm - p[i - 1].y_mm;

      sw_labels_reserve (sheet->drawing.labels,
                         (SwLabelBox){ (p[i].x_mm + p[i - 1].x_mm) / 2.0,
                                       (p[i].y_mm + p[i - 1].y_mm) / 2.0,
                                       hypot (dx, dy) / 2.0 + half_mm, half_mm,
                                       atan2 (-dy, dx) });
    }
}

void
sw_detail_line (SwDetailSheet *sheet, SwRole role, const SwPaperPoint *points,
                guint count)
{
  sw_figure_line (sheet->drawing.figure, role, points, count);
  reserve_line (sheet, points, count, 0.5);
}

void
sw_detail_ground (SwDetailSheet *sheet, const SwPaperPoint *points, guint count,
                  double bottom_mm)
{
  g_autofree SwPaperPoint *body = g_new (SwPaperPoint, count + 2);

  memcpy (body, points, count * sizeof (SwPaperPoint));
  body[count] = (SwPaperPoint){ points[count - 1].x_mm, bottom_mm };
  body[count + 1] = (SwPaperPoint){ points[0].x_mm, bottom_mm };
  sw_figure_area (sheet->drawing.figure, SW_ROLE_SOIL, body, count + 2);
  sw_detail_line (sheet, SW_ROLE_GROUND, points, count);
}

void
sw_detail_fill (SwDetailSheet *sheet, SwRole role, const SwPaperPoint *points,
                guint count)
{
  double x0 = INFINITY, y0 = INFINITY, x1 = -INFINITY, y1 = -INFINITY;

  for (guint i = 0; i < count; i++)
    {
      x0 = fmin (x0, points[i].x_mm);
      x1 = fmax (x1, points[i].x_mm);
      y0 = fmin (y0, points[i].y_mm);
      y1 = fmax (y1, points[i].y_mm);
    }
  sw_figure_area (sheet->drawing.figure, role, points, count);
  sw_labels_reserve_rect (sheet->drawing.labels, x0, y0, x1 - x0, y1 - y0);
}

double
sw_detail_pin_m (const SwDetailSheet *sheet)
{
  const SwFaceLayout *laid = sheet->drawing.laid;

  return laid->pin != NULL ? laid->pin->length_m : laid->pin_need_m;
}

void
sw_detail_pin (SwDetailSheet *sheet, SwPaperPoint at, double dx, double dy)
{
  const SwFaceLayout *laid = sheet->drawing.laid;
  double length = sw_detail_mm (sheet, sw_detail_pin_m (sheet));
  double crown = laid->pin != NULL && laid->pin->kind == SW_PIN_KIND_STAPLE
                     ? sw_detail_mm (sheet, laid->pin->crown_m)
                     : 0.0;
  SwPaperPoint ends[2] = { at, { at.x_mm + dx * length, at.y_mm + dy * length } };

  sw_drawing_object (&sheet->drawing, "/pins");
  sw_draft_pin (sheet->drawing.figure, at.x_mm, at.y_mm, dx, dy, length, crown);
  reserve_line (sheet, ends, 2, 1.2);
}

typedef struct
{
  SwLabelSpot spot;
  double far_mm;
} Candidate;

static gint
compare_candidates (gconstpointer a, gconstpointer b)
{
  double x = ((const Candidate *) a)->far_mm, y = ((const Candidate *) b)->far_mm;

  return (x > y) - (x < y);
}

/* Distance that the leader would have: to the text's near end rather than to its middle. */
static double
leader_mm (SwPaperPoint target, double x_mm, double y_mm, double half_mm)
{
  double dx = fmax (0.0, fabs (x_mm - target.x_mm) - half_mm);

  return hypot (dx, y_mm - target.y_mm);
}

void
sw_detail_callout (SwDetailSheet *sheet, SwPaperPoint target, char *text)
{
  SwDrawing *drawing = &sheet->drawing;
  g_autoptr (GArray) found = g_array_new (FALSE, FALSE, sizeof (Candidate));
  g_autofree SwLabelSpot *spots = NULL;
  g_autofree char *owned = text;
  double half = drawing->draw->measure->width_mm (SW_FACE_REGULAR, drawing->text_mm, text,
                                                  drawing->draw->measure->data)
                / 2.0;

  for (double y = GRID_MM; y < drawing->figure->height_mm; y += GRID_MM)
    for (double x = half; x < drawing->figure->width_mm; x += GRID_MM)
      {
        Candidate one = { { x, y, 0.0 }, leader_mm (target, x, y, half) };

        if (one.far_mm >= NEAREST_MM)
          g_array_append_val (found, one);
      }
  g_array_sort (found, compare_candidates);
  spots = g_new (SwLabelSpot, found->len + 1);
  for (guint i = 0; i < found->len; i++)
    spots[i] = g_array_index (found, Candidate, i).spot;
  sw_drawing_callout (drawing, SW_LABEL_MAIN, target, spots, found->len, NULL, owned);
}

void
sw_detail_dimension (SwDetailSheet *sheet, SwPaperPoint a, SwPaperPoint b,
                     double offset_mm, char *text)
{
  g_autofree char *owned = text;

  sw_drawing_dimension (&sheet->drawing, SW_LABEL_NEEDED,
                        (SwLabelSpan){ a.x_mm, a.y_mm, b.x_mm, b.y_mm, offset_mm }, NULL,
                        owned);
}

char *
sw_detail_small_text (const SwDetailSheet *sheet, const char *id, double length_m)
{
  g_autofree char *size = sw_drawing_small (&sheet->drawing, length_m);

  return sw_texts_fill (sheet->drawing.draw->texts, id, "size", size, NULL);
}

char *
sw_detail_spacing_text (const SwDetailSheet *sheet, const char *id, double length_m)
{
  g_autofree char *size = sw_drawing_spacing (&sheet->drawing, length_m);

  return sw_texts_fill (sheet->drawing.draw->texts, id, "size", size, NULL);
}

char *
sw_detail_words (const SwDetailSheet *sheet, const char *id)
{
  return g_strdup (sw_drawing_text (&sheet->drawing, id));
}

double
sw_detail_slope_rad (const SwResult *result, guint face)
{
  const SwFaceLayout *laid = &result->layout->faces[face];
  double steepest = 0.0;

  for (guint t = 0; t < laid->n_tiers; t++)
    steepest = fmax (steepest, laid->tiers[t].steepest_rad);
  return CLAMP (steepest, 10.0 * G_PI / 180.0, 45.0 * G_PI / 180.0);
}
