/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "boxes.h"
#include <math.h>

/*
 * A cone unrolls without stretching: a frustum of radii r1, r2 and slant height s becomes a
 * sector of slant radii r1 / cos a and r2 / cos a, whose sweep is that of the plan
 * times cos a, and whose area is pi (r1 + r2) s for a whole turn (school geometry).
 */

#define NBSP "\302\240"

static const char *texts_path;

/* The fixtures' round faces of one gradient. */
typedef struct
{
  SlopeKind slope;
  double sense; /* 1: radii grow outwards */
  double rise_m, hv, radius_m, crest_m;
} Cone;

static const Cone cones[] = {
  { SLOPE_NOSE, 1.0, 5.0, 2.5, 9.0, 17.3 },
  { SLOPE_BOWL, -1.0, 4.0, 2.0, 20.0, 40.0 },
  { SLOPE_HEAP, 1.0, 6.5, 1.54, 4.0, 2.0 * G_PI * 4.0 },
};

static double
run_m (const Cone *cone)
{
  return cone->rise_m * cone->hv;
}

static double
distance (SwPoint a, SwPoint b)
{
  return hypot (b.x_m - a.x_m, b.y_m - a.y_m);
}

/* Angle at which two fall lines meet, 0 to 2 pi, on the sheet. */
static double
angle_between (SwPoint a0, SwPoint a1, SwPoint b0, SwPoint b1)
{
  double a = atan2 (a1.x_m - a0.x_m, a1.y_m - a0.y_m);
  double b = atan2 (b1.x_m - b0.x_m, b1.y_m - b0.y_m);
  double angle = b - a;

  return angle < 0.0 ? angle + 2.0 * G_PI : angle;
}

static void
test_sector (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (cones); i++)
    {
      const Cone *cone = &cones[i];
      double slant = hypot (run_m (cone), cone->rise_m), cosine = run_m (cone) / slant;
      double r1 = cone->radius_m, r2 = r1 + cone->sense * run_m (cone);
      double sweep = cone->crest_m / r1 * cosine, angle, inner, outer, area;
      Fixture fixture;
      SwPoint at[4];

      fixture_set_up (&fixture, cone->slope, SW_TOE_TRENCH, SW_UNITS_METRIC, texts_path);
      for (guint k = 0; k < 4; k++)
        at[k] = sw_face_view_from_plan (
            fixture.result, 0, (SwPoint){ k / 2 * cone->crest_m, k % 2 * run_m (cone) });
      g_assert_cmpfloat_with_epsilon (distance (at[0], at[1]), slant, 1e-9);
      g_assert_cmpfloat_with_epsilon (distance (at[2], at[3]), slant, 1e-9);
      angle = cone->sense > 0.0 ? angle_between (at[0], at[1], at[2], at[3])
                                : angle_between (at[3], at[2], at[1], at[0]);
      g_assert_cmpfloat_with_epsilon (angle, sweep, 1e-9);
      /* The chord of an arc of radius r over the angle t is 2 r sin (t / 2). */
      inner = distance (at[0], at[2]) / (2.0 * sin (angle / 2.0));
      outer = distance (at[1], at[3]) / (2.0 * sin (angle / 2.0));
      g_assert_cmpfloat_with_epsilon (inner * angle, cone->crest_m, 1e-9);
      g_assert_cmpfloat_with_epsilon (outer * angle, cone->crest_m * r2 / r1, 1e-9);
      area = fabs (outer * outer - inner * inner) * angle / 2.0;
      g_assert_cmpfloat_with_epsilon (area, (r1 + r2) * slant / 2.0 * cone->crest_m / r1,
                                      1e-9 * area);
      g_assert_cmpfloat_with_epsilon (
          area, fixture.result->layout->faces[0].tiers[0].net_m2, 1e-9 * area);
      fixture_tear_down (&fixture);
    }
}

/* A place of a round face in space. */
static void
in_space (const Cone *cone, SwPoint plan, double at[3])
{
  double radius = cone->radius_m + cone->sense * plan.y_m;
  double turn = plan.x_m / cone->radius_m;

  at[0] = radius * sin (turn);
  at[1] = radius * cos (turn);
  at[2] = cone->rise_m - plan.y_m / cone->hv;
}

