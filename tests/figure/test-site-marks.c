/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "../../src/figure/site-marks.h"
#include "boxes.h"
#include <math.h>

#define NBSP "\302\240"

static const char *texts_path;

static SwFigure *
face_view (Fixture *fixture, SwView *view)
{
  *view = sw_face_view_fit (fixture->result, 0, 180.0, 120.0, &fixture->draw, NULL);
  return sw_draw_face_view (fixture->result, 0, view, &fixture->draw);
}

static SwFigure *
plan (Fixture *fixture, SwView *view)
{
  *view = sw_plan_fit (fixture->result, 0, 180.0, 120.0, &fixture->draw, NULL);
  return sw_draw_plan (fixture->result, 0, view, &fixture->draw);
}

/* The box of the area with this role and object; asserts that there is one. */
static SwBox
area_box (const SwFigure *figure, SwRole role, const char *object)
{
  for (guint i = 0; i < figure->items->len; i++)
    {
      const SwItem *item = &g_array_index (figure->items, SwItem, i);
      const SwPaperPoint *p = sw_figure_item_points (figure, item);
      SwBox box = { INFINITY, INFINITY, -INFINITY, -INFINITY };

      if (item->kind != SW_ITEM_AREA || item->role != role
          || strcmp (item->object, object) != 0)
        continue;
      for (guint k = 0; k < item->n_points; k++)
        box = (SwBox){ fmin (box.x0_m, p[k].x_mm), fmin (box.y0_m, p[k].y_mm),
                       fmax (box.x1_m, p[k].x_mm), fmax (box.y1_m, p[k].y_mm) };
      return box;
    }
  g_error ("no area of %s", object);
}

static void
assert_box (SwBox box, SwPaperPoint upper_left, SwPaperPoint lower_right)
{
  g_assert_cmpfloat_with_epsilon (box.x0_m, upper_left.x_mm, 1e-6);
  g_assert_cmpfloat_with_epsilon (box.y0_m, upper_left.y_mm, 1e-6);
  g_assert_cmpfloat_with_epsilon (box.x1_m, lower_right.x_mm, 1e-6);
  g_assert_cmpfloat_with_epsilon (box.y1_m, lower_right.y_mm, 1e-6);
}

/* By hand: at 2:1 a metre out is sqrt (1.25) = 1.118 m down the face. The box lies 3 to 4 m
 * along and 2 to 3 m out, its patch 0.15 m beyond on plan. */
static void
test_obstacle_places (void)
{
  double s = sqrt (1.25);
  Fixture fixture;
  g_autoptr (SwFigure) flat = NULL, above = NULL;
  SwView view;

  fixture_set_up (&fixture, SLOPE_SITE, SW_TOE_TRENCH, SW_UNITS_METRIC, texts_path);
  flat = face_view (&fixture, &view);
  assert_box (area_box (flat, SW_ROLE_OBSTACLE, "A/obstacle/1"),
              sw_view_to_paper (&view, (SwPoint){ 3.0, 2.0 * s }),
              sw_view_to_paper (&view, (SwPoint){ 4.0, 3.0 * s }));
  assert_box (area_box (flat, SW_ROLE_COLLAR, "A/obstacle/1"),
              sw_view_to_paper (&view, (SwPoint){ 2.85, 1.85 * s }),
              sw_view_to_paper (&view, (SwPoint){ 4.15, 3.15 * s }));
  above = plan (&fixture, &view);
  assert_box (area_box (above, SW_ROLE_OBSTACLE, "A/obstacle/4"),
              sw_view_to_paper (&view, (SwPoint){ 18.5, 7.5 }),
              sw_view_to_paper (&view, (SwPoint){ 22.0, 9.0 }));
  fixture_tear_down (&fixture);
}

static gboolean
figure_says (const SwFigure *figure, const char *object, const char *text)
{
  for (guint i = 0; i < figure->items->len; i++)
    {
      const SwItem *item = &g_array_index (figure->items, SwItem, i);

      if (item->kind == SW_ITEM_TEXT && strcmp (item->object, object) == 0
          && strcmp (item->text, text) == 0)
        return TRUE;
    }
  return FALSE;
}

/* The lime's name is too long to stand beside it. By hand, with s = 1.1180: box 2 s =
 * 2.24 m down, 1 m and 1.12 m; tree 4.2 s = 4.70 m down, 6.7 m along, 1.6 m and 1.79 m;
 * headwall 7.5 s = 8.39 m down, 3.5 m and 1.68 m. */
