/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "table.h"
#include <string.h>

/*
 * Every character is half an em wide, bold ones 0.6 em: widths can be counted
 * by hand. Body text is 3.2 mm (type.c), so a character is 1.6 mm.
 */
#define CHARACTER_MM 1.6

static double
counted_width (SwTypeface typeface, double size_mm, const char *text, gpointer data)
{
  return (typeface == SW_FACE_BOLD ? 0.6 : 0.5) * size_mm
         * (double) g_utf8_strlen (text, -1);
}

static const SwTextMeasure measure = { counted_width, NULL, 0.9, 0.25 };
static const SwPen pen = { &measure, 1.0, 0.0 };

static char *
line_text (const SwTextBlock *block, guint index)
{
  const SwTextLine *line = &g_array_index (block->lines, SwTextLine, index);

  return g_strndup (block->text + line->from, line->to - line->from);
}

static void
assert_lines (const char *markup, double width_mm, const char *const *want)
{
  g_autoptr (SwTextBlock) block =
      sw_text_block_new (&pen, SW_STYLE_BODY, markup, width_mm);

  g_assert_cmpuint (block->lines->len, ==, g_strv_length ((char **) want));
  for (guint i = 0; want[i] != NULL; i++)
    {
      g_autofree char *got = line_text (block, i);

      g_assert_cmpstr (got, ==, want[i]);
    }
}

/* Hand count: ten characters are 16 mm. */
static void
test_wrap (void)
{
  assert_lines ("lay the run down", 10 * CHARACTER_MM,
                (const char *[]){ "lay the", "run down", NULL });
  assert_lines ("", 10 * CHARACTER_MM, (const char *[]){ "", NULL });
  assert_lines ("one\ntwo\n", 10 * CHARACTER_MM,
                (const char *[]){ "one", "two", "", NULL });
}

/* "0123456789" needs exactly the width that there is. */
static void
test_wrap_exact_fit (void)
{
  assert_lines ("0123456789 x", 10 * CHARACTER_MM,
                (const char *[]){ "0123456789", "x", NULL });
  assert_lines ("0123 56789 x", 10 * CHARACTER_MM,
                (const char *[]){ "0123 56789", "x", NULL });
}

static void
test_wrap_long_word (void)
{
  assert_lines ("a 0123456789ABCDEF b", 10 * CHARACTER_MM,
                (const char *[]){ "a", "0123456789", "ABCDEF b", NULL });
  /* Narrower than one character: one a line, none lost. */
  assert_lines ("abc", 0.1, (const char *[]){ "a", "b", "c", NULL });
}

static void
test_wrap_no_break_space (void)
{
  assert_lines ("cut 12.50\xc2\xa0m", 10 * CHARACTER_MM,
                (const char *[]){ "cut", "12.50\xc2\xa0m", NULL });
}

static void
test_markup (void)
{
  g_autoptr (SwTextBlock) block =
      sw_text_block_new (&pen, SW_STYLE_BODY, "a*b*c 2**3\ttab", 1000.0);
  g_autofree char *escaped = sw_markup_escape ("2*3*4");
  g_autoptr (SwTextBlock) user = sw_text_block_new (&pen, SW_STYLE_BODY, escaped, 1000.0);

  g_assert_cmpstr (block->text, ==, "abc 2*3 tab");
  g_assert_cmpmem (block->bold, 4, "\0\1\0\0", 4);
  /* Ten regular characters and a bold one of 0.6 em. */
  g_assert_cmpfloat_with_epsilon (block->widest_mm, 10 * 1.6 + 0.6 * 3.2, 1e-9);
  g_assert_cmpstr (user->text, ==, "2*3*4");
}

/* A slug of that height whose text says which it is. */
static void
add_slug (SwFlow *flow, double height_mm, const char *text)
{
  SwFigure *figure = sw_figure_new (sw_flow_width_mm (flow), height_mm);

  sw_pen_write (&pen, SW_STYLE_BODY, figure, SW_ROLE_TEXT, 0.0, 0.0, SW_ALIGN_LEFT, text);
  sw_flow_add (flow, figure);
}

