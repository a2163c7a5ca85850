/* SPDX-License-Identifier: MIT */
#include "point-edit.h"

#include <math.h>
#include <string.h>

/* An outline point this close to the crest or toe line stands on it. */
#define ON_LINE_M 0.0005

gboolean
sw_points_same (SwPointList a, SwPointList b)
{
  return a.kind == b.kind && a.which == b.which;
}

gboolean
sw_points_exist (const SwFace *face, SwPointList list)
{
  guint counts[SW_LIST_KIND_COUNT] = { face->n_further + 1, 1, face->obstacles->len,
                                       face->zones->len };

  return list.which < counts[list.kind];
}

gboolean
sw_points_is_shape (SwPointList list)
{
  return list.kind == SW_LIST_OBSTACLE || list.kind == SW_LIST_ZONE;
}

/* Where a face keeps a list, and how many points are in it. */
typedef struct
{
  SwPoint **points;
  guint *count;
} Place;

static Place
place_of (const SwFace *of, SwPointList list)
{
  SwFace *face = (SwFace *) of; /* what a const face gave is only read */

  if (list.kind == SW_LIST_OUTLINE)
    return (Place){ &face->outline, &face->n_outline };
  if (list.kind == SW_LIST_OBSTACLE)
    {
      SwObstacle *obstacle = g_ptr_array_index (face->obstacles, list.which);
      return (Place){ &obstacle->outline, &obstacle->n_outline };
    }
  if (list.kind == SW_LIST_ZONE)
    {
      SwZone *zone = g_ptr_array_index (face->zones, list.which);
      return (Place){ &zone->outline, &zone->n_outline };
    }
  return (Place){ list.which == 0 ? &face->section
                                  : &face->further[list.which - 1].section,
                  &face->n_section };
}

guint
sw_points_count (const SwFace *face, SwPointList list)
{
  return *place_of (face, list).count;
}

static SwPoint *
points_of (const SwFace *face, SwPointList list)
{
  return *place_of (face, list).points;
}

SwRing
sw_points_ring (const SwFace *face, SwPointList list)
{
  return (SwRing){ points_of (face, list), sw_points_count (face, list) };
}

SwPoint
sw_points_get (const SwFace *face, SwPointList list, int index)
{
  g_return_val_if_fail (index < (int) sw_points_count (face, list), (SwPoint){ 0 });
  if (index != SW_WHOLE)
    return points_of (face, list)[index];
  SwBox box = sw_ring_box (sw_points_ring (face, list));
  return (SwPoint){ (box.x0_m + box.x1_m) / 2.0, (box.y0_m + box.y1_m) / 2.0 };
}

