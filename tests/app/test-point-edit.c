/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "point-edit.h"
#include "points-paste.h"
#include <string.h>

static const SwNumberStyle metric = { SW_UNITS_METRIC, '.', NULL };

/* The default job: crest (0, 5), toe (10, 0); outline 20 m along, 0 to 10 m out. */
static const SwFace *
face_of (const SwJob *job)
{
  return g_ptr_array_index (job->faces, 0);
}

static void
test_move_leaves_the_old_job (void)
{
  g_autoptr (SwJob) job = sw_job_new_default ();
  g_autoptr (SwJob) copy = sw_job_copy (job);
  g_autoptr (SwJob) moved =
      sw_points_move (job, 0, SW_POINTS_SECTION, 0, (SwPoint){ -1.0, 6.0 });

  g_assert_true (sw_job_equal (job, copy));
  g_assert_cmpfloat (face_of (moved)->section[0].x_m, ==, -1.0);
  g_assert_cmpfloat (face_of (moved)->section[0].y_m, ==, 6.0);
}

/* Two of the four outline points stand on the toe line and go with it; two do not. */
static void
test_toe_takes_the_outline_along (void)
{
  g_autoptr (SwJob) job = sw_job_new_default ();
  g_autoptr (SwJob) moved =
      sw_points_move (job, 0, SW_POINTS_SECTION, 1, (SwPoint){ 12.0, 0.0 });
  const SwFace *face = face_of (moved);

  g_assert_cmpfloat (face->outline[2].y_m, ==, 12.0);
  g_assert_cmpfloat (face->outline[3].y_m, ==, 12.0);
  g_assert_cmpfloat (face->outline[0].y_m, ==, 0.0);
  g_assert_cmpfloat (face->outline[1].y_m, ==, 0.0);
}

static void
test_further_sections_keep_the_outline (void)
{
  g_autoptr (SwJob) job = sw_job_new_default ();
  const SwPoint other[] = { { 0.0, 6.0 }, { 12.0, 0.0 } };

  sw_face_add_section (g_ptr_array_index (job->faces, 0), 20.0, other);
  g_autoptr (SwJob) moved =
      sw_points_move (job, 0, SW_POINTS_SECTION, 1, (SwPoint){ 12.0, 0.0 });
  g_assert_cmpfloat (face_of (moved)->outline[2].y_m, ==, 10.0);
}

static void
test_section_keeps_its_order (void)
{
  g_autoptr (SwJob) job = sw_job_new_default ();
  SwPoint got =
      sw_points_allowed (face_of (job), SW_POINTS_SECTION, 0, (SwPoint){ 50.0, 3.0 });

  g_assert_cmpfloat (got.x_m, ==, 10.0 - SW_POINT_GAP_M);
  g_assert_cmpfloat (got.y_m, ==, 3.0);
  got = sw_points_allowed (face_of (job), SW_POINTS_OUTLINE, 0, (SwPoint){ 50.0, 3.0 });
  g_assert_cmpfloat (got.x_m, ==, 50.0);
}

static void
test_add_moves_toe_on (void)
{
  g_autoptr (SwJob) job = sw_job_new_default ();
  SwPoint at = sw_points_between (face_of (job), SW_POINTS_SECTION, 0);
  g_autoptr (SwJob) added = sw_points_add (job, 0, SW_POINTS_SECTION, 0, at);
  const SwFace *face = face_of (added);

  g_assert_cmpfloat (at.x_m, ==, 5.0); /* middle of 0 and 10 */
  g_assert_cmpfloat (at.y_m, ==, 2.5);
  g_assert_cmpuint (face->n_section, ==, 3);
  g_assert_cmpuint (face->crest, ==, 0);
  g_assert_cmpuint (face->toe, ==, 2);
}

