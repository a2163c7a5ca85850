/* SPDX-License-Identifier: MIT */
#include "job-fields.h"

#include <glib/gi18n.h>
#include <slopewright/base/count.h>

#include <string.h>

#define ID_LENGTH 8
#define MOST_POINTS 10000
#define MOST_OBSTACLES 1000
#define MOST_ZONES 200
#define FARTHEST_M 10000.0 /* ten kilometres: beyond it a number was mistyped */

static const SwJsonRange coordinate_m = { -FARTHEST_M, FARTHEST_M, FALSE, FALSE };

static SwPoint
read_point (const SwJsonPlace *place, const char *expected)
{
  SwJsonPlace first = sw_json_element (place, 0);
  SwJsonPlace second = sw_json_element (place, 1);

  if (json_array_size (place->value) != 2)
    sw_json_expected (place, "%s", expected);
  return (SwPoint){ sw_json_number (&first, coordinate_m),
                    sw_json_number (&second, coordinate_m) };
}

static SwPoint *
read_points (const SwJsonPlace *place, gsize least, const char *expected,
             const char *expected_point, guint *count)
{
  gsize size = sw_json_list (place, least, expected);

  if (size > MOST_POINTS)
    sw_json_trouble (place, SW_STORE_ERROR_VALUE,
                     _ ("found %u points, expected at most %d"), (guint) size,
                     MOST_POINTS);
  if (place->reader->error != NULL)
    size = 0;
  SwPoint *points = g_new0 (SwPoint, size);
  for (gsize i = 0; i < size; i++)
    {
      SwJsonPlace point = sw_json_element (place, i);
      points[i] = read_point (&point, expected_point);
    }
  *count = (guint) size;
  return points;
}

static void
check_growing (const SwJsonPlace *section, const SwPoint *points, guint count)
{
  for (guint i = 1; i < count; i++)
    {
      SwJsonPlace point = sw_json_element (section, i);
      if (!(points[i].x_m > points[i - 1].x_m))
        sw_json_expected (&point, _ ("a point further out than the one before it"));
    }
}

static void
read_section (const SwJsonPlace *place, SwFace *face)
{
  SwJsonPlace section = sw_json_member (place, "section_m");
  guint count = 0;
  g_autofree SwPoint *points =
      read_points (&section, 2, _ ("a list of at least two points [out, up]"),
                   _ ("a point [out, up] in metres"), &count);

  check_growing (&section, points, count);
  sw_face_set_section (face, points, count);
}

/* A section elsewhere on the crest: as many points as the face's own. */
static void
read_further_section (const SwJsonPlace *place, SwFace *face)
{
  SwJsonPlace along = sw_json_member (place, "along_m");
  SwJsonPlace section = sw_json_member (place, "section_m");
  double along_m = sw_json_number (&along, coordinate_m);
  guint count = 0;
  g_autofree SwPoint *points =
      read_points (&section, 2, _ ("a list of at least two points [out, up]"),
                   _ ("a point [out, up] in metres"), &count);

  if (count != face->n_section)
    sw_json_expected (&section, _ ("as many points as in the face's own section, %u"),
                      face->n_section);
  check_growing (&section, points, count);
  for (guint i = 0; i < face->n_further; i++)
    if (sw_ticks (face->further[i].along_m) == sw_ticks (along_m))
      sw_json_expected (&along, _ ("a place where no other section stands"));
  if (sw_ticks (face->section_along_m) == sw_ticks (along_m))
    sw_json_expected (&along, _ ("a place where no other section stands"));
  if (place->reader->error == NULL)
    sw_face_add_section (face, along_m, points);
}

static void
read_further_sections (const SwJsonPlace *place, SwFace *face)
{
  SwJsonPlace along = sw_json_member (place, "section_along_m");
  SwJsonPlace further = sw_json_member (place, "further_sections");
  gsize count;

  if (along.value != NULL)
    face->section_along_m = sw_json_number (&along, coordinate_m);
  if (further.value == NULL)
    return;
  count = sw_json_list (&further, 0, _ ("a list of sections elsewhere on the crest"));
  for (gsize i = 0; i < count && place->reader->error == NULL; i++)
    {
      SwJsonPlace element = sw_json_element (&further, i);
      read_further_section (&element, face);
    }
}

static void
read_crest_form (const SwJsonPlace *place, SwFace *face)
{
  SwJsonPlace radius = sw_json_member (place, "crest_radius_m");

  face->crest_form =
      (SwCrestForm) sw_read_option (place, "crest_form", sw_crest_form_words);
  face->fan = (SwFan) sw_read_option (place, "fan", sw_fan_words);
  face->crest_radius_m = sw_read_extra (place, "crest_radius_m", 10000.0);
  if (face->crest_form != SW_CREST_STRAIGHT && !(face->crest_radius_m > 0.0))
    sw_json_expected (&radius, _ ("the radius of the crest on plan, more than 0"));
}

static void
read_crest_and_toe (const SwJsonPlace *place, SwFace *face)
{
  SwJsonPlace crest = sw_json_member (place, "crest");
  SwJsonPlace toe = sw_json_member (place, "toe");

  if (place->reader->error != NULL)
    return;
  face->crest = sw_json_index (&crest, face->n_section - 1);
  face->toe = sw_json_index (&toe, face->n_section - 1);
  if (face->toe <= face->crest)
    sw_json_expected (&toe, _ ("the number of a point after the crest, which is %u"),
                      face->crest);
}

