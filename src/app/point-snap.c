/* SPDX-License-Identifier: MIT */
#include "point-snap.h"

#include <glib/gi18n.h>
#include <math.h>

#include "viewport.h"

/* Sides shorter than this have no direction. */
#define LEAST_SIDE_M 1e-6

static const double ratios_hv[] = { 2.0, 3.0 };

typedef struct
{
  const SwFace *face;
  SwPointList list;
  int index, count;
  SwSnapWish wish;
  SwSnap snap;
  double x_off_m, y_off_m; /* how far the best hold so far is from the wish */
} Search;

static SwPoint
point (const Search *s, int index)
{
  return sw_points_get (s->face, s->list, index);
}

static void
hold_x (Search *s, double x_m, SwHold hold)
{
  double off_m = fabs (x_m - s->wish.wish.x_m);

  if (s->wish.fix_x || off_m > s->x_off_m)
    return;
  s->x_off_m = off_m;
  s->snap.to.x_m = x_m;
  s->snap.x = hold;
}

static void
hold_y (Search *s, double y_m, SwHold hold)
{
  double off_m = fabs (y_m - s->wish.wish.y_m);

  if (s->wish.fix_y || off_m > s->y_off_m)
    return;
  s->y_off_m = off_m;
  s->snap.to.y_m = y_m;
  s->snap.y = hold;
}

static void
hold_breaks (Search *s)
{
  for (SwPointList other = SW_POINTS_SECTION; sw_points_exist (s->face, other);
       other.which++)
    if (other.which != s->list.which)
      hold_x (s, sw_points_get (s->face, other, s->index).x_m,
              (SwHold){ SW_SNAP_BREAK, (int) other.which, 0.0 });
}

/* Up and down from a neighbour, at the place out that is already held. */
static void
hold_ratios (Search *s, int neighbour)
{
  SwPoint from = point (s, neighbour);

  for (gsize i = 0; i < G_N_ELEMENTS (ratios_hv); i++)
    for (int way = -1; way <= 1; way += 2)
      hold_y (s, from.y_m + way * (s->snap.to.x_m - from.x_m) / ratios_hv[i],
              (SwHold){ SW_SNAP_RATIO, neighbour, ratios_hv[i] });
}

/* A height that must stay is reached by going out or in. */
static void
hold_ratios_level (Search *s, int neighbour)
{
  SwPoint from = point (s, neighbour);
  double way = neighbour < s->index ? 1.0 : -1.0;

  for (gsize i = 0; i < G_N_ELEMENTS (ratios_hv); i++)
    hold_x (s, from.x_m + way * fabs (s->wish.wish.y_m - from.y_m) * ratios_hv[i],
            (SwHold){ SW_SNAP_RATIO, neighbour, ratios_hv[i] });
}

static void
snap_in_section (Search *s)
{
  hold_breaks (s);
  for (int way = -1; way <= 1; way += 2)
    if (s->index + way >= 0 && s->index + way < s->count)
      {
        if (s->wish.fix_y)
          hold_ratios_level (s, s->index + way);
        else
          hold_ratios (s, s->index + way);
      }
  for (int i = 0; i < s->count; i++)
    if (i != s->index)
      hold_y (s, point (s, i).y_m, (SwHold){ SW_SNAP_LEVEL, i, 0.0 });
}

/* The foot of the wish on the line through @corner square to the side that ends there. */
static void
hold_square (Search *s, int corner, int before)
{
  SwPoint at = point (s, corner), from = point (s, before), wish = s->wish.wish;
  double dx = at.x_m - from.x_m, dy = at.y_m - from.y_m, side_m = hypot (dx, dy);
  double off_m;

  if (side_m < LEAST_SIDE_M || s->wish.fix_x || s->wish.fix_y)
    return;
  off_m = ((wish.x_m - at.x_m) * dx + (wish.y_m - at.y_m) * dy) / side_m;
  if (fabs (off_m) > fmin (s->x_off_m, s->y_off_m))
    return;
  s->snap.to =
      (SwPoint){ wish.x_m - off_m * dx / side_m, wish.y_m - off_m * dy / side_m };
  s->snap.x = s->snap.y = (SwHold){ SW_SNAP_SQUARE, corner, 0.0 };
}

