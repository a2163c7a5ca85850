/* SPDX-License-Identifier: MIT */
#include "drawing.h"
#include <math.h>

#define SIDE_ROW_MM 5.5
#define WIND_ROW_MM 10.0
#define ARROW_MM 16.0

/* Runs narrower than this on paper carry no number. */
#define NUMBER_EVERY_MM 4.2

/* A number's middle is this far inside its run's end. */
#define NUMBER_IN_MM 2.4

/* Sides shorter than this on paper carry no dimension. */
#define SHORT_SIDE_MM 6.0

static void
clip_to_outline (SwDrawing *drawing)
{
  const SwFace *face = drawing->face;
  g_autofree SwPaperPoint *ring = g_new (SwPaperPoint, face->n_outline);

  for (guint i = 0; i < face->n_outline; i++)
    ring[i] = sw_drawing_at (drawing, face->outline[i].x_m, face->outline[i].y_m);
  sw_figure_clip (drawing->figure, ring, face->n_outline);
}

static void
draw_outline (SwDrawing *drawing)
{
  const SwFace *face = drawing->face;
  g_autofree SwPaperPoint *ring = g_new (SwPaperPoint, face->n_outline + 1);

  for (guint i = 0; i <= face->n_outline; i++)
    ring[i] = sw_drawing_at (drawing, face->outline[i % face->n_outline].x_m,
                             face->outline[i % face->n_outline].y_m);
  sw_drawing_object (drawing, "/outline");
  sw_figure_line (drawing->figure, SW_ROLE_GROUND, ring, face->n_outline + 1);
}

/* The runs lightly, as strips; numbers at their upper ends where there is room. */
static void
draw_runs (SwDrawing *drawing)
{
  const SwFaceLayout *laid = drawing->laid;

  clip_to_outline (drawing);
  for (guint i = 0; i < laid->n_runs; i++)
    {
      const SwRun *run = &laid->runs[i];
      SwLabelBox rect;

      if (!sw_drawing_rect (drawing,
                            (SwBox){ run->along_from_m, run->out_from_m, run->along_to_m,
                                     run->out_to_m },
                            &rect))
        continue;
      sw_drawing_object (drawing, "/run/%u", i);
      sw_drawing_fill (drawing, SW_ROLE_RUN, rect);
      for (int side = -1; side <= 1; side += 2)
        sw_figure_segment (
            drawing->figure, SW_ROLE_RUN_EDGE, rect.x_mm + side * rect.half_width_mm,
            rect.y_mm - rect.half_height_mm, rect.x_mm + side * rect.half_width_mm,
            rect.y_mm + rect.half_height_mm);
    }
  sw_figure_object (drawing->figure, "");
  sw_figure_unclip (drawing->figure);
}

/* Where a number lies within the outline: near the upper end, else the middle, else the lower end. */
static guint
number_spots (const SwDrawing *drawing, const SwRun *run, SwLabelSpot spots[3])
{
  SwRing ring = { drawing->face->outline, drawing->face->n_outline };
  double x_m = (run->along_from_m + run->along_to_m) / 2.0;
  double in_m = NUMBER_IN_MM / drawing->view->x_mm_per_m;
  double outs_m[] = { run->out_from_m + in_m, (run->out_from_m + run->out_to_m) / 2.0,
                      run->out_to_m - in_m };
  guint n = 0;

  for (guint i = 0; i < G_N_ELEMENTS (outs_m); i++)
    if (sw_ring_contains (ring, (SwPoint){ x_m, outs_m[i] }))
      {
        SwPaperPoint at = sw_drawing_at (drawing, x_m, outs_m[i]);

        spots[n++] = (SwLabelSpot){ at.x_mm, at.y_mm, 0.0 };
      }
  return n;
}

