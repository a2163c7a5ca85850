/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "fixture.h"
#include <math.h>

/*
 * A rectangle worked by hand with the practice of the fixture: 4 out on 3 down, so a metre
 * on plan is 1.25 m down the face; 8 m out, 10 m down, 10.1 m wide. Roll 2.10, lap 0.10:
 * (10.1 - 0.1) / 2 = 5 strips from 0, 2, 4, 6 and 8 to 2.1, 4.1, 6.1, 8.1 and 10.1.
 *
 * Pins without an obstacle:
 *   key trench and toe 10.1 / 0.3 = 33.7 -> 34 + 1 = 35 each;
 *   4 laps, at 2.05, 4.05, 6.05 and 8.05, of 10 / 0.6 = 16.7 -> 16 + 1 = 17: 68;
 *   2 edges of 17: 34;
 *   field: five gaps of 2.00 or 2.05, 3 columns each: rows 0.3 + 0.6 i down to 9.9: 17, rows
 *   0.6 + 0.6 i: 16, rows 0.3 + 0.6 i: 17; 5 x 50 = 250.
 * Net 101.0. Cut length 0.60 + 0.45 + 10 + 0.30 = 11.35.
 */
#define HAND 1e-9

static SwLayout *
lay_with (const SwCatalogue *catalogue, const SwPoint *outline, guint count)
{
  g_autoptr (SwJob) job = fixture_job ();
  SwFace *face = fixture_add_plane (job, "A", 4.0 / 3.0, 6.0, 10.1);
  SwObstacle *obstacle = sw_obstacle_new ("1");

  job->roll_width_m = 2.10;
  sw_obstacle_set_outline (obstacle, outline, count);
  if (count > 0)
    g_ptr_array_add (face->obstacles, obstacle);
  else
    sw_obstacle_free (obstacle);
  return fixture_lay (job, catalogue);
}

static SwLayout *
lay_box (const SwCatalogue *catalogue, double x0, double y0, double x1, double y1)
{
  const SwPoint outline[] = { { x0, y0 }, { x1, y0 }, { x1, y1 }, { x0, y1 } };

  return lay_with (catalogue, outline, 4);
}

static void
expect_pins (const SwFaceLayout *face, gsize key, gsize toe, gsize lap, gsize edge,
             gsize field, gsize ring)
{
  g_assert_cmpuint (face->pins_by_role[SW_PIN_KEY_TRENCH], ==, key);
  g_assert_cmpuint (face->pins_by_role[SW_PIN_TOE], ==, toe);
  g_assert_cmpuint (face->pins_by_role[SW_PIN_SIDE_LAP], ==, lap);
  g_assert_cmpuint (face->pins_by_role[SW_PIN_EDGE], ==, edge);
  g_assert_cmpuint (face->pins_by_role[SW_PIN_FIELD], ==, field);
  g_assert_cmpuint (face->pins_by_role[SW_PIN_RING], ==, ring);
  g_assert_cmpuint (face->n_pins, ==, key + toe + lap + edge + field + ring);
}

static void
expect_cut_out (const SwCutOut *hole, double along_from, double along_to,
                double down_from, double down_to)
{
  g_assert_cmpfloat_with_epsilon (hole->along_from_m, along_from, HAND);
  g_assert_cmpfloat_with_epsilon (hole->along_to_m, along_to, HAND);
  g_assert_cmpfloat_with_epsilon (hole->down_from_m, down_from, HAND);
  g_assert_cmpfloat_with_epsilon (hole->down_to_m, down_to, HAND);
}

static void
test_none (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwLayout) layout = lay_with (catalogue, NULL, 0);
  const SwFaceLayout *face = &layout->faces[0];

  expect_pins (face, 35, 35, 68, 34, 250, 0);
  g_assert_cmpuint (face->n_runs, ==, 5);
  g_assert_cmpuint (face->n_cut_outs, ==, 0);
  g_assert_cmpfloat_with_epsilon (face->tiers[0].net_m2, 101.0, 1e-7);
}

