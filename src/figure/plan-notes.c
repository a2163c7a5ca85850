/* SPDX-License-Identifier: MIT */
#include "plan-shape.h"
#include "run-on.h"
#include <math.h>

#define SIDE_ROW_MM 5.5

/* Half the width of a handle on screen. */
#define HANDLE_MM 2.0
#define WIND_ROW_MM 11.0
#define ARROW_MM 16.0

/* Runs narrower than this on paper carry no number. */
#define NUMBER_EVERY_MM 4.2

/* A number's middle is this far inside its run's end. */
#define NUMBER_IN_MM 2.4

/* A fall line shorter than this on paper is an arrow all its way; others are so long. */
#define SHORT_FALL_MM 10.0
#define LEAST_FALL_MM 2.5
#define LONGEST_FALL_MM 30.0
#define FALL_NAME_MM 3.0
#define FALL_NAME_BELOW_MM 9.5

/* At either end of a run, what its number takes of it. */
#define NUMBER_ROOM_MM 4.6

/* Points nearer than this are one. */
#define SAME_PLACE_M 1e-6

/* Sides shorter than this on paper carry no dimension. */
#define SHORT_SIDE_MM 6.0

/* Where a number lies within the outline: near the upper end of its run, or the lower one
 * where that is the wider, else the middle, else the other end. */
static guint
number_spots (const SwDrawing *drawing, const SwRun *run, SwLabelSpot spots[3])
{
  SwRing ring = { drawing->face->outline, drawing->face->n_outline };
  double x_m = (run->along_from_m + run->along_to_m) / 2.0;
  double in_m = NUMBER_IN_MM / drawing->view->x_mm_per_m;
  double upper_m = run->out_from_m + in_m, lower_m = run->out_to_m - in_m;
  gboolean is_nose = drawing->face->crest_form == SW_CREST_NOSE;
  double outs_m[] = { is_nose ? lower_m : upper_m,
                      (run->out_from_m + run->out_to_m) / 2.0,
                      is_nose ? upper_m : lower_m };
  guint n = 0;

  for (guint i = 0; i < G_N_ELEMENTS (outs_m); i++)
    if (sw_ring_contains (ring, (SwPoint){ x_m, outs_m[i] }))
      {
        SwPaperPoint at = sw_plan_at (drawing, x_m, outs_m[i]);

        spots[n++] = (SwLabelSpot){ at.x_mm, at.y_mm, 0.0 };
      }
  return n;
}

static void
number_run (SwDrawing *drawing, guint i)
{
  const SwRun *run = &drawing->laid->runs[i];
  double stretch =
      sw_plan_is_bent (drawing->face) ? drawing->laid->tiers[run->tier].stretch : 1.0;
  double width =
      (run->along_to_m - run->along_from_m) * stretch * drawing->view->x_mm_per_m;
  int every = width >= NUMBER_EVERY_MM ? 1 : width * 5.0 >= NUMBER_EVERY_MM ? 5 : 20;
  g_autofree char *label = sw_run_label (run);
  const char *id = sw_drawing_object_id (drawing, "/run/%u", i);
  SwLabelSpot spots[3];

  if (run->number % every != 0 && !(every > 1 && run->number == 1))
    return;
  sw_labels_wish (drawing->labels,
                  &(SwLabelWish){ .rank = SW_LABEL_USEFUL,
                                  .role = SW_ROLE_MUTED,
                                  .size_mm = drawing->text_mm * 0.92,
                                  .object = id,
                                  .text = label,
                                  .spots = spots,
                                  .n_spots = number_spots (drawing, run, spots) });
}

/* A line of the ground across the face: break @i of the section, where it runs at each place. */
static GArray *
break_path (const SwDrawing *drawing, SwBox box, guint i)
{
  const SwFace *face = drawing->face;
  g_autoptr (GArray) line = g_array_new (FALSE, FALSE, sizeof (SwPoint));
  SwPoint at = { box.x0_m, face->section[i].x_m };

  for (guint k = 0; k <= face->n_further + 1; k++)
    {
      at.x_m = k == 0                     ? box.x0_m
               : k == face->n_further + 1 ? box.x1_m
                                          : face->further[k - 1].along_m;
      if (drawing->laid != NULL)
        at.y_m = sw_ground_break_out_m (drawing->laid->ground, i, at.x_m);
      if (at.x_m >= box.x0_m && at.x_m <= box.x1_m)
        g_array_append_val (line, at);
    }
  return sw_plan_path (drawing, (SwPoint *) line->data, line->len, FALSE);
}

