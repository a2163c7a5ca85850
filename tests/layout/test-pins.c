/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "random-face.h"
#include <math.h>
#include <slopewright/base/count.h>

#define FACES 15

/* Two pins nearer than this are one pin driven twice. */
#define TOO_NEAR_M 0.040

/* Pins are stored in single precision. */
#define STORED_M 1e-4

static const gsize *
by_role (const SwLayout *layout)
{
  return layout->faces[0].pins_by_role;
}

/*
 * Bank of 9.9153 m x 26 m by hand; pins every 0.60, in trenches every 0.30.
 * Key and toe: 26 / 0.3 = 86.7 -> 87 gaps, 88 pins each.
 * Side laps: 9.9153 / 0.6 = 16.5, so 16 gaps, 17 pins; 11 laps: 187. Edges: 2 x 17 = 34.
 * Field: laps as laid 3.28 / 11 = 0.298, pitch 2.142; from edge to lap 2.142 + 0.149 =
 * 2.291, from lap to lap 2.142: 3.8 and 3.6 gaps of 0.60 -> 4, so 3 columns in each of 12
 * gaps. Rows: first and third column from 0.3, second from 0.6, to 0.1 above the toe:
 * (9.915 - 0.1 - 0.3) / 0.6 = 15.9 -> 16 pins, (9.915 - 0.1 - 0.6) / 0.6 = 15.4 -> 16
 * pins. 12 x 3 x 16 = 576. All: 88 + 88 + 187 + 34 + 576 = 973.
 */
static void
test_bank_by_hand (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = fixture_job ();
  g_autoptr (SwLayout) layout = NULL;

  fixture_add_plane (job, "S8", 1.5, 5.5, 26.0);
  layout = fixture_lay (job, catalogue);
  g_assert_cmpuint (by_role (layout)[SW_PIN_KEY_TRENCH], ==, 88);
  g_assert_cmpuint (by_role (layout)[SW_PIN_TOE], ==, 88);
  g_assert_cmpuint (by_role (layout)[SW_PIN_SIDE_LAP], ==, 187);
  g_assert_cmpuint (by_role (layout)[SW_PIN_EDGE], ==, 34);
  g_assert_cmpuint (by_role (layout)[SW_PIN_FIELD], ==, 576);
  g_assert_cmpuint (by_role (layout)[SW_PIN_END_LAP], ==, 0);
  g_assert_cmpuint (by_role (layout)[SW_PIN_SLOT], ==, 0);
  g_assert_cmpuint (layout->faces[0].n_pins, ==, 973);
}

/*
 * End laps by hand: one run 2.44 wide, one joint: 2.44 / 0.6 = 4.07 -> 5 gaps, rows of 5
 * and 4.
 */
static void
test_end_lap_by_hand (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = fixture_job ();
  g_autoptr (SwLayout) layout = NULL;

  fixture_add_plane (job, "A", 2.0, 18.0, 2.44);
  layout = fixture_lay (job, catalogue);
  g_assert_cmpuint (layout->n_pieces, ==, 2);
  g_assert_cmpuint (by_role (layout)[SW_PIN_END_LAP], ==, 9);
  g_assert_cmpuint (by_role (layout)[SW_PIN_SIDE_LAP], ==, 0);
}

/* Every role is counted as it is listed. */
static void
check_counts (const SwFaceLayout *face)
{
  gsize count[SW_PIN_ROLE_COUNT] = { 0 };

  for (gsize i = 0; i < face->n_pins; i++)
    {
      g_assert_cmpuint (face->pins[i].role, <, SW_PIN_ROLE_COUNT);
      g_assert_cmpuint (face->pins[i].tier, <, face->n_tiers);
      count[face->pins[i].role]++;
    }
  for (int role = 0; role < SW_PIN_ROLE_COUNT; role++)
    g_assert_cmpuint (count[role], ==, face->pins_by_role[role]);
}

/* Pins that hold the sheet on the face stand within the outline. */
static void
check_inside (const SwFaceLayout *face)
{
  SwRing outline = { face->face->outline, face->face->n_outline };

  for (gsize i = 0; i < face->n_pins; i++)
    {
      const SwPinPlace *pin = &face->pins[i];

      if (pin->role == SW_PIN_KEY_TRENCH || pin->role == SW_PIN_TOE)
        continue;
      g_assert_true (sw_ring_contains (
          outline, (SwPoint){ (double) pin->along_m, (double) pin->out_m }));
    }
}

