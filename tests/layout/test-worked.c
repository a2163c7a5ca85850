/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "fixture.h"
#include <math.h>

/*
 * Faces worked by hand with the practice of the fixture. Every run carries
 * set-back 0.60 + key lining 0.15 + 0.15 + 0.15 + toe lining 0.15 + 0.15 = 1.35.
 */
#define ALLOWANCE_M 1.35
#define HAND 1e-9 /* the same arithmetic, other order */

/*
 * Bank at 1.5:1, 5.5 m high, 26 m wide, roll 2.44 x 34.3.
 * Length 5.5 sqrt (1 + 2.25) = 9.9153; net 26 x 9.9153 = 257.80;
 * strips (26 - 0.1) / 2.34 = 11.07 -> 12; run 9.9153 + 1.35 = 11.2653;
 * three to a roll (33.80 of 34.3), so 4 rolls, and four are needed: 135.18 / 34.3 = 3.94.
 */
static void
test_bank (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = fixture_job ();
  g_autoptr (SwLayout) layout = NULL;
  double length_m = 5.5 * sqrt (3.25);
  const SwTier *tier;

  fixture_add_plane (job, "S8", 1.5, 5.5, 26.0);
  layout = fixture_lay (job, catalogue);
  g_assert_cmpuint (layout->faces[0].n_tiers, ==, 1);
  tier = &layout->faces[0].tiers[0];
  g_assert_cmpfloat_with_epsilon (tier->length_m, length_m, HAND);
  g_assert_cmpfloat_with_epsilon (tier->length_m, 9.9153, 5e-5);
  g_assert_cmpfloat_with_epsilon (tier->net_m2, 26.0 * length_m, 1e-7);
  g_assert_cmpfloat_with_epsilon (tier->net_m2, 257.80, 5e-3);
  g_assert_cmpint (tier->strips, ==, 12);
  /* 12 x 2.44 - 26 = 3.28 shared by 11 laps. */
  g_assert_cmpfloat_with_epsilon (tier->side_lap_m, 3.28 / 11.0, HAND);
  /* 12 x 2.34 + 0.1 - 26 = 2.18 over. */
  g_assert_cmpfloat_with_epsilon (tier->surplus_m, 2.18, HAND);
  g_assert_cmpfloat_with_epsilon (tier->mean_rad, atan (1.0 / 1.5), HAND);
  g_assert_cmpfloat_with_epsilon (tier->end_lap_m, 0.45,
                                  HAND); /* 1.5:1 counts as steep */
  g_assert_cmpuint (tier->n_runs, ==, 12);
  for (guint i = 0; i < 12; i++)
    g_assert_cmpfloat_with_epsilon (layout->faces[0].runs[i].cut_m,
                                    length_m + ALLOWANCE_M, HAND);
  g_assert_cmpuint (layout->n_pieces, ==, 12);
  g_assert_cmpint (layout->rolls_naive, ==, 4);
  g_assert_cmpint (layout->rolls, ==, 4);
  g_assert_cmpint (layout->rolls_bound, ==, 4);
}

/*
 * House lot at 2.2:1, 2.9 m high, 23 m wide, roll 1.22 x 34.3.
 * Length 2.9 sqrt (1 + 4.84) = 7.0082; net 161.19; strips (23 - 0.1) / 1.12 = 20.4 -> 21;
 * run 8.3582; four to a roll (33.43), so 21 / 4 -> 6 rolls; 175.5 / 34.3 = 5.12 -> 6.
 */
static void
test_house_lot (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = fixture_job ();
  g_autoptr (SwLayout) layout = NULL;
  const SwTier *tier;

  fixture_add_plane (job, "S6", 2.2, 2.9, 23.0);
  job->roll_width_m = 1.22;
  layout = fixture_lay (job, catalogue);
  tier = &layout->faces[0].tiers[0];
  g_assert_cmpfloat_with_epsilon (tier->length_m, 7.0082, 5e-5);
  g_assert_cmpfloat_with_epsilon (tier->net_m2, 161.19, 5e-3);
  g_assert_cmpint (tier->strips, ==, 21);
  g_assert_cmpfloat_with_epsilon (tier->end_lap_m, 0.30, HAND);
  g_assert_cmpfloat_with_epsilon (layout->faces[0].runs[20].cut_m, 8.3582, 5e-5);
  g_assert_cmpint (layout->rolls_naive, ==, 6);
  g_assert_cmpint (layout->rolls, ==, 6);
}

