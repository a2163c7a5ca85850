/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include <math.h>
#include <slopewright/ground/ground.h>

/* A face that grows from 4 m at 2:1 to 9 m at 1.5:1 over 30 m, with a break half-way
 * down. */
static const SwPoint low[] = { { 0.0, 4.0 }, { 3.0, 2.5 }, { 8.0, 0.0 } };
static const SwPoint high[] = { { 1.0, 9.0 }, { 7.0, 4.0 }, { 14.5, 0.0 } };
static const SwStation stations[] = { { 10.0, low }, { 40.0, high } };

static SwGround *
ruled (void)
{
  SwGround *ground = NULL;

  g_assert_cmpint (sw_ground_new_ruled (stations, 2, 3, 0, 2, &ground), ==, SW_OK);
  return ground;
}

/* The surface written out again: sections interpolated break by break, then straight. */
static double
up_m (double along_m, double out_m)
{
  double t = CLAMP ((along_m - 10.0) / 30.0, 0.0, 1.0);
  SwPoint p[3];

  for (int i = 0; i < 3; i++)
    p[i] = (SwPoint){ low[i].x_m + t * (high[i].x_m - low[i].x_m),
                      low[i].y_m + t * (high[i].y_m - low[i].y_m) };
  if (out_m <= p[0].x_m)
    return p[0].y_m;
  for (int i = 1; i < 3; i++)
    if (out_m <= p[i].x_m)
      return p[i - 1].y_m
             + (p[i].y_m - p[i - 1].y_m) * (out_m - p[i - 1].x_m)
                   / (p[i].x_m - p[i - 1].x_m);
  return p[2].y_m;
}

/* Every place along and out, on both sides of the stations and breaks. */
static void
test_heights (void)
{
  g_autoptr (SwGround) ground = ruled ();

  for (double along_m = 0.0; along_m <= 50.0; along_m += 0.71)
    for (double out_m = -3.0; out_m <= 18.0; out_m += 0.31)
      g_assert_cmpfloat_with_epsilon (
          sw_ground_up_m (ground, (SwPoint){ along_m, out_m }), up_m (along_m, out_m),
          1e-9);
}

/* Source: the sum of 20 000 chords; short of a curve by (curvature x step)2 / 24, here
 * below 1e-7, and 1e-4 where a chord cuts a break. */
static void
test_lengths_against_chords (void)
{
  g_autoptr (SwGround) ground = ruled ();
  g_autoptr (GRand) rand = g_rand_new_with_seed (11);
  const int chords = 20000;

  for (int i = 0; i < 40; i++)
    {
      SwPoint a = { g_rand_double_range (rand, 0.0, 50.0),
                    g_rand_double_range (rand, -2.0, 17.0) };
      SwPoint b = { g_rand_double_range (rand, 0.0, 50.0),
                    g_rand_double_range (rand, -2.0, 17.0) };
      double want_m = 0.0, dx = (b.x_m - a.x_m) / chords, dy = (b.y_m - a.y_m) / chords;

      for (int c = 0; c < chords; c++)
        {
          double before = up_m (a.x_m + c * dx, a.y_m + c * dy);
          double after = up_m (a.x_m + (c + 1) * dx, a.y_m + (c + 1) * dy);

          want_m += sqrt (dx * dx + dy * dy + (after - before) * (after - before));
        }
      g_assert_cmpfloat_with_epsilon (sw_ground_length_m (ground, a, b), want_m, 1e-3);
      g_assert_cmpfloat_with_epsilon (sw_ground_length_m (ground, b, a),
                                      sw_ground_length_m (ground, a, b), 1e-9);
    }
}

/* Source: two triangles in each of 600 x 600 cells; below 1e-4 of the area. */
static void
test_area_against_triangles (void)
{
  g_autoptr (SwGround) ground = ruled ();
  const SwPoint outline[] = {
    { 5.0, 0.5 }, { 45.0, 0.5 }, { 45.0, 13.0 }, { 5.0, 13.0 }
  };
  const int cells = 600;
  double dx = 40.0 / cells, dy = 12.5 / cells, want_m2 = 0.0;

  for (int i = 0; i < cells; i++)
    for (int j = 0; j < cells; j++)
      {
        double x = 5.0 + i * dx, y = 0.5 + j * dy;
        double z00 = up_m (x, y), z10 = up_m (x + dx, y);
        double z01 = up_m (x, y + dy), z11 = up_m (x + dx, y + dy);

        want_m2 +=
            dx * dy / 2.0
            * (sqrt (1.0 + pow ((z10 - z00) / dx, 2) + pow ((z01 - z00) / dy, 2))
               + sqrt (1.0 + pow ((z11 - z01) / dx, 2) + pow ((z11 - z10) / dy, 2)));
      }
  g_assert_cmpfloat_with_epsilon (
      sw_ground_area_m2 (ground, (SwRing){ outline, G_N_ELEMENTS (outline) }), want_m2,
      1e-4 * want_m2);
}