/*
 * Inside run 2: 2.8 to 3.3 along, 3.2 to 4.0 out, so 4 to 5 m down; 0.5 m2, not deducted.
 * Ring 0.1 m off on plan: 0.7 by 1.25 down, 2 x 0.7 + 2 x 1.25 = 3.9 / 0.3 = 13.
 * Column 3.05 (rows 0.6 + 0.6 i) loses 4.2 and 4.8, between 3.875 and 5.125; columns 2.55
 * and 3.55 stand 0.15 beside the ring and lose none. Field 250 - 2 = 248.
 * Around 2 x 0.5 + 2 x 1 = 3.0; collar on the ground 0.8 x 1.3 - 0.5 x 1.0 = 0.54.
 */
static void
test_in_a_run (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwLayout) layout = lay_box (catalogue, 2.8, 3.2, 3.3, 4.0);
  const SwFaceLayout *face = &layout->faces[0];
  const SwObstaclePlace *place = &face->obstacles[0];

  expect_pins (face, 35, 35, 68, 34, 248, 13);
  g_assert_cmpuint (face->n_runs, ==, 5);
  for (guint i = 0; i < 5; i++)
    {
      g_assert_cmpuint (face->runs[i].n_cut_outs, ==, i == 1 ? 1 : 0);
      g_assert_cmpfloat_with_epsilon (face->runs[i].cut_m, 11.35, HAND);
    }
  expect_cut_out (&face->cut_outs[0], 2.8, 3.3, 4.0, 5.0);
  g_assert_true (place->standing);
  g_assert_false (place->deducted);
  g_assert_cmpfloat_with_epsilon (place->area_m2, 0.5, HAND);
  g_assert_cmpfloat_with_epsilon (place->around_m, 3.0, HAND);
  g_assert_cmpfloat_with_epsilon (place->collar_m2, 0.54, HAND);
  g_assert_cmpfloat_with_epsilon (face->tiers[0].net_m2, 101.0, 1e-7);
}

/*
 * In the lap of runs 1 and 2: 1.85 to 2.25 along, 4 to 5 m down. Run 1 is cut from 1.85 to
 * its edge at 2.1, run 2 from its edge at 2.0 to 2.25. Ring 2 x 0.6 + 2 x 1.25 = 3.7 / 0.3 =
 * 12.3 -> 13. The lap row at 2.05 loses 4.2 and 4.8: 66.
 */
static void
test_in_a_lap (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwLayout) layout = lay_box (catalogue, 1.85, 3.2, 2.25, 4.0);
  const SwFaceLayout *face = &layout->faces[0];

  expect_pins (face, 35, 35, 66, 34, 250, 13);
  g_assert_cmpuint (face->n_runs, ==, 5);
  g_assert_cmpuint (face->n_cut_outs, ==, 2);
  g_assert_cmpuint (face->runs[0].n_cut_outs, ==, 1);
  g_assert_cmpuint (face->runs[1].n_cut_outs, ==, 1);
  expect_cut_out (&face->cut_outs[face->runs[0].first_cut_out], 1.85, 2.1, 4.0, 5.0);
  expect_cut_out (&face->cut_outs[face->runs[1].first_cut_out], 2.0, 2.25, 4.0, 5.0);
}

static double
trench_m (const SwFaceLayout *face, SwTrenchKind kind, gboolean obstacle)
{
  double length_m = 0.0;

  for (guint i = 0; i < face->n_trenches; i++)
    if (face->trenches[i].kind == kind && !face->trenches[i].obstacle == !obstacle)
      length_m += face->trenches[i].length_m;
  return length_m;
}

/*
 * Wider than runs 2 and 3: 1.9 to 6.2 along, 4 to 5 m down, 4.3 m2, deducted: 96.7.
 * Runs 2 and 3 end above it, 0.60 + 0.45 + 4 + 0.30 = 5.35, and begin again below it in a
 * key trench of their own without set-back, 0.45 + 5 + 0.30 = 5.75; runs 1 and 4 pass it.
 * Trenches from 2.0 to 6.1, 4.1 m: 13.7 -> 14 + 1 = 15 pins above and below.
 * Centre lines 0.1 / 0.8 + 0.075 = 0.2 from the edge, at 3.8 and 5.2 m down.
 * Ring only at the two ends, each 0.1 + 1.25 + 0.1 = 1.45 / 0.3 = 4.8 -> 5 + 1 = 6.
 * Beside the trenches, 0.175 on plan = 0.219 down: rows from 3.58 to 5.42 go. The laps at
 * 2.05, 4.05 and 6.05 lose 3.6, 4.2, 4.8 and 5.4: 68 - 12 = 56. Two gaps of columns lose
 * 3.9, 4.5, 5.1 twice and 3.6, 4.2, 4.8, 5.4 once: 250 - 20 = 230.
 */
