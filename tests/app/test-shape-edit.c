/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "point-words.h"
#include "section-edit.h"
#include "shape-edit.h"
#include "stock.h"
#include <math.h>
#include <slopewright/judge/result.h>
#include <slopewright/store/store.h>

/* The default job: crest (0, 5), toe (10, 0); outline 20 m along, 0 to 10 m out. */
static SwFace *
face_of (const SwJob *job)
{
  return g_ptr_array_index (job->faces, 0);
}

static SwJob *
with_box (const SwJob *job, SwListKind kind, SwPoint middle, double width_m,
          double depth_m, SwPointList *added)
{
  SwPoint corners[4];

  sw_shape_rectangle (face_of (job), middle, width_m, depth_m, corners);
  return sw_shapes_add (job, 0, kind, (SwRing){ corners, 4 }, added);
}

/* A rectangle of 2 by 3 m about (5, 4): area 6 m2, corners 1 m and 1.5 m from its middle. */
static void
test_rectangle (void)
{
  g_autoptr (SwJob) job = sw_job_new_default ();
  SwPointList added;
  g_autoptr (SwJob) more =
      with_box (job, SW_LIST_OBSTACLE, (SwPoint){ 5.0, 4.0 }, 2.0, 3.0, &added);
  SwPoint middle = sw_points_get (face_of (more), added, SW_WHOLE);

  g_assert_cmpuint (face_of (job)->obstacles->len, ==, 0);
  g_assert_cmpfloat_with_epsilon (
      sw_ring_area_m2 (sw_points_ring (face_of (more), added)), 6.0, 1e-12);
  g_assert_cmpfloat_with_epsilon (sw_points_get (face_of (more), added, 0).x_m, 4.0,
                                  1e-12);
  g_assert_cmpfloat_with_epsilon (sw_points_get (face_of (more), added, 2).y_m, 5.5,
                                  1e-12);
  g_assert_cmpfloat_with_epsilon (middle.x_m, 5.0, 1e-12);
  g_assert_cmpfloat_with_epsilon (middle.y_m, 4.0, 1e-12);
}

/* By hand, on 5 up and 10 out: a metre of the face is 10 / sqrt (125) = 0.894427 m out.
 * Taped 2 to 4 m down it lies 1.788854 to 3.577709 m out: middle 2.683282, 1.788854 deep. */
static void
test_taped_down_the_face (void)
{
  g_autoptr (SwJob) job = sw_job_new_default ();
  SwPoint middle = { 5.0, 3.0 };
  double depth_m = 2.0;

  g_assert_true (sw_shape_to_plan (face_of (job), &middle, &depth_m));
  g_assert_cmpfloat_with_epsilon (middle.x_m, 5.0, 1e-12);
  g_assert_cmpfloat_with_epsilon (middle.y_m, 2.683282, 1e-6);
  g_assert_cmpfloat_with_epsilon (depth_m, 1.788854, 1e-6);
  g_assert_true (sw_shape_to_face (face_of (job), &middle, &depth_m));
  g_assert_cmpfloat_with_epsilon (middle.y_m, 3.0, 1e-9);
  g_assert_cmpfloat_with_epsilon (depth_m, 2.0, 1e-9);
}

/* Crest and toe at one height make no ground: nothing is changed. */
static void
test_taped_on_no_ground (void)
{
  g_autoptr (SwJob) job = sw_job_new_default ();
  SwPoint middle = { 5.0, 3.0 };
  double depth_m = 2.0;

  face_of (job)->section[0].y_m = 0.0;
  g_assert_false (sw_shape_to_plan (face_of (job), &middle, &depth_m));
  g_assert_cmpfloat_with_epsilon (middle.y_m, 3.0, 1e-12);
}

/* A circle of 0.75 m radius covers pi 0.75^2 = 1.7671 m2. */
static void
test_round (void)
{
  g_autoptr (SwJob) job = sw_job_new_default ();
  SwPoint corners[SW_ROUND_CORNERS];

  sw_shape_round (face_of (job), (SwPoint){ 3.0, 3.0 }, 0.75, corners);
  g_assert_cmpfloat_with_epsilon (sw_ring_area_m2 ((SwRing){ corners, SW_ROUND_CORNERS }),
                                  G_PI * 0.75 * 0.75, 1e-9);
}

/* Round a nose of 10 m crest radius, 5 m out from the crest the contour has a radius of
 * 15 m: 3 m of it are 2 m of crest. */
static void
test_true_width_on_a_nose (void)
{
  g_autoptr (SwJob) job = sw_job_new_default ();
  SwPoint corners[4];

  face_of (job)->crest_form = SW_CREST_NOSE;
  face_of (job)->crest_radius_m = 10.0;
  sw_shape_rectangle (face_of (job), (SwPoint){ 8.0, 5.0 }, 3.0, 1.0, corners);
  g_assert_cmpfloat_with_epsilon (corners[1].x_m - corners[0].x_m, 2.0, 1e-9);
}

