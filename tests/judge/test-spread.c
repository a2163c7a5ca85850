/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "../layout/fixture.h"
#include <math.h>
#include <slopewright/judge/spread.h>

#define DEGREE (G_PI / 180.0)

static double
length_m (const SwFace *face)
{
  SwPoint crest = face->section[face->crest], toe = face->section[face->toe];

  return hypot (toe.x_m - crest.x_m, toe.y_m - crest.y_m);
}

static SwFace *
plane (SwJob *job, double hv, double rise_m, SwObtained obtained)
{
  SwFace *face = fixture_add_plane (job, "A", hv, rise_m, 26.0);

  face->obtained = obtained;
  face->angle_error_rad = 1.0 * DEGREE;
  face->length_error_m = 0.05;
  return face;
}

/* Source: dL/L = -cot (angle) d(angle) for a length found from rise and angle; one degree
 * makes 2.6 %, 3.5 % and 5.2 % at 1.5:1, 2:1 and 3:1 (differential, hand calculation). The
 * finite change differs from it by less than a tenth of itself. */
static void
test_angle_with_rise (void)
{
  static const struct
  {
    double hv, share;
  } rows[] = { { 1.5, 0.0262 }, { 2.0, 0.0349 }, { 3.0, 0.0524 } };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr (SwJob) job = fixture_job ();
      SwFace *face = plane (job, rows[i].hv, 6.0, SW_OBTAINED_RISE_RATIO);
      double before_m = length_m (face);

      sw_face_misread (face, SW_ERROR_ANGLE, 1.0);
      g_assert_cmpfloat_with_epsilon ((before_m - length_m (face)) / before_m,
                                      rows[i].share, 0.1 * rows[i].share);
    }
}

/* A taped face keeps its length whatever the angle; an error of the tape adds to it. */
static void
test_taped_face (void)
{
  g_autoptr (SwJob) job = fixture_job ();
  SwFace *face = plane (job, 2.0, 6.0, SW_OBTAINED_TAPED_ANGLE);
  double before_m = length_m (face);

  sw_face_misread (face, SW_ERROR_ANGLE, 1.0);
  g_assert_cmpfloat_with_epsilon (length_m (face), before_m, 1e-9);
  sw_face_misread (face, SW_ERROR_LENGTH, 2.0);
  g_assert_cmpfloat_with_epsilon (length_m (face), before_m + 0.10, 1e-9);
}

static void
test_width (void)
{
  g_autoptr (SwJob) job = fixture_job ();
  SwFace *face = plane (job, 2.0, 6.0, SW_OBTAINED_TAPED_ANGLE);
  SwBox box;

  sw_face_misread (face, SW_ERROR_WIDTH, -1.0);
  box = sw_ring_box ((SwRing){ face->outline, face->n_outline });
  g_assert_cmpfloat_with_epsilon (box.x1_m - box.x0_m, 25.95, 1e-9);
}

/* Source: hand calculation; cot (atan (1/2) +- 1 degree) = 1.915 and 2.090, and so for the
 * other classes: 1.44 to 1.56 at 1.5:1, 2.83 to 3.18 at 3:1. */
static void
test_borderline_ratio (void)
{
  static const struct
  {
    double hv, low, high;
  } rows[] = { { 1.5, 1.44, 1.56 }, { 2.0, 1.92, 2.09 }, { 3.0, 2.83, 3.18 } };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
      g_autoptr (SwJob) job = fixture_job ();
      g_autoptr (SwResult) result = NULL;
      g_autoptr (SwSpread) spread = NULL;

      plane (job, rows[i].hv, 6.0, SW_OBTAINED_TAPED_ANGLE);
      result = sw_result_new (job, catalogue);
      spread = sw_spread_new (result);
      g_assert_cmpfloat_with_epsilon (spread->ratio_hv[0].low, rows[i].low, 0.0051);
      g_assert_cmpfloat_with_epsilon (spread->ratio_hv[0].high, rows[i].high, 0.0051);
    }
}

/* 34.3 m rolls and runs of 1.05 + 16.05 + 0.30 = 17.40 m: one a roll. Five centimetres less
 * than 17.15 and two go into one: the tape decides between 12 and 6 rolls. */
static void
test_rolls_at_a_limit (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = fixture_job ();
  g_autoptr (SwResult) result = NULL;
  g_autoptr (SwSpread) spread = NULL;
  /* face 15.83 m long: run 17.18 m, 0.03 m too long for two a roll */
  SwFace *face = plane (job, 2.0, 15.83 / sqrt (5.0), SW_OBTAINED_TAPED_ANGLE);

  face->length_error_m = 0.05;
  result = sw_result_new (job, catalogue);
  g_assert_cmpint (result->tally->rolls, ==, 12);
  spread = sw_spread_new (result);
  g_assert_cmpfloat (spread->rolls.low, ==, 6.0);
  g_assert_cmpfloat (spread->rolls.high, ==, 12.0);
  g_assert_cmpint (spread->largest, ==, SW_ERROR_LENGTH);
}

static void
test_no_error_no_spread (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = fixture_job ();
  g_autoptr (SwResult) result = NULL;
  g_autoptr (SwSpread) spread = NULL;
  SwFace *face = plane (job, 2.0, 6.0, SW_OBTAINED_DRAWN);

  face->length_error_m = face->angle_error_rad = 0.0;
  result = sw_result_new (job, catalogue);
  spread = sw_spread_new (result);
  g_assert_false (spread->any);
  g_assert_cmpfloat (spread->rolls.low, ==, spread->rolls.high);
  g_assert_cmpfloat (spread->pins.low, ==, spread->pins.high);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/judge/spread/angle-with-rise", test_angle_with_rise);
  g_test_add_func ("/judge/spread/taped-face", test_taped_face);
  g_test_add_func ("/judge/spread/width", test_width);
  g_test_add_func ("/judge/spread/borderline-ratio", test_borderline_ratio);
  g_test_add_func ("/judge/spread/rolls-at-a-limit", test_rolls_at_a_limit);
  g_test_add_func ("/judge/spread/no-error-no-spread", test_no_error_no_spread);
  return g_test_run ();
}
