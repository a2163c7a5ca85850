/* SPDX-License-Identifier: MIT */
#include "flow.h"

/* Heights add up from many parts: a page is full only beyond this. */
#define FIT_SLACK_MM 0.001
/* The first and the last lines of a paragraph that stay together. */
#define FEWEST_LINES 2
#define HEADING_SPACE_MM 5.0
#define HEADING_GAP_MM 1.6
#define ITEM_INDENT_MM 5.5
#define BOX_PAD_MM 3.0
#define BOX_TALLEST_MM 125.0
#define ROW_TALLEST_MM 180.0
#define WRITE_IN_MM 8.0

typedef struct
{
  SwFigure *figure;
  SwFigure *head;  /* of the flow's heads; NULL: none */
  double space_mm; /* above, unless first on the page */
  gboolean tied;   /* to the next */
  gboolean breaks; /* begins a page */
} SwSlug;

struct SwFlow
{
  SwPen pen;
  double width_mm;
  GArray *slugs;
  GPtrArray *heads;
  double space_mm; /* above the next slug */
  gboolean breaks; /* before the next slug */
};

static void
clear_slug (gpointer data)
{
  sw_figure_free (((SwSlug *) data)->figure);
}

SwFlow *
sw_flow_new (const SwPen *pen, double width_mm)
{
  SwFlow *flow = g_new0 (SwFlow, 1);

  flow->pen = *pen;
  flow->width_mm = width_mm;
  flow->slugs = g_array_new (FALSE, TRUE, sizeof (SwSlug));
  g_array_set_clear_func (flow->slugs, clear_slug);
  flow->heads = g_ptr_array_new_with_free_func ((GDestroyNotify) sw_figure_free);
  return flow;
}

void
sw_flow_free (SwFlow *flow)
{
  if (flow == NULL)
    return;
  g_array_unref (flow->slugs);
  g_ptr_array_unref (flow->heads);
  g_free (flow);
}

const SwPen *
sw_flow_pen (const SwFlow *flow)
{
  return &flow->pen;
}

double
sw_flow_width_mm (const SwFlow *flow)
{
  return flow->width_mm;
}

gboolean
sw_flow_is_empty (const SwFlow *flow)
{
  return flow->slugs->len == 0;
}

static SwSlug *
slug_at (const SwFlow *flow, guint index)
{
  return &g_array_index (flow->slugs, SwSlug, index);
}

/* A head is above a slug already when the slug before has the same one. */
static gboolean
wants_head (const SwFlow *flow, guint index, gboolean empty)
{
  const SwSlug *slug = slug_at (flow, index);

  return slug->head != NULL
         && (empty || index == 0 || slug_at (flow, index - 1)->head != slug->head);
}

static double
slug_height_mm (const SwFlow *flow, guint index, gboolean empty)
{
  const SwSlug *slug = slug_at (flow, index);

  return (empty ? 0.0 : slug->space_mm) + slug->figure->height_mm
         + (wants_head (flow, index, empty) ? slug->head->height_mm : 0.0);
}

double
sw_flow_height_mm (const SwFlow *flow)
{
  double height_mm = 0.0;

  for (guint i = 0; i < flow->slugs->len; i++)
    height_mm += slug_height_mm (flow, i, i == 0);
  return height_mm;
}

void
sw_flow_space (SwFlow *flow, double mm)
{
  flow->space_mm = MAX (flow->space_mm, mm);
}

void
sw_flow_break (SwFlow *flow)
{
  flow->breaks = TRUE;
}

void
sw_flow_tie (SwFlow *flow)
{
  if (flow->slugs->len > 0)
    slug_at (flow, flow->slugs->len - 1)->tied = TRUE;
}

SwFigure *
sw_flow_keep_head (SwFlow *flow, SwFigure *head)
{
  g_ptr_array_add (flow->heads, head);
  return head;
}