static void
number_runs (SwDrawing *drawing)
{
  const SwFaceLayout *laid = drawing->laid;

  for (guint i = 0; i < laid->n_runs; i++)
    {
      const SwRun *run = &laid->runs[i];
      double width = (run->along_to_m - run->along_from_m) * drawing->view->x_mm_per_m;
      int every = width >= NUMBER_EVERY_MM ? 1 : width * 5.0 >= NUMBER_EVERY_MM ? 5 : 20;
      g_autofree char *label = sw_run_label (run);
      SwLabelSpot spots[3];
      guint n = number_spots (drawing, run, spots);

      if (run->number % every != 0 && !(every > 1 && run->number == 1))
        continue;
      sw_labels_wish (drawing->labels, &(SwLabelWish){ .rank = SW_LABEL_USEFUL,
                                                       .role = SW_ROLE_MUTED,
                                                       .size_mm = drawing->text_mm * 0.92,
                                                       .object = sw_drawing_object_id (
                                                           drawing, "/run/%u", i),
                                                       .text = label,
                                                       .spots = spots,
                                                       .n_spots = n });
    }
}

static void
draw_trenches (SwDrawing *drawing)
{
  static const SwRole roles[] = { [SW_TRENCH_KEY] = SW_ROLE_TRENCH,
                                  [SW_TRENCH_SLOT] = SW_ROLE_SLOT,
                                  [SW_TRENCH_TOE] = SW_ROLE_TRENCH };
  const SwFaceLayout *laid = drawing->laid;

  for (guint i = 0; i < laid->n_trenches; i++)
    {
      const SwTrench *trench = &laid->trenches[i];
      g_autofree SwPaperPoint *line = g_new (SwPaperPoint, trench->n_line);

      if (trench->n_line < 2 || trench->depth_m <= 0.0)
        continue;
      for (guint k = 0; k < trench->n_line; k++)
        line[k] = sw_drawing_at (drawing, trench->line[k].along_m, trench->line[k].out_m);
      sw_drawing_object (drawing, "/trench/%u", i);
      sw_figure_line (drawing->figure, roles[trench->kind], line, trench->n_line);
    }
}

/* A line across the outline at one distance out, named at its right end. */
static void
draw_break (SwDrawing *drawing, SwBox box, guint i, const char *text_id)
{
  const SwPoint *p = &drawing->face->section[i];
  SwPaperPoint a = sw_drawing_at (drawing, box.x0_m, p->x_m);
  SwPaperPoint b = sw_drawing_at (drawing, box.x1_m, p->x_m);
  const char *words = sw_drawing_text (drawing, text_id);
  const char *id = sw_drawing_object_id (drawing, "/section/%u", i);
  double half = drawing->draw->measure->width_mm (SW_FACE_REGULAR, drawing->text_mm,
                                                  words, drawing->draw->measure->data)
                / 2.0;

  sw_drawing_object (drawing, "/section/%u", i);
  sw_figure_segment (drawing->figure, SW_ROLE_BREAK, a.x_mm - 2.0, a.y_mm, b.x_mm + 2.0,
                     b.y_mm);
  sw_drawing_note (drawing, SW_LABEL_NEEDED, SW_ROLE_TEXT,
                   b.x_mm + SIDE_ROW_MM + 2.5 + half, b.y_mm, 0.0, id, words);
}

static void
name_benches (SwDrawing *drawing, SwBox box)
{
  const SwFaceLayout *laid = drawing->laid;

  for (guint t = 1; t < laid->n_tiers; t++)
    {
      double from_m = laid->tiers[t - 1].reach.out_to_m;
      double to_m = laid->tiers[t].reach.out_from_m;
      SwPaperPoint a = sw_drawing_at (drawing, box.x0_m, from_m);
      SwPaperPoint b = sw_drawing_at (drawing, box.x1_m, to_m);
      g_autofree char *width = sw_drawing_length (drawing, to_m - from_m);
      g_autofree char *words =
          sw_texts_fill (drawing->draw->texts, "drawing.bench", "width", width, NULL);

      sw_drawing_object (drawing, "/tier/%u", t);
      sw_figure_segment (drawing->figure, SW_ROLE_BREAK, a.x_mm, a.y_mm, b.x_mm, a.y_mm);
      sw_figure_segment (drawing->figure, SW_ROLE_BREAK, a.x_mm, b.y_mm, b.x_mm, b.y_mm);
      sw_drawing_note (drawing, SW_LABEL_MAIN, SW_ROLE_TEXT, (a.x_mm + b.x_mm) / 2.0,
                       (a.y_mm + b.y_mm) / 2.0, 0.0,
                       sw_drawing_object_id (drawing, "/tier/%u", t), words);
    }
}

