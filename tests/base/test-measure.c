/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include <math.h>
#include <slopewright/base/count.h>
#include <slopewright/base/gradient.h>
#include <slopewright/base/polygon.h>
#include <slopewright/base/working.h>

/* By hand. A tenth of a millimetre decides; less than half of one is rounding. */
static void
test_count_up (void)
{
  static const struct
  {
    double length_m, each_m;
    int up, whole;
  } rows[] = {
    { 0.0, 1.0, 0, 0 },
    { 3.0, 1.0, 3, 3 },
    { 3.0000000001, 1.0, 3, 3 },
    { 2.9999999999, 1.0, 3, 3 },
    { 3.00004, 1.0, 3, 3 },
    { 3.0001, 1.0, 4, 3 },
    { 2.9999, 1.0, 3, 2 },
    { 25.9, 2.34, 12, 11 },
    { 0.3 * 3.0, 0.3, 3, 3 }, /* 0.8999999999999999 in doubles */
    { 0.1 + 0.2, 0.1, 3, 3 }, /* 0.30000000000000004 */
    { 0.00004, 1.0, 0, 0 },
    { 0.0001, 1.0, 1, 0 },
    { 100000.0, 0.0001, 1000000000, 1000000000 },
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_assert_cmpint (sw_count_up (rows[i].length_m, rows[i].each_m), ==, rows[i].up);
      g_assert_cmpint (sw_count_whole (rows[i].length_m, rows[i].each_m), ==,
                       rows[i].whole);
    }
}

static void
test_ticks (void)
{
  g_assert_cmpint (sw_ticks (34.3), ==, 343000);
  g_assert_cmpint (sw_ticks (-0.00016), ==, -2);
  g_assert_cmpint (sw_ticks (0.00004), ==, 0);
  g_assert_cmpint (sw_ticks (2.44) * 3, ==, sw_ticks (7.32));
}

/* The quick comparison says what whole ticks say, at every half and beside it. */
static void
test_reaches_ticks (void)
{
  static const double least_m[] = { 0.0001, 0.04, 0.1, 0.30005, 2.44 };

  for (gsize i = 0; i < G_N_ELEMENTS (least_m); i++)
    for (int k = -3; k <= 3; k++)
      {
        double half_m = least_m[i] + (k + 0.5) / SW_TICKS_PER_M;
        const double lengths_m[] = { half_m, nextafter (half_m, -1.0),
                                     nextafter (half_m, 10.0), -half_m,
                                     least_m[i] + k / SW_TICKS_PER_M };

        for (gsize j = 0; j < G_N_ELEMENTS (lengths_m); j++)
          g_assert_cmpint (sw_reaches_ticks (lengths_m[j], sw_least_ticks (least_m[i])),
                           ==, sw_ticks (lengths_m[j]) >= sw_ticks (least_m[i]));
      }
}

static void
test_count_ratio (void)
{
  g_assert_cmpint (sw_count_up_ratio (0.0), ==, 0);
  g_assert_cmpint (sw_count_up_ratio (2.0000000000001), ==, 2);
  g_assert_cmpint (sw_count_up_ratio (2.000001), ==, 3);
  g_assert_cmpint (sw_count_up_ratio (20.0 * 1.05), ==, 21);
  g_assert_cmpint (sw_count_up_ratio (100.0 * 1.1), ==, 110); /* 110.00000000000001 */
}

/* Ratio, angle and rise agree for every slope a person may stand on. */
static void
test_gradient_round_trip (void)
{
  for (double hv = 0.05; hv < 200.0; hv *= 1.07)
    {
      double angle = NAN, same = NAN;

      g_assert_cmpint (sw_gradient_from_hv (hv, &angle), ==, SW_OK);
      g_assert_cmpfloat_with_epsilon (sw_gradient_hv (angle), hv,
                                      1e-12 * hv * hv + 1e-12);
      g_assert_cmpfloat_with_epsilon (sw_gradient_ratio (angle), 1.0 / hv,
                                      1e-12 / hv / hv + 1e-12);
      g_assert_cmpint (sw_gradient_from_ratio (1.0 / hv, &same), ==, SW_OK);
      g_assert_cmpfloat_with_epsilon (same, angle, 1e-14);
    }
  g_assert_true (isinf (sw_gradient_hv (0.0)));
}

