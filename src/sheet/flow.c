/* SPDX-License-Identifier: MIT */
#include "flow-private.h"

/* The first and the last lines of a paragraph that stay together. */
#define FEWEST_LINES 2
#define HEADING_SPACE_MM 5.0
#define HEADING_GAP_MM 1.6
#define ITEM_INDENT_MM 5.5
#define WRITE_IN_MM 8.0

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

SwSlug *
sw_flow_slug (const SwFlow *flow, guint index)
{
  return &g_array_index (flow->slugs, SwSlug, index);
}

/* A head is above a slug already when the slug before has the same one. */
gboolean
sw_flow_wants_head (const SwFlow *flow, guint index, gboolean empty)
{
  const SwSlug *slug = sw_flow_slug (flow, index);

  return slug->head != NULL
         && (empty || index == 0 || sw_flow_slug (flow, index - 1)->head != slug->head);
}

double
sw_flow_slug_mm (const SwFlow *flow, guint index, gboolean empty)
{
  const SwSlug *slug = sw_flow_slug (flow, index);

  return (empty ? 0.0 : slug->space_mm) + slug->figure->height_mm
         + (sw_flow_wants_head (flow, index, empty) ? slug->head->height_mm : 0.0);
}

double
sw_flow_height_mm (const SwFlow *flow)
{
  double height_mm = 0.0;

  for (guint i = 0; i < flow->slugs->len; i++)
    height_mm += sw_flow_slug_mm (flow, i, i == 0);
  return height_mm;
}

void
sw_flow_space (SwFlow *flow, double mm)
{
  flow->space_mm = MAX (flow->space_mm, sw_pen_gap_mm (&flow->pen, mm));
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
    sw_flow_slug (flow, flow->slugs->len - 1)->tied = TRUE;
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

/* How a paragraph is set. */
typedef struct
{
  SwRole role;
  double indent_mm;
  const char *mark; /* hangs before it; "" for none */
  SwStyle style;    /* of the mark */
} Look;

/* One slug of @count lines from @first on, the first one behind the mark of @look. */
static void
add_lines (SwFlow *flow, const SwTextBlock *block, guint first, guint count,
           const Look *look, SwTag tag)
{
  double height_mm = sw_text_block_height_mm (&flow->pen, block, count);
  double indent_mm = look->indent_mm;
  gboolean marked = first == 0 && *look->mark != '\0';
  g_autofree char *words = marked ? g_strdup_printf ("%s %s", look->mark, block->text)
                                  : g_strdup (block->text);
  SwFigure *figure = sw_figure_new (flow->width_mm, height_mm);

  sw_figure_tag (figure, tag, first == 0 ? words : "");
  if (marked)
    sw_pen_write (&flow->pen, look->style, figure, SW_ROLE_HEADING, 0.0, 0.0,
                  SW_ALIGN_LEFT, look->mark);
  sw_text_block_draw (&flow->pen, block, first, count, figure, look->role, indent_mm, 0.0,
                      flow->width_mm - indent_mm, SW_ALIGN_LEFT);
  sw_figure_untag (figure);
  sw_flow_add (flow, figure);
}

static void
add_paragraph (SwFlow *flow, const SwTextBlock *block, const Look *look)
{
  guint count = block->lines->len;

  if (count < 2 * FEWEST_LINES)
    {
      add_lines (flow, block, 0, count, look, SW_TAG_PARAGRAPH);
      return;
    }
  add_lines (flow, block, 0, FEWEST_LINES, look, SW_TAG_PARAGRAPH);
  for (guint i = FEWEST_LINES; i < count - FEWEST_LINES; i++)
    add_lines (flow, block, i, 1, look, SW_TAG_MORE);
  add_lines (flow, block, count - FEWEST_LINES, FEWEST_LINES, look, SW_TAG_MORE);
}

void
sw_flow_text (SwFlow *flow, SwStyle style, SwRole role, const char *markup)
{
  g_autoptr (SwTextBlock) block =
      sw_text_block_new (&flow->pen, style, markup, flow->width_mm);

  add_paragraph (flow, block, &(Look){ .role = role, .mark = "" });
}

void
sw_flow_heading (SwFlow *flow, const char *text)
{
  g_autofree char *markup = sw_markup_escape (text);
  g_autoptr (SwTextBlock) block =
      sw_text_block_new (&flow->pen, SW_STYLE_HEADING, markup, flow->width_mm);

  sw_flow_space (flow, HEADING_SPACE_MM);
  add_lines (flow, block, 0, block->lines->len,
             &(Look){ .role = SW_ROLE_HEADING, .mark = "" }, SW_TAG_HEADING);
  sw_flow_tie (flow);
  sw_flow_space (flow, HEADING_GAP_MM);
}

void
sw_flow_item (SwFlow *flow, SwStyle style, const char *mark, const char *markup)
{
  double indent_mm = ITEM_INDENT_MM * flow->pen.scale;
  g_autoptr (SwTextBlock) block =
      sw_text_block_new (&flow->pen, style, markup, flow->width_mm - indent_mm);

  add_paragraph (flow, block, &(Look){ SW_ROLE_TEXT, indent_mm, mark, style });
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

  g_autofree char *words = sw_figure_words (drawing);

  sw_figure_tag (figure, SW_TAG_PICTURE, words);
  sw_figure_place (figure, drawing, (flow->width_mm - drawing->width_mm) / 2.0, 0.0);
  sw_figure_untag (figure);
  sw_figure_free (drawing);
  sw_flow_add (flow, figure);
}