/* One arrow down the longest stretch that the outline has at @along_m. */
static void
draw_fall_arrow (SwDrawing *drawing, double along_m, gboolean named)
{
  g_autoptr (GArray) spans = g_array_new (FALSE, FALSE, sizeof (SwSpan));
  SwSpan longest = { 0.0, 0.0 };
  SwPaperPoint a, b;

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
  a = sw_drawing_at (drawing, along_m,
                     longest.from_m + (longest.to_m - longest.from_m) * 0.2);
  b = sw_drawing_at (drawing, along_m,
                     longest.from_m + (longest.to_m - longest.from_m) * 0.7);
  if (b.y_mm - a.y_mm < 5.0)
    return;
  b.y_mm = fmin (b.y_mm, a.y_mm + 30.0);
  sw_drawing_object (drawing, "/fall-line");
  sw_draft_arrow (drawing->figure, SW_ROLE_FALL_LINE, a.x_mm, a.y_mm, b.x_mm, b.y_mm,
                  3.0);
  sw_labels_reserve_rect (drawing->labels, a.x_mm - 1.0, a.y_mm, 2.0, b.y_mm - a.y_mm);
  if (named)
    sw_drawing_note (drawing, SW_LABEL_MAIN, SW_ROLE_TEXT, a.x_mm + 3.0,
                     (a.y_mm + b.y_mm) / 2.0, G_PI_2,
                     sw_drawing_object_id (drawing, "/fall-line"),
                     sw_drawing_text (drawing, "drawing.fall-line"));
}

/* The wind blows towards the leeward end, where the first run lies. */
static void
draw_wind (SwDrawing *drawing, SwBox box)
{
  gboolean left = drawing->face->leeward == SW_SIDE_LEFT;
  SwPaperPoint a = sw_drawing_at (drawing, box.x0_m, box.y0_m);
  SwPaperPoint b = sw_drawing_at (drawing, box.x1_m, box.y0_m);
  double y = a.y_mm - WIND_ROW_MM, length = fmin (ARROW_MM, (b.x_mm - a.x_mm) * 0.4);
  double from = left ? b.x_mm : a.x_mm, sign = left ? -1.0 : 1.0;
  const char *words = sw_drawing_text (drawing, "drawing.wind");
  double half = drawing->draw->measure->width_mm (SW_FACE_REGULAR, drawing->text_mm,
                                                  words, drawing->draw->measure->data)
                / 2.0;

  sw_drawing_object (drawing, "/wind");
  sw_draft_arrow (drawing->figure, SW_ROLE_WIND, from, y, from + sign * length, y, 3.0);
  sw_labels_reserve_rect (drawing->labels, fmin (from, from + sign * length), y - 1.2,
                          length, 2.4);
  sw_drawing_note (drawing, SW_LABEL_NEEDED, SW_ROLE_TEXT,
                   from + sign * (length + 2.0 + half), y, 0.0,
                   sw_drawing_object_id (drawing, "/wind"), words);
}

