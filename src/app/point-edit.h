/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/base/job.h>

/* Edits of a face's points: each gives a new job and leaves the old one alone. */

typedef enum
{
  SW_POINTS_SECTION, /* x out, y up */
  SW_POINTS_OUTLINE  /* x along, y out */
} SwPointList;

/** Section points keep at least this distance in out_m. */
#define SW_POINT_GAP_M 0.01

guint sw_points_count (const SwFace *face, SwPointList list);
SwPoint sw_points_get (const SwFace *face, SwPointList list, guint index);

/** The nearest place to @wish that point @index may take: section points keep their order. */
SwPoint sw_points_allowed (const SwFace *face, SwPointList list, guint index,
                           SwPoint wish);

/**
 * sw_points_move:
 * @index: the point
 * @to: where; a section point must stay between its neighbours
 *
 * When crest or toe move out or in, the points of the outline that lie on its
 * line go with it, so that the face is still covered from crest to toe.
 *
 * Returns: (transfer full)
 */
SwJob *sw_points_move (const SwJob *job, guint face, SwPointList list, guint index,
                       SwPoint to);

/** Insert @at behind point @after. Returns: (transfer full) */
SwJob *sw_points_add (const SwJob *job, guint face, SwPointList list, guint after,
                      SwPoint at);

/** Middle of the line from point @after to the next; behind the last of a section, one more step on. */
SwPoint sw_points_between (const SwFace *face, SwPointList list, guint after);

/** Whether the list has points to spare: two make a section, three an outline. */
gboolean sw_points_can_remove (const SwFace *face, SwPointList list);

/** Returns: (transfer full) (nullable): NULL when no point can be spared */
SwJob *sw_points_remove (const SwJob *job, guint face, SwPointList list, guint index);