static void
test_obstacle_words (void)
{
  static const char *const words[] = {
    "1 Box: 2.24" NBSP "m down from the crest, 3.00" NBSP "m from the left edge, "
    "1.00" NBSP "m × 1.12" NBSP "m.",
    "2 Lime tree with its root plate, kept by order: 4.70" NBSP
    "m down from the crest, 6.70" NBSP "m from the left edge, "
    "1.60" NBSP "m × 1.79" NBSP "m.",
    "4 Headwall: 8.39" NBSP "m down from the crest, 18.50" NBSP "m from the left edge, "
    "3.50" NBSP "m × 1.68" NBSP "m.",
    "1 Box",
    "3 Obstacle",
    "4 Headwall",
    "Patch 150" NBSP "mm over the blanket, pins every 300" NBSP "mm",
  };
  Fixture fixture;
  SwView view;

  fixture_set_up (&fixture, SLOPE_SITE, SW_TOE_TRENCH, SW_UNITS_METRIC, texts_path);
  for (int drawing = 0; drawing < 2; drawing++)
    {
      g_autoptr (SwFigure) figure =
          drawing == 0 ? plan (&fixture, &view) : face_view (&fixture, &view);

      for (guint i = 0; i < G_N_ELEMENTS (words); i++)
        if (figure_text (figure, words[i]) == NULL)
          g_error ("no \"%s\" in drawing %d", words[i], drawing);
      g_assert_true (figure_says (figure, "A/obstacle/2", "2"));
    }
  fixture_tear_down (&fixture);
}

/* The run under the wall begins at the wall: by hand at 4 s = 4.47 m, with no set-back
 * drawn over the wall. */
static void
test_run_below (void)
{
  Fixture fixture;
  g_autoptr (SwFigure) figure = NULL;
  const SwFaceLayout *laid;
  SwView view;
  guint found = 0;

  fixture_set_up (&fixture, SLOPE_SITE, SW_TOE_TRENCH, SW_UNITS_METRIC, texts_path);
  figure = face_view (&fixture, &view);
  laid = &fixture.result->layout->faces[0];
  for (guint i = 0; i < laid->n_runs; i++)
    {
      g_autofree char *object = g_strdup_printf ("A/run/%u", i);

      if (!laid->runs[i].obstacle_above)
        continue;
      found++;
      g_assert_cmpfloat_with_epsilon (
          area_box (figure, SW_ROLE_RUN, object).y0_m,
          sw_view_to_paper (&view, (SwPoint){ 0.0, 4.0 * sqrt (1.25) }).y_mm, 1e-3);
    }
  g_assert_cmpuint (found, >=, 1);
  fixture_tear_down (&fixture);
}

/* Only what lies on the face of a zone's boundary is drawn: by hand from crest to toe,
 * 0 to sqrt (12.5^2 + 5^2) = 13.46 m down, 24 m along; and its far side along the edge. */
static void
test_zone (void)
{
  double length_m = sqrt (181.25);
  Fixture fixture;
  g_autoptr (SwFigure) figure = NULL;
  SwPaperPoint top, end;
  SwView view;
  guint found = 0;

  fixture_set_up (&fixture, SLOPE_SOILS, SW_TOE_TRENCH, SW_UNITS_METRIC, texts_path);
  figure = face_view (&fixture, &view);
  top = sw_view_to_paper (&view, (SwPoint){ 24.0, 0.0 });
  end = sw_view_to_paper (&view, (SwPoint){ 24.0, length_m });
  for (guint i = 0; i < figure->items->len; i++)
    {
      const SwItem *item = &g_array_index (figure->items, SwItem, i);
      const SwPaperPoint *p = sw_figure_item_points (figure, item);

      if (item->role != SW_ROLE_ZONE || strcmp (item->object, "A/zone/S") != 0
          || fabs (p[0].x_mm - top.x_mm) > 1e-6)
        continue;
      found++;
      g_assert_cmpfloat_with_epsilon (fmin (p[0].y_mm, p[item->n_points - 1].y_mm),
                                      top.y_mm, 1e-6);
      g_assert_cmpfloat_with_epsilon (fmax (p[0].y_mm, p[item->n_points - 1].y_mm),
                                      end.y_mm, 1e-6);
    }
  g_assert_cmpuint (found, ==, 1);
  g_assert_nonnull (figure_text (figure, "clay: pins 150" NBSP "mm"));
  g_assert_nonnull (figure_text (figure, "sand, loose: pins 300" NBSP "mm"));
  g_assert_nonnull (figure_text (figure, "Boundary of soils"));
  fixture_tear_down (&fixture);
}

/* Each soil's words stand on that soil. */
static void
test_soil_words_in_place (void)
{
  Fixture fixture;
  g_autoptr (SwFigure) figure = NULL;
  const SwItem *clay, *sand;
  double boundary_mm;
  SwView view;

  fixture_set_up (&fixture, SLOPE_SOILS, SW_TOE_TRENCH, SW_UNITS_METRIC, texts_path);
  figure = plan (&fixture, &view);
  clay = figure_text (figure, "clay: pins 150" NBSP "mm");
  sand = figure_text (figure, "sand, loose: pins 300" NBSP "mm");
  boundary_mm = sw_view_to_paper (&view, (SwPoint){ 24.0, 0.0 }).x_mm;
  g_assert_nonnull (clay);
  g_assert_nonnull (sand);
  g_assert_cmpfloat (sw_figure_item_points (figure, clay)->x_mm, <, boundary_mm);
  g_assert_cmpfloat (sw_figure_item_points (figure, sand)->x_mm, >, boundary_mm);
  fixture_tear_down (&fixture);
}

