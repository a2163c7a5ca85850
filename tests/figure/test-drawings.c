/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "clearance.h"
#include <math.h>

#define NBSP "\302\240"

/* What metres rounded to three places are off on paper. */
#define ROUNDED_MM 0.01

static const char *texts_path;

typedef enum
{
  SECTION,
  PLAN,
  FACE_VIEW,
  DRAWING_COUNT
} Drawing;

static const char *const drawing_names[] = { "section", "plan", "face view" };

static SwFigure *
draw (const Fixture *fixture, Drawing drawing, double width_mm, double height_mm)
{
  const SwResult *result = fixture->result;
  SwView view;

  switch (drawing)
    {
    case SECTION:
      view = sw_section_fit (result, 0, width_mm, height_mm, &fixture->draw, NULL);
      return sw_draw_section (result, 0, &view, &fixture->draw);
    case PLAN:
      view = sw_plan_fit (result, 0, width_mm, height_mm, &fixture->draw, NULL);
      return sw_draw_plan (result, 0, &view, &fixture->draw);
    case FACE_VIEW:
    case DRAWING_COUNT:
    default:
      view = sw_face_view_fit (result, 0, width_mm, height_mm, &fixture->draw, NULL);
      return sw_draw_face_view (result, 0, &view, &fixture->draw);
    }
}

/* On less paper a face is a few millimetres wide, less than its run's number or than the
 * name of what stands in it, and such a text lies on the outline rather than nowhere. */
#define LEAST_ROOM_MM 150.0

/* Widths inside the margins of A4 and Letter, and an awkward narrow one. */
static void
test_tidy (void)
{
  static const double sizes_mm[][2] = { { 180.0, 120.0 },
                                        { 185.9, 115.0 },
                                        { 120.0, 90.0 } };

  for (int slope = 0; slope < SLOPE_COUNT; slope++)
    for (int units = SW_UNITS_METRIC; units <= SW_UNITS_US; units++)
      for (guint size = 0; size < G_N_ELEMENTS (sizes_mm); size++)
        for (int drawing = 0; drawing < DRAWING_COUNT; drawing++)
          {
            Fixture fixture;
            g_autoptr (SwFigure) figure = NULL;
            g_autofree char *what =
                g_strdup_printf ("slope %d, units %d, %.0f mm, %s", slope, units,
                                 sizes_mm[size][0], drawing_names[drawing]);

            fixture_set_up (&fixture, slope, SW_TOE_TRENCH, units, texts_path);
            figure = draw (&fixture, drawing, sizes_mm[size][0], sizes_mm[size][1]);
            assert_tidy (figure, &fixture.measure, what);
            if (sizes_mm[size][0] >= LEAST_ROOM_MM)
              assert_readable (figure, &fixture.measure, what);
            fixture_tear_down (&fixture);
          }
}

static guint
count_role (const SwFigure *figure, SwRole role)
{
  guint count = 0;

  for (guint i = 0; i < figure->items->len; i++)
    count += g_array_index (figure->items, SwItem, i).role == role;
  return count;
}

static void
assert_texts (const SwFigure *figure, const char *const *texts)
{
  for (guint i = 0; texts[i] != NULL; i++)
    if (figure_text (figure, texts[i]) == NULL)
      {
        g_autofree char *dump = sw_figure_dump (figure);

        g_error ("no text \"%s\" in\n%s", texts[i], dump);
      }
}

/*
 * By hand: upper tier 12 m out and 6 m down, sqrt (144 + 36) = 13.42 m; bench 4 m out and
 * 0.12 m down; lower tier 16 m out and 8 m down, sqrt (256 + 64) = 17.89 m; in all 32 m
 * out and 14.12 m down.
 */
static void
test_section_texts (void)
{
  static const char *const expected[] = {
    "13.42" NBSP "m",
    "17.89" NBSP "m",
    "12.00" NBSP "m",
    "16.00" NBSP "m",
    "32.00" NBSP "m",
    "14.12" NBSP "m",
    "6.00" NBSP "m",
    "8.00" NBSP "m",
    "2H:1V · 26.6° · 50" NBSP "%",
    "Crest · level 14.12" NBSP "m",
    "Toe · level 0.00" NBSP "m",
    "Fall line",
    NULL,
  };
  Fixture fixture;
  g_autoptr (SwFigure) figure = NULL;

  fixture_set_up (&fixture, SLOPE_CUTTING, SW_TOE_TRENCH, SW_UNITS_METRIC, texts_path);
  figure = draw (&fixture, SECTION, 180.0, 120.0);
  assert_texts (figure, expected);
  fixture_tear_down (&fixture);
}

