/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "../../src/layout/region.h"
#include "random-face.h"
#include <math.h>
#include <slopewright/base/count.h>

/* Faces of each shape; each is laid out with its own roll, lap rule and leeward end. */
#define FACES 15
#define POINTS 400

typedef void (*CheckLayout) (const SwLayout *layout, GRand *rand);

static void
on_random_faces (CheckLayout check)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();

  for (int kind = 0; kind < OUTLINE_KIND_COUNT; kind++)
    for (guint32 seed = 0; seed < FACES; seed++)
      {
        g_autoptr (GRand) rand = g_rand_new_with_seed (1000 * (guint32) kind + seed);
        g_autoptr (SwJob) job = random_job (rand, (OutlineKind) kind);
        g_autoptr (SwLayout) layout = fixture_lay (job, catalogue);

        check (layout, rand);
      }
}

static SwRing
outline_of (const SwFaceLayout *face)
{
  return (SwRing){ face->face->outline, face->face->n_outline };
}

/* sw_ring_contains() counts a point within 0.1 mm of the outline as inside. */
#define EDGE_M 2e-4

/* Whether a run of @tier lies over the place. */
static gboolean
is_covered (const SwFaceLayout *face, guint tier, SwPoint plan)
{
  for (guint r = face->tiers[tier].first_run;
       r < face->tiers[tier].first_run + face->tiers[tier].n_runs; r++)
    {
      const SwRun *run = &face->runs[r];

      if (plan.x_m >= run->along_from_m - EDGE_M && plan.x_m <= run->along_to_m + EDGE_M
          && plan.y_m >= run->out_from_m - EDGE_M && plan.y_m <= run->out_to_m + EDGE_M)
        return TRUE;
    }
  return FALSE;
}

/* Every point of the outline that lies in a tier lies under a run of that tier. */
static void
check_coverage (const SwLayout *layout, GRand *rand)
{
  const SwFaceLayout *face = &layout->faces[0];
  SwBox box = sw_ring_box (outline_of (face));
  guint in_tiers = 0;

  for (int i = 0; i < POINTS; i++)
    {
      SwPoint p = { g_rand_double_range (rand, box.x0_m, box.x1_m),
                    g_rand_double_range (rand, box.y0_m, box.y1_m) };

      if (!sw_ring_contains (outline_of (face), p))
        continue;
      for (guint t = 0; t < face->n_tiers; t++)
        if (p.y_m > face->tiers[t].reach.out_from_m
            && p.y_m < face->tiers[t].reach.out_to_m)
          {
            in_tiers++;
            g_assert_true (is_covered (face, t, p));
          }
    }
  g_assert_cmpuint (in_tiers, >, POINTS / 10);
}

static void
test_no_bare_ground (void)
{
  on_random_faces (check_coverage);
}

/* Laps between neighbouring strips: never below the practice's; widths: a whole roll,
 * unless one roll is wider than the tier or the last run is trimmed. */
static void
check_laps (const SwLayout *layout, GRand *rand)
{
  const SwFaceLayout *face = &layout->faces[0];
  double lap_m = layout->practice->values[SW_PRACTICE_SIDE_LAP_M].value;
  double roll_m = layout->job->roll_width_m;

  for (guint t = 0; t < face->n_tiers; t++)
    {
      const SwTier *tier = &face->tiers[t];
      double width_m = tier->along_to_m - tier->along_from_m;

      g_assert_cmpint (sw_ticks (tier->side_lap_m), >=, sw_ticks (lap_m));
      for (guint r = tier->first_run; r < tier->first_run + tier->n_runs; r++)
        {
          const SwRun *run = &face->runs[r];
          gint64 wide = sw_ticks (run->along_to_m - run->along_from_m);

          g_assert_cmpint (wide, <=, sw_ticks (roll_m));
          g_assert_cmpint (sw_ticks (run->along_from_m), >=,
                           sw_ticks (tier->along_from_m));
          g_assert_cmpint (sw_ticks (run->along_to_m), <=, sw_ticks (tier->along_to_m));
          if (layout->job->surplus == SW_SURPLUS_SPREAD && width_m >= roll_m)
            g_assert_cmpint (wide, ==, sw_ticks (roll_m));
          if (r > tier->first_run && run->number == run[-1].number + 1)
            {
              double over_m = layout->faces[0].face->leeward == SW_SIDE_LEFT
                                  ? run[-1].along_to_m - run->along_from_m
                                  : run->along_to_m - run[-1].along_from_m;
              /* Strips without ground get no number, so neighbours may lie apart. */
              if (over_m > 0.0)
                g_assert_cmpint (sw_ticks (over_m), >=, sw_ticks (lap_m) - 1);
            }
        }
    }
}

