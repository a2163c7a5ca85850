/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include <math.h>
#include <slopewright/base/polygon.h>
#include <slopewright/ground/ground.h>
#include <slopewright/ground/measured.h>

#define HAND 1e-9

/* Heron's formula, an independent way to the area: two triangles on the diagonal. */
static double
heron_m2 (double a, double b, double c)
{
  double s = (a + b + c) / 2.0;

  return sqrt (s * (s - a) * (s - b) * (s - c));
}

/* 12 x 9 with diagonals of 15: Pythagorean triples 3-4-5. */
static const SwTapedSides rectangle = { 12.0, 9.0, 12.0, 9.0, 15.0, 15.0 };

static void
test_rectangle (void)
{
  SwTapedShape shape;

  g_assert_cmpint (sw_taped_shape (&rectangle, &shape), ==, SW_OK);
  g_assert_cmpfloat_with_epsilon (shape.corners[1].x_m, 12.0, HAND);
  g_assert_cmpfloat_with_epsilon (shape.corners[2].x_m, 12.0, HAND);
  g_assert_cmpfloat_with_epsilon (shape.corners[2].y_m, 9.0, HAND);
  g_assert_cmpfloat_with_epsilon (shape.corners[3].x_m, 0.0, HAND);
  g_assert_cmpfloat_with_epsilon (shape.corners[3].y_m, 9.0, HAND);
  g_assert_cmpfloat_with_epsilon (shape.area_m2, 108.0, HAND);
  g_assert_cmpfloat_with_epsilon (shape.bd_m, 15.0, HAND);
  g_assert_cmpfloat_with_epsilon (shape.residual_m, 0.0, HAND);
  g_assert_true (shape.checked);
}

/* An uneven quadrilateral: area by Heron, the other diagonal by the law of cosines. */
static void
test_uneven (void)
{
  SwTapedSides sides = { 20.0, 12.4, 16.2, 12.1, 23.3, 21.0 };
  SwTapedShape shape;
  double at_a = acos ((20.0 * 20.0 + 23.3 * 23.3 - 12.4 * 12.4) / (2.0 * 20.0 * 23.3))
                + acos ((12.1 * 12.1 + 23.3 * 23.3 - 16.2 * 16.2) / (2.0 * 12.1 * 23.3));
  double bd_m = sqrt (20.0 * 20.0 + 12.1 * 12.1 - 2.0 * 20.0 * 12.1 * cos (at_a));

  g_assert_cmpint (sw_taped_shape (&sides, &shape), ==, SW_OK);
  g_assert_cmpfloat_with_epsilon (
      shape.area_m2, heron_m2 (20.0, 12.4, 23.3) + heron_m2 (23.3, 16.2, 12.1), 1e-6);
  g_assert_cmpfloat_with_epsilon (shape.bd_m, bd_m, 1e-6);
  /* 21.0 taped: 0.89 m off, more than 1 % of 20.11 m. */
  g_assert_cmpfloat (fabs (shape.residual_m), >, shape.allowed_m);
  g_assert_cmpfloat_with_epsilon (shape.allowed_m, 0.01 * bd_m, 1e-6);
}

static void
test_diagonal_not_taped (void)
{
  SwTapedSides sides = rectangle;
  SwTapedShape shape;

  sides.bd_m = 0.0;
  g_assert_cmpint (sw_taped_shape (&sides, &shape), ==, SW_OK);
  g_assert_false (shape.checked);
  g_assert_cmpfloat (fabs (shape.residual_m), <, HAND);
}

/* The angle at C of a 3-4-5 triangle with AB = 3, BC = 4: atan (3 / 4). */
static void
test_angles_between_tapes (void)
{
  SwTapedSides sides = { 3.0, 4.0, 3.0, 4.0, 5.0, 5.0 };
  SwTapedShape shape;

  g_assert_cmpint (sw_taped_shape (&sides, &shape), ==, SW_OK);
  g_assert_cmpfloat_with_epsilon (shape.sharpest_rad, atan2 (3.0, 4.0), HAND);
  g_assert_cmpfloat_with_epsilon (shape.flattest_rad, G_PI_2, HAND);
}

static void
test_tapes_that_do_not_meet (void)
{
  SwTapedSides short_tape = { 20.0, 5.0, 20.0, 9.0, 14.0, 0.0 };
  SwTapedSides none = { 20.0, 0.0, 20.0, 9.0, 22.0, 0.0 };
  /* D comes to lie above the crest: DA is long and CD short. */
  SwTapedSides above = { 10.0, 10.0, 26.0, 13.0, 14.142, 0.0 };
  SwTapedShape shape;

  g_assert_cmpint (sw_taped_shape (&short_tape, &shape), ==, SW_E_RANGE);
  g_assert_cmpint (sw_taped_shape (&none, &shape), ==, SW_E_RANGE);
  g_assert_cmpint (sw_taped_shape (&above, &shape), ==, SW_E_OUTLINE);
}