static int
compare_along (gconstpointer a, gconstpointer b)
{
  float x = ((const SwPinPlace *) a)->along_m, y = ((const SwPinPlace *) b)->along_m;

  return (x > y) - (x < y);
}

/* No pin is driven twice, whatever rows meet. */
static void
check_doubles (const SwFaceLayout *face)
{
  g_autofree SwPinPlace *pins = g_memdup2 (face->pins, face->n_pins * sizeof *pins);

  qsort (pins, face->n_pins, sizeof *pins, compare_along);
  for (gsize i = 0; i < face->n_pins; i++)
    for (gsize j = i + 1;
         j < face->n_pins && (double) (pins[j].along_m - pins[i].along_m) < TOO_NEAR_M;
         j++)
      g_assert_cmpfloat (hypot ((double) (pins[j].along_m - pins[i].along_m),
                                (double) (pins[j].down_m - pins[i].down_m)),
                         >=, TOO_NEAR_M);
}

/* Each pin lies on the ground: out and down say the same place. */
static void
check_places (const SwFaceLayout *face)
{
  for (gsize i = 0; i < face->n_pins; i++)
    {
      const SwPinPlace *pin = &face->pins[i];
      SwPoint plan = { (double) pin->along_m, (double) pin->out_m };

      g_assert_cmpfloat_with_epsilon (sw_ground_down_m (face->ground, plan),
                                      (double) pin->down_m, STORED_M);
    }
}

static void
test_random_faces (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();

  for (int kind = 0; kind < OUTLINE_KIND_COUNT; kind++)
    for (guint32 seed = 0; seed < FACES; seed++)
      {
        g_autoptr (GRand) rand = g_rand_new_with_seed (1000 * (guint32) kind + seed);
        g_autoptr (SwJob) job = random_job (rand, (OutlineKind) kind);
        g_autoptr (SwLayout) layout = fixture_lay (job, catalogue);

        check_counts (&layout->faces[0]);
        check_inside (&layout->faces[0]);
        check_doubles (&layout->faces[0]);
        check_places (&layout->faces[0]);
      }
}

/* Pins of a plain toe row stand on the toe line, where laps end too: each only once. */
static void
test_rows_that_meet (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = fixture_job ();
  g_autoptr (SwLayout) layout = NULL;
  SwPractice *practice = g_ptr_array_index (catalogue->practices, 0);

  practice->toe_kind = SW_TOE_ROW;
  /* Length 9.6 = 16 x 0.6 exactly, so that each lap and edge ends on the toe line,
   * where a pin stands every 0.05: within 0.025 of every column. */
  fixture_add_plane (job, "A", 4.0 / 3.0, 9.6 * 3.0 / 5.0, 0.1 + 10 * 2.34);
  sw_job_set_override (job, SW_PRACTICE_TOE_PIN_M, 0.05, "");
  layout = fixture_lay (job, catalogue);
  check_doubles (&layout->faces[0]);
  /* 23.5 / 0.05 = 470 gaps on the toe; 9 laps and 2 edges lose the last pin of 17. */
  g_assert_cmpuint (by_role (layout)[SW_PIN_TOE], ==, 471);
  g_assert_cmpuint (by_role (layout)[SW_PIN_SIDE_LAP], ==, 9 * 16);
  g_assert_cmpuint (by_role (layout)[SW_PIN_EDGE], ==, 2 * 16);
}

/* The largest gap between neighbours of a sorted list. */
static double
widest_gap (GArray *places)
{
  double widest = 0.0;

  for (guint i = 1; i < places->len; i++)
    widest = fmax (widest, g_array_index (places, double, i)
                               - g_array_index (places, double, i - 1));
  return widest;
}

static int
compare_doubles (gconstpointer a, gconstpointer b)
{
  double x = *(const double *) a, y = *(const double *) b;

  return (x > y) - (x < y);
}