static void
test_add_behind_the_last (void)
{
  g_autoptr (SwJob) job = sw_job_new_default ();
  SwPoint at = sw_points_between (face_of (job), SW_POINTS_SECTION, 1);

  g_assert_cmpfloat (at.x_m, ==, 20.0); /* once more 10 out and 5 down */
  g_assert_cmpfloat (at.y_m, ==, -5.0);
  /* An outline goes round: behind its last point comes its first. */
  at = sw_points_between (face_of (job), SW_POINTS_OUTLINE, 3);
  g_assert_cmpfloat (at.x_m, ==, 0.0);
  g_assert_cmpfloat (at.y_m, ==, 5.0);
}

static void
test_add_and_remove_in_further_sections (void)
{
  g_autoptr (SwJob) job = sw_job_new_default ();
  const SwPoint other[] = { { 0.0, 6.0 }, { 12.0, 0.0 } };

  sw_face_add_section (g_ptr_array_index (job->faces, 0), 20.0, other);
  g_autoptr (SwJob) added =
      sw_points_add (job, 0, SW_POINTS_SECTION, 0, (SwPoint){ 5.0, 2.5 });
  g_assert_cmpfloat (face_of (added)->further[0].section[1].x_m, ==, 6.0);
  g_assert_cmpfloat (face_of (added)->further[0].section[1].y_m, ==, 3.0);
  g_autoptr (SwJob) back = sw_points_remove (added, 0, SW_POINTS_SECTION, 1);
  g_assert_true (sw_job_equal (back, job));
}

static void
test_remove_crest_and_toe (void)
{
  g_autoptr (SwJob) job = sw_job_new_default ();
  g_autoptr (SwJob) three =
      sw_points_add (job, 0, SW_POINTS_SECTION, 0, (SwPoint){ 5.0, 2.0 });
  g_autoptr (SwJob) no_crest = sw_points_remove (three, 0, SW_POINTS_SECTION, 0);
  g_autoptr (SwJob) no_toe = sw_points_remove (three, 0, SW_POINTS_SECTION, 2);

  g_assert_cmpuint (face_of (no_crest)->crest, ==, 0);
  g_assert_cmpuint (face_of (no_crest)->toe, ==, 1);
  g_assert_cmpfloat (face_of (no_crest)->section[0].x_m, ==, 5.0);
  g_assert_cmpuint (face_of (no_toe)->toe, ==, 1);
  g_assert_cmpfloat (face_of (no_toe)->section[1].x_m, ==, 5.0);
}

/* From any section, by any removal, crest stays before toe and both stay inside. */
static void
test_remove_sweep (void)
{
  for (guint crest = 0; crest < 4; crest++)
    for (guint toe = crest + 1; toe < 5; toe++)
      for (guint gone = 0; gone < 5; gone++)
        {
          const SwPoint points[] = { { 0, 9 }, { 1, 8 }, { 2, 6 }, { 3, 3 }, { 4, 0 } };
          g_autoptr (SwJob) job = sw_job_new_default ();
          SwFace *face = g_ptr_array_index (job->faces, 0);

          sw_face_set_section (face, points, G_N_ELEMENTS (points));
          face->crest = crest;
          face->toe = toe;
          g_autoptr (SwJob) less = sw_points_remove (job, 0, SW_POINTS_SECTION, gone);
          g_assert_cmpuint (face_of (less)->n_section, ==, 4);
          g_assert_cmpuint (face_of (less)->crest, <, face_of (less)->toe);
          g_assert_cmpuint (face_of (less)->toe, <, 4);
        }
}

static void
test_last_points_stay (void)
{
  g_autoptr (SwJob) job = sw_job_new_default ();

  g_assert_null (sw_points_remove (job, 0, SW_POINTS_SECTION, 0));
  g_autoptr (SwJob) three = sw_points_remove (job, 0, SW_POINTS_OUTLINE, 0);
  g_assert_cmpuint (face_of (three)->n_outline, ==, 3);
  g_assert_null (sw_points_remove (three, 0, SW_POINTS_OUTLINE, 0));
}