/* All texts of a page, in order, joined by "|". */
static char *
page_texts (const SwFigure *page)
{
  GString *texts = g_string_new (NULL);

  for (guint i = 0; i < page->items->len; i++)
    {
      const SwItem *item = &g_array_index (page->items, SwItem, i);

      if (item->kind == SW_ITEM_TEXT)
        g_string_append_printf (texts, "%s%s", texts->len > 0 ? "|" : "", item->text);
    }
  return g_string_free (texts, FALSE);
}

static void
assert_pages (const SwFlow *flow, double height_mm, const char *const *want)
{
  g_autoptr (GPtrArray) pages = sw_flow_to_pages (flow, height_mm);

  g_assert_cmpuint (pages->len, ==, g_strv_length ((char **) want));
  for (guint i = 0; want[i] != NULL; i++)
    {
      g_autofree char *got = page_texts (g_ptr_array_index (pages, i));

      g_assert_cmpstr (got, ==, want[i]);
    }
}

/* Three times 10 mm and two spaces of 5 mm are exactly 40 mm. */
static void
test_exact_page (void)
{
  g_autoptr (SwFlow) flow = sw_flow_new (&pen, 100.0);

  for (guint i = 0; i < 3; i++)
    {
      sw_flow_space (flow, 5.0);
      add_slug (flow, 10.0, (const char *[]){ "a", "b", "c" }[i]);
    }
  g_assert_cmpfloat_with_epsilon (sw_flow_height_mm (flow), 40.0, 1e-9);
  assert_pages (flow, 40.0, (const char *[]){ "a|b|c", NULL });
  assert_pages (flow, 39.9, (const char *[]){ "a|b", "c", NULL });
  g_assert_cmpfloat_with_epsilon (sw_flow_room_mm (flow, 45.0), 5.0, 1e-9);
}

static void
test_empty_flow_is_a_page (void)
{
  g_autoptr (SwFlow) flow = sw_flow_new (&pen, 100.0);

  assert_pages (flow, 40.0, (const char *[]){ "", NULL });
}

static void
test_heading_never_alone (void)
{
  g_autoptr (SwFlow) flow = sw_flow_new (&pen, 100.0);

  add_slug (flow, 28.0, "above");
  sw_flow_heading (flow, "Heading");
  add_slug (flow, 10.0, "below");
  /* The heading alone would fit on 38 mm: 28 + 5 + 4.3 x 1.32 is more, so allow 39. */
  assert_pages (flow, 39.0, (const char *[]){ "above", "Heading|below", NULL });
}

static void
test_chain_higher_than_page (void)
{
  g_autoptr (SwFlow) flow = sw_flow_new (&pen, 100.0);

  for (guint i = 0; i < 5; i++)
    {
      add_slug (flow, 10.0, (const char *[]){ "a", "b", "c", "d", "e" }[i]);
      sw_flow_tie (flow);
    }
  assert_pages (flow, 25.0, (const char *[]){ "a|b", "c|d", "e", NULL });
}

static void
test_break (void)
{
  g_autoptr (SwFlow) flow = sw_flow_new (&pen, 100.0);

  add_slug (flow, 10.0, "a");
  sw_flow_break (flow);
  add_slug (flow, 10.0, "b");
  assert_pages (flow, 100.0, (const char *[]){ "a", "b", NULL });
}

/* Two lines of a paragraph at least on both sides of a page's end. */
static void
test_paragraph_ends (void)
{
  g_autoptr (SwFlow) flow = sw_flow_new (&pen, 3 * CHARACTER_MM);
  double line_mm = sw_pen_line_mm (&pen, SW_STYLE_BODY);

  sw_flow_text (flow, SW_STYLE_BODY, SW_ROLE_TEXT, "one two six ten");
  assert_pages (flow, 3.0 * line_mm, (const char *[]){ "one|two", "six|ten", NULL });
}

static SwTable *
numbered_table (guint n_rows)
{
  const SwColumn columns[] = { { "Run", SW_CELL_NUMBER, 0.0 },
                               { "Note", SW_CELL_TEXT, 0.0 } };
  SwTable *table = sw_table_new (&pen, SW_STYLE_BODY, columns, 2);

  for (guint i = 1; i <= n_rows; i++)
    {
      g_autofree char *number = g_strdup_printf ("r%u", i);

      sw_table_row (table, number, "x", NULL);
    }
  return table;
}