/* By hand: 26 m wide, sqrt (8.25^2 + 5.5^2) = 9.92 m down; 12 runs of 2.44 m; the first at
 * the right, since that is the leeward end. */
static void
test_face_view_texts (void)
{
  static const char *const expected[] = {
    "26.00" NBSP "m",
    "9.92" NBSP "m",
    "1",
    "12",
    "Laying order",
    "Wind",
    "Start here: run 1 at the leeward end",
    "Crest",
    "Toe",
    NULL,
  };
  Fixture fixture;
  g_autoptr (SwFigure) figure = NULL;
  double first_x, last_x;

  fixture_set_up (&fixture, SLOPE_SAND, SW_TOE_TRENCH, SW_UNITS_METRIC, texts_path);
  figure = draw (&fixture, FACE_VIEW, 180.0, 120.0);
  assert_texts (figure, expected);
  first_x = sw_figure_item_points (figure, figure_text (figure, "1"))->x_mm;
  last_x = sw_figure_item_points (figure, figure_text (figure, "12"))->x_mm;
  g_assert_cmpfloat (first_x, >, last_x);
  fixture_tear_down (&fixture);
}

/* By hand: sides of the L-shaped plan, 9 out and 1 across: sqrt (81 + 1) = 9.06 m. */
static void
test_plan_texts (void)
{
  static const char *const expected[] = {
    "20.00" NBSP "m",
    "12.00" NBSP "m",
    "11.00" NBSP "m",
    "9.06" NBSP "m",
    "5.00" NBSP "m",
    "Crest",
    "Toe",
    "Wind",
    "Fall line",
    NULL,
  };
  Fixture fixture;
  g_autoptr (SwFigure) figure = NULL;

  fixture_set_up (&fixture, SLOPE_L, SW_TOE_TRENCH, SW_UNITS_METRIC, texts_path);
  figure = draw (&fixture, PLAN, 180.0, 120.0);
  assert_texts (figure, expected);
  fixture_tear_down (&fixture);
}

/*
 * By hand: ripples of 0.12 m every third metre; 20 steps of 1 m out and 0.38 m down, 9 of
 * 1 m out and 0.74 m down: 20 sqrt (1.1444) + 9 sqrt (1.5476) = 32.59 m; the steepest is
 * 1 / 0.74 = 1.35:1, atan 0.74 = 36.5 degrees; the mean 29 / 14.26 = 2.03:1.
 */
static void
test_survey (void)
{
  static const char *const expected[] = { "32.59" NBSP "m along the face",
                                          "Steepest 1.35H:1V · 36.5° · 74" NBSP "%",
                                          "29.00" NBSP "m", "14.26" NBSP "m", NULL };
  Fixture fixture;
  g_autoptr (SwFigure) figure = NULL;

  fixture_set_up (&fixture, SLOPE_SURVEY, SW_TOE_TRENCH, SW_UNITS_METRIC, texts_path);
  figure = draw (&fixture, SECTION, 180.0, 120.0);
  assert_texts (figure, expected);
  fixture_tear_down (&fixture);
}

/* By hand: crest radius 9 m, arc 17.3 m; the toe is 12.5 m further out, so its arc is
 * 17.3 (9 + 12.5) / 9 = 41.33 m. It turns 17.3 / 9 = 1.922 rad about a point 9 m behind the
 * middle of its crest, so its right end at the toe is 21.5 sin 0.961 = 17.626 m to the side
 * and 21.5 cos 0.961 - 9 = 3.311 m before the crest: there its handle is. */