/* By hand: 0.1 m added all round an L. Every edge moves out by 0.1 m, so the inner corner
 * (2, 1) goes to (2.1, 1.1); the same whichever way the outline turns. */
static void
test_collar_both_turns (void)
{
  const SwPoint one_way[] = {
    { 0, 0 }, { 3, 0 }, { 3, 1 }, { 2, 1 }, { 2, 2 }, { 0, 2 }
  };
  static const SwPoint expected[] = { { -0.1, -0.1 }, { 3.1, -0.1 }, { 3.1, 1.1 },
                                      { 2.1, 1.1 },   { 2.1, 2.1 },  { -0.1, 2.1 } };
  Fixture fixture;
  guint n = G_N_ELEMENTS (one_way);

  fixture_set_up (&fixture, SLOPE_SAND, SW_TOE_TRENCH, SW_UNITS_METRIC, texts_path);
  for (int way = 0; way < 2; way++)
    {
      SwObstacle *obstacle = sw_obstacle_new ("1");
      SwPoint ring[G_N_ELEMENTS (one_way)];
      g_autoptr (GArray) grown = NULL;

      for (guint i = 0; i < n; i++)
        ring[i] = one_way[way == 0 ? i : n - 1 - i];
      sw_obstacle_set_outline (obstacle, ring, n);
      grown = sw_collar_outline (&fixture.result->layout->faces[0], obstacle, 0.1);
      for (guint i = 0; i < n; i++)
        {
          SwPoint at = g_array_index (grown, SwPoint, way == 0 ? i : n - 1 - i);

          g_assert_cmpfloat_with_epsilon (at.x_m, expected[i].x_m, 1e-9);
          g_assert_cmpfloat_with_epsilon (at.y_m, expected[i].y_m, 1e-9);
        }
      sw_obstacle_free (obstacle);
    }
  fixture_tear_down (&fixture);
}

/* By hand: the box is 1 m wide and sqrt (1.25) = 1.12 m down; 0.15 m at 1 : 25 are 6 mm. */
static void
test_detail (void)
{
  Fixture fixture;
  g_autoptr (SwFigure) figure = NULL, none = NULL;
  SwBox cut, patch;

  fixture_set_up (&fixture, SLOPE_SITE, SW_TOE_TRENCH, SW_UNITS_METRIC, texts_path);
  figure =
      sw_draw_detail (fixture.result, 0, SW_DETAIL_COLLAR, 85.0, 54.0, &fixture.draw);
  g_assert_nonnull (figure);
  g_assert_nonnull (figure_text (figure, "Scale 1 : 25"));
  g_assert_nonnull (figure_text (figure, "150" NBSP "mm"));
  g_assert_nonnull (figure_text (figure, "Cut-out 1.00" NBSP "m × 1.12" NBSP "m"));
  g_assert_nonnull (figure_text (figure, "Pins every 300" NBSP "mm round it"));
  cut = area_box (figure, SW_ROLE_OBSTACLE, "A/obstacle/1");
  patch = area_box (figure, SW_ROLE_COLLAR, "A/obstacle/1");
  g_assert_cmpfloat_with_epsilon (cut.x1_m - cut.x0_m, 40.0, 1e-6);
  g_assert_cmpfloat_with_epsilon (cut.x0_m - patch.x0_m, 6.0, 1e-6);
  g_assert_cmpfloat_with_epsilon (cut.y0_m - patch.y0_m, 6.0, 1e-6);
  fixture_tear_down (&fixture);
  fixture_set_up (&fixture, SLOPE_SAND, SW_TOE_TRENCH, SW_UNITS_METRIC, texts_path);
  none = sw_draw_detail (fixture.result, 0, SW_DETAIL_COLLAR, 85.0, 54.0, &fixture.draw);
  g_assert_null (none);
  fixture_tear_down (&fixture);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  texts_path = g_getenv ("SW_DRAWING_TEXTS");
  g_assert_nonnull (texts_path);
  g_test_add_func ("/figure/site-marks/obstacle-places", test_obstacle_places);
  g_test_add_func ("/figure/site-marks/obstacle-words", test_obstacle_words);
  g_test_add_func ("/figure/site-marks/run-below", test_run_below);
  g_test_add_func ("/figure/site-marks/zone", test_zone);
  g_test_add_func ("/figure/site-marks/soil-words-in-place", test_soil_words_in_place);
  g_test_add_func ("/figure/site-marks/collar-both-turns", test_collar_both_turns);
  g_test_add_func ("/figure/site-marks/detail", test_detail);
  return g_test_run ();
}
