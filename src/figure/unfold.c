/* SPDX-License-Identifier: MIT */
#include "face-view.h"
#include <math.h>

/* Parts into which an edge on ruled ground is unfolded. */
#define UNFOLD_STEPS 24

/* An arc is drawn in chords that turn no more than this: on paper they leave an arc of
 * 200 mm radius by 0.02 mm. */
#define CHORD_RAD 0.03

SwPaperPoint
sw_face_view_at (const SwDrawing *drawing, double along_m, double down_m)
{
  SwPoint at = sw_development_lay (drawing->development, (SwPoint){ along_m, down_m });

  return sw_drawing_at (drawing, at.x_m, at.y_m);
}

double
sw_face_view_turn_rad (const SwDrawing *drawing, double along_m)
{
  return sw_development_turn_rad (drawing->development, along_m);
}

SwPaperPoint
sw_face_view_beside (const SwDrawing *drawing, double along_m, double down_m,
                     double across_mm, double down_mm)
{
  SwPaperPoint at = sw_face_view_at (drawing, along_m, down_m);
  double turn = sw_face_view_turn_rad (drawing, along_m);

  at.x_mm += across_mm * cos (turn) + down_mm * sin (turn);
  at.y_mm += down_mm * cos (turn) - across_mm * sin (turn);
  return at;
}

/* From @a up to, but not including, @b. */
static void
add_edge (const SwDrawing *drawing, SwPoint a, SwPoint b, GArray *path)
{
  double turn = fabs (drawing->development.turn_per_m * (b.x_m - a.x_m));
  guint chords = MAX (1, (guint) ceil (turn / CHORD_RAD));

  for (guint k = 0; k < chords; k++)
    {
      double t = (double) k / chords;
      SwPaperPoint at = sw_face_view_at (drawing, a.x_m + (b.x_m - a.x_m) * t,
                                         a.y_m + (b.y_m - a.y_m) * t);

      g_array_append_val (path, at);
    }
}

GArray *
sw_face_view_path (const SwDrawing *drawing, const SwPoint *points, guint count,
                   gboolean closed)
{
  GArray *path = g_array_new (FALSE, FALSE, sizeof (SwPaperPoint));
  guint edges = closed ? count : count - 1;
  SwPoint last = points[edges % count];
  SwPaperPoint end = sw_face_view_at (drawing, last.x_m, last.y_m);

  for (guint i = 0; i < edges; i++)
    add_edge (drawing, points[i], points[(i + 1) % count], path);
  g_array_append_val (path, end);
  return path;
}

/* Points of an edge over the breaks of the one section: between them it unfolds to a
 * straight line. */
static void
add_breaks (const SwFaceLayout *laid, SwPoint a, SwPoint b, GArray *flat)
{
  const SwFace *face = laid->face;
  gboolean outwards = b.y_m > a.y_m;

  for (guint k = 0; k < face->n_section; k++)
    {
      double out = face->section[outwards ? k : face->n_section - 1 - k].x_m;
      SwPoint at;

      if (out <= fmin (a.y_m, b.y_m) || out >= fmax (a.y_m, b.y_m))
        continue;
      at.x_m = a.x_m + (b.x_m - a.x_m) * (out - a.y_m) / (b.y_m - a.y_m);
      at.y_m = sw_ground_down_m (laid->ground, (SwPoint){ at.x_m, out });
      g_array_append_val (flat, at);
    }
}

/* On ruled ground an edge unfolds to a curve. */
static void
add_steps (const SwFaceLayout *laid, SwPoint a, SwPoint b, GArray *flat)
{
  for (guint k = 1; k < UNFOLD_STEPS; k++)
    {
      double t = (double) k / UNFOLD_STEPS;
      SwPoint on = { a.x_m + (b.x_m - a.x_m) * t, a.y_m + (b.y_m - a.y_m) * t };

      on.y_m = sw_ground_down_m (laid->ground, on);
      g_array_append_val (flat, on);
    }
}

static SwPoint
along_down (const SwFaceLayout *laid, SwPoint plan)
{
  return (SwPoint){ plan.x_m, sw_ground_down_m (laid->ground, plan) };
}

GArray *
sw_unfold (const SwDrawing *drawing, const SwPoint *points, guint count, gboolean closed)
{
  const SwFaceLayout *laid = drawing->laid;
  g_autoptr (GArray) flat = g_array_new (FALSE, FALSE, sizeof (SwPoint));
  SwPoint last = along_down (laid, points[closed ? 0 : count - 1]);

  for (guint i = 0; i < (closed ? count : count - 1); i++)
    {
      SwPoint a = points[i], b = points[(i + 1) % count], at = along_down (laid, a);

      g_array_append_val (flat, at);
      if (laid->face->n_further > 0)
        add_steps (laid, a, b, flat);
      else
        add_breaks (laid, a, b, flat);
    }
  g_array_append_val (flat, last);
  return sw_face_view_path (drawing, (SwPoint *) flat->data, flat->len, FALSE);
}

SwPaperPoint
sw_unfold_at (const SwDrawing *drawing, double along_m, double out_m)
{
  SwPoint at = along_down (drawing->laid, (SwPoint){ along_m, out_m });

  return sw_face_view_at (drawing, at.x_m, at.y_m);
}

SwPoint
sw_face_view_from_plan (const SwResult *result, guint face, SwPoint plan)
{
  const SwFaceLayout *laid;

  if (result->layout == NULL)
    return plan;
  laid = &result->layout->faces[face];
  return sw_development_lay (sw_development_of (laid), along_down (laid, plan));
}

SwPoint
sw_face_view_to_plan (const SwResult *result, guint face, SwPoint sheet)
{
  const SwFaceLayout *laid;
  SwPoint at;

  if (result->layout == NULL)
    return sheet;
  laid = &result->layout->faces[face];
  at = sw_development_lift (sw_development_of (laid), sheet);
  return (SwPoint){ at.x_m, sw_ground_out_m (laid->ground, at.x_m, at.y_m) };
}
