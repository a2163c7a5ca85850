/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "random-face.h"
#include <geos_c.h>
#include <math.h>
#include <slopewright/base/count.h>

#define FACES 10

/* Least distance of pins from obstacles; pins are kept as floats. */
#define CLEAR_M (0.10 - 1e-4)

/* sw_ring_contains() takes 0.1 mm beyond an edge for inside. */
#define EDGE_M 2e-4

static SwFace *
face_of (const SwJob *job)
{
  return g_ptr_array_index (job->faces, 0);
}

/* A convex or star-shaped ring of @n points round a place on the face. */
static void
add_obstacle (SwJob *job, GRand *rand, double largest_m)
{
  SwFace *face = face_of (job);
  SwBox box = sw_ring_box ((SwRing){ face->outline, face->n_outline });
  g_autofree char *id = g_strdup_printf ("%u", face->obstacles->len + 1);
  SwObstacle *obstacle = sw_obstacle_new (id);
  SwPoint middle = { g_rand_double_range (rand, box.x0_m, box.x1_m),
                     g_rand_double_range (rand, box.y0_m, box.y1_m) };
  guint n = (guint) g_rand_int_range (rand, 3, 12);
  double turn = g_rand_double (rand);
  SwPoint points[12];

  for (guint i = 0; i < n; i++)
    {
      double angle = 2.0 * G_PI * (i + turn) / n;
      double radius_m = largest_m * g_rand_double_range (rand, 0.3, 1.0);

      points[i] = (SwPoint){ middle.x_m + radius_m * cos (angle),
                             middle.y_m + radius_m * sin (angle) };
    }
  sw_obstacle_set_outline (obstacle, points, n);
  g_ptr_array_add (face->obstacles, obstacle);
}

static SwJob *
job_with_obstacles (int kind, guint32 seed)
{
  g_autoptr (GRand) rand = g_rand_new_with_seed (70000 + 1000 * (guint32) kind + seed);
  SwJob *job = random_job (rand, (OutlineKind) kind);
  int count = g_rand_int_range (rand, 1, 6);

  for (int i = 0; i < count; i++)
    add_obstacle (job, rand, g_rand_double_range (rand, 0.3, 4.0));
  return job;
}

typedef void (*Check) (const SwJob *job, const SwCatalogue *catalogue);

/* SW_E_EMPTY is the right answer for a face that its obstacles cover. */
static void
for_each_job (Check check)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();

  for (int kind = 0; kind < OUTLINE_KIND_COUNT; kind++)
    for (guint32 seed = 0; seed < FACES; seed++)
      {
        g_autoptr (SwJob) job = job_with_obstacles (kind, seed);

        check (job, catalogue);
      }
}

static SwRing
ring_of (const SwObstacle *obstacle)
{
  return (SwRing){ obstacle->outline, obstacle->n_outline };
}

static double
distance_to_edge_m (SwRing ring, SwPoint p)
{
  double least_m = INFINITY;

  for (guint i = 0, j = ring.count - 1; i < ring.count; j = i++)
    {
      SwPoint a = ring.points[j], b = ring.points[i];
      double dx = b.x_m - a.x_m, dy = b.y_m - a.y_m;
      double t = ((p.x_m - a.x_m) * dx + (p.y_m - a.y_m) * dy) / (dx * dx + dy * dy);

      t = CLAMP (t, 0.0, 1.0);
      least_m = fmin (least_m, hypot (a.x_m + t * dx - p.x_m, a.y_m + t * dy - p.y_m));
    }
  return least_m;
}

static void
check_no_pin_in_obstacle (const SwJob *job, const SwCatalogue *catalogue)
{
  g_autoptr (SwLayout) layout = fixture_lay (job, catalogue);
  const SwFaceLayout *laid = &layout->faces[0];

  for (gsize i = 0; i < laid->n_pins; i++)
    for (guint o = 0; o < laid->n_obstacles; o++)
      {
        SwRing ring = ring_of (laid->obstacles[o].obstacle);
        SwPoint at = { (double) laid->pins[i].along_m, (double) laid->pins[i].out_m };

        g_assert_false (sw_ring_contains (ring, at));
        g_assert_cmpfloat (distance_to_edge_m (ring, at), >=, CLEAR_M);
      }
}

