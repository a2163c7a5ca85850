/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "fall-lines.h"
#include "pages-tidy.h"
#include <math.h>
#include <slopewright/ground/measured.h>
#include <string.h>

#define NEAR_M 0.005 /* half of what is printed */

static void
assert_near (double found, double expected)
{
  g_assert_cmpfloat_with_epsilon (found, expected, NEAR_M);
}

/*
 * Sandlark: 26 m along the crest, 8.25 out and 5.50 down. By hand: sqrt (8.25^2 + 5.5^2)
 * = 9.915; atan (5.5 / 8.25) = 33.7 degrees; the diagonal sqrt (26^2 + 9.915^2) = 27.83.
 */
static void
test_straight_face (void)
{
  g_autoptr (Example) example = example_new ("sandlark-bluff-road");
  const SwFaceLayout *face = &example->result->layout->faces[0];
  g_autoptr (GPtrArray) pages =
      example_pack_of_kind (example, SW_PAPER_A4, SW_PACK_MEASURE);
  g_autofree char *words = pack_words (pages);
  SwFallLine lines[SW_FALL_LINES];

  sw_fall_lines (face, lines);
  for (guint i = 0; i < SW_FALL_LINES; i++)
    {
      assert_near (lines[i].length_m, 9.915);
      assert_near (lines[i].rise_m, 5.5);
      assert_near (lines[i].run_m, 8.25);
    }
  assert_near (lines[0].along_m, 2.6);
  assert_near (lines[2].along_m, 23.4);
  assert_near (sw_taped_side_m (face, SW_SIDE_AB), 26.0);
  assert_near (sw_taped_side_m (face, SW_SIDE_DA), 9.915);
  assert_near (sw_taped_side_m (face, SW_SIDE_BD), 27.826);
  /* Three lines and the sides BC and DA. */
  g_assert_cmpuint (count_of (words, "job: 9.92\xc2\xa0m"), ==, 5);
  g_assert_cmpuint (count_of (words, "job: 27.83\xc2\xa0m"), ==, 2);
  assert_says (words, "job: 1.5H:1V · 33.7° ·");
}

/* Four sides and a diagonal come back as they were taped; the other diagonal by hand
 * from two triangles with AC in common is 20.11 (worked in examples of trilateration). */
static void
tape (SwJob *job)
{
  const SwMeasured measured = { .how = SW_OBTAINED_TAPED_SHAPE,
                                .angle_rad = atan (0.5),
                                .sides = { 20.0, 12.4, 16.2, 12.1, 23.3, 0.0 } };

  g_assert_cmpint (sw_measured_shape (&measured, job->faces->pdata[0]), ==, SW_OK);
}

static void
test_taped_shape (void)
{
  static const double taped_m[SW_SIDE_COUNT] = { 20.0, 12.4, 16.2, 12.1, 23.3, 20.11 };
  g_autoptr (Example) example = example_new_changed ("sandlark-bluff-road", tape);

  for (int side = 0; side < SW_SIDE_COUNT; side++)
    assert_near (sw_taped_side_m (&example->result->layout->faces[0], (SwTapedSide) side),
                 taped_m[side]);
}

/* However a file lists the corners, A is left on the crest. */
static void
turn_outline (SwJob *job)
{
  SwFace *face = job->faces->pdata[0];
  SwPoint turned[4];

  g_assert_cmpuint (face->n_outline, ==, 4);
  for (guint i = 0; i < 4; i++)
    turned[i] = face->outline[(6 - i) % 4];
  sw_face_set_outline (face, turned, 4);
}

static void
test_corners (void)
{
  g_autoptr (Example) example = example_new ("sandlark-bluff-road");
  g_autoptr (Example) turned = example_new_changed ("sandlark-bluff-road", turn_outline);
  SwPoint a[4], b[4];

  g_assert_true (sw_corners (&example->result->layout->faces[0], a));
  g_assert_true (sw_corners (&turned->result->layout->faces[0], b));
  for (guint i = 0; i < 4; i++)
    {
      assert_near (a[i].x_m, b[i].x_m);
      assert_near (a[i].y_m, b[i].y_m);
    }
  g_assert_cmpfloat (a[0].x_m, <, a[1].x_m);
  g_assert_cmpfloat (a[1].y_m, <, a[2].y_m);
  g_assert_cmpfloat (a[3].x_m, <, a[2].x_m);
}

/* Cornice: crest radius 9, arc 17.2788 there, toe 12.5 further out and 5 down. By hand:
 * the toe's arc is 17.2788 x 21.5 / 9 = 41.277, a side sqrt (12.5^2 + 5^2) = 13.463. */
