/* SPDX-License-Identifier: MIT */
#include "shape-edit.h"

#include <math.h>
#include <slopewright/ground/ground.h>

/* along_m to a metre of width: less than 1 down a nose, where the contour is longer. */
static double
along_per_m (const SwFace *face, double out_m)
{
  g_autoptr (SwGround) ground = NULL;
  double stretch;

  if (face->crest_form == SW_CREST_STRAIGHT || sw_ground_new (face, &ground) != SW_OK)
    return 1.0;
  stretch = sw_ground_stretch (ground, out_m);
  return stretch > 0.0 ? 1.0 / stretch : 1.0;
}

void
sw_shape_rectangle (const SwFace *face, SwPoint middle, double width_m, double depth_m,
                    SwPoint corners[4])
{
  double x_m = width_m / 2.0 * along_per_m (face, middle.y_m), y_m = depth_m / 2.0;

  corners[0] = (SwPoint){ middle.x_m - x_m, middle.y_m - y_m };
  corners[1] = (SwPoint){ middle.x_m + x_m, middle.y_m - y_m };
  corners[2] = (SwPoint){ middle.x_m + x_m, middle.y_m + y_m };
  corners[3] = (SwPoint){ middle.x_m - x_m, middle.y_m + y_m };
}

/* n corners at r cover n r^2 sin (2 pi / n) / 2; the circle pi radius^2. */
typedef double (*Across) (const SwGround *ground, double along_m, double at_m);

static double
down_of (const SwGround *ground, double along_m, double out_m)
{
  return sw_ground_down_m (ground, (SwPoint){ along_m, out_m });
}

/* Both edges, each taken over by itself. */
static gboolean
take_over (const SwFace *face, Across across, SwPoint *middle, double *depth_m)
{
  g_autoptr (SwGround) ground = NULL;
  double near_m, far_m;

  if (sw_ground_new (face, &ground) != SW_OK)
    return FALSE;
  near_m = across (ground, middle->x_m, middle->y_m - *depth_m / 2.0);
  far_m = across (ground, middle->x_m, middle->y_m + *depth_m / 2.0);
  middle->y_m = (near_m + far_m) / 2.0;
  *depth_m = far_m - near_m;
  return TRUE;
}

gboolean
sw_shape_to_plan (const SwFace *face, SwPoint *middle, double *depth_m)
{
  return take_over (face, sw_ground_out_m, middle, depth_m);
}

gboolean
sw_shape_to_face (const SwFace *face, SwPoint *middle, double *depth_m)
{
  return take_over (face, down_of, middle, depth_m);
}

void
sw_shape_round (const SwFace *face, SwPoint middle, double radius_m,
                SwPoint corners[SW_ROUND_CORNERS])
{
  const double turn_rad = 2.0 * G_PI / SW_ROUND_CORNERS;
  double r_m = radius_m * sqrt (turn_rad / sin (turn_rad));
  double along = along_per_m (face, middle.y_m);

  for (guint i = 0; i < SW_ROUND_CORNERS; i++)
    corners[i] = (SwPoint){ middle.x_m + r_m * cos (i * turn_rad) * along,
                            middle.y_m + r_m * sin (i * turn_rad) };
}

static gboolean
id_taken (const SwFace *face, SwListKind kind, const char *id)
{
  const GPtrArray *shapes = kind == SW_LIST_OBSTACLE ? face->obstacles : face->zones;

  for (guint i = 0; i < shapes->len; i++)
    {
      const char *other = kind == SW_LIST_OBSTACLE
                              ? ((SwObstacle *) g_ptr_array_index (shapes, i))->id
                              : ((SwZone *) g_ptr_array_index (shapes, i))->id;
      if (g_str_equal (other, id))
        return TRUE;
    }
  return FALSE;
}

static char *
free_id (const SwFace *face, SwListKind kind)
{
  for (guint n = 1;; n++)
    {
      g_autofree char *id = g_strdup_printf ("%u", n);

      if (!id_taken (face, kind, id))
        return g_steal_pointer (&id);
    }
}

