/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "../layout/fixture.h"
#include <slopewright/judge/result.h>

static gboolean
is_found (const SwJob *job, const SwCatalogue *catalogue, const char *code)
{
  g_autoptr (SwResult) result = sw_result_new (job, catalogue);

  g_assert_cmpint (result->status, ==, SW_OK);
  for (guint i = 0; i < result->findings->len; i++)
    if (g_str_equal (((SwFinding *) g_ptr_array_index (result->findings, i))->code, code))
      return TRUE;
  return FALSE;
}

static SwJob *
job_of (double hv)
{
  SwJob *job = fixture_job ();

  fixture_add_plane (job, "A", hv, 5.0, 20.0);
  return job;
}

/* The fixture's mat lasts 12 months. */
static void
test_life (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = job_of (4.0);

  g_assert_false (is_found (job, catalogue, "life-short"));
  job->numbers.values[SW_NUMBER_GROW_MONTHS] = 12.0;
  g_assert_false (is_found (job, catalogue, "life-short"));
  job->numbers.values[SW_NUMBER_GROW_MONTHS] = 12.1;
  g_assert_true (is_found (job, catalogue, "life-short"));
}

/* 16-0-8: phosphate asked for is not in it, potash is, and nitrogen is not asked for. */
static void
test_nutrients (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = job_of (4.0);

  job->plan.values[SW_PLAN_N] = 0.16;
  job->plan.values[SW_PLAN_K2O] = 0.08;
  job->plan.values[SW_PLAN_NEED_K2O] = 0.004;
  g_assert_false (is_found (job, catalogue, "nutrient-p2o5"));
  job->plan.values[SW_PLAN_NEED_P2O5] = 0.005;
  g_assert_true (is_found (job, catalogue, "nutrient-p2o5"));
  g_assert_false (is_found (job, catalogue, "nutrient-k2o"));
  g_assert_false (is_found (job, catalogue, "nutrient-n"));
}

/* Dates go before the answer of the site visit; the window runs over New Year. */
static void
test_season (void)
{
  static const struct
  {
    const char *installed;
    SwAnswer late;
    gboolean there;
  } rows[] = {
    { "", SW_ANSWER_NO, FALSE },
    { "", SW_ANSWER_YES, TRUE },
    { "2026-09-15", SW_ANSWER_YES, FALSE },
    { "2026-03-01", SW_ANSWER_NO, FALSE },
    { "2026-03-02", SW_ANSWER_NO, TRUE },
  };
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr (SwJob) job = job_of (4.0);

      sw_text_set (&job->card.install_date, rows[i].installed);
      sw_text_set (&job->card.sow_from, "09-15");
      sw_text_set (&job->card.sow_to, "03-01");
      job->site[SW_SITE_LATE_SOWING] = rows[i].late;
      g_assert_true (is_found (job, catalogue, "late-sowing") == rows[i].there);
    }
}

/* 5 m at 4:1: runs of 20.616 + 1.35 = 21.966 m. */
static void
test_stock (void)
{
  static const SwStockLine lines[] = { { SW_STOCK_ON_HAND, 22.0, 1 },
                                       { SW_STOCK_ORDER, 12.0, 0 },
                                       { SW_STOCK_ON_HAND, 21.9, 2 } };
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = job_of (4.0);

  g_array_append_vals (job->stock, lines, 2);
  g_assert_false (is_found (job, catalogue, "stock-short"));
  g_array_append_vals (job->stock, lines + 2, 1);
  g_assert_true (is_found (job, catalogue, "stock-short"));
}

static void
test_mowing (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = job_of (4.0);

  g_assert_false (is_found (job, catalogue, "mowing-net"));
  job->numbers.mown = SW_ANSWER_YES;
  g_assert_true (is_found (job, catalogue, "mowing-net"));
  ((SwBlanket *) g_ptr_array_index (catalogue->blankets, 0))->net_plastic_usual = FALSE;
  g_assert_false (is_found (job, catalogue, "mowing-net"));
}

static void
test_set_back (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = job_of (4.0);

  sw_job_set_override (job, SW_PRACTICE_SET_BACK_M, 0.001, "");
  g_assert_false (is_found (job, catalogue, "trench-at-edge"));
  sw_job_set_override (job, SW_PRACTICE_SET_BACK_M, 0.0, "");
  g_assert_true (is_found (job, catalogue, "trench-at-edge"));
}

/* Crowns of 25 mm are the least that agencies print. */
static void
test_crown (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = job_of (4.0);

  g_assert_false (is_found (job, catalogue, "narrow-crown"));
  for (guint i = 0; i < catalogue->pins->len; i++)
    ((SwPin *) g_ptr_array_index (catalogue->pins, i))->crown_m = 0.024;
  g_assert_true (is_found (job, catalogue, "narrow-crown"));
}

/* Metal in a face that is mown; stakes of wood are left out. */
static void
test_metal_pins (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = job_of (4.0);

  g_assert_false (is_found (job, catalogue, "mowing-pins"));
  job->numbers.mown = SW_ANSWER_YES;
  g_assert_true (is_found (job, catalogue, "mowing-pins"));
  for (guint i = 0; i < catalogue->pins->len; i++)
    {
      SwPin *pin = g_ptr_array_index (catalogue->pins, i);

      pin->kind = SW_PIN_KIND_STAKE;
    }
  g_assert_false (is_found (job, catalogue, "mowing-pins"));
}

/* Only one net makes an upper side. */
static void
test_net_side (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = job_of (4.0);

  for (int nets = -1; nets <= 2; nets++)
    {
      ((SwBlanket *) g_ptr_array_index (catalogue->blankets, 0))->nets = nets;
      g_assert_true (is_found (job, catalogue, "net-side-up") == (nets == 1));
    }
}

/* A bench of 4 m splits the face in two, unless it is laid over. */
static void
test_tiers (void)
{
  static const SwPoint section[] = {
    { 0.0, 10.0 }, { 16.0, 6.0 }, { 20.0, 6.0 }, { 36.0, 2.0 }
  };
  const SwPoint outline[] = { { 0, 0 }, { 20, 0 }, { 20, 36 }, { 0, 36 } };
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = fixture_job ();
  SwFace *face = fixture_add_face (job, "A", section, 4, outline, 4);

  g_assert_true (is_found (job, catalogue, "finished-work"));
  face->bench = SW_BENCH_CONTINUOUS;
  g_assert_false (is_found (job, catalogue, "finished-work"));
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/judge/fit/nutrients", test_nutrients);
  g_test_add_func ("/judge/fit/life", test_life);
  g_test_add_func ("/judge/fit/season", test_season);
  g_test_add_func ("/judge/fit/stock", test_stock);
  g_test_add_func ("/judge/fit/mowing", test_mowing);
  g_test_add_func ("/judge/fit/set-back", test_set_back);
  g_test_add_func ("/judge/fit/crown", test_crown);
  g_test_add_func ("/judge/fit/tiers", test_tiers);
  g_test_add_func ("/judge/fit/metal-pins", test_metal_pins);
  g_test_add_func ("/judge/fit/net-side", test_net_side);
  return g_test_run ();
}
