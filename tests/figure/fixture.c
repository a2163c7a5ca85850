/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "fixture.h"
#include <jansson.h>
#include <math.h>

/* Sizes as in common practice, no source: only their place in the drawings is tested. */
static const double practice_values[SW_PRACTICE_VALUE_COUNT] = {
  [SW_PRACTICE_SET_BACK_M] = 0.6,        [SW_PRACTICE_TRENCH_DEPTH_M] = 0.15,
  [SW_PRACTICE_TRENCH_WIDTH_M] = 0.15,   [SW_PRACTICE_TRENCH_FOLD_M] = 0.3,
  [SW_PRACTICE_TRENCH_PIN_M] = 0.3,      [SW_PRACTICE_TOE_DEPTH_M] = 0.15,
  [SW_PRACTICE_TOE_WIDTH_M] = 0.15,      [SW_PRACTICE_TOE_FOLD_M] = 0.1,
  [SW_PRACTICE_TOE_PIN_M] = 0.3,         [SW_PRACTICE_SIDE_LAP_M] = 0.1,
  [SW_PRACTICE_SIDE_LAP_PIN_M] = 0.9,    [SW_PRACTICE_EDGE_PIN_M] = 0.9,
  [SW_PRACTICE_END_LAP_M] = 0.15,        [SW_PRACTICE_END_LAP_STEEP_M] = 0.3,
  [SW_PRACTICE_STEEP_HV] = 3.0,          [SW_PRACTICE_END_LAP_PIN_M] = 0.3,
  [SW_PRACTICE_END_LAP_ROW_GAP_M] = 0.1, [SW_PRACTICE_PIN_DOWN_M] = 0.9,
  [SW_PRACTICE_PIN_ACROSS_M] = 0.6,      [SW_PRACTICE_PIN_LENGTH_M] = 0.15,
  [SW_PRACTICE_SLOT_EVERY_M] = 0.0,      [SW_PRACTICE_SLOT_HV] = 3.0,
  [SW_PRACTICE_SLOT_DEPTH_M] = 0.15,     [SW_PRACTICE_SLOT_WIDTH_M] = 0.15,
  [SW_PRACTICE_SLOT_PIN_M] = 0.3,        [SW_PRACTICE_BENCH_HV] = 10.0,
  [SW_PRACTICE_BENCH_MIN_M] = 1.0,       [SW_PRACTICE_MIN_PIECE_M] = 2.0,
  [SW_PRACTICE_JOINT_STAGGER_M] = 1.0,   [SW_PRACTICE_JOINT_FREE_CREST_M] = 1.0,
  [SW_PRACTICE_JOINT_FREE_TOE_M] = 1.0,  [SW_PRACTICE_PIN_SPARE] = 0.05,
  [SW_PRACTICE_DEDUCT_M2] = 1.0,         [SW_PRACTICE_RING_PIN_M] = 0.3,
  [SW_PRACTICE_COLLAR_M] = 0.15,         [SW_PRACTICE_INSPECT_DAYS] = 7.0,
  [SW_PRACTICE_INSPECT_HOURS] = 24.0,    [SW_PRACTICE_COVER] = 0.7,
};

static SwPractice *
make_practice (SlopeKind slope, SwToeKind toe)
{
  /* Every lining comes with some toe. */
  static const SwLining linings[] = { [SW_TOE_TRENCH] = SW_LINING_DOWN_ACROSS_UP,
                                      [SW_TOE_FOLD] = SW_LINING_DOWN_ACROSS,
                                      [SW_TOE_ROW] = SW_LINING_DOWN };
  SwPractice *practice = sw_practice_new ();

  practice->id = g_strdup ("common");
  practice->name_id = g_strdup ("Common practice");
  practice->trench_lining = linings[toe];
  practice->toe_lining = SW_LINING_DOWN_ACROSS;
  practice->toe_kind = toe;
  for (guint i = 0; i < SW_PRACTICE_VALUE_COUNT; i++)
    practice->values[i] = (SwSourced){ .value = practice_values[i],
                                       .evidence = SW_EVIDENCE_COMMON_PRACTICE };
  if (slope == SLOPE_WIDE)
    practice->values[SW_PRACTICE_SLOT_EVERY_M].value = 15.0;
  return practice;
}

static void
add_soil (SwCatalogue *catalogue, const char *id, double firm_m, double loose_m)
{
  SwSoil *soil = g_new0 (SwSoil, 1);

  soil->id = g_strdup (id);
  soil->pin_firm_m.value = firm_m;
  soil->pin_loose_m.value = loose_m;
  soil->swell.value = 0.12;
  soil->compaction.value = 0.95;
  g_ptr_array_add (catalogue->soils, soil);
}