/* Over a millimetre the straight line through space is the line on the ground. */
static void
test_distances (void)
{
  const double step_m = 1e-3;

  for (guint i = 0; i < G_N_ELEMENTS (cones); i++)
    {
      const Cone *cone = &cones[i];
      Fixture fixture;

      fixture_set_up (&fixture, cone->slope, SW_TOE_TRENCH, SW_UNITS_METRIC, texts_path);
      for (guint n = 0; n < 200; n++)
        {
          double way = g_test_rand_double_range (0.0, 2.0 * G_PI), a[3], b[3];
          SwPoint p = { g_test_rand_double_range (0.0, cone->crest_m),
                        g_test_rand_double_range (step_m, run_m (cone) - step_m) };
          SwPoint q = { p.x_m + step_m * cos (way), p.y_m + step_m * sin (way) };
          double there, drawn = distance (sw_face_view_from_plan (fixture.result, 0, p),
                                          sw_face_view_from_plan (fixture.result, 0, q));

          in_space (cone, p, a);
          in_space (cone, q, b);
          there = sqrt ((b[0] - a[0]) * (b[0] - a[0]) + (b[1] - a[1]) * (b[1] - a[1])
                        + (b[2] - a[2]) * (b[2] - a[2]));
          g_assert_cmpfloat_with_epsilon (drawn / there, 1.0, 1e-6);
        }
      fixture_tear_down (&fixture);
    }
}

static void
test_round_trip (void)
{
  for (int slope = 0; slope < SLOPE_COUNT; slope++)
    {
      Fixture fixture;
      const SwFace *face;
      SwBox box;

      fixture_set_up (&fixture, slope, SW_TOE_TRENCH, SW_UNITS_METRIC, texts_path);
      face = fixture.result->layout->faces[0].face;
      box = sw_ring_box ((SwRing){ face->outline, face->n_outline });
      for (guint n = 0; n < 100; n++)
        {
          SwPoint plan = { g_test_rand_double_range (box.x0_m, box.x1_m),
                           g_test_rand_double_range (box.y0_m, box.y1_m) };
          SwPoint back = sw_face_view_to_plan (
              fixture.result, 0, sw_face_view_from_plan (fixture.result, 0, plan));

          g_assert_cmpfloat_with_epsilon (back.x_m, plan.x_m, 1e-9);
          g_assert_cmpfloat_with_epsilon (back.y_m, plan.y_m, 1e-9);
        }
      fixture_tear_down (&fixture);
    }
}

/*
 * By hand, the terraced nose: slant sqrt (144 + 36) = 13.4164, sqrt (9 + 0.01) = 3.0017,
 * sqrt (78.3225 + 34.81) = 10.6364, in all 27.0545 m. Plan radii 9, 21, 24, 32.85 m, so
 * the one cone widens by (32.85 / 9 - 1) / 27.0545 = 0.097944 a metre. Drawn over true
 * width at the breaks: (1 + 13.4164 x 0.097944) / (21 / 9) = 0.99174 and
 * (1 + 16.4181 x 0.097944) / (24 / 9) = 0.97802: off by 2.2 %, rounded up.
 */
static void
test_several_gradients (void)
{
  Fixture fixture;
  g_autoptr (SwFigure) figure = NULL;
  SwPoint crest, toe;
  SwView view;

  fixture_set_up (&fixture, SLOPE_TERRACED_NOSE, SW_TOE_TRENCH, SW_UNITS_METRIC,
                  texts_path);
  crest = sw_face_view_from_plan (fixture.result, 0, (SwPoint){ 2.0, 0.0 });
  toe = sw_face_view_from_plan (fixture.result, 0, (SwPoint){ 2.0, 23.85 });
  g_assert_cmpfloat_with_epsilon (distance (crest, toe), 27.0545, 1e-4);
  view = sw_face_view_fit (fixture.result, 0, 250.0, 180.0, &fixture.draw, NULL);
  figure = sw_draw_face_view (fixture.result, 0, &view, &fixture.draw);
  g_assert_nonnull (figure_text (
      figure, "Laid flat, seen from the toe, as one cone from crest to toe. True: all "
              "lengths down the face, the widths at crest and toe. Not true: widths "
              "between, by up to 2.2" NBSP "%."));
  fixture_tear_down (&fixture);
}

/* Corners of a run: two arcs, first and last point of each; straight sides between. */
static const SwItem *
find_run (const SwFigure *figure, const char *object)
{
  for (guint i = 0; i < figure->items->len; i++)
    {
      const SwItem *item = &g_array_index (figure->items, SwItem, i);

      if (item->role == SW_ROLE_RUN && strcmp (item->object, object) == 0)
        return item;
    }
  g_error ("no %s", object);
}