/* Two tiers in place of 10 m of one: the blanket ends at the new toe, 32 m out. */
static void
test_pasted_section_takes_the_outline_along (void)
{
  const SwPoint tiers[] = {
    { 10.0, 14.0 }, { 22.0, 8.0 }, { 26.0, 8.12 }, { 42.0, 0.12 }
  };
  g_autoptr (SwJob) job = sw_job_new_default ();
  g_autoptr (SwJob) pasted = sw_points_replace (job, 0, SW_POINTS_SECTION, tiers, 4);
  const SwFace *face = face_of (pasted);

  g_assert_cmpuint (face->toe, ==, 3);
  g_assert_cmpfloat (face->outline[0].y_m, ==, 10.0);
  g_assert_cmpfloat (face->outline[1].y_m, ==, 10.0);
  g_assert_cmpfloat (face->outline[2].y_m, ==, 42.0);
  g_assert_cmpfloat (face->outline[3].y_m, ==, 42.0);
}

static void
test_paste (void)
{
  static const char *const texts[] = { "0\t5\n10\t0\n",
                                       "0;5\n10;0",
                                       "0, 5\n10, 0",
                                       "0 5\r\n\r\n10 0\r\n",
                                       "0,0;5,0\n10,0;0,0\n",
                                       "Out\tUp\n0\t5\n10\t0\n",
                                       "\nDistance out;Level\n0;5\n10;0" };

  for (gsize i = 0; i < G_N_ELEMENTS (texts); i++)
    {
      g_autofree char *problem = NULL;
      g_autoptr (GArray) points =
          sw_points_from_text (texts[i], metric, SW_POINTS_SECTION, &problem);
      g_test_message ("%s", texts[i]);
      g_assert_nonnull (points);
      g_assert_cmpuint (points->len, ==, 2);
      g_assert_cmpfloat (g_array_index (points, SwPoint, 1).x_m, ==, 10.0);
      g_assert_cmpfloat (g_array_index (points, SwPoint, 0).y_m, ==, 5.0);
    }
}

static void
test_paste_says_what_is_wrong (void)
{
  static const struct
  {
    const char *text, *word;
  } rows[] = { { "0\t5\nten\t0", "Line 2" },
               { "0\t5", "At least 2" },
               { "5\t5\n0\t0", "Point 2" },
               { "0\t5\n7", "Line 2" },
               { "Out ft\tUp ft\n0\t5\n10\t0", "Line 1" },
               { "Out (ft)\tUp (ft)\n0\t5\n10\t0", "Line 1" },
               { "ft\tft\n0\t5\n10\t0", "Line 1" },
               { "Out\tUp\nout\tup\n0\t5", "Line 2" } };

  for (gsize i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autofree char *problem = NULL;
      g_assert_null (
          sw_points_from_text (rows[i].text, metric, SW_POINTS_SECTION, &problem));
      g_assert_nonnull (strstr (problem, rows[i].word));
    }
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
#define ADD(path, function) g_test_add_func ("/app/point-edit/" path, function)
  ADD ("move-leaves-the-old-job", test_move_leaves_the_old_job);
  ADD ("toe-takes-the-outline-along", test_toe_takes_the_outline_along);
  ADD ("further-sections-keep-the-outline", test_further_sections_keep_the_outline);
  ADD ("section-keeps-its-order", test_section_keeps_its_order);
  ADD ("add-moves-toe-on", test_add_moves_toe_on);
  ADD ("add-behind-the-last", test_add_behind_the_last);
  ADD ("add-and-remove-in-further-sections", test_add_and_remove_in_further_sections);
  ADD ("remove-crest-and-toe", test_remove_crest_and_toe);
  ADD ("remove-sweep", test_remove_sweep);
  ADD ("last-points-stay", test_last_points_stay);
  ADD ("pasted-section-takes-the-outline-along",
       test_pasted_section_takes_the_outline_along);
  ADD ("paste", test_paste);
  ADD ("paste-says-what-is-wrong", test_paste_says_what_is_wrong);
#undef ADD
  return g_test_run ();
}
