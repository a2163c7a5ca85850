/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "random-face.h"
#include <math.h>
#include <slopewright/base/count.h>

#define FACES 12

typedef void (*ChangeJob) (SwJob *job);

static SwFace *
face_of (SwJob *job)
{
  return g_ptr_array_index (job->faces, 0);
}

static SwJob *
job_at (int kind, guint32 seed)
{
  g_autoptr (GRand) rand = g_rand_new_with_seed (9000 + 1000 * (guint32) kind + seed);

  return random_job (rand, (OutlineKind) kind);
}

/* Everything counted is equal, everything measured to a nanometre or nearly so. */
static void
assert_same_quantities (const SwLayout *a, const SwLayout *b, gint64 pin_slack)
{
  const SwFaceLayout *x = &a->faces[0], *y = &b->faces[0];

  g_assert_cmpuint (x->n_tiers, ==, y->n_tiers);
  for (guint t = 0; t < x->n_tiers; t++)
    {
      g_assert_cmpfloat_with_epsilon (x->tiers[t].net_m2, y->tiers[t].net_m2, 1e-6);
      g_assert_cmpfloat_with_epsilon (x->tiers[t].length_m, y->tiers[t].length_m, 1e-9);
      g_assert_cmpfloat_with_epsilon (x->tiers[t].side_lap_m, y->tiers[t].side_lap_m,
                                      1e-9);
      g_assert_cmpint (x->tiers[t].strips, ==, y->tiers[t].strips);
      g_assert_cmpuint (x->tiers[t].n_runs, ==, y->tiers[t].n_runs);
    }
  for (guint r = 0; r < x->n_runs; r++)
    {
      g_assert_cmpint (x->runs[r].number, ==, y->runs[r].number);
      g_assert_cmpint (x->runs[r].part, ==, y->runs[r].part);
      g_assert_cmpfloat_with_epsilon (x->runs[r].cut_m, y->runs[r].cut_m, 1e-6);
      g_assert_cmpfloat_with_epsilon (x->runs[r].down_from_m, y->runs[r].down_from_m,
                                      1e-6);
    }
  g_assert_cmpuint (a->n_pieces, ==, b->n_pieces);
  for (guint i = 0; i < a->n_pieces; i++)
    {
      g_assert_cmpint (
          ABS (sw_ticks (a->pieces[i].length_m) - sw_ticks (b->pieces[i].length_m)), <=,
          1);
    }
  g_assert_cmpint (a->rolls, ==, b->rolls);
  g_assert_cmpint (a->rolls_naive, ==, b->rolls_naive);
  g_assert_cmpuint (x->n_trenches, ==, y->n_trenches);
  for (int role = 0; role < SW_PIN_ROLE_COUNT; role++)
    g_assert_cmpint (
        ABS ((gint64) x->pins_by_role[role] - (gint64) y->pins_by_role[role]), <=,
        pin_slack);
}

/* How long all trenches of one kind are. */
static double
trench_length_m (const SwFaceLayout *face, SwTrenchKind kind)
{
  double length_m = 0.0;

  for (guint i = 0; i < face->n_trenches; i++)
    if (face->trenches[i].kind == kind)
      length_m += face->trenches[i].length_m;
  return length_m;
}

static void
assert_same_trenches (const SwLayout *a, const SwLayout *b)
{
  for (int kind = SW_TRENCH_KEY; kind <= SW_TRENCH_TOE; kind++)
    g_assert_cmpfloat_with_epsilon (trench_length_m (&a->faces[0], (SwTrenchKind) kind),
                                    trench_length_m (&b->faces[0], (SwTrenchKind) kind),
                                    1e-6);
}