/* No two pins closer than a hand's breadth where one of them stands in the ring. */
static void
check_no_doubles (const SwJob *job, const SwCatalogue *catalogue)
{
  g_autoptr (SwLayout) layout = fixture_lay (job, catalogue);
  const SwFaceLayout *laid = &layout->faces[0];

  for (gsize i = 0; i < laid->n_pins; i++)
    for (gsize k = 0; laid->pins[i].role == SW_PIN_RING && k < laid->n_pins; k++)
      {
        SwPinRole role = (SwPinRole) laid->pins[k].role;

        if (role == SW_PIN_RING || role == SW_PIN_KEY_TRENCH || role == SW_PIN_TOE
            || role == SW_PIN_SLOT)
          continue;
        g_assert_cmpfloat (
            hypot ((double) (laid->pins[i].along_m - laid->pins[k].along_m),
                   (double) (laid->pins[i].out_m - laid->pins[k].out_m)),
            >=, CLEAR_M);
      }
}

static GEOSGeometry *
polygon (GEOSContextHandle_t geos, SwRing ring)
{
  GEOSCoordSequence *line = GEOSCoordSeq_create_r (geos, ring.count + 1, 2);

  for (guint i = 0; i <= ring.count; i++)
    GEOSCoordSeq_setXY_r (geos, line, i, ring.points[i % ring.count].x_m,
                          ring.points[i % ring.count].y_m);
  return GEOSGeom_createPolygon_r (geos, GEOSGeom_createLinearRing_r (geos, line), NULL,
                                   0);
}

/* Take the obstacle out of @geometry, which is replaced. */
static void
take_out (GEOSContextHandle_t geos, GEOSGeometry **geometry, SwRing ring)
{
  GEOSGeometry *obstacle = polygon (geos, ring);
  GEOSGeometry *rest = GEOSDifference_r (geos, *geometry, obstacle);

  GEOSGeom_destroy_r (geos, obstacle);
  GEOSGeom_destroy_r (geos, *geometry);
  *geometry = rest;
}

/* On a plane face the net area is the plan area of the outline less the large obstacles,
 * found by GEOS alone, times the slope's true length per metre of plan. */
static void
check_net_area (const SwJob *job, const SwCatalogue *catalogue)
{
  g_autoptr (SwLayout) layout = NULL;
  const SwFace *face = face_of (job);
  GEOSContextHandle_t geos;
  GEOSGeometry *net;
  double factor, area_m2 = 0.0;

  if (face->n_section > 2)
    return;
  layout = fixture_lay (job, catalogue);
  factor = 1.0 / cos (layout->faces[0].tiers[0].mean_rad);
  geos = GEOS_init_r ();
  net = polygon (geos, (SwRing){ face->outline, face->n_outline });
  for (guint i = 0; i < face->obstacles->len; i++)
    {
      SwRing ring = ring_of (face->obstacles->pdata[i]);

      if (sw_ring_area_m2 (ring) * factor > 1.0) /* the fixture's limit */
        take_out (geos, &net, ring);
    }
  GEOSArea_r (geos, net, &area_m2);
  GEOSGeom_destroy_r (geos, net);
  GEOS_finish_r (geos);
  g_assert_cmpfloat_with_epsilon (layout->faces[0].tiers[0].net_m2, area_m2 * factor,
                                  1e-3);
}

static gboolean
in_obstacle (const SwFace *face, SwPoint p)
{
  for (guint i = 0; i < face->obstacles->len; i++)
    if (sw_ring_contains (ring_of (face->obstacles->pdata[i]), p))
      return TRUE;
  return FALSE;
}

static gboolean
in_a_run (const SwFaceLayout *laid, SwPoint p)
{
  for (guint i = 0; i < laid->n_runs; i++)
    if (p.x_m >= laid->runs[i].along_from_m - EDGE_M
        && p.x_m <= laid->runs[i].along_to_m + EDGE_M
        && p.y_m >= laid->runs[i].out_from_m - EDGE_M
        && p.y_m <= laid->runs[i].out_to_m + EDGE_M)
      return TRUE;
  return FALSE;
}