/* Source: Pythagorean triples. What is refused leaves the output as it was. */
static void
test_ramp_and_refusals (void)
{
  double length_m = -1.0, angle = -1.0;

  g_assert_cmpint (sw_ramp_length (4.0, -3.0, &length_m), ==, SW_OK);
  g_assert_cmpfloat_with_epsilon (length_m, 5.0, 1e-12);
  g_assert_cmpint (sw_ramp_length (15.0, 8.0, &length_m), ==, SW_OK);
  g_assert_cmpfloat_with_epsilon (length_m, 17.0, 1e-12);
  length_m = -1.0;
  g_assert_cmpint (sw_ramp_length (0.0, 3.0, &length_m), ==, SW_E_RANGE);
  g_assert_cmpint (sw_ramp_length (-4.0, 3.0, &length_m), ==, SW_E_RANGE);
  g_assert_cmpint (sw_ramp_length (NAN, 3.0, &length_m), ==, SW_E_RANGE);
  g_assert_cmpint (sw_ramp_length (4.0, INFINITY, &length_m), ==, SW_E_RANGE);
  g_assert_cmpint (sw_gradient_from_hv (0.0, &angle), ==, SW_E_RANGE);
  g_assert_cmpint (sw_gradient_from_hv (-2.0, &angle), ==, SW_E_RANGE);
  g_assert_cmpint (sw_gradient_from_hv (NAN, &angle), ==, SW_E_RANGE);
  g_assert_cmpint (sw_gradient_from_hv (INFINITY, &angle), ==, SW_E_RANGE);
  g_assert_cmpint (sw_gradient_from_ratio (NAN, &angle), ==, SW_E_RANGE);
  g_assert_cmpfloat_with_epsilon (length_m, -1.0, 1e-12);
  g_assert_cmpfloat_with_epsilon (angle, -1.0, 1e-12);
}

static const SwPoint corner[] = { { 0, 0 }, { 10, 0 }, { 10, 4 },
                                  { 4, 4 }, { 4, 10 }, { 0, 10 } };
static const SwRing corner_ring = { corner, G_N_ELEMENTS (corner) };

/* By hand: 10 x 4 + 4 x 6 = 64; the sign follows the way round, far from the datum too. */
static void
test_area (void)
{
  SwPoint turned[6], far[6];

  for (guint i = 0; i < 6; i++)
    {
      turned[i] = corner[5 - i];
      far[i] = (SwPoint){ corner[i].x_m + 5e6, corner[i].y_m - 7e6 };
    }
  g_assert_cmpfloat_with_epsilon (sw_ring_signed_area_m2 (corner_ring), 64.0, 1e-12);
  g_assert_cmpfloat_with_epsilon (sw_ring_signed_area_m2 ((SwRing){ turned, 6 }), -64.0,
                                  1e-12);
  g_assert_cmpfloat_with_epsilon (sw_ring_area_m2 ((SwRing){ turned, 6 }), 64.0, 1e-12);
  g_assert_cmpfloat_with_epsilon (sw_ring_area_m2 ((SwRing){ far, 6 }), 64.0, 1e-6);
}

static void
test_contains (void)
{
  static const struct
  {
    SwPoint p;
    gboolean in;
  } rows[] = { { { 2, 2 }, TRUE },
               { { 9, 3 }, TRUE },
               { { 2, 9 }, TRUE },
               { { 6, 6 }, FALSE },
               { { -1, 5 }, FALSE },
               { { 11, 0 }, FALSE },
               { { 0, 0 }, TRUE } /* vertex */,
               { { 7, 4 }, TRUE } /* edge */,
               { { 7, 4.00005 }, TRUE } /* within 0.1 mm of it */,
               { { 7, 4.001 }, FALSE },
               { { 4, 7 }, TRUE },
               { { 4.1, 4.1 }, FALSE },
               /* level with vertices, where a careless count goes wrong */
               { { -5, 4 }, FALSE },
               { { 12, 4 }, FALSE },
               { { 12, 10 }, FALSE } };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    g_assert_true (sw_ring_contains (corner_ring, rows[i].p) == rows[i].in);
}

static void
check_spans (GArray *spans, const double *want, guint count)
{
  g_assert_cmpuint (spans->len, ==, count / 2);
  for (guint i = 0; i < spans->len; i++)
    {
      g_assert_cmpfloat_with_epsilon (g_array_index (spans, SwSpan, i).from_m,
                                      want[2 * i], 1e-12);
      g_assert_cmpfloat_with_epsilon (g_array_index (spans, SwSpan, i).to_m,
                                      want[2 * i + 1], 1e-12);
    }
}