static void
test_ids_and_removal (void)
{
  g_autoptr (SwJob) job = sw_job_new_default ();
  SwPointList first, second, third;
  g_autoptr (SwJob) one =
      with_box (job, SW_LIST_OBSTACLE, (SwPoint){ 5.0, 4.0 }, 1.0, 1.0, &first);
  g_autoptr (SwJob) two =
      with_box (one, SW_LIST_OBSTACLE, (SwPoint){ 8.0, 4.0 }, 1.0, 1.0, &second);
  g_autoptr (SwJob) less = sw_shapes_remove (two, 0, first);
  g_autoptr (SwJob) again =
      with_box (less, SW_LIST_OBSTACLE, (SwPoint){ 2.0, 4.0 }, 1.0, 1.0, &third);
  g_autofree char *left = sw_points_object (face_of (less), first);
  g_autofree char *new = sw_points_object (face_of (again), third);

  g_assert_cmpstr (left, ==, "A/obstacle/2");
  g_assert_cmpstr (new, ==, "A/obstacle/1");
}

static void
test_whole_moves_all_corners (void)
{
  g_autoptr (SwJob) job = sw_job_new_default ();
  SwPointList added;
  g_autoptr (SwJob) one =
      with_box (job, SW_LIST_ZONE, (SwPoint){ 5.0, 4.0 }, 2.0, 2.0, &added);
  g_autoptr (SwJob) moved =
      sw_points_move (one, 0, added, SW_WHOLE, (SwPoint){ 9.0, 3.0 });

  for (int i = 0; i < 4; i++)
    {
      SwPoint a = sw_points_get (face_of (one), added, i);
      SwPoint b = sw_points_get (face_of (moved), added, i);

      g_assert_cmpfloat_with_epsilon (b.x_m - a.x_m, 4.0, 1e-12);
      g_assert_cmpfloat_with_epsilon (b.y_m - a.y_m, -1.0, 1e-12);
    }
}

/* A new zone has the face's soil: what it covers is pinned as before. */
static void
test_new_zone_changes_nothing (void)
{
  g_autoptr (SwJob) job = sw_job_new_default ();
  SwPointList added;
  SwZone *zone;

  face_of (job)->loose = TRUE;
  face_of (job)->topsoil_m = 0.15;
  g_autoptr (SwJob) more =
      with_box (job, SW_LIST_ZONE, (SwPoint){ 5.0, 4.0 }, 2.0, 2.0, &added);
  zone = g_ptr_array_index (face_of (more)->zones, 0);
  g_assert_cmpstr (zone->soil_id, ==, face_of (job)->soil_id);
  g_assert_true (zone->loose);
  g_assert_cmpfloat (zone->topsoil_m, ==, 0.15);
}

/* "2:1 for 5 m" behind a toe at (10, 0): 4.472 m out and 2.236 m down, by Pythagoras. */
static void
test_continue (void)
{
  g_autoptr (SwJob) job = sw_job_new_default ();
  double run_m = 10.0 / sqrt (5.0), rise_m = -5.0 / sqrt (5.0);
  g_autoptr (SwJob) more = sw_points_continue (job, 0, SW_POINTS_SECTION, run_m, rise_m);
  SwPoint toe = sw_points_get (face_of (more), SW_POINTS_SECTION, 2);

  g_assert_cmpfloat_with_epsilon (toe.x_m, 14.4721, 5e-5);
  g_assert_cmpfloat_with_epsilon (toe.y_m, -2.2361, 5e-5);
  g_assert_cmpuint (face_of (more)->toe, ==, 2);
  /* The outline is still from crest to toe. */
  g_assert_cmpfloat_with_epsilon (face_of (more)->outline[2].y_m, toe.x_m, 1e-12);
}

/* Half-way between a toe at 10 m out and one at 16 m out it is at 13 m; heights alike. */
static void
test_section_begins_as_the_ground (void)
{
  g_autoptr (SwJob) job = sw_job_new_default ();
  const SwPoint other[] = { { 0.0, 5.0 }, { 16.0, 0.0 } };
  SwPointList added;

  sw_face_add_section (face_of (job), 20.0, other);
  g_autoptr (SwJob) more = sw_section_add (job, 0, 10.0, &added);
  g_assert_cmpuint (face_of (more)->n_further, ==, 2);
  g_assert_cmpfloat (sw_section_along_m (face_of (more), added), ==, 10.0);
  g_assert_cmpfloat_with_epsilon (sw_points_get (face_of (more), added, 1).x_m, 13.0,
                                  1e-9);
  g_assert_cmpfloat_with_epsilon (sw_points_get (face_of (more), added, 0).y_m, 5.0,
                                  1e-9);
}

