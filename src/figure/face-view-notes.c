/* SPDX-License-Identifier: MIT */
#include "face-view.h"
#include <math.h>

#define DIMENSION_ROW_MM 5.0
#define NEXT_ROW_MM 5.4
#define ORDER_ROW_MM 4.2
#define START_ROW_MM 9.2
#define NARROW_MM 80.0
#define ARROW_MM 16.0

/* Height of a cut length over the usual text. */
#define LENGTH_RATIO 0.92

/* A number tries so many places down its run. */
#define NUMBER_SPOTS 5

static double
width_mm (const SwDrawing *drawing, const char *text, double size_mm)
{
  const SwTextMeasure *measure = drawing->draw->measure;

  return measure->width_mm (SW_FACE_REGULAR, size_mm, text, measure->data);
}

/* How many runs share one number, so that numbers stay readable: 1, 2, 5, 10 or 20. */
static int
number_every (double run_mm, double text_mm)
{
  static const int steps[] = { 1, 2, 5, 10 };

  for (guint i = 0; i < G_N_ELEMENTS (steps); i++)
    if (run_mm * steps[i] >= text_mm * 1.25)
      return steps[i];
  return 20;
}

/* 1, 3, 5 … or 1, 5, 10, 15 … */
static gboolean
is_numbered (int number, int every)
{
  return every == 2 ? number % 2 == 1 : number == 1 || number % every == 0;
}

/* Number at the head of the run; upright when it fits, else along the run. */
static void
number_run (SwDrawing *drawing, guint i, double run_mm, guint style)
{
  const SwRun *run = &drawing->laid->runs[i];
  double size = drawing->text_mm * (run_mm > 12.0 ? 1.15 : 1.0);
  int every = number_every (run_mm, drawing->text_mm);
  SwPaperPoint top = sw_drawing_at (drawing, (run->along_from_m + run->along_to_m) / 2.0,
                                    fmax (run->down_from_m, drawing->seen.y0_m));
  g_autofree char *label = sw_run_label (run);
  double width = width_mm (drawing, label, size) * 1.1;
  gboolean upright = width + 0.6 <= run_mm;
  double below = upright ? size * 0.9 + 0.6 : width / 2.0 + 1.0;
  SwLabelSpot spots[NUMBER_SPOTS];

  double end =
      sw_drawing_at (drawing, 0.0, fmin (run->down_to_m, drawing->seen.y1_m)).y_mm;
  guint n = 0;

  for (; n < NUMBER_SPOTS && top.y_mm + 2.0 * (below + n) - 0.8 <= end; n++)
    spots[n] =
        (SwLabelSpot){ top.x_mm, top.y_mm + below + 2.0 * n, upright ? 0.0 : G_PI_2 };
  if (!is_numbered (run->number, every))
    return;
  sw_labels_wish (drawing->labels,
                  &(SwLabelWish){ .rank = SW_LABEL_MAIN,
                                  .role = SW_ROLE_TEXT,
                                  .ground = SW_ROLE_RUN,
                                  .style = SW_LABEL_BOLD | style,
                                  .size_mm = size,
                                  .object = sw_drawing_object_id (drawing, "/run/%u", i),
                                  .text = label,
                                  .spots = spots,
                                  .n_spots = n });
}

static double
free_width_mm (const SwDrawing *drawing, const SwRun *run)
{
  double lap_m = drawing->laid->tiers[run->tier].side_lap_m;

  return (run->along_to_m - run->along_from_m - lap_m) * fabs (drawing->view->x_mm_per_m);
}

/* Whether the run's length fits beside its number, whole or turned along it. */
static gboolean
has_room (const SwDrawing *drawing, const SwRun *run)
{
  double size = drawing->text_mm * LENGTH_RATIO, run_mm = free_width_mm (drawing, run);
  double tall_mm = (run->down_to_m - run->down_from_m) * fabs (drawing->view->y_mm_per_m);
  g_autofree char *text = sw_drawing_length (drawing, run->cut_m);
  double width = width_mm (drawing, text, size);
  double needed = width + 1.6 <= run_mm ? size : width;

  return run_mm >= size * 1.2 && tall_mm >= needed + 2.0 * drawing->text_mm;
}

