/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "random-face.h"
#include <math.h>

/*
 * Two soils across one face: 24 m of firm ground that takes 0.15 m pins and 16 m of loose
 * ground that takes 0.30 m, at 2.5:1, 5 m high: 5 sqrt (7.25) = 13.4629 m down.
 * Strips (40 - 0.1) / 2.34 = 17.05 -> 18; laps (18 x 2.44 - 40) / 17 = 0.230588, pitch
 * 2.209412. Strip 10 (from 0) lies from 22.0941 to 24.5341 and straddles the boundary;
 * strips 0 to 9 end at or before 22.3247, strips 11 to 17 begin at 24.3035.
 *
 * Pins, all rows: key trench and toe 40 / 0.3 = 133.3 -> 134 + 1 = 135; 17 laps and 2 edges
 * of 13.4629 / 0.6 = 22.4 -> 22 + 1 = 23; field: gaps 2.2094 or 2.3247 wide, 4 columns
 * between (2.2 / 0.6 -> 4 gaps, 3 columns; 2.3247 / 0.6 = 3.87 -> 4 gaps, 3 columns): rows
 * 0.3 + 0.6 i: (13.4629 - 0.1 - 0.3) / 0.6 = 21.8 -> 22, twice, and rows 0.6 + 0.6 i:
 * 21.3 -> 22: 66 a gap.
 */
#define LAP 23
#define GAP 66

static SwLayout *
lay_spur (const SwCatalogue *catalogue, SwZoneRule rule, SwSide leeward)
{
  const SwPoint left[] = {
    { 24.0, -1.0 }, { 41.0, -1.0 }, { 41.0, 14.0 }, { 24.0, 14.0 }
  };
  const SwPoint right[] = {
    { -1.0, -1.0 }, { 16.0, -1.0 }, { 16.0, 14.0 }, { -1.0, 14.0 }
  };
  g_autoptr (SwJob) job = fixture_job ();
  SwFace *face = fixture_add_plane (job, "S9", 2.5, 5.0, 40.0);
  SwZone *zone = sw_zone_new ("sand");

  face->leeward = leeward;
  job->zone_rule = rule;
  sw_text_set (&zone->soil_id, "firm");
  zone->loose = TRUE;
  sw_zone_set_outline (zone, leeward == SW_SIDE_LEFT ? left : right, 4);
  g_ptr_array_add (face->zones, zone);
  return fixture_lay (job, catalogue);
}

static gsize
count (const SwFaceLayout *face, guint length, SwPinRole role)
{
  gsize pins = 0;

  for (gsize i = 0; i < face->n_pins; i++)
    if (face->pins[i].length == length && face->pins[i].role == role)
      pins++;
  return pins;
}

static void
expect_whole (const SwFaceLayout *face)
{
  g_assert_cmpuint (face->n_pin_lengths, ==, 2);
  g_assert_cmpfloat_with_epsilon (face->pin_lengths[0].need_m, 0.15, 1e-12);
  g_assert_cmpfloat_with_epsilon (face->pin_lengths[1].need_m, 0.30, 1e-12);
  g_assert_cmpstr (face->pin_lengths[0].pin->id, ==, "p150");
  g_assert_cmpstr (face->pin_lengths[1].pin->id, ==, "p300");
  g_assert_null (face->pin_lengths[0].zone);
  g_assert_cmpstr (face->pin_lengths[1].zone->id, ==, "sand");
  g_assert_cmpuint (face->n_pins, ==, 2 * 135 + 19 * LAP + 18 * GAP);
  g_assert_cmpuint (face->pin_lengths[0].count + face->pin_lengths[1].count, ==,
                    face->n_pins);
  g_assert_cmpfloat_with_epsilon (face->pin_need_m, 0.15, 1e-12);
}

/* Trench pins stand every 40 / 134 = 0.298507 from 0: 24 / 0.298507 = 80.4, so 81 pins
 * (0 to 80) stand before the boundary and 54 in the sand. */
static void
expect_trenches (const SwFaceLayout *face)
{
  g_assert_cmpuint (count (face, 0, SW_PIN_KEY_TRENCH), ==, 81);
  g_assert_cmpuint (count (face, 1, SW_PIN_KEY_TRENCH), ==, 54);
  g_assert_cmpuint (count (face, 0, SW_PIN_TOE), ==, 81);
  g_assert_cmpuint (count (face, 1, SW_PIN_TOE), ==, 54);
}