void
sw_flow_add_under (SwFlow *flow, SwFigure *figure, SwFigure *head)
{
  SwSlug slug = {
    .figure = figure, .head = head, .space_mm = flow->space_mm, .breaks = flow->breaks
  };

  flow->space_mm = 0.0;
  flow->breaks = FALSE;
  g_array_append_val (flow->slugs, slug);
}

void
sw_flow_add (SwFlow *flow, SwFigure *figure)
{
  sw_flow_add_under (flow, figure, NULL);
}

/* One slug of @count lines from @first on. */
static void
add_lines (SwFlow *flow, const SwTextBlock *block, guint first, guint count, SwRole role,
           double indent_mm)
{
  double height_mm = sw_text_block_height_mm (&flow->pen, block, count);
  SwFigure *figure = sw_figure_new (flow->width_mm, height_mm);

  sw_text_block_draw (&flow->pen, block, first, count, figure, role, indent_mm, 0.0,
                      flow->width_mm - indent_mm, SW_ALIGN_LEFT);
  sw_flow_add (flow, figure);
}

static void
add_paragraph (SwFlow *flow, const SwTextBlock *block, SwRole role, double indent_mm)
{
  guint count = block->lines->len;

  if (count < 2 * FEWEST_LINES)
    {
      add_lines (flow, block, 0, count, role, indent_mm);
      return;
    }
  add_lines (flow, block, 0, FEWEST_LINES, role, indent_mm);
  for (guint i = FEWEST_LINES; i < count - FEWEST_LINES; i++)
    add_lines (flow, block, i, 1, role, indent_mm);
  add_lines (flow, block, count - FEWEST_LINES, FEWEST_LINES, role, indent_mm);
}

void
sw_flow_text (SwFlow *flow, SwStyle style, SwRole role, const char *markup)
{
  g_autoptr (SwTextBlock) block =
      sw_text_block_new (&flow->pen, style, markup, flow->width_mm);

  add_paragraph (flow, block, role, 0.0);
}

void
sw_flow_heading (SwFlow *flow, const char *text)
{
  g_autofree char *markup = sw_markup_escape (text);
  g_autoptr (SwTextBlock) block =
      sw_text_block_new (&flow->pen, SW_STYLE_HEADING, markup, flow->width_mm);

  sw_flow_space (flow, HEADING_SPACE_MM);
  add_lines (flow, block, 0, block->lines->len, SW_ROLE_HEADING, 0.0);
  sw_flow_tie (flow);
  sw_flow_space (flow, HEADING_GAP_MM);
}

void
sw_flow_item (SwFlow *flow, SwStyle style, const char *mark, const char *markup)
{
  double indent_mm = ITEM_INDENT_MM * flow->pen.scale;
  g_autoptr (SwTextBlock) block =
      sw_text_block_new (&flow->pen, style, markup, flow->width_mm - indent_mm);
  guint first = flow->slugs->len;

  add_paragraph (flow, block, SW_ROLE_TEXT, indent_mm);
  sw_pen_write (&flow->pen, style, slug_at (flow, first)->figure, SW_ROLE_HEADING, 0.0,
                0.0, SW_ALIGN_LEFT, mark);
}

void
sw_flow_write_in (SwFlow *flow, const char *label)
{
  double height_mm = WRITE_IN_MM * flow->pen.scale;
  double line_mm = sw_pen_line_mm (&flow->pen, SW_STYLE_BODY);
  double label_mm = sw_pen_width_mm (&flow->pen, SW_STYLE_BODY, label);
  SwFigure *figure = sw_figure_new (flow->width_mm, height_mm);

  sw_pen_write (&flow->pen, SW_STYLE_BODY, figure, SW_ROLE_TEXT, 0.0, height_mm - line_mm,
                SW_ALIGN_LEFT, label);
  sw_figure_segment (figure, SW_ROLE_TABLE_RULE, MIN (label_mm + 2.0, flow->width_mm),
                     height_mm - 0.6, flow->width_mm, height_mm - 0.6);
  sw_flow_add (flow, figure);
}

