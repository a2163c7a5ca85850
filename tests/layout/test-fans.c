/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "fixture.h"
#include <math.h>
#include <slopewright/base/count.h>

/* A face round a bend: crest radius, angle and section by hand, outline from crest to
 * toe. */
static SwFace *
add_fan (SwJob *job, SwCrestForm form, double radius_m, double degrees, double run_m,
         double rise_m)
{
  double along_m = radius_m * degrees * G_PI / 180.0;
  const SwPoint section[] = { { 0.0, rise_m }, { run_m, 0.0 } };
  const SwPoint outline[] = {
    { 0, 0 }, { along_m, 0 }, { along_m, run_m }, { 0, run_m }
  };
  SwFace *face = fixture_add_face (job, "A", section, 2, outline, 4);

  face->crest_form = form;
  face->crest_radius_m = radius_m;
  return face;
}

/* Area of a ring of a cone: half the angle times (R2 - r2), laid open along the slant. */
static double
cone_area_m2 (double crest_m, double toe_m, double rise_m, double degrees)
{
  return degrees / 360.0 * G_PI * (crest_m + toe_m) * hypot (toe_m - crest_m, rise_m);
}

/*
 * Nose of a ramp by hand: crest radius 9, toe 21.5, 110 degrees, 5 m high: slant
 * sqrt (12.5^2 + 5^2) = 13.463; area 110 / 360 pi (9 + 21.5) 13.463 = 394.2; toe arc
 * 21.5 x 1.9199 = 41.28, strips (41.28 - 0.1) / 2.34 = 17.6 -> 18.
 * Laps at the toe (18 x 2.44 - 41.28) / 17 = 0.155; at the crest, where a strip's pitch
 * shrinks to 9 / 21.5 of 2.285 = 0.957, a lap of 1.48.
 */
static void
test_nose_by_hand (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = fixture_job ();
  g_autoptr (SwLayout) layout = NULL;
  const SwTier *tier;

  add_fan (job, SW_CREST_NOSE, 9.0, 110.0, 12.5, 5.0);
  layout = fixture_lay (job, catalogue);
  tier = &layout->faces[0].tiers[0];
  g_assert_false (tier->closed);
  g_assert_cmpfloat_with_epsilon (tier->length_m, hypot (12.5, 5.0), 1e-9);
  g_assert_cmpfloat_with_epsilon (tier->net_m2, cone_area_m2 (9.0, 21.5, 5.0, 110.0),
                                  1e-6);
  g_assert_cmpfloat_with_epsilon (tier->net_m2, 394.2, 0.05);
  g_assert_cmpfloat_with_epsilon (tier->width_m, 21.5 * 110.0 * G_PI / 180.0, 1e-9);
  g_assert_cmpint (tier->strips, ==, 18);
  g_assert_cmpfloat_with_epsilon (tier->side_lap_m,
                                  (18 * 2.44 - 21.5 * 110.0 * G_PI / 180.0) / 17.0, 1e-9);
}

/*
 * Heap by hand: top radius 4, base 14, 6.5 m high: slant sqrt (100 + 42.25) = 11.927;
 * area pi 18 x 11.927 = 674.4; base 2 pi 14 = 87.96; all round every strip laps the next:
 * 87.96 / 2.34 = 37.6 -> 38, lap (38 x 2.44 - 87.96) / 38 = 0.125.
 */
static void
test_heap_by_hand (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = fixture_job ();
  g_autoptr (SwLayout) layout = NULL;
  const SwTier *tier;

  add_fan (job, SW_CREST_NOSE, 4.0, 360.0, 10.0, 6.5);
  layout = fixture_lay (job, catalogue);
  tier = &layout->faces[0].tiers[0];
  g_assert_true (tier->closed);
  g_assert_cmpfloat_with_epsilon (tier->net_m2, 674.4, 0.1);
  g_assert_cmpint (tier->strips, ==, 38);
  g_assert_cmpuint (tier->n_runs, ==, 38);
  g_assert_cmpfloat_with_epsilon (tier->side_lap_m, 2.44 - 28.0 * G_PI / 38.0, 1e-9);
  g_assert_cmpfloat_with_epsilon (layout->faces[0].runs[0].cut_m,
                                  hypot (10.0, 6.5) + 1.35, 1e-9);
  g_assert_cmpuint (layout->faces[0].pins_by_role[SW_PIN_EDGE], ==, 0);
}