/* A break by name at its right end. */
static void
draw_break (SwDrawing *drawing, SwBox box, guint i, const char *text_id)
{
  g_autoptr (GArray) path = break_path (drawing, box, i);
  SwPaperPoint end = g_array_index (path, SwPaperPoint, path->len - 1);
  const char *words = sw_drawing_text (drawing, text_id);
  double half = sw_drawing_width_mm (drawing, words, drawing->text_mm) / 2.0;
  double right = end.x_mm + SIDE_ROW_MM + 2.5 + half;
  SwLabelSpot spots[] = { { right, end.y_mm, 0.0 },
                          { right, end.y_mm - 3.0, 0.0 },
                          { right, end.y_mm + 3.0, 0.0 },
                          { right + 4.0, end.y_mm - 5.0, 0.0 } };

  sw_drawing_object (drawing, "/section/%u", i);
  sw_figure_line (drawing->figure, SW_ROLE_BREAK, (SwPaperPoint *) path->data, path->len);
  sw_drawing_label (drawing, SW_LABEL_NEEDED, spots, G_N_ELEMENTS (spots),
                    sw_drawing_object_id (drawing, "/section/%u", i), words);
}

static void
name_bench (SwDrawing *drawing, SwBox box, guint t)
{
  const SwFaceLayout *laid = drawing->laid;
  double middle_m = (box.x0_m + box.x1_m) / 2.0;
  double outs_m[2] = { laid->tiers[t - 1].reach.out_to_m,
                       laid->tiers[t].reach.out_from_m };
  SwPaperPoint at = sw_plan_at (drawing, middle_m, (outs_m[0] + outs_m[1]) / 2.0);
  g_autofree char *width = sw_drawing_length (drawing, outs_m[1] - outs_m[0]);
  g_autofree char *words =
      sw_texts_fill (drawing->draw->texts, "drawing.bench", "width", width, NULL);

  sw_drawing_object (drawing, "/tier/%u", t);
  for (guint side = 0; side < 2; side++)
    {
      SwPoint line[2] = { { box.x0_m, outs_m[side] }, { box.x1_m, outs_m[side] } };
      g_autoptr (GArray) path = sw_plan_path (drawing, line, 2, FALSE);

      sw_figure_line (drawing->figure, SW_ROLE_BREAK, (SwPaperPoint *) path->data,
                      path->len);
    }
  sw_drawing_note (drawing, SW_LABEL_MAIN, SW_ROLE_TEXT, at.x_mm, at.y_mm, 0.0,
                   sw_drawing_object_id (drawing, "/tier/%u", t), words);
}

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

/* Below a face too short for the words: in the open, with a line to the arrow. */
static void
name_fall_arrow_outside (SwDrawing *drawing, SwLabelBox arrow)
{
  const char *words = sw_drawing_text (drawing, "drawing.fall-line");
  double half = sw_drawing_width_mm (drawing, words, drawing->text_mm) / 2.0;
  SwBox paper = sw_plan_paper_box (drawing);
  SwLabelSpot spots[] = { { arrow.x_mm, paper.y1_m + FALL_NAME_BELOW_MM, 0.0 },
                          { arrow.x_mm - half, paper.y1_m + FALL_NAME_BELOW_MM, 0.0 },
                          { arrow.x_mm, paper.y0_m - FALL_NAME_BELOW_MM, 0.0 } };

  sw_drawing_callout (drawing, SW_LABEL_USEFUL, (SwPaperPoint){ arrow.x_mm, arrow.y_mm },
                      spots, G_N_ELEMENTS (spots),
                      sw_drawing_object_id (drawing, "/fall-line"), words);
}

