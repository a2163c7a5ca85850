/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include <math.h>

#include <slopewright/figure/mark.h>

/* A made-up font: every byte half an em wide. */
static double
half_em_width_mm (SwTypeface typeface, double size_mm, const char *text, gpointer data)
{
  return 0.5 * size_mm * (double) strlen (text);
}

static const SwTextMeasure half_em = { .width_mm = half_em_width_mm,
                                       .ascent = 0.9,
                                       .descent = 0.2 };

static const SwItem *
find_item (const SwFigure *figure, SwItemKind kind, SwRole role, guint nth)
{
  for (guint i = 0; i < figure->items->len; i++)
    {
      const SwItem *item = &g_array_index (figure->items, SwItem, i);
      if (item->kind == kind && item->role == role && nth-- == 0)
        return item;
    }
  return NULL;
}

/* The head's tip is the end asked for and the head is symmetric about the shaft. */
static void
test_arrow (void)
{
  for (double angle_rad = 0.0; angle_rad < 6.2; angle_rad += 0.37)
    {
      g_autoptr (SwFigure) figure = sw_figure_new (100.0, 100.0);
      const double x_mm = 50.0 + 20.0 * cos (angle_rad);
      const double y_mm = 50.0 + 20.0 * sin (angle_rad);
      const SwItem *head;
      const SwPaperPoint *p;

      sw_mark_arrow (figure, SW_ROLE_WIND, 50.0, 50.0, x_mm, y_mm);
      head = find_item (figure, SW_ITEM_AREA, SW_ROLE_WIND, 0);
      g_assert_nonnull (head);
      p = sw_figure_item_points (figure, head);
      g_assert_cmpfloat_with_epsilon (p[0].x_mm, x_mm, 1e-9);
      g_assert_cmpfloat_with_epsilon (p[0].y_mm, y_mm, 1e-9);
      g_assert_cmpfloat_with_epsilon (hypot (p[1].x_mm - 50.0, p[1].y_mm - 50.0),
                                      hypot (p[2].x_mm - 50.0, p[2].y_mm - 50.0), 1e-9);
    }
}

static void
test_arrow_of_no_length (void)
{
  g_autoptr (SwFigure) figure = sw_figure_new (10.0, 10.0);

  sw_mark_arrow (figure, SW_ROLE_WIND, 5.0, 5.0, 5.0, 5.0);
  g_assert_cmpuint (figure->items->len, ==, 0);
}

/* By hand: measured from (10, 50) to (70, 50), 8 mm to the left is y = 42. */
static void
test_dimension_inside (void)
{
  g_autoptr (SwFigure) figure = sw_figure_new (100.0, 100.0);
  const SwPaperPoint *left_head, *right_head, *text;

  sw_mark_dimension (figure, &half_em, 10.0, 50.0, 70.0, 50.0, 8.0, 2.5, "6.00 m");
  left_head = sw_figure_item_points (
      figure, find_item (figure, SW_ITEM_AREA, SW_ROLE_DIMENSION, 0));
  right_head = sw_figure_item_points (
      figure, find_item (figure, SW_ITEM_AREA, SW_ROLE_DIMENSION, 1));
  text =
      sw_figure_item_points (figure, find_item (figure, SW_ITEM_TEXT, SW_ROLE_TEXT, 0));
  g_assert_cmpfloat_with_epsilon (left_head[0].x_mm, 10.0, 1e-9);
  g_assert_cmpfloat_with_epsilon (left_head[0].y_mm, 42.0, 1e-9);
  g_assert_cmpfloat_with_epsilon (right_head[0].x_mm, 70.0, 1e-9);
  g_assert_cmpfloat_with_epsilon (right_head[0].y_mm, 42.0, 1e-9);
  g_assert_cmpfloat_with_epsilon (text[0].x_mm, 40.0, 1e-9);
  /* Arrows point away from the middle: their bases lie between the tips. */
  g_assert_cmpfloat (left_head[1].x_mm, >, 10.0);
  g_assert_cmpfloat (right_head[1].x_mm, <, 70.0);
}

