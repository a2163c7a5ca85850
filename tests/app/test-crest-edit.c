/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "crest-edit.h"

#define TOLERANCE_M 1e-9

/* The default job: 20 m along the crest. */
static SwFace *
face_of (const SwJob *job)
{
  return g_ptr_array_index (job->faces, 0);
}

static double
end_m (const SwFace *face)
{
  return face->outline[1].x_m;
}

/* A tape round the crest of a heap read 20 m: the radius is 20 / 2 pi = 3.183 m. With a
 * radius of 4 m the tape would read 8 pi = 25.13 m. */
static void
test_heap (void)
{
  g_autoptr (SwJob) job = sw_job_new_default ();
  SwFace *face = face_of (job);

  sw_crest_set_kind (face, SW_CREST_KIND_HEAP);
  g_assert_cmpint (sw_crest_kind (face), ==, SW_CREST_KIND_HEAP);
  g_assert_cmpfloat_with_epsilon (end_m (face), 20.0, TOLERANCE_M);
  g_assert_cmpfloat_with_epsilon (face->crest_radius_m, 3.183, 0.0005);
  sw_crest_set_radius (face, 4.0);
  g_assert_cmpint (sw_crest_kind (face), ==, SW_CREST_KIND_HEAP);
  g_assert_cmpfloat_with_epsilon (end_m (face), 8.0 * G_PI, TOLERANCE_M);
}

/* Half of the way round is left: 20 m at 20 / pi. */
static void
test_heap_becomes_nose (void)
{
  g_autoptr (SwJob) job = sw_job_new_default ();
  SwFace *face = face_of (job);

  sw_crest_set_kind (face, SW_CREST_KIND_HEAP);
  sw_crest_set_kind (face, SW_CREST_KIND_NOSE);
  g_assert_cmpint (sw_crest_kind (face), ==, SW_CREST_KIND_NOSE);
  g_assert_cmpfloat_with_epsilon (face->crest_radius_m, 20.0 / G_PI, TOLERANCE_M);
  g_assert_cmpfloat_with_epsilon (end_m (face), 20.0, TOLERANCE_M);
}

/* A nose keeps its width whatever its radius, and a radius whatever becomes of it. */
static void
test_nose (void)
{
  g_autoptr (SwJob) job = sw_job_new_default ();
  SwFace *face = face_of (job);

  sw_crest_set_kind (face, SW_CREST_KIND_NOSE);
  g_assert_cmpfloat (face->crest_radius_m, >, 0.0);
  sw_crest_set_radius (face, 9.0);
  g_assert_cmpfloat_with_epsilon (end_m (face), 20.0, TOLERANCE_M);
  sw_crest_set_kind (face, SW_CREST_KIND_BOWL);
  g_assert_cmpint (sw_crest_kind (face), ==, SW_CREST_KIND_BOWL);
  g_assert_cmpfloat_with_epsilon (face->crest_radius_m, 9.0, TOLERANCE_M);
  sw_crest_set_kind (face, SW_CREST_KIND_STRAIGHT);
  g_assert_cmpint (sw_crest_kind (face), ==, SW_CREST_KIND_STRAIGHT);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/app/crest-edit/heap", test_heap);
  g_test_add_func ("/app/crest-edit/heap-becomes-nose", test_heap_becomes_nose);
  g_test_add_func ("/app/crest-edit/nose", test_nose);
  return g_test_run ();
}