static void
snap_on_plan (Search *s)
{
  int before = (s->index + s->count - 1) % s->count, after = (s->index + 1) % s->count;
  int neighbours[] = { before, after };
  const SwFace *face = s->face;

  for (gsize i = 0; i < G_N_ELEMENTS (neighbours); i++)
    {
      SwPoint at = point (s, neighbours[i]);
      hold_x (s, at.x_m, (SwHold){ SW_SNAP_IN_LINE, neighbours[i], 0.0 });
      hold_y (s, at.y_m, (SwHold){ SW_SNAP_LEVEL, neighbours[i], 0.0 });
    }
  if (face->toe < face->n_section)
    {
      hold_y (s, face->section[face->crest].x_m, (SwHold){ SW_SNAP_CREST_LINE, 0, 0.0 });
      hold_y (s, face->section[face->toe].x_m, (SwHold){ SW_SNAP_TOE_LINE, 0, 0.0 });
    }
  if (s->snap.x.kind > SW_SNAP_GRID || s->snap.y.kind > SW_SNAP_GRID)
    return;
  hold_square (s, before, (before + s->count - 1) % s->count);
  hold_square (s, after, (after + 1) % s->count);
}

SwSnap
sw_snap_point (const SwFace *face, SwPointList list, int index, SwSnapWish wish)
{
  SwPoint grid = sw_viewport_snap (wish.wish, wish.step_m);
  SwHold free = { SW_SNAP_FREE, 0, 0.0 }, on_grid = { SW_SNAP_GRID, 0, 0.0 };
  Search s = {
    .face = face,
    .list = list,
    .index = index,
    .count = (int) sw_points_count (face, list),
    .wish = wish,
    .snap = { { wish.fix_x ? wish.wish.x_m : grid.x_m,
                wish.fix_y ? wish.wish.y_m : grid.y_m },
              wish.fix_x ? free : on_grid,
              wish.fix_y ? free : on_grid },
    .x_off_m = wish.reach_m,
    .y_off_m = wish.reach_m,
  };

  if (list.kind == SW_LIST_SECTION)
    snap_in_section (&s);
  else if (index != SW_WHOLE)
    snap_on_plan (&s);
  return s.snap;
}

static char *
hold_text (SwHold hold, gboolean is_x, double step_m, SwNumberStyle style)
{
  g_autofree char *words = NULL;

  switch (hold.kind)
    {
    case SW_SNAP_GRID:
      words = sw_quantity_text (step_m, SW_UNIT_M, style);
      return g_strdup_printf (_ ("On the grid of %s"), words);
    case SW_SNAP_LEVEL:
      return g_strdup_printf (_ ("Level with point %d"), hold.of + 1);
    case SW_SNAP_IN_LINE:
      return g_strdup_printf (_ ("In line with point %d"), hold.of + 1);
    case SW_SNAP_BREAK:
      return g_strdup (_ ("In line with the same break of a section elsewhere"));
    case SW_SNAP_RATIO:
      words = sw_gradient_text (atan (1.0 / hold.hv), style);
      return g_strdup_printf (_ ("%s from point %d"), words, hold.of + 1);
    case SW_SNAP_SQUARE:
      return is_x ? g_strdup_printf (_ ("Right angle at point %d"), hold.of + 1) : NULL;
    case SW_SNAP_CREST_LINE:
      return g_strdup (_ ("On the crest line"));
    case SW_SNAP_TOE_LINE:
      return g_strdup (_ ("On the toe line"));
    case SW_SNAP_FREE:
      break;
    }
  return NULL;
}

char *
sw_snap_text (SwSnap snap, double step_m, SwNumberStyle style)
{
  g_autofree char *x = hold_text (snap.x, TRUE, step_m, style);
  g_autofree char *y = hold_text (snap.y, FALSE, step_m, style);

  if (x == NULL && y == NULL)
    return g_strdup (_ ("Off the grid"));
  if (x == NULL || y == NULL || g_str_equal (x, y))
    return g_strdup (x != NULL ? x : y);
  /* What holds firmer than the grid is said alone. */
  if (snap.x.kind == SW_SNAP_GRID)
    return g_steal_pointer (&y);
  if (snap.y.kind == SW_SNAP_GRID)
    return g_steal_pointer (&x);
  return g_strdup_printf ("%s · %s", x, y);
}
