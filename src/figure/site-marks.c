/* SPDX-License-Identifier: MIT */
#include "site-marks.h"
#include <math.h>

/* A corner of a patch reaches no further than so many times its overlap. */
#define LONGEST_MITRE 2.0

/* Points nearer than this are one. */
#define LEAST_EDGE_M 1e-6

GArray *
sw_collar_outline (const SwFaceLayout *laid, const SwObstacle *obstacle, double overlap_m)
{
  guint n = obstacle->n_outline;
  const SwPoint *p = obstacle->outline;
  double side = sw_ring_signed_area_m2 ((SwRing){ p, n }) > 0.0 ? 1.0 : -1.0;
  GArray *grown = g_array_sized_new (FALSE, FALSE, sizeof (SwPoint), n);

  for (guint i = 0; i < n; i++)
    {
      SwPoint a = p[(i + n - 1) % n], b = p[i], c = p[(i + 1) % n];
      double in = fmax (hypot (b.x_m - a.x_m, b.y_m - a.y_m), LEAST_EDGE_M);
      double out = fmax (hypot (c.x_m - b.x_m, c.y_m - b.y_m), LEAST_EDGE_M);
      double x = (b.y_m - a.y_m) / in + (c.y_m - b.y_m) / out;
      double y = -(b.x_m - a.x_m) / in - (c.x_m - b.x_m) / out;
      /* Two unit normals; their sum is longest on a straight line. */
      double mitre = 2.0 / fmax (x * x + y * y, 4.0 / (LONGEST_MITRE * LONGEST_MITRE));
      double by_m = side * overlap_m * mitre;
      double stretch = sw_ground_stretch (laid->ground, b.y_m);
      SwPoint at = { b.x_m + by_m * x / fmax (stretch, 1e-6), b.y_m + by_m * y };

      g_array_append_val (grown, at);
    }
  return grown;
}

static void
clip_to_face (SwDrawing *drawing, const SwLie *lie)
{
  const SwFace *face = drawing->face;
  g_autoptr (GArray) ring = lie->path (drawing, face->outline, face->n_outline, TRUE);

  sw_figure_clip (drawing->figure, (SwPaperPoint *) ring->data, ring->len);
}

/* Keep of a step from @from over @reach what lies between two bounds; FALSE: nothing. */
static gboolean
keep (double from, double reach, double low, double high, double *first, double *last)
{
  double a = (low - from) / reach, b = (high - from) / reach;

  if (fabs (reach) < 1e-12)
    return from >= low && from <= high;
  *first = fmax (*first, fmin (a, b));
  *last = fmin (*last, fmax (a, b));
  return *first < *last;
}

/* An edge as far as it lies in the box. */
static gboolean
cut_to_box (SwBox box, SwPoint *a, SwPoint *b)
{
  double dx = b->x_m - a->x_m, dy = b->y_m - a->y_m, first = 0.0, last = 1.0;

  if (!keep (a->x_m, dx, box.x0_m, box.x1_m, &first, &last)
      || !keep (a->y_m, dy, box.y0_m, box.y1_m, &first, &last))
    return FALSE;
  *b = (SwPoint){ a->x_m + dx * last, a->y_m + dy * last };
  *a = (SwPoint){ a->x_m + dx * first, a->y_m + dy * first };
  return TRUE;
}

static void
draw_zone (SwDrawing *drawing, const SwLie *lie, const SwZone *zone, SwBox box)
{
  sw_drawing_object (drawing, "/zone/%s", zone->id);
  for (guint i = 0; i < zone->n_outline; i++)
    {
      SwPoint edge[2] = { zone->outline[i], zone->outline[(i + 1) % zone->n_outline] };
      g_autoptr (GArray) line = NULL;

      if (!cut_to_box (box, &edge[0], &edge[1]))
        continue;
      line = lie->path (drawing, edge, 2, FALSE);
      sw_figure_line (drawing->figure, SW_ROLE_ZONE, (SwPaperPoint *) line->data,
                      line->len);
    }
}

void
sw_draw_zones (SwDrawing *drawing, const SwLie *lie)
{
  const SwFace *face = drawing->face;
  SwBox box = sw_ring_box ((SwRing){ face->outline, face->n_outline });

  if (face->zones->len == 0)
    return;
  clip_to_face (drawing, lie);
  for (guint i = 0; i < face->zones->len; i++)
    draw_zone (drawing, lie, face->zones->pdata[i], box);
  sw_figure_object (drawing->figure, "");
  sw_figure_unclip (drawing->figure);
}

static gboolean
has_collar (const SwDrawing *drawing, guint i)
{
  return drawing->laid != NULL
         && (drawing->sequence == NULL
             || sw_drawing_is_done (
                 drawing, drawing->sequence->faces[drawing->face_index].collars[i]));
}

static void
draw_obstacle (SwDrawing *drawing, const SwLie *lie, guint i)
{
  const SwObstacle *obstacle = drawing->face->obstacles->pdata[i];
  g_autoptr (GArray) ring =
      lie->path (drawing, obstacle->outline, obstacle->n_outline, TRUE);

  sw_drawing_object (drawing, "/obstacle/%s", obstacle->id);
  if (has_collar (drawing, i))
    {
      g_autoptr (GArray) collar = sw_collar_outline (
          drawing->laid, obstacle, sw_drawing_practice (drawing, SW_PRACTICE_COLLAR_M));
      g_autoptr (GArray) patch =
          lie->path (drawing, (SwPoint *) collar->data, collar->len, TRUE);

      sw_figure_area (drawing->figure, SW_ROLE_COLLAR, (SwPaperPoint *) patch->data,
                      patch->len - 1);
    }
  sw_figure_area (drawing->figure, SW_ROLE_OBSTACLE, (SwPaperPoint *) ring->data,
                  ring->len - 1);
}

void
sw_draw_obstacles (SwDrawing *drawing, const SwLie *lie)
{
  const GPtrArray *obstacles = drawing->face->obstacles;

  if (obstacles->len == 0)
    return;
  clip_to_face (drawing, lie);
  for (guint i = 0; i < obstacles->len; i++)
    {
      const SwObstacle *obstacle = obstacles->pdata[i];

      if (obstacle->n_outline >= 3)
        draw_obstacle (drawing, lie, i);
    }
  sw_figure_object (drawing->figure, "");
  sw_figure_unclip (drawing->figure);
}
