/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "random-face.h"
#include <math.h>
#include <slopewright/base/count.h>
#include <slopewright/layout/cutting.h>

#define FACES 40

static SwLayout *
random_layout (const SwCatalogue *catalogue, int kind, guint32 seed)
{
  g_autoptr (GRand) rand = g_rand_new_with_seed (5000 + 1000 * (guint32) kind + seed);
  g_autoptr (SwJob) job = random_job (rand, (OutlineKind) kind);

  return fixture_lay (job, catalogue);
}

/* To the tick: pieces and off-cuts are the rolls, and no roll gives more than it has. */
static void
check_balance (const SwLayout *layout)
{
  gint64 roll = sw_ticks (layout->job->roll_length_m), sum = 0;
  g_autofree gint64 *used = g_new0 (gint64, layout->rolls + 1);

  for (guint i = 0; i < layout->n_pieces; i++)
    {
      const SwPiece *piece = &layout->pieces[i];

      g_assert_cmpint (piece->roll, >=, 1);
      g_assert_cmpint (piece->roll, <=, layout->rolls);
      /* One after the other off the roll, so none overlaps another. */
      g_assert_cmpint (sw_ticks (piece->from_m), ==, used[piece->roll]);
      used[piece->roll] += sw_ticks (piece->length_m);
      g_assert_cmpint (used[piece->roll], <=, roll);
    }
  for (int r = 1; r <= layout->rolls; r++)
    {
      g_assert_cmpint (used[r], >, 0);
      g_assert_cmpint (used[r] + sw_ticks (layout->cut_rolls[r - 1].offcut_m), ==, roll);
      sum += used[r] + sw_ticks (layout->cut_rolls[r - 1].offcut_m);
    }
  g_assert_cmpint (sum, ==, layout->rolls * roll);
  g_assert_cmpint (layout->rolls_bound, <=, layout->rolls);
  /* The naive count knows no end laps, so joints may cost more than it says. */
  if (layout->n_pieces == layout->faces[0].n_runs)
    g_assert_cmpint (layout->rolls, <=, layout->rolls_naive);
}

/* Pieces of a run: in order, each within a roll, not below the least, together the
 * run. */
static void
check_run (const SwLayout *layout, const SwFaceLayout *face, guint index)
{
  const SwRun *run = &face->runs[index];
  const SwPiece *pieces = sw_layout_run_pieces (layout, run);
  gint64 sum = 0;
  double least_m = layout->practice->values[SW_PRACTICE_MIN_PIECE_M].value;

  g_assert_cmpuint (run->n_pieces, >, 0);
  for (guint p = 0; p < run->n_pieces; p++)
    {
      g_assert_cmpuint (pieces[p].run, ==, index);
      g_assert_cmpuint (pieces[p].order, ==, p);
      g_assert_cmpint (sw_ticks (pieces[p].length_m), <=,
                       sw_ticks (layout->job->roll_length_m));
      if (run->n_pieces > 1)
        g_assert_cmpint (sw_ticks (pieces[p].length_m), >=, sw_ticks (least_m) - 1);
      sum += sw_ticks (pieces[p].length_m);
    }
  /* Each piece is rounded to a tick. */
  g_assert_cmpint (ABS (sum - sw_ticks (run->cut_m)), <=, run->n_pieces);
}

/* What the pieces cover: from the crest anchor to the toe end without a gap, each joint
 * lapped by the practice's end lap at least, the upslope piece on top. */
static void
check_cover (const SwLayout *layout, const SwFaceLayout *face, const SwRun *run)
{
  const SwPiece *pieces = sw_layout_run_pieces (layout, run);
  double lap_m = face->tiers[run->tier].end_lap_m;

  g_assert_cmpfloat (pieces[0].down_from_m, <=, run->down_from_m);
  g_assert_cmpfloat (pieces[run->n_pieces - 1].down_to_m, >=, run->down_to_m - 1e-4);
  for (guint p = 1; p < run->n_pieces; p++)
    {
      g_assert_cmpfloat (pieces[p].down_from_m, >, pieces[p - 1].down_from_m);
      g_assert_cmpint (sw_ticks (pieces[p - 1].down_to_m - pieces[p].down_from_m), >=,
                       sw_ticks (lap_m) - 1);
    }
}