static void
test_round_crest (void)
{
  static const char *const expected[] = { "17.30" NBSP "m along the arc",
                                          "41.33" NBSP "m along the arc",
                                          "12.50" NBSP "m", NULL };
  Fixture fixture;
  g_autoptr (SwFigure) paper = NULL, screen = NULL, flat = NULL;
  SwView view;
  SwPaperPoint at;

  fixture_set_up (&fixture, SLOPE_NOSE, SW_TOE_TRENCH, SW_UNITS_METRIC, texts_path);
  paper = draw (&fixture, PLAN, 180.0, 120.0);
  assert_texts (paper, expected);
  flat = draw (&fixture, FACE_VIEW, 180.0, 120.0);
  g_assert_nonnull (figure_text (flat, "41.33" NBSP "m along the toe"));
  fixture.draw.on_screen = TRUE;
  view = sw_plan_fit (fixture.result, 0, 180.0, 120.0, &fixture.draw, NULL);
  screen = sw_draw_plan (fixture.result, 0, &view, &fixture.draw);
  at = sw_view_to_paper (&view, (SwPoint){ 8.65 + 17.626, 3.311 });
  for (guint i = 0; i < screen->items->len; i++)
    {
      const SwItem *item = &g_array_index (screen->items, SwItem, i);

      if (item->role == SW_ROLE_HANDLE && strcmp (item->object, "A/outline/2") == 0)
        {
          g_assert_cmpfloat_with_epsilon (sw_figure_item_points (screen, item)->x_mm,
                                          at.x_mm, ROUNDED_MM);
          g_assert_cmpfloat_with_epsilon (sw_figure_item_points (screen, item)->y_mm,
                                          at.y_mm, ROUNDED_MM);
        }
    }
  g_assert_cmpuint (count_role (screen, SW_ROLE_HANDLE), ==, 4);
  fixture_tear_down (&fixture);
}

/*
 * Round a nose of radius 10 whose crest is 10 pi long, half a circle: its ends are a quarter
 * turn to either side, so what is 5 m out there lies 15 m beside the axis, level with it. In
 * a bowl the same place is 5 m beside the axis, which is 10 m before the crest.
 */
static void
test_plan_seen_from_above (void)
{
  const SwPoint outline[] = {
    { 0, 0 }, { 10.0 * G_PI, 0 }, { 10.0 * G_PI, 5 }, { 0, 5 }
  };
  const SwPoint section[] = { { 0, 2 }, { 5, 0 } };
  SwFace *face = sw_face_new ("A");
  const double middle_m = 5.0 * G_PI;

  sw_face_set_outline (face, outline, 4);
  sw_face_set_section (face, section, 2);
  face->toe = 1;
  face->crest_radius_m = 10.0;
  for (SwCrestForm form = SW_CREST_STRAIGHT; form <= SW_CREST_BOWL; form++)
    {
      static const double right_m[] = { 5.0 * G_PI, 15.0, 5.0 };
      static const double down_m[] = { 5.0, -10.0, 10.0 };
      SwPoint at;

      face->crest_form = form;
      at = sw_plan_lay (face, outline[2]);
      g_assert_cmpfloat_with_epsilon (at.x_m - middle_m, right_m[form], 1e-9);
      g_assert_cmpfloat_with_epsilon (at.y_m, down_m[form], 1e-9);
      for (double along_m = 0.1; along_m < 10.0 * G_PI; along_m += 1.7)
        for (double out_m = -1.0; out_m < 6.0; out_m += 0.9)
          {
            at = sw_plan_lift (face, sw_plan_lay (face, (SwPoint){ along_m, out_m }));
            g_assert_cmpfloat_with_epsilon (at.x_m, along_m, 1e-9);
            g_assert_cmpfloat_with_epsilon (at.y_m, out_m, 1e-9);
          }
    }
  sw_face_free (face);
}

/* Everything that can be pointed at carries its id. */
static void
test_objects (void)
{
  static const char *const in_section[] = { "A/ground",    "A/tier/0",    "A/tier/1",
                                            "A/trench/0",  "A/section/0", "A/section/3",
                                            "A/stretch/0", NULL };
  static const char *const in_plan[] = { "A/outline", "A/outline/2", "A/run/0",
                                         "A/run/41",  "A/trench/0",  "A/fall-line",
                                         "A/wind",    NULL };
  static const char *const in_face_view[] = { "A/outline",  "A/run/0",     "A/run/41",
                                              "A/trench/0", "A/tier/0",    "A/tier/1",
                                              "A/lap/1-2",  "A/lap/22-23", "A/start",
                                              NULL };
  static const char *const *const objects[] = { in_section, in_plan, in_face_view };
  Fixture fixture;

  fixture_set_up (&fixture, SLOPE_CUTTING, SW_TOE_TRENCH, SW_UNITS_METRIC, texts_path);
  fixture.draw.on_screen = TRUE;
  for (int drawing = 0; drawing < DRAWING_COUNT; drawing++)
    {
      g_autoptr (SwFigure) figure = draw (&fixture, drawing, 180.0, 120.0);

      for (guint i = 0; objects[drawing][i] != NULL; i++)
        if (!figure_has_object (figure, objects[drawing][i]))
          g_error ("no %s in the %s", objects[drawing][i], drawing_names[drawing]);
    }
  fixture_tear_down (&fixture);
}