/* By hand: beside the line its foot counts, beyond an end that end, 3-4-5; a line without
 * length is a point. */
static void
test_segment_distance (void)
{
  static const struct
  {
    SwPoint a, b, point;
    double distance_m;
  } rows[] = {
    { { 0.0, 0.0 }, { 10.0, 0.0 }, { 4.0, 2.0 }, 2.0 },
    { { 0.0, 0.0 }, { 10.0, 0.0 }, { 13.0, 4.0 }, 5.0 },
    { { 10.0, 0.0 }, { 0.0, 0.0 }, { -3.0, -4.0 }, 5.0 },
    { { 1.0, 1.0 }, { 1.0, 1.0 }, { 4.0, 5.0 }, 5.0 },
    { { 0.0, 0.0 }, { 3.0, 4.0 }, { 1.5, 2.0 }, 0.0 },
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    g_assert_cmpfloat_with_epsilon (
        sw_segment_distance_m (rows[i].a, rows[i].b, rows[i].point), rows[i].distance_m,
        1e-12);
}

/* A comb: two spans across its teeth, one across its back, none beside it. */
static void
test_cuts (void)
{
  const SwPoint comb[] = { { 0, 0 }, { 9, 0 }, { 9, 8 }, { 6, 8 },
                           { 6, 2 }, { 3, 2 }, { 3, 8 }, { 0, 8 } };
  const SwRing ring = { comb, G_N_ELEMENTS (comb) };
  g_autoptr (GArray) spans = g_array_new (FALSE, FALSE, sizeof (SwSpan));

  sw_ring_cut_y (ring, 5.0, spans);
  check_spans (spans, (double[]){ 0, 3, 6, 9 }, 4);
  sw_ring_cut_y (ring, 1.0, spans);
  check_spans (spans, (double[]){ 0, 9 }, 2);
  sw_ring_cut_x (ring, 4.0, spans);
  check_spans (spans, (double[]){ 0, 2 }, 2);
  sw_ring_cut_x (ring, 1.0, spans);
  check_spans (spans, (double[]){ 0, 8 }, 2);
  sw_ring_cut_x (ring, 9.5, spans);
  check_spans (spans, NULL, 0);
  /* Through vertices it is read from the right, so the last edge is outside. */
  sw_ring_cut_x (ring, 0.0, spans);
  check_spans (spans, (double[]){ 0, 8 }, 2);
  sw_ring_cut_x (ring, 9.0, spans);
  check_spans (spans, NULL, 0);
}

/* Cut lengths, integrated, are the area: the trapezoid rule is exact between corners. */
static void
test_cuts_are_area (void)
{
  const SwPoint p[] = { { 0, 1 }, { 9, 3 }, { 14, 30 }, { 8, 20 }, { 2, 25 } };
  const SwRing ring = { p, G_N_ELEMENTS (p) };
  g_autoptr (GArray) spans = g_array_new (FALSE, FALSE, sizeof (SwSpan));
  const int slices = 14000;
  double area_m2 = 0.0;

  for (int i = 0; i < slices; i++)
    {
      sw_ring_cut_x (ring, (i + 0.5) * 14.0 / slices, spans);
      for (guint s = 0; s < spans->len; s++)
        area_m2 += (g_array_index (spans, SwSpan, s).to_m
                    - g_array_index (spans, SwSpan, s).from_m)
                   * 14.0 / slices;
    }
  g_assert_cmpfloat_with_epsilon (area_m2, sw_ring_area_m2 (ring), 1e-4);
}

static void
test_box (void)
{
  const SwPoint p[] = { { 5, -3 }, { -2, 7 }, { 1, 1 } };
  SwBox box = sw_ring_box ((SwRing){ p, 3 });

  g_assert_cmpfloat_with_epsilon (box.x0_m, -2.0, 1e-12);
  g_assert_cmpfloat_with_epsilon (box.y0_m, -3.0, 1e-12);
  g_assert_cmpfloat_with_epsilon (box.x1_m, 5.0, 1e-12);
  g_assert_cmpfloat_with_epsilon (box.y1_m, 7.0, 1e-12);
}

static const SwInput *
input_at (const SwWorking *working, guint i)
{
  g_assert_cmpuint (i, <, working->inputs->len);
  return &g_array_index (working->inputs, SwInput, i);
}

/* Inputs remember where they came from, and own what they say. */
static void
test_working (void)
{
  g_autoptr (SwPractice) practice = sw_practice_new ();
  SwSourced swell = { 0.25, SW_EVIDENCE_MEMORY, (char *) "a table" };
  SwWorking *width = sw_working_new ("tier_width", 26.0, SW_UNIT_M, SW_ROUNDING_NONE,
                                     "%s.%d.width", "A", 1);
  SwWorking *runs =
      sw_working_new ("run_count", 12.0, SW_UNIT_COUNT, SW_ROUNDING_UP, "A.1.runs");

  practice->source_id = g_strdup ("the practice");
  practice->values[SW_PRACTICE_SIDE_LAP_M] = (SwSourced){ 0.1, SW_EVIDENCE_SEEN, NULL };
  practice->values[SW_PRACTICE_SET_BACK_M] =
      (SwSourced){ 0.6, SW_EVIDENCE_USER, g_strdup ("because") };
  sw_working_computed (runs, "width", width);
  sw_working_typed (runs, "roll", 2.44, SW_UNIT_M);
  sw_working_practice (runs, "lap", practice, SW_PRACTICE_SIDE_LAP_M);
  sw_working_practice (runs, "back", practice, SW_PRACTICE_SET_BACK_M);
  sw_working_sourced (runs, "swell", &swell, SW_UNIT_PERCENT);
  sw_working_measured (runs, "length", 9.9, SW_UNIT_M);
  sw_working_part (runs, "part", 1.0, SW_UNIT_COUNT);
  g_assert_cmpstr (width->name, ==, "A.1.width");
  sw_working_free (width);
  g_assert_cmpuint (runs->inputs->len, ==, 7);
  g_assert_cmpint (input_at (runs, 0)->origin, ==, SW_ORIGIN_COMPUTED);
  g_assert_cmpstr (input_at (runs, 0)->name, ==, "A.1.width");
  g_assert_cmpint (input_at (runs, 1)->origin, ==, SW_ORIGIN_TYPED);
  g_assert_cmpint (input_at (runs, 2)->origin, ==, SW_ORIGIN_PRACTICE);
  g_assert_cmpstr (input_at (runs, 2)->name, ==, "side_lap_m");
  g_assert_cmpstr (input_at (runs, 2)->source, ==, "the practice");
  g_assert_cmpint (input_at (runs, 2)->unit, ==, SW_UNIT_SMALL_M);
  g_assert_cmpint (input_at (runs, 3)->evidence, ==, SW_EVIDENCE_USER);
  g_assert_cmpstr (input_at (runs, 3)->source, ==, "because");
  g_assert_cmpint (input_at (runs, 4)->origin, ==, SW_ORIGIN_CATALOGUE);
  g_assert_cmpstr (input_at (runs, 4)->source, ==, "a table");
  g_assert_cmpint (input_at (runs, 5)->origin, ==, SW_ORIGIN_MEASURED);
  g_assert_cmpint (input_at (runs, 6)->origin, ==, SW_ORIGIN_COMPUTED);
  g_assert_null (input_at (runs, 6)->name);
  sw_working_free (runs);
  sw_working_free (NULL);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/base/count/up", test_count_up);
  g_test_add_func ("/base/count/ticks", test_ticks);
  g_test_add_func ("/base/count/reaches-ticks", test_reaches_ticks);
  g_test_add_func ("/base/count/ratio", test_count_ratio);
  g_test_add_func ("/base/gradient/round-trip", test_gradient_round_trip);
  g_test_add_func ("/base/gradient/ramp-and-refusals", test_ramp_and_refusals);
  g_test_add_func ("/base/polygon/area", test_area);
  g_test_add_func ("/base/polygon/contains", test_contains);
  g_test_add_func ("/base/polygon/segment-distance", test_segment_distance);
  g_test_add_func ("/base/polygon/cuts", test_cuts);
  g_test_add_func ("/base/polygon/cuts-are-area", test_cuts_are_area);
  g_test_add_func ("/base/polygon/box", test_box);
  g_test_add_func ("/base/working", test_working);
  return g_test_run ();
}
