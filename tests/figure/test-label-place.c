/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "../../src/figure/label-place.h"
#include "boxes.h"
#include <math.h>

/* Every character one em wide, so that widths are known by hand. */
static double
one_em (SwTypeface typeface, double size_mm, const char *text, gpointer data)
{
  return size_mm * (double) g_utf8_strlen (text, -1);
}

static const SwTextMeasure measure = { one_em, NULL, 0.9, 0.2 };

/* Two 4 x 2 boxes: by hand, they touch when their middles are 4 apart, and turned by a
 * right angle when they are 3 apart. */
static void
test_boxes (void)
{
  SwLabelBox a = { 10, 10, 2, 1, 0.0 }, b = { 13.9, 10, 2, 1, 0.0 };

  g_assert_true (sw_label_boxes_meet (a, b));
  b.x_mm = 14.0;
  g_assert_false (sw_label_boxes_meet (a, b));
  b.x_mm = 12.9;
  b.turn_rad = G_PI_2;
  g_assert_true (sw_label_boxes_meet (a, b));
  b.x_mm = 13.0;
  g_assert_false (sw_label_boxes_meet (a, b));
}

/* Turned by 45 degrees a 4 x 4 box reaches 2 sqrt 2 = 2.83 along the axis. */
static void
test_boxes_turned (void)
{
  SwLabelBox a = { 0, 0, 2, 2, 0.0 }, b = { 4.8, 0, 2, 2, G_PI_4 };

  g_assert_true (sw_label_boxes_meet (a, b));
  b.x_mm = 4.85;
  g_assert_false (sw_label_boxes_meet (a, b));
}

static void
wish_at (SwLabels *labels, SwLabelRank rank, const char *text, double x_mm, double y_mm,
         double other_x_mm)
{
  SwLabelSpot spots[2] = { { x_mm, y_mm, 0.0 }, { other_x_mm, y_mm, 0.0 } };

  sw_labels_wish (labels, &(SwLabelWish){ .rank = rank,
                                          .role = SW_ROLE_TEXT,
                                          .size_mm = 2.0,
                                          .text = text,
                                          .spots = spots,
                                          .n_spots = 2 });
}

static double
text_x (const SwFigure *figure, const char *text)
{
  const SwItem *item = figure_text (figure, text);

  g_assert_nonnull (item);
  return sw_figure_item_points (figure, item)->x_mm;
}

/* The more important label keeps the place, whatever the order of asking. */
static void
test_important_first (void)
{
  g_autoptr (SwFigure) figure = sw_figure_new (100.0, 50.0);
  g_autoptr (SwLabels) labels = sw_labels_new (100.0, 50.0, &measure);

  wish_at (labels, SW_LABEL_EXTRA, "less", 50.0, 20.0, 20.0);
  wish_at (labels, SW_LABEL_NEEDED, "more", 50.0, 20.0, 80.0);
  g_assert_cmpuint (sw_labels_place (labels, figure), ==, 0);
  g_assert_cmpfloat_with_epsilon (text_x (figure, "more"), 50.0, 1e-9);
  g_assert_cmpfloat_with_epsilon (text_x (figure, "less"), 20.0, 1e-9);
}

static void
test_left_out (void)
{
  g_autoptr (SwFigure) figure = sw_figure_new (100.0, 50.0);
  g_autoptr (SwLabels) labels = sw_labels_new (100.0, 50.0, &measure);

  wish_at (labels, SW_LABEL_MAIN, "first", 50.0, 20.0, 50.0);
  wish_at (labels, SW_LABEL_MAIN, "second", 51.0, 20.0, 49.0);
  g_assert_cmpuint (sw_labels_place (labels, figure), ==, 1);
  g_assert_nonnull (figure_text (figure, "first"));
  g_assert_null (figure_text (figure, "second"));
}

