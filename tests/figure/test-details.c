/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "boxes.h"
#include <math.h>

#define NBSP "\302\240"

static const char *texts_path;

/* Every detail of every slope and toe, at the pack's size and two others. */
static void
test_tidy (void)
{
  static const double sizes_mm[][2] = { { 85.0, 70.0 }, { 90.0, 65.0 }, { 120.0, 90.0 } };

  for (int slope = 0; slope < SLOPE_COUNT; slope++)
    for (int toe = SW_TOE_TRENCH; toe <= SW_TOE_ROW; toe++)
      for (int units = SW_UNITS_METRIC; units <= SW_UNITS_US; units++)
        {
          Fixture fixture;

          fixture_set_up (&fixture, slope, toe, units, texts_path);
          for (guint size = 0; size < G_N_ELEMENTS (sizes_mm); size++)
            for (int detail = 0; detail < SW_DETAIL_COUNT; detail++)
              {
                g_autoptr (SwFigure) figure =
                    sw_draw_detail (fixture.result, 0, detail, sizes_mm[size][0],
                                    sizes_mm[size][1], &fixture.draw);
                g_autofree char *what = g_strdup_printf (
                    "slope %d, toe %d, units %d, detail %d", slope, toe, units, detail);

                if (figure != NULL)
                  assert_tidy (figure, &fixture.measure, what);
              }
          fixture_tear_down (&fixture);
        }
}

/* What a job has not, has no detail: by hand, 11.3 m runs fit a 34.3 m roll, and the
 * practice has no slots; the wide face has 39 m runs and a slot every 15 m. */
static void
test_present (void)
{
  static const gboolean expected[][SW_DETAIL_COUNT] = {
    [SLOPE_SAND] = { TRUE, TRUE, FALSE, FALSE, TRUE, TRUE, TRUE, FALSE },
    [SLOPE_WIDE] = { TRUE, TRUE, TRUE, TRUE, TRUE, TRUE, TRUE, FALSE },
  };
  static const SlopeKind slopes[] = { SLOPE_SAND, SLOPE_WIDE };

  for (guint s = 0; s < G_N_ELEMENTS (slopes); s++)
    {
      Fixture fixture;

      fixture_set_up (&fixture, slopes[s], SW_TOE_TRENCH, SW_UNITS_METRIC, texts_path);
      for (int detail = 0; detail < SW_DETAIL_COUNT; detail++)
        {
          g_autoptr (SwFigure) figure =
              sw_draw_detail (fixture.result, 0, detail, 85.0, 70.0, &fixture.draw);

          g_assert_cmpint (figure != NULL, ==, expected[slopes[s]][detail]);
        }
      fixture_tear_down (&fixture);
    }
}

static void
assert_detail_has (const Fixture *fixture, SwDetail detail, const char *text)
{
  g_autoptr (SwFigure) figure =
      sw_draw_detail (fixture->result, 0, detail, 85.0, 70.0, &fixture->draw);

  g_assert_nonnull (figure);
  if (figure_text (figure, text) == NULL)
    {
      g_autofree char *dump = sw_figure_dump (figure);

      g_error ("no \"%s\" in\n%s", text, dump);
    }
}

/* Sizes of the practice and of this face. By hand: 12 strips of 2.44 m on 26 m lap
 * (12 x 2.44 - 26) / 11 = 0.298 m; loose sand takes the 300 mm staple of 50 mm crown. */
