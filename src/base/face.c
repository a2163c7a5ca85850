/* SPDX-License-Identifier: MIT */
#include <slopewright/base/job.h>

#include <slopewright/base/count.h>
#include <slopewright/base/polygon.h>
#include <string.h>

SwFace *
sw_face_new (const char *id)
{
  SwFace *face = g_new0 (SwFace, 1);

  face->id = g_strdup (id != NULL ? id : "");
  face->name = g_strdup ("");
  face->soil_id = g_strdup ("");
  face->obtained = SW_OBTAINED_DRAWN;
  face->obstacles = g_ptr_array_new_with_free_func ((GDestroyNotify) sw_obstacle_free);
  face->zones = g_ptr_array_new_with_free_func ((GDestroyNotify) sw_zone_free);
  return face;
}

static SwPoint *
points_copy (const SwPoint *points, guint count)
{
  return g_memdup2 (points, count * sizeof *points);
}

static void
clear_further (SwFace *face)
{
  for (guint i = 0; i < face->n_further; i++)
    g_free (face->further[i].section);
  g_clear_pointer (&face->further, g_free);
  face->n_further = 0;
}

static void
set_points (SwPoint **place, guint *n_place, const SwPoint *points, guint count)
{
  SwPoint *old = *place;

  *place = points_copy (points, count);
  *n_place = count;
  g_free (old);
}

static gpointer
copy_obstacle (gconstpointer data, gpointer unused)
{
  const SwObstacle *obstacle = data;
  SwObstacle *copy = sw_obstacle_new (obstacle->id);

  sw_text_set (&copy->name, obstacle->name);
  sw_obstacle_set_outline (copy, obstacle->outline, obstacle->n_outline);
  return copy;
}

static gpointer
copy_zone (gconstpointer data, gpointer unused)
{
  const SwZone *zone = data;
  SwZone *copy = sw_zone_new (zone->id);

  sw_text_set (&copy->name, zone->name);
  sw_text_set (&copy->soil_id, zone->soil_id);
  sw_zone_set_outline (copy, zone->outline, zone->n_outline);
  copy->loose = zone->loose;
  copy->topsoil_m = zone->topsoil_m;
  return copy;
}

SwFace *
sw_face_copy (const SwFace *face)
{
  SwFace *copy = g_memdup2 (face, sizeof *face);

  copy->id = g_strdup (face->id);
  copy->name = g_strdup (face->name);
  copy->soil_id = g_strdup (face->soil_id);
  copy->section = points_copy (face->section, face->n_section);
  copy->outline = points_copy (face->outline, face->n_outline);
  copy->further = g_memdup2 (face->further, face->n_further * sizeof *face->further);
  for (guint i = 0; i < face->n_further; i++)
    copy->further[i].section = points_copy (face->further[i].section, face->n_section);
  copy->obstacles = g_ptr_array_copy (face->obstacles, copy_obstacle, NULL);
  g_ptr_array_set_free_func (copy->obstacles, (GDestroyNotify) sw_obstacle_free);
  copy->zones = g_ptr_array_copy (face->zones, copy_zone, NULL);
  g_ptr_array_set_free_func (copy->zones, (GDestroyNotify) sw_zone_free);
  return copy;
}

void
sw_face_free (SwFace *face)
{
  if (face == NULL)
    return;
  g_free (face->id);
  g_free (face->name);
  g_free (face->soil_id);
  g_free (face->section);
  g_free (face->outline);
  clear_further (face);
  g_ptr_array_unref (face->obstacles);
  g_ptr_array_unref (face->zones);
  g_free (face);
}

SwObstacle *
sw_obstacle_new (const char *id)
{
  SwObstacle *obstacle = g_new0 (SwObstacle, 1);

  sw_text_set (&obstacle->id, id);
  sw_text_set (&obstacle->name, "");
  return obstacle;
}

SwZone *
sw_zone_new (const char *id)
{
  SwZone *zone = g_new0 (SwZone, 1);

  sw_text_set (&zone->id, id);
  sw_text_set (&zone->name, "");
  sw_text_set (&zone->soil_id, "");
  return zone;
}

void
sw_obstacle_free (SwObstacle *obstacle)
{
  if (obstacle == NULL)
    return;
  g_free (obstacle->id);
  g_free (obstacle->name);
  g_free (obstacle->outline);
  g_free (obstacle);
}

void
sw_zone_free (SwZone *zone)
{
  if (zone == NULL)
    return;
  g_free (zone->id);
  g_free (zone->name);
  g_free (zone->soil_id);
  g_free (zone->outline);
  g_free (zone);
}

void
sw_obstacle_set_outline (SwObstacle *obstacle, const SwPoint *points, guint count)
{
  set_points (&obstacle->outline, &obstacle->n_outline, points, count);
}

void
sw_zone_set_outline (SwZone *zone, const SwPoint *points, guint count)
{
  set_points (&zone->outline, &zone->n_outline, points, count);
}

void
sw_face_set_section (SwFace *face, const SwPoint *points, guint count)
{
  clear_further (face);
  set_points (&face->section, &face->n_section, points, count);
  face->crest = 0;
  face->toe = count > 0 ? count - 1 : 0;
}