/* "abcd" is 8 mm wide: its middle cannot be nearer than 4 mm to the edge. */
static void
test_stays_inside (void)
{
  g_autoptr (SwFigure) figure = sw_figure_new (100.0, 50.0);
  g_autoptr (SwLabels) labels = sw_labels_new (100.0, 50.0, &measure);

  wish_at (labels, SW_LABEL_MAIN, "abcd", 3.0, 20.0, 30.0);
  sw_labels_place (labels, figure);
  g_assert_cmpfloat_with_epsilon (text_x (figure, "abcd"), 30.0, 1e-9);
}

static void
test_reserved (void)
{
  g_autoptr (SwFigure) figure = sw_figure_new (100.0, 50.0);
  g_autoptr (SwLabels) labels = sw_labels_new (100.0, 50.0, &measure);

  sw_labels_reserve_rect (labels, 40.0, 15.0, 20.0, 10.0);
  wish_at (labels, SW_LABEL_NEEDED, "abcd", 50.0, 20.0, 80.0);
  sw_labels_place (labels, figure);
  g_assert_cmpfloat_with_epsilon (text_x (figure, "abcd"), 80.0, 1e-9);
}

/* Five hundred labels thrown at one sheet: none of those that stay overlap. */
static void
test_crowd (void)
{
  g_autoptr (SwFigure) figure = sw_figure_new (180.0, 120.0);
  g_autoptr (SwLabels) labels = sw_labels_new (180.0, 120.0, &measure);
  g_autoptr (GRand) dice = g_rand_new_with_seed (7);
  guint left_out, texts = 0;

  for (int i = 0; i < 500; i++)
    {
      g_autofree char *text = g_strdup_printf ("%d", 1000 + i);
      SwLabelSpot spots[3];

      for (int k = 0; k < 3; k++)
        spots[k] = (SwLabelSpot){ g_rand_double_range (dice, 0.0, 180.0),
                                  g_rand_double_range (dice, 0.0, 120.0),
                                  g_rand_double_range (dice, -1.5, 1.5) };
      sw_labels_wish (labels, &(SwLabelWish){ .rank = (SwLabelRank) (i % 4),
                                              .role = SW_ROLE_TEXT,
                                              .size_mm = 2.5,
                                              .text = text,
                                              .spots = spots,
                                              .n_spots = 3 });
    }
  left_out = sw_labels_place (labels, figure);
  for (guint i = 0; i < figure->items->len; i++)
    texts += g_array_index (figure->items, SwItem, i).kind == SW_ITEM_TEXT;
  g_assert_cmpuint (texts + left_out, ==, 500);
  g_assert_cmpuint (texts, >, 50);
  assert_tidy (figure, &measure, "crowd");
}

/* A dimension whose text finds no place leaves no lines behind. */
static void
test_dimension_whole (void)
{
  g_autoptr (SwFigure) figure = sw_figure_new (100.0, 50.0);
  g_autoptr (SwLabels) labels = sw_labels_new (100.0, 50.0, &measure);

  sw_labels_reserve_rect (labels, 0.0, 0.0, 100.0, 50.0);
  sw_labels_dimension (labels, SW_LABEL_NEEDED,
                       (SwLabelSpan){ 20.0, 30.0, 80.0, 30.0, 5.0 }, 2.5, NULL, "60");
  g_assert_cmpuint (sw_labels_place (labels, figure), ==, 1);
  g_assert_cmpuint (figure->items->len, ==, 0);
}

/* A short upright dimension has its text level beside it, between its two ends: its line
 * stands at 50 + 6 = 56, and the text's middle lies further out still. */
static void
test_dimension_upright (void)
{
  g_autoptr (SwFigure) figure = sw_figure_new (100.0, 50.0);
  g_autoptr (SwLabels) labels = sw_labels_new (100.0, 50.0, &measure);
  const SwItem *item;

  sw_labels_dimension (labels, SW_LABEL_NEEDED,
                       (SwLabelSpan){ 50.0, 27.0, 50.0, 20.0, -6.0 }, 2.5, NULL,
                       "150 mm");
  g_assert_cmpuint (sw_labels_place (labels, figure), ==, 0);
  item = figure_text (figure, "150 mm");
  g_assert_nonnull (item);
  g_assert_cmpfloat_with_epsilon (item->turn_rad, 0.0, 1e-9);
  g_assert_cmpfloat (sw_figure_item_points (figure, item)->x_mm, >, 56.0);
  g_assert_cmpfloat (sw_figure_item_points (figure, item)->y_mm, >, 20.0);
  g_assert_cmpfloat (sw_figure_item_points (figure, item)->y_mm, <, 27.0);
}