static SwPoint *
read_outline (const SwJsonPlace *place, guint *count)
{
  SwJsonPlace outline = sw_json_member (place, "outline_m");

  return read_points (&outline, 3, _ ("a list of at least three points [along, out]"),
                      _ ("a point [along, out] in metres"), count);
}

/* Faces, obstacles and zones all begin with their id. */
static gboolean
has_id (const GPtrArray *others, const char *id)
{
  for (guint i = 0; i < others->len; i++)
    if (g_str_equal (*(char *const *) others->pdata[i], id))
      return TRUE;
  return FALSE;
}

static char *
read_id (const SwJsonPlace *place, const GPtrArray *others, const char *expected)
{
  SwJsonPlace id_place = sw_json_member (place, "id");
  char *id = sw_json_string (&id_place);
  gsize n = strlen (id);
  gsize fitting = strspn (id, G_CSET_A_2_Z G_CSET_a_2_z G_CSET_DIGITS "-");

  G_STATIC_ASSERT (G_STRUCT_OFFSET (SwFace, id) == 0);
  G_STATIC_ASSERT (G_STRUCT_OFFSET (SwObstacle, id) == 0);
  G_STATIC_ASSERT (G_STRUCT_OFFSET (SwZone, id) == 0);
  if (n == 0 || n > ID_LENGTH || fitting != n)
    sw_json_expected (&id_place, _ ("one to eight letters A to Z, digits or hyphens"));
  if (has_id (others, id))
    sw_json_expected (&id_place, "%s", expected);
  return id;
}

static SwObstacle *
read_obstacle (const SwJsonPlace *place, const SwFace *face)
{
  g_autofree char *id = read_id (place, face->obstacles,
                                 _ ("an id that no other obstacle of the face has"));
  SwObstacle *obstacle = sw_obstacle_new (id);
  guint count = 0;
  g_autofree SwPoint *points = read_outline (place, &count);

  sw_read_text (place, "name", &obstacle->name);
  sw_obstacle_set_outline (obstacle, points, count);
  return obstacle;
}

static SwZone *
read_zone (const SwJsonPlace *place, const SwFace *face)
{
  g_autofree char *id =
      read_id (place, face->zones, _ ("an id that no other zone of the face has"));
  SwZone *zone = sw_zone_new (id);
  SwJsonPlace loose = sw_json_member (place, "loose");
  guint count = 0;
  g_autofree SwPoint *points = read_outline (place, &count);

  sw_read_text (place, "name", &zone->name);
  sw_zone_set_outline (zone, points, count);
  sw_read_words (place, "soil", &zone->soil_id);
  zone->loose = sw_json_boolean (&loose);
  zone->topsoil_m = sw_read_number (place, "topsoil_m", 0.0, 10.0);
  return zone;
}

static void
read_obstacles_and_zones (const SwJsonPlace *place, SwFace *face)
{
  SwJsonPlace obstacles = sw_json_member (place, "obstacles");
  SwJsonPlace zones = sw_json_member (place, "zones");
  gsize count = sw_count_parts (&obstacles, MOST_OBSTACLES, _ ("a list of obstacles"));

  for (gsize i = 0; i < count && place->reader->error == NULL; i++)
    {
      SwJsonPlace obstacle = sw_json_element (&obstacles, i);
      g_ptr_array_add (face->obstacles, read_obstacle (&obstacle, face));
    }
  count = sw_count_parts (&zones, MOST_ZONES, _ ("a list of soil zones"));
  for (gsize i = 0; i < count && place->reader->error == NULL; i++)
    {
      SwJsonPlace zone = sw_json_element (&zones, i);
      g_ptr_array_add (face->zones, read_zone (&zone, face));
    }
}

static SwFace *
read_face (const SwJsonPlace *place, const SwJob *job)
{
  g_autofree char *id = read_id (place, job->faces, _ ("an id that no other face has"));
  SwFace *face = sw_face_new (id);
  SwJsonPlace loose = sw_json_member (place, "loose");
  g_autofree SwPoint *outline = NULL;
  guint count = 0;

  sw_read_text (place, "name", &face->name);
  read_section (place, face);
  read_crest_and_toe (place, face);
  read_further_sections (place, face);
  read_crest_form (place, face);
  outline = read_outline (place, &count);
  sw_face_set_outline (face, outline, count);
  sw_read_words (place, "soil", &face->soil_id);
  face->loose = sw_json_boolean (&loose);
  face->topsoil_m = sw_read_number (place, "topsoil_m", 0.0, 10.0);
  sw_read_soil_test (place, face);
  read_obstacles_and_zones (place, face);
  face->leeward = (SwSide) sw_read_choice (place, "leeward", sw_side_words);
  face->bench = (SwBenchRule) sw_read_choice (place, "bench", sw_bench_words);
  face->obtained = (SwObtained) sw_read_choice (place, "obtained", sw_obtained_words);
  face->length_error_m = sw_read_extra (place, "length_error_m", 100.0);
  face->angle_error_rad =
      sw_radians_of_degrees (sw_read_extra (place, "angle_error_deg", 45.0));
  return face;
}

void
sw_read_faces (const SwJsonPlace *root, SwJob *job)
{
  SwJsonPlace place = sw_json_member (root, "faces");
  gsize count = sw_json_list (&place, 1, _ ("a list with at least one face"));

  for (gsize i = 0; i < count && root->reader->error == NULL; i++)
    {
      SwJsonPlace face = sw_json_element (&place, i);
      g_ptr_array_add (job->faces, read_face (&face, job));
    }
}
