/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "../layout/fixture.h"
#include <math.h>
#include <slopewright/judge/choice.h>

/* The fixture's mat: 1.5:1, 12 months, 84 Pa, plastic netting. Beside it a permanent one
 * without netting and a light net. All numbers are made up for the test. */
static void
add_types (SwCatalogue *catalogue)
{
  static const struct
  {
    const char *id;
    double max_hv, months, shear_pa;
    gboolean plastic;
  } rows[] = { { "net", 5.0, 3.0, 4.0, TRUE }, { "felt", 0.5, INFINITY, 300.0, FALSE } };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      SwBlanket *blanket = g_new0 (SwBlanket, 1);

      blanket->id = g_strdup (rows[i].id);
      blanket->max_hv.value = rows[i].max_hv;
      blanket->life_months.value = rows[i].months;
      blanket->shear_pa.value = rows[i].shear_pa;
      blanket->net_plastic_usual = rows[i].plastic;
      g_ptr_array_add (catalogue->blankets, blanket);
    }
}

static SwChoiceAnswer
answer_of (const GArray *choices, guint type, SwChoiceAspect aspect)
{
  return g_array_index (choices, SwChoice, type).tests[aspect].answer;
}

/* 20 m of 3:1 under 50 mm/h with n 0.05 pull with 5.33666 Pa (check-values-judge.csv). */
static SwLayout *
asking_layout (SwCatalogue *catalogue)
{
  g_autoptr (SwJob) job = fixture_job ();

  fixture_add_plane (job, "A", 3.0, 20.0 / 3.0, 20.0);
  job->numbers.values[SW_NUMBER_RAIN] = 50.0 * 1e-3 / 3600.0;
  job->numbers.values[SW_NUMBER_ROUGHNESS] = 0.05;
  job->numbers.values[SW_NUMBER_GROW_MONTHS] = 12.5;
  job->numbers.mown = SW_ANSWER_YES;
  job->site[SW_SITE_WILDLIFE] = SW_ANSWER_YES;
  return fixture_lay (job, catalogue);
}

static void
test_all_asked (void)
{
  static const SwChoiceAnswer M = SW_CHOICE_MEETS, F = SW_CHOICE_FAILS;
  const SwChoiceAnswer want[3][SW_CHOICE_COUNT] = {
    { M, F, M, F, F }, /* mat: half a month short, netting */
    { F, F, F, F, F }, /* net */
    { M, M, M, M, M }, /* felt */
  };
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwLayout) layout = NULL;
  g_autoptr (GArray) choices = NULL;

  add_types (catalogue);
  layout = asking_layout (catalogue);
  choices = sw_choices_new (layout);
  g_assert_cmpuint (choices->len, ==, 3);
  for (guint type = 0; type < 3; type++)
    for (int aspect = 0; aspect < SW_CHOICE_COUNT; aspect++)
      g_assert_cmpint (answer_of (choices, type, (SwChoiceAspect) aspect), ==,
                       want[type][aspect]);
  g_assert_false (g_array_index (choices, SwChoice, 0).meets);
  g_assert_true (g_array_index (choices, SwChoice, 2).meets);
  g_assert_true (g_array_index (choices, SwChoice, 0).chosen);
  g_assert_false (g_array_index (choices, SwChoice, 2).chosen);
  g_assert_cmpfloat_with_epsilon (
      g_array_index (choices, SwChoice, 0).tests[SW_CHOICE_SHEAR].need, 5.33666, 1e-4);
}

/* The sheet's own figures are held against the job, a silent one answers nothing, and the
 * class stays in the list as it was. */