static guint
joints_beside (const SwLayout *layout, const SwRun *run, double lower_m)
{
  const SwPiece *pieces = sw_layout_run_pieces (layout, run);
  guint near = 0;

  for (guint p = 1; p < run->n_pieces; p++)
    if (fabs (pieces[p - 1].down_to_m - lower_m) < 1.0 - 2e-4)
      near++;
  return near;
}

/* No joint near the crest, the toe or a break of the section. Returns how many joints lie
 * too near to one in the strip before. */
static guint
check_joints (const SwLayout *layout, const SwFaceLayout *face, guint index)
{
  const SwRun *run = &face->runs[index];
  const SwTier *tier = &face->tiers[run->tier];
  const SwPiece *pieces = sw_layout_run_pieces (layout, run);
  guint near = 0;

  for (guint p = 1; p < run->n_pieces; p++)
    {
      double upper_m = pieces[p].down_from_m, lower_m = pieces[p - 1].down_to_m;

      g_assert_cmpfloat (upper_m, >=, run->down_from_m + 1.0 - 2e-4);
      g_assert_cmpfloat (lower_m, <=, run->down_to_m - 1.0 + 2e-4);
      for (guint b = tier->reach.from_break + 1; b < tier->reach.to_break; b++)
        {
          double break_m = sw_ground_break_down_m (face->ground, b, run->along_from_m);

          g_assert_true (lower_m < break_m || upper_m > break_m);
        }
      for (guint r = tier->first_run; r < index; r++)
        if (face->runs[r].number == run->number - 1)
          near += joints_beside (layout, &face->runs[r], lower_m);
    }
  return near;
}

static void
test_pieces (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  guint joints = 0, near = 0;

  for (int kind = 0; kind < OUTLINE_KIND_COUNT; kind++)
    for (guint32 seed = 0; seed < FACES; seed++)
      {
        g_autoptr (SwLayout) layout = random_layout (catalogue, kind, seed);
        const SwFaceLayout *face = &layout->faces[0];

        check_balance (layout);
        for (guint r = 0; r < face->n_runs; r++)
          {
            check_run (layout, face, r);
            check_cover (layout, face, &face->runs[r]);
            near += check_joints (layout, face, r);
            joints += face->runs[r].n_pieces - 1;
          }
      }
  g_test_message ("%u joints, %u of them beside one of the strip before", joints, near);
  g_assert_cmpuint (joints, >, 1000);
  g_assert_cmpuint (near, ==, 0);
}

/* Faces share one stock: three small banks come out of what one roll each would waste. */
static void
test_shared_stock (void)
{
  /* 2:1, 4 m high: 8.944 + 1.35 = 10.294 a run, three to a roll of 34.3; one run each. */
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = fixture_job ();
  g_autoptr (SwLayout) layout = NULL;

  fixture_add_plane (job, "A", 2.0, 4.0, 2.0);
  fixture_add_plane (job, "B", 2.0, 4.0, 2.44);
  fixture_add_plane (job, "C", 2.0, 4.0, 1.0);
  layout = fixture_lay (job, catalogue);
  g_assert_cmpint (layout->rolls, ==, 1);
  g_assert_cmpint (layout->rolls_naive, ==, 3);
  g_assert_cmpfloat_with_epsilon (layout->cut_rolls[0].offcut_m,
                                  34.3 - 3.0 * (4.0 * sqrt (5.0) + 1.35), 2e-4);
  check_balance (layout);
}