static SwCatalogue *
make_catalogue (SlopeKind slope, SwToeKind toe)
{
  static const double lengths_m[] = { 0.15, 0.2, 0.3 };
  SwCatalogue *catalogue = sw_catalogue_new ();
  SwBlanket *blanket = g_new0 (SwBlanket, 1);

  g_ptr_array_add (catalogue->practices, make_practice (slope, toe));
  add_soil (catalogue, "sand", 0.2, 0.3);
  add_soil (catalogue, "clay", 0.15, 0.2);
  blanket->id = g_strdup ("double-net");
  blanket->max_hv.value = 1.0;
  blanket->life_months.value = 12;
  blanket->mass_kg_per_m2.value = 0.27;
  blanket->thickness_m.value = 0.008;
  g_ptr_array_add (catalogue->blankets, blanket);
  for (guint i = 0; i < G_N_ELEMENTS (lengths_m); i++)
    {
      SwPin *pin = g_new0 (SwPin, 1);

      pin->id = g_strdup_printf ("staple-%u", i);
      pin->length_m = lengths_m[i];
      pin->crown_m = i == 0 ? 0.025 : 0.05;
      pin->wire_m = 0.003;
      pin->per_box = 500;
      g_ptr_array_add (catalogue->pins, pin);
    }
  return catalogue;
}

/* Straight face from (0, rise) down to (run, 0), full width. */
static void
shape_straight (SwFace *face, double rise_m, double hv, double width_m)
{
  SwPoint section[] = { { 0, rise_m }, { rise_m * hv, 0 } };
  SwPoint outline[] = {
    { 0, 0 }, { width_m, 0 }, { width_m, rise_m * hv }, { 0, rise_m * hv }
  };

  sw_face_set_section (face, section, 2);
  sw_face_set_outline (face, outline, 4);
}

/* About 2:1 with a ripple, as a level and staff would give it. */
static void
shape_survey (SwFace *face)
{
  SwPoint section[30], outline[] = { { 0, 0 }, { 30, 0 }, { 30, 29 }, { 0, 29 } };

  for (int i = 0; i < 30; i++)
    section[i] = (SwPoint){ i, 14.5 - 0.5 * i + 0.12 * (i % 3) };
  sw_face_set_section (face, section, 30);
  sw_face_set_outline (face, outline, 4);
}

/* 2:1, a bench of 3 m, 1.5:1. */
static void
shape_terraced_nose (SwFace *face)
{
  SwPoint section[] = { { 0, 12.0 }, { 12, 6.0 }, { 15, 5.9 }, { 23.85, 0 } };
  SwPoint outline[] = { { 0, 0 }, { 17.3, 0 }, { 17.3, 23.85 }, { 0, 23.85 } };

  sw_face_set_section (face, section, 4);
  sw_face_set_outline (face, outline, 4);
  face->crest_form = SW_CREST_NOSE;
  face->crest_radius_m = 9.0;
  face->leeward = SW_SIDE_RIGHT;
}

static void
corners (SwBox box, SwPoint outline[4])
{
  outline[0] = (SwPoint){ box.x0_m, box.y0_m };
  outline[1] = (SwPoint){ box.x1_m, box.y0_m };
  outline[2] = (SwPoint){ box.x1_m, box.y1_m };
  outline[3] = (SwPoint){ box.x0_m, box.y1_m };
}

static void
stand (SwFace *face, const char *id, const char *name, SwBox box)
{
  SwObstacle *obstacle = sw_obstacle_new (id);
  SwPoint outline[4];

  corners (box, outline);
  sw_text_set (&obstacle->name, name);
  sw_obstacle_set_outline (obstacle, outline, 4);
  g_ptr_array_add (face->obstacles, obstacle);
}

static void
stand_tree (SwFace *face, const char *id, const char *name, SwPoint middle,
            double radius_m)
{
  SwObstacle *obstacle = sw_obstacle_new (id);
  SwPoint outline[24];

  for (guint i = 0; i < G_N_ELEMENTS (outline); i++)
    outline[i] = (SwPoint){ middle.x_m + radius_m * cos (G_PI * i / 12.0),
                            middle.y_m + radius_m * sin (G_PI * i / 12.0) };
  sw_text_set (&obstacle->name, name);
  sw_obstacle_set_outline (obstacle, outline, G_N_ELEMENTS (outline));
  g_ptr_array_add (face->obstacles, obstacle);
}

static void
add_sand (SwFace *face, SwBox box)
{
  SwZone *zone = sw_zone_new ("S");
  SwPoint outline[4];

  corners (box, outline);
  sw_text_set (&zone->soil_id, "sand");
  zone->loose = TRUE;
  sw_zone_set_outline (zone, outline, 4);
  g_ptr_array_add (face->zones, zone);
}

