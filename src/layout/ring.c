/* SPDX-License-Identifier: MIT */
#include "ring.h"
#include <math.h>
#include <slopewright/base/count.h>

struct SwRingRows
{
  SwRegion *near;      /* obstacles and what is too near to them */
  GArray *boxes;       /* (element-type SwBox) of the rings of @near */
  GPtrArray *trenches; /* (element-type SwRegion): strips along trenches at obstacles */
  GArray *pins;        /* (element-type SwRingPin), by along */
};

static void
add_side (const SwTrench *trench, double by_m, GArray *ring)
{
  const SwPlace *line = trench->line;

  for (guint i = 0; i < trench->n_line + 2; i++)
    {
      guint index = CLAMP (i, 1, trench->n_line) - 1;
      SwPoint p = { line[index].along_m, line[index].out_m + by_m };

      if (i == 0)
        p.x_m -= SW_OBSTACLE_CLEAR_M;
      if (i > trench->n_line)
        p.x_m += SW_OBSTACLE_CLEAR_M;
      g_array_append_val (ring, p);
    }
}

/* A trench at an obstacle with pins of its own: a strip of ground on both sides of it and
 * past its ends. */
static SwRegion *
trench_strip (const SwTrench *trench)
{
  double half_m = trench->width_m / 2.0 + SW_OBSTACLE_CLEAR_M;
  g_autoptr (GArray) ring = g_array_new (FALSE, FALSE, sizeof (SwPoint));
  g_autoptr (GArray) other = g_array_new (FALSE, FALSE, sizeof (SwPoint));
  SwRegion *strip = NULL;

  add_side (trench, -half_m, ring);
  add_side (trench, half_m, other);
  for (guint i = other->len; i > 0; i--)
    g_array_append_val (ring, g_array_index (other, SwPoint, i - 1));
  if (sw_region_new ((const SwPoint *) ring->data, ring->len, &strip) != SW_OK)
    return NULL;
  return strip;
}

static void
add_trenches (SwRingRows *rows, const SwFaceLayout *laid)
{
  for (guint i = 0; i < laid->n_trenches; i++)
    {
      SwRegion *strip =
          laid->trenches[i].obstacle ? trench_strip (&laid->trenches[i]) : NULL;

      if (strip != NULL)
        g_ptr_array_add (rows->trenches, strip);
    }
}

static SwPoint
between (SwPoint a, SwPoint b, double t)
{
  return (SwPoint){ a.x_m + t * (b.x_m - a.x_m), a.y_m + t * (b.y_m - a.y_m) };
}

static double
line_length_m (const SwGround *ground, const GArray *line)
{
  double length_m = 0.0;

  for (guint i = 1; i < line->len; i++)
    length_m += sw_ground_length_m (ground, g_array_index (line, SwPoint, i - 1),
                                    g_array_index (line, SwPoint, i));
  return length_m;
}

static gboolean
is_closed (const GArray *line)
{
  SwPoint a = g_array_index (line, SwPoint, 0);
  SwPoint b = g_array_index (line, SwPoint, line->len - 1);

  return sw_ticks (hypot (a.x_m - b.x_m, a.y_m - b.y_m)) == 0;
}

/* Whether @p comes before @q: higher up, or as high and nearer to the leeward end. */
static gboolean
comes_first (SwSide leeward, SwPoint p, SwPoint q)
{
  gint64 along = sw_ticks (leeward == SW_SIDE_LEFT ? p.x_m - q.x_m : q.x_m - p.x_m);
  gint64 out = sw_ticks (p.y_m - q.y_m);

  return out < 0 || (out == 0 && along < 0);
}

/* A closed line from its top, first away from the leeward end, so that the mirrored face
 * is pinned as its mirror. (transfer full) */
static GArray *
turned (const GArray *line, SwSide leeward)
{
  guint count = line->len - 1, top = 0;
  const SwPoint *p = (const SwPoint *) line->data;
  GArray *made = g_array_sized_new (FALSE, FALSE, sizeof (SwPoint), line->len);
  double area_m2 = sw_ring_signed_area_m2 ((SwRing){ p, count });
  gboolean forwards = (area_m2 > 0.0) == (leeward == SW_SIDE_LEFT);

  for (guint i = 1; i < count; i++)
    if (comes_first (leeward, p[i], p[top]))
      top = i;
  for (guint i = 0; i <= count; i++)
    g_array_append_val (made, p[(forwards ? top + i : top + count - i) % count]);
  return made;
}

/* Evenly from end to end, or round and round, no further apart than the practice's spacing. */
static void
add_line (SwRingRows *rows, const SwLaying *laying, guint tier, const GArray *line)
{
  const SwGround *ground = laying->out->ground;
  double length_m = line_length_m (ground, line), walked_m = 0.0;
  int gaps =
      sw_count_up (length_m, sw_practice_get (laying->practice, SW_PRACTICE_RING_PIN_M));
  int pins = is_closed (line) ? gaps : gaps + 1, next = 0;
  double step_m = length_m / MAX (gaps, 1);

  for (guint i = 1; i < line->len; i++)
    {
      SwPoint a = g_array_index (line, SwPoint, i - 1);
      SwPoint b = g_array_index (line, SwPoint, i);
      double edge_m = sw_ground_length_m (ground, a, b);

      for (; next < pins && (next * step_m <= walked_m + edge_m || i + 1 == line->len);
           next++)
        {
          double t = edge_m > 0.0 ? (next * step_m - walked_m) / edge_m : 0.0;
          SwRingPin pin = { between (a, b, CLAMP (t, 0.0, 1.0)), tier };

          g_array_append_val (rows->pins, pin);
        }
      walked_m += edge_m;
    }
}

