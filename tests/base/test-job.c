/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include <slopewright/base/job.h>

#include <math.h>

/* A catalogue with one practice; its numbers are made up for the test. */
static SwCatalogue *
small_catalogue (void)
{
  SwCatalogue *catalogue = sw_catalogue_new ();
  SwPractice *practice = sw_practice_new ();

  practice->id = g_strdup ("common");
  practice->source_id = g_strdup ("test");
  practice->values[SW_PRACTICE_SIDE_LAP_M] =
      (SwSourced){ 0.1, SW_EVIDENCE_PROPOSED, g_strdup ("test") };
  practice->density = g_new0 (SwDensityRow, 1);
  practice->density[0] =
      (SwDensityRow){ 2.0, { 2.4, SW_EVIDENCE_PROPOSED, g_strdup ("x") } };
  practice->n_density = 1;
  g_ptr_array_add (catalogue->practices, practice);
  return catalogue;
}

static void
test_default (void)
{
  g_autoptr (SwJob) job = sw_job_new_default ();
  const SwFace *face = sw_job_face (job, "A");

  g_assert_nonnull (face);
  g_assert_cmpuint (face->crest, ==, 0);
  g_assert_cmpuint (face->toe, ==, 1);
  /* 2:1 with 5 m rise runs out 10 m */
  g_assert_cmpfloat (face->section[0].y_m - face->section[1].y_m, ==, 5.0);
  g_assert_cmpfloat (face->section[1].x_m - face->section[0].x_m, ==, 10.0);
  g_assert_cmpstr (job->practice_id, ==, "common");
  g_assert_cmpstr (job->card.name, ==, "");
  g_assert_null (job->unknown_json);
  g_assert_null (sw_job_face (job, "B"));
}

static void
test_empty (void)
{
  g_autoptr (SwJob) job = sw_job_new_empty ();

  g_assert_cmpuint (job->faces->len, ==, 0);
  g_assert_cmpstr (job->language, ==, "");
  g_assert_cmpstr (job->seed.name, ==, "");
}

static void
test_copy_is_deep (void)
{
  g_autoptr (SwJob) job = sw_job_new_default ();
  sw_job_set_override (job, SW_PRACTICE_SIDE_LAP_M, 0.15, "windy ridge");
  g_autoptr (SwJob) copy = sw_job_copy (job);

  g_assert_true (sw_job_equal (job, copy));
  sw_job_face (copy, "A")->section[0].y_m = 6.0;
  g_assert_cmpfloat (sw_job_face (job, "A")->section[0].y_m, ==, 5.0);
  sw_text_set (&copy->overrides[0].why, "calm");
  g_assert_cmpstr (job->overrides[0].why, ==, "windy ridge");
  g_assert_false (sw_job_equal (job, copy));
}

/* Each row changes one thing; none may pass for equal. */
static void
test_equal_sees_every_change (void)
{
  g_autoptr (SwJob) job = sw_job_new_default ();

  for (int change = 0; change < 23; change++)
    {
      g_autoptr (SwJob) other = sw_job_copy (job);
      SwFace *face = g_ptr_array_index (other->faces, 0);
      switch (change)
        {
        case 0:
          sw_text_set (&other->card.notes, "gate code");
          break;
        case 1:
          other->units = SW_UNITS_US;
          break;
        case 2:
          other->roll_width_m = 1.22;
          break;
        case 3:
          other->site[SW_SITE_HOT_WEATHER] = SW_ANSWER_NO;
          break;
        case 4:
          sw_job_set_override (other, SW_PRACTICE_COVER, 0.8, "");
          break;
        case 5:
          face->outline[1].x_m += 1e-9;
          break;
        case 6:
          face->loose = TRUE;
          break;
        case 7:
          sw_text_set (&face->soil_id, "sand");
          break;
        case 8:
          face->angle_error_rad = 0.01;
          break;
        case 9:
          g_ptr_array_add (other->faces, sw_face_new ("B"));
          break;
        case 10:
          other->unknown_json = g_strdup ("{}");
          break;
        case 11:
          sw_seed_mix_add (&other->seed, &(SwSeedSpecies){ .purity = 0.9, .name = "" });
          break;
        case 12:
          other->paper = SW_PAPER_LETTER;
          break;
        case 13:
          sw_text_set (&other->seed.name, "fescue");
          break;
        case 14:
          other->numbers.values[SW_NUMBER_RAIN] = 1e-5;
          break;
        case 15:
          other->numbers.loss_units = SW_LOSS_US;
          break;
        case 16:
          other->numbers.bench_drained = SW_ANSWER_YES;
          break;
        case 17:
          other->numbers.mown = SW_ANSWER_NO;
          break;
        case 18:
          other->plan.values[SW_PLAN_PRICE_HOUR] = 40.0;
          break;
        case 19:
          sw_text_set (&other->plan.currency, "EUR");
          break;
        case 20:
          other->plan.allowance = SW_ALLOWANCE_USUAL;
          break;
        case 21:
          other->plan.spare_roll = TRUE;
          break;
        case 22:
          other->plan.cost_in_pack = TRUE;
          break;
        }
      g_assert_false (sw_job_equal (job, other));
      g_assert_false (sw_job_equal (other, job));
    }
}

