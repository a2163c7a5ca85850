/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include <math.h>
#include <slopewright/ground/ground.h>

/* Exact formulas in another order of operations. */
#define ROUNDING_M 1e-9

static const SwPoint bench[] = {
  { 0.0, 14.0 }, { 12.0, 8.0 }, { 16.0, 8.12 }, { 32.0, 0.12 }
};

static SwGround *
extruded (const SwPoint *section, guint count)
{
  SwStation station = { 0.0, section };
  SwGround *ground = NULL;

  g_assert_cmpint (sw_ground_new_ruled (&station, 1, count, 0, count - 1, &ground), ==,
                   SW_OK);
  return ground;
}

static SwGround *
plane (double hv, double rise_m)
{
  const SwPoint section[] = { { 0.0, rise_m }, { hv * rise_m, 0.0 } };

  return extruded (section, G_N_ELEMENTS (section));
}

/* Source: distance in space, sqrt (dx2 + dy2 + (dy / hv)2), for lines of every
 * direction. */
static void
test_plane_lines (void)
{
  for (double hv = 0.25; hv <= 10.0; hv *= 1.7)
    {
      g_autoptr (SwGround) ground = plane (hv, 12.0);
      double toe_m = 12.0 * hv;

      for (int degrees = 0; degrees < 360; degrees += 7)
        {
          double direction = degrees * G_PI / 180.0, length_m = 0.4 * toe_m;
          SwPoint a = { 3.0, toe_m / 2.0 };
          SwPoint b = { a.x_m + length_m * cos (direction),
                        a.y_m + length_m * sin (direction) };
          double dx = b.x_m - a.x_m, dy = b.y_m - a.y_m;

          g_assert_cmpfloat_with_epsilon (sw_ground_length_m (ground, a, b),
                                          sqrt (dx * dx + dy * dy + dy * dy / (hv * hv)),
                                          ROUNDING_M);
        }
    }
}

/* Source: by hand, sum of the three stretches, each sqrt (run2 + drop2); a skew line goes
 * along in the proportion of its way out. */
static void
test_bench_lines (void)
{
  g_autoptr (SwGround) ground = extruded (bench, G_N_ELEMENTS (bench));

  for (double along_m = -40.0; along_m <= 40.0; along_m += 2.5)
    {
      double want_m = 0.0;

      for (guint i = 1; i < G_N_ELEMENTS (bench); i++)
        {
          double run_m = bench[i].x_m - bench[i - 1].x_m;
          double drop_m = bench[i].y_m - bench[i - 1].y_m;
          double part_m = along_m * run_m / 32.0;

          want_m += sqrt (run_m * run_m + drop_m * drop_m + part_m * part_m);
        }
      g_assert_cmpfloat_with_epsilon (
          sw_ground_length_m (ground, (SwPoint){ 7.0, 0.0 },
                              (SwPoint){ 7.0 + along_m, 32.0 }),
          want_m, ROUNDING_M);
    }
}

/* The same way back, in two parts, and in the mirror is as long; along the crest it is
 * level. */
static void
test_line_invariants (void)
{
  g_autoptr (SwGround) ground = extruded (bench, G_N_ELEMENTS (bench));
  g_autoptr (GRand) rand = g_rand_new_with_seed (7);

  for (int i = 0; i < 500; i++)
    {
      SwPoint a = { g_rand_double_range (rand, -20.0, 20.0),
                    g_rand_double_range (rand, -5.0, 40.0) };
      SwPoint b = { g_rand_double_range (rand, -20.0, 20.0),
                    g_rand_double_range (rand, -5.0, 40.0) };
      double t = g_rand_double (rand);
      SwPoint middle = { a.x_m + t * (b.x_m - a.x_m), a.y_m + t * (b.y_m - a.y_m) };
      SwPoint a_mirror = { -a.x_m, a.y_m }, b_mirror = { -b.x_m, b.y_m };
      double length_m = sw_ground_length_m (ground, a, b);

      g_assert_cmpfloat (length_m + ROUNDING_M, >=, hypot (b.x_m - a.x_m, b.y_m - a.y_m));
      g_assert_cmpfloat_with_epsilon (sw_ground_length_m (ground, b, a), length_m,
                                      ROUNDING_M);
      g_assert_cmpfloat_with_epsilon (sw_ground_length_m (ground, a, middle)
                                          + sw_ground_length_m (ground, middle, b),
                                      length_m, ROUNDING_M);
      g_assert_cmpfloat_with_epsilon (sw_ground_length_m (ground, a_mirror, b_mirror),
                                      length_m, ROUNDING_M);
      b.y_m = a.y_m;
      g_assert_cmpfloat_with_epsilon (sw_ground_length_m (ground, a, b),
                                      fabs (b.x_m - a.x_m), ROUNDING_M);
    }
}