/* Upper 6 m at 2:1, 4 m bench falling 3 % inward, lower 8 m at 2:1; 48 m wide. */
static void
add_benched_cut (SwJob *job)
{
  const SwPoint section[] = {
    { 0.0, 14.0 }, { 12.0, 8.0 }, { 16.0, 8.12 }, { 32.0, 0.12 }
  };
  const SwPoint outline[] = {
    { 0.0, 0.0 }, { 48.0, 0.0 }, { 48.0, 32.0 }, { 0.0, 32.0 }
  };

  fixture_add_face (job, "S1", section, 4, outline, 4);
}

/*
 * Upper 6 sqrt (5) = 13.4164 (644 m2), lower 8 sqrt (5) = 17.8885 (859 m2); strips
 * (48 - 0.1) / 2.34 = 20.47 -> 21 each; runs 14.7664 and 19.2385, together
 * 34.0049 of 34.3: one of each to a roll, 21 rolls; naive 21 / 2 -> 11 and 21, 32.
 */
static void
test_benched_cut (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = fixture_job ();
  g_autoptr (SwLayout) layout = NULL;
  const SwTier *tiers;

  add_benched_cut (job);
  layout = fixture_lay (job, catalogue);
  g_assert_cmpuint (layout->faces[0].n_tiers, ==, 2);
  tiers = layout->faces[0].tiers;
  g_assert_cmpfloat_with_epsilon (tiers[0].length_m, 6.0 * sqrt (5.0), HAND);
  g_assert_cmpfloat_with_epsilon (tiers[1].length_m, 8.0 * sqrt (5.0), HAND);
  g_assert_cmpfloat_with_epsilon (tiers[0].net_m2, 48.0 * 6.0 * sqrt (5.0), 1e-7);
  g_assert_cmpfloat_with_epsilon (tiers[1].net_m2, 48.0 * 8.0 * sqrt (5.0), 1e-7);
  for (int t = 0; t < 2; t++)
    {
      g_assert_cmpint (tiers[t].strips, ==, 21);
      g_assert_cmpuint (tiers[t].n_runs, ==, 21);
      g_assert_cmpfloat_with_epsilon (tiers[t].mean_rad, atan (0.5), HAND);
    }
  g_assert_cmpint (layout->faces[0].runs[0].number, ==, 1);
  g_assert_cmpint (layout->faces[0].runs[41].number, ==, 42);
  g_assert_cmpint (layout->rolls_naive, ==, 32);
  g_assert_cmpint (layout->rolls, ==, 21);
  g_assert_cmpint (layout->rolls_bound, ==, 21);
}

/*
 * The same laid continuously: one tier of 13.4164 + sqrt (16.0144) + 17.8885
 * = 35.3068 m, so every run of 36.6568 is longer than a roll and needs one joint:
 * two pieces, 36.6568 + 0.30.
 */
static void
test_benched_cut_continuous (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = fixture_job ();
  g_autoptr (SwLayout) layout = NULL;
  double length_m = 6.0 * sqrt (5.0) + hypot (4.0, 0.12) + 8.0 * sqrt (5.0);
  const SwTier *tier;

  add_benched_cut (job);
  ((SwFace *) g_ptr_array_index (job->faces, 0))->bench = SW_BENCH_CONTINUOUS;
  layout = fixture_lay (job, catalogue);
  g_assert_cmpuint (layout->faces[0].n_tiers, ==, 1);
  tier = &layout->faces[0].tiers[0];
  g_assert_cmpfloat_with_epsilon (tier->length_m, length_m, HAND);
  g_assert_cmpfloat_with_epsilon (tier->length_m, 35.3068, 5e-5);
  g_assert_cmpuint (layout->n_pieces, ==, 42);
  g_assert_cmpfloat_with_epsilon (layout->faces[0].runs[0].cut_m,
                                  length_m + ALLOWANCE_M + 0.30, HAND);
  g_assert_cmpint (layout->rolls_naive, ==, 42);
}