/* Handles lie on the points they move, and only on screen. */
static void
test_handles (void)
{
  Fixture fixture;
  g_autoptr (SwFigure) paper = NULL, screen = NULL;
  SwView view;
  SwPaperPoint at;
  guint found = 0;

  fixture_set_up (&fixture, SLOPE_CUTTING, SW_TOE_TRENCH, SW_UNITS_METRIC, texts_path);
  paper = draw (&fixture, SECTION, 180.0, 120.0);
  g_assert_cmpuint (count_role (paper, SW_ROLE_HANDLE), ==, 0);
  g_assert_cmpuint (count_role (paper, SW_ROLE_SCALE_BAR), >, 0);
  fixture.draw.on_screen = TRUE;
  view = sw_section_fit (fixture.result, 0, 180.0, 120.0, &fixture.draw, NULL);
  screen = sw_draw_section (fixture.result, 0, &view, &fixture.draw);
  g_assert_cmpuint (count_role (screen, SW_ROLE_HANDLE), ==, 4);
  g_assert_cmpuint (count_role (screen, SW_ROLE_SCALE_BAR), ==, 0);
  /* Point 2 of the section is at 16 m out, 8 m up. */
  at = sw_view_to_paper (&view, (SwPoint){ 16.0, 8.0 });
  for (guint i = 0; i < screen->items->len; i++)
    {
      const SwItem *item = &g_array_index (screen->items, SwItem, i);

      if (item->role != SW_ROLE_HANDLE || strcmp (item->object, "A/section/2") != 0)
        continue;
      g_assert_cmpfloat_with_epsilon (sw_figure_item_points (screen, item)->x_mm, at.x_mm,
                                      1e-9);
      g_assert_cmpfloat_with_epsilon (sw_figure_item_points (screen, item)->y_mm, at.y_mm,
                                      1e-9);
      found++;
    }
  g_assert_cmpuint (found, ==, 1);
  fixture_tear_down (&fixture);
}

/* A run of the face view is as wide and as long on paper as it is on the ground, by the scale. */
static void
test_true_scale (void)
{
  Fixture fixture;
  g_autoptr (SwFigure) figure = NULL;
  double scale = NAN, width = NAN;
  SwView view;

  fixture_set_up (&fixture, SLOPE_SAND, SW_TOE_TRENCH, SW_UNITS_METRIC, texts_path);
  view = sw_face_view_fit (fixture.result, 0, 180.0, 120.0, &fixture.draw, &scale);
  figure = sw_draw_face_view (fixture.result, 0, &view, &fixture.draw);
  for (guint i = 0; i < figure->items->len; i++)
    {
      const SwItem *item = &g_array_index (figure->items, SwItem, i);
      const SwPaperPoint *p = sw_figure_item_points (figure, item);

      if (item->role == SW_ROLE_RUN && strcmp (item->object, "A/run/3") == 0)
        {
          width = p[1].x_mm - p[0].x_mm;
          break;
        }
    }
  g_assert_cmpfloat_with_epsilon (width, 2.44 * 1000.0 / scale, 1e-9);
  fixture_tear_down (&fixture);
}

/*
 * By hand: 23 m are 75.5 ft; at 1 in = 10 ft (1 : 120) they take 191.7 mm, more than there
 * is, at 1 in = 20 ft 95.8 mm. In metric units 1 : 125 would take 184 mm, 1 : 200 takes 115 mm.
 */
