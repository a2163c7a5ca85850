/* SPDX-License-Identifier: MIT */
#include "job-fields.h"

static json_t *
points_tree (const SwPoint *points, guint count)
{
  json_t *tree = json_array ();

  for (guint i = 0; i < count; i++)
    {
      json_t *point = json_array ();
      json_array_append_new (point, sw_json_of_number (points[i].x_m));
      json_array_append_new (point, sw_json_of_number (points[i].y_m));
      json_array_append_new (tree, point);
    }
  return tree;
}

static json_t *
further_tree (const SwFace *face)
{
  json_t *tree = json_array ();

  for (guint i = 0; i < face->n_further; i++)
    {
      json_t *section = json_object ();
      sw_put_number (section, "along_m", face->further[i].along_m);
      json_object_set_new (section, "section_m",
                           points_tree (face->further[i].section, face->n_section));
      json_array_append_new (tree, section);
    }
  return tree;
}

static json_t *
obstacles_tree (const SwFace *face)
{
  json_t *tree = json_array ();

  for (guint i = 0; i < face->obstacles->len; i++)
    {
      const SwObstacle *obstacle = face->obstacles->pdata[i];
      json_t *object = json_object ();

      sw_put_text (object, "id", obstacle->id);
      sw_put_text (object, "name", obstacle->name);
      json_object_set_new (object, "outline_m",
                           points_tree (obstacle->outline, obstacle->n_outline));
      json_array_append_new (tree, object);
    }
  return tree;
}

static json_t *
zones_tree (const SwFace *face)
{
  json_t *tree = json_array ();

  for (guint i = 0; i < face->zones->len; i++)
    {
      const SwZone *zone = face->zones->pdata[i];
      json_t *object = json_object ();

      sw_put_text (object, "id", zone->id);
      sw_put_text (object, "name", zone->name);
      json_object_set_new (object, "outline_m",
                           points_tree (zone->outline, zone->n_outline));
      sw_put_text (object, "soil", zone->soil_id);
      json_object_set_new (object, "loose", json_boolean (zone->loose));
      sw_put_number (object, "topsoil_m", zone->topsoil_m);
      json_array_append_new (tree, object);
    }
  return tree;
}

static json_t *
face_tree (const SwFace *face)
{
  json_t *tree = json_object ();

  sw_put_text (tree, "id", face->id);
  sw_put_text (tree, "name", face->name);
  json_object_set_new (tree, "section_m", points_tree (face->section, face->n_section));
  json_object_set_new (tree, "crest", json_integer (face->crest));
  json_object_set_new (tree, "toe", json_integer (face->toe));
  sw_put_number (tree, "section_along_m", face->section_along_m);
  json_object_set_new (tree, "further_sections", further_tree (face));
  sw_put_text (tree, "crest_form", sw_crest_form_words[face->crest_form]);
  sw_put_number (tree, "crest_radius_m", face->crest_radius_m);
  sw_put_text (tree, "fan", sw_fan_words[face->fan]);
  json_object_set_new (tree, "outline_m", points_tree (face->outline, face->n_outline));
  sw_put_text (tree, "soil", face->soil_id);
  json_object_set_new (tree, "loose", json_boolean (face->loose));
  sw_put_number (tree, "topsoil_m", face->topsoil_m);
  json_object_set_new (tree, "soil_test", sw_soil_test_tree (&face->soil_test));
  json_object_set_new (tree, "obstacles", obstacles_tree (face));
  json_object_set_new (tree, "zones", zones_tree (face));
  sw_put_text (tree, "leeward", sw_side_words[face->leeward]);
  sw_put_text (tree, "bench", sw_bench_words[face->bench]);
  sw_put_text (tree, "obtained", sw_obtained_words[face->obtained]);
  sw_put_number (tree, "length_error_m", face->length_error_m);
  sw_put_number (tree, "angle_error_deg", sw_degrees_of_radians (face->angle_error_rad));
  return tree;
}

json_t *
sw_faces_tree (const SwJob *job)
{
  json_t *tree = json_array ();

  for (guint i = 0; i < job->faces->len; i++)
    json_array_append_new (tree, face_tree (job->faces->pdata[i]));
  return tree;
}