void
sw_face_add_section (SwFace *face, double along_m, const SwPoint *points)
{
  guint at = face->n_further;

  face->further = g_renew (SwCrossSection, face->further, face->n_further + 1);
  for (; at > 0 && face->further[at - 1].along_m > along_m; at--)
    face->further[at] = face->further[at - 1];
  face->further[at] = (SwCrossSection){ along_m, points_copy (points, face->n_section) };
  face->n_further++;
}

void
sw_face_set_outline (SwFace *face, const SwPoint *points, guint count)
{
  set_points (&face->outline, &face->n_outline, points, count);
}

const SwZone *
sw_face_zone_at (const SwFace *face, SwPoint plan)
{
  for (guint i = 0; i < face->zones->len; i++)
    {
      const SwZone *zone = g_ptr_array_index (face->zones, i);

      if (sw_ring_contains ((SwRing){ zone->outline, zone->n_outline }, plan))
        return zone;
    }
  return NULL;
}

static gboolean
same_number (double a, double b)
{
  return memcmp (&a, &b, sizeof a) == 0;
}

static gboolean
same_points (const SwPoint *a, guint n_a, const SwPoint *b, guint n_b)
{
  return n_a == n_b && (n_a == 0 || memcmp (a, b, n_a * sizeof *a) == 0);
}

static gboolean
same_obstacles (const GPtrArray *a, const GPtrArray *b)
{
  if (a->len != b->len)
    return FALSE;
  for (guint i = 0; i < a->len; i++)
    {
      const SwObstacle *x = a->pdata[i], *y = b->pdata[i];

      if (g_strcmp0 (x->id, y->id) != 0 || g_strcmp0 (x->name, y->name) != 0
          || !same_points (x->outline, x->n_outline, y->outline, y->n_outline))
        return FALSE;
    }
  return TRUE;
}

static gboolean
same_zones (const GPtrArray *a, const GPtrArray *b)
{
  if (a->len != b->len)
    return FALSE;
  for (guint i = 0; i < a->len; i++)
    {
      const SwZone *x = a->pdata[i], *y = b->pdata[i];

      if (g_strcmp0 (x->id, y->id) != 0 || g_strcmp0 (x->name, y->name) != 0
          || g_strcmp0 (x->soil_id, y->soil_id) != 0 || !x->loose != !y->loose
          || !same_number (x->topsoil_m, y->topsoil_m)
          || !same_points (x->outline, x->n_outline, y->outline, y->n_outline))
        return FALSE;
    }
  return TRUE;
}

static gboolean
same_form (const SwFace *a, const SwFace *b)
{
  if (a->n_further != b->n_further || a->crest_form != b->crest_form || a->fan != b->fan
      || !same_number (a->crest_radius_m, b->crest_radius_m)
      || !same_number (a->section_along_m, b->section_along_m))
    return FALSE;
  for (guint i = 0; i < a->n_further; i++)
    if (!same_number (a->further[i].along_m, b->further[i].along_m)
        || !same_points (a->further[i].section, a->n_section, b->further[i].section,
                         b->n_section))
      return FALSE;
  return TRUE;
}

gboolean
sw_face_equal (const SwFace *a, const SwFace *b)
{
  return g_strcmp0 (a->id, b->id) == 0 && g_strcmp0 (a->name, b->name) == 0
         && g_strcmp0 (a->soil_id, b->soil_id) == 0
         && sw_soil_test_equal (&a->soil_test, &b->soil_test)
         && same_points (a->section, a->n_section, b->section, b->n_section)
         && same_points (a->outline, a->n_outline, b->outline, b->n_outline)
         && same_form (a, b) && a->crest == b->crest && a->toe == b->toe
         && !a->loose == !b->loose && same_number (a->topsoil_m, b->topsoil_m)
         && a->leeward == b->leeward && a->bench == b->bench && a->obtained == b->obtained
         && same_number (a->length_error_m, b->length_error_m)
         && same_number (a->angle_error_rad, b->angle_error_rad)
         && same_obstacles (a->obstacles, b->obstacles)
         && same_zones (a->zones, b->zones);
}

void
sw_text_set (char **place, const char *text)
{
  char *old = *place;

  *place = g_strdup (text != NULL ? text : "");
  g_free (old);
}

double
sw_face_up_m (const SwFace *face, double out_m)
{
  const SwPoint *p = face->section;

  if (face->n_section == 0)
    return 0.0;
  if (out_m <= p[0].x_m)
    return p[0].y_m;
  for (guint i = 1; i < face->n_section; i++)
    if (out_m <= p[i].x_m)
      return p[i - 1].y_m
             + (p[i].y_m - p[i - 1].y_m) * (out_m - p[i - 1].x_m)
                   / (p[i].x_m - p[i - 1].x_m);
  return p[face->n_section - 1].y_m;
}

double
sw_face_full_circle_m (const SwFace *face)
{
  return face->crest_form == SW_CREST_STRAIGHT ? 0.0 : 2.0 * G_PI * face->crest_radius_m;
}

gboolean
sw_face_is_heap (const SwFace *face)
{
  SwBox box;

  if (face->crest_form != SW_CREST_NOSE || face->n_outline < 3)
    return FALSE;
  box = sw_ring_box ((SwRing){ face->outline, face->n_outline });
  return sw_ticks (box.x1_m - box.x0_m) == sw_ticks (sw_face_full_circle_m (face));
}
