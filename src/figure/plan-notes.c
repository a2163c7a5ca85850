/* SPDX-License-Identifier: MIT */
#include "plan-shape.h"
#include "run-on.h"
#include <math.h>

#define SIDE_ROW_MM 5.5
#define WIND_ROW_MM 11.0
#define ARROW_MM 16.0

/* Runs narrower than this on paper carry no number. */
#define NUMBER_EVERY_MM 4.2

/* Height of a number over the usual text. */
#define NUMBER_RATIO 0.92

/* A number's middle is this far inside its run's end. */
#define NUMBER_IN_MM 2.4

/* Between a number and the edge of the face. */
#define NUMBER_AIR_MM 0.9

/* Where a break's name may stand beyond its end; further off it has a leader. */
#define BREAK_SPOTS 4

/* Beside the face and on the sheet, for what has no room in it. */
#define SHEET_AIR_MM 0.6
#define ABREAST_MM 4.0
#define ABREAST_ROWS 9
#define ABREAST_ROW_MM 6.0

/* Points nearer than this are one. */
#define SAME_PLACE_M 1e-6

/* The cut of a small heap has no room beside it for its length. */
#define SMALL_HEAP_MM 16.0

/* Sides shorter than this on paper carry no dimension. */
#define SHORT_SIDE_MM 6.0

/* In the middle of its run, or off the edge of the face where the run is narrower. */
static double
number_along_m (const SwDrawing *drawing, const SwRun *run, double half_mm)
{
  const SwTier *tier = &drawing->laid->tiers[run->tier];
  double middle_m = (run->along_from_m + run->along_to_m) / 2.0;
  double needed_m = (half_mm + NUMBER_AIR_MM) / drawing->view->x_mm_per_m;

  if (sw_plan_is_bent (drawing->face)
      || tier->along_from_m + needed_m > tier->along_to_m - needed_m)
    return middle_m;
  return CLAMP (middle_m, tier->along_from_m + needed_m, tier->along_to_m - needed_m);
}

/* Where a number lies within the outline: near the upper end of its run, or the lower one
 * where that is the wider, else the middle, else the other end. */
