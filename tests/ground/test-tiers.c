/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include <math.h>
#include <slopewright/ground/ground.h>

#define BENCH_HV 10.0
#define BENCH_MIN_M 2.0
#define HAND 1e-9

static SwGround *
extruded (const SwPoint *section, guint count)
{
  SwStation station = { 0.0, section };
  SwGround *ground = NULL;

  g_assert_cmpint (sw_ground_new_ruled (&station, 1, count, 0, count - 1, &ground), ==,
                   SW_OK);
  return ground;
}

static SwReach
reach_at (const GArray *reaches, guint i)
{
  g_assert_cmpuint (i, <, reaches->len);
  return g_array_index (reaches, SwReach, i);
}

static GArray *
tiers_of (const SwPoint *section, guint count)
{
  g_autoptr (SwGround) ground = extruded (section, count);
  GArray *reaches = g_array_new (FALSE, FALSE, sizeof (SwReach));

  g_assert_cmpint (sw_ground_tiers (ground, BENCH_HV, BENCH_MIN_M, reaches), ==, SW_OK);
  return reaches;
}

/* Source: by hand. Upper 6 m and lower 8 m at 2:1: 6 sqrt (5) = 13.416, 8 sqrt (5) =
 * 17.889. */
static void
test_bench_splits (void)
{
  const SwPoint section[] = {
    { 0.0, 14.0 }, { 12.0, 8.0 }, { 16.0, 8.12 }, { 32.0, 0.12 }
  };
  g_autoptr (GArray) reaches = tiers_of (section, 4);
  SwReach upper, lower;

  g_assert_cmpuint (reaches->len, ==, 2);
  upper = reach_at (reaches, 0);
  lower = reach_at (reaches, 1);
  g_assert_cmpfloat_with_epsilon (upper.down_to_m - upper.down_from_m, 6.0 * sqrt (5.0),
                                  HAND);
  g_assert_cmpfloat_with_epsilon (lower.down_to_m - lower.down_from_m, 8.0 * sqrt (5.0),
                                  HAND);
  g_assert_cmpfloat_with_epsilon (upper.out_to_m, 12.0, HAND);
  g_assert_cmpfloat_with_epsilon (lower.out_from_m, 16.0, HAND);
  g_assert_cmpuint (upper.from_break, ==, 0);
  g_assert_cmpuint (upper.to_break, ==, 1);
  g_assert_cmpuint (lower.from_break, ==, 2);
  g_assert_cmpuint (lower.to_break, ==, 3);
}

/* A bench of exactly the least length splits; one a millimetre shorter does not. */
static void
test_least_length (void)
{
  SwPoint section[] = { { 0.0, 10.0 }, { 8.0, 6.0 }, { 10.0, 6.0 }, { 22.0, 0.0 } };
  g_autoptr (GArray) splits = tiers_of (section, 4);
  g_autoptr (GArray) whole = NULL;

  g_assert_cmpuint (splits->len, ==, 2);
  section[2].x_m = 9.999;
  whole = tiers_of (section, 4);
  g_assert_cmpuint (whole->len, ==, 1);
  /* 4 sqrt (5) + 1.999 + hypot (12.001, 6). */
  g_assert_cmpfloat_with_epsilon (reach_at (whole, 0).down_to_m,
                                  4.0 * sqrt (5.0) + 1.999 + hypot (12.001, 6.0), HAND);
}

/* Flatter than 10:1 is bench, 10:1 itself is not; a bench may fall either way. */
static void
test_least_gradient (void)
{
  SwPoint section[] = { { 0.0, 10.0 }, { 8.0, 6.0 }, { 12.0, 5.6 }, { 22.0, 0.0 } };
  static const struct
  {
    double up_m;
    guint tiers;
  } rows[] = { { 5.6, 1 }, { 5.601, 2 }, { 6.0, 2 }, { 6.399, 2 }, { 6.401, 1 } };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr (GArray) reaches = NULL;

      section[2].y_m = rows[i].up_m;
      reaches = tiers_of (section, 4);
      g_assert_cmpuint (reaches->len, ==, rows[i].tiers);
    }
}