static void
test_sizes (void)
{
  Fixture fixture;

  fixture_set_up (&fixture, SLOPE_SAND, SW_TOE_FOLD, SW_UNITS_METRIC, texts_path);
  assert_detail_has (&fixture, SW_DETAIL_KEY_TRENCH, "150" NBSP "mm");
  assert_detail_has (&fixture, SW_DETAIL_KEY_TRENCH, "600" NBSP "mm");
  assert_detail_has (&fixture, SW_DETAIL_KEY_TRENCH, "Fold 300" NBSP "mm");
  assert_detail_has (&fixture, SW_DETAIL_KEY_TRENCH, "Pins every 300" NBSP "mm");
  assert_detail_has (&fixture, SW_DETAIL_SIDE_LAP, "298" NBSP "mm");
  assert_detail_has (&fixture, SW_DETAIL_TOE, "100" NBSP "mm");
  assert_detail_has (&fixture, SW_DETAIL_TOE, "End turned under");
  assert_detail_has (&fixture, SW_DETAIL_PIN, "300" NBSP "mm");
  assert_detail_has (&fixture, SW_DETAIL_PIN, "Crown 50" NBSP "mm");
  assert_detail_has (&fixture, SW_DETAIL_PIN, "Wire 3" NBSP "mm");
  assert_detail_has (&fixture, SW_DETAIL_PIN, "50" NBSP "mm");
  assert_detail_has (&fixture, SW_DETAIL_PIN_PATTERN, "900" NBSP "mm");
  fixture_tear_down (&fixture);
}

/* By hand: slope 37.70 m, a slot at most every 15 m: 3 bays of 12.57 m; 300 mm end laps. */
static void
test_slot_and_end_lap (void)
{
  Fixture fixture;

  fixture_set_up (&fixture, SLOPE_WIDE, SW_TOE_TRENCH, SW_UNITS_METRIC, texts_path);
  assert_detail_has (&fixture, SW_DETAIL_SLOT,
                     "Check slots 12.57" NBSP "m apart down the face");
  assert_detail_has (&fixture, SW_DETAIL_END_LAP, "300" NBSP "mm");
  assert_detail_has (&fixture, SW_DETAIL_END_LAP, "100" NBSP "mm");
  fixture_tear_down (&fixture);
}

/* The trench of the detail is as deep on paper as its stated scale says. */
static void
test_true_scale (void)
{
  Fixture fixture;
  g_autoptr (SwFigure) figure = NULL;
  double depth = NAN;

  fixture_set_up (&fixture, SLOPE_CUTTING, SW_TOE_TRENCH, SW_UNITS_METRIC, texts_path);
  figure =
      sw_draw_detail (fixture.result, 0, SW_DETAIL_KEY_TRENCH, 85.0, 70.0, &fixture.draw);
  g_assert_nonnull (figure_text (figure, "Scale 1 : 10"));
  for (guint i = 0; i < figure->items->len; i++)
    {
      const SwItem *item = &g_array_index (figure->items, SwItem, i);
      const SwPaperPoint *p = sw_figure_item_points (figure, item);

      if (item->role == SW_ROLE_BACKFILL)
        depth = p[1].y_mm - p[0].y_mm;
    }
  g_assert_cmpfloat_with_epsilon (depth, 15.0, 1e-9);
  fixture_tear_down (&fixture);
}

static void
test_steps (void)
{
  g_autoptr (GHashTable) seen = g_hash_table_new (g_str_hash, g_str_equal);

  for (int slope = 0; slope < SLOPE_COUNT; slope++)
    for (int toe = SW_TOE_TRENCH; toe <= SW_TOE_ROW; toe++)
      {
        Fixture fixture;

        fixture_set_up (&fixture, slope, toe, SW_UNITS_METRIC, texts_path);
        for (int step = 0; step < SW_STEP_COUNT; step++)
          {
            g_autoptr (SwFigure) figure =
                sw_draw_step (fixture.result, 0, step, 30.0, 22.0, &fixture.draw);

            assert_tidy (figure, &fixture.measure, sw_step_code (step));
            g_assert_false (g_str_has_prefix (figure->title, "drawing."));
            g_hash_table_add (seen, (gpointer) sw_step_code (step));
          }
        fixture_tear_down (&fixture);
      }
  g_assert_cmpuint (g_hash_table_size (seen), ==, SW_STEP_COUNT);
}

