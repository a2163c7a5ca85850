/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "fixture.h"
#include <math.h>
#include <slopewright/base/count.h>

/*
 * Infill on fans, against the fan's own geometry: a cone laid open. What is checked here
 * is worked out from radius, section and roll alone, by sampling contours; nothing is
 * asked of the layout but where its runs lie and how wide they are.
 */

/* A face round a bend, from crest to toe. */
static SwFace *
add_fan (SwJob *job, SwCrestForm form, double radius_m, double along_m,
         const SwPoint *section, guint n_section)
{
  double run_m = section[n_section - 1].x_m;
  const SwPoint outline[] = {
    { 0, 0 }, { along_m, 0 }, { along_m, run_m }, { 0, run_m }
  };
  SwFace *face = fixture_add_face (job, "A", section, n_section, outline, 4);

  face->crest_form = form;
  face->crest_radius_m = radius_m;
  face->fan = SW_FAN_INFILL;
  return face;
}

static SwFace *
add_cone (SwJob *job, SwCrestForm form, double radius_m, double degrees, double run_m,
          double rise_m)
{
  const SwPoint section[] = { { 0.0, rise_m }, { run_m, 0.0 } };

  return add_fan (job, form, radius_m, radius_m * degrees * G_PI / 180.0, section, 2);
}

/*
 * Heap by hand: top radius 4, base 14, 6.5 high, slant 11.9269; 38 runs, 2.3148 m apart
 * at the base. Two runs with one between stand 4.6296 m apart there and 2.44 - 0.10 = 2.34
 * where the radius is 14 x 2.34 / 4.6296 = 7.0761; they part where it is 14 x 2.44 / 4.6296
 * = 7.3785. Down the slant from the crest: (7.0761 - 4) / 10 x 11.9269 = 3.6689 and
 * (7.3785 - 4) / 10 x 11.9269 = 4.0296, less an end lap of 0.30 (fixture) = 3.7296. So
 * infill begins 3.6689 m down: 11.9269 - 3.6689 + 0.30 toe = 8.5580 m against 13.2769.
 */
static void
test_heap_by_hand (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = fixture_job ();
  g_autoptr (SwLayout) layout = NULL;
  const SwFaceLayout *face;

  add_cone (job, SW_CREST_NOSE, 4.0, 360.0, 10.0, 6.5);
  layout = fixture_lay (job, catalogue);
  face = &layout->faces[0];
  g_assert_cmpint (face->tiers[0].strips, ==, 38);
  g_assert_cmpint (face->tiers[0].infill, ==, 19);
  for (guint r = 0; r < face->n_runs; r++)
    {
      const SwRun *run = &face->runs[r];

      g_assert_cmpint (run->infill, ==, r % 2 == 1);
      g_assert_cmpfloat_with_epsilon (run->cut_m, r % 2 == 1 ? 8.5580 : 13.2769, 1e-3);
    }
}

/*
 * Bowl by hand: crest radius 20, toe 8, quarter circle, 6 high: slant 13.4164. Crest arc
 * 31.4159, (31.4159 - 0.1) / 2.34 = 13.4 -> 14 runs; both outer ones are full, so 2, 4 ..
 * 12 are infill and 13 and 14 lie side by side. Lap (14 x 2.44 - 31.4159) / 13 = 0.21109,
 * two pitches 4.45782 at the crest. 2.34 apart at radius 20 x 2.34 / 4.45782 = 10.4984,
 * (20 - 10.4984) / 12 x 13.4164 = 10.6231 down; they part at 20 x 2.44 / 4.45782 = 10.9471,
 * 10.1215 down, and 0.30 further is 10.4215. Infill is laid to 10.6231.
 */
static void
test_bowl_by_hand (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = fixture_job ();
  g_autoptr (SwLayout) layout = NULL;
  const SwFaceLayout *face;

  add_cone (job, SW_CREST_BOWL, 20.0, 90.0, 12.0, 6.0);
  layout = fixture_lay (job, catalogue);
  face = &layout->faces[0];
  g_assert_cmpint (face->tiers[0].strips, ==, 14);
  g_assert_cmpint (face->tiers[0].infill, ==, 6);
  for (guint r = 0; r < face->n_runs; r++)
    {
      const SwRun *run = &face->runs[r];
      gboolean infill = r % 2 == 1 && r < 12;

      g_assert_cmpint (run->infill, ==, infill);
      g_assert_cmpint (run->infill_below, ==, infill);
      g_assert_cmpfloat_with_epsilon (run->down_to_m, infill ? 10.6231 : 13.4164, 1e-3);
      g_assert_cmpfloat_with_epsilon (run->terms.toe, infill ? 0.0 : 0.30, 1e-9);
    }
}