/* 3 mm hold no label of 7.5 mm: arrows outside, label behind the second end. */
static void
test_dimension_outside (void)
{
  g_autoptr (SwFigure) figure = sw_figure_new (100.0, 100.0);
  const SwPaperPoint *head, *text;

  sw_mark_dimension (figure, &half_em, 10.0, 50.0, 13.0, 50.0, -5.0, 2.5, "0.30 m");
  head = sw_figure_item_points (figure,
                                find_item (figure, SW_ITEM_AREA, SW_ROLE_DIMENSION, 0));
  text =
      sw_figure_item_points (figure, find_item (figure, SW_ITEM_TEXT, SW_ROLE_TEXT, 0));
  g_assert_cmpfloat_with_epsilon (head[0].x_mm, 10.0, 1e-9);
  g_assert_cmpfloat_with_epsilon (head[0].y_mm, 55.0, 1e-9);
  g_assert_cmpfloat (head[1].x_mm, <, 10.0);
  g_assert_cmpfloat (text[0].x_mm - 7.5 / 2.0, >, 13.0);
}

/* Text never stands on its head: its up direction never points down the page. */
static void
test_dimension_reads (void)
{
  for (double angle_rad = 0.0; angle_rad < 6.28; angle_rad += G_PI / 12.0)
    {
      g_autoptr (SwFigure) figure = sw_figure_new (100.0, 100.0);
      const SwItem *text;

      sw_mark_dimension (figure, &half_em, 50.0, 50.0, 50.0 + 40.0 * cos (angle_rad),
                         50.0 - 40.0 * sin (angle_rad), 0.0, 2.5, "4 m");
      text = find_item (figure, SW_ITEM_TEXT, SW_ROLE_TEXT, 0);
      g_assert_cmpfloat (text->turn_rad, >, -G_PI_2 + 1e-7);
      g_assert_cmpfloat (text->turn_rad, <, G_PI_2 + 1e-5);
      g_assert_cmpfloat_with_epsilon (fabs (sin (text->turn_rad - angle_rad)), 0.0, 1e-9);
    }
}

static void
test_leader_sides (void)
{
  g_autoptr (SwFigure) figure = sw_figure_new (100.0, 100.0);
  const SwPaperPoint *right, *left;

  sw_mark_leader (figure, &half_em, 50.0, 50.0, 60.0, 40.0, 2.0, "abcd");
  sw_mark_leader (figure, &half_em, 50.0, 50.0, 40.0, 40.0, 2.0, "abcd");
  right =
      sw_figure_item_points (figure, find_item (figure, SW_ITEM_TEXT, SW_ROLE_TEXT, 0));
  left =
      sw_figure_item_points (figure, find_item (figure, SW_ITEM_TEXT, SW_ROLE_TEXT, 1));
  /* The label is 4 mm wide and its middle 2 mm and a pad past the line's end. */
  g_assert_cmpfloat (right[0].x_mm, >, 62.0);
  g_assert_cmpfloat (left[0].x_mm, <, 38.0);
}

static double
hatch_length_mm (const GArray *ends)
{
  double sum_mm = 0.0;

  for (guint i = 0; i + 1 < ends->len; i += 2)
    {
      const SwPaperPoint *a = &g_array_index (ends, SwPaperPoint, i);
      sum_mm += hypot (a[1].x_mm - a[0].x_mm, a[1].y_mm - a[0].y_mm);
    }
  return sum_mm;
}

/*
 * The length of hatch times its spacing tends to the area. Source: Cavalieri.
 * The L shape is 40 x 40 less 20 x 20 = 1200 mm2.
 */
static void
test_hatch_area (void)
{
  const SwPaperPoint shape[] = { { 3.0, 5.0 },   { 43.0, 5.0 },  { 43.0, 25.0 },
                                 { 23.0, 25.0 }, { 23.0, 45.0 }, { 3.0, 45.0 } };
  g_autoptr (GArray) ends = g_array_new (FALSE, FALSE, sizeof (SwPaperPoint));

  for (int sense = -1; sense <= 1; sense += 2)
    {
      sw_mark_hatch (shape, G_N_ELEMENTS (shape), 0.1 * sense, 60.0, 60.0, ends);
      g_assert_cmpfloat_with_epsilon (hatch_length_mm (ends) * 0.1, 1200.0, 1.0);
    }
}