/* The worse soil over the run: strips 0 to 9 take the short pin, 10 to 17 the long one. The
 * lap of 9 and 10 goes through a strip with the long pin, so laps 1 to 9 are short and 10 to
 * 17 long; each strip's field lies between its two laps. */
static void
test_worse (void)
{
  for (int side = 0; side < 2; side++)
    {
      g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
      g_autoptr (SwLayout) layout = lay_spur (catalogue, SW_ZONE_WORSE, (SwSide) side);
      const SwFaceLayout *face = &layout->faces[0];

      expect_whole (face);
      expect_trenches (face);
      for (guint r = 0; r < face->n_runs; r++)
        g_assert_cmpuint (face->runs[r].pin_length, ==, r < 10 ? 0 : 1);
      g_assert_cmpuint (count (face, 0, SW_PIN_SIDE_LAP), ==, 9 * LAP);
      g_assert_cmpuint (count (face, 1, SW_PIN_SIDE_LAP), ==, 8 * LAP);
      g_assert_cmpuint (count (face, 0, SW_PIN_EDGE), ==, LAP);
      g_assert_cmpuint (count (face, 1, SW_PIN_EDGE), ==, LAP);
      g_assert_cmpuint (count (face, 0, SW_PIN_FIELD), ==, 10 * GAP);
      g_assert_cmpuint (count (face, 1, SW_PIN_FIELD), ==, 8 * GAP);
    }
}

/* Each pin by the soil it stands in. Strip 10's field lies between the laps at 22.2094 and
 * 24.4188: columns at 22.7618, 23.3141 and 23.8665, all before 24. The lap at 22.2094 is the
 * tenth, so laps 1 to 10 are short. */
static void
test_split (void)
{
  for (int side = 0; side < 2; side++)
    {
      g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
      g_autoptr (SwLayout) layout = lay_spur (catalogue, SW_ZONE_SPLIT, (SwSide) side);
      const SwFaceLayout *face = &layout->faces[0];

      expect_whole (face);
      expect_trenches (face);
      g_assert_cmpuint (count (face, 0, SW_PIN_SIDE_LAP), ==, 10 * LAP);
      g_assert_cmpuint (count (face, 1, SW_PIN_SIDE_LAP), ==, 7 * LAP);
      g_assert_cmpuint (count (face, 0, SW_PIN_FIELD), ==, 11 * GAP);
      g_assert_cmpuint (count (face, 1, SW_PIN_FIELD), ==, 7 * GAP);
    }
}

/* Of two zones over each other the first listed holds. */
static void
test_first_holds (void)
{
  const SwPoint all[] = {
    { -1.0, -1.0 }, { 21.0, -1.0 }, { 21.0, 11.0 }, { -1.0, 11.0 }
  };
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();

  for (int first = 0; first < 2; first++)
    {
      g_autoptr (SwJob) job = fixture_job ();
      g_autoptr (SwLayout) layout = NULL;
      SwFace *face = fixture_add_plane (job, "A", 2.0, 5.0, 20.0);

      for (int i = 0; i < 2; i++)
        {
          SwZone *zone = sw_zone_new (i == 0 ? "1" : "2");

          sw_text_set (&zone->soil_id, "firm");
          zone->topsoil_m = i == first ? 0.10 : 0.20; /* + 0.075: 0.175 or 0.275 */
          sw_zone_set_outline (zone, all, 4);
          g_ptr_array_add (face->zones, zone);
        }
      layout = fixture_lay (job, catalogue);
      g_assert_cmpuint (layout->faces[0].pin_lengths[0].count, ==, 0);
      g_assert_cmpuint (layout->faces[0].pin_lengths[1].count, ==,
                        layout->faces[0].n_pins);
      g_assert_cmpuint (layout->faces[0].pin_lengths[2].count, ==, 0);
      g_assert_cmpfloat_with_epsilon (layout->faces[0].pin_lengths[1].need_m,
                                      first == 0 ? 0.175 : 0.275, 1e-12);
    }
}

static void
add_random_zones (SwFace *face, GRand *rand)
{
  SwBox box = sw_ring_box ((SwRing){ face->outline, face->n_outline });
  int zones = g_rand_int_range (rand, 1, 5);

  for (int i = 0; i < zones; i++)
    {
      g_autofree char *id = g_strdup_printf ("%d", i);
      SwZone *zone = sw_zone_new (id);
      SwPoint points[3];

      for (guint p = 0; p < 3; p++)
        points[p] =
            (SwPoint){ g_rand_double_range (rand, box.x0_m - 2.0, box.x1_m + 2.0),
                       g_rand_double_range (rand, box.y0_m - 2.0, box.y1_m + 2.0) };
      sw_zone_set_outline (zone, points, 3);
      sw_text_set (&zone->soil_id, "firm");
      zone->topsoil_m = g_rand_double_range (rand, 0.0, 0.25);
      zone->loose = g_rand_boolean (rand);
      g_ptr_array_add (face->zones, zone);
    }
}

