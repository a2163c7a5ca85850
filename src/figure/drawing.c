/* SPDX-License-Identifier: MIT */
#include "drawing.h"
#include <math.h>

#define USUAL_TEXT_MM 2.5

/* Half the width of a handle on screen. */
#define HANDLE_MM 1.6

double
sw_draw_text_mm (const SwDraw *draw)
{
  return draw->text_mm > 0.0 ? draw->text_mm : USUAL_TEXT_MM;
}

const SwFace *
sw_result_face (const SwResult *result, guint face)
{
  return g_ptr_array_index (result->job->faces, face);
}

static SwBox
box_in_view (const SwView *view)
{
  SwPoint a = sw_view_to_world (view, (SwPaperPoint){ 0.0, 0.0 });
  SwPoint b = sw_view_to_world (view, (SwPaperPoint){ view->width_mm, view->height_mm });

  return (SwBox){ fmin (a.x_m, b.x_m), fmin (a.y_m, b.y_m), fmax (a.x_m, b.x_m),
                  fmax (a.y_m, b.y_m) };
}

void
sw_drawing_begin (SwDrawing *drawing, const SwResult *result, guint face,
                  const SwView *view, const SwDraw *draw, const char *title_id)
{
  double w = view->width_mm, h = view->height_mm;
  SwPaperPoint frame[4] = { { 0, 0 }, { w, 0 }, { w, h }, { 0, h } };

  *drawing = (SwDrawing){ .result = result,
                          .face_index = face,
                          .face = sw_result_face (result, face),
                          .view = view,
                          .draw = draw,
                          .text_mm = sw_draw_text_mm (draw),
                          .seen = box_in_view (view),
                          .bottom_mm = h };
  if (result->layout != NULL)
    {
      drawing->laid = &result->layout->faces[face];
      drawing->practice = result->layout->practice;
      drawing->development = sw_development_of (drawing->laid);
    }
  drawing->figure = sw_figure_new (w, h);
  drawing->figure->title =
      sw_texts_fill (draw->texts, title_id, "face", drawing->face->id, NULL);
  drawing->labels = sw_labels_new (w, h, draw->measure);
  sw_figure_clip (drawing->figure, frame, 4);
}

SwFigure *
sw_drawing_end (SwDrawing *drawing)
{
  sw_labels_place (drawing->labels, drawing->figure);
  sw_figure_object (drawing->figure, "");
  sw_figure_unclip (drawing->figure);
  sw_labels_free (drawing->labels);
  return drawing->figure;
}

gboolean
sw_drawing_is_done (const SwDrawing *drawing, guint step)
{
  return drawing->sequence == NULL || step <= drawing->step;
}

const SwRunSteps *
sw_drawing_run_steps (const SwDrawing *drawing, guint run)
{
  return &drawing->sequence->faces[drawing->face_index].runs[run];
}

static const char *
object_id (const SwDrawing *drawing, const char *format, va_list arguments)
{
  g_autofree char *part = g_strdup_vprintf (format, arguments);
  g_autofree char *id = g_strconcat (drawing->face->id, part, NULL);

  return g_intern_string (id);
}

const char *
sw_drawing_object_id (const SwDrawing *drawing, const char *format, ...)
{
  va_list arguments;
  const char *id;

  va_start (arguments, format);
  id = object_id (drawing, format, arguments);
  va_end (arguments);
  return id;
}

void
sw_drawing_object (SwDrawing *drawing, const char *format, ...)
{
  va_list arguments;

  va_start (arguments, format);
  sw_figure_object (drawing->figure, object_id (drawing, format, arguments));
  va_end (arguments);
}

SwPaperPoint
sw_drawing_at (const SwDrawing *drawing, double x_m, double y_m)
{
  return sw_view_to_paper (drawing->view, (SwPoint){ x_m, y_m });
}

double
sw_drawing_width_mm (const SwDrawing *drawing, const char *text, double size_mm)
{
  const SwTextMeasure *measure = drawing->draw->measure;

  return measure->width_mm (SW_FACE_REGULAR, size_mm, text, measure->data);
}

double
sw_drawing_practice (const SwDrawing *drawing, SwPracticeValue value)
{
  return sw_practice_get (drawing->practice, value);
}

const char *
sw_drawing_text (const SwDrawing *drawing, const char *id)
{
  return sw_texts_get (drawing->draw->texts, id);
}

char *
sw_drawing_length (const SwDrawing *drawing, double length_m)
{
  return sw_quantity_text (length_m, SW_UNIT_M, drawing->draw->style);
}

char *
sw_drawing_spacing (const SwDrawing *drawing, double length_m)
{
  return sw_quantity_limit_text (length_m, SW_UNIT_SMALL_M, SW_LIMIT_MOST,
                                 drawing->draw->style);
}

char *
sw_drawing_small (const SwDrawing *drawing, double length_m)
{
  return sw_quantity_limit_text (length_m, SW_UNIT_SMALL_M, SW_LIMIT_LEAST,
                                 drawing->draw->style);
}