/* Runs and pins of @b lie where those of @a do, by along = @origin + @sign x along. */
static void
assert_same_places (const SwLayout *a, const SwLayout *b, double origin_m, double sign)
{
  const SwFaceLayout *x = &a->faces[0], *y = &b->faces[0];
  double along_x[SW_PIN_ROLE_COUNT] = { 0 }, along_y[SW_PIN_ROLE_COUNT] = { 0 };
  double down_x[SW_PIN_ROLE_COUNT] = { 0 }, down_y[SW_PIN_ROLE_COUNT] = { 0 };

  for (guint r = 0; r < x->n_runs; r++)
    g_assert_cmpfloat_with_epsilon (
        origin_m + sign * (x->runs[r].along_from_m + x->runs[r].along_to_m) / 2.0,
        (y->runs[r].along_from_m + y->runs[r].along_to_m) / 2.0, 1e-9);
  for (gsize i = 0; i < x->n_pins; i++)
    {
      along_x[x->pins[i].role] += origin_m + sign * (double) x->pins[i].along_m;
      along_y[y->pins[i].role] += (double) y->pins[i].along_m;
      down_x[x->pins[i].role] += (double) x->pins[i].down_m;
      down_y[y->pins[i].role] += (double) y->pins[i].down_m;
    }
  /* Pins are stored to 0.01 mm. */
  for (int role = 0; role < SW_PIN_ROLE_COUNT; role++)
    {
      double slack_m = 1e-5 * (double) (x->pins_by_role[role] + 1);

      g_assert_cmpfloat_with_epsilon (along_x[role], along_y[role], slack_m);
      g_assert_cmpfloat_with_epsilon (down_x[role], down_y[role], slack_m);
    }
}

static void
compare_changed (ChangeJob change, double sign)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();

  for (int kind = 0; kind < OUTLINE_KIND_COUNT; kind++)
    for (guint32 seed = 0; seed < FACES; seed++)
      {
        g_autoptr (SwJob) job = job_at (kind, seed);
        g_autoptr (SwJob) changed = sw_job_copy (job);
        g_autoptr (SwLayout) a = fixture_lay (job, catalogue);
        g_autoptr (SwLayout) b = NULL;

        change (changed);
        b = fixture_lay (changed, catalogue);
        assert_same_quantities (a, b, 0);
        assert_same_trenches (a, b);
        assert_same_places (a, b, 0.0, sign);
      }
}

static void
mirror (SwJob *job)
{
  SwFace *face = face_of (job);

  for (guint i = 0; i < face->n_outline; i++)
    face->outline[i].x_m = -face->outline[i].x_m;
  face->leeward = face->leeward == SW_SIDE_LEFT ? SW_SIDE_RIGHT : SW_SIDE_LEFT;
}

static void
test_mirror (void)
{
  compare_changed (mirror, -1.0);
}

static void
reverse (SwJob *job)
{
  SwFace *face = face_of (job);

  for (guint i = 0; i < face->n_outline / 2; i++)
    {
      SwPoint p = face->outline[i];

      face->outline[i] = face->outline[face->n_outline - 1 - i];
      face->outline[face->n_outline - 1 - i] = p;
    }
}

static void
test_reverse (void)
{
  compare_changed (reverse, 1.0);
}

static void
begin_elsewhere (SwJob *job)
{
  SwFace *face = face_of (job);
  g_autofree SwPoint *turned = g_new (SwPoint, face->n_outline);

  for (guint i = 0; i < face->n_outline; i++)
    turned[i] = face->outline[(i + 2) % face->n_outline];
  sw_face_set_outline (face, turned, face->n_outline);
}

static void
test_begin_elsewhere (void)
{
  compare_changed (begin_elsewhere, 1.0);
}

/* A point in the middle of every edge, which an outline drawn by hand often has. */
static void
add_collinear (SwJob *job)
{
  SwFace *face = face_of (job);
  guint n = face->n_outline;
  g_autofree SwPoint *more = g_new (SwPoint, 2 * n);

  for (guint i = 0; i < n; i++)
    {
      SwPoint a = face->outline[i], b = face->outline[(i + 1) % n];

      more[2 * i] = a;
      more[2 * i + 1] = (SwPoint){ (a.x_m + b.x_m) / 2.0, (a.y_m + b.y_m) / 2.0 };
    }
  sw_face_set_outline (face, more, 2 * n);
}

static void
test_collinear_points (void)
{
  compare_changed (add_collinear, 1.0);
}

