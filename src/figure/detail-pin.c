/* SPDX-License-Identifier: MIT */
#include "detail.h"
#include <math.h>

#define GROUND_Y 0.3

/* Loose topsoil above the line, the soil that holds below it. */
static void
draw_soil (SwDetailSheet *sheet, double level, double topsoil_mm)
{
  SwFigure *figure = sheet->drawing.figure;
  double left = 1.0, right = figure->width_mm - 1.0, firm = level + topsoil_mm;
  SwPaperPoint ground[2] = { { left, level }, { right, level } };

  sw_detail_ground (sheet, ground, 2, figure->height_mm - 0.5);
  if (topsoil_mm < 0.5)
    return;
  sw_figure_box (figure, SW_ROLE_BACKFILL, left, level, right - left, topsoil_mm);
  sw_figure_segment (figure, SW_ROLE_BREAK, left, firm, right, firm);
}

static void
draw_pin (SwDetailSheet *sheet, const SwPin *pin, double x, double level)
{
  double top = level - 1.6, length = sw_detail_mm (sheet, pin->length_m);
  double half = sw_detail_mm (sheet, pin->crown_m) / 2.0;
  gboolean staple = pin->kind == SW_PIN_KIND_STAPLE;
  SwPaperPoint sheet_line[2] = { { 2.0, level - 0.7 },
                                 { sheet->drawing.figure->width_mm - 2.0, level - 0.7 } };

  sw_figure_object (sheet->drawing.figure, "");
  sw_detail_line (sheet, SW_ROLE_BLANKET, sheet_line, 2);
  sw_drawing_object (&sheet->drawing, "/pins");
  sw_draft_pin (sheet->drawing.figure, x, top, 0.0, 1.0, length,
                staple ? 2.0 * half : 0.0);
  if (!staple && pin->crown_m > 0.0)
    sw_figure_segment (sheet->drawing.figure, SW_ROLE_PIN, x - half, top, x + half, top);
  sw_labels_reserve_rect (sheet->drawing.labels, x - fmax (half, 1.0) - 0.5, top,
                          2.0 * fmax (half, 1.0) + 1.0, length);
  if (pin->crown_m > 0.0)
    sw_detail_dimension (
        sheet, (SwPaperPoint){ x - half, top }, (SwPaperPoint){ x + half, top }, 6.0,
        sw_detail_small_text (sheet,
                              staple ? "drawing.detail.crown" : "drawing.detail.washer",
                              pin->crown_m));
  sw_detail_dimension (sheet, (SwPaperPoint){ x + half, top },
                       (SwPaperPoint){ x + half, top + length }, 8.0,
                       sw_drawing_small (&sheet->drawing, pin->length_m));
}

/* Its kind, as the catalogue calls it, under the caption. */
static void
name_pin (SwDetailSheet *sheet, const SwPin *pin)
{
  SwDrawing *drawing = &sheet->drawing;
  double size = drawing->text_mm;

  sw_figure_text (drawing->figure, SW_ROLE_MUTED, 0.0, size * 2.7, size, SW_ALIGN_LEFT,
                  SW_FACE_REGULAR, 0.0, sw_drawing_text (drawing, sw_pin_name_id (pin)));
  sw_labels_reserve_rect (drawing->labels, 0.0, size * 1.6,
                          drawing->figure->width_mm * 0.4, size * 1.5);
}

SwFigure *
sw_detail_of_pin (const SwResult *result, guint face_index, double width_mm,
                  double height_mm, const SwDraw *draw)
{
  const SwFaceLayout *laid = &result->layout->faces[face_index];
  const SwPin *pin = laid->pin;
  double level = height_mm * GROUND_Y, topsoil_m = laid->face->topsoil_m, x, scale;
  SwDetailSheet sheet;
  gboolean staple;

  if (pin == NULL)
    return NULL;
  staple = pin->kind == SW_PIN_KIND_STAPLE;
  scale = sw_drawing_scale (draw, fmax (pin->crown_m, 0.01), pin->length_m,
                            width_mm * 0.5, height_mm * (1.0 - GROUND_Y) - 6.0);
  x = width_mm * 0.5;
  sw_detail_begin (&sheet, result, face_index, width_mm, height_mm, x, level, scale, draw,
                   "drawing.detail.pin");
  name_pin (&sheet, pin);
  draw_soil (&sheet, level, fmin (sw_detail_mm (&sheet, topsoil_m), height_mm * 0.5));
  draw_pin (&sheet, pin, x, level);
  if (topsoil_m > 0.0)
    sw_detail_dimension (
        &sheet, (SwPaperPoint){ 8.0, level },
        (SwPaperPoint){ 8.0, level + sw_detail_mm (&sheet, topsoil_m) }, 0.0,
        sw_detail_small_text (&sheet, "drawing.detail.topsoil", topsoil_m));
  sw_detail_callout (
      &sheet,
      (SwPaperPoint){ staple ? x - sw_detail_mm (&sheet, pin->crown_m) / 2.0 : x,
                      level + sw_detail_mm (&sheet, pin->length_m) * 0.55 },
      sw_detail_small_text (
          &sheet, staple ? "drawing.detail.wire" : "drawing.detail.shaft", pin->wire_m));
  sw_detail_callout (&sheet, (SwPaperPoint){ width_mm * 0.85, level - 0.7 },
                     sw_detail_words (&sheet, "drawing.key.blanket"));
  sw_detail_callout (&sheet, (SwPaperPoint){ width_mm * 0.15, level - 0.7 },
                     sw_detail_words (&sheet, "drawing.detail.flush"));
  return sw_detail_end (&sheet);
}