static void
test_wider_than_a_run (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwLayout) layout = lay_box (catalogue, 1.9, 3.2, 6.2, 4.0);
  const SwFaceLayout *face = &layout->faces[0];
  static const struct
  {
    const char *label;
    double cut_m;
    guint holes;
  } runs[] = { { "1", 11.35, 1 }, { "2a", 5.35, 0 }, { "2b", 5.75, 0 }, { "3a", 5.35, 0 },
               { "3b", 5.75, 0 }, { "4", 11.35, 1 }, { "5", 11.35, 0 } };

  g_assert_cmpuint (face->n_runs, ==, G_N_ELEMENTS (runs));
  for (guint i = 0; i < G_N_ELEMENTS (runs); i++)
    {
      g_autofree char *label = sw_run_label (&face->runs[i]);

      g_assert_cmpstr (label, ==, runs[i].label);
      g_assert_cmpfloat_with_epsilon (face->runs[i].cut_m, runs[i].cut_m, HAND);
      g_assert_cmpuint (face->runs[i].n_cut_outs, ==, runs[i].holes);
    }
  g_assert_true (face->runs[1].obstacle_below && !face->runs[1].obstacle_above);
  g_assert_true (face->runs[2].obstacle_above && !face->runs[2].obstacle_below);
  g_assert_cmpfloat_with_epsilon (trench_m (face, SW_TRENCH_KEY, FALSE), 10.1, HAND);
  g_assert_cmpfloat_with_epsilon (trench_m (face, SW_TRENCH_KEY, TRUE), 4.1, HAND);
  g_assert_cmpfloat_with_epsilon (trench_m (face, SW_TRENCH_TOE, FALSE), 10.1, HAND);
  g_assert_cmpfloat_with_epsilon (trench_m (face, SW_TRENCH_TOE, TRUE), 4.1, HAND);
  for (guint i = 0; i < face->n_trenches; i++)
    if (face->trenches[i].obstacle)
      g_assert_cmpfloat_with_epsilon (face->trenches[i].line[0].down_m,
                                      face->trenches[i].kind == SW_TRENCH_KEY ? 5.2 : 3.8,
                                      HAND);
  expect_pins (face, 50, 50, 56, 34, 230, 12);
  g_assert_true (face->obstacles[0].deducted);
  g_assert_cmpfloat_with_epsilon (face->tiers[0].net_m2, 96.7, 1e-7);
  g_assert_cmpfloat_with_epsilon (face->tiers[0].deducted_m2, 4.3, 1e-7);
}

/*
 * A headwall in the toe: 3.9 to 6.2 along from 5.6 out (7 m down) to beyond the toe. Run 3
 * ends at it: 0.60 + 0.45 + 7 + 0.30 = 8.35; runs 2 and 4 pass it. The toe trench is left
 * out along it: 10.1 - 2.3 = 7.8 in two, and 2.1 m are dug above it.
 */
static void
test_headwall (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwLayout) layout = lay_box (catalogue, 3.9, 5.6, 6.2, 9.0);
  const SwFaceLayout *face = &layout->faces[0];

  g_assert_cmpuint (face->n_runs, ==, 5);
  g_assert_cmpfloat_with_epsilon (face->runs[2].cut_m, 8.35, HAND);
  g_assert_true (face->runs[2].obstacle_below);
  g_assert_cmpfloat_with_epsilon (face->runs[1].cut_m, 11.35, HAND);
  g_assert_cmpfloat_with_epsilon (trench_m (face, SW_TRENCH_TOE, FALSE), 7.8, HAND);
  g_assert_cmpfloat_with_epsilon (trench_m (face, SW_TRENCH_TOE, TRUE), 2.1, HAND);
  g_assert_cmpfloat_with_epsilon (trench_m (face, SW_TRENCH_KEY, FALSE), 10.1, HAND);
  /* 2.3 x 3 of its 2.3 x 4.25 stand on the face. */
  g_assert_cmpfloat_with_epsilon (face->obstacles[0].area_m2, 6.9, HAND);
  g_assert_cmpfloat_with_epsilon (face->tiers[0].net_m2, 101.0 - 6.9, 1e-7);
}

