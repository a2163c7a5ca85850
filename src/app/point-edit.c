/* SPDX-License-Identifier: MIT */
#include "point-edit.h"

#include <math.h>
#include <string.h>

/* An outline point this close to the crest or toe line stands on it. */
#define ON_LINE_M 0.0005

guint
sw_points_count (const SwFace *face, SwPointList list)
{
  return list == SW_POINTS_SECTION ? face->n_section : face->n_outline;
}

static SwPoint *
points_of (const SwFace *face, SwPointList list)
{
  return list == SW_POINTS_SECTION ? face->section : face->outline;
}

SwPoint
sw_points_get (const SwFace *face, SwPointList list, guint index)
{
  g_return_val_if_fail (index < sw_points_count (face, list), (SwPoint){ 0 });
  return points_of (face, list)[index];
}

SwPoint
sw_points_allowed (const SwFace *face, SwPointList list, guint index, SwPoint wish)
{
  const SwPoint *p = face->section;

  if (list == SW_POINTS_OUTLINE)
    return wish;
  if (index > 0)
    wish.x_m = fmax (wish.x_m, p[index - 1].x_m + SW_POINT_GAP_M);
  if (index + 1 < face->n_section)
    wish.x_m = fmin (wish.x_m, p[index + 1].x_m - SW_POINT_GAP_M);
  return wish;
}

static SwFace *
copy_for_edit (const SwJob *job, guint face, SwJob **copy)
{
  *copy = sw_job_copy (job);
  return g_ptr_array_index ((*copy)->faces, face);
}

/* With sections at several places the toe is no line across, and nothing is guessed. */
static void
take_outline_along (SwFace *face, double from_out_m, double to_out_m)
{
  for (guint i = 0; face->n_further == 0 && i < face->n_outline; i++)
    if (fabs (face->outline[i].y_m - from_out_m) <= ON_LINE_M)
      face->outline[i].y_m = to_out_m;
}

SwJob *
sw_points_move (const SwJob *job, guint face, SwPointList list, guint index, SwPoint to)
{
  SwJob *copy;
  SwFace *edited = copy_for_edit (job, face, &copy);
  SwPoint *point = &points_of (edited, list)[index];
  double from_out_m = point->x_m;

  *point = to;
  if (list == SW_POINTS_SECTION && (index == edited->crest || index == edited->toe))
    take_outline_along (edited, from_out_m, to.x_m);
  return copy;
}

static void
insert_point (SwPoint **points, guint count, guint at, SwPoint point)
{
  *points = g_renew (SwPoint, *points, count + 1);
  memmove (*points + at + 1, *points + at, (count - at) * sizeof **points);
  (*points)[at] = point;
}

static void
delete_point (SwPoint *points, guint count, guint at)
{
  memmove (points + at, points + at + 1, (count - at - 1) * sizeof *points);
}

static SwPoint
between (const SwPoint *points, guint count, gboolean closed, guint after)
{
  guint next = closed ? (after + 1) % count : after + 1;
  SwPoint a = points[after];

  if (next >= count) /* behind the last: one more step like the one before */
    return (SwPoint){ 2.0 * a.x_m - points[after - 1].x_m,
                      2.0 * a.y_m - points[after - 1].y_m };
  return (SwPoint){ (a.x_m + points[next].x_m) / 2.0, (a.y_m + points[next].y_m) / 2.0 };
}

SwPoint
sw_points_between (const SwFace *face, SwPointList list, guint after)
{
  return between (points_of (face, list), sw_points_count (face, list),
                  list == SW_POINTS_OUTLINE, after);
}

/* Sections elsewhere along the crest keep a point for every point of this one. */
static void
add_section_point (SwFace *face, guint after, SwPoint at)
{
  for (guint i = 0; i < face->n_further; i++)
    {
      SwPoint **section = &face->further[i].section;
      insert_point (section, face->n_section, after + 1,
                    between (*section, face->n_section, FALSE, after));
    }
  insert_point (&face->section, face->n_section, after + 1, at);
  face->n_section++;
  face->crest += face->crest > after ? 1 : 0;
  face->toe += face->toe > after ? 1 : 0;
}

SwJob *
sw_points_add (const SwJob *job, guint face, SwPointList list, guint after, SwPoint at)
{
  SwJob *copy;
  SwFace *edited = copy_for_edit (job, face, &copy);

  if (list == SW_POINTS_SECTION)
    add_section_point (edited, after, at);
  else
    {
      insert_point (&edited->outline, edited->n_outline, after + 1, at);
      edited->n_outline++;
    }
  return copy;
}

gboolean
sw_points_can_remove (const SwFace *face, SwPointList list)
{
  return sw_points_count (face, list) > (list == SW_POINTS_SECTION ? 2 : 3);
}

/* The crest removed: the next point down is crest. The toe removed: the next one up. */
static void
move_crest_and_toe (SwFace *face, guint index)
{
  face->crest -= face->crest > index ? 1 : 0;
  face->toe -= face->toe >= index && face->toe > 0 ? 1 : 0;
  if (face->crest >= face->toe)
    {
      face->crest = face->toe > 0 ? face->toe - 1 : 0;
      face->toe = face->crest + 1;
    }
}

static void
remove_section_point (SwFace *face, guint index)
{
  for (guint i = 0; i < face->n_further; i++)
    delete_point (face->further[i].section, face->n_section, index);
  delete_point (face->section, face->n_section, index);
  face->n_section--;
  move_crest_and_toe (face, index);
}

SwJob *
sw_points_remove (const SwJob *job, guint face, SwPointList list, guint index)
{
  SwJob *copy;
  SwFace *edited;

  if (!sw_points_can_remove (g_ptr_array_index (job->faces, face), list))
    return NULL;
  edited = copy_for_edit (job, face, &copy);
  if (list == SW_POINTS_SECTION)
    remove_section_point (edited, index);
  else
    {
      delete_point (edited->outline, edited->n_outline, index);
      edited->n_outline--;
    }
  return copy;
}