/* Benches are left bare: only places within a tier count. */
static gboolean
in_a_tier (const SwFaceLayout *laid, SwPoint p)
{
  for (guint i = 0; i < laid->n_tiers; i++)
    if (p.y_m > laid->tiers[i].reach.out_from_m && p.y_m < laid->tiers[i].reach.out_to_m)
      return TRUE;
  return FALSE;
}

static void
check_all_covered (const SwJob *job, const SwCatalogue *catalogue)
{
  g_autoptr (SwLayout) layout = fixture_lay (job, catalogue);
  g_autoptr (GRand) rand = g_rand_new_with_seed (5);
  const SwFace *face = face_of (job);
  const SwFaceLayout *laid = &layout->faces[0];
  SwBox box = sw_ring_box ((SwRing){ face->outline, face->n_outline });

  for (int i = 0; i < 2000; i++)
    {
      SwPoint p = { g_rand_double_range (rand, box.x0_m, box.x1_m),
                    g_rand_double_range (rand, box.y0_m, box.y1_m) };

      if (sw_ring_contains ((SwRing){ face->outline, face->n_outline }, p)
          && in_a_tier (laid, p) && !in_obstacle (face, p))
        g_assert_true (in_a_run (laid, p));
    }
}

/* Every square metre of an obstacle within a run is in one of the run's cut-outs. */
static void
check_cut_outs_known (const SwJob *job, const SwCatalogue *catalogue)
{
  g_autoptr (SwLayout) layout = fixture_lay (job, catalogue);
  const SwFaceLayout *laid = &layout->faces[0];

  for (guint r = 0; r < laid->n_runs; r++)
    for (guint h = 0; h < laid->runs[r].n_cut_outs; h++)
      {
        const SwRun *run = &laid->runs[r];
        const SwCutOut *hole = &laid->cut_outs[run->first_cut_out + h];

        g_assert_cmpuint (hole->obstacle, <, laid->n_obstacles);
        g_assert_cmpfloat (hole->along_from_m, >=, run->along_from_m - 1e-9);
        g_assert_cmpfloat (hole->along_to_m, <=, run->along_to_m + 1e-9);
        g_assert_cmpfloat (hole->down_from_m, >=, run->down_from_m - 1e-9);
        g_assert_cmpfloat (hole->down_to_m, <=, run->down_to_m + 1e-9);
        g_assert_cmpfloat (hole->down_to_m, >, hole->down_from_m);
      }
}

static void
flip (SwPoint *points, guint count)
{
  for (guint i = 0; i < count; i++)
    points[i].x_m = -points[i].x_m;
}

static void
check_mirror (const SwJob *job, const SwCatalogue *catalogue)
{
  g_autoptr (SwJob) mirrored = sw_job_copy (job);
  g_autoptr (SwLayout) a = fixture_lay (job, catalogue);
  g_autoptr (SwLayout) b = NULL;
  SwFace *face = face_of (mirrored);

  flip (face->outline, face->n_outline);
  for (guint i = 0; i < face->obstacles->len; i++)
    {
      SwObstacle *obstacle = g_ptr_array_index (face->obstacles, i);

      flip (obstacle->outline, obstacle->n_outline);
    }
  face->leeward = face->leeward == SW_SIDE_LEFT ? SW_SIDE_RIGHT : SW_SIDE_LEFT;
  b = fixture_lay (mirrored, catalogue);
  g_assert_cmpuint (a->faces[0].n_runs, ==, b->faces[0].n_runs);
  g_assert_cmpuint (a->faces[0].n_cut_outs, ==, b->faces[0].n_cut_outs);
  g_assert_cmpuint (a->faces[0].n_trenches, ==, b->faces[0].n_trenches);
  for (guint i = 0; i < a->faces[0].n_runs; i++)
    g_assert_cmpfloat_with_epsilon (a->faces[0].runs[i].cut_m, b->faces[0].runs[i].cut_m,
                                    1e-6);
  for (guint i = 0; i < a->faces[0].n_obstacles; i++)
    g_assert_cmpfloat_with_epsilon (a->faces[0].obstacles[i].collar_m2,
                                    b->faces[0].obstacles[i].collar_m2, 1e-6);
  for (int role = 0; role < SW_PIN_ROLE_COUNT; role++)
    g_assert_cmpuint (a->faces[0].pins_by_role[role], ==, b->faces[0].pins_by_role[role]);
  g_assert_cmpint (a->rolls, ==, b->rolls);
}

