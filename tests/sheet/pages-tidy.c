/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "pages-tidy.h"
#include "boxes.h"

/* Margins as page-frame.c promises them: 15 mm, 20 mm where the sheet is punched. */
#define MARGIN_MM 15.0
#define BINDER_MM 20.0

/* Nothing in the margins, and no text on another. */
void
assert_pages_tidy (const Example *example, const GPtrArray *pages, const char *what)
{
  for (guint i = 0; i < pages->len; i++)
    {
      const SwFigure *page = g_ptr_array_index (pages, i);
      gboolean turned = page->width_mm > page->height_mm;
      double left_mm = turned ? MARGIN_MM : BINDER_MM;
      double top_mm = turned ? BINDER_MM : MARGIN_MM;
      g_autoptr (SwFigure) inside = sw_figure_new (page->width_mm - left_mm - MARGIN_MM,
                                                   page->height_mm - top_mm - MARGIN_MM);
      g_autofree char *where = g_strdup_printf ("%s, page %u", what, i + 1);

      sw_figure_place (inside, page, -left_mm, -top_mm);
      assert_tidy (inside, example->draw.measure, where);
    }
}

/* The next tag of a page that holds text; NULL at the end of the page. */
static const SwItem *
tag_after (const SwFigure *page, guint *index)
{
  while (++*index < page->items->len)
    {
      const SwItem *item = &g_array_index (page->items, SwItem, *index);

      if (item->kind == SW_ITEM_TAG && item->tag != SW_TAG_FURNITURE)
        return item;
      /* Lines to write on are drawn without a tag. */
      if (item->kind == SW_ITEM_TEXT)
        return item;
    }
  return NULL;
}

/* The title of every page is read in full. */
void
assert_titles_whole (const GPtrArray *pages, const char *what)
{
  for (guint i = 0; i < pages->len; i++)
    {
      const SwFigure *page = g_ptr_array_index (pages, i);
      gboolean in_title = FALSE;

      for (guint k = 0; k < page->items->len; k++)
        {
          const SwItem *item = &g_array_index (page->items, SwItem, k);

          if (item->kind == SW_ITEM_TAG)
            in_title = item->tag == SW_TAG_TITLE;
          if (in_title && item->kind == SW_ITEM_TEXT
              && g_str_has_suffix (item->text, "…"))
            g_error ("%s, page %u: the title is cut: %s", what, i + 1, item->text);
        }
    }
}

/* A heading is followed by what it heads, on its own page. */
void
assert_headings_have_bodies (const GPtrArray *pages, const char *what)
{
  for (guint i = 0; i < pages->len; i++)
    {
      const SwFigure *page = g_ptr_array_index (pages, i);

      for (guint k = 0; k < page->items->len; k++)
        {
          const SwItem *heading = &g_array_index (page->items, SwItem, k), *next;
          guint at = k;

          if (heading->kind != SW_ITEM_TAG || heading->tag != SW_TAG_HEADING)
            continue;
          while (at < page->items->len
                 && g_array_index (page->items, SwItem, at).kind != SW_ITEM_UNTAG)
            at++;
          next = tag_after (page, &at);
          if (next == NULL || (next->kind == SW_ITEM_TAG && next->tag == SW_TAG_HEADING))
            g_error ("%s, page %u: nothing below the heading %s", what, i + 1,
                     heading->text);
        }
    }
}

/* A link is where its row is: within the frame. */
void
assert_links_on_page (const GPtrArray *pages, const char *what)
{
  for (guint i = 0; i < pages->len; i++)
    {
      const SwFigure *page = g_ptr_array_index (pages, i);

      for (guint k = 0; k < page->items->len; k++)
        {
          const SwItem *item = &g_array_index (page->items, SwItem, k);
          const SwPaperPoint *points = sw_figure_item_points (page, item);

          if (item->kind != SW_ITEM_LINK)
            continue;
          if (points[0].x_mm < MARGIN_MM || points[1].x_mm > page->width_mm - MARGIN_MM
              || points[1].y_mm > page->height_mm - MARGIN_MM)
            g_error ("%s, page %u: a link beyond the frame", what, i + 1);
        }
    }
}

/* A text that is missing prints its id, a place without a number its braces. */
void
assert_no_gaps (const char *words)
{
  g_autoptr (GRegex) gap =
      g_regex_new ("\\b(pack|permit|class|fault|laid-fault|pack-kind|report|evidence|practice|"
                   "finding|working|site|answer|error-source|check"
                   "|choice|due|measuring|inspecting)"
                   "\\.[a-z]|\\{",
                   0, 0, NULL);
  g_autoptr (GMatchInfo) match = NULL;

  if (g_regex_match (gap, words, 0, &match))
    {
      int start = 0;

      g_match_info_fetch_pos (match, 0, &start, NULL);
      g_error ("a gap in the words: %.60s", words + start);
    }
}