static void
add_obstacle (SwFace *face, const char *id, SwRing ring)
{
  SwObstacle *obstacle = sw_obstacle_new (id);

  sw_obstacle_set_outline (obstacle, ring.points, ring.count);
  g_ptr_array_add (face->obstacles, obstacle);
}

/* First in order: a place belongs to the first zone that holds it, and the new one was
 * drawn to be seen. */
static void
add_zone (SwFace *face, const char *id, SwRing ring)
{
  SwZone *zone = sw_zone_new (id);

  sw_zone_set_outline (zone, ring.points, ring.count);
  sw_text_set (&zone->soil_id, face->soil_id);
  zone->loose = face->loose;
  zone->topsoil_m = face->topsoil_m;
  g_ptr_array_insert (face->zones, 0, zone);
}

SwJob *
sw_shapes_add (const SwJob *job, guint face, SwListKind kind, SwRing ring,
               SwPointList *added)
{
  SwJob *copy = sw_job_copy (job);
  SwFace *edited = g_ptr_array_index (copy->faces, face);
  g_autofree char *id = free_id (edited, kind);

  if (kind == SW_LIST_OBSTACLE)
    add_obstacle (edited, id, ring);
  else
    add_zone (edited, id, ring);
  *added =
      (SwPointList){ kind, kind == SW_LIST_OBSTACLE ? edited->obstacles->len - 1 : 0 };
  return copy;
}

SwJob *
sw_shapes_remove (const SwJob *job, guint face, SwPointList list)
{
  SwJob *copy = sw_job_copy (job);
  SwFace *edited = g_ptr_array_index (copy->faces, face);

  g_ptr_array_remove_index (
      list.kind == SW_LIST_OBSTACLE ? edited->obstacles : edited->zones, list.which);
  return copy;
}

/* Turned round too, so that the ring goes on the same way. */
static void
mirror_points (SwPoint *points, guint count, double twice_m)
{
  for (guint i = 0, j = count - 1; i <= j && j < count; i++, j--)
    {
      SwPoint a = points[i], b = points[j];

      points[i] = (SwPoint){ twice_m - b.x_m, b.y_m };
      points[j] = (SwPoint){ twice_m - a.x_m, a.y_m };
    }
}

static void
mirror_sections (SwFace *face, double twice_m)
{
  face->section_along_m = twice_m - face->section_along_m;
  for (guint i = 0, j = face->n_further; i < j--; i++)
    {
      SwCrossSection a = face->further[i];

      face->further[i] = face->further[j];
      face->further[j] = a;
    }
  for (guint i = 0; i < face->n_further; i++)
    face->further[i].along_m = twice_m - face->further[i].along_m;
}

SwJob *
sw_face_mirrored (const SwJob *job, guint face)
{
  SwJob *copy = sw_job_copy (job);
  SwFace *edited = g_ptr_array_index (copy->faces, face);
  SwBox box = sw_ring_box (sw_points_ring (edited, SW_POINTS_OUTLINE));
  double twice_m = box.x0_m + box.x1_m;

  mirror_points (edited->outline, edited->n_outline, twice_m);
  for (guint i = 0; i < edited->obstacles->len; i++)
    {
      SwObstacle *obstacle = g_ptr_array_index (edited->obstacles, i);
      mirror_points (obstacle->outline, obstacle->n_outline, twice_m);
    }
  for (guint i = 0; i < edited->zones->len; i++)
    {
      SwZone *zone = g_ptr_array_index (edited->zones, i);
      mirror_points (zone->outline, zone->n_outline, twice_m);
    }
  if (edited->n_further > 0)
    mirror_sections (edited, twice_m);
  edited->leeward = edited->leeward == SW_SIDE_LEFT ? SW_SIDE_RIGHT : SW_SIDE_LEFT;
  return copy;
}