static SwFace *
face_of (SwMeasured measured, SwStatus expected)
{
  SwFace *face = sw_face_new ("A");

  g_assert_cmpint (sw_measured_shape (&measured, face), ==, expected);
  return face;
}

static double
area_m2 (const SwFace *face)
{
  g_autoptr (SwGround) ground = NULL;

  g_assert_cmpint (sw_ground_new (face, &ground), ==, SW_OK);
  return sw_ground_area_m2 (ground, (SwRing){ face->outline, face->n_outline });
}

/* 10 m down at a rise of 3 in 4 (atan 3/4): run 8, rise 6. */
static void
test_taped_angle (void)
{
  SwFace *face = face_of ((SwMeasured){ .how = SW_OBTAINED_TAPED_ANGLE,
                                        .length_m = 10.0,
                                        .angle_rad = atan2 (3.0, 4.0),
                                        .width_m = 20.0 },
                          SW_OK);

  g_assert_cmpfloat_with_epsilon (face->section[0].y_m, 6.0, HAND);
  g_assert_cmpfloat_with_epsilon (face->section[1].x_m, 8.0, HAND);
  g_assert_cmpfloat_with_epsilon (area_m2 (face), 200.0, HAND);
  g_assert_cmpint (face->obtained, ==, SW_OBTAINED_TAPED_ANGLE);
  sw_face_free (face);
}

static void
test_rise_and_ratio (void)
{
  SwFace *face = face_of (
      (SwMeasured){
          .how = SW_OBTAINED_RISE_RATIO, .rise_m = 3.0, .hv = 4.0 / 3.0, .width_m = 2.0 },
      SW_OK);

  g_assert_cmpfloat_with_epsilon (face->section[1].x_m, 4.0, HAND);
  g_assert_cmpfloat_with_epsilon (area_m2 (face), 10.0, HAND);
  sw_face_free (face);
}

static void
test_run_and_rise (void)
{
  SwFace *face = face_of (
      (SwMeasured){
          .how = SW_OBTAINED_RUN_RISE, .rise_m = 5.0, .run_m = 12.0, .width_m = 3.0 },
      SW_OK);

  g_assert_cmpfloat_with_epsilon (area_m2 (face), 39.0, HAND);
  sw_face_free (face);
}

/* Taped in the face: whatever the angle, the true area is that of the tapes. */
static void
test_taped_shape_keeps_its_area (void)
{
  static const double degrees[] = { 5.0, 18.4, 26.6, 45.0, 70.0 };

  for (gsize i = 0; i < G_N_ELEMENTS (degrees); i++)
    {
      SwFace *face =
          face_of ((SwMeasured){ .how = SW_OBTAINED_TAPED_SHAPE,
                                 .angle_rad = degrees[i] * G_PI / 180.0,
                                 .sides = { 20.0, 12.4, 16.2, 12.1, 23.3, 0.0 } },
                   SW_OK);

      g_assert_cmpfloat_with_epsilon (
          area_m2 (face), heron_m2 (20.0, 12.4, 23.3) + heron_m2 (23.3, 16.2, 12.1),
          1e-6);
      sw_face_free (face);
    }
}

static void
test_refuses (void)
{
  static const SwMeasured bad[] = {
    { .how = SW_OBTAINED_TAPED_ANGLE, .length_m = 10.0, .width_m = 20.0 },
    { .how = SW_OBTAINED_TAPED_ANGLE,
      .length_m = 10.0,
      .angle_rad = G_PI_2,
      .width_m = 20.0 },
    { .how = SW_OBTAINED_RISE_RATIO, .rise_m = 3.0, .hv = 2.0 },
    { .how = SW_OBTAINED_RUN_RISE, .rise_m = -3.0, .run_m = 2.0, .width_m = 5.0 },
    { .how = SW_OBTAINED_DRAWN, .rise_m = 3.0, .run_m = 2.0, .width_m = 5.0 },
  };

  for (gsize i = 0; i < G_N_ELEMENTS (bad); i++)
    {
      SwFace *face = face_of (bad[i], SW_E_RANGE);

      g_assert_cmpuint (face->n_section, ==, 0);
      sw_face_free (face);
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/ground/measured/rectangle", test_rectangle);
  g_test_add_func ("/ground/measured/uneven", test_uneven);
  g_test_add_func ("/ground/measured/diagonal-not-taped", test_diagonal_not_taped);
  g_test_add_func ("/ground/measured/angles-between-tapes", test_angles_between_tapes);
  g_test_add_func ("/ground/measured/tapes-that-do-not-meet",
                   test_tapes_that_do_not_meet);
  g_test_add_func ("/ground/measured/taped-angle", test_taped_angle);
  g_test_add_func ("/ground/measured/rise-and-ratio", test_rise_and_ratio);
  g_test_add_func ("/ground/measured/run-and-rise", test_run_and_rise);
  g_test_add_func ("/ground/measured/taped-shape-keeps-its-area",
                   test_taped_shape_keeps_its_area);
  g_test_add_func ("/ground/measured/refuses", test_refuses);
  return g_test_run ();
}