static void
test_round_face (void)
{
  g_autoptr (Example) example = example_new ("cornice-ramp-nose");
  const SwFaceLayout *face = &example->result->layout->faces[0];
  g_autoptr (GPtrArray) pages =
      example_pack_of_kind (example, SW_PAPER_A4, SW_PACK_MEASURE);
  g_autofree char *words = pack_words (pages);

  assert_near (sw_taped_side_m (face, SW_SIDE_AB), 17.279);
  assert_near (sw_taped_side_m (face, SW_SIDE_CD), 41.277);
  assert_near (sw_taped_side_m (face, SW_SIDE_BC), 13.463);
  assert_says (words, "job: 41.28\xc2\xa0m");
  assert_says (words, "job: 9.00\xc2\xa0m");
  g_assert_null (strstr (words, "Four sides"));
}

/* A five-sided outline has no corners A to D, and a round face no diagonal. */
static void
add_corner (SwJob *job)
{
  SwFace *face = job->faces->pdata[0];
  const SwPoint outline[] = {
    { 0.0, 0.0 }, { 26.0, 0.0 }, { 26.0, 8.25 }, { 10.0, 8.25 }, { 0.0, 5.0 }
  };

  sw_face_set_outline (face, outline, G_N_ELEMENTS (outline));
}

static void
test_no_such_side (void)
{
  g_autoptr (Example) five = example_new_changed ("sandlark-bluff-road", add_corner);
  g_autoptr (Example) nose = example_new ("cornice-ramp-nose");
  const SwFaceLayout *round = &nose->result->layout->faces[0];
  SwFallLine lines[SW_FALL_LINES];

  g_assert_true (isnan (sw_taped_side_m (&five->result->layout->faces[0], SW_SIDE_AB)));
  g_assert_true (isnan (sw_taped_side_m (round, SW_SIDE_AC)));
  /* At a tenth of 26 m the outline ends at 5 + 2.6 x 3.25 / 10 = 5.845 out. */
  sw_fall_lines (&five->result->layout->faces[0], lines);
  assert_near (lines[0].run_m, 5.845);
  assert_near (lines[1].run_m, 8.25);
}

/* A blank form holds nothing of the job but its name, and stands on two sheets. */
static void
test_blank (gconstpointer name)
{
  g_autoptr (Example) example = example_new (name);
  g_autoptr (GPtrArray) pages =
      example_pack_of_kind (example, SW_PAPER_A4, SW_PACK_MEASURE_BLANK);
  g_autofree char *words = pack_words (pages);

  g_assert_null (strstr (words, "job: "));
  g_assert_null (strstr (words, "STOP"));
  assert_says (words, "Four sides and two diagonals");
  assert_says (words, "Round crest");
  assert_says (words, "Trial pins");
  assert_says (words, "Photo log");
  g_assert_cmpuint (pages->len, ==, 4);
}

/* What the job knows of the site stands beside each question, open ones too. */
static void
leave_open (SwJob *job)
{
  job->site[SW_SITE_SEEPAGE] = SW_ANSWER_UNKNOWN;
  job->site[SW_SITE_RUN_ON] = SW_ANSWER_YES;
}

static void
test_site_visit (void)
{
  g_autoptr (Example) example = example_new_changed ("halter-brook", leave_open);
  g_autoptr (GPtrArray) pages =
      example_pack_of_kind (example, SW_PAPER_A4, SW_PACK_MEASURE);
  g_autofree char *words = pack_words (pages);

  assert_says (words, "Are springs, wet spots, cracks, bulges or slumps seen?\njob: not "
                      "answered\n");
  assert_says (words, "Does water arrive from above the crest?\njob: yes\n");
  assert_says (words, "1, Headwall");
}

/* The crew's pack has a form for each of its faces, and one for the site. */
static void
test_in_crew_pack (void)
{
  g_autoptr (Example) example = example_new ("corvendale-interchange");
  g_autoptr (GPtrArray) pages = example_pack (example, SW_PAPER_A4);
  g_autofree char *words = pack_words (pages);

  assert_says (words, "\nMeasuring form, face W\n");
  assert_says (words, "\nMeasuring form, face N\n");
  assert_says (words, "\nMeasuring form, face E\n");
  assert_says (words, "\nSite visit form\n");
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/sheet/measuring/straight-face", test_straight_face);
  g_test_add_func ("/sheet/measuring/taped-shape", test_taped_shape);
  g_test_add_func ("/sheet/measuring/corners", test_corners);
  g_test_add_func ("/sheet/measuring/round-face", test_round_face);
  g_test_add_func ("/sheet/measuring/no-such-side", test_no_such_side);
  example_add_tests ("/sheet/measuring/blank", test_blank);
  g_test_add_func ("/sheet/measuring/site-visit", test_site_visit);
  g_test_add_func ("/sheet/measuring/in-crew-pack", test_in_crew_pack);
  return g_test_run ();
}