void
sw_flow_drawing (SwFlow *flow, SwFigure *drawing)
{
  SwFigure *figure = sw_figure_new (flow->width_mm, drawing->height_mm);

  sw_figure_place (figure, drawing, (flow->width_mm - drawing->width_mm) / 2.0, 0.0);
  sw_figure_free (drawing);
  sw_flow_add (flow, figure);
}

double
sw_flow_box_width_mm (double outer_mm)
{
  return outer_mm - 2.0 * BOX_PAD_MM;
}

/* All slugs of @inner, moved in from the left, each able to begin a page. */
static void
add_slugs_of (SwFlow *flow, const SwFlow *inner, double indent_mm)
{
  for (guint i = 0; i < inner->slugs->len; i++)
    {
      const SwSlug *slug = slug_at (inner, i);
      double head_mm = wants_head (inner, i, i == 0) ? slug->head->height_mm : 0.0;
      SwFigure *figure =
          sw_figure_new (flow->width_mm, head_mm + slug->figure->height_mm);

      if (head_mm > 0.0)
        sw_figure_place (figure, slug->head, indent_mm, 0.0);
      sw_figure_place (figure, slug->figure, indent_mm, head_mm);
      sw_flow_space (flow, slug->space_mm);
      sw_flow_add (flow, figure);
    }
}

void
sw_flow_box_tall (SwFlow *flow, SwRole role, SwFlow *inner, double least_mm)
{
  double height_mm = MAX (sw_flow_height_mm (inner) + 2.0 * BOX_PAD_MM, least_mm);

  if (height_mm > BOX_TALLEST_MM * flow->pen.scale)
    add_slugs_of (flow, inner, BOX_PAD_MM);
  else
    {
      SwFigure *figure = sw_figure_new (flow->width_mm, height_mm);
      g_autoptr (SwFigure) content = sw_flow_to_figure (inner);

      sw_figure_box (figure, role, 0.0, 0.0, flow->width_mm, height_mm);
      sw_figure_place (figure, content, BOX_PAD_MM, BOX_PAD_MM);
      sw_flow_add (flow, figure);
    }
  sw_flow_free (inner);
}

void
sw_flow_box (SwFlow *flow, SwRole role, SwFlow *inner)
{
  sw_flow_box_tall (flow, role, inner, 0.0);
}

double
sw_flow_share_mm (const SwFlow *flow, double gap_mm, guint count)
{
  return (flow->width_mm - (count - 1) * gap_mm) / count;
}

void
sw_flow_boxes (SwFlow *flow, SwRole role, double gap_mm, SwFlow *const *inners,
               guint count)
{
  g_autofree SwFlow **columns = g_new (SwFlow *, count);
  double tallest_mm = 0.0;

  for (guint i = 0; i < count; i++)
    tallest_mm = MAX (tallest_mm, sw_flow_height_mm (inners[i]) + 2.0 * BOX_PAD_MM);
  for (guint i = 0; i < count; i++)
    {
      columns[i] = sw_flow_new (&flow->pen, sw_flow_share_mm (flow, gap_mm, count));
      sw_flow_box_tall (columns[i], role, inners[i], tallest_mm);
    }
  sw_flow_row (flow, gap_mm, columns, count);
}

static void
add_below_each_other (SwFlow *flow, double gap_mm, SwFlow *const *columns, guint count)
{
  for (guint i = 0; i < count; i++)
    {
      add_slugs_of (flow, columns[i], 0.0);
      sw_flow_space (flow, gap_mm);
      sw_flow_free (columns[i]);
    }
}