/*
 * 20.5 m, all but level, on rolls of 20: 20.501025 + 1.05 + 0.30 = 21.851 of blanket. The
 * first run is a whole roll and 21.851 - 20 + 0.3 = 2.151. The second keeps 1 m off that
 * joint: 19 and 3.151. The third goes back to 20. With a least piece of 3 m the first is
 * 19.151 and 3.
 */
static void
test_stagger (void)
{
  const SwPoint outline[] = { { 0, 0 }, { 6, 0 }, { 6, 20.5 }, { 0, 20.5 } };
  const SwPoint section[] = { { 0.0, 0.205 }, { 20.5, 0.0 } };
  static const double want_m[] = { 20.0, 2.151, 19.0, 3.151, 20.0, 2.151 };
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = fixture_job ();
  g_autoptr (SwLayout) layout = NULL;

  fixture_add_face (job, "A", section, 2, outline, 4)->bench = SW_BENCH_CONTINUOUS;
  job->roll_length_m = 20.0;
  layout = fixture_lay (job, catalogue);
  g_assert_cmpuint (layout->n_pieces, ==, G_N_ELEMENTS (want_m));
  for (guint i = 0; i < layout->n_pieces; i++)
    g_assert_cmpfloat_with_epsilon (layout->pieces[i].length_m, want_m[i], 1.1e-4);
  sw_job_set_override (job, SW_PRACTICE_MIN_PIECE_M, 3.0, "");
  g_clear_pointer (&layout, sw_layout_free);
  layout = fixture_lay (job, catalogue);
  g_assert_cmpfloat_with_epsilon (layout->pieces[0].length_m, 19.151, 1.1e-4);
  g_assert_cmpfloat_with_epsilon (layout->pieces[1].length_m, 3.0, 1.1e-4);
}

/*
 * Eight runs of 25 m of blanket on rolls of 34.3: one a roll, 8 rolls, 9.3 m wasted eight
 * times. Joined by 0.30: 8 x 25 = 200 m and a lap for every joint, so 6 rolls at least
 * (5.83) and, with at most 7 joints, 202.1 m of 205.8.
 */
static void
test_joints_save_rolls (void)
{
  double face_m = 25.0 - 1.35, hv = 2.0, rise_m = face_m / sqrt (5.0);
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = fixture_job ();
  g_autoptr (SwLayout) layout = NULL;

  fixture_add_plane (job, "A", hv, rise_m, 0.1 + 8 * 2.34);
  layout = fixture_lay (job, catalogue);
  g_assert_cmpint (layout->rolls, ==, 8);
  g_assert_cmpuint (layout->n_pieces, ==, 8);
  g_clear_pointer (&layout, sw_layout_free);
  job->joints = SW_JOINTS_SAVE_ROLLS;
  layout = fixture_lay (job, catalogue);
  g_assert_cmpint (layout->rolls, <, 8);
  g_assert_cmpint (layout->rolls, >=, 6);
  check_balance (layout);
  for (guint r = 0; r < layout->faces[0].n_runs; r++)
    {
      check_run (layout, &layout->faces[0], r);
      check_cover (layout, &layout->faces[0], &layout->faces[0].runs[r]);
      g_assert_cmpuint (check_joints (layout, &layout->faces[0], r), ==, 0);
    }
}

/* Random stocks: no plan passes first fit, no bound passes a plan, and every piece is
 * cut. */