/* A text beyond the end of a short dimension is reached by its line. By hand: the line goes
 * from 20 to 24; "abcdef" is 15 mm wide, so its middle lies 2 + 7.5 + 2 x 1.6 + 2 x 0.5 =
 * 13.7 from that of the line, at 35.7, and with its air it begins at 35.7 - 8 = 27.7. */
static void
test_dimension_reaches_its_text (void)
{
  g_autoptr (SwFigure) figure = sw_figure_new (100.0, 50.0);
  g_autoptr (SwLabels) labels = sw_labels_new (100.0, 50.0, &measure);
  double furthest = 0.0;

  sw_labels_dimension (labels, SW_LABEL_NEEDED,
                       (SwLabelSpan){ 20.0, 30.0, 24.0, 30.0, 5.0 }, 2.5, NULL, "abcdef");
  g_assert_cmpuint (sw_labels_place (labels, figure), ==, 0);
  g_assert_cmpfloat_with_epsilon (text_x (figure, "abcdef"), 35.7, 1e-9);
  for (guint i = 0; i < figure->items->len; i++)
    {
      const SwItem *item = &g_array_index (figure->items, SwItem, i);

      if (item->kind == SW_ITEM_LINE)
        furthest = fmax (furthest, sw_figure_item_points (figure, item)[1].x_mm);
    }
  g_assert_cmpfloat_with_epsilon (furthest, 27.7, 1e-9);
}

/* "wall" lies at (50, 30), 8 mm wide. A leader from (50, 20) to a label at (50, 40) would go
 * through it, one to (80, 40) passes it by. */
static void
call_out (SwLabels *labels, guint n_spots)
{
  SwLabelSpot spots[2] = { { 50.0, 40.0, 0.0 }, { 80.0, 40.0, 0.0 } };

  wish_at (labels, SW_LABEL_NEEDED, "wall", 50.0, 30.0, 50.0);
  sw_labels_wish (labels, &(SwLabelWish){ .rank = SW_LABEL_MAIN,
                                          .role = SW_ROLE_TEXT,
                                          .style = SW_LABEL_LEADER,
                                          .size_mm = 2.0,
                                          .text = "name",
                                          .target = { 50.0, 20.0 },
                                          .spots = spots,
                                          .n_spots = n_spots });
}

static guint
count_lines (const SwFigure *figure)
{
  guint count = 0;

  for (guint i = 0; i < figure->items->len; i++)
    count += g_array_index (figure->items, SwItem, i).kind == SW_ITEM_LINE;
  return count;
}

static void
test_leader_goes_round_a_text (void)
{
  g_autoptr (SwFigure) figure = sw_figure_new (100.0, 50.0);
  g_autoptr (SwLabels) labels = sw_labels_new (100.0, 50.0, &measure);

  call_out (labels, 2);
  g_assert_cmpuint (sw_labels_place (labels, figure), ==, 0);
  g_assert_cmpfloat_with_epsilon (text_x (figure, "name"), 80.0, 1e-9);
  g_assert_cmpuint (count_lines (figure), ==, 1);
}

/* 20 mm away and no other place: the leader goes behind the text. */
static void
test_leader_that_cannot_go_round (void)
{
  g_autoptr (SwFigure) figure = sw_figure_new (100.0, 50.0);
  g_autoptr (SwLabels) labels = sw_labels_new (100.0, 50.0, &measure);

  call_out (labels, 1);
  g_assert_cmpuint (sw_labels_place (labels, figure), ==, 0);
  g_assert_cmpfloat_with_epsilon (text_x (figure, "name"), 50.0, 1e-9);
  g_assert_cmpuint (count_lines (figure), ==, 1);
}