static guint
count_text (const GPtrArray *pages, const char *text)
{
  guint count = 0;

  for (guint p = 0; p < pages->len; p++)
    {
      const SwFigure *page = g_ptr_array_index (pages, p);

      for (guint i = 0; i < page->items->len; i++)
        {
          const SwItem *item = &g_array_index (page->items, SwItem, i);

          count += item->kind == SW_ITEM_TEXT && g_strcmp0 (item->text, text) == 0;
        }
    }
  return count;
}

static void
test_table_of_60_rows (void)
{
  g_autoptr (SwFlow) flow = sw_flow_new (&pen, 100.0);
  g_autoptr (GPtrArray) pages = NULL;

  sw_flow_table (flow, numbered_table (60));
  pages = sw_flow_to_pages (flow, 100.0);
  g_assert_cmpuint (pages->len, >, 3);
  g_assert_cmpuint (count_text (pages, "Run"), ==, pages->len);
  for (guint p = 0; p < pages->len; p++)
    {
      g_autofree char *texts = page_texts (g_ptr_array_index (pages, p));

      g_assert_true (g_str_has_prefix (texts, "Run|Note|r"));
    }
  for (guint i = 1; i <= 60; i++)
    {
      g_autofree char *number = g_strdup_printf ("r%u", i);

      g_assert_cmpuint (count_text (pages, number), ==, 1);
    }
}

/* A row is 3.2 x 1.32 + 2 x 0.9 = 6.024 mm, the head the same: head and n rows fill a
 * page of 6.024 (n + 1); one row more takes its neighbour along. */
static void
test_last_row_not_alone (void)
{
  g_autoptr (SwFlow) flow = sw_flow_new (&pen, 100.0);

  sw_flow_table (flow, numbered_table (4));
  assert_pages (flow, 6.024 * 4,
                (const char *[]){ "Run|Note|r1|x|r2|x", "Run|Note|r3|x|r4|x", NULL });
  assert_pages (flow, 6.024 * 5,
                (const char *[]){ "Run|Note|r1|x|r2|x|r3|x|r4|x", NULL });
}

static void
test_table_in_a_figure_has_its_head (void)
{
  g_autoptr (SwFlow) flow = sw_flow_new (&pen, 100.0);
  g_autoptr (SwFigure) figure = NULL;
  g_autofree char *texts = NULL;

  sw_flow_table (flow, numbered_table (1));
  figure = sw_flow_to_figure (flow);
  texts = page_texts (figure);
  g_assert_cmpstr (texts, ==, "Run|Note|r1|x");
  g_assert_cmpfloat_with_epsilon (figure->height_mm, 2.0 * 6.024, 1e-9);
}

/* A cell of 200 words in a narrow column: higher than a page, yet nothing is lost. */
static void
test_row_higher_than_page (void)
{
  const SwColumn columns[] = { { "", SW_CELL_TEXT, 30.0 }, { "", SW_CELL_TEXT, 0.0 } };
  SwTable *table = sw_table_new (&pen, SW_STYLE_BODY, columns, 2);
  g_autoptr (SwFlow) flow = sw_flow_new (&pen, 60.0);
  g_autoptr (GPtrArray) pages = NULL;
  g_autoptr (GString) words = g_string_new (NULL);
  guint count = 0;

  for (guint i = 0; i < 200; i++)
    g_string_append (words, "slope ");
  sw_table_row (table, "a", words->str, NULL);
  sw_flow_table (flow, table);
  pages = sw_flow_to_pages (flow, 120.0);
  g_assert_cmpuint (pages->len, >, 1);
  for (guint p = 0; p < pages->len; p++)
    {
      g_autofree char *texts = page_texts (g_ptr_array_index (pages, p));

      for (const char *c = texts; (c = strstr (c, "slope")) != NULL; c++)
        count++;
    }
  g_assert_cmpuint (count, ==, 200);
}

static void
test_number_never_wraps (void)
{
  const SwColumn columns[] = { { "", SW_CELL_NUMBER, 0.0 }, { "", SW_CELL_TEXT, 0.0 } };
  SwTable *table = sw_table_new (&pen, SW_STYLE_BODY, columns, 2);
  g_autoptr (SwFlow) flow = sw_flow_new (&pen, 60.0);
  g_autoptr (SwFigure) figure = NULL;
  g_autofree char *texts = NULL;

  sw_table_row (table, "13.42 m and more", "words that have to go on in a second line",
                NULL);
  sw_flow_table (flow, table);
  figure = sw_flow_to_figure (flow);
  texts = page_texts (figure);
  g_assert_true (g_str_has_prefix (texts, "13.42 m and more|"));
}

