/* SPDX-License-Identifier: MIT */
#include "drawing.h"
#include <math.h>

#define SAMPLE_MM 6.0
#define AFTER_SAMPLE_MM 1.2
#define BETWEEN_MM 5.0
#define LEADING 1.55

static void
clear_entry (gpointer data)
{
  g_free (((SwKeyEntry *) data)->text);
}

GArray *
sw_key_new (void)
{
  GArray *key = g_array_new (FALSE, FALSE, sizeof (SwKeyEntry));

  g_array_set_clear_func (key, clear_entry);
  return key;
}

void
sw_key_add (GArray *key, SwRole role, int sample, char *text)
{
  SwKeyEntry entry = { .role = role, .text = text };

  entry.sample = sample;
  g_array_append_val (key, entry);
}

static void
draw_entry (const SwKeyEntry *entry, SwFigure *figure, double x_mm, double y_mm,
            double text_mm)
{
  double middle = y_mm + text_mm * 0.62, from = x_mm;

  switch (entry->sample)
    {
    case SW_KEY_BOX:
      sw_figure_box (figure, entry->role, x_mm, middle - text_mm * 0.42, SAMPLE_MM,
                     text_mm * 0.84);
      for (int side = 0; side <= 1 && entry->role == SW_ROLE_RUN; side++)
        sw_figure_segment (figure, SW_ROLE_RUN_EDGE, x_mm + side * SAMPLE_MM,
                           middle - text_mm * 0.42, x_mm + side * SAMPLE_MM,
                           middle + text_mm * 0.42);
      break;
    case SW_KEY_LINE:
      sw_figure_segment (figure, entry->role, x_mm, middle, x_mm + SAMPLE_MM, middle);
      break;
    case SW_KEY_DOT:
      sw_figure_circle (figure, entry->role, x_mm + SAMPLE_MM / 2.0, middle, 0.4);
      break;
    case SW_KEY_NONE:
    default:
      break;
    }
  if (entry->sample != SW_KEY_NONE)
    from += SAMPLE_MM + AFTER_SAMPLE_MM;
  sw_figure_text (figure, SW_ROLE_TEXT, from, y_mm + text_mm, text_mm, SW_ALIGN_LEFT,
                  SW_FACE_REGULAR, 0.0, entry->text);
}

double
sw_key_draw (const GArray *key, SwFigure *figure, const SwDraw *draw, double x_mm,
             double y_mm, double width_mm)
{
  double text_mm = sw_draw_text_mm (draw) * 0.92, at = 0.0, row = 0.0;

  if (key == NULL || key->len == 0)
    return 0.0;
  for (guint i = 0; i < key->len; i++)
    {
      const SwKeyEntry *entry = &g_array_index (key, SwKeyEntry, i);
      double width = draw->measure->width_mm (SW_FACE_REGULAR, text_mm, entry->text,
                                              draw->measure->data)
                     + (entry->sample == SW_KEY_NONE ? 0.0 : SAMPLE_MM + AFTER_SAMPLE_MM);

      if (at > 0.0 && at + width > width_mm)
        {
          at = 0.0;
          row += text_mm * LEADING;
        }
      if (figure != NULL)
        draw_entry (entry, figure, x_mm + at, y_mm + row, text_mm);
      at += width + BETWEEN_MM;
    }
  return row + text_mm * LEADING;
}

double
sw_drawing_foot_mm (const GArray *key, const SwDraw *draw, double width_mm)
{
  if (draw->on_screen)
    return 0.0;
  return sw_key_draw (key, NULL, draw, 0.0, 0.0, width_mm) + sw_scale_bar_height_mm (draw)
         + 1.0;
}

void
sw_drawing_foot (SwDrawing *drawing, const GArray *key)
{
  const SwView *view = drawing->view;
  double height, top, mm_per_m = fabs (view->x_mm_per_m);

  if (drawing->draw->on_screen)
    return;
  height = sw_drawing_foot_mm (key, drawing->draw, view->width_mm);
  top = view->height_mm - height;
  sw_figure_object (drawing->figure, "");
  sw_figure_box (drawing->figure, SW_ROLE_WHITE, 0.0, top, view->width_mm, height);
  sw_key_draw (key, drawing->figure, drawing->draw, 0.0, top, view->width_mm);
  sw_draw_scale_bar (drawing->figure, 0.0,
                     view->height_mm - sw_scale_bar_height_mm (drawing->draw), mm_per_m,
                     1000.0 / mm_per_m, drawing->draw);
  sw_labels_reserve_rect (drawing->labels, 0.0, top, view->width_mm, height);
  drawing->bottom_mm = top;
}