SwPoint
sw_points_allowed (const SwFace *face, SwPointList list, int index, SwPoint wish)
{
  const SwPoint *p = points_of (face, list);

  if (list.kind != SW_LIST_SECTION)
    return wish;
  if (index > 0)
    wish.x_m = fmax (wish.x_m, p[index - 1].x_m + SW_POINT_GAP_M);
  if (index + 1 < (int) face->n_section)
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

static void
shift (SwFace *face, SwPointList list, SwPoint to)
{
  SwPoint from = sw_points_get (face, list, SW_WHOLE);
  SwPoint *points = points_of (face, list);

  for (guint i = 0; i < sw_points_count (face, list); i++)
    {
      points[i].x_m += to.x_m - from.x_m;
      points[i].y_m += to.y_m - from.y_m;
    }
}

static void
move_point (SwFace *face, SwPointList list, guint index, SwPoint to)
{
  SwPoint *point = &points_of (face, list)[index];
  double from_out_m = point->x_m;

  *point = to;
  if (list.kind == SW_LIST_SECTION && (index == face->crest || index == face->toe))
    take_outline_along (face, from_out_m, to.x_m);
}

SwJob *
sw_points_move (const SwJob *job, guint face, SwPointList list, int index, SwPoint to)
{
  SwJob *copy;
  SwFace *edited = copy_for_edit (job, face, &copy);

  if (index == SW_WHOLE)
    shift (edited, list, to);
  else
    move_point (edited, list, (guint) index, to);
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
sw_points_between (const SwFace *face, SwPointList list, int after)
{
  return between (points_of (face, list), sw_points_count (face, list),
                  list.kind != SW_LIST_SECTION, (guint) after);
}

/* Sections are matched point by point: each gets one, the one edited where it was asked. */
static void
add_section_point (SwFace *face, SwPointList list, guint after, SwPoint at)
{
  for (guint which = 0; which <= face->n_further; which++)
    {
      SwPoint **section = place_of (face, (SwPointList){ SW_LIST_SECTION, which }).points;
      insert_point (
          section, face->n_section, after + 1,
          which == list.which ? at : between (*section, face->n_section, FALSE, after));
    }
  face->n_section++;
  face->crest += face->crest > after ? 1 : 0;
  face->toe += face->toe > after ? 1 : 0;
}

SwJob *
sw_points_add (const SwJob *job, guint face, SwPointList list, int after, SwPoint at)
{
  SwJob *copy;
  SwFace *edited = copy_for_edit (job, face, &copy);
  Place place = place_of (edited, list);

  if (list.kind == SW_LIST_SECTION)
    add_section_point (edited, list, (guint) after, at);
  else
    insert_point (place.points, (*place.count)++, (guint) after + 1, at);
  return copy;
}

SwJob *
sw_points_continue (const SwJob *job, guint face, SwPointList list, double run_m,
                    double rise_m)
{
  SwJob *copy;
  SwFace *edited = copy_for_edit (job, face, &copy);
  guint last = edited->n_section - 1;
  SwPoint from = points_of (edited, list)[last];
  SwPoint to = { from.x_m + run_m, from.y_m + rise_m };

  add_section_point (edited, list, last, to);
  if (edited->toe == last)
    {
      edited->toe = last + 1;
      take_outline_along (edited, from.x_m, to.x_m);
    }
  return copy;
}

gboolean
sw_points_can_remove (const SwFace *face, SwPointList list)
{
  return sw_points_count (face, list) > (list.kind == SW_LIST_SECTION ? 2 : 3);
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
sw_points_remove (const SwJob *job, guint face, SwPointList list, int index)
{
  SwJob *copy;
  SwFace *edited;
  Place place;

  if (!sw_points_can_remove (g_ptr_array_index (job->faces, face), list))
    return NULL;
  edited = copy_for_edit (job, face, &copy);
  place = place_of (edited, list);
  if (list.kind == SW_LIST_SECTION)
    remove_section_point (edited, (guint) index);
  else
    delete_point (*place.points, (*place.count)--, (guint) index);
  return copy;
}

/* A new section under the old outline: what stood on crest and toe stands on them again. */
static void
bring_outline_along (SwFace *face, const SwFace *before)
{
  double crest_out_m = before->section[before->crest].x_m;
  double toe_out_m = before->section[before->toe].x_m;

  for (guint i = 0; i < face->n_outline; i++)
    if (fabs (before->outline[i].y_m - crest_out_m) <= ON_LINE_M)
      face->outline[i].y_m = face->section[face->crest].x_m;
    else if (fabs (before->outline[i].y_m - toe_out_m) <= ON_LINE_M)
      face->outline[i].y_m = face->section[face->toe].x_m;
}

SwJob *
sw_points_replace (const SwJob *job, guint face, SwPointList list, const SwPoint *points,
                   guint count)
{
  const SwFace *now = g_ptr_array_index (job->faces, face);
  SwJob *copy;
  SwFace *edited;

  if (list.kind == SW_LIST_SECTION && now->n_further > 0 && count != now->n_section)
    return NULL;
  edited = copy_for_edit (job, face, &copy);
  if (list.kind == SW_LIST_SECTION && now->n_further == 0)
    {
      sw_face_set_section (edited, points, count);
      bring_outline_along (edited, now);
    }
  else
    {
      Place place = place_of (edited, list);

      g_free (*place.points);
      *place.points = g_memdup2 (points, count * sizeof *points);
      *place.count = count;
    }
  return copy;
}