gboolean
sw_face_view_shows_lengths (const SwDrawing *drawing)
{
  for (guint i = 0; i < drawing->laid->n_runs; i++)
    if (!has_room (drawing, &drawing->laid->runs[i]))
      return FALSE;
  return TRUE;
}

/* Cut length of one piece at its middle. */
static void
note_piece (SwDrawing *drawing, guint i, const SwPiece *piece, double run_mm, guint style)
{
  const SwRun *run = &drawing->laid->runs[i];
  double size = drawing->text_mm * LENGTH_RATIO;
  double from = fmax (piece->down_from_m, drawing->seen.y0_m);
  double to = fmin (piece->down_to_m, drawing->seen.y1_m);
  SwPaperPoint at =
      sw_drawing_at (drawing, (run->along_from_m + run->along_to_m) / 2.0,
                     (fmax (from, run->down_from_m) + fmin (to, run->down_to_m)) / 2.0);
  g_autofree char *text = sw_drawing_length (drawing, piece->length_m);
  double width = width_mm (drawing, text, size);
  gboolean upright = width + 1.6 <= run_mm;
  double half = (upright ? size : width) / 2.0 + 0.4;
  double top = sw_drawing_at (drawing, 0.0, fmax (from, run->down_from_m)).y_mm;
  double end = sw_drawing_at (drawing, 0.0, fmin (to, run->down_to_m)).y_mm;
  static const double shifts_mm[] = { 0.0, 6.0, -6.0, 3.0, -3.0, 12.0, -12.0 };
  SwLabelSpot spots[G_N_ELEMENTS (shifts_mm)];
  guint n = 0;

  /* Only where the whole text stands on its own piece. */
  for (guint k = 0; k < G_N_ELEMENTS (shifts_mm); k++)
    if (at.y_mm + shifts_mm[k] - half >= top && at.y_mm + shifts_mm[k] + half <= end)
      spots[n++] =
          (SwLabelSpot){ at.x_mm, at.y_mm + shifts_mm[k], upright ? 0.0 : G_PI_2 };
  if (run_mm < size * 1.2 || n == 0)
    return;
  sw_labels_wish (drawing->labels,
                  &(SwLabelWish){ .rank = SW_LABEL_USEFUL,
                                  .role = SW_ROLE_TEXT,
                                  .ground = SW_ROLE_RUN,
                                  .style = style,
                                  .size_mm = size,
                                  .object = sw_drawing_object_id (drawing, "/run/%u", i),
                                  .text = text,
                                  .spots = spots,
                                  .n_spots = n });
}

static void
note_runs (SwDrawing *drawing, gboolean with_pins)
{
  const SwFaceLayout *laid = drawing->laid;
  gboolean is_fan = drawing->face->crest_form != SW_CREST_STRAIGHT;
  gboolean on_plain = !with_pins && !is_fan && drawing->face->zones->len == 0;
  guint style = on_plain ? SW_LABEL_PLAIN : SW_LABEL_KNOCK_OUT;

  for (guint i = 0; i < laid->n_runs; i++)
    {
      const SwRun *run = &laid->runs[i];
      const SwPiece *pieces = sw_layout_run_pieces (drawing->result->layout, run);
      double run_mm = free_width_mm (drawing, run);

      if (run->along_to_m < drawing->seen.x0_m || run->along_from_m > drawing->seen.x1_m)
        continue;
      number_run (drawing, i, run_mm, style);
      for (guint p = 0; p < run->n_pieces; p++)
        note_piece (drawing, i, &pieces[p], run_mm, style);
    }
}