/* Blanket does not stretch: a run in the middle of the fan is a strip of one width. */
static void
test_runs_are_strips (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (cones); i++)
    {
      Fixture fixture;
      g_autoptr (SwFigure) figure = NULL;
      g_autofree char *object = NULL;
      const SwFaceLayout *laid;
      const SwPaperPoint *p;
      const SwItem *run;
      double scale = NAN, wide_mm;
      SwView view;
      guint half;

      fixture_set_up (&fixture, cones[i].slope, SW_TOE_TRENCH, SW_UNITS_METRIC,
                      texts_path);
      laid = &fixture.result->layout->faces[0];
      object = g_strdup_printf ("A/run/%u", laid->n_runs / 2);
      view = sw_face_view_fit (fixture.result, 0, 250.0, 180.0, &fixture.draw, &scale);
      figure = sw_draw_face_view (fixture.result, 0, &view, &fixture.draw);
      run = find_run (figure, object);
      p = sw_figure_item_points (figure, run);
      wide_mm = laid->runs[laid->n_runs / 2].width_m * 1000.0 / scale;
      for (half = 1; half + 1 < run->n_points; half++)
        if (hypot (p[half].x_mm - p[half - 1].x_mm, p[half].y_mm - p[half - 1].y_mm)
            > 2.0 * wide_mm)
          break;
      /* The ends are arcs; the corners are one width apart. */
      g_assert_cmpfloat_with_epsilon (
          hypot (p[half - 1].x_mm - p[0].x_mm, p[half - 1].y_mm - p[0].y_mm), wide_mm,
          1e-9);
      g_assert_cmpfloat_with_epsilon (hypot (p[run->n_points - 1].x_mm - p[half].x_mm,
                                             p[run->n_points - 1].y_mm - p[half].y_mm),
                                      wide_mm, 1e-9);
      fixture_tear_down (&fixture);
    }
}

/* A heap is cut open: the words say so, and the last run laps the first across the cut. */
static void
test_cut_heap (void)
{
  Fixture fixture;
  g_autoptr (SwFigure) figure = NULL;
  g_autofree char *lap = NULL;
  SwView view;

  fixture_set_up (&fixture, SLOPE_HEAP, SW_TOE_TRENCH, SW_UNITS_METRIC, texts_path);
  view = sw_face_view_fit (fixture.result, 0, 250.0, 180.0, &fixture.draw, NULL);
  figure = sw_draw_face_view (fixture.result, 0, &view, &fixture.draw);
  lap = g_strdup_printf ("A/lap/1-%u", fixture.result->layout->faces[0].n_runs);
  g_assert_true (figure_has_object (figure, lap));
  g_assert_nonnull (figure_text (figure, "Cut edge"));
  g_assert_nonnull (figure_text (figure, "Start here: run 1, at the cut"));
  g_assert_nonnull (figure_text (
      figure, "Cut open: the left and the right edge are one line on the ground."));
  g_assert_null (figure_text (figure, "Wind"));
  fixture_tear_down (&fixture);
}

/* What a straight crest over several sections shows true, and what not. */
static void
test_ruled_says_so (void)
{
  Fixture fixture;
  g_autoptr (SwFigure) figure = NULL;
  SwPoint at;
  SwView view;

  fixture_set_up (&fixture, SLOPE_RULED, SW_TOE_TRENCH, SW_UNITS_METRIC, texts_path);
  /* By hand, at the far end 8 m out and 4 m down: sqrt (80) = 8.9443 m. */
  at = sw_face_view_from_plan (fixture.result, 0, (SwPoint){ 40.0, 8.0 });
  g_assert_cmpfloat_with_epsilon (at.x_m, 40.0, 1e-9);
  g_assert_cmpfloat_with_epsilon (at.y_m, 8.9443, 1e-4);
  view = sw_face_view_fit (fixture.result, 0, 250.0, 180.0, &fixture.draw, NULL);
  figure = sw_draw_face_view (fixture.result, 0, &view, &fixture.draw);
  g_assert_nonnull (
      figure_text (figure, sw_texts_get (fixture.texts, "drawing.laid-flat-ruled")));
  /* At the near end 12 m out and 6 m down: 13.42 m. Both edges carry their own length. */
  g_assert_nonnull (figure_text (figure, "13.42" NBSP "m"));
  g_assert_nonnull (figure_text (figure, "8.94" NBSP "m"));
  fixture_tear_down (&fixture);
}

int
main (int argc, char **argv)
{
  texts_path = g_getenv ("SW_DRAWING_TEXTS");
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/figure/development/sector", test_sector);
  g_test_add_func ("/figure/development/distances", test_distances);
  g_test_add_func ("/figure/development/round-trip", test_round_trip);
  g_test_add_func ("/figure/development/several-gradients", test_several_gradients);
  g_test_add_func ("/figure/development/runs-are-strips", test_runs_are_strips);
  g_test_add_func ("/figure/development/cut-heap", test_cut_heap);
  g_test_add_func ("/figure/development/ruled-says-so", test_ruled_says_so);
  return g_test_run ();
}