/* Bowl: the crest is the longer arc. 20 m radius, toe at 10, quarter circle. */
static void
test_bowl_by_hand (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = fixture_job ();
  g_autoptr (SwLayout) layout = NULL;
  const SwTier *tier;

  add_fan (job, SW_CREST_BOWL, 20.0, 90.0, 10.0, 5.0);
  layout = fixture_lay (job, catalogue);
  tier = &layout->faces[0].tiers[0];
  g_assert_cmpfloat_with_epsilon (tier->net_m2, cone_area_m2 (20.0, 10.0, 5.0, 90.0),
                                  1e-6);
  g_assert_cmpfloat_with_epsilon (tier->width_m, 10.0 * G_PI, 1e-9);
  /* (31.416 - 0.1) / 2.34 = 13.4. */
  g_assert_cmpint (tier->strips, ==, 14);
}

/* Round radius 4 a full circle is 2 pi 4 = 25.1327 m: a tenth of a millimetre more of crest
 * would lie on ground that is covered already. */
static void
test_no_more_than_all_round (void)
{
  static const double extra_m[] = { -1e-4, 0.0, 1e-4, 15.0 };

  for (guint i = 0; i < G_N_ELEMENTS (extra_m); i++)
    {
      g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
      g_autoptr (SwJob) job = fixture_job ();
      g_autoptr (SwLayout) layout = NULL;
      SwFace *face;
      SwStatus status;

      add_fan (job, SW_CREST_NOSE, 4.0, 360.0, 10.0, 6.5);
      face = g_ptr_array_index (job->faces, 0);
      face->outline[1].x_m += extra_m[i];
      face->outline[2].x_m += extra_m[i];
      status = sw_layout_new (job, catalogue, &layout, NULL);
      g_assert_cmpint (status, ==, extra_m[i] > 0.0 ? SW_E_ROUND : SW_OK);
      g_assert_true (sw_face_is_heap (face) == (i == 1));
      if (status == SW_OK)
        g_assert_true (layout->faces[0].tiers[0].closed == (i == 1));
    }
}

/* Every place of the face lies under a run, also between the last run and the first. */
static void
check_cover (const SwFaceLayout *face, double along_m, double run_m)
{
  const SwTier *tier = &face->tiers[0];

  for (double a = 0.0005; a < along_m; a += along_m / 997.0)
    for (double out_m = 0.01; out_m < run_m; out_m += run_m / 7.0)
      {
        gboolean covered = FALSE;

        for (guint r = 0; r < face->n_runs && !covered; r++)
          {
            const SwRun *run = &face->runs[r];
            double at_m = a;

            /* The last run of a ring goes on past the seam, to either side. */
            if (tier->closed && at_m < run->along_from_m)
              at_m += along_m;
            else if (tier->closed && at_m > run->along_to_m)
              at_m -= along_m;
            covered = at_m >= run->along_from_m && at_m <= run->along_to_m
                      && out_m >= run->out_from_m && out_m <= run->out_to_m;
          }
        g_assert_true (covered);
      }
}

/* No run is wider than its roll, at the longer arc; laps there are never below the
 * least. */
static void
check_laps (const SwFaceLayout *face)
{
  const SwTier *tier = &face->tiers[0];

  g_assert_cmpint (sw_ticks (tier->side_lap_m), >=, sw_ticks (0.10));
  for (guint r = 0; r < face->n_runs; r++)
    {
      const SwRun *run = &face->runs[r];

      g_assert_cmpint (sw_ticks (run->width_m), <=, sw_ticks (2.44));
      g_assert_cmpfloat_with_epsilon (
          run->width_m, (run->along_to_m - run->along_from_m) * tier->stretch, 1e-9);
    }
}

/* Not twice, measured on the ground; on a ring the seam counts too. */
static void
check_pins (const SwFaceLayout *face, double along_m)
{
  for (gsize i = 0; i < face->n_pins; i++)
    for (gsize j = i + 1; j < face->n_pins; j++)
      {
        const SwPinPlace *a = &face->pins[i], *b = &face->pins[j];
        double apart_m = fabs ((double) (a->along_m - b->along_m));
        double stretch = sw_ground_stretch (face->ground, (double) a->out_m);

        if (face->tiers[0].closed)
          apart_m = fmin (apart_m, along_m - apart_m);
        if (fabs ((double) (a->down_m - b->down_m)) < 0.04)
          g_assert_cmpfloat (hypot (stretch * apart_m, (double) (a->down_m - b->down_m)),
                             >=, 0.039);
      }
}