static void
test_laps (void)
{
  on_random_faces (check_laps);
}

/* Strips without their laps share the ground out without a gap or a double: clips add
 * up. */
static void
check_clips (const SwLayout *layout, GRand *rand)
{
  const SwFaceLayout *face = &layout->faces[0];
  double net_m2 = 0.0;
  g_autoptr (SwRegion) outline = NULL;

  g_assert_cmpint (sw_region_new (face->face->outline, face->face->n_outline, &outline),
                   ==, SW_OK);
  for (guint t = 0; t < face->n_tiers; t++)
    {
      const SwTier *tier = &face->tiers[t];
      double pitch_m = layout->job->roll_width_m - tier->side_lap_m, sum_m2 = 0.0;

      for (int s = 0; s < tier->strips; s++)
        {
          double from_m = tier->along_from_m + s * pitch_m;
          double to_m = s + 1 == tier->strips ? tier->along_to_m : from_m + pitch_m;
          g_autoptr (SwRegion) clip =
              sw_region_clip_box (outline, (SwBox){ from_m, tier->reach.out_from_m, to_m,
                                                    tier->reach.out_to_m });

          for (guint i = 0; i < sw_region_rings (clip); i++)
            sum_m2 += sw_ground_area_m2 (face->ground, sw_region_ring (clip, i));
        }
      g_assert_cmpfloat_with_epsilon (sum_m2, tier->net_m2, 1e-9 * tier->net_m2 + 2e-4);
      net_m2 += tier->net_m2;
    }
  /* All tiers together are the face less its benches. */
  g_assert_cmpfloat (net_m2, <=,
                     sw_ground_area_m2 (face->ground, outline_of (face)) + 1e-6);
}

static void
test_clips_add_up (void)
{
  on_random_faces (check_clips);
}

/* Every run is as long as its terms, and each term is the practice's. */
static void
check_terms (const SwLayout *layout, GRand *rand)
{
  const SwFaceLayout *face = &layout->faces[0];

  for (guint r = 0; r < face->n_runs; r++)
    {
      const SwRun *run = &face->runs[r];
      const SwRunTerms *terms = &run->terms;
      const SwTier *tier = &face->tiers[run->tier];

      g_assert_cmpfloat_with_epsilon (terms->set_back, 0.60, 1e-12);
      g_assert_cmpfloat_with_epsilon (terms->key_lining, 0.45, 1e-12);
      g_assert_cmpfloat_with_epsilon (terms->key_fold, 0.0, 1e-12);
      g_assert_cmpfloat_with_epsilon (terms->toe, 0.30, 1e-12);
      g_assert_cmpfloat_with_epsilon (terms->face, run->down_to_m - run->down_from_m,
                                      1e-9);
      g_assert_cmpfloat_with_epsilon (terms->end_laps,
                                      (run->n_pieces - 1) * tier->end_lap_m, 1e-9);
      g_assert_cmpfloat_with_epsilon (remainder (terms->slots, 0.30), 0.0, 1e-9);
      g_assert_cmpfloat (terms->slots, <=, 0.30 * tier->slots + 1e-9);
      g_assert_cmpfloat_with_epsilon (run->cut_m,
                                      terms->set_back + terms->key_lining
                                          + terms->key_fold + terms->face + terms->slots
                                          + terms->end_laps + terms->toe,
                                      1e-9);
    }
}

static void
test_cut_lengths (void)
{
  on_random_faces (check_terms);
}

/* Runs are numbered from the leeward end without a gap; parts of one strip from the
 * top. */
static void
check_numbers (const SwLayout *layout, GRand *rand)
{
  const SwFaceLayout *face = &layout->faces[0];
  gboolean left = face->face->leeward == SW_SIDE_LEFT;

  g_assert_cmpint (face->runs[0].number, ==, 1);
  for (guint r = 1; r < face->n_runs; r++)
    {
      const SwRun *run = &face->runs[r], *before = run - 1;

      if (run->number == before->number)
        {
          g_assert_cmpint (run->part, ==, before->part + 1);
          g_assert_cmpfloat (run->down_from_m, >, before->down_to_m);
          continue;
        }
      g_assert_cmpint (run->number, ==, before->number + 1);
      if (run->tier == before->tier)
        g_assert_true (left ? run->along_from_m > before->along_from_m
                            : run->along_to_m < before->along_to_m);
    }
}