/* The line from (40, 20) to (60, 20) lies under the first place of "abcd": it goes to the
 * second. Where both lie on it, the text stands on the line rather than not at all. */
static void
test_keeps_off_a_line (void)
{
  for (guint both = 0; both < 2; both++)
    {
      g_autoptr (SwFigure) figure = sw_figure_new (100.0, 50.0);
      g_autoptr (SwLabels) labels = sw_labels_new (100.0, 50.0, &measure);
      SwPaperPoint line[2] = { { 40.0, 20.0 }, { both ? 99.0 : 60.0, 20.0 } };

      sw_labels_keep_off (labels, line, 2);
      wish_at (labels, SW_LABEL_NEEDED, "abcd", 50.0, 20.0, 80.0);
      g_assert_cmpuint (sw_labels_place (labels, figure), ==, 0);
      g_assert_cmpfloat_with_epsilon (text_x (figure, "abcd"), both ? 50.0 : 80.0, 1e-9);
    }
}

/* A text that is only wanted off lines is left out instead. */
static void
test_left_out_rather_than_on_a_line (void)
{
  g_autoptr (SwFigure) figure = sw_figure_new (100.0, 50.0);
  g_autoptr (SwLabels) labels = sw_labels_new (100.0, 50.0, &measure);
  SwPaperPoint line[2] = { { 0.0, 20.0 }, { 100.0, 20.0 } };
  SwLabelSpot spot = { 50.0, 20.5, 0.0 };

  sw_labels_keep_off (labels, line, 2);
  sw_labels_wish (labels, &(SwLabelWish){ .role = SW_ROLE_TEXT,
                                          .style = SW_LABEL_OFF_LINES,
                                          .size_mm = 2.0,
                                          .text = "7",
                                          .spots = &spot,
                                          .n_spots = 1 });
  g_assert_cmpuint (sw_labels_place (labels, figure), ==, 1);
}

static void
dimension (SwLabels *labels, const char *text)
{
  sw_labels_dimension (labels, SW_LABEL_USEFUL,
                       (SwLabelSpan){ 20.0, 20.0, 80.0, 20.0, 5.0 }, 2.5, NULL, text);
}

/* The dimension line lies 5 mm above the line measured, at 15, and a text of higher rank
 * that could stand on it goes to its other place. */
static void
test_keeps_off_a_dimension_to_come (void)
{
  g_autoptr (SwFigure) figure = sw_figure_new (100.0, 50.0);
  g_autoptr (SwLabels) labels = sw_labels_new (100.0, 50.0, &measure);

  wish_at (labels, SW_LABEL_NEEDED, "ab", 30.0, 15.0, 90.0);
  dimension (labels, "60");
  g_assert_cmpuint (sw_labels_place (labels, figure), ==, 0);
  g_assert_cmpfloat_with_epsilon (text_x (figure, "ab"), 90.0, 1e-9);
  g_assert_cmpfloat_with_epsilon (text_x (figure, "60"), 50.0, 1e-9);
}

/* Something stands in the middle of the dimension line: the text moves along it. By hand:
 * 5 mm wide, so (60 - 5) / 2 - 0.5 - 1.6 = 25.4 mm of room to either side, half of it 12.7. */
static void
test_dimension_text_moves_along (void)
{
  g_autoptr (SwFigure) figure = sw_figure_new (100.0, 50.0);
  g_autoptr (SwLabels) labels = sw_labels_new (100.0, 50.0, &measure);

  sw_labels_reserve_rect (labels, 48.0, 12.0, 4.0, 6.0);
  dimension (labels, "60");
  g_assert_cmpuint (sw_labels_place (labels, figure), ==, 0);
  g_assert_cmpfloat_with_epsilon (text_x (figure, "60"), 62.7, 1e-9);
}