static void
test_sections_move_and_go (void)
{
  g_autoptr (SwJob) job = sw_job_new_default ();
  SwPointList a, b, moved;
  g_autoptr (SwJob) one = sw_section_add (job, 0, 10.0, &a);
  g_autoptr (SwJob) two = sw_section_add (one, 0, 20.0, &b);
  g_autoptr (SwJob) passed = sw_section_move (two, 0, a, 25.0, &moved);

  g_assert_true (sw_section_place_taken (face_of (two), SW_POINTS_OUTLINE, 0.0));
  g_assert_false (sw_section_place_taken (face_of (two), a, 10.0));
  /* Past its neighbour: it is the second one then, and all grow along. */
  g_assert_cmpuint (moved.which, ==, 2);
  g_assert_cmpfloat (face_of (passed)->further[0].along_m, ==, 20.0);
  g_assert_cmpfloat (face_of (passed)->further[1].along_m, ==, 25.0);
  /* The face's own taken away: the next one takes its place. */
  g_autoptr (SwJob) less = sw_section_remove (two, 0, SW_POINTS_SECTION);
  g_assert_cmpfloat (face_of (less)->section_along_m, ==, 10.0);
  g_assert_cmpuint (face_of (less)->n_further, ==, 1);
  g_assert_null (sw_section_remove (job, 0, SW_POINTS_SECTION));
}

/* A point of any section: each section gets one, and the one edited has it where asked. */
static void
test_further_section_points (void)
{
  g_autoptr (SwJob) job = sw_job_new_default ();
  SwPointList other;
  g_autoptr (SwJob) two = sw_section_add (job, 0, 20.0, &other);
  g_autoptr (SwJob) more = sw_points_add (two, 0, other, 0, (SwPoint){ 4.0, 1.0 });
  const SwPoint three[] = { { 0.0, 5.0 }, { 5.0, 2.0 }, { 9.0, 0.0 } };

  g_assert_cmpfloat (sw_points_get (face_of (more), other, 1).x_m, ==, 4.0);
  g_assert_cmpfloat (sw_points_get (face_of (more), SW_POINTS_SECTION, 1).x_m, ==, 5.0);
  /* Pasting keeps the match, or is refused. */
  g_assert_null (sw_points_replace (two, 0, other, three, 3));
  g_autoptr (SwJob) pasted = sw_points_replace (more, 0, other, three, 3);
  g_assert_cmpuint (face_of (pasted)->n_further, ==, 1);
  g_assert_cmpfloat (sw_points_get (face_of (pasted), other, 2).x_m, ==, 9.0);
}

static void
load (const char *name, SwJob **job)
{
  g_autofree char *path = g_build_filename (EXAMPLES_DIR, name, NULL);
  g_autoptr (GFile) file = g_file_new_for_path (path);
  g_autoptr (GError) error = NULL;

  *job = sw_job_load (file, &error);
  g_assert_no_error (error);
}

/* Mirror symmetry: the ground seen in a mirror takes as much of everything. */
static void
test_mirror_keeps_quantities (void)
{
  static const char *const names[] = { "sallow-bank.slope.json",
                                       "pinfold-cutting.slope.json",
                                       "brackenholt-spur.slope.json",
                                       "cornice-ramp-nose.slope.json" };
  SwStock *stock = sw_stock_new (NULL);

  for (gsize i = 0; i < G_N_ELEMENTS (names); i++)
    {
      g_autoptr (SwJob) job = NULL;
      load (names[i], &job);
      g_autoptr (SwJob) mirrored = sw_face_mirrored (job, 0);
      g_autoptr (SwJob) back = sw_face_mirrored (mirrored, 0);
      g_autoptr (SwResult) a = sw_result_new (job, stock->catalogue);
      g_autoptr (SwResult) b = sw_result_new (mirrored, stock->catalogue);

      g_test_message ("%s", names[i]);
      g_assert_cmpint (a->status, ==, SW_OK);
      g_assert_cmpint (b->status, ==, SW_OK);
      g_assert_cmpuint (a->layout->faces[0].n_runs, ==, b->layout->faces[0].n_runs);
      g_assert_cmpfloat_with_epsilon (a->tally->areas.net_m2, b->tally->areas.net_m2,
                                      1e-6);
      g_assert_cmpint (face_of (mirrored)->leeward, !=, face_of (job)->leeward);
      for (guint p = 0; p < face_of (job)->n_outline; p++)
        g_assert_cmpfloat_with_epsilon (face_of (back)->outline[p].x_m,
                                        face_of (job)->outline[p].x_m, 1e-9);
    }
  sw_stock_free (stock);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
#define ADD(path, function) g_test_add_func ("/app/shape-edit/" path, function)
  ADD ("rectangle", test_rectangle);
  ADD ("round", test_round);
  ADD ("taped-down-the-face", test_taped_down_the_face);
  ADD ("taped-on-no-ground", test_taped_on_no_ground);
  ADD ("true-width-on-a-nose", test_true_width_on_a_nose);
  ADD ("ids-and-removal", test_ids_and_removal);
  ADD ("whole-moves-all-corners", test_whole_moves_all_corners);
  ADD ("new-zone-changes-nothing", test_new_zone_changes_nothing);
  ADD ("continue", test_continue);
  ADD ("section-begins-as-the-ground", test_section_begins_as_the_ground);
  ADD ("sections-move-and-go", test_sections_move_and_go);
  ADD ("further-section-points", test_further_section_points);
  ADD ("mirror-keeps-quantities", test_mirror_keeps_quantities);
#undef ADD
  return g_test_run ();
}