static void
test_steps_apply (void)
{
  Fixture fixture;

  fixture_set_up (&fixture, SLOPE_SAND, SW_TOE_TRENCH, SW_UNITS_METRIC, texts_path);
  g_assert_true (sw_step_applies (fixture.result, SW_STEP_PREPARE));
  g_assert_true (sw_step_applies (fixture.result, SW_STEP_SIDE_LAP));
  g_assert_false (sw_step_applies (fixture.result, SW_STEP_SEED));
  g_assert_false (sw_step_applies (fixture.result, SW_STEP_END_LAP));
  g_assert_false (sw_step_applies (fixture.result, SW_STEP_SLOT));
  fixture_tear_down (&fixture);
  fixture_set_up (&fixture, SLOPE_WIDE, SW_TOE_TRENCH, SW_UNITS_METRIC, texts_path);
  g_assert_true (sw_step_applies (fixture.result, SW_STEP_END_LAP));
  g_assert_true (sw_step_applies (fixture.result, SW_STEP_SLOT));
  fixture_tear_down (&fixture);
}

/* The x extent of the longest line of @object. */
static double
longest_line_mm (const SwFigure *figure, const char *object)
{
  double longest = 0.0;

  for (guint i = 0; i < figure->items->len; i++)
    {
      const SwItem *item = &g_array_index (figure->items, SwItem, i);
      const SwPaperPoint *p = sw_figure_item_points (figure, item);

      if (item->kind == SW_ITEM_LINE && strcmp (item->object, object) == 0)
        longest = fmax (longest, p[1].x_mm - p[0].x_mm);
    }
  return longest;
}

/* Source: by hand. At 1 : 200 one metre is 5 mm; 48 mm hold 9.6 m, so the bar is 5 m, 25 mm. */
static void
test_scale_bar (void)
{
  Fixture fixture;
  static const struct
  {
    double width_mm, check_mm;
  } rows[] = { { 180.0, 100.0 }, { 165.0, 100.0 }, { 120.0, 50.0 } };

  fixture_set_up (&fixture, SLOPE_SAND, SW_TOE_TRENCH, SW_UNITS_METRIC, texts_path);
  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr (SwFigure) figure = sw_figure_new (rows[i].width_mm, 20.0);

      sw_draw_scale_bar (figure, 0.0, 5.0, 5.0, 200.0, &fixture.draw);
      g_assert_nonnull (figure_text (figure, "Scale 1 : 200"));
      g_assert_nonnull (figure_text (figure, "5 m"));
      g_assert_cmpfloat_with_epsilon (longest_line_mm (figure, "scale-bar"), 25.0, 1e-9);
      g_assert_cmpfloat_with_epsilon (longest_line_mm (figure, "check-line"),
                                      rows[i].check_mm, 1e-9);
      assert_tidy (figure, &fixture.measure, "scale bar");
    }
  fixture_tear_down (&fixture);
}

/* By hand: 50 ft at 1 : 500 is 50 x 304.8 / 500 = 30.48 mm; 100 ft would be 60.96 mm. */
static void
test_scale_bar_feet (void)
{
  Fixture fixture;
  g_autoptr (SwFigure) figure = sw_figure_new (180.0, 20.0);

  fixture_set_up (&fixture, SLOPE_SAND, SW_TOE_TRENCH, SW_UNITS_US, texts_path);
  sw_draw_scale_bar (figure, 0.0, 5.0, 2.0, 500.0, &fixture.draw);
  g_assert_nonnull (figure_text (figure, "50 ft"));
  g_assert_cmpfloat_with_epsilon (longest_line_mm (figure, "scale-bar"), 30.48, 1e-9);
  g_assert_cmpfloat_with_epsilon (longest_line_mm (figure, "check-line"), 100.0, 1e-9);
  fixture_tear_down (&fixture);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  texts_path = g_getenv ("SW_DRAWING_TEXTS");
  g_assert_nonnull (texts_path);
  g_test_add_func ("/figure/details/tidy", test_tidy);
  g_test_add_func ("/figure/details/present", test_present);
  g_test_add_func ("/figure/details/sizes", test_sizes);
  g_test_add_func ("/figure/details/slot-and-end-lap", test_slot_and_end_lap);
  g_test_add_func ("/figure/details/true-scale", test_true_scale);
  g_test_add_func ("/figure/details/steps", test_steps);
  g_test_add_func ("/figure/details/steps-apply", test_steps_apply);
  g_test_add_func ("/figure/details/scale-bar", test_scale_bar);
  g_test_add_func ("/figure/details/scale-bar-feet", test_scale_bar_feet);
  return g_test_run ();
}