/* A text of higher rank has no other place than on the dimension line: that is not drawn. */
static void
test_dimension_crosses_no_text (void)
{
  g_autoptr (SwFigure) figure = sw_figure_new (100.0, 50.0);
  g_autoptr (SwLabels) labels = sw_labels_new (100.0, 50.0, &measure);

  wish_at (labels, SW_LABEL_NEEDED, "ab", 30.0, 15.0, 30.0);
  dimension (labels, "60");
  g_assert_cmpuint (sw_labels_place (labels, figure), ==, 1);
  g_assert_null (figure_text (figure, "60"));
  g_assert_cmpuint (count_lines (figure), ==, 0);
}

/* Beside its thing a name needs no leader; further off it has one. */
static void
test_beside_without_leader (void)
{
  for (guint taken = 0; taken < 2; taken++)
    {
      g_autoptr (SwFigure) figure = sw_figure_new (100.0, 50.0);
      g_autoptr (SwLabels) labels = sw_labels_new (100.0, 50.0, &measure);
      SwLabelSpot spots[2] = { { 50.0, 24.0, 0.0 }, { 80.0, 40.0, 0.0 } };

      if (taken)
        sw_labels_reserve_rect (labels, 48.0, 22.0, 4.0, 4.0);
      sw_labels_wish (labels, &(SwLabelWish){ .role = SW_ROLE_TEXT,
                                              .style = SW_LABEL_LEADER,
                                              .size_mm = 2.0,
                                              .text = "name",
                                              .target = { 50.0, 20.0 },
                                              .spots = spots,
                                              .n_spots = 2,
                                              .n_beside = 1 });
      g_assert_cmpuint (sw_labels_place (labels, figure), ==, 0);
      g_assert_cmpuint (count_lines (figure), ==, taken);
    }
}

/* "abcdefgh" would reach from 42 to 58 and over the line at 56; "7" does not. On a sheet
 * without that line the whole name is said. */
static void
test_shorter_where_the_name_has_no_place (void)
{
  for (guint lined = 0; lined < 2; lined++)
    {
      g_autoptr (SwFigure) figure = sw_figure_new (100.0, 50.0);
      g_autoptr (SwLabels) labels = sw_labels_new (100.0, 50.0, &measure);
      SwPaperPoint line[2] = { { 56.0, 0.0 }, { 56.0, 50.0 } };
      SwLabelSpot spot = { 50.0, 20.0, 0.0 };

      if (lined)
        sw_labels_keep_off (labels, line, 2);
      sw_labels_wish (labels, &(SwLabelWish){ .role = SW_ROLE_TEXT,
                                              .size_mm = 2.0,
                                              .text = "abcdefgh",
                                              .shorter = "7",
                                              .spots = &spot,
                                              .n_spots = 1 });
      g_assert_cmpuint (sw_labels_place (labels, figure), ==, 0);
      g_assert_nonnull (figure_text (figure, lined ? "7" : "abcdefgh"));
      g_assert_null (figure_text (figure, lined ? "abcdefgh" : "7"));
    }
}

/* The label last asked for may stand on its own line; one that ranks before it may not. */
static void
test_keeps_others_off (void)
{
  g_autoptr (SwFigure) figure = sw_figure_new (100.0, 50.0);
  g_autoptr (SwLabels) labels = sw_labels_new (100.0, 50.0, &measure);
  SwPaperPoint line[2] = { { 40.0, 20.0 }, { 60.0, 20.0 } };

  wish_at (labels, SW_LABEL_NEEDED, "ab", 50.0, 20.0, 80.0);
  wish_at (labels, SW_LABEL_EXTRA, "cd", 50.0, 20.0, 20.0);
  sw_labels_keep_others_off (labels, line, 2);
  g_assert_cmpuint (sw_labels_place (labels, figure), ==, 0);
  g_assert_cmpfloat_with_epsilon (text_x (figure, "ab"), 80.0, 1e-9);
  g_assert_cmpfloat_with_epsilon (text_x (figure, "cd"), 50.0, 1e-9);
}

