/* SPDX-License-Identifier: MIT */
#include "plan-shape.h"
#include <math.h>

static void
clip_to_outline (SwDrawing *drawing)
{
  const SwFace *face = drawing->face;
  g_autoptr (GArray) ring = sw_plan_path (drawing, face->outline, face->n_outline, TRUE);

  sw_figure_clip (drawing->figure, (SwPaperPoint *) ring->data, ring->len);
}

static void
draw_outline (SwDrawing *drawing)
{
  const SwFace *face = drawing->face;
  g_autoptr (GArray) ring = sw_plan_path (drawing, face->outline, face->n_outline, TRUE);

  sw_drawing_object (drawing, "/outline");
  sw_drawing_line (drawing, SW_ROLE_GROUND, ring);
}

/* One run lightly: its strip between the arcs, and its two straight edges. */
static void
draw_run (SwDrawing *drawing, guint i)
{
  const SwRun *run = &drawing->laid->runs[i];
  double wide_top = sw_ground_stretch (drawing->laid->ground, run->out_from_m);
  double wide_end = sw_ground_stretch (drawing->laid->ground, run->out_to_m);
  SwPoint top[2] = { { sw_run_edge_m (drawing, run, -1, wide_top), run->out_from_m },
                     { sw_run_edge_m (drawing, run, 1, wide_top), run->out_from_m } };
  SwPoint bottom[2] = { { sw_run_edge_m (drawing, run, 1, wide_end), run->out_to_m },
                        { sw_run_edge_m (drawing, run, -1, wide_end), run->out_to_m } };
  g_autoptr (GArray) strip = sw_plan_path (drawing, top, 2, FALSE);
  g_autoptr (GArray) lower = sw_plan_path (drawing, bottom, 2, FALSE);
  guint upper = strip->len;
  const SwPaperPoint *p;

  g_array_append_vals (strip, lower->data, lower->len);
  p = (const SwPaperPoint *) strip->data;
  sw_drawing_object (drawing, "/run/%u", i);
  sw_figure_area (drawing->figure, SW_ROLE_RUN, p, strip->len);
  sw_figure_segment (drawing->figure, SW_ROLE_RUN_EDGE, p[0].x_mm, p[0].y_mm,
                     p[strip->len - 1].x_mm, p[strip->len - 1].y_mm);
  sw_figure_segment (drawing->figure, SW_ROLE_RUN_EDGE, p[upper - 1].x_mm,
                     p[upper - 1].y_mm, p[upper].x_mm, p[upper].y_mm);
}

static void
draw_runs (SwDrawing *drawing)
{
  clip_to_outline (drawing);
  for (guint i = 0; i < drawing->laid->n_runs; i++)
    draw_run (drawing, i);
  sw_figure_object (drawing->figure, "");
  sw_figure_unclip (drawing->figure);
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
      g_autofree SwPoint *line = g_new (SwPoint, trench->n_line);
      g_autoptr (GArray) path = NULL;

      if (trench->n_line < 2 || trench->depth_m <= 0.0)
        continue;
      for (guint k = 0; k < trench->n_line; k++)
        line[k] = (SwPoint){ trench->line[k].along_m, trench->line[k].out_m };
      path = sw_plan_path (drawing, line, trench->n_line, FALSE);
      sw_drawing_object (drawing, "/trench/%u", i);
      sw_figure_line (drawing->figure, roles[trench->kind], (SwPaperPoint *) path->data,
                      path->len);
    }
}

static void
add_key (GArray *key, const SwDraw *draw, SwRole role, int sample, const char *id)
{
  sw_key_add (key, role, sample, g_strdup (sw_texts_get (draw->texts, id)));
}

GArray *
sw_plan_key (const SwResult *result, guint face_index, const SwDraw *draw)
{
  GArray *key = sw_key_new ();
  const SwFace *face = sw_result_face (result, face_index);

  add_key (key, draw, SW_ROLE_GROUND, SW_KEY_LINE, "drawing.key.outline");
  add_key (key, draw, SW_ROLE_BREAK, SW_KEY_LINE, "drawing.key.break");
  if (result->layout != NULL)
    {
      const SwFaceLayout *laid = &result->layout->faces[face_index];

      add_key (key, draw, SW_ROLE_RUN, SW_KEY_BOX, "drawing.key.run");
      add_key (key, draw, SW_ROLE_TRENCH, SW_KEY_LINE, "drawing.key.trench");
      if (laid->n_tiers > 0 && laid->tiers[0].slots > 0)
        add_key (key, draw, SW_ROLE_SLOT, SW_KEY_LINE, "drawing.key.slot");
    }
  sw_key_add_site (key, result, face_index, draw);
  add_key (key, draw, SW_ROLE_TEXT, SW_KEY_NONE,
           !sw_plan_is_bent (face)             ? "drawing.seen-from-above"
           : face->crest_form == SW_CREST_NOSE ? "drawing.seen-from-above-nose"
                                               : "drawing.seen-from-above-bowl");
  if (sw_plan_is_bent (face))
    add_key (key, draw, SW_ROLE_TEXT, SW_KEY_NONE, "drawing.arc-lengths");
  return key;
}

SwFigure *
sw_draw_plan (const SwResult *result, guint face_index, const SwView *view,
              const SwDraw *draw)
{
  const SwLie lie = { sw_plan_path, sw_plan_at };
  SwDrawing drawing;
  const SwFace *face = sw_result_face (result, face_index);
  g_autoptr (GArray) key = sw_plan_key (result, face_index, draw);

  sw_drawing_begin (&drawing, result, face_index, view, draw, "drawing.plan-title");
  sw_drawing_caption (&drawing, drawing.figure->title);
  sw_drawing_foot (&drawing, key);
  if (face->n_outline >= 3)
    {
      if (drawing.laid != NULL)
        {
          draw_runs (&drawing);
          draw_trenches (&drawing);
        }
      sw_draw_zones (&drawing, &lie);
      sw_draw_obstacles (&drawing, &lie);
      draw_outline (&drawing);
      sw_plan_notes (&drawing);
    }
  return sw_drawing_end (&drawing);
}
