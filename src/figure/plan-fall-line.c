/* SPDX-License-Identifier: MIT */
#include "plan-shape.h"
#include <math.h>

/* A fall line shorter than this on paper is an arrow all its way; others are so long. */
#define SHORT_FALL_MM 10.0
#define LEAST_FALL_MM 2.5
#define LONGEST_FALL_MM 30.0
#define FALL_NAME_MM 3.0
#define FALL_NAME_BELOW_MM 9.5
#define FALL_NAME_BESIDE 4

/* At either end of a run, what its number takes of it. */
#define NUMBER_ROOM_MM 4.6

static SwSpan
longest_span (const SwDrawing *drawing, double along_m)
{
  g_autoptr (GArray) spans = g_array_new (FALSE, FALSE, sizeof (SwSpan));
  SwSpan longest = { 0.0, 0.0 };

  sw_ring_cut_x ((SwRing){ drawing->face->outline, drawing->face->n_outline }, along_m,
                 spans);
  for (guint i = 0; i < spans->len; i++)
    {
      SwSpan span = g_array_index (spans, SwSpan, i);

      if (span.to_m - span.from_m > longest.to_m - longest.from_m)
        longest = span;
    }
  if (drawing->laid != NULL && drawing->laid->n_tiers > 1)
    longest.to_m = fmin (longest.to_m, drawing->laid->tiers[0].reach.out_to_m);
  return longest;
}

/* The words along the arrow on either side of it, else level beside it; where there is no
 * room, in the open above or below the face with a line to the arrow. */
static void
name_fall_arrow (SwDrawing *drawing, SwLabelBox arrow, gboolean has_room)
{
  const char *words = sw_drawing_text (drawing, "drawing.fall-line");
  double half = sw_drawing_width_mm (drawing, words, drawing->text_mm) / 2.0 + 0.5;
  double turn = sw_label_reading_turn_rad (arrow.turn_rad);
  double off_mm = sw_label_shadow_mm (arrow, 0.0) + 1.0 + half;
  double x = FALL_NAME_MM * sin (turn), y = FALL_NAME_MM * cos (turn);
  SwBox paper = sw_plan_paper_box (drawing);
  SwLabelSpot spots[] = { { arrow.x_mm + x, arrow.y_mm + y, turn },
                          { arrow.x_mm - x, arrow.y_mm - y, turn },
                          { arrow.x_mm + off_mm, arrow.y_mm, 0.0 },
                          { arrow.x_mm - off_mm, arrow.y_mm, 0.0 },
                          { arrow.x_mm, paper.y1_m + FALL_NAME_BELOW_MM, 0.0 },
                          { arrow.x_mm - half, paper.y1_m + FALL_NAME_BELOW_MM, 0.0 },
                          { arrow.x_mm + half, paper.y1_m + FALL_NAME_BELOW_MM, 0.0 },
                          { arrow.x_mm, paper.y0_m - FALL_NAME_BELOW_MM, 0.0 },
                          { arrow.x_mm - half, paper.y0_m - FALL_NAME_BELOW_MM, 0.0 },
                          { paper.x0_m - FALL_NAME_BELOW_MM - half, arrow.y_mm, 0.0 } };
  guint skip = has_room ? 0 : FALL_NAME_BESIDE;

  sw_drawing_name_off_lines (drawing, SW_LABEL_NEEDED,
                             (SwPaperPoint){ arrow.x_mm, arrow.y_mm }, spots + skip,
                             G_N_ELEMENTS (spots) - skip, FALL_NAME_BESIDE - skip,
                             sw_drawing_object_id (drawing, "/fall-line"), words);
}

/* Whether the words fit into @whole_mm of the face below the numbers of the runs; beside
 * the upper of several tiers they stand as they can, for a line would cross the others. */
static gboolean
has_room_for_name (const SwDrawing *drawing, double whole_mm)
{
  const char *words = sw_drawing_text (drawing, "drawing.fall-line");

  if (drawing->laid != NULL && drawing->laid->n_tiers > 1)
    return TRUE;
  return 2.0 * NUMBER_ROOM_MM + sw_drawing_width_mm (drawing, words, drawing->text_mm)
         <= whole_mm;
}

void
sw_plan_fall_line (SwDrawing *drawing, double along_m, gboolean named)
{
  SwSpan span = longest_span (drawing, along_m);
  SwPaperPoint top = sw_plan_at (drawing, along_m, span.from_m);
  SwPaperPoint end = sw_plan_at (drawing, along_m, span.to_m);
  double dx = end.x_mm - top.x_mm, dy = end.y_mm - top.y_mm, whole = hypot (dx, dy);
  double from = whole < SHORT_FALL_MM ? 0.08 : 0.22;
  double to = whole < SHORT_FALL_MM ? 0.92 : fmin (0.72, from + LONGEST_FALL_MM / whole);
  SwPaperPoint a = { top.x_mm + dx * from, top.y_mm + dy * from };
  SwPaperPoint b = { top.x_mm + dx * to, top.y_mm + dy * to };
  SwLabelBox arrow = { (a.x_mm + b.x_mm) / 2.0, (a.y_mm + b.y_mm) / 2.0,
                       whole * (to - from) / 2.0, 1.0, atan2 (-dy, dx) };

  if (whole * (to - from) < LEAST_FALL_MM)
    return;
  sw_drawing_object (drawing, "/fall-line");
  sw_draft_arrow (drawing->figure, SW_ROLE_FALL_LINE, a.x_mm, a.y_mm, b.x_mm, b.y_mm,
                  fmin (3.0, whole * (to - from) / 2.0));
  sw_labels_reserve (drawing->labels, arrow);
  if (named)
    name_fall_arrow (drawing, arrow, has_room_for_name (drawing, whole));
}
