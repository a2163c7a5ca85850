/* SPDX-License-Identifier: MIT */
#include "face-view.h"
#include <math.h>

/* One unbroken part of a trench's centre line as a band of its width. */
static void
draw_band (SwDrawing *drawing, guint i, SwRole role, const GArray *line)
{
  double half_m = fmax (drawing->laid->trenches[i].width_m / 2.0,
                        sw_face_view_least_half_band_m (drawing));
  guint n = line->len;
  g_autofree SwPoint *band = g_new (SwPoint, 2 * n);
  g_autoptr (GArray) path = NULL;

  if (n < 2)
    return;
  for (guint k = 0; k < n; k++)
    {
      SwPoint at = g_array_index (line, SwPoint, k);

      band[k] = (SwPoint){ at.x_m, at.y_m - half_m };
      band[2 * n - 1 - k] = (SwPoint){ at.x_m, at.y_m + half_m };
    }
  path = sw_face_view_path (drawing, band, 2 * n, TRUE);
  sw_drawing_object (drawing, "/trench/%u", i);
  sw_figure_area (drawing->figure, role, (SwPaperPoint *) path->data, path->len - 1);
}

static SwPoint
between (SwPlace a, SwPlace b, double t)
{
  return (SwPoint){ a.along_m + t * (b.along_m - a.along_m),
                    a.down_m + t * (b.down_m - a.down_m) };
}

/* The part of a step along the line that lies within the stretch. FALSE: none. */
static gboolean
cut_step (SwPlace a, SwPlace b, double from_m, double to_m, SwPoint ends[2])
{
  double reach_m = b.along_m - a.along_m;
  double first = 0.0, last = 1.0;

  if (fabs (reach_m) < 1e-9)
    {
      if (a.along_m < from_m || a.along_m > to_m)
        return FALSE;
    }
  else
    {
      double low = (from_m - a.along_m) / reach_m, high = (to_m - a.along_m) / reach_m;

      first = fmax (first, fmin (low, high));
      last = fmin (last, fmax (low, high));
      if (first >= last)
        return FALSE;
    }
  ends[0] = between (a, b, first);
  ends[1] = between (a, b, last);
  return TRUE;
}

static gboolean
meets (const GArray *line, SwPoint at)
{
  SwPoint end = g_array_index (line, SwPoint, line->len - 1);

  return hypot (end.x_m - at.x_m, end.y_m - at.y_m) < 1e-6;
}

void
sw_face_view_trench (SwDrawing *drawing, guint i, SwRole role, double from_m, double to_m)
{
  const SwTrench *trench = &drawing->laid->trenches[i];
  g_autoptr (GArray) line = g_array_new (FALSE, FALSE, sizeof (SwPoint));

  if (trench->depth_m <= 0.0)
    return;
  for (guint k = 1; k < trench->n_line; k++)
    {
      SwPoint ends[2];

      if (!cut_step (trench->line[k - 1], trench->line[k], from_m, to_m, ends))
        continue;
      if (line->len > 0 && !meets (line, ends[0]))
        {
          draw_band (drawing, i, role, line);
          g_array_set_size (line, 0);
        }
      g_array_append_vals (line, ends, line->len > 0 ? 1 : 2);
      if (line->len > 2)
        g_array_index (line, SwPoint, line->len - 1) = ends[1];
    }
  draw_band (drawing, i, role, line);
}