/* A name at the right end of a line across the face. */
static void
name_line (SwDrawing *drawing, SwBox box, double down_m, double shift_mm,
           const char *text, const char *object)
{
  SwPaperPoint at = sw_drawing_at (drawing, box.x1_m, down_m);

  sw_drawing_note (drawing, SW_LABEL_MAIN, SW_ROLE_TEXT,
                   at.x_mm + 1.5 + width_mm (drawing, text, drawing->text_mm) / 2.0,
                   at.y_mm + shift_mm, 0.0, object, text);
}

static void
name_tier (SwDrawing *drawing, SwBox box, guint t)
{
  const SwTier *tier = &drawing->laid->tiers[t];
  const char *id = sw_drawing_object_id (drawing, "/tier/%u", t);
  SwPaperPoint a = sw_drawing_at (drawing, box.x0_m, tier->reach.down_from_m);
  SwPaperPoint b = sw_drawing_at (drawing, box.x1_m, tier->reach.down_to_m);

  sw_drawing_object (drawing, "/tier/%u", t);
  sw_figure_segment (drawing->figure, SW_ROLE_BREAK, a.x_mm, a.y_mm, b.x_mm, a.y_mm);
  sw_figure_segment (drawing->figure, SW_ROLE_BREAK, a.x_mm, b.y_mm, b.x_mm, b.y_mm);
  name_line (
      drawing, box, tier->reach.down_from_m, 0.6,
      sw_drawing_text (drawing, t == 0 ? "drawing.crest-line" : "drawing.tier-top"), id);
  name_line (drawing, box, tier->reach.down_to_m, -0.6,
             sw_drawing_text (drawing, t + 1 == drawing->laid->n_tiers
                                           ? "drawing.toe-line"
                                           : "drawing.tier-end"),
             id);
}

static void
name_bench (SwDrawing *drawing, SwBox box, guint t)
{
  double from_m = drawing->laid->tiers[t - 1].reach.down_to_m;
  double to_m = drawing->laid->tiers[t].reach.down_from_m;
  SwPaperPoint at =
      sw_drawing_at (drawing, (box.x0_m + box.x1_m) / 2.0, (from_m + to_m) / 2.0);
  g_autofree char *width = sw_drawing_length (drawing, to_m - from_m);
  g_autofree char *words =
      sw_texts_fill (drawing->draw->texts, "drawing.bench", "width", width, NULL);

  sw_drawing_note (drawing, SW_LABEL_MAIN, SW_ROLE_TEXT, at.x_mm, at.y_mm, 0.0,
                   sw_drawing_object_id (drawing, "/tier/%u", t), words);
}

/* Width at the toe; true lengths of the tiers at the left, and of all when there are several. */
static void
dimension_face (SwDrawing *drawing, SwBox box)
{
  const SwFaceLayout *laid = drawing->laid;
  SwPaperPoint left = sw_drawing_at (drawing, box.x0_m, box.y1_m);
  SwPaperPoint right = sw_drawing_at (drawing, box.x1_m, box.y1_m);
  const SwTier *last = &laid->tiers[laid->n_tiers - 1];
  g_autofree char *width = sw_drawing_length (
      drawing,
      (box.x1_m - box.x0_m) * sw_ground_stretch (laid->ground, last->reach.out_to_m));

  sw_drawing_dimension (
      drawing, SW_LABEL_NEEDED,
      (SwLabelSpan){ left.x_mm, left.y_mm, right.x_mm, right.y_mm, -DIMENSION_ROW_MM },
      sw_drawing_object_id (drawing, "/outline"), width);
  for (guint t = 0; t < laid->n_tiers; t++)
    {
      const SwReach *reach = &laid->tiers[t].reach;
      SwPaperPoint a = sw_drawing_at (drawing, box.x0_m, reach->down_from_m);
      SwPaperPoint b = sw_drawing_at (drawing, box.x0_m, reach->down_to_m);
      g_autofree char *text =
          sw_drawing_length (drawing, reach->down_to_m - reach->down_from_m);

      sw_drawing_dimension (
          drawing, SW_LABEL_NEEDED,
          (SwLabelSpan){ a.x_mm, a.y_mm, b.x_mm, b.y_mm, -DIMENSION_ROW_MM },
          sw_drawing_object_id (drawing, "/tier/%u", t), text);
    }
  if (laid->n_tiers > 1)
    {
      double from_m = laid->tiers[0].reach.down_from_m;
      double to_m = laid->tiers[laid->n_tiers - 1].reach.down_to_m;
      SwPaperPoint a = sw_drawing_at (drawing, box.x0_m, from_m);
      SwPaperPoint b = sw_drawing_at (drawing, box.x0_m, to_m);
      g_autofree char *text = sw_drawing_length (drawing, to_m - from_m);

      sw_drawing_dimension (drawing, SW_LABEL_USEFUL,
                            (SwLabelSpan){ a.x_mm, a.y_mm, b.x_mm, b.y_mm,
                                           -DIMENSION_ROW_MM - NEXT_ROW_MM },
                            NULL, text);
    }
}

