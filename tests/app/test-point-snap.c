/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "measured-line.h"
#include "point-snap.h"
#include "stock.h"
#include <math.h>

static const SwNumberStyle metric = { SW_UNITS_METRIC, '.', NULL };

/* The default job: crest (0, 5), toe (10, 0); outline 20 m along, 0 to 10 m out. */
static const SwFace *
face_of (const SwJob *job)
{
  return g_ptr_array_index (job->faces, 0);
}

static SwSnap
snap (const SwJob *job, SwPointList list, int index, SwPoint wish)
{
  return sw_snap_point (face_of (job), list, index,
                        (SwSnapWish){ .wish = wish, .step_m = 0.1, .reach_m = 0.2 });
}

/* 12 m out from the crest at 5 m, 3:1 is 4 m down. */
static void
test_ratio (void)
{
  g_autoptr (SwJob) job = sw_job_new_default ();
  SwSnap got = snap (job, SW_POINTS_SECTION, 1, (SwPoint){ 12.02, 0.91 });
  g_autofree char *words = sw_snap_text (got, 0.1, metric);

  g_assert_cmpfloat_with_epsilon (got.to.x_m, 12.0, 1e-9);
  g_assert_cmpfloat_with_epsilon (got.to.y_m, 1.0, 1e-9);
  g_assert_cmpstr (words, ==, "3H:1V · 18.4° · 33.3\u00a0% from point 1");
}

/* Held at its height, the toe comes to 2:1 by going out: 2 x 5 m. */
static void
test_ratio_level (void)
{
  g_autoptr (SwJob) job = sw_job_new_default ();
  SwSnap got = sw_snap_point (
      face_of (job), SW_POINTS_SECTION, 1,
      (SwSnapWish){
          .wish = { 10.15, 0.0 }, .step_m = 0.1, .reach_m = 0.2, .fix_y = TRUE });

  g_assert_cmpfloat_with_epsilon (got.to.x_m, 10.0, 1e-9);
  g_assert_cmpfloat (got.to.y_m, ==, 0.0);
  g_assert_cmpint (got.x.kind, ==, SW_SNAP_RATIO);
}

static void
test_level_and_grid (void)
{
  g_autoptr (SwJob) job = sw_job_new_default ();
  SwSnap level = snap (job, SW_POINTS_SECTION, 1, (SwPoint){ 17.03, 4.88 });
  SwSnap grid = snap (job, SW_POINTS_SECTION, 1, (SwPoint){ 7.03, -0.48 });

  g_assert_cmpint (level.y.kind, ==, SW_SNAP_LEVEL);
  g_assert_cmpfloat (level.to.y_m, ==, 5.0);
  g_assert_cmpint (grid.y.kind, ==, SW_SNAP_GRID);
  g_assert_cmpfloat_with_epsilon (grid.to.y_m, -0.5, 1e-9);
  g_assert_cmpfloat_with_epsilon (grid.to.x_m, 7.0, 1e-9);
}

/* The third corner of the outline: in line with the second, level with the fourth or on
 * the toe line, which are the same here. */
static void
test_outline (void)
{
  g_autoptr (SwJob) job = sw_job_new_default ();
  SwSnap got = snap (job, SW_POINTS_OUTLINE, 2, (SwPoint){ 19.88, 10.13 });

  g_assert_cmpfloat (got.to.x_m, ==, 20.0);
  g_assert_cmpfloat (got.to.y_m, ==, 10.0);
  g_assert_cmpint (got.x.kind, ==, SW_SNAP_IN_LINE);
}

/* A side from (0, 0) to (4, 3): square to it at (4, 3) lies (1, 7), a 3-4-5 triangle on. */
static void
test_right_angle (void)
{
  const SwPoint ring[] = { { 0.0, 0.0 }, { 4.0, 3.0 }, { 1.5, 7.5 }, { -4.0, 4.0 } };
  g_autoptr (SwJob) job = sw_job_new_default ();
  SwSnap got;

  sw_face_set_outline (g_ptr_array_index (job->faces, 0), ring, G_N_ELEMENTS (ring));
  got = snap (job, SW_POINTS_OUTLINE, 2, (SwPoint){ 1.05, 7.02 });
  g_assert_cmpint (got.x.kind, ==, SW_SNAP_SQUARE);
  g_assert_cmpfloat_with_epsilon ((got.to.x_m - 4.0) * 4.0 + (got.to.y_m - 3.0) * 3.0,
                                  0.0, 1e-9);
  g_assert_cmpfloat_with_epsilon (hypot (got.to.x_m - 1.0, got.to.y_m - 7.0), 0.0, 0.1);
}

/* Down a 2:1 face of 5 m: sqrt (125) = 11.18 m; across it 6 m and down it wholly: plan
 * sqrt (36 + 100) = 11.66 m, over the ground sqrt (36 + 125) = 12.69 m. */
static void
test_measured (void)
{
  SwStock *stock = NULL;
  g_autoptr (SwJob) job = sw_job_new_default ();
  SwMeasuredLine line =
      sw_line_in_section ((SwPoint){ 0.0, 5.0 }, (SwPoint){ 10.0, 0.0 });
  g_autofree char *words = sw_line_text (line, metric);

  g_assert_cmpstr (words, ==,
                   "11.18\u00a0m long · 10.00\u00a0m on plan · falls 5.00\u00a0m · "
                   "2H:1V · 26.6° · 50\u00a0%");
  stock = sw_stock_new (NULL);
  g_autoptr (SwResult) result = sw_result_new (job, stock->catalogue);
  line = sw_line_on_face (result, 0, (SwPoint){ 2.0, 0.0 }, (SwPoint){ 8.0, 10.0 });
  g_assert_cmpfloat_with_epsilon (line.true_m, sqrt (161.0), 1e-6);
  g_assert_cmpfloat_with_epsilon (line.plan_m, sqrt (136.0), 1e-6);
  g_assert_cmpfloat_with_epsilon (line.rise_m, -5.0, 1e-9);
  g_clear_pointer (&result, sw_result_unref);
  sw_stock_free (stock);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
#define ADD(path, function) g_test_add_func ("/app/point-snap/" path, function)
  ADD ("ratio", test_ratio);
  ADD ("ratio-level", test_ratio_level);
  ADD ("level-and-grid", test_level_and_grid);
  ADD ("outline", test_outline);
  ADD ("right-angle", test_right_angle);
  ADD ("measured", test_measured);
#undef ADD
  return g_test_run ();
}