static void
add_ring (SwRingRows *rows, const SwLaying *laying, guint tier)
{
  const SwRegion *region = g_ptr_array_index (laying->regions, tier);
  g_autoptr (SwRegion) strips = sw_region_union (rows->trenches);
  g_autoptr (SwRegion) area = sw_region_minus (region, strips);
  g_autoptr (GPtrArray) lines = sw_region_edges_within (rows->near, area);

  for (guint i = 0; i < lines->len; i++)
    {
      const GArray *line = lines->pdata[i];
      g_autoptr (GArray) closed =
          is_closed (line) ? turned (line, laying->face->leeward) : NULL;

      add_line (rows, laying, tier, closed != NULL ? closed : line);
    }
}

static int
compare_pins (gconstpointer a, gconstpointer b)
{
  double x = ((const SwRingPin *) a)->at.x_m, y = ((const SwRingPin *) b)->at.x_m;

  return (x > y) - (x < y);
}

SwRingRows *
sw_ring_rows_new (const SwLaying *laying)
{
  SwRingRows *rows;

  if (laying->obstacles == NULL)
    return NULL;
  rows = g_new0 (SwRingRows, 1);
  rows->near = sw_region_grown (laying->obstacles, SW_OBSTACLE_CLEAR_M);
  rows->boxes = g_array_new (FALSE, FALSE, sizeof (SwBox));
  rows->trenches = g_ptr_array_new_with_free_func ((GDestroyNotify) sw_region_free);
  rows->pins = g_array_new (FALSE, FALSE, sizeof (SwRingPin));
  for (guint i = 0; i < sw_region_rings (rows->near); i++)
    {
      SwBox box = sw_ring_box (sw_region_ring (rows->near, i));

      g_array_append_val (rows->boxes, box);
    }
  add_trenches (rows, laying->out);
  for (guint t = 0; t < laying->out->n_tiers; t++)
    add_ring (rows, laying, t);
  g_array_sort (rows->pins, compare_pins);
  return rows;
}

void
sw_ring_rows_free (SwRingRows *rows)
{
  if (rows == NULL)
    return;
  sw_region_free (rows->near);
  g_array_unref (rows->boxes);
  g_ptr_array_unref (rows->trenches);
  g_array_unref (rows->pins);
  g_free (rows);
}

const GArray *
sw_ring_rows_pins (const SwRingRows *rows)
{
  return rows->pins;
}

static gboolean
in_box (SwBox box, SwPoint p)
{
  return p.x_m >= box.x0_m && p.x_m <= box.x1_m && p.y_m >= box.y0_m && p.y_m <= box.y1_m;
}

static gboolean
near_obstacle (const SwRingRows *rows, SwPoint plan)
{
  gboolean inside = FALSE;

  for (guint i = 0; i < rows->boxes->len; i++)
    if (in_box (g_array_index (rows->boxes, SwBox, i), plan)
        && sw_ring_contains (sw_region_ring (rows->near, i), plan))
      inside = !sw_region_is_hole (rows->near, i);
  return inside;
}

static gboolean
beside_ring_pin (const SwRingRows *rows, SwPoint plan)
{
  guint low = 0, high = rows->pins->len;

  while (low < high)
    {
      guint middle = low + (high - low) / 2;

      if (g_array_index (rows->pins, SwRingPin, middle).at.x_m
          < plan.x_m - SW_OBSTACLE_CLEAR_M)
        low = middle + 1;
      else
        high = middle;
    }
  for (; low < rows->pins->len; low++)
    {
      SwPoint at = g_array_index (rows->pins, SwRingPin, low).at;

      if (at.x_m > plan.x_m + SW_OBSTACLE_CLEAR_M)
        return FALSE;
      if (hypot (at.x_m - plan.x_m, at.y_m - plan.y_m) < SW_OBSTACLE_CLEAR_M)
        return TRUE;
    }
  return FALSE;
}

gboolean
sw_ring_rows_bar (const SwRingRows *rows, SwPinRole role, SwPoint plan)
{
  gboolean in_trench =
      role == SW_PIN_KEY_TRENCH || role == SW_PIN_SLOT || role == SW_PIN_TOE;

  if (rows == NULL || role == SW_PIN_RING)
    return FALSE;
  if (near_obstacle (rows, plan))
    return TRUE;
  if (in_trench)
    return FALSE;
  for (guint i = 0; i < rows->trenches->len; i++)
    if (sw_region_contains (rows->trenches->pdata[i], plan))
      return TRUE;
  return beside_ring_pin (rows, plan);
}