static void
test_ruler_scales (void)
{
  static const struct
  {
    SwUnitSystem units;
    double scale;
    const char *words;
  } rows[] = { { SW_UNITS_METRIC, 200.0, "Scale 1 : 200" },
               { SW_UNITS_US, 240.0, "Scale 1 : 240 (1 in = 20 ft)" } };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      Fixture fixture;
      g_autoptr (SwFigure) figure = NULL;
      double scale = NAN;
      SwView view;

      fixture_set_up (&fixture, SLOPE_HOUSE, SW_TOE_TRENCH, rows[i].units, texts_path);
      view = sw_face_view_fit (fixture.result, 0, 180.0, 120.0, &fixture.draw, &scale);
      g_assert_cmpfloat_with_epsilon (scale, rows[i].scale, 1e-9);
      figure = sw_draw_face_view (fixture.result, 0, &view, &fixture.draw);
      g_assert_nonnull (figure_text (figure, rows[i].words));
      fixture_tear_down (&fixture);
    }
}

/* Pins are drawn when they can be told apart, and then every one of them. */
static void
test_pins (void)
{
  Fixture fixture;
  g_autoptr (SwFigure) far = NULL, near = NULL;
  SwView view;
  guint drawn;

  fixture_set_up (&fixture, SLOPE_HOUSE, SW_TOE_TRENCH, SW_UNITS_METRIC, texts_path);
  /* 0.3 m between trench pins is 1.5 mm at 1 : 200, and 0.6 mm at 1 : 500. */
  view = (SwView){ 180.0, 120.0, 10.0, 30.0, 5.0, 5.0 };
  near = sw_draw_face_view (fixture.result, 0, &view, &fixture.draw);
  drawn = count_role (near, SW_ROLE_PIN);
  /* One more in the key. */
  g_assert_cmpuint (drawn, ==, fixture.result->layout->faces[0].n_pins + 1);
  view = (SwView){ 180.0, 120.0, 10.0, 30.0, 2.0, 2.0 };
  far = sw_draw_face_view (fixture.result, 0, &view, &fixture.draw);
  g_assert_cmpuint (count_role (far, SW_ROLE_PIN), ==, 0);
  g_assert_nonnull (figure_text (far, "Pins: see the pin pattern."));
  fixture_tear_down (&fixture);
}

/* Zoomed in on two metres of a wide face, only what is in view is drawn. */
static void
test_zoomed_in (void)
{
  Fixture fixture;
  g_autoptr (SwFigure) figure = NULL;
  SwView view = { 300.0, 200.0, -70.0 * 150.0, -18.0 * 150.0, 150.0, 150.0 };
  static const char *const elsewhere[] = { "Wind", "Crest", "Toe", "Fall line",
                                           "Laying order" };

  fixture_set_up (&fixture, SLOPE_WIDE, SW_TOE_TRENCH, SW_UNITS_METRIC, texts_path);
  g_assert_cmpuint (fixture.result->layout->faces[0].n_pins, >, 5000);
  fixture.draw.on_screen = TRUE;
  figure = sw_draw_face_view (fixture.result, 0, &view, &fixture.draw);
  g_assert_cmpuint (count_role (figure, SW_ROLE_PIN), >, 0);
  g_assert_cmpuint (figure->items->len, <, 200);
  /* Nor is anything named that is out of view. */
  for (guint i = 0; i < G_N_ELEMENTS (elsewhere); i++)
    g_assert_null (figure_text (figure, elsewhere[i]));
  fixture_tear_down (&fixture);
}

/* Water from above is drawn in section and plan where it was seen or its ground was measured,
 * and nowhere else; nothing lies above a heap. */