/* An arrow along x with words after its head. */
static void
draw_arrow (SwDrawing *drawing, SwRole role, double x_mm, double y_mm, double length_mm,
            const char *object, const char *text)
{
  double sign = length_mm < 0.0 ? -1.0 : 1.0;
  const char *id = sw_drawing_object_id (drawing, "%s", object);

  sw_figure_object (drawing->figure, id);
  sw_draft_arrow (drawing->figure, role, x_mm, y_mm, x_mm + length_mm, y_mm, 2.8);
  sw_labels_reserve_rect (drawing->labels, fmin (x_mm, x_mm + length_mm), y_mm - 1.2,
                          fabs (length_mm), 2.4);
  sw_drawing_note (drawing, SW_LABEL_NEEDED, SW_ROLE_TEXT,
                   x_mm + length_mm
                       + sign * (1.8 + width_mm (drawing, text, drawing->text_mm) / 2.0),
                   y_mm, 0.0, id, text);
}

/* Start corner and laying order from the leeward end; the wind comes from the other. */
static void
note_order (SwDrawing *drawing, SwBox box)
{
  gboolean left = drawing->face->leeward == SW_SIDE_LEFT;
  SwPaperPoint a = sw_drawing_at (drawing, box.x0_m, box.y0_m);
  SwPaperPoint b = sw_drawing_at (drawing, box.x1_m, box.y0_m);
  double sign = left ? 1.0 : -1.0, width = b.x_mm - a.x_mm;
  double lee = left ? a.x_mm : b.x_mm, windward = left ? b.x_mm : a.x_mm;
  const char *start = sw_drawing_text (drawing, "drawing.start-here");
  double start_mm = width_mm (drawing, start, drawing->text_mm);
  gboolean narrow = width < NARROW_MM;

  sw_figure_object (drawing->figure, sw_drawing_object_id (drawing, "/start"));
  sw_figure_segment (drawing->figure, SW_ROLE_FALL_LINE, lee, a.y_mm - START_ROW_MM - 1.4,
                     lee, a.y_mm - 0.6);
  sw_drawing_note (drawing, SW_LABEL_NEEDED, SW_ROLE_TEXT,
                   lee + sign * (1.4 + start_mm / 2.0), a.y_mm - START_ROW_MM, 0.0,
                   sw_drawing_object_id (drawing, "/start"), start);
  draw_arrow (drawing, SW_ROLE_FALL_LINE, lee, a.y_mm - ORDER_ROW_MM,
              sign * fmin (ARROW_MM, fmax (width * 0.4, 8.0)), "/order",
              sw_drawing_text (drawing, "drawing.laying-order"));
  draw_arrow (drawing, SW_ROLE_WIND, narrow ? lee - sign * 2.0 : windward,
              narrow ? a.y_mm - ORDER_ROW_MM : a.y_mm - START_ROW_MM, -sign * 12.0,
              "/wind", sw_drawing_text (drawing, "drawing.wind"));
}