/* A point drawn on a straight stretch changes nothing. */
static void
test_collinear_section_point (void)
{
  const SwPoint more[] = { { 0.0, 14.0 },  { 4.0, 12.0 },  { 12.0, 8.0 },
                           { 16.0, 8.12 }, { 20.0, 6.12 }, { 32.0, 0.12 } };
  const SwPoint outline[] = {
    { 0.0, -1.0 }, { 9.0, 3.0 }, { 14.0, 33.0 }, { 2.0, 25.0 }
  };
  g_autoptr (SwGround) a = extruded (bench, G_N_ELEMENTS (bench));
  g_autoptr (SwGround) b = extruded (more, G_N_ELEMENTS (more));
  SwRing ring = { outline, G_N_ELEMENTS (outline) };

  for (double out_m = -2.0; out_m < 36.0; out_m += 0.37)
    {
      SwPoint p = { 1.0, out_m }, q = { 4.0, 1.5 * out_m };

      g_assert_cmpfloat_with_epsilon (sw_ground_up_m (a, p), sw_ground_up_m (b, p),
                                      ROUNDING_M);
      g_assert_cmpfloat_with_epsilon (sw_ground_down_m (a, p), sw_ground_down_m (b, p),
                                      ROUNDING_M);
      g_assert_cmpfloat_with_epsilon (sw_ground_length_m (a, p, q),
                                      sw_ground_length_m (b, p, q), ROUNDING_M);
    }
  g_assert_cmpfloat_with_epsilon (sw_ground_area_m2 (a, ring),
                                  sw_ground_area_m2 (b, ring), 1e-8);
}

/* out -> down -> out, before the crest and beyond the toe too. */
static void
test_round_trip (void)
{
  g_autoptr (SwGround) ground = extruded (bench, G_N_ELEMENTS (bench));
  double before_m = -INFINITY;

  for (double out_m = -6.0; out_m < 40.0; out_m += 0.0937)
    {
      double down_m = sw_ground_down_m (ground, (SwPoint){ 3.0, out_m });

      g_assert_cmpfloat (down_m, >, before_m);
      g_assert_cmpfloat_with_epsilon (sw_ground_out_m (ground, 3.0, down_m), out_m,
                                      ROUNDING_M);
      before_m = down_m;
    }
}