/* One contour of a fan: its radius, and that of the cone's tangent laid open there. */
typedef struct
{
  double down_m, stretch, slant_m;
} Contour;

static Contour
contour_at (const SwFaceLayout *laid, double share)
{
  const SwFace *face = laid->face;
  double from_m = laid->tiers[0].reach.out_from_m, to_m = laid->tiers[0].reach.out_to_m;
  double out_m = from_m + share * (to_m - from_m);
  double sign = face->crest_form == SW_CREST_NOSE ? 1.0 : -1.0;
  double radius_m = face->crest_radius_m + sign * (out_m - face->section[0].x_m);
  guint i = 1;

  while (i + 1 < face->n_section && face->section[i].x_m < out_m)
    i++;
  {
    SwPoint a = face->section[i - 1], b = face->section[i];
    double cosine = (b.x_m - a.x_m) / hypot (b.x_m - a.x_m, b.y_m - a.y_m);

    return (Contour){ sw_ground_down_m (laid->ground, (SwPoint){ 0.0, out_m }),
                      radius_m / face->crest_radius_m, radius_m / cosine };
  }
}

/* Half of the arc that a straight strip takes of the contour on the cone laid open. */
static double
half_arc_m (const SwRun *run, Contour contour)
{
  double half_m = run->width_m / 2.0;

  return half_m >= contour.slant_m ? contour.slant_m * G_PI / 2.0
                                   : contour.slant_m * asin (half_m / contour.slant_m);
}

static gboolean
lies_at (const SwRun *run, double down_m)
{
  return down_m >= run->down_from_m - 1e-6 && down_m <= run->down_to_m + 1e-6;
}

static double
middle_m (const SwRun *run)
{
  return (run->along_from_m + run->along_to_m) / 2.0;
}

static int
by_middle (gconstpointer a, gconstpointer b)
{
  double x = middle_m (*(SwRun *const *) a), y = middle_m (*(SwRun *const *) b);

  return (x > y) - (x < y);
}

/* Laps of all neighbours on one contour are the practice's at least, and the outer strips
 * reach the edges; so every place of the contour is covered. */
static void
check_contour (const SwFaceLayout *face, double round_m, double lap_m, Contour contour)
{
  g_autoptr (GPtrArray) here = g_ptr_array_new ();

  for (guint r = 0; r < face->n_runs; r++)
    if (lies_at (&face->runs[r], contour.down_m))
      g_ptr_array_add (here, (gpointer) &face->runs[r]);
  g_assert_cmpuint (here->len, >, 0);
  g_ptr_array_sort (here, by_middle);
  for (guint i = 0; i < here->len; i++)
    {
      const SwRun *a = here->pdata[i], *b = here->pdata[(i + 1) % here->len];
      gboolean seam = i + 1 == here->len;
      double apart_m;

      if (seam && !face->tiers[0].closed)
        continue;
      apart_m = middle_m (b) - middle_m (a) + (seam ? round_m : 0.0);
      g_assert_cmpfloat (half_arc_m (a, contour) + half_arc_m (b, contour)
                             - apart_m * contour.stretch,
                         >=, lap_m - 2e-4);
    }
  if (!face->tiers[0].closed)
    {
      const SwRun *first = here->pdata[0], *last = here->pdata[here->len - 1];

      g_assert_cmpfloat (middle_m (first) * contour.stretch, <=,
                         half_arc_m (first, contour) + 2e-4);
      g_assert_cmpfloat ((round_m - middle_m (last)) * contour.stretch, <=,
                         half_arc_m (last, contour) + 2e-4);
    }
}

/* Infill goes past the contour where its neighbours lap enough by no more than an end lap
 * and what a straight strip gains over the arc, w2 / 8 r; more only to clear a break. */
static void
check_no_longer (const SwFaceLayout *face, double round_m, double lap_m)
{
  const SwTier *tier = &face->tiers[0];
  gboolean nose = face->face->crest_form == SW_CREST_NOSE;

  for (guint r = 1; r < face->n_runs && face->face->n_section == 2 && tier->slots == 0;
       r++)
    {
      const SwRun *run = &face->runs[r], *a = run - 1;
      const SwRun *b = r + 1 < face->n_runs ? run + 1 : face->runs;
      double apart_m, gone_m = NAN, slant_m = INFINITY;

      if (!run->infill)
        continue;
      g_assert_true (nose ? run->infill_above : run->infill_below);
      apart_m = fabs (middle_m (b) - middle_m (a));
      apart_m = tier->closed && apart_m > round_m / 2.0 ? round_m - apart_m : apart_m;
      for (int i = 0; i <= 2000 && isnan (gone_m); i++)
        {
          Contour c = contour_at (face, nose ? i / 2000.0 : 1.0 - i / 2000.0);

          if (half_arc_m (a, c) + half_arc_m (b, c) - apart_m * c.stretch < lap_m)
            gone_m = c.down_m, slant_m = c.slant_m;
        }
      g_assert_false (isnan (gone_m));
      g_assert_cmpfloat (nose ? gone_m - run->down_from_m : run->down_to_m - gone_m, <=,
                         tier->end_lap_m + run->width_m * run->width_m / 8.0 / slant_m
                             + tier->length_m / 2000.0 + 1e-3);
    }
}