/* Beside the longest tier. */
static void
draw_fall_line (SwDrawing *drawing, SwBox box)
{
  const SwFaceLayout *laid = drawing->laid;
  const SwTier *longest = &laid->tiers[0];
  SwPaperPoint a, b;
  double height, length, x, from;
  const char *id = sw_drawing_object_id (drawing, "/fall-line");

  for (guint t = 1; t < laid->n_tiers; t++)
    if (laid->tiers[t].length_m > longest->length_m)
      longest = &laid->tiers[t];
  a = sw_drawing_at (drawing, box.x1_m, longest->reach.down_from_m);
  b = sw_drawing_at (drawing, box.x1_m, longest->reach.down_to_m);
  height = b.y_mm - a.y_mm;
  length = fmin (ARROW_MM, height - 8.0);
  x = a.x_mm + 4.0;
  from = a.y_mm + (height - length) / 2.0;
  if (length < 6.0)
    return;
  sw_figure_object (drawing->figure, id);
  sw_draft_arrow (drawing->figure, SW_ROLE_FALL_LINE, x, from, x, from + length, 2.8);
  sw_labels_reserve_rect (drawing->labels, x - 1.2, from, 2.4, length);
  sw_drawing_note (drawing, SW_LABEL_NEEDED, SW_ROLE_TEXT, x + 3.6, from + length / 2.0,
                   G_PI_2, id, sw_drawing_text (drawing, "drawing.fall-line"));
}

/* The first lap says which run is on top. */
static void
note_first_lap (SwDrawing *drawing)
{
  const SwFaceLayout *laid = drawing->laid;
  const SwRun *a, *b;
  SwPaperPoint at;
  g_autofree char *lap = NULL, *words = NULL;
  double half, sign = drawing->face->leeward == SW_SIDE_LEFT ? 1.0 : -1.0;
  guint first = laid->tiers[laid->n_tiers - 1].first_run;

  if (laid->tiers[laid->n_tiers - 1].n_runs < 2)
    return;
  a = &laid->runs[first];
  b = &laid->runs[first + 1];
  at = sw_drawing_at (
      drawing,
      (fmax (a->along_from_m, b->along_from_m) + fmin (a->along_to_m, b->along_to_m))
          / 2.0,
      fmin (a->down_to_m, b->down_to_m));
  lap = sw_side_lap_text (laid, drawing->draw);
  {
    g_autofree char *upper = sw_run_label (b);
    g_autofree char *lower = sw_run_label (a);

    words = sw_texts_fill (drawing->draw->texts, "drawing.lap-note", "lap", lap, "upper",
                           upper, "lower", lower, NULL);
  }
  half = width_mm (drawing, words, drawing->text_mm) / 2.0;
  sw_drawing_callout (
      drawing, SW_LABEL_USEFUL, (SwPaperPoint){ at.x_mm, at.y_mm - 1.2 },
      (SwLabelSpot[]){ { at.x_mm + sign * (half - 3.0), at.y_mm + 9.2, 0.0 },
                       { at.x_mm - sign * (half - 3.0), at.y_mm + 9.2, 0.0 } },
      2, sw_drawing_object_id (drawing, "/lap/%d-%d", a->number, b->number), words);
}

void
sw_face_view_notes (SwDrawing *drawing, gboolean with_pins)
{
  const SwLie lie = { sw_unfold, sw_unfold_at };
  const SwFaceLayout *laid = drawing->laid;
  SwBox box = sw_face_view_box (drawing->result, drawing->face_index);

  if (laid->n_tiers == 0)
    return;
  note_order (drawing, box);
  dimension_face (drawing, box);
  for (guint t = 0; t < laid->n_tiers; t++)
    {
      name_tier (drawing, box, t);
      if (t > 0)
        name_bench (drawing, box, t);
    }
  draw_fall_line (drawing, box);
  note_first_lap (drawing);
  sw_note_obstacles (drawing, &lie);
  sw_note_zones (drawing, &lie);
  note_runs (drawing, with_pins);
}