/* Source: by hand, 6 sqrt (5) = 13.4164 to the bench; level beyond the drawn section. */
static void
test_places (void)
{
  g_autoptr (SwGround) ground = extruded (bench, G_N_ELEMENTS (bench));

  g_assert_cmpfloat_with_epsilon (sw_ground_down_m (ground, (SwPoint){ 0.0, 0.0 }), 0.0,
                                  ROUNDING_M);
  g_assert_cmpfloat_with_epsilon (sw_ground_down_m (ground, (SwPoint){ 0.0, 12.0 }),
                                  6.0 * sqrt (5.0), ROUNDING_M);
  g_assert_cmpfloat_with_epsilon (sw_ground_down_m (ground, (SwPoint){ 0.0, -2.5 }), -2.5,
                                  ROUNDING_M);
  g_assert_cmpfloat_with_epsilon (sw_ground_up_m (ground, (SwPoint){ 0.0, 6.0 }), 11.0,
                                  ROUNDING_M);
  g_assert_cmpfloat_with_epsilon (sw_ground_up_m (ground, (SwPoint){ 0.0, 14.0 }), 8.06,
                                  ROUNDING_M);
  g_assert_cmpfloat_with_epsilon (sw_ground_up_m (ground, (SwPoint){ 0.0, -9.0 }), 14.0,
                                  ROUNDING_M);
  g_assert_cmpfloat_with_epsilon (sw_ground_up_m (ground, (SwPoint){ 0.0, 99.0 }), 0.12,
                                  ROUNDING_M);
  g_assert_cmpfloat_with_epsilon (sw_ground_break_out_m (ground, 2, 5.0), 16.0,
                                  ROUNDING_M);
  g_assert_cmpfloat_with_epsilon (sw_ground_break_down_m (ground, 2, 5.0),
                                  6.0 * sqrt (5.0) + hypot (4.0, 0.12), ROUNDING_M);
}

/* Source: plan area times sqrt (1 + 1 / hv2), for outlines whose plan area is known by
 * hand. */
static void
test_plane_areas (void)
{
  static const SwPoint square[] = { { 0, 0 }, { 10, 0 }, { 10, 10 }, { 0, 10 } };
  static const SwPoint corner[] = { { 0, 0 }, { 10, 0 }, { 10, 4 },
                                    { 4, 4 }, { 4, 10 }, { 0, 10 } };
  static const SwPoint triangle[] = { { 0, 0 }, { 12, 0 }, { 0, 9 } };
  static const SwPoint trapezoid[] = { { 0, 0 }, { 30, 0 }, { 24, 15 }, { 6, 15 } };
  static const SwPoint diamond[] = { { 5, 0 }, { 10, 5 }, { 5, 10 }, { 0, 5 } };
  static const struct
  {
    SwRing ring;
    double plan_m2;
  } rows[] = { { { square, 4 }, 100.0 },
               { { corner, 6 }, 64.0 },
               { { triangle, 3 }, 54.0 },
               { { trapezoid, 4 }, 360.0 },
               { { diamond, 4 }, 50.0 } };

  for (double hv = 0.25; hv <= 10.0; hv *= 1.7)
    for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
      {
        g_autoptr (SwGround) ground = plane (hv, 100.0);
        double want_m2 = rows[i].plan_m2 * sqrt (1.0 + 1.0 / (hv * hv));

        g_assert_cmpfloat_with_epsilon (sw_ground_area_m2 (ground, rows[i].ring), want_m2,
                                        1e-10 * want_m2);
      }
}

/* Source: by hand. 10 m wide over the whole bench: 10 (13.4164 + 4.0018 + 17.8885);
 * half of it under the diagonal is not the half, but each stretch its own trapezoid. */
static void
test_bench_areas (void)
{
  const SwPoint whole[] = { { 0, 0 }, { 10, 0 }, { 10, 32 }, { 0, 32 } };
  const SwPoint half[] = { { 0, 0 }, { 10, 0 }, { 0, 32 } };
  g_autoptr (SwGround) ground = extruded (bench, G_N_ELEMENTS (bench));
  double want_m2 = 0.0, half_m2 = 0.0;

  for (guint i = 1; i < G_N_ELEMENTS (bench); i++)
    {
      double length_m =
          hypot (bench[i].x_m - bench[i - 1].x_m, bench[i].y_m - bench[i - 1].y_m);
      double upper_m = 10.0 * (1.0 - bench[i - 1].x_m / 32.0);
      double lower_m = 10.0 * (1.0 - bench[i].x_m / 32.0);

      want_m2 += 10.0 * length_m;
      half_m2 += length_m * (upper_m + lower_m) / 2.0;
    }
  g_assert_cmpfloat_with_epsilon (sw_ground_area_m2 (ground, (SwRing){ whole, 4 }),
                                  want_m2, 1e-8);
  g_assert_cmpfloat_with_epsilon (sw_ground_area_m2 (ground, (SwRing){ half, 3 }),
                                  half_m2, 1e-8);
}

