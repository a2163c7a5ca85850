/* SPDX-License-Identifier: MIT */
#include "marked-stick.h"
#include <math.h>
#include <slopewright/base/count.h>

#define STICK_MM 50.0
#define RULER_MM 13.0
#define ZERO_MM 8.0 /* what stands at its beginning; the frame is cut there */
#define END_MM 8.0  /* paper beyond its end */
#define LABEL_GAP_MM 0.8
#define NUMBER_CLEAR_MM 2.0
#define TICK_SHORT_MM 2.0
#define TICK_MM 3.5
#define TICK_LONG_MM 5.0

/* Lengths of the practice that stand on the stick, where the job has them. */
typedef struct
{
  const char *code;
  SwLimit limit;
  double length_m;
} Length;

/* What is marked at one height; lengths of the same mark share it. */
typedef struct
{
  double at_mm;
  GString *words;
} Mark;

static void
clear_mark (gpointer data)
{
  g_string_free (((Mark *) data)->words, TRUE);
}

static GArray *
lengths_of (const SwSheet *sheet)
{
  const SwFaceLayout *face = &sheet->layout->faces[0];
  const SwTier *tier = &face->tiers[0];
  const SwSourced *values = sheet->practice->values;
  SwToeKind toe = sheet->practice->toe_kind;
  const Length all[] = {
    { "side-lap", SW_LIMIT_LEAST, values[SW_PRACTICE_SIDE_LAP_M].value },
    { "side-lap-laid", SW_LIMIT_LAID, tier->side_lap_m },
    { "end-lap", SW_LIMIT_LEAST, sheet->tally->joints > 0 ? tier->end_lap_m : 0.0 },
    { "trench", SW_LIMIT_LEAST, values[SW_PRACTICE_TRENCH_DEPTH_M].value },
    { "slot", SW_LIMIT_LEAST,
      tier->slots > 0 ? values[SW_PRACTICE_SLOT_DEPTH_M].value : 0.0 },
    { "toe", SW_LIMIT_LEAST,
      toe == SW_TOE_TRENCH ? values[SW_PRACTICE_TOE_DEPTH_M].value : 0.0 },
    { "fold", SW_LIMIT_LEAST,
      toe == SW_TOE_FOLD ? values[SW_PRACTICE_TOE_FOLD_M].value : 0.0 },
    { "trench-pin", SW_LIMIT_MOST, values[SW_PRACTICE_TRENCH_PIN_M].value },
    { "lap-pin", SW_LIMIT_MOST, values[SW_PRACTICE_SIDE_LAP_PIN_M].value },
    { "down", SW_LIMIT_MOST, tier->pin_down_m },
    { "across", SW_LIMIT_MOST, tier->pin_across_m },
  };
  GArray *lengths = g_array_new (FALSE, FALSE, sizeof (Length));

  for (guint i = 0; i < G_N_ELEMENTS (all); i++)
    if (sw_ticks (all[i].length_m) > 0)
      g_array_append_val (lengths, all[i]);
  return lengths;
}

static int
by_height (gconstpointer a, gconstpointer b)
{
  double one = ((const Mark *) a)->at_mm, other = ((const Mark *) b)->at_mm;

  return (one > other) - (one < other);
}

static Mark *
mark_at (GArray *marks, double at_mm)
{
  Mark mark = { at_mm, NULL };

  for (guint i = 0; i < marks->len; i++)
    {
      Mark *known = &g_array_index (marks, Mark, i);

      if (sw_ticks (known->at_mm / 1000.0) == sw_ticks (at_mm / 1000.0))
        return known;
    }
  mark.words = g_string_new (NULL);
  g_array_append_val (marks, mark);
  return &g_array_index (marks, Mark, marks->len - 1);
}

/* "key trench depth: 150 mm", or "pins, key trench: 2 × = 300 mm". */
static void
add_length (const SwSheet *sheet, GArray *marks, const Length *length, double ruler_mm)
{
  double length_m = sw_limit_length_m (length->length_m, SW_UNIT_SMALL_M, length->limit,
                                       sheet->draw->style.units);
  int times = sw_count_up (length_m, ruler_mm / 1000.0);
  Mark *mark = mark_at (marks, 1000.0 * length_m / times);
  const char *what =
      sw_sheet_get (sheet, sw_sheet_format (sheet, "pack.stick.%s", length->code));
  const char *read = sw_sheet_limit (sheet, length->length_m, length->limit);

  g_string_append_printf (
      mark->words, "%s%s", mark->words->len > 0 ? "\n" : "",
      sw_sheet_fill (sheet, times > 1 ? "pack.stick.times" : "pack.stick.once", "what",
                     what, "times", sw_sheet_count (sheet, times), "length", read, NULL));
}

static GArray *
marks_of (const SwSheet *sheet, double ruler_mm)
{
  GArray *marks = g_array_new (FALSE, FALSE, sizeof (Mark));
  g_autoptr (GArray) lengths = lengths_of (sheet);

  g_array_set_clear_func (marks, clear_mark);
  for (guint i = 0; i < lengths->len; i++)
    add_length (sheet, marks, &g_array_index (lengths, Length, i), ruler_mm);
  g_array_sort (marks, by_height);
  return marks;
}

/* The line of a mark would strike through the number. */
static gboolean
has_mark_near (const GArray *marks, double at_mm)
{
  for (guint i = 0; i < marks->len; i++)
    if (fabs (g_array_index (marks, Mark, i).at_mm - at_mm) < NUMBER_CLEAR_MM)
      return TRUE;
  return FALSE;
}