static guint
count_roles (const SwFigure *figure, SwRole role)
{
  guint count = 0;

  for (guint i = 0; i < figure->items->len; i++)
    count += g_array_index (figure->items, SwItem, i).role == role;
  return count;
}

static void
add_box (SwFlow *flow, guint n_lines)
{
  SwFlow *inner = sw_flow_new (&pen, sw_flow_box_width_mm (sw_flow_width_mm (flow)));

  for (guint i = 0; i < n_lines; i++)
    sw_flow_text (inner, SW_STYLE_BODY, SW_ROLE_TEXT, "line");
  sw_flow_box (flow, SW_ROLE_STOP, inner);
}

static void
test_box (void)
{
  g_autoptr (SwFlow) small = sw_flow_new (&pen, 100.0), large = sw_flow_new (&pen, 100.0);
  g_autoptr (GPtrArray) pages = NULL;
  g_autoptr (SwFigure) framed = NULL;

  add_box (small, 3);
  framed = sw_flow_to_figure (small);
  g_assert_cmpuint (count_roles (framed, SW_ROLE_STOP), ==, 1);
  add_box (large, 100);
  pages = sw_flow_to_pages (large, 100.0);
  g_assert_cmpuint (count_text (pages, "line"), ==, 100);
}

static void
test_boxes_are_equal (void)
{
  g_autoptr (SwFlow) flow = sw_flow_new (&pen, 100.0);
  SwFlow *inners[2];
  g_autoptr (SwFigure) figure = NULL;
  double heights[2];
  guint count = 0;

  for (guint i = 0; i < 2; i++)
    {
      inners[i] =
          sw_flow_new (&pen, sw_flow_box_width_mm (sw_flow_share_mm (flow, 4.0, 2)));
      for (guint lines = 0; lines < 1 + 2 * i; lines++)
        sw_flow_text (inners[i], SW_STYLE_BODY, SW_ROLE_TEXT, "line");
    }
  sw_flow_boxes (flow, SW_ROLE_FRAME, 4.0, inners, 2);
  figure = sw_flow_to_figure (flow);
  for (guint i = 0; i < figure->items->len; i++)
    {
      const SwItem *item = &g_array_index (figure->items, SwItem, i);
      const SwPaperPoint *points = sw_figure_item_points (figure, item);

      if (item->kind == SW_ITEM_AREA)
        heights[count++] = points[2].y_mm - points[0].y_mm;
    }
  g_assert_cmpuint (count, ==, 2);
  g_assert_cmpfloat_with_epsilon (heights[0], heights[1], 1e-9);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/sheet/type/wrap", test_wrap);
  g_test_add_func ("/sheet/type/wrap-exact-fit", test_wrap_exact_fit);
  g_test_add_func ("/sheet/type/wrap-long-word", test_wrap_long_word);
  g_test_add_func ("/sheet/type/wrap-no-break-space", test_wrap_no_break_space);
  g_test_add_func ("/sheet/type/markup", test_markup);
  g_test_add_func ("/sheet/flow/exact-page", test_exact_page);
  g_test_add_func ("/sheet/flow/empty-is-a-page", test_empty_flow_is_a_page);
  g_test_add_func ("/sheet/flow/heading-never-alone", test_heading_never_alone);
  g_test_add_func ("/sheet/flow/chain-higher-than-page", test_chain_higher_than_page);
  g_test_add_func ("/sheet/flow/break", test_break);
  g_test_add_func ("/sheet/flow/paragraph-ends", test_paragraph_ends);
  g_test_add_func ("/sheet/flow/box", test_box);
  g_test_add_func ("/sheet/flow/boxes-are-equal", test_boxes_are_equal);
  g_test_add_func ("/sheet/table/of-60-rows", test_table_of_60_rows);
  g_test_add_func ("/sheet/table/last-row-not-alone", test_last_row_not_alone);
  g_test_add_func ("/sheet/table/head-in-a-figure", test_table_in_a_figure_has_its_head);
  g_test_add_func ("/sheet/table/row-higher-than-page", test_row_higher_than_page);
  g_test_add_func ("/sheet/table/number-never-wraps", test_number_never_wraps);
  return g_test_run ();
}