/* Equal sections at three stations are the extruded face. */
static void
test_equal_stations (void)
{
  const SwStation equal[] = { { -5.0, high }, { 3.0, high }, { 20.0, high } };
  const SwPoint outline[] = { { -9.0, 1.0 }, { 25.0, 2.0 }, { 12.0, 14.0 } };
  SwRing ring = { outline, G_N_ELEMENTS (outline) };
  g_autoptr (SwGround) many = NULL;
  g_autoptr (SwGround) one = NULL;

  g_assert_cmpint (sw_ground_new_ruled (equal, 3, 3, 0, 2, &many), ==, SW_OK);
  g_assert_cmpint (sw_ground_new_ruled (equal, 1, 3, 0, 2, &one), ==, SW_OK);
  g_assert_cmpfloat_with_epsilon (sw_ground_area_m2 (many, ring),
                                  sw_ground_area_m2 (one, ring), 1e-8);
  g_assert_cmpfloat_with_epsilon (sw_ground_length_m (many, outline[0], outline[2]),
                                  sw_ground_length_m (one, outline[0], outline[2]), 1e-9);
}

/* Breaks run straight between stations: half-way they lie half-way. */
static void
test_breaks (void)
{
  g_autoptr (SwGround) ground = ruled ();

  g_assert_cmpfloat_with_epsilon (sw_ground_break_out_m (ground, 1, 25.0), 5.0, 1e-12);
  g_assert_cmpfloat_with_epsilon (sw_ground_break_out_m (ground, 2, 0.0), 8.0, 1e-12);
  g_assert_cmpfloat_with_epsilon (sw_ground_break_out_m (ground, 2, 99.0), 14.5, 1e-12);
  /* Half-way the section is (0.5, 6.5) (5, 3.25) (11.25, 0). */
  g_assert_cmpfloat_with_epsilon (sw_ground_break_down_m (ground, 2, 25.0),
                                  hypot (4.5, 3.25) + hypot (6.25, 3.25), 1e-12);
}

static void
test_round_trip (void)
{
  g_autoptr (SwGround) ground = ruled ();

  for (double along_m = 0.0; along_m <= 50.0; along_m += 1.3)
    for (double out_m = -3.0; out_m <= 18.0; out_m += 0.7)
      {
        double down_m = sw_ground_down_m (ground, (SwPoint){ along_m, out_m });

        g_assert_cmpfloat_with_epsilon (sw_ground_out_m (ground, along_m, down_m), out_m,
                                        1e-9);
      }
}

/* z = -y (0.1 + 3 x) over 1 x 20 m: 10H:1V on the left, 1H:3.1V on the right, so that the
 * ground twists. Against the midpoint rule over squares of the same surface,
 * sqrt (1 + zx2 + zy2) with zx = -3 y and zy = -(0.1 + 3 x): worked from the formula. */
static void
test_area_of_twisted_ground (void)
{
  const SwPoint left[] = { { 0.0, 0.0 }, { 20.0, -2.0 } };
  const SwPoint right[] = { { 0.0, 0.0 }, { 20.0, -62.0 } };
  const SwStation ends[] = { { 0.0, left }, { 1.0, right } };
  const SwPoint plan[] = { { 0.0, 0.0 }, { 1.0, 0.0 }, { 1.0, 20.0 }, { 0.0, 20.0 } };
  g_autoptr (SwGround) ground = NULL;
  double sum_m2 = 0.0;
  int across = 400, down = 8000;

  g_assert_cmpint (sw_ground_new_ruled (ends, 2, 2, 0, 1, &ground), ==, SW_OK);
  for (int i = 0; i < across; i++)
    for (int k = 0; k < down; k++)
      {
        double x_m = (i + 0.5) / across, y_m = 20.0 * (k + 0.5) / down;
        double out = 0.1 + 3.0 * x_m, along = 3.0 * y_m;

        sum_m2 += sqrt (1.0 + out * out + along * along) * 20.0 / across / down;
      }
  g_assert_cmpfloat_with_epsilon (sw_ground_area_m2 (ground, (SwRing){ plan, 4 }), sum_m2,
                                  1e-6 * sum_m2);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/ground/ruled/heights", test_heights);
  g_test_add_func ("/ground/ruled/lengths-against-chords", test_lengths_against_chords);
  g_test_add_func ("/ground/ruled/area-against-triangles", test_area_against_triangles);
  g_test_add_func ("/ground/ruled/area-of-twisted-ground", test_area_of_twisted_ground);
  g_test_add_func ("/ground/ruled/equal-stations", test_equal_stations);
  g_test_add_func ("/ground/ruled/breaks", test_breaks);
  g_test_add_func ("/ground/ruled/round-trip", test_round_trip);
  return g_test_run ();
}