static void
shape (SwJob *job, SwFace *face, SlopeKind slope)
{
  SwPoint cutting[] = { { 0, 14.12 }, { 12, 8.12 }, { 16, 8.0 }, { 32, 0 } };
  SwPoint cutting_plan[] = { { 0, 0 }, { 48, 0 }, { 48, 32 }, { 0, 32 } };
  SwPoint l_plan[] = { { 0, 0 }, { 20, 0 }, { 20, 12 }, { 9, 12 }, { 9, 6 }, { 0, 5 } };

  job->roll_width_m = 2.44;
  job->roll_length_m = 34.3;
  switch (slope)
    {
    case SLOPE_CUTTING:
      sw_face_set_section (face, cutting, 4);
      sw_face_set_outline (face, cutting_plan, 4);
      break;
    case SLOPE_HOUSE:
      shape_straight (face, 2.9, 2.2, 23.0);
      job->roll_width_m = 1.22;
      break;
    case SLOPE_SAND:
      shape_straight (face, 5.5, 1.5, 26.0);
      face->leeward = SW_SIDE_RIGHT;
      face->loose = TRUE;
      face->topsoil_m = 0.05;
      break;
    case SLOPE_WIDE:
      shape_straight (face, 14.0, 2.5, 140.0);
      break;
    case SLOPE_SURVEY:
      shape_survey (face);
      break;
    case SLOPE_DITCH:
      shape_straight (face, 1.6, 3.0, 90.0);
      break;
    case SLOPE_TALL:
      shape_straight (face, 26.8, 2.0, 6.0);
      break;
    case SLOPE_NOSE:
      shape_straight (face, 5.0, 2.5, 17.3);
      face->crest_form = SW_CREST_NOSE;
      face->crest_radius_m = 9.0;
      break;
    case SLOPE_BOWL:
      shape_straight (face, 4.0, 2.0, 40.0);
      face->crest_form = SW_CREST_BOWL;
      face->crest_radius_m = 20.0;
      break;
    case SLOPE_HEAP:
      shape_straight (face, 6.5, 1.54, 2.0 * G_PI * 4.0);
      face->crest_form = SW_CREST_NOSE;
      face->crest_radius_m = 4.0;
      break;
    case SLOPE_TERRACED_NOSE:
      shape_terraced_nose (face);
      break;
    case SLOPE_RULED:
      shape_straight (face, 6.0, 2.0, 40.0);
      sw_face_add_section (face, 40.0, (SwPoint[]){ { 0, 5.0 }, { 8.0, 1.0 } });
      break;
    case SLOPE_SITE:
      shape_straight (face, 4.5, 2.0, 24.0);
      stand (face, "1", "Box", (SwBox){ 3.0, 2.0, 4.0, 3.0 });
      stand_tree (face, "2", "Lime tree with its root plate, kept by order",
                  (SwPoint){ 7.5, 5.0 }, 0.8);
      stand (face, "3", "", (SwBox){ 11.0, 3.0, 17.0, 4.0 });
      stand (face, "4", "Headwall", (SwBox){ 18.5, 7.5, 22.0, 9.0 });
      break;
    case SLOPE_SOILS:
      shape_straight (face, 5.0, 2.5, 40.0);
      sw_text_set (&face->soil_id, "clay");
      add_sand (face, (SwBox){ 24.0, -2.0, 40.0, 14.5 });
      break;
    case SLOPE_L:
    case SLOPE_COUNT:
    default:
      shape_straight (face, 6.0, 2.0, 20.0);
      sw_face_set_outline (face, l_plan, 6);
      break;
    }
}

static SwJob *
make_job (SlopeKind slope, SwUnitSystem units)
{
  SwJob *job = sw_job_new_empty ();
  SwFace *face = sw_face_new ("A");

  sw_text_set (&job->practice_id, "common");
  sw_text_set (&job->blanket_id, "double-net");
  sw_text_set (&face->soil_id, "sand");
  job->units = units;
  shape (job, face, slope);
  g_ptr_array_add (job->faces, face);
  return job;
}

static SwTexts *
load_texts (const char *path)
{
  SwTexts *texts = sw_texts_new ("en");
  json_t *root = json_load_file (path, 0, NULL), *value;
  const char *key;

  g_assert_nonnull (root);
  json_object_foreach (root, key, value)
      sw_texts_add (texts, key, json_string_value (value));
  json_decref (root);
  return texts;
}

/* Wider than the sheet font's average: 0.57 em for a character, 0.29 for a space (from memory). */
static double
measure_text (SwTypeface typeface, double size_mm, const char *text, gpointer data)
{
  double width = 0.0;

  for (const char *at = text; *at != '\0'; at = g_utf8_next_char (at))
    width += *at == ' ' ? 0.29 : 0.57;
  return width * size_mm * (typeface == SW_FACE_BOLD ? 1.08 : 1.0);
}

void
fixture_set_up (Fixture *fixture, SlopeKind slope, SwToeKind toe, SwUnitSystem units,
                const char *texts_path)
{
  SwJob *job = make_job (slope, units);

  fixture->catalogue = make_catalogue (slope, toe);
  fixture->texts = load_texts (texts_path);
  fixture->result = sw_result_new (job, fixture->catalogue);
  g_assert_cmpint (fixture->result->status, ==, SW_OK);
  fixture->measure = (SwTextMeasure){ measure_text, NULL, 0.94, 0.24 };
  fixture->draw = (SwDraw){ .texts = fixture->texts,
                            .measure = &fixture->measure,
                            .style = { units, '.', NULL } };
  sw_job_unref (job);
}

void
fixture_tear_down (Fixture *fixture)
{
  sw_result_unref (fixture->result);
  sw_catalogue_free (fixture->catalogue);
  sw_texts_unref (fixture->texts);
}