/* Ticks every 5 mm and a number every 20 mm, or every quarter inch and every inch. */
static void
draw_ruler (const SwSheet *sheet, SwFigure *figure, double ruler_mm, const GArray *marks)
{
  gboolean us = sheet->draw->style.units == SW_UNITS_US;
  double step_mm = us ? 1000.0 * SW_M_PER_IN / 4.0 : 5.0;
  guint numbered = 4, middle = 2;
  guint count = (guint) sw_count_whole (ruler_mm / 1000.0, step_mm / 1000.0);

  for (guint i = 0; i <= count; i++)
    {
      double y_mm = i * step_mm;
      double tick_mm = i % numbered == 0 ? TICK_LONG_MM
                       : i % middle == 0 ? TICK_MM
                                         : TICK_SHORT_MM;

      sw_figure_segment (figure, SW_ROLE_SCALE_BAR, 0.0, y_mm, tick_mm, y_mm);
      if (i > 0 && i % numbered == 0 && !has_mark_near (marks, i * step_mm))
        sw_pen_write (
            &sheet->pen, SW_STYLE_TINY, figure, SW_ROLE_TEXT, TICK_LONG_MM + 0.8,
            y_mm - sw_pen_line_mm (&sheet->pen, SW_STYLE_TINY) / 2.0, SW_ALIGN_LEFT,
            sw_sheet_format (sheet, "%u", us ? i / numbered : i * 5));
    }
}

/* A label, where it would stand at its mark and where it stands. */
typedef struct
{
  SwTextBlock *words;
  double height_mm, top_mm;
} Label;

static void
clear_label (gpointer data)
{
  sw_text_block_free (((Label *) data)->words);
}

/* At their marks, or below the label before; at the end of the stick above the next. */
static GArray *
labels_of (const SwSheet *sheet, const GArray *marks, double text_mm, double stick_mm)
{
  GArray *labels = g_array_new (FALSE, FALSE, sizeof (Label));
  double free_mm = ZERO_MM, last_mm = stick_mm;

  g_array_set_clear_func (labels, clear_label);
  for (guint i = 0; i < marks->len; i++)
    {
      const Mark *mark = &g_array_index (marks, Mark, i);
      Label label = { .words = sw_text_block_new (&sheet->pen, SW_STYLE_TINY,
                                                  mark->words->str, text_mm) };

      label.height_mm =
          sw_text_block_height_mm (&sheet->pen, label.words, label.words->lines->len);
      label.top_mm = MAX (free_mm, mark->at_mm - label.height_mm / 2.0);
      free_mm = label.top_mm + label.height_mm + LABEL_GAP_MM;
      g_array_append_val (labels, label);
    }
  for (guint i = labels->len; i > 0; i--)
    {
      Label *label = &g_array_index (labels, Label, i - 1);

      label->top_mm = MIN (label->top_mm, last_mm - LABEL_GAP_MM - label->height_mm);
      last_mm = label->top_mm;
    }
  return labels;
}

static void
draw_marks (const SwSheet *sheet, SwFigure *figure, GArray *marks)
{
  double text_mm = STICK_MM - RULER_MM - 3.0;
  g_autoptr (GArray) labels = labels_of (sheet, marks, text_mm, figure->height_mm);

  for (guint i = 0; i < marks->len; i++)
    {
      const Label *label = &g_array_index (labels, Label, i);
      double y_mm = g_array_index (marks, Mark, i).at_mm;

      sw_figure_segment (figure, SW_ROLE_SCALE_BAR, 0.0, y_mm, RULER_MM - 1.5, y_mm);
      sw_figure_segment (figure, SW_ROLE_DIMENSION, RULER_MM - 1.5, y_mm, RULER_MM + 1.5,
                         label->top_mm + label->height_mm / 2.0);
      sw_text_block_draw (&sheet->pen, label->words, 0, label->words->lines->len, figure,
                          SW_ROLE_TEXT, RULER_MM + 2.0, label->top_mm, text_mm,
                          SW_ALIGN_LEFT);
    }
}

SwFigure *
sw_sheet_stick (const SwSheet *sheet, double height_mm)
{
  g_autoptr (SwFlow) above = sw_flow_new (&sheet->pen, STICK_MM);
  SwFigure *figure = sw_figure_new (STICK_MM, height_mm);
  g_autoptr (SwFigure) words = NULL, stick = NULL;
  g_autoptr (GArray) marks = NULL;
  double stick_mm, ruler_mm;

  sw_flow_text (
      above, SW_STYLE_BODY, SW_ROLE_HEADING,
      sw_sheet_format (sheet, "*%s*", sw_sheet_get (sheet, "pack.stick.title")));
  sw_flow_text (above, SW_STYLE_SMALL, SW_ROLE_TEXT,
                sw_sheet_get (sheet, "pack.stick.how"));
  words = sw_flow_to_figure (above);
  stick_mm = height_mm - words->height_mm - 2.0;
  ruler_mm = stick_mm - END_MM;
  stick = sw_figure_new (STICK_MM, stick_mm);
  sw_figure_box (stick, SW_ROLE_FRAME, 0.0, 0.0, STICK_MM, stick_mm);
  sw_pen_write (&sheet->pen, SW_STYLE_TINY, stick, SW_ROLE_TEXT, TICK_LONG_MM + 0.8, 2.0,
                SW_ALIGN_LEFT, sw_sheet_get (sheet, "pack.stick.zero"));
  marks = marks_of (sheet, ruler_mm);
  draw_ruler (sheet, stick, ruler_mm, marks);
  draw_marks (sheet, stick, marks);
  sw_figure_place (figure, words, 0.0, 0.0);
  sw_figure_place (figure, stick, 0.0, words->height_mm + 2.0);
  return figure;
}