/* A drain aslant through runs 2 to 4 cuts each in two, though their extents overlap. */
static void
test_aslant (void)
{
  const SwPoint drain[] = { { 1.9, 2.0 }, { 8.2, 5.0 }, { 8.2, 5.4 }, { 1.9, 2.4 } };
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwLayout) layout = lay_with (catalogue, drain, 4);
  const SwFaceLayout *face = &layout->faces[0];

  g_assert_cmpuint (face->n_runs, ==, 8);
  for (guint i = 1; i < 7; i += 2)
    {
      g_assert_true (face->runs[i].obstacle_below);
      g_assert_true (face->runs[i + 1].obstacle_above);
      g_assert_cmpfloat (face->runs[i].out_to_m, >, face->runs[i + 1].out_from_m);
    }
  /* Along the drain from 2.0 to 8.1: 6.1 along, 6.1 x 3 / 6.3 out. */
  g_assert_cmpfloat_with_epsilon (trench_m (face, SW_TRENCH_KEY, TRUE),
                                  hypot (6.1, 6.1 * 3.0 / 6.3 * 1.25), 1e-6);
}

static void
test_not_on_the_face (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwLayout) layout = lay_box (catalogue, 20.0, 3.0, 22.0, 4.0);
  const SwFaceLayout *face = &layout->faces[0];

  expect_pins (face, 35, 35, 68, 34, 250, 0);
  g_assert_false (face->obstacles[0].standing);
  g_assert_false (face->obstacles[0].deducted);
  g_assert_cmpfloat_with_epsilon (face->tiers[0].net_m2, 101.0, 1e-7);
}

static void
test_refused (void)
{
  static const struct
  {
    double x[4], y[4];
    SwStatus status;
  } outlines[] = {
    { { 2, 3, 2, 3 }, { 2, 3, 3, 2 }, SW_E_OBSTACLE },    /* a bow tie */
    { { 2, 3, 4, 5 }, { 2, 2, 2, 2 }, SW_E_OBSTACLE },    /* a line */
    { { 2, NAN, 3, 2 }, { 2, 2, 3, 3 }, SW_E_OBSTACLE },  /* no number */
    { { -1, 12, 12, -1 }, { -1, -1, 9, 9 }, SW_E_EMPTY }, /* covers everything */
  };
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();

  for (guint i = 0; i < G_N_ELEMENTS (outlines); i++)
    {
      g_autoptr (SwJob) job = fixture_job ();
      SwFace *face = fixture_add_plane (job, "A", 4.0 / 3.0, 6.0, 10.1);
      SwObstacle *obstacle = sw_obstacle_new ("1");
      SwLayout *layout = NULL;
      SwPoint points[4];
      int bad_face = -1;

      for (guint p = 0; p < 4; p++)
        points[p] = (SwPoint){ outlines[i].x[p], outlines[i].y[p] };
      sw_obstacle_set_outline (obstacle, points, 4);
      g_ptr_array_add (face->obstacles, obstacle);
      g_assert_cmpint (sw_layout_new (job, catalogue, &layout, &bad_face), ==,
                       outlines[i].status);
      g_assert_cmpint (bad_face, ==, 0);
      g_assert_null (layout);
    }
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/layout/obstacles/none", test_none);
  g_test_add_func ("/layout/obstacles/in-a-run", test_in_a_run);
  g_test_add_func ("/layout/obstacles/in-a-lap", test_in_a_lap);
  g_test_add_func ("/layout/obstacles/wider-than-a-run", test_wider_than_a_run);
  g_test_add_func ("/layout/obstacles/headwall", test_headwall);
  g_test_add_func ("/layout/obstacles/aslant", test_aslant);
  g_test_add_func ("/layout/obstacles/not-on-the-face", test_not_on_the_face);
  g_test_add_func ("/layout/obstacles/refused", test_refused);
  return g_test_run ();
}