/* Not twice, measured on the ground; on a ring the seam counts too. */
static void
check_pins (const SwFaceLayout *face, double round_m)
{
  for (gsize i = 0; i < face->n_pins; i++)
    for (gsize j = i + 1; j < face->n_pins; j++)
      {
        const SwPinPlace *a = &face->pins[i], *b = &face->pins[j];
        double apart_m = fabs ((double) (a->along_m - b->along_m));

        if (fabs ((double) (a->down_m - b->down_m)) >= 0.04)
          continue;
        if (face->tiers[0].closed)
          apart_m = fmin (apart_m, round_m - apart_m);
        g_assert_cmpfloat (
            hypot (sw_ground_stretch (face->ground, (double) a->out_m) * apart_m,
                   (double) (a->down_m - b->down_m)),
            >=, 0.039);
      }
}

/* Side lap pins stand where two runs lie, and field pins where a run does. */
static void
check_pins_in_laps (const SwFaceLayout *face, double round_m)
{
  for (gsize i = 0; i < face->n_pins; i++)
    {
      const SwPinPlace *pin = &face->pins[i];
      double stretch = sw_ground_stretch (face->ground, (double) pin->out_m);
      int layers = 0;

      if (pin->role != SW_PIN_SIDE_LAP && pin->role != SW_PIN_FIELD
          && pin->role != SW_PIN_END_LAP)
        continue;
      for (guint r = 0; r < face->n_runs; r++)
        {
          const SwRun *run = &face->runs[r];
          double apart_m = fabs ((double) pin->along_m - middle_m (run));

          if (face->tiers[0].closed)
            apart_m = fmin (apart_m, round_m - apart_m);
          layers += apart_m * stretch <= run->width_m / 2.0 + 1e-3
                    && (double) pin->down_m >= run->down_from_m - 1e-3
                    && (double) pin->down_m <= run->down_to_m + 1e-3;
        }
      g_assert_cmpint (layers, >=, pin->role == SW_PIN_FIELD ? 1 : 2);
    }
}

static void
check_balance (const SwLayout *layout)
{
  gint64 pieces = 0, rest = 0;

  for (guint i = 0; i < layout->n_pieces; i++)
    pieces += sw_ticks (layout->pieces[i].length_m);
  for (int i = 0; i < layout->rolls; i++)
    rest += sw_ticks (layout->cut_rolls[i].offcut_m);
  g_assert_cmpint (pieces + rest, ==,
                   layout->rolls * sw_ticks (layout->job->roll_length_m));
}

static double
cut_in_all_m (const SwLayout *layout)
{
  double sum_m = 0.0;

  for (guint r = 0; r < layout->faces[0].n_runs; r++)
    sum_m += layout->faces[0].runs[r].cut_m - layout->faces[0].runs[r].terms.end_laps;
  return sum_m;
}

static void
check_mirror (const SwLayout *layout, SwJob *job, SwCatalogue *catalogue, double along_m)
{
  g_autoptr (SwLayout) other = NULL;
  const SwFaceLayout *a = &layout->faces[0], *b;
  SwFace *face = job->faces->pdata[0];

  face->leeward = face->leeward == SW_SIDE_LEFT ? SW_SIDE_RIGHT : SW_SIDE_LEFT;
  other = fixture_lay (job, catalogue);
  b = &other->faces[0];
  g_assert_cmpint (layout->rolls, ==, other->rolls);
  g_assert_cmpuint (a->n_runs, ==, b->n_runs);
  for (guint r = 0; r < a->n_runs; r++)
    {
      g_assert_cmpint (a->runs[r].infill, ==, b->runs[r].infill);
      g_assert_cmpint (sw_ticks (a->runs[r].cut_m), ==, sw_ticks (b->runs[r].cut_m));
      g_assert_cmpfloat_with_epsilon (middle_m (&a->runs[r]),
                                      along_m - middle_m (&b->runs[r]), 1e-6);
    }
  for (int role = 0; role < SW_PIN_ROLE_COUNT; role++)
    g_assert_cmpuint (a->pins_by_role[role], ==, b->pins_by_role[role]);
}