/* A rising line climbs to the right on paper, where y grows downwards. */
static void
test_hatch_direction (void)
{
  const SwPaperPoint square[] = { { 0, 0 }, { 10, 0 }, { 10, 10 }, { 0, 10 } };
  g_autoptr (GArray) ends = g_array_new (FALSE, FALSE, sizeof (SwPaperPoint));

  for (int sense = -1; sense <= 1; sense += 2)
    {
      sw_mark_hatch (square, G_N_ELEMENTS (square), 2.0 * sense, 60.0, 60.0, ends);
      g_assert_cmpuint (ends->len, >=, 10);
      g_assert_cmpuint (ends->len % 2, ==, 0);
      for (guint i = 0; i < ends->len; i += 2)
        {
          const SwPaperPoint *a = &g_array_index (ends, SwPaperPoint, i);
          const double rise_mm = a[0].y_mm - a[1].y_mm;
          const double run_mm = a[1].x_mm - a[0].x_mm;
          g_assert_cmpfloat_with_epsilon (rise_mm, sense * run_mm, 1e-9);
        }
    }
}

/* Two halves hatched apart have the same lines as the whole: one grid. */
static void
test_hatch_joins (void)
{
  const SwPaperPoint whole[] = { { 0, 0 }, { 20, 0 }, { 20, 7 }, { 0, 7 } };
  const SwPaperPoint left[] = { { 0, 0 }, { 9, 0 }, { 9, 7 }, { 0, 7 } };
  const SwPaperPoint right[] = { { 9, 0 }, { 20, 0 }, { 20, 7 }, { 9, 7 } };
  g_autoptr (GArray) ends = g_array_new (FALSE, FALSE, sizeof (SwPaperPoint));
  double whole_mm, parts_mm;

  sw_mark_hatch (whole, 4, 1.3, 60.0, 60.0, ends);
  whole_mm = hatch_length_mm (ends);
  sw_mark_hatch (left, 4, 1.3, 60.0, 60.0, ends);
  parts_mm = hatch_length_mm (ends);
  sw_mark_hatch (right, 4, 1.3, 60.0, 60.0, ends);
  parts_mm += hatch_length_mm (ends);
  g_assert_cmpfloat_with_epsilon (whole_mm, parts_mm, 1e-9);
}

/* A field of 200 m by 200 m seen through a sheet of 60 x 60 mm at 1 mm: the sheet's
   diagonal, 85 mm, holds 85 lines. Points that are no numbers give none. */
static void
test_hatch_ends_at_sheet (void)
{
  const SwPaperPoint field[] = {
    { -1e5, -1e5 }, { 1e5, -1e5 }, { 1e5, 1e5 }, { -1e5, 1e5 }
  };
  const SwPaperPoint broken[] = { { NAN, 0.0 }, { 10.0, NAN }, { INFINITY, 10.0 } };
  g_autoptr (GArray) ends = g_array_new (FALSE, FALSE, sizeof (SwPaperPoint));

  sw_mark_hatch (field, G_N_ELEMENTS (field), 1.0, 60.0, 60.0, ends);
  g_assert_cmpuint (ends->len / 2, ==, 85);
  sw_mark_hatch (broken, G_N_ELEMENTS (broken), 1.0, 60.0, 60.0, ends);
  g_assert_cmpuint (ends->len, ==, 0);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/figure/mark/arrow", test_arrow);
  g_test_add_func ("/figure/mark/arrow-of-no-length", test_arrow_of_no_length);
  g_test_add_func ("/figure/mark/dimension-inside", test_dimension_inside);
  g_test_add_func ("/figure/mark/dimension-outside", test_dimension_outside);
  g_test_add_func ("/figure/mark/dimension-reads", test_dimension_reads);
  g_test_add_func ("/figure/mark/leader-sides", test_leader_sides);
  g_test_add_func ("/figure/mark/hatch-area", test_hatch_area);
  g_test_add_func ("/figure/mark/hatch-direction", test_hatch_direction);
  g_test_add_func ("/figure/mark/hatch-joins", test_hatch_joins);
  g_test_add_func ("/figure/mark/hatch-ends-at-sheet", test_hatch_ends_at_sheet);
  return g_test_run ();
}
