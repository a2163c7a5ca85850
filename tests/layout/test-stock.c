/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "random-face.h"
#include <math.h>
#include <slopewright/base/count.h>

#define FACES 8

static void
add_stock (SwJob *job, SwStockSource source, double length_m, guint count)
{
  SwStockLine line = { source, length_m, count };

  g_array_append_val (job->stock, line);
}

static guint
ready (const SwJob *job, const SwCutRoll *roll)
{
  guint count = 0;

  for (guint i = 0; i < job->stock->len; i++)
    {
      const SwStockLine *line = &g_array_index (job->stock, SwStockLine, i);

      if (sw_ticks (line->length_m) == sw_ticks (roll->length_m)
          && (line->source == SW_STOCK_ON_HAND) == roll->on_hand)
        count += line->count;
    }
  return count;
}

/* To the tick: each roll is its pieces and its off-cut; pieces come from rolls of their
 * run's width; nothing on hand is cut more often than it is there. */
static void
check_balance (const SwLayout *layout)
{
  g_autofree gint64 *used = g_new0 (gint64, layout->rolls + 1);
  double ordered_m2 = 0.0;
  int ordered = 0;

  for (guint i = 0; i < layout->n_pieces; i++)
    {
      const SwPiece *piece = &layout->pieces[i];
      const SwRun *run = &layout->faces[piece->face].runs[piece->run];
      const SwCutRoll *roll = &layout->cut_rolls[piece->roll - 1];

      g_assert_cmpint (sw_ticks (piece->from_m), ==, used[piece->roll]);
      g_assert_cmpint (sw_ticks (roll->width_m), ==,
                       sw_ticks (sw_job_roll_width_m (layout->job, run->narrow)));
      used[piece->roll] += sw_ticks (piece->length_m);
    }
  for (int r = 0; r < layout->rolls; r++)
    {
      const SwCutRoll *roll = &layout->cut_rolls[r];
      guint same = 0;

      g_assert_cmpint (used[r + 1], >, 0);
      g_assert_cmpint (roll->offcut_m >= 0.0, ==, TRUE);
      g_assert_cmpint (used[r + 1] + sw_ticks (roll->offcut_m), ==,
                       sw_ticks (roll->length_m));
      for (int s = 0; s < layout->rolls; s++)
        same += layout->cut_rolls[s].on_hand
                && sw_ticks (layout->cut_rolls[s].length_m) == sw_ticks (roll->length_m);
      if (roll->on_hand)
        g_assert_cmpuint (same, <=, ready (layout->job, roll));
      else
        {
          ordered_m2 += roll->width_m * roll->length_m;
          ordered++;
        }
    }
  g_assert_cmpint (ordered, ==, layout->rolls_ordered);
  g_assert_cmpfloat_with_epsilon (ordered_m2, layout->ordered_m2, 1e-6);
  g_assert_cmpfloat (layout->bound_m2, <=, layout->ordered_m2 + 1e-6);
  g_assert_cmpint (layout->rolls_bound, <=, layout->rolls_ordered);
}

static SwJob *
job_at (int kind, guint32 seed, GRand **rand)
{
  *rand = g_rand_new_with_seed (70000 + 1000 * (guint32) kind + seed);
  return random_job (*rand, (OutlineKind) kind);
}

/* The same face with and without what lies ready: never more is ordered for it. */
static void
test_stock_on_random_faces (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  guint saved = 0, least = 0, faces = 0;

  for (int kind = 0; kind < OUTLINE_KIND_COUNT; kind++)
    for (guint32 seed = 0; seed < FACES; seed++, faces++)
      {
        g_autoptr (GRand) rand = NULL;
        g_autoptr (SwJob) job = job_at (kind, seed, &rand);
        g_autoptr (SwLayout) without = NULL, with = NULL;
        int lines = g_rand_int_range (rand, 1, 5);

        job->joints = SW_JOINTS_LONG_RUNS;
        without = fixture_lay (job, catalogue);
        for (int i = 0; i < lines; i++)
          add_stock (job, SW_STOCK_ON_HAND, g_rand_int_range (rand, 2, 400) / 10.0,
                     (guint) g_rand_int_range (rand, 1, 4));
        with = fixture_lay (job, catalogue);
        check_balance (without);
        check_balance (with);
        g_assert_cmpuint (with->faces[0].n_runs, ==, without->faces[0].n_runs);
        g_assert_cmpfloat (with->ordered_m2, <=, without->ordered_m2 + 1e-6);
        saved += with->ordered_m2 < without->ordered_m2 - 1e-6;
        least += with->least;
      }
  g_test_message ("%u of %u order less for it; %u proved least", saved, faces, least);
  g_assert_cmpuint (saved, >, faces / 3);
}