/* Two flat stretches in a row are one bench, though each is too short for one. */
static void
test_joined_flats (void)
{
  const SwPoint section[] = {
    { 0.0, 10.0 }, { 8.0, 6.0 }, { 9.5, 6.0 }, { 11.0, 5.95 }, { 22.0, 0.0 }
  };
  g_autoptr (GArray) reaches = tiers_of (section, 5);

  g_assert_cmpuint (reaches->len, ==, 2);
  g_assert_cmpfloat_with_epsilon (reach_at (reaches, 1).out_from_m, 11.0, HAND);
}

/* Flat ground at the crest and the toe is left bare; two benches make three tiers. */
static void
test_ends_and_many (void)
{
  const SwPoint section[] = { { 0.0, 20.0 },  { 3.0, 20.0 },  { 9.0, 17.0 },
                              { 12.0, 17.0 }, { 20.0, 13.0 }, { 24.0, 13.0 },
                              { 40.0, 5.0 },  { 45.0, 5.0 } };
  g_autoptr (GArray) reaches = tiers_of (section, G_N_ELEMENTS (section));

  g_assert_cmpuint (reaches->len, ==, 3);
  g_assert_cmpfloat_with_epsilon (reach_at (reaches, 0).out_from_m, 3.0, HAND);
  g_assert_cmpfloat_with_epsilon (reach_at (reaches, 0).out_to_m, 9.0, HAND);
  g_assert_cmpfloat_with_epsilon (reach_at (reaches, 1).out_from_m, 12.0, HAND);
  g_assert_cmpfloat_with_epsilon (reach_at (reaches, 2).out_to_m, 40.0, HAND);
}

static void
test_whole (void)
{
  const SwPoint section[] = {
    { 0.0, 14.0 }, { 12.0, 8.0 }, { 16.0, 8.12 }, { 32.0, 0.12 }
  };
  g_autoptr (SwGround) ground = extruded (section, 4);
  g_autoptr (GArray) reaches = g_array_new (FALSE, FALSE, sizeof (SwReach));

  g_assert_cmpint (sw_ground_whole (ground, reaches), ==, SW_OK);
  g_assert_cmpuint (reaches->len, ==, 1);
  g_assert_cmpfloat_with_epsilon (reach_at (reaches, 0).down_to_m,
                                  14.0 * sqrt (5.0) + hypot (4.0, 0.12), HAND);
  g_assert_cmpfloat_with_epsilon (sw_ground_steepest_rad (ground, reach_at (reaches, 0)),
                                  atan (0.5), HAND);
  /* 13.88 down over 32. */
  g_assert_cmpfloat_with_epsilon (sw_ground_mean_rad (ground, reach_at (reaches, 0), 4.0),
                                  atan (13.88 / 32.0), HAND);
}

/* Nothing but bench, and limits that are no limits. */
static void
test_refusals (void)
{
  const SwPoint flat[] = { { 0.0, 1.0 }, { 30.0, 0.0 } };
  g_autoptr (SwGround) ground = extruded (flat, 2);
  g_autoptr (GArray) reaches = g_array_new (FALSE, FALSE, sizeof (SwReach));

  g_assert_cmpint (sw_ground_tiers (ground, BENCH_HV, BENCH_MIN_M, reaches), ==,
                   SW_E_SECTION);
  g_assert_cmpint (sw_ground_tiers (ground, 0.0, BENCH_MIN_M, reaches), ==, SW_E_RANGE);
  g_assert_cmpint (sw_ground_tiers (ground, BENCH_HV, -1.0, reaches), ==, SW_E_RANGE);
  g_assert_cmpint (sw_ground_tiers (ground, NAN, BENCH_MIN_M, reaches), ==, SW_E_RANGE);
}

