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

/* Where the rows of a key have got to. */
typedef struct
{
  SwFigure *figure; /* NULL: only measured */
  const SwDraw *draw;
  double x_mm, y_mm, width_mm, text_mm;
  double at_mm, row_mm; /* where the next entry may begin */
} KeyFlow;

static double
words_mm (const KeyFlow *flow, const char *text)
{
  return flow->draw->measure->width_mm (SW_FACE_REGULAR, flow->text_mm, text,
                                        flow->draw->measure->data);
}

static void
next_row (KeyFlow *flow)
{
  flow->at_mm = 0.0;
  flow->row_mm += flow->text_mm * LEADING;
}

static void
add_part (KeyFlow *flow, const SwKeyEntry *entry, char *text)
{
  SwKeyEntry part = { .role = entry->role, .sample = entry->sample, .text = text };

  if (flow->figure != NULL)
    draw_entry (&part, flow->figure, flow->x_mm + flow->at_mm, flow->y_mm + flow->row_mm,
                flow->text_mm);
}

/* Words wider than a row, broken between them. */
static void
add_broken (KeyFlow *flow, const SwKeyEntry *entry, double before_mm)
{
  g_auto (GStrv) words = g_strsplit (entry->text, " ", -1);
  g_autoptr (GString) line = g_string_new (NULL);
  SwKeyEntry rest = *entry;

  for (guint i = 0; words[i] != NULL; i++)
    {
      g_autofree char *longer =
          line->len > 0 ? g_strconcat (line->str, " ", words[i], NULL) : NULL;

      if (longer != NULL && before_mm + words_mm (flow, longer) > flow->width_mm)
        {
          add_part (flow, &rest, line->str);
          next_row (flow);
          rest.sample = SW_KEY_NONE;
          before_mm = 0.0;
          g_string_assign (line, words[i]);
        }
      else
        g_string_assign (line, longer != NULL ? longer : words[i]);
    }
  add_part (flow, &rest, line->str);
  flow->at_mm = before_mm + words_mm (flow, line->str) + BETWEEN_MM;
}

static void
add_entry (KeyFlow *flow, const SwKeyEntry *entry)
{
  double before_mm = entry->sample == SW_KEY_NONE ? 0.0 : SAMPLE_MM + AFTER_SAMPLE_MM;
  double width_mm = before_mm + words_mm (flow, entry->text);

  if (flow->at_mm > 0.0 && flow->at_mm + width_mm > flow->width_mm)
    next_row (flow);
  if (width_mm > flow->width_mm)
    {
      add_broken (flow, entry, before_mm);
      return;
    }
  add_part (flow, entry, entry->text);
  flow->at_mm += width_mm + BETWEEN_MM;
}

double
sw_key_draw (const GArray *key, SwFigure *figure, const SwDraw *draw, double x_mm,
             double y_mm, double width_mm)
{
  KeyFlow flow = { .figure = figure,
                   .draw = draw,
                   .x_mm = x_mm,
                   .y_mm = y_mm,
                   .width_mm = width_mm,
                   .text_mm = sw_draw_text_mm (draw) * 0.92 };

  if (key == NULL || key->len == 0)
    return 0.0;
  for (guint i = 0; i < key->len; i++)
    add_entry (&flow, &g_array_index (key, SwKeyEntry, i));
  return flow.row_mm + flow.text_mm * LEADING;
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
