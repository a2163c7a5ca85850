/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "../layout/fixture.h"
#include <math.h>
#include <slopewright/judge/face-loss.h>
#include <slopewright/judge/face-soil.h>

#define DEGREE (G_PI / 180.0)

/* Made up for the test: two neighbours of sandy loam, and one that is none. */
static void
add_soils (SwCatalogue *catalogue)
{
  static const struct
  {
    const char *id;
    double pin_m, k, friction_deg;
  } rows[] = {
    { "sandy-loam", 0.15, 0.017, 33.0 },
    { "loamy-sand", 0.20, 0.005, 34.0 },
    { "loam", 0.15, 0.040, 32.0 },
    { "clay", 0.15, 0.029, 19.0 },
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      SwSoil *soil = g_new0 (SwSoil, 1);

      soil->id = g_strdup (rows[i].id);
      soil->pin_firm_m.value = rows[i].pin_m;
      soil->pin_loose_m.value = rows[i].pin_m + 0.1;
      soil->erodibility.value = rows[i].k;
      soil->friction_rad.value = rows[i].friction_deg * DEGREE;
      g_ptr_array_add (catalogue->soils, soil);
    }
}

static SwFace *
add_face (SwJob *job, const char *soil_id, const SwSoilTest *test)
{
  SwFace *face = fixture_add_plane (job, "A", 3.0, 5.0, 20.0);

  sw_text_set (&face->soil_id, soil_id);
  face->soil_test = *test;
  return face;
}

/* Thien 1979: a ribbon under 25 mm, gritty, is sandy loam, sure to one class. */
static void
test_field_test_leaves_a_class_of_doubt (void)
{
  static const SwSoilTest test = {
    .known = SW_SOIL_BY_FEEL, .holds = TRUE, .ribbon_m = 0.020, .feel = SW_FEEL_GRITTY
  };
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = fixture_job ();
  g_autoptr (SwLayout) layout = NULL;
  SwFaceSoil soil;

  add_soils (catalogue);
  add_face (job, "sandy-loam", &test);
  layout = fixture_lay (job, catalogue);
  g_assert_true (sw_face_soil (layout, 0, &soil));
  g_assert_cmpint (soil.texture, ==, SW_TEXTURE_SANDY_LOAM);
  g_assert_cmpuint (soil.n_others, ==, 2);
  g_assert_cmpstr (soil.others[0].soil->id, ==, "loamy-sand");
  g_assert_cmpfloat_with_epsilon (soil.others[0].pin_m, 0.20, 1e-12);
  g_assert_cmpfloat_with_epsilon (soil.pin_least_m, 0.15, 1e-12);
  g_assert_cmpfloat_with_epsilon (soil.pin_most_m, 0.20, 1e-12);
  g_assert_cmpfloat_with_epsilon (soil.k_least, 0.005, 1e-12);
  g_assert_cmpfloat_with_epsilon (soil.k_most, 0.040, 1e-12);
  g_assert_cmpfloat_with_epsilon (soil.friction_least, 32.0 * DEGREE, 1e-12);
  g_assert_cmpfloat_with_epsilon (soil.friction_most, 34.0 * DEGREE, 1e-12);
}

/* Looseness and topsoil count for every class alike: 150 mm of topsoil and 75 mm hold. */
static void
test_looseness_and_topsoil (void)
{
  static const SwSoilTest test = { .known = SW_SOIL_BY_EYE };
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = fixture_job ();
  g_autoptr (SwLayout) layout = NULL;
  SwFaceSoil soil;
  SwFace *face;

  add_soils (catalogue);
  face = add_face (job, "sandy-loam", &test);
  face->loose = TRUE;
  face->topsoil_m = 0.200;
  layout = fixture_lay (job, catalogue);
  g_assert_true (sw_face_soil (layout, 0, &soil));
  g_assert_cmpfloat_with_epsilon (soil.itself.pin_m, 0.275, 1e-12);
  g_assert_cmpfloat_with_epsilon (soil.pin_most_m, 0.30, 1e-12);
}

/* Sand 65, silt 25, clay 10 is sandy loam (Soil Survey Manual); no doubt of the class. */
static void
test_laboratory_leaves_no_doubt (void)
{
  static const SwSoilTest test = {
    .known = SW_SOIL_BY_LABORATORY, .sand = 0.65, .silt = 0.25, .clay = 0.10
  };
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = fixture_job ();
  g_autoptr (SwLayout) layout = NULL;
  SwFaceSoil soil;
  SwTexture texture;

  add_soils (catalogue);
  add_face (job, "sandy-loam", &test);
  layout = fixture_lay (job, catalogue);
  g_assert_cmpint (sw_texture_from_test (&test, &texture), ==, SW_OK);
  g_assert_cmpint (texture, ==, SW_TEXTURE_SANDY_LOAM);
  g_assert_true (sw_face_soil (layout, 0, &soil));
  g_assert_cmpuint (soil.n_others, ==, 0);
  g_assert_cmpfloat_with_epsilon (soil.pin_most_m, 0.15, 1e-12);
}

/* A class of the program's own is no texture. */
static void
test_no_texture (void)
{
  static const SwSoilTest test = { .known = SW_SOIL_BY_EYE };
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = fixture_job ();
  g_autoptr (SwLayout) layout = NULL;
  SwFaceSoil soil;

  add_face (job, "firm", &test);
  layout = fixture_lay (job, catalogue);
  g_assert_false (sw_face_soil (layout, 0, &soil));
}

/* Silt and very fine sand 65, clay 30, organic 2.8, structure 2, permeability 4: 0.310851
 * in US units (check-values-judge.csv); x 0.1317136 in SI. A typed K goes before it. */
static void
test_nomograph (void)
{
  static const SwSoilTest test = { .known = SW_SOIL_BY_LABORATORY,
                                   .sand = 0.20,
                                   .silt = 0.50,
                                   .clay = 0.30,
                                   .fine_sand = 0.15,
                                   .organic = 0.028,
                                   .structure = 2,
                                   .permeability = 4 };
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = fixture_job ();
  g_autoptr (SwLayout) layout = NULL;
  SwFace *face = add_face (job, "clay", &test);
  double k = 0.0;

  add_soils (catalogue);
  layout = fixture_lay (job, catalogue);
  g_assert_true (sw_face_nomograph (face, &k, NULL));
  g_assert_cmpfloat_with_epsilon (k, 0.310851 * 0.1317136076, 1e-6);
  g_assert_cmpfloat_with_epsilon (
      sw_face_erodibility (layout, layout->faces[0].face).value, k, 1e-12);
  layout->job->numbers.values[SW_NUMBER_ERODIBILITY] = 0.05;
  g_assert_cmpfloat_with_epsilon (
      sw_face_erodibility (layout, layout->faces[0].face).value, 0.05, 1e-12);
  face->soil_test.structure = 0;
  g_assert_false (sw_face_nomograph (face, &k, NULL));
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/judge/face-soil/field-test-leaves-a-class-of-doubt",
                   test_field_test_leaves_a_class_of_doubt);
  g_test_add_func ("/judge/face-soil/looseness-and-topsoil", test_looseness_and_topsoil);
  g_test_add_func ("/judge/face-soil/laboratory-leaves-no-doubt",
                   test_laboratory_leaves_no_doubt);
  g_test_add_func ("/judge/face-soil/no-texture", test_no_texture);
  g_test_add_func ("/judge/face-soil/nomograph", test_nomograph);
  return g_test_run ();
}