void
sw_flow_row (SwFlow *flow, double gap_mm, SwFlow *const *columns, guint count)
{
  double x_mm = 0.0, height_mm = 0.0;
  SwFigure *figure;

  for (guint i = 0; i < count; i++)
    height_mm = MAX (height_mm, sw_flow_height_mm (columns[i]));
  if (height_mm > ROW_TALLEST_MM * flow->pen.scale)
    {
      add_below_each_other (flow, gap_mm, columns, count);
      return;
    }
  figure = sw_figure_new (flow->width_mm, height_mm);
  for (guint i = 0; i < count; i++)
    {
      g_autoptr (SwFigure) part = sw_flow_to_figure (columns[i]);

      sw_figure_place (figure, part, x_mm, 0.0);
      x_mm += columns[i]->width_mm + gap_mm;
      sw_flow_free (columns[i]);
    }
  sw_flow_add (flow, figure);
}

/* The page being filled. */
typedef struct
{
  GPtrArray *pages;
  SwFigure *page; /* the last of @pages */
  double width_mm, height_mm, y_mm;
  gboolean empty;
} SwFilling;

static void
begin_page (SwFilling *filling)
{
  filling->page = sw_figure_new (filling->width_mm, filling->height_mm);
  filling->y_mm = 0.0;
  filling->empty = TRUE;
  g_ptr_array_add (filling->pages, filling->page);
}

static void
place_slug (const SwFlow *flow, SwFilling *filling, guint index)
{
  const SwSlug *slug = slug_at (flow, index);
  gboolean with_head = wants_head (flow, index, filling->empty);

  filling->y_mm += filling->empty ? 0.0 : slug->space_mm;
  if (with_head)
    {
      sw_figure_place (filling->page, slug->head, 0.0, filling->y_mm);
      filling->y_mm += slug->head->height_mm;
    }
  sw_figure_place (filling->page, slug->figure, 0.0, filling->y_mm);
  filling->y_mm += slug->figure->height_mm;
  filling->empty = FALSE;
}

SwFigure *
sw_flow_to_figure (const SwFlow *flow)
{
  SwFigure *figure = sw_figure_new (flow->width_mm, sw_flow_height_mm (flow));
  SwFilling filling = { .page = figure, .empty = TRUE };

  for (guint i = 0; i < flow->slugs->len; i++)
    place_slug (flow, &filling, i);
  return figure;
}

/* One past the last slug tied, directly or over others, to the one at @first. */
static guint
chain_end (const SwFlow *flow, guint first)
{
  guint end = first + 1;

  while (end < flow->slugs->len && slug_at (flow, end - 1)->tied
         && !slug_at (flow, end)->breaks)
    end++;
  return end;
}

static gboolean
chain_fits (const SwFlow *flow, const SwFilling *filling, guint first, guint end)
{
  double y_mm = filling->y_mm;

  for (guint i = first; i < end; i++)
    y_mm += slug_height_mm (flow, i, filling->empty && i == first);
  return y_mm <= filling->height_mm + FIT_SLACK_MM;
}

static void
fill_pages (const SwFlow *flow, SwFilling *filling)
{
  guint next = 0;

  filling->pages = g_ptr_array_new_with_free_func ((GDestroyNotify) sw_figure_free);
  begin_page (filling);
  while (next < flow->slugs->len)
    {
      guint end = chain_end (flow, next);

      if (!filling->empty
          && (slug_at (flow, next)->breaks || !chain_fits (flow, filling, next, end)))
        begin_page (filling);
      /* A chain higher than a page has to be cut somewhere. */
      for (guint i = next; i < end; i++)
        {
          if (!filling->empty && !chain_fits (flow, filling, i, i + 1))
            begin_page (filling);
          place_slug (flow, filling, i);
        }
      next = end;
    }
}

GPtrArray *
sw_flow_to_pages (const SwFlow *flow, double height_mm)
{
  SwFilling filling = { .width_mm = flow->width_mm, .height_mm = height_mm };

  fill_pages (flow, &filling);
  return filling.pages;
}

double
sw_flow_room_mm (const SwFlow *flow, double height_mm)
{
  SwFilling filling = { .width_mm = flow->width_mm, .height_mm = height_mm };

  fill_pages (flow, &filling);
  g_ptr_array_unref (filling.pages);
  return height_mm - filling.y_mm;
}
