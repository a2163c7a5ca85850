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

static void
take_outline_along (SwFace *face, double from_out_m, double to_out_m)
{
  for (guint i = 0; i < face->n_outline; i++)
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

/* Replacing a section resets crest and toe; they are put back by the caller. */
static void
set_points (SwFace *face, SwPointList list, const GArray *points)
{
  if (list == SW_POINTS_SECTION)
    sw_face_set_section (face, (const SwPoint *) points->data, points->len);
  else
    sw_face_set_outline (face, (const SwPoint *) points->data, points->len);
}

static GArray *
copy_points (const SwFace *face, SwPointList list)
{
  GArray *points = g_array_new (FALSE, FALSE, sizeof (SwPoint));

  g_array_append_vals (points, points_of (face, list), sw_points_count (face, list));
  return points;
}

SwJob *
sw_points_add (const SwJob *job, guint face, SwPointList list, guint after, SwPoint at)
{
  SwJob *copy;
  SwFace *edited = copy_for_edit (job, face, &copy);
  g_autoptr (GArray) points = copy_points (edited, list);
  guint crest = edited->crest, toe = edited->toe;

  g_array_insert_val (points, after + 1, at);
  set_points (edited, list, points);
  edited->crest = crest > after ? crest + 1 : crest;
  edited->toe = toe > after ? toe + 1 : toe;
  return copy;
}

SwPoint
sw_points_between (const SwFace *face, SwPointList list, guint after)
{
  const SwPoint *p = points_of (face, list);
  guint count = sw_points_count (face, list), next = (after + 1) % count;

  if (list == SW_POINTS_SECTION && next == 0)
    return (SwPoint){ 2.0 * p[after].x_m - p[after - 1].x_m,
                      2.0 * p[after].y_m - p[after - 1].y_m };
  return (SwPoint){ (p[after].x_m + p[next].x_m) / 2.0,
                    (p[after].y_m + p[next].y_m) / 2.0 };
}

gboolean
sw_points_can_remove (const SwFace *face, SwPointList list)
{
  return sw_points_count (face, list) > (list == SW_POINTS_SECTION ? 2 : 3);
}

SwJob *
sw_points_remove (const SwJob *job, guint face, SwPointList list, guint index)
{
  SwJob *copy;
  SwFace *edited;

  if (!sw_points_can_remove (g_ptr_array_index (job->faces, face), list))
    return NULL;
  edited = copy_for_edit (job, face, &copy);
  g_autoptr (GArray) points = copy_points (edited, list);
  guint crest = edited->crest, toe = edited->toe;

  g_array_remove_index (points, index);
  set_points (edited, list, points);
  edited->crest = crest > index ? crest - 1 : crest;
  edited->toe = toe >= index && toe > 0 ? toe - 1 : toe;
  /* The crest itself went: the next point down is crest, unless that is the toe. */
  if (edited->crest >= edited->toe)
    {
      edited->crest = edited->toe > 0 ? edited->toe - 1 : 0;
      edited->toe = edited->crest + 1;
    }
  return copy;
}