/* What lies off the sheet has no name on it, but beside it. */
static void
test_nothing_named_out_of_view (void)
{
  for (guint n_beside = 0; n_beside < 2; n_beside++)
    {
      g_autoptr (SwFigure) figure = sw_figure_new (100.0, 50.0);
      g_autoptr (SwLabels) labels = sw_labels_new (100.0, 50.0, &measure);
      SwLabelSpot spot = { 90.0, 20.0, 0.0 };

      sw_labels_wish (labels, &(SwLabelWish){ .role = SW_ROLE_TEXT,
                                              .style = SW_LABEL_LEADER,
                                              .size_mm = 2.0,
                                              .text = "name",
                                              .target = { 101.0, 20.0 },
                                              .spots = &spot,
                                              .n_spots = 1,
                                              .n_beside = n_beside });
      g_assert_cmpuint (sw_labels_place (labels, figure), ==, 1 - n_beside);
    }
}

/* By hand: round a 4 x 2 thing at (10, 10), 1 mm off it, a text of 6 x 2: above it at
 * 10 - 1 - 1 - 1 = 7, to its right at 10 + 2 + 1 + 3 = 16. */
static void
test_round_a_thing (void)
{
  SwLabelSpot spots[SW_LABEL_WAYS];

  sw_label_round ((SwBoxOnPaper){ 8.0, 9.0, 12.0, 11.0 }, 3.0, 1.0, 1.0, spots);
  g_assert_cmpfloat_with_epsilon (spots[0].x_mm, 10.0, 1e-9);
  g_assert_cmpfloat_with_epsilon (spots[0].y_mm, 7.0, 1e-9);
  g_assert_cmpfloat_with_epsilon (spots[2].x_mm, 16.0, 1e-9);
  g_assert_cmpfloat_with_epsilon (spots[2].y_mm, 10.0, 1e-9);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/figure/label-place/boxes", test_boxes);
  g_test_add_func ("/figure/label-place/boxes-turned", test_boxes_turned);
  g_test_add_func ("/figure/label-place/important-first", test_important_first);
  g_test_add_func ("/figure/label-place/left-out", test_left_out);
  g_test_add_func ("/figure/label-place/stays-inside", test_stays_inside);
  g_test_add_func ("/figure/label-place/reserved", test_reserved);
  g_test_add_func ("/figure/label-place/crowd", test_crowd);
  g_test_add_func ("/figure/label-place/dimension-whole", test_dimension_whole);
  g_test_add_func ("/figure/label-place/dimension-upright", test_dimension_upright);
  g_test_add_func ("/figure/label-place/dimension-reaches-its-text",
                   test_dimension_reaches_its_text);
  g_test_add_func ("/figure/label-place/leader-round-a-text",
                   test_leader_goes_round_a_text);
  g_test_add_func ("/figure/label-place/leader-behind-a-text",
                   test_leader_that_cannot_go_round);
  g_test_add_func ("/figure/label-place/keeps-off-a-line", test_keeps_off_a_line);
  g_test_add_func ("/figure/label-place/left-out-rather-than-on-a-line",
                   test_left_out_rather_than_on_a_line);
  g_test_add_func ("/figure/label-place/keeps-off-a-dimension-to-come",
                   test_keeps_off_a_dimension_to_come);
  g_test_add_func ("/figure/label-place/dimension-text-moves-along",
                   test_dimension_text_moves_along);
  g_test_add_func ("/figure/label-place/dimension-crosses-no-text",
                   test_dimension_crosses_no_text);
  g_test_add_func ("/figure/label-place/beside-without-leader",
                   test_beside_without_leader);
  g_test_add_func ("/figure/label-place/shorter-where-the-name-has-no-place",
                   test_shorter_where_the_name_has_no_place);
  g_test_add_func ("/figure/label-place/keeps-others-off", test_keeps_others_off);
  g_test_add_func ("/figure/label-place/nothing-named-out-of-view",
                   test_nothing_named_out_of_view);
  g_test_add_func ("/figure/label-place/round-a-thing", test_round_a_thing);
  return g_test_run ();
}