/* The units people read change nothing; lengths typed in feet are those in metres. */
static void
read_in_feet (SwJob *job)
{
  job->units = job->units == SW_UNITS_US ? SW_UNITS_METRIC : SW_UNITS_US;
}

static void
test_units_read (void)
{
  compare_changed (read_in_feet, 1.0);
}

/* 100 ft along, 40 ft out, 20 ft high; rolls of 8 ft by 112.5 ft; lap 4 in. The metres
 * are the same lengths written out: 1 ft is 0.3048 m. */
static void
test_feet_are_metres (void)
{
  const double ft = SW_M_PER_FT;
  const SwPoint section_ft[] = { { 0.0, 20 * ft }, { 40 * ft, 0.0 } };
  const SwPoint outline_ft[] = {
    { 0, 0 }, { 100 * ft, 0 }, { 100 * ft, 40 * ft }, { 0, 40 * ft }
  };
  const SwPoint section_m[] = { { 0.0, 6.096 }, { 12.192, 0.0 } };
  const SwPoint outline_m[] = {
    { 0, 0 }, { 30.48, 0 }, { 30.48, 12.192 }, { 0, 12.192 }
  };
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) in_ft = fixture_job ();
  g_autoptr (SwJob) in_m = fixture_job ();
  g_autoptr (SwLayout) a = NULL;
  g_autoptr (SwLayout) b = NULL;

  fixture_add_face (in_ft, "A", section_ft, 2, outline_ft, 4);
  fixture_add_face (in_m, "A", section_m, 2, outline_m, 4);
  in_ft->roll_width_m = 8 * ft;
  in_ft->roll_length_m = 112.5 * ft;
  in_m->roll_width_m = 2.4384;
  in_m->roll_length_m = 34.29;
  sw_job_set_override (in_ft, SW_PRACTICE_SIDE_LAP_M, 4 * SW_M_PER_IN, "");
  sw_job_set_override (in_m, SW_PRACTICE_SIDE_LAP_M, 0.1016, "");
  a = fixture_lay (in_ft, catalogue);
  b = fixture_lay (in_m, catalogue);
  assert_same_quantities (a, b, 0);
  assert_same_trenches (a, b);
  assert_same_places (a, b, 0.0, 1.0);
  /* By hand: (100 - 1/3) / (8 - 1/3) = 13 exactly, which no rounding may turn into 14. */
  g_assert_cmpint (a->faces[0].tiers[0].strips, ==, 13);
  g_assert_cmpint (b->faces[0].tiers[0].strips, ==, 13);
}

/* A site far from the datum, as coordinates of a survey are. Pins are stored to 0.5 mm
 * there, so one that stands on the limit of being double may count or not. */
static void
move (SwJob *job)
{
  SwFace *face = face_of (job);

  for (guint i = 0; i < face->n_outline; i++)
    face->outline[i].x_m += 4096.0;
}

static void
test_far_from_datum (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();

  for (int kind = 0; kind < OUTLINE_KIND_COUNT; kind++)
    for (guint32 seed = 0; seed < FACES; seed++)
      {
        g_autoptr (SwJob) job = job_at (kind, seed);
        g_autoptr (SwJob) moved = sw_job_copy (job);
        g_autoptr (SwLayout) a = fixture_lay (job, catalogue);
        g_autoptr (SwLayout) b = NULL;

        move (moved);
        b = fixture_lay (moved, catalogue);
        assert_same_quantities (a, b, 2);
        assert_same_trenches (a, b);
      }
}

/* The same job twice, and a copy of it, give the same bytes. */
static void
test_same_bytes (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();

  for (int kind = 0; kind < OUTLINE_KIND_COUNT; kind++)
    for (guint32 seed = 0; seed < FACES; seed++)
      {
        g_autoptr (SwJob) job = job_at (kind, seed);
        g_autoptr (SwJob) copy = sw_job_copy (job);
        g_autoptr (SwLayout) a = fixture_lay (job, catalogue);
        g_autoptr (SwLayout) b = fixture_lay (copy, catalogue);
        g_autoptr (GByteArray) bytes_a = fixture_layout_bytes (a);
        g_autoptr (GByteArray) bytes_b = fixture_layout_bytes (b);

        g_assert_cmpmem (bytes_a->data, bytes_a->len, bytes_b->data, bytes_b->len);
      }
}