static void
test_cutting_properties (void)
{
  g_autoptr (GRand) rand = g_rand_new_with_seed (3);

  for (int i = 0; i < 300; i++)
    {
      guint count = (guint) g_rand_int_range (rand, 1, 60);
      gint64 capacity = g_rand_int_range (rand, 50, 400);
      g_autofree gint64 *pieces = g_new (gint64, count);
      g_autofree gint64 *used = g_new0 (gint64, count + 1);
      g_autoptr (SwCutting) cutting = NULL;
      int first_fit;

      for (guint p = 0; p < count; p++)
        pieces[p] = g_rand_int_range (rand, 1, (gint32) capacity + 1);
      cutting = sw_cutting_new (pieces, count, capacity);
      first_fit = sw_cutting_first_fit (pieces, count, capacity);
      g_assert_cmpint (sw_cutting_bound_l1 (pieces, count, capacity), <=,
                       sw_cutting_bound_l2 (pieces, count, capacity));
      g_assert_cmpint (sw_cutting_bound_l2 (pieces, count, capacity), <=, cutting->bound);
      g_assert_cmpint (cutting->bound, <=, cutting->rolls);
      g_assert_cmpint (cutting->rolls, <=, first_fit);
      for (guint p = 0; p < count; p++)
        {
          g_assert_cmpint (cutting->roll_of[p], >=, 1);
          g_assert_cmpint (cutting->roll_of[p], <=, cutting->rolls);
          g_assert_cmpint (cutting->from[p], ==, used[cutting->roll_of[p]]);
          used[cutting->roll_of[p]] += pieces[p];
        }
      for (int r = 1; r <= cutting->rolls; r++)
        {
          g_assert_cmpint (used[r], >, 0);
          g_assert_cmpint (used[r], <=, capacity);
        }
    }
}

/* The least number of rolls by trying every way, for up to nine pieces. */
static int
fewest (const gint64 *pieces, guint count, gint64 *room, int rolls, int best)
{
  if (rolls >= best)
    return best;
  if (count == 0)
    return rolls;
  for (int r = 0; r <= rolls; r++)
    if (room[r] >= pieces[0])
      {
        room[r] -= pieces[0];
        best = fewest (pieces + 1, count - 1, room, r == rolls ? rolls + 1 : rolls, best);
        room[r] += pieces[0];
      }
  return best;
}

/* Small stocks against every way of cutting: bound and plan are both exact. */
static void
test_cutting_exact (void)
{
  g_autoptr (GRand) rand = g_rand_new_with_seed (4);

  for (int i = 0; i < 2000; i++)
    {
      guint count = (guint) g_rand_int_range (rand, 1, 10);
      gint64 pieces[9], room[10];
      g_autoptr (SwCutting) cutting = NULL;
      int want;

      for (guint p = 0; p < count; p++)
        pieces[p] = g_rand_int_range (rand, 10, 71);
      for (guint r = 0; r < G_N_ELEMENTS (room); r++)
        room[r] = 100;
      want = fewest (pieces, count, room, 0, (int) count + 1);
      cutting = sw_cutting_new (pieces, count, 100);
      g_assert_cmpint (cutting->rolls, ==, want);
      g_assert_cmpint (cutting->bound, ==, want);
    }
}

static void
test_cutting_edges (void)
{
  const gint64 too_long[] = { 3, 11 }, nothing[] = { 0 }, exact[] = { 10, 10, 5, 5 };
  g_autoptr (SwCutting) full = sw_cutting_new (exact, 4, 10);
  g_autoptr (SwCutting) none = sw_cutting_new (exact, 0, 10);

  g_assert_null (sw_cutting_new (too_long, 2, 10));
  g_assert_null (sw_cutting_new (nothing, 1, 10));
  g_assert_cmpint (full->rolls, ==, 3);
  g_assert_cmpint (full->bound, ==, 3);
  g_assert_cmpint (none->rolls, ==, 0);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/layout/pieces/random-faces", test_pieces);
  g_test_add_func ("/layout/pieces/shared-stock", test_shared_stock);
  g_test_add_func ("/layout/pieces/stagger", test_stagger);
  g_test_add_func ("/layout/pieces/joints-save-rolls", test_joints_save_rolls);
  g_test_add_func ("/layout/cutting/properties", test_cutting_properties);
  g_test_add_func ("/layout/cutting/exact", test_cutting_exact);
  g_test_add_func ("/layout/cutting/edges", test_cutting_edges);
  return g_test_run ();
}