static void
test_data_sheet (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = NULL;
  g_autoptr (SwLayout) by_class = NULL, layout = NULL;
  g_autoptr (GArray) choices = NULL;
  const SwChoice *first;

  by_class = asking_layout (catalogue);
  job = sw_job_copy (by_class->job);
  sw_text_set (&job->product.name, "Hedgerow Mat 12");
  job->product.life_months = 18.0; /* of 12.5 needed; its class has 12 */
  job->product.shear_pa = 5.0;     /* of 5.34 */
  job->product.net = SW_NET_PLANT;
  layout = fixture_lay (job, catalogue);
  choices = sw_choices_new (layout);
  g_assert_cmpuint (choices->len, ==, 2);
  first = &g_array_index (choices, SwChoice, 0);
  g_assert_nonnull (first->product);
  g_assert_cmpint (answer_of (choices, 0, SW_CHOICE_GRADIENT), ==, SW_CHOICE_NOT_STATED);
  g_assert_cmpint (answer_of (choices, 0, SW_CHOICE_LIFE), ==, SW_CHOICE_MEETS);
  g_assert_cmpint (answer_of (choices, 0, SW_CHOICE_SHEAR), ==, SW_CHOICE_FAILS);
  g_assert_cmpint (answer_of (choices, 0, SW_CHOICE_ANIMALS), ==, SW_CHOICE_MEETS);
  g_assert_cmpint (answer_of (choices, 0, SW_CHOICE_MOWING), ==, SW_CHOICE_MEETS);
  g_assert_cmpfloat (first->tests[SW_CHOICE_LIFE].has, ==, 18.0);
  g_assert_cmpint (first->tests[SW_CHOICE_LIFE].evidence, ==, SW_EVIDENCE_USER);
  g_assert_false (first->meets);
  g_assert_cmpint (answer_of (choices, 1, SW_CHOICE_LIFE), ==, SW_CHOICE_FAILS);
  g_assert_true (g_array_index (choices, SwChoice, 1).chosen);
  g_assert_null (g_array_index (choices, SwChoice, 1).product);
}

/* A sheet that leaves something open is not said to meet everything. */
static void
test_silent_sheet_does_not_meet (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = fixture_job ();
  g_autoptr (SwLayout) layout = NULL;
  g_autoptr (GArray) choices = NULL;

  fixture_add_plane (job, "A", 3.0, 5.0, 20.0);
  sw_text_set (&job->product.name, "Hedgerow Mat 12");
  layout = fixture_lay (job, catalogue);
  choices = sw_choices_new (layout);
  g_assert_false (g_array_index (choices, SwChoice, 0).meets);
  g_assert_true (g_array_index (choices, SwChoice, 1).meets);
}

/* What the job does not say is not held against any type; the gradient always is. */
static void
test_nothing_asked (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = fixture_job ();
  g_autoptr (SwLayout) layout = NULL;
  g_autoptr (GArray) choices = NULL;

  fixture_add_plane (job, "A", 1.5, 5.0, 20.0);
  layout = fixture_lay (job, catalogue);
  choices = sw_choices_new (layout);
  g_assert_cmpint (answer_of (choices, 0, SW_CHOICE_GRADIENT), ==, SW_CHOICE_MEETS);
  for (int aspect = SW_CHOICE_GRADIENT + 1; aspect < SW_CHOICE_COUNT; aspect++)
    g_assert_cmpint (answer_of (choices, 0, (SwChoiceAspect) aspect), ==,
                     SW_CHOICE_NOT_ASKED);
}

/* The steepest tier of all faces counts: 1.49:1 is beyond a class of 1.5:1. */
static void
test_steepest_face (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = fixture_job ();
  g_autoptr (SwLayout) layout = NULL;
  g_autoptr (GArray) choices = NULL;

  fixture_add_plane (job, "A", 3.0, 5.0, 20.0);
  fixture_add_plane (job, "B", 1.49, 5.0, 20.0);
  layout = fixture_lay (job, catalogue);
  choices = sw_choices_new (layout);
  g_assert_cmpint (answer_of (choices, 0, SW_CHOICE_GRADIENT), ==, SW_CHOICE_FAILS);
  g_assert_cmpfloat_with_epsilon (
      g_array_index (choices, SwChoice, 0).tests[SW_CHOICE_GRADIENT].need, 1.49, 1e-9);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/judge/choice/all-asked", test_all_asked);
  g_test_add_func ("/judge/choice/nothing-asked", test_nothing_asked);
  g_test_add_func ("/judge/choice/steepest-face", test_steepest_face);
  g_test_add_func ("/judge/choice/data-sheet", test_data_sheet);
  g_test_add_func ("/judge/choice/silent-sheet-does-not-meet",
                   test_silent_sheet_does_not_meet);
  return g_test_run ();
}