/* An obstacle of at most 0.3 m radius is below 0.29 m2 on plan and below 1 m2 at any slope
 * of the samples (0.8:1 is 1.6 m per metre of plan). */
static void
check_small_ones_stay (const SwJob *job, const SwCatalogue *catalogue)
{
  g_autoptr (GRand) rand = g_rand_new_with_seed (11);
  g_autoptr (SwJob) more = sw_job_copy (job);
  g_autoptr (SwLayout) a = NULL, b = NULL;

  g_ptr_array_set_size (face_of (more)->obstacles, 0);
  a = fixture_lay (more, catalogue);
  add_obstacle (more, rand, 0.3);
  b = fixture_lay (more, catalogue);
  g_assert_cmpuint (a->faces[0].n_tiers, ==, b->faces[0].n_tiers);
  for (guint i = 0; i < a->faces[0].n_tiers; i++)
    {
      g_assert_cmpfloat_with_epsilon (a->faces[0].tiers[i].net_m2,
                                      b->faces[0].tiers[i].net_m2, 1e-9);
      g_assert_cmpfloat_with_epsilon (b->faces[0].tiers[i].deducted_m2, 0.0, 1e-9);
    }
  g_assert_false (b->faces[0].obstacles[0].deducted);
}

static void
test_no_pin_in_obstacle (void)
{
  for_each_job (check_no_pin_in_obstacle);
}

static void
test_no_doubles (void)
{
  for_each_job (check_no_doubles);
}

static void
test_net_area (void)
{
  for_each_job (check_net_area);
}

static void
test_all_covered (void)
{
  for_each_job (check_all_covered);
}

static void
test_cut_outs (void)
{
  for_each_job (check_cut_outs_known);
}

static void
test_mirror (void)
{
  for_each_job (check_mirror);
}

static void
test_small_ones_stay (void)
{
  for_each_job (check_small_ones_stay);
}

/* On a nose along_m is measured at the crest; the same holds there. */
static void
test_round_crest (void)
{
  const SwPoint section[] = { { 0.0, 5.0 }, { 12.5, 0.0 } };
  const SwPoint outline[] = {
    { 0.0, 0.0 }, { 17.28, 0.0 }, { 17.28, 12.5 }, { 0.0, 12.5 }
  };
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();

  for (guint32 seed = 0; seed < FACES; seed++)
    {
      g_autoptr (GRand) rand = g_rand_new_with_seed (seed);
      g_autoptr (SwJob) job = fixture_job ();
      SwFace *face = fixture_add_face (job, "S7", section, 2, outline, 4);

      face->crest_form = SW_CREST_NOSE;
      face->crest_radius_m = 9.0;
      for (int i = 0; i < 3; i++)
        add_obstacle (job, rand, g_rand_double_range (rand, 0.3, 2.0));
      check_no_pin_in_obstacle (job, catalogue);
      check_all_covered (job, catalogue);
      check_cut_outs_known (job, catalogue);
      check_mirror (job, catalogue);
    }
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/layout/obstacles/no-pin-inside", test_no_pin_in_obstacle);
  g_test_add_func ("/layout/obstacles/no-doubles", test_no_doubles);
  g_test_add_func ("/layout/obstacles/net-area", test_net_area);
  g_test_add_func ("/layout/obstacles/all-covered", test_all_covered);
  g_test_add_func ("/layout/obstacles/cut-outs-within-runs", test_cut_outs);
  g_test_add_func ("/layout/obstacles/mirror", test_mirror);
  g_test_add_func ("/layout/obstacles/small-ones-stay", test_small_ones_stay);
  g_test_add_func ("/layout/obstacles/round-crest", test_round_crest);
  return g_test_run ();
}
