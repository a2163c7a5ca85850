/* SPDX-License-Identifier: MIT */
#include "job-json.h"

#include <math.h>

/* A number that JSON cannot hold becomes null, which the reader refuses by name. */
static json_t *
number (double value)
{
  return isfinite (value) ? json_real (value) : json_null ();
}

static void
put_text (json_t *object, const char *key, const char *text)
{
  json_object_set_new (object, key, json_string (text != NULL ? text : ""));
}

static void
put_number (json_t *object, const char *key, double value)
{
  json_object_set_new (object, key, number (value));
}

static json_t *
card_tree (const SwJobCard *card)
{
  json_t *tree = json_object ();

  for (gsize i = 0; i < sw_n_card_lines; i++)
    put_text (tree, sw_card_lines[i].key,
              G_STRUCT_MEMBER (const char *, card, sw_card_lines[i].offset));
  return tree;
}

static json_t *
practice_tree (const SwJob *job)
{
  json_t *tree = json_object ();
  json_t *overrides = json_array ();

  put_text (tree, "id", job->practice_id);
  for (guint i = 0; i < job->n_overrides; i++)
    {
      json_t *override = json_object ();
      put_text (override, "key", sw_practice_keys[job->overrides[i].value].key);
      put_number (override, "value", job->overrides[i].number);
      put_text (override, "why", job->overrides[i].why);
      json_array_append_new (overrides, override);
    }
  json_object_set_new (tree, "overrides", overrides);
  return tree;
}

static json_t *
blanket_tree (const SwJob *job)
{
  json_t *tree = json_object ();

  put_text (tree, "id", job->blanket_id);
  put_number (tree, "mass_kg_per_m2", fmax (job->blanket_mass_kg_per_m2, 0.0));
  put_number (tree, "thickness_m", fmax (job->blanket_thickness_m, 0.0));
  return tree;
}

static json_t *
roll_tree (const SwJob *job)
{
  json_t *tree = json_object ();

  put_number (tree, "width_m", job->roll_width_m);
  put_number (tree, "length_m", job->roll_length_m);
  put_number (tree, "core_m", job->roll_core_m);
  return tree;
}

static json_t *
seed_tree (const SwSeed *seed)
{
  json_t *tree = json_object ();

  put_text (tree, "name", seed->name);
  put_number (tree, "pls_kg_per_m2", seed->pls_kg_per_m2);
  put_number (tree, "purity", seed->purity);
  put_number (tree, "germination", seed->germination);
  return tree;
}

static json_t *
site_tree (const SwAnswer *site)
{
  json_t *tree = json_object ();

  for (int i = 0; i < SW_SITE_QUESTION_COUNT; i++)
    put_text (tree, sw_site_question_keys[i], sw_answer_words[site[i]]);
  return tree;
}

static json_t *
site_numbers_tree (const SwSiteNumbers *numbers)
{
  json_t *tree = json_object ();

  for (int i = 0; i < SW_NUMBER_COUNT; i++)
    put_number (tree, sw_site_number_keys[i].key,
                sw_site_number_in_file ((SwSiteNumber) i, numbers->values[i]));
  put_text (tree, "loss_units", sw_loss_units_words[numbers->loss_units]);
  put_text (tree, "bench_drained", sw_answer_words[numbers->bench_drained]);
  put_text (tree, "mown", sw_answer_words[numbers->mown]);
  return tree;
}

static json_t *
points_tree (const SwPoint *points, guint count)
{
  json_t *tree = json_array ();

  for (guint i = 0; i < count; i++)
    {
      json_t *point = json_array ();
      json_array_append_new (point, number (points[i].x_m));
      json_array_append_new (point, number (points[i].y_m));
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
      put_number (section, "along_m", face->further[i].along_m);
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

      put_text (object, "id", obstacle->id);
      put_text (object, "name", obstacle->name);
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

      put_text (object, "id", zone->id);
      put_text (object, "name", zone->name);
      json_object_set_new (object, "outline_m",
                           points_tree (zone->outline, zone->n_outline));
      put_text (object, "soil", zone->soil_id);
      json_object_set_new (object, "loose", json_boolean (zone->loose));
      put_number (object, "topsoil_m", zone->topsoil_m);
      json_array_append_new (tree, object);
    }
  return tree;
}

static json_t *
face_tree (const SwFace *face)
{
  json_t *tree = json_object ();

  put_text (tree, "id", face->id);
  put_text (tree, "name", face->name);
  json_object_set_new (tree, "section_m", points_tree (face->section, face->n_section));
  json_object_set_new (tree, "crest", json_integer (face->crest));
  json_object_set_new (tree, "toe", json_integer (face->toe));
  put_number (tree, "section_along_m", face->section_along_m);
  json_object_set_new (tree, "further_sections", further_tree (face));
  put_text (tree, "crest_form", sw_crest_form_words[face->crest_form]);
  put_number (tree, "crest_radius_m", face->crest_radius_m);
  json_object_set_new (tree, "outline_m", points_tree (face->outline, face->n_outline));
  put_text (tree, "soil", face->soil_id);
  json_object_set_new (tree, "loose", json_boolean (face->loose));
  put_number (tree, "topsoil_m", face->topsoil_m);
  json_object_set_new (tree, "obstacles", obstacles_tree (face));
  json_object_set_new (tree, "zones", zones_tree (face));
  put_text (tree, "leeward", sw_side_words[face->leeward]);
  put_text (tree, "bench", sw_bench_words[face->bench]);
  put_text (tree, "obtained", sw_obtained_words[face->obtained]);
  put_number (tree, "length_error_m", face->length_error_m);
  put_number (tree, "angle_error_deg", sw_degrees_of_radians (face->angle_error_rad));
  return tree;
}

static json_t *
faces_tree (const SwJob *job)
{
  json_t *tree = json_array ();

  for (guint i = 0; i < job->faces->len; i++)
    json_array_append_new (tree, face_tree (job->faces->pdata[i]));
  return tree;
}

json_t *
sw_job_tree (const SwJob *job)
{
  json_t *tree = json_object ();

  json_object_set_new (tree, "slopewright", json_integer (SW_JOB_FORMAT_VERSION));
  json_object_set_new (tree, "card", card_tree (&job->card));
  put_text (tree, "units", sw_unit_system_words[job->units]);
  put_text (tree, "paper", sw_paper_words[job->paper]);
  put_text (tree, "language", job->language);
  json_object_set_new (tree, "practice", practice_tree (job));
  json_object_set_new (tree, "blanket", blanket_tree (job));
  json_object_set_new (tree, "roll", roll_tree (job));
  put_text (tree, "surplus", sw_surplus_words[job->surplus]);
  put_text (tree, "joints", sw_joints_words[job->joints]);
  put_text (tree, "zone_rule", sw_zone_rule_words[job->zone_rule]);
  put_text (tree, "pin_id", job->pin_id);
  json_object_set_new (tree, "seed", seed_tree (&job->seed));
  json_object_set_new (tree, "site", site_tree (job->site));
  json_object_set_new (tree, "site_numbers", site_numbers_tree (&job->numbers));
  json_object_set_new (tree, "faces", faces_tree (job));
  return tree;
}