static void
test_sweep (void)
{
  static const struct
  {
    SwCrestForm form;
    double radius_m, degrees, run_m, rise_m;
  } rows[] = {
    { SW_CREST_NOSE, 9.0, 110.0, 12.5, 5.0 },  { SW_CREST_NOSE, 4.0, 360.0, 10.0, 6.5 },
    { SW_CREST_NOSE, 1.0, 360.0, 6.0, 4.0 },   { SW_CREST_NOSE, 30.0, 20.0, 6.0, 2.0 },
    { SW_CREST_NOSE, 2.5, 359.0, 8.0, 4.0 },   { SW_CREST_BOWL, 20.0, 90.0, 10.0, 5.0 },
    { SW_CREST_BOWL, 40.0, 180.0, 30.0, 9.0 },
  };
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    for (int right = 0; right <= 1; right++)
      for (int trim = 0; trim <= 1; trim++)
        {
          g_autoptr (SwJob) job = fixture_job ();
          g_autoptr (SwLayout) layout = NULL;
          double along_m = rows[i].radius_m * rows[i].degrees * G_PI / 180.0;
          SwFace *face = add_fan (job, rows[i].form, rows[i].radius_m, rows[i].degrees,
                                  rows[i].run_m, rows[i].rise_m);

          face->leeward = right ? SW_SIDE_RIGHT : SW_SIDE_LEFT;
          job->surplus = trim ? SW_SURPLUS_TRIM : SW_SURPLUS_SPREAD;
          layout = fixture_lay (job, catalogue);
          check_cover (&layout->faces[0], along_m, rows[i].run_m);
          check_laps (&layout->faces[0]);
          check_pins (&layout->faces[0], along_m);
        }
}

/* A nose of a very large radius is the straight face. */
static void
test_large_radius_is_straight (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) bent = fixture_job ();
  g_autoptr (SwJob) straight = fixture_job ();
  g_autoptr (SwLayout) a = NULL;
  g_autoptr (SwLayout) b = NULL;

  add_fan (bent, SW_CREST_NOSE, 1e7, 26.0 / 1e7 * 180.0 / G_PI, 8.25, 5.5);
  fixture_add_plane (straight, "A", 1.5, 5.5, 26.0);
  a = fixture_lay (bent, catalogue);
  b = fixture_lay (straight, catalogue);
  g_assert_cmpint (a->faces[0].tiers[0].strips, ==, b->faces[0].tiers[0].strips);
  g_assert_cmpfloat_with_epsilon (a->faces[0].tiers[0].net_m2,
                                  b->faces[0].tiers[0].net_m2, 1e-3);
  g_assert_cmpint (a->rolls, ==, b->rolls);
  for (int role = 0; role < SW_PIN_ROLE_COUNT; role++)
    g_assert_cmpuint (a->faces[0].pins_by_role[role], ==, b->faces[0].pins_by_role[role]);
}

/*
 * Sections at three stations; the middle one is higher. Every run reaches from crest to
 * toe over its whole width, and the face's area lies between its lowest and highest
 * section's.
 */
static void
test_stations (void)
{
  const SwPoint low[] = { { 0.0, 4.0 }, { 3.0, 2.5 }, { 8.0, 0.0 } };
  const SwPoint high[] = { { 0.5, 9.0 }, { 7.0, 4.0 }, { 14.0, 0.0 } };
  const SwPoint outline[] = { { 0, 0 },  { 15, 0.5 }, { 30, 0 },
                              { 30, 8 }, { 15, 14 },  { 0, 8 } };
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = fixture_job ();
  g_autoptr (SwLayout) layout = NULL;
  const SwFaceLayout *face;
  SwFace *drawn = fixture_add_face (job, "A", low, 3, outline, 6);

  sw_face_add_section (drawn, 15.0, high);
  sw_face_add_section (drawn, 30.0, low);
  layout = fixture_lay (job, catalogue);
  face = &layout->faces[0];
  g_assert_cmpuint (face->n_tiers, ==, 1);
  for (guint r = 0; r < face->n_runs; r++)
    {
      const SwRun *run = &face->runs[r];

      for (double t = 0.0; t <= 1.0; t += 0.05)
        {
          double along_m = run->along_from_m + t * (run->along_to_m - run->along_from_m);
          double length_m = sw_ground_break_down_m (face->ground, 2, along_m);

          g_assert_cmpfloat (run->terms.face, >=, length_m - 0.02);
        }
    }
  g_assert_cmpfloat (face->tiers[0].net_m2, >,
                     30.0 * (hypot (3.0, 1.5) + hypot (5.0, 2.5)));
  g_assert_cmpfloat (face->tiers[0].net_m2, <,
                     34.0 * (hypot (6.5, 5.0) + hypot (7.0, 4.0)));
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/layout/fans/nose-by-hand", test_nose_by_hand);
  g_test_add_func ("/layout/fans/heap-by-hand", test_heap_by_hand);
  g_test_add_func ("/layout/fans/bowl-by-hand", test_bowl_by_hand);
  g_test_add_func ("/layout/fans/no-more-than-all-round", test_no_more_than_all_round);
  g_test_add_func ("/layout/fans/sweep", test_sweep);
  g_test_add_func ("/layout/fans/large-radius-is-straight",
                   test_large_radius_is_straight);
  g_test_add_func ("/layout/fans/stations", test_stations);
  return g_test_run ();
}