/* The words along the arrow on either side of it, else level beside it. */
static void
name_fall_arrow (SwDrawing *drawing, SwLabelBox arrow)
{
  const char *words = sw_drawing_text (drawing, "drawing.fall-line");
  double half = sw_drawing_width_mm (drawing, words, drawing->text_mm) / 2.0 + 0.5;
  double turn = sw_label_reading_turn_rad (arrow.turn_rad);
  double off_mm = sw_label_shadow_mm (arrow, 0.0) + 1.0 + half;
  double x = FALL_NAME_MM * sin (turn), y = FALL_NAME_MM * cos (turn);
  SwLabelSpot spots[] = { { arrow.x_mm + x, arrow.y_mm + y, turn },
                          { arrow.x_mm - x, arrow.y_mm - y, turn },
                          { arrow.x_mm + off_mm, arrow.y_mm, 0.0 },
                          { arrow.x_mm - off_mm, arrow.y_mm, 0.0 } };

  sw_drawing_label (drawing, SW_LABEL_NEEDED, spots, G_N_ELEMENTS (spots),
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

/* One arrow down the longest stretch that the outline has at @along_m. */
static void
draw_fall_arrow (SwDrawing *drawing, double along_m, gboolean named)
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
  if (named && has_room_for_name (drawing, whole))
    name_fall_arrow (drawing, arrow);
  else if (named)
    name_fall_arrow_outside (drawing, arrow);
}

/* The wind blows towards the leeward end, where the first run lies. */
static void
draw_wind (SwDrawing *drawing)
{
  gboolean left = drawing->face->leeward == SW_SIDE_LEFT;
  SwBox paper = sw_plan_paper_box (drawing);
  double y = paper.y0_m - WIND_ROW_MM;
  double length = fmin (ARROW_MM, (paper.x1_m - paper.x0_m) * 0.4);
  double from = left ? paper.x1_m : paper.x0_m, sign = left ? -1.0 : 1.0;
  const char *words = sw_drawing_text (drawing, "drawing.wind");
  double half = sw_drawing_width_mm (drawing, words, drawing->text_mm) / 2.0;

  sw_drawing_object (drawing, "/wind");
  sw_draft_arrow (drawing->figure, SW_ROLE_WIND, from, y, from + sign * length, y, 3.0);
  sw_labels_reserve_rect (drawing->labels, fmin (from, from + sign * length), y - 1.2,
                          length, 2.4);
  sw_drawing_note (drawing, SW_LABEL_NEEDED, SW_ROLE_TEXT,
                   from + sign * (length + 2.0 + half), y, 0.0,
                   sw_drawing_object_id (drawing, "/wind"), words);
}

/* Where the length of an arc may stand, in rows outside it: best close by, else farther
 * out, else inside. */
static const double arc_rows[] = { 1.0, 2.0, -1.0, 3.0 };

/* Arc length of a bent side at its middle. */
static void
note_arc (SwDrawing *drawing, SwPoint p, SwPoint q, double turn, const char *object)
{
  double middle_m = (p.x_m + q.x_m) / 2.0, out_m = (p.y_m + q.y_m) / 2.0;
  SwPaperPoint a = sw_plan_at (drawing, middle_m - (q.x_m - p.x_m) * 0.01, out_m);
  SwPaperPoint b = sw_plan_at (drawing, middle_m + (q.x_m - p.x_m) * 0.01, out_m);
  SwLabelSpot spots[G_N_ELEMENTS (arc_rows)];
  double dx = b.x_mm - a.x_mm, dy = b.y_mm - a.y_mm, size = hypot (dx, dy);
  double stretch =
      drawing->laid != NULL ? sw_ground_stretch (drawing->laid->ground, out_m) : 1.0;
  g_autofree char *length =
      sw_drawing_length (drawing, hypot ((q.x_m - p.x_m) * stretch, q.y_m - p.y_m));
  g_autofree char *words =
      sw_texts_fill (drawing->draw->texts, "drawing.arc", "length", length, NULL);

  for (guint i = 0; i < G_N_ELEMENTS (arc_rows); i++)
    spots[i] =
        (SwLabelSpot){ a.x_mm + dy / size * turn * arc_rows[i] * SIDE_ROW_MM,
                       a.y_mm - dx / size * turn * arc_rows[i] * SIDE_ROW_MM, 0.0 };
  sw_drawing_label (drawing, SW_LABEL_NEEDED, spots, G_N_ELEMENTS (spots), object, words);
}

static void
dimension_side (SwDrawing *drawing, guint i, double turn)
{
  const SwFace *face = drawing->face;
  SwPoint p = face->outline[i], q = face->outline[(i + 1) % face->n_outline];
  SwPaperPoint a = sw_plan_at (drawing, p.x_m, p.y_m);
  SwPaperPoint b = sw_plan_at (drawing, q.x_m, q.y_m);
  double size = hypot (b.x_mm - a.x_mm, b.y_mm - a.y_mm);
  const char *id = sw_drawing_object_id (drawing, "/outline/%u", i);
  g_autofree char *text =
      sw_drawing_length (drawing, hypot (q.x_m - p.x_m, q.y_m - p.y_m));

  if (sw_plan_is_bent (face) && fabs (q.x_m - p.x_m) > 1e-6)
    note_arc (drawing, p, q, turn, id);
  else if (size >= SHORT_SIDE_MM)
    sw_drawing_dimension (
        drawing, size > 20.0 ? SW_LABEL_NEEDED : SW_LABEL_MAIN,
        (SwLabelSpan){ a.x_mm, a.y_mm, b.x_mm, b.y_mm, turn * SIDE_ROW_MM }, id, text);
}

/* Round a heap the outline's two ends are one line on the ground: one dimension is enough. */
static gboolean
is_other_end (const SwDrawing *drawing, SwPoint p, SwPoint q)
{
  const SwFaceLayout *laid = drawing->laid;
  double end_m;

  if (laid == NULL || laid->n_tiers == 0 || !laid->tiers[0].closed)
    return FALSE;
  end_m = laid->tiers[0].along_to_m - SAME_PLACE_M;
  return p.x_m > end_m && q.x_m > end_m;
}

static void
note_laid (SwDrawing *drawing, SwBox box)
{
  for (guint i = 0; i < drawing->laid->n_runs; i++)
    number_run (drawing, i);
  for (guint t = 1; t < drawing->laid->n_tiers; t++)
    name_bench (drawing, box, t);
}

/* Round a small nose the words of its crest have no room between the handles. */
static void
add_handle (SwDrawing *drawing, guint i)
{
  SwPoint corner = drawing->face->outline[i];
  SwPaperPoint at = sw_plan_at (drawing, corner.x_m, corner.y_m);

  sw_drawing_handle (drawing, at, "outline", i);
  if (drawing->draw->on_screen && sw_plan_is_bent (drawing->face))
    sw_labels_reserve_rect (drawing->labels, at.x_mm - HANDLE_MM, at.y_mm - HANDLE_MM,
                            2.0 * HANDLE_MM, 2.0 * HANDLE_MM);
}

void
sw_plan_notes (SwDrawing *drawing)
{
  const SwLie lie = { sw_plan_path, sw_plan_at };
  const SwFace *face = drawing->face;
  SwRing ring = { face->outline, face->n_outline };
  SwBox box = sw_ring_box (ring);
  double turn = sw_ring_signed_area_m2 (ring) > 0.0 ? 1.0 : -1.0;

  sw_note_obstacles (drawing, &lie);
  sw_note_zones (drawing, &lie);
  if (drawing->laid != NULL)
    note_laid (drawing, box);
  if (face->crest < face->toe && face->toe < face->n_section)
    {
      draw_break (drawing, box, face->crest, "drawing.crest-line");
      draw_break (drawing, box, face->toe, "drawing.toe-line");
      for (int i = 1; i <= 3; i += 2)
        draw_fall_arrow (drawing, box.x0_m + (box.x1_m - box.x0_m) * i / 4.0, i == 1);
    }
  for (guint i = 0; i < face->n_outline; i++)
    if (!is_other_end (drawing, face->outline[i],
                       face->outline[(i + 1) % face->n_outline]))
      dimension_side (drawing, i, turn);
  draw_wind (drawing);
  sw_plan_run_on (drawing, sw_plan_paper_box (drawing), WIND_ROW_MM);
  for (guint i = 0; i < face->n_outline; i++)
    add_handle (drawing, i);
}