/* Pool side at 3:1, 4.2 m high, 62 m wide: 13.2816 m, run 14.6316, (62 - 0.1) / 2.34 =
 * 26.45. */
static void
test_pond (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = fixture_job ();
  g_autoptr (SwLayout) layout = NULL;

  fixture_add_plane (job, "S2", 3.0, 4.2, 62.0);
  layout = fixture_lay (job, catalogue);
  g_assert_cmpfloat_with_epsilon (layout->faces[0].tiers[0].length_m, 13.2816, 5e-5);
  g_assert_cmpfloat_with_epsilon (layout->faces[0].tiers[0].net_m2, 823.46, 5e-3);
  g_assert_cmpint (layout->faces[0].tiers[0].strips, ==, 27);
  g_assert_cmpfloat_with_epsilon (layout->faces[0].runs[0].cut_m, 14.6316, 5e-5);
  /* Two to a roll: 27 / 2 -> 14; nothing else fits into 34.3 - 2 x 14.63 = 5.04. */
  g_assert_cmpint (layout->rolls_naive, ==, 14);
  g_assert_cmpint (layout->rolls, ==, 14);
}

/*
 * Trim: the first 11 runs stay 2.44 wide at a pitch of 2.34; the twelfth is what is left,
 * 26 - 11 x 2.34 = 0.26.
 */
static void
test_trim (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = fixture_job ();
  g_autoptr (SwLayout) layout = NULL;
  const SwRun *runs;

  fixture_add_plane (job, "S8", 1.5, 5.5, 26.0);
  job->surplus = SW_SURPLUS_TRIM;
  layout = fixture_lay (job, catalogue);
  runs = layout->faces[0].runs;
  g_assert_cmpfloat_with_epsilon (layout->faces[0].tiers[0].side_lap_m, 0.10, HAND);
  for (int i = 0; i < 11; i++)
    {
      g_assert_cmpfloat_with_epsilon (runs[i].along_from_m, 2.34 * i, HAND);
      g_assert_cmpfloat_with_epsilon (runs[i].along_to_m, 2.34 * i + 2.44, HAND);
    }
  g_assert_cmpfloat_with_epsilon (runs[11].along_to_m - runs[11].along_from_m, 0.26,
                                  HAND);
}

/*
 * Check slots at most 4 m apart on 9.9153 m: three equal parts, two slots at 3.3051 and
 * 6.6102; each takes 2 x 0.15 of blanket. Not on 3.1:1, where the practice wants none.
 */
static void
test_slots (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = fixture_job ();
  g_autoptr (SwLayout) layout = NULL;
  double length_m = 5.5 * sqrt (3.25);
  guint slots = 0;

  fixture_add_plane (job, "A", 1.5, 5.5, 26.0);
  fixture_add_plane (job, "B", 3.1, 5.5, 26.0);
  sw_job_set_override (job, SW_PRACTICE_SLOT_EVERY_M, 4.0, "");
  layout = fixture_lay (job, catalogue);
  g_assert_cmpint (layout->faces[0].tiers[0].slots, ==, 2);
  g_assert_cmpint (layout->faces[1].tiers[0].slots, ==, 0);
  g_assert_cmpfloat_with_epsilon (layout->faces[0].runs[3].terms.slots, 0.60, HAND);
  g_assert_cmpfloat_with_epsilon (layout->faces[0].runs[3].cut_m,
                                  length_m + ALLOWANCE_M + 0.60, HAND);
  for (guint i = 0; i < layout->faces[0].n_trenches; i++)
    if (layout->faces[0].trenches[i].kind == SW_TRENCH_SLOT)
      {
        slots++;
        g_assert_cmpfloat_with_epsilon (layout->faces[0].trenches[i].line[0].down_m,
                                        length_m * slots / 3.0, HAND);
        g_assert_cmpfloat_with_epsilon (layout->faces[0].trenches[i].length_m, 26.0,
                                        HAND);
      }
  g_assert_cmpuint (slots, ==, 2);
}