void
sw_drawing_line (SwDrawing *drawing, SwRole role, const GArray *path)
{
  const SwPaperPoint *points = (const SwPaperPoint *) (gconstpointer) path->data;

  sw_figure_line (drawing->figure, role, points, path->len);
  sw_labels_keep_off (drawing->labels, points, path->len);
}

void
sw_drawing_spare (SwDrawing *drawing, SwPaperPoint at)
{
  sw_labels_reserve (drawing->labels,
                     (SwLabelBox){ at.x_mm, at.y_mm, HANDLE_MM, HANDLE_MM, 0.0 });
}

void
sw_drawing_handle (SwDrawing *drawing, SwPaperPoint at, const char *format, guint i)
{
  g_autofree char *part = NULL;
  g_autofree char *id = NULL;

  if (!drawing->draw->on_screen)
    return;
  part = g_strdup_printf ("/%s/%u", format, i);
  id = g_strconcat (drawing->face->id, part, NULL);
  sw_figure_object (drawing->figure, id);
  sw_figure_circle (drawing->figure, SW_ROLE_HANDLE, at.x_mm, at.y_mm, HANDLE_MM);
  sw_drawing_spare (drawing, at);
}

void
sw_drawing_note (SwDrawing *drawing, SwLabelRank rank, SwRole role, double x_mm,
                 double y_mm, double turn_rad, const char *object, const char *text)
{
  SwLabelSpot spot = { x_mm, y_mm, turn_rad };
  SwLabelWish wish = { .rank = rank,
                       .role = role,
                       .style = SW_LABEL_KNOCK_OUT,
                       .size_mm = drawing->text_mm,
                       .object = object,
                       .text = text,
                       .spots = &spot,
                       .n_spots = 1 };

  sw_labels_wish (drawing->labels, &wish);
}

void
sw_drawing_label (SwDrawing *drawing, SwLabelRank rank, const SwLabelSpot *spots,
                  guint n_spots, const char *object, const char *text)
{
  SwLabelWish wish = { .rank = rank,
                       .role = SW_ROLE_TEXT,
                       .style = SW_LABEL_KNOCK_OUT,
                       .size_mm = drawing->text_mm,
                       .object = object,
                       .text = text,
                       .spots = spots,
                       .n_spots = n_spots };

  sw_labels_wish (drawing->labels, &wish);
}

void
sw_drawing_callout (SwDrawing *drawing, SwLabelRank rank, SwPaperPoint target,
                    const SwLabelSpot *spots, guint n_spots, const char *object,
                    const char *text)
{
  sw_drawing_name (drawing, rank, target, spots, n_spots, 0, object, text);
}

static void
name (SwDrawing *drawing, SwLabelRank rank, guint style, SwPaperPoint target,
      const SwLabelSpot *spots, guint n_spots, guint n_beside, const char *object,
      const char *text)
{
  sw_labels_wish (drawing->labels,
                  &(SwLabelWish){ .rank = rank,
                                  .role = SW_ROLE_TEXT,
                                  .style = SW_LABEL_KNOCK_OUT | SW_LABEL_LEADER | style,
                                  .size_mm = drawing->text_mm,
                                  .object = object,
                                  .text = text,
                                  .target = target,
                                  .spots = spots,
                                  .n_spots = n_spots,
                                  .n_beside = n_beside });
}

void
sw_drawing_name (SwDrawing *drawing, SwLabelRank rank, SwPaperPoint target,
                 const SwLabelSpot *spots, guint n_spots, guint n_beside,
                 const char *object, const char *text)
{
  name (drawing, rank, 0, target, spots, n_spots, n_beside, object, text);
}

void
sw_drawing_name_off_lines (SwDrawing *drawing, SwLabelRank rank, SwPaperPoint target,
                           const SwLabelSpot *spots, guint n_spots, guint n_beside,
                           const char *object, const char *text)
{
  name (drawing, rank, SW_LABEL_OFF_LINES, target, spots, n_spots, n_beside, object,
        text);
}

void
sw_drawing_dimension (SwDrawing *drawing, SwLabelRank rank, SwLabelSpan span,
                      const char *object, const char *text)
{
  sw_labels_dimension (drawing->labels, rank, span, drawing->text_mm, object, text);
}

void
sw_drawing_caption (SwDrawing *drawing, const char *text)
{
  double size = drawing->text_mm * 1.15;
  double width;

  if (drawing->draw->on_screen)
    return;
  width = drawing->draw->measure->width_mm (SW_FACE_BOLD, size, text,
                                            drawing->draw->measure->data);
  sw_figure_object (drawing->figure, "");
  sw_figure_text (drawing->figure, SW_ROLE_HEADING, 0.0, size, size, SW_ALIGN_LEFT,
                  SW_FACE_BOLD, 0.0, text);
  sw_labels_reserve_rect (drawing->labels, 0.0, 0.0, width, size * 1.3);
}

double
sw_section_angle_rad (const SwFace *face, guint from, guint to)
{
  const SwPoint *a = &face->section[from], *b = &face->section[to];

  return atan2 (fabs (a->y_m - b->y_m), b->x_m - a->x_m);
}