typedef struct
{
  const SwCatalogue *catalogue;
  SwJob *job;
  GByteArray *want;
  guint different;
} Worker;

static gpointer
lay_again_and_again (gpointer data)
{
  Worker *worker = data;

  for (int i = 0; i < 30; i++)
    {
      g_autoptr (SwLayout) layout = fixture_lay (worker->job, worker->catalogue);
      g_autoptr (GByteArray) bytes = fixture_layout_bytes (layout);

      if (bytes->len != worker->want->len
          || memcmp (bytes->data, worker->want->data, bytes->len) != 0)
        worker->different++;
    }
  return NULL;
}

/* Two threads over one catalogue do not disturb each other. */
static void
test_two_threads (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  Worker workers[2];
  GThread *threads[2];

  for (int w = 0; w < 2; w++)
    {
      g_autoptr (SwLayout) layout = NULL;

      workers[w] =
          (Worker){ catalogue, job_at (w == 0 ? OUTLINE_C : OUTLINE_SKEW, 77), NULL, 0 };
      layout = fixture_lay (workers[w].job, catalogue);
      workers[w].want = fixture_layout_bytes (layout);
    }
  for (int w = 0; w < 2; w++)
    threads[w] = g_thread_new ("layout", lay_again_and_again, &workers[w]);
  for (int w = 0; w < 2; w++)
    {
      g_thread_join (threads[w]);
      g_assert_cmpuint (workers[w].different, ==, 0);
      g_byte_array_unref (workers[w].want);
      sw_job_unref (workers[w].job);
    }
}

/* A nose of 6 m radius with a toe line askew, and the same with points a third of the way
 * along two edges: they are no corners, so nothing moves, not by a bit. */
static void
test_points_on_straight_edges (void)
{
  const SwPoint section[] = { { 0.0, 3.0 }, { 6.0, 0.0 } };
  const SwPoint corners[] = { { 0.0, 0.0 }, { 8.0, 0.0 }, { 8.0, 6.0 }, { 0.0, 3.0 } };
  const SwPoint more[] = { { 0.0, 0.0 }, { 8.0 / 3.0, 0.0 },  { 8.0, 0.0 },
                           { 8.0, 6.0 }, { 16.0 / 3.0, 5.0 }, { 0.0, 3.0 } };
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) plain = fixture_job (), pointed = fixture_job ();
  SwFace *faces[] = { fixture_add_face (plain, "A", section, 2, corners, 4),
                      fixture_add_face (pointed, "A", section, 2, more, 6) };
  g_autoptr (SwLayout) a = NULL, b = NULL;
  g_autoptr (GByteArray) x = NULL, y = NULL;

  for (guint i = 0; i < 2; i++)
    {
      faces[i]->crest_form = SW_CREST_NOSE;
      faces[i]->crest_radius_m = 6.0;
    }
  a = fixture_lay (plain, catalogue);
  b = fixture_lay (pointed, catalogue);
  x = fixture_layout_bytes (a);
  y = fixture_layout_bytes (b);
  g_assert_cmpmem (x->data, x->len, y->data, y->len);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/layout/symmetry/mirror", test_mirror);
  g_test_add_func ("/layout/symmetry/reverse", test_reverse);
  g_test_add_func ("/layout/symmetry/begin-elsewhere", test_begin_elsewhere);
  g_test_add_func ("/layout/symmetry/collinear-points", test_collinear_points);
  g_test_add_func ("/layout/symmetry/points-on-straight-edges",
                   test_points_on_straight_edges);
  g_test_add_func ("/layout/symmetry/units-read", test_units_read);
  g_test_add_func ("/layout/symmetry/feet-are-metres", test_feet_are_metres);
  g_test_add_func ("/layout/symmetry/far-from-datum", test_far_from_datum);
  g_test_add_func ("/layout/symmetry/same-bytes", test_same_bytes);
  g_test_add_func ("/layout/symmetry/two-threads", test_two_threads);
  return g_test_run ();
}