static void
test_overrides (void)
{
  g_autoptr (SwCatalogue) catalogue = small_catalogue ();
  g_autoptr (SwJob) job = sw_job_new_default ();

  sw_job_set_override (job, SW_PRACTICE_SIDE_LAP_M, 0.15, "windy ridge");
  sw_job_set_override (job, SW_PRACTICE_COVER, 0.8, "");
  sw_job_set_override (job, SW_PRACTICE_SIDE_LAP_M, 0.2, "very windy ridge");
  g_assert_cmpuint (job->n_overrides, ==, 2);

  g_autoptr (SwPractice) practice = sw_job_practice (job, catalogue);
  const SwSourced *lap = &practice->values[SW_PRACTICE_SIDE_LAP_M];
  g_assert_cmpfloat (lap->value, ==, 0.2);
  g_assert_cmpint (lap->evidence, ==, SW_EVIDENCE_USER);
  g_assert_cmpstr (lap->source, ==, "very windy ridge");
  g_assert_cmpfloat (practice->density[0].per_m2.value, ==, 2.4);
  const SwPractice *shipped = sw_catalogue_practice (catalogue, "common");
  g_assert_cmpfloat (shipped->values[SW_PRACTICE_SIDE_LAP_M].value, ==, 0.1);

  sw_job_clear_override (job, SW_PRACTICE_SIDE_LAP_M);
  sw_job_clear_override (job, SW_PRACTICE_SIDE_LAP_M);
  g_assert_cmpuint (job->n_overrides, ==, 1);
  g_assert_cmpint (job->overrides[0].value, ==, SW_PRACTICE_COVER);
}

/* The copy's source stands for every change without a reason of its own. */
static void
test_own_practice (void)
{
  g_autoptr (SwCatalogue) catalogue = small_catalogue ();
  g_autoptr (SwJob) job = sw_job_new_default ();
  g_autoptr (SwJob) same = NULL;
  g_autoptr (SwPractice) practice = NULL, published = NULL;

  sw_text_set (&job->own.name, "County drawing D-14");
  sw_text_set (&job->own.source, "County drawings, 2024");
  job->own.toe_kind = 1 + SW_TOE_FOLD;
  job->own.trench_lining = 1 + SW_LINING_DOWN_ACROSS_UP;
  sw_job_set_override (job, SW_PRACTICE_SIDE_LAP_M, 0.15, "windy ridge");
  sw_job_set_override (job, SW_PRACTICE_COVER, 0.8, "");
  g_assert_cmpuint (sw_own_practice_ways (&job->own), ==, 2);
  g_assert_true (sw_own_practice_given (&job->own));
  practice = sw_job_practice (job, catalogue);
  g_assert_cmpstr (practice->own_name, ==, "County drawing D-14");
  g_assert_cmpint (practice->toe_kind, ==, SW_TOE_FOLD);
  g_assert_cmpint (practice->trench_lining, ==, SW_LINING_DOWN_ACROSS_UP);
  g_assert_cmpint (practice->toe_lining, ==,
                   sw_catalogue_practice (catalogue, "common")->toe_lining);
  g_assert_cmpstr (practice->values[SW_PRACTICE_SIDE_LAP_M].source, ==, "windy ridge");
  g_assert_cmpstr (practice->values[SW_PRACTICE_COVER].source, ==,
                   "County drawings, 2024");

  same = sw_job_copy (job);
  g_assert_true (sw_job_equal (job, same));
  same->own.toe_lining = 1 + SW_LINING_DOWN;
  g_assert_false (sw_job_equal (job, same));
  sw_job_clear_own_practice (job);
  g_assert_cmpuint (job->n_overrides, ==, 0);
  g_assert_false (sw_own_practice_given (&job->own));
  published = sw_job_practice (job, catalogue);
  g_assert_cmpstr (published->own_name, ==, "");
  g_assert_cmpint (published->toe_kind, ==,
                   sw_catalogue_practice (catalogue, "common")->toe_kind);
}