static void
dimension_sides (SwDrawing *drawing)
{
  const SwFace *face = drawing->face;
  double turn = sw_ring_signed_area_m2 ((SwRing){ face->outline, face->n_outline }) > 0.0
                    ? 1.0
                    : -1.0;

  for (guint i = 0; i < face->n_outline; i++)
    {
      SwPoint p = face->outline[i], q = face->outline[(i + 1) % face->n_outline];
      SwPaperPoint a = sw_drawing_at (drawing, p.x_m, p.y_m);
      SwPaperPoint b = sw_drawing_at (drawing, q.x_m, q.y_m);
      double size = hypot (b.x_mm - a.x_mm, b.y_mm - a.y_mm);
      g_autofree char *text =
          sw_drawing_length (drawing, hypot (q.x_m - p.x_m, q.y_m - p.y_m));

      if (size < SHORT_SIDE_MM)
        continue;
      sw_drawing_dimension (
          drawing, size > 20.0 ? SW_LABEL_NEEDED : SW_LABEL_MAIN,
          (SwLabelSpan){ a.x_mm, a.y_mm, b.x_mm, b.y_mm, turn * SIDE_ROW_MM },
          sw_drawing_object_id (drawing, "/outline/%u", i), text);
    }
}

static void
add_key (GArray *key, const SwDraw *draw, SwRole role, int sample, const char *id)
{
  sw_key_add (key, role, sample, g_strdup (sw_texts_get (draw->texts, id)));
}

GArray *
sw_plan_key (const SwResult *result, guint face, const SwDraw *draw)
{
  GArray *key = sw_key_new ();

  add_key (key, draw, SW_ROLE_GROUND, SW_KEY_LINE, "drawing.key.outline");
  add_key (key, draw, SW_ROLE_BREAK, SW_KEY_LINE, "drawing.key.break");
  if (result->layout != NULL)
    {
      const SwFaceLayout *laid = &result->layout->faces[face];

      add_key (key, draw, SW_ROLE_RUN, SW_KEY_BOX, "drawing.key.run");
      add_key (key, draw, SW_ROLE_TRENCH, SW_KEY_LINE, "drawing.key.trench");
      if (laid->n_tiers > 0 && laid->tiers[0].slots > 0)
        add_key (key, draw, SW_ROLE_SLOT, SW_KEY_LINE, "drawing.key.slot");
    }
  add_key (key, draw, SW_ROLE_TEXT, SW_KEY_NONE, "drawing.seen-from-above");
  return key;
}

static void
draw_handles (SwDrawing *drawing)
{
  const SwFace *face = drawing->face;

  for (guint i = 0; i < face->n_outline; i++)
    sw_drawing_handle (
        drawing, sw_drawing_at (drawing, face->outline[i].x_m, face->outline[i].y_m),
        "outline", i);
}

SwFigure *
sw_draw_plan (const SwResult *result, guint face_index, const SwView *view,
              const SwDraw *draw)
{
  SwDrawing drawing;
  const SwFace *face = sw_result_face (result, face_index);
  g_autoptr (GArray) key = sw_plan_key (result, face_index, draw);
  gboolean has_section = face->crest < face->toe && face->toe < face->n_section;

  sw_drawing_begin (&drawing, result, face_index, view, draw, "drawing.plan-title");
  sw_drawing_caption (&drawing, drawing.figure->title);
  sw_drawing_foot (&drawing, key);
  if (face->n_outline >= 3)
    {
      SwBox box = sw_ring_box ((SwRing){ face->outline, face->n_outline });

      if (drawing.laid != NULL)
        {
          draw_runs (&drawing);
          draw_trenches (&drawing);
          number_runs (&drawing);
          name_benches (&drawing, box);
        }
      draw_outline (&drawing);
      if (has_section)
        {
          draw_break (&drawing, box, face->crest, "drawing.crest-line");
          draw_break (&drawing, box, face->toe, "drawing.toe-line");
          for (int i = 1; i <= 3; i += 2)
            draw_fall_arrow (&drawing, box.x0_m + (box.x1_m - box.x0_m) * i / 4.0,
                             i == 1);
        }
      dimension_sides (&drawing);
      draw_wind (&drawing, sw_plan_box (result, face_index));
      draw_handles (&drawing);
    }
  return sw_drawing_end (&drawing);
}