static double
between (GRand *rand, double from, double to)
{
  return g_rand_double_range (rand, from, to);
}

static SwFace *
add_random (GRand *rand, SwJob *job, double *along_m)
{
  SwCrestForm form = g_rand_boolean (rand) ? SW_CREST_NOSE : SW_CREST_BOWL;
  double run_m = between (rand, 3.0, 18.0), hv = between (rand, 1.0, 4.0);
  double radius_m = form == SW_CREST_NOSE ? between (rand, 0.8, 12.0)
                                          : run_m + between (rand, 0.8, 12.0);
  gboolean ring = form == SW_CREST_NOSE && g_rand_int_range (rand, 0, 3) == 0;
  double bent = between (rand, 0.3, 0.7), top_m = 60.0;
  SwPoint section[] = { { 0.0, top_m },
                        { bent * run_m, top_m - bent * run_m / hv },
                        { run_m, 0.0 } };
  guint n = g_rand_boolean (rand) ? 3 : 2;
  SwFace *face;

  section[2].y_m = section[1].y_m - (1.0 - bent) * run_m / hv / between (rand, 0.7, 1.4);
  if (n == 2)
    section[1] = (SwPoint){ run_m, top_m - run_m / hv };
  *along_m = radius_m * 2.0 * G_PI * (ring ? 1.0 : between (rand, 0.1, 0.95));
  face = add_fan (job, form, radius_m, *along_m, section, n);
  face->leeward = g_rand_boolean (rand) ? SW_SIDE_LEFT : SW_SIDE_RIGHT;
  job->surplus = g_rand_boolean (rand) ? SW_SURPLUS_SPREAD : SW_SURPLUS_TRIM;
  job->roll_width_m = g_rand_boolean (rand) ? 2.44 : 1.22;
  return face;
}

#define FANS 1000
/* Pins are compared each with each, which takes long: one fan in so many has them as close
 * as the practice wants, and no more than so many of them. */
#define PINNED 8
#define PINS_COMPARED 1200

static void
set_pins_wide (SwJob *job)
{
  sw_job_set_override (job, SW_PRACTICE_PIN_DOWN_M, 3.0, "test");
  sw_job_set_override (job, SW_PRACTICE_PIN_ACROSS_M, 3.0, "test");
}

static void
test_random (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (GRand) rand = g_rand_new_with_seed (20260411);
  guint with_infill = 0;

  for (int i = 0; i < FANS; i++)
    {
      g_autoptr (SwJob) job = fixture_job ();
      g_autoptr (SwLayout) full = NULL;
      g_autoptr (SwLayout) infill = NULL;
      double along_m, lap_m;
      SwFace *face = add_random (rand, job, &along_m);

      if (i % PINNED != 0)
        set_pins_wide (job);
      infill = fixture_lay (job, catalogue);
      lap_m = infill->practice->values[SW_PRACTICE_SIDE_LAP_M].value;
      face->fan = SW_FAN_FULL_RUNS;
      full = fixture_lay (job, catalogue);
      for (int c = 0; c <= 60; c++)
        {
          check_contour (&infill->faces[0], along_m, lap_m,
                         contour_at (&infill->faces[0], c / 60.0));
          check_contour (&full->faces[0], along_m, lap_m,
                         contour_at (&full->faces[0], c / 60.0));
        }
      check_no_longer (&infill->faces[0], along_m, lap_m);
      check_balance (infill);
      check_balance (full);
      g_assert_cmpfloat (cut_in_all_m (infill), <=, cut_in_all_m (full) + 1e-6);
      with_infill += infill->faces[0].tiers[0].infill > 0;
      if (i % PINNED == 0 && infill->faces[0].n_pins <= PINS_COMPARED)
        {
          check_pins (&infill->faces[0], along_m);
          check_pins_in_laps (&infill->faces[0], along_m);
        }
      face->fan = SW_FAN_INFILL;
      if (i % 5 == 0)
        check_mirror (infill, job, catalogue, along_m);
    }
  g_test_message ("%u of %d fans took infill", with_infill, FANS);
  g_assert_cmpuint (with_infill, >, FANS / 4);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/layout/infill/heap-by-hand", test_heap_by_hand);
  g_test_add_func ("/layout/infill/bowl-by-hand", test_bowl_by_hand);
  g_test_add_func ("/layout/infill/random", test_random);
  return g_test_run ();
}
