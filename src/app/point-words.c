/* SPDX-License-Identifier: MIT */
#include "point-words.h"

#include <glib/gi18n.h>
#include <math.h>

#include "section-edit.h"

/* "1" and "Utility box" of an obstacle or zone. */
static const char *
shape_id (const SwFace *face, SwPointList list)
{
  return list.kind == SW_LIST_OBSTACLE
             ? ((SwObstacle *) g_ptr_array_index (face->obstacles, list.which))->id
             : ((SwZone *) g_ptr_array_index (face->zones, list.which))->id;
}

static const char *
shape_name (const SwFace *face, SwPointList list)
{
  return list.kind == SW_LIST_OBSTACLE
             ? ((SwObstacle *) g_ptr_array_index (face->obstacles, list.which))->name
             : ((SwZone *) g_ptr_array_index (face->zones, list.which))->name;
}

static char *
shape_label (const SwFace *face, SwPointList list, const char *between)
{
  const char *id = shape_id (face, list), *name = shape_name (face, list);
  g_autofree char *short_label = g_strdup_printf (
      list.kind == SW_LIST_OBSTACLE ? _ ("Obstacle %s") : _ ("Zone %s"), id);

  return *name != '\0' ? g_strconcat (short_label, between, name, NULL)
                       : g_steal_pointer (&short_label);
}

static char *
section_label (const SwFace *face, guint index)
{
  if (index == face->crest)
    return g_strdup_printf (_ ("Section point %u of %u, crest"), index + 1,
                            face->n_section);
  if (index == face->toe)
    return g_strdup_printf (_ ("Section point %u of %u, toe"), index + 1,
                            face->n_section);
  return g_strdup_printf (_ ("Section point %u of %u"), index + 1, face->n_section);
}

char *
sw_point_label (const SwFace *face, SwPointList list, int index)
{
  guint count = sw_points_count (face, list), number = (guint) index + 1;

  if (list.kind == SW_LIST_SECTION)
    return section_label (face, (guint) index);
  if (list.kind == SW_LIST_OUTLINE)
    return g_strdup_printf (_ ("Outline point %u of %u"), number, count);
  if (index == SW_WHOLE)
    return shape_label (face, list, ", ");
  return g_strdup_printf (list.kind == SW_LIST_OBSTACLE
                              ? _ ("Obstacle %s, point %u of %u")
                              : _ ("Zone %s, point %u of %u"),
                          shape_id (face, list), number, count);
}

char *
sw_points_object (const SwFace *face, SwPointList list)
{
  if (!sw_points_is_shape (list))
    return NULL;
  return g_strdup_printf (list.kind == SW_LIST_OBSTACLE ? "%s/obstacle/%s" : "%s/zone/%s",
                          face->id, shape_id (face, list));
}

gboolean
sw_points_of_object (const SwFace *face, const char *object, SwPointList *list)
{
  static const SwListKind kinds[] = { SW_LIST_OBSTACLE, SW_LIST_ZONE };

  for (gsize i = 0; i < G_N_ELEMENTS (kinds); i++)
    for (*list = (SwPointList){ kinds[i], 0 }; sw_points_exist (face, *list);
         list->which++)
      {
        g_autofree char *of_list = sw_points_object (face, *list);

        if (g_strcmp0 (of_list, object) == 0)
          return TRUE;
      }
  return FALSE;
}

char *
sw_points_name (const SwFace *face, SwPointList list, SwNumberStyle style)
{
  if (list.kind == SW_LIST_OUTLINE)
    return g_strdup (_ ("Outline"));
  if (list.kind != SW_LIST_SECTION)
    return shape_label (face, list, " · ");
  if (face->n_further == 0)
    return g_strdup (_ ("Section"));
  g_autofree char *along =
      sw_quantity_text (sw_section_along_m (face, list), SW_UNIT_M, style);
  return g_strdup_printf (_ ("Section at %s"), along);
}

char *
sw_point_step (SwStepVerb verb, const SwFace *face, SwPointList list, int index)
{
  static const char *const points[SW_STEP_VERB_COUNT][SW_LIST_KIND_COUNT] = {
    { N_ ("Move Section Point %u"), N_ ("Move Outline Point %u"),
      N_ ("Move Obstacle Point %u"), N_ ("Move Zone Point %u") },
    { N_ ("Add Section Point %u"), N_ ("Add Outline Point %u"),
      N_ ("Add Obstacle Point %u"), N_ ("Add Zone Point %u") },
    { N_ ("Remove Section Point %u"), N_ ("Remove Outline Point %u"),
      N_ ("Remove Obstacle Point %u"), N_ ("Remove Zone Point %u") },
  };
  static const char *const wholes[SW_STEP_VERB_COUNT][2] = {
    { N_ ("Move Obstacle %s"), N_ ("Move Zone %s") },
    { N_ ("Add Obstacle %s"), N_ ("Add Zone %s") },
    { N_ ("Remove Obstacle %s"), N_ ("Remove Zone %s") },
  };

  return index == SW_WHOLE
             ? g_strdup_printf (_ (wholes[verb][list.kind - SW_LIST_OBSTACLE]),
                                shape_id (face, list))
             : g_strdup_printf (_ (points[verb][list.kind]), (guint) index + 1);
}

static char *
gradient_between (SwPoint a, SwPoint b, SwNumberStyle style)
{
  return sw_gradient_text (atan2 (fabs (a.y_m - b.y_m), fabs (b.x_m - a.x_m)), style);
}

static char *
shape_size (const SwFace *face, SwPointList list, SwNumberStyle style)
{
  SwBox box = sw_ring_box (sw_points_ring (face, list));
  g_autofree char *along = sw_quantity_text (box.x1_m - box.x0_m, SW_UNIT_M, style);
  g_autofree char *out = sw_quantity_text (box.y1_m - box.y0_m, SW_UNIT_M, style);

  return g_strdup_printf (_ ("%s wide, %s deep on plan"), along, out);
}

char *
sw_point_description (const SwFace *face, SwPointList list, int index,
                      SwNumberStyle style)
{
  SwPoint p = sw_points_get (face, list, index);
  g_autofree char *x = sw_quantity_text (p.x_m, SW_UNIT_M, style);
  g_autofree char *y = sw_quantity_text (p.y_m, SW_UNIT_M, style);
  g_autofree char *more = NULL;

  if (index == SW_WHOLE)
    {
      more = shape_size (face, list, style);
      return g_strdup_printf (_ ("Middle %s along, %s out; %s"), x, y, more);
    }
  if (list.kind != SW_LIST_SECTION)
    return g_strdup_printf (_ ("%s along, %s out"), x, y);
  if (index + 1 >= (int) face->n_section)
    return g_strdup_printf (_ ("%s out, %s up"), x, y);
  more = gradient_between (p, sw_points_get (face, list, index + 1), style);
  return g_strdup_printf (_ ("%s out, %s up; to the next point %s"), x, y, more);
}

char *
sw_face_description (const SwFace *face, SwNumberStyle style)
{
  if (face->toe >= face->n_section || face->crest >= face->toe)
    return g_strdup_printf (_ ("Face %s"), face->id);

  SwPoint crest = face->section[face->crest], toe = face->section[face->toe];
  g_autofree char *fall = sw_quantity_text (crest.y_m - toe.y_m, SW_UNIT_M, style);
  g_autofree char *run = sw_quantity_text (toe.x_m - crest.x_m, SW_UNIT_M, style);
  g_autofree char *gradient = gradient_between (crest, toe, style);

  return g_strdup_printf (_ ("Face %s falls %s over %s: %s"), face->id, fall, run,
                          gradient);
}