/* Direction, first point, extra points on edges and the mirror leave an area as it is. */
static void
test_area_invariants (void)
{
  const SwPoint a[] = { { 0, 1 }, { 9, 3 }, { 14, 30 }, { 8, 20 }, { 2, 25 } };
  const SwPoint backwards[] = { { 2, 25 }, { 8, 20 }, { 14, 30 }, { 9, 3 }, { 0, 1 } };
  const SwPoint turned[] = { { 14, 30 }, { 8, 20 }, { 2, 25 }, { 0, 1 }, { 9, 3 } };
  const SwPoint more[] = { { 0, 1 },  { 4.5, 2 },  { 9, 3 }, { 14, 30 },
                           { 8, 20 }, { 5, 22.5 }, { 2, 25 } };
  const SwPoint mirror[] = { { 0, 1 }, { -9, 3 }, { -14, 30 }, { -8, 20 }, { -2, 25 } };
  const SwRing others[] = { { backwards, 5 }, { turned, 5 }, { more, 7 }, { mirror, 5 } };
  g_autoptr (SwGround) ground = extruded (bench, G_N_ELEMENTS (bench));
  double area_m2 = sw_ground_area_m2 (ground, (SwRing){ a, 5 });

  for (guint i = 0; i < G_N_ELEMENTS (others); i++)
    g_assert_cmpfloat_with_epsilon (sw_ground_area_m2 (ground, others[i]), area_m2, 1e-8);
}

/* Source: midpoint rule, 200 000 slices down the slope, own factor of each stretch;
 * error of a slice that holds a break or a corner is below 1e-4 m2. */
static void
test_area_against_slices (void)
{
  const SwPoint outline[] = { { 0, 1 }, { 9, 3 }, { 14, 30 }, { 8, 20 }, { 2, 25 } };
  SwRing ring = { outline, G_N_ELEMENTS (outline) };
  g_autoptr (SwGround) ground = extruded (bench, G_N_ELEMENTS (bench));
  g_autoptr (GArray) spans = g_array_new (FALSE, FALSE, sizeof (SwSpan));
  const int slices = 200000;
  double step_m = 29.0 / slices, area_m2 = 0.0;

  for (int i = 0; i < slices; i++)
    {
      double out_m = 1.0 + (i + 0.5) * step_m;
      double drop_per_m = out_m < 12.0 ? 0.5 : out_m < 16.0 ? -0.03 : 0.5;
      double factor = sqrt (1.0 + drop_per_m * drop_per_m);

      sw_ring_cut_y (ring, out_m, spans);
      for (guint s = 0; s < spans->len; s++)
        {
          SwSpan span = g_array_index (spans, SwSpan, s);
          area_m2 += (span.to_m - span.from_m) * step_m * factor;
        }
    }
  g_assert_cmpfloat_with_epsilon (sw_ground_area_m2 (ground, ring), area_m2, 1e-3);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/ground/measure/plane-lines", test_plane_lines);
  g_test_add_func ("/ground/measure/bench-lines", test_bench_lines);
  g_test_add_func ("/ground/measure/line-invariants", test_line_invariants);
  g_test_add_func ("/ground/measure/collinear-section-point",
                   test_collinear_section_point);
  g_test_add_func ("/ground/measure/round-trip", test_round_trip);
  g_test_add_func ("/ground/measure/places", test_places);
  g_test_add_func ("/ground/measure/plane-areas", test_plane_areas);
  g_test_add_func ("/ground/measure/bench-areas", test_bench_areas);
  g_test_add_func ("/ground/measure/area-invariants", test_area_invariants);
  g_test_add_func ("/ground/measure/area-against-slices", test_area_against_slices);
  return g_test_run ();
}