/* Places along (or down) of one role's pins that stand @at_m down (or along), sorted. */
static GArray *
places_of (const SwFaceLayout *face, SwPinRole role, gboolean along, double at_m)
{
  GArray *places = g_array_new (FALSE, FALSE, sizeof (double));

  for (gsize i = 0; i < face->n_pins; i++)
    {
      const SwPinPlace *pin = &face->pins[i];
      double other_m = (double) (along ? pin->down_m : pin->along_m);
      double place_m = (double) (along ? pin->along_m : pin->down_m);

      if (pin->role == role && fabs (other_m - at_m) < STORED_M)
        g_array_append_val (places, place_m);
    }
  g_array_sort (places, compare_doubles);
  return places;
}

/* On rectangles of any size no row is wider spaced than the practice says, from one
 * end of the ground to the other. */
static void
test_spacings (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (GRand) rand = g_rand_new_with_seed (21);

  for (int i = 0; i < 40; i++)
    {
      g_autoptr (SwJob) job = fixture_job ();
      g_autoptr (SwLayout) layout = NULL;
      double width_m = g_rand_double_range (rand, 2.5, 60.0);
      const SwFaceLayout *face;

      fixture_add_plane (job, "A", 2.0, g_rand_double_range (rand, 1.0, 14.0), width_m);
      layout = fixture_lay (job, catalogue);
      face = &layout->faces[0];
      for (int role = 0; role < SW_PIN_ROLE_COUNT; role++)
        for (gsize p = 0; p < face->n_pins; p += 37)
          if (face->pins[p].role == role && role != SW_PIN_END_LAP)
            {
              gboolean along = role == SW_PIN_KEY_TRENCH || role == SW_PIN_TOE;
              g_autoptr (GArray) line = places_of (
                  face, (SwPinRole) role, along,
                  (double) (along ? face->pins[p].down_m : face->pins[p].along_m));
              double spacing_m = along ? 0.30 : 0.60;

              g_assert_cmpfloat (widest_gap (line), <=, spacing_m + STORED_M);
              if (along)
                {
                  g_assert_cmpfloat_with_epsilon (g_array_index (line, double, 0), 0.0,
                                                  STORED_M);
                  g_assert_cmpfloat_with_epsilon (
                      g_array_index (line, double, line->len - 1), width_m, STORED_M);
                }
              else /* what is left below the last row is less than a step and a hand */
                g_assert_cmpfloat (face->tiers[0].length_m
                                       - g_array_index (line, double, line->len - 1),
                                   <=, spacing_m + 0.10 + STORED_M);
            }
      {
        /* Columns of the field, laps and edges across: the first row of odd columns
         * and the crest row of laps are enough to see every column. */
        g_autoptr (GArray) columns = g_array_new (FALSE, FALSE, sizeof (double));

        for (gsize p = 0; p < face->n_pins; p++)
          if (face->pins[p].role == SW_PIN_FIELD || face->pins[p].role == SW_PIN_SIDE_LAP
              || face->pins[p].role == SW_PIN_EDGE)
            {
              double along_m = (double) face->pins[p].along_m;
              g_array_append_val (columns, along_m);
            }
        g_array_sort (columns, compare_doubles);
        g_assert_cmpfloat (widest_gap (columns), <=, 0.60 + STORED_M);
        g_assert_cmpfloat (g_array_index (columns, double, 0), <=, 0.05 + STORED_M);
      }
    }
}

/* A density rule closes the rows up: 4.0 pins per m2 on 2:1 and steeper, columns 0.6
 * apart, so rows every 1 / (4 x 0.6) = 0.4167; the face as a whole then has at least
 * that. */