/* A further length to order and few of a third. */
static void
test_lengths_on_random_faces (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();

  for (int kind = 0; kind < OUTLINE_KIND_COUNT; kind++)
    for (guint32 seed = 0; seed < FACES; seed++)
      {
        g_autoptr (GRand) rand = NULL;
        g_autoptr (SwJob) job = job_at (kind, seed, &rand);
        g_autoptr (SwLayout) without = fixture_lay (job, catalogue), with = NULL;

        add_stock (job, SW_STOCK_ORDER, g_rand_int_range (rand, 120, 600) / 10.0, 0);
        add_stock (job, SW_STOCK_ORDER, g_rand_int_range (rand, 50, 600) / 10.0, 2);
        add_stock (job, SW_STOCK_ON_HAND, g_rand_int_range (rand, 30, 200) / 10.0, 1);
        with = fixture_lay (job, catalogue);
        check_balance (with);
        if (without->n_pieces == without->faces[0].n_runs)
          g_assert_cmpfloat (with->ordered_m2, <=, without->ordered_m2 + 1e-6);
      }
}

/*
 * By hand: 2:1, 4 m high, runs of 8.9443 + 1.35 = 10.2943 m, three to a roll of 34.3. Seven
 * runs are three rolls. An off-cut of 10.5 m takes one run and saves a roll; one of 10 m
 * takes none.
 */
static void
test_one_offcut (void)
{
  static const double offcut_m[] = { 10.5, 10.0 };
  static const int ordered[] = { 2, 3 }, opened[] = { 3, 3 };
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();

  for (guint i = 0; i < G_N_ELEMENTS (offcut_m); i++)
    {
      g_autoptr (SwJob) job = fixture_job ();
      g_autoptr (SwLayout) layout = NULL;

      fixture_add_plane (job, "A", 2.0, 4.0, 0.1 + 7 * 2.34);
      add_stock (job, SW_STOCK_ON_HAND, offcut_m[i], 1);
      layout = fixture_lay (job, catalogue);
      check_balance (layout);
      g_assert_cmpint (layout->rolls_ordered, ==, ordered[i]);
      g_assert_cmpint (layout->rolls, ==, opened[i]);
      g_assert_true (layout->least);
      g_assert_cmpfloat_with_epsilon (layout->ordered_m2, ordered[i] * 2.44 * 34.3, 1e-9);
    }
}

/* By hand: a run of 40.6 + 1.35 m needs a joint in rolls of 34.3 and none in one of 50. */
static void
test_longer_roll_spares_joints (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = fixture_job ();
  g_autoptr (SwLayout) layout = NULL;

  fixture_add_plane (job, "A", 2.0, 40.6 / sqrt (5.0), 2.4);
  add_stock (job, SW_STOCK_ORDER, 50.0, 0);
  layout = fixture_lay (job, catalogue);
  check_balance (layout);
  g_assert_cmpuint (layout->n_pieces, ==, 1);
  g_assert_cmpint (layout->rolls, ==, 1);
  g_assert_cmpfloat (layout->cut_rolls[0].length_m, ==, 50.0);
}

/*
 * By hand, rolls 2.44 m and a narrow one of 1.22 m, lap 0.10. A face of 5.8 m takes
 * (5.8 - 0.1) / 2.34 = 2.44, three runs. Two rolls and the narrow one reach
 * 2 x 2.34 + 1.22 = 5.90: 0.10 over, spread over two laps, 0.15 each; the last run lies
 * from 2 x 2.29 = 4.58 to 5.80. A face of 6.0 m is more than 5.90, so all three are wide
 * with laps of (3 x 2.44 - 6) / 2 = 0.66. Runs of 10.2943 m: two from one roll of 34.3, the
 * third from a narrow one of 20 m: 2.44 x 34.3 + 1.22 x 20 = 108.092 m2.
 */