/* Which length the ground calls for, told without the face's own look-up. */
static guint
length_at (const SwFace *face, const SwPinPlace *pin)
{
  for (guint i = 0; i < face->zones->len; i++)
    {
      const SwZone *zone = face->zones->pdata[i];

      if (sw_ring_contains ((SwRing){ zone->outline, zone->n_outline },
                            (SwPoint){ (double) pin->along_m, (double) pin->out_m }))
        return i + 1;
    }
  return 0;
}

static void
check_lengths (const SwLayout *layout)
{
  const SwFaceLayout *face = &layout->faces[0];
  g_autofree gsize *counts = g_new0 (gsize, face->n_pin_lengths);

  for (gsize i = 0; i < face->n_pins; i++)
    {
      guint own = length_at (face->face, &face->pins[i]);

      g_assert_cmpuint (face->pins[i].length, <, face->n_pin_lengths);
      counts[face->pins[i].length]++;
      if (layout->job->zone_rule == SW_ZONE_SPLIT)
        g_assert_cmpuint (face->pins[i].length, ==, own);
      else
        g_assert_cmpfloat (face->pin_lengths[face->pins[i].length].need_m, >=,
                           face->pin_lengths[own].need_m);
    }
  for (guint i = 0; i < face->n_pin_lengths; i++)
    g_assert_cmpuint (face->pin_lengths[i].count, ==, counts[i]);
}

/* No pin is shorter than the ground calls for where it stands, and zones move no pin. */
static void
test_never_too_short (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();

  for (int kind = 0; kind < OUTLINE_KIND_COUNT; kind++)
    for (guint32 seed = 0; seed < 6; seed++)
      {
        g_autoptr (GRand) rand = g_rand_new_with_seed (100 * (guint32) kind + seed);
        g_autoptr (SwJob) job = random_job (rand, (OutlineKind) kind);
        g_autoptr (SwLayout) plain = fixture_lay (job, catalogue);

        add_random_zones (g_ptr_array_index (job->faces, 0), rand);
        for (int rule = SW_ZONE_WORSE; rule <= SW_ZONE_SPLIT; rule++)
          {
            g_autoptr (SwLayout) layout = NULL;

            job->zone_rule = (SwZoneRule) rule;
            layout = fixture_lay (job, catalogue);
            check_lengths (layout);
            g_assert_cmpuint (layout->faces[0].n_pins, ==, plain->faces[0].n_pins);
            g_assert_cmpuint (layout->n_pieces, ==, plain->n_pieces);
          }
      }
}

static void
test_refused (void)
{
  static const struct
  {
    const char *soil;
    double x[4];
    SwStatus status;
  } zones[] = { { "moon", { 1, 3, 3, 1 }, SW_E_UNKNOWN_ID },
                { "firm", { 1, 3, 1, 3 }, SW_E_ZONE } };
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();

  for (guint i = 0; i < G_N_ELEMENTS (zones); i++)
    {
      const double *x = zones[i].x;
      const SwPoint outline[] = { { x[0], 1 }, { x[1], 1 }, { x[2], 3 }, { x[3], 3 } };
      g_autoptr (SwJob) job = fixture_job ();
      SwFace *face = fixture_add_plane (job, "A", 2.0, 5.0, 20.0);
      SwZone *zone = sw_zone_new ("1");
      SwLayout *layout = NULL;
      int bad_face = -1;

      sw_text_set (&zone->soil_id, zones[i].soil);
      sw_zone_set_outline (zone, outline, 4);
      g_ptr_array_add (face->zones, zone);
      g_assert_cmpint (sw_layout_new (job, catalogue, &layout, &bad_face), ==,
                       zones[i].status);
      g_assert_cmpint (bad_face, ==, 0);
    }
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/layout/soil-zones/worse", test_worse);
  g_test_add_func ("/layout/soil-zones/split", test_split);
  g_test_add_func ("/layout/soil-zones/first-holds", test_first_holds);
  g_test_add_func ("/layout/soil-zones/never-too-short", test_never_too_short);
  g_test_add_func ("/layout/soil-zones/refused", test_refused);
  return g_test_run ();
}
