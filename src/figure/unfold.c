/* SPDX-License-Identifier: MIT */
#include "face-view.h"
#include <math.h>

/* Parts into which an edge on ruled ground is unfolded. */
#define UNFOLD_STEPS 24

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
laid_flat (const SwFaceLayout *laid, SwPoint plan)
{
  return (SwPoint){ plan.x_m, sw_ground_down_m (laid->ground, plan) };
}

GArray *
sw_unfold (const SwDrawing *drawing, const SwPoint *points, guint count, gboolean closed)
{
  const SwFaceLayout *laid = drawing->laid;
  g_autoptr (GArray) flat = g_array_new (FALSE, FALSE, sizeof (SwPoint));
  GArray *path = g_array_new (FALSE, FALSE, sizeof (SwPaperPoint));

  for (guint i = 0; i < (closed ? count : count - 1); i++)
    {
      SwPoint a = points[i], b = points[(i + 1) % count], at = laid_flat (laid, a);

      g_array_append_val (flat, at);
      if (laid->face->n_further > 0)
        add_steps (laid, a, b, flat);
      else
        add_breaks (laid, a, b, flat);
    }
  {
    SwPoint last = laid_flat (laid, points[closed ? 0 : count - 1]);

    g_array_append_val (flat, last);
  }
  for (guint i = 0; i < flat->len; i++)
    {
      SwPoint at = g_array_index (flat, SwPoint, i);
      SwPaperPoint paper = sw_drawing_at (drawing, at.x_m, at.y_m);

      g_array_append_val (path, paper);
    }
  return path;
}

SwPaperPoint
sw_unfold_at (const SwDrawing *drawing, double along_m, double out_m)
{
  SwPoint at = laid_flat (drawing->laid, (SwPoint){ along_m, out_m });

  return sw_drawing_at (drawing, at.x_m, at.y_m);
}