/* Linings by hand from depth 0.2 and width 0.3; toe fold 0.5; plain row nothing. */
static void
test_linings_and_toes (void)
{
  static const struct
  {
    SwLining lining;
    double key_m;
  } linings[] = { { SW_LINING_DOWN, 0.2 },
                  { SW_LINING_DOWN_ACROSS, 0.5 },
                  { SW_LINING_DOWN_ACROSS_UP, 0.7 } };
  static const struct
  {
    SwToeKind kind;
    double toe_m;
  } toes[] = { { SW_TOE_TRENCH, 0.30 }, { SW_TOE_FOLD, 1.00 }, { SW_TOE_ROW, 0.0 } };

  for (guint l = 0; l < G_N_ELEMENTS (linings); l++)
    for (guint t = 0; t < G_N_ELEMENTS (toes); t++)
      {
        g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
        g_autoptr (SwJob) job = fixture_job ();
        g_autoptr (SwLayout) layout = NULL;
        SwPractice *practice = g_ptr_array_index (catalogue->practices, 0);

        practice->trench_lining = linings[l].lining;
        practice->toe_kind = toes[t].kind;
        fixture_add_plane (job, "A", 2.0, 5.0, 20.0);
        sw_job_set_override (job, SW_PRACTICE_TRENCH_DEPTH_M, 0.2, "");
        sw_job_set_override (job, SW_PRACTICE_TRENCH_WIDTH_M, 0.3, "");
        sw_job_set_override (job, SW_PRACTICE_TRENCH_FOLD_M, 0.25, "");
        layout = fixture_lay (job, catalogue);
        g_assert_cmpfloat_with_epsilon (layout->faces[0].runs[0].terms.key_lining,
                                        linings[l].key_m, HAND);
        g_assert_cmpfloat_with_epsilon (layout->faces[0].runs[0].terms.toe, toes[t].toe_m,
                                        HAND);
        g_assert_cmpfloat_with_epsilon (
            layout->faces[0].runs[0].cut_m,
            0.60 + linings[l].key_m + 0.25 + 5.0 * sqrt (5.0) + toes[t].toe_m, HAND);
      }
}

/*
 * Trenches by hand: key and toe run the width of 26 m, 0.15 x 0.15: 0.585 m3 each. The
 * key's middle lies 0.60 + 0.075 behind the crest, on level ground; the toe's 0.075
 * beyond the toe.
 */
static void
test_trenches (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = fixture_job ();
  g_autoptr (SwLayout) layout = NULL;
  const SwTrench *key, *toe;

  fixture_add_plane (job, "S8", 1.5, 5.5, 26.0);
  layout = fixture_lay (job, catalogue);
  g_assert_cmpuint (layout->faces[0].n_trenches, ==, 2);
  key = &layout->faces[0].trenches[0];
  toe = &layout->faces[0].trenches[1];
  g_assert_cmpint (key->kind, ==, SW_TRENCH_KEY);
  g_assert_cmpint (toe->kind, ==, SW_TRENCH_TOE);
  g_assert_cmpfloat_with_epsilon (key->length_m, 26.0, HAND);
  g_assert_cmpfloat_with_epsilon (key->volume_m3, 0.585, HAND);
  g_assert_cmpfloat_with_epsilon (key->line[0].out_m, -0.675, HAND);
  g_assert_cmpfloat_with_epsilon (toe->line[1].out_m, 8.25 + 0.075, HAND);
  g_assert_cmpfloat_with_epsilon (toe->volume_m3, 0.585, HAND);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/layout/worked/bank", test_bank);
  g_test_add_func ("/layout/worked/house-lot", test_house_lot);
  g_test_add_func ("/layout/worked/benched-cut", test_benched_cut);
  g_test_add_func ("/layout/worked/benched-cut-continuous", test_benched_cut_continuous);
  g_test_add_func ("/layout/worked/pond", test_pond);
  g_test_add_func ("/layout/worked/trim", test_trim);
  g_test_add_func ("/layout/worked/slots", test_slots);
  g_test_add_func ("/layout/worked/linings-and-toes", test_linings_and_toes);
  g_test_add_func ("/layout/worked/trenches", test_trenches);
  return g_test_run ();
}