static void
test_narrow_last_run (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();

  for (int wide = 0; wide < 2; wide++)
    {
      g_autoptr (SwJob) job = fixture_job ();
      g_autoptr (SwLayout) layout = NULL;
      const SwTier *tier;
      const SwRun *last;

      fixture_add_plane (job, "A", 2.0, 4.0, wide ? 6.0 : 5.8);
      job->surplus = SW_SURPLUS_NARROW;
      job->narrow_width_m = 1.22;
      job->narrow_length_m = 20.0;
      layout = fixture_lay (job, catalogue);
      check_balance (layout);
      tier = &layout->faces[0].tiers[0];
      last = &layout->faces[0].runs[2];
      g_assert_cmpint (tier->strips, ==, 3);
      g_assert_cmpint (tier->narrow_last, ==, !wide);
      g_assert_cmpint (last->narrow, ==, !wide);
      g_assert_cmpfloat_with_epsilon (tier->side_lap_m, wide ? 0.66 : 0.15, 1e-9);
      g_assert_cmpfloat_with_epsilon (last->along_from_m, wide ? 3.56 : 4.58, 1e-9);
      g_assert_cmpfloat_with_epsilon (last->along_to_m, wide ? 6.0 : 5.8, 1e-9);
      g_assert_cmpint (layout->rolls, ==, wide ? 1 : 2);
      g_assert_cmpfloat_with_epsilon (layout->ordered_m2, wide ? 2.44 * 34.3 : 108.092,
                                      1e-9);
    }
}

/* Whatever is chosen for the surplus, the strips reach from edge to edge with the least
 * lap; the narrow roll never takes more area placed. */
static void
test_narrow_on_random_faces (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  guint narrow = 0;

  for (int kind = 0; kind < OUTLINE_KIND_COUNT; kind++)
    for (guint32 seed = 0; seed < FACES; seed++)
      {
        g_autoptr (GRand) rand = NULL;
        g_autoptr (SwJob) job = job_at (kind, seed, &rand);
        g_autoptr (SwLayout) layout = NULL;

        job->surplus = SW_SURPLUS_NARROW;
        job->narrow_width_m = job->roll_width_m * g_rand_double_range (rand, 0.3, 0.9);
        job->narrow_length_m = job->roll_length_m;
        layout = fixture_lay (job, catalogue);
        check_balance (layout);
        for (guint t = 0; t < layout->faces[0].n_tiers; t++)
          {
            const SwTier *tier = &layout->faces[0].tiers[t];
            double lap_m = layout->practice->values[SW_PRACTICE_SIDE_LAP_M].value;
            double last_m = tier->narrow_last ? job->narrow_width_m : job->roll_width_m;
            double reach_m =
                (tier->strips - 1) * (job->roll_width_m - tier->side_lap_m) + last_m;

            g_assert_cmpint (sw_ticks (tier->side_lap_m), >=, sw_ticks (lap_m));
            g_assert_cmpint (sw_ticks (reach_m), >=, sw_ticks (tier->width_m));
            narrow += tier->narrow_last;
          }
      }
  g_test_message ("%u tiers end in the narrow roll", narrow);
  g_assert_cmpuint (narrow, >, 15);
}

static void
test_refused (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();

  for (int i = 0; i < 3; i++)
    {
      g_autoptr (SwJob) job = fixture_job ();
      SwLayout *layout = NULL;

      fixture_add_plane (job, "A", 2.0, 4.0, 10.0);
      if (i < 2)
        add_stock (job, SW_STOCK_ON_HAND, i == 0 ? 0.0 : 10.0, i == 0 ? 1 : 0);
      else
        {
          job->surplus = SW_SURPLUS_NARROW;
          job->narrow_width_m = job->roll_width_m;
          job->narrow_length_m = 20.0;
        }
      g_assert_cmpint (sw_layout_new (job, catalogue, &layout, NULL), ==, SW_E_ROLL);
      g_assert_null (layout);
    }
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/layout/stock/on-random-faces", test_stock_on_random_faces);
  g_test_add_func ("/layout/stock/lengths-on-random-faces", test_lengths_on_random_faces);
  g_test_add_func ("/layout/stock/one-off-cut", test_one_offcut);
  g_test_add_func ("/layout/stock/longer-roll", test_longer_roll_spares_joints);
  g_test_add_func ("/layout/stock/narrow-last-run", test_narrow_last_run);
  g_test_add_func ("/layout/stock/narrow-on-random-faces", test_narrow_on_random_faces);
  g_test_add_func ("/layout/stock/refused", test_refused);
  return g_test_run ();
}