static void
test_unknown_practice (void)
{
  g_autoptr (SwCatalogue) catalogue = small_catalogue ();
  g_autoptr (SwJob) job = sw_job_new_default ();

  sw_text_set (&job->practice_id, "nowhere");
  g_assert_null (sw_job_practice (job, catalogue));
}

static void
test_codes (void)
{
  for (int i = 0; i < SW_EVIDENCE_COUNT; i++)
    {
      SwEvidence back = SW_EVIDENCE_COUNT;
      g_assert_true (sw_evidence_from_code (sw_evidence_code ((SwEvidence) i), &back));
      g_assert_cmpint (back, ==, i);
    }
  for (int i = 0; i < SW_PRACTICE_VALUE_COUNT; i++)
    g_assert_cmpint (sw_practice_value_from_key (sw_practice_keys[i].key), ==, i);
  g_assert_cmpint (sw_practice_value_from_key ("nonsense"), ==, SW_PRACTICE_VALUE_COUNT);
  for (int i = 0; i < SW_SITE_QUESTION_COUNT; i++)
    g_assert_nonnull (sw_site_question_keys[i]);
  for (int i = 0; i < SW_OBTAINED_COUNT; i++)
    g_assert_nonnull (sw_obtained_code ((SwObtained) i));
}

/* A spacing of nothing would mean pins without end. */
static void
test_accepts (void)
{
  for (int i = 0; i < SW_PRACTICE_VALUE_COUNT; i++)
    {
      const SwPracticeKey *key = &sw_practice_keys[i];
      SwPracticeValue value = (SwPracticeValue) i;
      g_assert_cmpfloat (key->least, <, key->most);
      g_assert_true (sw_practice_accepts (value, key->least));
      g_assert_true (sw_practice_accepts (value, key->most));
      g_assert_false (sw_practice_accepts (value, key->most * 1.001));
      g_assert_false (sw_practice_accepts (value, -0.001));
      g_assert_false (sw_practice_accepts (value, NAN));
      g_assert_false (sw_practice_accepts (value, INFINITY));
      if (g_str_has_suffix (key->key, "pin_m"))
        g_assert_false (sw_practice_accepts (value, 0.0));
    }
  g_assert_true (sw_practice_accepts (SW_PRACTICE_SLOT_EVERY_M, 0.0));
  g_assert_false (sw_practice_accepts (SW_PRACTICE_SLOT_EVERY_M, 0.5));
}

static void
test_pin_of_length (void)
{
  g_autoptr (SwCatalogue) catalogue = sw_catalogue_new ();
  static const double lengths_m[] = { 0.300, 0.1524, 0.2032 };

  for (gsize i = 0; i < G_N_ELEMENTS (lengths_m); i++)
    {
      SwPin *pin = g_new0 (SwPin, 1);
      pin->length_m = lengths_m[i];
      g_ptr_array_add (catalogue->pins, pin);
    }
  g_assert_cmpfloat (sw_catalogue_pin_of_length (catalogue, 0.15)->length_m, ==, 0.1524);
  g_assert_cmpfloat (sw_catalogue_pin_of_length (catalogue, 0.2)->length_m, ==, 0.2032);
  g_assert_cmpfloat (sw_catalogue_pin_of_length (catalogue, 0.2032)->length_m, ==,
                     0.2032);
  g_assert_null (sw_catalogue_pin_of_length (catalogue, 0.31));
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/base/job/default", test_default);
  g_test_add_func ("/base/job/empty", test_empty);
  g_test_add_func ("/base/job/copy-is-deep", test_copy_is_deep);
  g_test_add_func ("/base/job/equal-sees-every-change", test_equal_sees_every_change);
  g_test_add_func ("/base/job/overrides", test_overrides);
  g_test_add_func ("/base/job/own-practice", test_own_practice);
  g_test_add_func ("/base/job/unknown-practice", test_unknown_practice);
  g_test_add_func ("/base/catalogue/codes", test_codes);
  g_test_add_func ("/base/catalogue/accepts", test_accepts);
  g_test_add_func ("/base/catalogue/pin-of-length", test_pin_of_length);
  return g_test_run ();
}