static void
test_numbers (void)
{
  on_random_faces (check_numbers);
}

/* Length, along the crest of each tier, of the outline's own edges; on a rectangle the
 * width. */
static void
test_key_trench_follows_crest (void)
{
  /* A crest that runs 3 m out over 20 m of a 2:1 plane: 20 along, 3 sqrt (5) / 2 down. */
  const SwPoint section[] = { { 0.0, 10.0 }, { 20.0, 0.0 } };
  const SwPoint outline[] = {
    { 0.0, 1.0 }, { 20.0, 4.0 }, { 20.0, 18.0 }, { 0.0, 18.0 }
  };
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = fixture_job ();
  g_autoptr (SwLayout) layout = NULL;
  const SwTrench *key;

  fixture_add_face (job, "A", section, 2, outline, 4);
  layout = fixture_lay (job, catalogue);
  g_assert_cmpuint (layout->faces[0].n_trenches, ==, 2);
  key = &layout->faces[0].trenches[0];
  g_assert_cmpint (key->kind, ==, SW_TRENCH_KEY);
  g_assert_cmpfloat_with_epsilon (key->length_m, hypot (20.0, 3.0 * sqrt (5.0) / 2.0),
                                  1e-9);
  g_assert_cmpfloat_with_epsilon (key->volume_m3, key->length_m * 0.15 * 0.15, 1e-12);
  g_assert_cmpfloat_with_epsilon (layout->faces[0].trenches[1].length_m, 20.0, 1e-9);
}

/* An outline open at the toe: the key trench spans the width once, the toe has three
 * parts: two legs and the edge between them. Open at the crest the same turned over. */
static void
test_trenches_of_u (void)
{
  const SwPoint section[] = { { 0.0, 10.0 }, { 20.0, 0.0 } };
  const SwPoint at_toe[] = { { 0, 0 },  { 30, 0 }, { 30, 20 }, { 20, 20 },
                             { 20, 8 }, { 12, 8 }, { 12, 20 }, { 0, 20 } };
  const SwPoint at_crest[] = { { 0, 0 },  { 12, 0 }, { 12, 8 },  { 20, 8 },
                               { 20, 0 }, { 30, 0 }, { 30, 20 }, { 0, 20 } };
  const struct
  {
    const SwPoint *outline;
    guint keys, toes;
  } rows[] = { { at_toe, 1, 3 }, { at_crest, 3, 1 } };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
      g_autoptr (SwJob) job = fixture_job ();
      g_autoptr (SwLayout) layout = NULL;
      double length_m[3] = { 0 };
      guint count[3] = { 0 };

      fixture_add_face (job, "A", section, 2, rows[i].outline, 8);
      layout = fixture_lay (job, catalogue);
      for (guint t = 0; t < layout->faces[0].n_trenches; t++)
        {
          const SwTrench *trench = &layout->faces[0].trenches[t];

          count[trench->kind]++;
          length_m[trench->kind] += trench->length_m;
        }
      g_assert_cmpuint (count[SW_TRENCH_KEY], ==, rows[i].keys);
      g_assert_cmpuint (count[SW_TRENCH_TOE], ==, rows[i].toes);
      g_assert_cmpfloat_with_epsilon (length_m[SW_TRENCH_KEY], 30.0, 1e-9);
      g_assert_cmpfloat_with_epsilon (length_m[SW_TRENCH_TOE], 30.0, 1e-9);
    }
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/layout/runs/no-bare-ground", test_no_bare_ground);
  g_test_add_func ("/layout/runs/laps", test_laps);
  g_test_add_func ("/layout/runs/clips-add-up", test_clips_add_up);
  g_test_add_func ("/layout/runs/cut-lengths", test_cut_lengths);
  g_test_add_func ("/layout/runs/numbers", test_numbers);
  g_test_add_func ("/layout/runs/key-trench-follows-crest",
                   test_key_trench_follows_crest);
  g_test_add_func ("/layout/runs/trenches-of-u", test_trenches_of_u);
  return g_test_run ();
}
