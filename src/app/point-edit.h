/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/base/job.h>

/* Edits of a face's points: each gives a new job and leaves the old one alone. */

typedef enum
{
  SW_LIST_SECTION, /* x out, y up */
  /* x along, y out: rings */
  SW_LIST_OUTLINE,
  SW_LIST_OBSTACLE,
  SW_LIST_ZONE,
  SW_LIST_KIND_COUNT
} SwListKind;

/** One list of points of a face. */
typedef struct
{
  SwListKind kind;
  guint
      which; /* obstacle, zone: index; section: 0 the face's own, n the further one n - 1 */
} SwPointList;

#define SW_POINTS_SECTION ((SwPointList){ SW_LIST_SECTION, 0 })
#define SW_POINTS_OUTLINE ((SwPointList){ SW_LIST_OUTLINE, 0 })

/** Stands for an obstacle or zone as a whole where a point's index is asked for. */
#define SW_WHOLE (-1)

/** Section points keep at least this distance in out_m. */
#define SW_POINT_GAP_M 0.01

gboolean sw_points_same (SwPointList a, SwPointList b);
gboolean sw_points_exist (const SwFace *face, SwPointList list);

/** Obstacles and zones: they can be moved as a whole, named and taken away. */
gboolean sw_points_is_shape (SwPointList list);

guint sw_points_count (const SwFace *face, SwPointList list);

/** Ring of an outline, obstacle or zone; borrowed. */
SwRing sw_points_ring (const SwFace *face, SwPointList list);

/** A point, or the middle of the box round a shape for SW_WHOLE. */
SwPoint sw_points_get (const SwFace *face, SwPointList list, int index);

/** The nearest place to @wish that point @index may take: section points keep their order. */
SwPoint sw_points_allowed (const SwFace *face, SwPointList list, int index, SwPoint wish);

/**
 * sw_points_move:
 * @index: the point; SW_WHOLE moves a shape so that its middle comes to @to
 * @to: where; a section point must stay between its neighbours
 *
 * When crest or toe move out or in, the points of the outline that lie on its
 * line go with it, so that the face is still covered from crest to toe.
 *
 * Returns: (transfer full)
 */
SwJob *sw_points_move (const SwJob *job, guint face, SwPointList list, int index,
                       SwPoint to);

/** Insert @at behind point @after; sections elsewhere get a point too. Returns: (transfer full) */
SwJob *sw_points_add (const SwJob *job, guint face, SwPointList list, int after,
                      SwPoint at);

/**
 * sw_points_continue:
 * @run_m: on plan, > 0
 * @rise_m: upwards
 *
 * One more section point behind the last. A toe that was the last point goes
 * along, and the outline on its line with it; so a section is built up stretch
 * by stretch.
 *
 * Returns: (transfer full)
 */
SwJob *sw_points_continue (const SwJob *job, guint face, SwPointList list, double run_m,
                           double rise_m);

/** Middle of the line from point @after to the next; behind the last of a section, one more step on. */
SwPoint sw_points_between (const SwFace *face, SwPointList list, int after);

/** Whether the list has points to spare: two make a section, three a ring. */
gboolean sw_points_can_remove (const SwFace *face, SwPointList list);

/** Returns: (transfer full) (nullable): NULL when no point can be spared */
SwJob *sw_points_remove (const SwJob *job, guint face, SwPointList list, int index);

/**
 * sw_points_replace:
 *
 * The outline follows a new section: what stood on the crest or the toe line stands
 * on the new one.
 *
 * Returns: (transfer full) (nullable): NULL when there are sections elsewhere, which
 *   are matched point by point, and @count is another than theirs
 */
SwJob *sw_points_replace (const SwJob *job, guint face, SwPointList list,
                          const SwPoint *points, guint count);