/* Every kind of wrong section, and the output left as it was. */
static void
test_sections_refused (void)
{
  const SwPoint good[] = { { 0.0, 5.0 }, { 10.0, 0.0 }, { 12.0, 0.0 } };
  const SwPoint back[] = { { 0.0, 5.0 }, { 10.0, 0.0 }, { 9.0, 0.0 } };
  const SwPoint upright[] = { { 0.0, 5.0 }, { 0.0, 0.0 }, { 9.0, 0.0 } };
  const SwPoint uphill[] = { { 0.0, 0.0 }, { 10.0, 5.0 }, { 12.0, 6.0 } };
  const SwPoint broken[] = { { 0.0, 5.0 }, { NAN, 0.0 }, { 12.0, 0.0 } };
  static const struct
  {
    guint count, crest, toe;
    SwStatus want;
  } places[] = { { 1, 0, 0, SW_E_FEW_POINTS },
                 { 3, 1, 1, SW_E_SECTION },
                 { 3, 2, 0, SW_E_SECTION },
                 { 3, 0, 3, SW_E_SECTION },
                 { 3, 1, 2, SW_E_SECTION } /* no drop */,
                 { 3, 0, 2, SW_OK } };
  const struct
  {
    const SwPoint *section;
    SwStatus want;
  } sections[] = { { back, SW_E_SECTION },
                   { upright, SW_E_SECTION },
                   { uphill, SW_E_SECTION },
                   { broken, SW_E_RANGE } };
  SwStation station = { 0.0, good };

  for (guint i = 0; i < G_N_ELEMENTS (places); i++)
    {
      g_autoptr (SwGround) ground = NULL;

      g_assert_cmpint (sw_ground_new_ruled (&station, 1, places[i].count, places[i].crest,
                                            places[i].toe, &ground),
                       ==, places[i].want);
      g_assert_true ((ground != NULL) == (places[i].want == SW_OK));
    }
  for (guint i = 0; i < G_N_ELEMENTS (sections); i++)
    {
      SwGround *ground = NULL;

      station.section = sections[i].section;
      g_assert_cmpint (sw_ground_new_ruled (&station, 1, 3, 0, 2, &ground), ==,
                       sections[i].want);
      g_assert_null (ground);
    }
}

/* Stations must follow each other. */
static void
test_stations_refused (void)
{
  const SwPoint good[] = { { 0.0, 5.0 }, { 10.0, 0.0 } };
  const SwStation same[] = { { 1.0, good }, { 1.0, good } };
  const SwStation nowhere[] = { { 1.0, good }, { INFINITY, good } };
  SwGround *ground = NULL;

  g_assert_cmpint (sw_ground_new_ruled (same, 2, 2, 0, 1, &ground), ==, SW_E_SECTION);
  g_assert_cmpint (sw_ground_new_ruled (nowhere, 2, 2, 0, 1, &ground), ==, SW_E_RANGE);
  g_assert_cmpint (sw_ground_new_ruled (same, 0, 2, 0, 1, &ground), ==, SW_E_FEW_POINTS);
  g_assert_null (ground);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/ground/tiers/bench-splits", test_bench_splits);
  g_test_add_func ("/ground/tiers/least-length", test_least_length);
  g_test_add_func ("/ground/tiers/least-gradient", test_least_gradient);
  g_test_add_func ("/ground/tiers/joined-flats", test_joined_flats);
  g_test_add_func ("/ground/tiers/ends-and-many", test_ends_and_many);
  g_test_add_func ("/ground/tiers/whole", test_whole);
  g_test_add_func ("/ground/tiers/refusals", test_refusals);
  g_test_add_func ("/ground/sections-refused", test_sections_refused);
  g_test_add_func ("/ground/stations-refused", test_stations_refused);
  return g_test_run ();
}