static guint
number_spots (const SwDrawing *drawing, const SwRun *run, double half_mm,
              SwLabelSpot spots[3])
{
  SwRing ring = { drawing->face->outline, drawing->face->n_outline };
  double x_m = number_along_m (drawing, run, half_mm);
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
  double size_mm = drawing->text_mm * NUMBER_RATIO;
  double half_mm = sw_drawing_width_mm (drawing, label, size_mm) / 2.0;
  SwLabelSpot spots[3];

  if (run->number % every != 0 && !(every > 1 && run->number == 1))
    return;
  sw_labels_wish (drawing->labels, &(SwLabelWish){ .rank = SW_LABEL_USEFUL,
                                                   .role = SW_ROLE_MUTED,
                                                   .style = SW_LABEL_OFF_LINES,
                                                   .size_mm = size_mm,
                                                   .object = id,
                                                   .text = label,
                                                   .spots = spots,
                                                   .n_spots = number_spots (
                                                       drawing, run, half_mm, spots) });
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

/* Right and left of the face as far as the sheet goes, in rows from the place upwards and
 * downwards. */
static void
spots_abreast (const SwDrawing *drawing, double y_mm, double half_mm,
               SwLabelSpot spots[2 * ABREAST_ROWS])
{
  SwBox paper = sw_plan_paper_box (drawing);
  double least_mm = half_mm + SHEET_AIR_MM;
  double most_mm = drawing->view->width_mm - least_mm;

  for (int row = 0; row < ABREAST_ROWS; row++)
    for (int side = 0; side < 2; side++)
      spots[2 * row + side] =
          (SwLabelSpot){ side == 0 ? fmin (paper.x1_m + ABREAST_MM + half_mm, most_mm)
                                   : fmax (paper.x0_m - ABREAST_MM - half_mm, least_mm),
                         y_mm + (row % 2 == 0 ? 1 : -1) * (row + 1) / 2 * ABREAST_ROW_MM,
                         0.0 };
}

/* A break by name at its right end, beyond the dimension there; else beside the face. */
static void
draw_break (SwDrawing *drawing, SwBox box, guint i, const char *text_id)
{
  g_autoptr (GArray) path = break_path (drawing, box, i);
  SwPaperPoint end = g_array_index (path, SwPaperPoint, path->len - 1);
  const char *words = sw_drawing_text (drawing, text_id);
  double half = sw_drawing_width_mm (drawing, words, drawing->text_mm) / 2.0;
  double right = end.x_mm + SIDE_ROW_MM + 2.5 + half;
  SwLabelSpot spots[BREAK_SPOTS + 2 * ABREAST_ROWS] = { { right, end.y_mm, 0.0 },
                                                        { right + 3.5, end.y_mm, 0.0 },
                                                        { right, end.y_mm - 3.0, 0.0 },
                                                        { right, end.y_mm + 3.0, 0.0 } };

  spots_abreast (drawing, end.y_mm, half, spots + BREAK_SPOTS);
  sw_drawing_object (drawing, "/section/%u", i);
  sw_drawing_line (drawing, SW_ROLE_BREAK, path);
  sw_drawing_name (drawing, SW_LABEL_NEEDED, end, spots, G_N_ELEMENTS (spots),
                   BREAK_SPOTS, sw_drawing_object_id (drawing, "/section/%u", i), words);
}

static void
name_bench (SwDrawing *drawing, SwBox box, guint t)
{
  const SwFaceLayout *laid = drawing->laid;
  double middle_m = (box.x0_m + box.x1_m) / 2.0;
  double outs_m[2] = { laid->tiers[t - 1].reach.out_to_m,
                       laid->tiers[t].reach.out_from_m };
  SwPaperPoint at = sw_plan_at (drawing, middle_m, (outs_m[0] + outs_m[1]) / 2.0);
  SwPaperPoint end = sw_plan_at (drawing, box.x1_m, (outs_m[0] + outs_m[1]) / 2.0);
  SwLabelSpot spots[1 + 2 * ABREAST_ROWS];
  double half;
  g_autofree char *width = sw_drawing_length (drawing, outs_m[1] - outs_m[0]);
  g_autofree char *words =
      sw_texts_fill (drawing->draw->texts, "drawing.bench", "width", width, NULL);

  sw_drawing_object (drawing, "/tier/%u", t);
  for (guint side = 0; side < 2; side++)
    {
      SwPoint line[2] = { { box.x0_m, outs_m[side] }, { box.x1_m, outs_m[side] } };
      g_autoptr (GArray) path = sw_plan_path (drawing, line, 2, FALSE);

      sw_drawing_line (drawing, SW_ROLE_BREAK, path);
    }
  half = sw_drawing_width_mm (drawing, words, drawing->text_mm) / 2.0;
  spots[0] = (SwLabelSpot){ at.x_mm, at.y_mm, 0.0 };
  spots_abreast (drawing, end.y_mm, half, spots + 1);
  sw_drawing_name_off_lines (drawing, SW_LABEL_MAIN, end, spots, G_N_ELEMENTS (spots), 1,
                             sw_drawing_object_id (drawing, "/tier/%u", t), words);
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
#define ARC_ROWS G_N_ELEMENTS (arc_rows)

/* Arc length of a bent side at its middle. */
static void
note_arc (SwDrawing *drawing, SwPoint p, SwPoint q, double turn, const char *object)
{
  double middle_m = (p.x_m + q.x_m) / 2.0, out_m = (p.y_m + q.y_m) / 2.0;
  SwPaperPoint a = sw_plan_at (drawing, middle_m - (q.x_m - p.x_m) * 0.01, out_m);
  SwPaperPoint b = sw_plan_at (drawing, middle_m + (q.x_m - p.x_m) * 0.01, out_m);
  SwLabelSpot spots[ARC_ROWS + 2 * ABREAST_ROWS];
  double dx = b.x_mm - a.x_mm, dy = b.y_mm - a.y_mm, size = hypot (dx, dy);
  double stretch =
      drawing->laid != NULL ? sw_ground_stretch (drawing->laid->ground, out_m) : 1.0;
  g_autofree char *length =
      sw_drawing_length (drawing, hypot ((q.x_m - p.x_m) * stretch, q.y_m - p.y_m));
  g_autofree char *words =
      sw_texts_fill (drawing->draw->texts, "drawing.arc", "length", length, NULL);

  for (guint i = 0; i < ARC_ROWS; i++)
    spots[i] =
        (SwLabelSpot){ a.x_mm + dy / size * turn * arc_rows[i] * SIDE_ROW_MM,
                       a.y_mm - dx / size * turn * arc_rows[i] * SIDE_ROW_MM, 0.0 };
  spots_abreast (drawing, a.y_mm,
                 sw_drawing_width_mm (drawing, words, drawing->text_mm) / 2.0,
                 spots + ARC_ROWS);
  sw_drawing_name (drawing, SW_LABEL_NEEDED, a, spots, G_N_ELEMENTS (spots), ARC_ROWS,
                   object, words);
}

/* How far a side's dimension stands off it: from the cut of a small heap past the heap. */
static double
side_row_mm (const SwDrawing *drawing, SwPaperPoint at, double size_mm)
{
  const SwFaceLayout *laid = drawing->laid;

  if (laid == NULL || laid->n_tiers == 0 || !laid->tiers[0].closed
      || size_mm > SMALL_HEAP_MM)
    return SIDE_ROW_MM;
  return sw_plan_paper_box (drawing).x1_m - at.x_mm + SIDE_ROW_MM;
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
    sw_drawing_dimension (drawing, size > 20.0 ? SW_LABEL_NEEDED : SW_LABEL_MAIN,
                          (SwLabelSpan){ a.x_mm, a.y_mm, b.x_mm, b.y_mm,
                                         turn * side_row_mm (drawing, a, size) },
                          id, text);
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

/* By what a whole obstacle or zone is moved, the canvas draws there itself. */
static void
spare_grip (SwDrawing *drawing, const SwPoint *outline, guint n_outline)
{
  SwBox box;

  if (n_outline == 0 || !drawing->draw->on_screen)
    return;
  box = sw_ring_box ((SwRing){ outline, n_outline });
  sw_drawing_spare (drawing, sw_plan_at (drawing, (box.x0_m + box.x1_m) / 2.0,
                                         (box.y0_m + box.y1_m) / 2.0));
}

static void
add_handles (SwDrawing *drawing)
{
  const SwFace *face = drawing->face;

  for (guint i = 0; i < face->n_outline; i++)
    sw_drawing_handle (drawing,
                       sw_plan_at (drawing, face->outline[i].x_m, face->outline[i].y_m),
                       "outline", i);
  for (guint i = 0; i < face->obstacles->len; i++)
    {
      const SwObstacle *obstacle = face->obstacles->pdata[i];

      spare_grip (drawing, obstacle->outline, obstacle->n_outline);
    }
  for (guint i = 0; i < face->zones->len; i++)
    {
      const SwZone *zone = face->zones->pdata[i];

      spare_grip (drawing, zone->outline, zone->n_outline);
    }
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
        sw_plan_fall_line (drawing, box.x0_m + (box.x1_m - box.x0_m) * i / 4.0, i == 1);
    }
  for (guint i = 0; i < face->n_outline; i++)
    if (!is_other_end (drawing, face->outline[i],
                       face->outline[(i + 1) % face->n_outline]))
      dimension_side (drawing, i, turn);
  draw_wind (drawing);
  sw_plan_run_on (drawing, sw_plan_paper_box (drawing), WIND_ROW_MM);
  add_handles (drawing);
}