static void
test_run_on (void)
{
  static const struct
  {
    SlopeKind slope;
    SwAnswer seen;
    double ground_m;
    gboolean drawn;
  } rows[] = { { SLOPE_CUTTING, SW_ANSWER_UNKNOWN, 0.0, FALSE },
               { SLOPE_CUTTING, SW_ANSWER_NO, 0.0, FALSE },
               { SLOPE_CUTTING, SW_ANSWER_YES, 0.0, TRUE },
               { SLOPE_CUTTING, SW_ANSWER_NO, 8.0, TRUE },
               { SLOPE_HEAP, SW_ANSWER_YES, 8.0, FALSE } };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      Fixture fixture;
      g_autoptr (SwJob) job = NULL;

      fixture_set_up (&fixture, rows[i].slope, SW_TOE_TRENCH, SW_UNITS_METRIC,
                      texts_path);
      job = sw_job_copy (fixture.result->job);
      job->site[SW_SITE_RUN_ON] = rows[i].seen;
      job->numbers.values[SW_NUMBER_RUN_ON_M] = rows[i].ground_m;
      sw_result_unref (fixture.result);
      fixture.result = sw_result_new (job, fixture.catalogue);
      for (int drawing = SECTION; drawing <= PLAN; drawing++)
        {
          g_autoptr (SwFigure) figure = draw (&fixture, drawing, 180.0, 120.0);

          assert_tidy (figure, &fixture.measure, drawing_names[drawing]);
          g_assert_true (figure_has_object (figure, "A/run-on") == rows[i].drawn);
          g_assert_true ((figure_text (figure, "Water from above") != NULL)
                         == rows[i].drawn);
        }
      fixture_tear_down (&fixture);
    }
}

/* A face that cannot be laid still has its section and plan; the face view says why it is empty. */
static void
test_not_laid (void)
{
  Fixture fixture;
  g_autoptr (SwJob) job = NULL;
  SwResult *broken;

  fixture_set_up (&fixture, SLOPE_SAND, SW_TOE_TRENCH, SW_UNITS_METRIC, texts_path);
  job = sw_job_copy (fixture.result->job);
  job->roll_width_m = 0.05;
  broken = sw_result_new (job, fixture.catalogue);
  g_assert_cmpint (broken->status, ==, SW_E_ROLL);
  sw_result_unref (fixture.result);
  fixture.result = broken;
  for (int drawing = 0; drawing < DRAWING_COUNT; drawing++)
    {
      g_autoptr (SwFigure) figure = draw (&fixture, drawing, 180.0, 120.0);

      assert_tidy (figure, &fixture.measure, drawing_names[drawing]);
      if (drawing == FACE_VIEW)
        g_assert_nonnull (
            figure_text (figure, sw_texts_get (fixture.texts, "drawing.not-laid")));
      else
        g_assert_true (
            figure_has_object (figure, drawing == PLAN ? "A/outline" : "A/ground"));
    }
  fixture_tear_down (&fixture);
}

/* Same input, same figure. */
static void
test_repeatable (void)
{
  Fixture fixture;

  fixture_set_up (&fixture, SLOPE_CUTTING, SW_TOE_TRENCH, SW_UNITS_METRIC, texts_path);
  for (int drawing = 0; drawing < DRAWING_COUNT; drawing++)
    {
      g_autoptr (SwFigure) first = draw (&fixture, drawing, 180.0, 120.0);
      g_autoptr (SwFigure) second = draw (&fixture, drawing, 180.0, 120.0);
      g_autofree char *a = sw_figure_dump (first), *b = sw_figure_dump (second);

      g_assert_cmpstr (a, ==, b);
    }
  fixture_tear_down (&fixture);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  texts_path = g_getenv ("SW_DRAWING_TEXTS");
  g_assert_nonnull (texts_path);
  g_test_add_func ("/figure/drawings/tidy", test_tidy);
  g_test_add_func ("/figure/drawings/section-texts", test_section_texts);
  g_test_add_func ("/figure/drawings/face-view-texts", test_face_view_texts);
  g_test_add_func ("/figure/drawings/plan-texts", test_plan_texts);
  g_test_add_func ("/figure/drawings/survey", test_survey);
  g_test_add_func ("/figure/drawings/round-crest", test_round_crest);
  g_test_add_func ("/figure/drawings/run-on", test_run_on);
  g_test_add_func ("/figure/drawings/plan-seen-from-above", test_plan_seen_from_above);
  g_test_add_func ("/figure/drawings/objects", test_objects);
  g_test_add_func ("/figure/drawings/handles", test_handles);
  g_test_add_func ("/figure/drawings/true-scale", test_true_scale);
  g_test_add_func ("/figure/drawings/ruler-scales", test_ruler_scales);
  g_test_add_func ("/figure/drawings/pins", test_pins);
  g_test_add_func ("/figure/drawings/zoomed-in", test_zoomed_in);
  g_test_add_func ("/figure/drawings/not-laid", test_not_laid);
  g_test_add_func ("/figure/drawings/repeatable", test_repeatable);
  return g_test_run ();
}
