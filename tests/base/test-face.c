/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include <slopewright/base/job.h>

static const SwPoint square[] = {
  { 1.0, 1.0 }, { 3.0, 1.0 }, { 3.0, 3.0 }, { 1.0, 3.0 }
};
static const SwPoint beside[] = {
  { 2.0, 1.0 }, { 5.0, 1.0 }, { 5.0, 3.0 }, { 2.0, 3.0 }
};

static SwFace *
face_with_parts (void)
{
  SwFace *face = sw_face_new ("A");
  SwObstacle *obstacle = sw_obstacle_new ("box");
  SwZone *first = sw_zone_new ("1"), *second = sw_zone_new ("2");

  sw_obstacle_set_outline (obstacle, square, G_N_ELEMENTS (square));
  g_ptr_array_add (face->obstacles, obstacle);
  sw_zone_set_outline (first, square, G_N_ELEMENTS (square));
  sw_zone_set_outline (second, beside, G_N_ELEMENTS (beside));
  sw_text_set (&first->soil_id, "sand");
  g_ptr_array_add (face->zones, first);
  g_ptr_array_add (face->zones, second);
  return face;
}

/* The first listed of two zones over each other holds; elsewhere none does. */
static void
test_zone_at (void)
{
  SwFace *face = face_with_parts ();

  g_assert_cmpstr (sw_face_zone_at (face, (SwPoint){ 1.5, 2.0 })->id, ==, "1");
  g_assert_cmpstr (sw_face_zone_at (face, (SwPoint){ 2.5, 2.0 })->id, ==, "1");
  g_assert_cmpstr (sw_face_zone_at (face, (SwPoint){ 4.0, 2.0 })->id, ==, "2");
  g_assert_null (sw_face_zone_at (face, (SwPoint){ 4.0, 4.0 }));
  g_assert_null (sw_face_zone_at (face, (SwPoint){ 0.5, 2.0 }));
  sw_face_free (face);
}

typedef void (*Change) (SwFace *face);

static void
move_obstacle (SwFace *face)
{
  ((SwObstacle *) face->obstacles->pdata[0])->outline[2].y_m += 1e-12;
}

static void
rename_obstacle (SwFace *face)
{
  sw_text_set (&((SwObstacle *) face->obstacles->pdata[0])->name, "tree");
}

static void
renumber_obstacle (SwFace *face)
{
  sw_text_set (&((SwObstacle *) face->obstacles->pdata[0])->id, "tree");
}

static void
drop_obstacle (SwFace *face)
{
  g_ptr_array_set_size (face->obstacles, 0);
}

static void
soften_zone (SwFace *face)
{
  ((SwZone *) face->zones->pdata[1])->loose = TRUE;
}

static void
cover_zone (SwFace *face)
{
  ((SwZone *) face->zones->pdata[1])->topsoil_m = 0.1;
}

static void
change_soil (SwFace *face)
{
  sw_text_set (&((SwZone *) face->zones->pdata[0])->soil_id, "clay");
}

static void
cut_zone (SwFace *face)
{
  sw_zone_set_outline (face->zones->pdata[0], square, 3);
}

static void
drop_zone (SwFace *face)
{
  g_ptr_array_set_size (face->zones, 1);
}

/* A copy is equal, and stays as it was when the face is changed in any one way. */
static void
test_copy_and_equal (void)
{
  static const Change changes[] = { move_obstacle, rename_obstacle, renumber_obstacle,
                                    drop_obstacle, soften_zone,     cover_zone,
                                    change_soil,   cut_zone,        drop_zone };

  for (guint i = 0; i < G_N_ELEMENTS (changes); i++)
    {
      SwFace *face = face_with_parts (), *untouched = face_with_parts ();
      SwFace *copy = sw_face_copy (face);

      g_assert_true (sw_face_equal (face, copy));
      changes[i](face);
      g_assert_false (sw_face_equal (face, copy));
      g_assert_true (sw_face_equal (untouched, copy));
      sw_face_free (face);
      sw_face_free (copy);
      sw_face_free (untouched);
    }
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/base/face/zone-at", test_zone_at);
  g_test_add_func ("/base/face/copy-and-equal", test_copy_and_equal);
  return g_test_run ();
}