static void
test_density (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  SwPractice *practice = g_ptr_array_index (catalogue->practices, 0);
  static const struct
  {
    double hv, floor_per_m2, down_m;
  } rows[] = { { 1.5, 4.0, 1.0 / 2.4 },
               { 2.0, 4.0, 1.0 / 2.4 },
               { 2.5, 2.0, 0.60 },
               { 4.0, 0.0, 0.60 } };

  practice->n_density = 2;
  practice->density = g_new0 (SwDensityRow, 2);
  practice->density[0] = (SwDensityRow){ 2.0, { 4.0, SW_EVIDENCE_PROPOSED, NULL } };
  practice->density[1] = (SwDensityRow){ 3.0, { 2.0, SW_EVIDENCE_PROPOSED, NULL } };
  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr (SwJob) job = fixture_job ();
      g_autoptr (SwLayout) layout = NULL;
      const SwTier *tier;

      fixture_add_plane (job, "A", rows[i].hv, 6.0, 30.0);
      layout = fixture_lay (job, catalogue);
      tier = &layout->faces[0].tiers[0];
      g_assert_cmpfloat_with_epsilon (tier->density_floor_per_m2, rows[i].floor_per_m2,
                                      1e-12);
      g_assert_cmpfloat_with_epsilon (tier->pin_down_m, rows[i].down_m, 1e-12);
      g_assert_cmpfloat ((double) layout->faces[0].n_pins / tier->net_m2, >=,
                         rows[i].floor_per_m2);
    }
}

/* Firm 150, loose 300; topsoil of 200 needs 275, so the 300 pin; 400 is longer than
 * any. */
static void
test_pin_length (void)
{
  static const struct
  {
    gboolean loose;
    double topsoil_m, need_m;
    const char *pin;
  } rows[] = { { FALSE, 0.0, 0.15, "p150" },   { TRUE, 0.0, 0.30, "p300" },
               { FALSE, 0.05, 0.15, "p150" },  { FALSE, 0.20, 0.275, "p300" },
               { FALSE, 0.12, 0.195, "p200" }, { TRUE, 0.40, 0.475, NULL } };
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr (SwJob) job = fixture_job ();
      g_autoptr (SwLayout) layout = NULL;
      SwFace *face = fixture_add_plane (job, "A", 2.0, 5.0, 10.0);

      face->loose = rows[i].loose;
      face->topsoil_m = rows[i].topsoil_m;
      layout = fixture_lay (job, catalogue);
      g_assert_cmpfloat_with_epsilon (layout->faces[0].pin_need_m, rows[i].need_m, 1e-12);
      if (rows[i].pin == NULL)
        g_assert_null (layout->faces[0].pin);
      else
        g_assert_cmpstr (layout->faces[0].pin->id, ==, rows[i].pin);
    }
}

/*
 * A heap covered all round, crest radius 4 m: trenches are rings, whose last pin is the
 * first. Middle of the key trench 0.675 behind the crest: 2 pi (4 - 0.675) = 20.89, / 0.3
 * -> 70 pins. Toe at 14 m, middle of its trench 0.075 beyond on level ground: 2 pi 14.075
 * = 88.44 -> 295.
 */
static void
test_rings (void)
{
  const SwPoint section[] = { { 0.0, 6.5 }, { 10.0, 0.0 } };
  const SwPoint outline[] = {
    { 0, 0 }, { 8.0 * G_PI, 0 }, { 8.0 * G_PI, 10 }, { 0, 10 }
  };
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = fixture_job ();
  g_autoptr (SwLayout) layout = NULL;
  SwFace *face = fixture_add_face (job, "A", section, 2, outline, 4);

  face->crest_form = SW_CREST_NOSE;
  face->crest_radius_m = 4.0;
  layout = fixture_lay (job, catalogue);
  g_assert_true (layout->faces[0].tiers[0].closed);
  g_assert_cmpfloat_with_epsilon (layout->faces[0].trenches[0].length_m,
                                  2.0 * G_PI * 3.325, 1e-9);
  g_assert_cmpuint (by_role (layout)[SW_PIN_KEY_TRENCH], ==, 70);
  g_assert_cmpuint (by_role (layout)[SW_PIN_TOE], ==, 295);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/layout/pins/bank-by-hand", test_bank_by_hand);
  g_test_add_func ("/layout/pins/end-lap-by-hand", test_end_lap_by_hand);
  g_test_add_func ("/layout/pins/random-faces", test_random_faces);
  g_test_add_func ("/layout/pins/rows-that-meet", test_rows_that_meet);
  g_test_add_func ("/layout/pins/rings", test_rings);
  g_test_add_func ("/layout/pins/spacings", test_spacings);
  g_test_add_func ("/layout/pins/density", test_density);
  g_test_add_func ("/layout/pins/length", test_pin_length);
  return g_test_run ();
}
